// A photo that was kept of a joint, as large as the screen, with what is known of its file: whether
// its bytes are still those that were kept.
#pragma once

#include "app/daylog/joint_photo.h"
#include "app/pages/page.h"

#include <QImage>

namespace seamclock {

class PhotoPart : public Part {
public:
    explicit PhotoPart(QWidget* parent = nullptr);

    void setImage(const QImage& image, const QString& words);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QImage m_image;
    QString m_words; // where there is no picture
};

class PhotoPage : public Page {
    Q_OBJECT

public:
    explicit PhotoPage(QWidget* parent = nullptr);

    /// Its picture comes later.
    void show(const JointPhoto& photo);
    using QWidget::show;
    void setImage(const QImage& image);
    const JointPhoto& photo() const { return m_photo; }
    bool hasImage() const { return m_there; }

protected:
    void place() override;

private:
    JointPhoto m_photo;
    bool m_there = false;
    Sentence* m_title;
    PhotoPart* m_part;
};

} // namespace seamclock
