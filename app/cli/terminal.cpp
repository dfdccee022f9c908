#include "app/cli/terminal.h"

#include "core/report/plain_text.h"

#include <cerrno>
#include <cstdio>
#include <system_error>

namespace seamclock {
namespace {

constexpr std::size_t kLongestComplaint = 1000;

} // namespace

void Terminal::failed() {
    m_trouble = std::generic_category().message(errno);
}

void Terminal::write(std::string_view text) {
    if (m_trouble.empty() && std::fwrite(text.data(), 1, text.size(), stdout) != text.size()) {
        failed();
    }
}

void Terminal::writeNow(std::string_view text) {
    write(text);
    if (m_trouble.empty() && std::fflush(stdout) != 0) {
        failed();
    }
}

Result<void> Terminal::finish() {
    writeNow("");
    if (!m_trouble.empty()) {
        return fail(
            ErrorCode::NotWritten, "standard output could not be written: " + m_trouble +
                                       "; give it an open pipe, a terminal or a disk with room");
    }
    return {};
}

void Terminal::complain(std::string_view sentence) {
    std::string line = onOneLine(sentence);
    if (line.size() > kLongestComplaint) {
        // Cut between two signs: a continuation byte of UTF-8 is 10xxxxxx.
        std::size_t end = kLongestComplaint;
        while (end > 0 && (static_cast<unsigned char>(line[end]) & 0xC0U) == 0x80U) {
            --end;
        }
        line = line.substr(0, end) + " …";
    }
    line = "seamclock-cli: " + line + "\n";
    std::fwrite(line.data(), 1, line.size(), stderr);
    std::fflush(stderr);
}

} // namespace seamclock
