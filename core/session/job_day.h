// The day's plan of a job as the day stands: seams that are done are left out, welds that are under
// way count with what is left of them, the rest is planned (core/shift/day_plan.h) with the shop's
// own times where its log knows them (core/quality/shop_charts.h). Asked again after every joint it
// is recomputed from what is done so far; it holds no state of its own.
#pragma once

#include "core/base/result.h"
#include "core/bench/bench_codec.h"
#include "core/procedure/procedure_codec.h"
#include "core/session/job_state.h"
#include "core/shift/seam_times.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace seamclock {

struct JobDayAsk {
    std::vector<JobSeam> seams;
    std::vector<BenchDocument> benches;
    std::vector<std::string> people; // who welds today, as "person:ID"; other names are nobody's
    std::vector<ProcedureDocument> procedures;
    Instant now;
    std::optional<std::string> fromDay; // as jobProgress
};

/// A weld whose events can't be read: the plan is made as if it were not there.
struct UnreadWeld {
    std::string weld;        // "weld:UUID"
    std::int64_t number = 0; // of the joint; 0: not even its opening can be read
    std::string bench;       // its id; "" likewise
    std::string why;

    bool operator==(const UnreadWeld&) const = default;
};

struct JobDay {
    JobProgress progress;
    DayWork work;
    DayPlan plan;
    /// By seam's label in the plan and bench's id: where its three times come from.
    std::map<std::pair<std::string, std::string>, SeamWork> times;
    std::size_t later = 0; // seams that wait behind the first kMostDaySeams and are not planned
    std::vector<UnreadWeld> unread; // open, or of today
};

/// A seam whose label another job has, too, is planned as "QV-131 S1". It may be made on every
/// bench whose plan has no objection, unless it is wished on one; what was cut out or is to redo is
/// planned like an open one, what is to decide is not. Who has no certificate that holds today for
/// a seam's sheets isn't planned for it, where the log keeps certificates. Trial joints are asked
/// for as session would ask (core/session/set_up.h), but in a practice log, where nobody tests what
/// is practised; one that is made or under way counts as good until a foreman says otherwise. A
/// bench's plate stands where its last joint of today left it, and is cold otherwise; under a weld
/// that is being prepared it settles from that weld's opening on, until its temperature was read or
/// a foreman set that aside. A weld that doesn't know the time (its tablet started again) counts
/// with all of the stretch that it is in. `log` may be null: then nothing is done yet and no time
/// is the shop's. Errors as jobProgress and planDay; a damaged weld is none, but `unread`.
Result<JobDay> jobDay(const JobDayAsk& ask, LogReader* log);

} // namespace seamclock
