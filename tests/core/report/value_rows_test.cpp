// One row a value, held against the record and read by python3's csv module.
#include "core/report/value_rows.h"

#include "core/report/set_actual.h"
#include "core/weld/intent.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/story.h"

#include <array>
#include <cstdio>
#include <fstream>
#include <gtest/gtest.h>
#include <memory>
#include <nlohmann/json.hpp>

namespace seamclock {
namespace {

using test::Story;

/// What python3 makes of the file, as a list of objects by the header's names.
nlohmann::json readByPython(const std::string& csv) {
    const test::ScratchFolder folder;
    const std::string file = folder.file("values.csv");
    std::ofstream(file, std::ios::binary) << csv;
    const std::string command =
        "python3 -c 'import csv,json,sys\n"
        "rows=list(csv.DictReader(open(sys.argv[1],encoding=\"utf-8\",newline=\"\"),strict=True))\n"
        "print(json.dumps(rows))' '" +
        file + "'";
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> pipe(
        ::popen(command.c_str(), "r"), ::pclose);
    std::string read;
    std::array<char, 4096> block{};
    for (std::size_t n = 1; n > 0;) {
        n = std::fread(block.data(), 1, block.size(), pipe.get());
        read.append(block.data(), n);
    }
    return nlohmann::json::parse(read, nullptr, false);
}

TEST(ValueRows, AreReadBackByAnIndependentReader) {
    Story story;
    story.close();
    WeldRecord made = record(story.weld());
    made.opened.seam = "=S3,\"a\"\nb";
    Bench bench;
    bench.id = "bench-a";
    bench.scale = {"mm", 500, 500, 40'000, 1, {newtons(70)}, Force(), {}};
    const auto rows = readByPython(valueRowsHeader() + valueRows(made, &bench));
    ASSERT_TRUE(rows.is_array());
    const auto values = setAndActual(made, &bench);
    ASSERT_EQ(rows.size(), values.size() + made.phases.size());
    for (std::size_t i = 0; i < values.size(); ++i) {
        const auto& row = rows[i];
        EXPECT_EQ(row["item"], values[i].item);
        EXPECT_EQ(row["number"], "7");
        EXPECT_EQ(row["seam"], "'=S3,\"a\"\nb") << "defused, and whole";
        EXPECT_EQ(row["event"], values[i].n == 0 ? "" : std::to_string(values[i].n));
        const double size = values[i].unit == "Pa" ? 1e6 : 1e3;
        for (const auto& [column, value] :
             {std::pair("set", values[i].set), std::pair("low", values[i].low),
              std::pair("high", values[i].high), std::pair("actual", values[i].actual)}) {
            const std::string cell = row[column].get<std::string>();
            ASSERT_EQ(cell.empty(), !value.has_value()) << values[i].item << " " << column;
            if (value) {
                // A number stays a number: no apostrophe, a dot.
                EXPECT_NEAR(std::stod(cell), static_cast<double>(*value) / size, 1e-9) << cell;
            }
        }
    }
    // The story's changeover: 4 s, at most 6.4 s.
    const auto& changeover = rows[values.size() + 2];
    EXPECT_EQ(changeover["item"], "changeover_time");
    EXPECT_EQ(changeover["unit"], "s");
    EXPECT_EQ(changeover["actual"], "4");
    EXPECT_EQ(changeover["actual_most"], "");
    EXPECT_EQ(changeover["high"], "6.4");
}

TEST(ValueRows, ACorrectedValueNamesWhatStoodThereAndTheEventThatHoldsIt) {
    Story story;
    story.close();
    const std::int64_t target = test::lastReading(story.weld(), ReadingPhase::Joining);
    story.then(ValueCorrected{target, "reading_milli", "15500", "15000", "misread"});
    story.then(ValueCorrected{target, "reading_milli", "15000", "15200", "misread again"});
    const auto last = std::to_string(story.weld().events.size());
    const auto rows = readByPython(valueRowsHeader() + valueRows(record(story.weld()), nullptr));
    int found = 0;
    for (const auto& row : rows) {
        const bool corrected = row["item"] == "joining_reading";
        EXPECT_EQ(row["corrected_by"], corrected ? last : "") << row["item"];
        EXPECT_EQ(row["was"], corrected ? "15.5" : "") << row["item"];
        EXPECT_TRUE(!corrected || row["actual"] == "15.2") << row["actual"];
        found += corrected ? 1 : 0;
    }
    EXPECT_EQ(found, 1);
}

TEST(ValueRows, ADamagedJointHasARowWithWhy) {
    const NamedJoint joint{"weld:7", 7, {}, "S3"};
    const std::string trouble = "event 5, \"soak\", does not fit";
    const auto rows = readByPython(valueRowsHeader() + damagedRow(joint, trouble));
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows[0]["number"], "7");
    EXPECT_EQ(rows[0]["weld"], "weld:7");
    EXPECT_EQ(rows[0]["seam"], "S3");
    EXPECT_EQ(rows[0]["actual"], "");
    EXPECT_EQ(rows[0]["trouble"], trouble);
}

TEST(ValueRows, OverAPowerCutATimeHasTwoEnds) {
    Story story;
    story.buildUp().wait(std::chrono::seconds(100)).reboot(std::chrono::seconds(700));
    const auto bridge = bridgeTo(story.weld(), story.now(), false);
    ASSERT_TRUE(bridge && *bridge);
    story.then(**bridge).wait(std::chrono::seconds(690)).then(ReleaseStep{"clamps_eased"});
    const auto rows = readByPython(valueRowsHeader() + valueRows(record(story.weld()), nullptr));
    const auto& cooling = rows.back();
    EXPECT_EQ(cooling["item"], "cooling_time");
    EXPECT_LT(
        std::stod(cooling["actual"].get<std::string>()),
        std::stod(cooling["actual_most"].get<std::string>()));
}

} // namespace
} // namespace seamclock
