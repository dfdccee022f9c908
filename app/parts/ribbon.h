// The weld's course as one line of pieces, and the row of preparation checks. Both only show:
// neither is a button. A piece's width follows its weight, yet never below what its sign needs, so
// a changeover of seconds is still seen beside minutes; before the last, long piece two slashes say
// that it is not drawn to scale.
#pragma once

#include <optional>
#include <vector>

#include <QString>

#include "app/parts/part.h"
#include "app/parts/sign.h"

namespace seamclock {

struct RibbonView {
    struct Piece {
        enum class Is { Done, Now, Ahead, Late };

        Is is = Is::Ahead;
        QString name; // dropped where a sign stands for it; still in the accessible name
        QString time;
        std::optional<Sign> sign;
        double weight = 1;
        double fraction = 0;       // of Now
        bool brokenBefore = false; // slashes before it

        bool operator==(const Piece&) const = default;
    };
    std::vector<Piece> pieces;

    bool operator==(const RibbonView&) const = default;
};

class Ribbon : public Part {
public:
    explicit Ribbon(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const RibbonView& view);
    const RibbonView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    RibbonView m_view;
};

struct CheckRowView {
    struct Cell {
        QString name;
        bool done = false;
        bool now = false;
        bool overridden = false; // gone on with a reason: the mark of trouble in place of the tick

        bool operator==(const Cell&) const = default;
    };
    std::vector<Cell> cells;

    bool operator==(const CheckRowView&) const = default;
};

// Shows the cells around the current one when not all fit, with dots where some are left out.
class CheckRow : public Part {
public:
    explicit CheckRow(QWidget* parent = nullptr);

    using QWidget::show;
    void show(const CheckRowView& view);
    const CheckRowView& view() const { return m_view; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    CheckRowView m_view;
};

} // namespace seamclock
