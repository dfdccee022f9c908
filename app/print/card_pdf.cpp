#include "app/print/card_pdf.h"

#include "app/print/page_layout.h"
#include "app/print/pdf_file.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

namespace seamclock {
namespace {

constexpr double kPointPx = kPaperDotsPerInch / 72.0;

} // namespace

Result<QByteArray> cardPdf(const CardSheet& sheet, Paper paper) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(kPaperDotsPerInch);
    writer.setPageLayout(pageOf(paper));
    writer.setTitle(sheet.title);
    writer.setCreator(sheet.foot);
    QPainter painter;
    if (!painter.begin(&writer)) {
        return fail(ErrorCode::NotWritten, "the card's page can't be begun in memory");
    }
    // The painter's origin is the corner inside the margins.
    const QRectF area(0, 0, writer.width(), writer.height());
    const auto scale = fittingScale(painter, sheet, area, kPointPx);
    if (!scale) {
        painter.end();
        return fail(
            ErrorCode::OutOfRange,
            "the card of " + sheet.sheet.toStdString() + " has " +
                std::to_string(sheet.sources.size()) + " sources and " +
                std::to_string(sheet.card.warnings.size()) +
                " warnings, more than one page holds at 5.5 points; allowed: one page");
    }
    paintSheet(painter, sheet, area, kPointPx, *scale);
    if (!painter.end()) {
        return fail(ErrorCode::NotWritten, "the card's page can't be ended in memory");
    }
    buffer.close();
    return bytes;
}

Result<void> writeCardPdf(const CardSheet& sheet, Paper paper, const QString& file) {
    const auto pdf = cardPdf(sheet, paper);
    if (!pdf) {
        return tl::unexpected<Error>(pdf.error());
    }
    return writePdf(*pdf, QStringLiteral("card"), file);
}

Result<QString>
saveCardPdf(const CardSheet& sheet, Paper paper, const QString& folder, const QString& stem) {
    const auto pdf = cardPdf(sheet, paper);
    if (!pdf) {
        return tl::unexpected<Error>(pdf.error());
    }
    return savePdf(*pdf, QStringLiteral("card"), folder, stem);
}

} // namespace seamclock
