// Whether the photos that a log names still lie beside it as they were kept. An event holds the
// SHA-256 of a photo's bytes and its file is named by it, so picture and event prove each other;
// but the chain covers the event alone, and a file that went or was changed has to be looked for.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// A photo's file as it is now.
struct PhotoFile {
    std::string path;   // where it lies, or should
    bool there = false; // under its name
    std::string sha256; // of its bytes; "": they can't be read

    bool operator==(const PhotoFile&) const = default;
};

/// The photo of that SHA-256 in `folder`. Its bytes are read and hashed, which waits for the disk.
PhotoFile findPhoto(const std::string& folder, const std::string& sha256);

/// A file's bytes; absent: they can't be read.
std::optional<std::string> photoBytes(const std::string& file);

struct PhotoFinding {
    std::int64_t number = 0; // of the joint
    std::int64_t n = 0;      // of the event that names the photo
    std::string file;
    std::string expected; // SHA-256
    std::string found;    // likewise; "": no file, or one that can't be read
    std::string sentence; // which says all of it

    bool operator==(const PhotoFinding&) const = default;
};

struct PhotoCheck {
    std::int64_t named = 0; // by events of the log's own chain
    std::vector<PhotoFinding> findings;
    std::string note; // why they were not looked at; "": they were

    bool operator==(const PhotoCheck&) const = default;
};

/// Every photo that the log names. A copy that has no folder of photos beside it is told in a note:
/// it may have left them at home. Errors as LogReader::open's.
Result<PhotoCheck> checkPhotos(const std::string& log);

} // namespace seamclock
