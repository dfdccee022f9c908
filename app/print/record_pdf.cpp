#include "app/print/record_pdf.h"

#include "app/print/paper_flow.h"
#include "app/print/printer.h"
#include "app/print/record_paper.h"
#include "app/text/record_words.h"

namespace seamclock {

PaperWork workOfJob(const PaperWork& work, const std::optional<std::string>& job) {
    PaperWork out = work;
    if (job) {
        out.order = plainText(*job);
        if (work.job.isEmpty() || out.order != work.job) {
            out.job = out.order;
            out.part.clear();
        }
    }
    return out;
}

Result<QByteArray> recordPdf(
    const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units,
    Paper paper) {
    return paperPdf(recordPaper(joint, log, work, units), paper);
}

Result<void> writeRecordPdf(
    const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units,
    Paper paper, const QString& file) {
    return writePaper(recordPaper(joint, log, work, units), paper, file);
}

Result<QString> saveRecordPdf(
    const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units,
    Paper paper, const QString& folder) {
    return savePaper(
        recordPaper(joint, log, work, units), paper, folder,
        QStringLiteral("joint-%1").arg(joint.record.opened.number));
}

Result<void> printRecord(
    const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units,
    Paper paper, const QString& printer) {
    return printPaper(recordPaper(joint, log, work, units), paper, printer);
}

} // namespace seamclock
