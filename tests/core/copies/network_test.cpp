// What is refused on a network file system, and what may lie there. This program has a statfs of
// its own, in the place of the C library's, that takes one folder for a share.
#include "core/copies/backup.h"
#include "core/copies/log_import.h"
#include "core/copies/snapshot.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "tests/support/log_content.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <cstring>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sys/syscall.h>
#include <sys/vfs.h>
#include <unistd.h>

namespace {
std::string theShare; // empty: none
} // namespace

extern "C" int statfs(const char* path, struct statfs* out) noexcept {
    const auto done = syscall(SYS_statfs, path, out);
    if (done == 0 && !theShare.empty() &&
        std::strncmp(path, theShare.c_str(), theShare.size()) == 0) {
        out->f_type = 0x6969; // NFS, by statfs(2)
    }
    return static_cast<int>(done);
}

namespace seamclock {
namespace {

namespace fs = std::filesystem;

class Share : public ::testing::Test {
protected:
    void SetUp() override {
        share = folder.file("share");
        fs::create_directory(share);
        log = folder.file("joints.seamlog");
        test::writeSampleLog(log, clock);
        theShare = share;
    }
    void TearDown() override { theShare.clear(); }

    test::FakeClock clock;
    test::ScratchFolder folder;
    std::string share;
    std::string log;
};

void expectRefused(const Error& error, const std::string& path) {
    EXPECT_EQ(error.code, ErrorCode::Unreadable) << error.detail;
    EXPECT_EQ(error.detail.find(path), 0U) << error.detail;
    EXPECT_NE(error.detail.find("network file system"), std::string::npos) << error.detail;
    EXPECT_NE(error.detail.find("published copy"), std::string::npos) << error.detail;
}

TEST_F(Share, HasNoLiveLog) {
    const std::string live = share + "/joints.seamlog";
    fs::copy_file(log, live);
    expectRefused(LogReader::open(live).error(), live);
    expectRefused(verifyLog(live).error(), live);
    expectRefused(copyLog(live, folder.file("copy"), {}).error(), live);
    expectRefused(importLog(live, log, clock).error(), live);
    expectRefused(LogWriter<Production>::open(live, clock, test::quick()).error(), live);
    // None is made there either, be it new or of a backup.
    EXPECT_EQ(
        LogWriter<Production>::open(share + "/new", clock, test::quick()).error().code,
        ErrorCode::Unreadable);
    ASSERT_TRUE(copyLog(log, folder.file("copy"), {}).has_value());
    EXPECT_EQ(restoreLog(folder.file("copy"), share + "/new").error().code, ErrorCode::Unreadable);
    EXPECT_EQ(test::namesIn(share), std::vector<std::string>{"joints.seamlog"});
}

TEST_F(Share, TakesASnapshotThatIsReadVerifiedAndImportedThere) {
    const auto published = publishSnapshot(log, share);
    ASSERT_TRUE(published.has_value()) << published.error().detail;
    const auto names = test::namesIn(share);
    EXPECT_EQ(names.size(), 1U);
    auto reader = LogReader::open(published->file);
    ASSERT_TRUE(reader.has_value()) << reader.error().detail;
    EXPECT_EQ(reader->joints({})->size(), 5U);
    EXPECT_TRUE(verifyLog(published->file)->ok);
    const std::string again = folder.file("again.seamlog");
    EXPECT_TRUE(restoreLog(published->file, again).has_value());
    const std::string own = folder.file("own.seamlog");
    {
        auto writer = LogWriter<Production>::open(own, clock, test::quick());
        ASSERT_TRUE(writer.has_value());
    }
    const auto imported = importLog(published->file, own, clock);
    ASSERT_TRUE(imported.has_value()) << imported.error().detail;
    EXPECT_EQ(imported->joints, 5);
    EXPECT_EQ(test::namesIn(share), names) << "reading there leaves nothing";
    // It is no log to be written to, nor while somebody does.
    EXPECT_FALSE(LogWriter<Production>::open(published->file, clock, test::quick()).has_value());
    std::ofstream(published->file + "-wal") << "in use";
    expectRefused(LogReader::open(published->file).error(), published->file);
}

} // namespace
} // namespace seamclock
