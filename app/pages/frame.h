// Where everything stands, in design units, for a window of any size and orientation. One place, so
// that a slot can't wander between screens: next step bottom right (portrait: full width above the
// others), take-back bottom left, stopping beside it. Left-handed use mirrors the places, never
// what is painted in them.
#pragma once

#include <QRectF>
#include <QSizeF>

namespace seamclock {

struct Frame {
    QRectF strip;
    QRectF body;  // between strip and slots
    QRectF scale; // of the weld screens
    QRectF picture;
    QRectF lamp;
    QRectF sentence;
    QRectF ribbon; // with room above for its marker
    QRectF checks; // in its place while a weld is prepared
    QRectF banner; // of an alarm: over the ribbon, never over sentence or slots
    QRectF back;
    QRectF earlier; // "4 s ago", beside take-back
    QRectF stop;
    QRectF step;
    bool portrait = false;
};

enum class FrameKind { Phase, Cooling, Check, Changeover, Page, Pad };

Frame frameOf(QSizeF units, FrameKind kind, bool mirrored);

/// The body of a page with a number pad.
struct PadHalves {
    QRectF field;
    QRectF sentence; // below the field
    QRectF pad;
};

PadHalves padHalves(const Frame& frame, double width, bool mirrored);

} // namespace seamclock
