// Plain text for a terminal or a sheet of paper: at most 100 columns, counted as a terminal shows
// them. It knows nothing of welds: it wraps, aligns and writes numbers. Numbers are written from
// integers, as the plan and the events hold them, so that nothing is rounded twice; the decimal
// point is a dot.
#pragma once

#include "core/base/instant.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

inline constexpr std::size_t kTextColumns = 100;

/// Columns on a terminal: combining marks take none, East Asian wide signs two. Broken UTF-8 counts
/// one for a byte.
std::size_t columnsOf(std::string_view utf8);

/// Control characters (a line break in a remark, an escape sequence in a file's name) become
/// blanks, and what is not UTF-8 a question mark: text from outside must not move the cursor.
std::string onOneLine(std::string_view text);

/// The text as lines: broken at blanks, every line but the first behind `indent` blanks, a longer
/// word cut.
std::string wrapped(std::string_view text, std::size_t indent, std::size_t columns = kTextColumns);

/// Left-aligned cells under each other, two blanks apart, each line within 100 columns: where they
/// don't fit, the widest columns are wrapped. Rows may have fewer cells than others. Each line ends
/// with a line feed and has no blanks at its end.
std::string aligned(const std::vector<std::vector<std::string>>& rows, std::size_t indent = 2);

/// "16.7" from 16667 with one decimal; zeros at the end are left away ("17" from 17000).
std::string fromThousandths(std::int64_t thousandths, int decimals = 3);
/// "0.15" from 150000 Pa, in N/mm².
std::string fromMillionths(std::int64_t millionths, int decimals = 3);

/// A time as the trade says it: "8.8 s" below a minute, "13:36" from a minute on, "1:02:05" from an
/// hour on. Below a minute to the millisecond, from there rounded to `rounding`'s side of the
/// second.
enum class Seconds { Down, Up };
std::string spokenTime(Milliseconds time, Seconds rounding = Seconds::Up);
/// The same to the millisecond: "8.813 s", "13:36.000".
std::string exactTime(Milliseconds time);
/// "06:12:03.120" of the UTC day.
std::string utcTimeOfDay(Milliseconds utc);

/// A headline with a line of dashes under it.
std::string headline(std::string_view text);

} // namespace seamclock
