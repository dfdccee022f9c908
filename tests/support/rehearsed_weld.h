// Whole welds by the virtual operator without session or log: his acts, each at the instant he
// named, put to a weld as a hand's are.
#pragma once

#include "core/practice/bench_weld.h"
#include "core/session/order.h"
#include "core/weld/fold.h"
#include "core/weld/verdict.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock::test {

struct RehearsedWeld {
    Weld weld;
    std::optional<BenchStory> bench; // with physics
};

/// A demo bench with a shipped procedure, one metre of seam. Empty: no plan that is ready to weld.
std::optional<WeldOrder> orderFor(
    const std::string& procedure, double thicknessMm, const std::string& bench, double dragN = 0);

/// Likewise, of a procedure that a shop changed.
std::optional<WeldOrder> orderWith(
    const ProcedureDocument& procedure, double thicknessMm, const std::string& bench,
    double dragN = 0);

Material materialOf(const WeldOrder& order);

/// Without physics; the slips of the hand's skill are in it.
Weld rehearsed(const WeldOrder& order, const Hand& hand);
/// On the virtual bench; the card that a fault hands out as well. The test fails if it can't be
/// made.
RehearsedWeld onBench(const WeldOrder& order, const Hand& hand, const Material& material);
RehearsedWeld onBench(const WeldOrder& order, const Hand& hand);

/// "out soak_time" …, of the verdict.
std::vector<std::string> findingsOf(const Weld& weld);
/// What must not depend on log or hour.
std::vector<Event> comparable(std::vector<Event> events);

} // namespace seamclock::test
