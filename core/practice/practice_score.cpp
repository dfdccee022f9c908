#include "core/practice/practice_score.h"

#include "core/practice/practice_course.h"

#include <algorithm>
#include <array>
#include <set>
#include <utility>

namespace seamclock {
namespace {

constexpr std::array<std::pair<Lapse, std::string_view>, 17> kNames{{
    {Lapse::SoakPressed, "soak_pressed"},
    {Lapse::BackedOff, "backed_off"},
    {Lapse::ClockFromContact, "clock_from_contact"},
    {Lapse::SlowChangeover, "slow_changeover"},
    {Lapse::Slammed, "slammed"},
    {Lapse::LetBack, "let_back"},
    {Lapse::NotFollowed, "not_followed"},
    {Lapse::EarlyRelease, "early_release"},
    {Lapse::PlateCold, "plate_cold"},
    {Lapse::PlateDirty, "plate_dirty"},
    {Lapse::PlateHot, "plate_hot"},
    {Lapse::OffParallel, "off_parallel"},
    {Lapse::TopBeadOnly, "top_bead_only"},
    {Lapse::EdgeTouched, "edge_touched"},
    {Lapse::FilmLeft, "film_left"},
    {Lapse::WrongRow, "wrong_row"},
    {Lapse::WrongUnit, "wrong_unit"},
}};

using Reasons = std::vector<BendReason>;

/// What a lapse does to a joint; the bend test says whether it did.
Reasons harmOf(Lapse lapse) {
    switch (lapse) {
    case Lapse::SoakPressed:
    case Lapse::ClockFromContact:
    case Lapse::BackedOff:
        return {BendReason::ThinMelt, BendReason::ColdSkin, BendReason::Notch};
    case Lapse::PlateCold:
        return {BendReason::Underheated, BendReason::ThinMelt, BendReason::ColdSkin};
    case Lapse::WrongRow:
        return {
            BendReason::ThinMelt, BendReason::LowPressure, BendReason::NotFrozen,
            BendReason::Kinked, BendReason::Notch};
    case Lapse::SlowChangeover:
        return {BendReason::ColdSkin, BendReason::ThinMelt};
    case Lapse::Slammed:
        return {BendReason::ThinMelt, BendReason::Notch};
    case Lapse::LetBack:
    case Lapse::NotFollowed:
    case Lapse::WrongUnit:
        return {BendReason::LowPressure, BendReason::Notch, BendReason::NotJoined};
    case Lapse::EarlyRelease:
        return {BendReason::NotFrozen, BendReason::Kinked, BendReason::LowPressure};
    case Lapse::PlateHot:
        return {BendReason::Overheated};
    case Lapse::OffParallel:
        return {BendReason::ThinMelt, BendReason::NotJoined, BendReason::Notch};
    case Lapse::TopBeadOnly:
        return {BendReason::NotClosedBelow, BendReason::Notch};
    case Lapse::PlateDirty:
    case Lapse::EdgeTouched:
    case Lapse::FilmLeft:
        return {BendReason::Contaminated};
    }
    return {};
}

bool brokeThe(const BendTest& bend, const LapseFinding& finding) {
    const Reasons harm = harmOf(finding.lapse);
    for (std::size_t i = 0; i < bend.stations.size(); ++i) {
        const auto& where = finding.where;
        const bool here = where.empty() ||
                          std::find(where.begin(), where.end(), static_cast<int>(i)) != where.end();
        const Reasons& reasons = bend.stations[i].reasons;
        if (here && std::find_first_of(reasons.begin(), reasons.end(), harm.begin(), harm.end()) !=
                        reasons.end()) {
            return true;
        }
    }
    return false;
}

/// The verdict's values that this weld has, by the codes of their findings.
std::vector<std::string> valuesJudged(const WeldRecord& record) {
    const auto checked = [&record](std::string_view code) {
        return std::any_of(record.checks.begin(), record.checks.end(), [code](const Retained& one) {
            const auto* check = std::get_if<CheckMade>(&one.d);
            return check != nullptr && check->check == code && (check->valueMc || check->valueUm);
        });
    };
    const auto read = [&record](ReadingPhase phase) {
        return std::any_of(
            record.readings.begin(), record.readings.end(),
            [phase](const Retained& one) { return std::get<ReadingTaken>(one.d).phase == phase; });
    };
    const auto took = [&record](std::string_view phase) {
        return std::any_of(
            record.phases.begin(), record.phases.end(), [phase](const PhaseRecord& one) {
                return one.phase == phase && one.took && one.toN != 0;
            });
    };
    const std::pair<const char*, bool> kRows[] = {
        {"plate_temperature", checked("plate_temperature")},
        {"alignment_bead", checked("alignment_bead")},
        {"soak_pressure", read(ReadingPhase::Soak)},
        {"soak_time", took("soak")},
        {"changeover", took("changeover")},
        {"build_up", took("build_up")},
        {"joining_reading", read(ReadingPhase::Joining)},
        {"recheck_missed",
         took("cooling") && record.plan.cooling && !record.plan.cooling->rechecks.empty()},
        {"cooling", took("cooling")},
        {"misalignment", !record.beads.empty()},
        {"bead_k", !record.beads.empty()},
    };
    std::vector<std::string> judged;
    for (const auto& [code, is] : kRows) {
        if (is) {
            judged.emplace_back(code);
        }
    }
    return judged;
}

void countLimits(PracticeScore& score, const WeldRecord& record) {
    for (const std::string& code : valuesJudged(record)) {
        ++score.judged;
        const auto& findings = score.verdict.findings;
        const bool found = std::any_of(findings.begin(), findings.end(), [&](const Finding& each) {
            return each.code == code;
        });
        score.inLimits += found ? 0 : 1;
    }
}

void countNoticed(PracticeScore& score, const Lesson& lesson, const PracticeTake& take) {
    const std::vector<Wrong> there = wrongIn(lesson);
    const auto isIn = [](const std::vector<Wrong>& all, Wrong what) {
        return std::find(all.begin(), all.end(), what) != all.end();
    };
    for (const Wrong what : lesson.notice) {
        NoticeScore notice{what, {}};
        for (const Noticed& said : take.noticed) {
            if (said.what == what && !notice.at) {
                notice.at = said.at;
            }
        }
        // Who shims the edge has seen it.
        const auto shimmed =
            std::find_if(take.acts.begin(), take.acts.end(), [](const TimedAct& one) {
                const auto* shim = std::get_if<ShimSheet>(&one.act);
                return shim != nullptr && shim->belowUm != 0;
            });
        if (what == Wrong::EdgeLeans && shimmed != take.acts.end()) {
            notice.at = std::min(notice.at.value_or(shimmed->at), shimmed->at);
        }
        score.notice.push_back(notice);
    }
    for (const Noticed& said : take.noticed) {
        if (!isIn(there, said.what) && !isIn(score.falseAlarms, said.what)) {
            score.falseAlarms.push_back(said.what);
        }
    }
}

JointPhysics physicsOf(const PracticeCourse& course) {
    JointPhysics made;
    const BenchInstants& instants = course.end.instants;
    made.end = course.end;
    made.joining = instants.facesMet ? course.view(*instants.facesMet) : course.end;
    made.release = instants.letGo ? course.view(*instants.letGo - Milliseconds(1)) : course.end;
    made.bend = bendTest(course.end, course.right());
    return made;
}

} // namespace

std::string_view toString(Lapse lapse) {
    const auto* const found = std::find_if(
        kNames.begin(), kNames.end(), [lapse](const auto& entry) { return entry.first == lapse; });
    return found->second;
}

const std::vector<Lapse>& allLapses() {
    static const std::vector<Lapse> kAll = [] {
        std::vector<Lapse> all;
        for (const auto& [lapse, name] : kNames) {
            all.push_back(lapse);
        }
        return all;
    }();
    return kAll;
}

Result<JointPhysics> plannedJoint(const SetLesson& set) {
    BenchSetup setup = set.setup;
    setup.faults = {};
    setup.plateWarm = true;
    auto bench = VirtualBench::set(setup);
    if (!bench) {
        return tl::unexpected<Error>(bench.error());
    }
    SteadyHand hand(*bench, {});
    JointPhysics joint;
    for (Result<void> (SteadyHand::*phase)() :
         {&SteadyHand::prepare, &SteadyHand::align, &SteadyHand::soak, &SteadyHand::changeOver,
          &SteadyHand::buildUp, &SteadyHand::cool, &SteadyHand::release}) {
        if (phase == &SteadyHand::buildUp) {
            joint.joining = bench->view();
        } else if (phase == &SteadyHand::release) {
            joint.release = bench->view();
        }
        if (auto done = (hand.*phase)(); !done) {
            return tl::unexpected<Error>(done.error());
        }
    }
    joint.end = bench->view();
    joint.bend = bendTest(joint.end, setup.plan);
    return joint;
}

PracticeScore practiceScore(
    const SetLesson& set, const WeldRecord& record, const PracticeReplay& replay,
    const JointPhysics& planned) {
    const PracticeCourse course(set, record, replay, planned);
    PracticeScore score;
    score.verdict = record.verdict;
    countLimits(score, record);
    score.reactions = cueReactions(course);
    score.readings = readingErrors(course);
    score.order = orderErrors(course);
    countNoticed(score, set.lesson, replay.take());
    score.made = physicsOf(course);
    score.planned = planned;
    score.lapses = lapsesIn(course);
    std::stable_partition(
        score.lapses.begin(), score.lapses.end(),
        [&score](const LapseFinding& finding) { return brokeThe(score.made.bend, finding); });
    return score;
}

} // namespace seamclock
