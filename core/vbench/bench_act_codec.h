// Acts at the virtual bench as JSON, for whoever keeps a practice weld: one object each, its code
// under "act" beside the act's own whole numbers, e.g.
//   {"act":"clamp_sheet","lean_um":0,"left_um":0,"right_um":-500,"sheet":1}
// An object may hold more (a take adds the time); who wrote it reads it.
#pragma once

#include "core/base/json_reader.h"
#include "core/vbench/bench_act.h"

#include <optional>
#include <string>
#include <string_view>

namespace seamclock {

Json benchActJson(const BenchAct& act);

/// The act's fields of the object that the reader stands on; the others are left to the caller.
/// Absent, with a finding, if there is no such act, a field is missing, or a value is outside what
/// the bench takes (act_limits).
std::optional<BenchAct> readBenchActFrom(JsonReader& reader);

/// An act alone, as canonical JSON, and back. Malformed, in one sentence with field, value and
/// what is allowed: as above, a field that is unknown, or no JSON.
std::string writeBenchAct(const BenchAct& act);
Result<BenchAct> readBenchAct(std::string_view name, std::string_view text);

} // namespace seamclock
