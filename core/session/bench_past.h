// What came before on each bench, as running state: the welds of the last day, from which checks
// and the trial joint are carried over, and how long the last alignments took. It is read from the
// log once for a bench and once for a kind of weld, and follows what ends in this program from then
// on, so that opening the next joint reads nothing.
#pragma once

#include "core/session/align_median.h"
#include "core/weld/fold.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <vector>

namespace seamclock {

class BenchPast {
public:
    /// Of the log at `path`.
    explicit BenchPast(std::string path) : m_path(std::move(path)) {}

    /// The last twenty welds of that bench, and of those before them the trial joints that no
    /// change of set-up parts from these; all opened within a day before `now` and not `here`, the
    /// newest first. What came before a weld that can't be read is not among them. Errors as
    /// LogReader.
    Result<std::vector<Weld>> before(
        const std::string& bench, const Instant& now,
        const std::function<bool(const std::string& weld)>& here);

    Result<std::optional<AlignTimes>> usualAlignment(
        const std::string& bench, const std::string& procedure, std::int64_t thicknessUm);

    /// A weld was closed.
    void closed(const Weld& weld);
    /// An ended weld, saved, that the program lets go of.
    void gone(const Weld& weld);

private:
    using Kind = std::tuple<std::string, std::string, std::int64_t>;

    Result<std::vector<Weld>> readBefore(const std::string& bench, const Instant& now) const;

    std::string m_path;
    std::map<std::string, std::vector<Weld>> m_before; // by bench, the newest first
    std::map<Kind, std::vector<Milliseconds>> m_alignments;
};

} // namespace seamclock
