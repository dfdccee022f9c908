// What a job's seam takes on a bench, for the day's plan. Soak, changeover, build-up and cooling
// are the weld's own plan: changeover by its most, build-up by its target. Preparation, alignment
// and release are what the shop itself took for welds like this one, where its log knows; else what
// stands below, which is chosen and nobody's measurement.
#pragma once

#include "core/base/result.h"
#include "core/bench/bench.h"
#include "core/procedure/procedure.h"
#include "core/shift/day_plan.h"
#include "core/shift/job.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// Medians of the shop's last welds of that bench, procedure and thickness; absent: not known.
struct ShopTimes {
    std::optional<Milliseconds> preparation;
    std::optional<Milliseconds> alignment;
    std::optional<Milliseconds> release;

    bool operator==(const ShopTimes&) const = default;
};

inline constexpr Milliseconds kChosenPreparation{600'000};
inline constexpr Milliseconds kChosenRelease{180'000};
/// Chosen: of the soak's target. The estimate's trials put the bead at about 34 s for 5 mm and 63 s
/// for 10 mm of PE-HD (core/heat), whose soaks are 50 s and 100 s.
inline constexpr double kChosenAlignment = 0.65;

enum class TimeFrom { Shop, Chosen };
std::string_view toString(TimeFrom from); // "shop", "chosen"

struct SeamWork {
    SeamTimes times;
    TimeFrom preparation = TimeFrom::Chosen;
    TimeFrom alignment = TimeFrom::Chosen;
    TimeFrom release = TimeFrom::Chosen;

    bool operator==(const SeamWork&) const = default;
};

/// OutOfRange: as makePlan and judgeSheets. Missing: the procedure lacks values, or some that the
/// shop filled in are not attested.
Result<SeamWork> seamWork(
    const JobSeam& seam, const Procedure& procedure, const Bench& bench, const ShopTimes& shop);

} // namespace seamclock
