// What is said of a practice weld: first by the verdict, as of every weld; then by how the hands
// kept to it; then by the physics, which a timer can't see. Each finding has its why, and beside
// what was stands what would have been: the same lesson welded by a steady hand by the right plan.
#pragma once

#include "core/practice/practice_replay.h"
#include "core/vbench/bend_test.h"
#include "core/vbench/steady_hand.h"
#include "core/weld/cues.h"
#include "core/weld/record.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// How long after a cue began the step came that it asks for; negative: before it.
struct CueReaction {
    CueKind cue = CueKind::ActNow;
    Milliseconds at{0}; // of the take
    Milliseconds took{0};

    bool operator==(const CueReaction&) const = default;
};

/// A number that was typed in, beside what the bench showed at that time.
struct ReadingError {
    std::string what; // "plate_temperature", "drag", "recheck", "bead", "k", "joining"
    Milliseconds at{0};
    double said = 0;
    double was = 0;
    double allowed = 0; // as far off a careful eye may be
    std::string unit;   // "C", "mm", or the scale's

    bool operator==(const ReadingError&) const = default;
};

/// A step that was told but not done, or done and told late, or done against the order of things.
struct OrderError {
    std::string code; // a mishap's, or "told_not_done:plate_out" …
    Milliseconds at{0};
    double size = 0;

    bool operator==(const OrderError&) const = default;
};

/// The mistakes that practice must teach.
enum class Lapse {
    SoakPressed,      // melt pressed out, a fat bead over a brittle joint
    BackedOff,        // an air gap in soak
    ClockFromContact, // soak counted from before the bead stood and the pressure was off
    SlowChangeover,   // or a draught: a skin on the faces
    Slammed,
    LetBack,     // the reading was let fall after the lock
    NotFollowed, // the reading fell and was not topped up
    EarlyRelease,
    PlateCold,
    PlateDirty,
    PlateHot,
    OffParallel, // a bead is missing at one end
    TopBeadOnly, // nobody looked below
    EdgeTouched,
    FilmLeft,
    WrongRow,
    WrongUnit
};
std::string_view toString(Lapse lapse); // "soak_pressed"
const std::vector<Lapse>& allLapses();

struct LapseFinding {
    Lapse lapse = Lapse::SoakPressed;
    std::optional<double> was; // what shows it, and what it would have been
    std::optional<double> planned;
    std::string unit;       // "mm", "C", "s", "Pa"
    std::vector<int> where; // stations; empty: all along

    bool operator==(const LapseFinding&) const = default;
};

struct NoticeScore {
    Wrong what = Wrong::PlateCold;
    std::optional<Milliseconds> at; // absent: not noticed

    bool operator==(const NoticeScore&) const = default;
};

/// The joint as the physics has it, the steady hand's beside it.
struct JointPhysics {
    BenchView joining; // when the faces had met
    BenchView release; // when they were let go, or the end
    BenchView end;
    BendTest bend;

    bool operator==(const JointPhysics&) const = default;
};

struct PracticeScore {
    Verdict verdict;
    int judged = 0;   // of the verdict's values: temperatures, times, readings
    int inLimits = 0; // of those
    std::vector<CueReaction> reactions;
    std::vector<ReadingError> readings; // all that were typed; who is off says `said` and `allowed`
    std::vector<OrderError> order;
    std::vector<NoticeScore> notice;
    std::vector<Wrong> falseAlarms;   // said, and nothing was wrong with it
    std::vector<LapseFinding> lapses; // the gravest first
    JointPhysics made;
    JointPhysics planned;
};

/// The joint that a steady hand makes of this lesson by its right plan, with nothing wrong.
Result<JointPhysics> plannedJoint(const SetLesson& set);

PracticeScore practiceScore(
    const SetLesson& set, const WeldRecord& record, const PracticeReplay& replay,
    const JointPhysics& planned);

} // namespace seamclock
