// The page of a practice weld's result: on one leaf what the hands did, on the other the joint
// beside the one it ought to be, its bend test along the seam, and why.
#pragma once

#include "app/pages/page.h"
#include "app/practice/result_view.h"

namespace seamclock {

class ResultPart : public Part {
public:
    ResultPart(const QString& name, QWidget* parent);

    using QWidget::show;
    void show(const ResultView& view);

protected:
    void panel(QPainter& painter, const QRectF& box) const;
    /// A quiet line above; what is left of the box.
    QRectF headed(QPainter& painter, const QRectF& box, const QString& title) const;
    ResultView m_view;
};

class VerdictPart : public ResultPart {
public:
    explicit VerdictPart(QWidget* parent) : ResultPart("practiceVerdict", parent) {}

protected:
    void paintEvent(QPaintEvent* event) override;
};

class RowsPart : public ResultPart {
public:
    explicit RowsPart(QWidget* parent) : ResultPart("practiceRows", parent) {}

protected:
    void paintEvent(QPaintEvent* event) override;
};

class LapsesPart : public ResultPart {
public:
    explicit LapsesPart(QWidget* parent) : ResultPart("practiceLapses", parent) {}

protected:
    void paintEvent(QPaintEvent* event) override;
};

class JointsPart : public ResultPart {
public:
    explicit JointsPart(QWidget* parent) : ResultPart("practiceJoints", parent) {}

protected:
    void paintEvent(QPaintEvent* event) override;
};

class BendPart : public ResultPart {
public:
    explicit BendPart(QWidget* parent) : ResultPart("practiceBend", parent) {}

protected:
    void paintEvent(QPaintEvent* event) override;
};

class ResultPage : public Page {
    Q_OBJECT

public:
    explicit ResultPage(QWidget* parent = nullptr);

    using QWidget::show;
    /// Leaf 0: the hands; 1: the joint.
    void show(const ResultView& view, int leaf);
    const ResultView& view() const { return m_view; }
    void setSlots(const SlotView& back, const SlotView& stop, const SlotView& step);

protected:
    void place() override;

private:
    ResultView m_view;
    int m_leaf = 0;
    VerdictPart* m_verdict;
    RowsPart* m_rows;
    LapsesPart* m_lapses;
    JointsPart* m_joints;
    BendPart* m_bend;
};

} // namespace seamclock
