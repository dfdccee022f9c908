// One joint, painted: the verdict in words with its mark, the course of the weld, and set against
// done for the few values that matter most. What can be done with it stands below, as buttons.
#pragma once

#include "app/daylog/joint_view.h"
#include "app/parts/mark.h"
#include "app/parts/part.h"

namespace seamclock {

class JointPanel : public Part, public ShowsMark {
public:
    explicit JointPanel(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const JointView& view);
    const JointView& view() const { return m_view; }
    std::optional<Mark> markShown() const override { return m_view.mark; }
    QRectF markPlace() const override;
    /// What stands over its lower end [units].
    void setFoot(double units);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    double paintHead(QPainter& painter) const;
    void paintValues(QPainter& painter, const QRectF& box) const;

    JointView m_view;
    double m_foot = 0;
};

} // namespace seamclock
