// How a page that was made in memory gets to the disk: written beside the file and renamed, so that
// a disk that fills up leaves no half page behind.
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QString>

namespace seamclock {

/// Overwrites `file`. `what` is named in a refusal: "card". NotWritten: with the path and the
/// reason; what stood there is left as it was.
Result<void> writePdf(const QByteArray& pdf, const QString& what, const QString& file);

/// Into that folder, made if need be, under a name that is free; returns where.
Result<QString>
savePdf(const QByteArray& pdf, const QString& what, const QString& folder, const QString& stem);

} // namespace seamclock
