// Every phase of a weld and every way in which a machine's clocks go wrong, through Session, log
// file and recovery, to the end of the weld: no phase is ever shortened, maxima are judged with the
// longer end, and the record holds each bridge as an interval and each jump. The judge is the true
// time, which only the test knows (clock_faults.h). The rules, fixed before the code was: "a bridge
// over a reboot is an interval [lo, hi]: confirmed by a person, lo = hi = Δutc (0 to 12 h);
// unconfirmed or backwards, lo = 0, hi = max(Δutc, 0)"; "clock_jumped when |Δutc − Δboot| > 2 s
// between readings".
#include "tests/core/session/clock_faults.h"

#include "tests/support/sanitized.h"

#include <algorithm>
#include <array>
#include <gtest/gtest.h>
#include <string_view>

using namespace seamclock;
using namespace seamclock::test;
using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;
using Kind = Mishap::Kind;

namespace {

struct Fault {
    const char* name;
    std::vector<Mishap> mishaps;
    bool rebooted = false; // each word is tried
};

Mishap step(Milliseconds by, Milliseconds meanwhile = Milliseconds(700)) {
    return {Kind::StepWall, meanwhile, by, RebootWord::None};
}
Mishap offset(Milliseconds by) {
    return {Kind::ChangeOffset, Milliseconds(0), by, RebootWord::None};
}
Mishap suspend(Milliseconds time) {
    return {Kind::Suspend, time, Milliseconds(0), RebootWord::None};
}
Mishap kill(Milliseconds time, Milliseconds by = Milliseconds(0)) {
    return {Kind::Kill, time, by, RebootWord::None};
}
Mishap reboot(Milliseconds off, Milliseconds by = Milliseconds(0)) {
    return {Kind::Reboot, off, by, RebootWord::None};
}

std::vector<Fault> faults() {
    constexpr Milliseconds kDay = hours(24);
    constexpr Milliseconds kHour = hours(1);
    constexpr Milliseconds kTen = minutes(10);
    constexpr Milliseconds kCut = seconds(42);
    return {
        {"wall clock a day back", {step(-kDay)}},
        {"wall clock a day on", {step(kDay)}},
        {"wall clock an hour back", {step(-kHour)}},
        {"wall clock an hour on", {step(kHour)}},
        {"wall clock 2.000 s on", {step(Milliseconds(2'000))}},
        {"wall clock 2.001 s on", {step(Milliseconds(2'001))}},
        {"wall clock 2.001 s back", {step(Milliseconds(-2'001))}},
        {"summer time begins", {offset(kHour)}},
        {"summer time ends", {offset(-kHour)}},
        {"summer time begins, on a clock that is set by hand", {offset(kHour), step(kHour)}},
        {"summer time ends, on a clock that is set by hand", {offset(-kHour), step(-kHour)}},
        {"on and back again", {step(kDay), step(-kDay)}},
        {"suspended for an hour", {suspend(kHour)}},
        {"suspended, and the wall clock set meanwhile", {suspend(kHour), step(-kDay)}},
        {"killed", {kill(kCut)}},
        {"killed, and the wall clock set meanwhile", {kill(kCut, kDay)}},
        {"rebooted", {reboot(kCut)}, true},
        {"rebooted at once", {reboot(Milliseconds(0))}, true},
        {"rebooted, ten minutes behind", {reboot(kCut, -kTen)}, true},
        {"rebooted, a day behind", {reboot(kCut, -kDay)}, true},
        {"rebooted, ten minutes ahead", {reboot(kCut, kTen)}, true},
        {"rebooted, a day ahead", {reboot(kCut, kDay)}, true},
        {"off for an hour, half of it not counted by the clock", {reboot(kHour, -kHour / 2)}, true},
        {"off for twelve hours less a minute", {reboot(hours(12) - minutes(1))}, true},
        {"off for more than twelve hours", {reboot(hours(12) + seconds(1))}, true},
        {"off over the weekend", {reboot(hours(63))}, true},
        {"rebooted twice", {reboot(kCut), reboot(kCut)}, true},
        {"rebooted twice, ahead and back", {reboot(kCut, kDay), reboot(kCut, -kDay)}, true},
        {"rebooted, then the wall clock steps on", {reboot(kCut), step(kDay)}, true},
        {"rebooted, then the wall clock steps back", {reboot(kCut), step(-kDay)}, true},
        {"rebooted a day behind, then put right", {reboot(kCut, -kDay), step(kDay)}, true},
        {"the wall clock steps, then a reboot", {step(kDay), reboot(kCut)}, true},
        {"the wall clock steps, a kill, then a reboot",
         {step(-kHour), kill(kCut), reboot(kCut)},
         true},
    };
}

const std::array kPhases{"preparing",   "aligning", "soaking",   "changing_over",
                         "building_up", "cooling",  "releasing", "inspecting"};

const char* nameOf(RebootWord word) {
    switch (word) {
    case RebootWord::None:
        return "no word";
    case RebootWord::GoOnConfirmed:
        return "confirmed";
    case RebootWord::GoOnUnconfirmed:
        return "unconfirmed";
    case RebootWord::Abort:
        return "abort";
    }
    return "";
}

} // namespace

class EveryPhase : public ::testing::TestWithParam<const char*> {};

TEST_P(EveryPhase, IsNeverShortenedByAnyFaultOfAClock) {
    const auto turn = static_cast<std::size_t>(
        std::find(kPhases.begin(), kPhases.end(), std::string_view(GetParam())) - kPhases.begin());
    const ScratchFolder folder;
    Shop shop(folder.file("shop.seamlog"));
    std::vector<Fault> all = faults();
    for (std::size_t i = 0; i < all.size() && !HasFailure(); ++i) {
        std::vector<RebootWord> words{RebootWord::None};
        if (all[i].rebooted) { // each word in some phases; by chance in all of them, below
            constexpr std::array kWords{
                RebootWord::GoOnConfirmed, RebootWord::GoOnUnconfirmed, RebootWord::Abort};
            words.push_back(kWords[(i + turn) % kWords.size()]);
        }
        for (const RebootWord word : words) {
            SCOPED_TRACE(std::string(all[i].name) + ", " + nameOf(word));
            std::vector<Mishap> mishaps = all[i].mishaps;
            mishaps.back().word = word;
            // Half a second into changeover and build-up, which last seconds.
            const std::string phase = GetParam();
            const bool brief = phase == "changing_over" || phase == "building_up";
            const Milliseconds after = brief ? Milliseconds(1'200) : Milliseconds(31'500);
            const bool timed = phase == "aligning" || phase == "soaking" || phase == "cooling";
            Welder welder(
                shop, i % 2, {{phase, brief || timed ? after : Milliseconds(3'000), mishaps}}, i,
                false);
            ASSERT_TRUE(welder.weldOn());
            shop.judge(welder.id());
            if (HasFailure()) {
                break;
            }
        }
    }
    shop.judgeLog();
}

INSTANTIATE_TEST_SUITE_P(ClockFault, EveryPhase, ::testing::ValuesIn(kPhases), [](const auto& one) {
    return std::string(one.param);
});

TEST(ClockFaults, ByChanceShortenNoPhaseInFiveHundredMishaps) {
    befallByChance(rounds(500), 20'300'331);
}
