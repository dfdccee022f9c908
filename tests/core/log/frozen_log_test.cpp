#include "tests/support/frozen_log.h"

#include "core/log/log_writer.h"
#include "core/log/verify.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <filesystem>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

// tests/data/log-vN.log was written by the program of schema version N (make_frozen_log.cpp), and
// log-vN.txt says what it held then. A change of the program may change neither.
TEST(FrozenLog, OfEveryVersionIsReadVerifiedAndGoneOnWith) {
    const std::string data = std::string(SEAMCLOCK_SOURCE_DIR) + "/tests/data";
    int found = 0;
    for (const auto& entry : std::filesystem::directory_iterator(data)) {
        const std::string name = entry.path().filename().string();
        if (name.rfind("log-v", 0) != 0 || entry.path().extension() != ".log") {
            continue;
        }
        SCOPED_TRACE(name);
        ++found;
        const test::ScratchFolder folder;
        const std::string path = folder.file(name);
        std::filesystem::copy_file(entry.path(), path);
        const std::string keys = entry.path().string() + ".credentials";
        if (std::filesystem::exists(keys)) { // git keeps no rights
            std::filesystem::copy_file(keys, path + ".credentials");
            std::filesystem::permissions(
                path + ".credentials",
                std::filesystem::perms::owner_read | std::filesystem::perms::owner_write);
        }
        const std::string held = test::textOf(data + "/" + entry.path().stem().string() + ".txt");
        EXPECT_EQ(test::contentOf(path), held);
        {
            const test::FakeClock clock;
            auto writer = LogWriter<Production>::open(path, clock, test::quick());
            ASSERT_TRUE(writer.has_value()) << writer.error().detail;
            EXPECT_EQ(writer->origin(), LogOrigin::Known);
            EXPECT_EQ(test::contentOf(path), held) << "brought to this version";
            writer->submit(test::rowsOf(test::closedWeld(9)), test::sampleDocuments());
            ASSERT_TRUE(writer->flush().has_value());
            EXPECT_TRUE(writer->state().refused.empty());
        }
        const auto report = verifyLog(path);
        ASSERT_TRUE(report.has_value()) << report.error().detail;
        EXPECT_TRUE(report->ok) << report->finding->reason;
        EXPECT_EQ(report->seals.size(), name == "log-v1.log" ? 0U : 1U);
        EXPECT_TRUE(report->notes.empty()) << report->notes.front();
    }
    EXPECT_GE(found, 1) << "no frozen log in tests/data";
}

} // namespace
} // namespace seamclock
