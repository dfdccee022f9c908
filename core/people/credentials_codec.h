// The file of secrets to and from its text: JSON, everything secret in boxes or hexadecimal.
#pragma once

#include "core/base/result.h"
#include "core/people/credentials.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace seamclock {

/// Hexadecimal throughout. `operations` and `memory` are what Argon2id took when it was closed.
struct PinBox {
    std::string salt;
    std::string nonce;
    std::string box;
    std::int64_t operations = 0;
    std::int64_t memory = 0; // bytes
    WrongPins wrong;
};

struct CredentialsContent {
    std::string stationSeed; // hexadecimal; "" if there is none
    std::map<std::string, PinBox> people;
};

/// Damaged, in one sentence that never quotes a secret.
Result<CredentialsContent> readCredentials(std::string_view name, std::string_view text);
std::string credentialsText(const CredentialsContent& content);

} // namespace seamclock
