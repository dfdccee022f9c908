// How the shop is doing, by presses as a foreman works: what is kept is read back from the log, and
// from what the bench is offered then.
#include "app/operate/shop_walk.h"

#include "core/log/log_reader.h"
#include "core/session/job_book.h"
#include "tests/app/operate/demo_shop.h"
#include "tests/support/log_samples.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

class ShopWalkTest : public testing::Test {
protected:
    ShopWalkTest()
        : people(shop.window(), shop.desk(), shop.clock()),
          walk(
              shop.window(), shop.writer(), people,
              QString::fromStdString(shop.documents() + "/tables")) {}

    void foreman() {
        ASSERT_TRUE(people.openWho());
        const auto done = people.firstForeman("Oddo Quenley", PeopleWalk::kForemansPin);
        ASSERT_TRUE(done) << done.error().detail;
        ASSERT_TRUE(people.press(SlotPlace::Step)); // the desk is left
    }
    void weld() {
        Walk one(shop.window(), shop.floor(), shop.clock());
        const auto done = one.goodWeld({});
        ASSERT_TRUE(done) << done.error().detail;
        ASSERT_TRUE(shop.writer().flush());
    }
    void askWhichJointWasPulled() {
        ASSERT_TRUE(walk.open());
        ASSERT_TRUE(walk.choose("Strength tests"));
        ASSERT_TRUE(walk.press(SlotPlace::Step));
        ASSERT_TRUE(walk.choose("Pulled, of a joint"));
    }
    ShopFlow& flow() { return *shop.window().shop(); }
    const std::vector<ListRowView>& rows() { return flow().listPage()->view().rows; }
    std::vector<CouponSeries> coupons() {
        EXPECT_TRUE(shop.writer().flush());
        auto reader = LogReader::open(shop.log());
        EXPECT_TRUE(reader);
        return readCoupons(*reader).value_or(CouponsRead()).series;
    }
    QStringList offered(int post) {
        shop.floor().select(post);
        shop.window().openNextCard();
        QStringList labels;
        for (const ChoiceView::Choice& choice : shop.window().choicePage()->view().choices) {
            labels << choice.text.section(':', 0, 0);
        }
        return labels;
    }

    Shop shop;
    PeopleWalk people;
    ShopWalk walk;
};

TEST_F(ShopWalkTest, ATableOfSeamsBecomesWhatTheBenchesAreOffered) {
    foreman();
    const auto done = walk.table();
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_TRUE(offered(1).contains("L1")) << "wished on west";
    EXPECT_FALSE(offered(0).contains("L1"));
    EXPECT_TRUE(offered(1).contains("L2")) << "fits both, and wishes for none";
    EXPECT_TRUE(offered(0).contains("L2"));
    // Its weld names the job, so that another job's L2 is another seam.
    shop.floor().select(0);
    shop.window().openMenu();
    emit shop.window().currentPage()->slotPressed(SlotPlace::Step); // back to the bench
    shop.window().refresh();
    ASSERT_EQ(shop.window().page(), PageKind::Seams);
    const auto& choices = shop.window().choicePage()->view().choices;
    const auto seam = std::find_if(choices.begin(), choices.end(), [](const auto& choice) {
        return choice.text.startsWith("L2");
    });
    ASSERT_NE(seam, choices.end());
    emit shop.window().choicePage()->chosen(static_cast<int>(seam - choices.begin()));
    ASSERT_EQ(shop.window().page(), PageKind::Card);
    emit shop.window().currentPage()->slotPressed(SlotPlace::Step);
    shop.window().passTrial();
    const Weld* opened = shop.floor().weld(0);
    ASSERT_NE(opened, nullptr);
    EXPECT_EQ(opened->opened().seam, "L2");
    EXPECT_EQ(opened->opened().job, "QV-131");
    EXPECT_EQ(opened->opened().bench, "east");
    EXPECT_FALSE(offered(1).contains("L2"));
}

TEST_F(ShopWalkTest, ASeamIsTypedHeldAgainstTheTablesChecksAndTakenAwayAgain) {
    foreman();
    const auto done = walk.seamByHand();
    ASSERT_TRUE(done) << done.error().detail;
    ASSERT_TRUE(walk.choose("Job QV-131"));
    ASSERT_EQ(rows().size(), 1U);
    EXPECT_EQ(rows()[0].text, "L3: lid, two halves");
    ASSERT_TRUE(walk.choose("L3"));
    ASSERT_TRUE(walk.choose("Take it away"));
    ASSERT_TRUE(people.givePin(PeopleWalk::kForemansPin));
    walk.settle();
    auto reader = LogReader::open(shop.log());
    ASSERT_TRUE(reader);
    EXPECT_TRUE(readJobSeams(*reader)->seams.empty());
    EXPECT_FALSE(offered(1).contains("L3"));
}

// A table that was brought in under a wrong name.
TEST_F(ShopWalkTest, AJobsSeamsWithoutAJointAreTakenAwayAtOnce) {
    foreman();
    ASSERT_TRUE(walk.table());
    ASSERT_TRUE(walk.open());
    ASSERT_TRUE(walk.choose("Jobs and seams"));
    ASSERT_TRUE(walk.choose("Job QV-131"));
    ASSERT_GE(rows().size(), 2U);
    ASSERT_TRUE(walk.choose("L1"));
    ASSERT_TRUE(walk.choose("Take away all without a joint"));
    ASSERT_TRUE(people.givePin(PeopleWalk::kForemansPin));
    walk.settle();
    auto reader = LogReader::open(shop.log());
    ASSERT_TRUE(reader);
    EXPECT_TRUE(readJobSeams(*reader)->seams.empty());
    EXPECT_FALSE(offered(1).contains("L1"));
}

TEST_F(ShopWalkTest, NothingIsKeptWithoutAForeman) {
    ASSERT_TRUE(walk.open());
    ASSERT_TRUE(walk.choose("Jobs and seams"));
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    EXPECT_EQ(shop.window().currentPage(), flow().listPage()) << "no form comes";
    ASSERT_TRUE(walk.open());
    ASSERT_TRUE(walk.choose("Strength tests"));
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    EXPECT_EQ(shop.window().currentPage(), flow().listPage());
}

TEST_F(ShopWalkTest, ThePlanIsWorkedOutAnewWhenAJointIsMade) {
    ASSERT_TRUE(walk.open());
    ASSERT_TRUE(walk.choose("The day's plan"));
    const QString before = flow().planPage()->view().under;
    EXPECT_TRUE(before.endsWith("Seams made: 0 of 6.")) << before.toStdString();
    const Instant at = flow().planPage()->view().at;
    weld();
    ASSERT_TRUE(walk.open());
    ASSERT_TRUE(walk.choose("The day's plan"));
    EXPECT_TRUE(flow().planPage()->view().under.endsWith("Seams made: 1 of 6."))
        << flow().planPage()->view().under.toStdString();
    // While it stands: the log grows, and it is worked out anew by itself.
    const Instant second = flow().planPage()->view().at;
    EXPECT_NE(second.boot, at.boot);
    ASSERT_TRUE(shop.writer().note(
        shop.clock().now(), "station", "station", ClockJumped{Milliseconds{5'000}}, {}));
    ASSERT_TRUE(shop.writer().flush());
    shop.clock().advance(std::chrono::seconds(5));
    shop.window().refresh();
    walk.settle();
    EXPECT_EQ(flow().planPage()->view().at.boot, shop.clock().now().boot);
    // And by a tap.
    shop.clock().advance(std::chrono::seconds(1));
    emit flow().planPage()->chart()->pressed();
    walk.settle();
    EXPECT_EQ(flow().planPage()->view().at.boot, shop.clock().now().boot);
}

// Another choice, while an earlier one is being worked out.
TEST_F(ShopWalkTest, APlanThatIsAskedForMeanwhileIsWorkedOutToo) {
    ASSERT_TRUE(walk.open());
    ASSERT_TRUE(walk.choose("The day's plan"));
    emit flow().planPage()->chart()->pressed();
    ASSERT_TRUE(flow().isBusy());
    shop.clock().advance(std::chrono::seconds(1));
    emit flow().planPage()->chart()->pressed();
    walk.settle();
    EXPECT_EQ(flow().planPage()->view().at.boot, shop.clock().now().boot);
}

TEST_F(ShopWalkTest, ThePlanTakesTheBenchesThatAreTicked) {
    ASSERT_TRUE(walk.open());
    ASSERT_TRUE(walk.choose("The day's plan"));
    EXPECT_EQ(flow().planPage()->view().lanes.size(), 3U); // two benches, one operator
    ASSERT_TRUE(walk.press(SlotPlace::Back));
    ASSERT_TRUE(walk.choose("Bench A"));
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    EXPECT_EQ(flow().planPage()->view().lanes.size(), 2U);
    ASSERT_TRUE(walk.press(SlotPlace::Back));
    ASSERT_TRUE(walk.choose("Bench B"));
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    EXPECT_EQ(shop.window().currentPage(), flow().listPage()) << "one bench at least";
}

TEST_F(ShopWalkTest, CouponsThatArePutRightKeepWhatWasEnteredFirst) {
    weld();
    foreman();
    const auto done = walk.pulled("1");
    ASSERT_TRUE(done) << done.error().detail;
    const auto all = coupons();
    ASSERT_EQ(all.size(), 1U);
    ASSERT_EQ(all[0].versions.size(), 2U);
    EXPECT_EQ(all[0].joint, 1);
    EXPECT_EQ(
        all[0].versions[0].tested.weldedPa,
        (std::vector<std::int64_t>{22'400'000, 22'900'000, 22'100'000}));
    EXPECT_EQ(all[0].versions[0].by, "person:oddo-quenley");
    // 3810 N / (12 mm × 14.2 mm) = 22.359 N/mm²
    EXPECT_EQ(all[0].now().weldedPa, (std::vector<std::int64_t>{22'359'000}));
    EXPECT_EQ(all[0].now().reason, "typed from the wrong sheet");
    const bool shown = std::any_of(rows().begin(), rows().end(), [](const ListRowView& row) {
        return row.third.contains("22.40");
    });
    EXPECT_TRUE(shown) << "what was entered first stands on the page";
    const auto bent = walk.bent();
    ASSERT_TRUE(bent) << bent.error().detail;
    const auto both = coupons();
    ASSERT_EQ(both.size(), 2U);
    const bool byRam = std::any_of(both.begin(), both.end(), [](const CouponSeries& one) {
        return one.now().ramUm == std::vector<std::int64_t>{23'400} &&
               one.now().angleMilli.empty() && one.now().standard == "EN 12814-1" &&
               one.joinedBy.rfind("person:", 0) == 0 && !one.now().weld;
    });
    EXPECT_TRUE(byRam) << "as the laboratory told it";
}

TEST_F(ShopWalkTest, OneNumberOfASeriesIsPutRightAndTheOthersStay) {
    weld();
    foreman();
    ASSERT_TRUE(walk.pulled("1"));
    const CouponTested before = coupons().at(0).now();
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(walk.choose("One number"));
    ASSERT_TRUE(walk.choose("Welded coupon 1"));
    ASSERT_TRUE(walk.number("22.8"));
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    flow().namePage()->setName("a slip of the pad");
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(people.givePin(PeopleWalk::kForemansPin));
    walk.settle();
    const auto all = coupons();
    ASSERT_EQ(all.size(), 1U);
    ASSERT_EQ(all[0].versions.size(), 3U);
    EXPECT_EQ(all[0].now().weldedPa.front(), 22'800'000);
    EXPECT_EQ(all[0].now().weldedPa.size(), before.weldedPa.size());
    EXPECT_EQ(all[0].now().parentPa, before.parentPa);
    EXPECT_EQ(all[0].now().weld, before.weld);
    EXPECT_EQ(all[0].now().reason, "a slip of the pad");
}

TEST_F(ShopWalkTest, ASeriesOfAnotherJointTakesThatJointsWelderAndSheets) {
    weld();
    foreman();
    auto other = test::closedWeld(9);
    other.front().by = "person:jan";
    shop.writer().submit(test::rowsOf(other), test::sampleDocuments());
    ASSERT_TRUE(walk.pulled("1"));
    const CouponTested before = coupons().at(0).now();
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(walk.choose("Another joint"));
    ASSERT_TRUE(walk.number("9"));
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    flow().namePage()->setName("another joint's coupons");
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(people.givePin(PeopleWalk::kForemansPin));
    walk.settle();
    const CouponTested now = coupons().at(0).now();
    EXPECT_EQ(now.weld, test::weldName(9));
    EXPECT_EQ(now.welder, "person:jan");
    EXPECT_EQ(now.weldedPa, before.weldedPa);
    EXPECT_EQ(now.parentPa, before.parentPa);
}

// Another tablet's joints have numbers from 1, too.
TEST_F(ShopWalkTest, OfTwoJointsWithOneNumberTheForemanChooses) {
    weld();
    auto other = test::closedWeld(9);
    std::get<WeldOpened>(other.front().d).number = 1;
    std::get<WeldOpened>(other.front().d).seam = "T4";
    shop.writer().submit(test::rowsOf(other), test::sampleDocuments());
    ASSERT_TRUE(shop.writer().flush());
    foreman();
    askWhichJointWasPulled();
    ASSERT_TRUE(walk.number("1"));
    ASSERT_EQ(shop.window().currentPage(), flow().choicePage());
    const auto& choices = flow().choicePage()->view().choices;
    ASSERT_EQ(choices.size(), 2U);
    const auto meant =
        std::find_if(choices.begin(), choices.end(), [](const ChoiceView::Choice& one) {
            return one.under.startsWith("Seam T4, bench ");
        });
    ASSERT_NE(meant, choices.end());
    ASSERT_TRUE(walk.choose(meant->text.toUtf8().constData()));
    EXPECT_TRUE(flow().choicePage()->view().under.startsWith("Seam T4")) << "which one it is of";
    ASSERT_TRUE(walk.choose("Strengths"));
    for (const char* strength : {"22.4", "22.9"}) {
        ASSERT_TRUE(walk.number(strength));
    }
}

TEST_F(ShopWalkTest, WhatWasTypedWaitsWhileABenchHasTheScreen) {
    weld();
    foreman();
    askWhichJointWasPulled();
    ASSERT_TRUE(walk.number("99"));
    EXPECT_EQ(shop.window().currentPage(), flow().valuePage()) << "there is no joint 99";
    for (int i = 0; i < 2; ++i) {
        flow().valuePage()->pad()->erase();
    }
    ASSERT_TRUE(walk.number("1"));
    ASSERT_TRUE(walk.choose("Strengths"));
    ASSERT_TRUE(walk.number("22.4"));
    shop.window().openDay(); // another page takes the screen
    ASSERT_EQ(flow().page(), nullptr);
    ASSERT_TRUE(walk.open());
    EXPECT_EQ(flow().listPage()->view().title, "What it comes to");
    EXPECT_TRUE(coupons().empty());
    ASSERT_TRUE(walk.press(SlotPlace::Stop)); // nothing is kept
    ASSERT_TRUE(walk.open());
    EXPECT_EQ(shop.window().currentPage(), flow().choicePage());
}

TEST_F(ShopWalkTest, ABatchLeadsToItsJointsAndAJointToItsBatches) {
    weld(); // the demo's S1, of the batches VP-40713 and VP-40714
    const auto done = walk.batches("VP-40713", "1");
    ASSERT_TRUE(done) << done.error().detail;
    while (shop.window().dayLog()->isBusy()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    EXPECT_EQ(shop.window().page(), PageKind::Day);
    EXPECT_EQ(shop.window().dayLog()->filter().words, "1");
}

TEST_F(ShopWalkTest, ChartsAndDueListsComeFromTheLog) {
    weld();
    auto done = walk.charts();
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_GE(rows().size(), 3U) << "changeover, alignment and plate of one joint";
    done = walk.due();
    ASSERT_TRUE(done) << done.error().detail;
}

} // namespace
} // namespace seamclock
