#include "core/bench/calibration.h"

#include "core/base/plain_number.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>

namespace seamclock {

namespace {

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

// The whole of the text as a finite number with a decimal point; nothing else counts.
std::optional<double> numberIn(std::string_view text) {
    double value = 0;
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (trouble != std::errc() || end != text.data() + text.size() || !std::isfinite(value)) {
        return std::nullopt;
    }
    return value;
}

std::vector<std::string_view> cells(std::string_view line) {
    std::vector<std::string_view> out;
    while (true) {
        const auto comma = line.find(',');
        out.push_back(trimmed(line.substr(0, comma)));
        if (comma == std::string_view::npos) {
            return out;
        }
        line.remove_prefix(comma + 1);
    }
}

// What stands in the file, short enough for a sentence and free of anything that isn't printable
// ASCII.
std::string shown(std::string_view text) {
    constexpr std::size_t kLongest = 40;
    std::string out;
    for (const char c : text.substr(0, kLongest)) {
        out += (c >= ' ' && c <= '~') ? c : '?';
    }
    return "\"" + out + (text.size() > kLongest ? "...\"" : "\"");
}

} // namespace

Result<LineFit> fitLine(const std::vector<double>& x, const std::vector<double>& y) {
    if (x.size() != y.size()) {
        return fail(
            ErrorCode::OutOfRange, std::to_string(x.size()) + " readings and " +
                                       std::to_string(y.size()) + " forces; they must be as many");
    }
    if (x.size() < 3) {
        return fail(
            ErrorCode::OutOfRange,
            std::to_string(x.size()) + " points; a line with its uncertainty needs 3 or more");
    }
    const auto finite = [](double value) { return std::isfinite(value); };
    if (!std::all_of(x.begin(), x.end(), finite) || !std::all_of(y.begin(), y.end(), finite)) {
        return fail(ErrorCode::OutOfRange, "a point is not a finite number");
    }
    const auto n = static_cast<double>(x.size());
    double meanX = 0;
    double meanY = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        meanX += x[i] / n;
        meanY += y[i] / n;
    }
    // About the means, so that no digits are lost to large sums.
    double sxx = 0;
    double sxy = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        sxx += (x[i] - meanX) * (x[i] - meanX);
        sxy += (x[i] - meanX) * (y[i] - meanY);
    }
    const auto [least, most] = std::minmax_element(x.begin(), x.end());
    if (!(*most > *least) || !(sxx > 0)) {
        return fail(ErrorCode::OutOfRange, "all readings are the same; a line needs two or more");
    }
    LineFit fit;
    fit.slope = sxy / sxx;
    fit.intercept = meanY - fit.slope * meanX;
    double squares = 0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        fit.residuals.push_back(y[i] - (fit.intercept + fit.slope * x[i]));
        squares += fit.residuals.back() * fit.residuals.back();
    }
    fit.residualSd = std::sqrt(squares / (n - 2));
    fit.slopeSd = fit.residualSd / std::sqrt(sxx);
    fit.interceptSd = fit.residualSd * std::sqrt(1 / n + meanX * meanX / sxx);
    for (const double value :
         {fit.slope, fit.intercept, fit.slopeSd, fit.interceptSd, fit.residualSd}) {
        if (!std::isfinite(value)) {
            return fail(ErrorCode::OutOfRange, "the points are too large for a line to be fitted");
        }
    }
    return fit;
}

Result<ScaleFit> fitScale(std::string_view name, std::string_view csv) {
    constexpr std::array<const char*, 2> kColumns{"the reading", "force_N"};
    std::array<std::vector<double>, 2> points;
    bool headerSeen = false;
    int number = 0;
    const auto at = [&](const std::string& what) {
        return fail(
            ErrorCode::Malformed,
            std::string(name) + ", line " + std::to_string(number) + ": " + what);
    };
    if (csv.substr(0, 3) == "\xEF\xBB\xBF") {
        csv.remove_prefix(3);
    }
    while (!csv.empty()) {
        const auto end = csv.find('\n');
        const std::string_view line = trimmed(csv.substr(0, end));
        csv.remove_prefix(end == std::string_view::npos ? csv.size() : end + 1);
        ++number;
        if (line.empty() || line.front() == '#') {
            continue;
        }
        const auto fields = cells(line);
        if (!headerSeen) {
            if (fields.size() != 2 || fields[0].substr(0, 7) != "reading" ||
                fields[1] != "force_N") {
                return at(
                    shown(line) + " is not the header; expected reading,force_N (or reading_mm)");
            }
            headerSeen = true;
            continue;
        }
        if (fields.size() != 2) {
            return at(
                shown(line) + " holds " + std::to_string(fields.size()) +
                " values; expected 2, with a decimal point");
        }
        for (std::size_t i = 0; i < 2; ++i) {
            const auto value = numberIn(fields[i]);
            if (!value) {
                return at(
                    std::string(kColumns[i]) + " " + shown(fields[i]) +
                    " is not a finite number with a decimal point");
            }
            points[i].push_back(*value);
        }
    }
    if (!headerSeen) {
        return fail(
            ErrorCode::Malformed,
            std::string(name) + ": the file is empty; expected the header reading,force_N");
    }
    const auto line = fitLine(points[0], points[1]);
    if (!line) {
        return fail(line.error().code, std::string(name) + ": " + line.error().detail);
    }
    if (!(line->slope > 0)) {
        return fail(
            ErrorCode::OutOfRange,
            std::string(name) + ": the rate " + plainNumber(line->slope) +
                " N per unit is not positive: a spring's force must rise with its reading");
    }
    ScaleFit fit;
    fit.line = *line;
    fit.rate = line->slope;
    fit.zero = -line->intercept / line->slope;
    fit.rateUncertaintyPercent = 100 * line->slopeSd / line->slope;
    for (const double residual : line->residuals) {
        fit.worstResidual = std::max(fit.worstResidual, std::fabs(residual));
    }
    fit.points = static_cast<int>(points[0].size());
    return fit;
}

} // namespace seamclock
