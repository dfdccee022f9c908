#include "core/shift/seam_label.h"

#include <charconv>
#include <fmt/format.h>
#include <system_error>
#include <utility>

namespace seamclock {

namespace {

constexpr std::string_view kMark = "/R";

/// "S3" and 2 of "S3/R2".
std::pair<std::string_view, int> parted(std::string_view label) {
    const std::size_t mark = label.rfind(kMark);
    if (mark == std::string_view::npos || mark == 0) {
        return {label, 0};
    }
    const std::string_view digits = label.substr(mark + kMark.size());
    int count = 0;
    const char* end = digits.data() + digits.size();
    const auto read = std::from_chars(digits.data(), end, count);
    const bool whole = read.ec == std::errc() && read.ptr == end && count > 0;
    return whole ? std::pair{label.substr(0, mark), count} : std::pair{label, 0};
}

} // namespace

std::string_view seamOf(std::string_view label) {
    return parted(label).first;
}

int reweldsOf(std::string_view label) {
    return parted(label).second;
}

std::string reweldLabel(std::string_view label) {
    const auto [seam, count] = parted(label);
    return std::string(seam) + std::string(kMark) + std::to_string(count + 1);
}

std::string whyNoLabel(std::string_view label) {
    return reweldsOf(label) == 0
               ? std::string()
               : fmt::format(
                     "\"{}\" is what {} is called once it is welded again; allowed: a label that "
                     "does not end so",
                     label, seamOf(label));
}

} // namespace seamclock
