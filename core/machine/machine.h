// What only this kind of machine can be asked: everything else in core is C++ and POSIX. A system
// without its own source here does not compile, and the compiler says which of these it lacks.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace seamclock {

/// Moves a file within a file system and never over one that is there, in one step where the file
/// system can promise that. 0, or the errno; EEXIST: there is one.
int renameWithoutReplacing(const std::string& from, const std::string& to);

/// Whether the file system that holds `path` (absolute) is on another machine, where locks can't be
/// trusted. Unreadable: the system's sentence.
Result<bool> liesOnNetwork(const std::string& path);

/// By the magic number of statfs, and the type as the kernel's mount table has it ("fuse.sshfs"),
/// which tells the user-space ones apart; for liesOnNetwork().
bool isNetworkFileSystem(std::uint64_t magic, std::string_view mountType);

/// This thread takes what others leave of processor and disk, from now on. Where the system
/// refuses, it goes on as before.
void standBehindOthers();

} // namespace seamclock
