// Paints every part, in every theme and at a chosen size of text, to PNG files: one sheet a theme.
// For looking at, not a test: contact_sheet FOLDER [text size in per cent]
#include <cstdio>

#include <QApplication>
#include <QDir>
#include <QImage>
#include <QPainter>

#include "app/parts/mark.h"
#include "app/parts/sign.h"
#include "app/parts/type.h"
#include "tests/app/parts/samples.h"

namespace {

using namespace seamclock;

constexpr int kSheetWidth = 1320;
constexpr double kMargin = 16;

void paintMarksAndSigns(QPainter& painter, const Theme& theme, double top) {
    double x = kMargin;
    for (int i = 0; i <= static_cast<int>(Mark::Free); ++i) {
        const auto mark = static_cast<Mark>(i);
        const Tone tones[] = {Tone::Normal, Tone::Soon, Tone::Act,  Tone::Late, Tone::Normal,
                              Tone::Late,   Tone::Soon, Tone::Rest, Tone::Rest};
        paintMark(painter, QRectF(x, top, 56, 56), mark, theme.tone(tones[i]).ink, theme, 0.35);
        x += 72;
    }
    x += 30;
    for (int i = 0; i < 9; ++i) {
        paintSign(painter, QRectF(x, top + 4, 60, 46), static_cast<Sign>(i), theme.text);
        x += 68;
    }
    x = kMargin;
    for (int i = 9; i < kSignCount; ++i) {
        paintSign(painter, QRectF(x, top + 72, 40, 40), static_cast<Sign>(i), theme.text);
        x += 51;
    }
}

QImage sheetOf(const std::vector<Sample>& samples, const Theme& theme, const Metrics& metrics) {
    QImage image(kSheetWidth, 12000, QImage::Format_RGB32);
    image.fill(theme.ground);
    QPainter painter(&image);
    double x = kMargin;
    double y = kMargin;
    double row = 0;
    paintMarksAndSigns(painter, theme, y);
    y += 130;
    for (const Sample& sample : samples) {
        // the largest are shown smaller, or the sheet would be too long to look at
        const bool large = sample.units.width() > 640 && sample.units.height() > 300;
        Metrics own = metrics;
        own.perUnit = large ? 0.62 : 1;
        const QSizeF size = sample.units * own.perUnit;
        if (x > kMargin && x + size.width() > kSheetWidth - kMargin + 10) {
            x = kMargin;
            y += row + 12;
            row = 0;
        }
        const auto part = sample.make();
        part->setLook(theme, own);
        part->resize(size.toSize());
        part->render(
            &painter, QPoint(static_cast<int>(x), static_cast<int>(y)), QRegion(),
            QWidget::DrawChildren);
        x += size.width() + 12;
        row = std::max(row, size.height());
    }
    painter.end();
    return image.copy(0, 0, kSheetWidth, static_cast<int>(y + row + kMargin));
}

} // namespace

int main(int argc, char** argv) {
    if (argc < 2) {
        std::fputs("contact_sheet FOLDER [text size in per cent]\n", stderr);
        return 2;
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    Metrics metrics;
    metrics.text = argc > 2 ? QByteArray(argv[2]).toDouble() / 100 : 1;
    const QDir folder(QString::fromLocal8Bit(argv[1]));
    const std::pair<ThemeKind, const char*> themes[] = {
        {ThemeKind::Dark, "dark"}, {ThemeKind::Light, "light"}, {ThemeKind::Contrast, "contrast"}};
    for (const auto& [kind, name] : themes) {
        for (bool longWords : {false, true}) {
            const QString file = folder.filePath(
                QStringLiteral("parts-%1%2.png")
                    .arg(QLatin1String(name), longWords ? QStringLiteral("-long") : QString()));
            const auto samples = longWords ? longSamples() : partSamples();
            if (!sheetOf(samples, Theme::of(kind), metrics).save(file)) {
                std::fprintf(stderr, "cannot write %s\n", qPrintable(file));
                return 1;
            }
            std::printf("%s\n", qPrintable(file));
        }
    }
    return 0;
}
