#include "core/log/connection.h"

#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <filesystem>
#include <fstream>
#include <functional>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

struct BadFile {
    const char* name;
    std::function<void(const std::string&)> make;
    ErrorCode code;
    const char* words;
};

const std::vector<BadFile>& badFiles() {
    static const std::vector<BadFile> all = {
        {"missing", [](const std::string&) {}, ErrorCode::Unreadable, "no such file"},
        {"folder", [](const std::string& path) { std::filesystem::create_directory(path); },
         ErrorCode::Unreadable, "is a folder"},
        {"zero bytes", [](const std::string& path) { std::ofstream(path).close(); },
         ErrorCode::Unreadable, "0 bytes"},
        {"text",
         [](const std::string& path) {
             std::ofstream(path) << "seam;width\n1;2\n" << std::string(200, ' ');
         },
         ErrorCode::Unreadable, "not a database"},
        {"a header cut short",
         [](const std::string& path) { std::ofstream(path) << "SQLite format 3"; },
         ErrorCode::Unreadable, "not a database"},
        {"a database of others",
         [](const std::string& path) {
             SQLite::Database(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE)
                 .exec("CREATE TABLE recipes(name)");
         },
         ErrorCode::Foreign, "application id 0, expected 1396919376 or 1396919380"},
        {"a newer log",
         [](const std::string& path) {
             test::writeSampleLog(path, test::FakeClock());
             SQLite::Database(path, SQLite::OPEN_READWRITE).exec("PRAGMA user_version=99");
         },
         ErrorCode::Foreign, "newer program (version 99, this program reads 1 to 2)"},
        {"a named pipe",
         [](const std::string& path) {
             ASSERT_EQ(std::system(("mkfifo '" + path + "'").c_str()), 0);
         },
         ErrorCode::Unreadable, "not a regular file"}};
    return all;
}

TEST(LogFiles, EachKindOfBadFileIsOneClearSentence) {
    for (const BadFile& bad : badFiles()) {
        const test::ScratchFolder folder;
        const std::string path = folder.file("some.log");
        bad.make(path);
        const auto reader = LogReader::open(path);
        ASSERT_FALSE(reader.has_value()) << bad.name;
        EXPECT_EQ(reader.error().code, bad.code) << bad.name;
        EXPECT_NE(reader.error().detail.find(bad.words), std::string::npos)
            << reader.error().detail;
        EXPECT_EQ(reader.error().detail.find(path), 0U) << reader.error().detail;
        const auto report = verifyLog(path);
        ASSERT_FALSE(report.has_value()) << bad.name;
        EXPECT_EQ(report.error(), reader.error()) << bad.name;
    }
}

TEST(LogFiles, ALogOfOursWhoseInsideIsGoneIsDamagedNotForeign) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    test::writeSampleLog(path, test::FakeClock());
    const auto size = std::filesystem::file_size(path);
    for (const std::uintmax_t kept : {std::uintmax_t{100}, std::uintmax_t{4096}, size / 2}) {
        const std::string cut = folder.file("cut.log");
        std::filesystem::copy_file(path, cut, std::filesystem::copy_options::overwrite_existing);
        std::filesystem::resize_file(cut, kept);
        const auto report = verifyLog(cut);
        ASSERT_TRUE(report.has_value()) << kept << ": " << report.error().detail;
        EXPECT_FALSE(report->ok) << kept;
        EXPECT_TRUE(report->finding.has_value()) << kept;
    }
    {
        test::BehindTheBack stranger(path);
        stranger.database().exec("PRAGMA foreign_keys=OFF");
        stranger.database().exec("DELETE FROM chain");
    }
    EXPECT_EQ(LogReader::open(path).error().code, ErrorCode::Damaged);
    EXPECT_FALSE(verifyLog(path)->ok);
}

TEST(LogFiles, AFolderOfThisMachineIsNoNetworkFileSystem) {
    EXPECT_TRUE(refuseNetwork(::testing::TempDir()).has_value());
}

} // namespace
} // namespace seamclock
