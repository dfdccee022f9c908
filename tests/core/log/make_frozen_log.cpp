// Makes the frozen log of a released version, once: make_frozen_log FOLDER writes log-vN.log and,
// beside it, log-vN.txt with what it holds. They, and LOG.credentials with the station's key, are
// committed and never made again;
// frozen_log_test.cpp holds every later program to them.
#include "core/log/schema.h"
#include "tests/support/frozen_log.h"
#include "tests/support/log_samples.h"

#include <cstdio>
#include <filesystem>
#include <fstream>

using namespace seamclock;

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fprintf(stderr, "make_frozen_log FOLDER\n");
        return 2;
    }
    const std::string name =
        std::string(argv[1]) + "/log-v" + std::to_string(migrations().back().version);
    const std::string path = name + ".log";
    if (std::filesystem::exists(path)) {
        std::fprintf(
            stderr, "%s: is there already; a frozen log is never made again\n", path.c_str());
        return 2;
    }
    test::writeSealedLog(path, test::FakeClock(), SigningKey::make());
    std::ofstream(name + ".txt") << test::contentOf(path);
    for (const char* tail : {".lock", ".credentials.lock", ".spill", "-wal", "-shm"}) {
        std::filesystem::remove(path + tail);
    }
    return 0;
}
