// A bench by questions: the document that comes of it is one that core reads, a rate in pounds and
// inches is the same spring, and a number page allows just what a bench's document allows.
#include "app/first/bench_answers.h"
#include "tests/support/scratch_folder.h"

#include <cmath>
#include <gtest/gtest.h>
#include <string>

namespace seamclock::test {
namespace {

BenchAnswers east() {
    BenchAnswers answers;
    answers.name = "East bench";
    answers.longestMm = 2600;
    answers.thinnestMm = 3;
    answers.thickestMm = 30;
    answers.end = 48;
    answers.division = 0.5;
    answers.zero = 0;
    answers.release = {"clamps_eased", "bars_opened", "spring_off", "sheet_out"};
    answers.calibrates = false;
    answers.springs = 1;
    answers.rateN = 62.5;
    answers.preloadN = 0;
    return answers;
}

Result<BenchDocument> read(const BenchAnswers& answers, const std::set<std::string>& taken = {}) {
    return readBench("first bench", benchDocument(answers, taken));
}

// Against the demo's bench of these very figures, which the same reader reads from its file.
TEST(BenchAnswers, MakeTheBenchThatTheyTell) {
    const auto made = read(east());
    ASSERT_TRUE(made) << made.error().detail;
    const auto demo =
        readBenchFile(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo/bench-east.json");
    ASSERT_TRUE(demo);
    EXPECT_EQ(made->bench.id, "east-bench");
    EXPECT_EQ(made->bench.scale, demo->bench.scale);
    EXPECT_EQ(made->bench.longestSeam, demo->bench.longestSeam);
    EXPECT_EQ(made->bench.thinnestSheet, demo->bench.thinnestSheet);
    EXPECT_EQ(made->bench.thickestSheet, demo->bench.thickestSheet);
    EXPECT_EQ(made->bench.releaseOrder, demo->bench.releaseOrder);
    EXPECT_FALSE(made->bench.calibration) << "a plate's rate is no calibration";
}

TEST(BenchAnswers, AskOneAfterTheOtherAndNothingTwice) {
    for (const UnitSystem units : {UnitSystem::Metric, UnitSystem::Imperial}) {
        BenchAnswers answers;
        const BenchAnswers whole = [&] {
            BenchAnswers all = east();
            all.unit = units == UnitSystem::Imperial ? "in" : "";
            return all;
        }();
        std::size_t asked = 0;
        while (const auto question = nextQuestion(answers, units)) {
            ASSERT_LT(asked++, 14U);
            switch (*question) {
            case BenchQuestion::Name:
                answers.name = whole.name;
                break;
            case BenchQuestion::ScaleUnit:
                answers.unit = whole.unit;
                break;
            case BenchQuestion::Release:
                answers.release = whole.release;
                break;
            case BenchQuestion::Known:
                answers.calibrates = whole.calibrates;
                break;
            case BenchQuestion::Springs:
                answers.springs = whole.springs;
                break;
            case BenchQuestion::Division:
                answers.division = whole.division;
                break;
            case BenchQuestion::LongestSeam:
                answers.longestMm = whole.longestMm;
                break;
            case BenchQuestion::ThinnestSheet:
                answers.thinnestMm = whole.thinnestMm;
                break;
            case BenchQuestion::ThickestSheet:
                answers.thickestMm = whole.thickestMm;
                break;
            case BenchQuestion::ScaleEnd:
                answers.end = whole.end;
                break;
            case BenchQuestion::Zero:
                answers.zero = whole.zero;
                break;
            case BenchQuestion::Rate:
                answers.rateN = whole.rateN;
                break;
            case BenchQuestion::Preload:
                answers.preloadN = whole.preloadN;
                break;
            }
        }
        EXPECT_EQ(asked, units == UnitSystem::Imperial ? 13U : 12U);
        EXPECT_EQ(answers, whole);
        for (const BenchQuestion question : questionsOf(answers, units)) {
            BenchAnswers less = answers;
            forget(less, question);
            EXPECT_FALSE(isAnswered(less, question));
            EXPECT_NE(less, answers);
        }
    }
}

// reading = zero + (F + drag + preload) / rate: what is lost stands in every reading.
TEST(BenchAnswers, HoldWhatIsLostBeforeTheFacesPress) {
    BenchAnswers answers = east();
    take(answers, BenchQuestion::Preload, 25, UnitSystem::Metric);
    const auto made = read(answers);
    ASSERT_TRUE(made) << made.error().detail;
    EXPECT_EQ(inNewtons(made->bench.scale.preload), 25);
    EXPECT_EQ(answerText(answers, BenchQuestion::Preload, UnitSystem::Metric), "25 N");
    // NIST SP 811 (2008), appendix B.8: 1 lbf is 4.448 222 N.
    take(answers, BenchQuestion::Preload, 10, UnitSystem::Imperial);
    EXPECT_NEAR(*answers.preloadN, 44.48222, 0.00001);
    EXPECT_EQ(answerText(answers, BenchQuestion::Preload, UnitSystem::Imperial), "10 lbf");
}

// NIST SP 811 (2008), appendix B.8: 1 lbf/in is 1.751 268 E+02 N/m; 1 in is 25.4 mm.
TEST(BenchAnswers, ASpringInPoundsIsTheSameSpring) {
    BenchAnswers answers;
    answers.unit = "mm";
    take(answers, BenchQuestion::Rate, 1000, UnitSystem::Imperial);
    EXPECT_NEAR(*answers.rateN, 175.1268, 0.0005);
    answers.unit = "in"; // force for an inch of the scale
    take(answers, BenchQuestion::Rate, 1000, UnitSystem::Imperial);
    EXPECT_NEAR(*answers.rateN, 175.1268 * 25.4, 0.0127);
    take(answers, BenchQuestion::LongestSeam, 100, UnitSystem::Imperial);
    EXPECT_DOUBLE_EQ(*answers.longestMm, 2540);
    answers.unit = "mm";
    take(answers, BenchQuestion::Rate, 85, UnitSystem::Metric);
    EXPECT_DOUBLE_EQ(*answers.rateN, 85);
}

TEST(BenchAnswers, AScaleInInchesTellsWhatAMillimetreCosts) {
    BenchAnswers answers = east();
    answers.unit = "in";
    answers.end = 2;
    answers.division = 0.05;
    answers.springs = 2;
    take(answers, BenchQuestion::Rate, 400, UnitSystem::Imperial);
    const auto made = read(answers);
    ASSERT_TRUE(made) << made.error().detail;
    EXPECT_EQ(made->bench.scale.unit, "in");
    ASSERT_EQ(made->bench.scale.ratePerUnit.size(), 2U);
    ASSERT_TRUE(made->bench.scale.ratePerMillimetre());
    // 2 springs of 400 lbf/in, by the factor above.
    EXPECT_NEAR(inNewtons(*made->bench.scale.ratePerMillimetre()), 2 * 400 * 0.1751268, 0.002);
    EXPECT_EQ(answerText(answers, BenchQuestion::Rate, UnitSystem::Imperial), "400 lbf/in");
    EXPECT_EQ(answerText(answers, BenchQuestion::Division, UnitSystem::Imperial), "0.05 in");
}

struct Edge {
    BenchQuestion question;
    UnitSystem units;
    const char* name;
};
class BenchRanges : public ::testing::TestWithParam<Edge> {};

// The end of a number page's range is kept; one step of its last digit beyond is what core refuses.
TEST_P(BenchRanges, AreThoseOfABenchsDocument) {
    const auto [question, units, name] = GetParam();
    const NumberTask task = benchTask(question, east(), units);
    EXPECT_EQ(task.what, NumberFor::BenchValue);
    const double step = std::pow(10.0, -task.decimals);
    const auto readWith = [&, question = question, units = units](double typed) {
        BenchAnswers answers = east();
        take(answers, question, typed, units);
        if (question == BenchQuestion::ThinnestSheet) {
            answers.thickestMm = std::max(*answers.thickestMm, *answers.thinnestMm);
        }
        return read(answers);
    };
    const QString point(QLatin1Char('.'));
    for (const double typed : {task.least, task.most}) {
        const auto kept = readWith(typed);
        EXPECT_TRUE(kept) << name << " " << typed << ": " << kept.error().detail;
        EXPECT_EQ(
            shown(task, QString::number(typed, 'f', task.decimals), u'.').outcome,
            NumberOutcome::Keep);
    }
    for (const double typed : {task.least - step, task.most + step}) {
        if (typed < 0) {
            continue; // no key types it
        }
        const NumberShown page = shown(task, QString::number(typed, 'f', task.decimals), u'.');
        EXPECT_EQ(page.outcome, NumberOutcome::None) << name << " " << typed;
        EXPECT_TRUE(page.sentence.contains(page.view.allowed)) << page.sentence.toStdString();
        EXPECT_FALSE(readWith(typed)) << name << " " << typed;
    }
}

INSTANTIATE_TEST_SUITE_P(
    Questions, BenchRanges,
    ::testing::Values(
        Edge{BenchQuestion::LongestSeam, UnitSystem::Metric, "seam_mm"},
        Edge{BenchQuestion::ThinnestSheet, UnitSystem::Metric, "thin_mm"},
        Edge{BenchQuestion::ThickestSheet, UnitSystem::Metric, "thick_mm"},
        Edge{BenchQuestion::Rate, UnitSystem::Metric, "rate_N"},
        Edge{BenchQuestion::Preload, UnitSystem::Metric, "preload_N"},
        Edge{BenchQuestion::Preload, UnitSystem::Imperial, "preload_lbf"},
        Edge{BenchQuestion::LongestSeam, UnitSystem::Imperial, "seam_in"},
        Edge{BenchQuestion::ThickestSheet, UnitSystem::Imperial, "thick_in"},
        Edge{BenchQuestion::Rate, UnitSystem::Imperial, "rate_lbf"}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(BenchAnswers, KeepAZeroADivisionBelowTheScalesEnd) {
    BenchAnswers answers = east();
    const NumberTask task = benchTask(BenchQuestion::Zero, answers, UnitSystem::Metric);
    EXPECT_DOUBLE_EQ(task.most, 47.5);
    take(answers, BenchQuestion::Zero, 47.5, UnitSystem::Metric);
    EXPECT_TRUE(read(answers));
    take(answers, BenchQuestion::Zero, 47.6, UnitSystem::Metric);
    EXPECT_FALSE(read(answers));
}

TEST(BenchAnswers, OneThatIsCalibratedLeavesZeroAndRateToItsPoints) {
    BenchAnswers answers = east();
    answers.calibrates = true;
    answers.rateN.reset();
    answers.zero.reset();
    answers.springs.reset();
    answers.preloadN.reset();
    EXPECT_FALSE(nextQuestion(answers, UnitSystem::Metric));
    const auto findings = checkBench("first bench", benchDocument(answers, {}));
    ASSERT_FALSE(findings.empty());
    for (const BenchFinding& finding : findings) {
        EXPECT_EQ(finding.field.rfind("/calibration", 0), 0U)
            << finding.field << ": " << finding.reason;
    }
}

TEST(BenchAnswers, GiveEachBenchAnIdOfItsOwn) {
    const auto idOf = [](const QString& name, const std::set<std::string>& taken = {}) {
        BenchAnswers answers = east();
        answers.name = name;
        const auto made = read(answers, taken);
        return made ? made->bench.id : made.error().detail;
    };
    EXPECT_EQ(idOf("Bench 1"), "bench-1");
    EXPECT_EQ(idOf("Bench 1", {"bench-1"}), "bench-1-2");
    EXPECT_EQ(idOf("Bench 1", {"bench-1", "bench-1-2"}), "bench-1-3");
    EXPECT_EQ(idOf(QString::fromUtf8("Große Bank, Süd")), "groe-bank-sud");
    EXPECT_EQ(idOf(QString::fromUtf8("№ ✕")), "no");
    EXPECT_EQ(idOf(QString::fromUtf8("✕✕")), "bench");
}

TEST(BenchAnswers, ThatAreKeptAreReadBack) {
    const ScratchFolder folder;
    const QString file = QString::fromStdString(folder.file("settings.ini"));
    EXPECT_EQ(readAnswers(file), BenchAnswers());
    BenchAnswers half = east();
    half.unit = "in";
    half.rateN = 4448.222;
    half.preloadN = 12.5;
    half.zero.reset();
    half.release = {"spring_off"};
    writeAnswers(half, file);
    EXPECT_EQ(readAnswers(file), half);
    half.springs.reset();
    half.calibrates = true;
    writeAnswers(half, file);
    EXPECT_EQ(readAnswers(file), half);
    dropAnswers(file);
    EXPECT_EQ(readAnswers(file), BenchAnswers());
    writeAnswers(half, {}); // nowhere
    EXPECT_EQ(readAnswers({}), BenchAnswers());
}

} // namespace
} // namespace seamclock::test
