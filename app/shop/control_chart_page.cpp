#include "app/shop/control_chart_page.h"

#include "app/parts/brush.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {
namespace {

constexpr double kPad = 14;
constexpr double kWords = 210; // right of the points: what the lines are
constexpr double kNumbers = 28;

} // namespace

double ControlChartPart::Axis::yOf(double value) const {
    return box.bottom() - (value - low) / (high - low) * box.height();
}

ControlChartPart::ControlChartPart(QWidget* parent) : Part("controlChart", parent) {}

void ControlChartPart::show(const ChartView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken(
        {view.title, view.under, view.meanText, view.lowerText, view.upperText,
         view.words.join(QLatin1Char(' '))}));
    update();
}

ControlChartPart::Axis ControlChartPart::values() const {
    Axis axis;
    const double wide = width() - 2 * px(kPad) - px(kWords);
    axis.box = {px(kPad), px(kPad + 6), wide, height() * 0.6 - px(kPad + 6)};
    if (m_view.values.empty()) {
        return axis;
    }
    const auto [least, most] = std::minmax_element(m_view.values.begin(), m_view.values.end());
    axis.low = *least;
    axis.high = *most;
    if (m_view.limits) {
        axis.low = std::min(axis.low, m_view.limits->lower);
        axis.high = std::max(axis.high, m_view.limits->upper);
    }
    const double margin = axis.high > axis.low ? (axis.high - axis.low) * 0.08 : 1;
    axis.low -= margin;
    axis.high += margin;
    return axis;
}

ControlChartPart::Axis ControlChartPart::ranges() const {
    Axis axis;
    const Axis above = values();
    const double top = height() * 0.6 + px(kNumbers + 10);
    axis.box = {above.box.left(), top, above.box.width(), height() - px(kPad) - top};
    axis.high = m_view.limits ? m_view.limits->upperRange : 1;
    for (const double range : m_view.ranges) {
        axis.high = std::max(axis.high, range);
    }
    axis.high = axis.high > 0 ? axis.high * 1.1 : 1;
    return axis;
}

double ControlChartPart::xOf(const QRectF& box, std::size_t index) const {
    const auto count = static_cast<double>(std::max<std::size_t>(m_view.values.size(), 1));
    return box.left() + box.width() * (static_cast<double>(index) + 0.5) / count;
}

QPointF ControlChartPart::pointOf(std::size_t index) const {
    const Axis axis = values();
    return {xOf(axis.box, index), axis.yOf(m_view.values[index])};
}

QPointF ControlChartPart::rangeOf(std::size_t index) const {
    const Axis axis = ranges();
    return {xOf(axis.box, index), axis.yOf(m_view.ranges[index])};
}

void ControlChartPart::paintLine(
    QPainter& painter, const Axis& axis, double value, Qt::PenStyle style,
    const QString& words) const {
    const double y = axis.yOf(value);
    painter.setPen(QPen(theme().textSoft, px(2), style));
    painter.drawLine(QPointF(axis.box.left(), y), QPointF(axis.box.right(), y));
    painter.setPen(theme().text);
    const double high = px(46);
    const QRectF box(
        axis.box.right() + px(10), bounded(y - high / 2, px(2), height() - high - px(2)),
        px(kWords - 10), high);
    const Wrapped text =
        wrapped(words, std::min(textPx(19), px(25)), px(12), box.width(), 2, kPlainWeight, high);
    drawWrapped(painter, box, Qt::AlignLeft | Qt::AlignVCenter, text, kPlainWeight);
}

void ControlChartPart::paintPoint(QPainter& painter, const QPointF& at, PointShape shape) const {
    const double side = px(7);
    switch (shape) {
    case PointShape::Dot:
        painter.setPen(Qt::NoPen);
        painter.setBrush(theme().text);
        painter.drawEllipse(at, side * 0.72, side * 0.72);
        return;
    case PointShape::Run:
        painter.setPen(QPen(theme().text, px(2.5)));
        painter.setBrush(theme().panel);
        painter.drawEllipse(at, side, side);
        return;
    case PointShape::Beyond:
        break;
    }
    const double half = side * 1.7;
    QPainterPath path(at - QPointF(0, half));
    path.lineTo(at + QPointF(half, 0));
    path.lineTo(at + QPointF(0, half));
    path.lineTo(at - QPointF(half, 0));
    path.closeSubpath();
    painter.fillPath(path, theme().tone(Tone::Late).ink);
}

void ControlChartPart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(painter, rect(), px(14), theme().panel, theme().edge, px(1.5));
    if (m_view.values.empty()) {
        return;
    }
    const Axis own = values();
    const Axis apart = ranges();
    if (m_view.limits) {
        paintLine(painter, own, m_view.limits->upper, Qt::DashLine, m_view.upperText);
        paintLine(painter, own, m_view.limits->mean, Qt::SolidLine, m_view.meanText);
        paintLine(painter, own, m_view.limits->lower, Qt::DashLine, m_view.lowerText);
        paintLine(painter, apart, m_view.limits->upperRange, Qt::DashLine, m_view.rangeText);
    }
    painter.setPen(QPen(theme().edge, px(2)));
    for (std::size_t i = 1; i < m_view.values.size(); ++i) {
        painter.drawLine(pointOf(i - 1), pointOf(i));
        if (i > 1 || m_view.first > 0) {
            painter.drawLine(rangeOf(i - 1), rangeOf(i));
        }
    }
    for (std::size_t i = 0; i < m_view.values.size(); ++i) {
        paintPoint(painter, pointOf(i), m_view.shapes[i]);
        if (i > 0 || m_view.first > 0) { // the first joint of all has none before it
            paintPoint(
                painter, rangeOf(i), m_view.rangeBeyond[i] ? PointShape::Beyond : PointShape::Dot);
        }
    }
    // The joints' numbers between both, as many as have room.
    const double size = std::min(textPx(18), px(24));
    const QString widest = QString::number(m_view.numbers.back());
    const double room = tabularWidth(widest, size, kPlainWeight) + px(18);
    double free = own.box.left();
    painter.setPen(theme().textSoft);
    for (std::size_t i = 0; i < m_view.numbers.size(); ++i) {
        const double x = xOf(own.box, i);
        if (x - room / 2 < free && i > 0) {
            continue;
        }
        const double left = std::max(x - room / 2, px(4));
        drawTabular(
            painter, QRectF(left, height() * 0.6 + px(4), room, px(kNumbers)),
            Qt::AlignHCenter | Qt::AlignVCenter, QString::number(m_view.numbers[i]), size,
            kPlainWeight);
        free = left + room;
    }
}

ControlChartPage::ControlChartPage(QWidget* parent)
    : Page("chart", parent), m_title(keep(new Sentence("chartTitle", this))),
      m_under(keep(new Sentence("chartUnder", this))), m_part(keep(new ControlChartPart(this))),
      m_words(keep(new FormSay("chartWords", this))) {
    m_under->setQuiet(true);
}

void ControlChartPage::show(const ChartView& view) {
    m_view = view;
    place();
}

void ControlChartPage::refresh() {
    m_title->setText(m_view.title);
    m_under->setText(m_view.under);
    m_part->show(m_view);
    m_words->say(m_view.words, false);
    SlotView older = plainSlot(tr("Older joints"));
    SlotView newer = plainSlot(tr("Newer joints"));
    if (m_view.first == 0) {
        older.look = SlotView::Look::Gone;
    }
    if (m_view.first + m_view.values.size() >= m_view.count) {
        newer.look = SlotView::Look::Gone;
    }
    m_back->show(older);
    m_stop->show(newer);
    m_step->show(stepSlot(tr("Back to the charts"), false));
}

void ControlChartPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    put(m_title, QRectF(body.x() + 6, body.y(), body.width() - 12, 50));
    put(m_under, QRectF(body.x() + 6, body.y() + 50, body.width() - 12, 36));
    const double words = frame.portrait ? body.height() * 0.32 : 0;
    const double side = frame.portrait ? 0 : body.width() * 0.27;
    const QRectF chart(
        body.x(), body.y() + 90, body.width() - side - (side > 0 ? 12 : 0),
        body.height() - 90 - words);
    put(m_part, handed(chart));
    put(m_words, frame.portrait
                     ? QRectF(body.x() + 6, chart.bottom() + 6, body.width() - 12, words - 6)
                     : handed(QRectF(body.right() - side, chart.y(), side, chart.height())));
    placeSlots(frame);
    refresh();
}

} // namespace seamclock
