// What the commands print with --json where no room of core has a form for it. Each text is one
// JSON value and ends with a line feed. The JSON library stays in this one file, as it is slow to
// compile.
#pragma once

#include "core/base/instant.h"
#include "core/bench/bench_codec.h"
#include "core/bench/calibration.h"
#include "core/copies/log_copy.h"
#include "core/copies/log_import.h"
#include "core/copies/photo_check.h"
#include "core/copies/photo_copies.h"
#include "core/log/roster.h"
#include "core/log/seal.h"
#include "core/log/verify.h"
#include "core/procedure/procedure_codec.h"
#include "core/report/evidence.h"
#include "core/shift/job_csv.h"
#include "core/weld/event.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

std::string proceduresJson(const std::vector<ProcedureDocument>& procedures);
/// With its cells as they stand, and the document's own content under "document".
std::string procedureJson(const ProcedureDocument& procedure);
std::string findingsJson(const std::string& file, const std::vector<ProcedureFinding>& findings);

/// Seams only where the table is sound.
std::string jobCsvJson(const std::string& file, const JobCsv& job);

std::string benchJson(const BenchDocument& bench);
std::string scaleFitJson(const ScaleFit& fit);

std::string verifyJson(const VerifyReport& report, const PhotoCheck& photos);
std::string peopleJson(const std::string& log, const Roster& roster);
/// Of a day_sealed fact.
std::string sealJson(const Fact& sealed, const std::string& day);
std::string evidenceReportJson(const EvidenceReport& report);

/// `waiting`: rows in the spill file, which no copy has.
std::string backupJson(
    const LogCopy& copy, const PhotosCopied& photos, const std::vector<std::string>& removed,
    std::size_t waiting);
/// `newest`: the number of the newest joint, 0 for none; `next`: which the next one gets.
std::string restoreJson(
    const LogCopy& copy, const PhotosCopied& photos, std::int64_t newest, std::int64_t next);
std::string importJson(const ImportReport& report);

/// What is to be said of one interrupted weld.
struct InterruptedWeld {
    std::string weld;
    std::int64_t number = 0;
    std::string seam;
    std::string phase;
    std::int64_t events = 0;
    std::string clock; // "same boot", "rebooted", "rehearsal"
    std::optional<Milliseconds> inPhaseLow;
    std::optional<Milliseconds> inPhaseHigh;
    std::optional<Milliseconds> leftLow; // of the phase's time
    std::optional<Milliseconds> leftHigh;
    std::string next; // "goes_on", "bridge", "abort_by_default", "damaged"
    // After a reboot: what the default makes of the cut, and why a person can't confirm the clock
    // ("": it can be confirmed).
    std::optional<ClockBridged> bridge;
    std::string cannotConfirm;
    std::string trouble; // why its events make no weld
};
std::string interruptedJson(const std::string& log, const std::vector<InterruptedWeld>& welds);

/// {"log", "world", "log_id", "joints": [ … ]}, from lines that are JSON already.
std::string jointsJson(
    const std::string& log, const std::string& world, const std::string& logId,
    const std::vector<std::string>& joints);

/// A finished object with one more text under `key`.
std::string withText(const std::string& object, const std::string& key, const std::string& text);

} // namespace seamclock
