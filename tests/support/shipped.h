// The files that ship with the program, for tests that stand on them. A file that can't be read
// fails the test with the reader's own words.
#pragma once

#include "core/bench/bench_codec.h"
#include "core/procedure/procedure_codec.h"

#include <fstream>
#include <gtest/gtest.h>
#include <sstream>
#include <string>

namespace seamclock::test {

inline std::string resource(const std::string& path) {
    return std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/" + path;
}

inline std::string textOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    EXPECT_TRUE(file.is_open()) << path;
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

inline Procedure shippedProcedure(const std::string& id) {
    const auto read = readProcedureFile(resource("procedures/" + id + ".json"));
    EXPECT_TRUE(read.has_value()) << read.error().detail;
    return read ? read->procedure : Procedure{};
}

inline Bench demoBench(const std::string& name) {
    const auto read = readBenchFile(resource("demo/bench-" + name + ".json"));
    EXPECT_TRUE(read.has_value()) << read.error().detail;
    return read ? read->bench : Bench{};
}

/// The text with its first `was` replaced; the test fails if it isn't there.
inline std::string replaced(std::string text, const std::string& was, const std::string& now) {
    const auto at = text.find(was);
    EXPECT_NE(at, std::string::npos) << "not in the text: " << was;
    return at == std::string::npos ? text : text.replace(at, was.size(), now);
}

} // namespace seamclock::test
