#include "app/shop/plan_chart.h"

#include "app/parts/brush.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>
#include <array>
#include <vector>

namespace seamclock {
namespace {

constexpr double kNames = 128; // of the lanes
constexpr double kEnds = 34;   // the plan's end and the bound, above
constexpr double kClock = 30;  // below the lanes
constexpr double kWords = 36;  // what the patterns mean
constexpr double kPad = 12;
constexpr double kSmall = 19; // letters
constexpr double kSwatch = 34;
constexpr double kSwatchGap = 8;
constexpr double kOneRow = 900; // takes all words in letters that are read

constexpr std::array kKinds{BarKind::Hands,   BarKind::Cooling, BarKind::WarmUp,
                            BarKind::Waiting, BarKind::Release, BarKind::Decision};

/// Hours or parts of one, so that at most eight lie between the ends.
Milliseconds tickOf(Milliseconds span) {
    for (const std::int64_t minutes : {15, 30, 60, 120, 240, 480, 720}) {
        if (span.count() <= minutes * 60'000 * 8) {
            return Milliseconds{minutes * 60'000};
        }
    }
    return Milliseconds{24LL * 3'600'000};
}

/// Lines from corner to corner, wider than any of Qt's own patterns has them: they are read from
/// afar.
void paintSlants(QPainter& painter, const QRectF& box, const QColor& ink, double line) {
    painter.save();
    painter.setClipRect(box);
    painter.setPen(QPen(ink, line * 2));
    const double step = line * 9;
    for (double left = box.left() - box.height(); left < box.right(); left += step) {
        painter.drawLine(QPointF(left, box.bottom()), QPointF(left + box.height(), box.top()));
    }
    painter.restore();
}

void fill(QPainter& painter, const QRectF& box, BarKind kind, const Theme& theme, double line) {
    painter.setPen(Qt::NoPen);
    switch (kind) {
    case BarKind::Hands:
        painter.setBrush(theme.text);
        painter.drawRect(box);
        return;
    case BarKind::Cooling:
        painter.setBrush(theme.raised);
        painter.drawRect(box);
        painter.setBrush(QBrush(theme.textSoft, Qt::Dense6Pattern));
        painter.drawRect(box);
        break;
    case BarKind::WarmUp:
        painter.setBrush(theme.raised);
        painter.drawRect(box);
        paintSlants(painter, box, theme.text, line);
        break;
    case BarKind::Release:
        painter.setBrush(theme.raised);
        painter.drawRect(box);
        painter.setBrush(QBrush(theme.text, Qt::VerPattern));
        painter.drawRect(box);
        break;
    case BarKind::Decision: // a cross
        painter.setPen(QPen(theme.text, line * 2));
        painter.drawLine(box.topLeft(), box.bottomRight());
        painter.drawLine(box.bottomLeft(), box.topRight());
        break;
    case BarKind::Waiting:
        break;
    }
    QPen frame(theme.text, line);
    if (kind == BarKind::Waiting) {
        frame.setStyle(Qt::DashLine);
    }
    painter.setPen(frame);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(box.adjusted(line / 2, line / 2, -line / 2, -line / 2));
}

QString endsOf(const PlanView& view) {
    return view.boundText + QStringLiteral(" · ") + view.finishText;
}

/// Full hours, or parts of one, as they stand below the lanes.
std::vector<Milliseconds> hoursOf(const PlanView& view) {
    const Milliseconds tick = tickOf(view.finish);
    const std::int64_t local = view.at.utc.count() + view.at.offset.count() * std::int64_t{60'000};
    const std::int64_t first =
        tick.count() - ((local % tick.count()) + tick.count()) % tick.count();
    std::vector<Milliseconds> hours;
    for (Milliseconds at{first % tick.count()}; at <= view.finish; at += tick) {
        hours.push_back(at);
    }
    return hours;
}

} // namespace

PlanChart::PlanChart(QWidget* parent) : PressPart("planChart", parent) {
    setAccessibleName(tr("Press to work it out anew"));
}

/// Of words above and below the lanes: with the text, as long as the lanes keep their room.
double PlanChart::row(double units) const {
    return std::min(textPx(units), height() * units / 285);
}

void PlanChart::show(const PlanView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(
        spoken({view.title, view.boundText, view.finishText, tr("Press to work it out anew")}));
    setAccessibleDescription(lanesInWords());
    update();
}

/// What is painted, lane by lane, and the hours below.
QString PlanChart::lanesInWords() const {
    QStringList lines;
    for (const PlanLane& lane : m_view.lanes) {
        QStringList bars;
        for (const PlanBar& bar : lane.bars) {
            bars << QStringLiteral("%1 %2 %3-%4")
                        .arg(
                            bar.text, barWord(bar.kind), planClock(m_view.at, bar.from, false),
                            planClock(m_view.at, bar.to, true));
        }
        lines << lane.name + ": " + bars.join(QStringLiteral(", "));
    }
    QStringList hours;
    for (const Milliseconds at : hoursOf(m_view)) {
        hours << planClock(m_view.at, at, false);
    }
    lines << hours.join(QStringLiteral(", ")) << endsOf(m_view) << tr("now");
    return lines.join(QStringLiteral(". "));
}

void PlanChart::setNow(Milliseconds now) {
    const double before = placeOf(m_now);
    m_now = now;
    if (std::abs(placeOf(m_now) - before) >= 0.5) {
        update();
    }
}

QRectF PlanChart::field() const {
    const double top = px(kPad) + row(kEnds);
    const double bottom = height() - px(8) - row(kClock) - wordsHeight();
    return {px(kNames), top, width() - px(kNames) - px(kPad) * 2, std::max(1.0, bottom - top)};
}

double PlanChart::placeOf(Milliseconds time) const {
    const QRectF box = field();
    const auto span = static_cast<double>(std::max<std::int64_t>(m_view.finish.count(), 60'000));
    const double part = static_cast<double>(time.count()) / (span * 1.02);
    return box.left() + bounded(part, 0, 1) * box.width();
}

QRectF PlanChart::boxOf(std::size_t lane, const PlanBar& bar) const {
    const QRectF all = field();
    const double high = all.height() / static_cast<double>(m_view.lanes.size());
    const double middle = all.top() + high * (static_cast<double>(lane) + 0.5);
    const double own = std::min(high * 0.92, px(84));
    const double left = placeOf(bar.from);
    const QRectF box(left, middle - own / 2, std::max(placeOf(bar.to) - left, px(3)), own);
    return bar.kind == BarKind::WarmUp ? box.adjusted(0, own * 0.74, 0, 0)
                                       : box.adjusted(0, 0, 0, -own * 0.28);
}

void PlanChart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(painter, rect(), px(14), theme().panel, theme().edge, px(1.5));
    if (m_view.lanes.empty() || m_view.finishText.isEmpty()) {
        return;
    }
    paintClock(painter);
    const QRectF box = field();
    const double lane = box.height() / static_cast<double>(m_view.lanes.size());
    for (std::size_t i = 0; i < m_view.lanes.size(); ++i) {
        const double middle = box.top() + lane * (static_cast<double>(i) + 0.5);
        const QString& name = m_view.lanes[i].name;
        const QRectF names(px(kPad), middle - lane / 2, px(kNames - kPad - 8), lane);
        const double size =
            fittedSize(name, std::min(textPx(22), lane * 0.8), px(11), names.width(), kLabelWeight);
        painter.setPen(theme().text);
        drawLine(painter, names, Qt::AlignLeft | Qt::AlignVCenter, name, size, kLabelWeight);
        for (const PlanBar& one : m_view.lanes[i].bars) {
            paintBar(painter, boxOf(i, one), one);
        }
    }
    paintEnds(painter);
    paintWords(painter);
}

void PlanChart::paintBar(QPainter& painter, const QRectF& box, const PlanBar& bar) const {
    fill(painter, box, bar.kind, theme(), px(1.5));
    const bool names = bar.kind == BarKind::Hands || bar.kind == BarKind::Cooling;
    const double room = box.width() - px(10);
    double size = std::min(textPx(kSmall), box.height() * 0.66);
    // The whole, else the seam alone, else smaller; a bar with no room is the one before it.
    QString text = bar.text;
    if (tabularWidth(text, size, kLabelWeight) > room) {
        text = bar.brief;
    }
    size = fittedSize(text, size, px(13), room, kLabelWeight);
    const double wide = tabularWidth(text, size, kLabelWeight);
    if (!names || wide > room) {
        return;
    }
    const QRectF words(
        box.left() + px(4), box.center().y() - size * 0.75, wide + px(6), size * 1.5);
    if (bar.kind != BarKind::Hands) { // the letters stand on no pattern
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme().panel);
        painter.drawRect(words.adjusted(-px(1), 0, 0, 0));
    }
    painter.setPen(bar.kind == BarKind::Hands ? theme().panel : theme().text);
    drawTabular(
        painter, words.adjusted(px(2), 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, text, size,
        kLabelWeight);
}

void PlanChart::paintClock(QPainter& painter) const {
    const QRectF box = field();
    const double size = std::min({textPx(kSmall), px(26), row(kClock) * 0.8});
    for (const Milliseconds at : hoursOf(m_view)) {
        const double x = placeOf(at);
        painter.setPen(QPen(theme().hairline, px(1.2)));
        painter.drawLine(QPointF(x, box.top()), QPointF(x, box.bottom()));
        const QString words = planClock(m_view.at, at, false);
        const double wide = tabularWidth(words, size, kPlainWeight);
        if (x - wide / 2 < px(kPad) || x + wide / 2 > width() - px(kPad)) {
            continue;
        }
        painter.setPen(theme().textSoft);
        drawTabular(
            painter, QRectF(x - wide / 2, box.bottom(), wide, row(kClock)),
            Qt::AlignLeft | Qt::AlignVCenter, words, size, kPlainWeight);
    }
}

// The bound is a dotted line, the plan's end a full one, now a full one with an arrow's head.
void PlanChart::paintEnds(QPainter& painter) const {
    const QRectF box = field();
    const double high = row(kEnds);
    const double size = std::min({textPx(20), px(27), high * 0.66});
    const double end = placeOf(m_view.finish);
    const double bound = placeOf(m_view.bound);
    const QRectF line(px(kNames), px(kPad / 2), width() - px(kNames) - px(kPad), high);
    const auto wide = [size](const QString& text) {
        return tabularWidth(text, size, kLabelWeight);
    };
    const QString both = endsOf(m_view);
    const double fitted = fittedSize(both, size, px(12), line.width() - px(90), kLabelWeight);
    painter.setPen(theme().text);
    drawTabular(painter, line, Qt::AlignRight | Qt::AlignVCenter, both, fitted, kLabelWeight);
    QPen dotted(theme().text, px(3), Qt::DotLine);
    painter.setPen(dotted);
    painter.drawLine(QPointF(bound, box.top() - px(2)), QPointF(bound, box.bottom()));
    painter.setPen(QPen(theme().text, px(3)));
    painter.drawLine(QPointF(end, box.top() - px(2)), QPointF(end, box.bottom()));
    const double now = placeOf(m_now);
    const QColor ink = theme().tone(Tone::Act).ink;
    painter.setPen(QPen(ink, px(3)));
    painter.drawLine(QPointF(now, box.top()), QPointF(now, box.bottom()));
    QPainterPath head;
    head.moveTo(now - px(9), box.top() - px(10));
    head.lineTo(now + px(9), box.top() - px(10));
    head.lineTo(now, box.top() + px(4));
    head.closeSubpath();
    painter.fillPath(head, ink);
    const QString word = tr("now");
    const double room = wide(word);
    const double left = bounded(now - room / 2, px(kPad), width() - room);
    if (left + room + px(16) < line.right() - wide(both)) {
        painter.setPen(ink);
        drawTabular(
            painter, QRectF(left, line.top(), room, high - px(8)), Qt::AlignLeft | Qt::AlignVCenter,
            word, size, kLabelWeight);
    }
}

/// Beside its swatch, with the space before the next.
double PlanChart::wordWidth(BarKind kind, double size) const {
    return px(kSwatch + kSwatchGap + 22) + textWidth(barWord(kind), size, kPlainWeight);
}

/// What the bars' kinds are called, as many in a row as go into it.
std::vector<std::vector<BarKind>> PlanChart::wordRows(double size) const {
    const double most = width() - 2 * px(kPad) + px(22);
    std::vector<std::vector<BarKind>> rows(1);
    double left = 0;
    for (const BarKind kind : kKinds) {
        const double wide = wordWidth(kind, size);
        if (left + wide > most && !rows.back().empty()) {
            rows.emplace_back();
            left = 0;
        }
        rows.back().push_back(kind);
        left += wide;
    }
    return rows;
}

/// Of all rows of words below the lanes: where a screen stands upright one has no room for them.
double PlanChart::wordsHeight() const {
    return row(kWords) * (width() < px(kOneRow) ? 2 : 1);
}

void PlanChart::paintWords(QPainter& painter) const {
    const double high = row(kWords);
    double size = std::min({textPx(kSmall), px(26), high * 0.62});
    const auto most = static_cast<std::size_t>(std::lround(wordsHeight() / high));
    while (size > px(11) && wordRows(size).size() > most) {
        size -= px(0.5);
    }
    double top = height() - wordsHeight() - px(6);
    for (const std::vector<BarKind>& kinds : wordRows(size)) {
        double left = px(kPad);
        for (const BarKind kind : kinds) {
            const QRectF swatch(left, top + high * 0.22, px(kSwatch), high * 0.56);
            fill(painter, swatch, kind, theme(), px(1.5));
            const double wide = textWidth(barWord(kind), size, kPlainWeight);
            painter.setPen(theme().text);
            drawLine(
                painter, QRectF(swatch.right() + px(kSwatchGap), top, wide, high),
                Qt::AlignLeft | Qt::AlignVCenter, barWord(kind), size, kPlainWeight);
            left += wordWidth(kind, size);
        }
        top += high;
    }
}

} // namespace seamclock
