// One line of the day list: what a foreman reads of a joint before opening its record. It is worked
// out from the weld's events alone; the log keeps a copy of it as a cache, which may be deleted at
// any time and comes back.
#pragma once

#include "core/weld/record.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// Raised whenever lineOf or textOf give something else for the same events; a cache made by
/// another number, or by other rules of the verdict, is made again.
inline constexpr std::int64_t kJointLines = 7;

struct JointLine {
    std::string weld; // "weld:UUID"
    std::int64_t number = 0;
    std::string type; // "production", "trial", "practice"
    Milliseconds openedUtc{0};
    std::chrono::minutes offset{0};
    std::string day; // local, "2030-01-07"
    std::string bench;
    std::string by;   // who opened it
    std::string seam; // "" if none
    std::string job;  // that the seam is of; "" if none was told
    std::string material;
    std::int64_t thicknessUm = 0; // nominal, as planned: sheets of one kind differ by some tenths
    std::int64_t lengthUm = 0;    // of all seams of the clamping together
    std::string procedure;
    std::string phase; // "cooling", "closed", "aborted", …
    bool open = true;
    std::string verdict; // as stored at closing; "incomplete" if aborted; "" while open
    std::string
        verdictNow; // by this program's rules, where it differs from the stored one; else ""
    std::int64_t findings = 0;
    std::int64_t events = 0; // the last n
    std::string trouble;     // why its events make no weld (then its phase is "damaged"), or that
                             // another log tells it differently; else ""

    bool operator==(const JointLine&) const = default;
};

/// Where a page of the list ended.
struct JointKey {
    std::int64_t openedUtcMs = 0;
    std::int64_t number = 0; // of those opened at one instant, the higher is the newer
    std::string weld;

    bool operator==(const JointKey&) const = default;
};

/// Absent: any. The newest come first.
struct JointFilter {
    std::optional<std::string> fromDay; // local dates, both included
    std::optional<std::string> toDay;
    std::optional<std::string> bench;
    std::optional<std::string> by;
    std::optional<std::string> material;
    std::optional<std::string> verdict; // the worse of stored and now; "": still open
    std::optional<std::vector<std::string>>
        seams; // of a job: any of these labels, each with what was welded again of it ("S3/R1")
    std::optional<std::string> seam; // its label as the joint has it: S3 does not find S3/R1
    std::optional<std::string> job;  // of that job, or of none that was told
    std::optional<std::string>
        text; // words, all of which occur in the joint's texts (as their beginnings)
    /// By id, how people are called: a word of `text` with which a part of a name begins finds what
    /// that person did, whatever the id is.
    std::map<std::string, std::string> names;
    bool damaged = false;          // only those whose events make no weld
    std::optional<JointKey> after; // the last line of the page before
    std::size_t limit = 100;       // lines of a page
};

/// What a list can be narrowed by to one value out of those that its joints have.
enum class JointField { Bench, By, Material, Verdict };

JointKey keyOf(const JointLine& line);

const std::string& valueOf(const JointLine& line, JointField field);
/// The worse of its verdict as stored and as it is by now, so that no correction hides a joint from
/// whoever looks for those that are out.
const std::string& judgedOf(const JointLine& line);

JointLine lineOf(const WeldRecord& record);

/// What a search for text looks through: number, seam, job, part, bench, whoever made one of its
/// events, sheets (also as they were before a correction), remarks, reasons, decisions.
std::string textOf(const WeldRecord& record);

} // namespace seamclock
