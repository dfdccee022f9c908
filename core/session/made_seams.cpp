#include "core/session/made_seams.h"

#include "core/session/again.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>
#include <utility>

namespace seamclock {

namespace {

// More than a cut of the power leaves, and looked through in a few hundredths of a second.
constexpr std::int64_t kMostUnlisted = 2'000;
constexpr std::size_t kPage = 8;

bool isGoodWord(std::string_view verdict) {
    return verdict == toString(VerdictWord::WithinLimits) ||
           verdict == toString(VerdictWord::WithRemarks);
}

/// What is out, or lacks.
std::set<std::string> outOf(const Result<Weld>& weld) {
    std::set<std::string> out;
    for (const Finding& finding : weld ? findings(*weld) : std::vector<Finding>()) {
        if (finding.grade != Grade::Remark) {
            out.insert(finding.code);
        }
    }
    return out;
}

} // namespace

SeamState seamStateOf(const Weld& weld) {
    if (weld.opened().type == WeldType::Trial) {
        return SeamState::Open;
    }
    bool met = false;
    bool isGood = true; // also while nobody has closed it
    bool corrected = false;
    std::optional<Decision> decision;
    for (const Retained& event : retained(weld.events)) {
        met = met || std::holds_alternative<FacesMet>(event.d);
        if (const auto* decided = std::get_if<Decided>(&event.d)) {
            decision = decided->decision;
        }
        if (const auto* closed = std::get_if<WeldClosed>(&event.d)) {
            isGood = isGoodWord(closed->verdict);
        }
    }
    auto settled = weld.events.begin(); // behind what was decided, or stored
    for (auto event = weld.events.begin(); event != weld.events.end(); ++event) {
        // What is retained has the corrected values in it.
        if (std::holds_alternative<ValueCorrected>(event->d)) {
            corrected = true;
        } else if (
            std::holds_alternative<Decided>(event->d) ||
            std::holds_alternative<WeldClosed>(event->d)) {
            corrected = false;
            settled = event + 1;
        }
    }
    // A correction that nobody has decided on since may have made a worse joint of it.
    const bool worse = corrected && !isGoodWord(toString(verdict(weld).word)) &&
                       outOf(weld) != outOf(fold({weld.events.begin(), settled}));
    if (worse) {
        isGood = false;
        if (decision == Decision::Accept) {
            decision.reset();
        }
    }
    if (std::holds_alternative<Aborted>(weld.state)) {
        return met ? SeamState::CutOut : SeamState::Open;
    }
    if (decision) {
        switch (*decision) {
        case Decision::Accept:
            return SeamState::Made;
        case Decision::Repair:
            return SeamState::ToRepair;
        case Decision::CutOut:
            return SeamState::CutOut;
        }
    }
    return isGood ? SeamState::Made : SeamState::ToDecide;
}

bool isToBeWelded(SeamState state) {
    return state == SeamState::Open || state == SeamState::ToRepair || state == SeamState::CutOut;
}

bool isOfJob(const JobSeam& seam, std::string_view job) {
    return job.empty() || job == seam.job;
}

bool hasSheetsOf(const JobSeam& seam, std::string_view material, std::int64_t thicknessUm) {
    if (seam.sheets.empty()) {
        return true;
    }
    // Sheets of one nominal thickness differ by a tenth at most (core/plan/sheets.h).
    const Sheet& sheet = seam.sheets.front();
    return sheet.material == material && 10 * std::abs(sheet.thicknessUm - thicknessUm) <=
                                             std::min(sheet.thicknessUm, thicknessUm);
}

MadeSeams::MadeSeams(const std::vector<JobSeam>& seams) {
    for (const JobSeam& seam : seams) {
        m_seams.emplace(nameOf(seam), Seam{seam, {}});
    }
}

// From the newest back to the first that decides and has ended: an open one may yet be stopped, and
// then the one before it decides. Each re-weld follows the joint before it, so the labels S3,
// S3/R1, … have no gap.
Result<void> MadeSeams::readSeam(LogReader& log, const JobSeam& seam, Joints& into) {
    std::vector<std::string> labels{seam.label};
    for (;;) {
        JointFilter filter;
        filter.job = seam.job;
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
        filter.job = seam.job;
        filter.seam = *own;
        filter.limit = kPage;
        for (;;) {
            const auto lines = log.joints(filter);
            if (!lines) {
                return tl::unexpected<Error>(lines.error());
            }
            for (const JointLine& line : *lines) {
                if (line.phase != "damaged" &&
                    !hasSheetsOf(seam, line.material, line.thicknessUm)) {
                    continue;
                }
                SeamState state = SeamState::Open;
                const auto events = log.weldEvents(line.weld);
                if (!events && events.error().code != ErrorCode::Damaged) {
                    return tl::unexpected<Error>(events.error());
                }
                auto weld = events ? fold(*events) : tl::unexpected<Error>(events.error());
                if (weld) {
                    state = seamStateOf(*weld);
                } else if (line.phase != "aborted" && line.type != "trial") {
                    state = SeamState::ToDecide; // it was made, and nobody can read how
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
    std::map<SeamName, Joints> found;
    for (const auto& [name, seam] : m_seams) {
        if (auto read = readSeam(log, seam.asked, found[name]); !read) {
            return read;
        }
    }
    for (auto& [name, joints] : found) {
        m_seams[name].joints.merge(joints);
    }
    m_read = true;
    return {};
}

bool MadeSeams::take(const Weld& weld) {
    const WeldOpened& opened = weld.opened();
    if (!opened.seam) {
        return false;
    }
    const std::string label(seamOf(*opened.seam));
    bool changed = false;
    for (auto seam = m_seams.lower_bound({label, ""});
         seam != m_seams.end() && seam->first.label == label; ++seam) {
        if (!isOfJob(seam->second.asked, opened.job.value_or("")) || opened.sheets.empty() ||
            !hasSheetsOf(
                seam->second.asked, opened.sheets.front().material,
                opened.sheets.front().thicknessUm)) {
            continue;
        }
        Joint& joint = seam->second.joints[weld.id()];
        if (joint.events == weld.events.size()) {
            continue;
        }
        joint = {
            {seamStateOf(weld), weld.id(), *opened.seam, opened.number},
            weld.events.front().at.utc,
            weld.events.size()};
        changed = true;
    }
    return changed;
}

SeamFinding MadeSeams::of(const SeamName& name) const {
    const auto seam = m_seams.find(name);
    if (seam == m_seams.end()) {
        return {};
    }
    // By the re-weld first: its joint was made after the one that it replaces, whatever the clock
    // on the wall said.
    const auto place = [](const Joint& joint) {
        return std::tuple(reweldsOf(joint.finding.label), joint.openedUtc, joint.finding.number);
    };
    const Joint* newest = nullptr;
    for (const auto& [weld, joint] : seam->second.joints) {
        const bool counts = joint.finding.state != SeamState::Open;
        if (counts && (newest == nullptr || place(*newest) < place(joint))) {
            newest = &joint;
        }
    }
    return newest == nullptr ? SeamFinding{} : newest->finding;
}

} // namespace seamclock
