// What is signed of a log, and what of it can leave the tablet. Two signatures stand in a chain:
// the station's, over its head after each closed weld and hourly, and a foreman's over the head at
// the end of a day, the day's seal. Both are over a text that anyone can write down again:
//   seamclock-head/1 LF log id LF row LF hash of that row
//   seamclock-seal/1 LF log id LF day LF person LF row LF hash of that row
// Beside the chain stands the station's signature of the head as it is now, renewed with every
// commit, so that a row forged behind the last one is found without waiting for the next closing.
#pragma once

#include "core/base/result.h"
#include "core/log/fact.h"
#include "core/log/log_row.h"
#include "core/people/signing.h"

#include <string>
#include <string_view>

namespace seamclock {

class LogWriterBase;

std::string headMessage(std::string_view logId, const LogHead& head);

std::string sealMessage(
    std::string_view logId, std::string_view day, std::string_view person, const LogHead& head);

/// Of a day_sealed fact: over its message, public key and signature. It is printed on the day's
/// report; whoever holds that paper can tell whether the log still has this seal.
std::string sealFingerprint(const Fact& sealed);

/// Seals what is on disk now, as the seal of that local date ("2030-01-07") by that foreman, whose
/// key the log knows. Malformed, OutOfRange: no date, or one to come. NotWritten: rows wait that
/// aren't on disk, as they would stand behind the seal; Refused: nothing to seal, or the day has
/// its seal and no row came since.
Result<Fact> sealDay(
    LogWriterBase& writer, const SigningKey& key, const std::string& foreman,
    const std::string& day, const Instant& at);

} // namespace seamclock
