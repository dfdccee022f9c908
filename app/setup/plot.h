// A plot for the office's screens, by Qt Charts: lines, a band and points over axes with words. It
// is shown a value and draws it; what is not told apart by colour alone has a line style of its
// own. Operator's screens have none.
#pragma once

#include "app/parts/part.h"

#include <QPointF>
#include <QString>
#include <vector>

class QChartView;

namespace seamclock {

struct PlotView {
    struct Line {
        QString name; // empty: not in the legend
        std::vector<QPointF> points;
        int style = 0; // solid, dashed, dotted, dash-dotted; then again

        bool operator==(const Line&) const = default;
    };
    struct Band {
        QString name;
        std::vector<QPointF> low;
        std::vector<QPointF> high;

        bool operator==(const Band&) const = default;
    };
    struct Points {
        QString name;
        std::vector<QPointF> points;
        bool wrong = false; // in the ink of a passed limit, as crosses

        bool operator==(const Points&) const = default;
    };

    QString x; // words and unit of the axis
    QString y;
    std::vector<Line> lines;
    std::vector<Band> bands;
    std::vector<Points> points;

    bool isEmpty() const;
    bool operator==(const PlotView&) const = default;
};

class Plot : public Part {
public:
    explicit Plot(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const PlotView& view);
    const PlotView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void lookChanged() override;

private:
    void draw();

    PlotView m_view;
    QChartView* m_chart;
};

} // namespace seamclock
