// The day's list on the left, one joint on the right.
#pragma once

#include "app/operate/day_view.h"
#include "app/pages/page.h"
#include "app/parts/press_part.h"

#include <vector>

namespace seamclock {

class JointRow : public PressPart {
    Q_OBJECT

public:
    explicit JointRow(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const JointRowView& view);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    JointRowView m_view;
};

class JointPanel : public Part {
public:
    explicit JointPanel(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const JointView& view);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    JointView m_view;
};

class DayPage : public Page {
    Q_OBJECT

public:
    explicit DayPage(QWidget* parent = nullptr);

    /// How many lines a leaf holds at this size.
    int perLeaf() const { return m_perLeaf; }
    void showList(const std::vector<JointRowView>& rows, bool older, bool newer);
    void showJoint(const JointView& view);
    void showNothing(const QString& why);

signals:
    void rowChosen(int row);

protected:
    void place() override;

private:
    static constexpr int kRows = 12;
    std::vector<JointRow*> m_rows;
    JointPanel* m_panel;
    Sentence* m_nothing;
    int m_shown = 0;
    int m_perLeaf = 6;
};

} // namespace seamclock
