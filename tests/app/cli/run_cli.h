// Runs the real program through a shell and keeps what it printed. Its data folder is the test's
// own.
#pragma once

#include "tests/support/scratch_folder.h"

#include <nlohmann/json.hpp>
#include <string>

namespace seamclock::test {

struct Ran {
    int status = -1; // the exit status; 128 + n for signal n
    std::string out;
    std::string err;
};

class Cli {
public:
    /// `words` as in a shell; `before` may set variables or begin a pipe, `after` may redirect.
    Ran
    run(const std::string& words, const std::string& before = "",
        const std::string& after = "") const;
    /// With --json: the status must be 0 and the output one JSON value.
    nlohmann::json json(const std::string& words) const;

    /// A file of that content in the test's own folder; its path, quoted for a shell.
    std::string file(const std::string& name, const std::string& content) const;
    /// Where such a file would be, quoted for a shell.
    std::string path(const std::string& name) const;
    const ScratchFolder& folder() const { return m_folder; }

    static std::string program();
    static std::string demoBench(const std::string& name);

private:
    ScratchFolder m_folder;
};

std::string fileText(const std::string& path);
std::string inShell(const std::string& text);

} // namespace seamclock::test
