#include "app/print/printer.h"

#include "app/print/paper_flow.h"

#include <QPrinter>
#include <QPrinterInfo>

namespace seamclock {

QStringList printerNames() {
    QStringList names = QPrinterInfo::availablePrinterNames();
    const QString own = QPrinterInfo::defaultPrinterName();
    if (names.removeOne(own)) {
        names.prepend(own);
    }
    return names;
}

Result<void> printPaper(const PaperDoc& doc, Paper paper, const QString& printer) {
    const QStringList names = printerNames();
    if (names.isEmpty()) {
        return fail(
            ErrorCode::Missing, "there is no printer on this machine; the " +
                                    doc.what.toStdString() + " can be kept as a PDF");
    }
    if (!printer.isEmpty() && !names.contains(printer)) {
        return fail(
            ErrorCode::Missing, "there is no printer \"" + printer.toStdString() +
                                    "\"; allowed: " + names.join(", ").toStdString());
    }
    QPrinter device(
        QPrinterInfo::printerInfo(printer.isEmpty() ? names.first() : printer),
        QPrinter::HighResolution);
    if (!device.isValid()) {
        return fail(
            ErrorCode::NotWritten,
            "the printer \"" + device.printerName().toStdString() + "\" can't be used");
    }
    device.setDocName(doc.title);
    const auto pages = paintPaper(doc, paper, device);
    if (!pages) {
        return tl::unexpected<Error>(pages.error());
    }
    if (device.printerState() == QPrinter::Error) {
        return fail(
            ErrorCode::NotWritten, "the printer \"" + device.printerName().toStdString() +
                                       "\" does not take the " + doc.what.toStdString());
    }
    return {};
}

} // namespace seamclock
