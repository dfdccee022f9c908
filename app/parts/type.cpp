#include "app/parts/type.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <vector>

#include <QFontMetricsF>
#include <QPainter>

namespace seamclock {

namespace {

constexpr double kLineHeight = 1.25; // em

double widestDigit(const QFontMetricsF& metrics) {
    double widest = 0;
    for (char digit = '0'; digit <= '9'; ++digit) {
        widest = std::max(widest, metrics.horizontalAdvance(QLatin1Char(digit)));
    }
    return widest;
}

// A font's glyphs are measured anew at each size, which costs a hundred times what a product does.
// Without hinting widths grow with the size, but for a rounding: sizes at which a text is far too
// wide by that are passed over unmeasured, and what fits is found as if each were tried.
double pixels(double size) {
    return std::max(1.0, std::floor(size));
}

bool isFarTooWide(double about, double width) {
    constexpr double kSlack = 1.03;
    constexpr double kPixels = 2;
    return about > width * kSlack + kPixels;
}

// Runs of what is no digit keep their kerning; each digit stands alone.
template <typename Each>
double eachRun(const QString& text, const QFontMetricsF& metrics, Each each) {
    const double cell = widestDigit(metrics);
    double x = 0;
    qsizetype at = 0;
    while (at < text.size()) {
        if (text[at].isDigit()) {
            const double own = metrics.horizontalAdvance(text[at]);
            each(x + (cell - own) / 2, QString(text[at]));
            x += cell;
            ++at;
            continue;
        }
        qsizetype end = at;
        while (end < text.size() && !text[end].isDigit()) {
            ++end;
        }
        const QString run = text.mid(at, end - at);
        each(x, run);
        x += metrics.horizontalAdvance(run);
        at = end;
    }
    return x;
}

QPointF
startOf(const QRectF& box, Qt::Alignment alignment, double width, const QFontMetricsF& metrics) {
    double x = box.left();
    if (alignment & Qt::AlignRight) {
        x = box.right() - width;
    } else if (alignment & Qt::AlignHCenter) {
        x = box.center().x() - width / 2;
    }
    double base = box.top() + metrics.capHeight();
    if (alignment & Qt::AlignBottom) {
        base = box.bottom();
    } else if (alignment & Qt::AlignVCenter) {
        base = box.center().y() + metrics.capHeight() / 2;
    }
    return {x, base};
}

// The narrowest width in which the words stand in `count` lines, and where the lines break.
struct Breaking {
    QStringList lines;
    double width = 0;
};

double lineWidth(const QString& line, const QFontMetricsF& metrics) {
    return eachRun(line, metrics, [](double, const QString&) {});
}

// Word by word from the end: the best that the words from there on can do in so many lines follows
// from what those behind the first line can do in one less. Trying every way would take seconds for
// a paragraph.
Breaking broken(const QStringList& words, int count, const QFontMetricsF& metrics) {
    const auto size = static_cast<std::size_t>(words.size());
    const double space = lineWidth(QStringLiteral(" "), metrics);
    std::vector<double> upTo{0}; // each word with a blank behind it
    for (const QString& word : words) {
        upTo.push_back(upTo.back() + lineWidth(word, metrics) + space);
    }
    struct Best {
        double width = 0;
        std::size_t end = 0; // of the first line
    };
    const auto alone = [&](std::size_t from) { return Best{upTo[size] - upTo[from], size}; };
    std::vector<std::vector<Best>> best{
        std::vector<Best>(size)}; // by lines, less one, and first word
    for (std::size_t from = 0; from < size; ++from) {
        best.front()[from] = alone(from);
    }
    for (int lines = 2; lines <= count; ++lines) {
        const std::vector<Best>& fewer = best.back();
        std::vector<Best> now(size);
        for (std::size_t from = 0; from < size; ++from) {
            now[from] = from + 1 == size ? alone(from)
                                         : Best{std::numeric_limits<double>::infinity(), size};
            for (std::size_t end = from + 1; end < size; ++end) {
                const double width = std::max(fewer[end].width, upTo[end] - upTo[from]);
                // <=: of equally wide ones the longer first line
                if (width <= now[from].width) {
                    now[from] = {width, end};
                }
            }
        }
        best.push_back(std::move(now));
    }
    Breaking out;
    std::size_t from = 0;
    for (auto lines = best.rbegin(); lines != best.rend() && from < size; ++lines) {
        const std::size_t end = (*lines)[from].end;
        out.lines << words.mid(static_cast<qsizetype>(from), static_cast<qsizetype>(end - from))
                         .join(QLatin1Char(' '));
        out.width = std::max(out.width, lineWidth(out.lines.back(), metrics));
        from = end;
    }
    return out;
}

} // namespace

QFont partFont(double pixelSize, QFont::Weight weight) {
    QFont font;
    font.setFamilies({QStringLiteral("Inter"), QStringLiteral("DejaVu Sans")});
    font.setPixelSize(static_cast<int>(pixels(pixelSize)));
    font.setWeight(weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

double tabularWidth(const QString& text, double pixelSize, QFont::Weight weight) {
    return eachRun(text, QFontMetricsF(partFont(pixelSize, weight)), [](double, const QString&) {});
}

double textWidth(const QString& text, double pixelSize, QFont::Weight weight) {
    return QFontMetricsF(partFont(pixelSize, weight)).horizontalAdvance(text);
}

void drawTabular(
    QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text,
    double pixelSize, QFont::Weight weight) {
    const QFont font = partFont(pixelSize, weight);
    const QFontMetricsF metrics(font);
    const double width = eachRun(text, metrics, [](double, const QString&) {});
    const QPointF start = startOf(box, alignment, width, metrics);
    painter.setFont(font);
    eachRun(text, metrics, [&](double x, const QString& run) {
        painter.drawText(start + QPointF(x, 0), run);
    });
}

void drawLine(
    QPainter& painter, const QRectF& box, Qt::Alignment alignment, const QString& text,
    double pixelSize, QFont::Weight weight) {
    const QFont font = partFont(pixelSize, weight);
    const QFontMetricsF metrics(font);
    painter.setFont(font);
    painter.drawText(startOf(box, alignment, metrics.horizontalAdvance(text), metrics), text);
}

double
fittedSize(const QString& text, double wanted, double floor, double width, QFont::Weight weight) {
    double size = std::max(wanted, floor);
    const double first = pixels(size);
    const double widest = textWidth(text, size, weight);
    double now = widest;
    while (size > floor && now > width) {
        do {
            size = std::max(floor, size - 1);
        } while (size > floor && isFarTooWide(widest * pixels(size) / first, width));
        now = textWidth(text, size, weight);
    }
    return size;
}

Wrapped wrapped(
    const QString& text, double wanted, double floor, double width, int most, QFont::Weight weight,
    double height) {
    const QStringList words = text.split(QLatin1Char(' '), Qt::SkipEmptyParts);
    Wrapped result;
    result.size = wanted;
    if (words.isEmpty()) {
        return result;
    }
    const int lines = std::clamp(most, 1, static_cast<int>(std::min<qsizetype>(words.size(), 8)));
    const auto highEnough = [&](int count, double size) {
        return height <= 0 || size * (kCapHeight + kLineHeight * (count - 1)) <= height + 0.5;
    };
    const double first = pixels(std::max(wanted, floor));
    std::vector<double> widest; // at the first size, by lines
    const auto isFarOff = [&](double size) {
        for (int count = 1; count <= lines; ++count) {
            const double about = widest[static_cast<std::size_t>(count) - 1] * pixels(size) / first;
            if (!isFarTooWide(about, width) && highEnough(count, size)) {
                return false;
            }
        }
        return true;
    };
    for (double size = std::max(wanted, floor);; size = std::max(floor, size - 1)) {
        if (!widest.empty() && size > floor && isFarOff(size)) {
            continue;
        }
        const bool measures = widest.empty();
        const QFontMetricsF metrics(partFont(size, weight));
        for (int count = 1; count <= lines; ++count) {
            const Breaking breaking = broken(words, count, metrics);
            if (measures) {
                widest.push_back(breaking.width);
            }
            if (breaking.width <= width && highEnough(count, size)) {
                result.lines = breaking.lines;
                result.size = size;
                return result;
            }
        }
        if (size <= floor) {
            break;
        }
    }
    int count = lines;
    while (count > 1 && !highEnough(count, floor)) {
        --count;
    }
    const QFontMetricsF metrics(partFont(floor, weight));
    result.size = floor;
    result.fits = false;
    for (const QString& line : broken(words, count, metrics).lines) {
        result.lines << metrics.elidedText(line, Qt::ElideRight, width);
    }
    return result;
}

double wrappedHeight(const Wrapped& text) {
    if (text.lines.isEmpty()) {
        return 0;
    }
    return text.size * (kCapHeight + kLineHeight * static_cast<double>(text.lines.size() - 1));
}

void drawWrapped(
    QPainter& painter, const QRectF& box, Qt::Alignment alignment, const Wrapped& text,
    QFont::Weight weight) {
    const double height = wrappedHeight(text);
    double top = box.top();
    if (alignment & Qt::AlignBottom) {
        top = box.bottom() - height;
    } else if (alignment & Qt::AlignVCenter) {
        top = box.center().y() - height / 2;
    }
    const Qt::Alignment across = (alignment & Qt::AlignHorizontal_Mask) | Qt::AlignTop;
    for (const QString& line : text.lines) {
        drawTabular(
            painter, QRectF(box.left(), top, box.width(), text.size), across, line, text.size,
            weight);
        top += text.size * kLineHeight;
    }
}

} // namespace seamclock
