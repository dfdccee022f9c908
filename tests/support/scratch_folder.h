// A folder of its own for one test, removed with everything in it when the test is over.
#pragma once

#include <filesystem>
#include <gtest/gtest.h>
#include <string>
#include <unistd.h>

namespace seamclock::test {

class ScratchFolder {
public:
    ScratchFolder() {
        static int made = 0;
        m_path = std::filesystem::path(::testing::TempDir()) /
                 ("seamclock-" + std::to_string(::getpid()) + "-" + std::to_string(made++));
        std::filesystem::create_directories(m_path);
    }
    ~ScratchFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(m_path, ignored);
    }
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;

    std::string file(const std::string& name) const { return (m_path / name).string(); }
    std::string path() const { return m_path.string(); }

private:
    std::filesystem::path m_path;
};

} // namespace seamclock::test
