// A person's PIN: digits, as a tablet's number pad and gloves allow no more.
#pragma once

#include "core/base/result.h"
#include "core/people/person.h"
#include "core/people/secret.h"

#include <cstddef>
#include <string_view>

namespace seamclock {

/// A foreman's PIN locks the key that signs the day, so it is longer.
inline constexpr std::size_t kShortestPin = 4;
inline constexpr std::size_t kShortestForemanPin = 6;
inline constexpr std::size_t kLongestPin = 12;

class Pin {
public:
    /// Malformed: not 1 to 12 digits; the sentence never holds them.
    static Result<Pin> read(std::string_view digits);

    const Secret& digits() const { return m_digits; }

private:
    explicit Pin(std::string_view digits) : m_digits(digits) {}
    Secret m_digits;
};

/// Malformed: too short for somebody of that role to have from now on.
Result<void> checkLength(const Pin& pin, Role role);

} // namespace seamclock
