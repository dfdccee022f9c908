// What a shop decides or fills in: half the cooling, the correction by ambient, values in the gaps
// of a source, and soak's pressure from zero to drag.
#include "core/plan/plan.h"
#include "core/procedure/cells.h"

#include "tests/support/filled.h"
#include "tests/support/shipped.h"

#include <algorithm>

namespace seamclock {
namespace {

using std::chrono::minutes;
using test::attestedWhere;
using test::filledUni;
using test::replaced;
using test::wholeIso;
using Names = std::vector<std::string>;

std::string textOf(const std::string& id) {
    return test::textOf(test::resource("procedures/" + id + ".json"));
}

Procedure parsed(const std::string& text) {
    const auto read = readProcedure("test", text);
    EXPECT_TRUE(read) << read.error().detail;
    return read ? read->procedure : Procedure{};
}

PlanRequest sheet(double mm, double ambient = 20) {
    PlanRequest request;
    request.thickness = millimetres(mm);
    request.lengths = {millimetres(700)};
    request.drag = newtons(30);
    request.ambient = Temperature::celsius(ambient);
    return request;
}

WeldPlan
planned(const Procedure& procedure, const PlanRequest& request, const Bench* bench = nullptr) {
    const auto plan = makePlan(request, procedure, bench);
    EXPECT_TRUE(plan) << plan.error().detail;
    return plan ? *plan : WeldPlan{};
}

const PlanWarning* warning(const WeldPlan& plan, const std::string& code) {
    const auto found =
        std::find_if(plan.warnings.begin(), plan.warnings.end(), [&](const PlanWarning& each) {
            return each.code == code;
        });
    return found == plan.warnings.end() ? nullptr : &*found;
}

Standing standingOf(const WeldPlan& plan, const std::string& value) {
    for (const PlanSource& each : plan.sources) {
        if (each.value == value) {
            return each.source.standing;
        }
    }
    ADD_FAILURE() << "no source of " << value;
    return Standing::Memory;
}

// 15.5 mm PP cools 25 min by its table (from memory); half of it is 12.5.
TEST(HalfCooling, IsHalfTheTimeWithAWarningOfTheWhole) {
    const Procedure pp = test::shippedProcedure("pp-dvs2207-11");
    PlanRequest request = sheet(15.5);
    const WeldPlan whole = planned(pp, request);
    EXPECT_FALSE(whole.halfCooling);
    EXPECT_EQ(whole.cooling->atLeast, minutes(25));
    request.halfCooling = HalfCooling{true, true};
    const WeldPlan half = planned(pp, request);
    EXPECT_TRUE(half.halfCooling);
    EXPECT_EQ(half.cooling->atLeast, std::chrono::seconds(750));
    EXPECT_EQ(
        half.cooling->rechecks, (std::vector<Milliseconds>{minutes(1), std::chrono::seconds(250)}));
    EXPECT_TRUE(half.isComplete());
    const PlanWarning* said = warning(half, "half_cooling");
    ASSERT_NE(said, nullptr);
    EXPECT_EQ(said->text, "cooling is cut by half: full load only after the whole 25 min");
    EXPECT_EQ(said->limit, 1'500'000);
    EXPECT_EQ(said->actual, 750'000);
    EXPECT_EQ(said->unit, "ms");
    EXPECT_EQ(standingOf(half, "half_cooling"), Standing::Seen);
}

TEST(HalfCooling, OfAnOddMillisecondIsRoundedUp) {
    PlanRequest request = sheet(15.001);
    const Procedure pp = test::shippedProcedure("pp-dvs2207-11");
    const auto whole = planned(pp, request).cooling->atLeast.count();
    request.halfCooling = HalfCooling{true, true};
    const auto half = planned(pp, request).cooling->atLeast.count();
    EXPECT_EQ(whole % 2, 1) << "choose another thickness";
    EXPECT_EQ(half, whole / 2 + 1);
}

TEST(HalfCooling, IsRefusedUnlessAllThreeConditionsHold) {
    const std::string allowed =
        "; allowed only in workshop conditions, with hardly any load on the joint at removal and "
        "storage, and from 15 mm of wall";
    struct Row {
        const char* procedure;
        double mm;
        HalfCooling stated;
        std::string refusal; // "": none
    };
    const Row rows[] = {
        {"pp-dvs2207-11", 15, {true, true}, ""},
        {"pp-dvs2207-11", 14.999, {true, true}, "half cooling of 14.999 mm" + allowed},
        {"pp-dvs2207-11", 20, {false, true}, "half cooling outside workshop conditions" + allowed},
        {"pp-dvs2207-11",
         20,
         {true, false},
         "half cooling of a joint that is loaded at once" + allowed},
        {"pe-hd-dvs2207-1-2005",
         20,
         {true, true},
         "half cooling is not allowed by pe-hd-dvs2207-1-2005; allowed: the whole cooling time"},
    };
    for (const Row& row : rows) {
        PlanRequest request = sheet(row.mm);
        request.halfCooling = row.stated;
        const auto plan = makePlan(request, test::shippedProcedure(row.procedure), nullptr);
        EXPECT_EQ(plan.has_value(), row.refusal.empty()) << row.mm;
        if (!plan) {
            EXPECT_EQ(plan.error().code, ErrorCode::OutOfRange);
            EXPECT_EQ(plan.error().detail, row.refusal);
        }
    }
}

/// ISO 21307's card with a correction that a shop entered: direction and range are invented.
std::string corrected(const std::string& when) {
    return replaced(
        textOf("pe-iso21307-slp"), "\"default_rule\": \"line\",",
        "\"default_rule\": \"line\", \"per_kelvin\": {\"percent\": 1, \"longer_when\": \"" + when +
            "\", \"from_C\": 8, \"to_C\": 38, \"source\": \"the shop's copy\", \"standing\": "
            "\"derived\"},");
}

// 10 mm cool 13 min at 23 °C by the card; 1 % of that is 7.8 s a kelvin.
TEST(PerKelvin, CorrectsOnlyOutsideTheClass) {
    struct Row {
        const char* when;
        double ambient;
        std::optional<std::int64_t> ms;
    };
    const Row rows[] = {
        {"warmer", 21, 780'000},        {"warmer", 25, 780'000},       {"warmer", 25.5, 799'500},
        {"warmer", 38, 897'000},        {"warmer", 20, 756'600},       {"warmer", 8, 663'000},
        {"warmer", 38.1, std::nullopt}, {"warmer", 7.9, std::nullopt}, {"colder", 38, 663'000},
        {"colder", 8, 897'000},
    };
    for (const Row& row : rows) {
        const WeldPlan plan = planned(parsed(corrected(row.when)), sheet(10, row.ambient));
        SCOPED_TRACE(std::string(row.when) + " " + std::to_string(row.ambient));
        ASSERT_EQ(plan.cooling.has_value(), row.ms.has_value());
        if (row.ms) {
            EXPECT_EQ(plan.cooling->atLeast.count(), *row.ms);
        }
    }
}

TEST(PerKelvin, IsAFillThatMustBeAttestedWhereItIsUsed) {
    const Procedure procedure = parsed(corrected("colder"));
    EXPECT_TRUE(planned(procedure, sheet(10, 23)).unattested.empty());
    const WeldPlan cold = planned(procedure, sheet(10, 12));
    EXPECT_EQ(cold.unattested, Names{"cooling_min.per_kelvin"});
    EXPECT_EQ(standingOf(cold, "cooling_min.per_kelvin"), Standing::Derived);
    const WeldPlan held =
        planned(attestedWhere(procedure, "cooling_min.per_kelvin"), sheet(10, 12));
    EXPECT_TRUE(held.unattested.empty());
    EXPECT_EQ(standingOf(held, "cooling_min.per_kelvin"), Standing::Attested);
}

// A card's formula of e + 0 instead of e + 3 minutes, invented: 1 mm cools for one minute.
TEST(Rechecks, AreNoneWhereCoolingIsOverBeforeTheFirst) {
    const Procedure quick = parsed(replaced(
        textOf("pe-iso21307-slp"), "\"coefficients\": [3, 1]", "\"coefficients\": [0, 1]"));
    EXPECT_EQ(planned(quick, sheet(1, 23)).cooling->atLeast, minutes(1));
    EXPECT_TRUE(planned(quick, sheet(1, 23)).cooling->rechecks.empty());
    EXPECT_EQ(planned(quick, sheet(1.001, 23)).cooling->rechecks.size(), 1U);
}

TEST(PerKelvin, WhereItIsNotToHandTheCardSaysSo) {
    const WeldPlan plan = planned(test::shippedProcedure("pe-iso21307-slp"), sheet(10, 20));
    EXPECT_FALSE(plan.cooling);
    const PlanWarning* gap = nullptr;
    for (const PlanWarning& each : plan.warnings) {
        gap = each.text.rfind("cooling_min.per_kelvin: ", 0) == 0 ? &each : gap;
    }
    ASSERT_NE(gap, nullptr);
    EXPECT_EQ(gap->code, "known_gap");
    EXPECT_NE(warning(plan, "ambient_outside_classes"), nullptr);
}

TEST(Fill, IsNotReadyUntilEachValueIsAttested) {
    const Procedure procedure = parsed(filledUni());
    const Bench bench = test::demoBench("east");
    const WeldPlan plan = planned(procedure, sheet(10), &bench);
    EXPECT_TRUE(plan.missing.empty());
    EXPECT_EQ(plan.unattested, (Names{"heated_tool_C", "pressure_N_mm2.tolerance", "bead_min_mm"}));
    EXPECT_FALSE(plan.isComplete());
    EXPECT_FALSE(plan.isReady());
    EXPECT_EQ(plan.beadMinUm, 1500); // the card has the value, and says what it lacks
    EXPECT_TRUE(plan.scale);
    Procedure held = attestedWhere(procedure, "plate");
    EXPECT_EQ(
        planned(held, sheet(10), &bench).unattested,
        (Names{"pressure_N_mm2.tolerance", "bead_min_mm"}));
    held = attestedWhere(attestedWhere(held, "pressure.tolerance"), "bead_mm.table[1..12]");
    EXPECT_TRUE(planned(held, sheet(10), &bench).isReady());
    EXPECT_EQ(planned(held, sheet(12.001), &bench).unattested, Names{"bead_min_mm"});
}

// Below 4.5 mm PP's table has no soak; a shop fills it. At 4.5 mm itself the table's own row holds
// until the shop's does, and then the shop's, which ends there.
TEST(Fill, OfARangeAsksForItsAttestationInsideThatRangeOnly) {
    const std::string text = textOf("pp-dvs2207-11");
    const std::string filled = replaced(
        text, "{\"from_mm\": 4.5, \"to_mm\": 7, \"lower\": 135, \"upper\": 175}",
        "{\"from_mm\": 1.0, \"to_mm\": 4.5, \"lower\": 60, \"upper\": 135},\n"
        "{\"from_mm\": 4.5, \"to_mm\": 7, \"lower\": 135, \"upper\": 175}");
    EXPECT_TRUE(planned(parsed(text), sheet(4.5)).isComplete());
    const Procedure procedure = parsed(filled);
    EXPECT_EQ(planned(procedure, sheet(1)).unattested, Names{"soak_s"});
    EXPECT_EQ(planned(procedure, sheet(4.5)).unattested, Names{"soak_s"});
    EXPECT_TRUE(planned(procedure, sheet(4.501)).isComplete());
    const Procedure held = attestedWhere(procedure, "soak_s.table[1..4.5]");
    EXPECT_TRUE(planned(held, sheet(1)).isComplete());
    EXPECT_TRUE(planned(held, sheet(4.5)).isComplete());
    EXPECT_EQ(standingOf(planned(held, sheet(4.501)), "soak_s"), Standing::Memory);
    EXPECT_TRUE(planned(parsed(filled), sheet(8)).isComplete());
}

// A row that reaches from the source's range into the gap is a fill inside it.
TEST(Fill, IsSeenInARowThatReachesIntoTheGap) {
    const Procedure procedure = parsed(replaced(
        textOf("pp-dvs2207-11"), "{\"from_mm\": 4.5, \"to_mm\": 7, \"lower\": 135, \"upper\": 175}",
        "{\"from_mm\": 1, \"to_mm\": 7, \"lower\": 79, \"upper\": 175}"));
    EXPECT_EQ(planned(procedure, sheet(3)).unattested, Names{"soak_s"});
    EXPECT_TRUE(planned(procedure, sheet(6)).isComplete());
}

// The contract's ruling: soak.high = zero + (drag + preload) / rate.
TEST(SoakToDrag, EndsAtTheReadingThatTheDragTakes) {
    Bench bench = test::demoBench("east");
    bench.scale.zeroMilli = 2000;
    bench.scale.divisionMilli = 250;
    bench.scale.preload = newtons(25);
    bench.scale.ratePerUnit = {newtons(80)};
    PlanRequest request = sheet(10, 23);
    const WeldPlan plan = planned(wholeIso(), request, &bench);
    EXPECT_TRUE(plan.isReady());
    EXPECT_FALSE(plan.soakMaxPa || plan.soakMaxMn || plan.soakAimPa);
    // (30 + 25) N by 80 N/mm is 0.6875 mm above zero's 2 mm; 2.5 is the mark below it
    EXPECT_EQ(plan.scale->soak, (ReadingBand{2500, 2000, 2687}));
    EXPECT_EQ(standingOf(plan, "scale.soak"), Standing::Seen);
    EXPECT_EQ(warning(plan, "just_in_contact"), nullptr);
    bench.scale.preload = newtons(0);
    request.drag = newtons(0);
    const WeldPlan light = planned(wholeIso(), request, &bench);
    EXPECT_EQ(light.scale->soak, (ReadingBand{2000, 2000, 2000}));
    EXPECT_NE(warning(light, "just_in_contact"), nullptr);
}

} // namespace
} // namespace seamclock
