#include "core/vbench/steady_hand.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace seamclock {
namespace {

constexpr Milliseconds kLook{40};     // how often a hand that turns looks at the scale
constexpr Milliseconds kFollows{500}; // likewise one that follows the melt
constexpr Milliseconds kLongestTurn{60'000};
constexpr Milliseconds kLongestAlignment{1'800'000}; // no bead by then: it will not come
constexpr double kFastMmPerS = 25;                   // tables apart and together
constexpr double kSlamMmPerS = 40;
constexpr Milliseconds kRunsOn{500};   // before arms that turn so fast have stopped
constexpr Milliseconds kLooksUp{1000}; // and before the scale has been read
constexpr double kGentleMmPerS = 3;    // the last of it
constexpr Milliseconds kLooksAgain{30'000};
constexpr double kCreepsMmPerS = 1; // where there is no reading to go by
constexpr double kPlateRoomMm = 16; // so far apart before the plate comes in
constexpr double kPlateOffMm = 1.5; // from each face before it goes out
constexpr double kNearMm = 1.5;
constexpr double kTurnMmPerS = 6; // to a reading
constexpr double kEyes = 0.05;    // of a division: where the hand is content
constexpr double kSettleS = 0.12; // within which it would be at its reading

std::int64_t umPerS(double mmPerS) {
    return std::llround(mmPerS * 1e3);
}

double least(const BenchView& view, double StationView::*field) {
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

Result<void> lacking(const char* what) {
    return fail(ErrorCode::Missing, std::string("the plan lacks ") + what);
}

} // namespace

Result<void> SteadyHand::turnTo(double reading, double mmPerS, bool touching) {
    const SpringScale& scale = m_bench.setup().bench.scale;
    const double mmPerUnit = inNewtons(scale.rate()) / inNewtons(*scale.ratePerMillimetre());
    const double enough = kEyes * static_cast<double>(scale.divisionMilli) / 1e3;
    const Milliseconds until = m_bench.now() + kLongestTurn;
    while (m_bench.now() < until) {
        const BenchView view = m_bench.view();
        const double missing = reading - view.scale.reading;
        if (std::fabs(missing) <= enough || (touching && !anyTouches(view))) {
            break;
        }
        const double speed = std::clamp(missing * mmPerUnit / kSettleS, -mmPerS, mmPerS);
        if (auto ok = m_bench.act(TurnWheel{umPerS(speed)}); !ok) {
            return ok;
        }
        m_bench.advance(kLook);
    }
    return m_bench.act(TurnWheel{0});
}

Result<void> SteadyHand::approach() {
    double speed = 0;
    for (const Milliseconds until = m_bench.now() + kLongestTurn; m_bench.now() < until;) {
        const BenchView view = m_bench.view();
        if (anyTouches(view)) {
            break;
        }
        const double wanted =
            least(view, &StationView::gapMm) > kNearMm ? kFastMmPerS : kGentleMmPerS;
        if (wanted != speed) {
            speed = wanted;
            if (auto ok = m_bench.act(TurnWheel{umPerS(speed)}); !ok) {
                return ok;
            }
        }
        m_bench.advance(kLook);
    }
    return m_bench.act(TurnWheel{0});
}

Result<void> SteadyHand::apart(double mm) {
    if (auto ok = m_bench.act(TurnWheel{umPerS(-kFastMmPerS)}); !ok) {
        return ok;
    }
    for (const Milliseconds until = m_bench.now() + kLongestTurn; m_bench.now() < until;) {
        if (least(m_bench.view(), &StationView::gapMm) >= mm) {
            break;
        }
        m_bench.advance(kLook);
    }
    return m_bench.act(TurnWheel{0});
}

Result<void> SteadyHand::inContact() {
    if (anyTouches(m_bench.view())) {
        return {};
    }
    if (auto ok = m_bench.act(TurnWheel{umPerS(kCreepsMmPerS)}); !ok) {
        return ok;
    }
    for (const Milliseconds until = m_bench.now() + kLongestTurn;
         m_bench.now() < until && !anyTouches(m_bench.view());) {
        m_bench.advance(kLook);
    }
    // What the drag took of the way in it would hold on to, once the edge swells: back by so much.
    const SpringScale& scale = m_bench.setup().bench.scale;
    const double backMm = m_bench.setup().dragN / inNewtons(*scale.ratePerMillimetre());
    if (auto ok = m_bench.act(TurnWheel{umPerS(-kCreepsMmPerS)}); !ok) {
        return ok;
    }
    m_bench.advance(Milliseconds(std::llround(backMm / kCreepsMmPerS * 1e3)));
    return m_bench.act(TurnWheel{0});
}

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
    if (auto ok = apart(kPlateRoomMm); !ok) {
        return ok;
    }
    if (auto ok = m_bench.act(BringPlateIn{}); !ok) {
        return ok;
    }
    m_bench.advance(Milliseconds(1000));
    if (auto ok = approach(); !ok) {
        return ok;
    }
    const Milliseconds from = m_bench.now();
    const double set = static_cast<double>(plan().scale->alignment.setMilli) / 1e3;
    const double wanted = static_cast<double>(*plan().beadMinUm) / 1e3;
    while (m_bench.now() - from < kLongestAlignment) {
        if (m_faults.alignFor ? m_bench.now() - from >= *m_faults.alignFor : bead() >= wanted) {
            break;
        }
        if (auto ok = follow(set); !ok) {
            return ok;
        }
        m_bench.advance(kFollows);
    }
    m_times.alignment = m_bench.now() - from;
    return {};
}

Result<void> SteadyHand::follow(double set) {
    // A hand does not turn for what its eye can't see.
    const double division = static_cast<double>(m_bench.setup().bench.scale.divisionMilli) / 1e3;
    if (m_bench.view().scale.reading > set - division / 2) {
        return {};
    }
    return turnTo(set, kTurnMmPerS);
}

Result<void> SteadyHand::soak() {
    if (!plan().soak) {
        return lacking("the soak time");
    }
    const ReadingBand& band =
        m_faults.soakUnderPressure ? plan().scale->alignment : plan().scale->soak;
    const double set = static_cast<double>(band.setMilli) / 1e3;
    if (auto ok = turnTo(set, kTurnMmPerS, true); !ok) {
        return ok;
    }
    if (m_faults.backedOffUm) {
        if (auto ok = apart(static_cast<double>(*m_faults.backedOffUm) / 1e3); !ok) {
            return ok;
        }
    } else if (auto ok = inContact(); !ok) {
        return ok;
    }
    const Milliseconds from = m_bench.now();
    const Milliseconds until = from + m_faults.soakFor.value_or(plan().soak->target);
    while (m_bench.now() < until) {
        if (!m_faults.backedOffUm) {
            // An edge that swells presses back.
            const bool over = m_bench.view().scale.seenMilli > band.highMilli;
            if (auto ok = over ? turnTo(set, kTurnMmPerS, true) : follow(set); !ok) {
                return ok;
            }
            if (auto ok = inContact(); !ok) {
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
        if (auto ok = apart(kPlateOffMm); !ok) {
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
    if (auto ok = approach(); !ok) {
        return ok;
    }
    m_times.changeover = m_bench.view().instants.facesMet.value_or(m_bench.now()) - from;
    return {};
}

/// As fast as the wheel goes, past the reading, and looked at when it has stopped.
Result<void> SteadyHand::slam(double set) {
    if (auto ok = m_bench.act(TurnWheel{umPerS(kSlamMmPerS)}); !ok) {
        return ok;
    }
    for (const Milliseconds until = m_bench.now() + kLongestTurn;
         m_bench.now() < until && m_bench.view().scale.reading < set;) {
        m_bench.advance(kLook);
    }
    m_bench.advance(kRunsOn);
    if (auto ok = m_bench.act(TurnWheel{0}); !ok) {
        return ok;
    }
    m_bench.advance(kLooksUp);
    return {};
}

Result<void> SteadyHand::buildUp() {
    if (!plan().buildUp) {
        return lacking("the build-up time");
    }
    const Milliseconds from = m_bench.now();
    const double set = static_cast<double>(plan().scale->joining.setMilli) / 1e3;
    const double start = m_bench.view().scale.reading;
    if (m_faults.slammed) {
        if (auto ok = slam(set); !ok) {
            return ok;
        }
    } else {
        for (const Milliseconds target = plan().buildUp->target; m_bench.now() - from < target;) {
            const double share = static_cast<double>((m_bench.now() - from + kLook).count()) /
                                 static_cast<double>(target.count());
            const SpringScale& scale = m_bench.setup().bench.scale;
            const double mmPerUnit =
                inNewtons(scale.rate()) / inNewtons(*scale.ratePerMillimetre());
            const double missing = start + (set - start) * share - m_bench.view().scale.reading;
            const double speed =
                std::clamp(missing * mmPerUnit / kSettleS, -kTurnMmPerS, kFastMmPerS);
            if (auto ok = m_bench.act(TurnWheel{umPerS(speed)}); !ok) {
                return ok;
            }
            m_bench.advance(kLook);
        }
    }
    if (auto ok = turnTo(set, kTurnMmPerS); !ok) {
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
        if (auto ok = turnTo(static_cast<double>(band.setMilli) / 1e3, kTurnMmPerS); !ok) {
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
