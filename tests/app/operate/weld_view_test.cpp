#include "app/operate/weld_view.h"

#include "core/weld/intent.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

WeldView stopped(test::Story& story) {
    story.then(WeldAborted{"plate_cold", "Plate cold or dirty"});
    ViewContext context;
    context.now = story.now();
    return weldView(story.weld(), context);
}

TEST(WeldView, WhatIsStoppedBeforeTheFacesMetIsNotShownAsAJoint) {
    for (const auto stretch : {&test::Story::prepare, &test::Story::align, &test::Story::soak}) {
        test::Story story;
        (story.*stretch)();
        const WeldView view = stopped(story);
        EXPECT_EQ(view.seam.phase, SeamView::Phase::Prepare);
        EXPECT_EQ(view.lamp.under, QStringLiteral("not joined"));
        EXPECT_TRUE(view.sentence.endsWith("Cut back and plane again."))
            << qPrintable(view.sentence);
    }
    for (const auto stretch :
         {&test::Story::changeOver, &test::Story::buildUp, &test::Story::cool}) {
        test::Story story;
        (story.*stretch)();
        const WeldView view = stopped(story);
        EXPECT_EQ(view.seam.phase, SeamView::Phase::Look);
        EXPECT_EQ(view.lamp.under, QStringLiteral("cut out"));
        EXPECT_TRUE(view.sentence.endsWith("Cut it out and plane again."))
            << qPrintable(view.sentence);
    }
}

TEST(WeldView, SendsForTheForemanWhereTheScaleIsTooCoarse) {
    WeldPlan plan = test::inventedPlan();
    plan.checks.insert(plan.checks.begin(), kForemansScale);
    const test::Story story(plan);
    ViewContext context;
    context.now = story.now();
    const WeldView view = weldView(story.weld(), context);
    EXPECT_TRUE(view.sentence.contains("Fetch the foreman")) << qPrintable(view.sentence);
    const auto* asked = std::get_if<AskReason>(&view.step.offer);
    ASSERT_NE(asked, nullptr) << "nothing that an operator can do himself";
    EXPECT_EQ(asked->what, ReasonFor::CheckLeftOut);
    EXPECT_TRUE(isForemansCheck(asked->code));
    const auto* stop = std::get_if<AskReason>(&view.stop.offer);
    ASSERT_NE(stop, nullptr);
    EXPECT_EQ(stop->what, ReasonFor::Stop);
}

WeldView viewAt(const Weld& weld, const Instant& now) {
    ViewContext context;
    context.now = now;
    return weldView(weld, context);
}

/// "9:40", or hours in its minutes.
Milliseconds painted(const QString& text) {
    const qsizetype colon = text.indexOf(':');
    return minutes(text.left(colon).toInt()) + seconds(text.mid(colon + 1).toInt());
}

struct Cut {
    Milliseconds off;  // by true time
    Milliseconds wall; // by the wall clock
    bool canBeConfirmed;
};

const std::vector<Cut>& cuts() {
    static const std::vector<Cut> all{
        {seconds(42), seconds(42), true},
        {seconds(42), seconds(42) + minutes(10), true},
        {seconds(42), seconds(42) - minutes(10), false},
        {seconds(42), seconds(42) + hours(24), false},
        {seconds(42), seconds(42) - hours(24), false},
        {hours(12), hours(12), true},
        {hours(13), hours(13), false}};
    return all;
}

// Whatever a slot offers must be accepted: a refused word would leave nothing to press.
TEST(WeldViewAfterAReboot, OffersOnlyWordsThatAreAccepted) {
    for (const auto stretch :
         {&test::Story::prepare, &test::Story::align, &test::Story::soak, &test::Story::changeOver,
          &test::Story::buildUp, &test::Story::cool, &test::Story::release}) {
        for (const Cut& cut : cuts()) {
            test::Story story;
            (story.*stretch)();
            const bool goesOn = goesOnAfterReboot(story.state());
            story.then(RemarkMade{"last words"}); // the power is off from its last event on
            story.reboot(cut.wall);
            const WeldView view = viewAt(story.weld(), story.now());
            SCOPED_TRACE(qPrintable(view.sentence));
            int offered = 0;
            for (const Slot* slot : {&view.step, &view.stop, &view.back, &view.earlier}) {
                if (const auto* word = std::get_if<SettleWeld>(&slot->offer)) {
                    ++offered;
                    EXPECT_TRUE(settle(story.weld(), story.now(), word->word));
                } else {
                    EXPECT_TRUE(std::holds_alternative<std::monostate>(slot->offer));
                }
            }
            EXPECT_EQ(offered, goesOn && !cut.canBeConfirmed ? 1 : 2);
            const auto* first = std::get_if<SettleWeld>(&view.step.offer);
            ASSERT_NE(first, nullptr);
            const RebootWord expected = !goesOn              ? RebootWord::Abort
                                        : cut.canBeConfirmed ? RebootWord::GoOnConfirmed
                                                             : RebootWord::GoOnUnconfirmed;
            EXPECT_EQ(first->word, expected);
            EXPECT_EQ(view.sentence.contains("-"), false);
        }
    }
}

TEST(WeldViewAfterAReboot, NeverPaintsLessCoolingLeftThanThereIs) {
    for (const Cut& cut : cuts()) {
        test::Story story;
        const Milliseconds cooling = story.weld().plan.cooling->atLeast;
        story.buildUp().wait(seconds(30)).then(RemarkMade{"last words"});
        story.reboot(cut.wall);
        const auto said = settle(story.weld(), story.now(), RebootWord::GoOnUnconfirmed);
        ASSERT_TRUE(said);
        for (const WeldDetail& detail : *said) {
            story.then(detail);
        }
        for (int i = 0; i < 60; ++i) {
            const Milliseconds gone = seconds(30) + cut.off + seconds(7) * i;
            const WeldView view = viewAt(story.weld(), story.now());
            EXPECT_GE(painted(view.cell.time), cooling - gone) << qPrintable(view.cell.time);
            const double share =
                static_cast<double>(gone.count()) / static_cast<double>(cooling.count());
            EXPECT_LE(view.lamp.fraction, std::min(share, 1.0) + 1e-9);
            EXPECT_LE(view.ribbon.pieces.back().fraction, std::min(share, 1.0) + 1e-9);
            story.wait(seconds(7));
        }
    }
}

// The longer end is for what may at most have passed.
TEST(WeldViewAfterAReboot, IsLateByTheLongerEnd) {
    for (const auto stretch : {&test::Story::align, &test::Story::soak, &test::Story::changeOver}) {
        test::Story story;
        (story.*stretch)();
        const bool soaking = std::holds_alternative<Soaking>(story.state());
        if (soaking) {
            story.wait(story.weld().plan.soak->target);
            story.then(RemarkMade{"last words"});
        }
        EXPECT_NE(viewAt(story.weld(), story.now()).lamp.mark, Mark::Late);
        story.reboot(minutes(5));
        const auto said = settle(story.weld(), story.now(), RebootWord::GoOnUnconfirmed);
        ASSERT_TRUE(said);
        for (const WeldDetail& detail : *said) {
            story.then(detail);
        }
        EXPECT_EQ(viewAt(story.weld(), story.now()).lamp.mark, Mark::Late)
            << phaseName(story.state());
    }
}

TEST(WeldView, OfAWaitChangesOnceASecondAndWithItsNumber) {
    for (const auto stretch : {&test::Story::align, &test::Story::buildUp}) { // to soak, to cooling
        test::Story story;
        (story.*stretch)();
        Instant now = story.now();
        now.boot += seconds(20) + Milliseconds(3);
        now.utc += seconds(20) + Milliseconds(3);
        int changes = 0;
        int lamps = 0;
        int ribbons = 0;
        WeldView before = viewAt(story.weld(), now);
        for (int tick = 0; tick < 200; ++tick) { // ten seconds
            now.boot += Milliseconds(50);
            now.utc += Milliseconds(50);
            WeldView next = viewAt(story.weld(), now);
            changes += next == before ? 0 : 1;
            lamps += next.lamp == before.lamp ? 0 : 1;
            ribbons += next.ribbon == before.ribbon ? 0 : 1;
            EXPECT_EQ(next.lamp == before.lamp, next.lamp.number == before.lamp.number);
            before = std::move(next);
        }
        EXPECT_EQ(lamps, 10);
        EXPECT_EQ(ribbons, 10);
        EXPECT_LE(changes, 20) << "the sentence of a cooling counts to its next reading";
    }
}

} // namespace
} // namespace seamclock
