// A list of rows that are buttons: what there is, which file, which cells. A row has up to three
// lines and a sign with its word; what doesn't fit is on a further leaf. Above the rows there may
// be a line that a keyboard types into.
#pragma once

#include "app/pages/page.h"
#include "app/parts/mark.h"
#include "app/parts/press_part.h"

#include <optional>
#include <vector>

class QKeyEvent;
class QLineEdit;

namespace seamclock {

struct ListRowView {
    QString text;
    QString second;
    QString third;
    std::optional<Sign> sign;
    std::optional<Mark> mark;   // instead of the sign
    Tone tone = Tone::Rest;     // of mark and third line
    std::optional<bool> ticked; // a row to tick
    bool chosen = false;        // the one of several that stands
    bool enabled = true;

    bool operator==(const ListRowView&) const = default;
};

struct ListView {
    QString title;
    QString under;
    QString trouble;             // instead of `under`, in the ink of a passed limit
    std::optional<QString> line; // what the line is for; absent: there is none
    std::vector<ListRowView> rows;
    int columns = 1; // where the screen lies
    SlotView back;
    SlotView stop;
    SlotView step;

    bool operator==(const ListView&) const = default;
};

class ListRow : public PressPart, public ShowsMark {
    Q_OBJECT

public:
    explicit ListRow(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const ListRowView& view);
    const ListRowView& view() const { return m_view; }
    /// A tick that is set is Done.
    std::optional<Mark> markShown() const override;
    QRectF markPlace() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    bool takesPress() const override { return m_view.enabled; }

private:
    ListRowView m_view;
};

class ListPage : public Page {
    Q_OBJECT

public:
    explicit ListPage(QWidget* parent = nullptr);
    bool takesDigits() const override { return m_view.line.has_value(); }

    using QWidget::show;
    void show(const ListView& view);
    const ListView& view() const { return m_view; }
    void setLine(const QString& text);
    QString lineText() const;
    void takeKeys();

signals:
    void chosen(int index);
    void typed();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void place() override;
    void lookChanged() override;

private:
    static constexpr int kRows = 24;
    void refresh();

    ListView m_view;
    Sentence* m_title;
    Sentence* m_under;
    QLineEdit* m_line;
    std::vector<ListRow*> m_rows;
    SlotButton* m_more;
    int m_leaf = 0;
    int m_perLeaf = 1;
    bool m_leaves = false;
};

} // namespace seamclock
