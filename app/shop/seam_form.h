// A job's seam typed by hand, as a form whose fields are a table's columns: it becomes one row of
// such a table and is held against the same checks, so that a typed seam and an imported one can't
// differ (core/shift/job_csv.h). What is wrong with a value stands at its field.
#pragma once

#include "app/setup/form.h"
#include "core/procedure/procedure_codec.h"
#include "core/shift/job_csv.h"

#include <QString>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace seamclock {

/// By column, and "job". As typed: a decimal comma counts as a point.
using SeamValues = std::map<std::string, QString>;

struct SeamChoices {
    std::vector<std::pair<std::string, QString>> procedures; // id, and its words
    std::map<std::string, JobCsvProcedure> welds;            // by procedure, what it is for
    std::vector<std::pair<std::string, QString>> benches;
};

/// With what is wrong at each field that was touched, or at all if `whole`.
FormSection seamForm(const SeamValues& values, const SeamChoices& choices, bool whole);
/// Absent: something is wrong with it.
std::optional<JobSeam> seamOf(const SeamValues& values, const SeamChoices& choices);

} // namespace seamclock
