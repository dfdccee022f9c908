#include "app/practice/practice_strip.h"

#include "app/parts/brush.h"
#include "app/parts/type.h"

#include <QPainter>
#include <algorithm>

namespace seamclock {
namespace {

const QColor kBlack(0x0D, 0x12, 0x15);
const QColor kWhite(0xF2, 0xF5, 0xF6);

} // namespace

QString practiceWord() {
    return LessonLine::tr("PRACTICE");
}

LessonLine::LessonLine(QWidget* parent) : PressPart("lessonLine", parent) {}

void LessonLine::show(const LessonLineView& view) {
    if (view == m_view) {
        return;
    }
    m_view = view;
    setAccessibleName(spoken({view.lesson, view.time}));
    update();
}

void LessonLine::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    drawPanel(
        painter, rect(), px(14), theme().ground, m_view.pressable ? theme().edge : theme().hairline,
        px(2));
    double right = width() - px(14);
    if (m_view.pressable) {
        const double side = px(30);
        paintSign(
            painter, QRectF(right - side, (height() - side) / 2, side, side), Sign::Menu,
            theme().textSoft);
        right -= side + px(10);
    }
    const double left = px(18);
    const double room = right - left;
    const bool alone = m_view.time.isEmpty();
    const double high = alone ? height() - px(16) : height() / 2.0 - px(6);
    const Wrapped lesson = wrapped(
        m_view.lesson, std::min(textPx(25), px(32)), px(13), room, alone ? 3 : 1, kLabelWeight,
        high);
    painter.setPen(theme().text);
    drawWrapped(
        painter, QRectF(left, px(8), room, high), Qt::AlignLeft | Qt::AlignVCenter, lesson,
        kLabelWeight);
    if (!alone) {
        const double size =
            fittedSize(m_view.time, std::min(textPx(24), px(30)), px(12), room, kPlainWeight);
        painter.setPen(theme().textSoft);
        drawTabular(
            painter, QRectF(left, height() / 2.0 - px(2), room, high),
            Qt::AlignLeft | Qt::AlignVCenter, m_view.time, size, kPlainWeight);
    }
}

PracticeTag::PracticeTag(QWidget* parent) : Part("practiceTag", parent) {
    setAccessibleName(practiceWord());
}

void PracticeTag::paintEvent(QPaintEvent*) {
    if (m_stripes.size() != size() * devicePixelRatioF()) {
        m_stripes = QPixmap(size() * devicePixelRatioF());
        m_stripes.setDevicePixelRatio(devicePixelRatioF());
        m_stripes.fill(Qt::transparent);
        QPainter once(&m_stripes);
        once.setRenderHint(QPainter::Antialiasing);
        QPainterPath rounded;
        rounded.addRoundedRect(rect(), px(14), px(14));
        once.setClipPath(rounded);
        paintStripes(once, rect(), metrics());
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.drawPixmap(0, 0, m_stripes);
    painter.setPen(QPen(kWhite, px(3)));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(
        QRectF(rect()).adjusted(px(1.5), px(1.5), -px(1.5), -px(1.5)), px(13), px(13));
    const QRectF inner = QRectF(rect()).adjusted(px(34), px(14), -px(34), -px(14));
    painter.setPen(Qt::NoPen);
    painter.setBrush(kBlack);
    painter.drawRoundedRect(inner, px(8), px(8));
    const QString word = practiceWord();
    const double size = fittedSize(word, px(50), px(14), inner.width() - px(16), kWordWeight);
    painter.setPen(kWhite);
    drawLine(painter, inner, Qt::AlignCenter, word, size, kWordWeight);
}

PracticeStrip::PracticeStrip(QWidget* parent)
    : QWidget(parent), m_cell(new StripCell("practiceBench", this)), m_line(new LessonLine(this)),
      m_tag(new PracticeTag(this)) {
    setObjectName("practiceStrip");
    m_cell->hide();
    connect(m_line, &LessonLine::pressed, this, &PracticeStrip::linePressed);
    connect(m_cell, &StripCell::pressed, this, &PracticeStrip::linePressed);
}

void PracticeStrip::setLook(const PageLook& look) {
    m_look = look;
    m_cell->setLook(*look.theme, look.metrics);
    m_line->setLook(*look.theme, look.metrics);
    m_tag->setLook(*look.theme, look.metrics);
    place();
}

void PracticeStrip::show(const std::optional<StripCellView>& cell, const LessonLineView& line) {
    m_line->show(line);
    if (cell) {
        m_cell->show(*cell);
    }
    if (cell.has_value() != m_withCell) {
        m_withCell = cell.has_value();
        place();
    }
    m_cell->setVisible(m_withCell && !m_covered);
}

void PracticeStrip::setCovered(bool covered) {
    m_covered = covered;
    m_cell->setVisible(m_withCell && !covered);
    m_line->setVisible(!covered);
}

QRect PracticeStrip::freePlace() const {
    const int gap = static_cast<int>(m_look.metrics.px(10));
    const QRect tag = m_tag->geometry();
    return {0, 0, tag.left() - gap, height()};
}

void PracticeStrip::resizeEvent(QResizeEvent*) {
    place();
}

// The word stands at the right for either hand.
void PracticeStrip::place() {
    const double gap = m_look.metrics.px(10);
    const double tag = width() * (width() < m_look.metrics.px(900) ? 0.29 : 0.366);
    const double cell =
        m_withCell ? width() * (width() < m_look.metrics.px(900) ? 0.31 : 0.208) : 0;
    const double high = height();
    m_tag->setGeometry(QRectF(width() - tag, 0, tag, high).toAlignedRect());
    m_cell->setGeometry(QRectF(0, 0, cell, high).toAlignedRect());
    const double left = m_withCell ? cell + gap : 0;
    m_line->setGeometry(QRectF(left, 0, width() - tag - gap - left, high).toAlignedRect());
}

} // namespace seamclock
