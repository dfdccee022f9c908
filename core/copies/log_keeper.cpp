#include "core/copies/log_keeper.h"

#include "core/copies/photo_copies.h"
#include "core/copies/snapshot.h"
#include "core/log/connection.h"
#include "core/log/start_check.h"
#include "core/machine/machine.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <atomic>
#include <condition_variable>
#include <filesystem>
#include <mutex>
#include <thread>
#include <utility>

namespace seamclock {

namespace {

constexpr Milliseconds kEndWithin{3'000}; // with a thread that does not end
constexpr int kMostMoments = 15;          // for a quiet moment, in such moments

/// In a thread that takes what others leave of processor and disk. A thread of its own for each
/// copy, so that a low one never holds what the writer or a screen waits for.
template <class F>
auto behindOthers(F use) {
    decltype(use()) out;
    std::thread low([&] {
        standBehindOthers();
        out = use();
    });
    low.join();
    return out;
}

struct Closings {
    std::int64_t head = 0;
    bool any = false; // behind the row that was asked for
};

Result<Closings> closingsAfter(const std::string& log, std::int64_t seq) {
    try {
        const auto file = inspectLogFile(log);
        if (!file) {
            return tl::unexpected<Error>(file.error());
        }
        const auto database = openForReading(file->path);
        Closings out;
        SQLite::Statement head(*database, "SELECT seq FROM chain WHERE no = 1");
        if (head.executeStep()) {
            out.head = head.getColumn(0).getInt64();
        }
        SQLite::Statement closing(
            *database, "SELECT 1 FROM event WHERE chain = 1 AND seq > ? AND seq <= ? AND kind IN "
                       "('weld_closed', 'weld_aborted') LIMIT 1");
        closing.bind(1, seq);
        closing.bind(2, out.head);
        out.any = closing.executeStep();
        return out;
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, log, ErrorCode::Unreadable));
    }
}

} // namespace

struct LogKeeper::Inside {
    const std::string log;
    const Clock* wall = nullptr; // null from the end on: a thread left behind must not ask it
    KeeperOptions options;
    CopyStop stopBackup;
    CopyStop stopSnapshot;
    std::atomic<bool> stopCheck{false};

    mutable std::mutex mutex;
    std::condition_variable wake;
    std::condition_variable done;
    KeeperState state;
    std::string folder;
    std::string backedUp; // the day
    std::int64_t seen = 0;
    std::uint64_t looks = 0;
    std::uint64_t looked = 0; // up to which look the rows were asked about
    bool backupDue = false;
    bool snapshotDue = false;
    bool begun = false;
    bool starting = false;
    bool stop = false;
    bool watching = false;
    bool publishing = false;
    int running = 0;

    Inside(std::string path, const Clock& clock, KeeperOptions chosen)
        : log(std::move(path)), wall(&clock), options(std::move(chosen)),
          folder(options.snapshotFolder) {}

    void watch();
    void publish();
    void lookForClosings(std::unique_lock<std::mutex>& lock);
    void backUp(std::unique_lock<std::mutex>& lock);
    void backUpPhotos(std::unique_lock<std::mutex>& lock, const CopyOptions& how);
    void checkStructure(std::unique_lock<std::mutex>& lock);
    void ended();
    bool isIdleLocked() const {
        return !starting && !watching && !publishing && !backupDue && !snapshotDue &&
               looked == looks;
    }
};

void LogKeeper::Inside::ended() {
    const std::lock_guard<std::mutex> lock(mutex);
    --running;
    done.notify_all();
}

/// Sees closings, and makes backups.
void LogKeeper::Inside::watch() {
    // What is closed from here on is not in the first copies for sure.
    const auto now = closingsAfter(log, INT64_MAX);
    std::unique_lock<std::mutex> lock(mutex);
    seen = now ? now->head : 0;
    snapshotDue = !folder.empty();
    checkStructure(lock);
    backupDue = true;
    starting = false;
    wake.notify_all();
    for (;;) {
        watching = false;
        done.notify_all();
        wake.wait(lock, [&] { return stop || backupDue || looked != looks; });
        if (stop) {
            return;
        }
        watching = true;
        if (looked != looks) {
            lookForClosings(lock);
        }
        if (backupDue && !stop) {
            backUp(lock);
        }
    }
}

void LogKeeper::Inside::lookForClosings(std::unique_lock<std::mutex>& lock) {
    std::uint64_t now = looks;
    for (int i = 0; i < kMostMoments; ++i) {
        now = looks;
        if (wake.wait_for(lock, options.quiet, [&] { return stop; })) {
            return;
        }
        if (looks == now) {
            break;
        }
    }
    const std::int64_t after = seen;
    lock.unlock();
    const auto found = closingsAfter(log, after);
    lock.lock();
    looked = now;
    if (!found) {
        return; // the writer tells of a log that can't be read, and the next look asks again
    }
    seen = found->head;
    if (found->any) {
        backupDue = true;
        snapshotDue = snapshotDue || !folder.empty();
        wake.notify_all();
    }
}

void LogKeeper::Inside::backUp(std::unique_lock<std::mutex>& lock) {
    backupDue = false;
    const Instant now = wall->now();
    const std::string day = toIsoDate(now.utc, now.offset);
    CopyOptions how;
    how.reserveBytes = options.reserveBytes;
    how.stop = &stopBackup;
    backUpPhotos(lock, how); // those of later in the day, too
    if (day == backedUp) {
        return;
    }
    lock.unlock();
    const auto made = behindOthers([&] { return backUpDay(log, day, how); });
    lock.lock();
    if (made) {
        backedUp = day;
        state.backup = made->file;
        state.backups += made->made ? 1 : 0;
        state.backupTrouble.reset();
    } else if (!stop) {
        state.backupTrouble = made.error().detail;
    }
}

/// All backups share them.
void LogKeeper::Inside::backUpPhotos(std::unique_lock<std::mutex>& lock, const CopyOptions& how) {
    lock.unlock();
    const auto made =
        behindOthers([&] { return copyPhotos(photoFolderOf(log), backupPhotoFolderOf(log), how); });
    lock.lock();
    state.photoTrouble.reset();
    if (!made && !stop) {
        state.photoTrouble = made.error().detail;
    } else if (made) {
        state.photos += made->copied;
        if (const std::string damaged = damagedPhotos(*made); !damaged.empty()) {
            state.photoTrouble = damaged;
        }
    }
}

void LogKeeper::Inside::checkStructure(std::unique_lock<std::mutex>& lock) {
    std::error_code unsized;
    const auto size = std::filesystem::file_size(log, unsized);
    if (unsized || static_cast<std::int64_t>(size) <= options.checkAbove) {
        return;
    }
    lock.unlock();
    const auto found = behindOthers([&] {
        auto trouble = structureTrouble(log, stopCheck);
        if (trouble && *trouble) {
            if (const auto left = leaveDoubt(log); !left) {
                **trouble += "; " + left.error().detail;
            }
        }
        return trouble;
    });
    lock.lock();
    state.structureChecked = found.has_value() && !stop;
    if (found && *found) {
        state.structureTrouble = **found;
    }
}

void LogKeeper::Inside::publish() {
    std::unique_lock<std::mutex> lock(mutex);
    for (;;) {
        publishing = false;
        done.notify_all();
        wake.wait(lock, [&] { return stop || snapshotDue; });
        if (stop) {
            return;
        }
        publishing = true;
        snapshotDue = false;
        const std::string into = folder;
        if (into.empty()) {
            continue;
        }
        lock.unlock();
        CopyOptions how;
        how.stop = &stopSnapshot;
        const auto made = behindOthers([&] { return publishSnapshot(log, into, how); });
        lock.lock();
        if (into != folder) {
            continue; // another one was chosen meanwhile
        }
        if (made) {
            state.snapshot = made->file;
            ++state.snapshots;
            state.snapshotTrouble.reset();
        } else if (!stop) {
            state.snapshotTrouble = made.error().detail;
        }
    }
}

LogKeeper::LogKeeper(const std::string& log, const Clock& clock, KeeperOptions options)
    : m_inside(std::make_shared<Inside>(absolutePath(log), clock, std::move(options))) {}

LogKeeper::~LogKeeper() {
    std::unique_lock<std::mutex> lock(m_inside->mutex);
    m_inside->stop = true;
    m_inside->wall = nullptr;
    m_inside->wake.notify_all();
    lock.unlock();
    m_inside->stopCheck = true;
    m_inside->stopBackup.stop();
    m_inside->stopSnapshot.stop();
    lock.lock();
    const bool all =
        m_inside->done.wait_for(lock, kEndWithin, [&] { return m_inside->running == 0; });
    lock.unlock();
    for (std::thread* one : {&m_watcher, &m_publisher}) {
        if (!one->joinable()) {
            continue;
        }
        if (all) {
            one->join();
        } else {
            one->detach();
        }
    }
}

void LogKeeper::begin() {
    {
        const std::lock_guard<std::mutex> lock(m_inside->mutex);
        if (m_inside->begun) {
            return;
        }
        m_inside->begun = true;
        m_inside->starting = true;
        m_inside->running = 2;
    }
    m_watcher = std::thread([inside = m_inside] {
        inside->watch();
        inside->ended();
    });
    m_publisher = std::thread([inside = m_inside] {
        inside->publish();
        inside->ended();
    });
}

void LogKeeper::look() {
    const std::lock_guard<std::mutex> lock(m_inside->mutex);
    ++m_inside->looks;
    m_inside->wake.notify_all();
}

void LogKeeper::publishInto(const std::string& folder) {
    const std::lock_guard<std::mutex> lock(m_inside->mutex);
    if (folder == m_inside->folder) {
        return;
    }
    m_inside->folder = folder;
    m_inside->state.snapshotTrouble.reset();
    m_inside->snapshotDue = !folder.empty();
    m_inside->wake.notify_all();
}

KeeperState LogKeeper::state() const {
    const std::lock_guard<std::mutex> lock(m_inside->mutex);
    return m_inside->state;
}

void LogKeeper::settle() {
    std::unique_lock<std::mutex> lock(m_inside->mutex);
    m_inside->done.wait(lock, [&] { return !m_inside->begun || m_inside->isIdleLocked(); });
}

} // namespace seamclock
