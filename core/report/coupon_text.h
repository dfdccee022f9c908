// Coupons that were tested as plain text and as JSON: what was pulled or bent, the welding factor
// with its interval against the required one, and what was put right. The event is the last of the
// series.
#pragma once

#include "core/quality/coupons.h"

#include <string>
#include <vector>

namespace seamclock {

std::string couponText(const CouponSeries& series);
std::string unreadEventText(const UnreadEvent& one);

/// One JSON object with stable keys, without a line feed: what was tested, each version of it, the
/// factor [1] with its interval.
std::string couponJson(const CouponSeries& one);
/// A JSON list likewise.
std::string unreadEventsJson(const std::vector<UnreadEvent>& unread);

} // namespace seamclock
