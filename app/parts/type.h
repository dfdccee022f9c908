// Words and numbers: Inter, else DejaVu Sans. Digits stand in cells of equal width, so that a clock
// does not jump as its digits change; Qt 6.4 can't ask a font for tabular digits, so each digit is
// set in its own cell. Long words (other languages, 200 % text) shrink down to a floor or wrap to
// two lines; what still doesn't fit is told by the return value and is never cut without a sign of
// it.
#pragma once

#include <QFont>
#include <QRectF>
#include <QString>
#include <QStringList>

class QPainter;

namespace seamclock {

inline constexpr QFont::Weight kNumberWeight = QFont::Bold;
inline constexpr QFont::Weight kWordWeight = QFont::Bold;
inline constexpr QFont::Weight kSentenceWeight = QFont::DemiBold;
inline constexpr QFont::Weight kLabelWeight = QFont::DemiBold;
inline constexpr QFont::Weight kPlainWeight = QFont::Medium;

inline constexpr double kCapHeight = 0.727; // of the em, Inter

QFont partFont(double pixelSize, QFont::Weight weight);

// The advance of `text` with digits in equal cells, and that of the ordinary text.
double tabularWidth(const QString& text, double pixelSize, QFont::Weight weight);
double textWidth(const QString& text, double pixelSize, QFont::Weight weight);

// Both draw in the painter's pen colour. Vertical: AlignTop and AlignBottom set cap height and
// baseline flush, AlignVCenter centres the cap height. Nothing is clipped: who gives the rectangle
// has fitted the size.
void drawTabular(
    QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text,
    double pixelSize, QFont::Weight weight);
void drawLine(
    QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text,
    double pixelSize, QFont::Weight weight);

// The largest size from `wanted` down to `floor` at which the line is no wider than `width`;
// `floor` if none is.
double
fittedSize(const QString& text, double wanted, double floor, double width, QFont::Weight weight);

// Text broken at spaces into at most `most` lines, as even as can be; `size` is the largest from
// wanted down to floor at which every line fits. `fits` is false if even at the floor one does not:
// its end is then elided with "…".
struct Wrapped {
    QStringList lines;
    double size = 0;
    bool fits = true;
};
Wrapped wrapped(
    const QString& text, double wanted, double floor, double width, int most, QFont::Weight weight,
    double height = 0);

// Lines one under the other, digits in equal cells, 1.25 em apart, the block placed in the box by
// `alignment`.
void drawWrapped(
    QPainter& painter, const QRectF& box, Qt::Alignment alignment, const Wrapped& text,
    QFont::Weight weight);
double wrappedHeight(const Wrapped& text);

} // namespace seamclock
