#include "core/base/overloaded.h"
#include "core/vbench/bench_numbers.h"
#include "core/vbench/bench_state.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

using namespace act_limits;
using namespace bench_numbers;

std::string number(double value, int digits = 1) {
    std::string text = std::to_string(value);
    return text.substr(0, text.find('.') + 1 + static_cast<std::size_t>(digits));
}

Result<void> refuse(std::string why) {
    return fail(ErrorCode::Refused, std::move(why));
}

Result<void> within(
    std::int64_t value, std::int64_t low, std::int64_t high, const char* what, const char* unit) {
    if (value >= low && value <= high) {
        return {};
    }
    return fail(
        ErrorCode::OutOfRange, std::string(what) + " is " + std::to_string(value) + " " + unit +
                                   "; allowed: " + std::to_string(low) + " to " +
                                   std::to_string(high) + " " + unit);
}

/// One act upon a bench, by its kind.
class Doing {
public:
    Doing(const BenchFixed& fixed, BenchState& state) : m_fixed(fixed), m_state(state) {}

    Result<void> operator()(const SetPlate& act) {
        if (auto ok = within(act.targetMc, 0, kHottestMc, "the plate's target", "m°C"); !ok) {
            return ok;
        }
        m_state.plate.setTarget(static_cast<double>(act.targetMc) / 1e3);
        return {};
    }

    Result<void> operator()(const WipePlate&) {
        if (m_state.plateIn) {
            return refuse("the plate can't be wiped between the edges; bring it out first");
        }
        m_state.plate.wipe();
        return {};
    }

    Result<void> operator()(const TakeFilmOff& act) {
        return atEdge(act.sheet, [](BenchSheet& sheet) { sheet.film = false; });
    }

    Result<void> operator()(const PlaneEdge& act) {
        return atEdge(act.sheet, [&](BenchSheet& sheet) {
            sheet.planed = true;
            for (BenchEdge& edge : m_state.edges) {
                edge.hand[static_cast<std::size_t>(act.sheet)] = false;
            }
        });
    }

    Result<void> operator()(const TouchEdge& act) {
        if (auto ok = within(act.sheet, 0, 1, "the sheet", "(number)"); !ok) {
            return ok;
        }
        if (auto ok = within(act.permille, 0, 1000, "the place", "permille"); !ok) {
            return ok;
        }
        if (m_state.anyJoined()) {
            return refuse("the edges are joined: nobody can touch them");
        }
        const double at = act.permille / 1e3;
        const double reach =
            std::max(kTouchReach / m_fixed.length, 0.5 / static_cast<double>(m_fixed.stations()));
        for (std::size_t i = 0; i < m_state.edges.size(); ++i) {
            if (std::fabs(m_fixed.share(i) - at) <= reach) {
                m_state.edges[i].hand[static_cast<std::size_t>(act.sheet)] = true;
            }
        }
        return {};
    }

    Result<void> operator()(const SetGap& act) {
        for (const std::int64_t um : {act.leftUm, act.rightUm}) {
            if (auto ok = within(um, 0, kWidestGapUm, "the gap", "µm"); !ok) {
                return ok;
            }
        }
        if (m_state.bothClamped()) {
            return refuse("both sheets are clamped: now the wheel moves the tables");
        }
        if (m_state.plateIn) {
            return refuse("the plate is between the tables; bring it out first");
        }
        m_state.gapLeft = static_cast<double>(act.leftUm) / 1e6;
        m_state.gapRight = static_cast<double>(act.rightUm) / 1e6;
        return {};
    }

    Result<void> operator()(const ClampSheet& act);
    Result<void> operator()(const ShimSheet& act);

    Result<void> operator()(const TurnWheel& act) {
        if (auto ok =
                within(act.umPerS, -kFastestUmPerS, kFastestUmPerS, "the wheel's speed", "µm/s");
            !ok) {
            return ok;
        }
        if (m_state.wheelDoes == WheelDoes::Locked) {
            return refuse("the wheel is locked; unlock it first");
        }
        m_state.wheelSpeed = static_cast<double>(act.umPerS) / 1e6;
        m_state.wheelDoes = act.umPerS == 0 ? WheelDoes::Held : WheelDoes::Turns;
        return {};
    }

    Result<void> operator()(const LetGoWheel&) {
        if (m_state.wheelDoes != WheelDoes::Locked) {
            m_state.wheelDoes = WheelDoes::RunsBack;
        }
        return {};
    }

    Result<void> operator()(const LockWheel&) {
        m_state.wheelDoes = WheelDoes::Locked;
        if (m_state.instants.facesMet && !m_state.instants.locked) {
            m_state.instants.locked = m_state.at;
        }
        return {};
    }

    Result<void> operator()(const UnlockWheel&) {
        if (m_state.wheelDoes != WheelDoes::Locked) {
            return refuse("the wheel isn't locked");
        }
        m_state.wheelDoes = WheelDoes::RunsBack;
        return {};
    }

    Result<void> operator()(const BringPlateIn&);
    Result<void> operator()(const TakePlateOut&);

    Result<void> operator()(const EaseClamps&) {
        if (!m_state.bothClamped() || m_state.clampsEased) {
            return refuse("the clamps aren't closed on both sheets");
        }
        letGo();
        m_state.clampsEased = true;
        for (BenchEdge& edge : m_state.edges) {
            edge.pressure *= kClampsEasedShare;
        }
        return {};
    }

    Result<void> operator()(const OpenBars&);

    Result<void> operator()(const LetSpringOff&) {
        m_state.wheelDoes = WheelDoes::LetsOff;
        return {};
    }

    Result<void> operator()(const LiftSheet&) {
        if (!m_state.barsOpen) {
            return refuse("the bars are closed: the sheet can't be lifted out");
        }
        if (!m_state.anyJoined()) {
            return refuse("the sheets aren't joined: there is nothing to lift out");
        }
        if (m_state.lifted) {
            return refuse("the sheet is out already");
        }
        m_state.lifted = true;
        return {};
    }

private:
    template <class Work>
    Result<void> atEdge(int sheet, Work work) {
        if (auto ok = within(sheet, 0, 1, "the sheet", "(number)"); !ok) {
            return ok;
        }
        BenchSheet& which = m_state.sheets[static_cast<std::size_t>(sheet)];
        if (which.clamped) {
            return refuse("the sheet is clamped; its edge can't be got at");
        }
        work(which);
        return {};
    }

    /// How far each place stands behind the foremost; both sheets are clamped.
    void measureEdges();

    /// The joint is no longer held straight.
    void letGo() {
        if (!m_state.anyJoined()) {
            return;
        }
        bool hot = false;
        double hottest = 0;
        for (BenchEdge& edge : m_state.edges) {
            if (!edge.joined || edge.join.letGoC) {
                continue;
            }
            edge.join.letGoC = edge.run.faceC();
            hot = hot || *edge.join.letGoC > m_fixed.stiffC();
            hottest = std::max(hottest, *edge.join.letGoC);
        }
        if (hot) {
            m_state.mishaps.push_back({MishapKind::LetGoHot, m_state.at, hottest});
        }
        if (!m_state.instants.letGo) {
            m_state.instants.letGo = m_state.at;
        }
    }

    const BenchFixed& m_fixed;
    BenchState& m_state;
};

Result<void> Doing::operator()(const ClampSheet& act) {
    if (auto ok = within(act.sheet, 0, 1, "the sheet", "(number)"); !ok) {
        return ok;
    }
    for (const std::int64_t um : {act.leftUm, act.rightUm, act.leanUm}) {
        if (auto ok = within(um, -kMostOffUm, kMostOffUm, "how far it is pushed", "µm"); !ok) {
            return ok;
        }
    }
    if (m_state.plateIn) {
        return refuse("the plate is between the tables; bring it out first");
    }
    const auto which = static_cast<std::size_t>(act.sheet);
    BenchSheet& sheet = m_state.sheets[which];
    const BenchSheet& other = m_state.sheets[1 - which];
    if (sheet.clamped) {
        return refuse("this sheet is clamped already");
    }
    const double beyond[2] = {
        static_cast<double>(act.leftUm) / 1e6, static_cast<double>(act.rightUm) / 1e6};
    const double gap[2] = {m_state.gapLeft, m_state.gapRight};
    const double taken[2] = {other.clamped ? other.leftM : 0, other.clamped ? other.rightM : 0};
    double stands[2];
    for (int end = 0; end < 2; ++end) {
        stands[end] = gap[end] - taken[end] + beyond[end];
        if (stands[end] <= 0) {
            return refuse(
                "a gap of " + number(gap[end] * 1e3) + " mm at the " +
                (end == 0 ? "left" : "right") + " leaves no room for this sheet's edge");
        }
    }
    sheet.leftM = stands[0];
    sheet.rightM = stands[1];
    sheet.leanM = static_cast<double>(act.leanUm) / 1e6;
    if (act.sheet == 1) { // whatever the hand does: it lies so
        sheet.leanM += m_fixed.setup.faults.leanMm / 1e3;
    }
    sheet.clamped = true;
    if (!other.clamped) {
        return {};
    }
    // Both: from now on the tables run straight, whatever the gap was at its ends.
    measureEdges();
    m_state.travel = std::min(0.0, m_state.reach - (gap[0] + gap[1]) / 2);
    m_state.wheel = m_state.travel + m_fixed.spring.preload / m_fixed.spring.rate;
    m_state.wheelDoes = WheelDoes::Held;
    return {};
}

void Doing::measureEdges() {
    std::vector<double> reach;
    for (std::size_t i = 0; i < m_state.edges.size(); ++i) {
        const double share = m_fixed.share(i);
        double stand = 0;
        for (const BenchSheet& each : m_state.sheets) {
            stand += each.leftM + (each.rightM - each.leftM) * share;
            if (!each.planed) {
                stand -= kUnplanedOff * std::fabs(2 * share - 1);
            }
        }
        reach.push_back(stand);
    }
    m_state.reach = *std::max_element(reach.begin(), reach.end());
    for (std::size_t i = 0; i < reach.size(); ++i) {
        m_state.edges[i].standsBack = m_state.reach - reach[i];
    }
}

Result<void> Doing::operator()(const ShimSheet& act) {
    if (auto ok = within(act.sheet, 0, 1, "the sheet", "(number)"); !ok) {
        return ok;
    }
    for (const std::int64_t um : {act.leftUm, act.rightUm, act.belowUm}) {
        if (auto ok = within(um, -kMostOffUm, kMostOffUm, "how far it is moved", "µm"); !ok) {
            return ok;
        }
    }
    if (!m_state.bothClamped()) {
        return refuse("clamp both sheets first; then one can be shimmed against the other");
    }
    if (m_state.plateIn) {
        return refuse("the plate is between the edges; bring it out first");
    }
    const bool heated =
        std::any_of(m_state.edges.begin(), m_state.edges.end(), [](const BenchEdge& edge) {
            return edge.heated;
        });
    if (heated) {
        return refuse("the edges are hot: a sheet is shimmed before the plate comes in");
    }
    BenchSheet& sheet = m_state.sheets[static_cast<std::size_t>(act.sheet)];
    const double left = sheet.leftM + static_cast<double>(act.leftUm) / 1e6;
    const double right = sheet.rightM + static_cast<double>(act.rightUm) / 1e6;
    if (left <= 0 || right <= 0) {
        return refuse("the sheet would no longer stand out of its clamps");
    }
    sheet.leftM = left;
    sheet.rightM = right;
    sheet.leanM -= static_cast<double>(act.belowUm) / 1e6;
    const double before = m_state.reach;
    measureEdges();
    // The tables stay where they are: travel counts from where the edges would just meet.
    m_state.travel += m_state.reach - before;
    m_state.wheel += m_state.reach - before;
    return {};
}

Result<void> Doing::operator()(const BringPlateIn&) {
    if (m_state.plateIn) {
        return refuse("the plate is in already, or on its way");
    }
    double room = (m_state.gapLeft + m_state.gapRight) / 2;
    for (const BenchSheet& sheet : m_state.sheets) {
        if (sheet.clamped && !m_state.bothClamped()) {
            room = std::min({room, m_state.gapLeft - sheet.leftM, m_state.gapRight - sheet.rightM});
        }
    }
    if (m_state.bothClamped()) {
        room = 1;
        for (const BenchEdge& edge : m_state.edges) {
            room = std::min(room, edge.touchesAt(0) - m_state.travel);
        }
    }
    const double needed = kPlateThickness + 2 * kPlateClear;
    if (room < needed) {
        return refuse(
            "there are " + number(room * 1e3) + " mm between the edges; the plate needs " +
            number(needed * 1e3) + " mm");
    }
    m_state.plateIn = true;
    m_state.plateGoes = false;
    m_state.plateLeftS = kPlateTravelS;
    return {};
}

Result<void> Doing::operator()(const TakePlateOut&) {
    if (!m_state.plateIn || m_state.plateGoes) {
        return refuse("the plate is out already, or on its way");
    }
    double most = 0;
    for (BenchEdge& edge : m_state.edges) {
        if (edge.pressure > kSmearPa) {
            edge.marks.smeared = true;
            most = std::max(most, edge.pressure);
        }
    }
    if (most > 0) {
        m_state.mishaps.push_back({MishapKind::PlateDragged, m_state.at, most});
    }
    m_state.plateGoes = true;
    m_state.plateLeftS = kPlateTravelS;
    return {};
}

Result<void> Doing::operator()(const OpenBars&) {
    if (m_state.barsOpen || (!m_state.sheets[0].clamped && !m_state.sheets[1].clamped)) {
        return refuse("the bars aren't closed on a sheet");
    }
    if (!m_state.anyJoined()) { // the sheets are loose again, for another clamping
        for (BenchSheet& sheet : m_state.sheets) {
            sheet.clamped = false;
        }
        for (BenchEdge& edge : m_state.edges) {
            edge.pressure = 0;
            edge.touches = Touches::Nothing;
        }
        const double gap = m_state.reach - m_state.travel;
        if (m_state.reach > 0) {
            m_state.gapLeft = m_state.gapRight = gap;
        }
        m_state.clampsEased = false;
        return {};
    }
    letGo();
    const double force = m_state.springN(m_fixed);
    const double energy = force * force / 2 / m_fixed.spring.rate;
    if (m_fixed.springOffFirst && energy > kKickJ) {
        m_state.mishaps.push_back({MishapKind::SpringKick, m_state.at, energy});
    }
    m_state.barsOpen = true;
    for (BenchEdge& edge : m_state.edges) {
        edge.pressure = 0;
    }
    return {};
}

} // namespace

std::string_view codeOf(const BenchAct& act) {
    constexpr Overloaded kCodes{
        [](const SetPlate&) { return "set_plate"; },
        [](const WipePlate&) { return "wipe_plate"; },
        [](const TakeFilmOff&) { return "take_film_off"; },
        [](const PlaneEdge&) { return "plane_edge"; },
        [](const TouchEdge&) { return "touch_edge"; },
        [](const SetGap&) { return "set_gap"; },
        [](const ClampSheet&) { return "clamp_sheet"; },
        [](const TurnWheel&) { return "turn_wheel"; },
        [](const LetGoWheel&) { return "let_go_wheel"; },
        [](const LockWheel&) { return "lock_wheel"; },
        [](const UnlockWheel&) { return "unlock_wheel"; },
        [](const BringPlateIn&) { return "plate_in"; },
        [](const TakePlateOut&) { return "plate_out"; },
        [](const EaseClamps&) { return "ease_clamps"; },
        [](const OpenBars&) { return "open_bars"; },
        [](const LetSpringOff&) { return "let_spring_off"; },
        [](const LiftSheet&) { return "lift_sheet"; },
        [](const ShimSheet&) { return "shim_sheet"; }};
    return std::visit(kCodes, act);
}

Result<void> doAct(const BenchFixed& fixed, BenchState& state, const BenchAct& act) {
    Doing doing(fixed, state);
    return std::visit(doing, act);
}

} // namespace seamclock
