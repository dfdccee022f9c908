// The whole guide as a PDF: a page of contents, then the chapters, each beginning on a page of its
// own, with their title and "page 3 of 20" at the foot, and a bookmark for each.
#pragma once

#include "app/guide/guide.h"
#include "app/print/paper_page.h"

#include <QByteArray>

namespace seamclock {

/// `version`: of the program, on the first page. NotWritten: a page can't be begun or ended.
Result<QByteArray> guidePdf(const Guide& guide, const QString& version, Paper paper);
/// Overwrites `file`. NotWritten: with the path and the reason; what stood there is left as it was.
Result<void>
writeGuidePdf(const Guide& guide, const QString& version, Paper paper, const QString& file);

} // namespace seamclock
