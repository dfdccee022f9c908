#include "app/setup/form_cell.h"

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/type.h"

#include <QEvent>
#include <QLineEdit>
#include <QPainter>

namespace seamclock {

FormCell::FormCell(const QString& name, QWidget* parent)
    : PressPart(name, parent), m_line(new QLineEdit(this)) {
    m_line->setObjectName(name + "Line");
    m_line->setFrame(false);
    m_line->setMaxLength(1000);
    m_line->installEventFilter(this);
    styleLine();
    connect(m_line, &QLineEdit::textEdited, this, &FormCell::typed);
    connect(m_line, &QLineEdit::returnPressed, this, &FormCell::entered);
    connect(this, &PressPart::pressed, this, [this] {
        if (isTyped()) {
            takeKeys();
        } else {
            emit asked();
        }
    });
}

bool FormCell::isTyped() const {
    return m_field.kind == FormField::Kind::Text || m_field.kind == FormField::Kind::Number ||
           m_field.kind == FormField::Kind::Numbers;
}

void FormCell::takeKeys() {
    m_line->setFocus();
}

void FormCell::type(const QString& text) {
    emit typed(text);
}

void FormCell::show(const FormField& field, bool late) {
    m_field = field;
    m_late = late;
    m_line->setVisible(isTyped());
    m_line->setAccessibleName(spoken({field.caption, field.value, field.finding}));
    if (m_line->hasFocus() && m_line->text() != field.value) {
        m_line->setText(field.value);
    }
    setAccessibleName(spoken({field.caption, field.value, field.finding}));
    update();
}

bool FormCell::eventFilter(QObject* watched, QEvent* event) {
    if (watched == m_line &&
        (event->type() == QEvent::FocusIn || event->type() == QEvent::FocusOut)) {
        // A long value is painted on two lines; only while it is typed does it scroll in one.
        const bool in = event->type() == QEvent::FocusIn;
        m_line->setText(in ? m_field.value : QString());
        update();
        if (in) {
            emit focused();
        }
    }
    return false;
}

void FormCell::resizeEvent(QResizeEvent*) {
    placeLine();
}

void FormCell::lookChanged() {
    styleLine();
    placeLine();
}

void FormCell::styleLine() {
    m_line->setFont(partFont(px(26), kLabelWeight));
    m_line->setStyleSheet(
        QString("QLineEdit { background: transparent; color: %1; border: none; padding: 0px; }")
            .arg(theme().text.name()));
}

void FormCell::placeLine() {
    m_line->setGeometry(
        QRectF(px(12), px(40), width() - px(24), height() - px(46)).toAlignedRect());
}

void FormCell::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Theme& look = theme();
    const bool shown = m_field.kind == FormField::Kind::Shown;
    const bool focused = m_line->hasFocus() && isTyped();
    const QColor edge = m_late    ? look.tone(Tone::Late).ink
                        : focused ? look.tone(Tone::Act).ink
                                  : look.edge;
    drawPanel(
        painter, rect(), px(12), shown ? QColor(Qt::transparent) : look.panel,
        shown && !m_late ? look.hairline : edge, px(m_late || focused ? 4 : 1.5));
    double left = px(13);
    if (m_late) {
        const double side = px(22);
        paintMark(
            painter, QRectF(left, px(10), side, side), Mark::Late, look.tone(Tone::Late).ink, look);
        left += side + px(6);
    }
    const double wide = width() - left - px(10);
    painter.setPen(look.textSoft);
    const double caption =
        fittedSize(m_field.caption, std::min(textPx(20), px(24)), px(13), wide, kPlainWeight);
    drawLine(
        painter, QRectF(left, px(7), wide, px(28)), Qt::AlignLeft | Qt::AlignVCenter,
        m_field.caption, caption, kPlainWeight);
    if (focused) {
        return;
    }
    painter.setPen(look.text);
    const QRectF box(px(13), px(38), width() - px(26), height() - px(46));
    const Wrapped value =
        wrapped(m_field.value, px(26), px(13), box.width(), 2, kLabelWeight, box.height());
    drawWrapped(painter, box, Qt::AlignLeft | Qt::AlignVCenter, value, kLabelWeight);
}

} // namespace seamclock
