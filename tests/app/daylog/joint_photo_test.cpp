#include "app/daylog/joint_photo.h"

#include "tests/support/scratch_folder.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QImage>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

class JointPhotoTest : public testing::Test {
protected:
    /// A picture beside the log under the hash of its bytes; its event.
    PhotoAdded kept() {
        QImage image(40, 30, QImage::Format_RGB32);
        image.fill(Qt::darkGreen);
        const QString first = QString::fromStdString(folder.file("a.png"));
        EXPECT_TRUE(image.save(first));
        QFile file(first);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        const QByteArray bytes = file.readAll();
        PhotoAdded photo;
        photo.sha256 =
            QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toStdString();
        photo.bytes = bytes.size();
        photo.name = "a.png";
        EXPECT_TRUE(QDir().mkpath(photoFolder(log)));
        where = QDir(photoFolder(log)).filePath(QString::fromStdString(photo.sha256) + ".png");
        EXPECT_TRUE(QFile::copy(first, where));
        return photo;
    }
    PhotoState state(const PhotoAdded& photo) {
        QString file;
        const PhotoState found = lookAtPhoto(photo, log, file);
        return found;
    }

    test::ScratchFolder folder;
    QString log = QString::fromStdString(folder.file("shop.seamlog"));
    QString where;
};

TEST_F(JointPhotoTest, IsAsItWasKeptWhileItsBytesAre) {
    EXPECT_EQ(state(kept()), PhotoState::AsKept);
}

TEST_F(JointPhotoTest, IsMissingWhenItsFileIsGone) {
    const PhotoAdded photo = kept();
    ASSERT_TRUE(QFile::remove(where));
    EXPECT_EQ(state(photo), PhotoState::Missing);
}

TEST_F(JointPhotoTest, IsAlteredByOneByte) {
    const PhotoAdded photo = kept();
    QFile file(where);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.seek(file.size() - 5));
    char last = 0;
    ASSERT_TRUE(file.getChar(&last));
    ASSERT_TRUE(file.seek(file.size() - 5));
    ASSERT_TRUE(file.putChar(static_cast<char>(last ^ 1)));
    file.close();
    EXPECT_EQ(state(photo), PhotoState::Altered);
    QString at;
    lookAtPhoto(photo, log, at);
    EXPECT_EQ(at, where);
}

TEST_F(JointPhotoTest, EachStateHasItsWords) {
    std::set<QString> words;
    for (const PhotoState one :
         {PhotoState::AsKept, PhotoState::Missing, PhotoState::Altered, PhotoState::Unreadable}) {
        words.insert(photoStateText(one));
    }
    EXPECT_EQ(words.size(), 4U);
}

} // namespace
} // namespace seamclock
