// heat through the terminal: of a plan, of a weld in a log, what if, and what it refuses.
#include "tests/app/cli/run_cli.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using nlohmann::json;
using test::Cli;
using test::Ran;

TEST(CliHeat, OfAPlanHasTheContractsNumbers) {
    const Cli cli;
    const json heat = cli.json("heat --procedure pe-hd-dvs2207-1-2005 --thickness 10");
    for (const char* name :
         {"melt_depth_mm", "skin_end_of_soak_C", "skin_faces_meet_C", "weld_plane_at_release_C"}) {
        ASSERT_TRUE(heat.contains(name)) << name;
        EXPECT_LT(heat["spread"][name]["low"], heat[name]) << name;
        EXPECT_GT(heat["spread"][name]["high"], heat[name]) << name;
    }
    EXPECT_FALSE(heat.contains("reading_fall")) << "no bench was named";
    const json bench = cli.json(
        "heat --procedure pe-hd-dvs2207-1-2005 --thickness 10 --length 900 --bench " +
        Cli::demoBench("west"));
    EXPECT_GT(bench["reading_fall"], 0);
    const Ran text = cli.run("heat --procedure pp-dvs2207-11 --thickness 12 --until 80");
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_NE(text.out.find("Heat in PP-H, estimated"), std::string::npos) << text.out;
    EXPECT_NE(text.out.find("weld plane at 80 °C, after the faces meet"), std::string::npos);
    EXPECT_NE(text.out.find("judges none"), std::string::npos);
}

TEST(CliHeat, WhatIfMovesTheNumbers) {
    const Cli cli;
    const std::string plan = "heat --procedure pe-hd-dvs2207-1-2005 --thickness 10";
    const json plain = cli.json(plan);
    const json late = cli.json(plan + " --changeover 20");
    EXPECT_LT(late["skin_faces_meet_C"].get<double>() + 10, plain["skin_faces_meet_C"]);
    const json early = cli.json(plan + " --cooling-time 6");
    EXPECT_GT(early["weld_plane_at_release_C"].get<double>() - 5, plain["weld_plane_at_release_C"]);
    const json hot = cli.json(plan + " --plate 240 --soak 150");
    EXPECT_GT(hot["melt_depth_mm"], plain["melt_depth_mm"]);
}

TEST(CliHeat, OfAWeldInALogTellsWhatItDid) {
    const Cli cli;
    const std::string log = cli.path("practice.seamlog");
    cli.json("rehearse --seam S1 --log " + log);
    cli.json("rehearse --seam S1 --seed 2 --late-changeover 12 --log " + log);
    const json first = cli.json("heat --log " + log + " --joint 1");
    const json second = cli.json("heat --log " + log);
    EXPECT_GT(first["times_s"]["alignment"], 10);
    EXPECT_GT(
        second["times_s"]["changeover"].get<double>(),
        first["times_s"]["changeover"].get<double>() + 5);
    EXPECT_LT(second["skin_faces_meet_C"], first["skin_faces_meet_C"]);
    EXPECT_TRUE(first.contains("reading_fall")) << "its bench is in the log";
    // the same stands in the weld's record, under its name
    const json record = cli.json("log show --joint 1 --log " + log);
    EXPECT_EQ(record["estimate"], first);
    const std::string text = cli.run("log show --joint 1 --log " + log).out;
    EXPECT_NE(text.find("Estimate: what this weld did"), std::string::npos) << text;
    EXPECT_NE(text.find("weld plane at release"), std::string::npos);
}

TEST(CliHeat, WritesItsCurves) {
    const Cli cli;
    const std::string path = cli.path("curves.csv");
    const Ran ran = cli.run("heat --procedure pvdf-dvs2207-15 --thickness 8 --curves " + path);
    EXPECT_EQ(ran.status, 0) << ran.err;
    const std::string csv = test::fileText(cli.folder().file("curves.csv"));
    EXPECT_EQ(csv.rfind("seconds,against,skin_C,melt_depth_mm", 0), 0U) << csv.substr(0, 80);
    for (const char* against : {",plate,", ",air,", ",sheet,"}) {
        EXPECT_NE(csv.find(against), std::string::npos) << against;
    }
}

TEST(CliHeat, RefusesInOneSentence) {
    const Cli cli;
    const auto refused = [&cli](const std::string& words) {
        const Ran ran = cli.run(words);
        EXPECT_EQ(ran.status, 2) << words;
        EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
        return ran.err;
    };
    EXPECT_NE(
        refused("heat --procedure pe-hd-dvs2207-1-2005 --thickness 10 --plate 500")
            .find("--plate \"500\" is out of range; allowed: 100 to 320 °C"),
        std::string::npos);
    EXPECT_NE(refused("heat --thickness 10").find("--procedure is missing"), std::string::npos);
    EXPECT_NE(
        refused("heat --procedure pe-uni10520 --thickness 10").find("lacks plate temperature"),
        std::string::npos);
    EXPECT_NE(
        refused("heat --procedure pe-hd-dvs2207-1-2005 --thickness 10 --until 300")
            .find("--until \"300\" is out of range; allowed: 0 to 200 °C"),
        std::string::npos);
    EXPECT_NE(
        refused("heat --log " + cli.path("none.seamlog")).find("none.seamlog"), std::string::npos);
}

} // namespace
} // namespace seamclock
