// What is said of a practice weld when it is over, as a pure function of its score: the verdict in
// the day list's words, what the hands did, what the physics says and why, and the two joints to
// draw beside each other.
#pragma once

#include "app/parts/mark.h"
#include "app/parts/theme.h"
#include "app/practice/bench_drawing.h"
#include "core/practice/practice_history.h"

#include <QString>
#include <vector>

namespace seamclock {

struct ResultView {
    struct Row {
        QString item;
        QString value;
        bool off = false;   // it ought to be otherwise
        bool right = false; // it is as it ought to be

        bool operator==(const Row&) const = default;
    };
    struct Why {
        QString what;
        QString why;

        bool operator==(const Why&) const = default;
    };
    struct Bend {
        bool ductile = false;
        QString reason; // the gravest; empty: none

        bool operator==(const Bend&) const = default;
    };

    Mark mark = Mark::Open;
    Tone tone = Tone::Rest;
    QString verdict;
    QString reason; // "within limits", or the first
    std::vector<Row> rows;
    std::vector<Row> all;    // each reading, answer and step by itself, what is off first
    std::vector<Why> lapses; // the gravest first
    bool good = false;       // within limits, and it bends everywhere
    QString after;           // of the lesson
    BenchDrawing made;
    BenchDrawing planned;
    QString madeText;
    QString plannedText;
    std::vector<Bend> bend; // front to back
    QString bendText;

    bool operator==(const ResultView&) const = default;
};

ResultView resultView(
    const Lesson& lesson, const BenchSetup& setup, const WeldPlan& plan,
    const PracticeScore& score);

/// The words of one line of a history: what was made and when; how it went; what was wrong.
struct HistoryWords {
    QString made;
    QString when;
    QString how;
    QString hands;  // how fast signals were answered, what was read wrong, what was noticed
    QString lapses; // empty: none
    QString few;    // the first two of them, and how many more
};
HistoryWords historyWords(const PracticeLine& line);

} // namespace seamclock
