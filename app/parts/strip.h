// The strip: one cell a bench with letter, mark, phase and time, and the clock's tile with the
// sound's state. Each is a button as a whole. A narrow cell drops its sign and keeps the rest. Over
// the changeover's field all are colourless. Where even that is too narrow the words stand below.
#pragma once

#include <optional>

#include <QString>

#include "app/parts/mark.h"
#include "app/parts/press_part.h"
#include "app/parts/sign.h"

class QPainter;

namespace seamclock {

struct StripCellView {
    QString letter;
    Mark mark = Mark::Free;
    Tone tone = Tone::Rest;
    double fraction = 0;
    QString phase;
    QString time; // none: the phase stands alone, larger ("free")
    std::optional<Sign> sign;
    bool selected = false;
    bool plain = false;

    bool operator==(const StripCellView&) const = default;
};

class StripCell : public PressPart, public ShowsMark {
    Q_OBJECT

public:
    explicit StripCell(const QString& name, QWidget* parent = nullptr);

    using QWidget::show;
    void show(const StripCellView& view);
    const StripCellView& view() const { return m_view; }
    std::optional<Mark> markShown() const override { return m_view.mark; }
    QRectF markPlace() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    /// So little room that phase and time stand below letter and mark: three or four benches
    /// upright.
    bool isStacked() const;
    void paintStacked(QPainter& painter, const QColor& text, const QColor& soft) const;

    StripCellView m_view;
};

struct StatusView {
    QString clock; // "14:05"
    QString sound; // "sound ok", "no sound"
    bool soundOk = true;
    bool plain = false;

    bool operator==(const StatusView&) const = default;
};

class StatusTile : public PressPart {
    Q_OBJECT

public:
    explicit StatusTile(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const StatusView& view);
    const StatusView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    StatusView m_view;
};

} // namespace seamclock
