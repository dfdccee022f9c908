// Two sheets side by side: may they be welded to each other, and what should be known before. What
// each is made of stands on its paper; this only compares.
#pragma once

#include "core/base/result.h"
#include "core/plan/plan.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// As the sheet's paper says it.
struct SheetFacts {
    std::string material;
    std::optional<std::string> grade;
    std::int64_t thicknessUm = 0;
    std::optional<std::string> mfr; // "0.5 g/10 min (190/5)"
};

/// Melt flow rate with its test's temperature and load, where the paper gives them: "190/5".
struct MeltFlow {
    double gPer10Min = 0;
    std::string condition;
};

/// Absent: the text does not begin with a positive number.
std::optional<MeltFlow> meltFlowIn(std::string_view text);

/// As a sheet has it: "0.5 g/10 min (190/5)", without a condition that its paper does not give.
std::string meltFlowText(double gPer10Min, std::string_view condition);

/// Whether both names are of one plastic: "PP-H" and "PP", "PE 100" and "PE-HD".
bool isSamePlastic(std::string_view one, std::string_view other);

/// Warnings: mfr_unknown_condition, mfr_outside_range, mfr_far_apart, grades_differ. OutOfRange:
/// different materials, or thicknesses more than a tenth of the thinner apart. `material` is the
/// procedure's; a sheet of another is refused as well.
Result<std::vector<PlanWarning>>
judgeSheets(const SheetFacts& first, const SheetFacts& second, std::string_view material);

} // namespace seamclock
