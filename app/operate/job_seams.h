// The job's seams by the bench that they are wished on, and which of them are still to be made. A
// bench is known by the id in its file, never by the file's name, which two benches may share. It
// shows nothing and opens no weld; that is the window's and the floor's.
#pragma once

#include "core/shift/job.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

class JobSeams {
public:
    /// Reads each seam's bench file once; a seam whose file can't be read stands on no bench.
    explicit JobSeams(std::vector<JobSeam> seams);

    /// Reads from the log at `path` which seams stand in it; an aborted joint and a trial joint
    /// do not count, and what can't be read was not made.
    void lookWhatIsMade(const std::string& path);
    /// By the bench's id, in the job's order.
    std::vector<JobSeam> openOn(const std::string& bench) const;
    std::optional<JobSeam> nextOn(const std::string& bench) const;

private:
    struct Placed {
        JobSeam seam;
        std::optional<std::string> bench;
    };

    std::vector<Placed> m_seams;
    std::vector<std::string> m_made; // labels
};

} // namespace seamclock
