// Where a command of the terminal does what only a foreman may do: log, secrets and office, opened
// for one command and closed after it. The window program must not be running on the same log.
#pragma once

#include "app/platform/boot_clock.h"
#include "core/session/office.h"

#include <memory>
#include <optional>
#include <string>

namespace seamclock {

struct ForemanDesk {
    BootClock clock;
    std::unique_ptr<LogWriterBase> writer;
    std::unique_ptr<Credentials> credentials;
    std::unique_ptr<Office> office;
};

/// Of either world. Errors as LogReader::open, LogWriter::open and Office::open.
Result<std::unique_ptr<ForemanDesk>> openForemanDesk(const std::string& log);

/// Reads his PIN from standard input. Missing: `by` is absent. Otherwise as readPin and
/// Office::enter.
Result<Access> enterForeman(const std::optional<std::string>& by, ForemanDesk& desk);

} // namespace seamclock
