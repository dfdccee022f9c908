// make_big_log FILE JOINTS [SEED]: a log of that many joints (big_log.h).
#include "tests/speed/big_log.h"

#include <cstdio>
#include <cstdlib>

using namespace seamclock;

int main(int argc, char** argv) {
    if (argc < 3 || argc > 4) {
        std::fprintf(stderr, "make_big_log FILE JOINTS [SEED]\n");
        return 2;
    }
    test::BigLogOptions options;
    options.joints = std::strtoll(argv[2], nullptr, 10);
    options.seed = argc > 3 ? std::strtoull(argv[3], nullptr, 10) : 1;
    options.resources = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources";
    options.progress = [](std::int64_t joints) {
        std::fprintf(stderr, "\r%lld joints", static_cast<long long>(joints));
    };
    const auto made = test::makeBigLog(argv[1], options);
    if (!made) {
        std::fprintf(stderr, "%s\n", made.error().detail.c_str());
        return 2;
    }
    std::printf(
        "%lld joints, %lld events, %lld bytes of bodies\n", static_cast<long long>(made->joints),
        static_cast<long long>(made->events), static_cast<long long>(made->bodyBytes));
    return 0;
}
