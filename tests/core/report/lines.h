// Looking through a text line by line.
#pragma once

#include <sstream>
#include <string>
#include <vector>

namespace seamclock::test {

inline std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        lines.push_back(line);
    }
    return lines;
}

/// The first line that holds the words, "" if none does.
inline std::string lineWith(const std::string& text, const std::string& words) {
    for (const std::string& line : linesOf(text)) {
        if (line.find(words) != std::string::npos) {
            return line;
        }
    }
    return "";
}

inline bool holds(const std::string& text, const std::string& words) {
    return text.find(words) != std::string::npos;
}

} // namespace seamclock::test
