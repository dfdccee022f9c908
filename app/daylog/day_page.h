// The day log: above, what it is narrowed to, and the bench that runs, one touch away; on one side
// the list, a whole number of lines high; on the other one joint with what a foreman can decide of
// it. It shows what it is given and tells what was pressed; lines are scrolled a line at a time by
// dragging, wheel and keys, and a leaf at a time by two buttons.
#pragma once

#include "app/daylog/day_view.h"
#include "app/daylog/joint_panel.h"
#include "app/pages/page.h"
#include "app/parts/press_part.h"

#include <optional>
#include <vector>

namespace seamclock {

class JointRow : public PressPart, public ShowsMark {
    Q_OBJECT

public:
    explicit JointRow(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const JointRowView& view);
    const JointRowView& view() const { return m_view; }
    std::optional<Mark> markShown() const override { return m_view.mark; }
    QRectF markPlace() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    JointRowView m_view;
};

/// What the list is narrowed to in one respect.
struct FilterCellView {
    QString name; // "day"; empty: the value stands alone
    QString value;
    std::optional<Sign> sign;
    bool narrows = false; // something is set

    bool operator==(const FilterCellView&) const = default;
};

class FilterCell : public PressPart {
    Q_OBJECT

public:
    explicit FilterCell(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const FilterCellView& view);
    const FilterCellView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    FilterCellView m_view;
};

/// The bench that runs, or the one that was left.
struct BenchCellView {
    QString letter;
    Mark mark = Mark::Free;
    Tone tone = Tone::Rest;
    double fraction = 0;
    QString phase;
    QString time;
    QString leave = {}; // where there is no bench to go back to: what it says instead of all else

    bool operator==(const BenchCellView&) const = default;
};

class BenchCell : public PressPart {
    Q_OBJECT

public:
    explicit BenchCell(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const BenchCellView& view);
    const BenchCellView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    BenchCellView m_view;
};

/// Whose word the buttons beside it are.
class WhoDecides : public Part {
public:
    explicit WhoDecides(QWidget* parent = nullptr);

    void setText(const QString& text);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QString m_text;
};

struct DayPageView {
    FilterCellView day;
    FilterCellView bench;
    FilterCellView verdict;
    FilterCellView search;
    BenchCellView running;
    std::vector<JointRowView> rows; // those that stand in the list now
    bool newer = false;
    bool older = false;
    QString nothing; // why there is no line; empty: there are
    bool mayDecide = false;
    QString who; // "foreman, by PIN"

    bool operator==(const DayPageView&) const = default;
};

enum class DayPress {
    Day,
    Bench,
    Verdict,
    Search,
    Running,
    Newer,
    Older,
    Accept,
    Repair,
    CutOut,
    Record
};

class DayPage : public Page {
    Q_OBJECT

public:
    explicit DayPage(QWidget* parent = nullptr);

    /// How many lines the list holds at this size: without the two buttons below it, and with them.
    int rowsWhole() const { return m_rowsWhole; }
    int rowsPaged() const { return std::max(1, m_rowsWhole - 1); }
    void show(const DayPageView& view);
    using QWidget::show;
    const DayPageView& view() const { return m_view; }
    void showJoint(const JointView& view);
    const JointView& joint() const { return m_panel->view(); }
    const std::vector<JointRow*>& rows() const { return m_rows; }
    /// Where a banner may stand: over the filters, never over the bench's cell.
    QRect bannerPlace() const;
    /// A banner stands there: no press goes to the filters.
    void setCovered(bool covered);

signals:
    void pressed(seamclock::DayPress what);
    void rowChosen(const QString& weld);
    /// By so many lines, to the older ones.
    void scrolled(int rows);
    /// Another number of lines has room.
    void resized();

protected:
    void place() override;
    void wheelEvent(QWheelEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    SlotButton* button(const QString& name, DayPress what);
    void drag(double y);

    static constexpr int kRows = 12;
    DayPageView m_view;
    std::vector<JointRow*> m_rows;
    FilterCell* m_day;
    FilterCell* m_bench;
    FilterCell* m_verdict;
    FilterCell* m_search;
    BenchCell* m_running;
    JointPanel* m_panel;
    WhoDecides* m_who;
    Sentence* m_nothing;
    SlotButton* m_newer;
    SlotButton* m_older;
    SlotButton* m_accept;
    SlotButton* m_repair;
    SlotButton* m_cutOut;
    SlotButton* m_record;
    bool m_covered = false;
    int m_rowsWhole = 6;
    double m_pitch = 112; // from line to line [px]
    std::optional<double> m_dragFrom;
    int m_wheel = 0; // what a fine wheel has turned so far
};

} // namespace seamclock
