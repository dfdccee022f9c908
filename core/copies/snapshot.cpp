#include "core/copies/snapshot.h"

#include <filesystem>
#include <system_error>

namespace seamclock {

namespace {
namespace fs = std::filesystem;
constexpr std::size_t kIdDigits = 8;
} // namespace

std::string snapshotName(const std::string& log, const std::string& logId) {
    return fs::path(log).stem().string() + "-" + logId.substr(0, kIdDigits) + ".seamlog";
}

Result<LogCopy>
publishSnapshot(const std::string& log, const std::string& folder, const CopyOptions& options) {
    std::error_code unknown;
    if (!fs::is_directory(folder, unknown)) {
        return fail(
            ErrorCode::NotWritten,
            folder + ": the folder for published copies is not there; allowed: a folder");
    }
    const auto id = logIdOf(log);
    if (!id) {
        return tl::unexpected<Error>(id.error());
    }
    CopyOptions page = options;
    page.way = CopyWay::PageByPage;
    page.replace = true;
    return copyLog(log, (fs::path(folder) / snapshotName(log, *id)).string(), page);
}

} // namespace seamclock
