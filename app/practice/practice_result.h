// What is known of a practice weld when it is over, from the take to the score: the one value that
// result, replay and history show.
#pragma once

#include "core/practice/practice_score.h"

#include <functional>

namespace seamclock {

struct PracticeWork {
    Lesson lesson;
    PracticeShop shop;
    PracticeTake take;
    std::vector<Event> events; // of its weld
};

struct PracticeResult {
    SetLesson set;
    WeldRecord record;
    PracticeReplay replay;
    PracticeScore score;
};

/// `each` is told the share that is done, and stops it by false. Refused then; else as fold,
/// setLesson, PracticeReplay::make and plannedJoint.
Result<PracticeResult>
workOut(const PracticeWork& work, const std::function<bool(double share)>& each = {});

} // namespace seamclock
