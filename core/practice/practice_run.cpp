#include "core/practice/practice_run.h"

#include "core/base/overloaded.h"
#include "core/weld/cues.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace seamclock {
namespace {

constexpr double kPlateNear = 0.5; // [K] of its target: there is nothing to wait for [practice]

/// Whether a cue asks for hands that are quick, or for a look at the scale. In cooling, get ready
/// only says that the end is near.
bool wantsTrueTime(const Weld& weld, const Cue& cue) {
    switch (cue.kind) {
    case CueKind::GetReady:
        return !std::holds_alternative<Cooling>(weld.state);
    case CueKind::ProgramLost:
    case CueKind::ChangeoverOverrun:
    case CueKind::ActNow:
    case CueKind::BuildUpLate:
    case CueKind::CountIn:
    case CueKind::RecheckDue:
    case CueKind::CoolingDone:
        return true;
    case CueKind::RowNotSaved:
    case CueKind::ClockJumped:
    case CueKind::BatteryLow:
    case CueKind::NoSound:
    case CueKind::AlignmentLate:
        return false;
    }
    return true;
}

bool mayHurryIn(const State& state) {
    return std::visit(
        Overloaded{
            [](const Aligning&) { return true; }, [](const Soaking&) { return true; },
            [](const Cooling&) { return true; }, [](const auto&) { return false; }},
        state);
}

} // namespace

PracticeRun::PracticeRun(SetLesson set, VirtualBench bench, VirtualClock& clock)
    : m_set(std::move(set)), m_bench(std::move(bench)), m_clock(&clock) {
    m_take.lesson = m_set.lesson.id;
    m_take.began = m_clock->now();
    m_take.procedureSha256 = m_set.order.procedure.sha256;
    m_take.benchSha256 = m_set.bench.sha256;
}

Result<PracticeRun> PracticeRun::begin(const SetLesson& set, VirtualClock& clock) {
    auto bench = VirtualBench::set(set.setup);
    if (!bench) {
        return tl::unexpected<Error>(bench.error());
    }
    return PracticeRun(set, std::move(*bench), clock);
}

Result<void> PracticeRun::act(const BenchAct& act) {
    const Result<void> done = m_bench.act(act);
    if (done) {
        m_take.acts.push_back({now(), act});
    } else if (done.error().code == ErrorCode::Refused) {
        m_take.tries.push_back({now(), act});
    }
    return done;
}

void PracticeRun::notice(Wrong what) {
    m_take.noticed.push_back({now(), what});
}

void PracticeRun::takeCall() {
    m_take.callTaken = true;
    m_take.callAt = now();
}

void PracticeRun::advance(Milliseconds gap) {
    if (gap.count() <= 0) {
        return;
    }
    m_bench.advance(gap);
    m_clock->advance(gap);
}

bool PracticeRun::waitsForPlate(const Weld& weld) const {
    const BenchView seen = m_bench.view();
    const double ambientC = static_cast<double>(m_set.setup.plan.ambientMc) / 1e3;
    return std::holds_alternative<Preparing>(weld.state) && seen.plateInside <= 0 &&
           seen.wheelMmPerS == 0 &&
           std::abs(seen.plateShownC - std::max(seen.plateTargetC, ambientC)) > kPlateNear;
}

PracticeTake PracticeRun::take(const std::string& weld) const {
    PracticeTake take = m_take;
    take.weld = weld;
    take.length = now();
    return take;
}

bool mayHurry(const Weld& weld, const Instant& now) {
    const auto t = weldTimeAt(weld, now);
    if (!t || !mayHurryIn(weld.state)) {
        return false;
    }
    const std::vector<Cue> cues = cuesAt(weld, *t);
    return std::none_of(
        cues.begin(), cues.end(), [&weld](const Cue& cue) { return wantsTrueTime(weld, cue); });
}

Milliseconds paced(const Weld* weld, const Instant& now, Milliseconds frame, int pace) {
    if (weld == nullptr || pace <= 1 || !mayHurry(*weld, now)) {
        return frame;
    }
    Milliseconds gap = frame * pace;
    const auto t = weldTimeAt(*weld, now);
    for (const Cue& cue : cuesUntil(*weld, *t, gap)) {
        if (wantsTrueTime(*weld, cue)) {
            gap = std::min(gap, std::max(cue.onset, Milliseconds(1)));
        }
    }
    return gap;
}

const std::vector<int>& practicePaces() {
    static const std::vector<int> kPaces{1, 2, 5, 10, 30};
    return kPaces;
}

} // namespace seamclock
