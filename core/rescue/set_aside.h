// Opening a log that may be damaged. A damaged one is moved out of the way, untouched, under a name
// that nothing stood under (LOG.damaged-UTC, with its -wal, -shm and .spill), and a new log stands
// in its place: the same chain again, if every row of it can be read; else a chain of its own, with
// every weld that can be read from its first event, and every open one as far as it can. What is
// lost is named in LOG.damaged-UTC.txt. The new log is made whole beside it first, so that a power
// cut at any moment leaves either the damaged log or both; an unfinished move is finished at the
// next start.
//
// A file that is not a joint log, one of the other world, one of a newer program, one on a network
// file system, and one that another program writes are left where they are.
#pragma once

#include "core/base/result.h"
#include "core/log/log_row.h"
#include "core/log/log_writer.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace seamclock {

/// A weld of which something is missing, or that is open.
struct SetAsideWeld {
    std::string weld;
    std::int64_t number = 0;         // 0: nothing tells it
    bool taken = false;              // it is in the new log
    bool open = false;               // there
    std::int64_t events = 0;         // of it there
    std::vector<std::int64_t> lost;  // n of events that there were
    std::vector<std::int64_t> apart; // n of events behind a lost one: only in the damaged log
    std::int64_t unproven = 0;
    bool documentsLost = false; // one that it names is not in the new log

    bool whole() const { return taken && lost.empty() && apart.empty() && unproven == 0; }
};

struct SetAside {
    std::string damaged;    // the file as it is called now
    std::string note;       // the text file that tells this
    std::string why;        // one sentence
    bool finished = false;  // of a move that an earlier run began; only `note` knows the rest
    bool sameChain = false; // nothing of the chain is lost
    std::int64_t rows = 0;
    std::int64_t lostRows = 0; // at least
    bool endKnown = true;      // a head row is left, which says how many rows there were
    std::int64_t highestNumber = 0;
    std::vector<SetAsideWeld> welds;
};

/// "5 to 7, 9"
std::string listOf(const std::vector<std::int64_t>& numbers);
/// What such a weld's own record says of it: one sentence.
std::string remarkOf(const SetAsideWeld& weld, const SetAside& aside);
/// What became of it, for a terminal: a sentence for each part.
std::vector<std::string> sentencesOf(const SetAside& aside);

template <class World>
struct OpenedLog {
    LogWriter<World> writer;
    std::optional<SetAside> aside;
};

/// The highest joint number that stood in a log set aside beside this one; 0: none. The next joint
/// gets one more than that and than any of its own log.
std::int64_t highestNumberAside(const std::string& path);

struct SetAsideOrder {
    std::string path;
    std::string_view world;
    std::int32_t applicationId = 0;
    const Clock& clock;
    /// Documents that the program has at hand, for those that the damaged log lost.
    const std::vector<LogDocument>& known;
    std::function<Result<LogWriterBase>(const std::string& path)> open;
};

/// After an error of LogWriter::open: the same error again if the file is not a damaged log of this
/// world, or the one that stands in the way (NotWritten: nothing was moved then).
Result<SetAside> setAside(const SetAsideOrder& asked, const Error& why);
/// Ends what an earlier run began. Empty: it had begun nothing, or nothing that counts.
Result<std::optional<SetAside>> finishSetAside(const std::string& path);

/// Of the log that is made ready beside; it gets the usual one when it stands in its place.
inline constexpr std::int64_t kSpillOfNewLog = 64 * 1024;

/// As LogWriter<World>::open, but a damaged log is set aside.
template <class World>
Result<OpenedLog<World>> openLog(
    const std::string& path, const Clock& clock, const std::vector<LogDocument>& known = {},
    const LogWriterOptions& options = {}) {
    auto aside = finishSetAside(path);
    if (!aside) {
        return tl::unexpected<Error>(std::move(aside.error()));
    }
    auto writer = LogWriter<World>::open(path, clock, options);
    if (!writer) {
        const auto open = [&](const std::string& other) -> Result<LogWriterBase> {
            LogWriterOptions quiet = options;
            quiet.changed = nullptr;
            quiet.spillBytes = kSpillOfNewLog;
            quiet.resign = true;
            if (quiet.credentials.empty()) {
                quiet.credentials = path + ".credentials"; // where they will be looked for
            }
            auto made = LogWriter<World>::open(other, clock, std::move(quiet));
            if (!made) {
                return tl::unexpected<Error>(std::move(made.error()));
            }
            return LogWriterBase(std::move(*made));
        };
        auto done = setAside(
            {path, World::kName, World::kApplicationId, clock, known, open}, writer.error());
        if (!done) {
            return tl::unexpected<Error>(std::move(done.error()));
        }
        *aside = std::move(*done);
        writer = LogWriter<World>::open(path, clock, options);
    }
    if (!writer) {
        return tl::unexpected<Error>(std::move(writer.error()));
    }
    return OpenedLog<World>{std::move(*writer), std::move(*aside)};
}

} // namespace seamclock
