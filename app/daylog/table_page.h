// The whole record of a joint as tables, a leaf at a time: every value, every event, what was
// looked at. Rows are read, not pressed; which table stands is chosen above.
#pragma once

#include "app/daylog/joint_view.h"
#include "app/pages/page.h"

#include <QStringList>
#include <vector>

namespace seamclock {

class TablePart : public Part {
public:
    explicit TablePart(QWidget* parent = nullptr);

    void show(const TableView& view, int from);
    using QWidget::show;
    /// How many rows of the table have room at this size.
    int room() const;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    TableView m_view;
    int m_from = 0;
};

class TablePage : public Page {
    Q_OBJECT

public:
    explicit TablePage(QWidget* parent = nullptr);

    /// `tabs`: what can stand there; `at`: what does.
    void show(const QStringList& tabs, int at, const TableView& table);
    using QWidget::show;
    const TableView& table() const { return m_table; }
    int tab() const { return m_tab; }
    int leaf() const { return m_from; }
    /// One leaf on, or back.
    void turn(int by);

signals:
    void tabPressed(int index);

protected:
    void place() override;

private:
    static constexpr int kTabs = 3;
    void refresh();

    std::vector<SlotButton*> m_tabs;
    TablePart* m_part;
    QStringList m_names;
    TableView m_table;
    int m_tab = 0;
    int m_from = 0;
};

} // namespace seamclock
