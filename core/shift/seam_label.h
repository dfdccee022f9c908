// A seam's label and what was welded again of it: the first time "S3/R1" of "S3".
#pragma once

#include <string>
#include <string_view>

namespace seamclock {

/// "S3" of "S3/R2".
std::string_view seamOf(std::string_view label);
/// 2 of "S3/R2", 0 of "S3".
int reweldsOf(std::string_view label);
/// "S3/R1" of "S3", "S3/R2" of "S3/R1".
std::string reweldLabel(std::string_view label);

/// Why a job's seam can't be called so; empty: it can.
std::string whyNoLabel(std::string_view label);

} // namespace seamclock
