// What a record or a report needs of a log besides the events of its joints: who is who, with which
// certificate, the bench that a joint was made on, and which seals cover which of its events. Read
// once, on any thread that has a reader of its own; what is put on paper from it is app/print's.
#pragma once

#include "core/bench/bench.h"
#include "core/estimate/heat_estimate.h"
#include "core/heat/material.h"
#include "core/log/log_reader.h"
#include "core/log/roster.h"
#include "core/quality/coupons.h"
#include "core/weld/record.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace seamclock {

/// A foreman's seal of the log, as the day's paper shows it.
struct SealFact {
    std::string day;
    std::string by; // "person:ID"
    Instant at;
    std::int64_t n = 0;     // of the day's own events
    std::int64_t toSeq = 0; // it covers the rows up to that one
    std::string fingerprint;
    std::string keyFingerprint;

    bool operator==(const SealFact&) const = default;
};

struct LogFacts {
    std::string logId;
    std::string world; // "production" or "practice"
    Roster roster;
    std::vector<SealFact> seals; // in the order of their rows

    bool operator==(const LogFacts&) const = default;
};

/// Of a joint: the events up to `toN` are covered by that seal.
struct SealedPart {
    SealFact seal;
    std::int64_t toN = 0;

    bool operator==(const SealedPart&) const = default;
};

struct RecordFacts {
    WeldRecord record;
    std::optional<Bench> bench; // the one that it was welded on; absent: its document is lost
    std::optional<Certificate> certificate; // the welder's, as it was noted when the joint began
    std::int64_t certificateN = 0;          // of the welder's own events, the one that noted it
    std::vector<SealedPart> sealed; // the seals that cover more of it than those before; none: not
                                    // sealed yet
    std::optional<std::int64_t>
        reweldOfNumber;                // of the joint that it welds again, where it is here
    std::string trouble;               // another log tells it differently; else ""
    bool elsewhere = false;            // it came with another log, whose seals stand in that one
    Roster people{};                   // of that log then, as far as the joint names them
    std::optional<HeatEstimate> heat;  // where it was asked for and can be worked out
    std::set<std::int64_t> heatFrom{}; // by which of its events
    std::vector<CouponSeries> coupons; // that were cut from it
};

/// Errors as the reader's. Damaged also: a fact about people or a seal that can't be read.
Result<LogFacts> logFacts(LogReader& reader);

/// Whom a joint that came with another log names, by that log. Damaged: as above.
Result<Roster> peopleElsewhere(LogReader& reader, const WeldRecord& record);

/// With `materials` also the heat estimate, which takes some tenths of a second. Missing: no such
/// weld. Damaged: its events can't be read, or make no weld.
Result<RecordFacts> recordFacts(
    LogReader& reader, const LogFacts& log, const std::string& weld,
    const std::vector<Material>* materials = nullptr);

/// What one report on paper may hold; longer lists are for CSV.
inline constexpr std::size_t kMostReportJoints = 5'000;

/// A joint in a report. What can't be read has no record, and stands in the report with why.
struct ReportJoint {
    JointLine line;
    std::optional<WeldRecord> record;
    std::int64_t sealedToN = 0; // the events up to that one are covered by a seal
    std::string trouble;
    std::vector<std::size_t> seals{}; // of LogFacts::seals, by their places there: those that cover
                                      // more of it than the ones before
    std::optional<Certificate> certificate{}; // the welder's, as in RecordFacts
    std::int64_t certificateN = 0;            // likewise
    std::vector<CouponSeries> coupons{};      // likewise
    bool elsewhere = false;                   // likewise
    Roster people{};                          // likewise

    bool operator==(const ReportJoint&) const = default;
};

struct ReportFacts {
    LogFacts log;
    JointFilter filter;              // what was asked for
    std::vector<ReportJoint> joints; // the oldest first
};

/// The joints of a day ("2030-01-07"; local), of a job, or of any selection of the day list.
/// Malformed: a date that is none. OutOfRange: more than kMostReportJoints. Otherwise as the
/// reader.
Result<ReportFacts> reportFacts(LogReader& reader, const JointFilter& filter);
/// The same of joints that were chosen in another way: "weld:UUID" each. Missing: one that isn't
/// there.
Result<ReportFacts> reportFacts(LogReader& reader, const std::vector<std::string>& welds);

} // namespace seamclock
