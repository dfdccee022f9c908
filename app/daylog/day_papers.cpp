#include "app/daylog/day_papers.h"

#include "app/print/printer.h"
#include "app/print/report_pdf.h"
#include "core/base/made_files.h"
#include "core/report/day_list.h"
#include "core/report/record_facts.h"
#include "core/report/value_rows.h"

#include <QDir>
#include <QFile>
#include <QSaveFile>
#include <cstdint>
#include <utility>

namespace seamclock {
namespace {

constexpr int kMostNames = 1'000; // of one day's tables in one folder

Result<RecordFacts>
factsOf(LogReader& reader, const LogFacts& log, const std::string& weld, const DayPapers& papers) {
    return recordFacts(reader, log, weld, &papers.materials);
}

/// A file that appears only when all of it is on disk.
class TableFile {
public:
    explicit TableFile(const QString& path) : m_file(path) {
        m_good = m_file.open(QIODevice::WriteOnly);
    }

    void write(const std::string& text) {
        m_good = m_good && m_file.write(text.data(), static_cast<qint64>(text.size())) ==
                               static_cast<qint64>(text.size());
    }
    bool isGood() const { return m_good; }
    Result<QString> finish() {
        // commit() alone takes a last piece that the disk had half the room for as written.
        m_good = m_good && m_file.flush();
        if (m_good && m_file.commit()) {
            return m_file.fileName();
        }
        const QString why = m_file.errorString();
        m_file.cancelWriting();
        return fail(
            ErrorCode::NotWritten, "the table can't be written to \"" +
                                       m_file.fileName().toStdString() + "\" (" +
                                       why.toStdString() + ")");
    }

private:
    QSaveFile m_file;
    bool m_good = false;
};

Result<QString> freeName(const QString& folder, const QString& stem, const QString& ending) {
    if (!QDir().mkpath(folder)) {
        return fail(
            ErrorCode::NotWritten,
            "the folder \"" + folder.toStdString() + "\" for tables can't be made");
    }
    for (int i = 1; i <= kMostNames; ++i) {
        const QString name =
            i == 1 ? stem + ending : QString("%1-%2%3").arg(stem).arg(i).arg(ending);
        QString path = QDir(folder).filePath(name);
        if (!QFile::exists(path)) {
            return path;
        }
    }
    return fail(
        ErrorCode::NotWritten, "there are " + std::to_string(kMostNames) + " files like \"" +
                                   QDir(folder).filePath(stem + ending).toStdString() +
                                   "\" already");
}

ReportOf kindOf(const JointFilter& filter) {
    const bool narrowed = filter.bench || filter.by || filter.material || filter.verdict ||
                          filter.text || filter.seam || filter.damaged;
    const bool oneDay = filter.fromDay && filter.fromDay == filter.toDay;
    const bool ofJob = filter.seams || filter.job;
    return oneDay && !ofJob && !narrowed           ? ReportOf::Day
           : ofJob && !filter.fromDay && !narrowed ? ReportOf::Job
                                                   : ReportOf::Selection;
}

} // namespace

Result<QString> saveRecordOf(LogReader& reader, const std::string& weld, const DayPapers& papers) {
    const auto log = logFacts(reader);
    if (!log) {
        return tl::unexpected<Error>(log.error());
    }
    const auto joint = factsOf(reader, *log, weld, papers);
    if (!joint) {
        return tl::unexpected<Error>(joint.error());
    }
    return saveRecordPdf(*joint, *log, papers.work, papers.units, paperOfLocale(), papers.folder);
}

Result<QString> printRecordOf(
    LogReader& reader, const std::string& weld, const DayPapers& papers, const QString& printer) {
    const auto log = logFacts(reader);
    if (!log) {
        return tl::unexpected<Error>(log.error());
    }
    const auto joint = factsOf(reader, *log, weld, papers);
    if (!joint) {
        return tl::unexpected<Error>(joint.error());
    }
    const auto printed =
        printRecord(*joint, *log, papers.work, papers.units, paperOfLocale(), printer);
    if (!printed) {
        return tl::unexpected<Error>(printed.error());
    }
    return printer;
}

Result<QString>
saveReportOf(LogReader& reader, const JointFilter& filter, const DayPapers& papers) {
    const auto report = reportFacts(reader, filter);
    if (!report) {
        return tl::unexpected<Error>(report.error());
    }
    return saveReportPdf(
        *report, kindOf(filter), papers.work, papers.units, paperOfLocale(), papers.folder);
}

Result<QString> printReportOf(
    LogReader& reader, const JointFilter& filter, const DayPapers& papers, const QString& printer) {
    const auto report = reportFacts(reader, filter);
    if (!report) {
        return tl::unexpected<Error>(report.error());
    }
    const auto printed =
        printReport(*report, kindOf(filter), papers.work, papers.units, paperOfLocale(), printer);
    if (!printed) {
        return tl::unexpected<Error>(printed.error());
    }
    return printer;
}

Result<QString>
saveTableOf(LogReader& reader, const JointFilter& filter, DayTable table, const DayPapers& papers) {
    const QString day = QString::fromStdString(filter.fromDay.value_or(""));
    const QString stem =
        (table == DayTable::Values ? QStringLiteral("values") : QStringLiteral("joints")) +
        (day.isEmpty() ? QString() : QStringLiteral("-") + day);
    const auto path = freeName(
        papers.folder, stem,
        table == DayTable::Json ? QStringLiteral(".json") : QStringLiteral(".csv"));
    if (!path) {
        return path;
    }
    auto reading = LineReading::open(reader.path());
    if (!reading) {
        return tl::unexpected<Error>(reading.error());
    }
    TableFile file(*path);
    std::vector<NamedJoint> joints;
    bool first = true;
    file.write(
        table == DayTable::List     ? dayListHeader()
        : table == DayTable::Values ? valueRowsHeader()
                                    : std::string("[\n"));
    Result<void> told;
    const auto read = reader.eachJoint(filter, [&](const JointLine& line) {
        if (table == DayTable::Values) {
            joints.push_back({line.weld, line.number, line.openedUtc, line.seam});
            return true;
        }
        const auto said = reading->of(line);
        if (!said) {
            told = tl::unexpected<Error>(said.error());
            return false;
        }
        file.write(
            table == DayTable::List ? dayListRow(line, *said)
                                    : (first ? "" : ",\n") + jointLineJson(line, *said));
        first = false;
        return file.isGood();
    });
    if (!read || !told) {
        return tl::unexpected<Error>(read ? told.error() : read.error());
    }
    for (const NamedJoint& joint : joints) {
        if (!file.isGood()) {
            break;
        }
        file.write(valueRows(reader, joint));
    }
    if (table == DayTable::Json) {
        file.write("\n]\n");
    }
    auto written = file.finish();
    if (written) {
        noteMadeFile(written->toStdString());
    }
    return written;
}

} // namespace seamclock
