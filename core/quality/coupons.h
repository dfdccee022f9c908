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

    bool operator==(const CouponVersion&) const = default;
};

struct CouponSeries {
    std::string id;                      // "coupon:UUID"
    std::vector<CouponVersion> versions; // the last holds
    std::int64_t joint = 0; // its number, where it was cut from one of this log; else 0
    std::string joinedBy;   // who welded: as told, else who opened the joint
    std::optional<WeldingFactor> factor; // tensile, with parent coupons
    std::optional<double> required;      // of its material

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

/// All of the log's own chain, in the order in which they were first entered.
Result<std::vector<CouponSeries>> readCoupons(LogReader& log);

} // namespace seamclock
