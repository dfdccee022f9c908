// What is due, as a list: what is over first, each with a mark, a word and the days that are left
// or gone.
#pragma once

#include "app/daylog/day_view.h"
#include "app/pages/list_page.h"
#include "core/quality/due.h"

#include <cstdint>
#include <vector>

namespace seamclock {

inline constexpr std::int64_t kSoonDays = 30;

ListRowView dueRow(const DueItem& item, const DayNames& names);
/// `within`: the days that were asked for.
ListView dueList(const std::vector<DueItem>& items, std::int64_t within, const DayNames& names);
/// The next of 30, 90 and 365.
std::int64_t furtherDays(std::int64_t within);

} // namespace seamclock
