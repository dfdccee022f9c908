// What a paper needs of a log, from real log files.
#include "core/report/record_facts.h"

#include "core/copies/log_import.h"
#include "core/heat/material_codec.h"
#include "core/log/fact_codec.h"
#include "core/log/log_writer.h"
#include "core/log/seal.h"
#include "core/log/world.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>
#include <tuple>

namespace seamclock {
namespace {

class Facts : public ::testing::Test {
protected:
    /// Five joints under a seal, one behind it; see writeSealedLog.
    void SetUp() override {
        path = folder.file("a.log");
        clock.wait(std::chrono::hours(24 * 10));
        test::writeSealedLog(path, clock, key);
    }
    LogReader reader() {
        auto opened = LogReader::open(path);
        EXPECT_TRUE(opened) << opened.error().detail;
        return std::move(*opened);
    }
    Result<LogWriter<Production>> writer() {
        return LogWriter<Production>::open(path, clock, test::signing());
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    SigningKey key = SigningKey::make();
    std::string path;
};

TEST_F(Facts, NameTheSealThatCoversAJointAndNoneForTheOneBehindIt) {
    auto log = reader();
    const auto facts = logFacts(log);
    ASSERT_TRUE(facts) << facts.error().detail;
    ASSERT_EQ(facts->seals.size(), 1U);
    EXPECT_EQ(facts->seals[0].day, "2030-01-07");
    EXPECT_EQ(facts->seals[0].by, test::kForeman);
    const auto day = log.bodies("day:2030-01-07");
    ASSERT_TRUE(day);
    const auto row = factFromBody(day->at(static_cast<std::size_t>(facts->seals[0].n) - 1));
    ASSERT_TRUE(row);
    EXPECT_EQ(sealFingerprint(*row), facts->seals[0].fingerprint);
    EXPECT_EQ(facts->seals[0].keyFingerprint, fingerprint(key.publicKey()));
    EXPECT_EQ(facts->world, "production");
    const auto first = recordFacts(log, *facts, test::weldName(1));
    ASSERT_TRUE(first) << first.error().detail;
    ASSERT_EQ(first->sealed.size(), 1U);
    EXPECT_EQ(first->sealed[0].toN, static_cast<std::int64_t>(first->record.events.size()));
    EXPECT_EQ(first->sealed[0].seal.fingerprint, facts->seals[0].fingerprint);
    EXPECT_FALSE(first->elsewhere);
    EXPECT_EQ(first->trouble, "");
    const auto behind = recordFacts(log, *facts, test::weldName(6));
    ASSERT_TRUE(behind);
    EXPECT_TRUE(behind->sealed.empty());
}

TEST_F(Facts, ADecisionBehindTheSealIsCoveredByTheNextOneOnly) {
    const auto events = test::closedWeld(1);
    const auto last = static_cast<std::int64_t>(events.size());
    {
        auto log = writer();
        ASSERT_TRUE(log);
        Event decided = events.back();
        decided.n = last + 1;
        decided.by = test::kForeman;
        decided.d = Decided{Decision::Accept, "looks good"};
        log->submit(test::rowsOf({decided}));
        ASSERT_TRUE(log->flush());
    }
    {
        auto log = reader();
        const auto facts = recordFacts(log, *logFacts(log), test::weldName(1));
        ASSERT_TRUE(facts) << facts.error().detail;
        ASSERT_EQ(facts->sealed.size(), 1U);
        EXPECT_EQ(facts->sealed[0].toN, last) << "the decision came behind it";
    }
    auto log = writer();
    const auto second = sealDay(*log, key, test::kForeman, "2030-01-08", clock.now());
    ASSERT_TRUE(second) << second.error().detail;
    auto again = reader();
    const auto facts = recordFacts(again, *logFacts(again), test::weldName(1));
    ASSERT_TRUE(facts);
    ASSERT_EQ(facts->sealed.size(), 2U);
    EXPECT_EQ(facts->sealed[1].toN, last + 1);
    EXPECT_EQ(facts->sealed[1].seal.day, "2030-01-08");
    EXPECT_EQ(facts->sealed[1].seal.fingerprint, sealFingerprint(*second));
}

TEST_F(Facts, OfAReportNameTheSealOfALaterDayThatCoversAJoint) {
    {
        auto log = writer();
        const auto second = sealDay(*log, key, test::kForeman, "2030-01-08", clock.now());
        ASSERT_TRUE(second) << second.error().detail;
    }
    auto log = reader();
    const auto report = reportFacts(log, JointFilter{});
    ASSERT_TRUE(report) << report.error().detail;
    ASSERT_EQ(report->log.seals.size(), 2U);
    for (const ReportJoint& joint : report->joints) {
        const bool behind = joint.line.number == 6; // the first seal
        ASSERT_EQ(joint.seals.size(), 1U) << joint.line.number;
        EXPECT_EQ(report->log.seals[joint.seals[0]].day, behind ? "2030-01-08" : "2030-01-07")
            << joint.line.number;
        EXPECT_EQ(joint.sealedToN, static_cast<std::int64_t>(joint.record->events.size()));
    }
}

TEST_F(Facts, HoldTheCertificateThatWasNotedWhenTheJointBegan) {
    const auto events = test::closedWeld(1);
    const std::string welder = events.front().by;
    {
        auto log = writer();
        ASSERT_TRUE(log);
        Instant before = events.front().at;
        before.utc -= std::chrono::hours(1);
        Instant after = events.front().at;
        after.utc += std::chrono::hours(1);
        ASSERT_TRUE(log->note(
            before, test::kForeman, welder, CertificateNoted{"PE-HD 3-20 mm", "2030-06-30"}));
        ASSERT_TRUE(log->note(
            after, test::kForeman, welder, CertificateNoted{"PE-HD, PP 3-30 mm", "2032-06-30"}));
        ASSERT_TRUE(log->flush());
    }
    auto log = reader();
    const auto facts = recordFacts(log, *logFacts(log), test::weldName(1));
    ASSERT_TRUE(facts) << facts.error().detail;
    ASSERT_TRUE(facts->certificate);
    EXPECT_EQ(facts->certificate->until, "2030-06-30");
    const auto own = log.bodies(welder);
    ASSERT_TRUE(own);
    ASSERT_GE(own->size(), 2U);
    const auto noted = factFromBody((*own)[static_cast<std::size_t>(facts->certificateN) - 1]);
    ASSERT_TRUE(noted);
    EXPECT_EQ(noted->d, FactDetail(CertificateNoted{"PE-HD 3-20 mm", "2030-06-30"}));
    const auto report = reportFacts(log, std::vector<std::string>{test::weldName(1)});
    ASSERT_TRUE(report) << report.error().detail;
    EXPECT_EQ(report->joints.at(0).certificate, facts->certificate);
}

// Two shops name their people alike: a joint's own log knows whom it means.
TEST_F(Facts, OfAJointOfAnotherLogAreAboutItsOwnPeople) {
    const std::string other = folder.file("b.log");
    const auto events = test::closedWeld(11);
    const std::string welder = events.front().by;
    Instant before = test::closedWeld(1).front().at;
    before.utc -= std::chrono::hours(1);
    for (const auto& [file, name, scope] :
         {std::tuple{path, "Jan Tolm", "PE-HD 3-12 mm"}, {other, "Jan Verrik", "PE-HD 3-30 mm"}}) {
        auto log = LogWriter<Production>::open(file, clock, test::signing());
        ASSERT_TRUE(log) << log.error().detail;
        ASSERT_TRUE(log->note(before, "station", welder, PersonSet{name, "operator"}));
        ASSERT_TRUE(
            log->note(before, test::kForeman, welder, CertificateNoted{scope, "2031-06-30"}));
        if (file == other) {
            log->submit(test::rowsOf(events), test::sampleDocuments());
        }
        ASSERT_TRUE(log->flush());
    }
    ASSERT_TRUE(importLog(other, path, clock));
    auto log = reader();
    const auto facts = recordFacts(log, *logFacts(log), test::weldName(11));
    ASSERT_TRUE(facts) << facts.error().detail;
    EXPECT_TRUE(facts->elsewhere);
    ASSERT_EQ(facts->people.people.size(), 1U);
    EXPECT_EQ(facts->people.people[0].name, "Jan Verrik");
    ASSERT_TRUE(facts->certificate);
    EXPECT_EQ(scopeOf(*facts->certificate), "PE-HD 3-30 mm");
    EXPECT_EQ(facts->certificateN, 2);
    const auto report = reportFacts(log, JointFilter{});
    ASSERT_TRUE(report) << report.error().detail;
    for (const ReportJoint& joint : report->joints) {
        const bool came = joint.line.number == 11;
        EXPECT_EQ(joint.elsewhere, came) << joint.line.number;
        EXPECT_EQ(joint.people.people.size(), came ? 1U : 0U);
        ASSERT_TRUE(joint.certificate) << joint.line.number;
        EXPECT_EQ(scopeOf(*joint.certificate), came ? "PE-HD 3-30 mm" : "PE-HD 3-12 mm");
    }
}

/// The estimate on paper names what it is worked out from.
TEST_F(Facts, OfTheHeatNameThePlanThePlateAndTheStepsFromPhaseToPhase) {
    auto log = reader();
    const auto materials =
        readMaterialFolder(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/materials");
    ASSERT_TRUE(materials) << materials.error().detail;
    const auto facts = recordFacts(log, *logFacts(log), test::weldName(1), &*materials);
    ASSERT_TRUE(facts) << facts.error().detail;
    EXPECT_EQ(facts->heat.has_value(), !facts->heatFrom.empty());
    std::vector<std::string> kinds;
    for (const std::int64_t n : facts->heatFrom) {
        kinds.emplace_back(kindOf(facts->record.events[static_cast<std::size_t>(n) - 1].d));
    }
    EXPECT_EQ(
        kinds, (std::vector<std::string>{
                   "weld_opened", "check_made", "alignment_started", "soak_started", "plate_out",
                   "faces_met", "pressure_locked", "release_step"}));
    EXPECT_TRUE(recordFacts(log, *logFacts(log), test::weldName(1))->heatFrom.empty());
}

// No release is known yet, and a number that will change is none.
TEST_F(Facts, OfAWeldThatStillRunsTellNoHeat) {
    test::Story cooling;
    cooling.buildUp().wait(std::chrono::seconds(60));
    std::vector<Event> events = cooling.weld().events;
    for (Event& event : events) {
        event.subject = test::weldName(91);
    }
    std::get<WeldOpened>(events.front().d).number = 91;
    auto writer = LogWriter<Production>::open(path, clock, test::quick());
    ASSERT_TRUE(writer) << writer.error().detail;
    writer->submit(test::rowsOf(events), test::sampleDocuments());
    ASSERT_TRUE(writer->flush());
    auto log = reader();
    const auto materials =
        readMaterialFolder(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/materials");
    ASSERT_TRUE(materials) << materials.error().detail;
    const auto facts = recordFacts(log, *logFacts(log), test::weldName(91), &*materials);
    ASSERT_TRUE(facts) << facts.error().detail;
    EXPECT_FALSE(facts->heat.has_value());
}

TEST_F(Facts, HoldTheCouponsThatWereCutFromTheJoint) {
    CouponTested tested;
    tested.test = "bend";
    tested.material = "PE-HD";
    tested.thicknessUm = 8'000;
    tested.angleMilli = {160'000};
    tested.cracked = {0};
    {
        auto log = writer();
        ASSERT_TRUE(log);
        ASSERT_TRUE(log->note(clock.now(), test::kForeman, "coupon:1", tested)); // of a trial
        tested.weld = test::weldName(2);
        ASSERT_TRUE(log->note(clock.now(), test::kForeman, "coupon:2", tested));
        ASSERT_TRUE(log->flush());
    }
    auto log = reader();
    const auto facts = recordFacts(log, *logFacts(log), test::weldName(2));
    ASSERT_TRUE(facts) << facts.error().detail;
    ASSERT_EQ(facts->coupons.size(), 1U);
    EXPECT_EQ(facts->coupons[0].id, "coupon:2");
    EXPECT_EQ(facts->coupons[0].now(), tested);
    EXPECT_EQ(facts->coupons[0].joint, 2);
    EXPECT_TRUE(recordFacts(log, *logFacts(log), test::weldName(1))->coupons.empty());
    const auto report = reportFacts(log, JointFilter{});
    ASSERT_TRUE(report) << report.error().detail;
    for (const ReportJoint& joint : report->joints) {
        EXPECT_EQ(joint.coupons.size(), joint.line.number == 2 ? 1U : 0U) << joint.line.number;
    }
}

TEST_F(Facts, NameTheJointThatWasWeldedAgainWhereThisLogHoldsIt) {
    const auto write = [&](std::int64_t number, const std::string& first) {
        auto events = test::closedWeld(number);
        std::get<WeldOpened>(events.front().d).reweldOf = first;
        auto log = writer();
        ASSERT_TRUE(log);
        log->submit(test::rowsOf(events));
        ASSERT_TRUE(log->flush());
    };
    const std::string uuid = test::weldName(2).substr(std::string("weld:").size());
    write(81, uuid);
    write(82, test::weldName(2));
    write(83, "99999999-0000-4000-8000-000000000000");
    auto log = reader();
    const auto numberOf = [&](std::int64_t joint) {
        const auto facts = recordFacts(log, *logFacts(log), test::weldName(joint));
        EXPECT_TRUE(facts) << facts.error().detail;
        return facts->reweldOfNumber;
    };
    EXPECT_EQ(numberOf(81), 2);
    EXPECT_EQ(numberOf(82), 2) << "by its whole name";
    EXPECT_FALSE(numberOf(83)) << "of another log";
    EXPECT_FALSE(numberOf(2)) << "it welds nothing again";
}

TEST_F(Facts, OfMoreJointsThanAReportHoldsAreRefusedWithAWayOut) {
    auto log = reader();
    const auto many =
        reportFacts(log, std::vector<std::string>(kMostReportJoints + 1, test::weldName(1)));
    ASSERT_FALSE(many);
    EXPECT_EQ(many.error().code, ErrorCode::OutOfRange);
    EXPECT_NE(many.error().detail.find(std::to_string(kMostReportJoints)), std::string::npos);
    EXPECT_NE(many.error().detail.find("or the joints as CSV"), std::string::npos);
}

TEST_F(Facts, OfAWeldThatIsNotThereAreRefused) {
    auto log = reader();
    const auto none = recordFacts(log, *logFacts(log), test::weldName(77));
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Missing);
    EXPECT_NE(none.error().detail.find("allowed: "), std::string::npos);
    const auto report = reportFacts(log, std::vector<std::string>{test::weldName(77)});
    ASSERT_FALSE(report);
    EXPECT_EQ(report.error().code, ErrorCode::Missing);
}

TEST_F(Facts, OfAReportHaveTheOldestJointFirstAndWhatIsSealedOfEach) {
    auto log = reader();
    const auto report = reportFacts(log, JointFilter{});
    ASSERT_TRUE(report) << report.error().detail;
    std::vector<std::int64_t> numbers;
    for (const ReportJoint& joint : report->joints) {
        ASSERT_TRUE(joint.record);
        numbers.push_back(joint.line.number);
        const auto events = static_cast<std::int64_t>(joint.record->events.size());
        EXPECT_EQ(joint.sealedToN, joint.line.number == 6 ? 0 : events) << joint.line.number;
    }
    EXPECT_EQ(numbers, (std::vector<std::int64_t>{1, 2, 3, 5, 6, 4})) << "4 was begun last";
    const auto chosen =
        reportFacts(log, std::vector<std::string>{test::weldName(6), test::weldName(2)});
    ASSERT_TRUE(chosen);
    ASSERT_EQ(chosen->joints.size(), 2U);
    EXPECT_EQ(chosen->joints[0].line, report->joints[1].line);
    JointFilter bad;
    bad.fromDay = "yesterday";
    EXPECT_EQ(reportFacts(log, bad).error().code, ErrorCode::Malformed);
}

TEST_F(Facts, OfADamagedJointSayWhyAndKeepTheOthers) {
    {
        test::BehindTheBack back(path);
        back.database().exec(
            "UPDATE event SET body = replace(body, 'soak_started', 'soak_startled') WHERE subject "
            "= '" +
            test::weldName(2) + "'");
    }
    auto log = reader();
    const auto report = reportFacts(log, JointFilter{});
    ASSERT_TRUE(report) << report.error().detail;
    ASSERT_EQ(report->joints.size(), 6U);
    for (const ReportJoint& joint : report->joints) {
        EXPECT_EQ(joint.record.has_value(), joint.line.weld != test::weldName(2));
        EXPECT_EQ(joint.trouble.empty(), joint.record.has_value()) << joint.trouble;
    }
    const auto one = recordFacts(log, *logFacts(log), test::weldName(2));
    ASSERT_FALSE(one);
    EXPECT_EQ(one.error().code, ErrorCode::Damaged);
}

} // namespace
} // namespace seamclock
