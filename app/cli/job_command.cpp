// job: the seams of a job from a table that an office writes.
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/output_json.h"
#include "core/base/plain_number.h"
#include "core/report/plain_text.h"
#include "core/shift/job_csv.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>
#include <memory>

namespace seamclock {
namespace {

struct JobCall {
    std::string file;
    bool json = false;
};

std::string seamsText(const std::string& file, const std::vector<JobSeam>& seams) {
    std::vector<std::vector<std::string>> rows = {
        {"seam", "sheet", "thickness", "length", "procedure", "bench"}};
    for (const JobSeam& seam : seams) {
        std::string lengths;
        for (const double length : seam.lengthsMm) {
            lengths += (lengths.empty() ? "" : " + ") + plainNumber(length);
        }
        rows.push_back(
            {onOneLine(seam.label), onOneLine(seam.sheets.front().material),
             plainNumber(seam.thicknessMm) + " mm", lengths + " mm", onOneLine(seam.procedure),
             seam.bench.empty() ? "any" : onOneLine(seam.bench)});
    }
    return onOneLine(fmt::format("{}: sound, seams: {}", file, seams.size())) + "\n" +
           aligned(rows);
}

Result<int> checkJob(const JobCall& call, Terminal& terminal) {
    const auto text = readText(call.file);
    if (!text) {
        return tl::unexpected(text.error());
    }
    const auto procedures = shippedProcedures();
    if (!procedures) {
        return tl::unexpected(procedures.error());
    }
    JobCsvKnown known;
    for (const ProcedureDocument& one : *procedures) {
        known.procedures.emplace(one.procedure.id, weldedBy(one.procedure));
    }
    const JobCsv job = readJobCsv(*text, known);
    if (call.json) {
        terminal.write(jobCsvJson(call.file, job));
    } else if (job.isSound()) {
        terminal.write(seamsText(call.file, job.seams));
    } else {
        for (const JobCsvProblem& problem : job.problems) {
            terminal.write(onOneLine(call.file + ": " + problem.inWords()) + "\n");
        }
        if (job.more > 0) {
            terminal.write(fmt::format("and {} more\n", job.more));
        }
    }
    return job.isSound() ? 0 : 1;
}

} // namespace

void addJob(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<JobCall>();
    CLI::App* job = root.add_subcommand("job", "A job's seams from a table (CSV).");
    job->require_subcommand(0, 1);
    CLI::App* check = job->add_subcommand("check", "Whether a table of seams is sound.");
    check->add_option("FILE", call->file, "a CSV file, one row a seam")->required();
    check->add_flag("--json", call->json, "as JSON");
    CLI::App* blank = job->add_subcommand("template", "A table with one seam, to write over.");
    commands.push_back({check, [call, &terminal] { return checkJob(*call, terminal); }});
    commands.push_back({blank, [&terminal] {
                            terminal.write(jobCsvTemplate());
                            return Result<int>(0);
                        }});
}

} // namespace seamclock
