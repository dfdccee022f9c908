// A disk that fails under a program of this project's: preloaded into it (LD_PRELOAD), this makes
// the failing disk of fault_vfs.h what SQLite writes through. SEAMCLOCK_FAULT names a file with one
// word that is read before each write: none, full, error, sync, readonly, "every N", or "slow MS":
// each sync takes so long.
#include "tests/support/fault_vfs.h"

#include <array>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <string_view>
#include <unistd.h>

namespace {

using seamclock::test::FaultyDisk;

FaultyDisk* theDisk = nullptr;

void look() {
    const char* name = std::getenv("SEAMCLOCK_FAULT");
    const int file = name == nullptr ? -1 : ::open(name, O_RDONLY | O_CLOEXEC);
    if (file < 0) {
        return;
    }
    std::array<char, 32> bytes{};
    const ssize_t got = ::read(file, bytes.data(), bytes.size() - 1);
    ::close(file);
    const std::string_view word(bytes.data(), got > 0 ? static_cast<std::size_t>(got) : 0);
    const auto is = [&](std::string_view one) { return word.substr(0, one.size()) == one; };
    theDisk->failEvery(is("every ") ? std::strtoll(bytes.data() + 6, nullptr, 10) : 0);
    theDisk->slowSync(
        seamclock::Milliseconds(is("slow ") ? std::strtoll(bytes.data() + 5, nullptr, 10) : 0));
    theDisk->set(
        is("full")       ? FaultyDisk::Fault::Full
        : is("error")    ? FaultyDisk::Fault::Error
        : is("sync")     ? FaultyDisk::Fault::Sync
        : is("readonly") ? FaultyDisk::Fault::ReadOnly
                         : FaultyDisk::Fault::None);
}

__attribute__((constructor)) void begin() {
    theDisk = new FaultyDisk; // for as long as the program runs
    theDisk->onWrite(look);
}

} // namespace
