// A virtual operator who makes one whole weld on a virtual bench, into a practice log, through the
// same door as a person: Session<Practice>. What he does next is a function of the weld as it
// stands, his seed, his skill and the faults he was asked for; so a rehearsal that was killed and
// started again goes on from the fold as if nothing had happened. By default he lives on a clock of
// his own (boot id "practice:UUID", from 2030-01-07T06:00Z) and computes his own instants: waiting
// for him (Pacer) changes nothing in the record. With true time he uses the machine's clock and
// really waits.
//
// Without physics his hand's times and readings are plausible, seeded and invented here [practice].
// With physics he moves the bench of core/vbench: the bead stands when it stands there, he reads
// its scale, and it knows what became of the joint (bench_weld.h says what of it is the same on
// every machine).
#pragma once

#include "core/base/result.h"
#include "core/practice/bench_weld.h"
#include "core/practice/pacer.h"
#include "core/rescue/set_aside.h"
#include "core/session/after_cut.h"
#include "core/session/order.h"
#include "core/shift/voice.h"
#include "core/weld/cues.h"
#include "core/weld/record.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// Where every practice clock begins: 2030-01-07T06:00Z, a Monday.
inline constexpr Milliseconds kPracticeStart{1'893'996'000'000};

struct RehearseOptions {
    WeldOrder order; // its type is set to practice; without sheets, two of the procedure's material
    std::uint64_t seed = 1;
    RehearseFaults faults;
    std::string logPath; // made with its parents if it isn't there
    bool trueTime = false;
    // Goes on with the log's last open weld, by the clock it was begun with. Seed and faults are to
    // be given again; `order` is not looked at.
    bool resume = false;
    RebootWord word = RebootWord::None;
    std::string by = "person:practice";
    std::chrono::minutes offset{0}; // of the virtual clock's local time
    std::int64_t handPercent = 100; // of his times for checks, release and inspection
    int skill = kPerfect;           // 0 to 100
    // What the sheets are made of: then the weld is made on the virtual bench.
    std::optional<Material> physics;
    // What the program has at hand, should the log be damaged and its own copies lost.
    std::vector<LogDocument> known;
};

/// One cue with the instant at which it begins.
struct CueNote {
    Instant at;
    Cue cue;

    bool operator==(const CueNote&) const = default;
};

/// What was found when a rehearsal was resumed.
struct ResumeNote {
    std::string phase;               // in which the weld was
    std::optional<WeldTime> inPhase; // how long it had been, at the resumption, bridge included
    bool rebooted = false;
    std::optional<ClockBridged> bridge;
    bool aborted = false;    // by the default or by the person's word
    std::int64_t events = 0; // that were there

    bool operator==(const ResumeNote&) const = default;
};

/// Follows a rehearsal while it goes: called in the order of time, from rehearse()'s own thread.
class RehearseWatcher {
public:
    virtual ~RehearseWatcher() = default;
    virtual void planned(const Weld& weld, bool resumed) = 0; // the card can be shown
    virtual void happened(const Weld& weld, const Event& event) = 0;
    virtual void cued(const Weld& weld, const CueNote& cue) = 0;
    virtual void saved(const Weld& weld, std::int64_t n) = 0; // event n is on disk
    virtual void setAside(const SetAside& /*aside*/) {}       // the log was damaged
    /// Rows can't be written just now, in one sentence; empty: they can again.
    virtual void trouble(const std::string& /*detail*/) {}
};

struct RehearseTools {
    // The machine's clock, and what waits on it at the speed of time: for true time, also where it
    // is the resumed weld that lives by the machine's clock.
    const Clock* machine = nullptr;
    Pacer* machinePacer = nullptr;
    Pacer* pacer = nullptr;             // for a practice clock; absent: unpaced
    RehearseWatcher* watcher = nullptr; // may be absent
};

struct RehearseResult {
    std::string weld; // "weld:UUID"
    WeldPlan plan;
    std::vector<Event> events;       // all of the weld
    std::vector<CueNote> cues;       // of the part that this call made
    std::vector<Sounding> soundings; // what one voice makes of them; times are the boot clock's
    std::vector<Dropped> dropped;    // cues that never sounded, and why
    WeldRecord record;               // with the verdict
    std::string logPath;
    std::optional<ResumeNote> resumed;
    std::optional<SetAside> aside; // the log was damaged
    std::string notSaved;          // what did not reach the log, in words; empty when all is well
    std::vector<std::int64_t> leftOpen; // numbers of other welds that stand open in this log
    std::optional<BenchStory> bench;    // with physics
};

/// Returns when the weld is closed or aborted and its rows are in the log. OutOfRange: a fault that
/// can't be made with this plan, an unknown check or phase; and as makePlan. NotWritten: the folder
/// or log can't be made. Foreign, Damaged, Unreadable: as the log says. Missing: nothing to resume,
/// or true time without a machine clock. Conflict: another program writes this log, or a practice
/// clock's weld was to be resumed in true time. Refused: as SessionBase::settle, a fault of the
/// bench's without physics, and a weld with physics that was to be resumed. With physics also as
/// weldOnBench.
Result<RehearseResult> rehearse(const RehearseOptions& options, const RehearseTools& tools);

/// One weld of several. Of its options only what is the weld's own counts: neither log nor clock.
struct SeriesStep {
    RehearseOptions options;
    Milliseconds notBefore{0}; // on the wall clock
};

struct SeriesWeld {
    WeldRecord record;
    RehearseFaults faults;           // with what slipped besides
    std::optional<BenchStory> bench; // with physics
};

struct SeriesResult {
    std::int64_t welds = 0;
    std::string logPath;
    std::optional<SetAside> aside; // the log was damaged
    std::string notSaved;          // what did not reach the log, in words; empty when all is well
};

/// Many welds, one after the other on one practice clock that begins as rehearse()'s, into one log
/// that is opened once. `next` gives the step of that number, from 0, until there is none; `done`
/// may be empty. Errors as rehearse(); what was made before stands in the log.
Result<SeriesResult> rehearseSeries(
    const std::string& logPath, const std::function<std::optional<SeriesStep>(std::int64_t)>& next,
    const std::function<void(const SeriesWeld&)>& done);

} // namespace seamclock
