// The whole program on a bus of the test's own: mocks of the login manager and the screen saver say
// what it holds while a weld is open, after it was killed, and after the weld.
#include "tests/app/operate/e2e/rig.h"
#include "tests/app/operate/e2e/weld_log.h"
#include "tests/app/power/bus_rig.h"

#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

using std::chrono::seconds;

const std::vector<Inhibitor> kNone;
const std::vector<Inhibitor> kOurs{{"sleep:idle", "Seamclock", "A weld is running", "block"}};
const std::string kAsked = "Inhibit \"Seamclock\" \"A weld is running\"";
using Calls = std::vector<std::string>;

// After a reboot in the soak the step button stops the weld: one key ends it.
TEST(Awake, WhileAWeldIsOpenAndNotAfterItNorAfterTheProgramWasKilled) {
    BusRig buses;
    buses.startLogin();
    buses.startScreenSaver();
    Rig rig;
    rig.giveBuses(buses.address().toStdString());
    rig.startProgram();
    letPass();
    EXPECT_EQ(buses.held(), kNone) << "no weld is open";
    rig.killProgram();

    Instant past = presentInstant();
    past.bootId = "0b7a1c52-4e1d-4f0a-9a61-2f6f7d1c9e03";
    past.boot = seconds(50'000);
    bringLog(rig.log(), {"soaking", 0, seconds(3), 0, past});
    rig.startProgram();
    EXPECT_TRUE(until([&] { return buses.held() == kOurs; }));
    EXPECT_TRUE(until([&] { return buses.screenSaverCalls() == Calls{kAsked}; }));
    rig.killProgram();
    EXPECT_TRUE(until([&] { return buses.held() == kNone; })) << "the kernel closed it";

    rig.startProgram();
    ASSERT_TRUE(until([&] { return buses.held() == kOurs; }));
    rig.key("space");
    EXPECT_TRUE(until([&] { return buses.held() == kNone; }));
    const Calls all{kAsked, kAsked, "UnInhibit 2"};
    EXPECT_TRUE(until([&] { return buses.screenSaverCalls() == all; }));
    EXPECT_TRUE(until([&] { // the row comes to disk a little later
        const auto weld = weldIn(rig.log());
        return weld && std::holds_alternative<Aborted>(weld->state);
    }));
}

} // namespace
} // namespace seamclock::test
