#include "app/practice/tell_page.h"

#include "app/parts/brush.h"
#include "app/parts/sign.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {

TellText::TellText(QWidget* parent) : Part("tellText", parent) {}

void TellText::show(const TellView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken(QStringList{view.title} + view.lines));
    update();
}

void TellText::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    drawPanel(
        painter, rect(), px(14), look.panel,
        look.kind == ThemeKind::Contrast ? look.edge : QColor(Qt::transparent), px(2));
    const double inset = px(30);
    double left = inset;
    const double right = width() - inset;
    if (m_view.sign) {
        const double side = px(64);
        paintSign(painter, QRectF(left, px(28), side, side), *m_view.sign, look.text);
        left += side + px(22);
    }
    const double head = px(104);
    const Wrapped title = wrapped(
        m_view.title, std::min(textPx(44), px(56)), px(20), right - left, 2, kWordWeight, head);
    painter.setPen(look.text);
    drawWrapped(
        painter, QRectF(left, px(20), right - left, head), Qt::AlignLeft | Qt::AlignVCenter, title,
        kWordWeight);

    // The paragraphs in one size, the largest at which all of them fit.
    const double top = px(20) + head + px(14);
    const double bar = m_view.progress ? px(56) : 0;
    const double free = height() - top - bar - px(24);
    const double wide = right - inset;
    double size = std::min(textPx(29), px(44));
    std::vector<Wrapped> blocks;
    double gap = 0;
    for (; size > px(13); size -= px(1)) {
        blocks.clear();
        gap = size * 0.85;
        double high = 0;
        bool whole = true;
        for (const QString& line : m_view.lines) {
            blocks.push_back(wrapped(line, size, size, wide, 8, kPlainWeight));
            high += wrappedHeight(blocks.back()) + gap;
            whole = whole && blocks.back().fits;
        }
        if (whole && high - gap <= free) {
            break;
        }
    }
    double y = top;
    for (const Wrapped& block : blocks) {
        const double high = wrappedHeight(block);
        drawWrapped(
            painter, QRectF(inset, y, wide, high), Qt::AlignLeft | Qt::AlignTop, block,
            kPlainWeight);
        y += high + gap;
    }
    if (m_view.progress) {
        const QRectF box(inset, height() - px(56), wide, px(24));
        drawPanel(painter, box, px(8), look.raised, look.edge, px(2));
        const double done = std::clamp(*m_view.progress, 0.0, 1.0) * box.width();
        drawPanel(
            painter, QRectF(box.left(), box.top(), done, box.height()), px(8), look.text,
            Qt::transparent, 0);
    }
}

TellPage::TellPage(QWidget* parent) : Page("tell", parent), m_text(keep(new TellText(this))) {}

void TellPage::show(const TellView& view) {
    m_view = view;
    m_text->show(view);
    m_back->show(view.back);
    m_stop->show(view.stop);
    m_step->show(view.step);
}

void TellPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    put(m_text, frame.body);
    placeSlots(frame);
}

} // namespace seamclock
