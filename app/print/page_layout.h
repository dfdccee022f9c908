// Puts a card's sheet on one page: the six columns, then sums beside facts, then warnings,
// estimates, sources and cautions, and the lines to sign at the foot. Words wrap; where the page is
// too full everything shrinks in steps, down to kSmallestPoints and no further. Nothing is cut:
// what does not fit even so is told by the return value.
#pragma once

#include "app/print/card_sheet.h"

#include <QRectF>
#include <optional>

class QPainter;

namespace seamclock {

inline constexpr double kSmallestPoints = 5.5; // of any text on the page; 1.9 mm from line to line

/// The scale, 1 or less, at which the sheet fits into `area` of a device with `pointPx` pixels to
/// a point; none if it does not at the smallest.
std::optional<double>
fittingScale(QPainter& painter, const CardSheet& sheet, const QRectF& area, double pointPx);

/// A word through the page, upwards and so faint that all else is read over it.
void paintAcross(QPainter& painter, const QRectF& page, const QString& word, double pointPx);

void paintSheet(
    QPainter& painter, const CardSheet& sheet, const QRectF& area, double pointPx, double scale);

} // namespace seamclock
