#include "core/quality/coupons.h"

#include "core/base/plain_number.h"
#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/log/roster.h"
#include "core/plan/sheets.h"
#include "core/weld/event_codec.h"
#include "core/weld/fold.h"
#include "core/weld/record.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <fmt/format.h>
#include <iterator>
#include <map>
#include <system_error>
#include <utility>

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

/// Number of the joint that a version was cut from, and who welded it.
Result<void> addJoint(LogReader& log, CouponSeries& series, CouponVersion& version) {
    const std::optional<std::string>& welder = version.tested.welder;
    const bool last = &version == &series.versions.back();
    if (last) {
        series.joinedBy = welder.value_or("");
    }
    const std::optional<std::string>& weld = version.tested.weld;
    const auto first = weld ? log.body(*weld, 1) : Result<std::optional<std::string>>();
    if (!first) {
        return tl::unexpected<Error>(first.error());
    }
    if (!*first) {
        return {}; // a trial, or of a log that isn't here
    }
    const auto event = eventFromBody(**first);
    if (!event) {
        if (last) {
            series.unread.push_back({*weld, 1, event.error().detail});
        }
        return {};
    }
    const auto* opened = std::get_if<WeldOpened>(&event->d);
    if (opened == nullptr) {
        return {};
    }
    version.joint = opened->number;
    if (!welder || *welder == event->by) {
        auto name = nameElsewhere(log, *weld, event->by);
        if (!name) {
            return tl::unexpected<Error>(name.error());
        }
        version.welderName = std::move(*name);
    }
    if (last) {
        series.joint = version.joint;
        series.joinedBy = welder.value_or(event->by);
        series.joinedByName = version.welderName;
    }
    return {};
}

Result<CouponVersion> versionFrom(const std::string& body, std::int64_t n) {
    const auto fact = factFromBody(body);
    if (!fact) {
        return tl::unexpected<Error>(fact.error());
    }
    const auto* tested = std::get_if<CouponTested>(&fact->d);
    if (tested == nullptr) {
        return fail(ErrorCode::Damaged, "it tells of no coupon");
    }
    if (auto sound = checkCoupon(*tested); !sound) {
        return tl::unexpected<Error>(sound.error());
    }
    return CouponVersion{fact->at, fact->by, *tested, n, 0, {}};
}

} // namespace

Result<void> checkCoupon(const CouponTested& tested) {
    if (tested.material.empty()) {
        return fail(ErrorCode::Malformed, "no material is named; allowed: as PE-HD");
    }
    for (const std::string* text :
         {&tested.material, &tested.standard, &tested.procedure, &tested.remark,
          tested.welder ? &*tested.welder : &tested.material,
          tested.reason ? &*tested.reason : &tested.material}) {
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

namespace {

Result<void> checkJoint(const WeldRecord& joint, const CouponTested& tested) {
    const bool met = std::any_of(joint.phases.begin(), joint.phases.end(), [](const auto& phase) {
        return phase.phase == "build_up";
    });
    const std::int64_t number = joint.opened.number;
    if (!met) {
        return fail(
            ErrorCode::Conflict,
            fmt::format("the faces of joint {} never met; allowed: a joint that was made", number));
    }
    if (!joint.stored && !joint.aborted) {
        return fail(
            ErrorCode::Conflict,
            fmt::format("joint {} is not finished yet; allowed: a joint that is", number));
    }
    if (joint.opened.sheets.empty()) {
        return {};
    }
    const Sheet& sheet = joint.opened.sheets.front();
    if (!isSamePlastic(tested.material, sheet.material)) {
        return fail(
            ErrorCode::Conflict, fmt::format(
                                     "\"{}\" is not the plastic of joint {}; allowed: {}",
                                     tested.material, number, sheet.material));
    }
    const std::int64_t um = tested.thicknessUm;
    if (10 * std::abs(um - sheet.thicknessUm) > sheet.thicknessUm) {
        return fail(
            ErrorCode::Conflict,
            fmt::format(
                "{} mm is not the sheet of joint {}; allowed: a tenth apart from {} mm",
                plainNumber(static_cast<double>(um) / 1e3), number,
                plainNumber(static_cast<double>(sheet.thicknessUm) / 1e3)));
    }
    return {};
}

} // namespace

Result<void> checkOrigin(LogReader& log, const CouponTested& tested) {
    bool known = !tested.welder;
    if (tested.weld) {
        const auto events = log.weldEvents(*tested.weld);
        if (!events && events.error().code != ErrorCode::Damaged) {
            return tl::unexpected<Error>(events.error());
        }
        if (events && events->empty()) {
            return fail(
                ErrorCode::Missing,
                "there is no \"" + *tested.weld + "\" in this log; allowed: one that it has");
        }
        auto folded = events ? fold(*events) : Result<Weld>(tl::unexpected<Error>(events.error()));
        if (folded) {
            const WeldRecord joint = record(std::move(*folded));
            if (auto sound = checkJoint(joint, tested); !sound) {
                return sound;
            }
            known = known ||
                    std::any_of(joint.events.begin(), joint.events.end(), [&](const Event& event) {
                        return event.by == *tested.welder;
                    });
        }
        known = known || !folded;
    }
    if (known) {
        return {};
    }
    const auto roster = readRoster(log);
    if (!roster) {
        return tl::unexpected<Error>(roster.error());
    }
    if (findPerson(roster->people, *tested.welder) == nullptr) {
        return fail(
            ErrorCode::Missing, "nobody here is \"" + tested.welder->substr(0, 40) +
                                    "\"; allowed: one of this log's people, as person:ID");
    }
    return {};
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

std::vector<CouponSeries> cutFrom(const std::string& weld, const CouponsRead& all) {
    std::vector<CouponSeries> out;
    std::copy_if(
        all.series.begin(), all.series.end(), std::back_inserter(out),
        [&weld](const CouponSeries& one) { return one.now().weld == weld; });
    return out;
}

Result<CouponsRead> readCoupons(LogReader& log, const std::optional<std::string>& weld) {
    const auto bodies = log.namedBodiesFrom("coupon:");
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    CouponsRead out;
    std::map<std::string, std::size_t> places;
    std::vector<UnreadEvent> unread;
    for (const auto& [subject, n, body] : *bodies) {
        auto version = versionFrom(body, n);
        if (!version) {
            unread.push_back({subject, n, version.error().detail});
            continue;
        }
        const auto [at, isNew] = places.emplace(subject, out.series.size());
        if (isNew) {
            out.series.emplace_back().id = subject;
        }
        out.series[at->second].versions.push_back(std::move(*version));
    }
    for (UnreadEvent& one : unread) {
        const auto at = places.find(one.subject);
        auto& of = at == places.end() ? out.unread : out.series[at->second].unread;
        of.push_back(std::move(one));
    }
    if (weld) {
        out.series = cutFrom(*weld, out);
    }
    for (CouponSeries& series : out.series) {
        const CouponTested& now = series.now();
        series.required = requiredFactor(now.material);
        if (!now.weldedPa.empty() && !now.parentPa.empty()) {
            const auto factor = weldingFactor(inMpa(now.weldedPa), inMpa(now.parentPa));
            if (factor) {
                series.factor = *factor;
            }
        }
        for (CouponVersion& version : series.versions) {
            if (auto added = addJoint(log, series, version); !added) {
                return tl::unexpected<Error>(added.error());
            }
        }
    }
    return out;
}

} // namespace seamclock
