// What the window asks of the machine's power services and says of them; the services themselves
// are judged in tests/app/power.
#include "tests/app/operate/demo_shop.h"
#include "tests/app/parts/text_recorder.h"

#include <gtest/gtest.h>
#include <mutex>
#include <thread>
#include <tuple>
#include <vector>

namespace seamclock {
namespace {

using std::chrono::seconds;

class FakePower : public PowerLink {
public:
    void hold(bool weldRuns) override { held = weldRuns; }
    Awake awake() const override { return state; }
    bool batteryLow() const override { return low; }
    int batteryPercent() const override { return percent; }

    bool held = false;
    Awake state = Awake::Off;
    bool low = false;
    int percent = 14;
};

const std::string kDemo = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo";

std::function<void(WindowParts&)> with(PowerLink& power) {
    return [&power](WindowParts& parts) { parts.power = &power; };
}

class NoSound : public SoundLink {
public:
    void show(const Shift& shift) override { shown = shift; }
    bool soundOk() const override { return false; }

    Shift shown;
};

void openWeld(Shop& shop) {
    shop.window().openNextCard();
    emit shop.window().currentPage()->slotPressed(SlotPlace::Step);
    shop.window().passTrial();
    shop.window().refresh();
    ASSERT_TRUE(shop.floor().isWelding());
}

AlarmBanner& banner(Shop& shop) {
    return *shop.window().findChild<AlarmBanner*>();
}

/// What the horn is told of the station, by kind and onset.
std::vector<StationCue> sounds(Shop& shop) {
    return shop.floor().shift().station;
}

TEST(PowerLink, IsHeldWhileAnyWeldIsOpen) {
    FakePower power;
    Shop shop(QSize(1280, 800), {}, kDemo, with(power));
    shop.window().refresh();
    EXPECT_FALSE(power.held);
    openWeld(shop);
    EXPECT_TRUE(power.held);
    // A second bench's, which goes on after the first is stopped.
    shop.floor().select(1);
    openWeld(shop);
    const ReasonAnswer stop{{ReasonFor::Stop, {}}, "other", "a test"};
    ASSERT_TRUE(shop.floor().answer(0, stop));
    EXPECT_TRUE(power.held);
    ASSERT_TRUE(shop.floor().answer(1, stop));
    EXPECT_FALSE(power.held) << "an ended weld on its bench is none that runs";
}

TEST(PowerLink, BatteryIsHeardAndSeenUntilSomebodyHasSeenIt) {
    FakePower power;
    Shop shop(QSize(1280, 800), {}, kDemo, with(power));
    shop.window().refresh();
    EXPECT_TRUE(sounds(shop).empty());
    EXPECT_FALSE(banner(shop).isVisible());

    const Milliseconds first = shop.clock().now().boot;
    power.low = true;
    shop.window().refresh();
    EXPECT_EQ(sounds(shop), (std::vector<StationCue>{{CueKind::BatteryLow, first, {}}}));
    EXPECT_TRUE(banner(shop).isVisible());
    EXPECT_EQ(banner(shop).text(), "The battery is low: 14 %. Plug the charger in.");
    EXPECT_FALSE(banner(shop).isCalm());
    shop.clock().advance(seconds(7));
    power.percent = 13;
    shop.window().refresh();
    EXPECT_EQ(sounds(shop), (std::vector<StationCue>{{CueKind::BatteryLow, first, {}}}))
        << "the same cue still";
    EXPECT_EQ(banner(shop).text(), "The battery is low: 13 %. Plug the charger in.");

    emit banner(shop).pressed();
    EXPECT_TRUE(sounds(shop).empty());
    EXPECT_FALSE(banner(shop).isVisible());
    shop.clock().advance(seconds(60));
    shop.window().refresh();
    EXPECT_TRUE(sounds(shop).empty()) << "seen is seen";

    power.low = false; // the charger
    shop.window().refresh();
    shop.clock().advance(seconds(60));
    power.low = true; // and not any more
    shop.window().refresh();
    EXPECT_EQ(
        sounds(shop),
        (std::vector<StationCue>{{CueKind::BatteryLow, shop.clock().now().boot, {}}}));
    EXPECT_TRUE(banner(shop).isVisible());
    power.low = false;
    shop.window().refresh();
    EXPECT_TRUE(sounds(shop).empty()) << "it ends with the charger, too";
    EXPECT_FALSE(banner(shop).isVisible());
}

TEST(PowerLink, BatteryIsNotSeenBehindAnotherAlarm) {
    FakePower power;
    NoSound sound;
    Shop shop(QSize(1280, 800), {}, kDemo, [&](WindowParts& parts) {
        parts.power = &power;
        parts.sound = &sound;
    });
    power.low = true;
    shop.window().refresh();
    EXPECT_EQ(banner(shop).text(), "No sound. Watch this screen. The weld goes on.");
    emit banner(shop).pressed();
    EXPECT_EQ(banner(shop).text(), "The battery is low: 14 %. Plug the charger in.");
    EXPECT_EQ(sound.shown.station.size(), 1U) << "the horn was told by itself";
    emit banner(shop).pressed();
    EXPECT_FALSE(banner(shop).isVisible());
    EXPECT_TRUE(sound.shown.station.empty());
}

/// One step goes to the disk still; what follows waits.
std::unique_lock<std::mutex> heldBack(Shop& shop) {
    EXPECT_TRUE(shop.writer().flush());
    auto held = shop.heldDisk();
    const auto view = shop.floor().view(0, shop.floor().now(), false, false);
    EXPECT_TRUE(shop.floor().press(0, view->step.offer, view->onto));
    while (shop.floor().unsaved(*shop.floor().weld(0)).rows > 0) {
        std::this_thread::yield();
    }
    shop.clock().advance(seconds(1));
    return held;
}

// What is only said stands before nothing: who has seen it has seen no alarm.
TEST(Banner, WhatIsSeenIsWhatStandsThere) {
    Shop shop;
    openWeld(shop);
    const auto held = heldBack(shop);
    ASSERT_TRUE(shop.floor().answer(0, NumberAnswer{NumberFor::PlateTemperature, 210}));
    shop.window().say("Something was said.");
    ASSERT_TRUE(banner(shop).isVisible());
    emit banner(shop).pressed();
    EXPECT_FALSE(banner(shop).isVisible());
    shop.clock().advance(seconds(3));
    shop.window().refresh();
    ASSERT_TRUE(banner(shop).isVisible());
    EXPECT_TRUE(banner(shop).text().startsWith("Last step is not on disk yet."))
        << banner(shop).text().toStdString();
    EXPECT_EQ(sounds(shop).size(), 1U);
}

// The bench is free for the next joint, and the last one's rows still wait.
TEST(Banner, StandsForAJointThatLeftItsBenchUnsaved) {
    Shop shop;
    openWeld(shop);
    const auto held = heldBack(shop);
    const ReasonAnswer stop{{ReasonFor::Stop, {}}, "other", "a test"};
    ASSERT_TRUE(shop.floor().answer(0, stop));
    shop.floor().leave(0);
    shop.window().refresh();
    shop.clock().advance(seconds(3));
    shop.window().refresh();
    EXPECT_TRUE(banner(shop).text().startsWith("Last step is not on disk yet."))
        << banner(shop).text().toStdString();
    EXPECT_TRUE(banner(shop).isVisible());
}

class MenuSays : public testing::TestWithParam<std::tuple<int, int, double>> {};

TEST_P(MenuSays, WhetherTheTabletStaysAwakeInWordsThatFit) {
    const auto [width, height, text] = GetParam();
    Preferences preferences;
    preferences.text = text;
    FakePower power;
    Shop shop(QSize(width, height), preferences, kDemo, with(power));
    const std::vector<std::pair<PowerLink::Awake, QString>> all{
        {PowerLink::Awake::Off, ""},
        {PowerLink::Awake::Whole, "The tablet is kept awake until no joint is open."},
        {PowerLink::Awake::ScreenMayGoDark,
         "The tablet is kept awake. Its screen may go dark: see its own settings."},
        {PowerLink::Awake::TabletMaySleep,
         "The screen is kept on. The tablet may sleep: see its own settings."},
        {PowerLink::Awake::No,
         "This machine can't be kept awake from here: see its own settings."}};
    for (const auto& [state, words] : all) {
        power.state = state;
        shop.window().openMenu();
        EXPECT_EQ(shop.window().choicePage()->view().under, words);
        for (Part* part : shop.window().findChildren<Part*>()) {
            if (part->isVisible()) {
                for (const std::string& trouble : textTroubles(*part)) {
                    ADD_FAILURE() << part->objectName().toStdString() << ": " << trouble;
                }
            }
        }
        EXPECT_FALSE(banner(shop).isVisible()) << "it is nothing to be alarmed about";
    }
}

INSTANTIATE_TEST_SUITE_P(
    Sizes, MenuSays,
    testing::Values(
        std::tuple{1280, 800, 1.0}, std::tuple{800, 1280, 1.0}, std::tuple{1280, 800, 1.5},
        std::tuple{1280, 800, 2.0}, std::tuple{800, 1280, 2.0}));

} // namespace
} // namespace seamclock
