// A photo that was kept of a joint: its file lies beside the log under the name of its own SHA-256,
// so that the weld's event and the picture prove each other. Whether it still does is found here.
#pragma once

#include "core/weld/event.h"

#include <QString>
#include <cstdint>
#include <string>

namespace seamclock {

enum class PhotoState { AsKept, Missing, Altered, Unreadable };

struct JointPhoto {
    PhotoAdded photo;
    std::int64_t n = 0; // of its event
    std::string by;
    PhotoState state = PhotoState::Missing;
    QString file; // where it lies, or should

    bool operator==(const JointPhoto&) const = default;
};

/// "shop.seamlog.photos" beside "shop.seamlog".
QString photoFolder(const QString& log);

/// What is known of it: its bytes are read and hashed, which waits for the disk.
PhotoState lookAtPhoto(const PhotoAdded& photo, const QString& log, QString& file);

/// "its file is missing"
QString photoStateText(PhotoState state);

} // namespace seamclock
