#include "app/operate/job_seams.h"

#include "core/bench/bench_codec.h"
#include "core/log/log_reader.h"
#include "core/session/again.h"

#include <algorithm>

namespace seamclock {
namespace {

std::vector<std::string> labelsOf(const std::vector<JobSeam>& seams) {
    std::vector<std::string> labels;
    labels.reserve(seams.size());
    for (const JobSeam& seam : seams) {
        labels.push_back(seam.label);
    }
    return labels;
}

} // namespace

JobSeams::JobSeams(std::vector<JobSeam> seams) : m_made(labelsOf(seams)) {
    for (JobSeam& seam : seams) {
        Placed placed;
        if (const auto read = readBenchFile(seam.benchFile)) {
            placed.bench = read->bench.id;
        }
        placed.seam = std::move(seam);
        m_seams.push_back(std::move(placed));
    }
}

void JobSeams::read(const std::string& path) {
    if (auto reader = LogReader::open(path)) {
        static_cast<void>(m_made.read(*reader)); // isRead() tells
    }
}

std::vector<JobSeam> JobSeams::openOn(const std::string& bench) const {
    std::vector<JobSeam> open;
    for (const Placed& placed : m_seams) {
        if (isOpenOn(placed, bench)) {
            open.push_back(placed.seam);
        }
    }
    return open;
}

std::optional<JobSeam> JobSeams::nextOn(const std::string& bench) const {
    const auto next = std::find_if(m_seams.begin(), m_seams.end(), [&](const Placed& placed) {
        return isOpenOn(placed, bench);
    });
    return next == m_seams.end() ? std::nullopt : std::optional<JobSeam>(next->seam);
}

bool JobSeams::isOpenOn(const Placed& placed, const std::string& bench) const {
    return isRead() && placed.bench == bench && of(placed.seam).state != SeamState::Made;
}

std::string JobSeams::nextLabel(const JobSeam& seam) const {
    const SeamFinding found = of(seam);
    return found.state == SeamState::CutOut ? reweldLabel(found.label) : seam.label;
}

} // namespace seamclock
