// What the six controls of the practice bench are just now and what each does, as a pure function:
// wheel up and down, lock, clamps, plate, take back. Where clamps or plate could mean more than one
// thing, a panel of six stands in their place until it is closed. Nothing here asks whether an act
// is wise; what comes of a wrong order is the bench's.
#pragma once

#include "app/parts/slot_button.h"
#include "core/plan/plan.h"
#include "core/vbench/bench_act.h"
#include "core/vbench/bench_view.h"

#include <QString>
#include <cstdint>
#include <optional>
#include <variant>
#include <vector>

namespace seamclock {

enum class ControlPanel {
    None,
    Clamps,
    Plate,
    PlateFace,   // read where?
    PlateTarget, // set to what?
    Gap,
    FirstSheet,
    SecondSheet,
    Shim
};

/// How the next sheet's ends are held against the other [µm]; more pushes it further.
struct Push {
    std::int64_t frontUm = 0;
    std::int64_t backUm = 0;

    bool operator==(const Push&) const = default;
};

struct TurnIt {  // while it is held
    int way = 1; // 1 closes, -1 opens
    bool operator==(const TurnIt&) const = default;
};
struct DoActs { // in this order; `said` when it is done
    std::vector<BenchAct> acts;
    QString said;
    bool closes = false; // the panel

    bool operator==(const DoActs&) const = default;
};
struct ShowPanel {
    ControlPanel panel = ControlPanel::None;
    bool operator==(const ShowPanel&) const = default;
};
struct ReadPlate {
    int place = 0; // station
    bool operator==(const ReadPlate&) const = default;
};
struct PushMore {
    Push by;
    bool operator==(const PushMore&) const = default;
};
struct GapMore {
    Push by;
    bool operator==(const GapMore&) const = default;
};
struct PressBack { // the operator's own slot
    bool operator==(const PressBack&) const = default;
};
using ControlDoes = std::variant<
    std::monostate, TurnIt, DoActs, ShowPanel, ReadPlate, PushMore, GapMore, PressBack>;

struct ControlView {
    QString text;
    QString under;
    std::optional<Sign> sign;
    bool on = false;     // locked; done
    bool enabled = true; // else it is outlined, and a press does nothing
    bool hidden = false;

    bool operator==(const ControlView&) const = default;
};

struct Control {
    ControlView view;
    ControlDoes does;

    bool operator==(const Control&) const = default;
};

struct ControlState {
    const BenchView& bench;
    bool preparing = true; // the weld is
    ControlPanel panel = ControlPanel::None;
    Push push;
    SlotView back; // the operator's take-back
};

/// Six, in the order of their places.
std::vector<Control> controlsOf(const ControlState& state);

/// How a hand sets the gap or holds a sheet at first: not quite even. The same for the same seed.
Push firstGap(std::int64_t planUm, std::uint64_t seed);
Push firstPush(int sheet, std::uint64_t seed);

} // namespace seamclock
