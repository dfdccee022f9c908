#include "core/machine/machine.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <sys/resource.h>
#include <sys/syscall.h>
#include <sys/vfs.h>
#include <system_error>
#include <unistd.h>

namespace seamclock {

namespace {

/// The type of the file system that holds a path: the longest mount point that is a beginning of
/// it.
std::string mountTypeOf(const std::string& path) {
    std::ifstream table("/proc/self/mounts");
    std::string line;
    std::string best;
    std::string type;
    while (std::getline(table, line)) {
        std::istringstream words(line);
        std::string device;
        std::string point;
        std::string kind;
        words >> device >> point >> kind;
        const bool inside = point == "/" || path == point || path.rfind(point + "/", 0) == 0;
        if (inside && point.size() >= best.size()) {
            best = point;
            type = kind;
        }
    }
    return type;
}

} // namespace

int renameWithoutReplacing(const std::string& from, const std::string& to) {
    int moved = renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE);
    // Some file systems can't promise that nothing is replaced.
    std::error_code unknown;
    if (moved != 0 && errno == EINVAL && !std::filesystem::exists(to, unknown)) {
        moved = std::rename(from.c_str(), to.c_str());
    }
    return moved == 0 ? 0 : errno;
}

bool isNetworkFileSystem(std::uint64_t magic, std::string_view mountType) {
    // statfs(2): NFS, CIFS, SMB, SMB2, AFS, Coda, Ceph. FUSE is anything that user space makes of
    // it.
    for (const std::uint64_t known :
         {0x6969ULL, 0xFF534D42ULL, 0x517BULL, 0xFE534D42ULL, 0x5346414FULL, 0x73757245ULL,
          0x00C36400ULL}) {
        if (magic == known) {
            return true;
        }
    }
    for (const std::string_view known :
         {"nfs", "nfs4", "cifs", "smb3", "smbfs", "fuse.sshfs", "fuse.gvfsd-fuse", "fuse.rclone",
          "fuse.glusterfs", "fuse.davfs"}) {
        if (mountType == known) {
            return true;
        }
    }
    return false;
}

Result<bool> liesOnNetwork(const std::string& path) {
    struct statfs facts {};
    if (statfs(path.c_str(), &facts) != 0) {
        return fail(ErrorCode::Unreadable, path + ": " + std::strerror(errno));
    }
    // The field's type differs between machines; the magic numbers have 32 bits.
    const auto magic = static_cast<std::uint64_t>(facts.f_type) & 0xFFFFFFFFULL;
    return isNetworkFileSystem(magic, mountTypeOf(path));
}

void standBehindOthers() {
    static_cast<void>(setpriority(PRIO_PROCESS, static_cast<id_t>(syscall(SYS_gettid)), 10));
    // ioprio_set(2), for which the C library has no function: this thread (1, 0), the class
    // "best effort" (2), its last level.
    static_cast<void>(syscall(SYS_ioprio_set, 1, 0, (2 << 13) | 7));
}

} // namespace seamclock
