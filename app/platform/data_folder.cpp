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

/// The program's folder below the one that `variable` names, else below `usual` in HOME.
Result<std::string> folderFor(
    const char* variable, const std::string& usual, const std::string& what,
    const std::string& advice) {
    if (const std::string one = absoluteFrom(kHomeVariable); !one.empty()) {
        return one;
    }
    if (const std::string named = absoluteFrom(variable); !named.empty()) {
        return named + "/seamclock";
    }
    const std::string home = absoluteFrom("HOME");
    if (home.empty()) {
        return fail(
            ErrorCode::Missing, "no folder for " + what + ": neither " + variable +
                                    " nor HOME is an absolute path; " + advice);
    }
    return home + "/" + usual + "/seamclock";
}

Result<std::string> dataPath(const std::string& what, const std::string& name) {
    const auto folder =
        folderFor("XDG_DATA_HOME", ".local/share", what, "name a log with --log FILE");
    return folder ? Result<std::string>(*folder + "/" + name) : folder;
}

} // namespace

Result<std::string> practiceLogPath() {
    return dataPath("the practice log", "practice.seamlog");
}

Result<std::string> productionLogPath() {
    return dataPath("the joint log", "joints.seamlog");
}

Result<std::string> demoShopFolder() {
    return dataPath("the demo shop", "demo-shop");
}

Result<std::string> settingsPath() {
    const auto folder =
        folderFor("XDG_CONFIG_HOME", ".config", "the settings", "name a file with --settings FILE");
    return folder ? Result<std::string>(*folder + "/seamclock.ini") : folder;
}

} // namespace seamclock
