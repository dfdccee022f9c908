#include "core/quality/shop_charts.h"

#include "core/log/log_reader.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <utility>

namespace seamclock {

namespace {

constexpr std::size_t kLastOnes = 10;
constexpr std::size_t kLeastOnes = 5;
constexpr double kThousandths = 1e-3; // ms to s, m°C to °C, thousandths of the scale's unit

/// Joints that are alike, with a chart for each measure.
struct Group {
    LikeJoints joints;
    std::vector<ShopChart> charts;
};

/// The groups as they are filled: most joints come from few, and often from the last one.
class Groups {
public:
    explicit Groups(const std::vector<JointMeasure>& measures) : m_measures(measures) {}

    void take(const MeasuredJoint& joint) {
        Group& group = of(joint);
        for (ShopChart& chart : group.charts) {
            if (const auto& value = joint.values[chart.measure]) {
                chart.values.push_back(static_cast<double>(*value) * kThousandths);
                chart.numbers.push_back(joint.number);
                chart.openedUtcMs.push_back(joint.openedUtcMs);
            }
        }
    }

    /// By measure, each with at least one joint.
    std::vector<ShopChart> taken() {
        std::sort(m_groups.begin(), m_groups.end(), [](const Group& a, const Group& b) {
            return a.joints < b.joints;
        });
        std::vector<ShopChart> out;
        for (std::size_t i = 0; i < m_measures.size(); ++i) {
            for (Group& group : m_groups) {
                if (!group.charts[i].values.empty()) {
                    out.push_back(std::move(group.charts[i]));
                }
            }
        }
        return out;
    }

private:
    Group& of(const MeasuredJoint& joint) {
        for (std::size_t place = 0; place < m_groups.size(); ++place) {
            const std::size_t i = place == 0 ? m_last : (place <= m_last ? place - 1 : place);
            const LikeJoints& like = m_groups[i].joints;
            if (like.thicknessUm == joint.thicknessUm && like.by == joint.by &&
                like.bench == joint.bench && like.procedure == joint.procedure) {
                m_last = i;
                return m_groups[i];
            }
        }
        m_last = m_groups.size();
        Group group;
        group.joints = {
            std::string(joint.bench), std::string(joint.by), std::string(joint.procedure),
            joint.thicknessUm};
        for (const JointMeasure measure : m_measures) {
            ShopChart chart;
            chart.measure = measure;
            chart.joints = group.joints;
            group.charts.push_back(std::move(chart));
        }
        m_groups.push_back(std::move(group));
        return m_groups.back();
    }

    const std::vector<JointMeasure>& m_measures;
    std::vector<Group> m_groups;
    std::size_t m_last = 0;
};

bool takesLonger(const ShopChart& chart) {
    const bool above =
        chart.endsWith(ChartSign::AboveMean) || chart.endsWith(ChartSign::AboveLimit);
    return chart.endsWith(ChartSign::Rising) || (above && !chart.endsWith(ChartSign::Falling));
}

} // namespace

bool ShopChart::endsWith(ChartSign sign) const {
    return std::any_of(findings.begin(), findings.end(), [&](const ChartFinding& finding) {
        return finding.sign == sign && finding.to + 1 == values.size();
    });
}

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
shopCharts(LogReader& log, const std::vector<JointMeasure>& measures, const MeasureFilter& filter) {
    Groups groups(measures);
    const auto read = log.eachMeasured(
        measures, filter, [&groups](const MeasuredJoint& joint) { groups.take(joint); });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    std::vector<ShopChart> out = groups.taken();
    for (ShopChart& chart : out) {
        chart.limits = limitsOf(chart.values);
        if (chart.limits) {
            chart.findings = findingsOf(chart.values, *chart.limits);
        }
        chart.plateColdOrDirty = chart.measure == JointMeasure::Alignment && takesLonger(chart);
    }
    return out;
}

Result<std::map<LikeTimes, MedianTimes>> medianTimes(LogReader& log) {
    const std::vector<JointMeasure> wanted{
        JointMeasure::Preparation, JointMeasure::Alignment, JointMeasure::Release};
    constexpr std::optional<Milliseconds> MedianTimes::*kPlaces[] = {
        &MedianTimes::preparation, &MedianTimes::alignment, &MedianTimes::release};
    using Values = std::vector<std::int64_t>;
    std::map<LikeTimes, std::array<Values, std::size(kPlaces)>> all;
    const auto read = log.eachMeasured(wanted, {}, [&](const MeasuredJoint& joint) {
        auto& like =
            all[{std::string(joint.bench), std::string(joint.procedure), joint.thicknessUm}];
        for (std::size_t i = 0; i < wanted.size(); ++i) {
            if (const auto& value = joint.values[wanted[i]]) {
                like[i].push_back(*value);
            }
        }
    });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    std::map<LikeTimes, MedianTimes> out;
    for (auto& [like, measured] : all) {
        for (std::size_t i = 0; i < measured.size(); ++i) {
            Values& values = measured[i];
            if (values.size() < kLeastOnes) {
                continue;
            }
            const std::size_t count = std::min(values.size(), kLastOnes);
            values.erase(values.begin(), values.end() - static_cast<std::ptrdiff_t>(count));
            std::sort(values.begin(), values.end());
            out[like].*kPlaces[i] = Milliseconds(values[(count - 1) / 2]);
        }
    }
    return out;
}

} // namespace seamclock
