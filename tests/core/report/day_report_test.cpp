#include "core/report/day_report.h"

#include "core/log/log_writer.h"
#include "core/log/seal.h"
#include "core/log/world.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

TEST(DayReport, HoldsTheDaysJointsAndTheSealsFingerprint) {
    const test::ScratchFolder folder;
    test::FakeClock clock;
    clock.wait(std::chrono::hours(24 * 10));
    const std::string path = folder.file("a.log");
    auto writer = LogWriter<Production>::open(path, clock, test::quick());
    ASSERT_TRUE(writer.has_value());
    const SigningKey key = SigningKey::make();
    for (const FactDetail& detail :
         {FactDetail(PersonSet{"Ines Falk", "foreman", true}),
          FactDetail(KeySet{key.publicKey(), "first"})}) {
        ASSERT_TRUE(writer->note(clock.now(), "station", "person:ines", detail).has_value());
    }
    writer->submit(test::rowsOf(test::closedWeld(1)), test::sampleDocuments());
    ASSERT_TRUE(writer->flush().has_value());
    auto reader = LogReader::open(path);
    const std::string day = reader->joints({})->front().day;
    const auto before = dayReport(*reader, day);
    ASSERT_TRUE(before.has_value()) << before.error().detail;
    EXPECT_TRUE(holds(*before, "Day report, " + day));
    EXPECT_TRUE(holds(*before, "Not sealed.")) << *before;
    EXPECT_TRUE(holds(*before, "1: 1 within limits")) << *before;
    EXPECT_FALSE(holds(*before, "coupon:")) << *before;

    CouponTested bent;
    bent.test = "bend";
    bent.material = "PE-HD";
    bent.thicknessUm = 8'000;
    bent.weld = test::weldName(1);
    bent.angleMilli = {160'000, 95'500};
    bent.cracked = {0, 1};
    ASSERT_TRUE(writer->note(clock.now(), "person:ines", "coupon:7", bent).has_value());
    ASSERT_TRUE(writer->flush().has_value());
    const auto tested = dayReport(*reader, day);
    EXPECT_TRUE(holds(*tested, "coupon:7")) << *tested;
    EXPECT_TRUE(holds(*tested, "160, 95.5°")) << *tested;
    EXPECT_TRUE(holds(*tested, "1 of 2")) << *tested;

    const auto sealed = sealDay(*writer, key, "person:ines", day, clock.now());
    ASSERT_TRUE(sealed.has_value()) << sealed.error().detail;
    const auto after = dayReport(*reader, day);
    EXPECT_TRUE(holds(*after, "Ines Falk (person:ines)")) << *after;
    EXPECT_TRUE(holds(*after, sealFingerprint(*sealed))) << *after;
    EXPECT_TRUE(holds(*after, fingerprint(key.publicKey()))) << *after;
    EXPECT_TRUE(holds(*after, "Seal of " + day)) << *after;
    EXPECT_FALSE(holds(*after, "Not wholly covered")) << *after;
    EXPECT_FALSE(holds(*after, "Not sealed.")) << *after;

    writer->submit(test::rowsOf(test::unfinishedWeld(2, 4)));
    ASSERT_TRUE(writer->flush().has_value());
    const auto more = dayReport(*reader, day);
    EXPECT_TRUE(holds(*more, "Not wholly covered by a seal: joint 2.")) << *more;
    EXPECT_TRUE(holds(*more, "1 still open")) << *more;
}

// A day that was forgotten in the evening and sealed with the next one is sealed.
TEST(DayReport, NamesTheSealOfALaterDayThatCoversItsJoints) {
    const test::ScratchFolder folder;
    test::FakeClock clock;
    clock.wait(std::chrono::hours(24 * 10));
    const std::string path = folder.file("a.log");
    const SigningKey key = SigningKey::make();
    auto writer = LogWriter<Production>::open(path, clock, test::signing());
    ASSERT_TRUE(writer.has_value());
    test::enterForeman(*writer, clock, key);
    writer->submit(test::rowsOf(test::closedWeld(1)), test::sampleDocuments());
    ASSERT_TRUE(writer->flush().has_value());
    auto reader = LogReader::open(path);
    const std::string day = reader->joints({})->front().day;
    const std::string later = "2030-01-08";
    ASSERT_NE(day, later);
    const auto seal = sealDay(*writer, key, test::kForeman, later, clock.now());
    ASSERT_TRUE(seal.has_value()) << seal.error().detail;
    const auto report = dayReport(*reader, day);
    ASSERT_TRUE(report.has_value()) << report.error().detail;
    EXPECT_TRUE(holds(*report, "Seal of " + later)) << *report;
    EXPECT_TRUE(holds(*report, sealFingerprint(*seal))) << *report;
    EXPECT_FALSE(holds(*report, "Not sealed.")) << *report;
    // A second seal, which covers no more of that day's joints, is not of that day's paper.
    const auto row = writer->note(
        clock.now(), "station", test::kForeman, PersonSet{"Ines Falk", "foreman", true});
    ASSERT_TRUE(row.has_value()) << row.error().detail;
    ASSERT_TRUE(writer->flush().has_value());
    const auto second = sealDay(*writer, key, test::kForeman, "2030-01-09", clock.now());
    ASSERT_TRUE(second.has_value()) << second.error().detail;
    EXPECT_FALSE(holds(*dayReport(*reader, day), "Seal of 2030-01-09"));
}

TEST(DayReport, OfAnEmptyDaySaysSoAndOfNoDateRefuses) {
    const test::ScratchFolder folder;
    const std::string path = folder.file("a.log");
    test::writeSampleLog(path, test::FakeClock());
    auto reader = LogReader::open(path);
    EXPECT_TRUE(holds(*dayReport(*reader, "1999-12-31"), "none"));
    const auto none = dayReport(*reader, "yesterday");
    ASSERT_FALSE(none.has_value());
    EXPECT_EQ(none.error().code, ErrorCode::Malformed);
}

} // namespace
} // namespace seamclock
