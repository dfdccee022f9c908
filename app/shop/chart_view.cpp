#include "app/shop/chart_view.h"

#include "app/text/numbers.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

struct Charts {
    Q_DECLARE_TR_FUNCTIONS(Charts)
};

QString tr(const char* text) {
    return Charts::tr(text);
}

constexpr int kMostWords = 5;

int decimalsFor(JointMeasure measure) {
    return measure == JointMeasure::Drift ? 2 : 1;
}

QString valueText(const ShopChart& chart, double value) {
    return tr("%1 %2").arg(numberText(value, decimalsFor(chart.measure)), unitWord(chart.measure));
}

QString findingText(const ShopChart& chart, const ChartFinding& finding) {
    const auto to = chart.numbers[finding.to];
    const auto from = chart.numbers[finding.from];
    const auto count = finding.to - finding.from + 1;
    switch (finding.sign) {
    case ChartSign::AboveLimit:
        return tr("Joint %1 is above the upper limit: %2.")
            .arg(to)
            .arg(valueText(chart, chart.values[finding.to]));
    case ChartSign::BelowLimit:
        return tr("Joint %1 is below the lower limit: %2.")
            .arg(to)
            .arg(valueText(chart, chart.values[finding.to]));
    case ChartSign::RangeAboveLimit:
        return tr("Joints %1 and %2 are further apart than joints here are.").arg(from).arg(to);
    case ChartSign::AboveMean:
        return tr("Joints %1 to %2: %3 in a row above the mean.").arg(from).arg(to).arg(count);
    case ChartSign::BelowMean:
        return tr("Joints %1 to %2: %3 in a row below the mean.").arg(from).arg(to).arg(count);
    case ChartSign::Rising:
        return tr("Joints %1 to %2: %3 in a row, each higher.").arg(from).arg(to).arg(count);
    case ChartSign::Falling:
        return tr("Joints %1 to %2: %3 in a row, each lower.").arg(from).arg(to).arg(count);
    }
    return {};
}

bool isTime(JointMeasure measure) {
    return measure != JointMeasure::Plate && measure != JointMeasure::Drift;
}

bool isBeyond(ChartSign sign) {
    return sign == ChartSign::AboveLimit || sign == ChartSign::BelowLimit;
}

QString jointsText(const LikeJoints& joints, const DayNames& names) {
    return tr("bench %1 · %2 · %3 · %4 mm")
        .arg(
            names.bench(joints.bench), names.person(joints.by), fromUtf8(joints.procedure),
            millimetresText(joints.thicknessUm));
}

QString plateText() {
    return tr("Alignment takes longer than it did: often a cold or a dirty plate. Measure it on "
              "its face, and wipe it.");
}

} // namespace

QString measureWord(JointMeasure measure) {
    switch (measure) {
    case JointMeasure::Preparation:
        return tr("preparation time");
    case JointMeasure::Alignment:
        return tr("alignment time");
    case JointMeasure::Changeover:
        return tr("changeover time");
    case JointMeasure::Release:
        return tr("release time");
    case JointMeasure::Plate:
        return tr("plate temperature");
    case JointMeasure::Drift:
        return tr("drift of the reading");
    }
    return {};
}

QString unitWord(JointMeasure measure) {
    switch (measure) {
    case JointMeasure::Preparation:
    case JointMeasure::Alignment:
    case JointMeasure::Changeover:
    case JointMeasure::Release:
        return QStringLiteral("s");
    case JointMeasure::Plate:
        return QStringLiteral("°C");
    case JointMeasure::Drift:
        return tr("of the scale");
    }
    return {};
}

QString newsText(const ShopChart& chart) {
    if (chart.plateColdOrDirty) {
        return chart.endsWith(ChartSign::Rising)
                   ? tr("Rising: is the plate cold or dirty?")
                   : tr("Longer than it was: is the plate cold or dirty?");
    }
    for (auto finding = chart.findings.rbegin(); finding != chart.findings.rend(); ++finding) {
        if (finding->to + 1 == chart.values.size()) {
            return findingText(chart, *finding);
        }
    }
    return {};
}

ChartView chartView(const ShopChart& chart, std::size_t until, const DayNames& names) {
    ChartView out;
    out.count = chart.values.size();
    const std::size_t end = std::min(until, out.count);
    out.first = end > kShownPoints ? end - kShownPoints : 0;
    out.unit = unitWord(chart.measure);
    const QString what = measureWord(chart.measure);
    out.title =
        out.count == 1 ? tr("%1, 1 joint").arg(what) : tr("%1, %2 joints").arg(what).arg(out.count);
    out.title[0] = out.title[0].toUpper();
    out.under = jointsText(chart.joints, names);
    out.limits = chart.limits;
    for (std::size_t i = out.first; i < end; ++i) {
        out.values.push_back(chart.values[i]);
        out.numbers.push_back(chart.numbers[i]);
        out.ranges.push_back(i == 0 ? 0 : std::abs(chart.values[i] - chart.values[i - 1]));
    }
    out.shapes.assign(out.values.size(), PointShape::Dot);
    out.rangeBeyond.assign(out.values.size(), false);
    for (const ChartFinding& finding : chart.findings) {
        for (std::size_t i = std::max(finding.from, out.first); i <= finding.to && i < end; ++i) {
            PointShape& shape = out.shapes[i - out.first];
            if (finding.sign == ChartSign::RangeAboveLimit) {
                out.rangeBeyond[i - out.first] = out.rangeBeyond[i - out.first] || i == finding.to;
            } else if (isBeyond(finding.sign)) {
                shape = PointShape::Beyond;
            } else if (shape == PointShape::Dot) {
                shape = PointShape::Run;
            }
        }
    }
    if (!chart.limits) {
        out.words << tr("One joint alone gives no limits yet.");
        return out;
    }
    out.meanText = tr("mean %1").arg(valueText(chart, chart.limits->mean));
    out.upperText = tr("upper limit %1").arg(valueText(chart, chart.limits->upper));
    // No time is below none: such a limit can't be passed.
    out.lowerText = isTime(chart.measure) && chart.limits->lower < 0
                        ? tr("no lower limit")
                        : tr("lower limit %1").arg(valueText(chart, chart.limits->lower));
    out.rangeText =
        tr("from joint to joint: limit %1").arg(valueText(chart, chart.limits->upperRange));
    if (chart.plateColdOrDirty) {
        out.words << plateText();
        out.isUrgent = true;
    }
    for (auto finding = chart.findings.rbegin();
         finding != chart.findings.rend() && out.words.size() < kMostWords; ++finding) {
        if (finding->to >= out.first && finding->from < end) {
            out.words << findingText(chart, *finding);
            out.isUrgent = out.isUrgent || finding->to + 1 == out.count;
        }
    }
    if (out.words.isEmpty()) {
        out.words << tr("Nothing stands out among these joints.");
    }
    if (out.count < kFirmLimits) {
        out.words << tr("Fewer than %1 joints: the limits are provisional.").arg(kFirmLimits);
    }
    return out;
}

ListRowView chartRow(const ShopChart& chart, const DayNames& names) {
    ListRowView row;
    row.text = measureWord(chart.measure);
    row.text[0] = row.text[0].toUpper();
    row.second = jointsText(chart.joints, names);
    const QString news = newsText(chart);
    row.third = !news.isEmpty() ? news
                : chart.limits  ? tr("%1 joints, mean %2")
                                     .arg(chart.values.size())
                                     .arg(valueText(chart, chart.limits->mean))
                               : tr("One joint: no limits yet.");
    row.mark = news.isEmpty() ? (chart.limits ? Mark::Done : Mark::Open) : Mark::Trouble;
    row.tone = news.isEmpty() ? (chart.limits ? Tone::Normal : Tone::Rest) : Tone::Soon;
    return row;
}

std::vector<std::size_t> chartOrder(const std::vector<ShopChart>& charts) {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < charts.size(); ++i) {
        order.push_back(i);
    }
    std::stable_sort(order.begin(), order.end(), [&charts](std::size_t a, std::size_t b) {
        const auto rank = [&charts](std::size_t i) {
            return charts[i].plateColdOrDirty ? 0 : newsText(charts[i]).isEmpty() ? 2 : 1;
        };
        return rank(a) < rank(b);
    });
    return order;
}

} // namespace seamclock
