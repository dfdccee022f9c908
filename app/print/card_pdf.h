// A weld card as a PDF of one page, A4 or Letter. The bytes are made in memory, written beside the
// file and renamed, so that a disk that fills up leaves no half card behind.
#pragma once

#include "app/print/card_sheet.h"
#include "app/print/paper_page.h"
#include "core/base/result.h"

#include <QByteArray>
#include <QString>

namespace seamclock {

/// OutOfRange: more text than one page holds at the smallest type.
Result<QByteArray> cardPdf(const CardSheet& sheet, Paper paper);

/// Overwrites `file`. NotWritten: with the path and the reason; what stood there is left as it was.
Result<void> writeCardPdf(const CardSheet& sheet, Paper paper, const QString& file);

/// Into that folder, made if need be, under a name that is free; returns where.
Result<QString>
saveCardPdf(const CardSheet& sheet, Paper paper, const QString& folder, const QString& stem);

} // namespace seamclock
