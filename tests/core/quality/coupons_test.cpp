// Coupons in a real log: entered, put right, and read back with all that was said.
#include "core/quality/coupons.h"

#include "core/log/log_reader.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

CouponTested tensile() {
    CouponTested tested;
    tested.test = "tensile";
    tested.standard = "EN 12814-2";
    tested.material = "PE-HD";
    tested.thicknessUm = 8'000;
    tested.procedure = "invented";
    tested.weld = test::weldName(2);
    tested.weldedPa = {27'000'000, 28'000'000, 29'000'000, 28'000'000, 28'000'000};
    tested.parentPa = {30'000'000, 31'000'000, 29'000'000, 30'000'000, 30'000'000};
    return tested;
}

CouponTested bend() {
    CouponTested tested;
    tested.test = "bend";
    tested.material = "PP";
    tested.thicknessUm = 6'000;
    tested.welder = "person:ilva";
    tested.angleMilli = {160'000, 95'500};
    tested.cracked = {0, 1};
    return tested;
}

class Coupons : public ::testing::Test {
protected:
    void SetUp() override { test::writeSampleLog(path, clock); }
    void note(const std::string& series, const CouponTested& tested) {
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        ASSERT_TRUE(writer->note(clock.now(), "person:ines", series, tested));
        ASSERT_TRUE(writer->flush());
    }
    CouponsRead readAll() {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader);
        auto all = readCoupons(*reader);
        EXPECT_TRUE(all) << (all ? "" : all.error().detail);
        return all.value_or(CouponsRead());
    }
    std::vector<CouponSeries> read() { return readAll().series; }
    void damage(const std::string& subject, std::int64_t n) {
        test::BehindTheBack tool(path);
        tool.database().exec(
            "UPDATE event SET body = replace(body, '\"v\":', '\"w\":') WHERE subject = '" +
            subject + "' AND n = " + std::to_string(n));
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
};

TEST_F(Coupons, AreLinkedToJointOperatorAndProcedure) {
    EXPECT_TRUE(read().empty());
    note("coupon:1", tensile());
    note("coupon:2", bend());
    const auto all = read();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[0].joint, 2);
    EXPECT_EQ(all[0].joinedBy, "person:op-1"); // who opened joint 2
    EXPECT_EQ(all[0].now(), tensile());
    ASSERT_TRUE(all[0].factor);
    EXPECT_NEAR(all[0].factor->factor, 0.93333, 1e-5);
    EXPECT_EQ(all[0].required, 0.9);
    EXPECT_EQ(all[1].joint, 0);
    EXPECT_EQ(all[1].joinedBy, "person:ilva");
    EXPECT_FALSE(all[1].factor);
    EXPECT_EQ(all[1].now().angleMilli, bend().angleMilli);
}

TEST_F(Coupons, ACorrectionHidesNothing) {
    note("coupon:1", tensile());
    CouponTested right = tensile();
    right.weldedPa[0] = 17'000'000;
    right.reason = "the first was read as 27";
    note("coupon:1", right);
    const auto all = read();
    ASSERT_EQ(all.size(), 1U);
    ASSERT_EQ(all[0].versions.size(), 2U);
    EXPECT_EQ(all[0].versions[0].tested.weldedPa[0], 27'000'000);
    EXPECT_EQ(all[0].versions[0].n, 1);
    EXPECT_EQ(all[0].versions[1].n, 2);
    EXPECT_EQ(all[0].now().weldedPa[0], 17'000'000);
    EXPECT_EQ(all[0].versions[1].by, "person:ines");
    ASSERT_TRUE(all[0].factor);
    EXPECT_NEAR(all[0].factor->welded.meanMpa, 26, 1e-9); // (17 + 28 + 29 + 28 + 28) / 5
    EXPECT_EQ(answerOf(*all[0].factor, all[0].required), FactorAnswer::NotMet);
}

TEST_F(Coupons, EachVersionKnowsTheJointThatItWasCutFrom) {
    note("coupon:1", tensile());
    CouponTested moved = tensile();
    moved.weld.reset();
    moved.reason = "it was the trial's";
    note("coupon:1", moved);
    const auto all = read();
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].versions[0].joint, 2);
    EXPECT_EQ(all[0].versions[1].joint, 0);
    EXPECT_EQ(all[0].joint, 0);
}

TEST_F(Coupons, ComeFromAJointThatWasMadeAndFromItsOwnSheets) {
    const auto refusal = [&](const CouponTested& tested) {
        auto reader = LogReader::open(path);
        const auto origin = checkOrigin(*reader, tested);
        return origin ? std::string() : origin.error().detail;
    };
    EXPECT_EQ(refusal(tensile()), "");
    CouponTested wrong = tensile();
    wrong.material = "PP";
    EXPECT_EQ(refusal(wrong), "\"PP\" is not the plastic of joint 2; allowed: PE-HD");
    wrong = tensile();
    wrong.thicknessUm = 15'000;
    EXPECT_NE(refusal(wrong).find("15 mm is not the sheet of joint 2"), std::string::npos);
    wrong = tensile();
    wrong.welder = "Nobody";
    EXPECT_EQ(
        refusal(wrong),
        "nobody here is \"Nobody\"; allowed: one of this log's people, as person:ID");
    wrong.welder = "person:op-1"; // who opened it
    EXPECT_EQ(refusal(wrong), "");
    wrong = tensile();
    wrong.weld = "weld:none";
    EXPECT_NE(refusal(wrong).find("there is no \"weld:none\""), std::string::npos);
    CouponTested trial = tensile();
    trial.weld.reset();
    EXPECT_EQ(refusal(trial), "");
    // One that stands in cooling, and one that was stopped before its faces met.
    test::Story cooling;
    cooling.buildUp();
    test::Story stopped;
    stopped.soak().then(WeldAborted{"sheet_slipped", ""});
    int number = 91;
    for (const auto& [story, why] :
         {std::pair{&cooling, "joint 91 is not finished yet; allowed: a joint that is"},
          std::pair{&stopped, "the faces of joint 92 never met; allowed: a joint that was made"}}) {
        std::vector<Event> events = story->weld().events;
        for (Event& event : events) {
            event.subject = test::weldName(number);
        }
        std::get<WeldOpened>(events.front().d).number = number;
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        writer->submit(test::rowsOf(events), test::sampleDocuments());
        ASSERT_TRUE(writer->flush());
        wrong = tensile();
        wrong.weld = test::weldName(number++);
        EXPECT_EQ(refusal(wrong), why);
    }
}

TEST_F(Coupons, OfOneJointAreThoseThatWereCutFromIt) {
    note("coupon:1", tensile());
    note("coupon:2", bend());
    CouponTested other = tensile();
    other.weld = test::weldName(3);
    note("coupon:3", other);
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader);
    const auto cut = readCoupons(*reader, test::weldName(2));
    ASSERT_TRUE(cut) << cut.error().detail;
    ASSERT_EQ(cut->series.size(), 1U);
    EXPECT_EQ(cut->series[0].id, "coupon:1");
    EXPECT_TRUE(cut->series[0].factor);
    EXPECT_EQ(cutFrom(test::weldName(2), readAll()), cut->series);
    EXPECT_TRUE(readCoupons(*reader, test::weldName(1))->series.empty());
}

TEST_F(Coupons, AnEventThatCantBeReadIsNamedAndTheRestStands) {
    note("coupon:1", tensile());
    CouponTested right = tensile();
    right.weldedPa[0] = 17'000'000;
    right.reason = "the first was read as 27";
    note("coupon:1", right);
    note("coupon:2", bend());
    note("coupon:3", bend());
    // Of the joint only its opening is asked for.
    damage(test::weldName(2), 4);
    EXPECT_EQ(readAll().series.at(0).joint, 2);
    EXPECT_TRUE(readAll().series.at(0).unread.empty());
    damage("coupon:1", 2);
    damage("coupon:3", 1);
    damage(test::weldName(2), 1);
    const CouponsRead all = readAll();
    ASSERT_EQ(all.series.size(), 2U);
    const CouponSeries& first = all.series[0];
    EXPECT_EQ(first.now().weldedPa[0], 27'000'000) << "what it was put right to is not known";
    ASSERT_EQ(first.unread.size(), 2U);
    EXPECT_EQ(first.unread[0].subject, "coupon:1");
    EXPECT_EQ(first.unread[0].n, 2);
    EXPECT_FALSE(first.unread[0].why.empty());
    EXPECT_EQ(first.unread[1].subject, test::weldName(2));
    EXPECT_EQ(first.unread[1].n, 1);
    EXPECT_TRUE(first.isJointUnread());
    EXPECT_EQ(first.joint, 0);
    EXPECT_TRUE(all.series[1].unread.empty());
    ASSERT_EQ(all.unread.size(), 1U);
    EXPECT_EQ(all.unread[0].subject, "coupon:3");
    EXPECT_EQ(all.unread[0].n, 1);
}

TEST(CouponCheck, TakesWhatATestCanGiveAndRefusesTheRest) {
    EXPECT_TRUE(checkCoupon(tensile()));
    EXPECT_TRUE(checkCoupon(bend()));
    CouponTested onlyWelded = tensile();
    onlyWelded.parentPa.clear();
    EXPECT_TRUE(checkCoupon(onlyWelded));
    const auto refused = [](CouponTested tested, auto change) {
        change(tested);
        const auto checked = checkCoupon(tested);
        EXPECT_FALSE(checked);
        return checked ? std::string() : checked.error().detail;
    };
    EXPECT_EQ(
        refused(tensile(), [](auto& t) { t.test = "peel"; }),
        "\"peel\" is no test; allowed: tensile, bend");
    EXPECT_EQ(
        refused(tensile(), [](auto& t) { t.material.clear(); }),
        "no material is named; allowed: as PE-HD");
    EXPECT_EQ(
        refused(tensile(), [](auto& t) { t.thicknessUm = 99; }),
        "a thickness of 0.099 mm; allowed: 0.1 to 1000 mm");
    EXPECT_EQ(
        refused(tensile(), [](auto& t) { t.weldedPa[1] = 2'000'000'000; }),
        "a welded strength of 2000 MPa; allowed: 0.1 to 1000 MPa");
    EXPECT_EQ(
        refused(tensile(), [](auto& t) { t.cracked = {1}; }),
        "a tensile test has no bends; allowed: strengths");
    EXPECT_EQ(
        refused(tensile(), [](auto& t) { t.remark = std::string(201, 'x'); }),
        "a text of 201 bytes; allowed: up to 200");
    EXPECT_EQ(
        refused(bend(), [](auto& t) { t.angleMilli.pop_back(); }),
        "1 angles and 0 displacements for 2 bend coupons; allowed: one of either for each");
    EXPECT_EQ(
        refused(
            bend(),
            [](auto& t) {
                t.ramUm = {20'000, 20'000};
            }),
        "2 angles and 2 displacements for 2 bend coupons; allowed: one of either for each");
    EXPECT_EQ(
        refused(bend(), [](auto& t) { t.angleMilli[0] = 180'001; }),
        "a bend angle is outside 0 to 180°");
    EXPECT_EQ(
        refused(bend(), [](auto& t) { t.cracked[0] = 2; }), "a bend coupon cracked or not: 1 or 0");
    EXPECT_EQ(
        refused(bend(), [](auto& t) { t.cracked.clear(); }), "0 bend coupons; allowed: 1 to 200");
    EXPECT_EQ(
        refused(bend(), [](auto& t) { t.weldedPa = {28'000'000}; }),
        "a bend test has no strengths; allowed: angles or displacements of the ram");
}

TEST(CouponCheck, ReadsListsOfNumbers) {
    const auto list = readThousandths("31.2, 30.85,28");
    ASSERT_TRUE(list);
    EXPECT_EQ(*list, (std::vector<std::int64_t>{31'200, 30'850, 28'000}));
    EXPECT_TRUE(readThousandths("")->empty());
    EXPECT_EQ(
        readThousandths("31.2,x").error().detail,
        "\"x\" is not a number; allowed: numbers with a dot, parted by commas");
    EXPECT_FALSE(readThousandths("31.2,,30"));
    EXPECT_FALSE(readThousandths("inf"));
}

} // namespace
} // namespace seamclock
