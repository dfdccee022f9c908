#include "core/plan/plan_codec.h"

#include "tests/support/shipped.h"

namespace seamclock {
namespace {

PlanRequest sheet(double mm, double length = 860) {
    PlanRequest request;
    request.thickness = millimetres(mm);
    request.lengths = {millimetres(length)};
    request.drag = newtons(33.5);
    request.alignMedian = Milliseconds(41'250);
    return request;
}

WeldPlan onEast(double mm, double length = 860) {
    const Bench east = test::demoBench("east");
    const auto plan =
        makePlan(sheet(mm, length), test::shippedProcedure("pe-hd-dvs2207-1-2005"), &east);
    EXPECT_TRUE(plan) << plan.error().detail;
    return plan ? *plan : WeldPlan{};
}

/// What a stored event with this plan would be read as.
Result<WeldPlan> stored(const Json& json) {
    const auto body = canonicalJson(json);
    if (!body) {
        return tl::unexpected<Error>(body.error());
    }
    const auto text = CanonicalText::parse(*body);
    return text ? planFromJson(text->root()) : tl::unexpected<Error>(text.error());
}

TEST(PlanJson, ComesBackAsItWent) {
    int count = 0;
    const Bench west = test::demoBench("west");
    for (const char* id :
         {"pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015", "pe-iso21307-slp", "pe-uni10520",
          "pp-dvs2207-11", "pvdf-dvs2207-15"}) {
        const Procedure procedure = test::shippedProcedure(id);
        for (double mm = 2; mm < 70; mm += 2.3) {
            for (const Bench* bench : std::initializer_list<const Bench*>{nullptr, &west}) {
                for (const BandRule rule : {BandRule::Line, BandRule::BandEnd}) {
                    PlanRequest request = sheet(mm);
                    request.coolingRule = rule;
                    if (count % 3 == 0) {
                        request.drag.reset();
                        request.alignMedian.reset();
                        request.ambient = Temperature::celsius(41);
                    }
                    const auto plan = makePlan(request, procedure, bench);
                    if (!plan) {
                        continue; // outside this procedure or this bench
                    }
                    const auto back = stored(planToJson(*plan));
                    ASSERT_TRUE(back) << back.error().detail;
                    EXPECT_EQ(*back, *plan);
                    ++count;
                }
            }
        }
    }
    EXPECT_GT(count, 200);
}

TEST(PlanJson, NamesWhatNobodyAttestedOnlyWhereThereIsSuch) {
    WeldPlan plan = onEast(8);
    EXPECT_FALSE(planToJson(plan).contains("unattested"));
    EXPECT_FALSE(Json::parse(planReportJson(plan)).contains("unattested"));
    plan.unattested = {"soak_s", "bead_min_mm"};
    plan.halfCooling = true;
    const auto back = stored(planToJson(plan));
    ASSERT_TRUE(back) << back.error().detail;
    EXPECT_EQ(*back, plan);
    const Json report = Json::parse(planReportJson(plan));
    EXPECT_EQ(report["unattested"], (Json{"soak_s", "bead_min_mm"}));
    EXPECT_EQ(report["ready"], false);
    EXPECT_EQ(report["half_cooling"], true);
}

// The form is fixed: it stands in stored logs. Worked by hand: PE, 8 × 860 mm, 0.15 N/mm² is 1032
// N; at 62.5 N/mm with 33.5 N of drag (1032 + 33.5) / 62.5 = 17.048, ± 68.8 N; soak at most (137.6
// − 33.5) / 62.5 = 1.6656, aim (103.2 − 33.5) / 62.5 = 1.1152. Cooling 10 + 6/5 = 11.2 min.
TEST(PlanJson, HasTheContractsKeysAndUnits) {
    Json json = planToJson(onEast(8));
    EXPECT_EQ(json["sources"].size(), 22U);
    for (const Json& source : json["sources"]) {
        EXPECT_EQ(source.size(), 3U);
        EXPECT_TRUE(
            source.contains("value") && source.contains("source") && source.contains("standing"));
    }
    json.erase("sources");
    json.erase("checks");
    EXPECT_EQ(json, Json::parse(R"({
        "v": 1, "procedure": "pe-hd-dvs2207-1-2005", "edition": "2005-09", "material": "PE-HD",
        "bench": "east", "thickness_um": 8000, "length_um": 860000, "ambient_mC": 20000,
        "cooling_rule": "line", "half_cooling": false,
        "pressure_Pa": {"alignment": 150000, "soak_aim": 15000, "soak_max": 20000,
                        "joining": 150000, "tolerance": 10000},
        "force_mN": {"alignment": 1032000, "soak_max": 137600, "joining": 1032000, "drag": 33500},
        "scale": {"unit": "mm", "division_milli": 500, "zero_milli": 0,
                  "alignment": {"set_milli": 17000, "low_milli": 15948, "high_milli": 18148},
                  "soak": {"set_milli": 1000, "low_milli": 0, "high_milli": 1665},
                  "joining": {"set_milli": 17000, "low_milli": 15948, "high_milli": 18148}},
        "plate_mC": {"min": 200000, "target": 210000, "max": 220000},
        "gap_um": 8000, "clamping_gap_um": 16000, "edge_gap_max_um": 500,
        "bead_min_um": 1500, "misalignment_max_um": 800,
        "align_median_ms": 41250, "align_late_ms": 82500,
        "soak_ms": 80000, "soak_low_ms": 80000, "soak_high_ms": 88000,
        "changeover_max_ms": 6400, "build_up_ms": {"low": 3840, "target": 6400, "high": 8320},
        "cooling_ms": 672000, "rechecks_ms": [60000, 224000],
        "missing": [], "warnings": [],
        "release_order": ["clamps_eased", "bars_opened", "spring_off", "sheet_out"]
    })"));
}

TEST(PlanJson, LeavesOutWhatHasNoValue) {
    PlanRequest request = sheet(60);
    request.ambient = Temperature::celsius(42);
    request.alignMedian.reset();
    const auto plan = makePlan(request, test::shippedProcedure("pe-hd-dvs2207-1-2015"), nullptr);
    ASSERT_TRUE(plan);
    const Json json = planToJson(*plan);
    for (const char* absent :
         {"bench", "scale", "bead_min_um", "align_median_ms", "align_late_ms", "soak_ms",
          "soak_low_ms", "soak_high_ms", "changeover_max_ms", "build_up_ms", "cooling_ms",
          "rechecks_ms"}) {
        EXPECT_FALSE(json.contains(absent)) << absent;
    }
    EXPECT_EQ(stored(json), *plan);
}

// Each field in turn: absent, it is either optional or missed; of another type, it is always
// refused.
TEST(PlanJson, IsReadStrictly) {
    const Json good = planToJson(onEast(8));
    ASSERT_TRUE(stored(good));
    const std::set<std::string> kOptional{
        "bench",           "scale",         "plate_mC",          "bead_min_um",
        "align_median_ms", "align_late_ms", "changeover_max_ms", "build_up_ms"};
    for (const auto& item : good.items()) {
        SCOPED_TRACE(item.key());
        Json without = good;
        without.erase(item.key());
        EXPECT_EQ(stored(without).has_value(), kOptional.count(item.key()) == 1);
        for (const Json& wrong : {Json("x"), Json(1.5), Json(nullptr), Json::object(), Json(-7)}) {
            if (wrong.type() == item.value().type() && item.value().is_string()) {
                continue; // another text is still a text
            }
            Json spoiled = good;
            spoiled[item.key()] = wrong;
            if ((item.key() == "ambient_mC" && wrong == Json(-7)) ||
                (item.key() == "pressure_Pa" && wrong == Json::object())) {
                continue; // it may be frosty, and a procedure may lack every pressure
            }
            const auto read = stored(spoiled);
            ASSERT_FALSE(read) << wrong;
            EXPECT_EQ(read.error().code, ErrorCode::Malformed);
        }
    }
    for (const char* inside : {"pressure_Pa", "force_mN", "scale", "plate_mC", "build_up_ms"}) {
        Json spoiled = good;
        spoiled[inside]["colour"] = 1;
        EXPECT_FALSE(stored(spoiled)) << inside;
    }
    for (const char* phase : {"alignment", "soak", "joining"}) {
        for (const char* key : {"set_milli", "low_milli", "high_milli"}) {
            Json spoiled = good;
            spoiled["scale"][phase].erase(key);
            EXPECT_FALSE(stored(spoiled)) << phase << key;
        }
        Json outside = good;
        outside["scale"][phase]["set_milli"] = 99'000;
        EXPECT_FALSE(stored(outside)) << phase;
    }
    Json spoiled = good;
    spoiled["colour"] = 1;
    EXPECT_FALSE(stored(spoiled));
    spoiled = good;
    spoiled["v"] = 2;
    EXPECT_EQ(stored(spoiled).error().detail, "plan, line 1, /v: 2 is outside 1 to 1");
    spoiled = good;
    spoiled["sources"][0]["standing"] = "sure";
    EXPECT_FALSE(stored(spoiled));
    spoiled = good;
    spoiled["cooling_rule"] = "middle";
    EXPECT_FALSE(stored(spoiled));
    EXPECT_FALSE(stored(Json::array()));
    EXPECT_FALSE(stored(Json(5)));
}

TEST(PlanReport, HasTheTerminalsKeysInTheTradesUnits) {
    const Json report = Json::parse(planReportJson(onEast(8)));
    EXPECT_EQ(report["procedure"], "pe-hd-dvs2207-1-2005");
    EXPECT_EQ(report["thickness_mm"], 8.0);
    EXPECT_EQ(report["length_mm"], 860.0);
    EXPECT_EQ(report["ambient_C"], 20.0);
    EXPECT_EQ(report["heated_tool_C"], (Json{{"min", 200.0}, {"target", 210.0}, {"max", 220.0}}));
    EXPECT_EQ(
        report["pressure_N_mm2"], (Json{
                                      {"alignment", 0.15},
                                      {"soak_aim", 0.015},
                                      {"soak_max", 0.02},
                                      {"joining", 0.15},
                                      {"tolerance", 0.01}}));
    EXPECT_EQ(
        report["force_N"],
        (Json{{"alignment", 1032.0}, {"soak_max", 137.6}, {"joining", 1032.0}, {"drag", 33.5}}));
    EXPECT_EQ(report["scale"]["unit"], "mm");
    EXPECT_EQ(report["scale"]["joining"], (Json{{"set", 17.0}, {"low", 15.948}, {"high", 18.148}}));
    EXPECT_EQ(report["scale"]["soak"], (Json{{"set", 1.0}, {"low", 0.0}, {"high", 1.665}}));
    EXPECT_TRUE(report["scale"].contains("alignment"));
    EXPECT_EQ(report["gap_mm"], 8.0);
    EXPECT_EQ(report["clamping_gap_mm"], 16.0);
    EXPECT_EQ(report["bead_min_mm"], 1.5);
    EXPECT_EQ(report["soak_s"], 80.0);
    EXPECT_EQ(report["changeover_max_s"], 6.4);
    EXPECT_EQ(report["build_up_s"], 6.4);
    EXPECT_EQ(report["cooling_min"], 11.2);
    EXPECT_EQ(report["ready"], true);
    EXPECT_EQ(report["missing"], Json::array());
    EXPECT_EQ(report["warnings"], Json::array());
    EXPECT_FALSE(report["sources"].empty());
}

TEST(PlanReport, PrintsItsNumbersAsAPersonWould) {
    const std::string text = planReportJson(onEast(10, 700));
    EXPECT_NE(text.find("\"cooling_min\": 13.6,"), std::string::npos) << text;
    EXPECT_NE(text.find("\"changeover_max_s\": 7.2,"), std::string::npos);
    EXPECT_NE(text.find("\"soak_max\": 0.02"), std::string::npos);
}

TEST(PlanReport, OfAnIncompleteProcedureNamesWhatIsMissing) {
    const auto plan = makePlan(sheet(4), test::shippedProcedure("pp-dvs2207-11"), nullptr);
    ASSERT_TRUE(plan);
    const Json report = Json::parse(planReportJson(*plan));
    EXPECT_EQ(report["ready"], false);
    EXPECT_EQ(report["missing"], Json::array({"soak_s"}));
    EXPECT_FALSE(report.contains("soak_s"));
    EXPECT_EQ(report["warnings"][0]["code"], "known_gap");
}

TEST(PlanReport, OfNoBenchHasNoScaleAndIsReadyAsFarAsTheProcedureGoes) {
    const auto plan = makePlan(sheet(8), test::shippedProcedure("pe-hd-dvs2207-1-2005"), nullptr);
    ASSERT_TRUE(plan);
    const Json report = Json::parse(planReportJson(*plan));
    EXPECT_FALSE(report.contains("scale"));
    EXPECT_FALSE(report.contains("bench"));
    EXPECT_EQ(report["missing"], Json::array());
    EXPECT_EQ(report["ready"], true);
    EXPECT_FALSE(plan->isReady());
}

TEST(PlanReport, WarnsInTheScalesUnitAndInDegrees) {
    const Bench west = test::demoBench("west");
    PlanRequest request = sheet(6, 900);
    request.ambient = Temperature::celsius(47.5);
    const auto plan = makePlan(request, test::shippedProcedure("pp-dvs2207-11"), &west);
    ASSERT_TRUE(plan) << plan.error().detail;
    const Json report = Json::parse(planReportJson(*plan));
    EXPECT_EQ(
        report["warnings"][0], (Json{
                                   {"code", "ambient_outside_range"},
                                   {"text", "ambient 47.5 °C is outside 5 to 45 °C"},
                                   {"limit", 45.0},
                                   {"actual", 47.5},
                                   {"unit", "°C"}}));
    EXPECT_EQ(report["warnings"][1]["code"], "scale_coarse");
    EXPECT_EQ(report["warnings"][1]["limit"], 1.0);
    EXPECT_EQ(report["warnings"][1]["actual"], 0.375); // 54 N at 143.8 N/mm, down
    EXPECT_EQ(report["warnings"][1]["unit"], "mm");
}

} // namespace
} // namespace seamclock
