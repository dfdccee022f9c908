// One procedure as it is in force: a column at a time, plotted over thickness, its values beside it
// with how much each is worth.
#pragma once

#include "app/pages/page.h"
#include "app/setup/plot.h"
#include "app/setup/procedure_view.h"

namespace seamclock {

class ValueTable : public Part {
public:
    explicit ValueTable(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const ProcedureView& view);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::vector<ValueRow> m_values;
    QString m_source;
    QString m_gaps;
};

class ProcedurePage : public Page {
    Q_OBJECT

public:
    explicit ProcedurePage(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const ProcedureView& view);
    const ProcedureView& view() const { return m_view; }

signals:
    void tabChosen(int tab);

protected:
    void place() override;

private:
    static constexpr int kTabs = 12;

    ProcedureView m_view;
    Sentence* m_title;
    Sentence* m_about;
    std::vector<ListRow*> m_tabs;
    Plot* m_plot;
    ValueTable* m_table;
};

} // namespace seamclock
