#include "app/text/card_text.h"

#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

struct Card {
    Q_DECLARE_TR_FUNCTIONS(Card)
};

const QString kNone = QStringLiteral("–");

class Writer {
public:
    Writer(const WeldPlan& plan, const Bench* bench, UnitSystem units, const HeatEstimate* heat)
        : m_plan(plan), m_bench(bench), m_units(units), m_heat(heat) {}

    CardTexts write() const {
        CardTexts card;
        card.sheet =
            Card::tr("%1, %2 thick, %3 long")
                .arg(
                    fromUtf8(m_plan.material), length(m_plan.thicknessUm), length(m_plan.lengthUm));
        card.shop = measureText(temperatureIn(m_units, m_plan.ambientMc));
        card.drag = force(m_plan.dragMn);
        card.gaps = Card::tr("%1, then %2 for the second sheet")
                        .arg(length(m_plan.gapUm), length(m_plan.clampingGapUm));
        card.edges = Card::tr("meet to %1, faces in line to %2")
                         .arg(length(m_plan.edgeGapMaxUm), length(m_plan.misalignmentMaxUm));
        if (m_plan.tolerancePa) {
            card.tolerance = Card::tr("pressure ± %1").arg(pressure(*m_plan.tolerancePa));
        }
        if (m_plan.soakAimPa) {
            card.tolerance += (card.tolerance.isEmpty() ? QString() : QStringLiteral("; ")) +
                              Card::tr("soak aims at %1").arg(pressure(*m_plan.soakAimPa));
        }
        card.columns = {plate(), align(), soak(), changeover(), buildUp(), cooling()};
        card.sums = sums();
        estimates(card);
        card.calibration = calibration();
        card.notReady = notReady();
        const QString fume = fumeCaution(m_plan.material);
        if (!fume.isEmpty()) {
            card.warnings << fume; // before what only the joint suffers from
        }
        for (const PlanWarning& each : m_plan.warnings) {
            card.warnings << warning(each);
        }
        for (const std::string& check : m_plan.checks) {
            card.checks << checkWord(check);
        }
        for (const std::string& step : m_plan.releaseOrder) {
            card.release << releaseDoneWord(step);
        }
        card.sources = sources();
        return card;
    }

private:
    QString length(std::int64_t um) const { return measureText(lengthIn(m_units, um)); }
    QString force(std::int64_t mN) const { return measureText(forceIn(m_units, mN)); }
    QString pressure(std::int64_t pa) const { return measureText(pressureIn(m_units, pa)); }

    void reading(CardColumn& column, ReadingBand WeldPlan::ScalePlan::*which) const {
        if (!m_plan.scale) {
            column.scale = kNone;
            return;
        }
        const ReadingBand& band = (*m_plan.scale).*which;
        const std::int64_t division = m_plan.scale->divisionMilli;
        column.scale = readingText(band.setMilli, division);
        column.scaleUnit = fromUtf8(m_plan.scale->unit);
        column.band =
            Card::tr("%1 to %2")
                .arg(lowEndText(band.lowMilli, division), highEndText(band.highMilli, division));
    }

    CardColumn plate() const {
        CardColumn column;
        column.name = Card::tr("plate");
        column.big = kNone;
        if (m_plan.plate) {
            const Measure target = temperatureIn(m_units, m_plan.plate->targetMc);
            column.big = measureNumber(target);
            column.bigUnit = fromUtf8(target.unit);
            column.under = Card::tr("%1 to %2")
                               .arg(
                                   measureNumber(temperatureIn(m_units, m_plan.plate->minMc)),
                                   measureNumber(temperatureIn(m_units, m_plan.plate->maxMc)));
        }
        column.scale = Card::tr("3 places");
        column.band = Card::tr("after 10 min");
        column.foot = Card::tr("read on its face");
        return column;
    }

    CardColumn align() const {
        CardColumn column;
        column.name = Card::tr("align");
        column.big = kNone;
        if (m_plan.beadMinUm) {
            const Measure bead = lengthIn(m_units, *m_plan.beadMinUm);
            column.big = m_units == UnitSystem::Metric ? millimetresText(*m_plan.beadMinUm, 1)
                                                       : measureNumber(bead);
            column.bigUnit = fromUtf8(bead.unit);
        }
        column.under = Card::tr("bead at least");
        if (m_plan.alignLate) {
            column.times = Card::tr("slow from %1").arg(timeText(*m_plan.alignLate));
        }
        reading(column, &WeldPlan::ScalePlan::alignment);
        column.foot = Card::tr("till bead stands");
        return column;
    }

    CardColumn soak() const {
        CardColumn column;
        column.name = Card::tr("soak");
        column.big = m_plan.soak ? leftText(m_plan.soak->target) : kNone;
        column.under = Card::tr("to the signal");
        if (m_plan.soak) {
            column.times =
                Card::tr("%1 to %2").arg(leftText(m_plan.soak->low), goneText(m_plan.soak->high));
        }
        reading(column, &WeldPlan::ScalePlan::soak);
        column.foot = Card::tr("locked");
        return column;
    }

    CardColumn changeover() const {
        CardColumn column;
        column.name = Card::tr("changeover");
        column.big = kNone;
        if (m_plan.changeoverMax) {
            column.big = secondsText(*m_plan.changeoverMax);
            column.bigUnit = Card::tr("s");
        }
        column.under = Card::tr("at most");
        column.scale = Card::tr("free");
        column.band = Card::tr("no load");
        column.foot = Card::tr("faces together");
        return column;
    }

    CardColumn buildUp() const {
        CardColumn column;
        column.name = Card::tr("build-up");
        column.big = kNone;
        if (m_plan.buildUp) {
            column.big = secondsText(m_plan.buildUp->target);
            column.bigUnit = Card::tr("s");
            column.times =
                Card::tr("%1 to %2 s")
                    .arg(secondsText(m_plan.buildUp->low), secondsText(m_plan.buildUp->high));
        }
        column.under = Card::tr("even rise to");
        reading(column, &WeldPlan::ScalePlan::joining);
        column.foot = Card::tr("then lock");
        return column;
    }

    CardColumn cooling() const {
        CardColumn column;
        column.name = Card::tr("cooling");
        column.big = m_plan.cooling ? leftText(m_plan.cooling->atLeast) : kNone;
        column.under = Card::tr("at least");
        reading(column, &WeldPlan::ScalePlan::joining);
        if (m_plan.cooling && !m_plan.cooling->rechecks.empty()) {
            column.foot = Card::tr("read at %1").arg(recheckTimes());
        }
        return column;
    }

    CardSum
    sum(const QString& name, std::int64_t pa, std::int64_t mN, int dragSign,
        std::int64_t setMilli) const {
        CardSum line;
        line.name = name;
        line.force =
            QStringLiteral("%1 × %2 × %3 = %4")
                .arg(pressure(pa), length(m_plan.thicknessUm), length(m_plan.lengthUm), force(mN));
        if (m_bench == nullptr || !m_plan.scale) {
            return line;
        }
        const SpringScale& scale = m_bench->scale;
        const QString unit = fromUtf8(m_plan.scale->unit);
        if (m_plan.scale->unit == "kgf") {
            line.force += QStringLiteral(" (%1)").arg(measureText(kilogramsForceOf(mN)));
        }
        const double rate = inNewtons(scale.rate());
        const double pull =
            static_cast<double>(mN + dragSign * m_plan.dragMn) / 1000.0 + inNewtons(scale.preload);
        const double exact = static_cast<double>(m_plan.scale->zeroMilli) / 1000.0 + pull / rate;
        QString with = dragSign < 0 ? Card::tr("less drag %1").arg(force(m_plan.dragMn))
                                    : Card::tr("with drag %1").arg(force(m_plan.dragMn));
        if (scale.preload != Force()) {
            with +=
                Card::tr(", preload %1").arg(force(std::llround(inNewtons(scale.preload) * 1000)));
        }
        if (m_plan.scale->zeroMilli != 0) {
            with += Card::tr(", zero at %1")
                        .arg(readingText(m_plan.scale->zeroMilli, m_plan.scale->divisionMilli));
        }
        line.reading =
            Card::tr("%1: ÷ %2 = %3 %4, set to %5 %4")
                .arg(
                    with,
                    measureText(rateIn(m_units, std::llround(rate * 1000), m_plan.scale->unit)),
                    numberText(exact, 2), unit, readingText(setMilli, m_plan.scale->divisionMilli));
        return line;
    }

    std::vector<CardSum> sums() const {
        std::vector<CardSum> lines;
        const auto set = [this](ReadingBand WeldPlan::ScalePlan::*which) {
            return m_plan.scale ? ((*m_plan.scale).*which).setMilli : 0;
        };
        const bool same = m_plan.alignmentPa && m_plan.alignmentPa == m_plan.joiningPa;
        if (m_plan.joiningPa && m_plan.joiningMn) {
            lines.push_back(
                sum(same ? Card::tr("Align and join") : Card::tr("Join"), *m_plan.joiningPa,
                    *m_plan.joiningMn, 1, set(&WeldPlan::ScalePlan::joining)));
        }
        if (!same && m_plan.alignmentPa && m_plan.alignmentMn) {
            lines.push_back(
                sum(Card::tr("Align"), *m_plan.alignmentPa, *m_plan.alignmentMn, 1,
                    set(&WeldPlan::ScalePlan::alignment)));
        }
        if (m_plan.soakMaxPa && m_plan.soakMaxMn) {
            lines.push_back(
                sum(Card::tr("Soak, at most"), *m_plan.soakMaxPa, *m_plan.soakMaxMn, -1,
                    set(&WeldPlan::ScalePlan::soak)));
        }
        return lines;
    }

    static QString named(const std::vector<std::string>& values) {
        QStringList names;
        for (const std::string& name : values) {
            names << planValueWord(name);
        }
        return names.join(Card::tr(", "));
    }

    QString notReady() const {
        QStringList sentences;
        if (!m_plan.missing.empty()) {
            sentences << Card::tr("The procedure lacks: %1.").arg(named(m_plan.missing));
        }
        if (!m_plan.unattested.empty()) {
            sentences << Card::tr("Nobody has attested: %1.").arg(named(m_plan.unattested));
        }
        return sentences.isEmpty()
                   ? QString()
                   : Card::tr("Not ready to weld.") + " " + sentences.join(QLatin1Char(' '));
    }

    /// In tenths of a millimetre: an estimate is no finer.
    QString tenths(double mm) const { return length(std::llround(mm * 10) * 100); }

    QString roughly(const HeatRange& mm, double times = 1) const {
        return Card::tr("%1 (%2 to %3)")
            .arg(tenths(mm.likely * times), tenths(mm.low * times), tenths(mm.high * times));
    }

    /// In whole degrees.
    QString degrees(double celsius) const {
        return measureText(temperatureIn(m_units, std::llround(celsius) * 1000));
    }

    QString roughlyDegrees(const HeatRange& celsius) const {
        return Card::tr("%1 (%2 to %3)")
            .arg(degrees(celsius.likely), degrees(celsius.low), degrees(celsius.high));
    }

    void estimates(CardTexts& card) const {
        if (m_heat == nullptr) {
            return;
        }
        const HeatNumbers& numbers = m_heat->numbers;
        if (numbers.meltDepthMm && numbers.skinFacesMeetC) {
            card.estimates << (m_heat->material.crystals
                                   ? Card::tr("The sheets are molten %1 deep after soak, and their "
                                              "skin is at %2 when the faces meet after the longest "
                                              "changeover; it melts at %3.")
                                   : Card::tr("The sheets are soft %1 deep after soak, and their "
                                              "skin is at %2 when the faces meet after the longest "
                                              "changeover; it is soft above %3."))
                                  .arg(
                                      roughly(*numbers.meltDepthMm),
                                      roughlyDegrees(*numbers.skinFacesMeetC),
                                      degrees(m_heat->meltingC));
        }
        fall(card);
        if (numbers.sheetLossMm) {
            card.estimates << Card::tr("Each sheet loses about %1 of its length in this seam: cut "
                                       "it longer by that, and by twice that with a seam at both "
                                       "ends: %2.")
                                  .arg(
                                      roughly(*numbers.sheetLossMm),
                                      roughly(*numbers.sheetLossMm, 2));
        }
        card.estimates << Card::tr("By a model of heat and melt in the sheet, no measurement; in "
                                   "brackets what uncertain inputs make of it.");
    }

    /// How far the reading will fall, in the short line too.
    void fall(CardTexts& card) const {
        const HeatNumbers& numbers = m_heat->numbers;
        const QString loss =
            numbers.sheetLossMm ? tenths(numbers.sheetLossMm->likely) : QStringLiteral("–");
        card.shortEstimate = Card::tr("Estimate: each sheet loses about %1.").arg(loss);
        if (!numbers.readingFallUnits || !m_plan.scale) {
            return;
        }
        const HeatRange& range = *numbers.readingFallUnits;
        const QString unit = fromUtf8(m_plan.scale->unit);
        const bool below =
            static_cast<double>(m_plan.scale->joining.setMilli) / 1e3 - range.likely <
            static_cast<double>(m_plan.scale->joining.lowMilli) / 1e3;
        card.shortEstimate =
            (below ? Card::tr("Estimate: it will fall by about %1 %2, below its band: top it up. "
                              "Each sheet loses %3.")
                   : Card::tr("Estimate: it will fall by about %1 %2 and stay in its band. Each "
                              "sheet loses %3."))
                .arg(numberText(range.likely, 1), unit, loss);
        QString line = Card::tr("Once the wheel is locked the reading will fall by about %1 %2 (%3 "
                                "to %4), as the sheets close up and shrink")
                           .arg(
                               numberText(range.likely, 1), unit, numberText(range.low, 1),
                               numberText(range.high, 1));
        if (m_plan.cooling && !m_plan.cooling->rechecks.empty()) {
            line += Card::tr(": read it at %1").arg(recheckTimes());
        }
        card.estimates << line + QLatin1Char('.');
    }

    QString recheckTimes() const {
        QStringList times;
        for (const Milliseconds at : m_plan.cooling->rechecks) {
            times << goneText(at);
        }
        return times.join(Card::tr(", "));
    }

    QString calibration() const {
        if (m_bench == nullptr) {
            return {};
        }
        if (!m_bench->calibration) {
            return Card::tr("no calibration is on record");
        }
        const CalibrationNote& note = *m_bench->calibration;
        QString text = Card::tr("calibrated %1, due %2")
                           .arg(fullDayWords(note.doneOn), fullDayWords(note.dueOn));
        if (m_plan.scale) {
            const std::int64_t set = m_plan.scale->joining.setMilli;
            if (const auto band = calibrationBand(*m_bench, static_cast<double>(set))) {
                text += Card::tr("; ± %1 at %2 %3 (95 %)")
                            .arg(
                                force(std::llround(inNewtons(*band) * 1000)),
                                readingText(set, m_plan.scale->divisionMilli),
                                fromUtf8(m_plan.scale->unit));
            }
        }
        return text;
    }

    QString amount(std::int64_t value, const std::string& unit) const {
        if (unit == "mC") {
            return measureText(temperatureIn(m_units, value));
        }
        if (unit == "ms") {
            return timeText(Milliseconds(value));
        }
        if (unit == "um") {
            return length(value);
        }
        if (unit == "mN") {
            return force(value);
        }
        const QString scale = m_plan.scale ? fromUtf8(m_plan.scale->unit) : QString();
        return (numberText(static_cast<double>(value) / 1000.0, value % 1000 == 0 ? 0 : 2) + " " +
                scale)
            .trimmed();
    }

    QString warning(const PlanWarning& each) const {
        const QString text = warningText(each);
        if (text == fromUtf8(each.text)) { // it has no words by its code; its numbers are in it
            return inWords(sentenceIn(
                m_units, each.text,
                {m_plan.scale ? std::string_view(m_plan.scale->unit) : "", each.unit == "milli"}));
        }
        if (each.code == "known_gap") {
            return text + " " + inWords(each.text);
        }
        if (each.actual && each.limit) {
            return text + " " +
                   Card::tr("(%1, limit %2)")
                       .arg(amount(*each.actual, each.unit), amount(*each.limit, each.unit));
        }
        return text;
    }

    // One source usually stands behind several values: it is told once, with their names.
    std::vector<CardSource> sources() const {
        std::vector<Source> seen;
        std::vector<CardSource> told;
        for (const PlanSource& entry : m_plan.sources) {
            const auto found = std::find(seen.begin(), seen.end(), entry.source);
            const QString name = planValueWord(entry.value);
            if (found != seen.end()) {
                told[static_cast<std::size_t>(found - seen.begin())].values += ", " + name;
                continue;
            }
            seen.push_back(entry.source);
            told.push_back({name, storedWords(entry.source.text), entry.source.standing});
        }
        return told;
    }

    const WeldPlan& m_plan;
    const Bench* m_bench;
    UnitSystem m_units;
    const HeatEstimate* m_heat;
};

} // namespace

CardTexts
cardTexts(const WeldPlan& plan, const Bench* bench, UnitSystem units, const HeatEstimate* heat) {
    return Writer(plan, bench, units, heat).write();
}

QString measureNumber(const Measure& measure) {
    return fromUtf8(measure.number).replace(QLatin1Char('.'), QLocale().decimalPoint());
}

QString measureText(const Measure& measure) {
    return measureNumber(measure) + QLatin1Char(' ') + fromUtf8(measure.unit);
}

} // namespace seamclock
