// The tablet is kept awake, as its services see it: mocks on a bus of the test's own say what they
// were asked and what is held of them. What StayAwake says of itself is held against that.
#include "app/power/stay_awake.h"
#include "tests/app/power/bus_rig.h"

#include <QCoreApplication>
#include <QProcessEnvironment>
#include <algorithm>
#include <atomic>
#include <csignal>
#include <gtest/gtest.h>
#include <poll.h>
#include <thread>

namespace seamclock::test {
namespace {

const std::vector<Inhibitor> kNone;
const std::vector<Inhibitor> kOurs{{"sleep:idle", "Seamclock", "A weld is running", "block"}};
const std::string kAsked = "Inhibit \"Seamclock\" \"A weld is running\"";
using Calls = std::vector<std::string>;

class StayAwakeTest : public ::testing::Test {
protected:
    StayAwakeTest() {
        static int count = 1;
        static char name[] = "power_test";
        static char* words[] = {name, nullptr};
        static QCoreApplication application(count, words);
    }

    PowerSources sources() const {
        PowerSources sources;
        sources.systemBus = m_rig.address();
        sources.sessionBus = m_rig.address();
        sources.retryMs = 200;
        return sources;
    }
    void startBoth() {
        m_rig.startLogin();
        m_rig.startScreenSaver();
    }
    static bool comes(const StayAwake& awake, LockState sleep, LockState screen) {
        return until(
            [&] { return awake.state().sleep == sleep && awake.state().screen == screen; });
    }
    static bool isHeldByBoth(const StayAwake& awake) {
        return comes(awake, LockState::Held, LockState::Held);
    }

    BusRig m_rig;
};

TEST_F(StayAwakeTest, AsksForNothingBeforeAWeldBegins) {
    startBoth();
    const StayAwake awake(sources());
    letPass();
    EXPECT_EQ(m_rig.held(), kNone);
    EXPECT_EQ(m_rig.screenSaverCalls(), Calls{});
    EXPECT_EQ(awake.state(), PowerState{});
}

TEST_F(StayAwakeTest, HoldsOffSleepAndScreenFromTheFirstWeldToTheLast) {
    startBoth();
    StayAwake awake(sources());
    for (int weld = 1; weld <= 3; ++weld) {
        awake.hold(true);
        awake.hold(true); // another bench begins
        ASSERT_TRUE(isHeldByBoth(awake));
        EXPECT_EQ(m_rig.held(), kOurs) << "once, in words that a person can read";
        awake.hold(false);
        ASSERT_TRUE(comes(awake, LockState::Off, LockState::Off));
        EXPECT_TRUE(until([&] { return m_rig.held() == kNone; }));
        // The mock gives the cookies 1, 2, 3.
        EXPECT_TRUE(until([&] {
            const Calls calls = m_rig.screenSaverCalls();
            return calls.size() == 2U * static_cast<unsigned>(weld) && calls.end()[-2] == kAsked &&
                   calls.back() == "UnInhibit " + std::to_string(weld);
        }));
    }
}

TEST_F(StayAwakeTest, GivesBackWhatComesAfterTheWeldHasEnded) {
    startBoth();
    StayAwake awake(sources());
    m_rig.signalLogin(SIGSTOP);
    awake.hold(true);
    ASSERT_TRUE(comes(awake, LockState::Asked, LockState::Held));
    awake.hold(false);
    ASSERT_TRUE(comes(awake, LockState::Off, LockState::Off));
    m_rig.signalLogin(SIGCONT);
    EXPECT_TRUE(until([&] { return m_rig.held() == kNone; }));
    letPass();
    EXPECT_EQ(m_rig.held(), kNone);
    // And it isn't spoilt for the next one.
    awake.hold(true);
    ASSERT_TRUE(isHeldByBoth(awake));
    EXPECT_EQ(m_rig.held(), kOurs);
}

TEST_F(StayAwakeTest, AsksOnceWhenWeldsComeAndGoBeforeTheAnswer) {
    startBoth();
    StayAwake awake(sources());
    m_rig.signalLogin(SIGSTOP);
    for (int i = 0; i < 5; ++i) {
        awake.hold(true);
        awake.hold(false);
    }
    awake.hold(true);
    ASSERT_TRUE(comes(awake, LockState::Asked, LockState::Held));
    m_rig.signalLogin(SIGCONT);
    ASSERT_TRUE(isHeldByBoth(awake));
    EXPECT_TRUE(until([&] { return m_rig.held() == kOurs; }));
    // As many given back as were given, but one.
    const Calls calls = m_rig.screenSaverCalls();
    EXPECT_EQ(
        std::count(calls.begin(), calls.end(), kAsked) * 2 - 1,
        static_cast<std::ptrdiff_t>(calls.size()));
}

TEST_F(StayAwakeTest, IsNoTroubleWithoutServicesAndTakesThemWhenTheyCome) {
    PowerSources patient = sources();
    patient.retryMs = 600'000; // the bus says that they came
    StayAwake awake(patient);
    awake.hold(true);
    ASSERT_TRUE(comes(awake, LockState::Missing, LockState::Missing));
    m_rig.startLogin();
    ASSERT_TRUE(comes(awake, LockState::Held, LockState::Missing));
    EXPECT_EQ(m_rig.held(), kOurs);
    m_rig.startScreenSaver();
    ASSERT_TRUE(isHeldByBoth(awake));
    EXPECT_EQ(m_rig.screenSaverCalls(), Calls{kAsked});
}

TEST_F(StayAwakeTest, TakesItAgainFromServicesThatDiedAndCameBack) {
    PowerSources patient = sources();
    patient.retryMs = 600'000;
    startBoth();
    StayAwake awake(patient);
    awake.hold(true);
    ASSERT_TRUE(isHeldByBoth(awake));
    for (int i = 0; i < 3; ++i) {
        m_rig.killLogin();
        m_rig.killScreenSaver();
        ASSERT_TRUE(comes(awake, LockState::Missing, LockState::Missing));
        m_rig.startLogin();
        m_rig.startScreenSaver(70);
        ASSERT_TRUE(isHeldByBoth(awake));
        EXPECT_EQ(m_rig.held(), kOurs);
        EXPECT_EQ(m_rig.screenSaverCalls(), Calls{kAsked});
    }
    awake.hold(false);
    EXPECT_TRUE(until([&] { return m_rig.held() == kNone; }));
    const Calls both{kAsked, "UnInhibit 70"};
    EXPECT_TRUE(until([&] { return m_rig.screenSaverCalls() == both; }));
}

TEST_F(StayAwakeTest, AsksNothingOfAServiceThatComesBackAfterTheWeld) {
    startBoth();
    StayAwake awake(sources());
    awake.hold(true);
    ASSERT_TRUE(isHeldByBoth(awake));
    m_rig.killLogin();
    m_rig.killScreenSaver();
    ASSERT_TRUE(comes(awake, LockState::Missing, LockState::Missing));
    awake.hold(false);
    ASSERT_TRUE(comes(awake, LockState::Off, LockState::Off));
    startBoth();
    letPass();
    EXPECT_EQ(m_rig.held(), kNone);
    EXPECT_EQ(m_rig.screenSaverCalls(), Calls{});
}

TEST_F(StayAwakeTest, SurvivesAServiceThatDiesOverTheQuestion) {
    startBoth();
    StayAwake awake(sources());
    m_rig.signalLogin(SIGSTOP);
    awake.hold(true);
    ASSERT_TRUE(comes(awake, LockState::Asked, LockState::Held));
    m_rig.killLogin();
    ASSERT_TRUE(comes(awake, LockState::Missing, LockState::Held));
    m_rig.startLogin();
    ASSERT_TRUE(isHeldByBoth(awake));
    EXPECT_EQ(m_rig.held(), kOurs);
}

TEST_F(StayAwakeTest, TellsARefusalAndAsksAgain) {
    startBoth();
    m_rig.refuse("org.freedesktop.DBus.Error.AccessDenied");
    StayAwake awake(sources());
    awake.hold(true);
    ASSERT_TRUE(comes(awake, LockState::Refused, LockState::Held));
    EXPECT_EQ(m_rig.held(), kNone);
    m_rig.allow();
    ASSERT_TRUE(isHeldByBoth(awake)) << "it is tried again by itself";
    EXPECT_EQ(m_rig.held(), kOurs);
}

TEST_F(StayAwakeTest, TakesAnAnswerOfAnotherKindForARefusal) {
    startBoth();
    m_rig.answerWithAWord();
    StayAwake awake(sources());
    awake.hold(true);
    EXPECT_TRUE(comes(awake, LockState::Refused, LockState::Held));
}

TEST_F(StayAwakeTest, IsNoTroubleWithoutABusAndTakesItWhenItComes) {
    m_rig.killBus();
    StayAwake awake(sources());
    awake.hold(true);
    ASSERT_TRUE(comes(awake, LockState::Missing, LockState::Missing));
    m_rig.startBus();
    startBoth();
    ASSERT_TRUE(isHeldByBoth(awake));
    EXPECT_EQ(m_rig.held(), kOurs);
    m_rig.killBus();
    ASSERT_TRUE(comes(awake, LockState::Missing, LockState::Missing));
    m_rig.startBus();
    startBoth();
    ASSERT_TRUE(isHeldByBoth(awake));
    EXPECT_EQ(m_rig.held(), kOurs);
    EXPECT_EQ(m_rig.screenSaverCalls(), Calls{kAsked});
}

// Were any call made on this thread, it would hang until the watchdog lets the bus go on.
TEST_F(StayAwakeTest, NeverWaitsForABusThatIsFrozen) {
    startBoth();
    std::atomic<bool> done{false};
    std::atomic<bool> hung{false};
    m_rig.signalBus(SIGSTOP);
    std::thread watchdog([&] {
        for (int i = 0; i < 1'500 && !done; ++i) {
            ::poll(nullptr, 0, 10);
        }
        hung = !done;
        m_rig.signalBus(SIGCONT);
    });
    {
        StayAwake ends(sources());
        ends.hold(true);
        letPass(5);
        ends.hold(false);
    }
    StayAwake awake(sources());
    awake.hold(true);
    awake.hold(false);
    awake.hold(true);
    letPass(5);
    EXPECT_NE(awake.state().sleep, LockState::Held);
    done = true;
    watchdog.join();
    EXPECT_FALSE(hung);
    ASSERT_TRUE(isHeldByBoth(awake)) << "once the bus goes on";
    EXPECT_TRUE(until([&] { return m_rig.held() == kOurs; }))
        << "and nothing of the one that ended";
}

// ---- the end of the program

class Program {
public:
    Program(const BusRig& rig, const QStringList& words) {
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert("DBUS_SYSTEM_BUS_ADDRESS", rig.address());
        environment.insert("DBUS_SESSION_BUS_ADDRESS", rig.address());
        m_process.setProcessEnvironment(environment);
        m_process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
        m_process.start(SEAMCLOCK_BIN_DIR "/power_driver", words);
    }
    ~Program() {
        m_process.kill();
        m_process.waitForFinished();
    }
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;

    bool waitUntilHeld() {
        return until([&] {
            m_said += m_process.readAllStandardOutput();
            return m_said.contains("held\n");
        });
    }
    qint64 child() const { return m_said.mid(6, m_said.indexOf('\n') - 6).toLongLong(); }
    void kill() {
        m_process.kill();
        m_process.waitForFinished();
    }
    int endItself() {
        m_process.closeWriteChannel();
        EXPECT_TRUE(m_process.waitForFinished(20'000));
        return m_process.exitStatus() == QProcess::NormalExit ? m_process.exitCode() : -1;
    }

private:
    QProcess m_process;
    QByteArray m_said;
};

TEST_F(StayAwakeTest, GivesBackWhenTheProgramEnds) {
    startBoth();
    Program program(m_rig, {});
    ASSERT_TRUE(program.waitUntilHeld());
    EXPECT_EQ(m_rig.held(), kOurs);
    EXPECT_EQ(program.endItself(), 0);
    EXPECT_TRUE(until([&] { return m_rig.held() == kNone; }));
    const Calls both{kAsked, "UnInhibit 1"};
    EXPECT_TRUE(until([&] { return m_rig.screenSaverCalls() == both; }));
}

TEST_F(StayAwakeTest, HoldsNothingAfterTheProgramWasKilledThoughItsChildLives) {
    startBoth();
    Program program(m_rig, {"child"});
    ASSERT_TRUE(program.waitUntilHeld());
    EXPECT_EQ(m_rig.held(), kOurs);
    const auto child = static_cast<pid_t>(program.child());
    ASSERT_GT(child, 0);
    program.kill();
    EXPECT_TRUE(until([&] { return m_rig.held() == kNone; }));
    EXPECT_EQ(::kill(child, SIGKILL), 0) << "the child had ended, and so proved nothing";
}

TEST_F(StayAwakeTest, LetsTheProgramEndThoughTheBusIsFrozen) {
    m_rig.signalBus(SIGSTOP);
    Program program(m_rig, {});
    EXPECT_EQ(program.endItself(), 0);
    m_rig.signalBus(SIGCONT);
}

// ---- the battery

class BatteryTest : public StayAwakeTest {
protected:
    static bool comes(const StayAwake& awake, bool low, int percent) {
        return until([&] {
            return awake.state().batteryLow == low && awake.state().batteryPercent == percent;
        });
    }
};

constexpr unsigned kCharging = 1; // UPower's own numbers
constexpr unsigned kDischarging = 2;

TEST_F(BatteryTest, IsLowBelowFifteenPercentUntilItIsCharged) {
    m_rig.startUPower();
    const StayAwake awake(sources());
    m_rig.setBattery(50, kDischarging);
    ASSERT_TRUE(comes(awake, false, 50));
    std::vector<bool> told;
    bool before = false;
    QObject::connect(&awake, &StayAwake::changed, &awake, [&] {
        if (awake.state().batteryLow != before) {
            before = !before;
            told.push_back(before);
        }
    });
    m_rig.setBattery(16, kDischarging);
    EXPECT_TRUE(comes(awake, false, 16));
    m_rig.setBattery(14, kDischarging);
    EXPECT_TRUE(comes(awake, true, 14));
    m_rig.setBattery(14, kCharging);
    EXPECT_TRUE(comes(awake, false, 14));
    m_rig.setBattery(14, kDischarging);
    EXPECT_TRUE(comes(awake, true, 14));
    EXPECT_EQ(told, (std::vector<bool>{true, false, true}));
}

TEST_F(BatteryTest, IsReadAtTheStartAndFromAServiceThatComesLater) {
    m_rig.startUPower();
    m_rig.setBattery(9.9, kDischarging);
    const StayAwake awake(sources());
    EXPECT_TRUE(comes(awake, true, 9));
    m_rig.killUPower();
    EXPECT_TRUE(comes(awake, false, -1)) << "nobody knows";
    m_rig.startUPower();
    m_rig.setBattery(12, kDischarging);
    EXPECT_TRUE(comes(awake, true, 12));
}

TEST_F(BatteryTest, IsNoTroubleWhereThereIsNone) {
    m_rig.startUPower();
    const StayAwake awake(sources());
    m_rig.setBattery(50, kDischarging);
    ASSERT_TRUE(comes(awake, false, 50));
    m_rig.setBattery(0, kDischarging, false);
    EXPECT_TRUE(comes(awake, false, -1));
    letPass();
    EXPECT_EQ(awake.state(), PowerState{});
    m_rig.setBattery(5, kDischarging);
    EXPECT_TRUE(comes(awake, true, 5));
    m_rig.setBattery(5, kDischarging, false); // it is taken out
    EXPECT_TRUE(comes(awake, false, -1));
}

TEST_F(BatteryTest, IsFollowedWhileAWeldRuns) {
    startBoth();
    m_rig.startUPower();
    StayAwake awake(sources());
    awake.hold(true);
    ASSERT_TRUE(isHeldByBoth(awake));
    m_rig.setBattery(14, kDischarging);
    EXPECT_TRUE(comes(awake, true, 14));
    EXPECT_EQ(m_rig.held(), kOurs);
}

} // namespace
} // namespace seamclock::test
