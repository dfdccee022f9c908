// What a weld's edge goes through, as the heat model takes it: from a plan, what will be done; from
// a weld's events, what was. A course that has not come to its end stops where it is.
#pragma once

#include "core/heat/sheet_run.h"
#include "core/weld/fold.h"

#include <optional>
#include <set>
#include <string>
#include <vector>

namespace seamclock {

struct HeatCourse {
    std::string material; // as the plan names it
    HeatInputs inputs;
    double beadM = 0;                   // that ends alignment where no time is given [m]
    std::optional<double> alignSeconds; // as it went
    bool aligned = true;                // alignment is over
    double alignmentPa = 0;
    double soakPa = 0;
    double joiningPa = 0;
    // [s]; absent: not come to that
    std::optional<double> soak;
    std::optional<double> changeover;
    std::optional<double> buildUp;
    std::optional<double> cooling;
    /// What a metre of closing of both sheets takes off the pressure once the wheel is locked; a
    /// seam whose spring is not known keeps its pressure.
    std::optional<double> springPaPerMetre;
    std::optional<double> unitsPerMetre; // of the scale, for that closing

    bool operator==(const HeatCourse&) const = default;
};

/// What the plan will do, with its bench's spring. Missing: the plan lacks a time, a pressure, the
/// plate's temperature or the bead.
Result<HeatCourse> courseOf(const WeldPlan& plan, const Bench* bench);

/// What was done by that weld time; times come from the steps, the plate's temperature from what
/// was read on its faces. Missing as above, and before alignment began.
Result<HeatCourse> courseOf(const Weld& weld, Milliseconds now, const Bench* bench);

/// The same of a weld that is only read: as far as its last event.
Result<HeatCourse> courseOf(const Weld& weld, const Bench* bench);

/// The n of the events that it is worked out from: the plan's, what was read on the plate, and the
/// steps from one phase to the next.
std::set<std::int64_t> eventsOfCourse(const std::vector<Event>& events);

} // namespace seamclock
