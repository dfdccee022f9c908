#include "app/parts/number_pad.h"

#include <algorithm>

#include <QCoreApplication>
#include <QPainter>
#include <QResizeEvent>

#include "app/parts/brush.h"
#include "app/parts/type.h"

namespace seamclock {

namespace {

constexpr int kColumns = 3;
constexpr int kRows = 4;
constexpr double kKeyGap = 13;
constexpr std::size_t kEraseKey = 9;
constexpr std::size_t kZeroKey = 10;
constexpr std::size_t kDecimalKey = 11;

} // namespace

NumberField::NumberField(QWidget* parent) : Part(QStringLiteral("number_field"), parent) {}

void NumberField::show(const NumberView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken(
        {view.title, view.where, (view.text + QLatin1Char(' ') + view.unit).trimmed(),
         view.allowed}));
    update();
}

void NumberField::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    const Theme& look = theme();
    const Field normal = look.tone(Tone::Normal);
    const Field act = look.tone(Tone::Act);
    const Field late = look.tone(Tone::Late);
    drawPanel(painter, box, px(14), look.panel, Qt::transparent, 0);

    const QRectF inner = box.adjusted(px(20), px(18), -px(20), -px(12));
    double y = inner.top();
    const Wrapped title =
        wrapped(m_view.title, textPx(35), px(20), inner.width(), 1, kWordWeight, px(42));
    const double titleHeight = std::max(wrappedHeight(title), px(40));
    painter.setPen(look.text);
    drawWrapped(
        painter, QRectF(inner.left(), y, inner.width(), titleHeight),
        Qt::AlignLeft | Qt::AlignVCenter, title, kWordWeight);
    y += titleHeight + (metrics().text > 1 ? px(12) : 0); // larger lines need more between them
    // Where there is no room for the range as a bar, or it has one end only, its words stand here.
    const bool ranged =
        m_view.low && m_view.high && *m_view.high > *m_view.low && inner.height() > px(270);
    const QString asked = ranged || m_view.allowed.isEmpty()
                              ? m_view.where
                              : m_view.where + QStringLiteral(" · ") + m_view.allowed;
    const Wrapped where =
        wrapped(asked, textPx(27), px(17), inner.width(), 2, kPlainWeight, px(60));
    const double whereHeight = std::max(wrappedHeight(where), px(20)) + px(22);
    painter.setPen(look.textSoft);
    drawWrapped(
        painter, QRectF(inner.left(), y, inner.width(), whereHeight),
        Qt::AlignLeft | Qt::AlignVCenter, where, kPlainWeight);
    y += whereHeight + px(6);

    // where the field is low the range's bar goes first, then the places; the number never
    const double rangeHeight = ranged ? px(120) : 0;
    double left = inner.bottom() - y - rangeHeight;
    if (!m_view.places.empty() && left > px(150)) {
        const double height = std::min(px(98), left * 0.36);
        const QRectF row(inner.left(), y, inner.width(), height);
        drawPanel(painter, row, px(10), look.raised, look.edge, px(3));
        const auto count = static_cast<double>(m_view.places.size());
        for (std::size_t i = 0; i < m_view.places.size(); ++i) {
            const NumberView::Place& place = m_view.places[i];
            const QRectF cell(
                row.left() + row.width() * static_cast<double>(i) / count, row.top(),
                row.width() / count, row.height());
            const double side = std::min(height * 0.68, cell.width() - px(8));
            if (place.done) {
                const double mark = px(34);
                const double room = cell.width() - mark - px(34);
                const Wrapped text = wrapped(place.text, textPx(30), px(14), room, 1, kWordWeight);
                const double width = tabularWidth(text.lines.value(0), text.size, kWordWeight);
                const double start = cell.center().x() - (mark + px(10) + width) / 2;
                paintMark(
                    painter, QRectF(start, cell.center().y() - mark / 2, mark, mark), Mark::Done,
                    normal.ink, look);
                painter.setPen(look.text);
                drawWrapped(
                    painter, QRectF(start + mark + px(10), cell.top(), room, cell.height()),
                    Qt::AlignLeft | Qt::AlignVCenter, text, kWordWeight);
                continue;
            }
            painter.setPen(place.now ? QPen(Qt::NoPen) : QPen(look.edge, px(3)));
            painter.setBrush(place.now ? QBrush(act.field) : QBrush(Qt::NoBrush));
            const double radius = side / 2 - (place.now ? 0 : px(3));
            painter.drawEllipse(cell.center(), radius, radius);
            painter.setPen(place.now ? act.on : look.textSoft);
            const QFont::Weight weight = place.now ? kWordWeight : kLabelWeight;
            const double size =
                fittedSize(place.text, px(place.now ? 36 : 30), px(12), side * 0.8, weight);
            drawTabular(
                painter, cell, Qt::AlignHCenter | Qt::AlignVCenter, place.text, size, weight);
        }
        y += height + px(20);
        left = inner.bottom() - y - rangeHeight;
    }

    // the number, with a caret after it
    const QRectF field(inner.left(), y, inner.width(), std::min(left - px(8), px(190)));
    const bool out = m_view.mark == Mark::Late;
    drawPanel(
        painter, field, px(14), look.kind == ThemeKind::Light ? look.ground : look.raised,
        out ? late.ink : act.ink, px(5));
    double numberLeft = field.left() + px(28);
    const double markSide = px(52);
    if (m_view.mark) {
        paintMark(
            painter,
            QRectF(numberLeft - px(4), field.center().y() - markSide / 2, markSide, markSide),
            *m_view.mark, out ? late.ink : normal.ink, look);
    }
    numberLeft += markSide + px(14);
    double size = std::min(px(138), (field.height() - px(40)) / kCapHeight);
    const double unitSize = px(64);
    const double unitWidth = textWidth(m_view.unit, unitSize, kLabelWeight);
    const double caret = px(6);
    const double tail = px(16) + caret + px(22) + unitWidth;
    const double room = field.right() - px(16) - numberLeft - tail;
    while (size > px(30) && tabularWidth(m_view.text, size, kNumberWeight) > room) {
        size -= 1;
    }
    const double own = tabularWidth(m_view.text, size, kNumberWeight);
    const double start = std::max(
        numberLeft, std::min(field.center().x() - px(20) - own / 2, numberLeft + room - own));
    const double base = field.center().y() + size * kCapHeight / 2;
    painter.setPen(look.text);
    drawTabular(
        painter, QRectF(start, base - size, own, size), Qt::AlignLeft | Qt::AlignBottom,
        m_view.text, size, kNumberWeight);
    const double caretX = start + own + px(14);
    const double caretHigh = std::min(px(104), field.height() - px(30));
    painter.fillRect(
        QRectF(caretX, field.center().y() - caretHigh / 2, caret, caretHigh),
        out ? late.ink : act.ink);
    drawLine(
        painter, QRectF(caretX + caret + px(22), base - size, unitWidth, size),
        Qt::AlignLeft | Qt::AlignBottom, m_view.unit, unitSize, kLabelWeight);
    if (!ranged) {
        return;
    }

    // the allowed range in the middle half of a bar, the typed number's triangle over it
    const double rangeTop = inner.bottom() - rangeHeight;
    const QRectF bar(inner.left() + px(40), rangeTop + px(54), inner.width() - px(80), px(24));
    const double low = bar.left() + bar.width() * 0.25;
    const double high = bar.left() + bar.width() * 0.75;
    const auto xOf = [&](double value) {
        const double x = low + (value - *m_view.low) / (*m_view.high - *m_view.low) * (high - low);
        return bounded(x, bar.left(), bar.right());
    };
    const Wrapped allowed = wrapped(
        m_view.allowed, std::min(textPx(25), px(30)), px(16), inner.width() * 0.9, 1, kWordWeight,
        px(28));
    painter.setPen(look.text);
    drawWrapped(
        painter, QRectF(inner.left(), rangeTop + px(4), inner.width(), px(26)),
        Qt::AlignLeft | Qt::AlignVCenter, allowed, kWordWeight);
    drawPanel(painter, bar, px(5), look.raised, look.edge, px(2));
    drawPanel(
        painter, QRectF(low, bar.top(), high - low, bar.height()), px(2), normal.field, normal.ink,
        px(3));
    if (m_view.target) {
        painter.fillRect(
            QRectF(xOf(*m_view.target) - px(1.5), bar.top(), px(3), bar.height()), normal.ink);
    }
    if (m_view.value) {
        const double x = xOf(*m_view.value);
        QPainterPath triangle(QPointF(x - px(14), bar.top() - px(22)));
        triangle.lineTo(x + px(14), bar.top() - px(22));
        triangle.lineTo(x, bar.top() + px(2));
        triangle.closeSubpath();
        painter.fillPath(triangle, out ? late.ink : look.text);
    }
    const double figureTop = bar.bottom() + px(10);
    const auto figure = [&](const QString& text, double x) {
        const double most = (high - low) / 2 - px(8);
        double fit = std::min(textPx(24), px(34));
        while (fit > px(12) && tabularWidth(text, fit, kWordWeight) > most) {
            fit -= 1;
        }
        painter.setPen(look.text);
        drawTabular(
            painter, QRectF(x - px(100), figureTop, px(200), px(26)),
            Qt::AlignHCenter | Qt::AlignVCenter, text, fit, kWordWeight);
    };
    figure(m_view.lowText, low);
    figure(m_view.highText, high);
    if (m_view.target) {
        const double x = xOf(*m_view.target);
        // a target at the range's end would write over that end's figure
        if (x - low > px(70) && high - x > px(70)) {
            figure(m_view.targetText, x);
        }
    }
    painter.setPen(look.textSoft);
    const double endRoom = low - inner.left() - px(60);
    const Wrapped below =
        wrapped(m_view.below, std::min(textPx(23), px(32)), px(13), endRoom, 1, kPlainWeight);
    drawWrapped(
        painter, QRectF(inner.left(), figureTop, endRoom, px(26)), Qt::AlignLeft | Qt::AlignVCenter,
        below, kPlainWeight);
    const Wrapped above =
        wrapped(m_view.above, std::min(textPx(23), px(32)), px(13), endRoom, 1, kPlainWeight);
    drawWrapped(
        painter, QRectF(inner.right() - endRoom, figureTop, endRoom, px(26)),
        Qt::AlignRight | Qt::AlignVCenter, above, kPlainWeight);
}

NumberPad::NumberPad(QChar decimalSign, QWidget* parent)
    : Part(QStringLiteral("number_pad"), parent), m_decimal(decimalSign) {
    for (std::size_t i = 0; i < m_keys.size(); ++i) {
        QString name = QStringLiteral("key_") + QString::number(i + 1);
        if (i == kEraseKey) {
            name = QStringLiteral("key_erase");
        } else if (i == kZeroKey) {
            name = QStringLiteral("key_0");
        } else if (i == kDecimalKey) {
            name = QStringLiteral("key_decimal");
        }
        m_keys[i] = new SlotButton(name, this);
        connect(m_keys[i], &PressPart::pressed, this, [this, i] {
            if (i == kEraseKey) {
                erase();
            } else if (i == kDecimalKey) {
                type(m_decimal);
            } else {
                const int digit = i == kZeroKey ? 0 : static_cast<int>(i) + 1;
                type(QChar(static_cast<char16_t>(u'0' + digit)));
            }
        });
    }
    showKeys();
}

void NumberPad::setText(const QString& text) {
    m_text.clear();
    for (QChar sign : text) {
        if (mayType(sign)) {
            m_text += sign;
        }
    }
}

void NumberPad::setDecimalSign(QChar decimalSign) {
    m_text.replace(m_decimal, decimalSign);
    m_decimal = decimalSign;
    showKeys();
}

void NumberPad::setDecimals(int most) {
    m_decimals = std::max(most, 0);
    showKeys();
}

void NumberPad::setMostDigits(int most) {
    m_mostDigits = std::max(most, 1);
}

void NumberPad::setEraseName(const QString& name) {
    m_eraseName = name;
    showKeys();
}

void NumberPad::setForgetful() {
    m_forgetful = true;
    m_text.clear();
    setDecimals(0);
}

bool NumberPad::mayType(QChar sign) const {
    const qsizetype decimal = m_text.indexOf(m_decimal);
    if (sign == m_decimal) {
        return m_decimals > 0 && decimal < 0;
    }
    if (sign < QLatin1Char('0') || sign > QLatin1Char('9')) {
        return false;
    }
    const qsizetype digits = m_text.size() - (decimal < 0 ? 0 : 1);
    const bool decimalsLeft = decimal < 0 || m_text.size() - decimal - 1 < m_decimals;
    return digits < m_mostDigits && decimalsLeft;
}

void NumberPad::type(QChar digitOrSign) {
    // A keyboard's point is meant where the language writes a comma, and the other way round.
    if (digitOrSign == QLatin1Char('.') || digitOrSign == QLatin1Char(',')) {
        digitOrSign = m_decimal;
    }
    if (!mayType(digitOrSign)) {
        return;
    }
    if (m_forgetful) {
        emit digitTyped(digitOrSign);
        return;
    }
    // "05" is never meant, and ".5" reads better as "0.5"
    if (m_text == QLatin1String("0") && digitOrSign != m_decimal) {
        m_text.clear();
    }
    if (m_text.isEmpty() && digitOrSign == m_decimal) {
        m_text = QLatin1Char('0');
    }
    m_text += digitOrSign;
    emit textChanged(m_text);
}

void NumberPad::erase() {
    if (m_forgetful) {
        emit eraseTyped();
        return;
    }
    if (m_text.isEmpty()) {
        return;
    }
    m_text.chop(1);
    emit textChanged(m_text);
}

void NumberPad::resizeEvent(QResizeEvent*) {
    place();
}

void NumberPad::lookChanged() {
    for (SlotButton* key : m_keys) {
        key->setLook(theme(), metrics());
    }
    place();
}

void NumberPad::place() {
    const double gap = px(kKeyGap);
    const double width = (this->width() - gap * (kColumns - 1)) / kColumns;
    const double height = (this->height() - gap * (kRows - 1)) / kRows;
    for (std::size_t i = 0; i < m_keys.size(); ++i) {
        const auto column = static_cast<double>(i % kColumns);
        const std::size_t below = i / kColumns;
        const auto row = static_cast<double>(below);
        const QRectF key(column * (width + gap), row * (height + gap), width, height);
        m_keys[i]->setGeometry(key.toRect());
    }
}

void NumberPad::showKeys() {
    for (std::size_t i = 0; i < m_keys.size(); ++i) {
        SlotView view;
        view.look = SlotView::Look::Key;
        view.large = true;
        if (i == kEraseKey) {
            view.sign = Sign::Erase;
            view.accessible = m_eraseName;
        } else if (i == kDecimalKey) {
            view.text = m_decimal;
            view.accessible =
                QCoreApplication::translate("NumberPad", "decimal sign %1").arg(m_decimal);
            view.look = m_decimals > 0 ? SlotView::Look::Key : SlotView::Look::Hidden;
        } else {
            view.text = QString::number(i == kZeroKey ? 0 : i + 1);
        }
        m_keys[i]->show(view);
    }
}

} // namespace seamclock
