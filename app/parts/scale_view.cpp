#include "app/parts/scale_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include <QLocale>
#include <QPainter>

#include "app/parts/brush.h"
#include "app/parts/type.h"

namespace seamclock {

namespace {

constexpr double kMostMajors = 5.6; // lines with a figure in the window

struct Window {
    double low = 0;
    double high = 1;
    double step = 1; // between lines with a figure
};

double niceStep(double least) {
    const double power = std::pow(10, std::floor(std::log10(least)));
    for (double factor : {1.0, 2.0, 5.0}) {
        if (factor * power >= least * 0.999) {
            return factor * power;
        }
    }
    return 10 * power;
}

// As much of the scale as holds band, set point and readings, the set point about in its middle.
Window windowOf(const ScaleView& view) {
    Window window;
    const double zero = std::min(view.zero, view.max);
    const double max = std::max(view.zero, view.max);
    if (view.free || view.high < view.low) {
        window.low = zero;
        window.high = std::max(max, zero + 1e-6);
        window.step = niceStep(std::max((window.high - zero) / kMostMajors, view.division));
        return window;
    }
    double low = std::min(view.low, view.set);
    double high = std::max(view.high, view.set);
    for (double reading : view.readings) {
        low = std::min(low, reading);
        high = std::max(high, reading);
    }
    const double division = view.division > 0 ? view.division : 1;
    const double span = std::max((high - low) * 1.35, division * 4);
    window.step = std::max(niceStep(span / kMostMajors), division);
    const double whole = window.step * kMostMajors;
    const double pad = window.step * 0.3;
    const double middle = (low + high) / 2;
    window.low = middle - whole / 2;
    window.high = middle + whole / 2;
    if (window.low < zero - pad) {
        window.high += zero - pad - window.low;
        window.low = zero - pad;
    }
    if (window.high > max + pad) {
        window.low = std::max(zero - pad, window.low - (window.high - max - pad));
        window.high = max + pad;
    }
    return window;
}

QString figure(double value, double step) {
    const int decimals = std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 1e-9)), 0, 3);
    // no "-0"
    const double shown = std::abs(value) < step * 1e-6 ? 0.0 : value;
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    const QString text = locale.toString(shown, 'f', decimals);
    return shown < 0 ? QString(text).replace(QLatin1Char('-'), QChar(0x2212)) : text;
}

} // namespace

ScalePanel::ScalePanel(QWidget* parent) : Part(QStringLiteral("scale"), parent) {}

void ScalePanel::show(const ScaleView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    QString band;
    if (!view.free && !view.lowText.isEmpty() && !view.highText.isEmpty()) {
        band = view.lowText + QStringLiteral(" – ") + view.highText;
    }
    setAccessibleName(spoken({view.title, view.value + QLatin1Char(' ') + view.unit, band}));
    update();
}

void ScalePanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    const Theme& look = theme();
    drawPanel(painter, box, px(14), look.panel, Qt::transparent, 0);

    const double inner = box.width() - px(36);
    painter.setPen(look.textSoft);
    const Wrapped title = wrapped(m_view.title, textPx(24), px(16), inner, 1, kPlainWeight, px(30));
    drawWrapped(
        painter, QRectF(px(18), px(14), inner, px(32)), Qt::AlignLeft | Qt::AlignVCenter, title,
        kPlainWeight);

    // value and unit on one line
    const bool withUnit = !m_view.unit.isEmpty() && !m_view.free;
    const double unitSize = px(24);
    const double unitWidth = withUnit ? textWidth(m_view.unit, unitSize, kLabelWeight) + px(8) : 0;
    double size = px(62);
    while (size > px(20) &&
           tabularWidth(m_view.value, size, kNumberWeight) + unitWidth > inner + px(6)) {
        size -= 1;
    }
    const double own = tabularWidth(m_view.value, size, kNumberWeight);
    painter.setPen(look.text);
    const QRectF line(px(18), px(54), box.width(), px(50));
    drawTabular(painter, line, Qt::AlignLeft | Qt::AlignBottom, m_view.value, size, kNumberWeight);
    if (withUnit) {
        drawLine(
            painter, line.translated(own + px(8), 0), Qt::AlignLeft | Qt::AlignBottom, m_view.unit,
            unitSize, kLabelWeight);
    }
    if (!m_view.hasScale) {
        return;
    }

    const QRectF bar(px(56), px(128), px(50), box.height() - px(128 + 16));
    const Window window = windowOf(m_view);
    const auto yOf = [&](double value) {
        return bar.bottom() - px(4) -
               (value - window.low) / (window.high - window.low) * (bar.height() - px(8));
    };
    drawPanel(painter, bar, px(6), look.raised, look.edge, px(2));
    const Field normal = look.tone(Tone::Normal);
    const bool band = !m_view.free && m_view.high >= m_view.low;
    const double yHigh = bounded(yOf(m_view.high), bar.top(), bar.bottom());
    const double yLow = bounded(yOf(m_view.low), bar.top(), bar.bottom());
    if (band) {
        painter.fillRect(
            QRectF(bar.left() + px(2), yHigh, bar.width() - px(4), yLow - yHigh),
            mixed(look.raised, normal.ink, 0.28));
    }

    // the scale's own lines
    const double first = std::ceil((window.low - 1e-9) / window.step) * window.step;
    const double figureSize = std::min(textPx(22), px(26));
    const auto inside = [&](double value) {
        return value >= std::min(m_view.zero, m_view.max) - window.step * 1e-6 &&
               value <= std::max(m_view.zero, m_view.max) + window.step * 1e-6;
    };
    const double half = window.step / 2;
    const bool halves = half >= m_view.division * 0.499;
    // Figures stand on as many lines as leave room between them.
    const double pitch = std::abs(yOf(window.step) - yOf(0));
    const auto every = std::max(1LL, std::llround(std::ceil(px(20) / std::max(pitch, 0.01))));
    for (int i = -1; first + i * window.step <= window.high + 1e-9; ++i) {
        const double value = first + i * window.step;
        if (value >= window.low - 1e-9 && inside(value)) {
            painter.setPen(QPen(look.text, px(3), Qt::SolidLine, Qt::FlatCap));
            const double y = yOf(value);
            painter.drawLine(QPointF(bar.left(), y), QPointF(bar.left() + px(26), y));
            if (std::llround(value / window.step) % every == 0) {
                painter.setPen(look.text);
                const QString text = figure(value, window.step);
                double fit = figureSize;
                while (fit > px(12) && tabularWidth(text, fit, kLabelWeight) > px(42)) {
                    fit -= 1;
                }
                drawTabular(
                    painter, QRectF(px(2), y - px(12), px(44), px(24)),
                    Qt::AlignRight | Qt::AlignVCenter, text, fit, kLabelWeight);
            }
        }
        const double between = value + half;
        if (halves && between > window.low && between < window.high && inside(between)) {
            painter.setPen(QPen(look.text, px(2), Qt::SolidLine, Qt::FlatCap));
            const double y = yOf(between);
            painter.drawLine(QPointF(bar.left(), y), QPointF(bar.left() + px(15), y));
        }
    }
    if (!band) {
        return;
    }

    // bracket, with its ends' figures kept clear of the flag
    painter.setPen(QPen(normal.ink, px(4), Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
    painter.setBrush(Qt::NoBrush);
    const double outer = bar.right() + px(14);
    QPainterPath bracket(QPointF(bar.right() + px(3), yHigh));
    bracket.lineTo(outer, yHigh);
    bracket.lineTo(outer, yLow);
    bracket.lineTo(bar.right() + px(3), yLow);
    painter.drawPath(bracket);

    const double yFlag = bounded(yOf(m_view.set), bar.top(), bar.bottom());
    const double flagHeight = px(30);
    const double clear = flagHeight / 2 + px(15);
    const double labelLeft = outer + px(9);
    const double labelWidth = box.right() - labelLeft - px(4);
    const auto endFigure = [&](const QString& text, double y) {
        double fit = figureSize;
        while (fit > px(12) && tabularWidth(text, fit, kLabelWeight) > labelWidth) {
            fit -= 1;
        }
        painter.setPen(look.text);
        drawTabular(
            painter, QRectF(labelLeft, y - px(12), labelWidth, px(24)),
            Qt::AlignLeft | Qt::AlignVCenter, text, fit, kLabelWeight);
    };
    endFigure(m_view.highText, std::min(yHigh, yFlag - clear));
    // At the scale's foot there may be no room below the flag: the scale's own figures tell it
    // there.
    if (yFlag + clear <= box.bottom() - px(14)) {
        endFigure(m_view.lowText, std::min(std::max(yLow, yFlag + clear), box.bottom() - px(14)));
    }

    for (double reading : m_view.readings) {
        const double y = bounded(yOf(reading), bar.top(), bar.bottom());
        const double x = bar.right() - px(13);
        const double r = px(8.5);
        QPainterPath diamond(QPointF(x, y - r));
        diamond.lineTo(x + r, y);
        diamond.lineTo(x, y + r);
        diamond.lineTo(x - r, y);
        diamond.closeSubpath();
        painter.setPen(QPen(look.raised, px(2)));
        painter.setBrush(look.text);
        painter.drawPath(diamond);
    }

    const double tip = bar.right() + px(6);
    const double body = tip + px(12);
    const double flagRight = box.right() - px(16);
    QPainterPath flag(QPointF(tip, yFlag));
    flag.lineTo(body, yFlag - flagHeight / 2);
    flag.lineTo(flagRight, yFlag - flagHeight / 2);
    flag.lineTo(flagRight, yFlag + flagHeight / 2);
    flag.lineTo(body, yFlag + flagHeight / 2);
    flag.closeSubpath();
    painter.setPen(roundPen(look.panel, px(6)));
    painter.setBrush(look.text);
    painter.drawPath(flag);
    painter.setPen(roundPen(look.text, px(2)));
    painter.drawPath(flag);
    painter.setPen(look.panel);
    const double room = flagRight - body - px(6);
    const Wrapped set =
        wrapped(m_view.setText, std::min(textPx(22), px(24)), px(12), room, 1, kWordWeight);
    drawWrapped(
        painter, QRectF(body, yFlag - flagHeight / 2, flagRight - body, flagHeight),
        Qt::AlignHCenter | Qt::AlignVCenter, set, kWordWeight);
}

} // namespace seamclock
