// What a frozen log holds, as a text to compare.
#pragma once

#include <string>

namespace seamclock::test {

/// Log id, world, head, a line for each joint (newest first) and each open weld; a complaint if it
/// can't be read.
std::string contentOf(const std::string& path);

} // namespace seamclock::test
