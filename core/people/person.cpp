#include "core/people/person.h"

#include <algorithm>
#include <array>
#include <utility>

namespace seamclock {

namespace {

constexpr std::string_view kFamily = "person:";
constexpr std::array<std::pair<Role, std::string_view>, 3> kRoles = {
    {{Role::Trainee, "trainee"}, {Role::Operator, "operator"}, {Role::Foreman, "foreman"}}};

bool isIdCharacter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
}

/// Characters of UTF-8: every byte but the continuing ones.
std::size_t charactersOf(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
    }));
}

} // namespace

std::string_view nameOf(Role role) {
    const auto found = std::find_if(
        kRoles.begin(), kRoles.end(), [&](const auto& entry) { return entry.first == role; });
    return found->second;
}

std::optional<Role> roleOf(std::string_view name) {
    for (const auto& [role, word] : kRoles) {
        if (word == name) {
            return role;
        }
    }
    return std::nullopt;
}

Result<void> checkPerson(const Person& person) {
    const std::string_view id = person.id;
    const bool family = id.substr(0, kFamily.size()) == kFamily;
    const std::string_view own = family ? id.substr(kFamily.size()) : std::string_view();
    if (own.empty() || own.size() > kLongestName ||
        !std::all_of(own.begin(), own.end(), isIdCharacter)) {
        return fail(
            ErrorCode::Malformed, "the person's id \"" + person.id +
                                      "\" is not \"person:\" and 1 to 40 of a-z, 0-9 and \"-\"");
    }
    const std::size_t length = charactersOf(person.name);
    if (length == 0 || length > kLongestName) {
        return fail(
            ErrorCode::Malformed, "the name has " + std::to_string(length) +
                                      " characters; allowed: 1 to " + std::to_string(kLongestName));
    }
    const bool control = std::any_of(person.name.begin(), person.name.end(), [](char c) {
        return static_cast<unsigned char>(c) < 0x20U || c == 0x7F;
    });
    if (control || person.name.front() == ' ' || person.name.back() == ' ') {
        return fail(
            ErrorCode::Malformed,
            "the name holds a control character, or begins or ends with a blank");
    }
    return {};
}

std::string newPersonId(std::string_view name, const std::vector<Person>& taken) {
    std::string own;
    for (const char c : name) {
        const char lower = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        if (isIdCharacter(lower)) {
            own += lower;
        } else if (lower == ' ' && !own.empty() && own.back() != '-') {
            own += '-';
        }
    }
    constexpr std::size_t kRoom = 30; // leaves some for the number
    own = own.substr(0, kRoom);
    if (own.empty()) {
        own = "p";
    }
    std::string id = std::string(kFamily) + own;
    for (int next = 2; findPerson(taken, id) != nullptr; ++next) {
        id = std::string(kFamily) + own + "-" + std::to_string(next);
    }
    return id;
}

const Person* findPerson(const std::vector<Person>& people, std::string_view id) {
    const auto found = std::find_if(
        people.begin(), people.end(), [&](const Person& person) { return person.id == id; });
    return found == people.end() ? nullptr : &*found;
}

bool hasForeman(const std::vector<Person>& people) {
    return std::any_of(people.begin(), people.end(), [](const Person& person) {
        return person.active && person.role == Role::Foreman;
    });
}

Result<void> putPerson(std::vector<Person>& people, const Person& changed) {
    if (auto sound = checkPerson(changed); !sound) {
        return sound;
    }
    std::vector<Person> next = people;
    const auto found = std::find_if(
        next.begin(), next.end(), [&](const Person& person) { return person.id == changed.id; });
    if (found == next.end()) {
        next.push_back(changed);
    } else {
        *found = changed;
    }
    if (hasForeman(people) && !hasForeman(next)) {
        return fail(
            ErrorCode::Refused,
            changed.name + " is the last foreman; somebody else must become one first");
    }
    people = std::move(next);
    return {};
}

} // namespace seamclock
