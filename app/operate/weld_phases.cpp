#include "app/operate/weld_phases.h"

#include "app/operate/weld_ending.h"
#include "app/operate/weld_interrupted.h"
#include "app/text/numbers.h"
#include "core/weld/back_off.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

constexpr Milliseconds kGetReady{10'000};
// From when the screen asks whether the bead stands, where this bench has no median yet [practice].
constexpr Milliseconds kBeadAsked{20'000};
// A reading that is due sooner comes before the number that is painted on the sheet [practice].
constexpr Milliseconds kNumberBefore{15'000};

struct Operate {
    Q_DECLARE_TR_FUNCTIONS(Operate)
};

QString tr(const char* text) {
    return Operate::tr(text);
}

bool lowReading(const Sketch& s) {
    const Retained* last = nullptr;
    for (const Retained& event : s.standing) {
        const auto* taken = std::get_if<ReadingTaken>(&event.d);
        if (taken != nullptr && taken->phase == ReadingPhase::Recheck) {
            last = &event;
        }
    }
    return last != nullptr &&
           std::get<ReadingTaken>(last->d).readingMilli < s.scalePlan().joining.lowMilli;
}

/// How long alignment took here before: the median by which the plan finds it late, and the range
/// of the same welds.
QString usualText(const Sketch& s) {
    if (!s.plan().alignMedian) {
        return tr("the bead ends it, not the clock");
    }
    const Milliseconds median = *s.plan().alignMedian;
    const auto& usual = s.context.usual;
    if (usual && usual->fastest <= median && median <= usual->slowest) {
        return tr("median %1, %2 to %3")
            .arg(goneText(median), goneText(usual->fastest), goneText(usual->slowest));
    }
    return tr("median %1").arg(goneText(median));
}

void recheckAsked(Sketch& s, const Cooling& state) {
    std::optional<Milliseconds> due; // of the first that is open
    for (std::size_t i = 0; i < state.rechecks.size(); ++i) {
        const bool closed = i + 1 < state.rechecks.size() && s.t.lo >= state.rechecks[i + 1].lo;
        if (!state.recheckSettled[i] && !closed) {
            due = state.rechecks[i].lo - s.t.lo;
            break;
        }
    }
    if (!s.numbered() && (!due || *due > kNumberBefore)) {
        s.view.sentence =
            tr("Leave it locked. Paint number %1 on the sheet.").arg(s.weld.opened().number);
        s.step(tr("Numbered"), MakeSteps{{JointNumbered{}}}, SlotView::Look::Waiting);
        s.view.step.view.under = due ? tr("scale is read in %1").arg(leftText(*due))
                                     : tr("joint %1").arg(s.weld.opened().number);
        return;
    }
    if (!due) {
        s.view.sentence = s.context.meanwhile.isEmpty()
                              ? tr("Leave it locked. Nothing else to do.")
                              : tr("Leave it locked. %1").arg(s.context.meanwhile);
        s.step(tr("Scale reading"), AskNumber{NumberFor::Recheck}, SlotView::Look::Waiting);
        s.view.step.view.under = tr("if you like");
        return;
    }
    if (*due > Milliseconds(0)) {
        s.view.sentence = tr("Leave it locked. Read the scale in %1.").arg(leftText(*due));
        s.step(tr("Scale reading"), AskNumber{NumberFor::Recheck}, SlotView::Look::Waiting);
        s.view.step.view.under = tr("due in %1").arg(leftText(*due));
        return;
    }
    s.lamp(Tone::Soon, Mark::Soon, tr("Read"));
    s.view.lamp.under2 = tr("%1 set").arg(s.readingWithUnit(s.scalePlan().joining.setMilli));
    s.view.sentence = tr("Read scale %1 now and type it in.").arg(s.context.letter);
    s.step(tr("Scale reading"), AskNumber{NumberFor::Recheck});
}

void coolingOver(Sketch& s, const Cooling& state) {
    s.view.lamp.under = tr("cooling is over");
    s.view.lamp.under2 = tr("joint %1").arg(s.weld.opened().number);
    if (state.doneAcknowledged) {
        s.view.stop.view.look = SlotView::Look::Gone;
        s.view.stop.offer = {};
    } else {
        s.view.stop = sideSlot(
            tr("Heard it"), tr("no more chimes"), MakeSteps{{CueAcknowledged{"cooling_done"}}});
    }
    if (!s.numbered()) {
        s.view.sentence = tr("Cooling is over. Number on the sheet? Then release.");
        s.step(tr("Numbered"), MakeSteps{{JointNumbered{}}});
        s.view.step.view.under = tr("joint %1").arg(s.weld.opened().number);
        return;
    }
    tellRelease(s, 0);
}

} // namespace

void tell(Sketch& s, const Aligning& state) {
    const Milliseconds gone = s.t.lo - state.from.lo;
    s.view.cell.sign = Sign::Align;
    s.seam(SeamView::Phase::Align);
    s.heat();
    s.scaleOf(s.scalePlan().alignment);
    s.readings(ReadingPhase::Alignment);
    s.view.lamp.number = goneText(gone);
    s.view.cell.time = goneText(gone);
    const QString bead = millimetresText(s.plan().beadMinUm.value_or(0), 1);
    const bool late = s.plan().alignLate && s.t.hi - state.from.hi >= *s.plan().alignLate;
    const Milliseconds asked = s.plan().alignMedian ? *s.plan().alignMedian / 2 : kBeadAsked;
    const QString down = s.readingWithUnit(s.scalePlan().soak.setMilli);
    if (late) {
        s.lamp(Tone::Soon, Mark::Trouble, tr("Slow"));
        s.view.sentence = tr("Bead is slow. Is the plate cold or dirty?");
    } else {
        s.lamp(Tone::Act, Mark::Act, tr("Watch"));
        s.view.sentence = gone < asked
                              ? tr("Wait for a %1 mm bead, all along, top and bottom.").arg(bead)
                              : tr("Bead all along? Turn down to %1 and lock.").arg(down);
    }
    s.view.lamp.under = tr("for a %1 mm bead").arg(bead);
    s.view.lamp.under2 =
        backOffIn(s.standing, s.plan()) ? tr("backed off after overshoot") : usualText(s);
    s.view.stop = sideSlot(
        tr("Stop this weld"), tr("or: turned too far"),
        AskReason{ReasonFor::Stop, kStopInAlignment});
    s.step(
        tr("Pressure is off"),
        MakeSteps{{SoakStarted{}, ReadingTaken{ReadingPhase::Soak, s.scalePlan().soak.setMilli}}},
        gone < asked ? SlotView::Look::Waiting : SlotView::Look::Act);
    s.view.step.view.under = tr("bead stands, at %1").arg(down);
    // Before the bead is asked for nobody is about to begin a soak.
    if (s.context.clash && gone >= asked) {
        s.waitForHands(
            tr("Wait %2 before soak on %1. Two hands, one plate.").arg(s.context.letter, "%1"));
        s.view.lamp.under2 = tr("alignment: %1").arg(goneText(gone));
    }
}

void tell(Sketch& s, const Soaking& state) {
    const Milliseconds whole = state.due.lo - state.from.lo;
    // Over a bridge the minimum is counted with the shorter end, the maximum with the longer.
    const Milliseconds left = state.due.lo - s.t.lo;
    const Milliseconds over = s.t.hi - state.due.hi;
    const Milliseconds high = s.plan().soak->high - s.plan().soak->target;
    s.view.cell.sign = Sign::Soak;
    s.seam(SeamView::Phase::Soak);
    s.heat();
    s.view.seam.beadNowMm = s.view.seam.beadMm;
    s.scaleOf(s.scalePlan().soak);
    s.readings(ReadingPhase::Soak);
    s.view.lamp.fraction = shareByTheSecond(left, whole);
    s.view.lamp.number = leftText(left);
    s.view.lamp.under = tr("left of %1 soak").arg(goneText(whole));
    s.view.lamp.under2 =
        tr("then: plate out within %1 s").arg(secondsText(*s.plan().changeoverMax));
    SlotView::Look look = SlotView::Look::Act;
    if (left > kGetReady) {
        s.lamp(Tone::Normal, Mark::Wait, tr("Wait"));
        s.view.sentence = tr("Scale at %1, wheel locked. Wait for the signal.")
                              .arg(s.readingWithUnit(s.scalePlan().soak.setMilli));
        look = SlotView::Look::Waiting;
    } else if (left > Milliseconds(0)) {
        s.lamp(Tone::Soon, Mark::Soon, tr("Get ready"));
        s.view.sentence = tr("Hands on the plate and the wheel. Wait for zero.");
        s.view.lamp.under = tr("plate burns, tables crush");
        look = SlotView::Look::Waiting;
    } else if (over <= high) {
        s.lamp(Tone::Act, Mark::Act, tr("Now"));
        s.view.sentence = tr("Sheets apart, plate out, faces together.");
        s.view.lamp.under = tr("soak is over");
    } else {
        s.lamp(Tone::Late, Mark::Late, tr("Late"));
        s.view.sentence = tr("Soak is over by %1 s. Plate out now.").arg(over.count() / 1000);
        s.view.lamp.number = "+" + goneText(over);
        s.view.lamp.under = tr("over the soak of %1").arg(goneText(whole));
    }
    s.view.cell.time = s.view.lamp.number;
    s.step(tr("Plate out"), MakeSteps{{PlateOut{}}}, look);
    if (look == SlotView::Look::Waiting) {
        s.view.step.view.under = tr("at the signal");
    }
}

void tell(Sketch& s, const ChangingOver& state) {
    const Milliseconds gone = s.t.hi - state.from.hi;
    const Milliseconds limit = state.limit.hi - state.from.hi;
    const bool late = gone > limit;
    s.view.layout = WeldView::Layout::Changeover;
    s.view.cell.sign = Sign::Changeover;
    s.seam(SeamView::Phase::Changeover);
    s.view.seam.beadNowMm = s.view.seam.beadMm;
    s.scaleFree();
    const QString number = QString::number(std::max<std::int64_t>(gone.count(), 0) / 1000);
    const QString limitText = secondsText(limit);
    s.lamp(
        late ? Tone::Late : Tone::Act, late ? Mark::Late : Mark::Act,
        late ? tr("Late") : tr("Now"));
    s.view.lamp.number = number;
    ChangeoverView& field = s.view.changeover;
    field.elapsedMs = static_cast<double>(gone.count());
    field.limitMs = static_cast<double>(limit.count());
    field.late = late;
    field.number = number;
    field.order = late ? tr("Faces together now") : tr("Plate out, faces together");
    field.of = late ? tr("s, limit %1 s").arg(limitText) : tr("of %1 s").arg(limitText);
    field.limitWord = tr("limit");
    field.remark = late ? tr("The limit is passed. It counts, and is in the record.") : QString();
    field.lessMotion = s.context.lessMotion;
    field.frameWide = s.view.lamp.frameWide;
    field.seam = s.view.seam;
    field.seam.progress = share(gone, limit);
    s.view.cell.time = number + " s";
    s.view.cell.plain = true;
    s.view.sentence =
        late ? tr("Faces together now. The limit is passed.") : tr("Plate out, faces together");
    s.step(tr("Faces together"), MakeSteps{{FacesMet{}}}, SlotView::Look::White);
    s.view.step.view.onLate = late;
}

void tell(Sketch& s, const BuildingUp& state) {
    const Milliseconds gone = s.t.hi - state.from.hi;
    const TimeBand& times = *s.plan().buildUp;
    const ReadingBand& band = s.scalePlan().joining;
    s.view.cell.sign = Sign::BuildUp;
    s.seam(SeamView::Phase::BuildUp);
    s.view.seam.beadNowMm = s.view.seam.beadMm;
    s.view.seam.progress = 1;
    s.scaleOf(band);
    s.readings(ReadingPhase::Joining);
    s.view.cell.time = tr("%1 s").arg(gone.count() / 1000);
    const QString set = s.readingWithUnit(band.setMilli);
    if (state.lastReading && band.holds(*state.lastReading)) {
        s.lamp(Tone::Act, Mark::Act, tr("Lock"));
        s.view.lamp.number = s.reading(*state.lastReading);
        s.view.lamp.unit = s.unit();
        s.view.lamp.under = tr("stays on the scale");
        s.view.sentence = tr("Lock the wheel at %1.").arg(s.readingWithUnit(*state.lastReading));
        s.step(tr("Wheel is locked"), MakeSteps{{PressureLocked{}}});
        return;
    }
    const MakeSteps reached{{ReadingTaken{ReadingPhase::Joining, band.setMilli}}};
    const Milliseconds over = gone - times.target;
    if (over <= Milliseconds(0)) {
        // The mark to follow rises evenly from zero to the set reading in the table's time.
        const std::int64_t rise = band.setMilli - s.scalePlan().zeroMilli;
        const std::int64_t division = s.scalePlan().divisionMilli;
        const std::int64_t mark =
            s.scalePlan().zeroMilli +
            rise * gone.count() / std::max<std::int64_t>(times.target.count(), 1);
        s.lamp(Tone::Act, Mark::Act, tr("Follow"));
        s.view.lamp.number = s.reading(mark / division * division);
        s.view.scale.follow = static_cast<double>(mark) / 1000.0;
        s.view.lamp.unit = s.unit();
        s.view.lamp.under = tr("evenly to %1").arg(set);
        s.view.lamp.under2 =
            tr("%1 of %2 s").arg(gone.count() / 1000).arg(secondsText(times.target));
        s.view.sentence = tr("Turn the wheel evenly. Keep to the mark.");
    } else {
        const bool late = gone > times.high;
        s.lamp(
            late ? Tone::Late : Tone::Soon, late ? Mark::Late : Mark::Soon,
            late ? tr("Late") : tr("Go on"));
        s.view.lamp.number = "+" + QString::number(over.count() / 1000) + " s";
        s.view.lamp.under = tr("evenly to %1").arg(set);
        s.view.lamp.under2 = tr("over %1 s").arg(secondsText(times.target));
        s.view.sentence = tr("Go on evenly to %1. Do not jerk.").arg(set);
    }
    s.step(tr("At %1").arg(set), reached);
}

void tell(Sketch& s, const Cooling& state) {
    const Milliseconds whole = state.due.lo - state.from.lo;
    const Milliseconds left = state.due.lo - s.t.lo;
    const ReadingBand& band = s.scalePlan().joining;
    s.view.layout = WeldView::Layout::Cooling;
    s.view.cell.sign = Sign::Cooling;
    s.seam(SeamView::Phase::Cooling);
    s.view.seam.beadNowMm = s.view.seam.beadMm;
    s.scaleOf(band);
    s.readings(ReadingPhase::Joining);
    s.readings(ReadingPhase::Recheck);
    s.view.lamp.fraction = shareByTheSecond(left, whole);
    s.view.lamp.number = leftText(left);
    s.view.cell.time = leftText(left);
    s.view.lamp.under = tr("left of %1 cooling").arg(goneText(whole));
    s.view.lamp.under2 = left > Milliseconds(0)
                             ? tr("out at %1").arg(wallClockText(s.context.now, left))
                             : QString();
    s.view.stop = sideSlot(
        tr("Take out early"), tr("with a reason"), AskReason{ReasonFor::EarlyRelease, "cooling"});
    const bool over = left <= Milliseconds(0);
    if (over) {
        s.lamp(Tone::Normal, Mark::Done, tr("Done"));
    } else {
        s.lamp(Tone::Normal, Mark::Wait, tr("Wait"));
    }
    if (tellOwed(s)) {
        return;
    }
    if (over) {
        coolingOver(s, state);
        return;
    }
    if (lowReading(s)) {
        const QString set = s.readingWithUnit(band.setMilli);
        s.lamp(Tone::Act, Mark::Act, tr("Set"));
        s.view.lamp.number = s.reading(band.setMilli);
        s.view.lamp.unit = s.unit();
        s.view.lamp.under = tr("on scale %1").arg(s.context.letter);
        s.view.lamp.under2 = tr("cooling: %1 left").arg(leftText(left));
        s.view.sentence = tr("Reading is below %1. Turn up to %2.")
                              .arg(s.view.scale.lowText + " " + s.unit(), set);
        s.step(
            tr("At %1").arg(set), MakeSteps{{ReadingTaken{ReadingPhase::Recheck, band.setMilli}}});
        return;
    }
    recheckAsked(s, state);
}

} // namespace seamclock
