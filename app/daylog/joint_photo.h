// A photo that was kept of a joint: its file lies beside the log under the name of its own SHA-256,
// so that the weld's event and the picture prove each other. Whether it still does is found here
// (core/copies/photo_check.h), and told with what was expected and what was found.
#pragma once

#include "core/weld/event.h"

#include <QString>
#include <cstdint>
#include <string>
#include <vector>

namespace seamclock {

/// LeftBehind: what is read is a copy that took no photos along; nothing is known of them here.
enum class PhotoState { AsKept, Missing, Altered, Unreadable, LeftBehind };
/// Somebody ought to look after it.
bool isTrouble(PhotoState state);

struct JointPhoto {
    PhotoAdded photo;
    std::int64_t n = 0; // of its event
    std::string by;
    PhotoState state = PhotoState::Missing;
    QString file;      // where it lies, or should
    std::string found; // SHA-256 of its bytes as they are now; "": none could be read

    bool operator==(const JointPhoto&) const = default;
};

/// "shop.seamlog.photos" beside "shop.seamlog".
QString photoFolder(const QString& log);

/// What is known of it: its bytes are read and hashed, which waits for the disk. A copy's photos
/// may lie in a folder "photos" beside it.
JointPhoto lookAtPhoto(const PhotoAdded& photo, const QString& log);

/// "its file is missing"
QString photoStateText(PhotoState state);
/// "crack.jpg was changed: expected SHA-256 ba7816bf…, found 9c56cc51…"; for a line.
QString photoLine(const JointPhoto& photo);
/// The same with the whole sums and the folder; for a page.
QString photoSentence(const JointPhoto& photo);
/// Of those that are not as they were kept: the one, or how many and the first; empty: all are.
QString photosTrouble(const std::vector<JointPhoto>& photos);

} // namespace seamclock
