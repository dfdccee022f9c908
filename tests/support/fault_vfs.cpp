#include "tests/support/fault_vfs.h"

#include <atomic>
#include <cstring>
#include <poll.h>
#include <sqlite3.h>

namespace seamclock::test {

namespace {

std::atomic<int> theFault{SQLITE_OK};
std::atomic<std::int64_t> theWrites{0};
std::atomic<bool> theOnlySync{false};
std::atomic<std::int64_t> theOne{0};   // the write that fails alone; 0: none
std::atomic<std::int64_t> theEvery{0}; // every n-th fails; 0: none
std::atomic<std::int64_t> theAccesses{0};
std::atomic<std::int64_t> theLoss{0}; // the reading access from which on all fail; 0: none
std::atomic<int> theSync{0};          // so long takes every sync [ms]
std::atomic<void (*)()> theLook{nullptr};
sqlite3_vfs* theReal = nullptr;
sqlite3_vfs theVfs{};
sqlite3_io_methods theMethods{};

struct File {
    sqlite3_file base;
    sqlite3_file* real() { return reinterpret_cast<sqlite3_file*>(this + 1); }
};

File* ours(sqlite3_file* file) {
    return reinterpret_cast<File*>(file);
}

/// SQLITE_OK, or how this write or sync fails.
int refusal(int ioError) {
    if (void (*look)() = theLook.load()) {
        look();
    }
    const std::int64_t now = ++theWrites;
    const std::int64_t every = theEvery.load();
    if (theOne.load() == now || (every > 0 && now % every == 0)) {
        return ioError;
    }
    const int fault = theFault.load();
    if (theOnlySync.load() && ioError != SQLITE_IOERR_FSYNC) {
        return SQLITE_OK;
    }
    return fault == SQLITE_IOERR ? ioError : fault;
}

bool isLost() {
    const std::int64_t now = ++theAccesses;
    const std::int64_t loss = theLoss.load();
    return loss > 0 && now >= loss;
}

// The first argument of each forwarded method is the file; the rest goes on as it is.
template <auto Method, class... Args>
auto forward(sqlite3_file* file, Args... args) {
    sqlite3_file* real = ours(file)->real();
    return (real->pMethods->*Method)(real, args...);
}

int xClose(sqlite3_file* file) {
    return forward<&sqlite3_io_methods::xClose>(file);
}
int xRead(sqlite3_file* file, void* into, int count, sqlite3_int64 at) {
    if (isLost()) {
        return SQLITE_IOERR_READ;
    }
    return forward<&sqlite3_io_methods::xRead>(file, into, count, at);
}
int xWrite(sqlite3_file* file, const void* from, int count, sqlite3_int64 at) {
    if (const int refused = refusal(SQLITE_IOERR_WRITE); refused != SQLITE_OK) {
        return refused;
    }
    return forward<&sqlite3_io_methods::xWrite>(file, from, count, at);
}
int xTruncate(sqlite3_file* file, sqlite3_int64 size) {
    return forward<&sqlite3_io_methods::xTruncate>(file, size);
}
int xSync(sqlite3_file* file, int flags) {
    if (const int refused = refusal(SQLITE_IOERR_FSYNC); refused != SQLITE_OK) {
        return refused;
    }
    if (const int by = theSync.load(); by > 0) {
        ::poll(nullptr, 0, by);
    }
    return forward<&sqlite3_io_methods::xSync>(file, flags);
}
int xFileSize(sqlite3_file* file, sqlite3_int64* size) {
    if (isLost()) {
        return SQLITE_IOERR_FSTAT;
    }
    return forward<&sqlite3_io_methods::xFileSize>(file, size);
}
int xLock(sqlite3_file* file, int level) {
    if (isLost()) {
        return SQLITE_IOERR_LOCK;
    }
    return forward<&sqlite3_io_methods::xLock>(file, level);
}
int xUnlock(sqlite3_file* file, int level) {
    return forward<&sqlite3_io_methods::xUnlock>(file, level);
}
int xCheckReservedLock(sqlite3_file* file, int* out) {
    return forward<&sqlite3_io_methods::xCheckReservedLock>(file, out);
}
int xFileControl(sqlite3_file* file, int what, void* arg) {
    return forward<&sqlite3_io_methods::xFileControl>(file, what, arg);
}
int xSectorSize(sqlite3_file* file) {
    return forward<&sqlite3_io_methods::xSectorSize>(file);
}
int xDeviceCharacteristics(sqlite3_file* file) {
    return forward<&sqlite3_io_methods::xDeviceCharacteristics>(file);
}
int xShmMap(sqlite3_file* file, int page, int size, int extend, void volatile** out) {
    return forward<&sqlite3_io_methods::xShmMap>(file, page, size, extend, out);
}
int xShmLock(sqlite3_file* file, int offset, int count, int flags) {
    if ((flags & SQLITE_SHM_LOCK) != 0 && isLost()) {
        return SQLITE_IOERR_SHMLOCK;
    }
    return forward<&sqlite3_io_methods::xShmLock>(file, offset, count, flags);
}
void xShmBarrier(sqlite3_file* file) {
    forward<&sqlite3_io_methods::xShmBarrier>(file);
}
int xShmUnmap(sqlite3_file* file, int remove) {
    return forward<&sqlite3_io_methods::xShmUnmap>(file, remove);
}

int xOpen(sqlite3_vfs*, sqlite3_filename name, sqlite3_file* file, int flags, int* outFlags) {
    File* own = ours(file);
    own->base.pMethods = nullptr;
    const int done = theReal->xOpen(theReal, name, own->real(), flags, outFlags);
    if (own->real()->pMethods != nullptr) {
        own->base.pMethods = &theMethods;
    }
    return done;
}

} // namespace

FaultyDisk::FaultyDisk() {
    theReal = sqlite3_vfs_find(nullptr);
    theFault = SQLITE_OK;
    theOnlySync = false;
    theOne = 0;
    theEvery = 0;
    theAccesses = 0;
    theLoss = 0;
    theSync = 0;
    theLook = nullptr;
    theWrites = 0;
    theVfs = *theReal; // its other functions take no file, and only the real one's data
    theVfs.zName = "seamclock-faulty-disk";
    theVfs.szOsFile = static_cast<int>(sizeof(File)) + theReal->szOsFile;
    theVfs.xOpen = xOpen;
    theVfs.pNext = nullptr;
    theMethods = sqlite3_io_methods{};
    theMethods.iVersion = 2; // without memory mapping, so that every write is seen
    theMethods.xClose = xClose;
    theMethods.xRead = xRead;
    theMethods.xWrite = xWrite;
    theMethods.xTruncate = xTruncate;
    theMethods.xSync = xSync;
    theMethods.xFileSize = xFileSize;
    theMethods.xLock = xLock;
    theMethods.xUnlock = xUnlock;
    theMethods.xCheckReservedLock = xCheckReservedLock;
    theMethods.xFileControl = xFileControl;
    theMethods.xSectorSize = xSectorSize;
    theMethods.xDeviceCharacteristics = xDeviceCharacteristics;
    theMethods.xShmMap = xShmMap;
    theMethods.xShmLock = xShmLock;
    theMethods.xShmBarrier = xShmBarrier;
    theMethods.xShmUnmap = xShmUnmap;
    sqlite3_vfs_register(&theVfs, 1);
}

FaultyDisk::~FaultyDisk() {
    sqlite3_vfs_register(theReal, 1);
    sqlite3_vfs_unregister(&theVfs);
}

void FaultyDisk::set(Fault fault) {
    theOnlySync = fault == Fault::Sync;
    switch (fault) {
    case Fault::None:
        theFault = SQLITE_OK;
        break;
    case Fault::Full:
        theFault = SQLITE_FULL;
        break;
    case Fault::Error:
    case Fault::Sync:
        theFault = SQLITE_IOERR;
        break;
    case Fault::ReadOnly:
        theFault = SQLITE_READONLY;
        break;
    }
}

void FaultyDisk::failEvery(std::int64_t n) {
    theEvery = n;
}

void FaultyDisk::loseAt(std::int64_t n) {
    theLoss = n > 0 ? theAccesses.load() + n : 0;
}

std::int64_t FaultyDisk::accesses() const {
    return theAccesses.load();
}

void FaultyDisk::slowSync(Milliseconds by) {
    theSync = static_cast<int>(by.count());
}

void FaultyDisk::onWrite(void (*look)()) {
    theLook = look;
}

void FaultyDisk::failOnce(std::int64_t n) {
    theOne = theWrites.load() + n;
}

std::int64_t FaultyDisk::writes() const {
    return theWrites.load();
}

} // namespace seamclock::test
