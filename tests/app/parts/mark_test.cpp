// Marks and signs must be told apart without colour, and by eyes that see some colours alike.
#include "app/parts/mark.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

#include "app/parts/sign.h"
#include "app/parts/theme.h"
#include "tests/app/parts/eyes.h"

namespace seamclock {
namespace {

constexpr int kSide = 44; // the strip's mark, the smallest that must be read at 1 m
constexpr int kSeen = 48; // of 255: a difference of lightness that stands out beside an edge
constexpr double kSignDistinct =
    0.1; // align is soak with two small arrows; its word stands beside it
constexpr double kDistinct =
    0.12; // of all inked pixels; the nearest pair, tick and cross in a square, has more

bool differs(QRgb a, QRgb b) {
    return std::max(
               {std::abs(qRed(a) - qRed(b)), std::abs(qGreen(a) - qGreen(b)),
                std::abs(qBlue(a) - qBlue(b))}) > kSeen;
}

// Of the pixels that either drawing inks, the part that is not alike.
double distance(const QImage& a, const QImage& b, QRgb ground) {
    int inked = 0;
    int unlike = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            const QRgb one = a.pixel(x, y);
            const QRgb other = b.pixel(x, y);
            inked += differs(one, ground) || differs(other, ground) ? 1 : 0;
            unlike += differs(one, other) ? 1 : 0;
        }
    }
    return inked == 0 ? 0 : static_cast<double>(unlike) / inked;
}

constexpr std::array<Mark, 9> kMarks{Mark::Wait, Mark::Soon,    Mark::Act,  Mark::Late, Mark::Done,
                                     Mark::Cut,  Mark::Trouble, Mark::Open, Mark::Free};

Tone toneOf(Mark mark) {
    switch (mark) {
    case Mark::Wait:
    case Mark::Done:
        return Tone::Normal;
    case Mark::Soon:
    case Mark::Trouble:
        return Tone::Soon;
    case Mark::Act:
        return Tone::Act;
    case Mark::Late:
    case Mark::Cut:
        return Tone::Late;
    case Mark::Open:
    case Mark::Free:
        break;
    }
    return Tone::Rest;
}

QImage markImage(Mark mark, const Theme& theme, const QColor& ink, double fraction) {
    QImage image(kSide, kSide, QImage::Format_RGB32);
    image.fill(theme.panel);
    QPainter painter(&image);
    paintMark(painter, QRectF(0, 0, kSide, kSide), mark, ink, theme, fraction);
    return image;
}

void expectDistinct(const std::vector<QImage>& images, QRgb ground, const char* how) {
    for (std::size_t i = 0; i < images.size(); ++i) {
        EXPECT_EQ(distance(images[i], images[i], ground), 0);
        for (std::size_t j = i + 1; j < images.size(); ++j) {
            EXPECT_GE(distance(images[i], images[j], ground), kDistinct)
                << how << ": " << i << " and " << j;
        }
    }
}

TEST(Marks, AreToldApartByShapeAloneInOneInk) {
    for (ThemeKind kind : {ThemeKind::Dark, ThemeKind::Light, ThemeKind::Contrast}) {
        const Theme& theme = Theme::of(kind);
        for (double fraction : {0.0, 0.5, 1.0}) {
            std::vector<QImage> images;
            for (Mark mark : kMarks) {
                images.push_back(markImage(mark, theme, theme.text, fraction));
            }
            expectDistinct(images, theme.panel.rgb(), "one ink");
        }
    }
}

TEST(Marks, AreToldApartInGreyAndUnderEachDeficiency) {
    for (ThemeKind kind : {ThemeKind::Dark, ThemeKind::Light, ThemeKind::Contrast}) {
        const Theme& theme = Theme::of(kind);
        for (const test::Eyes& eyes : test::weakEyes()) {
            std::vector<QImage> images;
            for (Mark mark : kMarks) {
                images.push_back(
                    test::seenBy(markImage(mark, theme, theme.tone(toneOf(mark)).ink, 0.5), eyes));
            }
            expectDistinct(images, test::seenBy(theme.panel, eyes).rgb(), eyes.name);
        }
    }
}

TEST(Marks, TheSimulationKeepsWhiteWhite) {
    for (const test::Eyes& eyes : test::weakEyes()) {
        for (const std::array<double, 3>& row : eyes.matrix) {
            EXPECT_NEAR(row[0] + row[1] + row[2], 1, 2e-6) << eyes.name;
        }
    }
}

TEST(Marks, TheRingFillsAsTimeGoes) {
    const Theme& theme = Theme::of(ThemeKind::Dark);
    const auto inked = [&](double fraction) {
        const QImage image = markImage(Mark::Wait, theme, theme.text, fraction);
        int count = 0;
        for (int y = 0; y < kSide; ++y) {
            for (int x = 0; x < kSide; ++x) {
                count += differs(image.pixel(x, y), theme.panel.rgb()) ? 1 : 0;
            }
        }
        return count;
    };
    EXPECT_LT(inked(0), inked(0.25));
    EXPECT_LT(inked(0.25), inked(0.5));
    EXPECT_LT(inked(0.5), inked(1));
    EXPECT_EQ(inked(1), inked(3));
    EXPECT_EQ(inked(0), inked(-1));
}

TEST(Signs, EachHasADrawingOfItsOwn) {
    const Theme& theme = Theme::of(ThemeKind::Light);
    std::vector<QImage> images;
    for (int i = 0; i < kSignCount; ++i) {
        QImage image(60, 42, QImage::Format_RGB32);
        image.fill(theme.panel);
        QPainter painter(&image);
        paintSign(painter, QRectF(0, 0, 60, 42), static_cast<Sign>(i), theme.text);
        images.push_back(image);
    }
    for (std::size_t i = 0; i < images.size(); ++i) {
        QImage blank(images[i].size(), QImage::Format_RGB32);
        blank.fill(theme.panel);
        EXPECT_GT(distance(images[i], blank, theme.panel.rgb()), 0.99) << i;
        for (std::size_t j = i + 1; j < images.size(); ++j) {
            EXPECT_GE(distance(images[i], images[j], theme.panel.rgb()), kSignDistinct)
                << i << " and " << j;
        }
    }
}

} // namespace
} // namespace seamclock
