#include "app/operate/strip_bar.h"

#include "app/parts/brush.h"
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
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        const bool there = i < cells.size();
        m_cells[i]->setVisible(there && !m_covered);
        if (there) {
            m_cells[i]->show(cells[i]);
        }
    }
    m_status->show(status);
    if (m_benches != cells.size()) {
        m_benches = cells.size();
        place();
    }
}

void StripBar::setCovered(bool covered) {
    m_covered = covered;
    for (std::size_t i = 0; i < m_cells.size(); ++i) {
        m_cells[i]->setVisible(i < m_benches && !covered);
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
    const auto there = static_cast<int>(m_benches);
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

void AlarmBanner::setText(const QString& text, const QString& button, bool calm) {
    if (text == m_text && button == m_button && calm == m_calm) {
        return;
    }
    m_text = text;
    m_button = button;
    m_calm = calm;
    setAccessibleName(text + " " + button);
    update();
}

void AlarmBanner::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    const Field field = look.tone(Tone::Soon);
    const QColor ink = m_calm ? look.text : field.on;
    const double mark = std::min(height() * 0.7, px(56));
    const QRectF place(px(14), (height() - mark) / 2, mark, mark);
    if (m_calm) {
        drawPanel(painter, rect(), px(12), look.panel, look.edge, px(1.5));
        paintMark(painter, place, Mark::Done, look.tone(Tone::Normal).ink, look);
    } else {
        painter.setPen(Qt::NoPen);
        painter.setBrush(field.field);
        painter.drawRoundedRect(rect(), px(12), px(12));
        paintMark(painter, place, Mark::Trouble, field.on, look);
    }
    painter.setPen(ink);
    const double button =
        m_button.isEmpty() ? 0 : textWidth(m_button, px(30), kWordWeight) + px(24);
    const double x = px(24) + mark;
    const QRectF text(x, 0, width() - x - button - px(14), height());
    const Wrapped words =
        wrapped(m_text, px(34), px(15), text.width(), 2, kSentenceWeight, text.height() - px(18));
    drawWrapped(painter, text, Qt::AlignLeft | Qt::AlignVCenter, words, kSentenceWeight);
    if (!m_button.isEmpty()) {
        const QRectF edge(width() - button - px(12), px(12), button, height() - px(24));
        painter.setPen(QPen(ink, px(2.5)));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(edge, px(9), px(9));
        drawLine(painter, edge, Qt::AlignCenter, m_button, px(30), kWordWeight);
    }
}

} // namespace seamclock
