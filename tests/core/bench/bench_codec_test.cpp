#include "core/bench/bench_codec.h"

#include "tests/support/shipped.h"

#include <regex>

namespace seamclock {
namespace {

using test::replaced;

std::string east() {
    return test::textOf(test::resource("demo/bench-east.json"));
}

TEST(BenchFile, KeepsItsBytesAndTheirHash) {
    const auto read = readBench("east", east());
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_EQ(read->bytes, east());
    EXPECT_EQ(read->sha256.size(), 64U);
    const auto fromFile = readBenchFile(test::resource("demo/bench-east.json"));
    ASSERT_TRUE(fromFile);
    EXPECT_EQ(fromFile->sha256, read->sha256);
    EXPECT_EQ(fromFile->bench, read->bench);
}

TEST(BenchFile, MayLeaveOutItsCapAndItsCalibration) {
    std::string text = east();
    const auto from = text.find(",\n  \"calibration\"");
    ASSERT_NE(from, std::string::npos);
    text = text.substr(0, from) + "\n}\n";
    const auto read = readBench("east", text);
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_FALSE(read->bench.calibration);
    EXPECT_FALSE(read->bench.gapRule.cap);
}

struct Spoiled {
    const char* was;
    const char* now;
    const char* sentence;
};

TEST(BenchFile, IsRefusedWithLineFieldValueAndRange) {
    const std::vector<Spoiled> kRows{
        {"bench/1", "bench/2",
         "b, line 2, /format: \"seamclock-bench/2\" is not seamclock-bench/1"},
        {"\"id\": \"east\"", "\"id\": \"\"", "b, line 3, /id: \"\" is not a text"},
        {"2600", "-5", "b, line 5, /longest_seam_mm: -5 is outside 10 to 20000"},
        {"2600", "\"long\"",
         "b, line 5, /longest_seam_mm: \"long\" is not a number; allowed 10 to 20000"},
        {"\"thickest_sheet_mm\": 30", "\"thickest_sheet_mm\": 2",
         "b, line 7, /thickest_sheet_mm: 2 is below thinnest_sheet_mm 3"},
        {"\"division\": 0.5", "\"division\": 0",
         "b, line 10, /scale/division: 0 is outside 0.001 to 1000"},
        {"\"division\": 0.5", "\"division\": 0.0005",
         "b, line 10, /scale/division: 0.0005 is outside 0.001 to 1000"},
        {"\"division\": 0.5", "\"division\": 0.3333",
         "b, line 10, /scale/division: 0.3333 is finer than a thousandth of the unit"},
        {"\"end\": 48", "\"end\": 0.4",
         "b, line 12, /scale/end: 0.4 is not a division above zero 0"},
        {"{\"rate_N_per_unit\": 62.5}", "",
         "b, line 13, /scale/springs: 0 springs are outside 1 to 4"},
        {"62.5", "0", "b, line 13, /scale/springs/0/rate_N_per_unit: 0 is outside 0.1 to 100000"},
        {"\"preload_N\": 0", "\"preload_N\": -3",
         "b, line 14, /scale/preload_N: -3 is outside 0 to 10000"},
        {"\"floor_mm\": 3", "\"floor_mm\": 3, \"cap_mm\": 2",
         "b, line 16, /gap/cap_mm: 2 is below floor_mm 3"},
        {"\"edge_gap_max_mm\": 0.5,", "", "b, line 1, /edge_gap_max_mm: is missing"},
        {"bars_opened", "bars_bent",
         "b, line 18, /release_order: \"bars_bent\" is not one of clamps_eased, bars_opened, "
         "spring_off, sheet_out"},
        {"bars_opened", "clamps_eased",
         "b, line 18, /release_order: \"clamps_eased\" stands twice"},
        {"\"spring_off\", \"sheet_out\"", "\"sheet_out\", \"spring_off\"",
         "b, line 18, /release_order: does not end with \"sheet_out\""},
        {"[\"clamps_eased\", \"bars_opened\", \"spring_off\", \"sheet_out\"]", "[]",
         "b, line 18, /release_order: does not end with \"sheet_out\""},
        {"2029-09-12", "2029-02-30",
         "b, line 19, /calibration/done_on: \"2029-02-30\" is not a date like 2030-01-07"},
        {"2030-09-12", "12.9.2030",
         "b, line 19, /calibration/due_on: \"12.9.2030\" is not a date like 2030-01-07"},
        {"2030-09-12", "2028-09-12",
         "b, line 19, /calibration/due_on: 2028-09-12 is before done_on 2029-09-12"},
        {"\"name\"", "\"colour\": \"red\", \"name\"",
         "b, line 4, /colour: is not a field that is known here"},
    };
    for (const Spoiled& row : kRows) {
        SCOPED_TRACE(row.sentence);
        const auto read = readBench("b", replaced(east(), row.was, row.now));
        ASSERT_FALSE(read);
        EXPECT_EQ(read.error().code, ErrorCode::Malformed);
        EXPECT_EQ(read.error().detail, row.sentence);
    }
}

TEST(BenchFile, MayReleaseInASubsetOfTheSteps) {
    const auto read = readBench(
        "b", replaced(
                 east(), "[\"clamps_eased\", \"bars_opened\", \"spring_off\", \"sheet_out\"]",
                 "[\"spring_off\", \"sheet_out\"]"));
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_EQ(read->bench.releaseOrder, (std::vector<std::string>{"spring_off", "sheet_out"}));
}

TEST(BenchFile, ThatIsEmptyOrTornIsRefused) {
    EXPECT_FALSE(readBench("b", ""));
    EXPECT_FALSE(readBench("b", std::string(100, '\0')));
    EXPECT_FALSE(readBench("b", "[]"));
    EXPECT_FALSE(readBench("b", "{}"));
    const std::string text = east();
    for (std::size_t size = 0; size < text.find_last_of('}'); size += 5) {
        EXPECT_FALSE(readBench("b", text.substr(0, size))) << size;
    }
}

TEST(BenchTemplate, CannotBeUsedBeforeItIsFilledIn) {
    const auto read = readBench("template", benchTemplate());
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().detail, "template, line 3, /id: \"\" is not a text");
}

TEST(BenchTemplate, ReadsOnceEveryFieldIsFilledIn) {
    std::string text = benchTemplate();
    const std::vector<std::pair<std::string, std::string>> kFilled{
        {"\"id\": \"\"", "\"id\": \"x\""},
        {"\"name\": \"\"", "\"name\": \"y\""},
        {"\"longest_seam_mm\": null", "\"longest_seam_mm\": 1500"},
        {"\"thinnest_sheet_mm\": null", "\"thinnest_sheet_mm\": 3"},
        {"\"thickest_sheet_mm\": null", "\"thickest_sheet_mm\": 20"},
        {"\"division\": null", "\"division\": 0.5"},
        {"\"zero\": null", "\"zero\": 0"},
        {"\"end\": null", "\"end\": 40"},
        {"\"rate_N_per_unit\": null", "\"rate_N_per_unit\": 55"},
        {"\"preload_N\": null", "\"preload_N\": 0"},
        {"\"floor_mm\": null", "\"floor_mm\": 0"},
        {"\"cap_mm\": null", "\"cap_mm\": 20"},
        {"\"release_order\": []", "\"release_order\": [\"sheet_out\"]"},
        {"\"done_on\": \"\"", "\"done_on\": \"2029-06-01\""},
        {"\"due_on\": \"\"", "\"due_on\": \"2030-06-01\""},
        {"\"rate_uncertainty_percent\": null", "\"rate_uncertainty_percent\": 1"}};
    for (const auto& [was, now] : kFilled) {
        EXPECT_FALSE(readBench("t", text)) << "before " << now;
        text = replaced(text, was, now);
    }
    const auto read = readBench("t", text);
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_EQ(read->bench.scale.maxMilli, 40'000);
}

TEST(BenchTemplate, ExplainsEveryField) {
    const std::string text = benchTemplate();
    const auto explained = text.find("\"explained\"");
    ASSERT_NE(explained, std::string::npos);
    const std::string fields = text.substr(0, explained);
    const std::regex key("\"([a-zA-Z_]+)\":");
    int count = 0;
    for (std::sregex_iterator it(fields.begin(), fields.end(), key), end; it != end; ++it) {
        const std::string name = (*it)[1];
        if (name == "format" || name == "scale" || name == "gap") {
            continue;
        }
        ++count;
        const bool found = text.find("\"" + name + "\": \"", explained) != std::string::npos ||
                           text.find("." + name + "\": \"", explained) != std::string::npos;
        EXPECT_TRUE(found) << name;
    }
    EXPECT_EQ(count, 22);
}

// Every number's range as the file's reader says it: the shop's own limits of what a bench can be,
// written down here a second time [practice].
TEST(BenchFile, SaysTheAllowedRangeOfEveryNumber) {
    const std::pair<const char*, const char*> kRows[] = {
        {"longest_seam_mm", "10 to 20000"},
        {"thinnest_sheet_mm", "0.1 to 300"},
        {"thickest_sheet_mm", "0.1 to 300"},
        {"division", "0.001 to 1000"},
        {"zero", "-1000 to 1000"},
        {"end", "0.001 to 100000"},
        {"rate_N_per_unit", "0.1 to 100000"},
        {"preload_N", "0 to 10000"},
        {"factor", "0.1 to 5"},
        {"floor_mm", "0 to 100"},
        {"cap_mm", "0.1 to 300"},
        {"clamping_factor", "1 to 5"},
        {"edge_gap_max_mm", "0.05 to 5"},
        {"rate_uncertainty_percent", "0 to 100"},
    };
    const std::string whole = replaced(east(), "\"floor_mm\"", "\"cap_mm\": 40, \"floor_mm\"");
    for (const auto& [key, range] : kRows) {
        const std::string name = key;
        const std::regex number("\"" + name + "\": [-0-9.]+");
        const auto read =
            readBench("b", std::regex_replace(whole, number, "\"" + name + "\": \"x\""));
        ASSERT_FALSE(read) << name;
        const std::string wanted = name + ": \"x\" is not a number; allowed " + std::string(range);
        EXPECT_NE((read.error().detail + "\n").find(wanted + "\n"), std::string::npos)
            << read.error().detail;
    }
}

} // namespace
} // namespace seamclock
