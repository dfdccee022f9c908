// A first bench by a few questions, as values: what is asked next, the number page of each, and the
// document that comes of the answers. It asks for what a plate or a ruler can tell; the rest stands
// as in an empty form of Set-up, where all of it can be changed. Which values may be is the
// document's own check (core/bench), whose ranges the number pages repeat in the person's units.
#pragma once

#include "app/operate/number_task.h"
#include "core/bench/bench_codec.h"
#include "core/units/measure.h"

#include <QString>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace seamclock {

enum class BenchQuestion {
    Name,
    LongestSeam,
    ThinnestSheet,
    ThickestSheet,
    ScaleUnit, // mm or inch; asked only of who reads in inches
    ScaleEnd,
    Division,
    Release,
    Known, // the force: by a rate from a plate, or a calibration
    Zero,
    Springs,
    Rate,
    Preload // what is lost before the faces press
};

struct BenchAnswers {
    QString name;
    std::optional<double> longestMm;
    std::optional<double> thinnestMm;
    std::optional<double> thickestMm;
    std::string unit;          // of the scale: "mm" or "in"; empty: not asked yet
    std::optional<double> end; // these three in its unit
    std::optional<double> division;
    std::optional<double> zero;
    std::vector<std::string> release; // codes, ending with the sheet
    std::optional<bool> calibrates;
    std::optional<int> springs;
    std::optional<double> rateN; // of one spring, for one unit of the scale
    std::optional<double> preloadN;

    bool operator==(const BenchAnswers&) const = default;
};

/// Of the divisions that are offered, in the scale's unit.
std::vector<double> offeredDivisions(const std::string& unit);

/// The first that is not answered yet, in the order of BenchQuestion; absent: all are.
std::optional<BenchQuestion> nextQuestion(const BenchAnswers& answers, UnitSystem units);
/// All that apply to these answers.
std::vector<BenchQuestion> questionsOf(const BenchAnswers& answers, UnitSystem units);
bool isAnswered(const BenchAnswers& answers, BenchQuestion question);
/// As before it was answered; what hangs on it, too.
void forget(BenchAnswers& answers, BenchQuestion question);

/// The number page of a question that asks for one.
NumberTask benchTask(BenchQuestion question, const BenchAnswers& answers, UnitSystem units);
/// What was typed there.
void take(BenchAnswers& answers, BenchQuestion question, double typed, UnitSystem units);

/// In a few words: "Longest seam", "2 600 mm".
QString questionWord(BenchQuestion question);
QString answerText(const BenchAnswers& answers, BenchQuestion question, UnitSystem units);

/// The document, whole but for what a calibration brings. `taken`: ids of benches that are there.
std::string benchDocument(const BenchAnswers& answers, const std::set<std::string>& taken);

/// Kept after each answer in the settings' file, so that a start that was cut off goes on there;
/// nowhere if `file` is empty.
BenchAnswers readAnswers(const QString& file);
void writeAnswers(const BenchAnswers& answers, const QString& file);
void dropAnswers(const QString& file);

} // namespace seamclock
