#include "core/people/pin.h"

#include <algorithm>
#include <string>

namespace seamclock {

Result<Pin> Pin::read(std::string_view digits) {
    const bool onlyDigits =
        std::all_of(digits.begin(), digits.end(), [](char c) { return c >= '0' && c <= '9'; });
    if (!onlyDigits || digits.empty() || digits.size() > kLongestPin) {
        return fail(
            ErrorCode::Malformed, "a PIN has 1 to " + std::to_string(kLongestPin) +
                                      " digits and nothing else; this one has " +
                                      std::to_string(digits.size()) +
                                      (onlyDigits ? " digits" : " characters"));
    }
    return Pin(digits);
}

Result<void> checkLength(const Pin& pin, Role role) {
    const bool foreman = role == Role::Foreman;
    const std::size_t shortest = foreman ? kShortestForemanPin : kShortestPin;
    if (pin.digits().size() < shortest) {
        return fail(
            ErrorCode::Malformed, std::string(foreman ? "a foreman's" : "a") + " PIN has " +
                                      std::to_string(shortest) + " to " +
                                      std::to_string(kLongestPin) + " digits; this one has " +
                                      std::to_string(pin.digits().size()));
    }
    return {};
}

} // namespace seamclock
