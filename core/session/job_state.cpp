#include "core/session/job_state.h"

#include "core/log/log_reader.h"
#include "core/log/world.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace seamclock {

namespace {

/// Sheets of one nominal thickness: their difference is at most a tenth (core/plan/sheets.h).
bool isAboutAsThick(std::int64_t a, std::int64_t b) {
    return 10 * std::abs(a - b) <= std::min(a, b);
}

/// "S3" of "S3/R1"; a label without such an end as it is.
std::string withoutReweld(const std::string& label) {
    const auto at = label.rfind("/R");
    const bool again = at != std::string::npos && at + 2 < label.size() &&
                       label.find_first_not_of("0123456789", at + 2) == std::string::npos;
    return again ? label.substr(0, at) : label;
}

bool isOf(const JobSeam& seam, const JointLine& line) {
    return !seam.sheets.empty() && seam.sheets.front().material == line.material &&
           isAboutAsThick(seam.sheets.front().thicknessUm, line.thicknessUm);
}

SeamJoint jointOf(JointLine line, const std::vector<Event>& events) {
    SeamJoint out{std::move(line), {}, false};
    for (const Event& event : events) {
        if (const auto* decided = std::get_if<Decided>(&event.d)) {
            out.decision = decided->decision;
        }
        out.melted = out.melted || std::holds_alternative<AlignmentStarted>(event.d);
    }
    return out;
}

std::pair<JobSeamState, std::string> stateBy(const SeamJoint& joint) {
    const std::string number = "joint " + std::to_string(joint.line.number);
    if (joint.line.phase == "damaged") {
        return {JobSeamState::ToRedo, number + " can't be read: " + joint.line.trouble};
    }
    if (joint.line.open) {
        return {JobSeamState::Running, joint.line.phase};
    }
    if (joint.decision) {
        switch (*joint.decision) {
        case Decision::Accept:
            return {JobSeamState::Done, ""};
        case Decision::Repair:
            return {JobSeamState::ToRedo, number + " is to be repaired"};
        case Decision::CutOut:
            return {JobSeamState::CutOut, number + " was cut out"};
        }
    }
    if (joint.line.phase == "aborted") {
        return {JobSeamState::ToRedo, number + " was stopped"};
    }
    if (joint.line.verdict == "within limits" ||
        joint.line.verdict == "within limits with remarks") {
        return {JobSeamState::Done, ""};
    }
    return {JobSeamState::ToRedo, number + " is " + joint.line.verdict + " and not decided"};
}

void judge(SeamProgress& seam) {
    const auto newest =
        std::find_if(seam.joints.begin(), seam.joints.end(), [](const SeamJoint& joint) {
            return joint.line.phase != "aborted" || joint.melted;
        });
    if (newest != seam.joints.end()) {
        std::tie(seam.state, seam.why) = stateBy(*newest);
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
    std::map<std::string, std::size_t> places;
    for (const JobSeam& seam : seams) {
        places.emplace(seam.label, out.seams.size());
        out.seams.push_back({seam.label, JobSeamState::Open, "", {}});
    }
    // The welds that count are those of the log's own world.
    const std::string counts(
        toString(log.world() == Practice::kName ? WeldType::Practice : WeldType::Production));
    JointFilter filter;
    filter.fromDay = fromDay;
    std::vector<std::pair<std::size_t, JointLine>> found;
    const auto read = log.eachJoint(filter, [&](const JointLine& line) {
        const auto exact = places.find(line.seam);
        const auto place = exact != places.end() ? exact : places.find(withoutReweld(line.seam));
        if (place != places.end() && line.type == counts) {
            found.emplace_back(place->second, line);
        }
        return true;
    });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    for (auto& [place, line] : found) {
        if (line.phase != "damaged" && !isOf(seams[place], line)) {
            out.elsewhere.push_back(std::move(line));
            continue;
        }
        const auto events =
            line.phase == "damaged" ? Result<std::vector<Event>>() : log.weldEvents(line.weld);
        if (!events) {
            return tl::unexpected<Error>(events.error());
        }
        out.seams[place].joints.push_back(jointOf(std::move(line), *events));
    }
    for (SeamProgress& seam : out.seams) {
        judge(seam);
    }
    return out;
}

} // namespace seamclock
