#include "core/vbench/hand_moves.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr Milliseconds kLook{40}; // how often a hand that turns looks at the scale
constexpr Milliseconds kLongestTurn{60'000};
constexpr double kFastMmPerS = 25; // tables apart and together
constexpr double kSlamMmPerS = 40;
constexpr Milliseconds kRunsOn{500};   // before arms that turn so fast have stopped
constexpr Milliseconds kLooksUp{1000}; // and before the scale has been read
constexpr double kCreepsMmPerS = 1;    // where there is no reading to go by
constexpr double kGentleMmPerS = 3;    // the last of it
constexpr double kNearMm = 1.5;
constexpr double kEyes = 0.05;    // of a division: where the hand is content
constexpr double kSettleS = 0.12; // within which it would be at its reading

std::int64_t umPerS(double mmPerS) {
    return std::llround(mmPerS * 1e3);
}

} // namespace

double leastOf(const BenchView& view, double StationView::*field) {
    double found = view.stations.front().*field;
    for (const StationView& station : view.stations) {
        found = std::min(found, station.*field);
    }
    return found;
}

bool anyTouches(const BenchView& view) {
    return std::any_of(view.stations.begin(), view.stations.end(), [](const StationView& each) {
        return each.touches != Touches::Nothing;
    });
}

double HandMoves::mmPerUnit() const {
    const SpringScale& scale = m_bench->setup().bench.scale;
    return inNewtons(scale.rate()) / inNewtons(*scale.ratePerMillimetre());
}

Result<void> HandMoves::turnTo(double reading, double mmPerS, bool touching) {
    const SpringScale& scale = m_bench->setup().bench.scale;
    const double enough = kEyes * static_cast<double>(scale.divisionMilli) / 1e3;
    const Milliseconds until = m_bench->now() + kLongestTurn;
    while (m_bench->now() < until) {
        const BenchView view = m_bench->view();
        const double missing = reading - view.scale.reading;
        if (std::fabs(missing) <= enough || (touching && !anyTouches(view))) {
            break;
        }
        const double speed = std::clamp(missing * mmPerUnit() / kSettleS, -mmPerS, mmPerS);
        if (auto ok = m_bench->act(TurnWheel{umPerS(speed)}); !ok) {
            return ok;
        }
        m_bench->advance(kLook);
    }
    return m_bench->act(TurnWheel{0});
}

Result<void> HandMoves::approach() {
    double speed = 0;
    for (const Milliseconds until = m_bench->now() + kLongestTurn; m_bench->now() < until;) {
        const BenchView view = m_bench->view();
        if (anyTouches(view)) {
            break;
        }
        const double wanted =
            leastOf(view, &StationView::gapMm) > kNearMm ? kFastMmPerS : kGentleMmPerS;
        if (wanted != speed) {
            speed = wanted;
            if (auto ok = m_bench->act(TurnWheel{umPerS(speed)}); !ok) {
                return ok;
            }
        }
        m_bench->advance(kLook);
    }
    return m_bench->act(TurnWheel{0});
}

Result<void> HandMoves::apart(double mm) {
    if (auto ok = m_bench->act(TurnWheel{umPerS(-kFastMmPerS)}); !ok) {
        return ok;
    }
    for (const Milliseconds until = m_bench->now() + kLongestTurn; m_bench->now() < until;) {
        if (leastOf(m_bench->view(), &StationView::gapMm) >= mm) {
            break;
        }
        m_bench->advance(kLook);
    }
    return m_bench->act(TurnWheel{0});
}

Result<void> HandMoves::slam(double set) {
    if (auto ok = m_bench->act(TurnWheel{umPerS(kSlamMmPerS)}); !ok) {
        return ok;
    }
    for (const Milliseconds until = m_bench->now() + kLongestTurn;
         m_bench->now() < until && m_bench->view().scale.reading < set;) {
        m_bench->advance(kLook);
    }
    m_bench->advance(kRunsOn);
    if (auto ok = m_bench->act(TurnWheel{0}); !ok) {
        return ok;
    }
    m_bench->advance(kLooksUp);
    return {};
}

Result<void> HandMoves::inContact() {
    if (anyTouches(m_bench->view())) {
        return {};
    }
    if (auto ok = m_bench->act(TurnWheel{umPerS(kCreepsMmPerS)}); !ok) {
        return ok;
    }
    for (const Milliseconds until = m_bench->now() + kLongestTurn;
         m_bench->now() < until && !anyTouches(m_bench->view());) {
        m_bench->advance(kLook);
    }
    // What the drag took of the way in it would hold on to, once the edge swells: back by so much.
    const SpringScale& scale = m_bench->setup().bench.scale;
    const double backMm = m_bench->setup().dragN / inNewtons(*scale.ratePerMillimetre());
    if (auto ok = m_bench->act(TurnWheel{umPerS(-kCreepsMmPerS)}); !ok) {
        return ok;
    }
    m_bench->advance(Milliseconds(std::llround(backMm / kCreepsMmPerS * 1e3)));
    return m_bench->act(TurnWheel{0});
}

Result<void> HandMoves::follow(double set) {
    // A hand does not turn for what its eye can't see.
    const double division = static_cast<double>(m_bench->setup().bench.scale.divisionMilli) / 1e3;
    if (m_bench->view().scale.reading > set - division / 2) {
        return {};
    }
    return turnTo(set, kTurnMmPerS);
}

Result<void> HandMoves::raise(double set, Milliseconds lasts) {
    const Milliseconds from = m_bench->now();
    const double start = m_bench->view().scale.reading;
    while (m_bench->now() - from < lasts) {
        const double share = static_cast<double>((m_bench->now() - from + kLook).count()) /
                             static_cast<double>(lasts.count());
        const double missing = start + (set - start) * share - m_bench->view().scale.reading;
        const double speed =
            std::clamp(missing * mmPerUnit() / kSettleS, -kTurnMmPerS, kFastMmPerS);
        if (auto ok = m_bench->act(TurnWheel{umPerS(speed)}); !ok) {
            return ok;
        }
        m_bench->advance(kLook);
    }
    return m_bench->act(TurnWheel{0});
}

} // namespace seamclock
