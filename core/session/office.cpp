#include "core/session/office.h"

#include "core/base/uuid.h"
#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/log/seal.h"
#include "core/quality/coupons.h"
#include "core/session/job_book.h"
#include "core/shift/seam_document.h"
#include "core/shift/seam_label.h"

#include <algorithm>
#include <set>

namespace seamclock {

namespace {

constexpr const char* kStation = "station";

tl::unexpected<Error> passOn(const Error& error) {
    return tl::unexpected<Error>(error);
}

} // namespace

Result<Office> Office::open(LogWriterBase& writer, Credentials& credentials, const Clock& clock) {
    Office out(writer, credentials, clock);
    auto reader = LogReader::open(writer.path());
    if (!reader) {
        return passOn(reader.error());
    }
    // First what waits, then the log: what is written in between is met twice, and not missed.
    const std::vector<LogRow> waiting = writer.waiting();
    auto roster = readRoster(*reader);
    if (!roster) {
        return passOn(roster.error());
    }
    out.m_roster = std::move(*roster);
    auto shelf = readShelf(*reader);
    if (!shelf) {
        return passOn(shelf.error());
    }
    out.m_shelf = std::move(*shelf);
    for (const LogRow& row : waiting) {
        const auto fact = factFromBody(row.body);
        if (!fact) {
            continue; // a weld's event
        }
        if (const auto taken = take(out.m_roster, *fact); !taken) {
            return passOn(taken.error());
        }
        take(out.m_shelf, *fact);
    }
    return out;
}

Result<const Person*> Office::known(const std::string& person) const {
    const Person* found = findPerson(m_roster.people, person);
    if (found == nullptr) {
        return fail(ErrorCode::Missing, "nobody here is \"" + person + "\"");
    }
    return found;
}

Result<void> Office::mayChange(const ProvenPerson& by) const {
    const Person* foreman = findPerson(m_roster.people, by.person());
    if (by.role() != Role::Foreman || foreman == nullptr || !foreman->active ||
        foreman->role != Role::Foreman) {
        return fail(ErrorCode::Refused, by.person() + " is no foreman; only a foreman may do that");
    }
    return {};
}

Result<void> Office::note(
    const std::string& by, const std::string& subject, FactDetail detail,
    std::vector<LogDocument> documents) {
    const auto fact =
        m_writer->note(m_clock->now(), by, subject, std::move(detail), std::move(documents));
    if (!fact) {
        return passOn(fact.error());
    }
    take(m_shelf, *fact);
    return take(m_roster, *fact);
}

Result<void> Office::store(const std::string& by, const Person& person) {
    std::vector<Person> next = m_roster.people;
    if (auto put = putPerson(next, person); !put) {
        return put;
    }
    return note(
        by, person.id, PersonSet{person.name, std::string(nameOf(person.role)), person.active});
}

Result<void> Office::storePin(
    const std::string& by, const Person& person, const Pin& pin, const std::string& reason) {
    const auto key = m_credentials->setPin(person, pin);
    if (!key) {
        return passOn(key.error());
    }
    if (auto noted = note(by, person.id, PinChanged{reason}); !noted || !*key) {
        return noted;
    }
    return note(by, person.id, KeySet{**key, reason});
}

Result<Access> Office::enter(const std::string& person, const Pin& pin) {
    const auto who = known(person);
    if (!who) {
        return passOn(who.error());
    }
    if (!(*who)->active) {
        return fail(ErrorCode::Refused, (*who)->name + " has left the shop");
    }
    return m_credentials->enter(**who, pin, m_clock->now());
}

Result<Person> Office::addFirstForeman(const std::string& name, const Pin& pin) {
    if (hasForeman(m_roster.people)) {
        return fail(ErrorCode::Conflict, "there is a foreman already, who adds everybody else");
    }
    const Person person{newPersonId(name, m_roster.people), name, Role::Foreman, true};
    if (const auto sound = checkPerson(person); !sound) {
        return passOn(sound.error());
    }
    // The PIN first: a foreman who can't prove it would lock everybody out.
    if (const auto longEnough = checkLength(pin, person.role); !longEnough) {
        return passOn(longEnough.error());
    }
    const auto key = m_credentials->setPin(person, pin);
    if (!key) {
        return passOn(key.error());
    }
    for (FactDetail detail :
         {FactDetail(PersonSet{name, std::string(nameOf(person.role)), true}),
          FactDetail(PinChanged{"first"}), FactDetail(KeySet{key->value_or(""), "first"})}) {
        if (const auto noted = note(kStation, person.id, std::move(detail)); !noted) {
            return passOn(noted.error());
        }
    }
    return person;
}

Result<Person> Office::addPerson(
    const ProvenPerson& by, const std::string& name, Role role, const std::optional<Pin>& pin) {
    if (const auto may = mayChange(by); !may) {
        return passOn(may.error());
    }
    const Person person{newPersonId(name, m_roster.people), name, role, true};
    if (role == Role::Foreman && !pin) {
        return fail(ErrorCode::Malformed, "a foreman needs a PIN, which locks the key of the seal");
    }
    if (pin) {
        if (const auto longEnough = checkLength(*pin, role); !longEnough) {
            return passOn(longEnough.error());
        }
    }
    if (const auto stored = store(by.person(), person); !stored) {
        return passOn(stored.error());
    }
    if (pin) {
        if (const auto set = storePin(by.person(), person, *pin, "first"); !set) {
            return passOn(set.error());
        }
    }
    return person;
}

Result<void>
Office::changePerson(const ProvenPerson& by, const Person& changed, const std::optional<Pin>& pin) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    const auto was = known(changed.id);
    if (!was) {
        return passOn(was.error());
    }
    const bool rises = changed.role == Role::Foreman && (*was)->role != Role::Foreman;
    if (rises && !pin) {
        return fail(ErrorCode::Malformed, "a foreman needs a PIN, which locks the key of the seal");
    }
    if (pin) {
        if (auto longEnough = checkLength(*pin, changed.role); !longEnough) {
            return longEnough;
        }
    }
    if (auto stored = store(by.person(), changed); !stored || !pin) {
        return stored;
    }
    return storePin(by.person(), changed, *pin, rises ? "first" : "changed");
}

Result<void> Office::givePin(const ProvenPerson& by, const std::string& person, const Pin& pin) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    const auto whose = known(person);
    if (!whose) {
        return passOn(whose.error());
    }
    const auto had = m_credentials->hasPin(person);
    if (!had) {
        return passOn(had.error());
    }
    return storePin(by.person(), **whose, pin, *had ? "forgotten" : "first");
}

Result<void> Office::noteCertificate(
    const ProvenPerson& by, const std::string& person, const Certificate& certificate) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    if (const auto whose = known(person); !whose) {
        return passOn(whose.error());
    }
    return note(by.person(), person, CertificateNoted{scopeOf(certificate), certificate.until});
}

Result<void> Office::changePin(const std::string& person, const Pin& old, const Pin& pin) {
    const auto whose = known(person);
    if (!whose) {
        return passOn(whose.error());
    }
    if (auto changed = m_credentials->changePin(**whose, old, pin, m_clock->now()); !changed) {
        return changed;
    }
    return note(person, person, PinChanged{"changed"});
}

Result<void> Office::replaceForgottenPin(const std::string& person, const Pin& pin) {
    const auto whose = known(person);
    if (!whose) {
        return passOn(whose.error());
    }
    return storePin(kStation, **whose, pin, "forgotten");
}

Result<void> Office::setBench(const ProvenPerson& by, const BenchDocument& bench) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    return note(
        by.person(), "bench:" + bench.bench.id, BenchSet{bench.sha256},
        {{bench.sha256, "bench", bench.bytes}});
}

Result<void> Office::setProcedure(const ProvenPerson& by, const ProcedureDocument& procedure) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    return note(
        by.person(), "procedure:" + procedure.procedure.id, ProcedureSet{procedure.sha256},
        {{procedure.sha256, "procedure", procedure.bytes}});
}

Result<void> Office::attest(
    const ProvenPerson& by, const ProcedureDocument& procedure, const std::string& edition,
    const std::vector<std::string>& cells) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    if (edition.empty()) {
        return fail(
            ErrorCode::Malformed, "no edition is named; allowed: the edition of the shop's copy of "
                                  "the standard, as it is printed on it");
    }
    if (cells.empty()) {
        return fail(
            ErrorCode::Malformed,
            "no cell is named; allowed: one or more cells of " + procedure.procedure.id);
    }
    const std::vector<Cell> there = cellsOf(procedure.procedure);
    for (const std::string& name : cells) {
        if (std::none_of(
                there.begin(), there.end(), [&](const Cell& cell) { return cell.name == name; })) {
            return fail(
                ErrorCode::Missing,
                "\"" + name + "\" is no cell of " + procedure.procedure.id +
                    "; allowed: a name that the procedure's list of cells shows");
        }
    }
    return note(
        by.person(), "procedure:" + procedure.procedure.id,
        ProcedureAttested{procedure.sha256, edition, cells},
        {{procedure.sha256, "procedure", procedure.bytes}});
}

Result<void> Office::withdrawAttestation(
    const ProvenPerson& by, const std::string& procedure, const std::string& reason,
    const std::vector<std::string>& cells) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    if (reason.empty()) {
        return fail(ErrorCode::Malformed, "no reason is given; allowed: a few words why");
    }
    if (cells.empty()) {
        return fail(
            ErrorCode::Malformed, "no cell is named; allowed: one or more cells of " + procedure);
    }
    for (const std::string& name : cells) {
        const auto says = [&](const Attestation& one) {
            return one.procedure == procedure &&
                   std::find(one.cells.begin(), one.cells.end(), name) != one.cells.end();
        };
        if (std::none_of(m_shelf.attestations.begin(), m_shelf.attestations.end(), says)) {
            return fail(
                ErrorCode::Missing, "nobody attested \"" + name + "\" of " + procedure +
                                        "; allowed: a cell that is attested");
        }
    }
    return note(by.person(), "procedure:" + procedure, AttestationWithdrawn{{}, reason, cells});
}

// What was handed to the writer is on disk first, so that the log alone is asked.
Result<void> Office::checkCouponOrigin(const CouponTested& tested) {
    if (const auto flushed = m_writer->flush(); !flushed) {
        return passOn(flushed.error());
    }
    auto reader = LogReader::open(m_writer->path());
    if (!reader) {
        return passOn(reader.error());
    }
    return checkOrigin(*reader, tested);
}

Result<std::string> Office::noteCoupons(const ProvenPerson& by, const CouponTested& tested) {
    if (const auto may = mayChange(by); !may) {
        return passOn(may.error());
    }
    if (const auto sound = checkCoupon(tested); !sound) {
        return passOn(sound.error());
    }
    if (tested.reason) {
        return fail(
            ErrorCode::Malformed, "a new series has no reason; allowed: one only where an earlier "
                                  "series is put right");
    }
    if (const auto real = checkCouponOrigin(tested); !real) {
        return passOn(real.error());
    }
    const std::string series = "coupon:" + newUuid();
    if (const auto noted = note(by.person(), series, tested); !noted) {
        return passOn(noted.error());
    }
    return series;
}

Result<void> Office::correctCoupons(
    const ProvenPerson& by, const std::string& series, const CouponTested& tested) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    if (auto sound = checkCoupon(tested); !sound) {
        return sound;
    }
    if (!tested.reason || tested.reason->empty()) {
        return fail(ErrorCode::Missing, "no reason is given; allowed: a few words why");
    }
    if (auto real = checkCouponOrigin(tested); !real) {
        return real;
    }
    auto reader = LogReader::open(m_writer->path());
    if (!reader) {
        return passOn(reader.error());
    }
    const auto known = reader->lastN(series);
    if (!known) {
        return passOn(known.error());
    }
    const auto waiting = m_writer->waiting();
    const bool there =
        *known > 0 || std::any_of(waiting.begin(), waiting.end(), [&](const LogRow& row) {
            return row.subject == series;
        });
    if (series.rfind("coupon:", 0) != 0 || !there) {
        return fail(
            ErrorCode::Missing,
            "there is no series \"" + series + "\"; allowed: one that coupons list shows");
    }
    return note(by.person(), series, tested);
}

// What was handed to the writer is on disk first, so that the log alone is asked.
Result<std::vector<JobSeam>> Office::jobSeams() {
    if (const auto flushed = m_writer->flush(); !flushed) {
        return passOn(flushed.error());
    }
    auto reader = LogReader::open(m_writer->path());
    if (!reader) {
        return passOn(reader.error());
    }
    auto kept = readJobSeams(*reader);
    if (!kept) {
        return passOn(kept.error());
    }
    return std::move(kept->seams);
}

Result<void> Office::addSeams(const ProvenPerson& by, const std::vector<JobSeam>& seams) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    if (seams.empty()) {
        return fail(ErrorCode::Malformed, "there is no seam; allowed: one or more");
    }
    const auto kept = jobSeams();
    if (!kept) {
        return passOn(kept.error());
    }
    std::set<SeamName> names;
    for (const JobSeam& seam : *kept) {
        names.insert(nameOf(seam));
    }
    for (const JobSeam& seam : seams) {
        if (seam.job.empty() || seam.label.empty() || seam.procedure.empty() ||
            seam.lengthsMm.empty() || seam.sheets.size() != 2) {
            return fail(
                ErrorCode::Malformed, "seam \"" + seam.label +
                                          "\" lacks something; allowed: one with a job, a label, a "
                                          "procedure, a length and two sheets");
        }
        if (std::string why = whyNoLabel(seam.label); !why.empty()) {
            return fail(ErrorCode::Malformed, std::move(why));
        }
        if (!names.insert(nameOf(seam)).second) {
            return fail(
                ErrorCode::Conflict, "the job \"" + seam.job + "\" has a seam \"" + seam.label +
                                         "\" already; allowed: each label once in a job");
        }
    }
    for (const JobSeam& seam : seams) {
        const std::string bytes = seamDocumentBytes({seam, false});
        const std::string sha256 = sha256Hex(bytes);
        if (auto noted =
                note(by.person(), "seam:" + newUuid(), SeamSet{sha256}, {{sha256, "seam", bytes}});
            !noted) {
            return noted;
        }
    }
    return {};
}

Result<void> Office::withdrawSeams(const ProvenPerson& by, const std::vector<std::string>& ids) {
    if (auto may = mayChange(by); !may) {
        return may;
    }
    const auto kept = jobSeams();
    if (!kept) {
        return passOn(kept.error());
    }
    std::map<std::string, const JobSeam*> known;
    for (const JobSeam& one : *kept) {
        known[one.id] = &one;
    }
    for (const std::string& id : ids) {
        if (known.count(id) == 0) {
            return fail(
                ErrorCode::Missing,
                "there is no seam \"" + id + "\" in this log; allowed: one that it keeps");
        }
    }
    for (const std::string& id : ids) {
        const std::string bytes = seamDocumentBytes({*known[id], true});
        const std::string sha256 = sha256Hex(bytes);
        if (auto noted = note(by.person(), id, SeamSet{sha256}, {{sha256, "seam", bytes}});
            !noted) {
            return noted;
        }
    }
    return {};
}

Result<Fact> Office::seal(const Access& foreman, const std::optional<std::string>& day) {
    if (const auto may = mayChange(foreman.who); !may) {
        return passOn(may.error());
    }
    const auto key = m_roster.key.find(foreman.who.person());
    if (!foreman.key || key == m_roster.key.end() || key->second != foreman.key->publicKey()) {
        return fail(
            ErrorCode::Missing, foreman.who.person() + " has no key that the log knows; a new PIN, "
                                                       "given by a foreman, makes one");
    }
    const Instant now = m_clock->now();
    return sealDay(
        *m_writer, *foreman.key, foreman.who.person(), day.value_or(toIsoDate(now.utc, now.offset)),
        now);
}

} // namespace seamclock
