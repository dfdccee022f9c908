// Coupons cut from a joint or a procedure trial, as the log's facts tell them: tensile coupons,
// welded and parent, and bend coupons with their bend angle or the ram's displacement (EN 12814-1
// and -2; names from memory). A series is one subject, "coupon:UUID": its first fact is what was
// entered, every later one puts it right as a whole and says why. The last one holds; all of them
// are shown.
#pragma once

#include "core/base/result.h"
#include "core/log/fact.h"
#include "core/quality/welding_factor.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

class LogReader;

struct CouponVersion {
    Instant at;
    std::string by;
    CouponTested tested;
    std::int64_t n = 0;     // of its event in the series
    std::int64_t joint = 0; // as the series' own, by this version
    /// How the log that the joint came with calls the welder; "": this one's people say who it is.
    std::string welderName{};

    bool operator==(const CouponVersion&) const = default;
};

/// An event that can't be read, by the place that its row gives it.
struct UnreadEvent {
    std::string subject; // "coupon:UUID", "weld:UUID"
    std::int64_t n = 0;
    std::string why;

    bool operator==(const UnreadEvent&) const = default;
};

struct CouponSeries {
    std::string id;                      // "coupon:UUID"
    std::vector<CouponVersion> versions; // the last holds
    std::int64_t joint = 0;     // its number, where it was cut from one of this log; else 0
    std::string joinedBy;       // who welded: as told, else who opened the joint
    std::string joinedByName{}; // as CouponVersion::welderName
    std::optional<WeldingFactor> factor; // tensile, with parent coupons
    std::optional<double> required;      // of its material
    /// Of its own events, and the opening of its joint. What was put right there is not known.
    std::vector<UnreadEvent> unread{};

    bool isJointUnread() const { return !unread.empty() && unread.back().subject != id; }
    const CouponTested& now() const { return versions.back().tested; }
    bool operator==(const CouponSeries&) const = default;
};

inline constexpr std::int64_t kGreatestBendMilli = 180'000; // thousandths of a degree
inline constexpr std::int64_t kGreatestRamUm = 500'000;
inline constexpr std::size_t kLongestCouponText = 200;

/// Whether a series can be so. Malformed: another test than tensile or bend, values of the other
/// test, an empty material, a text that is too long. Missing: no welded coupon; neither angle nor
/// displacement for a bend coupon, or not one of each for each. OutOfRange: as weldingFactor, or a
/// bend outside the above, a thickness outside 0.1 to 1000 mm.
Result<void> checkCoupon(const CouponTested& tested);

/// "31.2, 30.8" in MPa, with a dot; likewise angles [°] and displacements [mm], as thousandths.
/// Malformed: the value that is none.
Result<std::vector<std::int64_t>> readThousandths(std::string_view list);

/// Whether a series can be what it says to be: of a joint of this log that was joined, has ended,
/// and is of that plastic and about that thickness; by a welder whom this log or the joint knows.
/// Missing: no such joint, nobody of that id. Conflict: the rest. A joint that can't be read is not
/// asked. Errors as the reader's.
Result<void> checkOrigin(LogReader& log, const CouponTested& tested);

struct CouponsRead {
    std::vector<CouponSeries> series; // in the order in which they were first entered
    std::vector<UnreadEvent> unread;  // of series of which nothing can be read
};

/// All of the log's own chain, or those that were cut from one joint ("weld:UUID"). An event that
/// can't be read is passed over and named. Errors as the reader's.
Result<CouponsRead>
readCoupons(LogReader& log, const std::optional<std::string>& weld = std::nullopt);
/// Of those the ones that were cut from that joint.
std::vector<CouponSeries> cutFrom(const std::string& weld, const CouponsRead& all);

} // namespace seamclock
