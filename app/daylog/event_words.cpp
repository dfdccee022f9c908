#include "app/daylog/event_words.h"

#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/base/overloaded.h"

#include <QCoreApplication>
#include <iterator>

namespace seamclock {
namespace {

struct Events {
    Q_DECLARE_TR_FUNCTIONS(Events)
};

QString mm(std::int64_t um) {
    return millimetresText(um, 1) + QStringLiteral(" mm");
}

QString reading(std::int64_t milli, const WeldPlan& plan) {
    return readingText(milli, plan.scale ? plan.scale->divisionMilli : 100) + QLatin1Char(' ') +
           (plan.scale ? fromUtf8(plan.scale->unit) : QString());
}

QString phaseOf(ReadingPhase phase) {
    switch (phase) {
    case ReadingPhase::Alignment:
        return Events::tr("align");
    case ReadingPhase::Soak:
        return Events::tr("soak");
    case ReadingPhase::Joining:
        return Events::tr("joining");
    case ReadingPhase::Recheck:
        return Events::tr("in cooling");
    }
    return {};
}

QString checkLine(const CheckMade& made, const WeldPlan& plan) {
    QString line = checkWord(made.check);
    if (made.place) {
        line = Events::tr("%1, %2").arg(line, placeWord(*made.place));
    }
    const QString value = made.valueMc      ? celsiusText(*made.valueMc) + QStringLiteral(" °C")
                          : made.valueUm    ? mm(*made.valueUm)
                          : made.valueMilli ? reading(*made.valueMilli, plan)
                                            : QString();
    const QString outcome = made.passed ? Events::tr("passed") : Events::tr("not passed");
    line = value.isEmpty() ? Events::tr("check %1: %2").arg(line, outcome)
                           : Events::tr("check %1: %2, %3").arg(line, value, outcome);
    return made.takenUtc ? Events::tr("%1 (carried over)").arg(line) : line;
}

QString decisionLine(const Decided& made) {
    const QString why = reasonWord(made.reason);
    switch (made.decision) {
    case Decision::Accept:
        return Events::tr("accepted: %1").arg(why);
    case Decision::Repair:
        return Events::tr("to be repaired: %1").arg(why);
    case Decision::CutOut:
        return Events::tr("to be cut out: %1").arg(why);
    }
    return {};
}

QString bridgeLine(const ClockBridged& made) {
    const QString basis = made.basis == BridgeBasis::Confirmed     ? Events::tr("confirmed")
                          : made.basis == BridgeBasis::Unconfirmed ? Events::tr("unconfirmed")
                                                                   : Events::tr("clock ran back");
    return Events::tr("power was off for %1 to %2, %3")
        .arg(timeText(made.lo), timeText(made.hi), basis);
}

} // namespace

QString reasonWord(const std::string& reason) {
    static const std::pair<const char*, const char*> kReasons[] = {
        {"trial_held", QT_TRANSLATE_NOOP("Events", "the trial held")},
        {"trial_failed", QT_TRANSLATE_NOOP("Events", "the trial did not hold")},
        {"looked_good", QT_TRANSLATE_NOOP("Events", "looked at: the bead is good")},
        {"tested", QT_TRANSLATE_NOOP("Events", "a test piece held")},
        {"harmless", QT_TRANSLATE_NOOP("Events", "too small a deviation to matter here")},
        {"bead_fault", QT_TRANSLATE_NOOP("Events", "a fault in the bead")},
        {"out_of_line", QT_TRANSLATE_NOOP("Events", "faces out of line")},
        {"leaks", QT_TRANSLATE_NOOP("Events", "it leaks")},
        {"not_sound", QT_TRANSLATE_NOOP("Events", "not sound by its record")},
        {"test_failed", QT_TRANSLATE_NOOP("Events", "a test piece broke")},
        {"let_it_cool", QT_TRANSLATE_NOOP("Events", "let it cool")}};
    for (const auto& [code, words] : kReasons) {
        if (reason == code) {
            return Events::tr(words);
        }
    }
    const bool typed = reason.find(' ') != std::string::npos;
    return typed ? fromUtf8(reason) : findingWord(reason);
}

QString clockTextToMs(const Instant& at) {
    constexpr std::int64_t kDay = 24LL * 60 * 60 * 1000;
    const std::int64_t local = at.utc.count() + at.offset.count() * 60'000;
    const std::int64_t ofDay = ((local % kDay) + kDay) % kDay;
    return QStringLiteral("%1:%2:%3.%4")
        .arg(ofDay / 3'600'000)
        .arg(ofDay / 60'000 % 60, 2, 10, QLatin1Char('0'))
        .arg(ofDay / 1'000 % 60, 2, 10, QLatin1Char('0'))
        .arg(ofDay % 1'000, 3, 10, QLatin1Char('0'));
}

QString eventWords(const WeldDetail& detail, const WeldPlan& plan) {
    return std::visit(
        Overloaded{
            [](const WeldOpened& d) { return Events::tr("joint %1 opened").arg(d.number); },
            [](const PlanReplaced& d) {
                return Events::tr("plan made anew: %1").arg(reasonWord(d.reason));
            },
            [&](const CheckMade& d) { return checkLine(d, plan); },
            [](const CheckOverridden& d) {
                return Events::tr("check %1 left out: %2")
                    .arg(checkWord(d.check), reasonWord(d.reason));
            },
            [](const AlignmentStarted&) { return Events::tr("pressure on: align"); },
            [](const SoakStarted&) { return Events::tr("pressure off: soak"); },
            [](const PlateOut&) { return Events::tr("plate out"); },
            [](const FacesMet&) { return Events::tr("faces together"); },
            [](const PressureLocked&) { return Events::tr("wheel locked"); },
            [&](const ReadingTaken& d) {
                return Events::tr("scale reading, %1: %2")
                    .arg(phaseOf(d.phase), reading(d.readingMilli, plan));
            },
            [](const ReasonGiven& d) {
                const QString why =
                    d.text && !d.text->empty() ? fromUtf8(*d.text) : reasonWord(d.choice);
                return Events::tr("why %1: %2").arg(findingWord(d.limit), why);
            },
            [](const ReleaseStep& d) { return releaseDoneWord(d.step); },
            [](const JointNumbered&) { return Events::tr("number on the sheet"); },
            [](const StepTakenBack& d) { return Events::tr("event %1 taken back").arg(d.targetN); },
            [](const StepBackdated& d) {
                return Events::tr("event %1 set earlier by %2")
                    .arg(d.targetN)
                    .arg(timeText(d.earlier));
            },
            [](const BeadMeasured& d) {
                const QString measured =
                    Events::tr("bead %1 wide, %2 high, K %3, out of line %4")
                        .arg(mm(d.widthUm), mm(d.heightUm), mm(d.kUm), mm(d.misalignmentUm));
                return d.placeUm ? Events::tr("at %1: %2").arg(mm(*d.placeUm), measured) : measured;
            },
            [](const PhotoAdded& d) { return Events::tr("photo %1").arg(fromUtf8(d.name)); },
            [](const RemarkMade& d) { return Events::tr("remark: %1").arg(fromUtf8(d.text)); },
            [](const CueAcknowledged& d) { return Events::tr("seen: %1").arg(findingWord(d.cue)); },
            [](const ClockBridged& d) { return bridgeLine(d); },
            [](const ClockJumped& d) {
                return Events::tr("the clock was set by %1 s")
                    .arg(numberText(static_cast<double>(d.delta.count()) / 1000.0, 1));
            },
            [](const WeldClosed& d) {
                return Events::tr("closed: %1, rules %2")
                    .arg(verdictWord(std::string_view(d.verdict)).toLower())
                    .arg(d.rules);
            },
            [](const WeldAborted& d) {
                return Events::tr("stopped: %1")
                    .arg(d.text.empty() ? reasonWord(d.reason) : fromUtf8(d.text));
            },
            [](const ValueCorrected& d) {
                return Events::tr("event %1 corrected: %2 instead of %3, %4")
                    .arg(d.targetN)
                    .arg(fromUtf8(d.is), fromUtf8(d.was), fromUtf8(d.reason));
            },
            [](const Graded& d) {
                return Events::tr("grade %1: %2").arg(fromUtf8(d.scheme), fromUtf8(d.level));
            },
            [](const Decided& d) { return decisionLine(d); },
            [](const SignedOff& d) { return Events::tr("signed off, %1").arg(fromUtf8(d.role)); }},
        detail);
}

} // namespace seamclock
