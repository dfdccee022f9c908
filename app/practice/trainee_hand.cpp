#include "app/practice/trainee_hand.h"

#include "app/practice/bench_drawing.h"
#include "app/practice/practice_text.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "core/weld/intent.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace seamclock {
namespace {

constexpr Milliseconds kRepeat{60}; // a held key's repeat comes within

// The hand on the wheel: as it presses, and as far as it can be made slower and faster [mm/s].
constexpr double kTurn = 2;
constexpr double kSlowest = 0.5;
constexpr double kFastest = 25;
constexpr double kDoubles = 16; // units of sliding that double the speed

/// In steps that can be told apart, so that a finger at rest makes no acts.
double speedFor(double units) {
    const double steps = std::round(units / kDoubles * 2) / 2;
    return std::clamp(kTurn * std::exp2(steps), kSlowest, kFastest);
}

} // namespace

TraineeHand::TraineeHand(PracticeRoom& room, const Clock& machine, QObject* parent)
    : QObject(parent), m_room(room), m_machine(machine) {}

void TraineeHand::begin(std::uint64_t seed) {
    m_seed = seed;
    m_panel = ControlPanel::None;
    m_turning = 0;
}

void TraineeHand::leave() {
    turnWheel(0);
    m_panel = ControlPanel::None;
}

void TraineeHand::slide(const Control& control, double units) {
    const auto* turn = std::get_if<TurnIt>(&control.does);
    if (turn != nullptr && m_turning != 0) {
        turnWheel(turn->way * speedFor(units));
    }
}

void TraineeHand::letGo() {
    if (m_turnKey == 0) {
        turnWheel(0);
    }
}

void TraineeHand::look() {
    if (m_keyLeft && m_machine.now().boot - *m_keyLeft >= kRepeat) {
        m_keyLeft.reset();
        m_turnKey = 0;
        turnWheel(0);
    }
}

bool TraineeHand::key(int key, Qt::KeyboardModifiers modifiers, bool down, bool repeats) {
    const bool wheel = key == Qt::Key_Up || key == Qt::Key_Down;
    if (!wheel || m_panel != ControlPanel::None) {
        return false;
    }
    if (repeats) {
        return true;
    }
    if (!down) {
        m_keyLeft = m_machine.now().boot;
        return true;
    }
    m_keyLeft.reset();
    m_turnKey = key;
    const double speed = modifiers.testFlag(Qt::ShiftModifier)     ? kFastest
                         : modifiers.testFlag(Qt::ControlModifier) ? kSlowest
                                                                   : kTurn;
    turnWheel(key == Qt::Key_Up ? speed : -speed);
    return true;
}

void TraineeHand::press(const Control& control) {
    if (!control.view.enabled || control.view.hidden) {
        return;
    }
    const ControlDoes& does = control.does;
    if (const auto* turn = std::get_if<TurnIt>(&does)) {
        turnWheel(turn->way * kTurn);
    } else if (const auto* acts = std::get_if<DoActs>(&does)) {
        bool all = true;
        for (const BenchAct& one : acts->acts) {
            all = act(one) && all;
        }
        if (all && !acts->said.isEmpty()) {
            emit said(acts->said, true);
        }
        if (all && acts->closes) {
            showPanel(m_panel == ControlPanel::Plate ? ControlPanel::None : ControlPanel::Clamps);
        }
    } else if (const auto* panel = std::get_if<ShowPanel>(&does)) {
        showPanel(panel->panel);
    } else if (const auto* read = std::get_if<ReadPlate>(&does)) {
        readPlate(read->place);
    } else if (const auto* push = std::get_if<PushMore>(&does)) {
        m_push.frontUm += push->by.frontUm;
        m_push.backUm += push->by.backUm;
    } else if (const auto* gap = std::get_if<GapMore>(&does)) {
        gapMore(gap->by);
    } else if (std::holds_alternative<PressBack>(does)) {
        emit backPressed();
    }
    emit changed();
}

void TraineeHand::showPanel(ControlPanel panel) {
    turnWheel(0);
    m_panel = panel;
    const Weld* weld = m_room.weld();
    if (panel == ControlPanel::Gap && weld != nullptr) {
        // A hand sets it about right and then puts it even.
        const BenchView seen = m_room.run().bench().view();
        const bool one = seen.clamped[0] || seen.clamped[1];
        const std::int64_t plan = one ? weld->plan.clampingGapUm : weld->plan.gapUm;
        const double off = std::abs(seen.gapLeftMm - static_cast<double>(plan) / 1e3);
        if (off > 2.5 && !(seen.clamped[0] && seen.clamped[1])) {
            const Push gap = firstGap(plan, m_seed);
            act(SetGap{gap.frontUm, gap.backUm});
        }
    } else if (panel == ControlPanel::FirstSheet) {
        m_push = firstPush(0, m_seed);
    } else if (panel == ControlPanel::SecondSheet) {
        m_push = firstPush(1, m_seed);
    }
}

void TraineeHand::gapMore(const Push& by) {
    const BenchView seen = m_room.run().bench().view();
    const auto um = [](double mm) { return std::llround(mm * 1e3); };
    act(SetGap{
        std::max<std::int64_t>(0, um(seen.gapLeftMm) + by.frontUm),
        std::max<std::int64_t>(0, um(seen.gapRightMm) + by.backUm)});
}

void TraineeHand::readPlate(int place) {
    const BenchView seen = m_room.run().bench().view();
    const StationView& station = seen.stations[static_cast<std::size_t>(place)];
    const QString where = placeName(place, static_cast<int>(seen.stations.size()));
    if (seen.plateInside > 0) {
        emit said(tr("The plate is between the edges: its face can't be read."), false);
        return;
    }
    QString text =
        tr("The plate's face reads %1 °C at the %2.").arg(numberText(station.plateC, 0), where);
    if (seen.plateDirty) {
        text += QLatin1Char(' ') + tr("Something sticks to it.");
    }
    emit said(text, true);
}

void TraineeHand::touchEdge(int sheet, int place) {
    if (!m_room.runs()) {
        return;
    }
    const BenchView seen = m_room.run().bench().view();
    if (seen.plateInside > 0 || !seen.clamped[sheet]) {
        return; // nobody puts a hand there
    }
    const double length = static_cast<double>(m_room.run().set().setup.plan.lengthUm) / 1e3;
    const auto at = static_cast<std::size_t>(place);
    const int permille = static_cast<int>(
        std::lround(seen.stations[std::min(at, seen.stations.size() - 1)].placeMm / length * 1e3));
    if (act(TouchEdge{sheet, permille})) {
        emit said(tr("You touched the edge with your hand. Plane it again."), false);
    }
}

bool TraineeHand::act(const BenchAct& act) {
    if (!m_room.runs()) {
        return false;
    }
    const auto done = m_room.run().act(act);
    if (!done && !isBounce(done.error())) {
        emit said(sentenceOf(done.error().detail), false);
    }
    return done.has_value();
}

void TraineeHand::turnWheel(double mmPerS) {
    if (!m_room.runs() || mmPerS == m_turning) {
        return;
    }
    if (m_room.run().bench().view().wheel == WheelHold::Locked) {
        m_turning = 0;
        return;
    }
    m_turning = act(TurnWheel{std::llround(mmPerS * 1e3)}) ? mmPerS : 0;
}

} // namespace seamclock
