// A weld that stood cooling when another boot ended, and a wall clock that came back right, late or
// early: what log recover foretells is what rehearse --resume then does, and cooling is whole. The
// logs are made here as that boot would have left them; the machine's own boot and clocks are those
// of the test.
#include "app/platform/boot_clock.h"
#include "core/log/log_writer.h"
#include "core/weld/event_codec.h"
#include "tests/app/cli/run_cli.h"
#include "tests/support/fake_clock.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

using nlohmann::json;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using test::Cli;
using test::Story;

constexpr double kCoolingS = 3;
constexpr double kCooledS = 1; // when the power went

WeldPlan briefPlan() {
    WeldPlan plan = test::inventedPlan();
    plan.cooling = WeldPlan::Cooling{seconds(3), {Milliseconds(500), Milliseconds(1'500)}};
    return plan;
}

/// `ago`: how long the last event lies back by the machine's wall clock.
void leaveLog(const Cli& cli, const std::string& name, const Weld& weld, Milliseconds ago) {
    const auto machine = BootClock::make();
    ASSERT_TRUE(machine);
    const Milliseconds later = machine->now().utc - ago - weld.events.back().at.utc;
    const test::FakeClock clock;
    auto writer = LogWriter<Practice>::open(cli.folder().file(name), clock);
    ASSERT_TRUE(writer) << writer.error().detail;
    for (Event event : weld.events) {
        event.at.utc += later;
        const auto body = toBody(event);
        ASSERT_TRUE(body);
        writer->submit({{event.subject, event.n, *body}});
    }
    ASSERT_TRUE(writer->flush());
}

struct Cut {
    const char* name;
    Milliseconds ago;
    const char* basis;
    bool canBeConfirmed;
};

const std::vector<Cut>& cuts() {
    static const std::vector<Cut> all{
        {"right", seconds(42), "unconfirmed", true},
        {"ten_minutes_ahead", seconds(42) + minutes(10), "unconfirmed", true},
        {"ten_minutes_behind", seconds(42) - minutes(10), "backwards", false},
        {"a_day_behind", seconds(42) - hours(24), "backwards", false},
        {"a_day_ahead", seconds(42) + hours(24), "unconfirmed", false},
        {"off_for_thirteen_hours", hours(13), "unconfirmed", false}};
    return all;
}

const json* eventOf(const json& record, const char* kind) {
    for (const json& event : record["events"]) {
        if (event["kind"] == kind) {
            return &event;
        }
    }
    return nullptr;
}

class CliRebooted : public ::testing::TestWithParam<Cut> {
protected:
    void SetUp() override {
        Story story{briefPlan()};
        story.buildUp().wait(seconds(1)).then(RemarkMade{"last words"});
        leaveLog(m_cli, "cooling.log", story.weld(), GetParam().ago);
    }
    json foretold() const {
        const json j = m_cli.json("log recover --log " + m_log);
        EXPECT_EQ(j["open"].size(), 1U) << j;
        return j["open"].size() == 1 ? j["open"][0] : json();
    }
    /// Counted from the record's own boot clocks: before the cut and after the bridge.
    static double certainlyCooled(const json& record) {
        const json* bridge = eventOf(record, "clock_bridged");
        const json* released = eventOf(record, "release_step");
        return kCooledS +
               ((*released)["boot_ms"].get<double>() - (*bridge)["boot_ms"].get<double>()) / 1e3;
    }

    Cli m_cli;
    std::string m_log = m_cli.path("cooling.log");
};

} // namespace

TEST_P(CliRebooted, LogRecoverForetellsWhatResumeDoesAndCoolingIsWhole) {
    const Cut& cut = GetParam();
    const json weld = foretold();
    EXPECT_EQ(weld["next"], "bridge");
    EXPECT_EQ(weld["in_phase_s"]["low"], kCooledS);
    EXPECT_EQ(weld["left_s"]["high"], kCoolingS - kCooledS);
    EXPECT_EQ(weld["power_off_basis"], cut.basis);
    EXPECT_EQ(weld["power_off_s"]["low"], 0.0);
    EXPECT_EQ(weld["can_be_confirmed"], cut.canBeConfirmed);
    const double wall = static_cast<double>(std::max(cut.ago, Milliseconds(0)).count()) / 1e3;
    EXPECT_GE(weld["power_off_s"]["high"], wall);
    EXPECT_LE(weld["power_off_s"]["high"], wall == 0 ? 0 : wall + 300); // a slow machine's start
    const std::string text = m_cli.run("log recover --log " + m_log).out;
    EXPECT_EQ(text.find("can't be confirmed") == std::string::npos, cut.canBeConfirmed) << text;
    const bool backwards = std::string(cut.basis) == "backwards";
    EXPECT_EQ(text.find("the wall clock went back") != std::string::npos, backwards) << text;

    const json record = m_cli.json("rehearse --resume --hand 0 --log " + m_log);
    const json* bridge = eventOf(record, "clock_bridged");
    ASSERT_NE(bridge, nullptr);
    EXPECT_EQ((*bridge)["d"]["basis"], cut.basis);
    EXPECT_EQ((*bridge)["d"]["lo_ms"], 0);
    EXPECT_GE((*bridge)["d"]["hi_ms"].get<double>(), wall * 1e3);
    ASSERT_NE(eventOf(record, "release_step"), nullptr);
    EXPECT_GE(certainlyCooled(record), kCoolingS);
    for (const json& reason : record["reasons"]) {
        EXPECT_NE(reason["code"], "cooling") << reason;
    }
}

TEST_P(CliRebooted, AConfirmationCountsTheWallClockOrIsRefusedWithItsValue) {
    const Cut& cut = GetParam();
    const std::string words = "rehearse --resume --hand 0 --after-reboot confirmed --log " + m_log;
    if (cut.canBeConfirmed) {
        const json record = m_cli.json(words);
        const json* bridge = eventOf(record, "clock_bridged");
        ASSERT_NE(bridge, nullptr);
        EXPECT_EQ((*bridge)["d"]["basis"], "confirmed");
        EXPECT_EQ((*bridge)["d"]["lo_ms"], (*bridge)["d"]["hi_ms"]);
        EXPECT_GE((*bridge)["d"]["lo_ms"].get<std::int64_t>(), cut.ago.count());
        return;
    }
    const json before = foretold();
    const auto refused = m_cli.run(words);
    EXPECT_EQ(refused.status, 2);
    EXPECT_NE(refused.err.find("allowed are 0 to 43200 s"), std::string::npos) << refused.err;
    const std::string kBefore = "a power cut of ";
    const auto at = refused.err.find(kBefore);
    ASSERT_NE(at, std::string::npos) << refused.err;
    const double value = std::stod(refused.err.substr(at + kBefore.size()));
    EXPECT_NEAR(value, static_cast<double>(cut.ago.count()) / 1e3, 300); // a slow machine's start
    const json after = foretold();
    EXPECT_EQ(after["events"], before["events"]) << "a refused word wrote something";
    EXPECT_EQ(after["in_phase_s"]["low"], before["in_phase_s"]["low"]);
}

INSTANTIATE_TEST_SUITE_P(WallClock, CliRebooted, ::testing::ValuesIn(cuts()), [](const auto& one) {
    return std::string(one.param.name);
});

TEST(CliRebootedBeforeTheLock, BothSayThatTheWeldIsStopped) {
    const Cli cli;
    Story story{briefPlan()};
    story.align().wait(seconds(10)).then(RemarkMade{"last words"});
    leaveLog(cli, "soaking.log", story.weld(), seconds(42));
    const std::string log = cli.path("soaking.log");
    const json weld = cli.json("log recover --log " + log)["open"][0];
    EXPECT_EQ(weld["next"], "abort_by_default");
    const json record = cli.json("rehearse --resume --hand 0 --log " + log);
    EXPECT_EQ(record["state"], "aborted");
    ASSERT_NE(eventOf(record, "clock_bridged"), nullptr);
    EXPECT_EQ((*eventOf(record, "weld_aborted"))["d"]["reason"], "power_cut");
}

} // namespace seamclock
