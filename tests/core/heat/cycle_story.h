// A whole cycle with nothing pressed, told by core/heat and by the judge, and how far the two are
// apart.
#pragma once

#include "tests/core/heat/cvode_judge.h"
#include "tests/core/heat/cycle.h"

#include <optional>
#include <vector>

namespace seamclock::test {

/// At the end of its plateau the weld plane falls by some kelvins within a second or two, as the
/// last of the melt crystallises: two answers that agree to a second differ there by more than
/// anywhere else. So an instant counts as known to a hundredth of the time since the faces met.
inline constexpr double kInstant = 0.01;
inline constexpr double kEvery = 0.25; // [s] how close the judge's instants lie

struct Story {
    double endOfSoak = 0; // the skin [°C]
    double facesMeet = 0;
    std::vector<double> since; // [s] the faces met
    std::vector<double> plane; // [°C]
};

Story told(
    const Material& material, const HeatInputs& inputs, const Cycle& cycle, const HeatGrid& grid);
/// Nothing where CVODE gave up. The grid's depth is set here.
std::optional<Story>
judged(const Material& material, const HeatInputs& inputs, const Cycle& cycle, JudgeGrid grid);

/// How far the weld plane lies outside what the judge has within an instant of then [K].
double farthest(const Story& judge, const Story& story, double instant);

} // namespace seamclock::test
