#include "core/session/made_seams.h"

#include "core/session/again.h"

#include <algorithm>
#include <tuple>
#include <utility>

namespace seamclock {

namespace {

// More than a cut of the power leaves, and looked through in a few hundredths of a second.
constexpr std::int64_t kMostUnlisted = 2'000;
constexpr std::size_t kPage = 8;

} // namespace

SeamState seamStateOf(const Weld& weld) {
    if (weld.opened().type == WeldType::Trial) {
        return SeamState::Open;
    }
    bool met = false;
    bool cutOut = false;
    for (const Retained& event : retained(weld.events)) {
        met = met || std::holds_alternative<FacesMet>(event.d);
        if (const auto* decided = std::get_if<Decided>(&event.d)) {
            cutOut = decided->decision == Decision::CutOut;
        }
    }
    if (std::holds_alternative<Aborted>(weld.state)) {
        return met ? SeamState::CutOut : SeamState::Open;
    }
    return cutOut ? SeamState::CutOut : SeamState::Made;
}

MadeSeams::MadeSeams(const std::vector<std::string>& labels) {
    for (const std::string& label : labels) {
        m_seams[label];
    }
}

// From the newest back to the first that decides and has ended: an open one may yet be stopped, and
// then the one before it decides. Each re-weld follows the joint before it, so the labels S3,
// S3/R1, … have no gap.
Result<void> MadeSeams::readSeam(LogReader& log, const std::string& label, Joints& into) const {
    std::vector<std::string> labels{label};
    for (;;) {
        JointFilter filter;
        filter.seam = reweldLabel(labels.back());
        filter.limit = 1;
        const auto lines = log.joints(filter);
        if (!lines) {
            return tl::unexpected<Error>(lines.error());
        }
        if (lines->empty()) {
            break;
        }
        labels.push_back(*filter.seam);
    }
    for (auto own = labels.rbegin(); own != labels.rend(); ++own) {
        JointFilter filter;
        filter.seam = *own;
        filter.limit = kPage;
        for (;;) {
            const auto lines = log.joints(filter);
            if (!lines) {
                return tl::unexpected<Error>(lines.error());
            }
            for (const JointLine& line : *lines) {
                SeamState state = SeamState::Open;
                const auto events = log.weldEvents(line.weld);
                auto weld = events ? fold(*events) : tl::unexpected<Error>(events.error());
                if (weld) {
                    state = seamStateOf(*weld);
                } else if (line.phase != "aborted" && line.type != "trial") {
                    state = SeamState::Made; // a joint that can't be read was made all the same
                }
                if (state == SeamState::Open) {
                    continue;
                }
                into[line.weld] = {
                    {state, line.weld, *own, line.number},
                    line.openedUtc,
                    weld ? weld->events.size() : 0};
                if (!line.open) {
                    return {};
                }
            }
            if (lines->size() < kPage) {
                break;
            }
            filter.after = keyOf(lines->back());
        }
    }
    return {};
}

Result<void> MadeSeams::read(LogReader& log) {
    const auto unlisted = log.unlistedRows();
    if (!unlisted) {
        return tl::unexpected<Error>(unlisted.error());
    }
    if (*unlisted > kMostUnlisted) {
        return fail(
            ErrorCode::Refused, log.path() + ": the list of joints is being made anew, " +
                                    std::to_string(*unlisted) + " rows are still to be read");
    }
    std::map<std::string, Joints> found;
    for (const auto& [label, told] : m_seams) {
        if (auto read = readSeam(log, label, found[label]); !read) {
            return read;
        }
    }
    for (auto& [label, joints] : found) {
        m_seams[label].merge(joints);
    }
    m_read = true;
    return {};
}

bool MadeSeams::take(const Weld& weld) {
    const auto& label = weld.opened().seam;
    if (!label) {
        return false;
    }
    const auto seam = m_seams.find(std::string(seamOf(*label)));
    if (seam == m_seams.end()) {
        return false;
    }
    Joint& joint = seam->second[weld.id()];
    if (joint.events == weld.events.size()) {
        return false;
    }
    joint = {
        {seamStateOf(weld), weld.id(), *label, weld.opened().number},
        weld.events.front().at.utc,
        weld.events.size()};
    return true;
}

SeamFinding MadeSeams::of(const std::string& label) const {
    const auto seam = m_seams.find(label);
    if (seam == m_seams.end()) {
        return {};
    }
    // By the re-weld first: its joint was made after the one that it replaces, whatever the clock
    // on the wall said.
    const auto place = [](const Joint& joint) {
        return std::tuple(reweldsOf(joint.finding.label), joint.openedUtc, joint.finding.number);
    };
    const Joint* newest = nullptr;
    for (const auto& [weld, joint] : seam->second) {
        const bool counts = joint.finding.state != SeamState::Open;
        if (counts && (newest == nullptr || place(*newest) < place(joint))) {
            newest = &joint;
        }
    }
    return newest == nullptr ? SeamFinding{} : newest->finding;
}

} // namespace seamclock
