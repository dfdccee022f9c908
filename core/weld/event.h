// What can happen to a weld. A weld is a list of these events and nothing else; state, cues, record
// and verdict are worked out from them (fold.h). The kinds are a closed variant, and each is stored
// exactly as contracts fix it (event_codec.h). An event is a fact: it is never changed, only
// answered by a later one.
#pragma once

#include "core/base/instant.h"
#include "core/plan/plan.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace seamclock {

struct Sheet {
    std::string material;
    std::optional<std::string> grade;
    std::string maker;
    std::string batch;
    std::int64_t thicknessUm = 0;
    std::optional<std::string> mfr; // as printed on the sheet's paper

    bool operator==(const Sheet&) const = default;
};

/// SHA-256 of the documents that the plan was made from; the log keeps their bytes.
struct PlanDocuments {
    std::string procedure;
    std::string bench;
    std::optional<std::string> material;

    bool operator==(const PlanDocuments&) const = default;
};

enum class WeldType { Production, Trial, Practice };

struct WeldOpened {
    std::int64_t number = 0;
    WeldType type = WeldType::Production;
    std::optional<std::string> reweldOf;    // a weld's UUID
    std::optional<std::int64_t> lostUm;     // of a re-weld: cut away of both sheets together
    std::optional<std::int64_t> beadPlaces; // to measure along the seam; absent: one a seam
    std::string bench;
    std::optional<std::string> seam; // the seam's label
    std::optional<std::string> job;  // whose seam it is: labels come again from job to job
    std::optional<std::string> part; // what it is a seam of, as the job says it
    std::vector<Sheet> sheets;       // two
    std::vector<std::int64_t> lengthsUm;
    std::int64_t ambientMc = 0;
    bool shielded = false;
    WeldPlan plan;
    PlanDocuments docs;
    std::vector<std::string>
        flags; // findings on calibration and certificate, e.g. "calibration_overdue"

    bool operator==(const WeldOpened&) const = default;
};

struct PlanReplaced {
    WeldPlan plan;
    PlanDocuments docs;
    std::string reason;

    bool operator==(const PlanReplaced&) const = default;
};

struct CheckMade {
    std::string check;
    bool passed = false;
    std::optional<std::int64_t> valueMc;
    std::optional<std::int64_t> valueUm;
    std::optional<std::int64_t> valueMilli;
    std::optional<std::string> place;
    std::optional<std::string> face;
    std::optional<Milliseconds> takenUtc; // carried over from an earlier weld of the shift

    bool operator==(const CheckMade&) const = default;
};

enum class Authority { Operator, Foreman };

struct CheckOverridden {
    std::string check;
    std::string reason;
    Authority authority = Authority::Operator;

    bool operator==(const CheckOverridden&) const = default;
};

struct AlignmentStarted {
    bool operator==(const AlignmentStarted&) const = default;
};
/// The soak reading is reached: alignment ends and soak's clock starts.
struct SoakStarted {
    bool operator==(const SoakStarted&) const = default;
};
/// The sheets leave the plate.
struct PlateOut {
    bool operator==(const PlateOut&) const = default;
};
/// Contact.
struct FacesMet {
    bool operator==(const FacesMet&) const = default;
};
/// Joining reading in band and the wheel locked: cooling starts. Out of band it is stored and does
/// not start it.
struct PressureLocked {
    bool operator==(const PressureLocked&) const = default;
};

enum class ReadingPhase { Alignment, Soak, Joining, Recheck };

struct ReadingTaken {
    ReadingPhase phase = ReadingPhase::Joining;
    std::int64_t readingMilli = 0;

    bool operator==(const ReadingTaken&) const = default;
};

struct ReasonGiven {
    std::string limit; // the verdict row's code
    std::string choice;
    std::optional<std::string> text;

    bool operator==(const ReasonGiven&) const = default;
};

struct ReleaseStep {
    std::string step;

    bool operator==(const ReleaseStep&) const = default;
};

struct JointNumbered {
    bool operator==(const JointNumbered&) const = default;
};

struct StepTakenBack {
    std::int64_t targetN = 0;

    bool operator==(const StepTakenBack&) const = default;
};

struct StepBackdated {
    std::int64_t targetN = 0;
    Milliseconds earlier{0};

    bool operator==(const StepBackdated&) const = default;
};

struct BeadMeasured {
    std::optional<std::int64_t> placeUm;
    std::int64_t widthUm = 0;
    std::int64_t heightUm = 0;
    std::int64_t kUm = 0;
    std::int64_t misalignmentUm = 0;

    bool operator==(const BeadMeasured&) const = default;
};

struct PhotoAdded {
    std::string sha256;
    std::int64_t bytes = 0;
    std::string name;

    bool operator==(const PhotoAdded&) const = default;
};

struct RemarkMade {
    std::string text;

    bool operator==(const RemarkMade&) const = default;
};

struct CueAcknowledged {
    std::string cue; // its code, see cues.h

    bool operator==(const CueAcknowledged&) const = default;
};

enum class BridgeBasis { Confirmed, Unconfirmed, Backwards };

/// How much weld time passed since this weld's last event, over a reboot: between lo and hi.
struct ClockBridged {
    std::string from; // the boot that ended
    Milliseconds lo{0};
    Milliseconds hi{0};
    BridgeBasis basis = BridgeBasis::Unconfirmed;

    bool operator==(const ClockBridged&) const = default;
};

struct ClockJumped {
    Milliseconds delta{0};

    bool operator==(const ClockJumped&) const = default;
};

/// One reason of a stored verdict.
struct StoredReason {
    std::string code;
    std::string grade; // "out", "remark", "incomplete"
    std::optional<std::int64_t> limit;
    std::optional<std::int64_t> actual;
    std::string unit;
    std::string text;

    bool operator==(const StoredReason&) const = default;
};

struct WeldClosed {
    std::string verdict;
    std::vector<StoredReason> reasons;
    std::int64_t rules = 1;

    bool operator==(const WeldClosed&) const = default;
};

struct WeldAborted {
    std::string reason;
    std::string text;

    bool operator==(const WeldAborted&) const = default;
};

struct ValueCorrected {
    std::int64_t targetN = 0;
    std::string field;
    std::string was;
    std::string is;
    std::string reason;

    bool operator==(const ValueCorrected&) const = default;
};

struct Graded {
    std::string scheme;
    std::string level;

    bool operator==(const Graded&) const = default;
};

enum class Decision { Accept, Repair, CutOut };

struct Decided {
    Decision decision = Decision::Accept;
    std::string reason;

    bool operator==(const Decided&) const = default;
};

struct SignedOff {
    std::string role;

    bool operator==(const SignedOff&) const = default;
};

using WeldDetail = std::variant<
    WeldOpened, PlanReplaced, CheckMade, CheckOverridden, AlignmentStarted, SoakStarted, PlateOut,
    FacesMet, PressureLocked, ReadingTaken, ReasonGiven, ReleaseStep, JointNumbered, StepTakenBack,
    StepBackdated, BeadMeasured, PhotoAdded, RemarkMade, CueAcknowledged, ClockBridged, ClockJumped,
    WeldClosed, WeldAborted, ValueCorrected, Graded, Decided, SignedOff>;

struct Event {
    Instant at;
    std::string by;      // "person:ID" or "station"
    std::string subject; // "weld:UUID"
    std::int64_t n = 0;  // 1, 2, … within the subject
    WeldDetail d;

    bool operator==(const Event&) const = default;
};

/// The kind as stored: "alignment_started".
std::string_view kindOf(const WeldDetail& detail);

/// Whether an operator may take it back within ten seconds.
bool isTakeable(const WeldDetail& detail);

/// The five pivotal events; whether a release step is the first is known only with the state, so it
/// is not counted here.
bool isPivotal(const WeldDetail& detail);

std::string_view toString(WeldType type);
std::string_view toString(Authority authority);
std::string_view toString(ReadingPhase phase);
std::string_view toString(BridgeBasis basis);
std::string_view toString(Decision decision);

} // namespace seamclock
