#include "app/operate/day_view.h"

#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/report/set_actual.h"

#include <QCoreApplication>

namespace seamclock {
namespace {

struct Day {
    Q_DECLARE_TR_FUNCTIONS(Day)
};

VerdictLook lookOf(VerdictWord word, bool aborted) {
    return aborted ? VerdictLook{Mark::Cut, Tone::Late} : seamclock::lookOf(word);
}

QString phaseName(const std::string& phase) {
    if (phase == "alignment") {
        return Day::tr("align");
    }
    if (phase == "build_up") {
        return Day::tr("build-up");
    }
    return fromUtf8(phase);
}

QString itemName(const SetActual& item) {
    static const std::pair<const char*, const char*> kNames[] = {
        {"plate_temperature", QT_TRANSLATE_NOOP("Day", "plate")},
        {"ambient", QT_TRANSLATE_NOOP("Day", "shop")},
        {"gap", QT_TRANSLATE_NOOP("Day", "gap")},
        {"clamping_gap", QT_TRANSLATE_NOOP("Day", "gap for sheet 2")},
        {"drag", QT_TRANSLATE_NOOP("Day", "drag")},
        {"alignment_bead", QT_TRANSLATE_NOOP("Day", "bead")},
        {"alignment_reading", QT_TRANSLATE_NOOP("Day", "align reading")},
        {"soak_reading", QT_TRANSLATE_NOOP("Day", "soak reading")},
        {"joining_reading", QT_TRANSLATE_NOOP("Day", "joining reading")},
        {"recheck_reading", QT_TRANSLATE_NOOP("Day", "read in cooling")},
        {"bead_height", QT_TRANSLATE_NOOP("Day", "bead height")},
        {"bead_width", QT_TRANSLATE_NOOP("Day", "bead width")},
        {"bead_k", QT_TRANSLATE_NOOP("Day", "K value")},
        {"misalignment", QT_TRANSLATE_NOOP("Day", "out of line")}};
    for (const auto& [code, name] : kNames) {
        if (item.item == code) {
            const QString what = Day::tr(name);
            return item.place.empty() ? what : Day::tr("%1, %2").arg(what, placeWord(item.place));
        }
    }
    return fromUtf8(item.item).replace('_', ' ');
}

QString valueText(std::int64_t value, const std::string& unit, const WeldPlan& plan) {
    if (unit == "mC") {
        return celsiusText(value) + " °C";
    }
    if (unit == "um") {
        return millimetresText(value, 1) + " mm";
    }
    if (unit == "mN") {
        return numberText(static_cast<double>(value) / 1000.0, 0) + " N";
    }
    if (unit == "Pa") {
        return numberText(static_cast<double>(value) / 1e6, 3) + " N/mm²";
    }
    const std::int64_t division = plan.scale ? plan.scale->divisionMilli : 100;
    return readingText(value, division) + " " +
           (plan.scale ? fromUtf8(plan.scale->unit) : QString());
}

} // namespace

VerdictLook lookOf(VerdictWord word) {
    switch (word) {
    case VerdictWord::WithinLimits:
    case VerdictWord::WithRemarks:
        return {Mark::Done, Tone::Normal};
    case VerdictWord::OutOfLimits:
        return {Mark::Late, Tone::Late};
    case VerdictWord::Incomplete:
        return {Mark::Open, Tone::Rest};
    }
    return {};
}

JointRowView jointRow(const JointLine& line, const std::string& firstReason) {
    JointRowView row;
    row.number = QString::number(line.number);
    row.seam = line.seam.empty()
                   ? fromUtf8(line.bench)
                   : Day::tr("Seam %1, %2").arg(fromUtf8(line.seam), fromUtf8(line.bench));
    Instant opened;
    opened.utc = line.openedUtc;
    opened.offset = line.offset;
    row.time = wallClockText(opened);
    const bool aborted = line.phase == "aborted";
    VerdictWord word = VerdictWord::Incomplete;
    for (const VerdictWord one :
         {VerdictWord::WithinLimits, VerdictWord::WithRemarks, VerdictWord::OutOfLimits}) {
        if (toString(one) == line.verdict) {
            word = one;
        }
    }
    const VerdictLook look = line.open ? VerdictLook{} : lookOf(word, aborted);
    row.mark = look.mark;
    row.tone = look.tone;
    row.remarks = !line.open && word == VerdictWord::WithRemarks;
    if (line.open) {
        row.reason = Day::tr("not finished: %1").arg(fromUtf8(line.phase));
    } else if (aborted) {
        row.reason = Day::tr("stopped: %1").arg(fromUtf8(firstReason));
    } else {
        row.reason = firstReason.empty() ? midSentence(verdictWord(word)) : fromUtf8(firstReason);
    }
    return row;
}

JointView jointView(const WeldRecord& record, const Bench* bench) {
    JointView view;
    const WeldPlan& plan = record.plan;
    const VerdictLook look = lookOf(record.verdict.word, record.aborted.has_value());
    view.mark = look.mark;
    view.tone = look.tone;
    view.verdict = record.aborted ? Day::tr("Stopped") : verdictWord(record.verdict.word);
    view.reason =
        record.aborted ? fromUtf8(record.aborted->text) : firstReason(record.verdict, plan);
    QStringList batches;
    for (const Sheet& sheet : record.opened.sheets) {
        batches << fromUtf8(sheet.batch);
    }
    batches.removeDuplicates(); // two halves of one sheet
    view.about = Day::tr("Joint %1. %2 %3 mm, %4 mm. Batches %5.")
                     .arg(record.opened.number)
                     .arg(
                         fromUtf8(plan.material), millimetresText(plan.thicknessUm),
                         millimetresText(plan.lengthUm), batches.join(Day::tr(" and ")));
    for (const PhaseRecord& phase : record.phases) {
        JointView::Row row;
        row.item = phaseName(phase.phase);
        const std::optional<Milliseconds> set = phase.target               ? phase.target
                                                : phase.phase == "cooling" ? phase.low
                                                                           : phase.high;
        row.set = set ? timeText(*set) : QStringLiteral("–");
        row.actual = QStringLiteral("–");
        if (phase.took) {
            const QString low = timeText(phase.took->lo);
            const bool certain = phase.took->lo == phase.took->hi;
            row.actual = certain ? low : Day::tr("%1 to %2").arg(low, timeText(phase.took->hi));
        }
        if (phase.took) {
            row.out = (phase.low && phase.took->lo < *phase.low) ||
                      (phase.high && phase.took->hi > *phase.high);
        }
        view.rows.push_back(row);
    }
    for (const SetActual& item : setAndActual(record, bench)) {
        if (!item.actual || item.unit == "mN" || item.unit == "Pa") {
            continue;
        }
        JointView::Row row;
        row.item = itemName(item);
        row.set = item.set    ? valueText(*item.set, item.unit, plan)
                  : item.high ? Day::tr("to %1").arg(valueText(*item.high, item.unit, plan))
                  : item.low  ? Day::tr("from %1").arg(valueText(*item.low, item.unit, plan))
                              : QStringLiteral("–");
        row.actual = valueText(*item.actual, item.unit, plan);
        row.out =
            (item.low && *item.actual < *item.low) || (item.high && *item.actual > *item.high);
        view.rows.push_back(row);
    }
    for (const Finding& finding : record.verdict.findings) {
        view.findings.push_back(findingText(finding, plan));
    }
    return view;
}

} // namespace seamclock
