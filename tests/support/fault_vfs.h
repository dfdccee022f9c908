// A disk that refuses: while one of these lives, every SQLite file of this process is opened
// through it, and its writes and syncs fail when told to. Reading goes on, as on a full or failing
// disk, until the disk is lost. One at a time.
#pragma once

#include "core/base/instant.h"

#include <cstdint>

namespace seamclock::test {

class FaultyDisk {
public:
    FaultyDisk();
    ~FaultyDisk();
    FaultyDisk(const FaultyDisk&) = delete;
    FaultyDisk& operator=(const FaultyDisk&) = delete;

    /// Sync: only syncs fail. ReadOnly: as a file system that the kernel made read-only.
    enum class Fault { None, Full, Error, Sync, ReadOnly };
    /// From the next write or sync on.
    void set(Fault fault);
    /// Only the n-th write or sync from now (1 is the next) fails, with an I/O error; those around
    /// it work.
    void failOnce(std::int64_t n);
    /// From now on every n-th write or sync fails; 0: none.
    void failEvery(std::int64_t n);
    /// From the n-th reading access from now on (1 is the next: a read, or a lock for one) the disk
    /// is gone, as when its plug is pulled; 0: it is there again.
    void loseAt(std::int64_t n);
    /// Reading accesses so far, failed ones included.
    std::int64_t accesses() const;
    /// From now on every sync takes so long, as on a tablet's own disk; 0: as long as it takes.
    void slowSync(Milliseconds by);
    /// Called before each write or sync; it may call the functions above. Null: nothing.
    void onWrite(void (*look)());
    /// Writes and syncs so far, failed ones included.
    std::int64_t writes() const;
};

} // namespace seamclock::test
