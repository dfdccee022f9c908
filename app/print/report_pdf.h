// The report of a day, of a job or of any selection of joints on paper: what it covers and its
// sums, what is out of limits first and why, every joint in a table over as many pages as it takes,
// the seals with their fingerprints, and lines to sign.
#pragma once

#include "app/print/record_pdf.h"

#include <QByteArray>
#include <QString>

namespace seamclock {

enum class ReportOf { Day, Job, Selection };

/// `of` gives the title: "Day report, 2030-01-07". NotWritten: the pages can't be begun or ended in
/// memory.
Result<QByteArray> reportPdf(
    const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units, Paper paper);

/// Overwrites `file`. NotWritten: with the path and the reason; what stood there is left as it was.
Result<void> writeReportPdf(
    const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units, Paper paper,
    const QString& file);

/// Into that folder, made if need be, as "day-2030-01-07.pdf", "job-QV-118.pdf" or "joints.pdf",
/// with a number behind where that is taken; returns where.
Result<QString> saveReportPdf(
    const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units, Paper paper,
    const QString& folder);

/// As printRecord.
Result<void> printReport(
    const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units, Paper paper,
    const QString& printer = {});

} // namespace seamclock
