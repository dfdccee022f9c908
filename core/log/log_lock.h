// Who may write a log: one program at a time, by a lock on the file LOG.lock that the kernel lets
// go of however the program ends. The writer holds it while it lives; so does whatever else changes
// a log (an import, a restored file that takes its place).
#pragma once

#include "core/base/result.h"

#include <string>

namespace seamclock {

class FileHandle {
public:
    explicit FileHandle(int file = -1) : m_file(file) {}
    FileHandle(FileHandle&& other) noexcept;
    FileHandle& operator=(FileHandle&& other) noexcept;
    FileHandle(const FileHandle&) = delete;
    FileHandle& operator=(const FileHandle&) = delete;
    ~FileHandle();
    int get() const { return m_file; }

private:
    int m_file;
};

/// The lock of the log at `path`, held as long as the handle lives. Conflict: another program has
/// it. NotWritten: the folder can't be written to.
Result<FileHandle> lockFor(const std::string& path);

} // namespace seamclock
