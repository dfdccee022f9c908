// The terminal on a bench that is known by its calibration, and on two sheets that differ.
#include "tests/app/cli/run_cli.h"

#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

using nlohmann::json;

constexpr const char* kPlan = "plan --procedure pe-hd-dvs2207-1-2005 --thickness 10 --length 500 ";

constexpr const char* kNorth = R"({
  "format": "seamclock-bench/1",
  "id": "north",
  "name": "North bench",
  "longest_seam_mm": 1500,
  "thinnest_sheet_mm": 3,
  "thickest_sheet_mm": 20,
  "drive": "foot_lever",
  "force_N": {"min": 150, "max": 2000},
  "scale": {"unit": "mm", "count": 2, "division": 0.5, "end": 50},
  "gap": {"factor": 1, "floor_mm": 3, "clamping_factor": 2},
  "edge_gap_max_mm": 0.5,
  "release_order": ["spring_off", "sheet_out"],
  "calibration": {
    "done_on": "2029-10-01",
    "due_on": "2030-10-01",
    "load_cell": "LC 5 kN, no. 88",
    "points": [
      {"reading": 4, "force_N": 160},
      {"reading": 8, "force_N": 480},
      {"reading": 12, "force_N": 800},
      {"reading": 20, "force_N": 1440}
    ]
  }
}
)";

// 80 N/mm above 2: 750 N and 10 N of drag are 11.5.
TEST(CliBench, PlansWithACalibrationsPoints) {
    const Cli cli;
    const std::string north = cli.file("north.json", kNorth);
    const json j = cli.json(kPlan + ("--drag 10 --bench " + north));
    EXPECT_EQ(j["scale"]["joining"]["set"], 11.5);
    EXPECT_EQ(j["scale"]["zero"], 2.0);
    EXPECT_EQ(j["calibration"]["due_on"], "2030-10-01");
    EXPECT_EQ(j["calibration"]["range"]["min"], 4.0);
    EXPECT_EQ(j["calibration"]["range"]["max"], 20.0);
    EXPECT_NEAR(j["calibration"]["band_95_N"]["joining"].get<double>(), 0, 1e-3); // no scatter
    const Ran shown = cli.run("bench show " + north);
    EXPECT_EQ(shown.status, 0);
    for (const char* words :
         {"foot lever", "at least 150 N", "at most 2000 N", "two, 2 to 50 mm",
          "4 points from 4 to "
          "20"}) {
        EXPECT_NE(shown.out.find(words), std::string::npos) << words << "\n" << shown.out;
    }
}

TEST(CliBench, RefusesAReadingOutsideItsCalibrationAndAForceItCantHold) {
    const Cli cli;
    const std::string north = cli.file("north.json", kNorth);
    // 0.15 · 10 · 1000 = 1500 N: 2 + 18.75
    Ran ran = cli.run(
        "plan --procedure pe-hd-dvs2207-1-2005 --thickness 10 --length 1000 --drag 0 --bench " +
        north);
    EXPECT_EQ(ran.status, 2);
    EXPECT_NE(
        ran.err.find("alignment reading 20.75 mm is outside 4 to 20 mm, the readings that the "
                     "calibration of bench north covers"),
        std::string::npos)
        << ran.err;
    ran = cli.run(
        "plan --procedure pe-hd-dvs2207-1-2005 --thickness 10 --length 1400 --drag 0 --bench " +
        north);
    EXPECT_EQ(ran.status, 2);
    EXPECT_NE(ran.err.find("above 2000 N, the most that bench north can hold"), std::string::npos)
        << ran.err;
}

TEST(CliBench, ShowsAFitsErrorsItsBandAndEachResidual) {
    const Cli cli;
    const std::string csv = cli.file(
        "s.csv", "reading_mm,force_N\n4,160\n5,243\n6,320\n"); // worked by hand in tests/core/bench
    const json j = cli.json("bench fit " + csv);
    EXPECT_NEAR(j["rate_sd_N_per_unit"].get<double>(), 1.7320508, 1e-6); // √6 / √2
    EXPECT_NEAR(j["student_t_95"].get<double>(), 12.706, 0.0005);
    EXPECT_NEAR(j["rate_95_N_per_unit"].get<double>(), 12.7062 * 1.7320508, 1e-3);
    EXPECT_NEAR(j["fitted"][1]["confidence_95_N"].get<double>(), 17.9693, 1e-3); // t √2
    EXPECT_NEAR(j["fitted"][1]["prediction_95_N"].get<double>(), 35.9386, 1e-3); // t √8
    EXPECT_NEAR(j["fitted"][1]["residual_N"].get<double>(), 2, 1e-9);
    EXPECT_EQ(j["range"]["min"], 4.0);
    EXPECT_NEAR(j["allowed_residual_N"].get<double>(), 6.4, 1e-9);
    const Ran ran = cli.run("bench fit " + csv);
    for (const char* words :
         {"± 1.732 (standard error", "Student's t 12.706", "17.969 N",
          "allowed 6.4 N, 2 % of the largest force (our judgement)"}) {
        EXPECT_NE(ran.out.find(words), std::string::npos) << words << "\n" << ran.out;
    }
    const Ran bent = cli.run(
        "bench fit " + cli.file("bent.csv", "reading,force_N\n1,80\n2,160\n3,240\n4,340\n"));
    EXPECT_EQ(bent.status, 2);
    EXPECT_NE(bent.err.find("not straight enough: point 3"), std::string::npos) << bent.err;
}

TEST(CliPlan, EstimatesWhatItWillDoAndCallsItAnEstimate) {
    const Cli cli;
    const std::string call = kPlan + ("--drag 40 --bench " + Cli::demoBench("east"));
    const json j = cli.json(call);
    ASSERT_TRUE(j.contains("estimate"));
    for (const char* key : {"closing_after_lock_mm", "reading_fall", "sheet_loss_mm"}) {
        const json& likely = j["estimate"][key];
        EXPECT_LT(j["estimate"]["spread"][key]["low"], likely) << key;
        EXPECT_LT(likely, j["estimate"]["spread"][key]["high"]) << key;
    }
    EXPECT_EQ(j["rechecks_min"].size(), 2U);
    EXPECT_NE(cli.run(call).out.find("Estimate: what this plan will do"), std::string::npos);
    EXPECT_FALSE(cli.json(kPlan)["estimate"].contains("reading_fall"));
}

TEST(CliPlan, JudgesTheSecondSheet) {
    const Cli cli;
    EXPECT_EQ(cli.run(kPlan + std::string("--second-thickness 11")).status, 0);
    Ran ran = cli.run(kPlan + std::string("--second-thickness 11.1"));
    EXPECT_EQ(ran.status, 2);
    EXPECT_NE(
        ran.err.find("the sheets are 10 and 11.1 mm thick, 1.1 mm apart; allowed a tenth of the "
                     "thinner, 1 mm"),
        std::string::npos)
        << ran.err;
    const json j = cli.json(kPlan + std::string("--mfr '0.2 (190/5)' --second-mfr '1.7 (190/5)'"));
    EXPECT_EQ(j["warnings"].back()["code"], "mfr_far_apart");
    ran = cli.run(kPlan + std::string("--mfr 0,5"));
    EXPECT_EQ(ran.status, 2);
    EXPECT_NE(ran.err.find("--mfr \"0,5\" is not a melt flow rate"), std::string::npos) << ran.err;
    ran = cli.run(kPlan + std::string("--second-thickness thick"));
    EXPECT_EQ(ran.status, 2);
}

} // namespace
} // namespace seamclock::test
