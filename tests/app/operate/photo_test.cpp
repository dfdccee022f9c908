#include "app/operate/photo.h"

#include "tests/app/operate/demo_shop.h"
#include "tests/support/scratch_folder.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QImage>
#include <QProcess>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

class Photo : public testing::Test {
protected:
    QString path(const char* name) const { return QString::fromStdString(folder.file(name)); }
    QString picture(const char* name, Qt::GlobalColor colour = Qt::darkCyan) {
        QImage image(64, 48, QImage::Format_RGB32);
        image.fill(colour);
        EXPECT_TRUE(image.save(path(name)));
        return path(name);
    }

    test::ScratchFolder folder;
    QString log = path("shop.seamlog");
};

TEST_F(Photo, IsCopiedBesideTheLogUnderTheHashOfItsBytes) {
    const QString file = picture("bead.jpg");
    const auto kept = keepPhoto(file, log);
    ASSERT_TRUE(kept) << kept.error().detail;
    EXPECT_EQ(kept->name, "bead.jpg");
    EXPECT_EQ(kept->bytes, QFile(file).size());
    // The outside judge: coreutils' own sum of the copy.
    QProcess sum;
    sum.start(
        "sha256sum",
        {QDir(photoFolder(log)).filePath(QString::fromStdString(kept->sha256) + ".jpg")});
    ASSERT_TRUE(sum.waitForFinished());
    EXPECT_EQ(sum.readAllStandardOutput().left(64).toStdString(), kept->sha256);
    ASSERT_TRUE(QFile::remove(file));
    EXPECT_EQ(QDir(photoFolder(log)).entryList(QDir::Files).size(), 1);
}

TEST_F(Photo, TwiceIsOneFile) {
    const QString file = picture("bead.png");
    ASSERT_TRUE(keepPhoto(file, log));
    ASSERT_TRUE(keepPhoto(file, log));
    EXPECT_EQ(QDir(photoFolder(log)).entryList(QDir::Files).size(), 1);
    ASSERT_TRUE(keepPhoto(picture("other.png", Qt::red), log));
    EXPECT_EQ(QDir(photoFolder(log)).entryList(QDir::Files).size(), 2);
}

TEST_F(Photo, WhatIsNoneIsRefusedInOneSentence) {
    QFile text(path("note.jpg"));
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write("no picture");
    text.close();
    const auto none = keepPhoto(text.fileName(), log);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Unreadable);
    EXPECT_NE(none.error().detail.find("allowed: JPEG or PNG"), std::string::npos);
    EXPECT_EQ(keepPhoto(path("gone.jpg"), log).error().code, ErrorCode::Unreadable);
    QFile large(path("large.jpg"));
    ASSERT_TRUE(large.open(QIODevice::WriteOnly));
    ASSERT_TRUE(large.resize(kLargestPhoto + 1));
    large.close();
    EXPECT_EQ(keepPhoto(large.fileName(), log).error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(QDir(photoFolder(log)).exists()) << "nothing is left behind";
}

TEST_F(Photo, AFolderThatCannotBeMadeIsTold) {
    QFile inTheWay(photoFolder(log));
    ASSERT_TRUE(inTheWay.open(QIODevice::WriteOnly));
    inTheWay.close();
    const auto kept = keepPhoto(picture("bead.jpg"), log);
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.error().code, ErrorCode::NotWritten);
}

TEST_F(Photo, TheNewestIsOfferedFirst) {
    const QString older = picture("older.jpg");
    const QString newer = picture("newer.png", Qt::red);
    QFile file(older);
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    ASSERT_TRUE(file.setFileTime(
        QDateTime::fromSecsSinceEpoch(1'000'000'000), QFileDevice::FileModificationTime));
    file.close();
    QStringList files;
    const ChoiceView page = photoQuestion({QString::fromStdString(folder.path())}, files);
    ASSERT_EQ(files, (QStringList{newer, older}));
    EXPECT_EQ(page.choices[0].under, "newer.png");
    QStringList none;
    EXPECT_TRUE(photoQuestion({path("nowhere")}, none).choices.empty());
}

// From the page before the joint is saved to the event in its record.
TEST_F(Photo, AndGradeStandInTheRecord) {
    const QString file = picture("bead.jpg");
    Shop shop(
        QSize(1280, 800), {}, std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
        [this](WindowParts& parts) {
            parts.photos = QStringList{QString::fromStdString(folder.path())};
        });
    Walk walk(shop.window(), shop.floor(), shop.clock());
    bool looked = false;
    const auto done = walk.goodWeld([&](const QString& name) {
        if (name != "look-closer" || looked) {
            return;
        }
        looked = true;
        const auto last = static_cast<int>(shop.window().choicePage()->view().choices.size()) - 1;
        emit shop.window().choicePage()->chosen(last);
        ASSERT_EQ(shop.window().page(), PageKind::Photos);
        emit shop.window().choicePage()->chosen(0);
        while (shop.desk().isBusy()) {
            QCoreApplication::processEvents();
        }
        emit shop.window().currentPage()->slotPressed(SlotPlace::Stop); // the walk grades it
    });
    ASSERT_TRUE(done) << done.error().detail;
    ASSERT_TRUE(looked);
    int photos = 0;
    int grades = 0;
    for (const Event& event : shop.floor().weld(shop.floor().selected())->events) {
        if (const auto* photo = std::get_if<PhotoAdded>(&event.d)) {
            ++photos;
            EXPECT_TRUE(
                QFile::exists(QDir(photoFolder(QString::fromStdString(shop.log())))
                                  .filePath(QString::fromStdString(photo->sha256) + ".jpg")));
        }
        if (const auto* graded = std::get_if<Graded>(&event.d)) {
            ++grades;
            EXPECT_EQ(*graded, (Graded{"EN 16296", "B"}));
        }
    }
    EXPECT_EQ(photos, 1);
    EXPECT_EQ(grades, 1);
}

} // namespace
} // namespace seamclock
