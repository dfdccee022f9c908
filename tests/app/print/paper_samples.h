// Joints for papers: welds from the invented story (tests/support/story.h), with what a log would
// tell beside them. Names and numbers are invented.
#pragma once

#include "core/report/record_facts.h"
#include "core/weld/intent.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>
#include <string>
#include <utility>
#include <vector>

namespace seamclock::test {

/// The invented plan's force of 1032 N and drag of 20 N at 15.5 mm over a zero of 0.5 mm: about
/// 70 N/mm.
inline Bench benchOfTheStory() {
    Bench bench;
    bench.id = "bench-a";
    bench.name = "East bench";
    bench.scale = {"mm", 500, 500, 40'000, 1, {newtons(70)}, Force(), {}};
    bench.calibration = CalibrationNote{"2029-06-01", "2030-06-01", 1, "", {}, {}};
    return bench;
}

inline SealFact sampleSeal() {
    SealFact seal;
    seal.day = "2030-01-13";
    seal.by = "person:oddo";
    seal.at = {
        Milliseconds(1), "boot-1", Milliseconds(1'894'550'400'000), std::chrono::minutes(60)};
    seal.toSeq = 812;
    seal.fingerprint = "0f3a 96c2 11de 84b7 5a01 9c3e 7d20 4f88";
    seal.keyFingerprint = "aa10 22bc 9d04 71f3 08e5 6c2a b1d9 3307";
    return seal;
}

inline LogFacts sampleLog() {
    LogFacts log;
    log.logId = "0f3a96c2-5d4e-4b6a-9c11-2f7780aa4e15";
    log.world = "production";
    log.roster.people = {
        {"person:op-1", "Ilva Borrick", Role::Operator, true},
        {"person:oddo", "Oddo Quenley", Role::Foreman, true}};
    log.seals = {sampleSeal()};
    return log;
}

inline RecordFacts factsOf(const Weld& weld) {
    RecordFacts facts;
    facts.record = record(weld);
    facts.bench = benchOfTheStory();
    const auto certificate = readCertificate("PE-HD, PP 3-20 mm", "2031-06-30");
    if (certificate) {
        facts.certificate = *certificate;
    }
    return facts;
}

/// Pulled, and put right once: invented strengths, whose factor is 27.2 over 30.0.
inline CouponSeries pulledCoupons() {
    CouponTested tested;
    tested.test = "tensile";
    tested.standard = "EN 12814-2";
    tested.material = "PE-HD";
    tested.thicknessUm = 8'000;
    tested.weldedPa = {29'000'000, 27'400'000};
    tested.parentPa = {29'500'000, 30'500'000};
    CouponSeries out;
    out.id = "coupon:5d4e0f3a-96c2-4b6a-9c11-2f7780aa4e15";
    const Instant at = sampleSeal().at;
    out.versions = {{at, "person:oddo", tested, 1}, {at, "person:oddo", tested, 2}};
    out.versions[1].tested.weldedPa[0] = 27'000'000;
    out.versions[1].tested.reason = "read from the wrong line";
    out.factor = weldingFactor({27, 27.4}, {29.5, 30.5}).value();
    out.required = 0.9;
    return out;
}

inline CouponSeries bentCoupons() {
    CouponTested tested;
    tested.test = "bend";
    tested.material = "PE-HD";
    tested.thicknessUm = 8'000;
    tested.ramUm = {23'000, 31'500};
    tested.cracked = {1, 0};
    CouponSeries out;
    out.id = "coupon:9c11";
    out.versions = {{sampleSeal().at, "person:oddo", tested, 1}};
    return out;
}

/// One more event, by somebody.
inline Weld with(const Story& story, const std::string& by, const WeldDetail& detail) {
    const auto n = static_cast<std::int64_t>(story.weld().events.size()) + 1;
    const auto next = apply(story.weld(), Event{story.now(), by, story.weld().id(), n, detail});
    EXPECT_TRUE(next) << next.error().detail;
    return next ? *next : story.weld();
}

/// A joint whose changeover was late, with everything that people can say to one.
inline Story lateJoint() {
    Story story;
    story.soak().wait(Milliseconds(8'813)).then(FacesMet{});
    story.wait(std::chrono::seconds(6)).then(ReadingTaken{ReadingPhase::Joining, 15'400});
    story.wait(std::chrono::seconds(2)).then(PressureLocked{});
    const Milliseconds start = story.time().lo;
    story.waitUntil(start + std::chrono::seconds(70))
        .then(ReadingTaken{ReadingPhase::Recheck, 15'100});
    story.waitUntil(start + std::chrono::seconds(240))
        .then(ReadingTaken{ReadingPhase::Recheck, 14'700});
    story.waitUntil(start + story.weld().plan.cooling->atLeast);
    for (const std::string& step : std::vector<std::string>(story.weld().plan.releaseOrder)) {
        story.then(ReleaseStep{step}).wait(std::chrono::seconds(8));
    }
    story.then(BeadMeasured{150'000, 9'300, 4'100, 700, 300});
    story.then(BeadMeasured{710'000, 9'600, 4'200, 650, 250});
    story.then(JointNumbered{});
    story.then(RemarkMade{"edge gap 0.3 mm at the back"});
    story.then(PhotoAdded{std::string(64, 'c'), 412'334, "seam-s3-back.jpg"});
    story.then(Graded{"EN 16296", "C"});
    story.then(ReasonGiven{"changeover", "plate_stuck", "the lifter caught"});
    story.then(closing(story.weld()));
    story.wait(std::chrono::minutes(50));
    return story;
}

} // namespace seamclock::test
