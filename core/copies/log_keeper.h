// Takes care of a log's copies while the program runs: the backup of the day at the program's start
// and after the first closing of a day, with the photos of beads (photo_copies.h) after each
// closing, and after each closing the snapshot for others, if the shop
// chose a folder for it. And of a log that was too large to be looked through when it was opened:
// its structure is looked through now, and where it is damaged, word is left for the next start.
// Threads of its own do it, over connections that only read and at a low priority, so neither the
// writer nor a screen ever waits for them, and a share of the network that does not answer holds up
// nothing but its own snapshot.
//
// A copy that fails is told, and tried again at the next closing or start; nothing else comes of
// it.
#pragma once

#include "core/base/instant.h"
#include "core/copies/backup.h"

#include <memory>
#include <optional>
#include <string>
#include <thread>

namespace seamclock {

struct KeeperOptions {
    Milliseconds quiet{2'000}; // copies are made when no row came for so long
    std::int64_t reserveBytes = kBackupReserve;
    std::string snapshotFolder;          // empty: no snapshots
    std::int64_t checkAbove = INT64_MAX; // a larger log's structure is looked through
};

struct KeeperState {
    std::string backup;                          // the file of the newest backup of this run
    std::optional<std::string> backupTrouble;    // one sentence, until one succeeds
    std::string snapshot;                        // the file of the newest snapshot of this run
    std::optional<std::string> snapshotTrouble;  // likewise
    std::optional<std::string> photoTrouble;     // of the photos of beads, which go with it
    std::optional<std::string> structureTrouble; // of the log's own file
    bool structureChecked = false;
    std::int64_t backups = 0; // made in this run
    std::int64_t snapshots = 0;
    std::int64_t photos = 0;

    bool operator==(const KeeperState&) const = default;
};

/// Every function may be called from any thread, and none waits for a copy but settle().
class LogKeeper {
public:
    /// `clock` gives the local day; it must outlive the keeper, and now() is called from another
    /// thread. Nothing is done before begin().
    LogKeeper(const std::string& log, const Clock& clock, KeeperOptions options = {});
    LogKeeper(const LogKeeper&) = delete;
    LogKeeper& operator=(const LogKeeper&) = delete;
    /// Ends a copy that is being made. A thread that a dead network share holds is left behind.
    ~LogKeeper();

    /// The log is there by now.
    void begin();
    /// Rows may have come: for LogWriterOptions::changed.
    void look();
    /// Another folder for snapshots, or none; the first goes there soon.
    void publishInto(const std::string& folder);

    KeeperState state() const;
    /// Blocks until all is done or has failed that was due when it was called.
    void settle();

private:
    struct Inside;
    std::shared_ptr<Inside> m_inside; // the threads' too
    std::thread m_watcher;
    std::thread m_publisher;
};

} // namespace seamclock
