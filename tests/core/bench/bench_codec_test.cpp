#include "core/bench/bench_codec.h"

#include "core/base/plain_number.h"
#include "tests/support/shipped.h"

#include <array>
#include <cmath>
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

// Another plate is another set-up: what was checked with the one before is asked for anew, since
// what stands over is known by the bench document's hash.
TEST(BenchFile, MayNameItsPlateWhichIsAnotherDocumentAndTheSameBench) {
    std::string text = east();
    const auto at = text.find("\"gap\"");
    ASSERT_NE(at, std::string::npos);
    text.insert(at, "\"plate\": \"plate 2\", ");
    const auto read = readBench("east", text);
    ASSERT_TRUE(read) << read.error().detail;
    const auto plain = readBench("east", east());
    ASSERT_TRUE(plain);
    EXPECT_EQ(read->bench, plain->bench);
    EXPECT_NE(read->sha256, plain->sha256);
}

constexpr const char* kCalibrated = R"({
  "format": "seamclock-bench/1",
  "id": "north",
  "name": "North bench",
  "longest_seam_mm": 1500,
  "thinnest_sheet_mm": 3,
  "thickest_sheet_mm": 20,
  "drive": "foot_lever",
  "force_N": {"min": 150, "max": 4000},
  "scale": {"unit": "mm", "count": 2, "division": 0.5, "end": 50},
  "gap": {"factor": 1, "floor_mm": 3, "clamping_factor": 2},
  "edge_gap_max_mm": 0.5,
  "release_order": ["spring_off", "sheet_out"],
  "calibration": {
    "done_on": "2029-10-01",
    "due_on": "2030-10-01",
    "load_cell": "LC 5 kN, no. 88",
    "points": [
      {"reading": 5, "force_N": 240},
      {"reading": 10, "force_N": 641},
      {"reading": 20, "force_N": 1439},
      {"reading": 30, "force_N": 2240},
      {"reading": 40, "force_N": 3040}
    ]
  }
}
)";

// Force = 80 (reading − 2), with 240, 640 + 1, 1440 − 1, 2240 and 3040: the mean reading is 21, the
// squares about it sum to 820, so the slope is 80 + (−11 · 1 − (−1) · 1) / 820 = 80 − 10/820 and
// the line passes 1520 at 21.
TEST(BenchFile, TakesZeroAndRateFromItsCalibrationsPoints) {
    const auto read = readBench("north", kCalibrated);
    ASSERT_TRUE(read) << read.error().detail;
    const Bench& bench = read->bench;
    EXPECT_EQ(bench.drive, Drive::FootLever);
    EXPECT_EQ(bench.forceLimits.min, newtons(150));
    EXPECT_EQ(bench.forceLimits.max, newtons(4000));
    EXPECT_EQ(bench.scale.count, 2);
    const double rate = 80 - 10.0 / 820;
    ASSERT_EQ(bench.scale.ratePerUnit.size(), 1U);
    EXPECT_NEAR(inNewtons(bench.scale.rate()), rate, 1e-9);
    EXPECT_EQ(bench.scale.zeroMilli, std::llround((21 - 1520 / rate) * 1e3));
    EXPECT_EQ(bench.scale.preload, Force());
    ASSERT_TRUE(bench.calibration && bench.calibration->fit);
    EXPECT_EQ(bench.calibration->loadCell, "LC 5 kN, no. 88");
    EXPECT_EQ(bench.calibration->fit->lowestReading, 5);
    EXPECT_EQ(bench.calibration->fit->highestReading, 40);
    EXPECT_GT(bench.calibration->rateUncertaintyPercent, 0);
    // t(3) s √(1/5), as the reading is the mean one
    const double squares = bench.calibration->fit->line.residualSd;
    const auto band = calibrationBand(bench, 21'000);
    ASSERT_TRUE(band);
    EXPECT_NEAR(inNewtons(*band), 3.182446 * squares / std::sqrt(5.0), 1e-5);
}

TEST(BenchFile, OfTodayHasNoNewFieldAndReadsAsBefore) {
    const auto read = readBench("east", east());
    ASSERT_TRUE(read);
    EXPECT_FALSE(read->bench.drive);
    EXPECT_EQ(read->bench.forceLimits, ForceLimits{});
    EXPECT_EQ(read->bench.scale.count, 1);
    EXPECT_FALSE(read->bench.scale.ratePerMm);
    ASSERT_TRUE(read->bench.calibration);
    EXPECT_TRUE(read->bench.calibration->points.empty());
    EXPECT_FALSE(read->bench.calibration->fit);
    // 1.959964 · 0.8 % of 62.5 N/mm · 20 mm
    EXPECT_NEAR(inNewtons(*calibrationBand(read->bench, 20'000)), 19.59964, 1e-9);
}

TEST(BenchFile, SaysWhatIsWrongWithACalibrationByPoints) {
    const std::vector<std::array<const char*, 3>> kRows{
        {"\"division\": 0.5", "\"division\": 0.5, \"zero\": 2",
         "b, line 10, /scale/zero: comes from the calibration's points; leave it out"},
        {"\"division\": 0.5", "\"division\": 0.5, \"springs\": []",
         "b, line 10, /scale/springs: comes from the calibration's points; leave it out"},
        {"\"division\": 0.5", "\"division\": 0.5, \"preload_N\": 40",
         "b, line 10, /scale/preload_N: 40 N is lost before the load cell shows anything: with "
         "calibration points it is 0 or left out"},
        {"\"load_cell\": \"LC 5 kN, no. 88\",", "",
         "b, line 14, /calibration/load_cell: is missing"},
        {"\"load_cell\"", "\"rate_uncertainty_percent\": 1, \"load_cell\"",
         "b, line 17, /calibration/rate_uncertainty_percent: is not a field that is known here"},
        {"641", "\"641\"",
         "b, line 20, /calibration/points/1/force_N: \"641\" is not a number; allowed -1000 to "
         "1000000"},
        {"\"reading\": 40", "\"reading\": 4000000",
         "b, line 23, /calibration/points/4/reading: 4000000 is outside -1000 to 100000"},
        // off by 1 and 200: 200 − 201/5 − (−1) (−11 − 200)/820
        {"1439", "1640",
         "b, line 18, /calibration/points: not straight enough: point 3 (reading 20, 1640 N) is "
         "159.543 N off the line; allowed 60.8 N, 2 % of the largest force (our judgement)"},
        {"\"count\": 2", "\"count\": 3", "b, line 10, /scale/count: 3 is outside 1 to 2"},
        {"\"count\": 2", "\"rate_N_per_mm\": 80",
         "b, line 10, /scale/rate_N_per_mm: is the rate itself where the unit is mm; leave it out"},
        {"foot_lever", "crank", "b, line 8, /drive: \"crank\" is not one of handwheel, foot_lever"},
        {"\"max\": 4000", "\"max\": 100", "b, line 9, /force_N/max: 100 is below min 150"},
        {"\"end\": 50", "\"end\": 2.2",
         "b, line 10, /scale/end: 2.2 is not a division above zero 1.997"},
    };
    for (const auto& [was, now, sentence] : kRows) {
        SCOPED_TRACE(sentence);
        const auto read = readBench("b", replaced(kCalibrated, was, now));
        ASSERT_FALSE(read);
        EXPECT_EQ(read.error().detail, sentence);
    }
    std::string two = kCalibrated;
    two.erase(
        two.find(",\n      {\"reading\": 20"),
        two.find("\n    ]") - two.find(",\n      {\"reading\": 20"));
    const auto read = readBench("b", two);
    ASSERT_FALSE(read);
    EXPECT_EQ(
        read.error().detail,
        "b, line 18, /calibration/points: 2 points; a line with its uncertainty needs 3 or more");
}

// 64 N for each unit above `zero`, which binary fractions hold exactly.
std::string calibratedFrom(double zero) {
    std::string text = replaced(kCalibrated, "\"end\": 50", "\"end\": 2000");
    const std::array<const char*, 5> points{
        "5, \"force_N\": 240", "10, \"force_N\": 641", "20, \"force_N\": 1439",
        "30, \"force_N\": 2240", "40, \"force_N\": 3040"};
    int units = 0;
    for (const char* was : points) {
        units += 4;
        const std::string now =
            plainNumber(zero + units) + ", \"force_N\": " + std::to_string(64 * units);
        text = replaced(text, was, now);
    }
    return text;
}

TEST(BenchFile, MayHaveItsLinesZeroAThousandUnitsAwayAndNoFarther) {
    const auto at = readBench("b", calibratedFrom(1'000));
    ASSERT_TRUE(at) << at.error().detail;
    EXPECT_EQ(at->bench.calibration->fit->zero, 1'000);
    EXPECT_EQ(at->bench.scale.zeroMilli, 1'000'000);
    const auto beyond = readBench("b", calibratedFrom(1'000.5));
    ASSERT_FALSE(beyond);
    EXPECT_EQ(
        beyond.error().detail,
        "b, line 18, /calibration/points: the line has no force at a reading of 1000.5, which is "
        "outside -1000 to 1000");
}

// Whatever a form may make of it: the bytes read back as the same bench, and are written alike.
TEST(BenchText, ReadsBackAsTheSameBench) {
    std::vector<Bench> benches;
    for (const std::string& text :
         {east(), test::textOf(test::resource("demo/bench-west.json")), std::string(kCalibrated)}) {
        const auto read = readBench("b", text);
        ASSERT_TRUE(read) << read.error().detail;
        benches.push_back(read->bench);
    }
    Bench odd = benches[0];
    odd.drive = Drive::Handwheel;
    odd.forceLimits.max = poundsForce(900);
    odd.longestSeam = inches(61.3);
    odd.thickestSheet = inches(1.0 / 3);
    odd.scale.unit = "N";
    odd.scale.ratePerUnit = {newtons(1.0 / 3), newtons(0.7)};
    odd.scale.ratePerMm = newtons(81.0 / 7);
    odd.scale.zeroMilli = -1;
    odd.gapRule.cap = millimetres(31.7);
    odd.gapRule.factor = 1.1;
    odd.calibration.reset();
    benches.push_back(odd);
    odd.forceLimits = {newtons(0.25), {}};
    benches.push_back(odd);
    odd.name = "Bench \"two\"\\ \xC3\xA4";
    benches.push_back(odd);
    for (const Bench& bench : benches) {
        const std::string text = benchText(bench);
        const auto read = readBench("t", text);
        ASSERT_TRUE(read) << read.error().detail << text;
        EXPECT_EQ(read->bench, bench) << text;
        EXPECT_EQ(benchText(read->bench), text);
    }
    EXPECT_NE(benchText(benches[0]).find("\"longest_seam_mm\": 2600,"), std::string::npos);
    EXPECT_NE(benchText(benches[0]).find("\"rate_N_per_unit\": 62.5"), std::string::npos);
}

TEST(Calibration, IsOverdueFromTheDayAfterItsLast) {
    const Bench bench = test::demoBench("east"); // due 2030-09-12
    EXPECT_FALSE(calibrationOverdue(bench, "2030-01-07"));
    EXPECT_FALSE(calibrationOverdue(bench, "2030-09-12"));
    EXPECT_TRUE(calibrationOverdue(bench, "2030-09-13"));
    Bench never = bench;
    never.calibration.reset();
    EXPECT_FALSE(calibrationOverdue(never, "2040-01-01"));
    EXPECT_FALSE(calibrationBand(never, 1000));
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

TEST(PlateRead, IsWhatTheForemanChoseAndElseThreePlaces) {
    EXPECT_EQ(test::demoBench("east").plateRead, PlateRead::Three);
    for (const PlateRead each :
         {PlateRead::Middle, PlateRead::Ends, PlateRead::Three, PlateRead::EachFace}) {
        Bench bench = test::demoBench("east");
        bench.plateRead = each;
        const auto back = readBench("bench", benchText(bench));
        ASSERT_TRUE(back) << back.error().detail;
        EXPECT_EQ(back->bench.plateRead, each);
        EXPECT_FALSE(platePlaces(each).empty());
    }
    EXPECT_EQ(platePlaces(PlateRead::EachFace).size(), 6U);
    std::string text = benchText(test::demoBench("east"));
    text.insert(
        text.find("\"force_N\"") == std::string::npos ? text.find("\"scale\"")
                                                      : text.find("\"force_N\""),
        "\"plate_read\": \"corners\", ");
    const auto wrong = readBench("bench", text);
    ASSERT_FALSE(wrong);
    EXPECT_NE(
        wrong.error().detail.find("\"corners\" is not one of middle, ends, three, each_face"),
        std::string::npos)
        << wrong.error().detail;
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
        {"\"drive\": \"\"", "\"drive\": \"handwheel\""},
        {"\"min\": null", "\"min\": 150"},
        {"\"max\": null", "\"max\": 6000"},
        {"\"division\": null", "\"division\": 0.5"},
        {"\"zero\": null", "\"zero\": 0"},
        {"\"end\": null", "\"end\": 40"},
        {"\"rate_N_per_unit\": null", "\"rate_N_per_unit\": 55"},
        {"\"plate\": \"\"", "\"plate\": \"left\""},
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
    EXPECT_EQ(count, 29);
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
        {"min", "0 to 1000000"},
        {"max", "1 to 1000000"},
        {"factor", "0.1 to 5"},
        {"floor_mm", "0 to 100"},
        {"cap_mm", "0.1 to 300"},
        {"clamping_factor", "1 to 5"},
        {"edge_gap_max_mm", "0.05 to 5"},
        {"rate_uncertainty_percent", "0 to 100"},
    };
    const std::string capped = replaced(east(), "\"floor_mm\"", "\"cap_mm\": 40, \"floor_mm\"");
    const std::string whole = replaced(
        capped, "\"edge_gap_max_mm\"",
        "\"force_N\": {\"min\": 10, \"max\": 20}, \"edge_gap_max_mm\"");
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
