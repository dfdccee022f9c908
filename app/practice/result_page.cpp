#include "app/practice/result_page.h"

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/sign.h"
#include "app/parts/type.h"
#include "app/practice/bench_scene.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {

ResultPart::ResultPart(const QString& name, QWidget* parent) : Part(name, parent) {}

void ResultPart::show(const ResultView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    QStringList words{view.verdict, view.reason};
    for (const ResultView::Row& row : view.rows) {
        words << row.item + " " + row.value;
    }
    for (const ResultView::Why& lapse : view.lapses) {
        words << lapse.what + ". " + lapse.why;
    }
    words << view.bendText;
    setAccessibleName(spoken(words));
    update();
}

void ResultPart::panel(QPainter& painter, const QRectF& box) const {
    const bool contrast = theme().kind == ThemeKind::Contrast;
    drawPanel(
        painter, box, px(14), theme().panel, contrast ? theme().edge : QColor(Qt::transparent),
        contrast ? px(2) : 0);
}

QRectF ResultPart::headed(QPainter& painter, const QRectF& box, const QString& title) const {
    const double inset = px(18);
    const double head = px(34);
    const double room = box.width() - 2 * inset;
    painter.setPen(theme().textSoft);
    drawLine(
        painter, QRectF(box.left() + inset, box.top() + px(8), room, head),
        Qt::AlignLeft | Qt::AlignVCenter, title,
        fittedSize(title, std::min(textPx(22), px(26)), px(12), room, kLabelWeight), kLabelWeight);
    return box.adjusted(inset, head + px(10), -inset, -px(12));
}

void VerdictPart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    panel(painter, rect());
    const double side = px(64);
    const double inset = px(20);
    paintMark(
        painter, QRectF(inset, (height() - side) / 2, side, side), m_view.mark,
        theme().tone(m_view.tone).ink, theme());
    const double left = inset + side + px(20);
    const double room = width() - left - inset;
    const double half = m_view.reason.isEmpty() ? height() - px(6) : height() * 0.5;
    const double size =
        fittedSize(m_view.verdict, std::min(textPx(42), px(46)), px(20), room, kWordWeight);
    painter.setPen(theme().text);
    drawLine(
        painter, QRectF(left, px(6), room, half - px(6)), Qt::AlignLeft | Qt::AlignVCenter,
        m_view.verdict, size, kWordWeight);
    if (m_view.reason.isEmpty()) {
        return;
    }
    const Wrapped reason = wrapped(
        m_view.reason, std::min(textPx(25), px(30)), px(13), room, 2, kPlainWeight, half - px(10));
    painter.setPen(theme().textSoft);
    drawWrapped(
        painter, QRectF(left, half, room, half - px(8)), Qt::AlignLeft | Qt::AlignVCenter, reason,
        kPlainWeight);
}

void RowsPart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    panel(painter, rect());
    const QRectF box = headed(painter, rect(), tr("What your hands did"));
    if (m_view.rows.empty()) {
        return;
    }
    const double pitch = std::min(box.height() / static_cast<double>(m_view.rows.size()), px(68));
    const double item = box.width() * 0.42;
    for (std::size_t i = 0; i < m_view.rows.size(); ++i) {
        const ResultView::Row& row = m_view.rows[i];
        const double y = box.top() + pitch * static_cast<double>(i);
        const double wanted = std::min({textPx(23), px(30), pitch * 0.36});
        painter.setPen(theme().textSoft);
        const double size = fittedSize(row.item, wanted, px(11), item - px(10), kPlainWeight);
        drawLine(
            painter, QRectF(box.left(), y, item - px(10), pitch), Qt::AlignLeft | Qt::AlignVCenter,
            row.item, size, kPlainWeight);
        const double mark = row.off ? pitch * 0.62 : 0;
        const double right = box.right() - (row.off ? mark + px(8) : 0);
        const Wrapped value = wrapped(
            row.value, wanted, px(10), right - box.left() - item, 2, kLabelWeight, pitch - px(4));
        painter.setPen(theme().text);
        drawWrapped(
            painter, QRectF(box.left() + item, y, right - box.left() - item, pitch),
            Qt::AlignLeft | Qt::AlignVCenter, value, kLabelWeight);
        if (row.off) {
            paintMark(
                painter, QRectF(box.right() - mark, y + (pitch - mark) / 2, mark, mark), Mark::Late,
                theme().tone(Tone::Late).ink, theme());
        }
        if (i + 1 < m_view.rows.size()) {
            painter.setPen(QPen(theme().hairline, px(1)));
            painter.drawLine(QPointF(box.left(), y + pitch), QPointF(box.right(), y + pitch));
        }
    }
}

void LapsesPart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    panel(painter, rect());
    const bool none = m_view.lapses.empty();
    const QRectF box = headed(
        painter, rect(), m_view.good ? tr("What went well") : tr("What went wrong, and why"));
    std::vector<ResultView::Why> shown = m_view.lapses;
    if (none && !m_view.good) {
        shown.push_back(
            {m_view.reason,
             tr("No other mistake of the hands was found.") + QLatin1Char(' ') + m_view.after});
    } else if (none) {
        shown.push_back({tr("No mistake was found."), m_view.after});
    } else if (!m_view.after.isEmpty()) {
        shown.push_back({{}, m_view.after});
    }
    // All in one size, the largest at which they fit.
    double size = std::min(textPx(27), px(36));
    struct Block {
        Wrapped what;
        Wrapped why;
    };
    std::vector<Block> blocks;
    double gap = 0;
    for (; size > px(9); size -= px(0.5)) {
        blocks.clear();
        gap = size * 0.7;
        double high = 0;
        bool whole = true;
        for (const ResultView::Why& one : shown) {
            Block block{
                wrapped(one.what, size, size, box.width(), 2, kWordWeight),
                wrapped(one.why, size * 0.9, size * 0.9, box.width(), 6, kPlainWeight)};
            high += (one.what.isEmpty() ? 0 : wrappedHeight(block.what) + size * 0.45) +
                    wrappedHeight(block.why) + gap;
            whole = whole && block.what.fits && block.why.fits;
            blocks.push_back(block);
        }
        if (whole && high - gap + size * 0.3 <= box.height()) {
            break;
        }
    }
    double y = box.top();
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        if (!shown[i].what.isEmpty()) {
            painter.setPen(theme().text);
            const double high = wrappedHeight(blocks[i].what);
            drawWrapped(
                painter, QRectF(box.left(), y, box.width(), high), Qt::AlignLeft | Qt::AlignTop,
                blocks[i].what, kWordWeight);
            y += high + size * 0.45;
        }
        const double high = wrappedHeight(blocks[i].why);
        painter.setPen(theme().textSoft);
        drawWrapped(
            painter, QRectF(box.left(), y, box.width(), high), Qt::AlignLeft | Qt::AlignTop,
            blocks[i].why, kPlainWeight);
        y += high + gap;
    }
}

// Made beside planned, in one scale of their own thickness, at the place where it is worst.
void JointsPart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    panel(painter, rect());
    const double gap = px(14);
    const double half = (width() - 3 * gap) / 2;
    const double words = px(58);
    for (const bool made : {true, false}) {
        const BenchDrawing& drawing = made ? m_view.made : m_view.planned;
        const QString title = made ? tr("Your joint") : tr("By a steady hand");
        const QString text = made ? m_view.madeText : m_view.plannedText;
        const double left = gap + (made ? 0 : half + gap);
        const QRectF head(left + px(4), px(8), half - px(8), px(30));
        painter.setPen(theme().text);
        drawLine(
            painter, head, Qt::AlignLeft | Qt::AlignVCenter, title,
            fittedSize(title, std::min(textPx(22), px(27)), px(12), head.width(), kWordWeight),
            kWordWeight);
        const QRectF box(left, px(42), half, height() - px(50) - words);
        QPainterPath rounded;
        rounded.addRoundedRect(box, px(10), px(10));
        painter.save();
        painter.setClipPath(rounded);
        painter.fillRect(box, theme().ground);
        if (!drawing.places.empty()) {
            paintSeamFromEnd(painter, box, drawing, theme(), metrics());
        }
        painter.restore();
        const QRectF below(left + px(4), box.bottom() + px(4), half - px(8), words - px(6));
        const Wrapped lines = wrapped(
            text, std::min(textPx(20), px(24)), px(11), below.width(), 2, kPlainWeight,
            below.height());
        painter.setPen(theme().textSoft);
        drawWrapped(painter, below, Qt::AlignLeft | Qt::AlignVCenter, lines, kPlainWeight);
    }
}

// Strips cut across the seam, front to back, each bent: whole, or broken at the seam.
void BendPart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    panel(painter, rect());
    const QRectF box = headed(painter, rect(), m_view.bendText);
    if (m_view.bend.empty()) {
        return;
    }
    const auto count = static_cast<double>(m_view.bend.size());
    const double wide = box.width() / count;
    const double words = px(26);
    for (std::size_t i = 0; i < m_view.bend.size(); ++i) {
        const ResultView::Bend& bend = m_view.bend[i];
        const QRectF cell(
            box.left() + wide * static_cast<double>(i), box.top(), wide, box.height() - words);
        const double arm = std::min(cell.width() * 0.46, cell.height() * 0.9);
        const QPointF root(
            cell.center().x(), std::min(cell.bottom() - px(8), cell.center().y() + arm * 0.5));
        const double thick = px(9);
        const QColor ink = theme().text;
        if (bend.ductile) { // one piece, round the mandrel
            QPainterPath strip(QPointF(root.x() - arm * 0.62, root.y() - arm * 0.8));
            strip.cubicTo(
                QPointF(root.x() - arm * 0.4, root.y() + arm * 0.06),
                QPointF(root.x() + arm * 0.4, root.y() + arm * 0.06),
                QPointF(root.x() + arm * 0.62, root.y() - arm * 0.8));
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(ink, thick, Qt::SolidLine, Qt::RoundCap));
            painter.drawPath(strip);
        } else { // two pieces, a jagged face between
            painter.setPen(QPen(ink, thick, Qt::SolidLine, Qt::FlatCap));
            for (const double side : {-1.0, 1.0}) {
                const QPointF inner(root.x() + side * px(7), root.y() - px(4));
                painter.drawLine(
                    QPointF(root.x() + side * arm * 0.75, root.y() - arm * 0.72), inner);
            }
            QPainterPath jag(QPointF(root.x() - px(3), root.y() - px(26)));
            jag.lineTo(root.x() + px(3), root.y() - px(17));
            jag.lineTo(root.x() - px(3), root.y() - px(9));
            jag.lineTo(root.x() + px(3), root.y());
            painter.setPen(QPen(theme().tone(Tone::Late).ink, px(3)));
            painter.setBrush(Qt::NoBrush);
            painter.drawPath(jag);
        }
        const double side = px(22);
        paintMark(
            painter, QRectF(cell.left() + px(2), cell.top(), side, side),
            bend.ductile ? Mark::Done : Mark::Cut,
            theme().tone(bend.ductile ? Tone::Normal : Tone::Late).ink, theme());
        const QRectF below(cell.left() + px(3), box.bottom() - words, cell.width() - px(6), words);
        const QString text = bend.ductile ? tr("bends") : bend.reason;
        painter.setPen(ink);
        drawLine(
            painter, below, Qt::AlignCenter, text,
            fittedSize(text, std::min(textPx(19), px(23)), px(9), below.width(), kLabelWeight),
            kLabelWeight);
    }
}

ResultPage::ResultPage(QWidget* parent)
    : Page("practiceResult", parent), m_verdict(keep(new VerdictPart(this))),
      m_rows(keep(new RowsPart(this))), m_lapses(keep(new LapsesPart(this))),
      m_joints(keep(new JointsPart(this))), m_bend(keep(new BendPart(this))) {}

void ResultPage::show(const ResultView& view, int leaf) {
    m_view = view;
    for (ResultPart* part :
         std::initializer_list<ResultPart*>{m_verdict, m_rows, m_lapses, m_joints, m_bend}) {
        part->show(view);
    }
    m_leaf = leaf;
    place();
}

void ResultPage::setSlots(const SlotView& back, const SlotView& stop, const SlotView& step) {
    m_back->show(back);
    m_stop->show(stop);
    m_step->show(step);
}

void ResultPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    const QRectF nowhere;
    const double gap = 10;
    const double head = 104;
    const QRectF verdict(body.left(), body.top(), body.width(), head);
    const QRectF rest(
        body.left(), body.top() + head + gap, body.width(), body.height() - head - gap);
    if (m_leaf == 0) {
        put(m_verdict, verdict);
        put(m_joints, nowhere);
        put(m_bend, nowhere);
        if (frame.portrait) {
            const double half = rest.height() * 0.52;
            put(m_rows, QRectF(rest.left(), rest.top(), rest.width(), half - gap / 2));
            put(m_lapses, QRectF(
                              rest.left(), rest.top() + half + gap / 2, rest.width(),
                              rest.height() - half - gap / 2));
        } else {
            const double half = rest.width() * 0.5;
            put(m_rows, QRectF(rest.left(), rest.top(), half - gap / 2, rest.height()));
            put(m_lapses, QRectF(
                              rest.left() + half + gap / 2, rest.top(),
                              rest.width() - half - gap / 2, rest.height()));
        }
    } else {
        put(m_verdict, nowhere);
        put(m_rows, nowhere);
        put(m_lapses, nowhere);
        const double bend = frame.portrait ? body.height() * 0.36 : body.height() * 0.4;
        put(m_joints, QRectF(body.left(), body.top(), body.width(), body.height() - bend - gap));
        put(m_bend, QRectF(body.left(), body.bottom() - bend, body.width(), bend));
    }
    placeSlots(frame);
}

} // namespace seamclock
