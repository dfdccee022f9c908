#include "core/quality/control_chart.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace seamclock {

namespace {

/// Every stretch of values that are all so, of at least `least`, as long as it lasts.
void addStretches(
    std::size_t count, std::size_t least, ChartSign sign,
    const std::function<bool(std::size_t)>& isSo, std::vector<ChartFinding>& out) {
    std::size_t from = 0;
    for (std::size_t i = 0; i <= count; ++i) {
        if (i < count && isSo(i)) {
            continue;
        }
        if (i - from >= least) {
            out.push_back({sign, from, i - 1});
        }
        from = i + 1;
    }
}

} // namespace

std::optional<ControlLimits> limitsOf(const std::vector<double>& values) {
    if (values.size() < 2) {
        return std::nullopt;
    }
    // From the first value on: equal values have exactly their own value as mean, and a chart of
    // them finds nothing.
    double sum = 0;
    double ranges = 0;
    for (std::size_t i = 1; i < values.size(); ++i) {
        sum += values[i] - values.front();
        ranges += std::abs(values[i] - values[i - 1]);
    }
    ControlLimits out;
    out.mean = values.front() + sum / static_cast<double>(values.size());
    out.meanRange = ranges / static_cast<double>(values.size() - 1);
    out.lower = out.mean - kIndividualsFactor * out.meanRange;
    out.upper = out.mean + kIndividualsFactor * out.meanRange;
    out.upperRange = kRangesFactor * out.meanRange;
    return out;
}

std::string_view toString(ChartSign sign) {
    switch (sign) {
    case ChartSign::AboveLimit:
        return "above_limit";
    case ChartSign::BelowLimit:
        return "below_limit";
    case ChartSign::RangeAboveLimit:
        return "range_above_limit";
    case ChartSign::AboveMean:
        return "above_mean";
    case ChartSign::BelowMean:
        return "below_mean";
    case ChartSign::Rising:
        return "rising";
    case ChartSign::Falling:
        return "falling";
    }
    return "";
}

std::vector<ChartFinding>
findingsOf(const std::vector<double>& values, const ControlLimits& limits) {
    std::vector<ChartFinding> out;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (values[i] > limits.upper) {
            out.push_back({ChartSign::AboveLimit, i, i});
        } else if (values[i] < limits.lower) {
            out.push_back({ChartSign::BelowLimit, i, i});
        }
        if (i > 0 && std::abs(values[i] - values[i - 1]) > limits.upperRange) {
            out.push_back({ChartSign::RangeAboveLimit, i - 1, i});
        }
    }
    const auto above = [&](std::size_t i) { return values[i] > limits.mean; };
    const auto below = [&](std::size_t i) { return values[i] < limits.mean; };
    addStretches(values.size(), kRunOnOneSide, ChartSign::AboveMean, above, out);
    addStretches(values.size(), kRunOnOneSide, ChartSign::BelowMean, below, out);
    // A turning point ends one run and begins the next, so a run one way is counted by its steps.
    for (const bool up : {true, false}) {
        std::size_t from = 0;
        for (std::size_t i = 1; i <= values.size(); ++i) {
            const bool goesOn =
                i < values.size() && (up ? values[i] > values[i - 1] : values[i] < values[i - 1]);
            if (goesOn) {
                continue;
            }
            if (i - from >= kRunOneWay) {
                out.push_back({up ? ChartSign::Rising : ChartSign::Falling, from, i - 1});
            }
            from = i;
        }
    }
    std::stable_sort(out.begin(), out.end(), [](const ChartFinding& a, const ChartFinding& b) {
        return a.to < b.to;
    });
    return out;
}

} // namespace seamclock
