// What happens around the welds: to the station, its benches, procedures and seams. Facts stand in
// the same chain as the events of welds (core/weld/event.h) but nothing is folded from them. Kinds
// that later parts of the program write (people, seals, signatures, imports) are known to the log
// by name and pass its checks; they get a form here when they come.
#pragma once

#include "core/base/instant.h"
#include "core/weld/event.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

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
/// The rows of another log up to `toSeq`, where its head was `head`, stand in this file too, as a
/// chain of their own.
struct LogImported {
    std::string log; // its id
    std::int64_t toSeq = 0;
    std::string head;

    bool operator==(const LogImported&) const = default;
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
struct SeamSet {
    std::string doc;

    bool operator==(const SeamSet&) const = default;
};

using FactDetail = std::variant<
    ProgramStarted, ProgramStopped, SoundLost, SoundBack, ClockJumped, RowsSpilled, RowsJoined,
    LogImported, BenchSet, ProcedureSet, SeamSet>;

struct Fact {
    Instant at;
    std::string by;      // "person:ID" or "station"
    std::string subject; // "station", "bench:ID", "procedure:ID", "seam:UUID"
    std::int64_t n = 0;  // 1, 2, … within the subject
    FactDetail d;

    bool operator==(const Fact&) const = default;
};

/// The kind as stored: "program_started".
std::string_view kindOf(const FactDetail& detail);

} // namespace seamclock
