#include "core/practice/hand.h"

#include <algorithm>
#include <array>

namespace seamclock {
namespace {

using std::chrono::seconds;

/// One after the other, each with its own chance.
class Slipping {
public:
    explicit Slipping(const Hand& hand) : m_chance(hand.seed), m_skill(hand.skill) {}

    /// `atNone`: permille of the welds of a hand without any skill; it falls with the square.
    bool slips(std::string_view name, std::int64_t atNone) const {
        const std::int64_t lacks = 100 - m_skill;
        const std::int64_t permille = atNone * lacks * lacks / 10'000;
        return m_chance.even("slip_" + std::string(name), 0, 999) < permille;
    }
    std::int64_t size(std::string_view name, std::int64_t low, std::int64_t high) const {
        return m_chance.around("slip_size_" + std::string(name), low, high);
    }
    Milliseconds time(std::string_view name, Milliseconds low, Milliseconds high) const {
        return Milliseconds(size(name, low.count(), std::max(low, high).count()));
    }

private:
    Chance m_chance;
    int m_skill;
};

void slipInTime(const Slipping& slip, const WeldPlan& plan, RehearseFaults& faults) {
    const auto some = [&](const char* name, std::int64_t permille, Milliseconds low,
                          Milliseconds high, std::optional<Milliseconds>& target) {
        if (!target && slip.slips(name, permille)) {
            target = slip.time(name, low, high);
        }
    };
    const Milliseconds soak = plan.soak->target;
    const bool soakAsked = faults.shortSoak || faults.longSoak || faults.phoneCall;
    if (!soakAsked) {
        some("short_soak", 150, Milliseconds(500), soak / 12, faults.shortSoak);
        if (!faults.shortSoak) {
            some("long_soak", 150, seconds(2), soak / 3, faults.longSoak);
        }
    }
    some("late_changeover", 250, Milliseconds(100), seconds(3), faults.lateChangeover);
    const Milliseconds build = plan.buildUp->target;
    some("slow_build_up", 200, build / 5, build, faults.slowBuildUp);
    const Milliseconds cooling = plan.cooling->atLeast;
    some("early_release", 100, cooling / 50, cooling / 4, faults.earlyRelease);
    if (soak >= seconds(20)) {
        some("backdate", 80, seconds(1), seconds(4), faults.backdate);
    }
}

void slipAtBench(const Slipping& slip, RehearseFaults& faults) {
    const auto flag = [&](const char* name, std::int64_t permille, bool& target) {
        target = target || slip.slips(name, permille);
    };
    if (!faults.soakPressed && !faults.backedOffUm && !faults.clockFromContact) {
        flag("soak_pressed", 100, faults.soakPressed);
        if (!faults.soakPressed && slip.slips("backed_off", 80)) {
            faults.backedOffUm = slip.size("backed_off", 2, 8) * 100;
        }
    }
    if (!faults.slowBuildUp && faults.lowReading == RehearseFaults::LowReading::None) {
        flag("slammed", 120, faults.slammed);
    }
    flag("film_left", 60, faults.filmLeft);
    flag("plate_dirty", 80, faults.plateDirty);
    if (!faults.offParallelUm && slip.slips("off_parallel", 100)) {
        faults.offParallelUm = slip.size("off_parallel", 5, 25) * 100;
    }
    if (!faults.touchedPermille && slip.slips("touched_edge", 120)) {
        faults.touchedPermille = slip.size("touched_edge", 0, 1000);
    }
}

} // namespace

Milliseconds HandChance::draw(std::string_view name, Milliseconds low, Milliseconds high) const {
    return Milliseconds(m_chance.around(name, low.count(), high.count()));
}

Milliseconds
HandChance::handTime(std::string_view name, Milliseconds low, Milliseconds high) const {
    return draw(name, low, high) * m_percent / 100 * (100 + unskilled(50)) / 100;
}

std::int64_t HandChance::misreading(std::string_view name) const {
    const std::string own = "misread_" + std::string(name);
    if (m_chance.even(own, 0, 99) >= unskilled(60)) {
        return 0;
    }
    return m_chance.even(own + "_by", 0, 1) == 0 ? -1 : 1;
}

std::int64_t HandChance::changeoverShare() const {
    return m_chance.around("changeover", 55, 85 + unskilled(50));
}

std::int64_t HandChance::buildUpShare() const {
    return m_chance.around("build_up", 85 - unskilled(50), 110 + unskilled(50));
}

Milliseconds HandChance::plateOutLag(const TimeBand& soak) const {
    // Who is perfect does it within what there is, however short the soak.
    const Milliseconds room = soak.high - soak.target;
    const Milliseconds low = std::min(Milliseconds(200), room / 4);
    const Milliseconds high = std::min(Milliseconds(900), room * 3 / 4);
    return draw("plate_out", low, high + Milliseconds(unskilled(4000)));
}

std::pair<Milliseconds, Milliseconds> timeForCheck(std::string_view check) {
    struct Row {
        std::string_view check;
        seconds low;
        seconds high;
    };
    static constexpr std::array kRows{Row{"plate_warm", seconds(5), seconds(15)},
                                      Row{"plate_temperature", seconds(20), seconds(45)},
                                      Row{"scale_zero", seconds(4), seconds(10)},
                                      Row{"sound_heard", seconds(2), seconds(5)},
                                      Row{"drag", seconds(15), seconds(40)},
                                      Row{"film_off", seconds(10), seconds(40)},
                                      Row{"edges_planed", seconds(40), seconds(120)},
                                      Row{"plate_wiped", seconds(8), seconds(20)},
                                      Row{"gap", seconds(10), seconds(25)},
                                      Row{"first_sheet", seconds(25), seconds(60)},
                                      Row{"clamping_gap", seconds(8), seconds(20)},
                                      Row{"second_sheet", seconds(25), seconds(60)},
                                      Row{"edges_meet", seconds(10), seconds(30)}};
    for (const Row& row : kRows) {
        if (row.check == check) {
            return {row.low, row.high};
        }
    }
    return {seconds(5), seconds(15)};
}

RehearseFaults withSlips(const Hand& hand, const WeldPlan& plan, bool bench) {
    RehearseFaults faults = hand.faults;
    if (hand.skill >= kPerfect) {
        return faults;
    }
    const Slipping slip(hand);
    slipInTime(slip, plan, faults);
    const auto flag = [&](const char* name, std::int64_t permille, bool& target) {
        target = target || slip.slips(name, permille);
    };
    flag("missed_recheck", 250, faults.missedRecheck);
    flag("thin_bead", 120, faults.thinBead);
    flag("misaligned", 60, faults.misaligned);
    flag("take_back", 80, faults.takeBack);
    if (faults.lowReading == RehearseFaults::LowReading::None) {
        if (slip.slips("low_corrected", 250)) {
            faults.lowReading = RehearseFaults::LowReading::Corrected;
        } else if (slip.slips("left_low", 60)) {
            faults.lowReading = RehearseFaults::LowReading::LeftLow;
        }
    }
    if (bench) {
        slipAtBench(slip, faults);
    }
    return faults;
}

} // namespace seamclock
