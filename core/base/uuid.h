// Random identifiers (RFC 4122, version 4) and the SHA-256 that chains and names things.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

namespace seamclock {

/// From the system's random source.
std::string newUuid();

/// Lower-case hexadecimal SHA-256 (FIPS 180-4) of the bytes.
std::string sha256Hex(std::string_view bytes);

/// The same of pieces as if they stood one after the other.
std::string sha256Hex(std::initializer_list<std::string_view> pieces);

} // namespace seamclock
