// The guide on paper, read back by other programs: pdfinfo, pdftotext and pdftoppm.
#include "app/guide/guide_pdf.h"

#include "tests/app/guide/shipped_guide.h"
#include "tests/app/print/full_disk.h"
#include "tests/app/print/pdf_reader.h"
#include "tests/support/scratch_folder.h"

#include <QImage>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

class GuideOnPaper : public ::testing::Test {
protected:
    std::string file() const { return m_folder.file("guide.pdf"); }
    QString path() const { return QString::fromStdString(file()); }

    test::ScratchFolder m_folder;
};

TEST_F(GuideOnPaper, HasAllChaptersWithTheirPagesAndNothingOverItsMargins) {
    const Guide guide = test::shippedGuide();
    const auto written = writeGuidePdf(guide, "9.8.7", Paper::A4, path());
    ASSERT_TRUE(written) << written.error().detail;
    const test::PdfFile pdf(file());
    const int pages = pdf.pages();
    EXPECT_GT(pages, static_cast<int>(guide.chapters.size()) + 5);
    EXPECT_LT(pages, 80);
    EXPECT_TRUE(pdf.info().contains("Seamclock: the user guide")) << pdf.info().toStdString();
    EXPECT_TRUE(pdf.info().contains("A4"));
    const QString text = pdf.text();
    for (int page = 1; page <= pages; ++page) {
        EXPECT_TRUE(text.contains(QString("page %1 of %2").arg(page).arg(pages))) << page;
    }
    EXPECT_TRUE(text.contains("Of version 9.8.7."));
    EXPECT_TRUE(text.contains("a qualified welder decide"));
    // What the page of contents says is where a chapter begins.
    const QStringList contents = pdf.lines();
    static const QRegularExpression kLast(QStringLiteral("\\s(\\d+)\\s*$"));
    int page = 2;
    std::vector<std::pair<QString, int>> bookmarks{{"Contents", 1}};
    for (const GuideChapter& chapter : guide.chapters) {
        bookmarks.emplace_back(chapter.title, page);
        QString begins; // the first words of the page that it should begin on
        for (const auto& word : pdf.words(page)) {
            begins += word.text + ' ';
            if (begins.size() > chapter.title.size()) {
                break;
            }
        }
        begins.replace("&apos;", "'").replace("&#39;", "'");
        EXPECT_TRUE(begins.startsWith(chapter.title))
            << "page " << page << " begins with " << begins.toStdString();
        const QString number = QString::number(page);
        EXPECT_TRUE(std::any_of(
            contents.begin(), contents.begin() + 80,
            [&](const QString& line) { return kLast.match(line).captured(1) == number; }))
            << "the contents name no page " << page;
        const QString foot = "Seamclock 9.8.7, " + chapter.title;
        int next = page;
        while (next <= pages) { // its foot stands on all of its pages
            QString on;
            for (const auto& word : pdf.words(next)) {
                on += word.text + ' ';
            }
            if (!on.replace("&apos;", "'").replace("&#39;", "'").contains(foot)) {
                break;
            }
            ++next;
        }
        EXPECT_GT(next, page) << foot.toStdString();
        page = next;
    }
    EXPECT_EQ(page, pages + 1) << "and no page belongs to none";
    EXPECT_EQ(pdf.outline(), bookmarks);
    test::expectTidy(pdf);
}

TEST_F(GuideOnPaper, HoldsThePicturesThatAreThereAndNoHoleForTheOthers) {
    Guide guide;
    guide.chapters = {
        {"01-a.md", "A", "Text.", "# A\n\nBefore.\n\n![Here](here.png)\n\nAfter words.\n"},
        {"02-b.md", "B", "Text.", "# B\n\nBefore.\n\n![Gone](gone.png)\n\nAfter words.\n"}};
    guide.pictures = {QString::fromStdString(m_folder.path())};
    QImage red(320, 200, QImage::Format_RGB32);
    red.fill(Qt::black);
    ASSERT_TRUE(red.save(QString::fromStdString(m_folder.file("here.png"))));
    ASSERT_TRUE(writeGuidePdf(guide, "1", Paper::Letter, path()));
    const test::PdfFile pdf(file());
    ASSERT_EQ(pdf.pages(), 3);
    EXPECT_TRUE(pdf.info().contains("612 x 792")) << pdf.info().toStdString();
    const auto dark = [&pdf](int page) {
        const QImage ink = pdf.ink(page);
        int count = 0;
        for (int y = 0; y < ink.height(); ++y) {
            for (int x = 0; x < ink.width(); ++x) {
                count += ink.constScanLine(y)[x] < 60 ? 1 : 0;
            }
        }
        return count;
    };
    EXPECT_GT(dark(2), 50'000) << "the picture";
    EXPECT_LT(dark(3), 10'000);
    const auto after = [&pdf](int page) {
        for (const auto& word : pdf.words(page)) {
            if (word.text == "After") {
                return word.box.top();
            }
        }
        return 0.0;
    };
    EXPECT_GT(after(2), after(3) + 100);
    EXPECT_LT(after(3), 130) << "no hole where the picture would stand";
}

TEST_F(GuideOnPaper, WhatCantBeWrittenIsSaidInOneSentence) {
    const Guide guide = test::shippedGuide();
    const QString nowhere = QString::fromStdString(m_folder.file("no folder/guide.pdf"));
    const auto none = writeGuidePdf(guide, "1", Paper::A4, nowhere);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::NotWritten);
    EXPECT_NE(none.error().detail.find(nowhere.toStdString()), std::string::npos);
    EXPECT_EQ(none.error().detail.find('\n'), std::string::npos);
    QFile before(path());
    ASSERT_TRUE(before.open(QIODevice::WriteOnly));
    before.write("what stood there");
    before.close();
    {
        const test::FullDisk full(2'000);
        const auto written = writeGuidePdf(guide, "1", Paper::A4, path());
        ASSERT_FALSE(written);
        EXPECT_EQ(written.error().code, ErrorCode::NotWritten);
        EXPECT_NE(written.error().detail.find("the guide can't be written"), std::string::npos)
            << written.error().detail;
    }
    ASSERT_TRUE(before.open(QIODevice::ReadOnly));
    EXPECT_EQ(before.readAll(), "what stood there");
}

} // namespace
} // namespace seamclock
