// The card in pounds and inches says what the card in newtons and millimetres says: every number
// with its unit is taken out of both texts, as a reader would, and held against each other with the
// factors of NIST Special Publication 811, appendix B.8.
#include "core/report/weld_card.h"
#include "tests/support/shipped.h"

#include <cmath>
#include <filesystem>
#include <gtest/gtest.h>
#include <map>
#include <regex>
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

/// Sources are quoted as they are written and hold numbers of their own; the headline's underline
/// is as long as the headline.
std::string withoutSources(const std::string& card) {
    const std::string kept = card.substr(0, card.find("\nWhere the values come from"));
    return std::regex_replace(kept, std::regex("\\s+(-{9,}\\s+)?"), " "); // wrapped lines as one
}

std::vector<Number> numbersIn(const std::string& text) {
    static const std::regex kNumber(
        "(-?[0-9]+(?:\\.[0-9]+)?) (mm|N/mm²|N/marks|N/kgf|N|°C|in|psi|lbf/marks|lbf/kgf|lbf|°F|kgf|"
        "marks|s|min)(?![a-z/²])");
    std::vector<Number> numbers;
    for (auto at = std::sregex_iterator(text.begin(), text.end(), kNumber);
         at != std::sregex_iterator(); ++at) {
        numbers.push_back({(*at)[1], (*at)[2]});
    }
    return numbers;
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

void compare(const WeldPlan& plan, const Bench* bench) {
    const std::string metric = withoutSources(weldCard(plan, bench, UnitSystem::Metric));
    const std::string imperial = withoutSources(weldCard(plan, bench, UnitSystem::Imperial));
    const std::vector<Number> was = numbersIn(metric);
    const std::vector<Number> is = numbersIn(imperial);
    ASSERT_EQ(was.size(), is.size()) << metric << "\n" << imperial;
    ASSERT_GE(was.size(), plan.isReady() ? 30U : 12U) << metric;
    for (std::size_t i = 0; i < was.size(); ++i) {
        const auto turn = turns().find(was[i].unit);
        if (turn == turns().end()) {
            EXPECT_EQ(was[i].unit, is[i].unit);
            EXPECT_EQ(was[i].digits, is[i].digits) << was[i].unit;
            continue;
        }
        const auto& [unit, perUnit, rounding, offset] = turn->second;
        EXPECT_EQ(is[i].unit, unit) << metric << "\n" << imperial;
        EXPECT_NEAR(
            is[i].value(), was[i].value() / perUnit + offset,
            is[i].lastDigit() * 0.5 * (1 + 1e-6) + rounding / perUnit)
            << was[i].digits << " " << was[i].unit << " is " << is[i].digits << " " << is[i].unit;
    }
    // What is left once the numbers with units are taken away is the same text.
    static const std::regex kAny("[+-]?[0-9]+(\\.[0-9]+)?( to [+-]?[0-9.]+)? "
                                 "(mm|N/mm²|N/[a-z]+|N|°C|in|psi|lbf/[a-z]+|lbf|°F)"
                                 "(?![a-z/²])");
    EXPECT_EQ(std::regex_replace(metric, kAny, "#"), std::regex_replace(imperial, kAny, "#"));
}

const char* const kProcedures[] = {"pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015",
                                   "pp-dvs2207-11",        "pvdf-dvs2207-15",
                                   "pe-uni10520",          "pe-iso21307-slp"};

TEST(CardUnits, SayTheSameInBothForEveryProcedureThicknessAndLength) {
    for (const std::string unit : {"marks", "kgf"}) {
        const Bench bench = benchWith(unit);
        std::map<std::string, int> compared;
        for (const char* id : kProcedures) {
            if (!std::filesystem::exists(
                    test::resource(std::string("procedures/") + id + ".json"))) {
                continue; // a later slice of the project brings it
            }
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
        EXPECT_GE(compared["pe-hd-dvs2207-1-2005"], 30);
        EXPECT_GE(compared["pp-dvs2207-11"], 20);
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

TEST(CardUnits, LeaveTheReadingsInTheScalesOwnUnit) {
    Bench bench = benchWith("mm");
    PlanRequest request;
    request.thickness = millimetres(10);
    request.lengths = {millimetres(1000)};
    request.drag = Force();
    const auto plan = makePlan(request, test::shippedProcedure("pe-hd-dvs2207-1-2005"), &bench);
    ASSERT_TRUE(plan.has_value());
    const std::string card = withoutSources(weldCard(*plan, &bench, UnitSystem::Imperial));
    EXPECT_NE(card.find("= 8.68 mm, set 8.5 "), std::string::npos) << card; // 1540 N / 177.5 N
    EXPECT_NE(card.find("8.5 mm ("), std::string::npos) << card;
    EXPECT_NE(card.find("÷ 39.90 lbf/mm"), std::string::npos) << card; // 177.5 N / 4.4482 N
}

} // namespace
} // namespace seamclock
