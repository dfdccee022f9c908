// The printers that this machine knows, and a document on one of them. The pages are painted by the
// code that makes the PDF.
#pragma once

#include <QString>
#include <QStringList>

namespace seamclock {

/// The desktop's own first; empty: there is none.
QStringList printerNames();

} // namespace seamclock
