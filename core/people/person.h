// Who works here, and what each may do. A roster is what the facts in the log make of it; the PINs
// are elsewhere (credentials.h).
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

enum class Role { Trainee, Operator, Foreman };

/// "trainee", "operator", "foreman"
std::string_view nameOf(Role role);
std::optional<Role> roleOf(std::string_view name);

struct Person {
    std::string id; // "person:…", for ever
    std::string name;
    Role role = Role::Operator;
    bool active = true; // false: left the shop; the record keeps the name

    bool operator==(const Person&) const = default;
};

inline constexpr std::size_t kLongestName = 40; // characters

/// Malformed: an id that isn't "person:" and 1 to 40 of a-z, 0-9 and "-"; a name that is empty,
/// longer than 40 characters, or has control characters.
Result<void> checkPerson(const Person& person);

/// "person:" and what a name gives of allowed characters; a number makes it one of its own.
std::string newPersonId(std::string_view name, const std::vector<Person>& taken);

/// Null: nobody has that id.
const Person* findPerson(const std::vector<Person>& people, std::string_view id);

/// Whether somebody active is a foreman.
bool hasForeman(const std::vector<Person>& people);

/// The person as the change makes them, put in its place. Refused: the last active foreman would be
/// none any more, as nobody could then change anything.
Result<void> putPerson(std::vector<Person>& people, const Person& changed);

} // namespace seamclock
