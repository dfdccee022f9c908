// What is painted: something, without a complaint of Qt's, at any size; only when it changed; and
// to scale.
#include <cmath>
#include <set>

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <gtest/gtest.h>

#include "app/parts/brush.h"
#include "app/parts/changeover_field.h"
#include "app/parts/check_drawing.h"
#include "app/parts/lamp.h"
#include "app/parts/scale_view.h"
#include "app/parts/seam_picture.h"
#include "app/parts/slot_button.h"
#include "tests/app/parts/samples.h"

namespace seamclock {
namespace {

QStringList& complaints() {
    static QStringList all;
    return all;
}

void keepComplaint(QtMsgType, const QMessageLogContext&, const QString& message) {
    complaints() << message;
}

// Keeps what Qt says while it lives.
class Listening {
public:
    Listening() : m_before(qInstallMessageHandler(keepComplaint)) { complaints().clear(); }
    ~Listening() { qInstallMessageHandler(m_before); }

private:
    QtMessageHandler m_before;
};

QImage imageOf(Part& part, const QColor& ground) {
    QImage image(part.size(), QImage::Format_RGB32);
    image.fill(ground);
    QPainter painter(&image);
    part.render(&painter, QPoint(), QRegion(), QWidget::DrawChildren);
    return image;
}

int coloursOf(const QImage& image) {
    std::set<QRgb> colours;
    for (int y = 0; y < image.height(); y += 2) {
        for (int x = 0; x < image.width(); x += 2) {
            colours.insert(image.pixel(x, y));
        }
    }
    return static_cast<int>(colours.size());
}

TEST(Painting, EveryPartShowsSomethingInEveryThemeWithoutAComplaint) {
    const Listening listening;
    for (ThemeKind kind : {ThemeKind::Dark, ThemeKind::Light, ThemeKind::Contrast}) {
        for (const auto& samples : {partSamples(), longSamples()}) {
            for (const Sample& sample : samples) {
                const auto part = sample.make();
                part->setLook(Theme::of(kind), Metrics());
                part->resize(sample.units.toSize());
                // two colours, and those of smoothed edges
                EXPECT_GE(coloursOf(imageOf(*part, Theme::of(kind).ground)), 3)
                    << qPrintable(sample.name);
                EXPECT_FALSE(part->objectName().isEmpty()) << qPrintable(sample.name);
            }
        }
    }
    EXPECT_TRUE(complaints().isEmpty()) << qPrintable(complaints().join(QLatin1Char('\n')));
}

TEST(Painting, NoSizeIsTooSmallToPaintWithoutAComplaint) {
    const Listening listening;
    for (const QSize& size : {QSize(1, 1), QSize(7, 200), QSize(200, 7), QSize(60, 40)}) {
        for (const Sample& sample : partSamples()) {
            const auto part = sample.make();
            part->resize(size);
            EXPECT_EQ(imageOf(*part, Qt::black).size(), size);
        }
    }
    EXPECT_TRUE(complaints().isEmpty()) << qPrintable(complaints().join(QLatin1Char('\n')));
}

TEST(Painting, EachCheckHasADrawingOfItsOwn) {
    std::vector<QImage> images;
    for (const QString& check : drawnChecks()) {
        if (check == QLatin1String("bars_opened")) {
            continue; // another word for bars_open
        }
        CheckPicture picture;
        picture.resize(788, 376);
        CheckDrawing drawing;
        drawing.check = check;
        picture.show(drawing);
        images.push_back(imageOf(picture, Qt::black));
    }
    EXPECT_GE(images.size(), 19U);
    for (std::size_t i = 0; i < images.size(); ++i) {
        for (std::size_t j = i + 1; j < images.size(); ++j) {
            EXPECT_NE(images[i], images[j]) << i << " and " << j;
        }
    }
}

// The sheet of the drawing is 748 x 336 in a margin of 20 units: at this size one unit is one
// pixel. The plate's face and its places stand there as they are drawn, read off the picture.
TEST(PlateDrawing, PointsAtThePlaceThatIsReadNextAndRingsItThicker) {
    const Theme& theme = Theme::of(ThemeKind::Dark);
    const QRect face(44, 130, 560, 170);
    const auto centre = [](int place) { return QPointF(140 + 184 * place, 215); };
    for (int place = 0; place < 3; ++place) {
        CheckPicture picture;
        picture.setLook(theme, Metrics());
        picture.resize(788, 376);
        CheckDrawing drawing;
        drawing.check = "plate_temperature";
        drawing.value = QStringLiteral("210 °C");
        drawing.place = place;
        picture.show(drawing);
        const QImage image = imageOf(picture, theme.ground);
        QPoint tip;
        int ring[3] = {0, 0, 0};
        for (int y = face.top(); y <= face.bottom(); ++y) {
            for (int x = face.left(); x <= face.right(); ++x) {
                const QRgb is = image.pixel(x, y);
                if (is == theme.tone(Tone::Act).field.rgb()) {
                    tip = QPoint(x, y); // the lowest, at the end
                }
                for (int i = 0; i < 3; ++i) {
                    const QPointF away = QPointF(x, y) - centre(i);
                    const double far = std::hypot(away.x(), away.y());
                    ring[i] += is == textOnPlate().rgb() && far > 21 && far < 31 ? 1 : 0;
                }
            }
        }
        ASSERT_FALSE(tip.isNull()) << place;
        EXPECT_LT(std::hypot(tip.x() - centre(place).x(), tip.y() - centre(place).y()), 45)
            << place;
        for (int i = 0; i < 3; ++i) {
            EXPECT_GT(ring[i], 0) << i;
            if (i != place) {
                EXPECT_GT(ring[place], ring[i]) << place << " and " << i;
            }
        }
    }
}

class PaintCounter : public QObject {
public:
    int count = 0;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        count += event->type() == QEvent::Paint ? 1 : 0;
        return QObject::eventFilter(watched, event);
    }
};

TEST(Painting, APartIsPaintedAnewOnlyWhenItChanged) {
    Lamp lamp;
    lamp.resize(448, 376);
    LampView view;
    view.word = QStringLiteral("Wait");
    view.number = QStringLiteral("1:12");
    lamp.show(view);
    PaintCounter counter;
    lamp.installEventFilter(&counter);
    lamp.show();
    QApplication::processEvents();
    ASSERT_GE(counter.count, 1);
    counter.count = 0;
    lamp.show(view);
    QApplication::processEvents();
    EXPECT_EQ(counter.count, 0);
    view.number = QStringLiteral("1:11");
    lamp.show(view);
    QApplication::processEvents();
    EXPECT_EQ(counter.count, 1);
    lamp.setLook(Theme::of(ThemeKind::Light), Metrics());
    QApplication::processEvents();
    EXPECT_EQ(counter.count, 2);
    lamp.setLook(Theme::of(ThemeKind::Light), Metrics());
    QApplication::processEvents();
    EXPECT_EQ(counter.count, 2);
}

TEST(Painting, AReaderHearsThePartsWords) {
    Lamp lamp;
    LampView view;
    view.word = QStringLiteral("Set");
    view.number = QStringLiteral("8");
    view.unit = QStringLiteral("mm");
    view.under = QStringLiteral("gap between the tables");
    lamp.show(view);
    EXPECT_EQ(lamp.accessibleName(), QStringLiteral("Set, 8 mm, gap between the tables"));
    SlotButton erase(QStringLiteral("erase"));
    SlotView key;
    key.sign = Sign::Erase;
    key.accessible = QStringLiteral("erase");
    erase.show(key);
    EXPECT_EQ(erase.accessibleName(), QStringLiteral("erase"));
}

// How many pixels of one column or row have that colour.
int run(const QImage& image, const QColor& colour, int x, int y, bool down) {
    int count = 0;
    const int end = down ? image.height() : image.width();
    for (int i = 0; i < end; ++i) {
        const QColor pixel = image.pixelColor(down ? x : i, down ? i : y);
        const int off = std::abs(pixel.red() - colour.red()) +
                        std::abs(pixel.green() - colour.green()) +
                        std::abs(pixel.blue() - colour.blue());
        count += off < 12 ? 1 : 0;
    }
    return count;
}

TEST(SeamPicture, SheetAndPlateShareOneScale) {
    for (double thickness : {6.0, 10.0, 15.0, 20.0}) {
        SeamView view;
        view.phase = SeamView::Phase::Soak;
        view.thicknessMm = thickness;
        view.plateMm = 10;
        view.plateC = 213;
        SeamPicture picture;
        picture.resize(580, 376);
        picture.show(view);
        const QImage image = imageOf(picture, Qt::black);
        // beside the clamps, and over the sheets' upper edge; lines are 3 px wide and lie half
        // within
        const int sheet = run(image, temperatureColour(20), 232, 0, true) + 3;
        const int plate = run(image, temperatureColour(213), 0, 310, false) + 3;
        EXPECT_NEAR(sheet / thickness, plate / view.plateMm, 0.03 * plate / view.plateMm + 0.3)
            << thickness;
    }
}

TEST(SeamPicture, TheBeadStandsAsHighAsItIs) {
    SeamView view;
    view.phase = SeamView::Phase::Soak;
    view.thicknessMm = 15;
    view.plateC = 213;
    SeamPicture picture;
    picture.resize(580, 376);
    const auto column = [&](double bead) {
        view.beadNowMm = bead;
        picture.show(view);
        // just beside the plate's face
        const QImage image = imageOf(picture, Qt::black);
        const int half = run(image, temperatureColour(213), 0, 310, false) / 2;
        const int beside = 290 - half - 12;
        // the bead is the sheet's colour, lighter by a part of the outline's
        const QColor sheet = temperatureColour(20);
        const QColor lighter = mixed(sheet, picture.theme().outline, 0.36);
        return run(image, sheet, beside, 0, true) + run(image, lighter, beside, 0, true);
    };
    const int bare = column(0);
    const double perMm = (bare + 3) / 15.0;
    for (double bead : {2.0, 3.0, 4.0}) {
        // two beads, above and below; the lobe's crest is 1.05 of its height, outlines take some
        // pixels
        EXPECT_NEAR((column(bead) - bare) / 2.0 / perMm, bead, 0.12 * bead + 0.3) << bead;
    }
}

TEST(ScalePanel, ShowsReadingsAndNeverALiveValue) {
    ScaleView view;
    view.set = 15.5;
    view.low = 14.5;
    view.high = 17;
    view.max = 40;
    view.division = 0.5;
    ScalePanel scale;
    scale.resize(196, 376);
    scale.show(view);
    const QImage bare = imageOf(scale, Qt::black);
    view.readings = {15.0};
    scale.show(view);
    EXPECT_NE(imageOf(scale, Qt::black), bare);
    // a reading far outside the band is in the window too
    view.readings = {4.0};
    scale.show(view);
    EXPECT_NE(imageOf(scale, Qt::black), bare);
}

TEST(ChangeoverField, ItsFrontReachesTheEdgeAtTheLimit) {
    ChangeoverView view;
    view.limitMs = 8800;
    EXPECT_EQ(changeoverFront(view), 0);
    view.elapsedMs = 4400;
    EXPECT_DOUBLE_EQ(changeoverFront(view), 0.5);
    view.elapsedMs = 8800;
    EXPECT_EQ(changeoverFront(view), 1);
    view.elapsedMs = 9900;
    EXPECT_EQ(changeoverFront(view), 1);
    view.lessMotion = true;
    view.elapsedMs = 3999;
    EXPECT_DOUBLE_EQ(changeoverFront(view), 3000.0 / 8800);
    view.limitMs = 0;
    EXPECT_EQ(changeoverFront(view), 1);
}

TEST(ChangeoverField, TheDarkPartEndsWhereTheFrontIs) {
    ChangeoverView view;
    view.limitMs = 8000;
    view.elapsedMs = 2000;
    ChangeoverField field;
    field.resize(1280, 800);
    field.show(view);
    QImage image = imageOf(field, Qt::black);
    const int y = 20; // in the strip's room, where nothing else is painted
    EXPECT_EQ(image.pixelColor(318, y), changeoverColours().done);
    EXPECT_EQ(image.pixelColor(322, y), changeoverColours().left);
    view.late = true;
    field.show(view);
    image = imageOf(field, Qt::black);
    EXPECT_EQ(image.pixelColor(640, y), changeoverColours().late);
    EXPECT_EQ(image.pixelColor(640, 3), changeoverColours().on); // its white frame
}

} // namespace
} // namespace seamclock
