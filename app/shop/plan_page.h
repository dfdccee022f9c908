// The page of the day's plan: above when all are out, then the chart, below what is done next, one
// sentence a step, a leaf at a time.
#pragma once

#include "app/pages/page.h"
#include "app/shop/plan_chart.h"

#include <vector>

namespace seamclock {

/// Lines of a time, a mark and a sentence.
class StepLines : public Part {
public:
    explicit StepLines(QWidget* parent = nullptr);

    void show(std::vector<PlanStep> steps);
    using QWidget::show;
    /// How high a line is [units].
    void setLine(double units);
    /// How many have room.
    int room() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<PlanStep> m_steps;
    double m_line = 46;
};

class PlanPage : public Page {
    Q_OBJECT

public:
    explicit PlanPage(QWidget* parent = nullptr);

    using QWidget::show;
    /// `benches`, `people`: how many are planned with, for their buttons.
    void show(const PlanView& view, const QString& benches, const QString& people);
    const PlanView& view() const { return m_view; }
    /// Since the plan was worked out.
    void setNow(Milliseconds now);
    /// It is being worked out.
    void setBusy(bool busy);
    PlanChart* chart() const { return m_chart; }
    /// The steps that stand.
    std::vector<PlanStep> shown() const;
    void turn();

protected:
    void place() override;

private:
    void refresh();

    PlanView m_view;
    QString m_benches;
    QString m_people;
    Milliseconds m_now{0};
    bool m_busy = false;
    int m_from = 0;
    Sentence* m_title;
    Sentence* m_under;
    PlanChart* m_chart;
    StepLines* m_lines;
    SlotButton* m_more;
};

} // namespace seamclock
