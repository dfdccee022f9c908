#include "core/vbench/steady_hand.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace seamclock {
namespace {

// No bead by then: it will not come.
constexpr Milliseconds kLongestAlignment{1'800'000};
constexpr Milliseconds kLooksAgain{30'000};

Result<void> lacking(const char* what) {
    return fail(ErrorCode::Missing, std::string("the plan lacks ") + what);
}

} // namespace

double SteadyHand::bead() const {
    const BenchView view = m_bench.view();
    double smallest = view.stations.front().beadTopMm;
    double largest = 0;
    for (const StationView& station : view.stations) {
        smallest = std::min(smallest, station.beadTopMm);
        if (!m_faults.topBeadOnly) {
            smallest = std::min(smallest, station.beadBottomMm);
        }
        largest = std::max({largest, station.beadTopMm, station.beadBottomMm});
    }
    return m_faults.firstBeadOnly ? largest : smallest;
}

Result<void> SteadyHand::prepare() {
    std::vector<BenchAct> acts;
    if (!m_faults.plateNotWiped) {
        acts.push_back(WipePlate{});
    }
    for (int sheet = 0; sheet < 2; ++sheet) {
        if (!m_faults.filmLeft) {
            acts.push_back(TakeFilmOff{sheet});
        }
        if (!m_faults.notPlaned) {
            acts.push_back(PlaneEdge{sheet});
        }
    }
    acts.push_back(SetGap{plan().gapUm, plan().gapUm});
    acts.push_back(ClampSheet{0, 0, 0, 0});
    acts.push_back(SetGap{plan().clampingGapUm, plan().clampingGapUm});
    acts.push_back(ClampSheet{1, m_faults.leftUm, m_faults.rightUm, m_faults.leanUm});
    if (m_faults.touched) {
        acts.push_back(TouchEdge{1, *m_faults.touched});
    }
    for (const BenchAct& act : acts) {
        if (auto ok = m_bench.act(act); !ok) {
            return ok;
        }
        m_bench.advance(Milliseconds(1000));
    }
    return {};
}

Result<void> SteadyHand::align() {
    if (!plan().beadMinUm) {
        return lacking("the alignment bead");
    }
    if (auto ok = m_moves.apart(kPlateRoomMm); !ok) {
        return ok;
    }
    if (auto ok = m_bench.act(BringPlateIn{}); !ok) {
        return ok;
    }
    m_bench.advance(Milliseconds(1000));
    if (auto ok = m_moves.approach(); !ok) {
        return ok;
    }
    const Milliseconds from = m_bench.now();
    const double set = static_cast<double>(plan().scale->alignment.setMilli) / 1e3;
    const double wanted = static_cast<double>(*plan().beadMinUm) / 1e3;
    while (m_bench.now() - from < kLongestAlignment) {
        if (m_faults.alignFor ? m_bench.now() - from >= *m_faults.alignFor : bead() >= wanted) {
            break;
        }
        if (auto ok = m_moves.follow(set); !ok) {
            return ok;
        }
        m_bench.advance(kFollows);
    }
    m_times.alignment = m_bench.now() - from;
    return {};
}

Result<void> SteadyHand::soak() {
    if (!plan().soak) {
        return lacking("the soak time");
    }
    const ReadingBand& band =
        m_faults.soakUnderPressure ? plan().scale->alignment : plan().scale->soak;
    const double set = static_cast<double>(band.setMilli) / 1e3;
    if (auto ok = m_moves.turnTo(set, kTurnMmPerS, true); !ok) {
        return ok;
    }
    if (m_faults.backedOffUm) {
        if (auto ok = m_moves.apart(static_cast<double>(*m_faults.backedOffUm) / 1e3); !ok) {
            return ok;
        }
    } else if (auto ok = m_moves.inContact(); !ok) {
        return ok;
    }
    const Milliseconds from = m_bench.now();
    const Milliseconds until = from + m_faults.soakFor.value_or(plan().soak->target);
    while (m_bench.now() < until) {
        if (!m_faults.backedOffUm) {
            // An edge that swells presses back.
            const bool over = m_bench.view().scale.seenMilli > band.highMilli;
            if (auto ok = over ? m_moves.turnTo(set, kTurnMmPerS, true) : m_moves.follow(set);
                !ok) {
                return ok;
            }
            if (auto ok = m_moves.inContact(); !ok) {
                return ok;
            }
        }
        m_bench.advance(std::min(kFollows, std::max(until - m_bench.now(), Milliseconds(0))));
    }
    m_times.soak = m_bench.now() - from;
    return {};
}

Result<void> SteadyHand::changeOver() {
    const Milliseconds began = m_bench.now();
    if (!m_faults.plateOutPressed) {
        if (auto ok = m_moves.apart(kPlateOffMm); !ok) {
            return ok;
        }
    }
    if (auto ok = m_bench.act(TakePlateOut{}); !ok) {
        return ok;
    }
    m_bench.advance(Milliseconds(720));
    const auto left = m_bench.view().instants.plateLeft;
    const Milliseconds from = std::max(began, left.value_or(m_bench.now()));
    if (m_faults.changeover) {
        // What is left to close takes about so long.
        const Milliseconds closing{800};
        m_bench.advance(from + *m_faults.changeover - closing - m_bench.now());
    }
    if (auto ok = m_moves.approach(); !ok) {
        return ok;
    }
    m_times.changeover = m_bench.view().instants.facesMet.value_or(m_bench.now()) - from;
    return {};
}

Result<void> SteadyHand::buildUp() {
    if (!plan().buildUp) {
        return lacking("the build-up time");
    }
    const Milliseconds from = m_bench.now();
    const double set = static_cast<double>(plan().scale->joining.setMilli) / 1e3;
    if (m_faults.slammed) {
        if (auto ok = m_moves.slam(set); !ok) {
            return ok;
        }
    } else {
        if (auto ok = m_moves.raise(set, plan().buildUp->target); !ok) {
            return ok;
        }
    }
    if (auto ok = m_moves.turnTo(set, kTurnMmPerS); !ok) {
        return ok;
    }
    m_times.buildUp = m_bench.now() - from;
    return m_bench.act(LockWheel{});
}

Result<void> SteadyHand::cool() {
    if (!plan().cooling) {
        return lacking("the cooling time");
    }
    const Milliseconds from = m_bench.now();
    const Milliseconds until = from + m_faults.coolFor.value_or(plan().cooling->atLeast);
    if (m_faults.letBackAfter) {
        m_bench.advance(*m_faults.letBackAfter);
        if (auto ok = m_bench.act(LetSpringOff{}); !ok) {
            return ok;
        }
        m_bench.advance(until - m_bench.now());
        m_times.cooling = m_bench.now() - from;
        return {};
    }
    // Early, while it falls fastest, and then as the plan has it.
    std::vector<Milliseconds> looks{
        Milliseconds(5'000), Milliseconds(15'000), Milliseconds(30'000)};
    looks.insert(looks.end(), plan().cooling->rechecks.begin(), plan().cooling->rechecks.end());
    const ReadingBand& band = plan().scale->joining;
    std::sort(looks.begin(), looks.end());
    while (!m_faults.noTopUp && !looks.empty() && from + looks.front() < until) {
        const Milliseconds look = looks.front();
        looks.erase(looks.begin());
        m_bench.advance(from + look - m_bench.now());
        if (m_bench.view().scale.seenMilli >= band.lowMilli) {
            continue;
        }
        // What fell so late will fall again.
        const Milliseconds again = look + kLooksAgain;
        if (look >= kLooksAgain && (looks.empty() || looks.front() > again)) {
            looks.insert(looks.begin(), again);
        }
        if (auto ok = m_bench.act(UnlockWheel{}); !ok) {
            return ok;
        }
        if (auto ok = m_moves.turnTo(static_cast<double>(band.setMilli) / 1e3, kTurnMmPerS); !ok) {
            return ok;
        }
        if (auto ok = m_bench.act(LockWheel{}); !ok) {
            return ok;
        }
    }
    m_bench.advance(until - m_bench.now());
    m_times.cooling = m_bench.now() - from;
    return {};
}

Result<void> SteadyHand::release() {
    for (const std::string& step : m_bench.setup().plan.releaseOrder) {
        Result<void> done;
        if (step == "clamps_eased") {
            done = m_bench.act(EaseClamps{});
        } else if (step == "bars_opened") {
            done = m_bench.act(OpenBars{});
        } else if (step == "spring_off") {
            done = m_bench.act(LetSpringOff{});
        } else if (step == "sheet_out") {
            if (!m_bench.view().barsOpen) { // the bench's list need not name them
                done = m_bench.act(OpenBars{});
            }
            if (done) {
                done = m_bench.act(LiftSheet{});
            }
        } else {
            return fail(
                ErrorCode::OutOfRange,
                "the release step is \"" + step +
                    "\"; allowed: clamps_eased, bars_opened, spring_off, sheet_out");
        }
        if (!done) {
            return done;
        }
        m_bench.advance(Milliseconds(5000));
    }
    return {};
}

Result<void> SteadyHand::weld() {
    for (Result<void> (SteadyHand::*phase)() :
         {&SteadyHand::prepare, &SteadyHand::align, &SteadyHand::soak, &SteadyHand::changeOver,
          &SteadyHand::buildUp, &SteadyHand::cool, &SteadyHand::release}) {
        if (auto ok = (this->*phase)(); !ok) {
            return ok;
        }
    }
    return {};
}

} // namespace seamclock
