#include "core/plan/sheets.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using Codes = std::vector<std::string>;

SheetFacts sheet(const char* material, std::int64_t um, std::optional<std::string> mfr = {}) {
    return {material, std::nullopt, um, std::move(mfr)};
}

Codes codes(const SheetFacts& first, const SheetFacts& second, const char* material = "PE-HD") {
    const auto judged = judgeSheets(first, second, material);
    EXPECT_TRUE(judged) << judged.error().detail;
    Codes out;
    for (const PlanWarning& each : judged ? *judged : std::vector<PlanWarning>()) {
        out.push_back(each.code);
    }
    return out;
}

std::string refusal(const SheetFacts& first, const SheetFacts& second, const char* material) {
    const auto judged = judgeSheets(first, second, material);
    EXPECT_FALSE(judged);
    EXPECT_TRUE(judged || judged.error().code == ErrorCode::OutOfRange);
    return judged ? "" : judged.error().detail;
}

TEST(Sheets, OfOneKindAreWeldedWithoutAWord) {
    EXPECT_EQ(codes(sheet("PE-HD", 10'000), sheet("PE-HD", 10'000)), Codes{});
    EXPECT_EQ(codes(sheet("pe-hd ", 10'000), sheet("PE-HD", 10'000)), Codes{});
    EXPECT_EQ(codes(sheet("PE-HD", 8'000), sheet("HDPE", 8'000)), Codes{"grades_differ"});
}

TEST(Sheets, OfDifferentPlasticsAreRefused) {
    EXPECT_EQ(
        refusal(sheet("PE-HD", 10'000), sheet("PP", 10'000), "PE-HD"),
        "a sheet is of \"PP\", the procedure is for \"PE-HD\": only the same plastic is welded");
    refusal(sheet("PP", 10'000), sheet("PP", 10'000), "PE-HD");
    refusal(sheet("PE-UHMW", 10'000), sheet("PE-HD", 10'000), "PE-HD");
    refusal(sheet("", 10'000), sheet("PE-HD", 10'000), "PE-HD");
}

// Difference at most a tenth of the thickness: the thinner one's, on its limit allowed.
TEST(Sheets, MayDifferByATenthOfTheThinner) {
    EXPECT_EQ(codes(sheet("PP", 10'000), sheet("PP", 11'000), "PP"), Codes{});
    EXPECT_EQ(codes(sheet("PP", 11'000), sheet("PP", 10'000), "PP"), Codes{});
    EXPECT_EQ(
        refusal(sheet("PP", 10'000), sheet("PP", 11'001), "PP"),
        "the sheets are 10 and 11.001 mm thick, 1.001 mm apart; allowed a tenth of the thinner, 1 "
        "mm");
    refusal(sheet("PP", 8'900), sheet("PP", 10'000), "PP");
}

TEST(Sheets, OfDifferentGradesAreNotMixedUnasked) {
    SheetFacts grey = sheet("PP", 6000);
    SheetFacts conductive = sheet("PP", 6000);
    grey.grade = "VH 6 grey";
    EXPECT_EQ(codes(grey, conductive, "PP"), Codes{}); // the other's isn't known
    conductive.grade = "VH 6 el";
    EXPECT_EQ(codes(grey, conductive, "PP"), Codes{"grades_differ"});
    conductive.grade = "vh 6 GREY";
    EXPECT_EQ(codes(grey, conductive, "PP"), Codes{});
    grey.grade = "natural a to z";
    conductive.grade = "NATURAL A TO Z";
    EXPECT_EQ(codes(grey, conductive, "PP"), Codes{});
    EXPECT_EQ(codes(sheet("PP-H", 6000), sheet("PP-R", 6000), "PP"), Codes{"grades_differ"});
}

// DVS 2207-1 names MFR 190/5 of 0.3 to 1.7 or 0.2 to 0.7 g/10 min for PE-HD. [seen] A factor of
// three elsewhere is our judgement.
TEST(Sheets, WithMeltFlowsFarApartAreWarnedOf) {
    struct Row {
        const char* material;
        const char* first;
        const char* second;
        Codes codes;
    };
    const std::vector<Row> kRows{
        {"PE-HD", "0.3 g/10 min (190/5)", "1.7 g/10 min (190/5)", {}}, // one range holds both
        {"PE-HD", "0.2 g/10 min (190/5)", "0.7 g/10 min (190/5)", {}},
        {"PE-HD", "0.5", "0.5", {}},
        {"PE-HD", "0.2 (190/5)", "0.71 (190/5)", {"mfr_far_apart"}},
        {"PE-HD", "0.29 (190/5)", "0.8 (190/5)", {"mfr_far_apart"}},
        {"PE-HD", "0.19 (190/5)", "0.3 (190/5)", {"mfr_outside_range"}},
        {"PE-HD", "1.71 (190/5)", "1.0 (190/5)", {"mfr_outside_range"}},
        {"PE-HD", "0.1 (190/5)", "0.5 (190/5)", {"mfr_outside_range", "mfr_far_apart"}},
        {"PE-HD", "20 (190/21.6)", "25 (190/21.6)", {}}, // no range is printed for this test
        {"PE-HD", "0.5 (190/5)", "0.5 (190/2.16)", {"mfr_unknown_condition"}},
        {"PP", "0.5 (190/5)", "1.5 (190/5)", {}},
        {"PP", "0.5 (190/5)", "1.51 (190/5)", {"mfr_far_apart"}},
        {"PP", "not printed", "1.51 (190/5)", {}},
    };
    for (const Row& row : kRows) {
        SCOPED_TRACE(std::string(row.first) + " and " + row.second);
        const SheetFacts first = sheet(row.material, 10'000, row.first);
        const SheetFacts second = sheet(row.material, 10'000, row.second);
        EXPECT_EQ(codes(first, second, row.material), row.codes);
        EXPECT_EQ(codes(second, first, row.material), row.codes);
    }
    const auto judged = judgeSheets(
        sheet("PE-HD", 10'000, "0.2 g/10 min (190/5)"),
        sheet("PE-HD", 10'000, "1.7 g/10 min (190/5)"), "PE-HD");
    ASSERT_TRUE(judged);
    EXPECT_EQ(
        judged->front().text,
        "melt flow rates 0.2 g/10 min (190/5) and 1.7 g/10 min (190/5) are far apart: no one range "
        "of DVS 2207-1 (0.3 to 1.7, 0.2 to 0.7) holds both");
}

TEST(MeltFlow, IsReadAsTheSheetsPaperWritesIt) {
    EXPECT_DOUBLE_EQ(meltFlowIn(" 0.5 g/10 min (190/5)")->gPer10Min, 0.5);
    EXPECT_EQ(meltFlowIn("0.5 g/10 min ( 190/5 )")->condition, "190/5");
    EXPECT_EQ(meltFlowIn("0.5g")->condition, "");
    EXPECT_EQ(meltFlowIn("0.5 (190/5")->condition, "");
    for (const char* text : {"", "-", "0", "-1", "0,5", "0.3-0.7", "about 1", "inf", "nan", "1x"}) {
        EXPECT_FALSE(meltFlowIn(text)) << text;
    }
}

} // namespace
} // namespace seamclock
