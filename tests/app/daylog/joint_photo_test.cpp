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
    PhotoState state(const PhotoAdded& photo) { return lookAtPhoto(photo, log).state; }

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
    const JointPhoto seen = lookAtPhoto(photo, log);
    EXPECT_EQ(seen.file, where);
    // The sentence says both sums, whole, as another program's hash of the file has them.
    QFile again(where);
    ASSERT_TRUE(again.open(QIODevice::ReadOnly));
    const QString now =
        QCryptographicHash::hash(again.readAll(), QCryptographicHash::Sha256).toHex();
    const QString told = photoSentence(seen);
    const QString bare = QString(told).remove(QLatin1Char(' '));
    EXPECT_TRUE(told.startsWith("a.png was changed: expected SHA-256 ")) << told.toStdString();
    EXPECT_TRUE(bare.contains("SHA-256" + QString::fromStdString(photo.sha256)))
        << told.toStdString();
    EXPECT_TRUE(bare.contains("found" + now)) << told.toStdString();
    EXPECT_TRUE(told.contains(photoFolder(log))) << told.toStdString();
    EXPECT_EQ(
        photosTrouble({seen}), QString("Photo a.png was changed: expected SHA-256 %1…, found %2…")
                                   .arg(QString::fromStdString(photo.sha256).left(8), now.left(8)));
}

TEST_F(JointPhotoTest, TellsHowManyAndTheFirstWhereSeveralAreNotAsKept) {
    const PhotoAdded photo = kept();
    const JointPhoto good = lookAtPhoto(photo, log);
    EXPECT_TRUE(photosTrouble({good, good}).isEmpty());
    ASSERT_TRUE(QFile::remove(where));
    const JointPhoto gone = lookAtPhoto(photo, log);
    EXPECT_TRUE(gone.file.startsWith(photoFolder(log))) << "where it should lie";
    const QString sum = QString::fromStdString(photo.sha256).left(8);
    EXPECT_EQ(
        photosTrouble({good, gone, gone}),
        "2 photos are not as they were kept. The first: a.png is missing: expected SHA-256 " + sum +
            "…");
}

TEST_F(JointPhotoTest, ACopyHasItsPhotosInAFolderBesideIt) {
    const PhotoAdded photo = kept();
    const QString shared = QString::fromStdString(folder.file("photos"));
    ASSERT_TRUE(QDir().rename(photoFolder(log), shared));
    EXPECT_EQ(lookAtPhoto(photo, log).state, PhotoState::AsKept);
}

TEST_F(JointPhotoTest, EachStateHasItsWords) {
    std::set<QString> words;
    for (const PhotoState one :
         {PhotoState::AsKept, PhotoState::Missing, PhotoState::Altered, PhotoState::Unreadable,
          PhotoState::LeftBehind}) {
        words.insert(photoStateText(one));
    }
    EXPECT_EQ(words.size(), 5U);
}

} // namespace
} // namespace seamclock
