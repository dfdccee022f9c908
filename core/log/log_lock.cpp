#include "core/log/log_lock.h"

#include "core/base/posix.h"

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>
#include <utility>

namespace seamclock {

FileHandle::FileHandle(FileHandle&& other) noexcept : m_file(std::exchange(other.m_file, -1)) {}

FileHandle& FileHandle::operator=(FileHandle&& other) noexcept {
    std::swap(m_file, other.m_file);
    return *this;
}

FileHandle::~FileHandle() {
    if (m_file >= 0) {
        close(m_file);
    }
}

Result<FileHandle> lockFor(const std::string& path) {
    const std::string name = path + ".lock";
    FileHandle file(::open(name.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644));
    if (file.get() < 0) {
        return fail(
            ErrorCode::NotWritten,
            path + ": its folder can't be written to (" + std::strerror(errno) + ")");
    }
    if (flock(file.get(), LOCK_EX | LOCK_NB) != 0) {
        if (errno == EWOULDBLOCK) {
            return fail(
                ErrorCode::Conflict,
                path + ": another program is writing this log; close that one first");
        }
        return fail(
            ErrorCode::NotWritten, name + ": can't be locked (" + std::strerror(errno) + ")");
    }
    return file;
}

} // namespace seamclock
