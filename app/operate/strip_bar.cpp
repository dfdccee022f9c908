#include "app/operate/strip_bar.h"

#include "app/parts/mark.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {

StripBar::StripBar(QWidget* parent) : QWidget(parent), m_status(new StatusTile(this)) {
    setObjectName("strip");
    for (int i = 0; i < 4; ++i) {
        auto* cell = new StripCell(QString("bench%1").arg(i + 1), this);
        m_cells.push_back(cell);
        cell->hide();
        connect(cell, &StripCell::pressed, this, [this, i] { emit benchPressed(i); });
    }
    connect(m_status, &StatusTile::pressed, this, &StripBar::statusPressed);
}

void StripBar::setLook(const PageLook& look) {
    m_look = look;
    for (StripCell* cell : m_cells) {
        cell->setLook(*look.theme, look.metrics);
    }
    m_status->setLook(*look.theme, look.metrics);
    place();
}

void StripBar::show(const std::vector<StripCellView>& cells, const StatusView& status) {
    bool moved = false;
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        const bool there = i < cells.size();
        moved = moved || there == m_cells[i]->isHidden();
        m_cells[i]->setVisible(there);
        if (there) {
            m_cells[i]->show(cells[i]);
        }
    }
    m_status->show(status);
    if (moved) {
        place();
    }
}

QRect StripBar::benchesPlace() const {
    const QRect status = m_status->geometry();
    const int gap = static_cast<int>(8 * m_look.metrics.perUnit);
    return m_look.mirrored
               ? QRect(status.right() + 1 + gap, 0, width() - status.width() - gap, height())
               : QRect(0, 0, status.left() - gap, height());
}

void StripBar::resizeEvent(QResizeEvent*) {
    place();
}

void StripBar::place() {
    const double k = m_look.metrics.perUnit;
    const double gap = 8 * k;
    const bool narrow = width() < 900 * k;
    const double status = (narrow ? 165 : 178) * k;
    int there = 0;
    for (const StripCell* cell : m_cells) {
        there += cell->isHidden() ? 0 : 1;
    }
    const double room = width() - status - gap;
    const double share = there > 0 ? (room - (there - 1) * gap) / there : room;
    // One bench does not need the whole width.
    const double cell = there == 1 ? std::min(share, 480 * k) : share;
    const double start = m_look.mirrored ? status + gap : 0;
    double x = start;
    for (StripCell* one : m_cells) {
        one->setGeometry(QRectF(x, 0, cell, height()).toAlignedRect());
        x += cell + gap;
    }
    const double at = m_look.mirrored ? 0 : width() - status;
    m_status->setGeometry(QRectF(at, 0, status, height()).toAlignedRect());
}

AlarmBanner::AlarmBanner(QWidget* parent) : PressPart("alarm", parent) {}

void AlarmBanner::setText(const QString& text, const QString& button) {
    if (text == m_text && button == m_button) {
        return;
    }
    m_text = text;
    m_button = button;
    setAccessibleName(text + " " + button);
    update();
}

void AlarmBanner::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Field field = theme().tone(Tone::Soon);
    painter.setPen(Qt::NoPen);
    painter.setBrush(field.field);
    painter.drawRoundedRect(rect(), px(12), px(12));
    const double mark = std::min(height() * 0.7, px(56));
    paintMark(
        painter, QRectF(px(14), (height() - mark) / 2, mark, mark), Mark::Trouble, field.on,
        theme());
    painter.setPen(field.on);
    const double button =
        m_button.isEmpty() ? 0 : textWidth(m_button, px(30), kWordWeight) + px(24);
    const double x = px(24) + mark;
    const QRectF text(x, 0, width() - x - button - px(14), height());
    const Wrapped words =
        wrapped(m_text, px(34), px(15), text.width(), 2, kSentenceWeight, text.height() - px(18));
    drawWrapped(painter, text, Qt::AlignLeft | Qt::AlignVCenter, words, kSentenceWeight);
    if (!m_button.isEmpty()) {
        const QRectF edge(width() - button - px(12), px(12), button, height() - px(24));
        painter.setPen(QPen(field.on, px(2.5)));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(edge, px(9), px(9));
        drawLine(painter, edge, Qt::AlignCenter, m_button, px(30), kWordWeight);
    }
}

} // namespace seamclock
