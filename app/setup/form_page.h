// One section of a form: its rows, as many as fit, and beside them a plot and what is to be said of
// it. What is wrong with the value that is being typed stands below the rows, in one place, so that
// nothing moves under a finger.
#pragma once

#include "app/pages/page.h"
#include "app/setup/form.h"
#include "app/setup/form_cell.h"
#include "app/setup/plot.h"

namespace seamclock {

struct FormPageView {
    FormSection section;
    SlotView step;

    bool operator==(const FormPageView&) const = default;
};

/// Lines of plain words at the office's size, each with a mark where it is a refusal.
class FormSay : public Part {
public:
    explicit FormSay(const QString& name, QWidget* parent = nullptr);

    void say(const QStringList& lines, bool late);
    const QStringList& lines() const { return m_lines; }
    bool isLate() const { return m_late; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QStringList m_lines;
    bool m_late = false;
};

class FormPage : public Page {
    Q_OBJECT

public:
    explicit FormPage(QWidget* parent = nullptr);
    bool takesDigits() const override { return true; }

    using QWidget::show;
    void show(const FormPageView& view);
    const FormPageView& view() const { return m_view; }
    /// The rows before and after those that stand.
    void turnLeaf(int by);
    /// The first leaf, and nothing of what was typed before.
    void begin();
    QString said() const { return m_say->lines().join(QLatin1Char(' ')); }
    /// The cell of that field, on its leaf; null: the section has none.
    FormCell* cellOf(const std::string& pointer);
    SlotButton* actionOf(const QString& text);

signals:
    void typed(const seamclock::FormField& field, const QString& text);
    void asked(const seamclock::FormField& field);
    void acted(const seamclock::FormAction& action);

protected:
    void place() override;

private:
    static constexpr int kCells = 36;
    static constexpr int kActions = 20;
    void refresh();
    void saySomething();
    int leaves() const;
    bool isLate(const FormRow& row, std::size_t field) const;

    FormPageView m_view;
    Sentence* m_title;
    FormSay* m_say;
    FormSay* m_notes;
    Plot* m_plot;
    std::vector<FormCell*> m_cells;
    std::vector<SlotButton*> m_actions;
    std::vector<FormAction> m_shownActions;
    std::string m_focus; // the field that is typed into
    int m_leaf = 0;
    int m_perLeaf = 1;
};

} // namespace seamclock
