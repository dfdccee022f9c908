// Photos of beads in copies of a log. A photo lies in LOG.photos under the SHA-256 of its bytes, so
// one name is one picture for ever: what a copy has already is not copied again, and all backups of
// a log share one folder, LOG.backups/photos. A copy made elsewhere has its photos in FILE.photos.
// Every photo is held against its name when it is copied; one whose bytes are others is not taken
// and told by name. None is ever removed.
#pragma once

#include "core/copies/log_copy.h"

#include <cstdint>
#include <string>
#include <vector>

namespace seamclock {

std::string photoFolderOf(const std::string& log);       // "shop.seamlog.photos"
std::string backupPhotoFolderOf(const std::string& log); // "shop.seamlog.backups/photos"
/// Where the photos of a copy lie: FILE.photos, else the folder "photos" beside it; "": neither.
std::string photosOfCopy(const std::string& copy);

struct PhotosCopied {
    std::int64_t copied = 0;
    std::int64_t there = 0;           // before
    std::vector<std::string> damaged; // names of files that are not what their names say

    bool operator==(const PhotosCopied&) const = default;
};

/// What `from` has and `to` has not; a folder `from` that is not there has none. What lies in
/// `from` under other names than photos have is left alone. Each is on disk under its name when
/// this returns. Of `options` the reserve and the stop count. NotWritten: no room, the disk
/// refused, or it was stopped; those that were copied before stay. Unreadable: `from` can't be
/// listed.
Result<PhotosCopied>
copyPhotos(const std::string& from, const std::string& to, const CopyOptions& options);

/// "2 photos are not what was kept: …"; empty: all are.
std::string damagedPhotos(const PhotosCopied& copied);

} // namespace seamclock
