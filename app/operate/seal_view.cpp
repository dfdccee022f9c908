#include "app/operate/seal_view.h"

#include "app/daylog/day_view.h"
#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/weld/verdict.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

namespace seamclock {
namespace {

struct Seal {
    Q_DECLARE_TR_FUNCTIONS(Seal)
};

QString tr(const char* text) {
    return Seal::tr(text);
}

QString dayText(const std::string& day) {
    const QDate date = QDate::fromString(fromUtf8(day), Qt::ISODate);
    return QLocale().toString(date, QLocale::LongFormat);
}

SealView::Line jointsLine(const DayClosing& day) {
    SealView::Line line;
    if (day.joints == 0) {
        line.mark = Mark::Free;
        line.text = tr("No joint on this day");
        return line;
    }
    QStringList parts;
    for (const auto& [verdict, count] : day.verdicts) {
        const QString word = verdict.empty() ? tr("still open") : midSentence(verdictWord(verdict));
        parts << tr("%1 %2").arg(count).arg(word);
    }
    // The worst of them gives the mark; one that is open has none yet.
    VerdictLook look =
        day.verdicts.count("") > 0 ? VerdictLook{} : lookOf(VerdictWord::WithinLimits);
    for (const VerdictWord word : {VerdictWord::Incomplete, VerdictWord::OutOfLimits}) {
        if (day.verdicts.count(std::string(toString(word))) > 0) {
            look = lookOf(word);
        }
    }
    line.mark = look.mark;
    line.tone = look.tone;
    line.text = day.joints == 1 ? tr("1 joint") : tr("%1 joints").arg(day.joints);
    line.under = parts.join(QStringLiteral(", "));
    return line;
}

SealView::Line sealLine(const DayClosing& day) {
    SealView::Line line;
    if (!day.seal) {
        line.mark = Mark::Open;
        line.text = tr("Not sealed yet");
        return line;
    }
    line.mark = day.behind > 0 ? Mark::Open : Mark::Done;
    line.tone = day.behind > 0 ? Tone::Rest : Tone::Normal;
    line.text = tr("Sealed at %1 by %2").arg(wallClockText(day.seal->at), fromUtf8(day.seal->by));
    line.under = day.behind == 0 ? tr("rows 1 to %1").arg(day.seal->toRow)
                 : day.behind == 1
                     ? tr("rows 1 to %1; 1 came since").arg(day.seal->toRow)
                     : tr("rows 1 to %1; %2 came since").arg(day.seal->toRow).arg(day.behind);
    return line;
}

} // namespace

bool stepSeals(const SealStage& stage) {
    return !stage.day.seal || (stage.day.behind > 0 && stage.savedTo.isEmpty());
}

SealView sealView(const SealStage& stage) {
    SealView view;
    const DayClosing& day = stage.day;
    view.title = dayText(day.day);
    view.lines.push_back(jointsLine(day));
    for (const QString& open : stage.open) {
        view.lines.push_back(
            {Mark::Open, Tone::Rest, tr("%1 is open").arg(open),
             tr("sealed as far as it is; the rest comes behind")});
    }
    if (day.notOnDisk > 0) {
        view.lines.push_back(
            {Mark::Trouble, Tone::Soon,
             day.notOnDisk == 1 ? tr("1 row is not on disk yet")
                                : tr("%1 rows are not on disk yet").arg(day.notOnDisk),
             tr("the seal waits for them")});
    }
    view.lines.push_back(sealLine(day));
    if (day.seal) {
        view.groupsTitle = tr("Fingerprint of the seal");
        view.groups = fromUtf8(day.seal->fingerprint).split(QLatin1Char(' '));
        view.why = tr("Print or mail it today: whoever has this tablet could seal anew, and only "
                      "a fingerprint elsewhere shows it.");
    } else {
        view.groupsTitle = tr("What the seal does");
        view.why = tr("It signs all rows up to now with your key. Its fingerprint then goes on "
                      "paper or by mail: on this tablet alone it proves nothing to others.");
    }
    view.stop =
        plainSlot(tr("Close"), stage.fromLog ? tr("back to the log") : tr("back to the desk"));
    view.back = plainSlot(tr("Save report"), tr("into a file"));
    if (stage.working) {
        view.back = hiddenSlot();
        view.stop.look = SlotView::Look::Gone;
        view.step = stepSlot(tr("One moment"), false);
    } else if (stepSeals(stage)) {
        view.step = stepSlot(day.seal ? tr("Seal again") : tr("Seal the day"));
    } else if (stage.savedTo.isEmpty()) {
        view.back = hiddenSlot();
        view.step = stepSlot(tr("Save report"));
    } else {
        view.step = stepSlot(stage.fromLog ? tr("Back to the log") : tr("Leave the desk"));
    }
    if (!stage.refused.isEmpty()) {
        view.sentence = stage.refused;
    } else if (!stage.savedTo.isEmpty()) {
        view.sentence = tr("Saved: %1").arg(stage.savedTo);
    }
    return view;
}

} // namespace seamclock
