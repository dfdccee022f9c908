// The day's plan: which seam is begun when, on which bench and by whom, so that the last joint is
// out early. What it promises is a plan that can be kept, not the best one; beside it stands a
// bound that no plan can beat, so that everybody sees how much there is to gain.
//
// What a joint takes: somebody prepares it and stays with it to the lock (alignment, soak,
// changeover, build-up), in one stretch; it cools on its bench alone; then anybody releases it, and
// only then the bench is free. A person does one stretch at a time and none is broken off. That is
// the whole rule of clashes: no changeover or build-up ever falls into another stretch of the same
// person, and two people may change over at two benches at once. A bench whose plate was used for
// another material or temperature wants a wait (plateWait), which begins when the plate is free,
// at the end of build-up, and must be over before the alignment; preparing goes on meanwhile.
//
// A seam of a set-up that its bench has no trial joint for is made twice over: first the trial
// joint, by the same times and one who may weld it; when it has left the bench somebody decides on
// it, who is none of those who weld here (a foreman), and until then the bench waits; then the seam
// itself. That is the rule that session asks at the bench (trial_series.h). A plan that goes past
// midnight asks for no second one: it is one day's.
//
// The rule: the seams stand in a list. Whoever can begin something first does it; of what can be
// begun at the same time, a release or the first seam of the list, by one who may weld fewer of
// them. The list is read in four ways: releases first or last, with overtaking or without; for each
// it is sorted in four ways (by what is longest), and the best is taken. Then each seam is tried at
// every other place and kept for every bench, and all seams of a set-up together on one bench, and
// what ends the day earlier stays. Nothing is left to chance.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// What a plate was last used for, or is wanted for.
struct PlateUse {
    std::string material;
    std::int64_t targetMc = 0; // [m°C]

    bool operator==(const PlateUse&) const = default;
};

/// Of a plate that was switched off; its material is "".
inline constexpr std::int64_t kColdPlateMc = 20'000;
/// The wait after the plate's temperature is reached: ten minutes, from memory of DVS 2207-1
/// (trade.md), also after another material at the same temperature, which is chosen.
inline constexpr Milliseconds kPlateHold{600'000};
/// Chosen: 12 s for a kelvin, up and down. A bench's own is not asked for yet.
inline constexpr Milliseconds kPlatePerKelvin{12'000};

/// 0 for the same use.
Milliseconds plateWait(const PlateUse& from, const PlateUse& to);

/// Chosen: from the trial joint's leaving its bench to a foreman's word on it.
inline constexpr Milliseconds kChosenDecision{900'000};

/// What one seam takes on one bench.
struct SeamTimes {
    Milliseconds preparation{0};
    Milliseconds alignment{0};
    Milliseconds soak{0};
    Milliseconds changeover{0};
    Milliseconds buildUp{0};
    Milliseconds cooling{0};
    Milliseconds release{0};
    PlateUse plate;

    /// From the beginning of preparation to the lock.
    Milliseconds hands() const { return preparation + alignment + soak + changeover + buildUp; }
    /// The bench is taken for so long, if nobody waits.
    Milliseconds whole() const { return hands() + cooling + release; }
    bool operator==(const SeamTimes&) const = default;
};

struct DaySeam {
    std::string label;
    std::vector<std::optional<SeamTimes>> on; // for each bench; absent: can't be made there
    std::string whyNot;                       // a sentence, for a seam that no bench makes
    std::vector<bool> welders{}; // for each person, whether he may weld it; empty: anybody
    std::string setUp{};         // what a trial joint for it is made for; empty: none is asked for

    bool operator==(const DaySeam&) const = default;
};

/// A weld that is under way when the plan is made.
struct DayRunning {
    std::string label;
    SeamTimes left;         // of each stretch what is still to come
    std::size_t person = 0; // who is with it, while left.hands() is not 0
    bool trial = false;
    Milliseconds plateWait{0}; // of left.preparation, until its plate has settled

    bool operator==(const DayRunning&) const = default;
};

/// A trial joint that is made, or that runs on the bench.
struct DayTried {
    std::string setUp;
    Milliseconds decision{0}; // still to come; counted from its leaving the bench if it runs there
    std::string label{};      // the trial joint's

    bool operator==(const DayTried&) const = default;
};

struct DayBench {
    std::string id;
    PlateUse plate{"", kColdPlateMc}; // as it stands now; of a running weld's bench, that weld's
    std::optional<DayRunning> running;
    std::optional<DayTried> tried{}; // absent: every set-up wants its trial joint

    bool operator==(const DayBench&) const = default;
};

struct DayWork {
    std::vector<DayBench> benches;
    std::vector<std::string> people; // names or ids
    std::vector<DaySeam> seams;      // those that are still to be begun
    Milliseconds decision = kChosenDecision;

    bool operator==(const DayWork&) const = default;
};

enum class DayKind {
    PlateWait,
    Preparation,
    Alignment,
    Soak,
    Changeover,
    BuildUp,
    Cooling,
    Cooled, // over, and nobody has come yet
    Release,
    Decision // on a trial joint: a foreman tests it and releases the series
};

std::string_view toString(DayKind kind); // "plate_wait", "preparation", …
/// Whether somebody is with the bench.
bool needsPerson(DayKind kind);

/// Times count from the moment of planning.
struct DayStretch {
    DayKind kind = DayKind::Preparation;
    std::string label; // the seam's
    std::size_t bench = 0;
    std::optional<std::size_t> person; // where somebody is with it
    Milliseconds from{0};
    Milliseconds to{0};
    bool trial = false; // of the seam's trial joint

    bool operator==(const DayStretch&) const = default;
};

/// What no plan can beat, and why.
enum class DayLimit {
    Nothing, // there is nothing to do
    People,  // all hands are full; of these people, who alone may weld so much
    Benches, // these benches are taken for so long
    OneSeam  // this seam alone takes so long
};

std::string_view toString(DayLimit limit); // "people", …

struct DayBound {
    Milliseconds atLeast{0};
    DayLimit by = DayLimit::Nothing;
    std::vector<std::string> which; // benches' ids, people, or the seam's label; none: all people

    bool operator==(const DayBound&) const = default;
};

struct DayImpossible {
    std::string label;
    std::string why;

    bool operator==(const DayImpossible&) const = default;
};

struct DayPlan {
    std::vector<DayStretch> stretches; // by `from`, then bench; none of no length
    Milliseconds finish{0};            // the last joint is out
    DayBound bound;
    std::vector<DayImpossible> impossible; // left out of the plan

    bool operator==(const DayPlan&) const = default;
};

inline constexpr std::size_t kMostDaySeams = 500;
inline constexpr std::size_t kMostDayBenches = 20;
inline constexpr std::size_t kMostDayPeople = 20;
inline constexpr Milliseconds kLongestDayTime{7LL * 24 * 3'600'000}; // of one stretch
/// How many lists are tried at most while seams change places, fewer for many seams and benches, so
/// that the plan is there at once.
inline constexpr std::size_t kMostDayTries = 4'000;

/// OutOfRange: no bench or nobody for seams that are there, more than the numbers above, a time
/// or a decision that is negative or longer than that, a seam with times for another number of
/// benches or welders for another number of people, a running weld of somebody who isn't there or
/// whose plate waits longer than it is prepared.
Result<DayPlan> planDay(const DayWork& work);

/// The bound alone: the greatest of what people's work, that of those who alone may weld something,
/// the benches' work and the longest seam ask for (day_bound.cpp has the proof of each).
DayBound boundOf(const DayWork& work);

} // namespace seamclock
