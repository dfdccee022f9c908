#include "app/operate/photo.h"

#include "app/text/dates.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>
#include <QSaveFile>
#include <algorithm>

namespace seamclock {
namespace {

constexpr qsizetype kMostListed = 24; // two leaves

struct Photo {
    Q_DECLARE_TR_FUNCTIONS(Photo)
};

QString tr(const char* text) {
    return Photo::tr(text);
}

QStringList patterns() {
    return {"*.jpg", "*.jpeg", "*.png"};
}

} // namespace

ChoiceView photoQuestion(const QStringList& folders, QStringList& files) {
    QFileInfoList found;
    for (const QString& folder : folders) {
        found += QDir(folder).entryInfoList(patterns(), QDir::Files | QDir::Readable, QDir::Time);
    }
    std::stable_sort(found.begin(), found.end(), [](const QFileInfo& one, const QFileInfo& other) {
        return one.lastModified() > other.lastModified();
    });
    files.clear();
    ChoiceView page;
    for (const QFileInfo& file : found.mid(0, kMostListed)) {
        ChoiceView::Choice choice;
        const QDateTime taken = file.lastModified();
        choice.text = fullDayWords(taken.date()) + taken.toString(" hh:mm:ss");
        choice.under = file.fileName();
        choice.sign = Sign::Camera;
        page.choices.push_back(choice);
        files.push_back(file.filePath());
    }
    page.title = files.isEmpty() ? tr("There is no photo on this tablet yet.")
                                 : tr("Which photo? The newest comes first.");
    page.under = tr("Looked for in %1.").arg(folders.join(", "));
    page.back = hiddenSlot();
    page.stop = plainSlot(tr("Close"), tr("no photo is kept"));
    page.step = hiddenSlot();
    return page;
}

Result<PhotoAdded> keepPhoto(const QString& file, const QString& log) {
    const std::string name = "the photo \"" + file.toStdString() + "\"";
    QFile from(file);
    if (!from.open(QIODevice::ReadOnly)) {
        return fail(
            ErrorCode::Unreadable,
            name + " can't be read (" + from.errorString().toStdString() + ")");
    }
    if (from.size() > kLargestPhoto) {
        return fail(
            ErrorCode::OutOfRange, name + " has " + std::to_string(from.size()) +
                                       " bytes; allowed: up to " + std::to_string(kLargestPhoto));
    }
    const QByteArray bytes = from.readAll();
    from.seek(0);
    QImageReader reader(&from);
    const QByteArray form = reader.format();
    if (!reader.canRead() || (form != "jpeg" && form != "png")) {
        return fail(ErrorCode::Unreadable, name + " is no picture; allowed: JPEG or PNG");
    }
    PhotoAdded photo;
    photo.sha256 =
        QCryptographicHash::hash(bytes, QCryptographicHash::Sha256).toHex().toStdString();
    photo.bytes = bytes.size();
    photo.name = QFileInfo(file).fileName().toStdString();
    const QString folder = photoFolder(log);
    const QString copy = QDir(folder).filePath(
        QString::fromStdString(photo.sha256) + (form == "png" ? ".png" : ".jpg"));
    if (!QDir().mkpath(folder)) {
        return fail(
            ErrorCode::NotWritten,
            "the folder \"" + folder.toStdString() + "\" for photos can't be made");
    }
    if (QFileInfo(copy).size() == bytes.size() && QFileInfo::exists(copy)) {
        return photo;
    }
    QSaveFile to(copy); // on disk before it gets its name
    if (!to.open(QIODevice::WriteOnly) || to.write(bytes) != bytes.size() || !to.commit()) {
        return fail(
            ErrorCode::NotWritten, "\"" + copy.toStdString() + "\" can't be written (" +
                                       to.errorString().toStdString() + ")");
    }
    return photo;
}

} // namespace seamclock
