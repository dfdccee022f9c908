#include "tests/core/log/losing_disk.h"

#include <algorithm>
#include <cstdarg>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <mutex>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/types.h>
#include <unistd.h>
#include <utility>

namespace seamclock::test {

namespace {

constexpr std::int64_t kSector = 512;

struct Book {
    std::mutex mutex;
    bool isOpen = false;
    std::string folder;          // with a slash at its end
    std::map<int, int> files;    // by descriptor
    std::map<int, bool> folders; // descriptors of the folder itself
    std::map<std::string, int> names;
    std::vector<DiskNote> notes;
    int made = 0;
};

// Never destroyed: descriptors are closed until the very end.
Book& book() {
    static Book* const theBook = new Book;
    return *theBook;
}

bool isInside(const char* path) {
    return path != nullptr && std::strncmp(path, book().folder.c_str(), book().folder.size()) == 0;
}

std::string nameOf(const char* path) {
    return std::string(path).substr(book().folder.size());
}

DiskNote noteOf(DiskNote::Kind kind, int file) {
    DiskNote note;
    note.kind = kind;
    note.file = file;
    return note;
}

int openNoted(const char* path, int flags, mode_t mode) {
    Book& b = book();
    const std::lock_guard<std::mutex> held(b.mutex);
    const bool inside = b.isOpen && isInside(path);
    const bool there = inside && ::syscall(SYS_access, path, F_OK) == 0;
    const int file = static_cast<int>(::syscall(SYS_openat, AT_FDCWD, path, flags, mode));
    if (!b.isOpen || file < 0) {
        return file;
    }
    b.files.erase(file);
    b.folders.erase(file);
    if (std::string(path) + "/" == b.folder) {
        b.folders[file] = true;
    } else if (inside) {
        const std::string name = nameOf(path);
        if (!there || b.names.count(name) == 0) {
            b.names[name] = ++b.made;
            DiskNote note = noteOf(DiskNote::Kind::Made, b.made);
            note.name = name;
            b.notes.push_back(note);
        }
        b.files[file] = b.names[name];
        if ((flags & O_TRUNC) != 0) {
            b.notes.push_back(noteOf(DiskNote::Kind::Cut, b.files[file]));
        }
    }
    return file;
}

void wroteNoted(int file, const void* bytes, ssize_t count, std::int64_t at) {
    Book& b = book();
    const auto known = b.files.find(file);
    if (!b.isOpen || known == b.files.end() || count <= 0) {
        return;
    }
    DiskNote note = noteOf(DiskNote::Kind::Written, known->second);
    note.at = at;
    note.bytes.assign(static_cast<const char*>(bytes), static_cast<std::size_t>(count));
    b.notes.push_back(std::move(note));
}

ssize_t writeAtNoted(int file, const void* bytes, std::size_t count, std::int64_t at) {
    const std::lock_guard<std::mutex> held(book().mutex);
    const ssize_t done = ::syscall(SYS_pwrite64, file, bytes, count, at);
    wroteNoted(file, bytes, done, at);
    return done;
}

ssize_t writeNoted(int file, const void* bytes, std::size_t count) {
    const std::lock_guard<std::mutex> held(book().mutex);
    const auto done = static_cast<ssize_t>(::syscall(SYS_write, file, bytes, count));
    if (done > 0 && book().isOpen && book().files.count(file) != 0) {
        wroteNoted(file, bytes, done, ::syscall(SYS_lseek, file, 0, SEEK_CUR) - done);
    }
    return done;
}

int syncNoted(int file, long call) {
    Book& b = book();
    const std::lock_guard<std::mutex> held(b.mutex);
    const int done = static_cast<int>(::syscall(call, file));
    if (b.isOpen && done == 0) {
        if (b.folders.count(file) != 0) {
            b.notes.push_back(noteOf(DiskNote::Kind::FolderSynced, 0));
        } else if (const auto known = b.files.find(file); known != b.files.end()) {
            b.notes.push_back(noteOf(DiskNote::Kind::Synced, known->second));
        }
    }
    return done;
}

int cutNoted(int file, std::int64_t size) {
    Book& b = book();
    const std::lock_guard<std::mutex> held(b.mutex);
    const int done = static_cast<int>(::syscall(SYS_ftruncate, file, size));
    if (const auto known = b.files.find(file); b.isOpen && done == 0 && known != b.files.end()) {
        DiskNote note = noteOf(DiskNote::Kind::Cut, known->second);
        note.at = size;
        b.notes.push_back(note);
    }
    return done;
}

int renameNoted(const char* from, const char* to, unsigned flags) {
    Book& b = book();
    const std::lock_guard<std::mutex> held(b.mutex);
    const int done =
        static_cast<int>(::syscall(SYS_renameat2, AT_FDCWD, from, AT_FDCWD, to, flags));
    if (b.isOpen && done == 0 && isInside(from) && isInside(to)) {
        DiskNote note = noteOf(DiskNote::Kind::Renamed, b.names[nameOf(from)]);
        note.formerName = nameOf(from);
        note.name = nameOf(to);
        b.names[note.name] = note.file;
        b.names.erase(note.formerName);
        b.notes.push_back(std::move(note));
    }
    return done;
}

int removeNoted(const char* path) {
    Book& b = book();
    const std::lock_guard<std::mutex> held(b.mutex);
    const int done = static_cast<int>(::syscall(SYS_unlinkat, AT_FDCWD, path, 0));
    if (b.isOpen && done == 0 && isInside(path)) {
        DiskNote note = noteOf(DiskNote::Kind::Removed, 0);
        note.name = nameOf(path);
        b.names.erase(note.name);
        b.notes.push_back(std::move(note));
    }
    return done;
}

int closeNoted(int file) {
    Book& b = book();
    const std::lock_guard<std::mutex> held(b.mutex);
    b.files.erase(file);
    b.folders.erase(file);
    return static_cast<int>(::syscall(SYS_close, file));
}

void put(std::string& content, std::int64_t at, const char* bytes, std::int64_t count) {
    const auto end = static_cast<std::size_t>(at + count);
    if (content.size() < end) {
        content.resize(end, '\0');
    }
    content.replace(
        static_cast<std::size_t>(at), static_cast<std::size_t>(count), bytes,
        static_cast<std::size_t>(count));
}

bool byChance(std::mt19937_64& random) {
    return (random() & 1U) != 0;
}

/// Sector by sector, each kept or not.
void applyTorn(std::string& content, const DiskNote& note, std::mt19937_64& random) {
    const auto end = note.at + static_cast<std::int64_t>(note.bytes.size());
    for (std::int64_t at = note.at; at < end;) {
        const std::int64_t next = std::min(end, (at / kSector + 1) * kSector);
        if (byChance(random)) {
            put(content, at, note.bytes.data() + (at - note.at), next - at);
        }
        at = next;
    }
}

void apply(std::string& content, const DiskNote& note) {
    if (note.kind == DiskNote::Kind::Cut) {
        content.resize(static_cast<std::size_t>(note.at), '\0');
    } else {
        put(content, note.at, note.bytes.data(), static_cast<std::int64_t>(note.bytes.size()));
    }
}

void applyName(std::map<std::string, int>& names, const DiskNote& note) {
    if (note.kind == DiskNote::Kind::Removed) {
        names.erase(note.name);
        return;
    }
    if (note.kind == DiskNote::Kind::Renamed) {
        names.erase(note.formerName);
    }
    names[note.name] = note.file;
}

} // namespace

// ---- Recording

Recorder::Recorder(const std::string& folder) {
    Book& b = book();
    const std::lock_guard<std::mutex> held(b.mutex);
    b.isOpen = true;
    b.folder = folder + "/";
    b.files.clear();
    b.folders.clear();
    b.names.clear();
    b.notes.clear();
    b.made = 0;
}

Recorder::~Recorder() {
    static_cast<void>(finish());
}

void Recorder::say(const std::string& promise) {
    Book& b = book();
    const std::lock_guard<std::mutex> held(b.mutex);
    DiskNote note = noteOf(DiskNote::Kind::Said, 0);
    note.bytes = promise;
    b.notes.push_back(std::move(note));
}

std::vector<DiskNote> Recorder::finish() {
    Book& b = book();
    const std::lock_guard<std::mutex> held(b.mutex);
    b.isOpen = false;
    return std::exchange(b.notes, {});
}

std::string Recorder::whyNot() {
#if defined(__SANITIZE_THREAD__)
    return "the thread sanitizer must see the C library's own file functions";
#else
    return "";
#endif
}

// ---- Losing

void LosingDisk::replay(const DiskNote& note) {
    switch (note.kind) {
    case DiskNote::Kind::Made:
    case DiskNote::Kind::Renamed:
    case DiskNote::Kind::Removed:
        m_since.push_back(note);
        break;
    case DiskNote::Kind::Written:
    case DiskNote::Kind::Cut:
        m_files[note.file].since.push_back(note);
        break;
    case DiskNote::Kind::Synced: {
        File& file = m_files[note.file];
        for (const DiskNote& one : file.since) {
            apply(file.durable, one);
        }
        file.since.clear();
        break;
    }
    case DiskNote::Kind::FolderSynced:
        for (const DiskNote& one : m_since) {
            applyName(m_names, one);
        }
        m_since.clear();
        break;
    case DiskNote::Kind::Said:
        break;
    }
}

std::map<std::string, std::string>
LosingDisk::afterPowerCut(Loss loss, std::mt19937_64& random) const {
    std::map<std::string, int> names = m_names;
    const std::size_t kept = loss == Loss::Everything ? 0
                             : loss == Loss::Nothing  ? m_since.size()
                                                      : random() % (m_since.size() + 1);
    for (std::size_t i = 0; i < kept; ++i) {
        applyName(names, m_since[i]);
    }
    std::map<std::string, std::string> out;
    for (const auto& [name, id] : names) {
        std::string& content = out[name];
        const auto found = m_files.find(id);
        if (found == m_files.end()) {
            continue;
        }
        content = found->second.durable;
        const std::vector<DiskNote>& since = found->second.since;
        for (std::size_t i = 0; i < since.size(); ++i) {
            const bool last = i + 1 == since.size();
            switch (loss) {
            case Loss::Everything:
                break;
            case Loss::Nothing:
                apply(content, since[i]);
                break;
            case Loss::LastTorn:
                if (last && since[i].kind == DiskNote::Kind::Written) {
                    applyTorn(content, since[i], random);
                } else {
                    apply(content, since[i]);
                }
                break;
            case Loss::OnlyLast:
                if (last) {
                    apply(content, since[i]);
                }
                break;
            case Loss::Sectors:
                if (since[i].kind == DiskNote::Kind::Written) {
                    applyTorn(content, since[i], random);
                } else if (byChance(random)) {
                    apply(content, since[i]);
                }
                break;
            }
        }
    }
    return out;
}

void writeFiles(const std::map<std::string, std::string>& files, const std::string& folder) {
    for (const auto& [name, content] : files) {
        std::ofstream out(folder + "/" + name, std::ios::binary);
        out.write(content.data(), static_cast<std::streamsize>(content.size()));
    }
}

} // namespace seamclock::test

// ---- The C library's functions, for this whole program. SQLite and the C++ library call them
// under these very names.

#if !defined(__SANITIZE_THREAD__)

namespace test = seamclock::test;

// NOLINTBEGIN(cert-*, bugprone-*, cppcoreguidelines-*, readability-*): the C library's own names
extern "C" {

int open(const char* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    const bool makes = (flags & O_CREAT) != 0 || (flags & O_TMPFILE) == O_TMPFILE;
    const mode_t mode = makes ? va_arg(more, mode_t) : 0;
    va_end(more);
    return test::openNoted(path, flags, mode);
}
int open64(const char* path, int flags, ...) {
    va_list more;
    va_start(more, flags);
    const bool makes = (flags & O_CREAT) != 0 || (flags & O_TMPFILE) == O_TMPFILE;
    const mode_t mode = makes ? va_arg(more, mode_t) : 0;
    va_end(more);
    return test::openNoted(path, flags, mode);
}
int __open_2(const char* path, int flags) {
    return test::openNoted(path, flags, 0);
}
int __open64_2(const char* path, int flags) {
    return test::openNoted(path, flags, 0);
}
int close(int file) {
    return test::closeNoted(file);
}
ssize_t write(int file, const void* bytes, size_t count) {
    return test::writeNoted(file, bytes, count);
}
ssize_t pwrite(int file, const void* bytes, size_t count, off_t at) {
    return test::writeAtNoted(file, bytes, count, at);
}
ssize_t pwrite64(int file, const void* bytes, size_t count, off64_t at) {
    return test::writeAtNoted(file, bytes, count, at);
}
int fsync(int file) {
    return test::syncNoted(file, SYS_fsync);
}
int fdatasync(int file) {
    return test::syncNoted(file, SYS_fdatasync);
}
int ftruncate(int file, off_t size) noexcept {
    return test::cutNoted(file, size);
}
int ftruncate64(int file, off64_t size) noexcept {
    return test::cutNoted(file, size);
}
int rename(const char* from, const char* to) noexcept {
    return test::renameNoted(from, to, 0);
}
int renameat2(int, const char* from, int, const char* to, unsigned flags) noexcept {
    return test::renameNoted(from, to, flags);
}
int unlink(const char* path) noexcept {
    return test::removeNoted(path);
}
int remove(const char* path) noexcept {
    const int done = test::removeNoted(path);
    if (done != 0 && errno == EISDIR) {
        return static_cast<int>(::syscall(SYS_rmdir, path));
    }
    return done;
}
}
// NOLINTEND(cert-*, bugprone-*, cppcoreguidelines-*, readability-*): the C library's own names

#endif
