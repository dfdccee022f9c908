#include "core/log/spill.h"

#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

constexpr std::int64_t kBytes = 64 * 1024;

void overwrite(const std::string& path, std::int64_t at, const std::string& bytes) {
    std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
    file.seekp(at);
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    ASSERT_TRUE(file.good());
}

SpillFile opened(const std::string& path) {
    auto spill = SpillFile::open(path, "log-1", kBytes);
    EXPECT_TRUE(spill.has_value()) << spill.error().detail;
    return std::move(*spill);
}

TEST(Spill, IsWrittenFullOfZerosInAdvance) {
    const test::ScratchFolder folder;
    const auto spill = opened(folder.file("a.spill"));
    const std::string bytes = test::textOf(folder.file("a.spill"));
    EXPECT_EQ(bytes.size(), static_cast<std::size_t>(kBytes));
    EXPECT_EQ(bytes.find_first_not_of('\0'), std::string::npos);
    EXPECT_TRUE(spill.found().empty());
}

TEST(Spill, GivesBackRowsAndDocumentsAfterANewStart) {
    const test::ScratchFolder folder;
    const auto rows = test::rowsOf(test::unfinishedWeld(3, 4));
    std::vector<LogDocument> documents = test::sampleDocuments();
    documents[0].bytes += std::string("\n\0\xff", 3); // any bytes
    documents[0].sha256 = "filled in by reading";
    {
        auto spill = opened(folder.file("a.spill"));
        ASSERT_TRUE(spill.append({rows[0], rows[1]}, documents).has_value());
        ASSERT_TRUE(spill.append({rows[2], rows[3]}, {}).has_value());
    }
    const auto spill = opened(folder.file("a.spill"));
    EXPECT_EQ(spill.found().rows, rows);
    ASSERT_EQ(spill.found().documents.size(), 2U);
    EXPECT_EQ(spill.found().documents[0].bytes, documents[0].bytes);
    EXPECT_EQ(spill.found().documents[1], documents[1]);
    EXPECT_EQ(readSpill(folder.file("a.spill")).value(), spill.found());
    EXPECT_EQ(
        std::filesystem::file_size(folder.file("a.spill")), static_cast<std::uintmax_t>(kBytes));
}

TEST(Spill, LinesAreCheckedWithTheSystemsOwnTool) {
    const test::ScratchFolder folder;
    {
        auto spill = opened(folder.file("a.spill"));
        ASSERT_TRUE(spill.append(test::rowsOf(test::unfinishedWeld(3, 3)), {}).has_value());
    }
    // Each line is "sha256 SP text LF"; sha256sum judges it.
    const std::string script =
        "tr -d '\\000' < '" + folder.file("a.spill") +
        "' | while read -r hash text; do "
        "[ \"$(printf '%s' \"$text\" | sha256sum | cut -d' ' -f1)\" = \"$hash\" ] && echo good; "
        "done | grep -c good > '" +
        folder.file("answer") + "'";
    ASSERT_EQ(std::system(script.c_str()), 0);
    EXPECT_EQ(test::textOf(folder.file("answer")), "4\n"); // three rows and whose they are
}

TEST(Spill, ATornLastLineIsIgnoredWhereverItTore) {
    const test::ScratchFolder folder;
    const auto rows = test::rowsOf(test::unfinishedWeld(3, 3));
    const std::string whole = folder.file("whole.spill");
    std::size_t two = 0;
    {
        auto spill = opened(whole);
        ASSERT_TRUE(spill.append({rows[0], rows[1]}, {}).has_value());
        two = test::textOf(whole).find('\0');
        ASSERT_TRUE(spill.append({rows[2]}, {}).has_value());
    }
    const std::string bytes = test::textOf(whole);
    const std::size_t three = bytes.find('\0');
    for (std::size_t cut = two + 1; cut < three; cut += 7) {
        const std::string torn = folder.file("torn.spill");
        std::filesystem::copy_file(whole, torn, std::filesystem::copy_options::overwrite_existing);
        overwrite(torn, static_cast<std::int64_t>(cut), std::string(three - cut, '\0'));
        auto spill = opened(torn);
        EXPECT_EQ(spill.found().rows, (std::vector<LogRow>{rows[0], rows[1]})) << cut;
        EXPECT_TRUE(spill.found().damaged.empty()) << cut;
        ASSERT_TRUE(spill.append({rows[2]}, {}).has_value());
        EXPECT_EQ(readSpill(torn).value().rows, rows) << cut;
    }
}

TEST(Spill, AChangedLineIsSetApartAndTheOthersStand) {
    const test::ScratchFolder folder;
    const auto rows = test::rowsOf(test::unfinishedWeld(3, 3));
    {
        auto spill = opened(folder.file("a.spill"));
        ASSERT_TRUE(spill.append(rows, {}).has_value());
    }
    const std::string bytes = test::textOf(folder.file("a.spill"));
    overwrite(
        folder.file("a.spill"), static_cast<std::int64_t>(bytes.find(rows[1].body) + 30), "x");
    const auto spill = opened(folder.file("a.spill"));
    EXPECT_EQ(spill.found().rows, (std::vector<LogRow>{rows[0], rows[2]}));
    EXPECT_EQ(spill.found().damaged.size(), 1U);
}

TEST(Spill, RefusesTheRowsOfAnotherLog) {
    const test::ScratchFolder folder;
    {
        auto spill = opened(folder.file("a.spill"));
        ASSERT_TRUE(spill.append(test::rowsOf(test::unfinishedWeld(3, 2)), {}).has_value());
    }
    const auto other = SpillFile::open(folder.file("a.spill"), "log-2", kBytes);
    ASSERT_FALSE(other.has_value());
    EXPECT_EQ(other.error().code, ErrorCode::Conflict);
    EXPECT_EQ(readSpill(folder.file("a.spill")).value().rows.size(), 2U);
}

TEST(Spill, SaysWhenItIsFullAndKeepsWhatItHas) {
    const test::ScratchFolder folder;
    auto spill = opened(folder.file("a.spill"));
    const auto rows = test::rowsOf(test::unfinishedWeld(3, 2));
    ASSERT_TRUE(spill.append({rows[0]}, {}).has_value());
    const auto refused = spill.append({}, {{"", "bench", std::string(kBytes, 'x')}});
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, ErrorCode::NotWritten);
    EXPECT_NE(refused.error().detail.find("room for"), std::string::npos);
    ASSERT_TRUE(spill.append({rows[1]}, {}).has_value());
    EXPECT_EQ(readSpill(folder.file("a.spill")).value().rows, rows);
}

TEST(Spill, IsZerosAgainAfterClearing) {
    const test::ScratchFolder folder;
    auto spill = opened(folder.file("a.spill"));
    ASSERT_TRUE(spill.append(test::rowsOf(test::closedWeld(3)), {}).has_value());
    ASSERT_TRUE(spill.clear().has_value());
    const std::string bytes = test::textOf(folder.file("a.spill"));
    EXPECT_EQ(bytes.size(), static_cast<std::size_t>(kBytes));
    EXPECT_EQ(bytes.find_first_not_of('\0'), std::string::npos);
}

} // namespace
} // namespace seamclock
