#include "core/base/uuid.h"

#include <array>
#include <cstddef>
#include <cstdlib>
#include <sodium.h>

namespace seamclock {

namespace {

// sodium_init is cheap, and safe to race with itself; without it the first randombytes_buf is not.
void initialise() {
    static const int once = sodium_init();
    if (once < 0) {
        std::abort(); // no random source: nothing here could be named
    }
}

std::string hex(const unsigned char* bytes, std::size_t count) {
    std::string text(count * 2 + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes, count);
    text.pop_back();
    return text;
}

} // namespace

std::string newUuid() {
    initialise();
    std::array<unsigned char, 16> bytes{};
    randombytes_buf(bytes.data(), bytes.size());
    bytes[6] = static_cast<unsigned char>((bytes[6] & 0x0fU) | 0x40U);
    bytes[8] = static_cast<unsigned char>((bytes[8] & 0x3fU) | 0x80U);
    const std::string text = hex(bytes.data(), bytes.size());
    return text.substr(0, 8) + "-" + text.substr(8, 4) + "-" + text.substr(12, 4) + "-" +
           text.substr(16, 4) + "-" + text.substr(20);
}

std::string sha256Hex(std::string_view bytes) {
    std::array<unsigned char, crypto_hash_sha256_BYTES> digest{};
    crypto_hash_sha256(
        digest.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
    return hex(digest.data(), digest.size());
}

std::string sha256Hex(std::initializer_list<std::string_view> pieces) {
    crypto_hash_sha256_state state;
    crypto_hash_sha256_init(&state);
    for (const std::string_view piece : pieces) {
        crypto_hash_sha256_update(
            &state, reinterpret_cast<const unsigned char*>(piece.data()), piece.size());
    }
    std::array<unsigned char, crypto_hash_sha256_BYTES> digest{};
    crypto_hash_sha256_final(&state, digest.data());
    return hex(digest.data(), digest.size());
}

} // namespace seamclock
