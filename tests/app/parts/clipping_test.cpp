// No word is cut off or written over another: every part with long words, at each size of text and
// on a denser screen.
#include <QPainter>
#include <gtest/gtest.h>

#include "app/parts/lamp.h"
#include "app/parts/metrics.h"
#include "app/parts/number_pad.h"
#include "app/parts/slot_button.h"
#include "app/parts/type.h"
#include "tests/app/parts/samples.h"
#include "tests/app/parts/text_recorder.h"

namespace seamclock {
namespace {

std::unique_ptr<TextRecorder> record(const Sample& sample, ThemeKind kind, const Metrics& metrics) {
    const auto part = sample.make();
    part->setLook(Theme::of(kind), metrics);
    part->resize((sample.units * metrics.perUnit).toSize());
    auto recorder = std::make_unique<TextRecorder>(part->size());
    part->render(recorder.get(), QPoint(), QRegion(), QWidget::DrawChildren);
    return recorder;
}

void expectWhole(const Sample& sample, const TextRecorder& recorder, QSizeF size) {
    for (const std::string& trouble : recorder.troubles(size)) {
        ADD_FAILURE() << qPrintable(sample.name) << ": " << trouble;
    }
}

void expectAllWhole(const std::vector<Sample>& samples) {
    ASSERT_FALSE(samples.empty());
    for (double text : {1.0, 1.5, 2.0}) {
        for (double perUnit : {1.0, 1.5}) {
            Metrics metrics;
            metrics.perUnit = perUnit;
            metrics.text = text;
            SCOPED_TRACE(testing::Message() << "text " << text << ", per unit " << perUnit);
            for (const Sample& sample : samples) {
                const auto recorder = record(sample, ThemeKind::Light, metrics);
                expectWhole(sample, *recorder, sample.units * perUnit);
                for (QString word : sample.words) {
                    EXPECT_TRUE(recorder->all().contains(word.remove(QLatin1Char(' '))))
                        << qPrintable(sample.name) << " lacks \"" << qPrintable(word) << "\"";
                }
            }
        }
    }
}

TEST(Clipping, LongWordsAreWholeAtEverySizeOfText) {
    expectAllWhole(longSamples());
}

TEST(Clipping, ThePicturesOwnWordsAreWholeAtEverySizeOfText) {
    expectAllWhole(partSamples());
}

// The design's widest field, and what is left on an 8 inch tablet upright.
TEST(Clipping, TheAllowedRangeStandsOnANumbersFieldOfEverySize) {
    NumberView plate;
    plate.title = "Plate temperature, bench C";
    plate.where = "Read on the face. Place 2 of 3: middle.";
    plate.unit = "°C";
    plate.text = "212";
    plate.low = 200;
    plate.high = 220;
    plate.allowed = "allowed 200 to 220 °C";
    NumberView upTo = plate; // no bar at any size: it has one end
    upTo.low.reset();
    upTo.allowed = "allowed up to 220 °C";
    for (const NumberView& view : {plate, upTo}) {
        for (const QSize size : {QSize(640, 534), QSize(580, 207)}) {
            NumberField field;
            field.setLook(Theme::of(ThemeKind::Light), Metrics());
            field.resize(size);
            field.show(view);
            TextRecorder recorder(size);
            field.render(&recorder, QPoint(), QRegion(), QWidget::DrawChildren);
            EXPECT_TRUE(recorder.all().contains(QString(view.allowed).remove(' ')))
                << size.height() << ": " << qPrintable(recorder.all());
            EXPECT_TRUE(recorder.troubles(size).empty()) << size.height();
        }
    }
}

TEST(Clipping, ARecorderSeesATextThatIsCutOff) {
    // the check itself: a text half outside must not be contained
    TextRecorder recorder(QSize(100, 100));
    QPainter painter(&recorder);
    drawLine(
        painter, QRectF(60, 0, 40, 40), Qt::AlignLeft | Qt::AlignTop, QStringLiteral("Plate out"),
        30, kWordWeight);
    painter.end();
    ASSERT_EQ(recorder.texts().size(), 1U);
    EXPECT_GT(recorder.texts()[0].ink.right(), 101);
    EXPECT_EQ(recorder.troubles(QSizeF(100, 100)).size(), 1U);
}

TEST(Clipping, TheClockKeepsItsFloorWhenWordsGrow) {
    for (const Sample& sample : longSamples()) {
        if (sample.name != QLatin1String("long_lamp") &&
            sample.name != QLatin1String("long_lamp_set")) {
            continue;
        }
        for (double text : {1.0, 1.5, 2.0}) {
            Metrics metrics;
            metrics.text = text;
            double largest = 0;
            const auto recorder = record(sample, ThemeKind::Dark, metrics);
            for (const WrittenText& written : recorder->texts()) {
                largest = std::max(largest, written.pixelSize);
            }
            // 17.5 mm of cap height are 104 units; a pixel for whole sizes of type
            EXPECT_GE(largest * kCapHeight, 104 - 1) << qPrintable(sample.name) << " " << text;
        }
    }
}

TEST(Clipping, ANumberAndItsUnitKeepAMarginInTheLamp) {
    // as wide as the lamp of a phase is: alignment, soak, build-up; the floor of its number leaves
    // no more
    LampView view;
    view.word = QStringLiteral("Set");
    view.number = QStringLiteral("41.5");
    view.unit = QStringLiteral("mm");
    view.under = QStringLiteral("on the scale, plate between");
    view.under2 = QStringLiteral("keep hands out: tables crush");
    Lamp lamp;
    lamp.setLook(Theme::of(ThemeKind::Light), Metrics());
    lamp.show(view);
    lamp.resize(438, 376);
    TextRecorder recorder(lamp.size());
    lamp.render(&recorder, QPoint(), QRegion(), QWidget::DrawChildren);
    for (const WrittenText& written : recorder.texts()) {
        EXPECT_GE(written.ink.left(), 10) << qPrintable(written.text);
        EXPECT_LE(written.ink.right(), 438 - 10) << qPrintable(written.text);
    }
}

TEST(Clipping, AStepInALowSlotStaysLargeAndLeavesItsSecondLineOut) {
    const auto sizeOf = [](double height, const QString& word) {
        SlotView view;
        view.text = QStringLiteral("Plate out");
        view.under = QStringLiteral("at the signal");
        view.large = true;
        view.pedal = true;
        SlotButton button(QStringLiteral("step"));
        button.setLook(Theme::of(ThemeKind::Light), Metrics());
        button.show(view);
        button.resize(768, static_cast<int>(height));
        TextRecorder recorder(button.size());
        button.render(&recorder, QPoint(), QRegion(), QWidget::DrawChildren);
        double size = 0;
        for (const WrittenText& written : recorder.texts()) {
            size = word.contains(written.text) ? std::max(size, written.pixelSize) : size;
        }
        return size;
    };
    // 62 units: the button that waits; 122 units: the slots of a screen that lies, 97 of one that
    // stands
    EXPECT_GE(sizeOf(122, QStringLiteral("Plate out")), 62);
    EXPECT_GT(sizeOf(122, QStringLiteral("at the signal")), 20);
    EXPECT_GE(sizeOf(97, QStringLiteral("Plate out")), 62);
    EXPECT_EQ(sizeOf(97, QStringLiteral("at the signal")), 0);
}

} // namespace
} // namespace seamclock
