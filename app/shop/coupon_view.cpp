#include "app/shop/coupon_view.h"

#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/record_words.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct Coupons {
    Q_DECLARE_TR_FUNCTIONS(Coupons)
};

QString tr(const char* text) {
    return Coupons::tr(text);
}

constexpr double kPaPerMpa = 1e6;

std::function<QString(const std::string&)> personOf(const DayNames& names) {
    return [&names](const std::string& id) { return names.person(id); };
}

QString meanText(const StrengthMean& mean) {
    return tr("%1 coupons, mean %2 N/mm², scatter %3 N/mm²")
        .arg(mean.count)
        .arg(numberText(mean.meanMpa, 1), numberText(mean.sdMpa, 2));
}

std::vector<ListRowView>
valueRows(const CouponTested& tested, const std::optional<WeldingFactor>& factor) {
    std::vector<ListRowView> rows;
    const auto add = [&rows](const QString& text, const QString& second) {
        if (!second.isEmpty()) {
            ListRowView row;
            row.text = text;
            row.second = second;
            row.enabled = false;
            rows.push_back(std::move(row));
        }
    };
    add(factor ? tr("Welded: %1").arg(meanText(factor->welded)) : tr("Welded coupons"),
        couponNumbers(tested.weldedPa, kPaPerMpa, 2));
    add(factor ? tr("Parent sheet: %1").arg(meanText(factor->parent)) : tr("Parent sheet"),
        couponNumbers(tested.parentPa, kPaPerMpa, 2));
    add(tr("Bend angle [°]"), couponNumbers(tested.angleMilli, 1e3, 1));
    add(tr("Travel of the ram [mm]"), couponNumbers(tested.ramUm, 1e3, 1));
    return rows;
}

ListRowView resultRow(
    const CouponTested& tested, const std::optional<WeldingFactor>& factor,
    const std::optional<double>& required) {
    ListRowView row;
    row.enabled = false;
    if (factor) {
        row.text = tr("Welding factor %1").arg(factorText(*factor, required));
        row.second = answerText(*factor, required);
        const AnswerLook look = lookOf(answerOf(*factor, required));
        row.mark = look.mark;
        row.tone = look.tone;
    } else if (tested.test == "bend") {
        const bool sound = cracksOf(tested) == 0;
        row.text = bendText(tested);
        row.second = tr("A bend test has no factor. What it must reach is in your standard.");
        row.mark = sound ? Mark::Done : Mark::Trouble;
        row.tone = sound ? Tone::Normal : Tone::Soon;
    } else {
        row.text = tr("No welding factor yet");
        row.second = tr("It takes welded coupons and coupons of the parent sheet.");
        row.mark = Mark::Open;
    }
    return row;
}

/// Where the required factor comes from, as long as one is compared with.
std::vector<ListRowView> resultRows(
    const CouponTested& tested, const std::optional<WeldingFactor>& factor,
    const std::optional<double>& required) {
    std::vector<ListRowView> rows{resultRow(tested, factor, required)};
    if (factor && required) {
        ListRowView source;
        source.text = tr("The required factor is from memory of DVS 2203-1, short term.");
        source.sign = Sign::Note;
        source.enabled = false;
        rows.push_back(std::move(source));
    }
    return rows;
}

/// An event by its n, and whose it is.
ListRowView unreadRow(const UnreadEvent& one) {
    ListRowView row;
    row.enabled = false;
    row.mark = Mark::Trouble;
    row.tone = Tone::Soon;
    row.text = one.subject.rfind("coupon:", 0) == 0
                   ? tr("Event %1 of this test can't be read.").arg(one.n)
                   : tr("Event %1 of its joint can't be read.").arg(one.n);
    row.second = fromUtf8(one.subject);
    return row;
}

QString sheetText(const CouponTested& tested) {
    return tr("%1, %2 mm").arg(fromUtf8(tested.material), millimetresText(tested.thicknessUm));
}

} // namespace

AnswerLook lookOf(FactorAnswer answer) {
    switch (answer) {
    case FactorAnswer::Met:
        return {Mark::Done, Tone::Normal};
    case FactorAnswer::MetByMean:
        return {Mark::Trouble, Tone::Soon};
    case FactorAnswer::NotMet:
        return {Mark::Late, Tone::Late};
    case FactorAnswer::NoRequirement:
        break;
    }
    return {Mark::Open, Tone::Rest};
}

QString sourceText(const CouponSeries& series) {
    if (series.joint > 0) {
        return tr("joint %1").arg(series.joint);
    }
    if (series.isJointUnread()) {
        return tr("a joint that can't be read");
    }
    return series.now().weld ? tr("a joint of another log") : tr("a procedure trial");
}

ListRowView couponRow(const CouponSeries& series, const DayNames& names) {
    const CouponTested& now = series.now();
    ListRowView row = resultRow(now, series.factor, series.required);
    row.enabled = true;
    row.third = row.mark == Mark::Open ? QString() : row.second;
    row.second = row.text;
    row.text =
        tr("%1, %2, %3").arg(midSentence(testWord(now.test)), sourceText(series), sheetText(now));
    if (!row.text.isEmpty()) {
        row.text[0] = row.text[0].toUpper();
    }
    if (const QString who = couponWelder(series, personOf(names)); !who.isEmpty()) {
        row.second += tr(" · welded by %1").arg(who);
    }
    if (now.test == "bend") {
        row.third.clear();
    }
    if (series.versions.size() > 1) {
        row.second += tr(" · put right");
    }
    if (!series.unread.empty()) {
        row.third = tr("Not all of it can be read.");
        row.mark = Mark::Trouble;
        row.tone = Tone::Soon;
    }
    return row;
}

ListView couponList(const CouponsRead& all, const DayNames& names) {
    ListView view;
    view.title = tr("Strength tests");
    view.under = all.series.empty()
                     ? tr("No coupons are entered yet.")
                     : tr("Coupons of joints and of procedure trials, the newest first.");
    for (auto series = all.series.rbegin(); series != all.series.rend(); ++series) {
        view.rows.push_back(couponRow(*series, names));
    }
    for (const UnreadEvent& one : all.unread) {
        view.trouble = tr("A test that can't be read stands last.");
        view.rows.push_back(unreadRow(one));
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Back"), tr("to the shop"));
    view.step = stepSlot(tr("Enter coupons"), false);
    return view;
}

ListView couponPage(const CouponSeries& series, const DayNames& names) {
    const CouponTested& now = series.now();
    ListView view;
    view.title = tr("%1 of %2").arg(testWord(now.test), sourceText(series));
    view.title[0] = view.title[0].toUpper();
    QStringList about{sheetText(now)};
    if (!now.procedure.empty()) {
        about << fromUtf8(now.procedure);
    }
    if (const QString who = couponWelder(series, personOf(names)); !who.isEmpty()) {
        about << tr("welded by %1").arg(who);
    }
    if (!now.standard.empty()) {
        about << plainText(now.standard);
    }
    view.under = about.join(QStringLiteral(" · "));
    for (const UnreadEvent& one : series.unread) {
        view.rows.push_back(unreadRow(one));
    }
    for (ListRowView& row : resultRows(now, series.factor, series.required)) {
        view.rows.push_back(std::move(row));
    }
    for (ListRowView& row : valueRows(now, series.factor)) {
        view.rows.push_back(std::move(row));
    }
    for (std::size_t i = 0; i < series.versions.size(); ++i) {
        const CouponVersion& version = series.versions[i];
        const QString day = fullDayWords(toIsoDate(version.at.utc, version.at.offset));
        ListRowView row;
        row.enabled = false;
        row.sign = Sign::Note;
        row.text = (i == 0 ? tr("Entered on %1 by %2") : tr("Put right on %1 by %2"))
                       .arg(day, names.person(version.by));
        if (i > 0) {
            row.second = plainText(version.tested.reason.value_or(""));
        }
        if (i + 1 < series.versions.size()) { // what held before stays readable
            const CouponTested& was = version.tested;
            row.third =
                !was.ramUm.empty()
                    ? tr("Then: %1 mm, %2").arg(couponNumbers(was.ramUm, 1e3, 1), bendText(was))
                : was.test == "bend"
                    ? tr("Then: %1 °, %2").arg(couponNumbers(was.angleMilli, 1e3, 1), bendText(was))
                    : tr("Then: welded %1, parent %2")
                          .arg(
                              couponNumbers(was.weldedPa, kPaPerMpa, 2),
                              couponNumbers(was.parentPa, kPaPerMpa, 2));
            const QStringList moves =
                couponMoves(version, series.versions[i + 1], UnitSystem::Metric, personOf(names));
            if (!moves.isEmpty()) {
                row.third += QStringLiteral(" (%1)").arg(moves.join(QStringLiteral(", ")));
            }
        }
        view.rows.push_back(std::move(row));
    }
    view.back = hiddenSlot();
    view.stop = plainSlot(tr("Back"), tr("to the list"));
    view.step = stepSlot(tr("Put it right"), false);
    return view;
}

std::vector<ListRowView> draftRows(const CouponTested& tested) {
    std::optional<WeldingFactor> factor;
    const auto mpa = [](const std::vector<std::int64_t>& values) {
        std::vector<double> out;
        for (const std::int64_t one : values) {
            out.push_back(static_cast<double>(one) / kPaPerMpa);
        }
        return out;
    };
    if (!tested.weldedPa.empty() && !tested.parentPa.empty()) {
        if (const auto made = weldingFactor(mpa(tested.weldedPa), mpa(tested.parentPa))) {
            factor = *made;
        }
    }
    std::vector<ListRowView> rows = resultRows(tested, factor, requiredFactor(tested.material));
    for (ListRowView& row : valueRows(tested, factor)) {
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<std::pair<CouponWord, ListRowView>>
wordRows(const CouponTested& tested, const DayNames& names) {
    const auto row = [](const QString& text, const QString& second, Sign sign) {
        ListRowView out;
        out.text = text;
        out.second = second;
        out.sign = sign;
        return out;
    };
    std::vector<std::pair<CouponWord, ListRowView>> out;
    out.emplace_back(
        CouponWord::Standard,
        row(tr("Tested by"),
            tested.standard.empty() ? tr("touch to say the standard") : plainText(tested.standard),
            Sign::Note));
    if (!tested.weld) { // else the joint says it
        out.emplace_back(
            CouponWord::Welder,
            row(tr("Welded by"),
                tested.welder ? names.person(*tested.welder) : tr("touch to say who welded"),
                Sign::Person));
    }
    return out;
}

} // namespace seamclock
