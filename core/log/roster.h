// Who works here, by the facts of a log: the people, what each foreman signs with, and who has a
// PIN. It is a fold, as a weld is: live it is brought on fact by fact, and read anew it is the
// same.
#pragma once

#include "core/base/result.h"
#include "core/log/fact.h"
#include "core/people/certificate.h"
#include "core/people/person.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace seamclock {

class LogReader;

struct Roster {
    std::vector<Person> people;                          // in the order in which they came
    std::map<std::string, std::string> key;              // person: public key in force
    std::map<std::string, HeldCertificates> certificate; // by person

    bool operator==(const Roster&) const = default;
};

/// Passes over facts that aren't about people. Damaged: a person or a certificate as none can be.
Result<void> take(Roster& roster, const Fact& fact);

/// From the log's own chain.
Result<Roster> readRoster(LogReader& reader);
/// Those people ("person:ilva") by the log that the weld came with, as people of one name in two
/// shops have one id.
Result<Roster>
peopleBeside(LogReader& reader, const std::string& weld, const std::set<std::string>& people);
/// How that log calls one of them; "": the weld is this log's own, or nobody is called so there.
Result<std::string>
nameElsewhere(LogReader& reader, const std::string& weld, const std::string& person);

} // namespace seamclock
