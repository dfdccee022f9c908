#include "app/operate/card_page.h"

#include "app/parts/mark.h"
#include "app/parts/type.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>

namespace seamclock {

CardPanel::CardPanel(QWidget* parent) : Part("cardPanel", parent) {}

void CardPanel::show(const CardView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(view.title + ". " + view.under);
    update();
}

void CardPanel::panel(QPainter& painter, const QRectF& box) const {
    painter.setPen(
        theme().kind == ThemeKind::Contrast ? QPen(theme().edge, px(2)) : QPen(Qt::NoPen));
    painter.setBrush(theme().panel);
    painter.drawRoundedRect(box, px(14), px(14));
    painter.setBrush(Qt::NoBrush);
}

void CardPanel::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool upright = height() > width();
    // On a small tablet there is half the height: the columns need it most.
    const bool low = height() < px(upright ? 800 : 440);
    const double gap = px(10);
    const double head = px(low ? 58 : 84);
    QRectF all = rect();
    const QRectF title(0, 0, width(), head);
    panel(painter, title);
    painter.setPen(theme().text);
    const double inset = px(20);
    const double inner = width() - 2 * inset;
    drawLine(
        painter, QRectF(inset, px(low ? 3 : 5), inner, px(low ? 30 : 42)),
        Qt::AlignLeft | Qt::AlignVCenter, m_view.title,
        fittedSize(m_view.title, px(low ? 28 : 34), px(22), inner, kWordWeight), kWordWeight);
    painter.setPen(theme().textSoft);
    drawLine(
        painter, QRectF(inset, px(low ? 31 : 45), inner, px(low ? 24 : 34)),
        Qt::AlignLeft | Qt::AlignVCenter, m_view.under,
        fittedSize(m_view.under, px(low ? 20 : 25), px(15), inner, kPlainWeight), kPlainWeight);
    all.setTop(head + gap);

    const int columns = upright ? 3 : 6;
    const int rows = upright ? 2 : 1;
    const double sums = px(low ? 116 : upright ? 150 : 158);
    const double sources = low ? sums : px(190);
    const double below = upright ? sums + sources + gap : sums;
    const double tall = (all.height() - below - gap - (rows - 1) * gap) / rows;
    const double wide = (all.width() - (columns - 1) * gap) / columns;
    for (int i = 0; i < static_cast<int>(m_view.columns.size()); ++i) {
        const int row = i / columns;
        const int column = i % columns;
        const QRectF box(column * (wide + gap), all.top() + row * (tall + gap), wide, tall);
        panel(painter, box);
        paintColumn(painter, box, m_view.columns[static_cast<std::size_t>(i)]);
    }
    const double under = all.top() + rows * (tall + gap);
    if (upright) {
        paintArithmetic(painter, QRectF(0, under, width(), sums));
        paintSources(painter, QRectF(0, under + sums + gap, width(), sources));
    } else {
        const double left = width() * 0.593;
        paintArithmetic(painter, QRectF(0, under, left, sums));
        paintSources(painter, QRectF(left + gap, under, width() - left - gap, sums));
    }
}

void CardPanel::paintColumn(
    QPainter& painter, const QRectF& box, const CardView::Column& column) const {
    const double x = box.left() + px(16);
    const double wide = box.width() - px(26);
    const double tall = box.height();
    const auto line = [&](double at, double high, const QString& text, double size,
                          QFont::Weight weight, const QColor& ink) {
        painter.setPen(ink);
        const QRectF place(x, box.top() + tall * at, wide, tall * high);
        drawTabular(
            painter, place, Qt::AlignLeft | Qt::AlignVCenter, text,
            fittedSize(
                text, std::min(px(size), tall * high / kCapHeight), px(12), wide * 0.96, weight),
            weight);
    };
    const double sign = px(46);
    paintSign(
        painter, QRectF(x - px(2), box.top() + tall * 0.125 - sign / 2, sign, sign), column.sign,
        theme().text);
    painter.setPen(theme().text);
    const QRectF name(x + sign + px(8), box.top() + tall * 0.06, wide - sign - px(4), tall * 0.13);
    drawLine(
        painter, name, Qt::AlignLeft | Qt::AlignVCenter, column.name,
        fittedSize(column.name, px(22), px(13), name.width(), kLabelWeight), kLabelWeight);

    const auto withUnit = [&](double at, double high, const QString& big, const QString& unit,
                              double size, double unitSize, double share) {
        const double unitWide =
            unit.isEmpty() ? 0 : textWidth(unit, px(unitSize), kLabelWeight) + px(7);
        double fit = std::min(px(size), tall * high * share / kCapHeight);
        while (fit > px(14) && tabularWidth(big, fit, kNumberWeight) + unitWide > wide) {
            fit -= px(1);
        }
        painter.setPen(theme().text);
        const QRectF place(x, box.top() + tall * at, wide, tall * high);
        drawTabular(painter, place, Qt::AlignLeft | Qt::AlignVCenter, big, fit, kNumberWeight);
        if (!unit.isEmpty()) {
            const double past = tabularWidth(big, fit, kNumberWeight) + px(7);
            // On the number's baseline.
            const double drop = (fit - px(unitSize)) * kCapHeight / 2;
            drawLine(
                painter, place.adjusted(past, drop, 0, drop), Qt::AlignLeft | Qt::AlignVCenter,
                unit, px(unitSize), kLabelWeight);
        }
    };
    // A comma hangs below its number: the words under it leave it that room.
    withUnit(0.225, 0.2, column.big, column.bigUnit, 54, 26, 0.98);
    line(0.472, 0.09, column.under, 22, kLabelWeight, theme().textSoft);
    painter.setPen(QPen(theme().hairline, px(1.5)));
    painter.drawLine(
        QPointF(x, box.top() + tall * 0.575),
        QPointF(box.right() - px(14), box.top() + tall * 0.575));
    withUnit(0.61, 0.13, column.scale, column.scaleUnit, 32, 20, 0.7);
    line(0.74, 0.1, column.band, 22, kLabelWeight, theme().text);
    painter.setPen(theme().textSoft);
    const Wrapped foot = wrapped(column.foot, px(20), px(13), wide, 1, kPlainWeight);
    drawWrapped(
        painter, QRectF(x, box.top() + tall * 0.855, wide, tall * 0.11),
        Qt::AlignLeft | Qt::AlignVCenter, foot, kPlainWeight);
}

void CardPanel::paintArithmetic(QPainter& painter, const QRectF& box) const {
    panel(painter, box);
    const double x = box.left() + px(20);
    const double wide = box.width() - px(40);
    const double tall = box.height();
    painter.setPen(theme().textSoft);
    drawLine(
        painter, QRectF(x, box.top() + tall * 0.05, wide, tall * 0.2),
        Qt::AlignLeft | Qt::AlignVCenter, m_view.arithmeticTitle, px(22), kLabelWeight);
    painter.setPen(theme().text);
    const double size = std::min(
        fittedSize(m_view.force, px(29), px(14), wide, kLabelWeight),
        fittedSize(m_view.reading, px(29), px(14), wide, kLabelWeight));
    // Warning and estimate both: every row a little closer.
    // Where the panel is low there is room for one of them, and the warning comes first.
    const bool estimated =
        !m_view.estimate.isEmpty() && (m_view.warning.isEmpty() || tall >= px(140));
    const bool full = !m_view.warning.isEmpty() && estimated;
    const double first = full ? 0.22 : 0.26;
    const double step = full ? 0.2 : 0.24;
    drawLine(
        painter, QRectF(x, box.top() + tall * first, wide, tall * step),
        Qt::AlignLeft | Qt::AlignVCenter, m_view.force, size, kLabelWeight);
    drawLine(
        painter, QRectF(x, box.top() + tall * (first + step), wide, tall * step),
        Qt::AlignLeft | Qt::AlignVCenter, m_view.reading, size, kLabelWeight);
    double y = box.top() + tall * (full ? 0.62 : 0.74);
    const double high = tall * (full ? 0.18 : 0.24);
    if (estimated) {
        painter.setPen(theme().textSoft);
        drawLine(
            painter, QRectF(x, y, wide, high), Qt::AlignLeft | Qt::AlignVCenter, m_view.estimate,
            fittedSize(m_view.estimate, px(22), px(13), wide, kPlainWeight), kPlainWeight);
        y += high;
    }
    if (m_view.warning.isEmpty()) {
        return;
    }
    const double mark = std::min(px(30), high);
    paintMark(
        painter, QRectF(x, y + (high - mark) / 2, mark, mark), Mark::Trouble,
        theme().tone(Tone::Soon).ink, theme());
    painter.setPen(theme().text);
    const double text = wide - mark - px(10);
    const Wrapped words = wrapped(m_view.warning, px(22), px(12), text, 2, kPlainWeight, high);
    drawWrapped(
        painter, QRectF(x + mark + px(10), y, text, high), Qt::AlignLeft | Qt::AlignVCenter, words,
        kPlainWeight);
}

void CardPanel::paintSources(QPainter& painter, const QRectF& box) const {
    panel(painter, box);
    const double x = box.left() + px(20);
    const double wide = box.width() - px(40);
    painter.setPen(theme().textSoft);
    drawLine(
        painter, QRectF(x, box.top() + px(8), wide, px(30)), Qt::AlignLeft | Qt::AlignVCenter,
        m_view.sourcesTitle, px(22), kLabelWeight);
    const double row = (box.height() - px(46)) / 3;
    double y = box.top() + px(42);
    for (const CardView::Source& source : m_view.sources) {
        const double mark = std::min(px(30), row);
        const QRectF at(x, y + (row - mark) / 2, mark, mark);
        if (source.memory) {
            paintMark(painter, at, Mark::Soon, theme().tone(Tone::Soon).ink, theme());
        } else {
            paintSign(painter, at, source.sign, theme().tone(Tone::Normal).ink);
        }
        const double left = mark + px(12);
        if (row < px(30)) { // one line
            const QString both = source.what + QStringLiteral(": ") + source.standing;
            painter.setPen(theme().text);
            drawLine(
                painter, QRectF(x + left, y, wide - left, row), Qt::AlignLeft | Qt::AlignVCenter,
                both, fittedSize(both, px(18), px(10), wide - left, kPlainWeight), kPlainWeight);
            y += row;
            continue;
        }
        // Two lines in a row, however low it is.
        const double what = std::min(px(20), row * 0.46);
        const double standing = std::min(px(18), row * 0.4);
        painter.setPen(theme().text);
        drawLine(
            painter, QRectF(x + left, y, wide - left, row * 0.52), Qt::AlignLeft | Qt::AlignVCenter,
            source.what, fittedSize(source.what, what, px(12), wide - left, kLabelWeight),
            kLabelWeight);
        painter.setPen(theme().textSoft);
        drawLine(
            painter, QRectF(x + left, y + row * 0.5, wide - left, row * 0.44),
            Qt::AlignLeft | Qt::AlignVCenter, source.standing,
            fittedSize(source.standing, standing, px(12), wide - left, kPlainWeight), kPlainWeight);
        y += row;
    }
}

CardPage::CardPage(QWidget* parent) : Page("card", parent), m_panel(keep(new CardPanel(this))) {}

void CardPage::show(const CardView& view, bool onlyLook) {
    m_panel->show(view);
    SlotView back;
    back.text = tr("Other seam");
    back.under = tr("back to the job");
    back.sign = Sign::Back;
    SlotView hidden;
    hidden.look = SlotView::Look::Hidden;
    SlotView step;
    step.text = view.ready ? tr("Prepare") : tr("Not ready to weld");
    step.large = true;
    step.look = view.ready ? SlotView::Look::Act : SlotView::Look::Gone;
    if (onlyLook) {
        step.text = tr("Back to the weld");
        back = hidden;
    }
    m_back->show(back);
    SlotView print;
    print.text = tr("Print");
    print.under = tr("one page, PDF");
    print.sign = Sign::Print;
    m_stop->show(m_printable ? print : hidden);
    m_step->show(step);
}

void CardPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    // The card's own headline stands where the strip is elsewhere, beside the clock.
    QRectF body = frame.body;
    put(m_panel, body);
    placeSlots(frame);
}

} // namespace seamclock
