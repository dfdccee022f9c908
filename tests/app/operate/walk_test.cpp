// A whole weld through the window, press by press, on a clock that only the test moves: what the
// screens say on the way, and that the record agrees with what was done. The rules for words and
// slots are the design's: a sentence of at most 56 characters, a button of at most three words (and
// its number), at most one button filled blue.
#include "app/operate/pictures.h"
#include "app/operate/window.h"
#include "app/text/words.h"
#include "core/log/log_reader.h"
#include "core/weld/force_check.h"
#include "core/weld/record.h"
#include "core/weld/verdict.h"
#include "tests/app/operate/demo_shop.h"

#include <QCoreApplication>
#include <algorithm>
#include <gtest/gtest.h>
#include <map>

namespace seamclock {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

std::vector<SlotButton*> seenButtons(Window& window) {
    std::vector<SlotButton*> seen;
    for (auto* button : window.currentPage()->findChildren<SlotButton*>()) {
        if (button->isVisible() && button->view().look != SlotView::Look::Hidden) {
            seen.push_back(button);
        }
    }
    return seen;
}

void expectGoodManners(Window& window, const QString& name) {
    int blue = 0;
    for (const SlotButton* button : seenButtons(window)) {
        const SlotView& view = button->view();
        blue += view.look == SlotView::Look::Act ? 1 : 0;
        EXPECT_TRUE(!view.text.isEmpty() || view.sign) // the pad's erase key alone is a sign

            << name.toStdString() << " " << button->objectName().toStdString();
        EXPECT_GE(button->height(), 90) << name.toStdString() << " " << view.text.toStdString();
        if (window.page() == PageKind::Weld) {
            EXPECT_LE(view.text.split(' ').size(), 4) << view.text.toStdString();
        }
    }
    if (window.page() == PageKind::Weld) {
        EXPECT_LE(blue, 1) << name.toStdString();
        const QString sentence = window.weldPage()->view().sentence;
        const bool lock = name == "after-the-lock" || name == "save"; // what happened comes first
        EXPECT_LE(sentence.size(), lock ? 90 : 56) << sentence.toStdString();
        EXPECT_FALSE(sentence.isEmpty()) << name.toStdString();
    }
}

/// Of the only joint in the shop's log, which is closed.
WeldRecord onlyJoint(Shop& shop) {
    EXPECT_TRUE(shop.writer().flush());
    auto reader = LogReader::open(shop.log());
    EXPECT_TRUE(reader);
    const auto lines = reader->joints({});
    EXPECT_TRUE(lines && lines->size() == 1);
    EXPECT_FALSE(lines->at(0).open);
    const auto events = reader->weldEvents(lines->at(0).weld);
    EXPECT_TRUE(events);
    const auto weld = fold(*events);
    EXPECT_TRUE(weld) << weld.error().detail;
    return record(*weld);
}

// Read too hot in front, waited, and read again: the joint was welded with the second.
TEST(Walk, APlateThatCooledDownIsJudgedByWhatWasReadThen) {
    Shop shop;
    Walk walk(shop.window(), shop.floor(), shop.clock());
    const auto done = walk.goodWeld([&](const QString& name) {
        if (name == "check-plate_temperature") {
            EXPECT_TRUE(shop.floor().failPlate(0, 245.0));
        }
    });
    ASSERT_TRUE(done) << done.error().detail;
    const WeldRecord joint = onlyJoint(shop);
    EXPECT_EQ(
        std::count_if(
            joint.events.begin(), joint.events.end(),
            [](const Event& event) {
                const auto* check = std::get_if<CheckMade>(&event.d);
                return check != nullptr && check->valueMc == 245'000;
            }),
        1);
    EXPECT_EQ(joint.verdict.word, VerdictWord::WithRemarks) // as of the weld below
        << firstReason(joint.verdict, joint.plan).toStdString();
}

TEST(Walk, MakesAWholeWeldThatTheRecordAgreesWith) {
    Shop shop;
    Walk walk(shop.window(), shop.floor(), shop.clock());
    std::map<QString, Milliseconds> at;
    std::map<QString, WeldView> views;
    const auto done = walk.goodWeld([&](const QString& name) {
        expectGoodManners(shop.window(), name);
        at[name] = shop.clock().now().boot;
        views[name] = shop.window().weldPage()->view();
    });
    ASSERT_TRUE(done) << done.error().detail;
    const WeldRecord joint = onlyJoint(shop);
    // The first reading in cooling was low on purpose and topped up in time: a remark.
    EXPECT_EQ(joint.verdict.word, VerdictWord::WithRemarks)
        << firstReason(joint.verdict, joint.plan).toStdString();
    EXPECT_EQ(joint.stored->verdict, "within limits with remarks");
    ASSERT_EQ(joint.phases.size(), 5U);
    // Each step counts at the press: the clock stood still meanwhile.
    EXPECT_EQ(joint.phases[0].from.boot, at["ready"]);
    EXPECT_EQ(joint.phases[1].from.boot, at["align-asked"]);
    EXPECT_EQ(joint.phases[2].from.boot, at["act-now"] + milliseconds(400));
    EXPECT_EQ(joint.phases[3].from.boot, at["changeover"] + milliseconds(1'200));
    EXPECT_EQ(joint.phases[4].from.boot, at["lock"]);
    EXPECT_EQ(joint.checks.size(), joint.plan.checks.size() + 3)
        << "the plate at three places, and the force beside the drag";
    EXPECT_EQ(joint.beads.size(), 1U);
    EXPECT_EQ(joint.releases.size(), joint.plan.releaseOrder.size());
    ASSERT_TRUE(joint.numberedAt);

    EXPECT_EQ(views["soak"].lamp.tone, Tone::Normal);
    EXPECT_EQ(views["get-ready"].lamp.tone, Tone::Soon);
    EXPECT_EQ(views["get-ready"].lamp.number, "0:07");
    EXPECT_EQ(views["act-now"].lamp.tone, Tone::Act);
    EXPECT_EQ(views["act-now"].lamp.number, "0:00");
    EXPECT_EQ(views["changeover"].changeover.number, "3");
    EXPECT_FALSE(views["changeover"].changeover.late);
    EXPECT_EQ(views["saved"].step.view.text, "Next seam");
}

TEST(Walk, SaysWhatIsLateAndAsksForItsReason) {
    Shop shop;
    Walk walk(shop.window(), shop.floor(), shop.clock());
    std::map<QString, WeldView> views;
    const auto done = walk.lateWeld(1, [&](const QString& name) {
        expectGoodManners(shop.window(), name);
        views[name] = shop.window().weldPage()->view();
    });
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_EQ(views["align-late"].lamp.mark, Mark::Trouble);
    EXPECT_EQ(views["soak-late"].lamp.tone, Tone::Late);
    EXPECT_TRUE(views["soak-late"].lamp.framed);
    EXPECT_TRUE(views["changeover-late"].changeover.late);
    EXPECT_EQ(views["build-up-late"].lamp.tone, Tone::Late);
    EXPECT_EQ(views["after-the-lock"].step.view.text, "Let it cool");
}

/// Presses up to the soak of the first seam.
void toSoak(Shop& shop) {
    Walk walk(shop.window(), shop.floor(), shop.clock());
    bool there = false;
    const auto done = walk.goodWeld([&](const QString& name) { there = there || name == "soak"; });
    ASSERT_TRUE(done) << done.error().detail;
    ASSERT_TRUE(there);
}

/// The weld of the first bench, brought to soak by its offers alone.
void openToSoak(Shop& shop) {
    Floor& floor = shop.floor();
    shop.window().openNextCard();
    emit shop.window().currentPage()->slotPressed(SlotPlace::Step);
    shop.window().passTrial();
    for (int i = 0; i < 40; ++i) {
        const Weld* weld = floor.weld(0);
        ASSERT_NE(weld, nullptr);
        if (std::holds_alternative<Soaking>(weld->state)) {
            return;
        }
        shop.clock().advance(seconds(12));
        const auto view = floor.view(0, floor.now(), false, false);
        if (const auto* number = std::get_if<AskNumber>(&view->step.offer)) {
            ASSERT_TRUE(floor.answer(0, NumberAnswer{number->what, 210}));
        } else {
            ASSERT_TRUE(floor.press(0, view->step.offer, view->onto));
        }
    }
    FAIL() << "no soak";
}

TEST(TakeBack, UndoesAWholePressForTenSecondsAndNoLonger) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(openToSoak(shop));
    Floor& floor = shop.floor();
    shop.clock().advance(milliseconds(10'000));
    auto view = floor.view(0, floor.now(), false, false);
    ASSERT_TRUE(std::holds_alternative<TakeBackLast>(view->back.offer));
    EXPECT_EQ(view->back.view.under, "0 s left");
    ASSERT_TRUE(floor.press(0, view->back.offer, view->onto));
    // Step and reading of that press are gone, the alignment goes on as if nothing had been.
    EXPECT_TRUE(std::holds_alternative<Aligning>(floor.weld(0)->state));
    view = floor.view(0, floor.now(), false, false);
    ASSERT_TRUE(floor.press(0, view->step.offer, view->onto));
    shop.clock().advance(milliseconds(10'001));
    view = floor.view(0, floor.now(), false, false);
    EXPECT_TRUE(std::holds_alternative<std::monostate>(view->back.offer));
    EXPECT_EQ(view->back.view.look, SlotView::Look::Gone);
}

TEST(FourSecondsAgo, SetsTheStepEarlierAndKeepsTheReadingThatCameWithIt) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(openToSoak(shop));
    Floor& floor = shop.floor();
    const Milliseconds began = std::get<Soaking>(floor.weld(0)->state).from.lo;
    shop.clock().advance(milliseconds(2'000));
    auto view = floor.view(0, floor.now(), false, false);
    ASSERT_TRUE(std::holds_alternative<SetEarlier>(view->earlier.offer));
    const auto set = floor.press(0, view->earlier.offer, view->onto);
    ASSERT_TRUE(set) << set.error().detail;
    EXPECT_EQ(std::get<Soaking>(floor.weld(0)->state).from.lo, began - milliseconds(4'000));
    int readings = 0;
    for (const Retained& event : retained(floor.weld(0)->events)) {
        const auto* taken = std::get_if<ReadingTaken>(&event.d);
        readings += taken != nullptr && taken->phase == ReadingPhase::Soak ? 1 : 0;
    }
    EXPECT_EQ(readings, 1);
    view = floor.view(0, floor.now(), false, false);
    EXPECT_EQ(view->earlier.view.look, SlotView::Look::Gone) << "only once";
    // The reading is younger than the step it belongs to: both are taken back, or none.
    shop.clock().advance(milliseconds(1'000));
    view = floor.view(0, floor.now(), false, false);
    EXPECT_EQ(view->back.view.under, "7 s left");
    ASSERT_TRUE(floor.press(0, view->back.offer, view->onto));
    EXPECT_TRUE(std::holds_alternative<Aligning>(floor.weld(0)->state));
    for (const Retained& event : retained(floor.weld(0)->events)) {
        const auto* taken = std::get_if<ReadingTaken>(&event.d);
        EXPECT_TRUE(taken == nullptr || taken->phase != ReadingPhase::Soak);
    }
}

// A step that stored nothing beside itself: the press after it is one of its own.
TEST(FourSecondsAgo, IsNotOneWithThePressThatFollows) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(openToSoak(shop));
    Floor& floor = shop.floor();
    shop.clock().advance(
        std::get<Soaking>(floor.weld(0)->state).due.lo -
        std::get<Soaking>(floor.weld(0)->state).from.lo);
    const auto press = [&](const Offer& offer) {
        const auto view = floor.view(0, floor.now(), false, false);
        return floor.press(0, offer, view->onto);
    };
    const auto view = [&] { return *floor.view(0, floor.now(), false, false); };
    ASSERT_TRUE(press(view().step.offer)); // plate out
    shop.clock().advance(milliseconds(1'500));
    ASSERT_TRUE(press(view().earlier.offer));
    shop.clock().advance(milliseconds(1'500));
    ASSERT_TRUE(press(view().step.offer)); // faces met
    ASSERT_TRUE(std::holds_alternative<BuildingUp>(floor.weld(0)->state));
    EXPECT_EQ(lastPress(*floor.weld(0)).size(), 1U);
    EXPECT_EQ(view().back.view.under, "10 s left");
    shop.clock().advance(milliseconds(900));
    ASSERT_TRUE(press(view().back.offer));
    EXPECT_TRUE(std::holds_alternative<ChangingOver>(floor.weld(0)->state))
        << "the plate stays out";
}

TEST(FourSecondsAgo, LeavesNothingToTakeBackOnceItsStepIsTooOld) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(openToSoak(shop));
    Floor& floor = shop.floor();
    shop.clock().advance(milliseconds(8'000));
    auto view = floor.view(0, floor.now(), false, false);
    ASSERT_TRUE(floor.press(0, view->earlier.offer, view->onto));
    shop.clock().advance(milliseconds(2'500));
    view = floor.view(0, floor.now(), false, false);
    EXPECT_EQ(view->back.view.look, SlotView::Look::Gone) << "not the reading alone";
    EXPECT_TRUE(std::holds_alternative<std::monostate>(view->back.offer));
}

/// On from a soak that has just begun until the weld is in that state, each phase on its time.
template <class Wanted>
void onTo(Shop& shop) {
    Floor& floor = shop.floor();
    for (int i = 0; i < 2'000; ++i) {
        const Weld& weld = *floor.weld(0);
        if (std::holds_alternative<Wanted>(weld.state)) {
            return;
        }
        const auto view = floor.view(0, floor.now(), false, false);
        const bool soaks =
            std::holds_alternative<Soaking>(weld.state) && view->lamp.tone != Tone::Act;
        const auto* rises = std::get_if<BuildingUp>(&weld.state);
        const bool waits =
            soaks || (rises != nullptr &&
                      weldTimeAt(weld, floor.now())->lo + milliseconds(500) < rises->target.lo);
        if (!waits) {
            const auto pressed = floor.press(0, view->step.offer, view->onto);
            ASSERT_TRUE(pressed) << pressed.error().detail;
        }
        shop.clock().advance(milliseconds(waits ? 1'000 : 3'000));
    }
    FAIL() << "it does not come to that";
}

// Both hands are on the wheel: here the tap is late most easily.
TEST(FourSecondsAgo, MovesTheEndOfBuildUpTooAndIsARemark) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(openToSoak(shop));
    ASSERT_NO_FATAL_FAILURE(onTo<BuildingUp>(shop));
    Floor& floor = shop.floor();
    shop.clock().advance(seconds(6));
    auto view = floor.view(0, floor.now(), false, false);
    ASSERT_TRUE(floor.press(0, view->step.offer, view->onto)) << "at the mark";
    ASSERT_TRUE(std::holds_alternative<BuildingUp>(floor.weld(0)->state)) << "not locked yet";
    const auto readAt = [&floor] {
        Milliseconds at{0};
        for (const Retained& event : retained(floor.weld(0)->events)) {
            const auto* taken = std::get_if<ReadingTaken>(&event.d);
            if (taken != nullptr && taken->phase == ReadingPhase::Joining) {
                at = event.t.lo;
            }
        }
        return at;
    };
    const Milliseconds pressed = readAt();
    shop.clock().advance(milliseconds(1'000));
    view = floor.view(0, floor.now(), false, false);
    ASSERT_TRUE(std::holds_alternative<SetEarlier>(view->earlier.offer));
    const auto set = floor.press(0, view->earlier.offer, view->onto);
    ASSERT_TRUE(set) << set.error().detail;
    EXPECT_EQ(readAt(), pressed - milliseconds(4'000));
    EXPECT_EQ(floor.view(0, floor.now(), false, false)->earlier.view.look, SlotView::Look::Gone)
        << "only once";
    const auto found = findings(*floor.weld(0));
    EXPECT_TRUE(std::any_of(found.begin(), found.end(), [](const Finding& finding) {
        return finding.code == "step_backdated" && finding.grade == Grade::Remark;
    }));
}

TEST(EarlyRelease, NeedsAReasonAndIsOutOfLimits) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(openToSoak(shop));
    ASSERT_NO_FATAL_FAILURE(onTo<Cooling>(shop));
    Window& window = shop.window();
    shop.clock().advance(seconds(60));
    window.refresh();
    emit window.currentPage()->slotPressed(SlotPlace::Stop);
    ASSERT_EQ(window.page(), PageKind::Reasons);
    const QString short1 = window.choicePage()->view().title;
    EXPECT_TRUE(short1.startsWith("Cooling is ")) << short1.toStdString();
    shop.clock().advance(seconds(5));
    window.refresh();
    EXPECT_NE(window.choicePage()->view().title, short1) << "it runs on";
    const auto& choices = window.choicePage()->view().choices;
    const auto needed =
        std::find_if(choices.begin(), choices.end(), [](const ChoiceView::Choice& one) {
            return one.text == "The bench is needed";
        });
    ASSERT_NE(needed, choices.end());
    emit window.choicePage()->chosen(static_cast<int>(needed - choices.begin()));
    const Weld& weld = *shop.floor().weld(0);
    ASSERT_TRUE(std::holds_alternative<Releasing>(weld.state));
    const auto* given = std::get_if<ReasonGiven>(&weld.events.back().d);
    ASSERT_NE(given, nullptr);
    EXPECT_EQ(given->limit, "cooling");
    EXPECT_EQ(given->choice, "bench_needed");
    const auto found = findings(weld);
    EXPECT_TRUE(std::any_of(found.begin(), found.end(), [](const Finding& finding) {
        return finding.code == "cooling" && finding.grade == Grade::Out;
    }));
}

TEST(EarlyRelease, ThatIsNoneAnyMoreAsksForNothing) {
    for (const bool looked : {true, false}) {
        Shop shop;
        ASSERT_NO_FATAL_FAILURE(openToSoak(shop));
        ASSERT_NO_FATAL_FAILURE(onTo<Cooling>(shop));
        Window& window = shop.window();
        window.refresh();
        emit window.currentPage()->slotPressed(SlotPlace::Stop);
        ASSERT_EQ(window.page(), PageKind::Reasons);
        const std::size_t events = shop.floor().weld(0)->events.size();
        const auto& cooling = std::get<Cooling>(shop.floor().weld(0)->state);
        shop.clock().advance(cooling.due.lo - cooling.from.lo);
        if (looked) {
            window.refresh();
        } else {
            emit window.choicePage()->chosen(0); // before the screen had looked
        }
        EXPECT_EQ(window.page(), PageKind::Weld);
        const Weld& weld = *shop.floor().weld(0);
        EXPECT_TRUE(std::holds_alternative<Cooling>(weld.state));
        EXPECT_TRUE(std::none_of(
            weld.events.begin() + static_cast<std::ptrdiff_t>(events), weld.events.end(),
            [](const Event& event) {
                return std::holds_alternative<ReasonGiven>(event.d) ||
                       std::holds_alternative<ReleaseStep>(event.d);
            }));
    }
}

TEST(Ambient, ThatWasReadBesideTheBenchIsPlannedWithAndAsksForNothingAgain) {
    Shop shop;
    Floor& floor = shop.floor();
    shop.window().openNextCard();
    emit shop.window().currentPage()->slotPressed(SlotPlace::Step);
    shop.window().passTrial();
    const auto asked = [&] {
        return checkAsked(*floor.weld(0), std::get<Preparing>(floor.weld(0)->state));
    };
    for (int i = 0; i < 30 && asked() != "shielded"; ++i) {
        shop.clock().advance(seconds(12));
        const auto view = floor.view(0, floor.now(), false, false);
        if (const auto* number = std::get_if<AskNumber>(&view->step.offer)) {
            ASSERT_TRUE(floor.answer(0, NumberAnswer{number->what, 210}));
        } else {
            ASSERT_TRUE(floor.press(0, view->step.offer, view->onto));
        }
    }
    ASSERT_EQ(asked(), "shielded");
    const auto view = floor.view(0, floor.now(), false, false);
    ASSERT_TRUE(std::holds_alternative<AskReason>(view->stop.offer)) << "it can be left out, too";
    Window& window = shop.window();
    window.refresh();
    emit window.currentPage()->slotPressed(SlotPlace::Stop);
    ASSERT_EQ(window.page(), PageKind::Reasons);
    ASSERT_EQ(window.choicePage()->view().choices.front().text, "Another shop temperature");
    emit window.choicePage()->chosen(0);
    ASSERT_EQ(window.page(), PageKind::Pad);
    const WeldPlan before = floor.weld(0)->plan;
    ASSERT_NE(before.ambientMc, 27'000);
    window.padPage()->pad()->setText("27");
    emit window.currentPage()->slotPressed(SlotPlace::Step);
    EXPECT_EQ(window.page(), PageKind::Weld);
    const WeldPlan& now = floor.weld(0)->plan;
    EXPECT_EQ(now.ambientMc, 27'000);
    EXPECT_EQ(now.dragMn, before.dragMn) << "as it was measured";
    EXPECT_EQ(now.scale->joining.setMilli, before.scale->joining.setMilli);
    EXPECT_NE(asked(), "shielded");
    EXPECT_NE(asked(), kDrag) << "its force is marked, and no other";
    const auto& made = std::get<CheckMade>(floor.weld(0)->events.back().d);
    EXPECT_EQ(made.check, "shielded");
    EXPECT_EQ(made.valueMc, 27'000);
}

TEST(Presses, ThatCameTwiceAreTakenForOneWithoutAWord) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(openToSoak(shop));
    Floor& floor = shop.floor();
    shop.clock().advance(seconds(60));
    const auto view = floor.view(0, floor.now(), false, false);
    ASSERT_TRUE(floor.press(0, view->step.offer, view->onto));
    shop.clock().advance(milliseconds(120));
    const auto next = floor.view(0, floor.now(), false, false);
    const auto twice = floor.press(0, next->step.offer, next->onto);
    ASSERT_FALSE(twice);
    EXPECT_TRUE(isBounce(twice.error())) << twice.error().detail;
    EXPECT_TRUE(std::holds_alternative<ChangingOver>(floor.weld(0)->state));
}

TEST(Walk, LeavesTheDaysListWithEveryJoint) {
    Shop shop;
    ASSERT_NO_FATAL_FAILURE(toSoak(shop));
    ASSERT_TRUE(shop.writer().flush());
    shop.window().openDay();
    EXPECT_EQ(shop.window().page(), PageKind::Day);
    while (shop.window().dayLog()->isBusy()) { // read on a thread of its own
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    shop.window().refresh();
    int rows = 0;
    for (const auto* row : shop.window().currentPage()->findChildren<JointRow*>()) {
        rows += row->isVisible() ? 1 : 0;
    }
    EXPECT_EQ(rows, 1);
}

} // namespace
} // namespace seamclock
