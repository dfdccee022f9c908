// Photos that a log names, looked for in the folder beside it. Their SHA-256 sums are the
// standard's own examples: FIPS 180-4, the messages "abc" and the one of 448 bits, with their
// digests as NIST publishes them ("Examples with Intermediate Values", SHA256).
#include "core/copies/photo_check.h"

#include "core/copies/photo_copies.h"
#include "core/copies/snapshot.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

const std::string kAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
const std::string kLong = "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1";
constexpr const char* kLongBytes = "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq";

void put(const std::string& folder, const std::string& name, const std::string& bytes) {
    fs::create_directories(folder);
    std::ofstream(fs::path(folder) / name, std::ios::binary) << bytes;
}

std::vector<Event>
withPhoto(std::vector<Event> weld, const std::string& sha, const std::string& name) {
    Event event = weld.back();
    ++event.n;
    event.d = PhotoAdded{sha, 3, name};
    weld.push_back(event);
    return weld;
}

class PhotosChecked : public testing::Test {
protected:
    /// The sample log, and two more welds with a photo each.
    void SetUp() override {
        test::writeSampleLog(log, clock);
        auto writer = LogWriter<Production>::open(log, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        writer->submit(
            test::rowsOf(withPhoto(test::closedWeld(11), kAbc, "bead front.jpg")),
            test::sampleDocuments());
        writer->submit(test::rowsOf(withPhoto(test::closedWeld(12), kLong, "crack.png")));
        ASSERT_TRUE(writer->flush());
        put(photos, kAbc + ".jpg", "abc");
        put(photos, kLong + ".png", kLongBytes);
    }
    PhotoCheck checked(const std::string& file) {
        const auto found = checkPhotos(file);
        EXPECT_TRUE(found) << (found ? "" : found.error().detail);
        return found ? *found : PhotoCheck{};
    }
    std::string fileOf(const std::string& sha, const char* form) {
        return (fs::path(photos) / (sha + form)).string();
    }

    test::FakeClock clock;
    test::ScratchFolder folder;
    std::string log = folder.file("shop.seamlog");
    std::string photos = photoFolderOf(log);
};

TEST_F(PhotosChecked, AreAsTheyWereKept) {
    EXPECT_TRUE(verifyLog(log)->ok) << verifyLog(log)->finding->reason;
    EXPECT_EQ(checked(log), (PhotoCheck{2, {}, ""}));
}

TEST_F(PhotosChecked, OneThatIsMissingIsToldByJointEventFileAndSum) {
    fs::remove(fileOf(kAbc, ".jpg"));
    const PhotoCheck found = checked(log);
    ASSERT_EQ(found.findings.size(), 1U);
    const PhotoFinding& one = found.findings.front();
    EXPECT_EQ(one.number, 11);
    EXPECT_EQ(one.file, fileOf(kAbc, ".jpg"));
    EXPECT_EQ(one.expected, kAbc);
    EXPECT_EQ(one.found, "");
    EXPECT_EQ(
        one.sentence, "joint 11, event " + std::to_string(one.n) + ", photo \"bead front.jpg\": " +
                          one.file + " is missing; expected SHA-256 " + kAbc);
    EXPECT_TRUE(verifyLog(log)->ok) << "the log itself is what was written";
}

TEST_F(PhotosChecked, OneThatWasChangedIsToldWithBothSums) {
    put(photos, kLong + ".png", "abc");
    const PhotoCheck found = checked(log);
    ASSERT_EQ(found.findings.size(), 1U);
    const PhotoFinding& one = found.findings.front();
    EXPECT_EQ(one.number, 12);
    EXPECT_EQ(one.found, kAbc);
    EXPECT_NE(
        one.sentence.find(" was changed; expected SHA-256 " + kLong + ", found " + kAbc),
        std::string::npos)
        << one.sentence;
}

TEST_F(PhotosChecked, OneThatCannotBeReadIsNotTakenForMissing) {
    fs::remove(fileOf(kAbc, ".jpg"));
    fs::create_directory(fileOf(kAbc, ".jpg")); // reading it fails with EISDIR, for root too
    const PhotoCheck found = checked(log);
    ASSERT_EQ(found.findings.size(), 1U);
    EXPECT_NE(found.findings[0].sentence.find("can't be read"), std::string::npos)
        << found.findings[0].sentence;
}

TEST_F(PhotosChecked, AFolderThatIsGoneMakesAllOfThemMissing) {
    fs::remove_all(photos);
    EXPECT_EQ(checked(log).findings.size(), 2U);
}

TEST_F(PhotosChecked, ACopyWithoutAFolderOfPhotosSaysThatTheyWereNotLookedAt) {
    const std::string share = folder.file("share");
    fs::create_directory(share);
    const auto copy = publishSnapshot(log, share);
    ASSERT_TRUE(copy) << copy.error().detail;
    const PhotoCheck alone = checked(copy->file);
    EXPECT_EQ(alone.named, 2);
    EXPECT_TRUE(alone.findings.empty());
    EXPECT_EQ(
        alone.note, "2 photos are named, and no folder of photos lies beside this copy: they were "
                    "not looked at");
    ASSERT_TRUE(copyPhotos(photos, copy->file + ".photos", {}));
    EXPECT_EQ(checked(copy->file), (PhotoCheck{2, {}, ""}));
    fs::remove(fs::path(copy->file + ".photos") / (kAbc + ".jpg"));
    EXPECT_EQ(checked(copy->file).findings.size(), 1U);
}

TEST_F(PhotosChecked, ALogThatNamesNoneNeedsNoFolder) {
    const std::string other = folder.file("other.seamlog");
    test::writeSampleLog(other, clock);
    EXPECT_EQ(checked(other), PhotoCheck{});
    EXPECT_EQ(checkPhotos(folder.file("none")).error().code, ErrorCode::Unreadable);
}

} // namespace
} // namespace seamclock
