// Feeds every file of a folder to a fuzz target, once: what libFuzzer found worth keeping stays
// tried in every build. An empty folder is a failure, as nothing was tried then.
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

int main(int argc, char** argv) {
    if (argc != 2) {
        std::fprintf(stderr, "usage: %s FOLDER\n", argv[0]);
        return 2;
    }
    int count = 0;
    std::error_code trouble;
    for (const auto& file : std::filesystem::directory_iterator(argv[1], trouble)) {
        std::ifstream in(file.path(), std::ios::binary);
        const std::string bytes{std::istreambuf_iterator<char>(in), {}};
        LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size());
        ++count;
    }
    std::printf("%d files fed\n", count);
    return count > 0 ? 0 : 1;
}
