// A lesson's file as anybody might hand it in: it is refused with findings or read, and never both;
// what was read is written and read again as the same lesson.
#include "core/practice/lesson_codec.h"

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
    const auto findings = checkLesson("fuzz.json", text);
    const auto read = readLesson("fuzz.json", text);
    must(findings.empty() == read.has_value());
    if (!read) {
        must(!read.error().detail.empty());
        return;
    }
    const auto again = readLesson("again.json", lessonText(*read));
    must(again.has_value() && *again == *read);
}

} // namespace
} // namespace seamclock

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    seamclock::tryText({reinterpret_cast<const char*>(data), size});
    return 0;
}
