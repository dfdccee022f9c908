// Cuts the power at many moments of a log's life and looks at what a disk could hold then
// (losing_disk.h). Whatever it is, the next start must find a sound log with every row that was
// reported as saved, and every row that was reported as spilled.
#pragma once

#include <cstddef>
#include <cstdint>

namespace seamclock::test {

struct PowerLossReport {
    int states = 0;       // disks looked at
    int beforeTheLog = 0; // on which there was no log yet, rightly
    int promises = 0;     // rows held against them, over all
    int joined = 0;       // disks with rows in their spill file, which the next start joined
};

/// A shift: welds, rows spilled while another program holds the log, joined at once or at the next
/// start, a row that no log can hold, and three runs of the program. `moments` of it, by chance,
/// with every kind of loss.
PowerLossReport losePowerInAShift(int moments, std::uint64_t seed);

/// The making of a new log, at every n-th moment.
PowerLossReport losePowerWhileALogIsMade(std::size_t every);

/// Two steps of a migration, at every n-th moment.
PowerLossReport losePowerInAMigration(std::size_t every);

/// As the first, and the write-ahead log or its index is gone as well. Such a log may lack rows,
/// but nothing may be silently wrong.
PowerLossReport loseTheFilesBesideTheLog(int moments, std::uint64_t seed);

} // namespace seamclock::test
