#include "app/daylog/day_jobs.h"

#include "core/session/again.h"
#include "core/session/job_book.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace seamclock {

Result<std::vector<DayJob>> jobsIn(LogReader& log) {
    std::map<std::string, std::set<std::string>> found;
    const auto kept = readJobSeams(log);
    if (!kept) {
        return tl::unexpected<Error>(kept.error());
    }
    for (const JobSeam& seam : kept->seams) {
        found[seam.job].insert(seam.label);
    }
    const auto read = log.eachJoint({}, [&found](const JointLine& line) {
        if (!line.job.empty() && !line.seam.empty()) {
            found[line.job].insert(std::string(seamOf(line.seam)));
        }
        return true;
    });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    std::vector<DayJob> out;
    for (const auto& [name, seams] : found) {
        out.push_back({name, {seams.begin(), seams.end()}});
    }
    return out;
}

std::vector<DayJob> withOwn(std::vector<DayJob> jobs, const DayJob& own) {
    if (own.seams.empty()) {
        return jobs;
    }
    DayJob first = own;
    const auto known = std::find_if(
        jobs.begin(), jobs.end(), [&own](const DayJob& job) { return job.name == own.name; });
    if (known != jobs.end()) {
        std::set<std::string> all(known->seams.begin(), known->seams.end());
        all.insert(own.seams.begin(), own.seams.end());
        first.seams.assign(all.begin(), all.end());
        jobs.erase(known);
    }
    jobs.insert(jobs.begin(), std::move(first));
    return jobs;
}

} // namespace seamclock
