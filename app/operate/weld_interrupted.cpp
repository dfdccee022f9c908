#include "app/operate/weld_interrupted.h"

#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/session/after_cut.h"
#include "core/weld/intent.h"
#include "core/weld/verdict.h"

#include <QCoreApplication>

namespace seamclock {
namespace {

struct Operate {
    Q_DECLARE_TR_FUNCTIONS(Operate)
};

QString tr(const char* text) {
    return Operate::tr(text);
}

} // namespace

void tellPowerWasOff(Sketch& s) {
    const Milliseconds off = s.context.now.utc - s.weld.events.back().at.utc;
    const bool known = off >= Milliseconds(0); // else the wall clock is wrong, and says nothing
    const QString time = known ? leftText(off) : QStringLiteral("?");
    // When the power went nobody knows: the last step is what the log has.
    const QString was =
        known ? tr("Power was off. Last step %1 ago.").arg(time) : tr("Power was off.");
    const bool goesOn = goesOnAfterReboot(s.weld.state);
    s.view.layout = WeldView::Layout::Phase;
    s.seam(goesOn ? SeamView::Phase::Cooling : SeamView::Phase::Prepare);
    s.view.seam.beadNowMm = goesOn ? s.view.seam.beadMm : 0;
    s.scaleOf(s.scalePlan().joining);
    s.view.lamp.number = time;
    s.view.cell.time = time;
    s.view.lamp.under = tr("since the last step");
    s.view.lamp.under2 = known ? tr("by the wall clock") : tr("the wall clock went back");
    s.view.stop.view.look = SlotView::Look::Plain;
    const bool cools = std::holds_alternative<Cooling>(s.weld.state);
    if (goesOn && !cools) { // no limit hangs on how long it was
        s.lamp(Tone::Soon, Mark::Trouble, tr("Trouble"));
        s.view.sentence = was + " " + tr("Go on where it stood.");
        s.step(tr("Seen"), SettleWeld{RebootWord::GoOnUnconfirmed});
        s.view.stop.view.look = SlotView::Look::Hidden;
    } else if (goesOn && bridgeTo(s.weld, s.context.now, true)) {
        s.lamp(Tone::Soon, Mark::Trouble, tr("Trouble"));
        s.view.sentence = was + " " + tr("Cooling has gone on.");
        s.step(tr("Seen"), SettleWeld{RebootWord::GoOnConfirmed});
        s.view.step.view.under = tr("the clock is right");
        s.view.stop = sideSlot(
            tr("Not sure"), tr("count none of it"), SettleWeld{RebootWord::GoOnUnconfirmed});
    } else if (goesOn) {
        // Nobody can vouch for this time, so there is nothing to ask.
        s.lamp(Tone::Soon, Mark::Trouble, tr("Trouble"));
        s.view.sentence = was + " " + tr("It can't be counted as cooling.");
        s.step(tr("Seen"), SettleWeld{RebootWord::GoOnUnconfirmed});
        s.view.step.view.under = tr("count none of it");
        s.view.stop.view.look = SlotView::Look::Hidden;
    } else {
        s.lamp(Tone::Late, Mark::Trouble, tr("Trouble"));
        s.view.sentence = was + " " + tr("The plate has cooled. Cut back and plane.");
        s.step(tr("Stop: cut out"), SettleWeld{RebootWord::Abort});
        s.view.stop = sideSlot(
            tr("Go on"), tr("it is in the record"), SettleWeld{RebootWord::GoOnUnconfirmed});
    }
    s.view.back.view.look = SlotView::Look::Hidden;
}

bool tellOwed(Sketch& s) {
    for (const std::string& code : reasonsOwed(s.weld)) {
        if (code == "cooling" || code == "plate_temperature") {
            continue;
        }
        for (const Finding& finding : findings(s.weld)) {
            if (finding.code != code || finding.grade != Grade::Out) {
                continue;
            }
            QString what = findingText(finding, s.plan());
            if (!what.isEmpty()) {
                what[0] = what[0].toUpper();
            }
            s.view.sentence = tr("%1. Let it cool, or cut it out.").arg(what);
            if (finding.unit == "ms" && finding.actual && finding.limit) {
                const QString took = timeText(Milliseconds(*finding.actual));
                QString name = findingWord(code);
                name[0] = name[0].toUpper();
                s.view.sentence =
                    tr("%1 took %2: out of limits. Let it cool, or cut it out.").arg(name, took);
                s.view.lamp.under2 =
                    tr("%1, limit %2").arg(took, timeText(Milliseconds(*finding.limit)));
            } else {
                s.view.lamp.under2 = tr("out of limits");
            }
            s.step(tr("Let it cool"), MakeSteps{{ReasonGiven{code, "let_it_cool", std::nullopt}}});
            s.view.stop = sideSlot(
                tr("Stop: cut out"), tr("with a reason"), AskReason{ReasonFor::Stop, code});
            return true;
        }
    }
    return false;
}

} // namespace seamclock
