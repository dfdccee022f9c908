#include "app/parts/seam_paint.h"

#include <cmath>

#include <QPainter>

#include "app/parts/brush.h"

namespace seamclock {

namespace {

// Where a row of cells is as warm as the plastic melts [mm from the face]; 0: nowhere.
double meltDepthOf(const SeamHeat& heat, std::size_t row) {
    const std::size_t columns = heat.depthMm.size();
    const double* celsius = heat.celsius.data() + row * columns;
    if (columns == 0 || celsius[0] < heat.meltingC) {
        return 0;
    }
    for (std::size_t i = 1; i < columns; ++i) {
        if (celsius[i] < heat.meltingC) {
            const double share = (celsius[i - 1] - heat.meltingC) / (celsius[i - 1] - celsius[i]);
            return std::lerp(heat.depthMm[i - 1], heat.depthMm[i], share);
        }
    }
    return heat.depthMm.back();
}

} // namespace

void paintSheetHeat(
    QPainter& painter, const SeamHeat& heat, const SheetPlace& place, const Metrics& metrics) {
    const double side = place.edgeX < place.faceX ? -1.0 : 1.0;
    const std::size_t columns = heat.depthMm.size();
    const double reach = heat.depthMm.back() * place.perMm;
    QPolygonF upper;
    QPolygonF lower;
    double from = 0;
    for (std::size_t row = 0; row < heat.rowEnds.size(); ++row) {
        QLinearGradient colours(place.faceX, 0, place.faceX + side * reach, 0);
        QGradientStops stops;
        for (std::size_t i = 0; i < columns; ++i) {
            stops.append(
                {heat.depthMm[i] / heat.depthMm.back(),
                 temperatureColour(heat.celsius[row * columns + i])});
        }
        colours.setStops(stops);
        const double to = heat.rowEnds[row];
        for (const double up : {-1.0, 1.0}) {
            const QPointF one(place.faceX, place.middleY + up * from * place.half);
            const QPointF other(place.edgeX, place.middleY + up * to * place.half);
            // half a pixel over the next row, so that no line shows between them
            painter.fillRect(QRectF(one, other).normalized().adjusted(0, -0.5, 0, 0.5), colours);
        }
        const double x = place.faceX + side * meltDepthOf(heat, row) * place.perMm;
        const bool last = row + 1 == heat.rowEnds.size();
        const double middle = last ? place.half : (from + to) / 2 * place.half;
        upper.prepend(QPointF(x, place.middleY - middle));
        lower.append(QPointF(x, place.middleY + middle));
        from = to;
    }
    if (std::abs(lower.front().x() - place.faceX) < metrics.px(2)) {
        return; // nothing has melted yet
    }
    const QPolygonF line = upper + lower;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Qt::white, metrics.px(4), Qt::SolidLine, Qt::FlatCap));
    painter.drawPolyline(line);
    QPen dashes(textOnPlate(), metrics.px(3), Qt::SolidLine, Qt::FlatCap);
    dashes.setDashPattern({7.0 / 3, 2});
    painter.setPen(dashes);
    painter.drawPolyline(line);
}

void paintBeadLobe(QPainter& painter, const BeadLobe& lobe, const Metrics& metrics) {
    const double along = (lobe.left ? -1.0 : 1.0) * lobe.high;
    const double up = (lobe.upper ? -1.0 : 1.0) * lobe.high;
    const auto at = [&](double x, double y) {
        return QPointF(lobe.root.x() + along * x, lobe.root.y() + up * y);
    };
    QPainterPath outer(at(0, 0.96));
    outer.cubicTo(at(0.75, 1.1), at(1.75, 1.02), at(1.95, 0.62));
    outer.cubicTo(at(2.08, 0.28), at(1.8, 0.02), at(1.42, 0));
    QPainterPath body = outer;
    body.lineTo(at(0, 0));
    body.closeSubpath();
    painter.fillPath(body, lobe.fill);
    // hides the sheet's own line under the bead, where both are one piece
    const double over = metrics.px(1.8);
    const QRectF root =
        QRectF(QPointF(lobe.root.x(), lobe.root.y() - over), at(1.05, 0) + QPointF(0, over))
            .normalized();
    painter.fillRect(root, lobe.fill);
    painter.setPen(roundPen(lobe.line, metrics.px(3)));
    painter.setBrush(Qt::NoBrush);
    painter.drawPath(outer);
}

} // namespace seamclock
