// Black and white slanted stripes, the frame of everything that is practice: neither is a signal's
// colour.
#pragma once

#include "app/parts/metrics.h"

#include <QPixmap>
#include <QRectF>
#include <QWidget>

class QPainter;

namespace seamclock {

/// As wide as the frame of stripes is [units].
inline constexpr double kStripes = 20;

/// The same in every theme, inside the box.
void paintStripes(QPainter& painter, const QRectF& box, const Metrics& metrics);

/// Lies over a window and shows the frame alone; presses go through it.
class StripedFrame : public QWidget {
public:
    explicit StripedFrame(QWidget* parent);

    void setMetrics(const Metrics& metrics);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    Metrics m_metrics;
    QPixmap m_stripes; // painted once: they never change
};

} // namespace seamclock
