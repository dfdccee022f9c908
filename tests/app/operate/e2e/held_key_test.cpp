// A key that is held types again and again, and a machine that is busy hands the repeats over late
// and unmarked. Held for three seconds it is one press of the step, whichever key it is. The state
// is preparation: nothing there takes two presses within a blink for one, so a second step could
// come at once.
#include "tests/app/operate/e2e/rig.h"
#include "tests/app/operate/e2e/weld_log.h"

#include <gtest/gtest.h>
#include <thread>

namespace seamclock::test {
namespace {

constexpr double kHeldMs = 3'000;

std::size_t stepsIn(const std::string& log) {
    const auto weld = weldIn(log);
    return weld ? handsEvents(*weld).size() : 0;
}

class HeldKey : public ::testing::TestWithParam<const char*> {};

TEST_P(HeldKey, IsOneStepOnABusyMachine) {
    const std::string key = GetParam();
    Rig rig;
    {
        // That it repeats at all, on this server: or the rest would prove nothing.
        const auto witness =
            rig.start(std::string(SEAMCLOCK_BIN_DIR) + "/key_witness", "^key witness$");
        rig.keyDown(key);
        EXPECT_TRUE(waitFor([&] { return witness->told("press").size() >= 20; }))
            << witness->told("press").size() << " presses told";
        rig.keyUp(key);
        witness->signal(SIGTERM);
        witness->waitForEnd(Milliseconds{5'000});
    }
    // The plate has settled and was read at three places; what follows is a word each.
    bringLog(rig.log(), {"preparing", 4, Milliseconds{5'000}, 0, {}});
    const std::size_t before = stepsIn(rig.log());
    ASSERT_GT(before, 0U);
    rig.startProgram();
    const Busy busy(std::thread::hardware_concurrency());
    rig.keyDown(key);
    ASSERT_TRUE(waitFor([&] { return stepsIn(rig.log()) > before; })) << "no step came";
    const double until = bootMs() + kHeldMs;
    while (bootMs() < until) {
        waitUntil(bootMs() + 100);
        ASSERT_EQ(stepsIn(rig.log()), before + 1);
    }
    rig.keyUp(key);
    waitUntil(bootMs() + 1'000); // what was on its way would have come
    EXPECT_EQ(stepsIn(rig.log()), before + 1);
    // And the next press counts, so the program was not just stuck.
    rig.key(key);
    EXPECT_TRUE(waitFor([&] { return stepsIn(rig.log()) == before + 2; }))
        << stepsIn(rig.log()) - before << " steps";
}

INSTANTIATE_TEST_SUITE_P(
    Of, HeldKey, ::testing::Values("space", "Return", "Next", "F9"),
    [](const ::testing::TestParamInfo<const char*>& key) { return std::string(key.param); });

} // namespace
} // namespace seamclock::test
