// What only a foreman may do, and how the log comes to know of it: people and their PINs, benches
// and procedures, the day's seal. Every change is a fact with the name of who made it, and the
// functions that change something ask for proof (credentials.h), which only the right PIN gives.
// The first foreman is the exception: a log without one takes anybody's word, once, and its record
// says so. One thread, and not one that paints: proving takes a good tenth of a second.
#pragma once

#include "core/bench/bench_codec.h"
#include "core/log/log_writer.h"
#include "core/log/roster.h"
#include "core/log/shelf.h"
#include "core/people/credentials.h"
#include "core/procedure/procedure_codec.h"
#include "core/shift/job.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace seamclock {

class Office {
public:
    /// All must outlive the office. Errors as LogReader::open and readRoster.
    static Result<Office> open(LogWriterBase& writer, Credentials& credentials, const Clock& clock);

    const Roster& roster() const { return m_roster; }

    /// Missing: nobody with that id, or no PIN; Refused: has left, or as Credentials::enter.
    Result<Access> enter(const std::string& person, const Pin& pin);

    /// Conflict: there is one already.
    Result<Person> addFirstForeman(const std::string& name, const Pin& pin);
    /// Malformed: as checkPerson; a foreman without a PIN. Refused: `by` is no foreman (any more).
    Result<Person> addPerson(
        const ProvenPerson& by, const std::string& name, Role role, const std::optional<Pin>& pin);
    /// Another name or role, or gone from the shop. Whoever becomes a foreman needs a new PIN with
    /// it, as that makes the key. Missing: nobody with that id. Otherwise as above, and putPerson.
    Result<void>
    changePerson(const ProvenPerson& by, const Person& changed, const std::optional<Pin>& pin);
    /// A PIN for somebody who has none or forgot it.
    Result<void> givePin(const ProvenPerson& by, const std::string& person, const Pin& pin);
    /// The foreman has seen that person's certificate. Missing: nobody with that id.
    Result<void> noteCertificate(
        const ProvenPerson& by, const std::string& person, const Certificate& certificate);
    /// One's own. Errors as enter.
    Result<void> changePin(const std::string& person, const Pin& old, const Pin& pin);
    /// For a shop whose only foreman forgot his PIN: whoever can write the log's folder may do
    /// this. The record names the station, not a person, as who did it.
    Result<void> replaceForgottenPin(const std::string& person, const Pin& pin);

    Result<void> setBench(const ProvenPerson& by, const BenchDocument& bench);
    /// What a change of the document leaves attested is worked out (core/procedure/cells.h).
    Result<void> setProcedure(const ProvenPerson& by, const ProcedureDocument& procedure);
    /// The foreman held these cells (names of cells.h) of that document against the shop's copy of
    /// the standard. Malformed: no edition, no cells. Missing: the document has no such cell.
    Result<void> attest(
        const ProvenPerson& by, const ProcedureDocument& procedure, const std::string& edition,
        const std::vector<std::string>& cells);
    /// What was said of these cells holds no more, until they are attested again. Malformed: no
    /// reason, no cells. Missing: nobody attested that cell.
    Result<void> withdrawAttestation(
        const ProvenPerson& by, const std::string& procedure, const std::string& reason,
        const std::vector<std::string>& cells);
    /// Coupons that were tested (core/quality/coupons.h); the id of their series. Errors as
    /// checkCoupon and checkOrigin; Malformed: a reason, which only what puts an earlier one right
    /// has.
    Result<std::string> noteCoupons(const ProvenPerson& by, const CouponTested& tested);
    /// Puts a series right as a whole; what it said before stays in the log. Missing: there is no
    /// such series in it, or no reason is given.
    Result<void>
    correctCoupons(const ProvenPerson& by, const std::string& series, const CouponTested& tested);

    /// Seams of a job, kept in the log from now on. Malformed: none, or one without a job, a label,
    /// lengths, or two sheets. Conflict: one whose job has a seam of that label already.
    Result<void> addSeams(const ProvenPerson& by, const std::vector<JobSeam>& seams);
    /// Seams that the log keeps are no longer to be made; what was made of them stays. Missing:
    /// there is none of one of the ids; then none is withdrawn.
    Result<void> withdrawSeams(const ProvenPerson& by, const std::vector<std::string>& ids);

    /// What the log says of benches, procedures and attestations, this office's own words included.
    const Shelf& shelf() const { return m_shelf; }

    /// The local date of now, or one given ("2030-01-07"). Missing: his box holds no key. Otherwise
    /// as sealDay.
    Result<Fact> seal(const Access& foreman, const std::optional<std::string>& day = {});

private:
    Office(LogWriterBase& writer, Credentials& credentials, const Clock& clock)
        : m_writer(&writer), m_credentials(&credentials), m_clock(&clock) {}

    Result<const Person*> known(const std::string& person) const;
    Result<void> mayChange(const ProvenPerson& by) const;
    Result<void> note(
        const std::string& by, const std::string& subject, FactDetail detail,
        std::vector<LogDocument> documents = {});
    Result<std::vector<JobSeam>> jobSeams();
    Result<void> checkCouponOrigin(const CouponTested& tested);
    Result<void> store(const std::string& by, const Person& person);
    Result<void> storePin(
        const std::string& by, const Person& person, const Pin& pin, const std::string& reason);

    LogWriterBase* m_writer;
    Credentials* m_credentials;
    const Clock* m_clock;
    Roster m_roster;
    Shelf m_shelf;
};

} // namespace seamclock
