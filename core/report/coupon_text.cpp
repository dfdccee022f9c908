#include "core/report/coupon_text.h"

#include "core/base/plain_number.h"
#include "core/report/plain_text.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <string_view>
#include <vector>

namespace seamclock {

namespace {

std::string shown(double value, double per = 1e3) {
    return plainNumber(std::round(value * per) / per);
}

/// With as many places that what is below the required one does not read as if it reached it.
std::string shownBeside(double value, const std::optional<double>& required) {
    const bool close = required && value < *required && std::round(value * 1e3) >= *required * 1e3;
    return shown(value, close ? 1e6 : 1e3);
}

std::string factorText(const CouponSeries& series) {
    const WeldingFactor& factor = *series.factor;
    std::string text = shownBeside(factor.factor, series.required);
    text += factor.interval ? fmt::format(
                                  ", 95 % between {} and {}",
                                  shownBeside(factor.interval->low, series.required),
                                  shownBeside(factor.interval->high, series.required))
                            : ", no interval: too few coupons, or parents that scatter too much";
    switch (answerOf(factor, series.required)) {
    case FactorAnswer::Met:
        text += fmt::format("; above the required {} with all its interval", *series.required);
        break;
    case FactorAnswer::MetByMean:
        text += fmt::format("; reaches the required {} by its means", *series.required);
        text += factor.interval ? ", not with all its interval" : "";
        break;
    case FactorAnswer::NotMet:
        text += fmt::format("; below the required {}", *series.required);
        break;
    case FactorAnswer::NoRequirement:
        return text + "; no requirement to hand";
    }
    return text + " [" + std::string(kRequiredFactorSource) + "]";
}

std::string meanText(const StrengthMean& mean) {
    return fmt::format(
        "{} coupons, mean {} MPa, standard deviation {}", mean.count, shown(mean.meanMpa, 1e2),
        shown(mean.sdMpa, 1e2));
}

std::string listText(const std::vector<std::int64_t>& values, double per) {
    std::string text;
    for (const std::int64_t one : values) {
        text += (text.empty() ? "" : ", ") + plainNumber(static_cast<double>(one) / per);
    }
    return text;
}

} // namespace

std::string unreadEventText(const UnreadEvent& one) {
    return wrapped(
               fmt::format(
                   "event {} of {} can't be read: {}", one.n, onOneLine(one.subject),
                   onOneLine(one.why)),
               2) +
           "\n";
}

namespace {

std::string numbersText(const CouponTested& tested) {
    std::string text;
    const auto add = [&text](const char* what, const std::string& values, const char* unit) {
        text += (text.empty() ? "" : ", ") + std::string(what) + " " + values + unit;
    };
    if (!tested.weldedPa.empty()) {
        add("welded", listText(tested.weldedPa, 1e6), " MPa");
    }
    if (!tested.parentPa.empty()) {
        add("parent", listText(tested.parentPa, 1e6), " MPa");
    }
    if (!tested.angleMilli.empty()) {
        add("bend angle", listText(tested.angleMilli, 1e3), "°");
    }
    if (!tested.ramUm.empty()) {
        add("ram", listText(tested.ramUm, 1e3), " mm");
    }
    if (!tested.cracked.empty()) {
        add("cracked", listText(tested.cracked, 1), "");
    }
    return text;
}

/// "; before of joint 41, EN 12814-2, welded 27 MPa": all that this version had otherwise.
std::string movedText(const CouponVersion& was, const CouponVersion& now) {
    std::string text;
    const auto add = [&text](const std::string& words) {
        text += (text.empty() ? "; before " : ", ") + onOneLine(words);
    };
    const auto addIf = [&add](const std::string& old, const std::string& is, const char* none) {
        if (old != is) {
            add(old.empty() ? none : old);
        }
    };
    const CouponTested& old = was.tested;
    const CouponTested& is = now.tested;
    if (old.weld != is.weld) {
        add(was.joint > 0 ? fmt::format("of joint {}", was.joint)
            : old.weld    ? "of " + *old.weld
                          : "of a procedure trial");
    }
    addIf(old.test, is.test, "");
    addIf(old.standard, is.standard, "by no standard");
    if (old.welder != is.welder) {
        add(old.welder ? "welded by " + *old.welder +
                             (was.welderName.empty() ? "" : " (" + was.welderName + ")")
                       : "no welder");
    }
    if (old.material != is.material || old.thicknessUm != is.thicknessUm) {
        add(old.material + " " + fromThousandths(old.thicknessUm) + " mm");
    }
    addIf(old.procedure, is.procedure, "no procedure");
    addIf(numbersText(old), numbersText(is), "no number");
    addIf(old.remark, is.remark, "no remark");
    return text;
}

} // namespace

std::string couponText(const CouponSeries& series) {
    const CouponTested& now = series.now();
    std::vector<std::vector<std::string>> rows = {
        {"Test", onOneLine(now.test + (now.standard.empty() ? "" : ", " + now.standard))},
        {"Sheet", onOneLine(now.material + " " + fromThousandths(now.thicknessUm) + " mm")},
        {"From", series.joint > 0 ? fmt::format("joint {}", series.joint)
                 : now.weld       ? onOneLine(*now.weld) // of another log, or not to be read
                                  : "a procedure trial"}};
    const auto add = [&rows](const char* name, const std::string& text) {
        if (!text.empty()) {
            rows.push_back({name, onOneLine(text)});
        }
    };
    add("Procedure", now.procedure);
    add("Welded by",
        series.joinedBy + (series.joinedByName.empty() ? "" : " (" + series.joinedByName + ")"));
    if (series.factor) {
        add("Welded", meanText(series.factor->welded));
        add("Parent", meanText(series.factor->parent));
        add("Factor", factorText(series));
    } else if (!now.weldedPa.empty()) {
        add("Welded", listText(now.weldedPa, 1e6) + " MPa");
    }
    if (!now.angleMilli.empty()) {
        add("Bend angle", listText(now.angleMilli, 1e3) + "°");
    }
    if (!now.ramUm.empty()) {
        add("Ram", listText(now.ramUm, 1e3) + " mm");
    }
    if (!now.cracked.empty()) {
        add("Cracked", fmt::format(
                           "{} of {}", std::count(now.cracked.begin(), now.cracked.end(), 1),
                           now.cracked.size()));
    }
    add("Remark", now.remark);
    add("Event", std::to_string(series.versions.back().n));
    std::string text = headline(onOneLine(series.id)) + aligned(rows);
    for (const UnreadEvent& one : series.unread) {
        text += unreadEventText(one);
    }
    for (std::size_t i = 1; i < series.versions.size(); ++i) {
        const CouponVersion& version = series.versions[i];
        text += wrapped(
                    "  put right on " + toIsoDate(version.at.utc, version.at.offset) + " by " +
                        onOneLine(version.by + ": " + version.tested.reason.value_or("")) +
                        movedText(series.versions[i - 1], version) +
                        "; what was entered before stays in the log",
                    4) +
                "\n";
    }
    return text;
}

} // namespace seamclock
