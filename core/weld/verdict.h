// The verdict: worked out from a weld's events and its plan's limits alone, never from an estimate.
// All reasons are listed; the word is the first that matches: incomplete, out of limits, within
// limits with remarks, within limits. A value on its limit is within. Rules 1 (contracts); a
// person's decision about the joint is another thing.
#pragma once

#include "core/weld/fold.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

inline constexpr std::int64_t kVerdictRules = 1;

enum class Grade { Incomplete, Out, Remark };
std::string_view toString(Grade grade); // "incomplete", "out", "remark"

inline constexpr const char* kInCooling = "cooling";

struct Finding {
    std::string code; // the verdict row, or what was remarked: "changeover", "step_taken_back"
    Grade grade = Grade::Remark;
    std::optional<std::int64_t> limit;
    std::optional<std::int64_t> actual;
    std::string unit;    // of limit and actual: "ms", "um", "mC", "milli"
    std::string text;    // one English sentence
    std::int64_t n = 0;  // of the one event that it tells of; 0: it follows from several
    std::string place{}; // on the plate, or kInCooling of a reading; "": of the whole
    std::string face{};  // of the plate

    bool operator==(const Finding&) const = default;
};

enum class VerdictWord { WithinLimits, WithRemarks, OutOfLimits, Incomplete };
std::string_view toString(VerdictWord word); // "within limits", "within limits with remarks", …

struct Verdict {
    VerdictWord word = VerdictWord::Incomplete;
    std::vector<Finding> findings;

    bool operator==(const Verdict&) const = default;
};

/// Everything that can be said of the weld so far, whether or not it is closed.
std::vector<Finding> findings(const Weld& weld);

/// Of a weld as it stands: incomplete unless closed.
Verdict verdict(const Weld& weld);
/// For whoever has already what still stands of its events.
Verdict verdict(const Weld& weld, const std::vector<Retained>& standing);

/// Of an inspected weld that is about to be closed.
Verdict verdictAtClosing(const Weld& weld);

/// The verdict rows out of limits for which no reason was given yet.
std::vector<std::string> reasonsOwed(const Weld& weld);

} // namespace seamclock
