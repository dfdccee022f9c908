#include "core/session/job_state.h"

#include "core/log/log_reader.h"
#include "core/log/world.h"
#include "core/session/again.h"
#include "core/weld/fold.h"

#include <algorithm>
#include <map>
#include <tuple>
#include <utility>

namespace seamclock {

namespace {

SeamJoint jointOf(JointLine line, const std::vector<Event>& events) {
    SeamJoint out{std::move(line), {}, false, SeamState::ToDecide};
    for (const Event& event : events) {
        if (const auto* decided = std::get_if<Decided>(&event.d)) {
            out.decision = decided->decision;
        }
        out.melted = out.melted || std::holds_alternative<AlignmentStarted>(event.d);
    }
    if (const auto weld = fold(events)) {
        out.makes = seamStateOf(*weld);
    }
    return out;
}

std::pair<JobSeamState, std::string> stateBy(const SeamJoint& joint) {
    const std::string number = "joint " + std::to_string(joint.line.number);
    if (joint.line.phase == "damaged") {
        return {JobSeamState::ToDecide, number + " can't be read: " + joint.line.trouble};
    }
    if (joint.line.open) {
        return {JobSeamState::Running, joint.line.phase};
    }
    switch (joint.makes) {
    case SeamState::Made:
        return {JobSeamState::Done, ""};
    case SeamState::ToDecide:
        return {JobSeamState::ToDecide, number + " is " + joint.line.verdict + " and not decided"};
    case SeamState::ToRepair:
        return {JobSeamState::ToRedo, number + " is to be repaired"};
    case SeamState::CutOut:
        if (joint.decision == Decision::CutOut) {
            return {JobSeamState::CutOut, number + " was cut out"};
        }
        break;
    case SeamState::Open:
        break;
    }
    return {JobSeamState::ToRedo, number + " was stopped"};
}

// The re-weld first, whatever the clock on the wall said, as made_seams has it.
bool decidesBefore(const SeamJoint& a, const SeamJoint& b) {
    const auto place = [](const SeamJoint& joint) {
        return std::tuple(reweldsOf(joint.line.seam), joint.line.openedUtc, joint.line.number);
    };
    return place(a) > place(b);
}

void judge(SeamProgress& seam) {
    std::vector<const SeamJoint*> joints;
    for (const SeamJoint& joint : seam.joints) {
        joints.push_back(&joint);
    }
    std::stable_sort(joints.begin(), joints.end(), [](const SeamJoint* a, const SeamJoint* b) {
        return decidesBefore(*a, *b);
    });
    auto decides = std::find_if(joints.begin(), joints.end(), [](const SeamJoint* joint) {
        return joint->makes != SeamState::Open;
    });
    if (decides == joints.end()) {
        decides = std::find_if(
            joints.begin(), joints.end(), [](const SeamJoint* joint) { return joint->melted; });
    }
    if (decides != joints.end()) {
        std::tie(seam.state, seam.why) = stateBy(**decides);
        seam.weld = (*decides)->line.weld;
    }
}

} // namespace

std::string_view toString(JobSeamState state) {
    switch (state) {
    case JobSeamState::Open:
        return "open";
    case JobSeamState::Running:
        return "running";
    case JobSeamState::Done:
        return "done";
    case JobSeamState::ToDecide:
        return "to_decide";
    case JobSeamState::ToRedo:
        return "to_redo";
    case JobSeamState::CutOut:
        return "cut_out";
    }
    return "";
}

std::size_t JobProgress::count(JobSeamState state) const {
    return static_cast<std::size_t>(std::count_if(
        seams.begin(), seams.end(), [state](const auto& seam) { return seam.state == state; }));
}

Result<JobProgress> jobProgress(
    LogReader& log, const std::vector<JobSeam>& seams, const std::optional<std::string>& fromDay) {
    JobProgress out;
    std::multimap<std::string, std::size_t> places; // by label
    JointFilter filter;
    filter.fromDay = fromDay;
    filter.seams.emplace();
    for (const JobSeam& seam : seams) {
        places.emplace(seam.label, out.seams.size());
        out.seams.push_back({seam.job, seam.label, JobSeamState::Open, "", "", {}});
        filter.seams->push_back(seam.label);
    }
    const bool oneJob = std::all_of(seams.begin(), seams.end(), [&seams](const JobSeam& seam) {
        return seam.job == seams.front().job;
    });
    if (oneJob && !seams.empty()) {
        filter.job = seams.front().job;
    }
    // The welds that count are those of the log's own world.
    const std::string counts(
        toString(log.world() == Practice::kName ? WeldType::Practice : WeldType::Production));
    std::vector<JointLine> found;
    const auto read = log.eachJoint(filter, [&](const JointLine& line) {
        if (line.type == counts) {
            found.push_back(line);
        }
        return true;
    });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    for (JointLine& line : found) {
        auto of = places.equal_range(line.seam);
        of = of.first != of.second ? of : places.equal_range(std::string(seamOf(line.seam)));
        const bool known = std::any_of(of.first, of.second, [&](const auto& place) {
            return isOfJob(seams[place.second], line.job);
        });
        const auto place = std::find_if(of.first, of.second, [&](const auto& one) {
            const JobSeam& seam = seams[one.second];
            return isOfJob(seam, line.job) &&
                   (line.phase == "damaged" || hasSheetsOf(seam, line.material, line.thicknessUm));
        });
        if (place == of.second) {
            if (known) {
                out.elsewhere.push_back(std::move(line));
            }
            continue;
        }
        auto events =
            line.phase == "damaged" ? Result<std::vector<Event>>() : log.weldEvents(line.weld);
        if (!events && events.error().code != ErrorCode::Damaged) {
            return tl::unexpected<Error>(events.error());
        }
        if (!events) { // since its line was worked out
            line.phase = "damaged";
            line.trouble = events.error().detail;
            events.emplace();
        }
        out.seams[place->second].joints.push_back(jointOf(std::move(line), *events));
    }
    for (SeamProgress& seam : out.seams) {
        judge(seam);
    }
    return out;
}

} // namespace seamclock
