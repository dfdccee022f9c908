#include "app/print/paper_errand.h"

#include "core/report/record_facts.h"

#include <utility>

namespace seamclock {
namespace {

Result<std::string> weldNumbered(LogReader& reader, std::int64_t number) {
    const auto welds = reader.weldsNumbered(number);
    if (!welds) {
        return tl::unexpected<Error>(welds.error());
    }
    if (welds->empty()) {
        const auto highest = reader.highestNumber();
        return fail(
            ErrorCode::Missing,
            "--record \"" + std::to_string(number) + "\" is no joint of " + reader.path() +
                (highest ? "; allowed: 1 to " + std::to_string(*highest) : std::string()));
    }
    if (welds->size() > 1) {
        return fail(
            ErrorCode::Conflict, "--record \"" + std::to_string(number) + "\" is the number of " +
                                     std::to_string(welds->size()) +
                                     " joints, as another log was imported; allowed: a number "
                                     "that one joint has");
    }
    return welds->front();
}

Result<void> putRecord(const PaperErrand& errand, LogReader& reader) {
    const auto weld = weldNumbered(reader, errand.number);
    if (!weld) {
        return tl::unexpected<Error>(weld.error());
    }
    const auto log = logFacts(reader);
    if (!log) {
        return tl::unexpected<Error>(log.error());
    }
    const auto joint =
        recordFacts(reader, *log, *weld, errand.materials.empty() ? nullptr : &errand.materials);
    if (!joint) {
        return tl::unexpected<Error>(joint.error());
    }
    return errand.out.isEmpty()
               ? printRecord(*joint, *log, errand.work, errand.units, errand.paper, errand.printer)
               : writeRecordPdf(*joint, *log, errand.work, errand.units, errand.paper, errand.out);
}

Result<void> putReport(const PaperErrand& errand, LogReader& reader) {
    JointFilter filter;
    if (errand.what == PaperErrand::What::Day) {
        filter.fromDay = errand.day;
        filter.toDay = errand.day;
    } else {
        filter.seams = errand.seams;
        filter.job = errand.job; // without a name: the joints that no job was told of
    }
    const auto report = reportFacts(reader, filter);
    if (!report) {
        return tl::unexpected<Error>(report.error());
    }
    const ReportOf of = errand.what == PaperErrand::What::Day ? ReportOf::Day : ReportOf::Job;
    return errand.out.isEmpty()
               ? printReport(*report, of, errand.work, errand.units, errand.paper, errand.printer)
               : writeReportPdf(*report, of, errand.work, errand.units, errand.paper, errand.out);
}

} // namespace

Result<QString> runErrand(const PaperErrand& errand) {
    auto reader = LogReader::open(errand.log);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    const auto put = errand.what == PaperErrand::What::Record ? putRecord(errand, *reader)
                                                              : putReport(errand, *reader);
    if (!put) {
        return tl::unexpected<Error>(put.error());
    }
    return errand.out.isEmpty() ? errand.printer : errand.out;
}

} // namespace seamclock
