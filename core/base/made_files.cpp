#include "core/base/made_files.h"

#include "core/base/uuid.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <system_error>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

constexpr const char* kMadeList = ".made-by-seamclock"; // a line each: SHA-256, a space, the name
constexpr std::size_t kDigest = 64;

bool isOwnFile(const fs::path& path) {
    std::error_code code;
    return fs::symlink_status(path, code).type() == fs::file_type::regular;
}

std::string digestOf(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(file), {}};
    return file ? sha256Hex(bytes) : "";
}

} // namespace

Result<void> keepMadeFiles(const std::string& folder) {
    std::error_code code;
    fs::create_directories(folder, code);
    if (!code && std::ofstream(fs::path(folder) / kMadeList, std::ios::app)) {
        return {};
    }
    const std::string why = code ? code.message() : "its list of files";
    return fail(
        ErrorCode::NotWritten,
        "\"" + folder + "\" can't be written: " + why + "; allowed: a folder that can be written");
}

void noteMadeFile(const std::string& file) {
    const fs::path path = file;
    const fs::path list = path.parent_path() / kMadeList;
    if (isOwnFile(list)) {
        std::ofstream(list, std::ios::app)
            << digestOf(path) << ' ' << path.filename().string() << '\n';
    }
}

std::vector<std::string> madeFiles(const std::string& folder) {
    const fs::path list = fs::path(folder) / kMadeList;
    if (!isOwnFile(list)) {
        return {};
    }
    std::set<std::string> found;
    std::ifstream lines(list);
    for (std::string line; std::getline(lines, line);) {
        const std::string name = line.size() > kDigest + 1 ? line.substr(kDigest + 1) : "";
        if (name.empty() || name.find('/') != std::string::npos || name == kMadeList) {
            continue;
        }
        const fs::path path = fs::path(folder) / name;
        if (isOwnFile(path) && digestOf(path) == line.substr(0, kDigest)) {
            found.insert(name);
        }
    }
    std::vector<std::string> out(found.begin(), found.end());
    out.emplace_back(kMadeList);
    return out;
}

} // namespace seamclock
