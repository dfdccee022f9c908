#include "core/shift/job.h"
#include "tests/support/scratch_folder.h"

#include <fstream>
#include <gtest/gtest.h>
#include <regex>
#include <sstream>

namespace seamclock {
namespace {

const std::string kDemoFolder = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo";

std::string demoText() {
    std::ifstream file(kDemoFolder + "/job-brine-tank.json");
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

TEST(JobFile, GivesEachSeamWithItsTwoSheetsAndItsBenchesFile) {
    const auto job = readFirstJob(kDemoFolder);
    ASSERT_TRUE(job) << job.error().detail;
    ASSERT_EQ(job->seams.size(), 6U);
    for (const JobSeam& seam : job->seams) {
        EXPECT_EQ(seam.sheets.size(), 2U) << seam.label;
        EXPECT_TRUE(std::ifstream(seam.benchFile).good()) << seam.benchFile;
        EXPECT_EQ(static_cast<double>(seam.sheets[0].thicknessUm), seam.thicknessMm * 1000);
    }
}

TEST(JobFile, FirstByItsNameIsTaken) {
    const test::ScratchFolder folder;
    std::ofstream(folder.file("job-b.json")) << demoText();
    std::string other = demoText();
    const std::string label = "\"label\": \"S1\"";
    ASSERT_NE(other.find(label), std::string::npos);
    other.replace(other.find(label), label.size(), "\"label\": \"Q1\"");
    std::ofstream(folder.file("job-a.json")) << other;
    const auto job = readFirstJob(folder.path());
    ASSERT_TRUE(job) << job.error().detail;
    EXPECT_EQ(job->seams[0].label, "Q1");
}

TEST(JobFile, IsRefusedInOneSentenceThatNamesWhatIsWrong) {
    struct Row {
        const char* find;
        const char* instead;
        const char* named;
    };
    const Row rows[] = {
        {"seamclock-job/1", "seamclock-job/2", "format"},
        {"\"label\"", "\"labels\"", "label"},
        {"\"thickness_mm\": ", "\"thickness_mm\": -", "thickness_mm"},
        {"\"lengths_mm\": [", "\"lengths_mm\": [0, ", "lengths_mm"},
        {"\"drag_N\": ", "\"drag_N\": -", "drag_N"},
        {"\"shielded\": ", "\"shielded\": 1, \"x\": ", "shielded"},
        {"\"shielded\": ", "\"bead_places\": 1.5, \"shielded\": ", "1.5 is not a whole number"},
        {"\"shielded\": ", "\"bead_places\": 0, \"shielded\": ", "bead_places"},
        {"\"label\": \"S2\"", "\"label\": \"S1\"", "\"S1\" is there twice; allowed: each"},
        {"\"label\": \"S2\"", "\"label\": \"S1/R1\"", "once it is welded again"},
        {"\"shielded\": ", "\"rewelds_allowed\": 10, \"shielded\": ", "rewelds_allowed"},
    };
    for (const Row& row : rows) {
        const test::ScratchFolder folder;
        std::string text = demoText();
        const auto at = text.find(row.find);
        ASSERT_NE(at, std::string::npos) << row.find;
        text.replace(at, std::string(row.find).size(), row.instead);
        std::ofstream(folder.file("job-a.json")) << text;
        const auto job = readFirstJob(folder.path());
        ASSERT_FALSE(job) << row.instead;
        EXPECT_NE(job.error().detail.find(row.named), std::string::npos) << job.error().detail;
        EXPECT_EQ(job.error().detail.find('\n'), std::string::npos) << job.error().detail;
    }
}

TEST(JobFile, MissingOrEmptyIsToldWithWhatIsWanted) {
    const test::ScratchFolder folder;
    const auto none = readFirstJob(folder.path());
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Missing);
    std::ofstream(folder.file("job-a.json")).flush();
    EXPECT_FALSE(readFirstJob(folder.path()));
}

TEST(JobFile, SaysTheAllowedRangeOfEveryNumber) {
    const std::pair<const char*, const char*> rows[] = {
        {"thickness_mm", "0.1 to 1000"},
        {"drag_N", "0 to 100000"},
        {"ambient_C", "-40 to 60"},
        {"mfr_g_10min", "0 to 1000"}};
    for (const auto& [key, range] : rows) {
        const test::ScratchFolder folder;
        const std::string name = key;
        const std::regex number("\"" + name + "\": [-0-9.]+");
        std::ofstream(folder.file("job-a.json"))
            << std::regex_replace(demoText(), number, "\"" + name + "\": \"x\"");
        const auto job = readFirstJob(folder.path());
        ASSERT_FALSE(job) << name;
        const std::string wanted = name + ": \"x\" is not a number; allowed " + std::string(range);
        EXPECT_NE((job.error().detail + "\n").find(wanted + "\n"), std::string::npos)
            << job.error().detail;
    }
}

TEST(JobFile, RefusesALengthThatNoBenchHas) {
    for (const char* length : {"0", "-1", "100000.5"}) {
        const test::ScratchFolder folder;
        std::ofstream(folder.file("job-a.json")) << std::regex_replace(
            demoText(), std::regex("\"lengths_mm\": \\[[0-9., ]+\\]"),
            std::string("\"lengths_mm\": [") + length + "]");
        const auto job = readFirstJob(folder.path());
        ASSERT_FALSE(job) << length;
        EXPECT_NE(
            job.error().detail.find(std::string(length) + " is outside 0 to 100000"),
            std::string::npos)
            << job.error().detail;
    }
}

} // namespace
} // namespace seamclock
