// The options that say what is to be welded: the same for a card and for a rehearsal. Here they
// become a request to core/plan; what a plan refuses is core/plan's.
#pragma once

#include "core/base/result.h"
#include "core/bench/bench_codec.h"
#include "core/plan/plan.h"
#include "core/procedure/procedure_codec.h"

#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace seamclock {

/// As typed; absent where the person said nothing.
struct PlanWords {
    std::optional<std::string> procedure;
    std::optional<std::string> bench;
    std::optional<std::string> thickness;
    std::vector<std::string> lengths;
    std::optional<std::string> drag;
    std::optional<std::string> ambient;
    std::optional<std::string> plate;
    std::optional<std::string> cooling;
    bool halfCooling = false;
    bool workshop = false;
    bool hardlyLoaded = false;
    std::optional<std::string> log; // whose procedures hold
};

struct PlanInput {
    ProcedureDocument procedure;
    std::optional<BenchDocument> bench;
    PlanRequest request;
};

/// `words` must outlive the parsing. Where a plan can't be made without it, an option is required.
void addPlanOptions(CLI::App& command, PlanWords& words, bool required);

/// What was typed, over `base` where there is one.
Result<PlanInput> readPlanInput(const PlanWords& words, const PlanInput* base);

} // namespace seamclock
