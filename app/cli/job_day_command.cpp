// job plan and job state: the day's plan of a job, and how far it is by a log.
#include "app/cli/bench_files.h"
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/numbers.h"
#include "app/cli/shop_json.h"
#include "app/platform/boot_clock.h"
#include "core/base/plain_number.h"
#include "core/log/log_reader.h"
#include "core/log/roster.h"
#include "core/quality/due.h"
#include "core/report/plain_text.h"
#include "core/report/wording.h"
#include "core/session/job_day.h"
#include "core/shift/job_csv.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <memory>

namespace seamclock {
namespace {

struct JobDayCall {
    std::string file;
    std::vector<std::string> benches;
    std::vector<std::string> people;
    std::optional<std::string> log;
    std::optional<std::string> from;
    std::optional<std::string> job;
    bool json = false;
};

bool endsWith(const std::string& text, const std::string& end) {
    return text.size() >= end.size() &&
           text.compare(text.size() - end.size(), end.size(), end) == 0;
}

/// Of a table (CSV), whose job the call names, or a job's JSON file.
Result<std::vector<JobSeam>> readSeams(const JobDayCall& call) {
    const std::string& file = call.file;
    if (endsWith(file, ".json")) {
        if (call.job) {
            return fail(
                ErrorCode::Malformed, "--job " + inQuotes(*call.job) + " is for a table; " + file +
                                          " says itself whose seams it has");
        }
        auto job = readJobFile(file);
        return job ? Result<std::vector<JobSeam>>(std::move(job->seams))
                   : tl::unexpected(job.error());
    }
    const auto text = readText(file);
    if (!text) {
        return tl::unexpected(text.error());
    }
    JobCsv job = readJobCsv(*text);
    if (!job.isSound()) {
        return fail(
            ErrorCode::Malformed,
            file + ": " + job.problems.front().inWords() +
                (job.problems.size() > 1 ? fmt::format(
                                               " (and {} more: job check lists them)",
                                               job.problems.size() - 1 + job.more)
                                         : ""));
    }
    for (JobSeam& seam : job.seams) {
        seam.job = call.job.value_or("");
    }
    return std::move(job.seams);
}

/// Of a table whose job nobody named: one that has joints of its labels in the log, with what that
/// means. Empty: none has.
Result<std::string> jobNotNamed(const std::vector<JobSeam>& seams, LogReader& log) {
    for (const JobSeam& seam : seams) {
        if (!seam.job.empty()) {
            return std::string();
        }
        JointFilter filter;
        filter.seam = seam.label;
        std::string job;
        const auto read = log.eachJoint(filter, [&job](const JointLine& line) {
            job = line.job;
            return job.empty();
        });
        if (!read) {
            return tl::unexpected<Error>(read.error());
        }
        if (!job.empty()) {
            return fmt::format(
                "not counted: the log has joints of the job {}, as seam {}; --job says whose seams "
                "the table has",
                onOneLine(job), onOneLine(seam.label));
        }
    }
    return std::string();
}

Result<std::optional<std::string>> readFrom(const std::optional<std::string>& from) {
    if (from && !dayNumber(*from)) {
        return fail(
            ErrorCode::Malformed,
            "--from " + inQuotes(*from) + " is not a date; allowed: 0000-01-01 to 9999-12-31");
    }
    return from;
}

Result<std::optional<LogReader>> openIf(const std::optional<std::string>& log) {
    if (!log) {
        return std::optional<LogReader>();
    }
    auto reader = LogReader::open(*log);
    return reader ? Result<std::optional<LogReader>>(std::move(*reader))
                  : tl::unexpected(reader.error());
}

/// Those that are named, those that the seams name, and those that the log has.
Result<std::vector<BenchDocument>>
benchesFor(const JobDayCall& call, const std::vector<JobSeam>& seams, LogReader* log) {
    std::vector<std::string> files = call.benches;
    for (const JobSeam& seam : seams) {
        if (!seam.benchFile.empty() &&
            std::find(files.begin(), files.end(), seam.benchFile) == files.end()) {
            files.push_back(seam.benchFile);
        }
    }
    auto out = benchesOf(files, log);
    if (out && out->empty()) {
        return fail(
            ErrorCode::Missing,
            "no bench is named; allowed: --bench FILE, once for each, or a --log that has benches");
    }
    return out;
}

constexpr const char* kOneOfANumber = "operator ";

bool isOneOfANumber(const std::string& person) {
    return person.rfind(kOneOfANumber, 0) == 0;
}

/// "1" to "20", or a name each.
Result<std::vector<std::string>> peopleOf(const std::vector<std::string>& words) {
    const bool isCount = words.size() == 1 && !words.front().empty() &&
                         words.front().find_first_not_of("-0123456789") == std::string::npos;
    if (words.empty() || isCount) {
        const auto count = words.empty() ? Result<std::int64_t>(1)
                                         : parseInteger(
                                               "--people", words.front(), 1,
                                               static_cast<std::int64_t>(kMostDayPeople));
        if (!count) {
            return tl::unexpected(count.error());
        }
        std::vector<std::string> out;
        for (std::int64_t i = 1; i <= *count; ++i) {
            out.push_back(kOneOfANumber + std::to_string(i));
        }
        return out;
    }
    return words;
}

/// Names as ids, where the log knows them. Missing: a name that it doesn't.
Result<std::vector<std::string>> asIds(std::vector<std::string> names, LogReader& log) {
    const auto roster = readRoster(log);
    if (!roster) {
        return tl::unexpected<Error>(roster.error());
    }
    for (std::string& name : names) {
        std::string all;
        bool known = roster->people.empty() || isOneOfANumber(name);
        for (const Person& person : roster->people) {
            if (!person.active) {
                continue; // left the shop; another may have the same name
            }
            all += (all.empty() ? "" : ", ") + person.name;
            if (!known && (person.name == name || person.id == name)) {
                name = person.id;
                known = true;
            }
        }
        if (!known) {
            return fail(
                ErrorCode::Missing,
                "--people " + inQuotes(name) + " is not in the log; allowed: a number, or " + all);
        }
    }
    return names;
}

/// Whose certificate nobody could ask for.
std::string handsText(const std::vector<std::string>& people) {
    return std::any_of(people.begin(), people.end(), isOneOfANumber)
               ? "of operators who are only counted no certificate is asked: --people NAME does\n"
               : "";
}

std::string clockTime(Milliseconds from, const Instant& now) {
    // Up to the minute: nobody keeps to the second, and never too early.
    const Milliseconds minute{60'000};
    const Milliseconds at = now.utc + from;
    const Milliseconds whole = (at + minute - Milliseconds{1}) / minute * minute;
    const std::string local = toIsoLocal(whole, now.offset);
    const std::string time = local.substr(11, 5);
    return toIsoDate(whole, now.offset) == toIsoDate(now.utc, now.offset)
               ? time
               : local.substr(5, 5) + " " + time;
}

std::string inHours(Milliseconds time) {
    const auto minutes = (time.count() + 59'999) / 60'000;
    return fmt::format("{}:{:02} h", minutes / 60, minutes % 60);
}

std::string boundText(const DayPlan& plan) {
    std::string which;
    for (const std::string& one : plan.bound.which) {
        which += (which.empty() ? "" : ", ") + onOneLine(one);
    }
    const auto asks = [&]() -> std::string {
        switch (plan.bound.by) {
        case DayLimit::Nothing:
            return "nothing is to do";
        case DayLimit::People:
            return which.empty() ? "all hands are full so long"
                                 : "what only " + which + " may weld takes so long";
        case DayLimit::Benches:
            return which + (plan.bound.which.size() == 1 ? " is" : " are") + " taken so long";
        case DayLimit::OneSeam:
            return "seam " + which + " alone takes so long";
        }
        return "";
    };
    return fmt::format(
        "{} from now; no plan can be shorter than {}, since {}", inHours(plan.finish),
        inHours(plan.bound.atLeast), asks());
}

/// A line a seam, in the order in which they are begun.
std::string stretchesText(const JobDay& day, const Instant& now) {
    struct Line {
        std::string label;
        std::size_t bench = 0;
        std::string plate;
        std::optional<Milliseconds> begins;
        std::optional<Milliseconds> locked;
        std::optional<Milliseconds> cooled;
        std::optional<Milliseconds> released;
        std::optional<Milliseconds> decided; // of a trial joint
        bool trial = false;
        std::string by;
        std::string releasedBy;
    };
    std::vector<Line> lines;
    for (const DayStretch& one : day.plan.stretches) {
        auto found = std::find_if(lines.begin(), lines.end(), [&](const Line& line) {
            return line.label == one.label && line.bench == one.bench && line.trial == one.trial;
        });
        if (found == lines.end()) {
            lines.emplace_back();
            found = lines.end() - 1;
            found->label = one.label;
            found->bench = one.bench;
            found->trial = one.trial;
        }
        if (one.kind == DayKind::Decision) {
            found->decided = one.to;
        } else if (one.kind == DayKind::PlateWait) {
            found->plate = inHours(one.to - one.from);
        } else if (one.kind == DayKind::Cooling) {
            found->cooled = one.to;
        } else if (one.kind == DayKind::Release) {
            found->released = one.to;
            found->releasedBy = day.work.people[*one.person];
        } else if (one.person) {
            found->begins = found->begins ? found->begins : one.from;
            found->locked = one.to;
            found->by = day.work.people[*one.person];
        }
    }
    std::stable_sort(lines.begin(), lines.end(), [](const Line& a, const Line& b) {
        return a.begins.value_or(Milliseconds{0}) < b.begins.value_or(Milliseconds{0});
    });
    std::vector<std::vector<std::string>> rows = {
        {"begin", "seam", "bench", "by", "locked", "cooled", "out", "released by", "tested",
         "plate waits"}};
    const auto at = [&now](const std::optional<Milliseconds>& time) {
        return time ? clockTime(*time, now) : "";
    };
    for (const Line& line : lines) {
        rows.push_back(
            {line.begins ? at(line.begins) : (line.released ? "runs" : "made"),
             (line.trial ? "trial " : "") + onOneLine(line.label),
             onOneLine(day.work.benches[line.bench].id), onOneLine(line.by), at(line.locked),
             at(line.cooled), at(line.released), onOneLine(line.releasedBy), at(line.decided),
             line.plate});
    }
    for (const std::size_t column : {std::size_t{9}, std::size_t{8}}) { // told where there is one
        const bool told = std::any_of(rows.begin() + 1, rows.end(), [column](const auto& row) {
            return !row[column].empty();
        });
        for (auto& row : rows) {
            if (!told) {
                row.erase(row.begin() + static_cast<std::ptrdiff_t>(column));
            }
        }
    }
    return aligned(rows);
}

std::string dayText(const std::string& file, const JobDay& day, const Instant& now) {
    std::string text = headline(onOneLine(file));
    const std::size_t open =
        day.plan.impossible.size() + day.progress.count(JobSeamState::ToDecide);
    if (day.plan.stretches.empty()) {
        text += open == 0 ? "nothing is to weld\n"
                          : fmt::format("seams that are open and can't be planned: {}\n", open);
    } else {
        text +=
            stretchesText(day, now) + "\n" +
            wrapped(
                "All out at " + clockTime(day.plan.finish, now) + ": " + boundText(day.plan) + ".",
                0) +
            "\n";
    }
    const std::size_t done = day.progress.count(JobSeamState::Done);
    if (done > 0) {
        text += fmt::format("done already: {}\n", done);
    }
    for (const SeamProgress& seam : day.progress.seams) {
        if (seam.state == JobSeamState::ToDecide) {
            text +=
                wrapped("waits for the foreman: " + onOneLine(seam.label + ": " + seam.why), 2) +
                "\n";
        }
    }
    for (const UnreadWeld& one : day.unread) {
        const std::string name = one.number > 0 ? fmt::format("joint {}", one.number) : one.weld;
        const std::string where = one.bench.empty() ? "" : " on bench " + one.bench;
        text +=
            wrapped("not counted: " + onOneLine(name + where + " can't be read: " + one.why), 2) +
            "\n";
    }
    for (const DayImpossible& one : day.plan.impossible) {
        text +=
            wrapped("not planned: " + onOneLine(one.label) + ": " + onOneLine(one.why), 2) + "\n";
    }
    if (day.later > 0) {
        text += fmt::format(
            "not in this plan, which holds {} at most: {} further seam{}\n", kMostDaySeams,
            day.later, day.later == 1 ? "" : "s");
    }
    const auto& stretches = day.plan.stretches;
    if (std::any_of(stretches.begin(), stretches.end(), [](const DayStretch& one) {
            return one.kind == DayKind::Decision;
        })) {
        text += wrapped(
                    "A trial joint is asked for first on a bench, and after another material, "
                    "thickness or plate; a foreman's test of it counts " +
                        plainNumber(static_cast<double>(day.work.decision.count()) / 6e4) +
                        " min: chosen.",
                    0) +
                "\n";
    }
    const bool chosen = std::any_of(day.times.begin(), day.times.end(), [](const auto& one) {
        return one.second.preparation == TimeFrom::Chosen ||
               one.second.alignment == TimeFrom::Chosen || one.second.release == TimeFrom::Chosen;
    });
    if (chosen) {
        text += wrapped(
                    "Where the log knows fewer than five such joints, preparation counts " +
                        plainNumber(static_cast<double>(kChosenPreparation.count()) / 6e4) +
                        " min, release " +
                        plainNumber(static_cast<double>(kChosenRelease.count()) / 6e4) +
                        " min and alignment " + plainNumber(std::round(kChosenAlignment * 100)) +
                        " % of the soak: chosen, not measured.",
                    0) +
                "\n";
    }
    return text;
}

std::string stateText(const std::string& file, const JobProgress& progress) {
    std::vector<std::vector<std::string>> rows = {{"seam", "state", "joints", "because"}};
    for (const SeamProgress& seam : progress.seams) {
        std::string joints;
        for (const SeamJoint& joint : seam.joints) {
            joints += (joints.empty() ? "" : ", ") + std::to_string(joint.line.number);
        }
        rows.push_back(
            {onOneLine(seam.label), codeInWords(std::string(toString(seam.state))), joints,
             onOneLine(seam.why)});
    }
    std::string text = headline(onOneLine(file)) + aligned(rows);
    for (const JointLine& line : progress.elsewhere) {
        text += wrapped(
                    fmt::format(
                        "not counted: joint {} has the label {}, but other sheets: {} {} mm",
                        line.number, onOneLine(line.seam), onOneLine(line.material),
                        fromThousandths(line.thicknessUm)),
                    2) +
                "\n";
    }
    return text;
}

Result<int> planJob(const JobDayCall& call, Terminal& terminal) {
    JobDayAsk ask;
    auto seams = readSeams(call);
    if (!seams) {
        return tl::unexpected(seams.error());
    }
    ask.seams = std::move(*seams);
    auto from = readFrom(call.from);
    auto people = peopleOf(call.people);
    if (!from || !people) {
        return tl::unexpected(from ? people.error() : from.error());
    }
    ask.fromDay = std::move(*from);
    auto log = openIf(call.log);
    if (!log) {
        return tl::unexpected(log.error());
    }
    LogReader* reader = *log ? &**log : nullptr;
    if (reader != nullptr) {
        people = asIds(std::move(*people), *reader);
        if (!people) {
            return tl::unexpected(people.error());
        }
    }
    ask.people = std::move(*people);
    auto benches = benchesFor(call, ask.seams, reader);
    if (!benches) {
        return tl::unexpected(benches.error());
    }
    ask.benches = std::move(*benches);
    auto procedures = proceduresOf(call.log);
    if (!procedures) {
        return tl::unexpected(procedures.error());
    }
    ask.procedures = std::move(*procedures);
    const auto clock = BootClock::make();
    if (!clock) {
        return tl::unexpected(clock.error());
    }
    ask.now = clock->now();
    const auto day = jobDay(ask, reader);
    if (!day) {
        return tl::unexpected(day.error());
    }
    terminal.write(
        call.json ? jobDayJson(call.file, *day, ask.now) : dayText(call.file, *day, ask.now));
    if (!call.json && reader != nullptr) {
        const auto unnamed = jobNotNamed(ask.seams, *reader);
        if (!unnamed) {
            return tl::unexpected(unnamed.error());
        }
        terminal.write(unnamed->empty() ? std::string() : wrapped(*unnamed, 2) + "\n");
        terminal.write(handsText(ask.people));
    }
    return 0;
}

Result<int> showState(const JobDayCall& call, Terminal& terminal) {
    const auto seams = readSeams(call);
    if (!seams) {
        return tl::unexpected(seams.error());
    }
    const auto from = readFrom(call.from);
    if (!from) {
        return tl::unexpected(from.error());
    }
    auto log = LogReader::open(*call.log);
    if (!log) {
        return tl::unexpected(log.error());
    }
    const auto progress = jobProgress(*log, *seams, *from);
    if (!progress) {
        return tl::unexpected(progress.error());
    }
    const auto unnamed = jobNotNamed(*seams, *log);
    if (!unnamed) {
        return tl::unexpected(unnamed.error());
    }
    terminal.write(
        call.json ? jobProgressJson(call.file, *call.log, *progress)
                  : stateText(call.file, *progress));
    if (!call.json && !unnamed->empty()) {
        terminal.write(wrapped(*unnamed, 2) + "\n");
    }
    return 0;
}

} // namespace

void addJobDay(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<JobDayCall>();
    CLI::App* job = root.get_subcommand("job");
    CLI::App* plan = job->add_subcommand(
        "plan",
        "The day's plan: which seam when, on which bench and by whom; and how short no plan "
        "can be.");
    plan->add_option("--bench", call->benches, "a bench's FILE, once for each")
        ->allow_extra_args(false);
    plan->add_option("--people", call->people, "how many weld, 1 to 20 (1), or a NAME each")
        ->allow_extra_args(false);
    plan->add_option("--log", call->log, "the log's FILE: what is done, and the shop's own times");
    CLI::App* state = job->add_subcommand(
        "state", "Which seams are open, running, done, to decide, to redo or cut out, by a log.");
    state->add_option("--log", call->log, "the log's FILE")->required();
    for (CLI::App* words : {plan, state}) {
        words->add_option("FILE", call->file, "the job: a table of seams (CSV) or its JSON file")
            ->required();
        words->add_option("--job", call->job, "whose seams the table has: the job's NAME");
        words->add_option("--from", call->from, "only joints of that local DATE or later");
        words->add_flag("--json", call->json, "as JSON");
    }
    commands.push_back({plan, [call, &terminal] { return planJob(*call, terminal); }});
    commands.push_back({state, [call, &terminal] { return showState(*call, terminal); }});
}

} // namespace seamclock
