#include "app/practice/practice_record.h"

#include "app/practice/practice_strip.h"
#include "app/practice/result_view.h"

#include <QCoreApplication>
#include <algorithm>

namespace seamclock {
namespace {

struct PracticeRecord {
    Q_DECLARE_TR_FUNCTIONS(PracticeRecord)
};

QString tr(const char* text) {
    return PracticeRecord::tr(text);
}

} // namespace

PracticeSheet
practiceSheet(const std::vector<PracticeLine>& lines, const QString& who, const QString& printed) {
    PracticeSheet sheet;
    sheet.title = tr("Practice record");
    sheet.word = practiceWord();
    sheet.caution = tr("Practice record. Not a certificate.");
    sheet.who = who.isEmpty() ? tr("Trainee: nobody was named") : tr("Trainee: %1").arg(who);
    sheet.printed = tr("printed %1").arg(printed);
    const auto good = std::count_if(lines.begin(), lines.end(), [](const PracticeLine& line) {
        return line.ductile && (line.verdict == VerdictWord::WithinLimits ||
                                line.verdict == VerdictWord::WithRemarks);
    });
    const auto broken = std::count_if(
        lines.begin(), lines.end(), [](const PracticeLine& line) { return line.brokenOff; });
    const auto made = static_cast<std::ptrdiff_t>(lines.size()) - broken;
    sheet.summary =
        made == 1 ? tr("One weld at a virtual bench; %1 within limits and with a joint that bends.")
                        .arg(good)
                  : tr("%1 welds at a virtual bench; %2 within limits and with a joint that bends.")
                        .arg(made)
                        .arg(good);
    if (broken > 0) {
        sheet.summary += QLatin1Char(' ') + tr("Besides, %1 broken off in mid-weld.").arg(broken);
    }
    sheet.heads[0] = tr("When");
    sheet.heads[1] = tr("What");
    sheet.heads[2] = tr("How it went");
    sheet.heads[3] = tr("What was wrong");
    for (const PracticeLine& line : lines) {
        const HistoryWords words = historyWords(line);
        sheet.rows.push_back(
            {words.when, words.made,
             words.hands.isEmpty() ? words.how : words.how + QStringLiteral("; ") + words.hands,
             words.lapses.isEmpty() ? tr("–") : words.lapses});
    }
    sheet.page = tr("page %1 of %2");
    sheet.foot = tr("Seamclock, practice: physics in a model, no plastic. It can't teach the feel "
                    "of a wheel, and it proves no skill at a real bench.");
    return sheet;
}

} // namespace seamclock
