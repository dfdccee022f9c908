// Power cuts with real processes: kill -9 in every phase, and a machine that was started again.
// After it the open weld is there at once, in the right phase with the right time. What must hold
// is worked out here from what the killed process had told, not by the program's own recovery.
#include "tests/faults/driver.h"
#include "tests/faults/kills.h"
#include "tests/support/scratch_folder.h"

#include "core/log/log_reader.h"
#include "core/weld/record.h"

#include <fstream>
#include <gtest/gtest.h>

using namespace seamclock;
using namespace seamclock::test;

TEST(PowerCut, AWeldInTrueTimeGoesOnAfterEachOfItsKills) {
    const ScratchFolder folder;
    killInTrueTime(folder.file("true.seamlog"), 18, 1);
}

TEST(PowerCut, AKilledPacedWeldEndsInTheRecordOfAnUninterruptedOne) {
    const ScratchFolder folder;
    killPaced(folder.file("paced.seamlog"), 18, 1);
}

TEST(PowerCut, AWeldKilledAfterEverySecondEventEndsInTheSameRecord) {
    const ScratchFolder folder;
    EXPECT_GE(killAfterEvents(folder.path(), 1, 2), 15);
}

namespace {

constexpr const char* kOtherBoot = "6c2f0d5e-0a54-4d3e-9a52-d0c1f6a7b8c9";

class Reboot : public ::testing::Test {
protected:
    void SetUp() override {
        m_bootId = m_folder.file("boot_id");
        std::ofstream(m_bootId) << kOtherBoot << "\n";
        const std::string why = whyNoOtherBoot(m_bootId);
        if (!why.empty()) {
            GTEST_SKIP() << why
                         << "; the table in tests/core/session/after_cut_test.cpp holds the rules";
        }
    }

    DriverCall call(const std::string& name) const {
        DriverCall made;
        made.log = m_folder.file(name);
        made.trueTime = true;
        return made;
    }
    DriverCall afterReboot(const DriverCall& before, const std::string& word) const {
        DriverCall made = before;
        made.resume = true;
        made.bootIdFile = m_bootId;
        made.word = word;
        return made;
    }
    /// log recover on the boot to come has each of these parts.
    void expectForetold(const DriverCall& of, const std::vector<std::string>& parts) const {
        const std::string said = recoverSays(of.log, m_bootId);
        for (const std::string& part : parts) {
            EXPECT_NE(said.find(part), std::string::npos) << part << " is not in " << said;
        }
    }
    std::vector<Event> events(const DriverCall& of, const std::string& weld) const {
        auto reader = LogReader::open(of.log);
        EXPECT_TRUE(reader) << (reader ? "" : reader.error().detail);
        return reader ? reader->weldEvents(weld).value_or(std::vector<Event>{})
                      : std::vector<Event>{};
    }

    ScratchFolder m_folder;
    std::string m_bootId;
};

template <class Kind>
const Event* firstOf(const std::vector<Event>& events) {
    for (const Event& event : events) {
        if (std::holds_alternative<Kind>(event.d)) {
            return &event;
        }
    }
    return nullptr;
}

} // namespace

TEST_F(Reboot, CoolingGoesOnOverABridgeAndIsNeverShortened) {
    const DriverCall before = call("cooling.seamlog");
    const Told cut = runDriverTo(before, "pressure_locked", Milliseconds(900));
    ASSERT_TRUE(cut.killed);
    expectForetold(
        before, {"\"clock\": \"rebooted\"", "\"next\": \"bridge\"",
                 "\"power_off_basis\": \"unconfirmed\"", "\"phase\": \"cooling\""});
    const Told again = runDriver(afterReboot(before, "none"));
    ASSERT_FALSE(again.done.empty()) << again.error;
    EXPECT_NE(again.found.find("rebooted open"), std::string::npos) << again.found;
    const std::vector<Event> all = events(before, cut.weld);
    const Event* bridge = firstOf<ClockBridged>(all);
    const Event* locked = firstOf<PressureLocked>(all);
    const Event* released = firstOf<ReleaseStep>(all);
    ASSERT_TRUE(bridge != nullptr && locked != nullptr && released != nullptr);
    EXPECT_EQ(bridge->at.bootId, kOtherBoot);
    const auto& said = std::get<ClockBridged>(bridge->d);
    EXPECT_EQ(said.basis, BridgeBasis::Unconfirmed);
    EXPECT_EQ(said.lo, Milliseconds(0));
    EXPECT_GT(said.hi, Milliseconds(0));
    // Only what was certainly cooled counts: to the last event of the first boot, and from the
    // bridge on.
    const Event& last = all[static_cast<std::size_t>(bridge->n - 2)];
    const Milliseconds certain =
        (last.at.boot - locked->at.boot) + (released->at.boot - bridge->at.boot);
    EXPECT_GE(certain, std::get<WeldOpened>(all.front().d).plan.cooling->atLeast);
    // The other limits are in seconds here, and a busy machine may miss them; these two must be as
    // they are.
    const Event* closed = firstOf<WeldClosed>(all);
    ASSERT_NE(closed, nullptr);
    bool bridgeNamed = false;
    for (const StoredReason& reason : std::get<WeldClosed>(closed->d).reasons) {
        EXPECT_NE(reason.code, "cooling") << reason.text;
        bridgeNamed = bridgeNamed || reason.code == "bridge_used";
    }
    EXPECT_TRUE(bridgeNamed);
}

TEST_F(Reboot, BeforeTheLockTheDefaultIsToAbort) {
    for (const char* phase : {"alignment_started", "faces_met"}) {
        const DriverCall before = call(std::string(phase) + ".seamlog");
        const Told cut = runDriverTo(before, phase, Milliseconds(150));
        ASSERT_TRUE(cut.killed) << phase;
        expectForetold(before, {"\"clock\": \"rebooted\"", "\"next\": \"abort_by_default\""});
        EXPECT_NE(recoverSays(before.log, "").find("\"clock\": \"same boot\""), std::string::npos);
        const Told again = runDriver(afterReboot(before, "none"));
        EXPECT_EQ(again.done, "incomplete") << phase << again.error;
        EXPECT_NE(again.found.find("rebooted aborted"), std::string::npos) << again.found;
        const std::vector<Event> all = events(before, cut.weld);
        const Event* aborted = firstOf<WeldAborted>(all);
        ASSERT_NE(aborted, nullptr) << phase;
        EXPECT_EQ(std::get<WeldAborted>(aborted->d).reason, "power_cut");
    }
}

TEST_F(Reboot, APersonsWordLetsASoakGoOn) {
    const DriverCall before = call("soak.seamlog");
    const Told cut = runDriverTo(before, "soak_started", Milliseconds(150));
    ASSERT_TRUE(cut.killed);
    const Told again = runDriver(afterReboot(before, "confirmed"));
    EXPECT_FALSE(again.done.empty()) << again.error;
    EXPECT_NE(again.found.find("soaking"), std::string::npos) << again.found;
    const std::vector<Event> all = events(before, cut.weld);
    const Event* bridge = firstOf<ClockBridged>(all);
    ASSERT_NE(bridge, nullptr);
    const auto& said = std::get<ClockBridged>(bridge->d);
    EXPECT_EQ(said.basis, BridgeBasis::Confirmed);
    EXPECT_EQ(said.lo, said.hi);
    EXPECT_EQ(firstOf<WeldAborted>(all), nullptr);
    EXPECT_NE(firstOf<WeldClosed>(all), nullptr);
}

TEST_F(Reboot, APersonsWordStopsACooling) {
    const DriverCall before = call("stop.seamlog");
    const Told cut = runDriverTo(before, "pressure_locked", Milliseconds(100));
    ASSERT_TRUE(cut.killed);
    const Told again = runDriver(afterReboot(before, "abort"));
    EXPECT_EQ(again.done, "incomplete") << again.error;
    EXPECT_NE(firstOf<WeldAborted>(events(before, cut.weld)), nullptr);
}
