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
    bool wordsCrossed = false;
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
            const double part = bounded(piece.fraction, 0.0, 1.0);
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
        // beside the marker, never across it: left of it, right of it, the same without the time
        bool times = setting.times && !piece.time.isEmpty();
        if (marker >= 0) {
            const auto clear = [&](bool withTime) -> std::optional<double> {
                const double wide = wordsWidth(piece, {withTime, setting.size});
                if (left + wide + px(8) < marker || marker + px(8) < left) {
                    return left;
                }
                if (marker + px(16) + wide < cell.right() - px(6)) {
                    return marker + px(16);
                }
                return std::nullopt;
            };
            std::optional<double> at = clear(times);
            if (!at && times) {
                at = clear(false);
                times = !at;
            }
            left = at.value_or(left);
            wordsCrossed = !at;
        }
        painter.setPen(ink);
        const QRectF line(left, cell.top(), cell.right() - left, cell.height());
        drawLine(
            painter, line, Qt::AlignLeft | Qt::AlignVCenter, piece.name, setting.size,
            kLabelWeight);
        if (times) {
            const double name = textWidth(piece.name, setting.size, kLabelWeight);
            drawTabular(
                painter, line.translated(name + (piece.name.isEmpty() ? 0 : setting.size * 0.5), 0),
                Qt::AlignLeft | Qt::AlignVCenter, piece.time, setting.size, kPlainWeight);
        }
    }
    if (markerX >= 0) {
        const double at = bounded(markerX, box.left() + px(12), box.right() - px(12));
        // no room beside it for words: the line shows above and below them only
        const double reach = wordsCrossed ? height * 0.2 : height + px(4);
        painter.fillRect(QRectF(at - px(2.5), top - px(2), px(5), reach), look.text);
        painter.fillRect(
            QRectF(at - px(2.5), top + height + px(2) - reach, px(5), reach), look.text);
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

    const auto& cells = m_view.cells;
    double size = std::min(textPx(22), px(30));
    const auto needed = [&](std::size_t i, double at) {
        const CheckRowView::Cell& cell = cells[i];
        const double mark = !cell.now && (cell.done || cell.overridden) ? at * 1.4 : 0;
        return textWidth(cell.name, at, cell.now ? kWordWeight : kLabelWeight) + mark + px(18);
    };
    const auto widest = [&](double at) {
        double width = 0;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            width = std::max(width, needed(i, at));
        }
        return width;
    };
    // a long word shrinks before cells are left out, but not below what is read at arm's length
    const double whole = (box.width() - gap * (count - 1)) / count;
    while (size > px(19) && widest(size) > whole) {
        size -= 1;
    }
    int now = 0;
    for (int i = 0; i < count; ++i) {
        if (cells[static_cast<std::size_t>(i)].now) {
            now = i;
        }
    }
    const double dots = px(38);
    int first = 0;
    int shown = count;
    std::vector<double> widths(cells.size(), whole);
    if (widest(size) > whole) {
        // each as wide as its word, the current one first, then what comes, what was, and so on
        size = std::min(textPx(20), px(30));
        while (size > px(13) &&
               needed(static_cast<std::size_t>(now), size) > box.width() - 2 * dots) {
            size -= 1;
        }
        const double room = box.width() - 2 * dots;
        first = now;
        shown = 1;
        double used = needed(static_cast<std::size_t>(now), size);
        for (bool grown = true; grown;) {
            grown = false;
            for (int next : {first + shown, first - 1}) {
                if (next < 0 || next >= count) {
                    continue;
                }
                const double more = needed(static_cast<std::size_t>(next), size) + gap;
                if (used + more <= room) {
                    used += more;
                    first = std::min(first, next);
                    ++shown;
                    grown = true;
                }
            }
        }
        const double free =
            box.width() - (first > 0 ? dots : 0) - (first + shown < count ? dots : 0);
        for (int i = first; i < first + shown; ++i) {
            const auto at = static_cast<std::size_t>(i);
            widths[at] = needed(at, size) + (free - used) / shown;
        }
    }
    const bool before = first > 0;
    const bool after = first + shown < count;
    double x = box.left() + (before ? dots : 0);
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
        const QRectF place(x, box.top(), widths[static_cast<std::size_t>(i)], box.height());
        x += place.width() + gap;
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
