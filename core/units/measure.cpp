#include "core/units/measure.h"

#include "core/units/quantity.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <cstdlib>
#include <fmt/format.h>
#include <optional>

namespace seamclock {
namespace {

/// `value` / 10^`digits`, rounded to `decimals` away from zero, its last zeros left away.
std::string trimmed(std::int64_t value, int digits, int decimals) {
    std::int64_t step = 1;
    for (int i = decimals; i < digits; ++i) {
        step *= 10;
    }
    const bool below = value < 0;
    const std::uint64_t size =
        below ? 0 - static_cast<std::uint64_t>(value) : static_cast<std::uint64_t>(value);
    const std::uint64_t rounded =
        (size + static_cast<std::uint64_t>(step) / 2) / static_cast<std::uint64_t>(step);
    std::uint64_t one = 1;
    for (int i = 0; i < std::min(digits, decimals); ++i) {
        one *= 10;
    }
    std::string text = std::to_string(rounded / one);
    if (one > 1 && rounded % one != 0) {
        text += fmt::format(".{:0{}}", rounded % one, std::min(digits, decimals));
        text.erase(text.find_last_not_of('0') + 1);
    }
    return below && rounded != 0 ? "-" + text : text;
}

int decimalsIn(const std::string& number) {
    const auto dot = number.find('.');
    return dot == std::string::npos ? 0 : static_cast<int>(number.size() - dot - 1);
}

std::string fixed(double value, int decimals) {
    std::string text = fmt::format("{:.{}f}", value, decimals);
    const bool nothing = text.find_first_not_of("-0.") == std::string::npos;
    return nothing && text.front() == '-' ? text.substr(1) : text;
}

std::string inInchesShown(double mm, int metricDecimals) {
    const double inch = inInches(millimetres(mm));
    const int finest = std::max(3, metricDecimals + 2);
    return fixed(inch, std::abs(inch) < 10 ? finest : finest - 1);
}

std::string inPoundsShown(double newton, int metricDecimals) {
    return fixed(inPoundsForce(newtons(newton)), metricDecimals + 1);
}

/// Exact: a degree Celsius is 1.8 °F, so one decimal more says it all.
std::string inFahrenheitShown(std::int64_t mC) {
    return trimmed(mC * 18 + 320'000, 4, 4);
}

struct Found {
    std::size_t end; // after the unit
    std::string unit;
};

/// The unit right after a number that ends at `at`, if it is one of ours.
std::optional<Found> unitAt(std::string_view text, std::size_t at, const std::string& ofRate) {
    for (const std::string_view unit :
         {std::string_view(" N/mm²"), std::string_view(ofRate), std::string_view(" °C"),
          std::string_view(" mm"), std::string_view(" N")}) {
        if (unit.empty()) {
            continue;
        }
        if (text.substr(at, unit.size()) != unit) {
            continue;
        }
        const std::size_t end = at + unit.size();
        // "N/mm", "mm²" and "Nm" are other units
        const bool whole = end == text.size() ||
                           (std::isalnum(static_cast<unsigned char>(text[end])) == 0 &&
                            text[end] != '/' && static_cast<unsigned char>(text[end]) < 0x80);
        if (whole) {
            return Found{end, std::string(unit.substr(1))};
        }
    }
    return std::nullopt;
}

std::string turned(const std::string& number, const std::string& unit) {
    const double value = std::strtod(number.c_str(), nullptr);
    if (unit == "°C") {
        return inFahrenheitShown(std::llround(value * 1000)) + " °F";
    }
    if (unit == "N") {
        return inPoundsShown(value, decimalsIn(number)) + " lbf";
    }
    if (unit == "mm") {
        return inInchesShown(value, decimalsIn(number)) + " in";
    }
    if (unit.rfind("N/", 0) == 0 && unit != "N/mm²") {
        return inPoundsShown(value, std::max(1, decimalsIn(number))) + " lbf" + unit.substr(1);
    }
    return pressureIn(UnitSystem::Imperial, std::llround(value * 1e6)).text();
}

/// The end of a plain number that begins at `at`; `at` itself where none does.
std::size_t numberEnd(std::string_view text, std::size_t at) {
    const auto digit = [&](std::size_t i) {
        return i < text.size() && std::isdigit(static_cast<unsigned char>(text[i])) != 0;
    };
    std::size_t end = at;
    if (end < text.size() && text[end] == '-' && digit(end + 1)) {
        ++end;
    }
    if (!digit(end)) {
        return at;
    }
    while (digit(end)) {
        ++end;
    }
    if (end < text.size() && text[end] == '.' && digit(end + 1)) {
        ++end;
        while (digit(end)) {
            ++end;
        }
    }
    return end;
}

struct Range {
    std::string between;
    std::string number;
    std::size_t end;
};

/// " to 45" or " to +45" right after a number that ends at `at`.
std::optional<Range> rangeAt(std::string_view text, std::size_t at) {
    for (const std::string_view between : {" to ", " to +"}) {
        if (text.substr(at, between.size()) != between) {
            continue;
        }
        const std::size_t from = at + between.size();
        const std::size_t end = numberEnd(text, from);
        if (end != from) {
            return Range{std::string(between), std::string(text.substr(from, end - from)), end};
        }
    }
    return std::nullopt;
}

} // namespace

std::string_view toString(UnitSystem system) {
    switch (system) {
    case UnitSystem::Metric:
        return "metric";
    case UnitSystem::Imperial:
        return "imperial";
    }
    return "";
}

Measure lengthIn(UnitSystem system, std::int64_t um) {
    const std::string metric = trimmed(um, 3, 3);
    if (system == UnitSystem::Metric) {
        return {metric, "mm"};
    }
    return {inInchesShown(static_cast<double>(um) / 1e3, decimalsIn(metric)), "in"};
}

Measure forceIn(UnitSystem system, std::int64_t mN) {
    const std::string metric = trimmed(mN, 3, 1);
    if (system == UnitSystem::Metric) {
        return {metric, "N"};
    }
    return {inPoundsShown(static_cast<double>(mN) / 1e3, decimalsIn(metric)), "lbf"};
}

Measure kilogramsForceOf(std::int64_t mN) {
    return {fixed(inKilogramsForce(newtons(static_cast<double>(mN) / 1e3)), 1), "kgf"};
}

Measure pressureIn(UnitSystem system, std::int64_t pa) {
    if (system == UnitSystem::Metric) {
        return {trimmed(pa, 6, 4), "N/mm²"};
    }
    return {fixed(inPoundsPerSquareInch(pascals(static_cast<double>(pa))), 2), "psi"};
}

Measure temperatureIn(UnitSystem system, std::int64_t mC) {
    if (system == UnitSystem::Metric) {
        return {trimmed(mC, 3, 3), "°C"};
    }
    return {inFahrenheitShown(mC), "°F"};
}

Measure rateIn(UnitSystem system, std::int64_t mNPerUnit, std::string_view scaleUnit) {
    const std::string metric = trimmed(mNPerUnit, 3, 2);
    const std::string per = "/" + std::string(scaleUnit);
    if (system == UnitSystem::Metric) {
        return {metric, "N" + per};
    }
    return {
        inPoundsShown(static_cast<double>(mNPerUnit) / 1e3, std::max(1, decimalsIn(metric))),
        "lbf" + per};
}

std::string sentenceIn(UnitSystem system, std::string_view metric, const SentenceAbout& about) {
    if (system == UnitSystem::Metric) {
        return std::string(metric);
    }
    const std::string ofRate = about.scaleUnit.empty() ? "" : " N/" + std::string(about.scaleUnit);
    const bool lengthsToo = !(about.readings && about.scaleUnit == "mm");
    std::string text;
    std::size_t at = 0;
    while (at < metric.size()) {
        // A number inside a word ("2207-1", "bench3") is no value.
        const bool inWord =
            at > 0 && (std::isalnum(static_cast<unsigned char>(metric[at - 1])) != 0 ||
                       metric[at - 1] == '-' || metric[at - 1] == '.');
        const std::size_t end = inWord ? at : numberEnd(metric, at);
        if (end == at) {
            text += metric[at++];
            continue;
        }
        const std::string number(metric.substr(at, end - at));
        const auto range = rangeAt(metric, end);
        const auto unit = unitAt(metric, range ? range->end : end, ofRate);
        if (!unit || (unit->unit == "mm" && !lengthsToo)) {
            text += number;
            at = end;
            continue;
        }
        if (range) {
            // "+5 to +45 °C": the unit stands once and counts for both.
            const std::string first = turned(number, unit->unit);
            text += first.substr(0, first.find(' ')) + range->between;
            text += turned(range->number, unit->unit);
        } else {
            text += turned(number, unit->unit);
        }
        at = unit->end;
    }
    return text;
}

} // namespace seamclock
