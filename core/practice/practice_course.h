// What the scorer looks at, prepared once: what was told (the weld's events that stand, in the
// take's time) beside what was done (the bench at any time). Private to this room.
#pragma once

#include "core/practice/practice_score.h"

#include <functional>
#include <string>
#include <vector>

namespace seamclock {

class PracticeCourse {
public:
    /// All must outlive it.
    PracticeCourse(
        const SetLesson& setLesson, const WeldRecord& weld, const PracticeReplay& takeSeen,
        const JointPhysics& plannedJoint);

    const SetLesson& set;
    const WeldRecord& record;
    const PracticeReplay& replay;
    const JointPhysics& planned;
    std::vector<Retained> told;
    BenchView end;
    /// The bench when soak was told to begin; absent: it never was.
    std::optional<BenchView> soakBegan;

    const WeldPlan& right() const { return set.setup.plan; } // as it ought to be welded
    const WeldPlan& card() const { return record.plan; }     // as it was told
    const PracticeTake& take() const { return replay.take(); }

    Milliseconds timeOf(const Instant& at) const { return at.boot - take().began.boot; }
    /// The first that stands.
    template <class Kind>
    std::optional<Milliseconds> when() const {
        for (const Retained& one : told) {
            if (std::holds_alternative<Kind>(one.d)) {
                return timeOf(one.at);
            }
        }
        return std::nullopt;
    }
    BenchView view(Milliseconds time) const { return replay.at(time).view(); }
    /// The bench from one time to another, so often; false stops it.
    void walk(
        Milliseconds from, Milliseconds to, Milliseconds step,
        const std::function<bool(const BenchView&)>& see) const;

    /// When the last station left the plate for good; who backs off in soak leaves it before, and
    /// then its going out counts.
    std::optional<Milliseconds> plateLeft() const;

    /// By the card: what another card would have asked is said of the card.
    double beadMinMm() const { return static_cast<double>(card().beadMinUm.value_or(0)) / 1e3; }
    double divisionUnits() const {
        return static_cast<double>(set.setup.bench.scale.divisionMilli) / 1e3;
    }
};

double largestBead(const BenchView& view);
double smallestBead(const BenchView& view); // on both surfaces
/// How far the edges' ends stand apart more at one end than where they are closest [mm].
double offParallelMm(const BenchView& view);
/// How far one side of the edges stands behind the other, both sheets together, as clamped [mm].
double leanMm(const BenchView& view);

std::vector<CueReaction> cueReactions(const PracticeCourse& course);
std::vector<ReadingError> readingErrors(const PracticeCourse& course);
std::vector<OrderError> orderErrors(const PracticeCourse& course);
/// In the order in which a weld is made.
std::vector<LapseFinding> lapsesIn(const PracticeCourse& course);

/// Whether soak was told to begin before any bead stood.
bool isClockFromContact(const PracticeCourse& course);

} // namespace seamclock
