#include "app/practice/result_view.h"

#include "app/daylog/day_view.h"
#include "app/practice/practice_text.h"
#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"
#include "core/practice/practice_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr std::size_t kMostNamed = 2; // of several of a kind in one row

struct PracticeWords {
    Q_DECLARE_TR_FUNCTIONS(PracticeWords)
};

QString tr(const char* text) {
    return PracticeWords::tr(text);
}

/// "a; b; and 2 more"
QString several(const QStringList& all) {
    const auto count = static_cast<std::size_t>(all.size());
    if (count <= kMostNamed) {
        return all.join(QStringLiteral("; "));
    }
    return tr("%1; and %2 more")
        .arg(all.mid(0, static_cast<int>(kMostNamed)).join(QStringLiteral("; ")))
        .arg(count - kMostNamed);
}

QString timed(const QString& what, Milliseconds at) {
    return tr("%1, at %2").arg(what, goneText(at));
}

void limits(ResultView& view, const PracticeScore& score) {
    view.rows.push_back(
        {tr("In limits"), tr("%1 of %2 values").arg(score.inLimits).arg(score.judged),
         score.inLimits < score.judged});
}

void reactions(ResultView& view, const PracticeScore& score) {
    QStringList all;
    for (const CueReaction& one : score.reactions) {
        const double seconds = static_cast<double>(one.took.count()) / 1e3;
        all
            << (seconds < 0 ? tr("%1: %2 s before").arg(cueWord(one.cue), numberText(-seconds, 1))
                            : tr("%1: after %2 s").arg(cueWord(one.cue), numberText(seconds, 1)));
        view.all.push_back({tr("Answer to a signal"), timed(all.back(), one.at), false});
    }
    view.rows.push_back(
        {tr("Answer to a signal"), all.isEmpty() ? tr("none was due") : several(all), false});
}

void readings(ResultView& view, const PracticeScore& score) {
    QStringList off;
    for (const ReadingError& one : score.readings) {
        const bool isOff = std::abs(one.said - one.was) > one.allowed;
        const QString text = tr("%1: told %2, it was %3")
                                 .arg(
                                     readingWord(one.what), valueText(one.said, one.unit),
                                     valueText(one.was, one.unit));
        if (isOff) {
            off << text;
        }
        view.all.push_back({tr("Reading"), timed(text, one.at), isOff, !isOff});
    }
    view.rows.push_back(
        {tr("Readings"),
         !off.isEmpty()               ? several(off)
         : score.readings.empty()     ? tr("none was typed")
         : score.readings.size() == 1 ? tr("the one was right")
                                      : tr("all %1 were right").arg(score.readings.size()),
         !off.isEmpty()});
}

void order(ResultView& view, const PracticeScore& score) {
    QStringList all;
    for (const OrderError& one : score.order) {
        all << orderWord(one.code);
        view.all.push_back({tr("Order of steps"), timed(all.back(), one.at), true});
    }
    all.removeDuplicates();
    view.rows.push_back(
        {tr("Order of steps"), all.isEmpty() ? tr("kept") : several(all), !all.isEmpty()});
}

void noticed(ResultView& view, const PracticeScore& score) {
    for (const NoticeScore& one : score.notice) {
        view.rows.push_back(
            {wrongWord(one.what),
             one.at ? tr("noticed at %1").arg(goneText(*one.at)) : tr("was not noticed"), !one.at});
        view.all.push_back(view.rows.back());
        view.all.back().right = one.at.has_value();
    }
    QStringList alarms;
    for (const Wrong wrong : score.falseAlarms) {
        alarms << wrongWord(wrong);
        view.all.push_back({tr("Nothing wrong there"), alarms.back(), true});
    }
    if (!alarms.isEmpty()) {
        view.rows.push_back({tr("Nothing wrong there"), several(alarms), true});
    }
}

bool isJoined(const BenchView& view) {
    return std::any_of(view.stations.begin(), view.stations.end(), [](const StationView& station) {
        return station.joined.has_value();
    });
}

/// What the bead doesn't show, beside the plan's.
void physics(ResultView& view, const PracticeScore& score) {
    if (!isJoined(score.made.end) || !isJoined(score.planned.end)) {
        return;
    }
    view.rows.push_back(
        {tr("Melt left"),
         tr("%1 mm, planned %2 mm")
             .arg(
                 numberText(meltLeftMm(score.made.end), 1),
                 numberText(meltLeftMm(score.planned.end), 1)),
         false});
    view.rows.push_back(
        {tr("Weld plane at release"),
         tr("%1 °C, planned %2 °C")
             .arg(
                 numberText(weldPlaneC(score.made.release), 0),
                 numberText(weldPlaneC(score.planned.release), 0)),
         false});
}

int middleOf(const BenchView& view) {
    return static_cast<int>(view.stations.size()) / 2;
}

/// The place at which the joint is worst, else the middle.
int worstPlace(const JointPhysics& joint) {
    for (std::size_t i = 0; i < joint.bend.stations.size(); ++i) {
        if (!joint.bend.stations[i].ductile) {
            return static_cast<int>(i);
        }
    }
    return middleOf(joint.end);
}

QString jointText(const JointPhysics& joint, int place) {
    const auto at = static_cast<std::size_t>(place);
    if (at >= joint.end.stations.size()) {
        return {};
    }
    const StationView& end = joint.end.stations[at];
    const QString where = placeName(place, static_cast<int>(joint.end.stations.size()));
    if (!end.joined) {
        return tr("%1: not joined").arg(where);
    }
    return tr("%1: skin %2 °C and melt %3 mm as the faces met, bead %4 / %5 mm, K %6 mm")
        .arg(
            where, numberText(end.joined->skinC, 0), numberText(end.joined->meltMm, 1),
            numberText(end.beadTopMm, 1), numberText(end.beadBottomMm, 1),
            numberText(std::min(end.valleyTopMm, end.valleyBottomMm), 1));
}

BenchDrawing jointDrawing(const JointPhysics& joint, const BenchSetup& setup, int place) {
    BenchDrawing drawing = practiceBenchView(joint.end, setup, place, nullptr, {});
    drawing.lifted = true; // as it lies: no clamps
    drawing.plateInside = 0;
    return drawing;
}

} // namespace

ResultView resultView(
    const Lesson& lesson, const BenchSetup& setup, const WeldPlan& plan,
    const PracticeScore& score) {
    ResultView view;
    const VerdictLook look = lookOf(score.verdict.word);
    view.mark = look.mark;
    view.tone = look.tone;
    view.verdict = verdictWord(score.verdict.word);
    if (!score.verdict.findings.empty()) {
        view.reason = firstReason(score.verdict, plan);
    }
    limits(view, score);
    reactions(view, score);
    readings(view, score);
    order(view, score);
    noticed(view, score);
    std::stable_partition(
        view.all.begin(), view.all.end(), [](const ResultView::Row& row) { return row.off; });
    physics(view, score);
    for (const LapseFinding& finding : score.lapses) {
        view.lapses.push_back(
            {lapseWord(finding.lapse), inWords(lapseSentence(finding)) + QLatin1Char(' ') +
                                           inWords(whyItMatters(finding.lapse))});
    }
    view.after = inWords(lesson.after);
    if (!score.made.end.stations.empty() && !score.planned.end.stations.empty()) {
        const int place = worstPlace(score.made);
        view.made = jointDrawing(score.made, setup, place);
        view.planned = jointDrawing(score.planned, setup, place);
        // In one scale, or a fat bead would look like a good one.
        const double most = std::max(
            {view.made.topMm, view.made.bottomMm, view.made.beadMm, view.planned.topMm,
             view.planned.bottomMm});
        view.made.beadMm = most;
        view.planned.beadMm = most;
        view.madeText = jointText(score.made, place);
        view.plannedText = jointText(score.planned, place);
    }
    for (const StationBend& station : score.made.bend.stations) {
        view.bend.push_back(
            {station.ductile,
             station.reasons.empty() ? QString() : bendWord(station.reasons.front())});
    }
    view.good = score.made.bend.ductile && (score.verdict.word == VerdictWord::WithinLimits ||
                                            score.verdict.word == VerdictWord::WithRemarks);
    view.bendText = score.made.bend.ductile
                        ? tr("Bend test, front to back: the joint bends everywhere.")
                    : score.made.end.stations.empty() || isJoined(score.made.end)
                        ? tr("Bend test, front to back: the joint breaks.")
                        : tr("The faces never met: there is nothing to bend.");
    return view;
}

HistoryWords historyWords(const PracticeLine& line) {
    HistoryWords words;
    words.made = tr("%1, joint %2").arg(inWords(line.lessonTitle)).arg(line.number);
    words.when = fullDayWords(toIsoDate(line.at.utc, line.at.offset)) + QLatin1Char(' ') +
                 wallClockText(line.at);
    if (line.brokenOff) {
        words.how = line.left ? tr("broken off: practice was closed in mid-weld")
                              : tr("broken off: the program ended in mid-weld");
        return words;
    }
    words.how = tr("%1, %2 of %3 in limits, %4")
                    .arg(midSentence(verdictWord(line.verdict)))
                    .arg(line.inLimits)
                    .arg(line.judged)
                    .arg(
                        line.ductile                              ? tr("bends")
                        : line.verdict == VerdictWord::Incomplete ? tr("stopped")
                                                                  : tr("breaks"));
    QStringList hands;
    if (line.reaction) {
        hands << tr("answered in %1 s")
                     .arg(numberText(static_cast<double>(line.reaction->count()) / 1e3, 1));
    }
    if (line.readingErrors > 0) {
        hands << tr("readings off: %1").arg(line.readingErrors);
    }
    if (line.orderErrors > 0) {
        hands << tr("out of order: %1").arg(line.orderErrors);
    }
    if (line.toNotice > 0) {
        hands << tr("noticed %1 of %2").arg(line.noticed).arg(line.toNotice);
    }
    words.hands = hands.join(QStringLiteral(", "));
    QStringList lapses;
    for (const Lapse lapse : line.lapses) {
        lapses << lapseWord(lapse);
    }
    words.lapses = lapses.join(QStringLiteral(", "));
    words.few = several(lapses);
    return words;
}

} // namespace seamclock
