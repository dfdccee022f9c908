// log evidence and evidence check: one joint for somebody without the tablet, and whether such a
// file holds together.
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/numbers.h"
#include "app/cli/output_json.h"
#include "core/log/log_reader.h"
#include "core/report/evidence.h"
#include "core/report/plain_text.h"
#include "core/report/wording.h"

#include <CLI/CLI.hpp>
#include <memory>

namespace seamclock {
namespace {

struct EvidenceCall {
    std::string log;
    std::string file;
    std::optional<std::string> joint;
    std::optional<std::string> weld;
    std::string out;
    bool json = false;
};

Result<int> exportEvidence(const EvidenceCall& call, Terminal& terminal) {
    auto reader = LogReader::open(call.log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    const auto weld = chooseWeld(*reader, call.log, call.joint, call.weld);
    if (!weld) {
        return tl::unexpected(weld.error());
    }
    const auto text = evidenceJson(*reader, *weld);
    if (!text) {
        return tl::unexpected(text.error());
    }
    auto file = OutFile::open(call.out);
    if (!file) {
        Error error = file.error();
        error.detail = "--out " + error.detail;
        return tl::unexpected(error);
    }
    file->write(*text);
    if (const auto written = file->finish(); !written) {
        return tl::unexpected(written.error());
    }
    if (!call.json) {
        terminal.write("written: " + onOneLine(call.out) + "\n");
        return 0;
    }
    const auto report = checkEvidence(call.out, *text);
    if (!report) {
        return tl::unexpected(report.error());
    }
    terminal.write(evidenceReportJson(*report));
    return 0;
}

Result<int> check(const EvidenceCall& call, Terminal& terminal) {
    const auto text = readText(call.file);
    if (!text) {
        return tl::unexpected(text.error());
    }
    const auto report = checkEvidence(call.file, *text);
    if (!report) {
        return tl::unexpected(report.error());
    }
    if (call.json) {
        terminal.write(evidenceReportJson(*report));
        return report->ok ? 0 : 1;
    }
    std::vector<std::vector<std::string>> rows = {
        {"File", onOneLine(call.file)},
        {"Answer", report->ok ? "it is what was signed" : "it does not hold together"}};
    if (!report->ok) {
        rows.push_back({"First finding", onOneLine(report->finding)});
    }
    rows.push_back({"Log id", onOneLine(report->logId)});
    if (report->ok) {
        rows.push_back({"Joint", std::to_string(report->number)});
        rows.push_back({"Verdict", onOneLine(report->verdict)});
        rows.push_back(
            {"Signed by", report->sealed
                              ? onOneLine(report->by) + ", seal of " + onOneLine(report->day)
                              : "the station, not by a foreman"});
        if (report->sealed) {
            rows.push_back({"Fingerprint", report->fingerprint});
        }
        rows.push_back({"Key", report->keyFingerprint});
        rows.push_back({"Rows", std::to_string(report->rows)});
    }
    terminal.write(aligned(rows, 0));
    if (report->ok) {
        terminal.write("Compare fingerprint and key with the paper that you were given.\n");
        terminal.write(
            report->otherWords
                ? "The text in the file is of another version of this program and proves nothing; "
                  "this is what its rows make:\n\n"
                : "\n");
        terminal.write(report->record);
    }
    return report->ok ? 0 : 1;
}

} // namespace

void addEvidence(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<EvidenceCall>();
    CLI::App* out = root.get_subcommand("log")->add_subcommand(
        "evidence", "One joint with its rows, record and seal, for another computer.");
    out->add_option("--log", call->log, "the log's FILE")->required();
    out->add_option("--joint", call->joint, "the joint with this number (the highest)");
    out->add_option("--weld", call->weld, "the joint with this weld:UUID");
    out->add_option("--out", call->out, "the FILE to write")->required();
    CLI::App* evidence = root.add_subcommand("evidence", "A joint's evidence file.");
    evidence->require_subcommand(0, 1);
    CLI::App* judged =
        evidence->add_subcommand("check", "Whether it holds together, and who signed it.");
    judged->add_option("FILE", call->file, "an evidence file")->required();
    for (CLI::App* words : {out, judged}) {
        words->add_flag("--json", call->json, "as JSON");
    }
    commands.push_back({out, [call, &terminal] { return exportEvidence(*call, terminal); }});
    commands.push_back({judged, [call, &terminal] { return check(*call, terminal); }});
}

} // namespace seamclock
