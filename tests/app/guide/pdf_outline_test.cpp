// Bookmarks, read back by pdftohtml, which knows nothing of this program; pdfinfo still finds every
// page, and the pages themselves are as they were.
#include "app/guide/pdf_outline.h"

#include "tests/app/print/pdf_reader.h"
#include "tests/support/scratch_folder.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>

namespace seamclock {
namespace {

QByteArray ofPages(int pages) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    QPainter painter(&writer);
    for (int page = 1; page <= pages; ++page) {
        painter.drawText(500, 500, QStringLiteral("leaf %1").arg(page));
        if (page < pages) {
            writer.newPage();
        }
    }
    painter.end();
    buffer.close();
    return bytes;
}

TEST(PdfOutline, LeadsToThePagesThatItNamesInTheirOrderAndInAnyLetters) {
    const QByteArray plain = ofPages(4);
    const QString odd = QStringLiteral("Prüfen (\\ „heiß“) 焊 <2> & more");
    const auto made = withBookmarks(plain, {{"First", 1}, {odd, 3}, {"Last", 4}, {"Again", 3}});
    ASSERT_TRUE(made) << made.error().detail;
    EXPECT_TRUE(made->startsWith(plain)) << "what was there stays as it was";
    const test::ScratchFolder folder;
    const std::string file = folder.file("leaves.pdf");
    QFile out(QString::fromStdString(file));
    ASSERT_TRUE(out.open(QIODevice::WriteOnly));
    out.write(*made);
    out.close();
    const test::PdfFile pdf(file);
    EXPECT_EQ(pdf.pages(), 4);
    EXPECT_EQ(pdf.text(), "leaf 1 leaf 2 leaf 3 leaf 4");
    const std::vector<std::pair<QString, int>> wanted{
        {"First", 1}, {odd, 3}, {"Last", 4}, {"Again", 3}};
    EXPECT_EQ(pdf.outline(), wanted);
}

TEST(PdfOutline, IsRefusedForAPageThatIsNotThereAndForWhatIsNoPdf) {
    const auto none = withBookmarks(ofPages(2), {{"Beyond", 3}});
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Malformed);
    EXPECT_EQ(
        none.error().detail,
        "the PDF can't be given bookmarks: \"Beyond\" is on page 3; allowed: 1 to 2");
    for (const QByteArray& bytes :
         {QByteArray(), QByteArray("no PDF"),
          QByteArray("trailer\n<<\n/Size 9\n/Info 1 0 R\n/Root 2 0 R\n>>\nstartxref\n5\n")}) {
        const auto refused = withBookmarks(bytes, {{"First", 1}});
        ASSERT_FALSE(refused) << bytes.toStdString();
        EXPECT_EQ(refused.error().code, ErrorCode::Malformed);
    }
}

TEST(PdfOutline, OfNothingLeavesThePdfAsItIs) {
    const QByteArray plain = ofPages(1);
    const auto made = withBookmarks(plain, {});
    ASSERT_TRUE(made);
    EXPECT_EQ(*made, plain);
}

} // namespace
} // namespace seamclock
