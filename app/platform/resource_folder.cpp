#include "app/platform/resource_folder.h"

#include <cstdlib>
#include <filesystem>
#include <system_error>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

bool isFolder(const fs::path& path) {
    std::error_code code;
    return fs::is_directory(path, code);
}

std::string inQuotes(const std::string& text) {
    return '"' + text + '"';
}

} // namespace

Result<std::string> resourceFolder() {
    const char* named = std::getenv("SEAMCLOCK_RESOURCES");
    if (named != nullptr && *named != '\0') {
        if (!isFolder(named)) {
            return fail(
                ErrorCode::Missing, "SEAMCLOCK_RESOURCES " + inQuotes(named) +
                                        " is no folder; allowed: a folder with procedures/ in it, "
                                        "or leave it unset");
        }
        return std::string(named);
    }
    std::error_code code;
    const fs::path program = fs::read_symlink("/proc/self/exe", code);
    const fs::path installed = program.parent_path().parent_path() / "share" / "seamclock";
    if (!code && isFolder(installed / "procedures")) {
        return installed.string();
    }
    if (isFolder(fs::path(SEAMCLOCK_BUILD_RESOURCES) / "procedures")) {
        return std::string(SEAMCLOCK_BUILD_RESOURCES);
    }
    return fail(
        ErrorCode::Missing, "the procedures that come with the program are not there: neither " +
                                inQuotes(installed.string()) +
                                " nor its source tree; name their folder in SEAMCLOCK_RESOURCES");
}

} // namespace seamclock
