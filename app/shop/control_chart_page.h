// One control chart, painted: above the joints' own values with their mean and limits, below how
// far each is from the one before. A point beyond a limit is a square on its corner, one in a run a
// ring, any other a dot; lines are told apart by their strokes and named at their ends.
#pragma once

#include "app/pages/page.h"
#include "app/setup/form_page.h"
#include "app/shop/chart_view.h"

namespace seamclock {

class ControlChartPart : public Part {
public:
    explicit ControlChartPart(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const ChartView& view);
    /// Where a value's point stands [px]; of the ranges below.
    QPointF pointOf(std::size_t index) const;
    QPointF rangeOf(std::size_t index) const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Axis {
        QRectF box;
        double low = 0;
        double high = 1;
        double yOf(double value) const;
    };
    Axis values() const;
    Axis ranges() const;
    double xOf(const QRectF& box, std::size_t index) const;
    void paintLine(
        QPainter& painter, const Axis& axis, double value, Qt::PenStyle style,
        const QString& words) const;
    void paintPoint(QPainter& painter, const QPointF& at, PointShape shape) const;

    ChartView m_view;
};

class ControlChartPage : public Page {
    Q_OBJECT

public:
    explicit ControlChartPage(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const ChartView& view);
    const ChartView& view() const { return m_view; }
    ControlChartPart* part() const { return m_part; }

protected:
    void place() override;

private:
    void refresh();

    ChartView m_view;
    Sentence* m_title;
    Sentence* m_under;
    ControlChartPart* m_part;
    FormSay* m_words;
};

} // namespace seamclock
