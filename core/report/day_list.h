// The day list: one line a joint, as text for a terminal, as JSON and as comma-separated values.
// Lists may be long, so each form is written a line at a time.
#pragma once

#include "core/log/joint.h"

#include <string>
#include <vector>

namespace seamclock {

/// A table with a headline for each day, newest first as the log gives it.
std::string dayListText(const std::vector<JointLine>& lines);

/// Header and rows with CRLF. Instants in UTC, the unit in the column's name.
std::string dayListHeader();
std::string dayListRow(const JointLine& line);

/// One JSON object, without a line feed.
std::string jointLineJson(const JointLine& line);

} // namespace seamclock
