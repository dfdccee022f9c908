// The one file of secrets, beside a log: each person's PIN, the foremen's signing keys, and the
// station's. A PIN is not stored: it opens a box (Argon2id makes the box's key from it, libsodium's
// secretbox closes it), and what is in a foreman's box is his signing key. So a stolen file gives
// nobody a foreman's signature without trying PINs, each of which costs a good tenth of a second
// and 64 MB; six digits hold out for a day or two on one processor, which the README says. The
// station's key lies open in the file, as a program that starts by itself can have no secret from
// the machine's owner.
//
// The file can be read by its owner only, and is written whole: a new one beside it, brought to
// disk, then moved over it. May be called from any thread; a PIN takes a good tenth of a second, so
// not from one that paints.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/people/person.h"
#include "core/people/pin.h"
#include "core/people/signing.h"

#include <map>
#include <mutex>
#include <optional>
#include <string>

namespace seamclock {

/// Somebody has proved who they are. Only the right PIN makes one, so a function that asks for one
/// can't be called without.
class ProvenPerson {
public:
    const std::string& person() const { return m_person; } // "person:…"
    Role role() const { return m_role; }

private:
    friend class Credentials;
    ProvenPerson(std::string person, Role role) : m_person(std::move(person)), m_role(role) {}

    std::string m_person;
    Role m_role;
};

/// A foreman with his key; nobody else has one.
struct Access {
    ProvenPerson who;
    std::optional<SigningKey> key;
};

/// Wrong PINs in a row, and when the last was.
struct WrongPins {
    int count = 0;
    std::string bootId;
    Milliseconds boot{0};

    bool operator==(const WrongPins&) const = default;
};

/// How long nobody may try after so many wrong PINs in a row: two are free, the third costs half a
/// minute, each further one twice as long, an hour at most.
Milliseconds pauseAfter(int wrong);

class Credentials {
public:
    /// Nothing is read or made yet. `path`: as a rule the log's name and ".credentials".
    explicit Credentials(std::string path) : m_path(std::move(path)) {}

    const std::string& path() const { return m_path; }

    struct StationKey {
        SigningKey key;
        bool made = false; // there was none
    };
    /// Made and stored if there is none. NotWritten: it can't be stored; Damaged, Unreadable: the
    /// file that is there.
    Result<StationKey> stationKey();

    /// As above.
    Result<bool> hasPin(const std::string& person) const;

    /// Missing: has no PIN. Refused: the PIN is wrong, or too many wrong ones came before; the
    /// sentence says how long to wait. The wait counts on the boot clock, and from the machine's
    /// start after a reboot. Where the file can't be written, wrong ones are counted in memory.
    Result<Access> enter(const Person& who, const Pin& pin, const Instant& now);
    /// How long that person has to wait; 0: may try.
    Result<Milliseconds> pause(const std::string& person, const Instant& now) const;

    /// A new box, for somebody without a PIN or who forgot it: a foreman's old key is gone with the
    /// old box, and gets a new one. The public key of a foreman, which the log must be told; absent
    /// for others. Malformed: too short for that role.
    Result<std::optional<std::string>> setPin(const Person& whose, const Pin& pin);

    /// The same key under another PIN. Malformed: too short for that role; otherwise as enter.
    Result<void> changePin(const Person& whose, const Pin& old, const Pin& pin, const Instant& now);

private:
    struct File;
    Result<WrongPins> wrongPins(const File& file, const std::string& person) const;

    std::string m_path;
    mutable std::mutex m_mutex;
    std::map<std::string, WrongPins> m_unwritten; // what the file could not be told
};

} // namespace seamclock
