// Signs: small drawings that stand beside a word and never in place of it (but for erase on the
// number pad, which has its accessible name). The first nine are the phases of a weld, the seam
// seen from its end; the others are drawn with a line of 2 units on 24, round ends.
#pragma once

#include <QRectF>

class QColor;
class QPainter;

namespace seamclock {

enum class Sign {
    FreeBench,
    Prepare,
    Align,
    Soak,
    Changeover,
    BuildUp,
    Cooling,
    Release,
    Look,
    Sound,
    Mute,
    Saved,
    NotSaved,
    Pedal,
    Back,
    Lock,
    Wheel,
    Clamp,
    PlateTemperature,
    Draught,
    Damp,
    Person,
    Note,
    Shield,
    Camera,
    Print,
    Search,
    Erase,
    Battery,
    Charger,
    Spring,
    PlanedEdge,
    Remark,
    Menu,
};

inline constexpr int kSignCount = static_cast<int>(Sign::Menu) + 1;

// A phase's sign is wider than high (40 to 28); the others are square. The sign keeps its
// proportions inside `box`.
bool isPhaseSign(Sign sign);
void paintSign(QPainter& painter, const QRectF& box, Sign sign, const QColor& ink);

} // namespace seamclock
