// Sets a document on as many pages as it takes. Measuring and painting are one code, so that "page
// 1 of 7" is known before the first page is painted. A row moves to the next page whole, unless it
// is higher than a page; a heading stays with what it is over; a table's heads stand again on each
// page. Nothing is cut.
#pragma once

#include "app/print/paper.h"
#include "app/print/paper_page.h"
#include "core/base/result.h"

#include <QByteArray>
#include <QString>

class QPagedPaintDevice;

namespace seamclock {

inline constexpr double kSmallestPaperPoints = 5.5; // of any text on a page

/// Sets size and margins, and paints; returns the number of pages. NotWritten: a page can't be
/// begun or ended.
Result<int> paintPaper(const PaperDoc& doc, Paper paper, QPagedPaintDevice& device);

/// NotWritten: likewise.
Result<QByteArray> paperPdf(const PaperDoc& doc, Paper paper);

/// Overwrites `file`. NotWritten: with the path and the reason; what stood there is left as it was.
Result<void> writePaper(const PaperDoc& doc, Paper paper, const QString& file);

/// Into that folder, made if need be, under a name that is free; returns where.
Result<QString>
savePaper(const PaperDoc& doc, Paper paper, const QString& folder, const QString& stem);

} // namespace seamclock
