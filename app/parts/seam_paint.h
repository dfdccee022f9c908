// What pictures of a seam share, whoever draws them: a sheet in the colours of its heat with the
// line at which it melts, and one lobe of a bead.
#pragma once

#include "app/parts/metrics.h"
#include "app/parts/seam_picture.h"

#include <QColor>
#include <QPointF>

class QPainter;

namespace seamclock {

/// Where the sheet lies, in pixels.
struct SheetPlace {
    double faceX = 0;
    double edgeX = 0; // the sheet's other end
    double middleY = 0;
    double half = 0; // of its thickness
    double perMm = 1;
};

/// The colours of its cells, and the melt line: white under dark dashes, so that it is seen on any
/// of them.
void paintSheetHeat(
    QPainter& painter, const SeamHeat& heat, const SheetPlace& place, const Metrics& metrics);

struct BeadLobe {
    QPointF root; // on the sheet's surface, at its face
    bool left = true;
    bool upper = true;
    double high = 0; // above the sheet
    QColor fill;
    QColor line;
};

/// Curled back over the sheet, its outline on the outer side only.
void paintBeadLobe(QPainter& painter, const BeadLobe& lobe, const Metrics& metrics);

} // namespace seamclock
