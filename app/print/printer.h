// The printers that this machine knows, and a document on one of them. The pages are painted by the
// code that makes the PDF (paper_flow).
#pragma once

#include "app/print/paper.h"
#include "app/print/paper_page.h"
#include "core/base/result.h"

#include <QString>
#include <QStringList>

namespace seamclock {

/// The desktop's own first; empty: there is none.
QStringList printerNames();

/// On one of these, or the first where `printer` is empty. Missing: there is none, or none of that
/// name. NotWritten: it does not take the pages. Blocks until they are handed over.
Result<void> printPaper(const PaperDoc& doc, Paper paper, const QString& printer = {});

} // namespace seamclock
