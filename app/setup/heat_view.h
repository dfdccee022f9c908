// "What if": what the heat estimate says of a plan, and of the same plan with another plate, air,
// changeover or cooling. For a foreman or a trainee; it is no part of a weld.
#pragma once

#include "app/parts/slot_button.h"
#include "app/setup/plot.h"
#include "app/setup/value_slider.h"
#include "core/estimate/heat_estimate.h"

#include <QString>
#include <array>
#include <vector>

namespace seamclock {

struct HeatValueRow {
    QString what;
    QString value;     // "166 °C (161 to 171)"
    bool late = false; // it is where it should not be

    bool operator==(const HeatValueRow&) const = default;
};

struct HeatView {
    QString title;
    QString under; // that it is an estimate
    std::array<SliderView, 4> sliders;
    PlotView plot;
    std::vector<HeatValueRow> rows;
    QString caution; // "" where there is none
    SlotView back;
    SlotView stop;
    SlotView step;

    bool operator==(const HeatView&) const = default;
};

enum class WhatIf { Plate, Air, Changeover, Cooling };

/// The course with that value moved; cooling and changeover in seconds, temperatures in °C.
HeatCourse changedCourse(HeatCourse course, WhatIf what, double value);

/// `plan`: as the plan has it, and what was estimated of it; `now`: with what was moved.
HeatView heatView(const HeatEstimate& plan, const HeatEstimate& now, bool withSpread);

} // namespace seamclock
