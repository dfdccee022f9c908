// What a foreman reads before he seals the day, and the paper that he takes with him: both read
// from the log, so that it is what is on disk. May be called from any thread; the disk is waited
// for.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/log/log_writer.h"

#include <QString>
#include <cstdint>
#include <map>
#include <optional>
#include <string>

namespace seamclock {

struct DayClosing {
    struct Seal {
        std::string by; // the name
        Instant at;
        std::int64_t toRow = 0; // the last that it covers
        std::string fingerprint;

        bool operator==(const Seal&) const = default;
    };

    std::string day; // "2030-01-07"
    int joints = 0;
    std::map<std::string, int> verdicts; // as stored: how many; "": still open
    std::int64_t notOnDisk = 0;
    std::optional<Seal> seal; // the day's last
    std::int64_t behind = 0;  // rows that came after it

    bool operator==(const DayClosing&) const = default;
};

/// Errors as the reader's.
Result<DayClosing> readDayClosing(const LogWriterBase& writer, const std::string& day);

/// Writes the day's report into that folder, under a name that is free, and returns where. What is
/// there already is left as it is. NotWritten: with the path and the reason.
Result<QString>
saveDayReport(const std::string& log, const std::string& day, const QString& folder);

} // namespace seamclock
