// Coupons that were tested as plain text: what was pulled or bent, the welding factor with its
// interval against the required one, and what was put right. The event is the last of the series.
#pragma once

#include "core/quality/coupons.h"

#include <string>

namespace seamclock {

std::string couponText(const CouponSeries& series);
std::string unreadEventText(const UnreadEvent& one);

} // namespace seamclock
