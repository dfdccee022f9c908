#include "app/setup/heat_view.h"

#include "app/pages/page.h"
#include "app/text/numbers.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

struct Heat {
    Q_DECLARE_TR_FUNCTIONS(Heat)
};

QString tr(const char* text) {
    return Heat::tr(text);
}

SliderView slider(
    const QString& caption, const QString& unit, int decimals, double low, double high, double step,
    double now, double plan, double shownIn = 1) {
    SliderView view;
    view.caption = caption;
    view.value = numberText(now / shownIn, decimals) + QStringLiteral(" ") + unit;
    view.low = low;
    view.high = high;
    view.step = step;
    view.now = now;
    view.plan = plan;
    return view;
}

PlotView::Line skinOf(const HeatEstimate& estimate, const QString& name, int style) {
    PlotView::Line line;
    line.name = name;
    line.style = style;
    for (const HeatPoint& point : estimate.curve) {
        // Two points for a pixel are enough, and a jump keeps both its ends.
        if (line.points.empty() || point.seconds / 60 - line.points.back().x() > 0.02 ||
            std::abs(point.faceC - line.points.back().y()) > 1) {
            line.points.emplace_back(point.seconds / 60, point.faceC);
        }
    }
    return line;
}

HeatValueRow
row(const QString& what, const std::optional<HeatRange>& range, const QString& unit, int decimals,
    bool withSpread, double scale = 1) {
    HeatValueRow out;
    out.what = what;
    if (range) {
        out.value = numberText(range->likely * scale, decimals) + QStringLiteral(" ") + unit;
        if (withSpread) {
            out.value += tr(" (%1 to %2)")
                             .arg(
                                 numberText(range->low * scale, decimals),
                                 numberText(range->high * scale, decimals));
        }
    }
    return out;
}

} // namespace

HeatCourse changedCourse(HeatCourse course, WhatIf what, double value) {
    switch (what) {
    case WhatIf::Plate:
        course.inputs.plateC = value;
        break;
    case WhatIf::Air:
        course.inputs.ambientC = value;
        break;
    case WhatIf::Changeover:
        course.changeover = value;
        break;
    case WhatIf::Cooling:
        course.cooling = value;
        break;
    }
    return course;
}

HeatView heatView(const HeatEstimate& plan, const HeatEstimate& now, bool withSpread) {
    const HeatCourse& was = plan.course;
    const HeatCourse& is = now.course;
    HeatView view;
    view.title =
        tr("Heat in the sheet: %1, %2 mm")
            .arg(fromUtf8(now.material.name), numberText(inMillimetres(is.inputs.thickness), 0));
    view.under =
        tr("An estimate. It explains a weld and judges none; the procedure's limits decide.");
    const double change = was.changeover.value_or(0);
    const double cool = was.cooling.value_or(0);
    view.sliders = {
        slider(
            tr("plate"), "°C", 0, was.inputs.plateC - 30, was.inputs.plateC + 30, 1,
            is.inputs.plateC, was.inputs.plateC),
        slider(tr("air"), "°C", 0, -5, 40, 1, is.inputs.ambientC, was.inputs.ambientC),
        slider(
            tr("changeover"), "s", 1, 0, std::max(6 * change, 30.0), 0.5, is.changeover.value_or(0),
            change),
        slider(
            tr("cooling"), tr("min"), 1, 0, std::max(1.5 * cool, 60.0), 30, is.cooling.value_or(0),
            cool, 60)};
    view.plot.x = tr("minutes");
    view.plot.y = tr("skin °C");
    view.plot.lines.push_back(skinOf(now, tr("as set here"), 0));
    view.plot.lines.push_back(skinOf(plan, tr("by the plan"), 1));
    if (!now.curve.empty()) {
        const double end =
            std::max(now.curve.back().seconds, plan.curve.empty() ? 0 : plan.curve.back().seconds) /
            60;
        view.plot.lines.push_back(
            {now.material.crystals ? tr("melts") : tr("softens"),
             {QPointF(0, now.meltingC), QPointF(end, now.meltingC)},
             2});
    }
    const HeatNumbers& n = now.numbers;
    view.rows = {
        row(tr("bead stands after"), n.alignS, "s", 0, withSpread),
        row(tr("melt after soak"), n.meltDepthMm, "mm", 1, withSpread),
        row(tr("skin after soak"), n.skinEndOfSoakC, "°C", 0, withSpread),
        row(tr("skin stays molten in air for"), n.moltenInAirS, "s", 0, withSpread),
        row(tr("skin when the faces meet"), n.skinFacesMeetC, "°C", 0, withSpread),
        row(tr("weld plane at release"), n.weldPlaneAtReleaseC, "°C", 0, withSpread),
        row(tr("weld plane at %1 °C after").arg(numberText(now.chosenC, 0)), n.chosenReachedS,
            tr("min"), 1, withSpread, 1.0 / 60),
        row(tr("tables close up by"), n.closingMm, "mm", 2, withSpread)};
    if (n.skinFacesMeetC && n.skinFacesMeetC->low < now.meltingC) {
        view.rows[4].late = true;
        view.caution = tr("The skin may no longer be molten when the faces meet.");
    }
    if (now.material.gasFrom > 0 && is.inputs.plateC > now.material.gasFrom) {
        view.caution = tr("From %1 °C this plastic gives off harmful gas. Never weld so.")
                           .arg(numberText(now.material.gasFrom, 0));
    }
    view.back = plainSlot(tr("As planned"), tr("all four"));
    view.stop = hiddenSlot();
    view.step = stepSlot(tr("Back to the bench"), false);
    return view;
}

} // namespace seamclock
