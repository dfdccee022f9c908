// people and log seal: what only a foreman may do, from a terminal. Whoever runs it gives PINs on
// standard input (pin_input.h). The window program must not be running on the same log.
#include "app/cli/command.h"
#include "app/cli/foreman_desk.h"
#include "app/cli/numbers.h"
#include "app/cli/output_json.h"
#include "app/cli/pin_input.h"
#include "core/log/log_reader.h"
#include "core/log/seal.h"
#include "core/report/plain_text.h"
#include "core/report/wording.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace seamclock {
namespace {

struct ForemanCall {
    std::string log;
    bool json = false;
    std::optional<std::string> by;
    std::optional<std::string> person;
    std::optional<std::string> name;
    std::optional<std::string> role;
    std::optional<std::string> day;
    std::optional<std::string> scope;
    std::optional<std::string> until;
    bool left = false;
    bool back = false;
    bool forgotten = false;
    bool withPin = false;
};

Result<Role> readRole(const ForemanCall& call) {
    const auto role = roleOf(call.role.value_or(""));
    if (!role) {
        return fail(
            ErrorCode::Malformed, "--role " + inQuotes(call.role.value_or("")) +
                                      " is none; allowed: trainee, operator, foreman");
    }
    return *role;
}

/// On disk before the command says that it is done.
Result<int>
done(const ForemanCall& call, ForemanDesk& desk, Terminal& terminal, const std::string& said) {
    if (const auto flushed = desk.writer->flush(); !flushed) {
        return tl::unexpected(flushed.error());
    }
    terminal.write(call.json ? peopleJson(call.log, desk.office->roster()) : said + "\n");
    return 0;
}

Result<int> listPeople(const ForemanCall& call, Terminal& terminal) {
    auto reader = LogReader::open(call.log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    const auto roster = readRoster(*reader);
    if (!roster) {
        return tl::unexpected(roster.error());
    }
    if (call.json) {
        terminal.write(peopleJson(call.log, *roster));
        return 0;
    }
    std::vector<std::vector<std::string>> rows = {
        {"id", "name", "role", "certificate", "until", "key's fingerprint"}};
    for (const Person& person : roster->people) {
        const auto key = roster->key.find(person.id);
        const auto noted = roster->certificate.find(person.id);
        const HeldCertificates held =
            noted == roster->certificate.end() ? HeldCertificates{} : noted->second;
        rows.push_back(
            {onOneLine(person.id), onOneLine(person.name),
             std::string(nameOf(person.role)) + (person.active ? "" : ", has left"),
             held.empty() ? "none" : scopeOf(held.front()), held.empty() ? "" : held.front().until,
             key == roster->key.end() ? "" : fingerprint(key->second)});
        for (std::size_t i = 1; i < held.size(); ++i) {
            rows.push_back({"", "", "", scopeOf(held[i]), held[i].until, ""});
        }
    }
    terminal.write(rows.size() == 1 ? "nobody is entered yet\n" : aligned(rows));
    return 0;
}

Result<int> addPerson(const ForemanCall& call, Terminal& terminal) {
    const auto role = readRole(call);
    if (!role) {
        return tl::unexpected(role.error());
    }
    auto desk = openForemanDesk(call.log);
    if (!desk) {
        return tl::unexpected(desk.error());
    }
    const std::string name = call.name.value_or("");
    Office& office = *(*desk)->office;
    const auto added = [&]() -> Result<Person> {
        if (!hasForeman(office.roster().people) && !call.by) {
            if (*role != Role::Foreman) {
                return fail(
                    ErrorCode::Malformed, "--role " + inQuotes(std::string(nameOf(*role))) +
                                              " can't come first; allowed: foreman, who then adds "
                                              "everybody else");
            }
            const auto pin = readPin("new PIN");
            return pin ? office.addFirstForeman(name, *pin)
                       : Result<Person>(tl::unexpected(pin.error()));
        }
        const auto by = enterForeman(call.by, **desk);
        if (!by) {
            return tl::unexpected(by.error());
        }
        std::optional<Pin> pin;
        if (call.withPin || *role == Role::Foreman) {
            auto read = readPin("new PIN");
            if (!read) {
                return tl::unexpected(read.error());
            }
            pin = std::move(*read);
        }
        return office.addPerson(by->who, name, *role, pin);
    }();
    if (!added) {
        return tl::unexpected(added.error());
    }
    return done(call, **desk, terminal, "added: " + onOneLine(added->id));
}

Result<int> changePerson(const ForemanCall& call, Terminal& terminal) {
    auto desk = openForemanDesk(call.log);
    if (!desk) {
        return tl::unexpected(desk.error());
    }
    const std::string id = call.person.value_or("");
    const Person* found = findPerson((*desk)->office->roster().people, id);
    if (found == nullptr) {
        return fail(
            ErrorCode::Missing,
            "--person " + inQuotes(id) + " is nobody here; allowed: an id that people list shows");
    }
    Person changed = *found;
    changed.name = call.name.value_or(changed.name);
    changed.active = (changed.active || call.back) && !call.left;
    if (call.role) {
        const auto role = readRole(call);
        if (!role) {
            return tl::unexpected(role.error());
        }
        changed.role = *role;
    }
    const auto by = enterForeman(call.by, **desk);
    if (!by) {
        return tl::unexpected(by.error());
    }
    std::optional<Pin> pin;
    if (changed.role == Role::Foreman && found->role != Role::Foreman) {
        auto read = readPin("new PIN of " + id);
        if (!read) {
            return tl::unexpected(read.error());
        }
        pin = std::move(*read);
    }
    if (const auto put = (*desk)->office->changePerson(by->who, changed, pin); !put) {
        return tl::unexpected(put.error());
    }
    return done(call, **desk, terminal, "changed: " + onOneLine(id));
}

/// One's own; with --by somebody else's, who forgot it; with --forgotten by nobody's word.
Result<int> changePin(const ForemanCall& call, Terminal& terminal) {
    auto desk = openForemanDesk(call.log);
    if (!desk) {
        return tl::unexpected(desk.error());
    }
    Office& office = *(*desk)->office;
    const std::string id = call.person.value_or("");
    const auto changed = [&]() -> Result<void> {
        std::optional<Access> by;
        std::optional<Pin> old;
        if (call.by) {
            auto entered = enterForeman(call.by, **desk);
            if (!entered) {
                return tl::unexpected(entered.error());
            }
            by = std::move(*entered);
        } else if (!call.forgotten) {
            auto read = readPin("PIN of " + id);
            if (!read) {
                return tl::unexpected(read.error());
            }
            old = std::move(*read);
        }
        const auto pin = readPin("new PIN of " + id);
        if (!pin) {
            return tl::unexpected(pin.error());
        }
        if (by) {
            return office.givePin(by->who, id, *pin);
        }
        return old ? office.changePin(id, *old, *pin) : office.replaceForgottenPin(id, *pin);
    }();
    if (!changed) {
        return tl::unexpected(changed.error());
    }
    return done(call, **desk, terminal, "the PIN of " + onOneLine(id) + " is changed");
}

Result<int> noteCertificate(const ForemanCall& call, Terminal& terminal) {
    const auto certificate = readCertificate(call.scope.value_or(""), call.until.value_or(""));
    if (!certificate) {
        return tl::unexpected(certificate.error());
    }
    auto desk = openForemanDesk(call.log);
    if (!desk) {
        return tl::unexpected(desk.error());
    }
    const auto by = enterForeman(call.by, **desk);
    if (!by) {
        return tl::unexpected(by.error());
    }
    const std::string id = call.person.value_or("");
    if (const auto noted = (*desk)->office->noteCertificate(by->who, id, *certificate); !noted) {
        return tl::unexpected(noted.error());
    }
    return done(call, **desk, terminal, "the certificate of " + onOneLine(id) + " is noted");
}

Result<int> sealLog(const ForemanCall& call, Terminal& terminal) {
    auto desk = openForemanDesk(call.log);
    if (!desk) {
        return tl::unexpected(desk.error());
    }
    const auto by = enterForeman(call.by, **desk);
    if (!by) {
        return tl::unexpected(by.error());
    }
    const auto sealed = (*desk)->office->seal(*by, call.day);
    if (!sealed) {
        return tl::unexpected(sealed.error());
    }
    const auto& seal = std::get<DaySealed>(sealed->d);
    const std::string day = sealed->subject.substr(std::string_view("day:").size());
    if (call.json) {
        terminal.write(sealJson(*sealed, day));
        return 0;
    }
    terminal.write(aligned(
        {{"Sealed", day + ", by " + onOneLine(sealed->by)},
         {"Rows", "1.." + std::to_string(seal.toSeq)},
         {"Fingerprint", sealFingerprint(*sealed)},
         {"Key", fingerprint(seal.publicKey)}},
        0));
    terminal.write("Write both on paper, or mail them: what never left this machine could be "
                   "signed anew by its owner.\n");
    return 0;
}

} // namespace

void addForeman(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<ForemanCall>();
    CLI::App* people = root.add_subcommand("people", "Who works here, their roles and PINs.");
    people->require_subcommand(0, 1);
    CLI::App* list = people->add_subcommand("list", "Everybody in the log.");
    CLI::App* add = people->add_subcommand(
        "add", "Somebody new. The first must be a foreman; everybody else comes by one.");
    add->add_option("--name", call->name, "the NAME, 1 to 40 characters")->required();
    add->add_option("--role", call->role, "trainee, operator or foreman")->required();
    add->add_flag("--pin", call->withPin, "with a PIN (a foreman always has one)");
    CLI::App* change = people->add_subcommand("change", "Another name or role, or gone.");
    change->add_option("--person", call->person, "whose, as person:ID")->required();
    change->add_option("--name", call->name, "the new NAME, 1 to 40 characters");
    change->add_option("--role", call->role, "trainee, operator or foreman");
    change->add_flag("--left", call->left, "has left the shop");
    change->add_flag("--back", call->back, "is back");
    CLI::App* pin = people->add_subcommand(
        "pin", "Another PIN: one's own, or with --by for somebody who forgot it.");
    pin->add_option("--person", call->person, "whose, as person:ID")->required();
    pin->add_flag(
        "--forgotten", call->forgotten,
        "without any PIN, for a shop whose only foreman forgot his; the log says so for ever");
    CLI::App* certificate = people->add_subcommand(
        "certificate", "A foreman has seen somebody's certificate; the last one noted holds.");
    certificate->add_option("--person", call->person, "whose, as person:ID")->required();
    certificate
        ->add_option("--scope", call->scope, "materials and thickness, as in \"PE-HD, PP 3-20 mm\"")
        ->required();
    certificate->add_option("--until", call->until, "the last DATE, as in 2031-06-30")->required();
    CLI::App* seal = root.get_subcommand("log")->add_subcommand(
        "seal", "The day's seal: a foreman signs the log as it is now.");
    seal->add_option("--day", call->day, "local DATE of the day (today), up to today");
    for (CLI::App* words : {add, change, pin, certificate, seal}) {
        words->add_option("--by", call->by, "the foreman, as person:ID");
    }
    for (CLI::App* words : {list, add, change, pin, certificate, seal}) {
        words->add_option("--log", call->log, "the log's FILE")->required();
        words->add_flag("--json", call->json, "as JSON");
    }
    commands.push_back({list, [call, &terminal] { return listPeople(*call, terminal); }});
    commands.push_back({add, [call, &terminal] { return addPerson(*call, terminal); }});
    commands.push_back({change, [call, &terminal] { return changePerson(*call, terminal); }});
    commands.push_back({pin, [call, &terminal] { return changePin(*call, terminal); }});
    commands.push_back(
        {certificate, [call, &terminal] { return noteCertificate(*call, terminal); }});
    commands.push_back({seal, [call, &terminal] { return sealLog(*call, terminal); }});
}

} // namespace seamclock
