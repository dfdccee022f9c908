#include "app/platform/resource_folder.h"

#include "app/platform/program_folder.h"

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

Result<GuidePlaces> guidePlaces() {
    const fs::path beside = programFolder().parent_path();
    const char* named = std::getenv("SEAMCLOCK_RESOURCES");
    const fs::path own =
        named != nullptr && *named != '\0' ? fs::path(named) / "guide" : fs::path();
    const fs::path installed = beside / "share" / "seamclock" / "guide";
    const fs::path source = fs::path(SEAMCLOCK_BUILD_RESOURCES).parent_path() / "docs" / "guide";
    for (const fs::path& chapters : {own, installed, source}) {
        if (!chapters.empty() && isFolder(chapters)) {
            return GuidePlaces{
                chapters.string(),
                {(chapters / "pictures").string(), (beside / "guide" / "pictures").string()}};
        }
    }
    return fail(
        ErrorCode::Missing, "the user guide is not there: neither " + inQuotes(installed.string()) +
                                " nor its source tree; it comes with the program's package");
}

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
    const fs::path program = programFolder();
    const fs::path installed = program.parent_path() / "share" / "seamclock";
    if (!program.empty() && isFolder(installed / "procedures")) {
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
