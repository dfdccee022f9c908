// The nine marks of state. Each has a shape of its own, so that none needs its colour to be told
// apart: ring with a filling sector, triangle, block arrow, octagon with a bar, square with tick,
// square with cross, diamond, dashed circle, thin circle. A mark always stands beside its word; the
// word is the caller's.
#pragma once

#include <QRectF>
#include <optional>

class QColor;
class QPainter;

namespace seamclock {

struct Theme;

enum class Mark { Wait, Soon, Act, Late, Done, Cut, Trouble, Open, Free };

/// A part that tells by one mark how something stands, so that a test finds the marks of a screen.
class ShowsMark {
public:
    /// None: just now there is no mark.
    virtual std::optional<Mark> markShown() const = 0;
    /// Where it stands in the part [px].
    virtual QRectF markPlace() const = 0;

protected:
    ~ShowsMark() = default;
};

// Drawn in the square centred in `box`. `fraction` 0 to 1: how much of Wait's ring has gone by.
// Soon and Trouble are yellow with a dark outline where `ink` is the theme's own ink for soon or
// normal text, and in `ink` alone, their stroke and dot cut out, where it is not (on a coloured
// field).
void paintMark(
    QPainter& painter, const QRectF& box, Mark mark, const QColor& ink, const Theme& theme,
    double fraction = 0);

} // namespace seamclock
