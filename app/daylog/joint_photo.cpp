#include "app/daylog/joint_photo.h"

#include "core/copies/photo_check.h"
#include "core/copies/photo_copies.h"

#include <QCoreApplication>
#include <QFileInfo>
#include <QImageReader>
#include <QStringList>

namespace seamclock {
namespace {

struct Photos {
    Q_DECLARE_TR_FUNCTIONS(Photos)
};

QString begins(const std::string& sum) {
    return QString::fromStdString(sum.substr(0, 8)) + QStringLiteral("…");
}

/// In groups, so that a line can end between them.
QString whole(const std::string& sum) {
    QStringList groups;
    for (std::size_t at = 0; at < sum.size(); at += 8) {
        groups << QString::fromStdString(sum.substr(at, 8));
    }
    return groups.join(QLatin1Char(' '));
}

QString told(const JointPhoto& photo, QString (*sum)(const std::string&)) {
    const QString name = QString::fromStdString(photo.photo.name);
    const QString expected = sum(photo.photo.sha256);
    switch (photo.state) {
    case PhotoState::AsKept:
        return Photos::tr("%1 is as it was kept").arg(name);
    case PhotoState::Missing:
        return Photos::tr("%1 is missing: expected SHA-256 %2").arg(name, expected);
    case PhotoState::Altered:
        return Photos::tr("%1 was changed: expected SHA-256 %2, found %3")
            .arg(name, expected, sum(photo.found));
    case PhotoState::Unreadable:
        return Photos::tr("%1 can't be read: expected SHA-256 %2").arg(name, expected);
    case PhotoState::LeftBehind:
        return Photos::tr("%1 lies beside the shop's own log, not beside this copy: SHA-256 %2")
            .arg(name, expected);
    }
    return {};
}

} // namespace

QString photoFolder(const QString& log) {
    return log + QStringLiteral(".photos");
}

JointPhoto lookAtPhoto(const PhotoAdded& photo, const QString& log) {
    JointPhoto out;
    out.photo = photo;
    const std::string beside = photosOfCopy(log.toStdString());
    const PhotoFile file =
        findPhoto(beside.empty() ? photoFolder(log).toStdString() : beside, photo.sha256);
    out.file = QString::fromStdString(file.path);
    out.found = file.sha256;
    if (!file.there) {
        out.state = PhotoState::Missing;
    } else if (!file.sha256.empty() && file.sha256 != photo.sha256) {
        out.state = PhotoState::Altered;
    } else if (file.sha256.empty() || !QImageReader(out.file).canRead()) {
        out.state = PhotoState::Unreadable;
    } else {
        out.state = PhotoState::AsKept;
    }
    return out;
}

bool isTrouble(PhotoState state) {
    return state != PhotoState::AsKept && state != PhotoState::LeftBehind;
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
    case PhotoState::LeftBehind:
        return Photos::tr("beside the shop's own log");
    }
    return {};
}

QString photoLine(const JointPhoto& photo) {
    return told(photo, begins);
}

QString photoSentence(const JointPhoto& photo) {
    if (photo.state == PhotoState::LeftBehind) {
        return told(photo, whole) + QLatin1Char('.');
    }
    return Photos::tr("%1. Its place is the folder %2.")
        .arg(told(photo, whole), QFileInfo(photo.file).path());
}

QString photosTrouble(const std::vector<JointPhoto>& photos) {
    const JointPhoto* first = nullptr;
    int count = 0;
    for (const JointPhoto& photo : photos) {
        if (isTrouble(photo.state)) {
            first = first == nullptr ? &photo : first;
            ++count;
        }
    }
    if (first == nullptr) {
        return {};
    }
    return count == 1 ? Photos::tr("Photo %1").arg(photoLine(*first))
                      : Photos::tr("%1 photos are not as they were kept. The first: %2")
                            .arg(count)
                            .arg(photoLine(*first));
}

} // namespace seamclock
