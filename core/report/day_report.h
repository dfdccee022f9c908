// A day on paper: its joints, and the seals that were put on it or cover one of its joints,
// whenever they were made, with their fingerprints. The paper is what makes a seal worth something:
// it is not on the tablet. Text for a terminal or a printer.
#pragma once

#include "core/log/log_reader.h"

#include <string>

namespace seamclock {

/// `day`: a local date, "2030-01-07". Malformed: no date. OutOfRange: more than kMostReportJoints.
/// Otherwise as the reader.
Result<std::string> dayReport(LogReader& reader, const std::string& day);

} // namespace seamclock
