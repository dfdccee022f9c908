#include "core/copies/backup.h"

#include "core/base/posix.h"
#include "core/log/connection.h"
#include "core/log/log_lock.h"
#include "core/log/spill.h"
#include "core/log/verify.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <functional>
#include <set>
#include <sys/file.h>
#include <system_error>
#include <unistd.h>

namespace seamclock {

namespace {

namespace fs = std::filesystem;

constexpr const char* kEnding = ".seamlog";
constexpr std::size_t kIdDigits = 8;
constexpr std::size_t kDayLength = 10; // 2030-01-07

bool isDay(const std::string& text) {
    if (text.size() != kDayLength) {
        return false;
    }
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool dash = i == 4 || i == 7;
        if (dash ? text[i] != '-' : text[i] < '0' || text[i] > '9') {
            return false;
        }
    }
    return true;
}

/// The days of this log's backups in a folder.
std::vector<std::string> daysIn(const std::string& folder, const std::string& logId) {
    std::vector<std::string> out;
    std::error_code gone;
    for (fs::directory_iterator at(folder, gone), end; !gone && at != end; at.increment(gone)) {
        const std::string name = at->path().filename().string();
        const std::string day = name.substr(0, kDayLength);
        if (isDay(day) && name == backupName(day, logId)) {
            out.push_back(day);
        }
    }
    return out;
}

/// What an interrupted backup of an earlier day left; nobody else is making one now.
void removeLeftovers(const std::string& folder, const std::string& logId) {
    std::vector<fs::path> left;
    std::error_code gone;
    for (fs::directory_iterator at(folder, gone), end; !gone && at != end; at.increment(gone)) {
        const std::string name = at->path().filename().string();
        const std::string day = name.substr(0, 1 + kDayLength).erase(0, 1);
        if (isDay(day) && name.rfind("." + backupName(day, logId) + ".part", 0) == 0) {
            left.push_back(at->path());
        }
    }
    for (const fs::path& one : left) {
        std::error_code ignored;
        fs::remove(one, ignored);
    }
}

/// Held while a backup is made in that folder; on the folder itself, so that no file is needed.
Result<FileHandle> soleMakerIn(const std::string& folder) {
    FileHandle handle(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (handle.get() < 0) {
        return fail(
            ErrorCode::NotWritten, folder + ": can't be opened (" + std::strerror(errno) + ")");
    }
    if (flock(handle.get(), LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK) {
        return fail(ErrorCode::Conflict, folder + ": another program is making a backup there");
    }
    return handle;
}

Result<void> makeFolder(const std::string& folder) {
    std::error_code why;
    if (fs::is_directory(folder, why)) {
        return {};
    }
    fs::create_directory(folder, why);
    if (why || !fs::is_directory(folder, why)) {
        return fail(
            ErrorCode::NotWritten, folder + ": can't be made (" +
                                       (why ? why.message() : "there is a file of that name") +
                                       ")");
    }
    return {};
}

/// What of a log that stood there would be taken for a part of the new one.
Result<void> checkNothingThere(const std::string& place, const std::string& named) {
    std::error_code unknown;
    if (fs::exists(fs::symlink_status(place, unknown))) {
        return fail(
            ErrorCode::Conflict, named + ": is there, and a log is never overwritten; allowed: a "
                                         "name that is free. Put the old log aside first, with "
                                         "all files whose names begin with its own");
    }
    for (const char* tail : {"-wal", "-journal"}) {
        if (fs::exists(place + tail, unknown)) {
            return fail(
                ErrorCode::Conflict,
                named + tail + ": belongs to a log that stood here; put it aside too");
        }
    }
    const auto spilled = readSpill(place + ".spill");
    if (!spilled || !spilled->empty()) {
        return fail(
            ErrorCode::Conflict, named +
                                     ".spill: holds rows of a log that stood here; put it aside "
                                     "too");
    }
    return {};
}

} // namespace

std::string backupFolderOf(const std::string& log) {
    return absolutePath(log) + ".backups";
}

std::string backupName(const std::string& day, const std::string& logId) {
    return day + "-" + logId.substr(0, kIdDigits) + kEnding;
}

std::vector<std::string> daysToDrop(std::vector<std::string> days) {
    std::sort(days.begin(), days.end(), std::greater<>());
    std::vector<std::string> out;
    std::set<std::string> months;
    for (std::size_t i = kDaysKept; i < days.size(); ++i) {
        const std::string month = days[i].substr(0, 7);
        const bool known = months.count(month) > 0;
        if (known || months.size() == kMonthsKept) {
            out.push_back(days[i]);
        } else {
            months.insert(month);
        }
    }
    return out;
}

Result<DailyBackup>
backUpDay(const std::string& log, const std::string& day, const CopyOptions& options, bool again) {
    if (!isDay(day)) {
        return fail(
            ErrorCode::Malformed,
            "the date \"" + day + "\" is none; allowed 0000-01-01 to 9999-12-31");
    }
    const auto id = logIdOf(log);
    if (!id) {
        return tl::unexpected<Error>(id.error());
    }
    const std::string folder = backupFolderOf(log);
    if (auto made = makeFolder(folder); !made) {
        return tl::unexpected<Error>(std::move(made.error()));
    }
    const auto sole = soleMakerIn(folder);
    if (!sole) {
        return tl::unexpected<Error>(sole.error());
    }
    DailyBackup out;
    out.file = (fs::path(folder) / backupName(day, *id)).string();
    removeLeftovers(folder, *id);
    std::error_code unknown;
    if (!again && fs::exists(out.file, unknown)) {
        const auto there = readCopy(out.file);
        if (there && there->logId == *id) {
            return out;
        }
        return fail(
            ErrorCode::Conflict, out.file + ": is there already and is no copy of this log; it is "
                                            "left as it is");
    }
    CopyOptions daily = options;
    daily.replace = true;
    auto copy = copyLog(log, out.file, daily);
    if (!copy) {
        return tl::unexpected<Error>(std::move(copy.error()));
    }
    out.made = std::move(*copy);
    for (const std::string& old : daysToDrop(daysIn(folder, *id))) {
        const std::string name = backupName(old, *id);
        std::error_code stays;
        if (old != day && fs::remove(fs::path(folder) / name, stays) && !stays) {
            out.removed.push_back(name);
        }
    }
    return out;
}

Result<LogCopy> restoreLog(const std::string& copy, const std::string& log) {
    const std::string place = absolutePath(log);
    if (auto free = checkNothingThere(place, log); !free) {
        return tl::unexpected<Error>(std::move(free.error()));
    }
    const std::string folder = fs::path(place).parent_path().string();
    std::error_code unknown;
    if (!fs::is_directory(folder, unknown)) {
        return fail(ErrorCode::NotWritten, log + ": the folder " + folder + " is not there");
    }
    if (auto local = refuseNetwork(folder); !local) {
        return tl::unexpected<Error>(std::move(local.error()));
    }
    const auto report = verifyLog(copy);
    if (!report) {
        return tl::unexpected<Error>(report.error());
    }
    if (!report->ok) {
        return fail(
            ErrorCode::Damaged,
            copy + ": is damaged, and nothing is restored from it: " + report->finding->reason);
    }
    const auto held = lockFor(place);
    if (!held) {
        return tl::unexpected<Error>(held.error());
    }
    if (auto free = checkNothingThere(place, log);
        !free) { // again, as only we make it from here on
        return tl::unexpected<Error>(std::move(free.error()));
    }
    CopyOptions options;
    options.verify = true;
    options.live = true;
    return copyLog(copy, place, options);
}

} // namespace seamclock
