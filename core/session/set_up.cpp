#include "core/session/set_up.h"

#include "core/shift/trial_series.h"

#include <variant>

namespace seamclock {

namespace {

/// Of a closed trial joint, as a foreman decided last.
TrialState decidedOn(const Weld& weld) {
    TrialState state = TrialState::Waiting;
    for (const Event& event : weld.events) {
        if (const auto* decided = std::get_if<Decided>(&event.d)) {
            state =
                decided->decision == Decision::Accept ? TrialState::Released : TrialState::Refused;
        }
    }
    return state;
}

} // namespace

SetUp setUpOf(const WeldOpened& opened, const Instant& at) {
    SetUp out;
    for (const Sheet& sheet : opened.sheets) {
        out.materials.push_back(sheet.material);
    }
    out.thicknessUm = opened.plan.thicknessUm;
    out.bench = opened.bench;
    out.benchDoc = opened.docs.bench;
    out.day = toIsoDate(at.utc, at.offset);
    return out;
}

SetUp setUpOf(const Weld& weld) {
    return setUpOf(weld.opened(), weld.events.front().at);
}

TrialFinding trialFor(const SetUp& next, const std::vector<Weld>& earlier) {
    TrialSeries<SetUp, TrialFinding> series;
    for (auto weld = earlier.rbegin(); weld != earlier.rend(); ++weld) {
        series.begin(setUpOf(*weld));
        if (weld->opened().type == WeldType::Trial && std::holds_alternative<Closed>(weld->state)) {
            series.tried({decidedOn(*weld), weld->id(), weld->opened().number});
        }
    }
    const TrialFinding* standing = series.standingFor(next);
    return standing != nullptr ? *standing : TrialFinding{};
}

} // namespace seamclock
