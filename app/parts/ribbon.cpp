#include "app/parts/ribbon.h"

#include <algorithm>

#include <QPainter>

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/type.h"

namespace seamclock {

namespace {

using Piece = RibbonView::Piece;
using Is = RibbonView::Piece::Is;

constexpr double kSignWidth = 54;
constexpr double kSlashes = 24;
constexpr double kGap = 2;
constexpr double kMarkerRoom = 13; // above the pieces, for the marker's triangle

// How the pieces' words are set: full, names alone, or smaller.
struct Setting {
    bool times = true;
    double size = 24;
};

double wordsWidth(const Piece& piece, const Setting& setting) {
    double width = textWidth(piece.name, setting.size, kLabelWeight);
    if (setting.times && !piece.time.isEmpty()) {
        width += setting.size * 0.5 + tabularWidth(piece.time, setting.size, kPlainWeight);
    }
    return width;
}

bool hasMark(const Piece& piece) {
    return !piece.sign && (piece.is == Is::Done || piece.is == Is::Late);
}

double leastWidth(const Piece& piece, const Setting& setting, const Metrics& metrics) {
    if (piece.sign) {
        return metrics.px(kSignWidth);
    }
    const double mark = hasMark(piece) ? metrics.px(40) : 0;
    return wordsWidth(piece, setting) + mark + metrics.px(32);
}

// Each by its weight, none below its least: those below are set first, the rest is shared anew.
std::vector<double>
shared(const std::vector<Piece>& pieces, std::vector<double> least, double room) {
    std::vector<bool> fixed(pieces.size(), false);
    for (bool again = true; again;) {
        again = false;
        double left = room;
        double weights = 0;
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            left -= fixed[i] ? least[i] : 0;
            weights += fixed[i] ? 0 : std::max(pieces[i].weight, 1e-6);
        }
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            const double share =
                weights > 0 ? left * std::max(pieces[i].weight, 1e-6) / weights : 0;
            if (!fixed[i] && share < least[i]) {
                fixed[i] = true;
                again = true;
            }
        }
        if (!again) {
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                if (!fixed[i]) {
                    least[i] = left * std::max(pieces[i].weight, 1e-6) / weights;
                }
            }
        }
    }
    return least;
}

double sum(const std::vector<double>& values) {
    double all = 0;
    for (double value : values) {
        all += value;
    }
    return all;
}

} // namespace

Ribbon::Ribbon(QWidget* parent) : Part(QStringLiteral("ribbon"), parent) {}

void Ribbon::show(const RibbonView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    QStringList words;
    for (const Piece& piece : view.pieces) {
        words << (piece.name + QLatin1Char(' ') + piece.time).trimmed();
    }
    setAccessibleName(spoken(words));
    update();
}

void Ribbon::paintEvent(QPaintEvent*) {
    if (m_view.pieces.empty()) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    const Theme& look = theme();

    double room = box.width();
    for (std::size_t i = 0; i < m_view.pieces.size(); ++i) {
        room -= i == 0 ? 0 : px(m_view.pieces[i].brokenBefore ? kSlashes + 2 * kGap : kGap);
    }
    // what fits: names with times, names alone, then smaller names
    Setting setting{true, std::min(textPx(24), px(30))};
    std::vector<double> least;
    const auto measure = [&] {
        least.clear();
        for (const Piece& piece : m_view.pieces) {
            least.push_back(leastWidth(piece, setting, metrics()));
        }
        return sum(least) <= room;
    };
    bool fits = measure();
    if (!fits && setting.size > px(24)) {
        setting.size = px(24);
        fits = measure();
    }
    if (!fits) {
        setting.times = false;
        fits = measure();
    }
    while (!fits && setting.size > px(11)) {
        setting.size -= 1;
        fits = measure();
    }
    const std::vector<double> widths = shared(m_view.pieces, least, room);

    const double top = box.top() + px(kMarkerRoom);
    const double height = box.height() - px(kMarkerRoom + 2);
    double x = box.left();
    double markerX = -1;
    for (std::size_t i = 0; i < m_view.pieces.size(); ++i) {
        const Piece& piece = m_view.pieces[i];
        if (i > 0 && piece.brokenBefore) {
            painter.setPen(QPen(look.edge, px(3), Qt::SolidLine, Qt::RoundCap));
            for (double step : {0.0, 9.0}) {
                const double foot = x + px(kGap + 3 + step);
                painter.drawLine(
                    QPointF(foot, top + height + px(1)), QPointF(foot + px(8), top - px(3)));
            }
            x += px(kSlashes + 2 * kGap);
        } else if (i > 0) {
            x += px(kGap);
        }
        const QRectF cell(x, top, widths[i], height);
        x += widths[i];

        const Field normal = look.tone(Tone::Normal);
        const Field late = look.tone(Tone::Late);
        QColor ink = look.text;
        double marker = -1;
        switch (piece.is) {
        case Is::Done:
            drawPanel(painter, cell, px(8), normal.field, normal.ink, px(2));
            ink = normal.on;
            break;
        case Is::Late:
            drawPanel(painter, cell, px(8), late.field, late.ink, px(2));
            ink = late.on;
            break;
        case Is::Ahead:
            drawPanel(painter, cell, px(8), look.raised, look.edge, px(2));
            break;
        case Is::Now: {
            const double part = std::clamp(piece.fraction, 0.0, 1.0);
            marker = cell.left() + part * cell.width();
            QPainterPath rounded;
            rounded.addRoundedRect(cell, px(8), px(8));
            painter.save();
            painter.setClipPath(rounded);
            painter.fillRect(cell, look.raised);
            painter.fillRect(
                QRectF(cell.left(), cell.top(), part * cell.width(), cell.height()), normal.field);
            painter.restore();
            drawPanel(painter, cell, px(8), Qt::transparent, look.text, px(4));
            markerX = marker;
            break;
        }
        }

        if (piece.sign) {
            const double side = std::min(px(46), cell.width() - px(8));
            QRectF place(0, 0, side, height * 0.62);
            place.moveCenter(cell.center());
            paintSign(painter, place, *piece.sign, ink);
            continue;
        }
        double left = cell.left() + px(16);
        if (hasMark(piece)) {
            paintMark(
                painter, QRectF(left, cell.center().y() - px(14), px(28), px(28)),
                piece.is == Is::Done ? Mark::Done : Mark::Late,
                piece.is == Is::Done ? normal.ink : late.on, look);
            left += px(40);
        }
        const double wide = wordsWidth(piece, setting);
        if (marker >= 0 && marker > left - px(10) && marker < left + wide + px(10) &&
            marker + px(22) + wide < cell.right() - px(8)) {
            left = marker + px(22);
        }
        painter.setPen(ink);
        const QRectF line(left, cell.top(), wide, cell.height());
        drawLine(
            painter, line, Qt::AlignLeft | Qt::AlignVCenter, piece.name, setting.size,
            kLabelWeight);
        if (setting.times) {
            const double name = textWidth(piece.name, setting.size, kLabelWeight);
            drawTabular(
                painter, line.translated(name + (piece.name.isEmpty() ? 0 : setting.size * 0.5), 0),
                Qt::AlignLeft | Qt::AlignVCenter, piece.time, setting.size, kPlainWeight);
        }
    }
    if (markerX >= 0) {
        const double at = std::clamp(markerX, box.left() + px(12), box.right() - px(12));
        painter.fillRect(QRectF(at - px(2.5), top - px(2), px(5), height + px(4)), look.text);
        QPainterPath triangle(QPointF(at - px(12), box.top()));
        triangle.lineTo(at + px(12), box.top());
        triangle.lineTo(at, box.top() + px(15));
        triangle.closeSubpath();
        painter.fillPath(triangle, look.text);
    }
}

CheckRow::CheckRow(QWidget* parent) : Part(QStringLiteral("check_row"), parent) {}

void CheckRow::show(const CheckRowView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    QStringList words;
    for (const CheckRowView::Cell& cell : view.cells) {
        words << cell.name;
    }
    setAccessibleName(spoken(words));
    update();
}

void CheckRow::paintEvent(QPaintEvent*) {
    const auto count = static_cast<int>(m_view.cells.size());
    if (count == 0) {
        return;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = rect();
    const Theme& look = theme();
    const double gap = px(4);

    double size = std::min(textPx(22), px(30));
    const auto widest = [&](double at) {
        double width = 0;
        for (const CheckRowView::Cell& cell : m_view.cells) {
            const double mark = cell.done || cell.overridden ? at * 1.45 : 0;
            width = std::max(
                width,
                textWidth(cell.name, at, cell.now ? kWordWeight : kLabelWeight) + mark + px(18));
        }
        return width;
    };
    // a long word shrinks before cells are left out, but not below what is read at arm's length
    const double whole = (box.width() - gap * (count - 1)) / count;
    while (size > px(19) && widest(size) > whole) {
        size -= 1;
    }
    const double dots = px(34);
    int shown = count;
    if (widest(size) > whole) {
        size = std::min(textPx(22), px(30));
        while (size > px(14) && widest(size) > box.width() - 2 * dots) {
            size -= 1;
        }
        shown = std::clamp(
            static_cast<int>((box.width() - 2 * dots + gap) / (widest(size) + gap)), 1, count);
    }
    int now = 0;
    for (int i = 0; i < count; ++i) {
        if (m_view.cells[static_cast<std::size_t>(i)].now) {
            now = i;
        }
    }
    const int first = std::clamp(now - shown / 2, 0, count - shown);
    const bool before = first > 0;
    const bool after = first + shown < count;
    double x = box.left() + (before ? dots : 0);
    const double room = box.width() - (before ? dots : 0) - (after ? dots : 0);
    const double width = (room - gap * (shown - 1)) / shown;
    const auto paintDots = [&](double from) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(look.textSoft);
        for (int i = 0; i < 3; ++i) {
            painter.drawEllipse(
                QPointF(from + px(6) + i * px(10), box.center().y()), px(2.6), px(2.6));
        }
    };
    if (before) {
        paintDots(box.left());
    }
    for (int i = first; i < first + shown; ++i) {
        const CheckRowView::Cell& cell = m_view.cells[static_cast<std::size_t>(i)];
        const QRectF place(x, box.top(), width, box.height());
        x += width + gap;
        const Field normal = look.tone(Tone::Normal);
        QColor ink = look.textSoft;
        QFont::Weight weight = kPlainWeight;
        if (cell.now) {
            drawPanel(painter, place, px(10), look.panel, look.text, px(4));
            ink = look.text;
            weight = kWordWeight;
        } else if (cell.done || cell.overridden) {
            const bool tick = cell.done && !cell.overridden;
            drawPanel(
                painter, place, px(10), tick ? normal.field : look.raised,
                tick ? normal.ink : look.tone(Tone::Soon).ink, px(2));
            ink = tick ? normal.on : look.text;
            weight = kLabelWeight;
        } else {
            drawPanel(painter, place, px(10), look.raised, look.edge, px(2));
        }
        const bool marked = !cell.now && (cell.done || cell.overridden);
        const double mark = marked ? size * 1.1 : 0;
        const double space = marked ? size * 0.3 : 0;
        const double text = textWidth(cell.name, size, weight);
        double left = place.center().x() - (mark + space + text) / 2;
        if (marked) {
            paintMark(
                painter, QRectF(left, place.center().y() - mark / 2, mark, mark),
                cell.overridden ? Mark::Trouble : Mark::Done, normal.ink, look);
            left += mark + space;
        }
        painter.setPen(ink);
        drawLine(
            painter, QRectF(left, place.top(), text, place.height()),
            Qt::AlignLeft | Qt::AlignVCenter, cell.name, size, weight);
    }
    if (after) {
        paintDots(box.right() - dots + px(4));
    }
}

} // namespace seamclock
