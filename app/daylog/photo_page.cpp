#include "app/daylog/photo_page.h"

#include "app/parts/brush.h"
#include "app/parts/mark.h"
#include "app/parts/type.h"

#include <QPainter>

namespace seamclock {

PhotoPart::PhotoPart(QWidget* parent) : Part("photoPicture", parent) {}

void PhotoPart::setImage(const QImage& image, const QString& words) {
    m_image = image;
    m_words = words;
    setAccessibleName(words);
    update();
}

void PhotoPart::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    drawPanel(painter, rect(), px(14), theme().panel, theme().hairline, px(1.5));
    const QRectF inside = QRectF(rect()).adjusted(px(8), px(8), -px(8), -px(8));
    if (!m_image.isNull()) {
        QSizeF size = m_image.size();
        size.scale(inside.size(), Qt::KeepAspectRatio);
        QRectF at(QPointF(), size);
        at.moveCenter(inside.center());
        painter.drawImage(at, m_image);
        return;
    }
    painter.setPen(theme().text);
    const Wrapped words =
        wrapped(m_words, px(34), px(16), inside.width(), 8, kSentenceWeight, inside.height() / 2);
    drawWrapped(painter, inside, Qt::AlignCenter, words, kSentenceWeight);
}

PhotoPage::PhotoPage(QWidget* parent)
    : Page("photo", parent), m_title(keep(new Sentence("photoTitle", this))),
      m_part(keep(new PhotoPart(this))) {}

void PhotoPage::show(const JointPhoto& photo) {
    m_photo = photo;
    m_there = false;
    const QString name = QString::fromStdString(photo.photo.name);
    m_title->setText(
        tr("%1, event %2: %3").arg(name).arg(photo.n).arg(photoStateText(photo.state)));
    m_title->setLate(isTrouble(photo.state));
    m_part->setImage(
        {}, photo.state == PhotoState::AsKept ? tr("One moment") : photoSentence(photo));
    m_back->show(hiddenSlot());
    m_stop->show(hiddenSlot());
    m_step->show(stepSlot(tr("Back to the log"), false));
}

void PhotoPage::setImage(const QImage& image) {
    m_there = !image.isNull();
    m_part->setImage(image, m_title->text());
}

void PhotoPage::place() {
    const Frame frame = frameOf(units(), FrameKind::Page, look().mirrored);
    const QRectF body = frame.body;
    put(m_title, QRectF(body.x() + 6, body.y(), body.width() - 12, 60));
    put(m_part, body.adjusted(0, 66, 0, 0));
    placeSlots(frame);
}

} // namespace seamclock
