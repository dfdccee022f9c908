// What happens around the welds: to the station, its benches, procedures and seams. Facts stand in
// the same chain as the events of welds (core/weld/event.h); roster.h folds those about people.
// Kinds that later parts of the program write are known to the log by name and pass its checks;
// they get a form here when they come.
#pragma once

#include "core/base/instant.h"
#include "core/weld/event.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace seamclock {

struct ProgramStarted {
    bool operator==(const ProgramStarted&) const = default;
};
struct ProgramStopped {
    bool operator==(const ProgramStopped&) const = default;
};
struct SoundLost {
    bool operator==(const SoundLost&) const = default;
};
struct SoundBack {
    bool operator==(const SoundBack&) const = default;
};
/// Rows went to the file beside the log, since the log could not be written.
struct RowsSpilled {
    std::int64_t count = 0;

    bool operator==(const RowsSpilled&) const = default;
};
/// Rows came from that file into the chain.
struct RowsJoined {
    std::int64_t count = 0;

    bool operator==(const RowsJoined&) const = default;
};
/// `doc` is the SHA-256 of the document that holds from now on.
struct BenchSet {
    std::string doc;

    bool operator==(const BenchSet&) const = default;
};
struct ProcedureSet {
    std::string doc;

    bool operator==(const ProcedureSet&) const = default;
};
/// A foreman (`by`) held these cells (core/procedure/cells.h) of the document against the shop's
/// copy of the standard.
struct ProcedureAttested {
    std::string doc;
    std::string edition; // of that copy, in the foreman's words
    std::vector<std::string> cells;

    bool operator==(const ProcedureAttested&) const = default;
};
/// What was said of these cells before holds no more.
struct AttestationWithdrawn {
    std::optional<std::string> doc; // only what was said of this document
    std::string reason;
    std::vector<std::string> cells;

    bool operator==(const AttestationWithdrawn&) const = default;
};
struct SeamSet {
    std::string doc;

    bool operator==(const SeamSet&) const = default;
};

/// Rows of another log, up to that one, stand in a chain of their own from here on.
struct LogImported {
    std::string log; // its id
    std::int64_t toSeq = 0;
    std::string head;

    bool operator==(const LogImported&) const = default;
};
/// The station signs that its log has this head (signing.h says which bytes).
struct HeadSigned {
    std::int64_t toSeq = 0;
    std::string head;
    std::string publicKey;
    std::string signature;

    bool operator==(const HeadSigned&) const = default;
};
/// What the station or a foreman signs with from now on.
struct KeySet {
    std::string publicKey;
    std::string reason; // "first", "lost", "forgotten", "not_stored"

    bool operator==(const KeySet&) const = default;
};
struct PersonSet {
    std::string name;
    std::string role; // "trainee", "operator", "foreman"
    bool active = true;

    bool operator==(const PersonSet&) const = default;
};
struct PinChanged {
    std::string reason; // "first", "changed", "forgotten"

    bool operator==(const PinChanged&) const = default;
};
/// A foreman (`by`) has seen that person's certificate; the last one noted holds
/// (core/people/certificate.h).
struct CertificateNoted {
    std::string scope; // "PE-HD, PP 3-20 mm"
    std::string until; // the last day, "2031-06-30"

    bool operator==(const CertificateNoted&) const = default;
};
/// A foreman (`by`) signs the log at the end of the day that is the subject.
struct DaySealed {
    std::string log; // its id
    std::int64_t toSeq = 0;
    std::string head;
    std::string publicKey;
    std::string signature;

    bool operator==(const DaySealed&) const = default;
};

/// A practice weld was made and scored, in the name of who made it (`by`). Only a practice log
/// holds it. The documents are the take and the lesson.
struct PracticeMade {
    std::string take;
    std::string lessonDoc;
    std::string lesson; // its id
    std::string title;
    std::string weld; // "weld:UUID"
    std::string verdict;
    std::int64_t judged = 0;
    std::int64_t inLimits = 0;
    std::optional<Milliseconds> reaction; // the middle one
    std::int64_t readingErrors = 0;
    std::int64_t orderErrors = 0;
    std::int64_t noticed = 0;
    std::int64_t toNotice = 0;
    bool ductile = false;            // the bend test, everywhere
    std::vector<std::string> lapses; // their codes

    bool operator==(const PracticeMade&) const = default;
};

/// What one coupon bore, or a series of them: cut from a joint, or of a procedure trial. Under one
/// subject the first is the series; every later one puts it right, says why, and stands beside it
/// (core/quality/coupons.h).
struct CouponTested {
    std::string test;     // "tensile", "bend"
    std::string standard; // by which it was tested, as the laboratory writes it
    std::string material;
    std::int64_t thicknessUm = 0;
    std::string procedure;                // id
    std::optional<std::string> weld;      // "weld:UUID"; absent: a procedure trial without a record
    std::optional<std::string> welder;    // "person:ID" who welded
    std::vector<std::int64_t> weldedPa;   // tensile: the strength of each welded coupon,
    std::vector<std::int64_t> parentPa;   // and of each of the parent sheet
    std::vector<std::int64_t> angleMilli; // bend: each coupon's angle in thousandths of a degree,
    std::vector<std::int64_t> ramUm;      // or the ram's displacement
    std::vector<std::int64_t> cracked;    // bend: 1 for each coupon that cracked, else 0
    std::string remark;
    std::optional<std::string> reason; // of what puts an earlier one right

    bool operator==(const CouponTested&) const = default;
};

using FactDetail = std::variant<
    ProgramStarted, ProgramStopped, SoundLost, SoundBack, ClockJumped, RowsSpilled, RowsJoined,
    LogImported, HeadSigned, KeySet, PersonSet, PinChanged, CertificateNoted, BenchSet,
    ProcedureSet, ProcedureAttested, AttestationWithdrawn, SeamSet, DaySealed, PracticeMade,
    CouponTested>;

struct Fact {
    Instant at;
    std::string by; // "person:ID" or "station"
    // "station", "person:ID", "bench:ID", "procedure:ID", "seam:UUID", "day:DATE", "practice:UUID",
    // "coupon:UUID"
    std::string subject;
    std::int64_t n = 0; // 1, 2, … within the subject
    FactDetail d;

    bool operator==(const Fact&) const = default;
};

/// The kind as stored: "program_started".
std::string_view kindOf(const FactDetail& detail);

} // namespace seamclock
