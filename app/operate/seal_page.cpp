#include "app/operate/seal_page.h"

#include "app/parts/brush.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {

SealLines::SealLines(QWidget* parent) : Part("sealLines", parent) {}

void SealLines::show(const SealView& view) {
    m_view = view;
    QStringList words{view.title};
    for (const SealView::Line& line : view.lines) {
        words << line.text << line.under;
    }
    setAccessibleName(spoken(words));
    update();
}

void SealLines::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    drawPanel(painter, rect(), px(14), look.panel, Qt::transparent, 0);
    const QRectF inner = QRectF(rect()).adjusted(px(20), px(14), -px(20), -px(12));
    const double head = px(58);
    painter.setPen(look.text);
    drawWrapped(
        painter, QRectF(inner.left(), inner.top(), inner.width(), head),
        Qt::AlignLeft | Qt::AlignVCenter,
        wrapped(m_view.title, textPx(32), px(18), inner.width(), 1, kWordWeight, px(44)),
        kWordWeight);
    const auto count = static_cast<double>(std::max<std::size_t>(m_view.lines.size(), 1));
    const double row = std::min(textPx(104), (inner.height() - head) / count);
    double top = inner.top() + head;
    for (const SealView::Line& line : m_view.lines) {
        const double mark = std::min(px(44), row * 0.6);
        paintMark(
            painter, QRectF(inner.left(), top + (row - mark) / 2, mark, mark), line.mark,
            look.tone(line.tone).ink, look);
        const double left = inner.left() + mark + px(20);
        const double room = inner.right() - left;
        const bool two = !line.under.isEmpty();
        painter.setPen(look.text);
        drawWrapped(
            painter, QRectF(left, top, room, two ? row * 0.54 : row),
            Qt::AlignLeft | Qt::AlignVCenter,
            wrapped(line.text, textPx(28), px(15), room, 1, kWordWeight, row * 0.4), kWordWeight);
        painter.setPen(look.textSoft);
        if (two) {
            drawWrapped(
                painter, QRectF(left, top + row * 0.52, room, row * 0.4),
                Qt::AlignLeft | Qt::AlignVCenter,
                wrapped(line.under, textPx(22), px(12), room, 2, kPlainWeight, row * 0.38),
                kPlainWeight);
        }
        top += row;
    }
}

Fingerprint::Fingerprint(QWidget* parent) : Part("sealFingerprint", parent) {}

void Fingerprint::show(const SealView& view) {
    m_view = view;
    setAccessibleName(spoken({view.groupsTitle, view.groups.join(QLatin1Char(' ')), view.why}));
    update();
}

void Fingerprint::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    drawPanel(painter, rect(), px(14), look.panel, Qt::transparent, 0);
    const QRectF inner = QRectF(rect()).adjusted(px(24), px(14), -px(24), -px(14));
    const double head = px(58);
    painter.setPen(look.text);
    drawWrapped(
        painter, QRectF(inner.left(), inner.top(), inner.width(), head),
        Qt::AlignLeft | Qt::AlignVCenter,
        wrapped(m_view.groupsTitle, textPx(32), px(18), inner.width(), 1, kWordWeight, px(44)),
        kWordWeight);
    constexpr int kColumns = 4;
    const auto count = static_cast<int>(m_view.groups.size());
    const int rows = (count + kColumns - 1) / kColumns;
    const double why = inner.height() * (count > 0 ? 0.36 : 0.8);
    const double field = inner.height() - head - why;
    if (rows > 0) {
        const double cell = inner.width() / kColumns;
        const double row = field / rows;
        double size = std::min(px(72), row * 0.9);
        for (const QString& group : m_view.groups) {
            size = fittedSize(group, size, px(20), cell - px(16), kNumberWeight);
        }
        for (int i = 0; i < count; ++i) {
            const int down = i / kColumns;
            const QRectF box(
                inner.left() + cell * (i % kColumns), inner.top() + head + row * down, cell, row);
            drawLine(
                painter, box, Qt::AlignLeft | Qt::AlignVCenter, m_view.groups.at(i), size,
                kNumberWeight);
        }
    }
    painter.setPen(look.textSoft);
    const QRectF below(inner.left(), inner.bottom() - why, inner.width(), why);
    drawWrapped(
        painter, below, Qt::AlignLeft | Qt::AlignVCenter,
        wrapped(m_view.why, textPx(26), px(14), below.width(), 4, kPlainWeight, below.height()),
        kPlainWeight);
}

SealPage::SealPage(QWidget* parent)
    : Page("seal", parent), m_lines(keep(new SealLines(this))),
      m_fingerprint(keep(new Fingerprint(this))),
      m_sentence(keep(new Sentence("sealSentence", this))) {
    m_sentence->setQuiet(true);
}

void SealPage::show(const SealView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    m_lines->show(view);
    m_fingerprint->show(view);
    m_sentence->setText(view.sentence);
    m_back->show(view.back);
    m_stop->show(view.stop);
    m_step->show(view.step);
}

void SealPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    QRectF body = frame.body;
    constexpr double kSentence = 76;
    put(m_sentence, QRectF(body.x() + 6, body.bottom() - kSentence, body.width() - 12, kSentence));
    body.setHeight(body.height() - kSentence - 6);
    QRectF lines = body;
    QRectF print = body;
    if (frame.portrait) {
        lines.setHeight(body.height() * 0.52);
        print.setTop(lines.bottom() + 12);
    } else {
        lines.setWidth(body.width() * 0.46);
        print.setLeft(lines.right() + 12);
    }
    put(m_lines, handed(lines));
    put(m_fingerprint, handed(print));
    placeSlots(frame);
}

} // namespace seamclock
