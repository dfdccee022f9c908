// What every painted part shares: its theme and sizes, set by the screen. A part is shown a value
// and paints it; it decides nothing, reads no clock and no state. It has no size of its own (the
// screen sets its geometry), and it repaints only when what it shows has changed.
#pragma once

#include <QStringList>
#include <QWidget>

#include "app/parts/metrics.h"
#include "app/parts/theme.h"

namespace seamclock {

class Part : public QWidget {
public:
    Part(const QString& name, QWidget* parent);

    // `theme` is kept by reference: one of Theme::of().
    void setLook(const Theme& theme, Metrics metrics);

    const Theme& theme() const { return *m_theme; }
    const Metrics& metrics() const { return m_metrics; }

protected:
    // For what must follow a new theme or size; repaints by itself.
    virtual void lookChanged() {}
    double px(double units) const { return m_metrics.px(units); }
    double textPx(double units) const { return m_metrics.textPx(units); }

private:
    const Theme* m_theme;
    Metrics m_metrics;
};

// Words for a screen reader: those that are not empty, in their order.
QString spoken(const QStringList& words);

} // namespace seamclock
