// Acts as JSON: there and back, and every way a stored one can be wrong. The bytes of one act of
// each kind stand here in full: they are what takes are kept as.
#include "core/vbench/bench_act_codec.h"

#include <gtest/gtest.h>
#include <random>

namespace seamclock {
namespace {

const std::vector<std::pair<BenchAct, std::string>>& kept() {
    static const std::vector<std::pair<BenchAct, std::string>> kRows{
        {SetPlate{210'500}, R"({"act":"set_plate","target_mC":210500})"},
        {WipePlate{}, R"({"act":"wipe_plate"})"},
        {TakeFilmOff{1}, R"({"act":"take_film_off","sheet":1})"},
        {PlaneEdge{0}, R"({"act":"plane_edge","sheet":0})"},
        {TouchEdge{1, 300}, R"({"act":"touch_edge","permille":300,"sheet":1})"},
        {SetGap{10'000, 9'500}, R"({"act":"set_gap","left_um":10000,"right_um":9500})"},
        {ClampSheet{1, 0, -500, 250},
         R"({"act":"clamp_sheet","lean_um":250,"left_um":0,"right_um":-500,"sheet":1})"},
        {TurnWheel{-25'000}, R"({"act":"turn_wheel","um_per_s":-25000})"},
        {LetGoWheel{}, R"({"act":"let_go_wheel"})"},
        {LockWheel{}, R"({"act":"lock_wheel"})"},
        {UnlockWheel{}, R"({"act":"unlock_wheel"})"},
        {BringPlateIn{}, R"({"act":"plate_in"})"},
        {TakePlateOut{}, R"({"act":"plate_out"})"},
        {EaseClamps{}, R"({"act":"ease_clamps"})"},
        {OpenBars{}, R"({"act":"open_bars"})"},
        {LetSpringOff{}, R"({"act":"let_spring_off"})"},
        {LiftSheet{}, R"({"act":"lift_sheet"})"},
        {ShimSheet{1, 200, 0, -400},
         R"({"act":"shim_sheet","below_um":-400,"left_um":200,"right_um":0,"sheet":1})"}};
    return kRows;
}

TEST(BenchActCodec, EveryKindOfActHasItsBytesAndComesBack) {
    ASSERT_EQ(kept().size(), std::variant_size_v<BenchAct>);
    for (std::size_t i = 0; i < kept().size(); ++i) {
        const auto& [act, bytes] = kept()[i];
        EXPECT_EQ(act.index(), i);
        EXPECT_EQ(writeBenchAct(act), bytes);
        EXPECT_EQ(canonicalJson(benchActJson(act)).value(), bytes);
        const auto read = readBenchAct("act", bytes);
        ASSERT_TRUE(read) << read.error().detail;
        EXPECT_EQ(*read, act);
    }
}

TEST(BenchActCodec, AnyValueThatTheBenchTakesComesBackExactly) {
    using namespace act_limits;
    std::mt19937_64 random(7); // its stream is the standard's; the test needs no distribution
    const auto any = [&random](std::int64_t low, std::int64_t high) {
        return low +
               static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(high - low + 1));
    };
    for (int i = 0; i < 2000; ++i) {
        const auto off = [&] { return any(-kMostOffUm, kMostOffUm); };
        const int sheet = static_cast<int>(any(0, 1));
        for (const BenchAct& act : std::initializer_list<BenchAct>{
                 SetPlate{any(0, kHottestMc)}, TurnWheel{any(-kFastestUmPerS, kFastestUmPerS)},
                 SetGap{any(0, kWidestGapUm), any(0, kWidestGapUm)},
                 ClampSheet{sheet, off(), off(), off()}, ShimSheet{sheet, off(), off(), off()},
                 TouchEdge{sheet, static_cast<int>(any(0, 1000))}}) {
            EXPECT_EQ(readBenchAct("act", writeBenchAct(act)).value(), act);
        }
    }
}

TEST(BenchActCodec, WhatIsWrongIsSaidInOneSentenceWithValueAndRange) {
    const struct {
        const char* text;
        const char* detail;
    } kRows[] = {
        {R"({"act":"turn_wheel","um_per_s":40001})",
         "act, line 1, /um_per_s: 40001 is outside -40000 to 40000"},
        {R"({"act":"turn_wheel","um_per_s":2.5})",
         "act, line 1, /um_per_s: 2.5 is not a whole number; allowed -40000 to 40000"},
        {R"({"act":"turn_wheel"})", "act, line 1, /um_per_s: is missing"},
        {R"({"act":"plane_edge","sheet":2})", "act, line 1, /sheet: 2 is outside 0 to 1"},
        {R"({"act":"touch_edge","permille":-1,"sheet":0})",
         "act, line 1, /permille: -1 is outside 0 to 1000"},
        {R"({"act":"set_plate","target_mC":9223372036854775808})",
         "act, line 1, /target_mC: 9223372036854775808 is not a whole number; allowed 0 to 300000"},
        {R"({"act":"wipe_plate","sheet":0})",
         "act, line 1, /sheet: is not a field that is known here"},
        {R"({"act":7})", "act, line 1, /act: 7 is not a text"},
        {R"({"sheet":0})", "act, line 1, /act: is missing"},
        {R"(["wipe_plate"])", "act, line 1, the whole: expected a JSON object"},
    };
    for (const auto& row : kRows) {
        const auto read = readBenchAct("act", row.text);
        ASSERT_FALSE(read) << row.text;
        EXPECT_EQ(read.error().code, ErrorCode::Malformed);
        EXPECT_EQ(read.error().detail, row.detail);
    }
    for (const char* text : {"", "{", R"({"act":"wipe_plate","act":"plate_in"})", "\xff"}) {
        EXPECT_EQ(readBenchAct("act", text).error().code, ErrorCode::Malformed) << text;
    }
    const auto unknown = readBenchAct("act", R"({"act":"kick\n"})");
    ASSERT_FALSE(unknown);
    EXPECT_EQ(
        unknown.error().detail.substr(0, 76),
        R"(act, line 1, /act: "kick\n" is no act at the bench; allowed: set_plate, wipe)");
}

TEST(BenchActCodec, OfALargerObjectTheActsFieldsAloneAreRead) {
    const auto text =
        parseJson("take", R"({"acts":[{"act":"plate_in","at_ms":5},{"act":"x","at_ms":7}]})");
    ASSERT_TRUE(text);
    JsonReader take(*text);
    auto acts = take.objects("acts");
    ASSERT_EQ(acts.size(), 2U);
    EXPECT_EQ(readBenchActFrom(acts[0]).value(), BenchAct(BringPlateIn{}));
    EXPECT_EQ(acts[0].integer("at_ms", 0, 10), 5);
    acts[0].refuseUnknown();
    EXPECT_TRUE(take.findings().empty());
    EXPECT_FALSE(readBenchActFrom(acts[1]));
    ASSERT_EQ(take.findings().size(), 1U);
    EXPECT_EQ(take.findings()[0].field, "/acts/1/act");
}

} // namespace
} // namespace seamclock
