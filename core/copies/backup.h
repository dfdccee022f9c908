// Backups of a log: complete copies of it (log_copy.h) in the folder LOG.backups beside it, one a
// local day, each named after its day and the first eight digits of the log's id, so that those of
// another log that stood at the same place are never mixed up with these, nor removed for them.
//
// How many are kept: the fourteen newest, and of the older ones the last of each month for twelve
// months. They are counted as they are there and not by the calendar: a shop that was closed for a
// month has not lost its backups, and a wrong clock removes none too soon.
#pragma once

#include "core/copies/log_copy.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

inline constexpr std::size_t kDaysKept = 14;
inline constexpr std::size_t kMonthsKept = 12;
/// What a daily backup leaves free on the disk, which is the log's own.
inline constexpr std::int64_t kBackupReserve = 64 * 1024 * 1024;

std::string backupFolderOf(const std::string& log);
/// "2030-01-07-0f3a96c2.seamlog"
std::string backupName(const std::string& day, const std::string& logId);

/// Of the days that have a backup ("2030-01-07"), those whose backup is not kept.
std::vector<std::string> daysToDrop(std::vector<std::string> days);

struct DailyBackup {
    std::optional<LogCopy> made;      // absent: that day has one already
    std::string file;                 // that day's
    std::vector<std::string> removed; // names of backups that are not kept any longer

    bool operator==(const DailyBackup&) const = default;
};

/// Makes the backup of that local day, if there is none yet, and its folder; `again` makes it
/// anyway, in the place of the day's earlier one. Older ones are removed only after a new one
/// stands. Errors as copyLog; Conflict also: another program is making one just now.
Result<DailyBackup> backUpDay(
    const std::string& log, const std::string& day, const CopyOptions& options, bool again = false);

/// Makes a log of a copy, where none is: the copy is verified, and so is what was made of it.
/// Damaged: the copy is not what was written. Conflict: there is a log at `log`, or what belonged
/// to one (its write-ahead log, rows that wait in its spill file), or another program is at work
/// there. NotWritten and the rest as copyLog; nothing but LOG.lock is left then.
Result<LogCopy> restoreLog(const std::string& copy, const std::string& log);

} // namespace seamclock
