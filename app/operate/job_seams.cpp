#include "app/operate/job_seams.h"

#include "core/bench/bench_codec.h"
#include "core/log/log_reader.h"
#include "core/session/again.h"

#include <algorithm>

namespace seamclock {

JobSeams::JobSeams(std::vector<JobSeam> seams) {
    for (JobSeam& seam : seams) {
        Placed placed;
        if (const auto read = readBenchFile(seam.benchFile)) {
            placed.bench = read->bench.id;
        }
        placed.seam = std::move(seam);
        m_seams.push_back(std::move(placed));
    }
}

void JobSeams::lookWhatIsMade(const std::string& path) {
    m_made.clear();
    auto reader = LogReader::open(path);
    if (!reader) {
        return;
    }
    const auto read = reader->eachJoint({}, [this](const JointLine& line) {
        if (!line.seam.empty() && line.phase != "aborted" && line.type != "trial") {
            m_made.emplace_back(seamOf(line.seam)); // S3/R1 makes S3
        }
        return true;
    });
    static_cast<void>(read); // what can't be read was not made, as far as the screen knows
}

std::vector<JobSeam> JobSeams::openOn(const std::string& bench) const {
    std::vector<JobSeam> open;
    for (const Placed& placed : m_seams) {
        const bool made =
            std::find(m_made.begin(), m_made.end(), placed.seam.label) != m_made.end();
        if (placed.bench == bench && !made) {
            open.push_back(placed.seam);
        }
    }
    return open;
}

std::optional<JobSeam> JobSeams::nextOn(const std::string& bench) const {
    const std::vector<JobSeam> open = openOn(bench);
    return open.empty() ? std::nullopt : std::optional<JobSeam>(open.front());
}

} // namespace seamclock
