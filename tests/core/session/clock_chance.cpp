#include "tests/core/session/clock_faults.h"

#include <array>
#include <cstdio>
#include <gtest/gtest.h>

namespace seamclock::test {

namespace {

using std::chrono::hours;
using std::chrono::minutes;
using std::chrono::seconds;

const std::array kPhaseNames{"preparing",   "aligning", "soaking",   "changing_over",
                             "building_up", "cooling",  "releasing", "inspecting"};

class Fate {
public:
    explicit Fate(std::uint64_t seed) : m_random(seed) {}

    std::size_t below(std::size_t end) { return m_random() % end; }
    Milliseconds upTo(Milliseconds most) {
        return Milliseconds(
            static_cast<std::int64_t>(m_random() % (static_cast<std::uint64_t>(most.count()) + 1)));
    }
    Milliseconds eitherWay(Milliseconds most) {
        return m_random() % 2 == 0 ? upTo(most) : -upTo(most);
    }
    Mishap mishap() {
        // Around the tolerance, minutes, hours, days.
        const std::array<Milliseconds, 4> sizes{seconds(3), minutes(10), hours(2), hours(30)};
        const std::array words{
            RebootWord::None, RebootWord::GoOnConfirmed, RebootWord::GoOnUnconfirmed};
        Mishap made;
        made.kind =
            std::array{Mishap::Kind::StepWall, Mishap::Kind::StepWall, Mishap::Kind::ChangeOffset,
                       Mishap::Kind::Suspend,  Mishap::Kind::Kill,     Mishap::Kind::Reboot,
                       Mishap::Kind::Reboot}[below(7)];
        made.time = upTo(sizes[below(3)]);
        made.error = below(3) == 0 ? Milliseconds(0) : eitherWay(sizes[below(4)]);
        if (made.kind == Mishap::Kind::ChangeOffset) {
            made.error = hours(1) * (static_cast<int>(below(3)) - 1);
        }
        made.word = words[below(3)];
        return made;
    }

private:
    std::mt19937_64 m_random;
};

} // namespace

void befallByChance(int atLeast, std::uint64_t seed) {
    const ScratchFolder folder;
    Shop shop(folder.file("shop.seamlog"));
    Fate fate(seed);
    int mishaps = 0;
    int welds = 0;
    for (; mishaps < atLeast && !::testing::Test::HasFailure(); ++welds) {
        std::vector<Planned> planned;
        const std::size_t count = 1 + fate.below(6);
        for (std::size_t i = 0; i < count; ++i) {
            // Mostly where the time is counted.
            const std::size_t phase = fate.below(2) == 0 ? 5 : fate.below(kPhaseNames.size());
            Planned one{kPhaseNames[phase], fate.upTo(phase == 5 ? minutes(15) : seconds(70)), {}};
            for (std::size_t k = fate.below(4) == 0 ? 2 : 1; k > 0; --k) {
                one.mishaps.push_back(fate.mishap());
                ++mishaps;
            }
            planned.push_back(one);
        }
        SCOPED_TRACE("weld " + std::to_string(welds + 1));
        Welder welder(shop, fate.below(2), planned, fate.below(1'000'000), fate.below(3) == 0);
        welder.weldOn(); // a hasty one may be through before a mishap comes
        shop.judge(welder.id());
    }
    shop.judgeLog();
    std::printf("%d welds, %d mishaps planned\n", welds, mishaps);
}

} // namespace seamclock::test
