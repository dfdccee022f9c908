#include "app/operate/weld_ending.h"

#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/weld/verdict.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct Operate {
    Q_DECLARE_TR_FUNCTIONS(Operate)
};

QString tr(const char* text) {
    return Operate::tr(text);
}

void beadAsked(Sketch& s) {
    const BeadDraft& draft = s.context.bead;
    NumberFor what = NumberFor::BeadHeight;
    const QString place = beadPlaceText(s.weld);
    if (!place.isEmpty()) {
        s.view.lamp.corner =
            tr("%1 of %2").arg(beadPlacesMeasured(s.weld) + 1).arg(beadPlaces(s.weld));
    }
    if (!draft.heightUm) {
        s.view.sentence = place.isEmpty() ? tr("Measure the bead's height at its worst place.")
                                          : place + tr("bead's height.");
        s.view.lamp.number = tr("Height");
        s.view.lamp.under = tr("of the bead, in mm");
    } else if (!draft.widthUm) {
        s.view.sentence = place.isEmpty() ? tr("Measure its width, over both beads.")
                                          : place + tr("width, over both beads.");
        s.view.lamp.number = tr("Width");
        s.view.lamp.under = tr("of the bead, in mm");
        s.view.seam.beadText = tr("width");
        what = NumberFor::BeadWidth;
    } else if (!draft.kUm) {
        s.view.sentence = place.isEmpty() ? tr("Measure the valley's height above the sheet.")
                                          : place + tr("valley above the sheet.");
        s.view.lamp.number = tr("K value");
        s.view.lamp.under = tr("above 0 mm");
        what = NumberFor::BeadK;
    } else {
        s.view.sentence = place.isEmpty() ? tr("Measure how far the faces are out of line.")
                                          : place + tr("faces out of line.");
        s.view.lamp.number = tr("Step");
        s.view.lamp.under = tr("at most %1 mm").arg(millimetresText(s.plan().misalignmentMaxUm, 1));
        what = NumberFor::Misalignment;
    }
    s.step(tr("Type it in"), AskNumber{what});
    s.view.stop = sideSlot(tr("Not measured"), tr("a remark"), Offer{});
    s.view.stop.offer = AskReason{ReasonFor::Owed, "bead_not_measured"};
}

void ended(Sketch& s, Tone tone, Mark mark) {
    s.seam(SeamView::Phase::Look);
    s.view.seam.beadText.clear();
    s.view.seam.beadNowMm = s.view.seam.beadMm;
    s.scaleFree();
    s.lamp(tone, mark, {});
    s.view.lamp.framed = false;
    s.view.lamp.number = QString::number(s.weld.opened().number);
    s.step(tr("Next seam"), LeaveWeld{});
    s.view.stop.view.look = SlotView::Look::Hidden;
    s.view.back.view.look = SlotView::Look::Hidden;
}

/// Where something is wrong it is worth a picture, also when the weld is over.
void photoOf(Sketch& s) {
    s.view.back = sideSlot(tr("A photo"), tr("of what is wrong"), LookCloser{});
    s.view.earlier.view.look = SlotView::Look::Hidden;
}

/// One tap to the next joint, where one can follow.
void series(Sketch& s) {
    if (!s.context.series) {
        return;
    }
    if (s.context.next.isEmpty()) {
        s.view.stop = sideSlot(tr("Same again"), tr("sheets and drag as now"), NextJoint{});
    } else {
        s.step(tr("Next: %1").arg(s.context.next), NextJoint{});
        s.view.stop = sideSlot(tr("Another seam"), tr("from the job"), LeaveWeld{});
    }
}

void weldAgain(Sketch& s) {
    // A trial joint is no seam that could be made again: the next trial is asked for by itself.
    if (s.context.series && s.weld.opened().type != WeldType::Trial) {
        s.view.stop =
            sideSlot(tr("Weld again"), tr("the same seam"), AskNumber{NumberFor::LengthLost});
    }
}

bool isDecided(const Sketch& s) {
    return std::any_of(s.standing.begin(), s.standing.end(), [](const Retained& event) {
        return std::holds_alternative<Decided>(event.d);
    });
}

} // namespace

void tellRelease(Sketch& s, int stepsDone) {
    const auto& order = s.plan().releaseOrder;
    const std::string& code = order[static_cast<std::size_t>(stepsDone)];
    s.lamp(Tone::Act, Mark::Act, tr("Release"));
    s.view.lamp.number = QString::number(stepsDone + 1);
    s.view.lamp.unit = tr("of %1").arg(order.size());
    s.view.lamp.under = tr("in this bench's order");
    s.view.lamp.under2 = tr("the spring is loaded");
    s.view.cell.time = tr("%1 of %2").arg(stepsDone + 1).arg(order.size());
    s.view.sentence = releaseSentence(code);
    s.step(releaseDoneWord(code), MakeSteps{{ReleaseStep{code}}});
}

void tell(Sketch& s, const Releasing& state) {
    s.view.cell.sign = Sign::Release;
    s.seam(SeamView::Phase::Release);
    s.view.seam.beadNowMm = s.view.seam.beadMm;
    s.scaleOf(s.scalePlan().joining);
    s.readings(ReadingPhase::Joining);
    s.readings(ReadingPhase::Recheck);
    tellRelease(s, state.stepsDone);
}

void tell(Sketch& s, const Inspecting&) {
    s.view.cell.sign = Sign::Look;
    s.view.cell.time = tr("joint %1").arg(s.weld.opened().number);
    s.seam(SeamView::Phase::Look);
    s.view.seam.beadText = tr("bead");
    s.view.seam.beadNowMm = s.view.seam.beadMm;
    s.scaleFree();
    s.lamp(Tone::Act, Mark::Act, tr("Measure"));
    const bool measured = beadPlacesMeasured(s.weld) >= beadPlaces(s.weld);
    if (!measured && !s.context.bead.leftOut) {
        beadAsked(s);
        return;
    }
    const auto owed = reasonsOwed(s.weld);
    if (!owed.empty()) {
        for (const Finding& finding : findings(s.weld)) {
            if (finding.code == owed.front() && finding.grade == Grade::Out) {
                s.view.sentence = tr("Out of limits: %1.").arg(findingText(finding, s.plan()));
            }
        }
        s.lamp(Tone::Act, Mark::Act, tr("Say why"));
        s.view.lamp.number = QString::number(s.weld.opened().number);
        s.view.lamp.under = tr("joint, out of limits");
        s.step(tr("Give the reason"), AskReason{ReasonFor::Owed, owed.front()});
        return;
    }
    if (!s.numbered()) {
        s.view.sentence = tr("Paint joint number %1 on the sheet.").arg(s.weld.opened().number);
        s.lamp(Tone::Act, Mark::Act, tr("Number"));
        s.view.lamp.number = QString::number(s.weld.opened().number);
        s.step(tr("Numbered"), MakeSteps{{JointNumbered{}}});
        return;
    }
    const Verdict verdict = verdictAtClosing(s.weld);
    s.lamp(Tone::Act, Mark::Act, tr("Save"));
    s.view.lamp.number = QString::number(s.weld.opened().number);
    s.view.lamp.under = verdictWord(verdict.word);
    s.view.sentence =
        tr("Joint %1: %2.").arg(s.weld.opened().number).arg(firstReason(verdict, s.plan()));
    s.step(tr("Save the joint"), CloseWeld{});
    s.view.stop = sideSlot(tr("Grade, photo"), tr("by your own eye"), LookCloser{});
}

void tell(Sketch& s, const Closed&) {
    const Verdict now = verdict(s.weld);
    const bool good = now.word == VerdictWord::WithinLimits || now.word == VerdictWord::WithRemarks;
    ended(s, good ? Tone::Normal : Tone::Late, good ? Mark::Done : Mark::Late);
    s.view.lamp.word = good ? tr("Done") : tr("Out of limits");
    s.view.lamp.under = verdictWord(now.word);
    s.view.sentence =
        s.context.notSaved > 0
            ? tr("Joint %1 is not on disk yet. Trying again.").arg(s.weld.opened().number)
            : tr("Joint %1 is saved. %2.").arg(s.weld.opened().number).arg(verdictWord(now.word));
    if (good) {
        series(s);
    } else {
        weldAgain(s);
        photoOf(s);
    }
    if (s.context.series && s.weld.opened().type == WeldType::Trial && !isDecided(s)) {
        s.view.lamp.under2 = tr("trial: not released yet");
        s.view.stop =
            sideSlot(tr("Release it"), tr("the foreman"), AskReason{ReasonFor::Trial, {}});
    }
}

void tell(Sketch& s, const Aborted&) {
    ended(s, Tone::Rest, Mark::Cut);
    const bool joined =
        std::any_of(s.standing.begin(), s.standing.end(), [](const Retained& event) {
            return std::holds_alternative<FacesMet>(event.d);
        });
    s.view.lamp.word = tr("Stopped");
    s.view.lamp.under = joined ? tr("cut out") : tr("not joined");
    if (!joined) {
        s.seam(SeamView::Phase::Prepare);
    }
    s.view.sentence = (joined ? tr("Joint %1 is stopped. Cut it out and plane again.")
                              : tr("Joint %1 is stopped. Cut back and plane again."))
                          .arg(s.weld.opened().number);
    if (joined) {
        weldAgain(s);
    }
    photoOf(s);
}

} // namespace seamclock
