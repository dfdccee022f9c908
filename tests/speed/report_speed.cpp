// The report of a day with 200 joints as PDF, from the log's file to the file on paper; beside it a
// plain text document of as much text, written by Qt's own layout to the same kind of file.
//
//     report_speed FOLDER    makes its log there
#include "app/print/report_pdf.h"
#include "core/report/record_facts.h"
#include "tests/speed/big_log.h"

#include <QApplication>
#include <QBuffer>
#include <QFile>
#include <QPdfWriter>
#include <QProcess>
#include <QTextDocument>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <string>
#include <vector>

namespace seamclock::test {
namespace {

constexpr std::int64_t kJoints = 200;
constexpr int kRounds = 7;

double msOf(clockid_t which) {
    timespec at{};
    clock_gettime(which, &at);
    return static_cast<double>(at.tv_sec) * 1e3 + static_cast<double>(at.tv_nsec) / 1e6;
}

[[noreturn]] void giveUp(const std::string& why) {
    std::fprintf(stderr, "report_speed: %s\n", why.c_str());
    std::exit(1);
}

struct Took {
    double wall = 0;
    double processor = 0;
};

template <class Work>
Took timed(const Work& work) {
    const double wall = msOf(CLOCK_MONOTONIC);
    const double processor = msOf(CLOCK_PROCESS_CPUTIME_ID);
    work();
    return {msOf(CLOCK_MONOTONIC) - wall, msOf(CLOCK_PROCESS_CPUTIME_ID) - processor};
}

Took middle(std::vector<Took> all) {
    const auto by = [&all](double Took::*what) {
        std::sort(all.begin(), all.end(), [what](const Took& a, const Took& b) {
            return a.*what < b.*what;
        });
        return all[all.size() / 2].*what;
    };
    return {by(&Took::wall), by(&Took::processor)};
}

void report(const std::string& log, const QString& file) {
    auto reader = LogReader::open(log);
    if (!reader) {
        giveUp(reader.error().detail);
    }
    const auto facts = reportFacts(*reader, JointFilter{});
    if (!facts || static_cast<std::int64_t>(facts->joints.size()) != kJoints) {
        giveUp(facts ? "the log has other joints" : facts.error().detail);
    }
    PaperWork work{"Quillmere Vat Works", "QV-118", "Brine settling tank", "2030-01-14 07:00"};
    const auto written =
        writeReportPdf(*facts, ReportOf::Selection, work, UnitSystem::Metric, Paper::A4, file);
    if (!written) {
        giveUp(written.error().detail);
    }
}

QString textOf(const QString& file) {
    QProcess process;
    process.start("pdftotext", {"-layout", file, "-"});
    if (!process.waitForFinished(60'000) || process.exitCode() != 0) {
        giveUp("pdftotext (poppler-utils) is not there");
    }
    return QString::fromUtf8(process.readAllStandardOutput());
}

void plainDocument(const QString& text, const QString& file) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        QTextDocument document;
        document.setPlainText(text);
        document.print(&writer);
    }
    QFile out(file);
    if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size()) {
        giveUp("the plain document can't be written");
    }
}

int run(const std::string& folder) {
    const std::string log = folder + "/report.log";
    const QString ours = QString::fromStdString(folder + "/report.pdf");
    const QString theirs = QString::fromStdString(folder + "/plain.pdf");
    std::filesystem::remove(log);
    BigLogOptions options;
    options.joints = kJoints;
    options.resources = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources";
    if (const auto made = makeBigLog(log, options); !made) {
        giveUp(made.error().detail);
    }
    report(log, ours); // fonts are loaded once in a program's life
    const QString text = textOf(ours);
    std::vector<Took> reports;
    std::vector<Took> plains;
    for (int i = 0; i < kRounds; ++i) {
        reports.push_back(timed([&] { report(log, ours); }));
        plains.push_back(timed([&] { plainDocument(text, theirs); }));
    }
    const Took took = middle(reports);
    const Took beside = middle(plains);
    std::printf(
        "value report-200-joints-ms %.0f ms   (from the log to the file; %.0f ms of a processor, "
        "%lld signs of text)\n",
        took.wall, took.processor, static_cast<long long>(text.size()));
    std::printf(
        "ratio report-200-joints %.2f   (to a plain document of as much text: %.0f / %.0f ms of a "
        "processor)\n",
        took.processor / beside.processor, took.processor, beside.processor);
    return 0;
}

} // namespace
} // namespace seamclock::test

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    if (argc != 2) {
        std::fprintf(stderr, "report_speed FOLDER\n");
        return 2;
    }
    return seamclock::test::run(argv[1]);
}
