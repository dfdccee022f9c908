#include "tests/app/cli/run_cli.h"

#include <cstdlib>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>
#include <sys/wait.h>

namespace seamclock::test {

std::string inShell(const std::string& text) {
    std::string safe = "'";
    for (const char c : text) {
        safe += c == '\'' ? "'\\''" : std::string(1, c);
    }
    return safe + "'";
}

std::string fileText(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

std::string Cli::program() {
    return inShell(std::string(SEAMCLOCK_BIN_DIR) + "/seamclock-cli");
}

std::string Cli::demoBench(const std::string& name) {
    return inShell(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo/bench-" + name + ".json");
}

std::string Cli::path(const std::string& name) const {
    return inShell(m_folder.file(name));
}

std::string Cli::file(const std::string& name, const std::string& content) const {
    std::ofstream file(m_folder.file(name), std::ios::binary);
    file << content;
    return path(name);
}

Ran Cli::run(const std::string& words, const std::string& before, const std::string& after) const {
    const std::string out = m_folder.file("stdout");
    const std::string err = m_folder.file("stderr");
    const std::string redirect = after.empty() ? ">" + inShell(out) : after;
    const bool piped = !before.empty() && before.back() == '|';
    const std::string command = "XDG_DATA_HOME=" + path("data") + " " + before + " " + program() +
                                " " + words + (piped ? "" : " </dev/null") + " 2>" + inShell(err) +
                                " " + redirect;
    const int status = std::system(command.c_str());
    Ran ran;
    ran.status = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    ran.out = after.empty() ? fileText(out) : "";
    ran.err = fileText(err);
    return ran;
}

nlohmann::json Cli::json(const std::string& words) const {
    const Ran ran = run(words + " --json");
    EXPECT_EQ(ran.status, 0) << words << "\n" << ran.err;
    EXPECT_EQ(ran.err, "") << words;
    auto parsed = nlohmann::json::parse(ran.out, nullptr, false);
    EXPECT_FALSE(parsed.is_discarded()) << words << "\n" << ran.out.substr(0, 400);
    return parsed;
}

} // namespace seamclock::test
