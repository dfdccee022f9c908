// The job's seams by the bench that they are wished on, and which of them are still to be made or
// made again. A bench is known by the id in its file, never by the file's name, which two benches
// may share. It shows nothing and opens no weld; that is the window's and the floor's.
#pragma once

#include "core/bench/bench.h"
#include "core/session/made_seams.h"
#include "core/shift/job.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

class JobSeams {
public:
    /// Reads each seam's bench file once; a seam whose file can't be read stands on no bench. One
    /// that wishes for none stands on each of `benches` that its sheets and its length fit on.
    explicit JobSeams(std::vector<JobSeam> seams, const std::vector<Bench>& benches = {});

    /// Reads once from the log at `path` which seams stand in it. Where that can't be done yet,
    /// isRead() is false and nothing is offered; asked again later.
    void read(const std::string& path);
    bool isRead() const { return m_made.isRead(); }
    /// A weld of this program as it stands now; true: it may change what is open.
    bool take(const Weld& weld) { return m_made.take(weld); }

    /// By the bench's id, in the job's order; those that were cut out among them.
    std::vector<JobSeam> openOn(const std::string& bench) const;
    std::optional<JobSeam> nextOn(const std::string& bench) const;
    SeamFinding of(const JobSeam& seam) const { return m_made.of(nameOf(seam)); }
    /// That its next joint gets: S3, or S3/R1 where S3 was cut out.
    std::string nextLabel(const JobSeam& seam) const;

private:
    struct Placed {
        JobSeam seam;
        std::vector<std::string> benches;
    };

    bool isOpenOn(const Placed& placed, const std::string& bench) const;

    std::vector<Placed> m_seams;
    MadeSeams m_made;
};

} // namespace seamclock
