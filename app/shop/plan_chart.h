// The day's plan as a picture: a lane for each bench and person over the clock. What a stretch is
// is said by what it is painted with, full, hatched, dotted, striped or an empty dashed frame, and
// by a word in the line below; no colour says it. The line of now moves by itself. The whole part
// is a button: a tap works the plan out anew.
#pragma once

#include "app/parts/press_part.h"
#include "app/shop/plan_view.h"

namespace seamclock {

class PlanChart : public PressPart {
    Q_OBJECT

public:
    explicit PlanChart(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const PlanView& view);
    /// Since the plan was worked out.
    void setNow(Milliseconds now);
    /// How far right a time stands [px].
    double placeOf(Milliseconds time) const;
    /// Where a lane's bar stands [px]. A plate warms up while the joint before it cools, and has
    /// a strip of its own at the lane's foot.
    QRectF boxOf(std::size_t lane, const PlanBar& bar) const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QRectF field() const;
    QString lanesInWords() const;
    double row(double units) const;
    double wordWidth(BarKind kind, double size) const;
    std::vector<std::vector<BarKind>> wordRows(double size) const;
    double wordsHeight() const;
    void paintBar(QPainter& painter, const QRectF& box, const PlanBar& bar) const;
    void paintClock(QPainter& painter) const;
    void paintEnds(QPainter& painter) const;
    void paintWords(QPainter& painter) const;

    PlanView m_view;
    Milliseconds m_now{0};
};

} // namespace seamclock
