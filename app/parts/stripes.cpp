#include "app/parts/stripes.h"

#include <QColor>
#include <QPainter>
#include <QPen>
#include <QRegion>
#include <cmath>

namespace seamclock {
namespace {

const QColor kBlack(0x0D, 0x12, 0x15);
const QColor kWhite(0xF2, 0xF5, 0xF6);

} // namespace

void paintStripes(QPainter& painter, const QRectF& box, const Metrics& metrics) {
    painter.save();
    painter.setClipRect(box, Qt::IntersectClip);
    painter.fillRect(box, kBlack);
    painter.setPen(QPen(kWhite, metrics.px(10), Qt::SolidLine, Qt::FlatCap));
    const double step = metrics.px(28);
    // Counted from the painter's origin, so that pieces of a frame meet.
    const double far = box.right() + box.bottom();
    const double from = std::floor((box.left() + box.top()) / step) * step;
    for (double at = from; at <= far + step; at += step) {
        const double top = box.top() - step;
        const double bottom = box.bottom() + step;
        painter.drawLine(QPointF(at - top, top), QPointF(at - bottom, bottom));
    }
    painter.restore();
}

StripedFrame::StripedFrame(QWidget* parent) : QWidget(parent) {
    setObjectName("practiceFrame");
    setAttribute(Qt::WA_TransparentForMouseEvents);
}

void StripedFrame::setMetrics(const Metrics& metrics) {
    m_metrics = metrics;
    m_stripes = QPixmap();
    update();
}

void StripedFrame::paintEvent(QPaintEvent*) {
    if (m_stripes.size() != size() * devicePixelRatioF()) {
        m_stripes = QPixmap(size() * devicePixelRatioF());
        m_stripes.setDevicePixelRatio(devicePixelRatioF());
        QPainter once(&m_stripes);
        once.setRenderHint(QPainter::Antialiasing);
        paintStripes(once, rect(), m_metrics);
    }
    const int wide = static_cast<int>(std::ceil(m_metrics.px(kStripes))) + 1;
    QPainter painter(this);
    painter.setClipRegion(
        QRegion(rect()).subtracted(QRegion(rect().adjusted(wide, wide, -wide, -wide))));
    painter.drawPixmap(0, 0, m_stripes);
}

} // namespace seamclock
