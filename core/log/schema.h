// The tables of a log file, and the numbered steps that lead an older log to them. Each step is one
// transaction; before the first step of an existing log a copy of it is set aside. What is in a
// chain is never touched by a step: only what stands around it may change.
#pragma once

#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace SQLite {
class Database;
} // namespace SQLite

namespace seamclock {

struct Migration {
    int version = 0; // PRAGMA user_version after it
    std::string sql;
};

/// Those of this program, 1, 2, … in order.
const std::vector<Migration>& migrations();

/// Brings a log to the last of `steps`. The copy is path + ".before-" + the version that it comes
/// to. Foreign: the log is newer than the last step. NotWritten: a step failed, and the log stands
/// as it was before that step; the next try makes the copy anew, unless a step was done by then.
Result<void>
migrate(SQLite::Database& database, const std::string& path, const std::vector<Migration>& steps);

/// Makes a new log beside its place and then moves it there, so that a half-made one never stands
/// there; its chain has no rows yet. Conflict: there is a file by now. NotWritten otherwise.
Result<void> makeLog(const std::string& path, std::string_view world, std::int32_t applicationId);

/// The worse of a joint's verdict as it was stored and as it is by now, as the cache is asked for
/// it; the same as judgedOf (joint.h), with an index of its own.
inline constexpr const char* kJudged =
    "(CASE WHEN verdict_now = 'out of limits' OR (verdict_now = 'incomplete' AND verdict <> 'out "
    "of limits') OR (verdict_now = 'within limits with remarks' AND verdict = 'within limits') "
    "THEN verdict_now ELSE verdict END)";

/// Drops what there is of the cache of joint lines and makes it anew, empty. Throws
/// SQLite::Exception.
void remakeJointCache(SQLite::Database& database);

} // namespace seamclock
