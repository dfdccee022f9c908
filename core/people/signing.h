// Ed25519 signatures (RFC 8032) as libsodium makes them, and what a person can compare by eye.
// Keys and signatures are lower-case hexadecimal wherever they are shown or stored.
#pragma once

#include "core/base/result.h"
#include "core/people/secret.h"

#include <string>
#include <string_view>

namespace seamclock {

class SigningKey {
public:
    /// From the system's random source.
    static SigningKey make();
    /// Malformed: not the 32 bytes of a seed.
    static Result<SigningKey> fromSeed(const Secret& seed);

    const std::string& publicKey() const { return m_public; } // 64 digits
    /// 128 digits.
    std::string sign(std::string_view message) const;
    /// What brings the key back.
    Secret seed() const;

private:
    SigningKey(std::string publicKey, Secret secret)
        : m_public(std::move(publicKey)), m_secret(std::move(secret)) {}

    std::string m_public;
    Secret m_secret;
};

/// Whether the holder of that key signed this message. False too for what is no key or signature.
bool signatureFits(
    std::string_view publicKey, std::string_view message, std::string_view signature);

/// The first 128 bits of SHA-256, in groups of four digits: what is printed, mailed and compared by
/// eye. "4f1c 09ab … 77e0"
std::string fingerprint(std::string_view bytes);

} // namespace seamclock
