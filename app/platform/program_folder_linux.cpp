#include "app/platform/program_folder.h"

#include <system_error>

namespace seamclock {

std::filesystem::path programFolder() {
    std::error_code code;
    const auto program = std::filesystem::read_symlink("/proc/self/exe", code);
    return code ? std::filesystem::path() : program.parent_path();
}

} // namespace seamclock
