// A copy of a log whose disk goes away meanwhile: none is left, and the log that takes another in
// stays as it was.
#include "tests/support/lost_disk.h"

#include "core/copies/copy_look.h"
#include "core/copies/log_copy.h"
#include "core/copies/log_import.h"
#include "core/copies/photo_check.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <filesystem>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

class LostDisk : public ::testing::Test {
protected:
    void SetUp() override { test::writeSealedLog(path, clock, SigningKey::make()); }

    test::ScratchFolder folder;
    test::FakeClock clock;
    test::FaultyDisk disk;
    std::string path = folder.file("a.log");
};

TEST_F(LostDisk, OfACopyThatIsMadeLeavesNone) {
    const std::string target = folder.file("copy.seamlog");
    const auto isLeft = [this] {
        const fs::directory_iterator files(folder.path());
        return std::any_of(begin(files), end(files), [](const fs::directory_entry& file) {
            return file.path().filename().string().find("copy") != std::string::npos;
        });
    };
    for (const CopyWay way : {CopyWay::Vacuumed, CopyWay::PageByPage}) {
        test::everyLossIsTold(disk, "a copy", [&] {
            CopyOptions options;
            options.way = way;
            options.verify = true;
            auto copy = copyLog(path, target, options);
            EXPECT_EQ(fs::exists(target), copy.has_value());
            fs::remove(target);
            EXPECT_FALSE(isLeft()) << "of what was begun";
            return test::complaintOf(copy);
        });
    }
}

TEST_F(LostDisk, OfACopyThatIsReadIsTold) {
    const std::string copy = folder.file("copy.seamlog");
    ASSERT_TRUE(copyLog(path, copy, {}));
    test::everyLossIsTold(disk, "a copy's head", [&] { return test::complaintOf(readCopy(copy)); });
    test::everyLossIsTold(disk, "a copy", [&] { return test::complaintOf(lookAtCopy(copy)); });
    test::everyLossIsTold(disk, "photos", [&] { return test::complaintOf(checkPhotos(path)); });
    test::everyLossIsTold(disk, "an id", [&] { return test::complaintOf(logIdOf(path)); });
}

// The rows come all or not at all. That they came is told behind them, so the loss may fall between
// the two; the next import makes up for it.
TEST_F(LostDisk, OfALogThatIsTakenInLeavesAllOfItOrNothing) {
    const std::string other = folder.file("b.log");
    {
        auto writer = LogWriter<Production>::open(other, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        writer->submit(test::rowsOf(test::closedWeld(31)), test::sampleDocuments());
        ASSERT_TRUE(writer->flush());
    }
    constexpr std::int64_t kOwn = 1;
    constexpr std::int64_t kWhole = 7;
    std::int64_t nothing = 0;
    std::int64_t accesses = 1;
    for (std::int64_t n = 0; n <= accesses; n += n == 0 ? 1 : 7) {
        const test::ScratchFolder own;
        const std::string into = own.file("into.log");
        fs::copy_file(other, into);
        const auto joints = [&into] {
            auto reader = LogReader::open(into);
            return reader ? static_cast<std::int64_t>(reader->joints({})->size()) : -1;
        };
        const std::int64_t before = disk.accesses();
        disk.loseAt(n);
        const auto made = importLog(path, into, clock);
        disk.loseAt(0);
        if (n == 0) {
            ASSERT_TRUE(made) << made.error().detail;
            accesses = disk.accesses() - before;
        }
        const std::int64_t left = joints();
        EXPECT_TRUE(left == kWhole || (!made && left == kOwn)) << n << ": " << left;
        nothing += left == kOwn ? 1 : 0;
        const auto again = importLog(path, into, clock);
        ASSERT_TRUE(again) << n << ": " << again.error().detail;
        EXPECT_EQ(again->joints, kWhole - left) << n;
        EXPECT_EQ(joints(), kWhole) << n;
        auto reader = LogReader::open(into);
        const auto said = reader->bodies("station");
        EXPECT_EQ(
            std::count_if(
                said->begin(), said->end(),
                [](const std::string& body) {
                    return body.find("\"log_imported\"") != std::string::npos;
                }),
            1)
            << n << ": told once";
        EXPECT_TRUE(verifyLog(into)->ok) << n;
    }
    EXPECT_GT(nothing, 5);
}

} // namespace
} // namespace seamclock
