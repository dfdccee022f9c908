#include "core/log/roster.h"

#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"

#include <algorithm>
#include <utility>
#include <variant>

namespace seamclock {

Result<void> take(Roster& roster, const Fact& fact) {
    if (const auto* set = std::get_if<PersonSet>(&fact.d)) {
        const auto role = roleOf(set->role);
        if (!role) {
            return fail(
                ErrorCode::Damaged, fact.subject + " has the role \"" + set->role +
                                        "\"; allowed: trainee, operator, foreman");
        }
        Person person{fact.subject, set->name, *role, set->active};
        if (auto sound = checkPerson(person); !sound) {
            return fail(ErrorCode::Damaged, sound.error().detail);
        }
        const auto known =
            std::find_if(roster.people.begin(), roster.people.end(), [&](const Person& one) {
                return one.id == person.id;
            });
        if (known == roster.people.end()) {
            roster.people.push_back(std::move(person));
        } else {
            *known = std::move(person);
        }
    } else if (const auto* noted = std::get_if<CertificateNoted>(&fact.d)) {
        auto certificate = readCertificate(noted->scope, noted->until);
        if (!certificate) {
            return fail(ErrorCode::Damaged, fact.subject + ": " + certificate.error().detail);
        }
        note(roster.certificate[fact.subject], std::move(*certificate));
    } else if (const auto* key = std::get_if<KeySet>(&fact.d)) {
        if (fact.subject != "station") {
            roster.key[fact.subject] = key->publicKey;
        }
    }
    return {};
}

Result<Roster> readRoster(LogReader& reader) {
    const auto bodies = reader.bodiesFrom("person:");
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    Roster out;
    for (const std::string& body : *bodies) {
        const auto fact = factFromBody(body);
        if (!fact) {
            continue; // a kind that has no form here
        }
        if (auto taken = take(out, *fact); !taken) {
            return tl::unexpected<Error>(taken.error());
        }
    }
    return out;
}

Result<Roster>
peopleBeside(LogReader& reader, const std::string& weld, const std::set<std::string>& people) {
    Roster out;
    for (const std::string& person : people) {
        const auto bodies = reader.bodiesBeside(weld, person);
        if (!bodies) {
            return tl::unexpected<Error>(bodies.error());
        }
        for (const std::string& body : *bodies) {
            const auto fact = factFromBody(body);
            if (!fact) {
                continue;
            }
            if (auto taken = take(out, *fact); !taken) {
                return tl::unexpected<Error>(taken.error());
            }
        }
    }
    return out;
}

Result<std::string>
nameElsewhere(LogReader& reader, const std::string& weld, const std::string& person) {
    const auto rows = reader.rowsOf(weld);
    if (!rows) {
        return tl::unexpected<Error>(rows.error());
    }
    if (!rows->empty()) {
        return std::string();
    }
    const auto roster = peopleBeside(reader, weld, {person});
    if (!roster) {
        return tl::unexpected<Error>(roster.error());
    }
    const Person* found = findPerson(roster->people, person);
    return found == nullptr ? std::string() : found->name;
}

} // namespace seamclock
