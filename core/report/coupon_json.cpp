#include "core/base/json.h"
#include "core/report/coupon_text.h"

#include <cmath>

namespace seamclock {
namespace {

/// To four significant places after the dot, as nobody reads more.
double rounded(double value) {
    return std::round(value * 1e4) / 1e4;
}

Json factorJson(const WeldingFactor& factor, const std::optional<double>& required) {
    const auto mean = [](const StrengthMean& of) {
        return Json{
            {"count", of.count}, {"mean_MPa", rounded(of.meanMpa)}, {"sd_MPa", rounded(of.sdMpa)}};
    };
    Json out = {
        {"welded", mean(factor.welded)},
        {"parent", mean(factor.parent)},
        {"factor", rounded(factor.factor)},
        {"answer", toString(answerOf(factor, required))}};
    if (factor.interval) {
        out["interval_95"] = {
            {"low", rounded(factor.interval->low)}, {"high", rounded(factor.interval->high)}};
    }
    if (required) {
        out["required"] = *required;
        out["required_source"] = kRequiredFactorSource;
    }
    return out;
}

Json listInThousands(const std::vector<std::int64_t>& values, double per) {
    Json out = Json::array();
    for (const std::int64_t one : values) {
        out.push_back(static_cast<double>(one) / per);
    }
    return out;
}

Json testedJson(const CouponTested& tested) {
    Json out = {
        {"test", tested.test},
        {"material", tested.material},
        {"thickness_mm", static_cast<double>(tested.thicknessUm) / 1e3},
        {"procedure", tested.procedure}};
    const auto text = [&out](const char* key, const std::string& value) {
        if (!value.empty()) {
            out[key] = value;
        }
    };
    text("standard", tested.standard);
    text("weld", tested.weld.value_or(""));
    text("welder", tested.welder.value_or(""));
    text("remark", tested.remark);
    text("reason", tested.reason.value_or(""));
    const auto list = [&out](const char* key, const std::vector<std::int64_t>& values, double per) {
        if (!values.empty()) {
            out[key] = listInThousands(values, per);
        }
    };
    list("welded_MPa", tested.weldedPa, 1e6);
    list("parent_MPa", tested.parentPa, 1e6);
    list("angle_deg", tested.angleMilli, 1e3);
    list("ram_mm", tested.ramUm, 1e3);
    if (!tested.cracked.empty()) {
        out["cracked"] = tested.cracked;
    }
    return out;
}

Json unreadJson(const std::vector<UnreadEvent>& unread) {
    Json out = Json::array();
    for (const UnreadEvent& one : unread) {
        out.push_back({{"subject", one.subject}, {"n", one.n}, {"reason", one.why}});
    }
    return out;
}

std::string dumped(const Json& json) {
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace

std::string couponJson(const CouponSeries& one) {
    Json json = testedJson(one.now());
    json["series"] = one.id;
    if (one.joint > 0) {
        json["joint"] = one.joint;
    }
    if (!one.joinedBy.empty()) {
        json["joined_by"] = one.joinedBy;
    }
    if (!one.joinedByName.empty()) { // by the log that the joint came with
        json["joined_by_name"] = one.joinedByName;
    }
    if (one.factor) {
        json["welding_factor"] = factorJson(*one.factor, one.required);
    }
    json["versions"] = Json::array();
    for (const CouponVersion& version : one.versions) {
        Json was = testedJson(version.tested);
        was["by"] = version.by;
        was["at_utc"] = toIsoUtc(version.at.utc);
        json["versions"].push_back(std::move(was));
    }
    if (!one.unread.empty()) {
        json["unread"] = unreadJson(one.unread);
    }
    return dumped(json);
}

std::string unreadEventsJson(const std::vector<UnreadEvent>& unread) {
    return dumped(unreadJson(unread));
}

} // namespace seamclock
