#include "core/copies/photo_copies.h"

#include "core/base/posix.h"
#include "core/base/uuid.h"
#include "core/copies/photo_check.h"
#include "core/log/connection.h"
#include "core/log/log_lock.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <optional>
#include <sys/statvfs.h>
#include <system_error>
#include <unistd.h>

namespace seamclock {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kDigits = 64; // of a SHA-256

/// "…64 digits….jpg"; the digits.
std::optional<std::string> hashInName(const fs::path& file) {
    const std::string digits = file.stem().string();
    const std::string form = file.extension().string();
    const bool isHex = std::all_of(digits.begin(), digits.end(), [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
    });
    const bool isPhoto = digits.size() == kDigits && isHex && (form == ".jpg" || form == ".png");
    return isPhoto ? std::optional(digits) : std::nullopt;
}

bool isWhat(const fs::path& file, const std::string& hash) {
    const auto bytes = photoBytes(file.string());
    return bytes && sha256Hex(*bytes) == hash;
}

tl::unexpected<Error> notWritten(const std::string& place) {
    return fail(ErrorCode::NotWritten, place + ": can't be written (" + std::strerror(errno) + ")");
}

/// Under its name only when it is whole and on disk.
Result<void> write(const std::string& place, const std::string& bytes) {
    const std::string part = place + ".part";
    const FileHandle file(::open(part.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644));
    if (file.get() < 0) {
        return notWritten(place);
    }
    std::size_t done = 0;
    while (done < bytes.size()) {
        const ssize_t some = ::write(file.get(), bytes.data() + done, bytes.size() - done);
        if (some < 0 && errno == EINTR) {
            continue;
        }
        if (some <= 0) {
            auto failed = notWritten(place);
            ::unlink(part.c_str());
            return failed;
        }
        done += static_cast<std::size_t>(some);
    }
    if (fsync(file.get()) != 0 || ::rename(part.c_str(), place.c_str()) != 0) {
        auto failed = notWritten(place);
        ::unlink(part.c_str());
        return failed;
    }
    return {};
}

Result<void> checkRoom(const std::string& folder, std::size_t bytes, std::int64_t reserve) {
    struct statvfs facts {};
    if (statvfs(folder.c_str(), &facts) != 0) {
        return notWritten(folder);
    }
    const std::uint64_t room = static_cast<std::uint64_t>(facts.f_bavail) * facts.f_frsize;
    if (room < bytes + static_cast<std::uint64_t>(reserve)) {
        return fail(
            ErrorCode::NotWritten,
            folder + ": has " + std::to_string(room / 1'000'000) +
                " MB free, too little for the photos and what must stay free beside them");
    }
    return {};
}

void bringToDisk(const std::string& folder) {
    const FileHandle file(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (file.get() >= 0) {
        static_cast<void>(fsync(file.get())); // a network share may know no such thing
    }
}

} // namespace

std::string photoFolderOf(const std::string& log) {
    return absolutePath(log) + ".photos";
}

std::string backupPhotoFolderOf(const std::string& log) {
    return absolutePath(log) + ".backups/photos";
}

std::string photosOfCopy(const std::string& copy) {
    const fs::path place = absolutePath(copy);
    std::error_code unknown;
    for (const fs::path& folder :
         {fs::path(place.string() + ".photos"), place.parent_path() / "photos"}) {
        if (fs::is_directory(folder, unknown)) {
            return folder.string();
        }
    }
    return {};
}

Result<PhotosCopied>
copyPhotos(const std::string& from, const std::string& to, const CopyOptions& options) {
    PhotosCopied out;
    std::vector<fs::path> found;
    std::error_code gone;
    for (fs::directory_iterator at(from, gone), end; !gone && at != end; at.increment(gone)) {
        if (hashInName(at->path())) {
            found.push_back(at->path());
        }
    }
    if (gone && gone != std::errc::no_such_file_or_directory) {
        return fail(
            ErrorCode::Unreadable, from + ": the photos can't be listed (" + gone.message() + ")");
    }
    if (found.empty()) {
        return out;
    }
    std::sort(found.begin(), found.end());
    std::error_code why;
    fs::create_directories(to, why);
    if (!fs::is_directory(to, why)) {
        return fail(ErrorCode::NotWritten, to + ": the folder for photos can't be made");
    }
    for (const fs::path& file : found) {
        if (options.stop != nullptr && options.stop->stopped()) {
            return fail(
                ErrorCode::NotWritten, to + ": the copy was stopped before it was complete");
        }
        const std::string hash = *hashInName(file);
        const fs::path place = fs::path(to) / file.filename();
        std::error_code unknown;
        // Names are never given twice, so a file of the right size was held against its name when
        // it was copied.
        if (fs::file_size(place, unknown) == fs::file_size(file, why) && !unknown && !why) {
            ++out.there;
            continue;
        }
        const auto bytes = photoBytes(file.string());
        if (!bytes || sha256Hex(*bytes) != hash) {
            out.damaged.push_back(file.filename().string());
            continue;
        }
        if (auto room = checkRoom(to, bytes->size(), options.reserveBytes); !room) {
            return tl::unexpected<Error>(room.error());
        }
        if (auto written = write(place.string(), *bytes); !written) {
            return tl::unexpected<Error>(written.error());
        }
        if (!isWhat(place, hash)) {
            return fail(ErrorCode::NotWritten, place.string() + ": was not written as it was read");
        }
        ++out.copied;
    }
    if (out.copied > 0) {
        bringToDisk(to);
    }
    return out;
}

std::string damagedPhotos(const PhotosCopied& copied) {
    if (copied.damaged.empty()) {
        return {};
    }
    std::string names;
    for (const std::string& name : copied.damaged) {
        names += (names.empty() ? "" : ", ") + name;
    }
    return std::to_string(copied.damaged.size()) +
           (copied.damaged.size() == 1 ? " photo is" : " photos are") +
           " not what was kept: " + names;
}

} // namespace seamclock
