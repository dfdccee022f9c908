#include "app/operate/day_closing.h"

#include "core/base/made_files.h"
#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/log/roster.h"
#include "core/log/seal.h"
#include "core/report/day_report.h"

#include <QDir>
#include <QFile>

namespace seamclock {
namespace {

constexpr int kMostNames = 1'000; // reports of one day

} // namespace

Result<DayClosing> readDayClosing(const LogWriterBase& writer, const std::string& day) {
    DayClosing out;
    out.day = day;
    const WriterState state = writer.state();
    out.notOnDisk = state.pending + state.spilled;
    auto reader = LogReader::open(writer.path());
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    JointFilter filter;
    filter.fromDay = day;
    filter.toDay = day;
    const auto read = reader->eachJoint(filter, [&out](const JointLine& line) {
        ++out.joints;
        ++out.verdicts[line.open ? std::string() : line.verdict];
        return true;
    });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    const auto roster = readRoster(*reader);
    if (!roster) {
        return tl::unexpected<Error>(roster.error());
    }
    const auto bodies = reader->bodies("day:" + day);
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    for (const std::string& body : *bodies) {
        const auto fact = factFromBody(body);
        const auto* sealed = fact ? std::get_if<DaySealed>(&fact->d) : nullptr;
        if (sealed == nullptr) {
            continue;
        }
        const Person* by = findPerson(roster->people, fact->by);
        out.seal = DayClosing::Seal{
            by == nullptr ? fact->by : by->name, fact->at, sealed->toSeq, sealFingerprint(*fact)};
    }
    const auto head = reader->head();
    if (!head) {
        return tl::unexpected<Error>(head.error());
    }
    if (out.seal) {
        out.behind = head->seq - (out.seal->toRow + 1); // the row that holds the seal
    }
    return out;
}

Result<QString>
saveDayReport(const std::string& log, const std::string& day, const QString& folder) {
    const auto failed = [](const QString& path, const QString& why) {
        return fail(
            ErrorCode::NotWritten,
            ("the report can't be written to \"" + path + "\": " + why).toStdString());
    };
    auto reader = LogReader::open(log);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    const auto text = dayReport(*reader, day);
    if (!text) {
        return tl::unexpected<Error>(text.error());
    }
    if (!QDir().mkpath(folder)) {
        return failed(folder, "the folder can't be made");
    }
    const QString stem = QDir(folder).filePath("seamclock-" + QString::fromStdString(day));
    for (int i = 1; i <= kMostNames; ++i) {
        QFile file(i == 1 ? stem + ".txt" : QString("%1-%2.txt").arg(stem).arg(i));
        if (file.exists()) {
            continue;
        }
        if (!file.open(QIODevice::WriteOnly | QIODevice::NewOnly)) {
            return failed(file.fileName(), file.errorString());
        }
        const auto size = static_cast<qint64>(text->size());
        if (file.write(text->data(), size) != size || !file.flush()) {
            const QString why = file.errorString();
            file.remove();
            return failed(file.fileName(), why);
        }
        file.close();
        noteMadeFile(file.fileName().toStdString());
        return file.fileName();
    }
    return failed(stem + ".txt", QString("there are %1 of that day already").arg(kMostNames));
}

} // namespace seamclock
