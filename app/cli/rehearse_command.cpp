// rehearse: a virtual operator makes one whole weld into a practice log, and the terminal shows it
// as it goes; or many, told in a line each. Without options it is the demo: the first seam of the
// demo job.
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/numbers.h"
#include "app/cli/output_json.h"
#include "app/cli/plan_options.h"
#include "app/cli/rehearse_json.h"
#include "app/platform/boot_clock.h"
#include "app/platform/boot_pacer.h"
#include "app/platform/data_folder.h"
#include "core/estimate/heat_estimate.h"
#include "core/heat/material_codec.h"
#include "core/practice/demo_days.h"
#include "core/practice/virtual_operator.h"
#include "core/report/plain_text.h"
#include "core/report/record_json.h"
#include "core/report/record_text.h"
#include "core/report/weld_card.h"
#include "core/report/wording.h"
#include "core/session/job_order.h"
#include "core/shift/job.h"

#include <CLI/CLI.hpp>
#include <cmath>
#include <fmt/format.h>
#include <map>
#include <memory>

namespace seamclock {
namespace {

constexpr double kLongestFaultS = 86'400;
constexpr double kLongestFaultMin = 1'440;
constexpr std::int64_t kMostWelds = 100'000;

struct RehearseCall {
    PlanWords plan;
    std::optional<std::string> seam;
    std::optional<std::string> log;
    std::optional<std::string> seed;
    std::optional<std::string> speed;
    std::optional<std::string> hand;
    std::optional<std::string> by;
    bool trueTime = false;
    bool resume = false;
    std::optional<std::string> afterReboot;
    std::optional<std::string> lateChangeover;
    std::optional<std::string> earlyRelease;
    std::optional<std::string> shortSoak;
    std::optional<std::string> longSoak;
    std::optional<std::string> slowBuildUp;
    std::optional<std::string> backdate;
    std::optional<std::string> lowReading;
    std::optional<std::string> skipCheck;
    std::optional<std::string> abortIn;
    bool missedRecheck = false;
    bool coldPlate = false;
    bool thinBead = false;
    bool misaligned = false;
    bool takeBack = false;
    std::optional<std::string> phoneCall;
    std::optional<std::string> letBack;
    std::optional<std::string> backedOff;
    std::optional<std::string> draught;
    std::optional<std::string> plateOff;
    std::optional<std::string> offParallel;
    std::optional<std::string> touchedEdge;
    std::optional<std::string> wrongRow;
    std::optional<std::string> coldSpot;
    bool soakPressed = false;
    bool clockFromContact = false;
    bool slammed = false;
    bool notFollowed = false;
    bool plateDirty = false;
    bool topBeadOnly = false;
    bool filmLeft = false;
    bool kgfForN = false;
    bool physics = false;
    std::optional<std::string> skill;
    std::optional<std::string> count;
    std::optional<std::string> demoDays;
    bool listFaults = false;
    bool saved = false;
    bool json = false;
};

/// Shows a rehearsal while it goes.
class Show : public RehearseWatcher {
public:
    Show(Terminal& terminal, const std::optional<Bench>& bench, bool saved)
        : m_terminal(terminal), m_bench(bench), m_saved(saved) {}

    void planned(const Weld& weld, bool resumed) override {
        const bool same = m_bench && m_bench->id == weld.plan.bench;
        m_terminal.writeNow(weldCard(weld.plan, same ? &*m_bench : nullptr));
        m_terminal.writeNow(
            "\n" + headline(fmt::format(
                       "{} of joint {}: event, UTC, since the start",
                       resumed ? "The rest" : "The weld", weld.opened().number)));
    }
    void happened(const Weld& weld, const Event& event) override {
        m_terminal.writeNow(eventLine(event, weld.events.front(), weld.plan));
    }
    void cued(const Weld& /*weld*/, const CueNote& cue) override {
        m_terminal.writeNow(cueLine(cue.at.utc, cue.cue));
    }
    void saved(const Weld& /*weld*/, std::int64_t n) override {
        if (m_saved) {
            m_terminal.writeNow(fmt::format("       saved {}\n", n));
        }
    }
    void setAside(const SetAside& aside) override {
        for (const std::string& sentence : sentencesOf(aside)) {
            m_terminal.writeNow(onOneLine(sentence) + "\n");
        }
        m_terminal.writeNow("\n");
    }
    void trouble(const std::string& detail) override {
        m_terminal.writeNow(
            detail.empty()
                ? "       the log can be written again\n"
                : wrapped(
                      "The log can't be written, and the weld goes on: " + onOneLine(detail), 7) +
                      "\n");
    }

private:
    Terminal& m_terminal;
    const std::optional<Bench>& m_bench;
    bool m_saved;
};

Result<void> readTime(
    const char* option, const std::optional<std::string>& word, const Allowed& allowed,
    double msPerUnit, std::optional<Milliseconds>& target) {
    if (word) {
        const auto number = parseNumber(option, *word, allowed);
        if (!number) {
            return tl::unexpected(number.error());
        }
        target = Milliseconds(std::llround(*number * msPerUnit));
    }
    return {};
}

Result<void> readTimes(const RehearseCall& call, RehearseFaults& faults) {
    const Allowed seconds{0, kLongestFaultS, "s"};
    const Allowed minutes{0, kLongestFaultMin, "min"};
    struct Row {
        const char* option;
        const std::optional<std::string>& word;
        const Allowed& allowed;
        double msPerUnit;
        std::optional<Milliseconds>& target;
    };
    const Row rows[] = {
        {"--late-changeover", call.lateChangeover, seconds, 1e3, faults.lateChangeover},
        {"--early-release", call.earlyRelease, minutes, 6e4, faults.earlyRelease},
        {"--short-soak", call.shortSoak, seconds, 1e3, faults.shortSoak},
        {"--long-soak", call.longSoak, seconds, 1e3, faults.longSoak},
        {"--slow-build-up", call.slowBuildUp, seconds, 1e3, faults.slowBuildUp},
        {"--backdate", call.backdate, seconds, 1e3, faults.backdate},
        {"--phone-call", call.phoneCall, seconds, 1e3, faults.phoneCall},
        {"--let-back", call.letBack, seconds, 1e3, faults.letBack}};
    for (const Row& row : rows) {
        auto read = readTime(row.option, row.word, row.allowed, row.msPerUnit, row.target);
        if (!read) {
            return read;
        }
    }
    return {};
}

Result<void> readSizes(const RehearseCall& call, RehearseFaults& faults) {
    struct Row {
        const char* option;
        const std::optional<std::string>& word;
        Allowed allowed;
        double each;
        std::optional<std::int64_t>& target;
    };
    const Row rows[] = {
        {"--backed-off", call.backedOff, {0, 20, "mm"}, 1e3, faults.backedOffUm},
        {"--draught", call.draught, {0.1, 10, "times"}, 100, faults.draughtPercent},
        {"--plate-off", call.plateOff, {-100, 60, "K"}, 1e3, faults.plateOffMk},
        {"--off-parallel", call.offParallel, {0, 10, "mm"}, 1e3, faults.offParallelUm},
        {"--touched-edge", call.touchedEdge, {0, 100, "%"}, 10, faults.touchedPermille},
        {"--wrong-row", call.wrongRow, {0.1, 1000, "mm"}, 1e3, faults.wrongRowUm},
        {"--cold-spot", call.coldSpot, {0, 150, "K"}, 1e3, faults.coldSpotMk}};
    for (const Row& row : rows) {
        if (row.word) {
            const auto number = parseNumber(row.option, *row.word, row.allowed);
            if (!number) {
                return tl::unexpected(number.error());
            }
            row.target = std::llround(*number * row.each);
        }
    }
    return {};
}

Result<RehearseFaults> readFaults(const RehearseCall& call) {
    RehearseFaults faults;
    for (const auto& read : {readTimes(call, faults), readSizes(call, faults)}) {
        if (!read) {
            return tl::unexpected(read.error());
        }
    }
    faults.soakPressed = call.soakPressed;
    faults.clockFromContact = call.clockFromContact;
    faults.slammed = call.slammed;
    faults.notFollowed = call.notFollowed;
    faults.plateDirty = call.plateDirty;
    faults.topBeadOnly = call.topBeadOnly;
    faults.filmLeft = call.filmLeft;
    faults.kgfForN = call.kgfForN;
    if (call.lowReading) {
        if (*call.lowReading == "corrected") {
            faults.lowReading = RehearseFaults::LowReading::Corrected;
        } else if (*call.lowReading == "left") {
            faults.lowReading = RehearseFaults::LowReading::LeftLow;
        } else {
            return fail(
                ErrorCode::Malformed, "--low-reading " + inQuotes(*call.lowReading) +
                                          " is not known; allowed: corrected, left");
        }
    }
    faults.missedRecheck = call.missedRecheck;
    faults.coldPlate = call.coldPlate;
    faults.thinBead = call.thinBead;
    faults.misaligned = call.misaligned;
    faults.takeBack = call.takeBack;
    faults.skipCheck = call.skipCheck;
    faults.abortIn = call.abortIn;
    return faults;
}

Result<RebootWord> readWord(const RehearseCall& call) {
    if (!call.afterReboot) {
        return RebootWord::None;
    }
    if (*call.afterReboot == "confirmed") {
        return RebootWord::GoOnConfirmed;
    }
    if (*call.afterReboot == "unconfirmed") {
        return RebootWord::GoOnUnconfirmed;
    }
    if (*call.afterReboot == "abort") {
        return RebootWord::Abort;
    }
    return fail(
        ErrorCode::Malformed, "--after-reboot " + inQuotes(*call.afterReboot) +
                                  " is not a word; allowed: confirmed, unconfirmed, abort");
}

Result<JobSeam> chooseSeam(const Job& job, const std::optional<std::string>& label) {
    std::string labels;
    for (const JobSeam& seam : job.seams) {
        if (!label || seam.label == *label) {
            return seam;
        }
        labels += (labels.empty() ? "" : ", ") + seam.label;
    }
    return fail(
        ErrorCode::Missing,
        "--seam " + inQuotes(*label) + " is not a seam of the demo; allowed: " + labels);
}

Result<PlanInput> demoInput(const JobSeam& seam) {
    auto procedure = findProcedure(seam.procedure);
    if (!procedure) {
        return tl::unexpected(procedure.error());
    }
    auto bench = readBenchFile(seam.benchFile);
    if (!bench) {
        return tl::unexpected(bench.error());
    }
    PlanInput input;
    input.procedure = std::move(*procedure);
    input.bench = std::move(*bench);
    input.request.thickness = millimetres(seam.thicknessMm);
    for (const double length : seam.lengthsMm) {
        input.request.lengths.push_back(millimetres(length));
    }
    if (seam.dragN) {
        input.request.drag = newtons(*seam.dragN);
    }
    // Contract: a rehearsal that isn't told the air's temperature takes the procedure's reference.
    input.request.ambient = input.procedure.procedure.referenceAmbient;
    return input;
}

Result<void> readOrder(const RehearseCall& call, RehearseOptions& options) {
    const auto folder = resourceFolder();
    if (!folder) {
        return tl::unexpected(folder.error());
    }
    const auto job = readFirstJob(*folder + "/demo");
    if (!job) {
        return tl::unexpected(job.error());
    }
    const auto seam = chooseSeam(*job, call.seam);
    if (!seam) {
        return tl::unexpected(seam.error());
    }
    const auto demo = demoInput(*seam);
    if (!demo) {
        return tl::unexpected(demo.error());
    }
    auto input = readPlanInput(call.plan, &*demo);
    if (!input) {
        return tl::unexpected(input.error());
    }
    WeldOrder& order = options.order;
    order.procedure = std::move(input->procedure);
    order.bench = std::move(*input->bench);
    order.request = std::move(input->request);
    order.type = WeldType::Practice;
    order.shielded = seam->shielded;
    // Another sheet than the demo's is not the demo's seam, and brings no batch with it.
    if (!call.plan.procedure && !call.plan.thickness) {
        order.seam = seam->label;
        order.sheets = seam->sheets;
        if (!seam->job.empty()) {
            order.job = seam->job;
        }
        if (!seam->part.empty()) {
            order.part = seam->part;
        }
    }
    if (!job->operatorId.empty()) {
        options.by = job->operatorId;
    }
    return {};
}

/// Should a log to be resumed be damaged, and have lost its own copies.
std::vector<LogDocument> shippedDocuments() {
    std::vector<LogDocument> out;
    const auto folder = resourceFolder();
    if (!folder) {
        return out;
    }
    if (const auto procedures = readProcedureFolder(*folder + "/procedures")) {
        for (const ProcedureDocument& one : *procedures) {
            out.push_back({one.sha256, "procedure", one.bytes});
        }
    }
    const auto job = readFirstJob(*folder + "/demo");
    for (const JobSeam& seam : job ? job->seams : std::vector<JobSeam>()) {
        if (const auto bench = readBenchFile(seam.benchFile)) {
            out.push_back({bench->sha256, "bench", bench->bytes});
        }
    }
    return out;
}

Result<std::vector<Material>> shippedMaterials() {
    const auto folder = resourceFolder();
    if (!folder) {
        return tl::unexpected(folder.error());
    }
    return readMaterialFolder(*folder + "/materials");
}

Result<void> readPhysics(const RehearseCall& call, RehearseOptions& options) {
    if (!call.physics) {
        return options.faults.needBench()
                   ? fail(
                         ErrorCode::Conflict,
                         "a fault that happens to sheets, plate or air needs --physics")
                   : Result<void>();
    }
    if (call.resume) {
        return fail(
            ErrorCode::Refused,
            "--physics does not go with --resume: the virtual bench did not outlive the program");
    }
    const auto materials = shippedMaterials();
    if (!materials) {
        return tl::unexpected(materials.error());
    }
    auto material = materialFor(*materials, options.order.procedure.procedure.material);
    if (!material) {
        return tl::unexpected(material.error());
    }
    options.physics = std::move(*material);
    return {};
}

Result<int> readSkill(const std::optional<std::string>& word) {
    if (!word || *word == "perfect") {
        return kPerfect;
    }
    if (*word == "practised") {
        return kPractised;
    }
    if (*word == "trainee") {
        return kTrainee;
    }
    const auto number = parseInteger("--skill", *word, 0, kPerfect);
    if (!number) {
        return fail(
            number.error().code, "--skill " + inQuotes(*word) +
                                     " is not known; allowed: perfect, practised, trainee, or a "
                                     "whole number from 0 to 100");
    }
    return static_cast<int>(*number);
}

Result<RehearseOptions> readOptions(const RehearseCall& call) {
    RehearseOptions options;
    if (!call.resume) {
        const auto order = readOrder(call, options);
        if (!order) {
            return tl::unexpected(order.error());
        }
    }
    const auto faults = readFaults(call);
    if (!faults) {
        return tl::unexpected(faults.error());
    }
    options.faults = *faults;
    if (const auto physics = readPhysics(call, options); !physics) {
        return tl::unexpected(physics.error());
    }
    const auto skill = readSkill(call.skill);
    if (!skill) {
        return tl::unexpected(skill.error());
    }
    options.skill = *skill;
    const auto word = readWord(call);
    if (!word) {
        return tl::unexpected(word.error());
    }
    options.word = *word;
    options.trueTime = call.trueTime;
    options.resume = call.resume;
    if (call.resume) {
        options.known = shippedDocuments();
    }
    if (call.seed) {
        const auto seed = parseSeed("--seed", *call.seed);
        if (!seed) {
            return tl::unexpected(seed.error());
        }
        options.seed = *seed;
    }
    if (call.hand) {
        const auto hand = parseInteger("--hand", *call.hand, 0, 1000);
        if (!hand) {
            return tl::unexpected(hand.error());
        }
        options.handPercent = *hand;
    }
    if (call.by) {
        options.by = *call.by;
    }
    if (call.log) {
        options.logPath = *call.log;
        return options;
    }
    const auto path = practiceLogPath();
    if (!path) {
        return tl::unexpected(path.error());
    }
    options.logPath = *path;
    return options;
}

/// True time really waits, at the speed of time; else only if a speed was given.
Result<std::optional<double>> readSpeed(const RehearseCall& call) {
    if (!call.speed) {
        return call.trueTime ? std::optional(1.0) : std::optional<double>();
    }
    const auto speed = parseNumber(
        "--speed", *call.speed,
        call.trueTime ? Allowed{1, 1, "(true time)"} : Allowed{0.01, 1e6, "times true time"});
    if (!speed) {
        return tl::unexpected(speed.error());
    }
    return std::optional(*speed);
}

std::string resumedText(const ResumeNote& note) {
    std::string text =
        fmt::format("Resumed {} after {} events", codeInWords(note.phase), note.events);
    if (note.inPhase) {
        const WeldTime& t = *note.inPhase;
        text += t.lo == t.hi ? fmt::format(", {} into it", exactTime(t.lo))
                             : fmt::format(", {} to {} into it", exactTime(t.lo), exactTime(t.hi));
    }
    text += note.rebooted ? "; the machine was started anew" : "; the clock never stopped";
    text += note.aborted ? ", and the weld was stopped" : "";
    return wrapped(text + ".", 0) + "\n";
}

/// What a timer does not know.
std::string benchText(const BenchStory& story) {
    std::vector<std::vector<std::string>> rows{
        {"place", "melt when the faces met", "skin", "bead, top and below", "bend test"}};
    for (std::size_t i = 0; i < story.bend.stations.size(); ++i) {
        const StationBend& bend = story.bend.stations[i];
        const StationView& end = story.end.stations[i];
        std::string says = bend.ductile ? "ductile" : "";
        for (const BendReason reason : bend.reasons) {
            says += (says.empty() ? "" : ", ") + codeInWords(toString(reason));
        }
        const bool met = i < story.joining.stations.size();
        rows.push_back(
            {fmt::format("{:.0f} mm", bend.placeMm),
             met ? fmt::format("{:.2f} mm", story.joining.stations[i].meltMm) : "",
             met ? fmt::format("{:.0f} °C", story.joining.stations[i].skinC) : "",
             fmt::format("{:.1f}, {:.1f} mm", end.beadTopMm, end.beadBottomMm), says});
    }
    return "\n" + headline("On the virtual bench") + aligned(rows) +
           wrapped(
               story.bend.ductile ? "The joint bends without breaking, by the model."
                                  : "The joint breaks in a bend test, by the model.",
               0) +
           "\n";
}

void showResult(
    const RehearseResult& result, const std::optional<Bench>& bench, Terminal& terminal) {
    RecordExtras extras;
    extras.bench = bench ? &*bench : nullptr;
    extras.events = false; // they were shown as they happened
    terminal.write("\n");
    if (result.resumed) {
        terminal.write(resumedText(*result.resumed) + "\n");
    }
    terminal.write(recordText(result.record, extras));
    terminal.write("\n" + verdictText(result.record));
    if (result.bench) {
        terminal.write(benchText(*result.bench));
    }
    for (const std::int64_t number : result.leftOpen) {
        terminal.write(fmt::format("Joint {} still stands open in this log.\n", number));
    }
    terminal.write("\nThe log: " + onOneLine(result.logPath) + "\n");
}

int listFaults(const RehearseCall& call, Terminal& terminal) {
    if (call.json) {
        terminal.write(faultsJson(faultAccounts()));
        return 0;
    }
    std::string text = headline("What the virtual operator can get wrong");
    for (const FaultAccount& one : faultAccounts()) {
        std::string found = codeInWords(one.finding) + ": " + std::string(one.grade);
        if (one.finding.empty()) {
            found = one.bend == BendSays::Nothing ? "nothing to find" : "not found";
        }
        text += aligned(
            {{std::string(one.option) + (one.needsBench ? " *" : ""), found,
              "bend test: " + codeInWords(toString(one.bend))}},
            0);
        text += "    " + wrapped(one.why, 4, kTextColumns - 4) + "\n";
    }
    terminal.write(text + "* with --physics: it happens to sheets, plate or air\n");
    return 0;
}

/// What is meant for one weld that somebody watches.
Result<void> checkSeries(const RehearseCall& call) {
    const char* const series = call.count ? "--count" : "--demo-days";
    const std::pair<bool, const char*> rows[] = {
        {call.count && call.demoDays, "--demo-days"},
        {call.trueTime, "--true-time"},
        {call.resume, "--resume"},
        {call.speed.has_value(), "--speed"},
        {call.saved, "--saved"}};
    for (const auto& [asked, option] : rows) {
        if (asked) {
            return fail(
                ErrorCode::Conflict, std::string(option) + " does not go with " + series +
                                         ": that is many welds, one after the other");
        }
    }
    return {};
}

Result<int> runSeries(
    const RehearseCall& call, const std::string& log,
    const std::function<std::optional<SeriesStep>(std::int64_t)>& next, Terminal& terminal) {
    std::vector<SeriesLine> lines;
    std::map<std::string, int> verdicts;
    int ductile = 0;
    int bent = 0;
    const auto result = rehearseSeries(log, next, [&](const SeriesWeld& weld) {
        lines.push_back(seriesLine(weld));
        const SeriesLine& line = lines.back();
        ++verdicts[line.verdict];
        bent += line.ductile ? 1 : 0;
        ductile += line.ductile.value_or(false) ? 1 : 0;
        if (!call.json) {
            std::string reasons;
            for (const std::string& code : line.reasons) {
                reasons += (reasons.empty() ? ": " : ", ") + codeInWords(code);
            }
            const std::string bend = !line.ductile ? "" : *line.ductile ? "; ductile" : "; breaks";
            terminal.writeNow(
                wrapped(
                    fmt::format(
                        "{:>4}  {}  {}  {}{}{}", line.number, line.openedUtc.substr(0, 16), line.by,
                        line.verdict, reasons, bend),
                    6) +
                "\n");
        }
    });
    if (!result) {
        return tl::unexpected(result.error());
    }
    if (call.json) {
        terminal.write(seriesJson(*result, lines));
    } else {
        terminal.write(fmt::format("\n{} welds:", result->welds));
        const char* between = " ";
        for (const auto& [verdict, count] : verdicts) {
            terminal.write(fmt::format("{}{} {}", between, count, verdict));
            between = ", ";
        }
        if (bent > 0) {
            terminal.write(fmt::format("; {} of {} bend without breaking", ductile, bent));
        }
        terminal.write("\nThe log: " + onOneLine(result->logPath) + "\n");
    }
    if (!result->notSaved.empty()) {
        return fail(ErrorCode::NotWritten, result->notSaved);
    }
    return 0;
}

/// Weld i has the seed + i.
Result<int> runCount(const RehearseCall& call, const RehearseOptions& options, Terminal& terminal) {
    const auto count = parseInteger("--count", *call.count, 1, kMostWelds);
    if (!count) {
        return tl::unexpected(count.error());
    }
    return runSeries(
        call, options.logPath,
        [&](std::int64_t i) -> std::optional<SeriesStep> {
            if (i >= *count) {
                return {};
            }
            SeriesStep step{options, Milliseconds(0)};
            step.options.seed += static_cast<std::uint64_t>(i);
            return step;
        },
        terminal);
}

Result<int>
runDemoDays(const RehearseCall& call, const RehearseOptions& options, Terminal& terminal) {
    const auto days = parseInteger("--demo-days", *call.demoDays, 1, kMostDemoDays);
    if (!days) {
        return tl::unexpected(days.error());
    }
    const auto folder = resourceFolder();
    if (!folder) {
        return tl::unexpected(folder.error());
    }
    const auto job = readFirstJob(*folder + "/demo");
    if (!job) {
        return tl::unexpected(job.error());
    }
    const auto procedures = shippedProcedures();
    if (!procedures) {
        return tl::unexpected(procedures.error());
    }
    DemoShop shop;
    for (const JobSeam& seam : job->seams) {
        auto order = orderOf(seam, *procedures);
        if (!order) {
            return tl::unexpected(order.error());
        }
        shop.orders.push_back(std::move(*order));
    }
    if (call.physics) {
        auto materials = shippedMaterials();
        if (!materials) {
            return tl::unexpected(materials.error());
        }
        shop.materials = std::move(*materials);
    }
    const auto plan = DemoDays::plan(std::move(shop), static_cast<int>(*days), options.seed);
    if (!plan) {
        return tl::unexpected(plan.error());
    }
    return runSeries(
        call, options.logPath, [&](std::int64_t i) { return plan->step(i); }, terminal);
}

Result<int> runRehearse(const RehearseCall& call, Terminal& terminal) {
    if (call.listFaults) {
        return listFaults(call, terminal);
    }
    const bool series = call.count || call.demoDays;
    if (series) {
        if (const auto fits = checkSeries(call); !fits) {
            return tl::unexpected(fits.error());
        }
    }
    const auto options = readOptions(call);
    if (!options) {
        return tl::unexpected(options.error());
    }
    if (series) {
        return call.count ? runCount(call, *options, terminal)
                          : runDemoDays(call, *options, terminal);
    }
    const auto speed = readSpeed(call);
    if (!speed) {
        return tl::unexpected(speed.error());
    }
    const auto clock = BootClock::make();
    if (!clock) {
        return tl::unexpected(clock.error());
    }
    std::optional<Bench> bench;
    if (!call.resume) {
        bench = options->order.bench.bench;
    }
    Show show(terminal, bench, call.saved);
    BootPacer trueTime(1);
    std::optional<BootPacer> pacer;
    if (*speed) {
        pacer.emplace(**speed);
    }
    RehearseTools tools;
    tools.machine = &*clock;
    tools.machinePacer = &trueTime;
    tools.pacer = pacer ? &*pacer : nullptr;
    tools.watcher = call.json ? nullptr : &show;
    const auto result = rehearse(*options, tools);
    if (!result) {
        return tl::unexpected(result.error());
    }
    if (call.json) {
        RecordExtras extras;
        extras.bench = bench ? &*bench : nullptr;
        extras.cues = true;
        std::string json = withText(recordJson(result->record, extras), "log", result->logPath);
        if (result->aside) {
            json = withText(json, "set_aside", result->aside->note);
        }
        if (result->bench) {
            json = withPhysics(json, *result->bench);
        }
        terminal.write(json);
    } else {
        showResult(*result, bench, terminal);
    }
    if (!result->notSaved.empty()) {
        return fail(ErrorCode::NotWritten, result->notSaved);
    }
    return 0;
}

void addFaults(CLI::App& words, RehearseCall& call) {
    words.add_option("--late-changeover", call.lateChangeover, "S past its limit, 0 to 86400");
    words.add_option("--early-release", call.earlyRelease, "MIN short of cooling, 0 to 1440");
    words.add_option("--short-soak", call.shortSoak, "S short of its target, 0 to 86400");
    words.add_option("--long-soak", call.longSoak, "S past its target, 0 to 86400");
    words.add_option("--slow-build-up", call.slowBuildUp, "S past its target, 0 to 86400");
    words.add_option("--backdate", call.backdate, "S that soak's start was tapped late, 0 to 10");
    words.add_option("--low-reading", call.lowReading, "corrected or left: the joining reading");
    words.add_option("--skip-check", call.skipCheck, "a check's CODE that is passed over");
    words.add_option("--abort-in", call.abortIn, "a PHASE in which the weld is stopped");
    words.add_flag("--missed-recheck", call.missedRecheck, "the scale is not read again");
    words.add_flag("--cold-plate", call.coldPlate, "the plate is 8 K under its window");
    words.add_flag("--thin-bead", call.thinBead, "alignment ends with two thirds of the bead");
    words.add_flag("--misaligned", call.misaligned, "the faces are out of line");
    words.add_flag("--take-back", call.takeBack, "plate out is tapped too early and taken back");
    words.add_option("--phone-call", call.phoneCall, "S that soak goes on meanwhile, 0 to 86400");
}

/// What happens to sheets, plate or air: with --physics only.
void addBenchFaults(CLI::App& words, RehearseCall& call) {
    words.add_flag("--soak-pressed", call.soakPressed, "physics: soak under alignment's pressure");
    words.add_option("--backed-off", call.backedOff, "physics: MM of air gap in soak, 0 to 20");
    words.add_flag(
        "--clock-from-contact", call.clockFromContact, "physics: soak counted from first contact");
    words.add_option("--draught", call.draught, "physics: TIMES still air's cooling, 0.1 to 10");
    words.add_flag("--slammed", call.slammed, "physics: together as fast as the wheel goes");
    words.add_option("--let-back", call.letBack, "physics: S after the lock the spring is let off");
    words.add_flag(
        "--not-followed", call.notFollowed, "physics: the lock gives way, nobody tops up");
    words.add_option("--plate-off", call.plateOff, "physics: K of its faces from its display");
    words.add_flag("--plate-dirty", call.plateDirty, "physics: a dirty plate that nobody wiped");
    words.add_option("--off-parallel", call.offParallel, "physics: MM at one end, 0 to 10");
    words.add_flag(
        "--top-bead-only", call.topBeadOnly, "physics: an edge leans, nobody looks below");
    words.add_option("--touched-edge", call.touchedEdge, "physics: PERCENT of the seam, where");
    words.add_flag("--film-left", call.filmLeft, "physics: the film is left on");
    words.add_option("--wrong-row", call.wrongRow, "physics: MM, the sheet the card was made for");
    words.add_flag("--kgf-for-n", call.kgfForN, "physics: the card took newtons for kgf");
    words.add_option("--cold-spot", call.coldSpot, "physics: K of a place where nobody measures");
}

} // namespace

void addRehearse(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<RehearseCall>();
    CLI::App* words = root.add_subcommand(
        "rehearse", "A virtual operator makes a whole weld, into a practice log.");
    addPlanOptions(*words, call->plan, false);
    words->add_option("--seam", call->seam, "the LABEL of a seam of the demo job: S1, S2, …");
    words->add_option("--log", call->log, "the practice log's FILE; else the user's own");
    words->add_option(
        "--seed", call->seed, "N of the operator's chance, 0 to 18446744073709551615");
    words->add_option(
        "--speed", call->speed, "times true time, 0.01 to 1000000; absent: without waiting");
    words->add_option(
        "--hand", call->hand, "% of his times for checks, release and inspection, 0 to 1000");
    words->add_option("--by", call->by, "who welds, as person:ID");
    words->add_flag("--true-time", call->trueTime, "by this machine's clock, waiting for it");
    words->add_flag("--resume", call->resume, "goes on with the log's open weld");
    words->add_option(
        "--after-reboot", call->afterReboot,
        "confirmed, unconfirmed or abort: a person's word on a weld that a reboot interrupted");
    words->add_flag("--physics", call->physics, "on the virtual bench: what the sheets really do");
    words->add_option("--skill", call->skill, "perfect, practised, trainee, or 0 to 100 (perfect)");
    words->add_option("--count", call->count, "N welds, 1 to 100000, each with the next seed");
    words->add_option("--demo-days", call->demoDays, "N working days of a demo shop, 1 to 60");
    words->add_flag("--list-faults", call->listFaults, "what he can get wrong, and who finds it");
    addFaults(*words, *call);
    addBenchFaults(*words, *call);
    words->add_flag("--saved", call->saved, "tells when each event is on disk");
    words->add_flag("--json", call->json, "the record as JSON, when it is done");
    commands.push_back({words, [call, &terminal] { return runRehearse(*call, terminal); }});
}

} // namespace seamclock
