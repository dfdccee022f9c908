#include "app/practice/practice_result.h"

namespace seamclock {
namespace {

constexpr double kReplayShare = 0.6; // of the work [practice]
constexpr double kPlannedShare = 0.9;

} // namespace

Result<PracticeResult>
workOut(const PracticeWork& work, const std::function<bool(double share)>& each) {
    const auto goesOn = [&each](double share) { return !each || each(share); };
    const auto stopped = [] {
        return fail(ErrorCode::Refused, "the score is not wanted any more");
    };
    auto set = setLesson(work.lesson, work.shop, LessonFor::MadeAlready);
    if (!set) {
        return tl::unexpected<Error>(set.error());
    }
    auto weld = fold(work.events);
    if (!weld) {
        return tl::unexpected<Error>(weld.error());
    }
    auto replay = PracticeReplay::make(
        set->setup, work.take, [&](double share) { return goesOn(kReplayShare * share); });
    if (!replay) {
        return tl::unexpected<Error>(replay.error());
    }
    if (!goesOn(kReplayShare)) {
        return stopped();
    }
    auto planned = plannedJoint(*set);
    if (!planned) {
        return tl::unexpected<Error>(planned.error());
    }
    if (!goesOn(kPlannedShare)) {
        return stopped();
    }
    WeldRecord made = record(*weld);
    PracticeScore score = practiceScore(*set, made, *replay, *planned);
    return PracticeResult{std::move(*set), std::move(made), std::move(*replay), std::move(score)};
}

} // namespace seamclock
