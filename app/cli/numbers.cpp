#include "app/cli/numbers.h"

#include "core/base/plain_number.h"
#include "core/report/plain_text.h"

#include <charconv>
#include <cmath>
#include <system_error>

namespace seamclock {
namespace {

constexpr std::size_t kLongestQuote = 60;

/// The whole text as one number of that type, by the C locale.
template <class Number>
bool readsAs(std::string_view text, Number& number) {
    if (!text.empty() && text.front() == '+') {
        text.remove_prefix(1);
        if (!text.empty() && text.front() == '-') {
            return false;
        }
    }
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, number);
    return read.ec == std::errc() && read.ptr == end;
}

tl::unexpected<Error> refused(
    std::string_view option, std::string_view text, ErrorCode code, std::string_view why,
    const std::string& allowed) {
    return fail(
        code, std::string(option) + " " + inQuotes(text) + " " + std::string(why) +
                  "; allowed: " + allowed);
}

} // namespace

std::string inQuotes(std::string_view value) {
    std::string line = onOneLine(value.substr(0, 4 * kLongestQuote));
    if (columnsOf(line) > kLongestQuote) {
        const std::string cut = wrapped(line, 0, kLongestQuote);
        line = cut.substr(0, cut.find('\n')) + "…";
    }
    return "\"" + line + "\"";
}

std::string Allowed::inWords() const {
    return plainNumber(low) + " to " + plainNumber(high) + (unit.empty() ? "" : " " + unit);
}

Result<double> parseNumber(std::string_view option, std::string_view text, const Allowed& allowed) {
    double number = 0;
    if (!readsAs(text, number) || !std::isfinite(number)) {
        return refused(option, text, ErrorCode::Malformed, "is not a number", allowed.inWords());
    }
    if (number < allowed.low || number > allowed.high) {
        return refused(option, text, ErrorCode::OutOfRange, "is out of range", allowed.inWords());
    }
    return number;
}

Result<std::int64_t>
parseInteger(std::string_view option, std::string_view text, std::int64_t low, std::int64_t high) {
    const std::string allowed = std::to_string(low) + " to " + std::to_string(high);
    std::int64_t number = 0;
    if (!readsAs(text, number)) {
        return refused(option, text, ErrorCode::Malformed, "is not a whole number", allowed);
    }
    if (number < low || number > high) {
        return refused(option, text, ErrorCode::OutOfRange, "is out of range", allowed);
    }
    return number;
}

Result<std::uint64_t> parseSeed(std::string_view option, std::string_view text) {
    std::uint64_t seed = 0;
    if (!readsAs(text, seed)) {
        return refused(
            option, text, ErrorCode::Malformed, "is not a whole number",
            "0 to 18446744073709551615");
    }
    return seed;
}

} // namespace seamclock
