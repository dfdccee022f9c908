// The chain that makes a changed, missing, added or swapped row show. Anyone can work it out by
// hand: printf '%s\n%s' "$prev" "$body" | sha256sum
#pragma once

#include <string>
#include <string_view>

namespace seamclock {

/// The hash of a row from its predecessor's hash and its own stored bytes.
std::string chainHash(std::string_view previous, std::string_view body);

/// What the first row has as its predecessor.
std::string genesisHash(std::string_view logId, std::string_view world);

} // namespace seamclock
