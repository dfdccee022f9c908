#include "core/quality/coupons.h"

#include "core/base/plain_number.h"
#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/weld/fold.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <fmt/format.h>
#include <map>
#include <system_error>

namespace seamclock {

namespace {

constexpr std::int64_t kThinnestUm = 100;
constexpr std::int64_t kThickestUm = 1'000'000;

std::vector<double> inMpa(const std::vector<std::int64_t>& pascal) {
    std::vector<double> out;
    for (const std::int64_t one : pascal) {
        out.push_back(static_cast<double>(one) / 1e6);
    }
    return out;
}

Result<void> checkTensile(const CouponTested& tested) {
    if (!tested.angleMilli.empty() || !tested.ramUm.empty() || !tested.cracked.empty()) {
        return fail(ErrorCode::Malformed, "a tensile test has no bends; allowed: strengths");
    }
    // Parents may come from elsewhere: then there is no factor, and the strengths stand alone.
    const auto made = weldingFactor(
        inMpa(tested.weldedPa),
        tested.parentPa.empty() ? std::vector<double>{1.0} : inMpa(tested.parentPa));
    return made ? Result<void>() : tl::unexpected<Error>(made.error());
}

Result<void> checkBend(const CouponTested& tested) {
    if (!tested.weldedPa.empty() || !tested.parentPa.empty()) {
        return fail(
            ErrorCode::Malformed,
            "a bend test has no strengths; allowed: angles or displacements of the ram");
    }
    const std::size_t count = tested.cracked.size();
    if (count == 0 || count > kMostCoupons) {
        return fail(
            ErrorCode::Missing,
            fmt::format("{} bend coupons; allowed: 1 to {}", count, kMostCoupons));
    }
    const bool both = tested.angleMilli.empty() == tested.ramUm.empty();
    const std::size_t told = std::max(tested.angleMilli.size(), tested.ramUm.size());
    if (both || told != count) {
        return fail(
            ErrorCode::Missing, fmt::format(
                                    "{} angles and {} displacements for {} bend coupons; allowed: "
                                    "one of either for each",
                                    tested.angleMilli.size(), tested.ramUm.size(), count));
    }
    const auto inside = [](const std::vector<std::int64_t>& values, std::int64_t most) {
        return std::all_of(values.begin(), values.end(), [most](std::int64_t one) {
            return one >= 0 && one <= most;
        });
    };
    if (!inside(tested.angleMilli, kGreatestBendMilli)) {
        return fail(ErrorCode::OutOfRange, "a bend angle is outside 0 to 180°");
    }
    if (!inside(tested.ramUm, kGreatestRamUm)) {
        return fail(ErrorCode::OutOfRange, "a displacement of the ram is outside 0 to 500 mm");
    }
    if (!inside(tested.cracked, 1)) {
        return fail(ErrorCode::OutOfRange, "a bend coupon cracked or not: 1 or 0");
    }
    return {};
}

/// Number and welder of the joint that it was cut from.
Result<void> addJoint(LogReader& log, CouponSeries& series) {
    const CouponTested& now = series.now();
    series.joinedBy = now.welder.value_or("");
    if (!now.weld) {
        return {};
    }
    const auto events = log.weldEvents(*now.weld);
    if (!events) {
        return tl::unexpected<Error>(events.error());
    }
    if (events->empty()) {
        return {}; // of a log that isn't here
    }
    const auto* opened = std::get_if<WeldOpened>(&events->front().d);
    if (opened != nullptr) {
        series.joint = opened->number;
        series.joinedBy = now.welder.value_or(events->front().by);
    }
    return {};
}

} // namespace

Result<void> checkCoupon(const CouponTested& tested) {
    if (tested.material.empty()) {
        return fail(ErrorCode::Malformed, "no material is named; allowed: as PE-HD");
    }
    for (const std::string* text :
         {&tested.material, &tested.standard, &tested.procedure, &tested.remark}) {
        if (text->size() > kLongestCouponText) {
            return fail(
                ErrorCode::Malformed,
                fmt::format(
                    "a text of {} bytes; allowed: up to {}", text->size(), kLongestCouponText));
        }
    }
    if (tested.thicknessUm < kThinnestUm || tested.thicknessUm > kThickestUm) {
        return fail(
            ErrorCode::OutOfRange, fmt::format(
                                       "a thickness of {} mm; allowed: 0.1 to 1000 mm",
                                       plainNumber(static_cast<double>(tested.thicknessUm) / 1e3)));
    }
    if (tested.test == "tensile") {
        return checkTensile(tested);
    }
    if (tested.test == "bend") {
        return checkBend(tested);
    }
    return fail(ErrorCode::Malformed, "\"" + tested.test + "\" is no test; allowed: tensile, bend");
}

Result<std::vector<std::int64_t>> readThousandths(std::string_view list) {
    constexpr double kGreatest = 1e9;
    std::vector<std::int64_t> out;
    while (!list.empty()) {
        const auto comma = list.find(',');
        std::string_view word = list.substr(0, comma);
        list = comma == std::string_view::npos ? std::string_view() : list.substr(comma + 1);
        const auto first = word.find_first_not_of(' ');
        word = first == std::string_view::npos
                   ? std::string_view()
                   : word.substr(first, word.find_last_not_of(' ') - first + 1);
        double value = 0;
        const auto read = std::from_chars(word.data(), word.data() + word.size(), value);
        if (read.ec != std::errc() || read.ptr != word.data() + word.size() ||
            !(std::abs(value) <= kGreatest)) {
            return fail(
                ErrorCode::Malformed, "\"" + std::string(word.substr(0, 40)) +
                                          "\" is not a number; allowed: numbers with a dot, parted "
                                          "by commas");
        }
        out.push_back(std::llround(value * 1e3));
    }
    return out;
}

Result<std::vector<CouponSeries>> readCoupons(LogReader& log) {
    const auto bodies = log.bodiesFrom("coupon:");
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    std::vector<CouponSeries> out;
    std::map<std::string, std::size_t> places;
    for (const std::string& body : *bodies) {
        const auto fact = factFromBody(body);
        if (!fact) {
            return fail(ErrorCode::Damaged, log.path() + ": " + fact.error().detail);
        }
        const auto* tested = std::get_if<CouponTested>(&fact->d);
        if (tested == nullptr) {
            continue;
        }
        if (auto sound = checkCoupon(*tested); !sound) {
            return fail(
                ErrorCode::Damaged,
                log.path() + ": " + fact->subject + ": " + sound.error().detail);
        }
        const auto [at, isNew] = places.emplace(fact->subject, out.size());
        if (isNew) {
            out.push_back({fact->subject, {}, 0, "", {}, {}});
        }
        out[at->second].versions.push_back({fact->at, fact->by, *tested});
    }
    for (CouponSeries& series : out) {
        const CouponTested& now = series.now();
        series.required = requiredFactor(now.material);
        if (!now.weldedPa.empty() && !now.parentPa.empty()) {
            const auto factor = weldingFactor(inMpa(now.weldedPa), inMpa(now.parentPa));
            if (factor) {
                series.factor = *factor;
            }
        }
        if (auto added = addJoint(log, series); !added) {
            return tl::unexpected<Error>(added.error());
        }
    }
    return out;
}

} // namespace seamclock
