#include "app/daylog/joint_photo.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImageReader>

namespace seamclock {
namespace {

struct Photos {
    Q_DECLARE_TR_FUNCTIONS(Photos)
};

} // namespace

QString photoFolder(const QString& log) {
    return log + QStringLiteral(".photos");
}

PhotoState lookAtPhoto(const PhotoAdded& photo, const QString& log, QString& file) {
    const QDir folder(photoFolder(log));
    const QString name = QString::fromStdString(photo.sha256);
    file = folder.filePath(name + QStringLiteral(".jpg"));
    if (!QFileInfo::exists(file)) {
        const QString png = folder.filePath(name + QStringLiteral(".png"));
        if (!QFileInfo::exists(png)) {
            return PhotoState::Missing;
        }
        file = png;
    }
    QFile bytes(file);
    if (!bytes.open(QIODevice::ReadOnly)) {
        return PhotoState::Unreadable;
    }
    QCryptographicHash hash(QCryptographicHash::Sha256);
    if (!hash.addData(&bytes)) {
        return PhotoState::Unreadable;
    }
    if (hash.result().toHex().toStdString() != photo.sha256) {
        return PhotoState::Altered;
    }
    return QImageReader(file).canRead() ? PhotoState::AsKept : PhotoState::Unreadable;
}

QString photoStateText(PhotoState state) {
    switch (state) {
    case PhotoState::AsKept:
        return Photos::tr("as it was kept");
    case PhotoState::Missing:
        return Photos::tr("its file is missing");
    case PhotoState::Altered:
        return Photos::tr("its file was altered");
    case PhotoState::Unreadable:
        return Photos::tr("its file can't be read");
    }
    return {};
}

} // namespace seamclock
