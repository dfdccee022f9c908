#include "app/platform/data_folder.h"

#include <cstdlib>

namespace seamclock {

namespace {

/// The specification: "All paths set in these environment variables must be absolute. If an
/// implementation encounters a relative path […] it should consider the path invalid and ignore
/// it."
std::string absoluteFrom(const char* variable) {
    const char* const value = std::getenv(variable);
    return value != nullptr && value[0] == '/' ? value : "";
}

Result<std::string> logPath(const std::string& which, const std::string& file) {
    std::string folder = absoluteFrom("XDG_DATA_HOME");
    if (folder.empty()) {
        const std::string home = absoluteFrom("HOME");
        if (home.empty()) {
            return fail(
                ErrorCode::Missing, "no folder for the " + which +
                                        " log: neither XDG_DATA_HOME nor HOME is an absolute "
                                        "path; name a log with --log FILE");
        }
        folder = home + "/.local/share";
    }
    return folder + "/seamclock/" + file;
}

} // namespace

Result<std::string> practiceLogPath() {
    return logPath("practice", "practice.seamlog");
}

Result<std::string> productionLogPath() {
    return logPath("joint", "joints.seamlog");
}

} // namespace seamclock
