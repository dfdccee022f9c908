#include "core/quality/shop_charts.h"

#include "core/log/log_reader.h"

#include <algorithm>
#include <utility>

namespace seamclock {

namespace {

constexpr std::size_t kLastOnes = 10;
constexpr std::size_t kLeastOnes = 5;
constexpr double kThousandths = 1e-3; // ms to s, m°C to °C, thousandths of the scale's unit

/// The charts as they are filled: most joints come from few groups, and often from the last one.
class Groups {
public:
    ShopChart& of(const MeasuredJoint& joint) {
        for (std::size_t place = 0; place < m_charts.size(); ++place) {
            const std::size_t i = place == 0 ? m_last : (place <= m_last ? place - 1 : place);
            const LikeJoints& like = m_charts[i].joints;
            if (like.thicknessUm == joint.thicknessUm && like.by == joint.by &&
                like.bench == joint.bench && like.procedure == joint.procedure) {
                m_last = i;
                return m_charts[i];
            }
        }
        m_last = m_charts.size();
        ShopChart chart;
        chart.joints = {
            std::string(joint.bench), std::string(joint.by), std::string(joint.procedure),
            joint.thicknessUm};
        m_charts.push_back(std::move(chart));
        return m_charts.back();
    }

    std::vector<ShopChart> taken() { return std::move(m_charts); }

private:
    std::vector<ShopChart> m_charts;
    std::size_t m_last = 0;
};

bool isRising(const ShopChart& chart) {
    return std::any_of(
        chart.findings.begin(), chart.findings.end(), [&](const ChartFinding& finding) {
            const bool up = finding.sign == ChartSign::Rising ||
                            finding.sign == ChartSign::AboveMean ||
                            finding.sign == ChartSign::AboveLimit;
            return up && finding.to + 1 == chart.values.size();
        });
}

} // namespace

const std::vector<JointMeasure>& chartedMeasures() {
    static const std::vector<JointMeasure> all{
        JointMeasure::Changeover, JointMeasure::Alignment, JointMeasure::Plate,
        JointMeasure::Drift};
    return all;
}

std::string_view unitOf(JointMeasure measure) {
    switch (measure) {
    case JointMeasure::Preparation:
    case JointMeasure::Alignment:
    case JointMeasure::Changeover:
    case JointMeasure::Release:
        return "s";
    case JointMeasure::Plate:
        return "°C";
    case JointMeasure::Drift:
        return "scale";
    }
    return "";
}

Result<std::vector<ShopChart>>
shopCharts(LogReader& log, JointMeasure measure, const MeasureFilter& filter) {
    Groups groups;
    const auto read = log.eachMeasured(measure, filter, [&groups](const MeasuredJoint& joint) {
        ShopChart& chart = groups.of(joint);
        chart.values.push_back(static_cast<double>(joint.value.value_or(0)) * kThousandths);
        chart.numbers.push_back(joint.number);
        chart.openedUtcMs.push_back(joint.openedUtcMs);
    });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    std::vector<ShopChart> out = groups.taken();
    for (ShopChart& chart : out) {
        chart.measure = measure;
        chart.limits = limitsOf(chart.values);
        if (chart.limits) {
            chart.findings = findingsOf(chart.values, *chart.limits);
        }
        chart.plateColdOrDirty = measure == JointMeasure::Alignment && isRising(chart);
    }
    std::sort(out.begin(), out.end(), [](const ShopChart& a, const ShopChart& b) {
        return a.joints < b.joints;
    });
    return out;
}

Result<std::map<LikeTimes, MedianTimes>> medianTimes(LogReader& log) {
    std::map<LikeTimes, MedianTimes> out;
    const std::pair<JointMeasure, std::optional<Milliseconds> MedianTimes::*> wanted[] = {
        {JointMeasure::Preparation, &MedianTimes::preparation},
        {JointMeasure::Alignment, &MedianTimes::alignment},
        {JointMeasure::Release, &MedianTimes::release}};
    for (const auto& [measure, place] : wanted) {
        std::map<LikeTimes, std::vector<std::int64_t>> all;
        const auto read = log.eachMeasured(measure, {}, [&all](const MeasuredJoint& joint) {
            all[{std::string(joint.bench), std::string(joint.procedure), joint.thicknessUm}]
                .push_back(joint.value.value_or(0));
        });
        if (!read) {
            return tl::unexpected<Error>(read.error());
        }
        for (auto& [like, values] : all) {
            if (values.size() < kLeastOnes) {
                continue;
            }
            const std::size_t count = std::min(values.size(), kLastOnes);
            values.erase(values.begin(), values.end() - static_cast<std::ptrdiff_t>(count));
            std::sort(values.begin(), values.end());
            out[like].*place = Milliseconds(values[(count - 1) / 2]);
        }
    }
    return out;
}

} // namespace seamclock
