// Control charts as they are shown: which of a chart's points lie beyond its limits or in a run,
// and in words what that says. Limits say that something changed; no joint is judged by them, and
// the words say so. What a rising alignment time often is, is common practice and no source.
#pragma once

#include "app/daylog/day_view.h"
#include "app/pages/list_page.h"
#include "core/quality/shop_charts.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace seamclock {

enum class PointShape {
    Dot,    // as it should be
    Beyond, // above or below a limit: a square set on its corner
    Run     // in a row on one side, or one way: a ring
};

struct ChartView {
    QString title;
    QString under;
    QString unit;
    std::size_t first = 0; // of the chart's values, which stands leftmost
    std::vector<double> values;
    std::vector<PointShape> shapes;
    std::vector<double> ranges; // from the value before; one less than values where it is the first
    std::vector<bool> rangeBeyond;
    std::vector<std::int64_t> numbers; // of the joints
    std::optional<ControlLimits> limits;
    QString meanText;
    QString upperText;
    QString lowerText;
    QString rangeText;
    QStringList words;     // what is to be said of it, the newest first
    bool isUrgent = false; // of the newest joints
    std::size_t count = 0; // of the whole chart

    bool operator==(const ChartView&) const = default;
};

inline constexpr std::size_t kShownPoints = 40;

/// "alignment time"
QString measureWord(JointMeasure measure);
/// `unit` of a drift is the scale's own.
QString unitWord(JointMeasure measure);
/// The points up to `until` (not included), kShownPoints at most; those of the newest joints first.
ChartView chartView(const ShopChart& chart, std::size_t until, const DayNames& names);
/// What the newest points say; empty: nothing.
QString newsText(const ShopChart& chart);
ListRowView chartRow(const ShopChart& chart, const DayNames& names);
/// Those with news first, else as they come.
std::vector<std::size_t> chartOrder(const std::vector<ShopChart>& charts);

} // namespace seamclock
