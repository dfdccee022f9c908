#include "app/print/report_pdf.h"

#include "app/print/paper_flow.h"
#include "app/print/printer.h"
#include "app/print/report_paper.h"

namespace seamclock {

Result<QByteArray> reportPdf(
    const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units, Paper paper) {
    return paperPdf(reportPaper(report, of, work, units), paper);
}

Result<void> writeReportPdf(
    const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units, Paper paper,
    const QString& file) {
    return writePaper(reportPaper(report, of, work, units), paper, file);
}

Result<QString> saveReportPdf(
    const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units, Paper paper,
    const QString& folder) {
    return savePaper(
        reportPaper(report, of, work, units), paper, folder, reportStem(report, of, work));
}

Result<void> printReport(
    const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units, Paper paper,
    const QString& printer) {
    return printPaper(reportPaper(report, of, work, units), paper, printer);
}

} // namespace seamclock
