// What a virtual operator can get wrong, and what becomes of each such fault: found by the verdict,
// or plainly one that a timer can't see. The account is one table, which a test holds against real
// welds, so that nobody believes more of a verdict than it can know.
#pragma once

#include "core/base/result.h"
#include "core/plan/plan.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// Absent or false: he does it right. Those of the second part are done to the virtual bench, and
/// need it: without physics there is nothing that they could happen to.
struct RehearseFaults {
    enum class LowReading {
        None,
        Corrected, // locks out of band once, sees it, tops up and locks again
        LeftLow    // the spring is found low at the first re-check and never topped up
    };

    std::optional<Milliseconds> lateChangeover; // past its limit
    std::optional<Milliseconds> earlyRelease;   // short of the cooling time
    std::optional<Milliseconds> shortSoak;      // short of its target
    std::optional<Milliseconds> longSoak;       // past its target
    std::optional<Milliseconds> phoneCall;      // likewise: nobody stood there
    std::optional<Milliseconds> slowBuildUp;    // past its target
    LowReading lowReading = LowReading::None;
    bool missedRecheck = false;
    bool coldPlate = false;               // measured 8 K under the window, and welded all the same
    bool thinBead = false;                // alignment ended with two thirds of the bead
    bool misaligned = false;              // twice the allowed offset
    bool takeBack = false;                // plate out tapped too early, taken back after 3 s
    std::optional<Milliseconds> backdate; // soak's start tapped this much late, then corrected
    std::optional<std::string> skipCheck; // the code of a check that is overridden
    std::optional<std::string> abortIn;   // the name of a phase, as phaseName()

    // Of the bench
    bool soakPressed = false;                    // the reading is never brought down
    std::optional<std::int64_t> backedOffUm;     // tables drawn back so far in soak
    bool clockFromContact = false;               // soak counted from the first touch
    std::optional<std::int64_t> draughtPercent;  // of what a bare face loses in still air
    bool slammed = false;                        // as fast as the wheel goes
    std::optional<Milliseconds> letBack;         // after the lock, while the melt is soft
    bool notFollowed = false;                    // the lock gives way, and nobody tops up
    std::optional<std::int64_t> plateOffMk;      // its faces against its display
    bool plateDirty = false;                     // and not wiped
    std::optional<std::int64_t> offParallelUm;   // the second sheet's right end stands back
    bool topBeadOnly = false;                    // the lower side leans back, and nobody looks
    std::optional<std::int64_t> touchedPermille; // of the seam, by a hand
    bool filmLeft = false;
    std::optional<std::int64_t> wrongRowUm; // the card is that thickness's
    bool kgfForN = false;                   // the card takes the springs' newtons for kgf
    std::optional<std::int64_t> coldSpotMk; // beside the place where the plate is measured

    /// Whether anything of the second part is asked for.
    bool needBench() const;
    bool operator==(const RehearseFaults&) const = default;
};

/// OutOfRange: a fault that can't be made with this plan; Conflict: two that exclude each other;
/// the detail names the value and the allowed range.
Result<void> checkFaults(const RehearseFaults& faults, const WeldPlan& plan);

/// What a bend test of the joint says, by the virtual bench.
enum class BendSays {
    Nothing, // the fault does nothing to the joint
    Brittle, // it breaks, at one place at least
    Depends  // on how much, and on the sheet
};
std::string_view toString(BendSays bend); // "no_change", "brittle", "depends"

struct FaultAccount {
    std::string_view code;    // "late_changeover"
    std::string_view option;  // as a terminal's rehearse has it, with its value
    bool needsBench = false;  // physics
    std::string_view finding; // the verdict's row; "": a timer can't see it
    std::string_view grade;   // of that row: "out", "remark", "incomplete"; "": none
    std::string_view why;     // one plain sentence
    BendSays bend = BendSays::Nothing;
    std::string_view also = {}; // a row that the bench's joint may give besides
};
const std::vector<FaultAccount>& faultAccounts();

/// That fault alone, as large as it is usually seen. Missing: there is no such code.
Result<RehearseFaults> singleFault(std::string_view code, const WeldPlan& plan);

} // namespace seamclock
