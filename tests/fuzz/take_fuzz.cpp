// A take as a log might hand it back: it is refused in a sentence or read, and what was read is
// written and read again as the same take.
#include "core/practice/practice_take_codec.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace seamclock {
namespace {

void must(bool held) {
    if (!held) {
        std::abort();
    }
}

void tryText(std::string_view text) {
    const auto read = readTake("fuzz.json", text);
    if (!read) {
        must(!read.error().detail.empty());
        return;
    }
    const auto written = takeText(*read);
    must(written.has_value());
    const auto again = readTake("again.json", *written);
    must(again.has_value() && *again == *read);
}

} // namespace
} // namespace seamclock

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    seamclock::tryText({reinterpret_cast<const char*>(data), size});
    return 0;
}
