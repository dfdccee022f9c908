#include "app/pages/name_page.h"

#include "app/pages/line_style.h"

#include <QLineEdit>

namespace seamclock {

NamePage::NamePage(QWidget* parent)
    : Page("name", parent), m_title(keep(new Sentence("nameTitle", this))),
      m_under(keep(new Sentence("nameUnder", this))), m_line(new QLineEdit(this)) {
    m_under->setQuiet(true);
    m_line->setObjectName("nameLine");
    connect(m_line, &QLineEdit::textEdited, this, &NamePage::typed);
    connect(m_line, &QLineEdit::returnPressed, this, [this] { emit slotPressed(SlotPlace::Step); });
}

void NamePage::show(const NameView& view) {
    m_view = view;
    m_title->setText(view.title);
    m_under->setText(view.under);
    m_line->setMaxLength(view.most);
    m_line->setPlaceholderText(view.line.isEmpty() ? tr("first and last name") : view.line);
    m_line->setAccessibleName(m_line->placeholderText());
    m_back->show(view.back);
    m_stop->show(view.stop);
    m_step->show(view.step);
}

void NamePage::setName(const QString& name) {
    m_line->setText(name);
}

QString NamePage::name() const {
    return m_line->text().trimmed();
}

void NamePage::takeKeys() {
    m_line->setFocus();
}

void NamePage::lookChanged() {
    styleLine(*m_line, look());
}

void NamePage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    constexpr double kLine = 96;
    put(m_title, QRectF(body.x() + 6, body.y(), body.width() - 12, 70));
    put(m_line, QRectF(body.x(), body.y() + 76, body.width(), kLine));
    put(m_under, QRectF(body.x() + 6, body.y() + 76 + kLine + 8, body.width() - 12, 110));
    placeSlots(frame);
}

} // namespace seamclock
