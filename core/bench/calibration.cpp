#include "core/bench/calibration.h"

#include "core/base/plain_number.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <gsl/gsl_cdf.h>
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

std::vector<std::string_view> cellsIn(std::string_view line) {
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

std::string rounded(double value) {
    return plainNumber(std::round(value * 1e3) / 1e3);
}

/// What is wrong with a line that should hold two numbers; most such files come from a spreadsheet
/// whose language writes 1,5.
std::string notTwo(std::string_view line, std::size_t count) {
    if (line.find(';') != std::string_view::npos) {
        return shown(line) + " is separated by semicolons; expected a comma between the two values "
                             "and a decimal point in each";
    }
    if (line.find('\t') != std::string_view::npos) {
        return shown(line) + " is separated by tabs; expected a comma between the two values";
    }
    std::string what = shown(line) + " holds " + std::to_string(count) +
                       (count == 1 ? " value" : " values") + "; expected 2, with a decimal point";
    if (count == 3 || count == 4) {
        what += " (1.5, not 1,5)";
    }
    return what;
}

class CsvPoints {
public:
    explicit CsvPoints(std::string_view name) : m_name(name) {}

    Result<void> take(std::string_view line) {
        ++m_number;
        if (line.empty() || line.front() == '#') {
            return {};
        }
        const auto fields = cellsIn(line);
        return m_headerSeen ? takePoint(line, fields) : takeHeader(line, fields);
    }
    Result<std::vector<CalibrationPoint>> taken() {
        if (!m_headerSeen) {
            return fail(
                ErrorCode::Malformed,
                m_name + ": the file is empty; expected the header reading,force_N");
        }
        return std::move(m_points);
    }

private:
    using Cells = std::vector<std::string_view>;

    Result<void> takeHeader(std::string_view line, const Cells& fields) {
        if (fields.size() != 2 || fields[0].substr(0, 7) != "reading" || fields[1] != "force_N") {
            const bool semicolons = line.find(';') != std::string_view::npos;
            return at(
                ErrorCode::Malformed,
                shown(line) + " is not the header; expected reading,force_N (or reading_mm)" +
                    (semicolons ? ", with a comma, not a semicolon" : ""));
        }
        m_headerSeen = true;
        return {};
    }
    Result<void> takePoint(std::string_view line, const Cells& fields) {
        if (fields.size() != 2) {
            return at(ErrorCode::Malformed, notTwo(line, fields.size()));
        }
        if (m_points.size() == kMostCalibrationPoints) {
            return at(
                ErrorCode::OutOfRange, "more points than the " +
                                           std::to_string(kMostCalibrationPoints) +
                                           " that are allowed");
        }
        const auto reading = number("the reading", fields[0], kLeastReading, kGreatestReading, "");
        if (!reading) {
            return tl::unexpected<Error>(reading.error());
        }
        const auto force = number("force_N", fields[1], kLeastCellForce, kGreatestCellForce, " N");
        if (!force) {
            return tl::unexpected<Error>(force.error());
        }
        m_points.push_back({*reading, *force});
        return {};
    }
    Result<double> number(
        const char* what, std::string_view field, double low, double high, const char* unit) const {
        const auto value = numberIn(field);
        if (!value) {
            return at(
                ErrorCode::Malformed, std::string(what) + " " + shown(field) +
                                          " is not a finite number with a decimal point");
        }
        if (*value < low || *value > high) {
            return at(
                ErrorCode::OutOfRange, std::string(what) + " " + shown(field) + " is outside " +
                                           plainNumber(low) + " to " + plainNumber(high) + unit);
        }
        return *value;
    }
    tl::unexpected<Error> at(ErrorCode code, const std::string& what) const {
        return fail(code, m_name + ", line " + std::to_string(m_number) + ": " + what);
    }

    std::string m_name;
    int m_number = 0;
    bool m_headerSeen = false;
    std::vector<CalibrationPoint> m_points;
};

tl::unexpected<Error> named(std::string_view name, const Error& error) {
    return fail(error.code, std::string(name) + ": " + error.detail);
}

} // namespace

// Draper and Smith, Applied Regression Analysis, 3rd ed., section 3.1 (from memory): the variance
// of the fitted line at x is s² (1/n + (x − x̄)²/Sxx), that of one further point s² more.
double LineFit::confidenceAt(double x) const {
    const auto n = static_cast<double>(residuals.size());
    return t95 * residualSd * std::sqrt(1 / n + (x - meanX) * (x - meanX) / sumSquaresX);
}

double LineFit::predictionAt(double x) const {
    return std::hypot(confidenceAt(x), t95 * residualSd);
}

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
    fit.meanX = meanX;
    fit.sumSquaresX = sxx;
    fit.t95 = gsl_cdf_tdist_Pinv(0.975, n - 2);
    for (const double value :
         {fit.slope, fit.intercept, fit.slopeSd, fit.interceptSd, fit.residualSd}) {
        if (!std::isfinite(value)) {
            return fail(ErrorCode::OutOfRange, "the points are too large for a line to be fitted");
        }
    }
    return fit;
}

double allowedResidual(const ScaleFit& fit) {
    // Our judgement: of the 6.7 and 10 % of the force that the tables tolerate, a bent or sticking
    // scale may use up two.
    constexpr double kShare = 0.02;
    double largest = 0;
    for (const CalibrationPoint& point : fit.points) {
        largest = std::max(largest, std::fabs(point.force));
    }
    return kShare * largest;
}

Result<ScaleFit> fitPoints(const std::vector<CalibrationPoint>& points) {
    std::vector<double> readings;
    std::vector<double> forces;
    for (const CalibrationPoint& point : points) {
        readings.push_back(point.reading);
        forces.push_back(point.force);
    }
    const auto line = fitLine(readings, forces);
    if (!line) {
        return tl::unexpected<Error>(line.error());
    }
    if (!(line->slope > 0)) {
        return fail(
            ErrorCode::OutOfRange,
            "the rate " + plainNumber(line->slope) +
                " N per unit is not positive: a spring's force must rise with its reading");
    }
    ScaleFit fit;
    fit.points = points;
    fit.line = *line;
    fit.rate = line->slope;
    fit.zero = -line->intercept / line->slope;
    // The line's own standard deviation there, over its slope: the first order of the spread of
    // where it crosses no force.
    fit.zeroSd = line->confidenceAt(fit.zero) / line->t95 / line->slope;
    fit.rateUncertaintyPercent = 100 * line->slopeSd / line->slope;
    for (std::size_t i = 0; i < line->residuals.size(); ++i) {
        const double off = std::fabs(line->residuals[i]);
        if (off > fit.worstResidual) {
            fit.worstResidual = off;
            fit.worstPoint = i;
        }
    }
    const auto [least, most] = std::minmax_element(readings.begin(), readings.end());
    fit.lowestReading = *least;
    fit.highestReading = *most;
    return fit;
}

Result<void> straightEnough(const ScaleFit& fit) {
    const double allowed = allowedResidual(fit);
    if (fit.worstResidual <= allowed) {
        return {};
    }
    const CalibrationPoint& worst = fit.points[fit.worstPoint];
    return fail(
        ErrorCode::OutOfRange, "not straight enough: point " + std::to_string(fit.worstPoint + 1) +
                                   " (reading " + rounded(worst.reading) + ", " +
                                   rounded(worst.force) + " N) is " + rounded(fit.worstResidual) +
                                   " N off the line; allowed " + rounded(allowed) +
                                   " N, 2 % of the largest force (our judgement)");
}

Result<std::vector<CalibrationPoint>>
readCalibrationCsv(std::string_view name, std::string_view csv) {
    if (csv.substr(0, 3) == "\xEF\xBB\xBF") {
        csv.remove_prefix(3);
    }
    CsvPoints points(name);
    while (!csv.empty()) {
        const auto end = csv.find('\n');
        if (const auto taken = points.take(trimmed(csv.substr(0, end))); !taken) {
            return tl::unexpected<Error>(taken.error());
        }
        csv.remove_prefix(end == std::string_view::npos ? csv.size() : end + 1);
    }
    return points.taken();
}

Result<ScaleFit> fitScale(std::string_view name, std::string_view csv) {
    const auto points = readCalibrationCsv(name, csv);
    if (!points) {
        return tl::unexpected<Error>(points.error());
    }
    auto fit = fitPoints(*points);
    if (!fit) {
        return named(name, fit.error());
    }
    if (const auto straight = straightEnough(*fit); !straight) {
        return named(name, straight.error());
    }
    return fit;
}

} // namespace seamclock
