// What will soon be due, so that it is done before it stops a weld: a bench's calibration and a
// welder's certificate by the last day that their papers name, and a procedure's attestation, which
// no paper dates: a foreman looks at it again a year after it was made (kAttestationDays, chosen).
#pragma once

#include "core/base/result.h"
#include "core/bench/bench.h"
#include "core/log/roster.h"
#include "core/log/shelf.h"
#include "core/procedure/procedure.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

inline constexpr std::int64_t kAttestationDays = 365; // chosen
inline constexpr std::int64_t kMostDueDays = 3'650;

enum class DueKind { Calibration, Certificate, Attestation };
std::string_view toString(DueKind kind); // "calibration", …

struct DueItem {
    DueKind kind = DueKind::Calibration;
    std::string subject;   // "bench:ID", "person:ID", "procedure:ID"
    std::string name;      // of the bench, the person, the procedure's id
    std::string what;      // the certificate's scope, how many cells
    std::string date;      // the last day on which it holds; "" where there is none at all
    std::int64_t days = 0; // until then; negative: past; 0 where there is no date

    bool operator==(const DueItem&) const = default;
};

struct DueFacts {
    std::vector<Bench> benches;
    Roster roster;
    Shelf shelf;
    std::vector<Procedure> procedures{}; // in force; without any, each attestation counts
};

/// Those that are past or due within so many days of `today` (local, 2030-01-07), and before them
/// what is not there at all: a bench's calibration, and an operator's certificate where the shop
/// keeps any, and values that say something else than when they were attested; then by date. People
/// who have left are not among them. Malformed: no date. OutOfRange: days outside 0 to
/// kMostDueDays.
Result<std::vector<DueItem>>
dueWithin(const DueFacts& facts, std::string_view today, std::int64_t days);

/// Days from 1970-01-01; absent: no date.
std::optional<std::int64_t> dayNumber(std::string_view isoDate);

} // namespace seamclock
