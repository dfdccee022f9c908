// What stands on the report of a day, of a job or of a selection, as a document: what it covers and
// its sums; what is out of limits or incomplete first, with every reason; what was remarked; all
// joints as a table; the seals, and what none of them covers; lines to sign. Numbers in square
// brackets are the n of events of the joint in that line.
#pragma once

#include "app/print/paper.h"
#include "app/print/report_pdf.h"

namespace seamclock {

PaperDoc
reportPaper(const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units);

/// How a report's file is named: "day-2030-01-07", "job-QV-118", "joints".
QString reportStem(const ReportFacts& report, ReportOf of, const PaperWork& work);

} // namespace seamclock
