// What a bench is set up for, as far as a trial joint stands for it, and which trial joint stands:
// the rule is core/shift/trial_series.h's, the welds and what a foreman decided are told to it
// here.
#pragma once

#include "core/session/carry.h"
#include "core/weld/fold.h"

#include <cstdint>
#include <string>
#include <vector>

namespace seamclock {

struct SetUp {
    std::vector<std::string> materials; // of both sheets
    std::int64_t thicknessUm = 0;
    std::string bench;    // its id
    std::string benchDoc; // its SHA-256: another plate is another document
    std::string day;      // local

    bool operator==(const SetUp&) const = default;
};

/// As it is of a joint that is opened at that instant.
SetUp setUpOf(const WeldOpened& opened, const Instant& at);
SetUp setUpOf(const Weld& weld);

/// `earlier`: the welds of that bench, the newest first, ended or not.
TrialFinding trialFor(const SetUp& next, const std::vector<Weld>& earlier);

} // namespace seamclock
