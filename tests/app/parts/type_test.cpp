#include "app/parts/type.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <gtest/gtest.h>

#include "tests/app/parts/text_recorder.h"

namespace seamclock {
namespace {

TEST(Type, IsInterWhereItIsInstalled) {
    // fonts-inter is on the list of packages; without it every width below is another font's
    EXPECT_EQ(QFontInfo(partFont(40, kWordWeight)).family(), QStringLiteral("Inter"));
    const QFontMetricsF metrics(partFont(200, kNumberWeight));
    EXPECT_NEAR(metrics.capHeight() / 200, kCapHeight, 0.005);
}

TEST(Type, DigitsStandInCellsOfEqualWidth) {
    for (double size : {22.0, 38.0, 183.0, 400.0}) {
        for (QFont::Weight weight : {kNumberWeight, kLabelWeight, kPlainWeight}) {
            const double width = tabularWidth(QStringLiteral("0:00"), size, weight);
            EXPECT_DOUBLE_EQ(tabularWidth(QStringLiteral("1:11"), size, weight), width);
            EXPECT_DOUBLE_EQ(tabularWidth(QStringLiteral("9:47"), size, weight), width);
        }
    }
    // without cells they differ, so the cells are what does it
    EXPECT_LT(
        textWidth(QStringLiteral("1:11"), 183, kNumberWeight),
        textWidth(QStringLiteral("0:00"), 183, kNumberWeight) - 20);
}

/// Size after size, each measured.
Wrapped triedOneByOne(
    const QString& text, double wanted, double floor, double width, int most, double height) {
    for (double size = std::max(wanted, floor);; size = std::max(floor, size - 1)) {
        const Wrapped one = wrapped(text, size, size, width, most, kWordWeight, height);
        if (one.fits || size <= floor) {
            return one;
        }
    }
}

TEST(Type, FindsTheSizeThatTryingEachWouldFind) {
    const QStringList texts{
        "Wait",
        "Plate out",
        "Wait for a 2.0 mm bead, all along, top and bottom.",
        "Changeover took 11.2 s: out of limits. Let it cool, or cut it out.",
        "0:07 of 1:12",
        QString::fromUtf8("Führungsschienenverkleidung anschließend abwischen")};
    int shrunk = 0;
    for (const QString& text : texts) {
        for (const double wanted : {20.0, 42.5, 183.0}) {
            for (const double floor : {12.0, 17.5}) {
                for (const double width : {90.0, 217.0, 480.0, 1100.0}) {
                    EXPECT_DOUBLE_EQ(
                        fittedSize(text, wanted, floor, width, kWordWeight),
                        [&] {
                            double size = std::max(wanted, floor);
                            while (size > floor && textWidth(text, size, kWordWeight) > width) {
                                size = std::max(floor, size - 1);
                            }
                            return size;
                        }())
                        << text.toStdString() << " " << wanted << " " << floor << " " << width;
                    for (const int most : {1, 2, 3}) {
                        for (const double height : {0.0, 70.0}) {
                            const Wrapped found =
                                wrapped(text, wanted, floor, width, most, kWordWeight, height);
                            const Wrapped each =
                                triedOneByOne(text, wanted, floor, width, most, height);
                            EXPECT_DOUBLE_EQ(found.size, each.size)
                                << text.toStdString() << " " << wanted << " " << width;
                            EXPECT_EQ(found.lines, each.lines);
                            EXPECT_EQ(found.fits, each.fits);
                            shrunk += found.fits && found.size < wanted ? 1 : 0;
                        }
                    }
                }
            }
        }
    }
    EXPECT_GT(shrunk, 100) << "few had to be made smaller";
}

TEST(Type, AClocksColonStaysWhenItsDigitsChange) {
    const auto colonAt = [](const QString& clock) {
        TextRecorder recorder(QSize(600, 300));
        QPainter painter(&recorder);
        drawTabular(
            painter, QRectF(0, 0, 600, 300), Qt::AlignHCenter | Qt::AlignVCenter, clock, 183,
            kNumberWeight);
        painter.end();
        for (const WrittenText& text : recorder.texts()) {
            if (text.text == QLatin1String(":")) {
                return text.ink.left();
            }
        }
        return -1.0;
    };
    EXPECT_GT(colonAt(QStringLiteral("0:07")), 0);
    EXPECT_DOUBLE_EQ(colonAt(QStringLiteral("1:11")), colonAt(QStringLiteral("0:07")));
}

TEST(Type, AlignsCapHeightToTheBox) {
    const auto inkOf = [](Qt::Alignment alignment) {
        TextRecorder recorder(QSize(400, 200));
        QPainter painter(&recorder);
        drawLine(
            painter, QRectF(20, 30, 300, 100), alignment, QStringLiteral("Wait"), 64, kWordWeight);
        painter.end();
        return recorder.texts().at(0).ink;
    };
    EXPECT_NEAR(inkOf(Qt::AlignLeft | Qt::AlignTop).top(), 30, 0.01);
    EXPECT_NEAR(inkOf(Qt::AlignLeft | Qt::AlignTop).left(), 20, 0.01);
    EXPECT_NEAR(inkOf(Qt::AlignRight | Qt::AlignBottom).bottom(), 130, 0.01);
    EXPECT_NEAR(inkOf(Qt::AlignRight | Qt::AlignBottom).right(), 320, 0.01);
    EXPECT_NEAR(inkOf(Qt::AlignHCenter | Qt::AlignVCenter).center().y(), 80, 0.01);
    EXPECT_NEAR(inkOf(Qt::AlignHCenter | Qt::AlignVCenter).center().x(), 170, 0.01);
}

TEST(Type, ShrinksToAWidthButNotBelowItsFloor) {
    const QString words = QStringLiteral("Heizelement herausgezogen");
    const double size = fittedSize(words, 76, 20, 500, kWordWeight);
    EXPECT_LT(size, 76);
    EXPECT_GE(size, 20);
    EXPECT_LE(textWidth(words, size, kWordWeight), 500);
    EXPECT_GT(textWidth(words, size + 1, kWordWeight), 500);
    EXPECT_EQ(fittedSize(words, 76, 20, 50, kWordWeight), 20);
    EXPECT_EQ(fittedSize(QStringLiteral("Wait"), 64, 20, 500, kWordWeight), 64);
}

TEST(Type, WrapsAtSpacesBeforeItShrinks) {
    const QString sentence = QStringLiteral("Scale at 1.5 mm, wheel locked. Wait for the signal.");
    const Wrapped wide = wrapped(sentence, 42, 36, 1200, 2, kSentenceWeight);
    EXPECT_EQ(wide.lines.size(), 1);
    const Wrapped narrow = wrapped(sentence, 42, 36, 760, 2, kSentenceWeight);
    EXPECT_EQ(narrow.lines.size(), 2);
    EXPECT_EQ(narrow.size, 42);
    EXPECT_TRUE(narrow.fits);
    EXPECT_EQ(narrow.lines.join(QLatin1Char(' ')), sentence);
    for (const QString& line : narrow.lines) {
        EXPECT_LE(tabularWidth(line, narrow.size, kSentenceWeight), 760);
    }
    const Wrapped low = wrapped(sentence, 42, 10, 760, 2, kSentenceWeight, 42);
    EXPECT_LE(wrappedHeight(low), 42.5);
}

TEST(Type, SaysWhenWordsDoNotFitAndShowsTheCut) {
    const Wrapped cut =
        wrapped(QStringLiteral("Vorbereitungsschritt"), 42, 36, 120, 2, kSentenceWeight);
    EXPECT_FALSE(cut.fits);
    EXPECT_TRUE(cut.lines.value(0).endsWith(QChar(0x2026)));
    EXPECT_TRUE(wrapped(QString(), 42, 36, 120, 2, kSentenceWeight).lines.isEmpty());
}

} // namespace
} // namespace seamclock
