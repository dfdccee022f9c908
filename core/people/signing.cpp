#include "core/people/signing.h"

#include "core/base/uuid.h"

#include <array>
#include <sodium.h>

namespace seamclock {

namespace {

std::string hex(const unsigned char* bytes, std::size_t count) {
    std::string text(count * 2 + 1, '\0');
    sodium_bin2hex(text.data(), text.size(), bytes, count);
    text.pop_back();
    return text;
}

template <std::size_t Size>
bool unhex(std::string_view text, std::array<unsigned char, Size>& bytes) {
    std::size_t count = 0;
    return text.size() == Size * 2 &&
           sodium_hex2bin(bytes.data(), Size, text.data(), text.size(), nullptr, &count, nullptr) ==
               0 &&
           count == Size;
}

const unsigned char* raw(std::string_view text) {
    return reinterpret_cast<const unsigned char*>(text.data());
}

} // namespace

SigningKey SigningKey::make() {
    Secret seed(crypto_sign_SEEDBYTES);
    randombytes_buf(seed.bytes(), seed.size());
    return *fromSeed(seed);
}

Result<SigningKey> SigningKey::fromSeed(const Secret& seed) {
    if (seed.size() != crypto_sign_SEEDBYTES) {
        return fail(
            ErrorCode::Malformed, "a signing key's seed has " + std::to_string(seed.size()) +
                                      " bytes, expected " + std::to_string(crypto_sign_SEEDBYTES));
    }
    std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> open{};
    Secret secret(crypto_sign_SECRETKEYBYTES);
    crypto_sign_seed_keypair(open.data(), secret.bytes(), seed.bytes());
    return SigningKey(hex(open.data(), open.size()), std::move(secret));
}

std::string SigningKey::sign(std::string_view message) const {
    std::array<unsigned char, crypto_sign_BYTES> signature{};
    crypto_sign_detached(signature.data(), nullptr, raw(message), message.size(), m_secret.bytes());
    return hex(signature.data(), signature.size());
}

Secret SigningKey::seed() const {
    Secret out(crypto_sign_SEEDBYTES);
    crypto_sign_ed25519_sk_to_seed(out.bytes(), m_secret.bytes());
    return out;
}

bool signatureFits(
    std::string_view publicKey, std::string_view message, std::string_view signature) {
    std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> key{};
    std::array<unsigned char, crypto_sign_BYTES> bytes{};
    return unhex(publicKey, key) && unhex(signature, bytes) &&
           crypto_sign_verify_detached(bytes.data(), raw(message), message.size(), key.data()) == 0;
}

std::string fingerprint(std::string_view bytes) {
    constexpr std::size_t kDigits = 32;
    constexpr std::size_t kGroup = 4;
    const std::string whole = sha256Hex(bytes);
    std::string out;
    for (std::size_t i = 0; i < kDigits; i += kGroup) {
        out += (i == 0 ? "" : " ") + whole.substr(i, kGroup);
    }
    return out;
}

} // namespace seamclock
