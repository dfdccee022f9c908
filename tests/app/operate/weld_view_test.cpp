#include "app/operate/weld_view.h"

#include "core/weld/cues.h"
#include "core/weld/intent.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>
#include <set>

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

TEST(Preparation, CanBeStoppedWhateverIsAsked) {
    const auto isStop = [](const Slot& slot) {
        const auto* asked = std::get_if<AskReason>(&slot.offer);
        return asked != nullptr && asked->what == ReasonFor::Stop;
    };
    int asked = 0;
    for (const std::string& check : weldChecks()) {
        WeldPlan plan = test::inventedPlan();
        plan.checks = {check};
        const test::Story story(plan);
        ViewContext context;
        context.now = story.now();
        const WeldView view = weldView(story.weld(), context);
        EXPECT_TRUE(isStop(view.earlier) || isStop(view.stop)) << check;
        ++asked;
    }
    EXPECT_EQ(asked, 14);
}

// When the power went nobody knows; what the log has is the last step.
TEST(PowerWasOff, SaysWhatIsKnownAndAsksOnlyWhereALimitHangsOnIt) {
    const auto after = [](test::Story& story) {
        story.wait(minutes(5)).reboot(seconds(42));
        ViewContext context;
        context.now = story.now();
        return weldView(story.weld(), context);
    };
    test::Story cools;
    cools.buildUp();
    const WeldView asked = after(cools);
    EXPECT_TRUE(asked.sentence.startsWith("Power was off. Last step 5:"));
    EXPECT_TRUE(asked.sentence.endsWith(" ago. Cooling has gone on."))
        << asked.sentence.toStdString();
    EXPECT_EQ(asked.stop.view.text, "Not sure");
    test::Story released;
    released.release();
    const WeldView told = after(released);
    EXPECT_TRUE(told.sentence.startsWith("Power was off. Last step 5:"));
    EXPECT_TRUE(told.sentence.endsWith(" ago. Go on where it stood."))
        << told.sentence.toStdString();
    EXPECT_EQ(told.stop.view.look, SlotView::Look::Hidden);
    EXPECT_EQ(told.step.offer, Offer(SettleWeld{RebootWord::GoOnUnconfirmed}));
}

TEST(WeldView, WhatIsWrongCanBePicturedWhenTheWeldIsOver) {
    test::Story story;
    story.align();
    const WeldView view = stopped(story);
    EXPECT_TRUE(std::holds_alternative<LookCloser>(view.back.offer));
    EXPECT_EQ(view.back.view.text, "A photo");
    test::Story good;
    good.close();
    ViewContext context;
    context.now = good.now();
    EXPECT_EQ(weldView(good.weld(), context).back.view.look, SlotView::Look::Hidden);
}

TEST(WeldView, CoolingSaysWhatCouldBeMadeReadyMeanwhile) {
    test::Story story;
    story.buildUp();
    story.then(JointNumbered{});
    const std::vector<WeldTime> rechecks = std::get<Cooling>(story.state()).rechecks;
    ASSERT_FALSE(rechecks.empty());
    const std::int64_t set = story.weld().plan.scale->joining.setMilli;
    for (const WeldTime& due : rechecks) {
        story.waitUntil(due.lo + Milliseconds(1'000));
        story.then(ReadingTaken{ReadingPhase::Recheck, set});
    }
    ViewContext context;
    context.now = story.now();
    EXPECT_EQ(weldView(story.weld(), context).sentence, "Leave it locked. Nothing else to do.");
    context.meanwhile = "Bench B is free: seam S4.";
    EXPECT_EQ(
        weldView(story.weld(), context).sentence, "Leave it locked. Bench B is free: seam S4.");
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

/// All that stands on the lamp, and the sentence.
QString wordsOf(const WeldView& view) {
    return QStringList{view.lamp.under, view.lamp.under2, view.sentence}.join(QLatin1Char(' '));
}

/// The view that asks for this check, of a plan for that plastic.
WeldView viewOfCheck(const std::string& check, const std::string& material) {
    WeldPlan plan = test::inventedPlan();
    plan.material = material;
    plan.checks = {check};
    const test::Story story(plan);
    return viewAt(story.weld(), story.now());
}

TEST(Cautions, StandWhereThePlateIsAtHand) {
    for (const char* check : {"plate_warm", "plate_temperature", "plate_wiped"}) {
        EXPECT_TRUE(wordsOf(viewOfCheck(check, "PE-HD")).contains("burns")) << check;
    }
    EXPECT_TRUE(wordsOf(viewOfCheck("plate_temperature", "PVDF")).contains("burns"));
    EXPECT_TRUE(wordsOf(viewOfCheck("plate_wiped", "PVDF")).contains("burns"));
}

TEST(Cautions, AskForTheExtractionWithPlasticsThatGiveOffAcidGas) {
    for (const char* material : {"PVC-U", "PVDF", "ECTFE"}) {
        for (const char* check : {"plate_warm", "plate_wiped"}) {
            EXPECT_TRUE(wordsOf(viewOfCheck(check, material)).contains("extraction"))
                << check << ", " << material;
        }
    }
    for (const char* material : {"PE-HD", "PP"}) {
        for (const char* check : {"plate_warm", "plate_wiped"}) {
            EXPECT_FALSE(wordsOf(viewOfCheck(check, material)).contains("extraction"))
                << check << ", " << material;
        }
    }
}

TEST(Cautions, StandBeforeTheTablesCloseAndNotOverTheChangeover) {
    test::Story prepared;
    prepared.prepare(); // with the plate read at its middle
    for (const char* place : {"front", "back"}) {
        prepared.then(CheckMade{"plate_temperature", true, 211'000, {}, {}, place, "left", {}});
    }
    EXPECT_TRUE(wordsOf(viewAt(prepared.weld(), prepared.now())).contains("tables crush"));
    test::Story story;
    story.align();
    const auto& soaking = std::get<Soaking>(story.state());
    Instant soon = story.now();
    const Milliseconds left = soaking.due.lo - weldTimeAt(story.weld(), soon)->lo;
    EXPECT_FALSE(wordsOf(viewAt(story.weld(), soon)).contains("tables crush")) << "it only waits";
    soon.boot += left - seconds(5);
    soon.utc += left - seconds(5);
    const WeldView ready = viewAt(story.weld(), soon);
    EXPECT_TRUE(wordsOf(ready).contains("plate burns, tables crush")) << qPrintable(ready.sentence);
    test::Story apart;
    apart.soak();
    ASSERT_TRUE(std::holds_alternative<ChangingOver>(apart.state()));
    EXPECT_FALSE(wordsOf(viewAt(apart.weld(), apart.now())).contains("crush"));
}

// Ten minutes from when the plate shows its heat: common practice, no source.
TEST(PlateSettles, ForTenMinutesThatAreCountedFromAPress) {
    WeldPlan plan = test::inventedPlan();
    plan.checks = {"plate_warm"};
    test::Story story(plan);
    WeldView view = viewAt(story.weld(), story.now());
    EXPECT_EQ(view.lamp.number, QStringLiteral("10"));
    const auto* begun = std::get_if<MakeSteps>(&view.stop.offer);
    ASSERT_NE(begun, nullptr);
    const auto attested = view.step.offer;
    ASSERT_TRUE(std::holds_alternative<MakeSteps>(attested)) << "hot since long: one tap";
    story.wait(seconds(1)).then(begun->details.front());
    for (const auto& [gone, left] : std::vector<std::pair<Milliseconds, const char*>>{
             {Milliseconds(0), "10:00"}, {seconds(1), "9:59"}, {Milliseconds(599'001), "0:01"}}) {
        Instant later = story.now();
        later.boot += gone;
        later.utc += gone;
        view = viewAt(story.weld(), later);
        EXPECT_EQ(view.lamp.number, QString(left));
        EXPECT_TRUE(std::holds_alternative<std::monostate>(view.step.offer)) << left;
    }
    story.wait(minutes(10));
    view = viewAt(story.weld(), story.now());
    EXPECT_EQ(view.lamp.number, QStringLiteral("0:00"));
    ASSERT_EQ(view.step.offer, attested);
    story.then(std::get<MakeSteps>(view.step.offer).details.front());
    EXPECT_TRUE(checkAsked(story.weld(), std::get<Preparing>(story.state())).empty());
}

// One after the other, as the foreman chose them for the bench.
TEST(PlatePlaces, AreReadOneAfterTheOtherOnEachFace) {
    WeldPlan plan = test::inventedPlan();
    plan.checks = {"plate_temperature"};
    for (const PlateRead read :
         {PlateRead::Middle, PlateRead::Ends, PlateRead::Three, PlateRead::EachFace}) {
        test::Story story(plan);
        std::set<QString> sentences;
        for (const PlatePlace& place : platePlaces(read)) {
            ViewContext context;
            context.now = story.now();
            context.plateRead = read;
            const WeldView view = weldView(story.weld(), context);
            ASSERT_EQ(view.step.offer, Offer(AskNumber{NumberFor::PlateTemperature}));
            EXPECT_EQ(plateToRead(story.weld(), read), place);
            sentences.insert(view.sentence);
            CheckMade made{"plate_temperature", true, 211'000, {}, {}, {}, {}, {}};
            made.place = std::string(place.place);
            made.face = std::string(place.face);
            story.wait(seconds(3)).then(made);
        }
        EXPECT_EQ(sentences.size(), platePlaces(read).size()) << "each is told apart";
        EXPECT_TRUE(checkAsked(story.weld(), std::get<Preparing>(story.state()), read).empty());
    }
}

TEST(Drag, IsAsBeforeOnlyWhereOneWasRead) {
    WeldPlan plan = test::inventedPlan();
    plan.checks = {"drag"};
    const test::Story read(plan);
    EXPECT_TRUE(std::holds_alternative<MakeSteps>(viewAt(read.weld(), read.now()).step.offer));
    plan.warnings.push_back({"drag_not_measured", "never read", {}, {}, ""});
    const test::Story never(plan);
    const WeldView view = viewAt(never.weld(), never.now());
    EXPECT_EQ(view.step.offer, Offer(AskNumber{NumberFor::Drag}));
    EXPECT_FALSE(view.step.view.text.contains("before"));
}

// The invented plan cools for 690 s and is read again at 60 and 230 s.
TEST(Cooling, AsksForTheNumberOnTheSheetWhileNoReadingIsDue) {
    test::Story story;
    story.buildUp().wait(seconds(10));
    const auto numbered = Offer(MakeSteps{{JointNumbered{}}});
    EXPECT_EQ(viewAt(story.weld(), story.now()).step.offer, numbered);
    test::Story due = story;
    due.wait(seconds(40)); // a reading in ten seconds comes first
    EXPECT_EQ(viewAt(due.weld(), due.now()).step.offer, Offer(AskNumber{NumberFor::Recheck}));
    story.then(JointNumbered{});
    EXPECT_EQ(viewAt(story.weld(), story.now()).step.offer, Offer(AskNumber{NumberFor::Recheck}));
}

TEST(Cooling, ItsChimeIsEndedByATap) {
    test::Story story;
    story.cool();
    WeldView view = viewAt(story.weld(), story.now());
    const auto* heard = std::get_if<MakeSteps>(&view.stop.offer);
    ASSERT_NE(heard, nullptr);
    EXPECT_FALSE(cuesAt(story.weld(), *weldTimeAt(story.weld(), story.now())).empty());
    story.then(heard->details.front());
    EXPECT_TRUE(cuesAt(story.weld(), *weldTimeAt(story.weld(), story.now())).empty());
    view = viewAt(story.weld(), story.now());
    EXPECT_EQ(view.stop.view.look, SlotView::Look::Gone);
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
            // No limit hangs on how long it was once the joint is being taken out.
            const bool asks = !goesOn || std::holds_alternative<Cooling>(story.state());
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
            EXPECT_EQ(offered, !asks || (goesOn && !cut.canBeConfirmed) ? 1 : 2);
            const auto* first = std::get_if<SettleWeld>(&view.step.offer);
            ASSERT_NE(first, nullptr);
            const RebootWord expected = !goesOn                      ? RebootWord::Abort
                                        : asks && cut.canBeConfirmed ? RebootWord::GoOnConfirmed
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

/// Every check is made, and the plate read at all of its places.
test::Story ready() {
    test::Story story;
    story.prepare();
    for (const char* place : {"front", "back"}) {
        story.then(CheckMade{"plate_temperature", true, 211'000, {}, {}, place, "left", {}});
    }
    return story;
}

// A clash is told and nothing more: the step counts as it did, since the wheel may have been
// turned.
TEST(WeldViewInAClash, WarnsAndLeavesTheStepWhatItWas) {
    test::Story story;
    story.prepare().then(AlignmentStarted{}).wait(seconds(50));
    ViewContext context;
    context.now = story.now();
    context.letter = "B";
    const WeldView calm = weldView(story.weld(), context);
    context.clash = Clash{"bench-a", 1, Milliseconds(19'200)};
    const WeldView view = weldView(story.weld(), context);
    EXPECT_EQ(view.sentence, QStringLiteral("Wait 20 s before soak on B. Two hands, one plate."));
    EXPECT_EQ(view.lamp.tone, Tone::Soon);
    EXPECT_EQ(view.lamp.mark, Mark::Soon);
    EXPECT_EQ(view.lamp.number + view.lamp.unit, QStringLiteral("20s"));
    EXPECT_EQ(view.step.view.text, calm.step.view.text);
    EXPECT_EQ(view.step.offer, calm.step.offer);
    EXPECT_EQ(view.step.view.under, QStringLiteral("wait 20 s: A needs you"));
    EXPECT_EQ(calm.step.view.look, SlotView::Look::Act);
    EXPECT_EQ(view.step.view.look, SlotView::Look::Waiting);
    EXPECT_EQ(view.back, calm.back);
    EXPECT_EQ(view.stop, calm.stop);
    const auto* steps = std::get_if<MakeSteps>(&view.step.offer);
    ASSERT_NE(steps, nullptr);
    EXPECT_TRUE(story.attemptIntent(steps->details.front()));
    context.clash->wait = Milliseconds(60'000);
    const WeldView longer = weldView(story.weld(), context);
    EXPECT_EQ(longer.lamp.number, QStringLiteral("1:00"));
    EXPECT_EQ(longer.sentence, QStringLiteral("Wait 1:00 before soak on B. Two hands, one plate."));
}

TEST(WeldViewInAClash, IsSilentUntilTheBeadIsAskedForAndInEveryOtherPhase) {
    const Clash clash{"bench-a", 1, seconds(20)};
    const auto told = [&clash](const test::Story& story) {
        ViewContext context;
        context.now = story.now();
        context.letter = "B";
        const WeldView without = weldView(story.weld(), context);
        context.clash = clash;
        return weldView(story.weld(), context) != without;
    };
    test::Story early;
    early.prepare().then(AlignmentStarted{}).wait(seconds(3));
    EXPECT_FALSE(told(early)) << "nobody begins a soak yet";
    early.wait(early.weld().plan.alignMedian.value());
    EXPECT_TRUE(told(early));
    EXPECT_TRUE(told(ready()));
    for (const auto stretch :
         {&test::Story::align, &test::Story::soak, &test::Story::changeOver, &test::Story::buildUp,
          &test::Story::cool, &test::Story::release, &test::Story::close}) {
        test::Story story;
        (story.*stretch)();
        EXPECT_FALSE(told(story)) << phaseName(story.state());
    }
    EXPECT_FALSE(told(test::Story())) << "checks are open";
}

TEST(WeldViewInAClash, AsksToWaitBeforeAlignmentBegins) {
    const test::Story story = ready();
    ViewContext context;
    context.now = story.now();
    context.letter = "B";
    const WeldView calm = weldView(story.weld(), context);
    context.clash = Clash{"bench-c", 3, seconds(34)};
    const WeldView view = weldView(story.weld(), context);
    EXPECT_EQ(view.sentence, QStringLiteral("Wait 34 s before you begin B. Two hands, one plate."));
    EXPECT_LE(view.sentence.size(), 56);
    EXPECT_EQ(view.step.view.text, calm.step.view.text);
    EXPECT_EQ(view.step.offer, calm.step.offer);
    EXPECT_EQ(view.step.view.look, SlotView::Look::Waiting);
    EXPECT_EQ(view.step.view.under, QStringLiteral("wait 34 s: C needs you"));
}

TEST(WeldViewOfAlignment, ShowsMedianAndRangeOfTheLastWeldsHere) {
    WeldPlan plan = test::inventedPlan();
    plan.alignMedian = seconds(65);
    test::Story story(plan);
    story.prepare().then(AlignmentStarted{}).wait(seconds(10));
    ViewContext context;
    context.now = story.now();
    EXPECT_EQ(weldView(story.weld(), context).lamp.under2, QStringLiteral("median 1:05"));
    context.usual = AlignTimes{seconds(52), seconds(65), seconds(91)};
    EXPECT_EQ(
        weldView(story.weld(), context).lamp.under2, QStringLiteral("median 1:05, 0:52 to 1:31"));
    // After a restart more welds may have been closed, and the plan keeps its median.
    context.usual = AlignTimes{seconds(70), seconds(75), seconds(91)};
    EXPECT_EQ(weldView(story.weld(), context).lamp.under2, QStringLiteral("median 1:05"));
    plan.alignMedian.reset();
    test::Story first(plan);
    first.prepare().then(AlignmentStarted{});
    context.usual.reset();
    context.now = first.now();
    EXPECT_EQ(
        weldView(first.weld(), context).lamp.under2,
        QStringLiteral("the bead ends it, not the clock"));
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
