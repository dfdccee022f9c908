// The seams of a job from a table that an office writes: one row a seam, comma-separated values by
// RFC 4180 (csv_rows.h), a header line that names the columns. Everything that is wrong is listed,
// by line and column, with the value and what is allowed; if anything is, no seam is taken.
//
//   column                 what                                                  must be there
//   label                  the seam's name, once in the file, at most 40 signs   yes
//   what                   "floor, two halves"
//   material               of both sheets: PE-HD                                 yes
//   procedure              its id                                                yes
//   bench                  its id; empty: any that can make it
//   thickness_mm           above 0, to 1000                                      yes
//   length_mm              1 to 100000; several in one clamping: 620+580         yes
//   drag_N                 0 to 100000; empty: measured before the weld
//   ambient_C              -40 to 60; empty: the procedure's own
//   shielded               yes or no; empty: no
//   bead_places            1 to 20 places to measure the bead at; empty: one a seam
//   rewelds_allowed        0 to 9; empty: not said
//   sheet_1_thickness_mm   measured on that sheet; empty: thickness_mm
//   sheet_1_grade          as printed on it
//   sheet_1_maker
//   sheet_1_batch
//   sheet_1_mfr_g_10min    its melt flow, 0 to 1000
//   sheet_2_…              the same for the second sheet
//
// Of a procedure that is known the material must be its plastic and the thickness in its table; two
// sheets may differ by a tenth of the thinner (core/plan/sheets.h). Whether its values are there
// and attested, and whether a bench holds the seam, the day's plan says.
//
// Columns may stand in any order; one that is not here is refused, since a mistyped name would
// otherwise leave its values out without a word.
#pragma once

#include "core/procedure/procedure.h"
#include "core/shift/job.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

struct JobCsvProblem {
    std::size_t line = 0; // 0: of the file as a whole
    std::string column;   // "" where it is not one column's
    std::string text;     // "\"12,5\" is not a number; allowed: above 0, to 1000 mm, with a dot"

    /// "line 3, thickness_mm: …"
    std::string inWords() const;
    bool operator==(const JobCsvProblem&) const = default;
};

/// What may be welded by a procedure.
struct JobCsvProcedure {
    std::string material; // "": not known
    std::int64_t thinnestUm = 0;
    std::int64_t thickestUm = 0; // 0: not known
};
JobCsvProcedure weldedBy(const Procedure& procedure);

/// What a seam may name. What is empty is not known, and then nothing is held against it.
struct JobCsvKnown {
    std::map<std::string, JobCsvProcedure> procedures; // by id
    std::set<std::string> benches;
};

struct JobCsv {
    std::vector<JobSeam> seams;          // empty if anything is wrong
    std::vector<JobCsvProblem> problems; // in the file's order, at most kMostJobCsvProblems
    std::size_t more = 0;                // problems beyond these

    bool isSound() const { return problems.empty(); }
};

inline constexpr std::size_t kMostJobCsvProblems = 100;
inline constexpr std::size_t kMostJobSeams = 5'000;
inline constexpr std::size_t kLargestJobCsv = 4'000'000; // bytes

JobCsv readJobCsv(std::string_view csv, const JobCsvKnown& known = {});

/// Every column's name, in the order above.
const std::vector<std::string>& jobCsvColumns();
/// A header and one seam, to write over.
std::string jobCsvTemplate();

} // namespace seamclock
