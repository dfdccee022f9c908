// Photos beside a log and its copies. Their names are SHA-256 sums, so the judge is the standard's
// own examples: FIPS 180-4, the messages "abc" and the one of 448 bits, with their digests as NIST
// publishes them ("Examples with Intermediate Values", SHA256).
#include "core/copies/photo_copies.h"

#include "core/copies/backup.h"
#include "core/copies/log_keeper.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

constexpr const char* kAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad.jpg";
constexpr const char* kLong =
    "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1.png";
constexpr const char* kLongBytes = "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq";

void put(const std::string& folder, const std::string& name, const std::string& bytes) {
    fs::create_directories(folder);
    std::ofstream(fs::path(folder) / name, std::ios::binary) << bytes;
}

std::string bytesAt(const std::string& folder, const std::string& name) {
    std::ifstream in(fs::path(folder) / name, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

std::size_t filesIn(const std::string& folder) {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

class PhotoCopies : public testing::Test {
protected:
    void SetUp() override {
        test::writeSampleLog(log, clock);
        put(photos, kAbc, "abc");
        put(photos, kLong, kLongBytes);
    }

    test::FakeClock clock;
    test::ScratchFolder folder;
    std::string log = folder.file("shop.seamlog");
    std::string photos = photoFolderOf(log);
    std::string backups = backupPhotoFolderOf(log);
};

TEST_F(PhotoCopies, EachIsCopiedOnceAndHeldAgainstItsName) {
    put(photos, "note.txt", "no photo");
    const auto first = copyPhotos(photos, backups, {});
    ASSERT_TRUE(first) << first.error().detail;
    EXPECT_EQ(*first, (PhotosCopied{2, 0, {}}));
    EXPECT_EQ(bytesAt(backups, kAbc), "abc");
    EXPECT_EQ(bytesAt(backups, kLong), kLongBytes);
    EXPECT_EQ(filesIn(backups), 2U) << "nothing else, and no half-made one";
    EXPECT_EQ(copyPhotos(photos, backups, {}), (PhotosCopied{0, 2, {}}));
}

TEST_F(PhotoCopies, OneWhoseBytesAreOthersIsNotTakenAndTold) {
    put(photos, kAbc, "abd");
    const auto copied = copyPhotos(photos, backups, {});
    ASSERT_TRUE(copied) << copied.error().detail;
    EXPECT_EQ(copied->damaged, std::vector<std::string>{kAbc});
    EXPECT_EQ(copied->copied, 1);
    EXPECT_FALSE(fs::exists(fs::path(backups) / kAbc));
    EXPECT_NE(damagedPhotos(*copied).find(kAbc), std::string::npos);
    EXPECT_TRUE(damagedPhotos({}).empty());
}

TEST_F(PhotoCopies, WhatCannotBeReadIsToldAndEndsNothing) {
    fs::remove(fs::path(photos) / kAbc);
    fs::create_directory(fs::path(photos) / kAbc); // reading it fails with EISDIR, for root too
    const auto copied = copyPhotos(photos, backups, {});
    ASSERT_TRUE(copied) << copied.error().detail;
    EXPECT_EQ(copied->damaged, std::vector<std::string>{kAbc});
    EXPECT_EQ(bytesAt(backups, kLong), kLongBytes);
}

TEST_F(PhotoCopies, AFolderThatCannotBeListedIsNotTakenForAnEmptyOne) {
    put(folder.file("a"), "file", "no folder");
    const auto copied = copyPhotos(folder.file("a") + "/file", backups, {});
    ASSERT_FALSE(copied);
    EXPECT_EQ(copied.error().code, ErrorCode::Unreadable);
}

TEST_F(PhotoCopies, AHalfWrittenCopyIsMadeWhole) {
    put(backups, kLong, "abcd");
    EXPECT_EQ(copyPhotos(photos, backups, {}), (PhotosCopied{2, 0, {}}));
    EXPECT_EQ(bytesAt(backups, kLong), kLongBytes);
}

TEST_F(PhotoCopies, AFolderThatIsNotThereHasNone) {
    EXPECT_EQ(copyPhotos(folder.file("gone"), backups, {}), PhotosCopied{});
    EXPECT_FALSE(fs::exists(backups));
}

TEST_F(PhotoCopies, StopAndReserveAreKeptTo) {
    CopyStop stop;
    stop.stop();
    CopyOptions how;
    how.stop = &stop;
    EXPECT_EQ(copyPhotos(photos, backups, how).error().code, ErrorCode::NotWritten);
    how.stop = nullptr;
    how.reserveBytes = INT64_MAX / 2;
    EXPECT_EQ(copyPhotos(photos, backups, how).error().code, ErrorCode::NotWritten);
    EXPECT_EQ(filesIn(backups), 0U);
}

TEST_F(PhotoCopies, TheKeeperTakesThemAlongAndARestoredLogHasThem) {
    LogKeeper keeper(log, clock, {});
    keeper.begin();
    keeper.settle();
    EXPECT_EQ(keeper.state().photos, 2);
    EXPECT_FALSE(keeper.state().photoTrouble);
    const std::string backup = keeper.state().backup;
    EXPECT_EQ(photosOfCopy(backup), backups);
    const std::string again = folder.file("again.seamlog");
    ASSERT_TRUE(restoreLog(backup, again));
    EXPECT_EQ(copyPhotos(photosOfCopy(backup), photoFolderOf(again), {}), (PhotosCopied{2, 0, {}}));
    EXPECT_EQ(bytesAt(photoFolderOf(again), kAbc), "abc");
}

TEST_F(PhotoCopies, TheKeeperTellsOfOneThatIsNotWhatWasKept) {
    put(photos, kLong, "else");
    LogKeeper keeper(log, clock, {});
    keeper.begin();
    keeper.settle();
    ASSERT_TRUE(keeper.state().photoTrouble);
    EXPECT_NE(keeper.state().photoTrouble->find(kLong), std::string::npos);
    EXPECT_FALSE(keeper.state().backupTrouble) << "the log's own backup is made all the same";
}

} // namespace
} // namespace seamclock
