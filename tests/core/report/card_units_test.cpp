// The card in pounds and inches says what the card in newtons and millimetres says: every number
// with its unit is taken out of both texts, as a reader would, and held against each other with the
// factors of NIST Special Publication 811, appendix B.8.
#include "core/report/weld_card.h"
#include "tests/support/materials.h"

#include <cmath>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace seamclock {
namespace {

struct Number {
    std::string digits;
    std::string unit;

    double value() const { return std::stod(digits); }
    double lastDigit() const {
        const auto dot = digits.find('.');
        return dot == std::string::npos
                   ? 1
                   : std::pow(10.0, -static_cast<double>(digits.size() - dot - 1));
    }
};

// The scale counts in "marks", so that a length or a force left in metric can't pass for a reading.
Bench benchWith(const std::string& unit) {
    Bench bench;
    bench.id = "bench-a";
    bench.name = "Bench A";
    bench.longestSeam = millimetres(3000);
    bench.thinnestSheet = millimetres(1);
    bench.thickestSheet = millimetres(80);
    bench.scale.unit = unit;
    bench.scale.divisionMilli = 500;
    bench.scale.maxMilli = 400'000;
    bench.scale.ratePerUnit = {newtons(90), newtons(87.5)};
    bench.scale.preload = newtons(40);
    bench.gapRule.floor = millimetres(2);
    bench.edgeGapMax = millimetres(0.5);
    bench.releaseOrder = {"clamps_eased", "bars_opened", "spring_off", "sheet_out"};
    return bench;
}

/// The card's words, without its sources (they are quoted as they are written, and hold numbers of
/// their own) and without the headline's underline, which is as long as the headline.
std::vector<std::string> wordsOf(const std::string& card) {
    std::istringstream text(card.substr(0, card.find("\nWhere the values come from")));
    std::vector<std::string> words;
    for (std::string word; text >> word;) {
        if (word.find_first_not_of('-') != std::string::npos || word.size() < 9) {
            words.push_back(word);
        }
    }
    return words;
}

/// Without the signs of a sentence about it.
std::string bare(const std::string& word) {
    const std::size_t from = word.find_first_not_of("(");
    const std::size_t to = word.find_last_not_of("),;:.");
    return from == std::string::npos || to == std::string::npos || to < from
               ? ""
               : word.substr(from, to - from + 1);
}

bool isNumber(const std::string& word) {
    const std::size_t digits = word.find_first_not_of("+-");
    return digits <= 1 && word.find_first_not_of("0123456789.", digits) == std::string::npos;
}

bool isUnit(const std::string& word) {
    static const std::set<std::string> kUnits{
        "mm",  "N",  "N/mm²", "°C",    "N/marks", "N/kgf", "in",        "lbf",
        "psi", "°F", "kgf",   "marks", "min",     "s",     "lbf/marks", "lbf/kgf"};
    return kUnits.count(word) > 0;
}

struct Taken {
    std::vector<Number> numbers; // those with a unit
    std::string rest;            // the words, "#" where a number with its unit stood
};

Taken takenFrom(const std::string& card) {
    const std::vector<std::string> words = wordsOf(card);
    const auto word = [&words](std::size_t i) { return i < words.size() ? bare(words[i]) : ""; };
    Taken taken;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (isNumber(word(i)) && isUnit(word(i + 1))) {
            taken.numbers.push_back({word(i), word(i + 1)});
            taken.rest += "# ";
            ++i;
        } else if (
            isNumber(word(i)) && word(i + 1) == "to" && isNumber(word(i + 2)) &&
            isUnit(word(i + 3))) {
            taken.numbers.push_back({word(i), word(i + 3)}); // "+5 to +45 °C"
            taken.rest += "# ";
        } else {
            taken.rest += words[i] + " ";
        }
    }
    return taken;
}

struct Turn {
    std::string imperial;
    double perUnit;        // how much of the metric unit one of the imperial is
    double metricRounding; // what the metric text itself was rounded by, at most
    double offset = 0;
};

const std::map<std::string, Turn>& turns() {
    static const std::map<std::string, Turn> kTurns{
        {"mm", {"in", 25.4, 0}},
        {"N", {"lbf", 4.4482216152605, 0.05}},
        {"N/mm²", {"psi", 0.006894757, 0.00005}},
        {"°C", {"°F", 5.0 / 9, 0, 32}},
        {"N/marks", {"lbf/marks", 4.4482216152605, 0.005}},
        {"N/kgf", {"lbf/kgf", 4.4482216152605, 0.005}}};
    return kTurns;
}

void compare(const WeldPlan& plan, const Bench* bench, const HeatEstimate* heat = nullptr) {
    const Taken metric = takenFrom(weldCard(plan, bench, UnitSystem::Metric, heat));
    const Taken imperial = takenFrom(weldCard(plan, bench, UnitSystem::Imperial, heat));
    // What is left once the numbers with units are taken away is the same text.
    EXPECT_EQ(metric.rest, imperial.rest);
    const std::vector<Number>& was = metric.numbers;
    const std::vector<Number>& is = imperial.numbers;
    ASSERT_EQ(was.size(), is.size());
    ASSERT_GE(was.size(), plan.isReady() ? 30U : 12U) << metric.rest;
    for (std::size_t i = 0; i < was.size(); ++i) {
        const auto turn = turns().find(was[i].unit);
        if (turn == turns().end()) {
            EXPECT_EQ(was[i].unit, is[i].unit);
            EXPECT_EQ(was[i].digits, is[i].digits) << was[i].unit;
            continue;
        }
        const auto& [unit, perUnit, rounding, offset] = turn->second;
        EXPECT_EQ(is[i].unit, unit);
        EXPECT_NEAR(
            is[i].value(), was[i].value() / perUnit + offset,
            is[i].lastDigit() * 0.5 * (1 + 1e-6) + rounding / perUnit)
            << was[i].digits << " " << was[i].unit << " is " << is[i].digits << " " << is[i].unit;
    }
}

const char* const kProcedures[] = {"pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015",
                                   "pp-dvs2207-11",        "pvdf-dvs2207-15",
                                   "pe-uni10520",          "pe-iso21307-slp"};

TEST(CardUnits, SayTheSameInBothForEveryProcedureThicknessAndLength) {
    for (const std::string unit : {"marks", "kgf"}) {
        const Bench bench = benchWith(unit);
        std::map<std::string, int> compared;
        for (const char* id : kProcedures) {
            const Procedure procedure = test::shippedProcedure(id);
            for (double thickness = 1; thickness <= 70; thickness += 2.35) {
                for (const double length : {187.0, 860.5, 2000.0}) {
                    PlanRequest request;
                    request.thickness = millimetres(thickness);
                    request.lengths = {millimetres(length)};
                    request.ambient = Temperature::celsius(thickness < 20 ? 20 : 31.5);
                    request.drag = length > 1000 ? std::nullopt : std::optional(newtons(61.3));
                    const auto plan = makePlan(request, procedure, &bench);
                    if (!plan) {
                        continue; // outside the procedure, or more than the springs hold
                    }
                    SCOPED_TRACE(
                        std::string(id) + ", " + std::to_string(thickness) + " × " +
                        std::to_string(length));
                    compare(*plan, &bench);
                    ++compared[id];
                    if (HasFatalFailure() || HasNonfatalFailure()) {
                        return;
                    }
                }
            }
        }
        for (const char* id : kProcedures) {
            EXPECT_GE(compared[id], 10) << id;
        }
    }
}

TEST(CardUnits, SayTheSameWithoutABench) {
    PlanRequest request;
    request.thickness = millimetres(8);
    request.lengths = {millimetres(1450)};
    request.ambient = Temperature::celsius(-3.5); // a warning with degrees in it
    const auto plan = makePlan(request, test::shippedProcedure("pp-dvs2207-11"), nullptr);
    ASSERT_TRUE(plan.has_value());
    ASSERT_FALSE(plan->warnings.empty());
    compare(*plan, nullptr);
}

TEST(CardUnits, SayTheSameOfTheEstimate) {
    const Bench west = test::demoBench("west");
    for (const double thickness : {5.0, 8.0, 12.0}) {
        PlanRequest request;
        request.thickness = millimetres(thickness);
        request.lengths = {millimetres(1380)};
        const auto plan = makePlan(request, test::shippedProcedure("pe-hd-dvs2207-1-2005"), &west);
        ASSERT_TRUE(plan) << plan.error().detail;
        const auto course = courseOf(*plan, &west);
        ASSERT_TRUE(course) << course.error().detail;
        const auto heat = estimateHeat(*course, test::materials());
        ASSERT_TRUE(heat) << heat.error().detail;
        SCOPED_TRACE(thickness);
        // its readings are in mm in both, so they are taken for lengths: the scale's unit is ours
        WeldPlan marks = *plan;
        marks.scale->unit = "marks";
        compare(marks, nullptr, &*heat);
    }
}

TEST(CardUnits, LeaveTheReadingsInTheScalesOwnUnit) {
    Bench bench = benchWith("mm");
    PlanRequest request;
    request.thickness = millimetres(10);
    request.lengths = {millimetres(1000)};
    request.drag = Force();
    const auto plan = makePlan(request, test::shippedProcedure("pe-hd-dvs2207-1-2005"), &bench);
    ASSERT_TRUE(plan.has_value());
    std::string card;
    for (const std::string& word : wordsOf(weldCard(*plan, &bench, UnitSystem::Imperial))) {
        card += word + " ";
    }
    EXPECT_NE(card.find("= 8.68 mm, set 8.5 "), std::string::npos) << card; // 1540 N / 177.5 N
    EXPECT_NE(card.find("8.5 mm ("), std::string::npos) << card;
    EXPECT_NE(card.find("÷ 39.90 lbf/mm"), std::string::npos) << card; // 177.5 N / 4.4482 N
}

} // namespace
} // namespace seamclock
