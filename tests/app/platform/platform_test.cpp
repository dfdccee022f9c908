#include "app/platform/boot_clock.h"
#include "app/platform/boot_pacer.h"
#include "app/platform/data_folder.h"
#include "app/platform/display.h"
#include "app/platform/resource_folder.h"
#include "tests/support/scratch_folder.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <string>

using namespace seamclock;
using namespace seamclock::test;

namespace {

double uptimeSeconds() {
    std::ifstream file("/proc/uptime");
    double seconds = 0;
    file >> seconds;
    return seconds;
}

class Environment {
public:
    Environment(const char* name, const char* value) : m_name(name) {
        if (const char* was = std::getenv(name)) {
            m_was = was;
        }
        value == nullptr ? ::unsetenv(name) : ::setenv(name, value, 1);
    }
    ~Environment() { m_was.empty() ? ::unsetenv(m_name) : ::setenv(m_name, m_was.c_str(), 1); }
    Environment(const Environment&) = delete;
    Environment& operator=(const Environment&) = delete;

private:
    const char* m_name;
    std::string m_was;
};

TEST(GuidePlaces, AreTheSourceTreesWhereNothingIsInstalled) {
    const Environment none("SEAMCLOCK_RESOURCES", nullptr);
    const auto places = guidePlaces();
    ASSERT_TRUE(places) << places.error().detail;
    EXPECT_TRUE(std::filesystem::exists(std::filesystem::path(places->chapters) / "01-cautions.md"))
        << places->chapters;
    EXPECT_EQ(places->pictures.size(), 2U) << "the guide's own, and the build's";
}

TEST(GuidePlaces, AreANamedFoldersFirstAndOnlyIfItHasAGuide) {
    const ScratchFolder folder;
    const Environment named("SEAMCLOCK_RESOURCES", folder.path().c_str());
    const auto without = guidePlaces();
    ASSERT_TRUE(without) << without.error().detail;
    EXPECT_EQ(without->chapters.find(folder.path()), std::string::npos);
    std::filesystem::create_directories(folder.file("guide"));
    const auto with = guidePlaces();
    ASSERT_TRUE(with);
    EXPECT_EQ(with->chapters, folder.file("guide"));
    EXPECT_EQ(with->pictures.front(), folder.file("guide/pictures"));
}

} // namespace

// The kernel's own words: /proc/uptime counts from boot, suspension included (proc(5)), in
// hundredths of a second.
TEST(BootClock, CountsAsTheKernelDoes) {
    const auto clock = BootClock::make();
    ASSERT_TRUE(clock) << clock.error().detail;
    const double before = uptimeSeconds();
    const Instant now = clock->now();
    const double after = uptimeSeconds();
    const double shown = static_cast<double>(now.boot.count()) / 1e3;
    constexpr double kHundredth = 0.011; // what /proc/uptime is cut to, and a millisecond of ours
    EXPECT_GE(shown, before - kHundredth);
    EXPECT_LE(shown, after + kHundredth);
    EXPECT_GT(now.utc, Milliseconds(1'700'000'000'000)); // later than November 2023
}

TEST(BootClock, NamesTheKernelsBoot) {
    std::ifstream file("/proc/sys/kernel/random/boot_id");
    std::string id;
    std::getline(file, id);
    const auto clock = BootClock::make();
    ASSERT_TRUE(clock);
    EXPECT_EQ(clock->now().bootId, id);
}

TEST(BootClock, RefusesABootIdThatIsNone) {
    const ScratchFolder folder;
    const auto none = BootClock::make(folder.file("none"));
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Unreadable);
    for (const char* text : {"", "\n", "hello\n", "6C2F0D5E-0A54-4D3E-9A52-D0C1F6A7B8C9\n"}) {
        std::ofstream(folder.file("id")) << text;
        EXPECT_FALSE(BootClock::make(folder.file("id"))) << text;
    }
    std::ofstream(folder.file("id")) << "6c2f0d5e-0a54-4d3e-9a52-d0c1f6a7b8c9\n";
    EXPECT_TRUE(BootClock::make(folder.file("id")));
}

TEST(BootPacer, WaitsAtLeastItsShareOfTheTimeAndNotForNothing) {
    BootPacer pacer(10);
    const Milliseconds before = bootTime();
    pacer.wait(Milliseconds(500));
    EXPECT_GE(
        bootTime() - before, Milliseconds(49)); // 50, and both readings are cut to a millisecond
    BootPacer slow(0.001);
    const Milliseconds then = bootTime();
    slow.wait(Milliseconds(0));
    slow.wait(Milliseconds(-5));
    EXPECT_LT(bootTime() - then, std::chrono::seconds(5));
}

// XDG base directory specification 0.8.
TEST(DataFolder, FollowsTheSpecification) {
    {
        const Environment data("XDG_DATA_HOME", "/data/here");
        EXPECT_EQ(practiceLogPath().value_or(""), "/data/here/seamclock/practice.seamlog");
    }
    const Environment home("HOME", "/people/ilva");
    for (const char* invalid : {static_cast<const char*>(nullptr), "", "relative/path"}) {
        const Environment data("XDG_DATA_HOME", invalid);
        EXPECT_EQ(
            practiceLogPath().value_or(""), "/people/ilva/.local/share/seamclock/practice.seamlog");
    }
    const Environment data("XDG_DATA_HOME", nullptr);
    const Environment nobody("HOME", nullptr);
    const auto none = practiceLogPath();
    ASSERT_FALSE(none);
    EXPECT_NE(none.error().detail.find("--log"), std::string::npos);
}

TEST(DataFolder, PutsSettingsBelowTheirOwn) {
    const Environment one("SEAMCLOCK_HOME", nullptr);
    const Environment home("HOME", "/people/ilva");
    {
        const Environment config("XDG_CONFIG_HOME", "/config/here");
        EXPECT_EQ(settingsPath().value_or(""), "/config/here/seamclock/seamclock.ini");
    }
    for (const char* invalid : {static_cast<const char*>(nullptr), "", "relative/path"}) {
        const Environment config("XDG_CONFIG_HOME", invalid);
        EXPECT_EQ(settingsPath().value_or(""), "/people/ilva/.config/seamclock/seamclock.ini");
    }
    const Environment config("XDG_CONFIG_HOME", nullptr);
    const Environment nobody("HOME", nullptr);
    const auto none = settingsPath();
    ASSERT_FALSE(none);
    EXPECT_NE(none.error().detail.find("--settings"), std::string::npos);
}

TEST(DataFolder, KeepsEverythingInOneFolderThatIsNamed) {
    const Environment data("XDG_DATA_HOME", "/data/here");
    const Environment config("XDG_CONFIG_HOME", "/config/here");
    {
        const Environment one("SEAMCLOCK_HOME", "/stick/shop");
        EXPECT_EQ(productionLogPath().value_or(""), "/stick/shop/joints.seamlog");
        EXPECT_EQ(practiceLogPath().value_or(""), "/stick/shop/practice.seamlog");
        EXPECT_EQ(demoShopFolder().value_or(""), "/stick/shop/demo-shop");
        EXPECT_EQ(settingsPath().value_or(""), "/stick/shop/seamclock.ini");
    }
    const Environment relative("SEAMCLOCK_HOME", "stick/shop");
    EXPECT_EQ(productionLogPath().value_or(""), "/data/here/seamclock/joints.seamlog");
    EXPECT_EQ(settingsPath().value_or(""), "/config/here/seamclock/seamclock.ini");
}

TEST(Display, IsThereWhereOneIsNamed) {
    const Environment x("DISPLAY", nullptr);
    const Environment wayland("WAYLAND_DISPLAY", nullptr);
    const Environment platform("QT_QPA_PLATFORM", nullptr);
    EXPECT_FALSE(hasDisplay());
    {
        const Environment empty("DISPLAY", "");
        EXPECT_FALSE(hasDisplay());
    }
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) {
        const Environment set(name, ":77");
        EXPECT_TRUE(hasDisplay()) << name;
    }
}
