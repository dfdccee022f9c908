// One program writes a log at a time: a lock on LOG.lock, which the kernel lets go of however the
// program ends.
#pragma once

#include "core/base/result.h"

#include <string>
#include <utility>

namespace seamclock {

class FileHandle {
public:
    explicit FileHandle(int file = -1) : m_file(file) {}
    FileHandle(FileHandle&& other) noexcept : m_file(std::exchange(other.m_file, -1)) {}
    FileHandle& operator=(FileHandle&& other) noexcept {
        std::swap(m_file, other.m_file);
        return *this;
    }
    ~FileHandle();
    int get() const { return m_file; }

private:
    int m_file;
};

/// Held while the handle lives. Conflict: another program holds it. NotWritten: the folder can't be
/// written to.
Result<FileHandle> lockLog(const std::string& path);

} // namespace seamclock
