#include "app/operate/job_seams.h"

#include "core/bench/bench_codec.h"
#include "core/log/log_reader.h"
#include "core/session/again.h"

#include <algorithm>

namespace seamclock {
namespace {

bool fits(const JobSeam& seam, const Bench& bench) {
    double length = 0;
    for (const double one : seam.lengthsMm) {
        length += one;
    }
    return seam.thicknessMm >= inMillimetres(bench.thinnestSheet) &&
           seam.thicknessMm <= inMillimetres(bench.thickestSheet) &&
           length <= inMillimetres(bench.longestSeam);
}

} // namespace

JobSeams::JobSeams(std::vector<JobSeam> seams, const std::vector<Bench>& benches) : m_made(seams) {
    for (JobSeam& seam : seams) {
        Placed placed;
        if (!seam.benchFile.empty()) {
            if (const auto read = readBenchFile(seam.benchFile)) {
                placed.benches.push_back(read->bench.id);
            }
        } else if (!seam.bench.empty()) {
            placed.benches.push_back(seam.bench);
        } else {
            for (const Bench& bench : benches) {
                if (fits(seam, bench)) {
                    placed.benches.push_back(bench.id);
                }
            }
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
    return isRead() &&
           std::find(placed.benches.begin(), placed.benches.end(), bench) != placed.benches.end() &&
           isToBeWelded(of(placed.seam).state);
}

std::string JobSeams::nextLabel(const JobSeam& seam) const {
    const SeamFinding found = of(seam);
    return found.state == SeamState::CutOut || found.state == SeamState::ToRepair
               ? reweldLabel(found.label)
               : seam.label;
}

} // namespace seamclock
