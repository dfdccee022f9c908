// The day log in the window, by presses: what a foreman's word leaves in the log, that nobody else
// can say it, and that no page of it comes over a bench that has both hands.
#include "app/operate/day_walk.h"
#include "app/operate/photo.h"
#include "core/log/log_reader.h"
#include "core/weld/record.h"
#include "tests/app/operate/demo_shop.h"
#include "tests/app/operate/typist.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QKeyEvent>
#include <algorithm>
#include <gtest/gtest.h>
#include <optional>
#include <set>

namespace seamclock {
namespace {

class DayLog : public testing::Test {
protected:
    /// One good joint, closed, on bench A.
    void welded() { ASSERT_TRUE(Walk(shop.window(), shop.floor(), shop.clock()).goodWeld({})); }
    void foreman() {
        people.emplace(shop.window(), shop.desk(), shop.clock());
        ASSERT_TRUE(people->openWho());
        ASSERT_TRUE(people->firstForeman("Oddo Quenley", PeopleWalk::kForemansPin));
        shop.window().people()->close();
        walk.emplace(shop.window(), shop.writer(), *people, shop.clock());
        ASSERT_TRUE(walk->open());
    }
    DayPage& page() { return *shop.window().dayLog()->dayPage(); }
    SlotView slot(const char* name) { return page().findChild<SlotButton*>(name)->view(); }
    WeldRecord record() {
        EXPECT_TRUE(shop.writer().flush());
        auto reader = LogReader::open(shop.log());
        const auto lines = reader->joints({});
        const auto events = reader->weldEvents(lines->front().weld);
        return seamclock::record(*fold(*events));
    }
    int visibleRows() {
        return static_cast<int>(
            std::count_if(page().rows().begin(), page().rows().end(), [](const JointRow* row) {
                return row->isVisible();
            }));
    }

    Shop shop;
    std::optional<PeopleWalk> people;
    std::optional<DayWalk> walk;
};

TEST_F(DayLog, WithoutAForemanAJointIsSeenAndNothingCanBeDecided) {
    ASSERT_NO_FATAL_FAILURE(welded());
    PeopleWalk nobody(shop.window(), shop.desk(), shop.clock());
    ASSERT_TRUE(DayWalk(shop.window(), shop.writer(), nobody, shop.clock()).open());
    EXPECT_EQ(visibleRows(), 1);
    EXPECT_FALSE(page().joint().verdict.isEmpty());
    EXPECT_TRUE(page().joint().course.estimated);
    for (const char* name : {"dayAccept", "dayRepair", "dayCutOut"}) {
        EXPECT_EQ(slot(name).look, SlotView::Look::Gone) << name;
    }
    EXPECT_EQ(slot("dayRecord").look, SlotView::Look::Plain);
    const std::size_t events = record().events.size();
    emit page().pressed(DayPress::Accept);
    EXPECT_EQ(shop.window().currentPage(), &page());
    EXPECT_EQ(record().events.size(), events);
}

TEST_F(DayLog, ADecisionIsAnEventInTheForemansNameAndChangesNoVerdict) {
    ASSERT_NO_FATAL_FAILURE(welded());
    const WeldRecord before = record();
    ASSERT_NO_FATAL_FAILURE(foreman());
    const auto done =
        walk->decide(DayPress::Accept, "Looked at: the bead is good", PeopleWalk::kForemansPin);
    ASSERT_TRUE(done) << done.error().detail;
    const WeldRecord after = record();
    ASSERT_EQ(after.events.size(), before.events.size() + 1);
    const auto* decided = std::get_if<Decided>(&after.events.back().d);
    ASSERT_NE(decided, nullptr);
    EXPECT_EQ(decided->decision, Decision::Accept);
    EXPECT_EQ(decided->reason, "looked_good");
    EXPECT_EQ(after.events.back().by, "person:oddo-quenley");
    EXPECT_EQ(after.stored->verdict, before.stored->verdict);
    EXPECT_EQ(page().joint().decided.left(24), "Accepted by Oddo Quenley");
    EXPECT_EQ(page().rows().front()->view().decided, "accepted");
}

TEST_F(DayLog, AWrongPinDecidesNothing) {
    ASSERT_NO_FATAL_FAILURE(welded());
    ASSERT_NO_FATAL_FAILURE(foreman());
    const std::size_t events = record().events.size();
    EXPECT_FALSE(walk->decide(DayPress::CutOut, "It leaks", "999999"));
    EXPECT_EQ(record().events.size(), events);
    emit shop.window().currentPage()->slotPressed(SlotPlace::Stop); // and one can leave it
    EXPECT_EQ(shop.window().page(), PageKind::Day);
    EXPECT_EQ(shop.window().currentPage(), &page());
}

TEST_F(DayLog, ASignOffIsSaidOnce) {
    ASSERT_NO_FATAL_FAILURE(welded());
    ASSERT_NO_FATAL_FAILURE(foreman());
    ASSERT_TRUE(walk->press(DayPress::Record));
    ASSERT_TRUE(walk->answer("Sign it off"));
    ASSERT_TRUE(people->givePin(PeopleWalk::kForemansPin));
    walk->settle();
    EXPECT_TRUE(std::holds_alternative<SignedOff>(record().events.back().d));
    ASSERT_TRUE(walk->press(DayPress::Record));
    EXPECT_TRUE(page().joint().decided.contains("igned off"))
        << page().joint().decided.toStdString();
    EXPECT_FALSE(walk->answer("Sign it off")) << "it is gone";
}

TEST_F(DayLog, ACorrectionKeepsTheOriginalInTheLog) {
    ASSERT_NO_FATAL_FAILURE(welded());
    ASSERT_NO_FATAL_FAILURE(foreman());
    ASSERT_TRUE(walk->press(DayPress::Record));
    ASSERT_TRUE(walk->answer("Correct a value"));
    DayLogFlow& flow = *shop.window().dayLog();
    emit flow.choicePage()->chosen(0);
    ASSERT_EQ(shop.window().currentPage(), flow.namePage());
    flow.namePage()->setName("warm");
    emit flow.namePage()->slotPressed(SlotPlace::Step);
    EXPECT_EQ(shop.window().currentPage(), flow.namePage()) << "that is no temperature";
    flow.namePage()->setName("209");
    emit flow.namePage()->slotPressed(SlotPlace::Step);
    ASSERT_EQ(shop.window().currentPage(), flow.choicePage());
    emit flow.choicePage()->chosen(0);
    ASSERT_TRUE(people->givePin(PeopleWalk::kForemansPin));
    walk->settle();
    const WeldRecord made = record();
    const auto* corrected = std::get_if<ValueCorrected>(&made.events.back().d);
    ASSERT_NE(corrected, nullptr);
    EXPECT_EQ(corrected->is, "209000");
    const Event& original = made.events.at(static_cast<std::size_t>(corrected->targetN - 1));
    EXPECT_EQ(std::to_string(*std::get<CheckMade>(original.d).valueMc), corrected->was);
}

TEST_F(DayLog, IsNarrowedBySearchAndSaysWhenNothingIsLikeThat) {
    ASSERT_NO_FATAL_FAILURE(welded());
    ASSERT_NO_FATAL_FAILURE(foreman());
    DayLogFlow& flow = *shop.window().dayLog();
    const auto search = [&](const char* words) {
        emit page().pressed(DayPress::Search);
        flow.searchPage()->setWords(words);
        emit flow.searchPage()->slotPressed(SlotPlace::Step);
        walk->settle();
        return visibleRows();
    };
    EXPECT_EQ(search("1"), 1) << "its number";
    EXPECT_EQ(search("zirconium"), 0);
    EXPECT_EQ(page().view().nothing, "No joint is like that.");
    EXPECT_EQ(slot("dayAccept").look, SlotView::Look::Gone);
    EXPECT_EQ(search(""), 1);
    ASSERT_TRUE(walk->press(DayPress::Verdict));
    emit flow.choicePage()->chosen(1);
    walk->settle();
    EXPECT_EQ(visibleRows(), 1);
    EXPECT_TRUE(page().view().verdict.narrows);
}

TEST_F(DayLog, ARunningWeldIsInItWithItsTimeAndOneTouchLeadsBack) {
    Walk made(shop.window(), shop.floor(), shop.clock());
    ASSERT_TRUE(made.toCooling());
    PeopleWalk nobody(shop.window(), shop.desk(), shop.clock());
    DayWalk day(shop.window(), shop.writer(), nobody, shop.clock());
    ASSERT_TRUE(day.open());
    ASSERT_EQ(visibleRows(), 1);
    const JointRowView row = page().rows().front()->view();
    EXPECT_EQ(row.mark, page().view().running.mark);
    EXPECT_TRUE(row.reason.startsWith(page().view().running.phase)) << row.reason.toStdString();
    EXPECT_TRUE(row.reason.endsWith(page().view().running.time)) << row.reason.toStdString();
    EXPECT_EQ(page().joint().verdict, "Not finished");
    EXPECT_FALSE(page().joint().course.estimated);
    const QString before = page().view().running.time;
    shop.clock().advance(std::chrono::seconds(5));
    shop.window().refresh();
    EXPECT_NE(page().view().running.time, before) << "its clock runs on";
    EXPECT_FALSE(shop.window().findChild<StripBar*>("strip")->isVisible());
    emit page().pressed(DayPress::Running);
    EXPECT_EQ(shop.window().page(), PageKind::Weld);
    EXPECT_TRUE(shop.window().findChild<StripBar*>("strip")->isVisible());
}

TEST_F(DayLog, ABenchThatHasBothHandsTakesTheScreenFromEveryPageOfIt) {
    ASSERT_NO_FATAL_FAILURE(welded());
    ASSERT_NO_FATAL_FAILURE(foreman());
    Walk made(shop.window(), shop.floor(), shop.clock());
    shop.floor().leave(0);
    emit page().pressed(DayPress::Running);
    ASSERT_TRUE(made.toSoak());
    ASSERT_TRUE(walk->open());
    ASSERT_TRUE(walk->press(DayPress::Record));
    ASSERT_EQ(shop.window().currentPage(), shop.window().dayLog()->choicePage());
    const Weld* weld = shop.floor().weld(shop.floor().selected());
    ASSERT_NE(weld, nullptr);
    shop.clock().advance(weld->plan.soak->target);
    shop.window().refresh();
    EXPECT_EQ(shop.window().page(), PageKind::Weld) << "the plate calls";
    emit shop.window().currentPage()->slotPressed(SlotPlace::Step);
    shop.clock().advance(std::chrono::seconds(1));
    emit shop.window().currentPage()->slotPressed(SlotPlace::Step); // plate out
    shop.window().openDay();
    EXPECT_EQ(shop.window().page(), PageKind::Weld) << "nothing comes over a changeover";
    emit shop.window().dayLog()->turned();
    EXPECT_EQ(shop.window().page(), PageKind::Weld);
}

TEST_F(DayLog, KeysAloneReachEveryTarget) {
    ASSERT_NO_FATAL_FAILURE(welded());
    ASSERT_NO_FATAL_FAILURE(foreman());
    DayLogFlow& flow = *shop.window().dayLog();
    const auto* ring = shop.window().findChild<KeyRing*>("keyRing");
    ASSERT_NE(ring, nullptr);
    test::Typist typist(shop.window());
    const auto type = [&typist](Qt::Key key) { typist.press(key); };
    std::set<QString> reached;
    for (int i = 0; i < 20; ++i) {
        type(Qt::Key_Tab);
        ASSERT_NE(ring->on(), nullptr);
        reached.insert(ring->on()->objectName());
    }
    for (const char* name :
         {"dayDay", "dayBench", "dayVerdict", "daySearch", "dayRunning", "joint0", "dayAccept",
          "dayRepair", "dayCutOut", "dayRecord"}) {
        EXPECT_EQ(reached.count(name), 1U) << name;
    }
    for (int i = 0; i < 20 && ring->on()->objectName() != QLatin1String("dayRecord"); ++i) {
        type(Qt::Key_Tab);
    }
    type(Qt::Key_Return); // presses what the ring is on
    EXPECT_EQ(shop.window().currentPage(), flow.choicePage());
    type(Qt::Key_Escape);
    EXPECT_EQ(shop.window().currentPage(), &page()) << "escape is one page back";
    type(Qt::Key_Return);
    EXPECT_NE(shop.window().page(), PageKind::Day) << "and without a ring the step leaves the log";
}

// A real picture, kept as the operator keeps it, and then changed behind the program's back.
TEST_F(DayLog, TheJointsPageSaysThatAPhotoWasChanged) {
    ASSERT_NO_FATAL_FAILURE(welded());
    const QString log = QString::fromStdString(shop.log());
    const QString file = QDir(QFileInfo(log).path()).filePath("crack.png");
    QImage picture(40, 30, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    ASSERT_TRUE(picture.save(file));
    const auto kept = keepPhoto(file, log);
    ASSERT_TRUE(kept) << kept.error().detail;
    ASSERT_TRUE(shop.floor().addPhoto(shop.floor().selected(), *kept));
    ASSERT_NO_FATAL_FAILURE(foreman());
    EXPECT_EQ(page().joint().photos, "") << "it is as it was kept";
    const QString there = lookAtPhoto(*kept, log).file;
    picture.fill(Qt::red);
    ASSERT_TRUE(picture.save(there));
    ASSERT_TRUE(walk->press(DayPress::Running));
    ASSERT_TRUE(walk->open());
    const QString sum = QString::fromStdString(kept->sha256).left(8);
    EXPECT_TRUE(page().joint().photos.startsWith(
        "Photo crack.png was changed: expected SHA-256 " + sum + "…, found "))
        << page().joint().photos.toStdString();
    ASSERT_TRUE(QFile::remove(there));
    ASSERT_TRUE(walk->press(DayPress::Running));
    ASSERT_TRUE(walk->open());
    EXPECT_EQ(page().joint().photos, "Photo crack.png is missing: expected SHA-256 " + sum + "…");
}

TEST_F(DayLog, ClosesTheDayByPinAndComesBack) {
    ASSERT_NO_FATAL_FAILURE(welded());
    ASSERT_NO_FATAL_FAILURE(foreman());
    DayLogFlow& flow = *shop.window().dayLog();
    ASSERT_TRUE(walk->press(DayPress::Search));
    emit flow.searchPage()->tilePressed(3);
    ASSERT_TRUE(people->givePin(PeopleWalk::kForemansPin));
    EXPECT_EQ(shop.window().currentPage(), shop.window().people()->sealPage());
    const SealView& seal = shop.window().people()->sealPage()->view();
    EXPECT_EQ(seal.step.text, "Seal the day");
    EXPECT_EQ(seal.stop.under, "back to the log");
    emit shop.window().currentPage()->slotPressed(SlotPlace::Stop);
    EXPECT_EQ(shop.window().page(), PageKind::Day) << "his PIN opened this page, and no desk";
    EXPECT_EQ(shop.window().people()->page(), nullptr);
    // On to the end, it leads back likewise.
    emit flow.searchPage()->tilePressed(3);
    ASSERT_TRUE(people->givePin(PeopleWalk::kForemansPin));
    ASSERT_TRUE(people->press(SlotPlace::Step)) << "seal";
    ASSERT_TRUE(people->press(SlotPlace::Step)) << "report";
    EXPECT_EQ(seal.step.text, "Back to the log");
    ASSERT_TRUE(people->press(SlotPlace::Step));
    EXPECT_EQ(shop.window().page(), PageKind::Day);
}

} // namespace
} // namespace seamclock
