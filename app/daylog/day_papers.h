// What the day log puts into files and on printers: the record of a joint, the report of a day, of
// the job or of any selection, and the same as tables for other programs. May be called from any
// thread that has a reader of its own; the disk is waited for.
#pragma once

#include "app/print/record_pdf.h"
#include "core/heat/material.h"
#include "core/log/log_reader.h"

#include <QString>
#include <string>
#include <vector>

namespace seamclock {

struct DayPapers {
    QString folder; // where files go
    PaperWork work;
    UnitSystem units = UnitSystem::Metric;
    std::vector<Material> materials;
};

/// The file. Errors as recordFacts and saveRecordPdf.
Result<QString> saveRecordOf(LogReader& reader, const std::string& weld, const DayPapers& papers);
/// The printer's name. Errors as recordFacts and printRecord.
Result<QString> printRecordOf(
    LogReader& reader, const std::string& weld, const DayPapers& papers, const QString& printer);
/// Of a single day, of the job's seams, or of what else the filter gives. Errors as reportFacts and
/// saveReportPdf.
Result<QString> saveReportOf(LogReader& reader, const JointFilter& filter, const DayPapers& papers);

/// Likewise; the printer's name. Errors as reportFacts and printReport.
Result<QString> printReportOf(
    LogReader& reader, const JointFilter& filter, const DayPapers& papers, const QString& printer);

enum class DayTable { List, Values, Json };
/// All joints that the filter gives, as comma-separated values (the list, or every value that was
/// set and read) or as JSON; the file. Its name is one that is free. NotWritten: with the path and
/// the reason, and nothing half written stays. Otherwise as the reader.
Result<QString>
saveTableOf(LogReader& reader, const JointFilter& filter, DayTable table, const DayPapers& papers);

} // namespace seamclock
