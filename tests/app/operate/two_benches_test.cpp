// Two benches on one screen, on a clock that only the test moves: which of them stands, what a
// press on the strip does meanwhile, and that nothing comes over a changeover or a build-up.
#include "app/operate/window.h"
#include "core/shift/hands.h"
#include "tests/app/operate/demo_shop.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

class TwoBenches : public ::testing::Test {
protected:
    Window& window() { return m_shop.window(); }
    Floor& floor() { return m_shop.floor(); }
    const Weld& weld(int post) { return *floor().weld(post); }
    bool is(int post, const std::string& phase) { return phaseName(weld(post).state) == phase; }
    void go(Milliseconds gap) {
        m_shop.clock().advance(gap);
        window().refresh();
    }
    void press(SlotPlace place = SlotPlace::Step) {
        emit window().currentPage()->slotPressed(place);
    }
    void stands(int post, PageKind page) {
        EXPECT_EQ(floor().selected(), post);
        EXPECT_EQ(static_cast<int>(window().page()), static_cast<int>(page));
    }

    /// Opens the next seam of that bench and makes it by its own offers, to that phase.
    void bring(int post, const std::string& phase) {
        if (floor().weld(post) == nullptr) {
            floor().select(post);
            window().openNextCard();
            press();
            window().passTrial();
        }
        for (int i = 0; i < 60 && !is(post, phase); ++i) {
            m_shop.clock().advance(seconds(1));
            const auto view = floor().view(post, floor().now(), false, false);
            const auto* number = std::get_if<AskNumber>(&view->step.offer);
            const auto done = number == nullptr
                                  ? floor().press(post, view->step.offer, view->onto)
                                  : floor().answer(post, NumberAnswer{number->what, 210});
            ASSERT_TRUE(done) << done.error().detail;
        }
        ASSERT_TRUE(is(post, phase));
    }
    void ready(int post) {
        ASSERT_NO_FATAL_FAILURE(bring(post, "preparing"));
        for (int i = 0; i < 60; ++i) {
            const auto* state = std::get_if<Preparing>(&weld(post).state);
            ASSERT_NE(state, nullptr);
            if (checkAsked(weld(post), *state).empty()) {
                return;
            }
            m_shop.clock().advance(seconds(1));
            const auto view = floor().view(post, floor().now(), false, false);
            const auto* number = std::get_if<AskNumber>(&view->step.offer);
            ASSERT_TRUE(
                number == nullptr ? floor().press(post, view->step.offer, view->onto)
                                  : floor().answer(post, NumberAnswer{number->what, 210}));
        }
        FAIL() << "never ready";
    }
    /// Of a bench in soak.
    Milliseconds left(int post) {
        const auto t = weldTimeAt(weld(post), floor().now());
        return std::get<Soaking>(weld(post).state).due.lo - t->lo;
    }
    void goToBench(int post) {
        emit window().hands().bench(post + 1);
        window().refresh();
    }
    const StripCell& cell(int post) {
        return *window().findChild<StripCell*>(QString("bench%1").arg(post + 1));
    }

    Shop m_shop;
};

TEST_F(TwoBenches, TheScreenComesToABenchThatIsToGetReadyAndAgainWhenItsSoakIsOver) {
    ASSERT_NO_FATAL_FAILURE(bring(0, "soaking"));
    goToBench(1);
    stands(1, PageKind::Seams);
    window().openMenu();
    go(left(0) - seconds(10) - milliseconds(1));
    stands(1, PageKind::Menu);
    go(milliseconds(1));
    stands(0, PageKind::Weld);
    EXPECT_EQ(window().weldPage()->view().lamp.tone, Tone::Soon);
    // A hand may look elsewhere: it comes once.
    go(seconds(1));
    goToBench(1);
    go(seconds(2));
    stands(1, PageKind::Seams);
    EXPECT_EQ(cell(0).view().tone, Tone::Soon) << "and is seen in the strip";
    go(left(0) - milliseconds(1));
    stands(1, PageKind::Seams);
    go(milliseconds(1));
    stands(0, PageKind::Weld);
    EXPECT_EQ(window().weldPage()->view().lamp.word, QStringLiteral("Now"));
}

TEST_F(TwoBenches, APressThatWasOnItsWayToAnotherBenchDoesNotCount) {
    ASSERT_NO_FATAL_FAILURE(bring(0, "soaking"));
    goToBench(1);
    go(left(0));
    stands(0, PageKind::Weld);
    const std::size_t events = weld(0).events.size();
    go(milliseconds(599));
    emit window().hands().step();
    EXPECT_EQ(weld(0).events.size(), events);
    EXPECT_TRUE(is(0, "soaking"));
    go(milliseconds(1));
    emit window().hands().step();
    EXPECT_TRUE(is(0, "changing_over"));
}

TEST_F(TwoBenches, NothingComesOverAChangeoverOrABuildUp) {
    ASSERT_NO_FATAL_FAILURE(bring(1, "cooling")); // done while the other changes over
    ASSERT_NO_FATAL_FAILURE(bring(0, "soaking"));
    goToBench(0);
    const auto t = weldTimeAt(weld(1), floor().now());
    go(std::get<Cooling>(weld(1).state).due.lo - t->lo - milliseconds(500));
    stands(0, PageKind::Weld);
    press();
    ASSERT_TRUE(is(0, "changing_over"));
    go(seconds(1));
    EXPECT_EQ(cell(1).view().mark, Mark::Done) << "the other's cooling is over meanwhile";
    for (const char* phase : {"changing_over", "building_up"}) {
        SCOPED_TRACE(phase);
        ASSERT_TRUE(is(0, phase));
        const std::size_t events = weld(0).events.size() + weld(1).events.size();
        goToBench(1); // by its key
        stands(0, PageKind::Weld);
        EXPECT_EQ(cell(1).view().phase, QStringLiteral("first bench A"));
        go(seconds(3));
        EXPECT_NE(cell(1).view().phase, QStringLiteral("first bench A"));
        emit window().findChild<StripCell*>("bench2")->pressed(); // by a touch
        stands(0, PageKind::Weld);
        EXPECT_EQ(cell(1).view().phase, QStringLiteral("first bench A"));
        emit window().findChild<StatusTile*>("status")->pressed();
        stands(0, PageKind::Weld);
        EXPECT_EQ(
            window().findChild<StatusTile*>("status")->view().sound,
            QStringLiteral("first bench A"));
        window().openDay();
        stands(0, PageKind::Weld);
        window().openNextCard();
        stands(0, PageKind::Weld);
        emit window().people()->turned();
        stands(0, PageKind::Weld);
        emit window().setup()->turned();
        stands(0, PageKind::Weld);
        EXPECT_EQ(weld(0).events.size() + weld(1).events.size(), events) << "no press counted";
        press(); // faces together; at its reading
        go(seconds(1));
    }
    press();
    ASSERT_TRUE(is(0, "cooling"));
    goToBench(1);
    stands(1, PageKind::Weld);
}

TEST_F(TwoBenches, WhatIsStoppedInAChangeoverKeepsTheStepOnThePageOfReasons) {
    ASSERT_NO_FATAL_FAILURE(bring(0, "changing_over"));
    window().refresh();
    stands(0, PageKind::Weld);
    press(SlotPlace::Stop);
    stands(0, PageKind::Reasons);
    go(milliseconds(900));
    stands(0, PageKind::Reasons);
    EXPECT_EQ(window().currentPage()->stepView().text, QStringLiteral("Faces together"));
    goToBench(1);
    stands(0, PageKind::Reasons);
    go(milliseconds(200)); // more than a bounce
    emit window().hands().step();
    EXPECT_TRUE(is(0, "building_up"));
    stands(0, PageKind::Weld);
    press(SlotPlace::Stop);
    stands(0, PageKind::Reasons);
    emit window().choicePage()->chosen(0);
    EXPECT_TRUE(is(0, "aborted"));
}

TEST_F(TwoBenches, ABenchThatCallsWaitsForTheLockOfAnother) {
    ASSERT_NO_FATAL_FAILURE(ready(1));
    ASSERT_NO_FATAL_FAILURE(bring(0, "soaking"));
    ASSERT_NO_FATAL_FAILURE(bring(1, "soaking"));
    const int first = left(0) < left(1) ? 0 : 1;
    const int second = 1 - first;
    goToBench(first);
    go(left(first) + seconds(1));
    stands(first, PageKind::Weld);
    emit window().hands().step();
    ASSERT_TRUE(is(first, "changing_over"));
    go(seconds(2));
    emit window().hands().step();
    ASSERT_TRUE(is(first, "building_up"));
    ASSERT_GT(left(second), Milliseconds(0));
    go(left(second));
    EXPECT_EQ(handsCall(weld(second), floor().now()), HandsCall::Now);
    stands(first, PageKind::Weld);
    EXPECT_EQ(cell(second).view().mark, Mark::Act) << "it is seen in the strip";
    emit window().hands().step(); // at its reading
    go(milliseconds(700));
    stands(first, PageKind::Weld);
    emit window().hands().step(); // locked
    ASSERT_TRUE(is(first, "cooling"));
    window().refresh();
    stands(second, PageKind::Weld);
}

TEST_F(TwoBenches, TheClashIsToldBeforeTheSoakAndThePressCountsAllTheSame) {
    ASSERT_NO_FATAL_FAILURE(ready(1));
    const Milliseconds own = weld(1).plan.soak->target;
    ASSERT_NO_FATAL_FAILURE(ready(0));
    ASSERT_NO_FATAL_FAILURE(bring(0, "aligning"));
    ASSERT_NO_FATAL_FAILURE(bring(0, "soaking"));
    ASSERT_GT(left(0), own + seconds(40)) << "the demo's first seam soaks much longer";
    const auto view = [this] { return *floor().view(1, floor().now(), true, false); };
    go(left(0) - own - seconds(40));
    EXPECT_FALSE(view().sentence.contains("Two hands")) << "no median is known yet";
    goToBench(1);
    press();
    ASSERT_TRUE(is(1, "aligning"));
    // The other's hands are wanted from `left` on: clear while this soak would end before that,
    // with its own changeover and build-up.
    const Milliseconds hands = *weld(1).plan.changeoverMax + weld(1).plan.buildUp->high;
    ASSERT_LT(hands, seconds(20));
    go(seconds(20));
    EXPECT_TRUE(view().sentence.startsWith("Bead all along?")) << qPrintable(view().sentence);
    const WeldView before = view();
    go(left(0) - own - seconds(3));
    const WeldView told = view();
    EXPECT_TRUE(told.sentence.endsWith("before soak on B. Two hands, one plate."))
        << qPrintable(told.sentence);
    EXPECT_EQ(told.cell.tone, Tone::Soon);
    EXPECT_EQ(told.step.view.text, before.step.view.text);
    EXPECT_EQ(told.step.offer, before.step.offer);
    EXPECT_EQ(told.step.view.look, SlotView::Look::Waiting);
    EXPECT_TRUE(told.step.view.under.endsWith(": A needs you"));
    emit window().hands().step();
    EXPECT_TRUE(is(1, "soaking")) << "a fact is never refused";
}

// What stood there waits: a form of Set-up with its changes, a weld with its open check.
TEST_F(TwoBenches, ThePageThatStoodIsLeftForABenchThatIsToGetReady) {
    ASSERT_NO_FATAL_FAILURE(bring(0, "soaking"));
    goToBench(1);
    window().openNextCard();
    press();
    window().passTrial();
    ASSERT_TRUE(is(1, "preparing"));
    for (int i = 0; i < 30 && window().page() != PageKind::Pad; ++i) {
        press();
        m_shop.clock().advance(seconds(1));
    }
    stands(1, PageKind::Pad);
    window().padPage()->pad()->type('2');
    const std::size_t events = weld(1).events.size();
    go(left(0) - seconds(10));
    stands(0, PageKind::Weld);
    emit window().hands().step(); // "Keep", a moment too late
    EXPECT_TRUE(is(0, "soaking"));
    EXPECT_EQ(weld(1).events.size(), events);
    goToBench(1);
    stands(1, PageKind::Pad); // as it was left
    EXPECT_EQ(window().padPage()->pad()->text(), "2");
    window().openMenu();
    const auto& tiles = window().choicePage()->view().choices;
    for (std::size_t i = 0; i < tiles.size(); ++i) {
        if (tiles[i].text == QLatin1String("Set-up")) {
            emit window().choicePage()->chosen(static_cast<int>(i));
            break;
        }
    }
    stands(1, PageKind::Setup);
    go(left(0));
    stands(0, PageKind::Weld);
}

} // namespace
} // namespace seamclock
