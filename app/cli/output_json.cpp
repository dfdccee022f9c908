#include "app/cli/output_json.h"

#include "core/base/json.h"
#include "core/procedure/cells.h"

#include <cmath>

namespace seamclock {
namespace {

std::string printed(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

double inMm(Length length) {
    return std::round(inMicrometres(length)) / 1e3;
}

Json summary(const ProcedureDocument& one) {
    const Procedure& p = one.procedure;
    return {
        {"id", p.id},
        {"title", p.title},
        {"material", p.material},
        {"standard", p.standard},
        {"edition", p.edition},
        {"thickness_mm", {{"min", inMm(p.thinnest())}, {"max", inMm(p.thickest())}}},
        {"sha256", one.sha256}};
}

Json parsed(const std::string& bytes) {
    return Json::parse(bytes, nullptr, false);
}

} // namespace

std::string proceduresJson(const std::vector<ProcedureDocument>& procedures) {
    Json list = Json::array();
    for (const ProcedureDocument& one : procedures) {
        list.push_back(summary(one));
    }
    return printed({{"procedures", std::move(list)}});
}

std::string procedureJson(const ProcedureDocument& procedure) {
    Json json = summary(procedure);
    json["cells"] = Json::array();
    for (const Cell& cell : cellsOf(procedure.procedure)) {
        json["cells"].push_back(
            {{"cell", cell.name},
             {"says", cell.content},
             {"source", cell.source.text},
             {"standing", toString(cell.source.standing)}});
    }
    json["document"] = parsed(procedure.bytes);
    return printed(json);
}

std::string findingsJson(const std::string& file, const std::vector<ProcedureFinding>& findings) {
    Json list = Json::array();
    for (const ProcedureFinding& finding : findings) {
        list.push_back(
            {{"line", finding.line}, {"field", finding.field}, {"reason", finding.reason}});
    }
    const bool sound = findings.empty();
    return printed({{"file", file}, {"sound", sound}, {"findings", std::move(list)}});
}

std::string jobCsvJson(const std::string& file, const JobCsv& job) {
    Json problems = Json::array();
    for (const JobCsvProblem& problem : job.problems) {
        problems.push_back(
            {{"line", problem.line}, {"column", problem.column}, {"reason", problem.text}});
    }
    Json seams = Json::array();
    for (const JobSeam& seam : job.seams) {
        Json one = {{"label", seam.label},          {"material", seam.sheets.front().material},
                    {"procedure", seam.procedure},  {"thickness_mm", seam.thicknessMm},
                    {"lengths_mm", seam.lengthsMm}, {"shielded", seam.shielded}};
        if (!seam.what.empty()) {
            one["what"] = seam.what;
        }
        if (!seam.bench.empty()) {
            one["bench"] = seam.bench;
        }
        if (seam.dragN) {
            one["drag_N"] = *seam.dragN;
        }
        if (seam.ambientC) {
            one["ambient_C"] = *seam.ambientC;
        }
        seams.push_back(std::move(one));
    }
    return printed(
        {{"file", file},
         {"sound", job.isSound()},
         {"seams", std::move(seams)},
         {"problems", std::move(problems)},
         {"problems_left_out", job.more}});
}

std::string benchJson(const BenchDocument& bench) {
    return printed(
        {{"id", bench.bench.id},
         {"name", bench.bench.name},
         {"rate_N_per_unit", inNewtons(bench.bench.scale.rate())},
         {"sha256", bench.sha256},
         {"document", parsed(bench.bytes)}});
}

std::string scaleFitJson(const ScaleFit& fit) {
    Json points = Json::array();
    for (std::size_t i = 0; i < fit.points.size(); ++i) {
        const CalibrationPoint& point = fit.points[i];
        points.push_back(
            {{"reading", point.reading},
             {"force_N", point.force},
             {"residual_N", fit.line.residuals[i]},
             {"confidence_95_N", fit.line.confidenceAt(point.reading)},
             {"prediction_95_N", fit.line.predictionAt(point.reading)}});
    }
    return printed(
        {{"points", fit.points.size()},
         {"rate_N_per_unit", fit.rate},
         {"rate_uncertainty_percent", fit.rateUncertaintyPercent},
         {"rate_sd_N_per_unit", fit.line.slopeSd},
         {"rate_95_N_per_unit", fit.line.t95 * fit.line.slopeSd},
         {"zero", fit.zero},
         {"zero_sd", fit.zeroSd},
         {"zero_95", fit.line.t95 * fit.zeroSd},
         {"intercept_N", fit.line.intercept},
         {"intercept_sd_N", fit.line.interceptSd},
         {"residual_sd_N", fit.line.residualSd},
         {"student_t_95", fit.line.t95},
         {"worst_residual_N", fit.worstResidual},
         {"allowed_residual_N", allowedResidual(fit)},
         {"range", {{"min", fit.lowestReading}, {"max", fit.highestReading}}},
         {"residuals_N", fit.line.residuals},
         {"fitted", std::move(points)}});
}

std::string verifyJson(const VerifyReport& report, const PhotoCheck& photos) {
    Json json = {
        {"sound", report.ok},    {"world", report.world},         {"log_id", report.logId},
        {"rows", report.rows},   {"head", report.head},           {"signed_to", report.signedTo},
        {"welds", report.welds}, {"documents", report.documents}, {"covered", report.covered},
        {"notes", report.notes}, {"sealed_to", report.sealedTo}};
    Json seals = Json::array();
    for (const FoundSeal& seal : report.seals) {
        seals.push_back(
            {{"seq", seal.seq},
             {"day", seal.day},
             {"person", seal.person},
             {"name", seal.name},
             {"to_seq", seal.toSeq},
             {"fingerprint", seal.fingerprint},
             {"key_fingerprint", seal.keyFingerprint}});
    }
    json["seals"] = std::move(seals);
    if (report.finding) {
        json["finding"] = {
            {"chain", report.finding->chain},
            {"seq", report.finding->seq},
            {"reason", report.finding->reason}};
    }
    Json findings = Json::array();
    for (const PhotoFinding& one : photos.findings) {
        Json shown = {
            {"joint", one.number},
            {"n", one.n},
            {"file", one.file},
            {"expected", one.expected},
            {"reason", one.sentence}};
        if (!one.found.empty()) {
            shown["found"] = one.found;
        }
        findings.push_back(std::move(shown));
    }
    json["photos"] = {{"named", photos.named}, {"findings", std::move(findings)}};
    if (!photos.note.empty()) {
        json["photos"]["note"] = photos.note;
    }
    return printed(json);
}

std::string peopleJson(const std::string& log, const Roster& roster) {
    Json people = Json::array();
    for (const Person& person : roster.people) {
        Json one = {
            {"id", person.id},
            {"name", person.name},
            {"role", nameOf(person.role)},
            {"active", person.active}};
        const auto noted = roster.certificate.find(person.id);
        if (noted != roster.certificate.end()) {
            Json held = Json::array();
            for (const Certificate& each : noted->second) {
                held.push_back({{"scope", scopeOf(each)}, {"until", each.until}});
            }
            one["certificate"] = held.back(); // noted last
            one["certificates"] = std::move(held);
        }
        const auto key = roster.key.find(person.id);
        if (key != roster.key.end()) {
            one["public_key"] = key->second;
            one["key_fingerprint"] = fingerprint(key->second);
        }
        people.push_back(std::move(one));
    }
    return printed({{"log", log}, {"people", std::move(people)}});
}

std::string sealJson(const Fact& sealed, const std::string& day) {
    const auto& seal = std::get<DaySealed>(sealed.d);
    return printed(
        {{"day", day},
         {"by", sealed.by},
         {"log_id", seal.log},
         {"to_seq", seal.toSeq},
         {"head", seal.head},
         {"public_key", seal.publicKey},
         {"signature", seal.signature},
         {"fingerprint", sealFingerprint(sealed)},
         {"key_fingerprint", fingerprint(seal.publicKey)}});
}

std::string evidenceReportJson(const EvidenceReport& report) {
    Json json = {
        {"sound", report.ok},
        {"log_id", report.logId},
        {"world", report.world},
        {"weld", report.weld},
        {"rows", report.rows}};
    if (!report.ok) {
        json["finding"] = report.finding;
        return printed(json);
    }
    json["number"] = report.number;
    json["verdict"] = report.verdict;
    json["other_words"] = report.otherWords;
    json["sealed"] = report.sealed;
    json["by"] = report.by;
    json["public_key"] = report.publicKey;
    json["key_fingerprint"] = report.keyFingerprint;
    if (report.sealed) {
        json["day"] = report.day;
        json["fingerprint"] = report.fingerprint;
    }
    return printed(json);
}

namespace {

Json copyJson(const LogCopy& copy, const PhotosCopied& photos) {
    return {
        {"file", copy.file},
        {"world", copy.world},
        {"log_id", copy.logId},
        {"rows", copy.rows},
        {"head", copy.head},
        {"bytes", copy.bytes},
        {"photos",
         {{"copied", photos.copied}, {"there", photos.there}, {"damaged", photos.damaged}}}};
}

} // namespace

std::string backupJson(
    const LogCopy& copy, const PhotosCopied& photos, const std::vector<std::string>& removed,
    std::size_t waiting) {
    Json json = copyJson(copy, photos);
    json["removed"] = removed;
    json["rows_waiting"] = waiting;
    return printed(json);
}

std::string restoreJson(
    const LogCopy& copy, const PhotosCopied& photos, std::int64_t newest, std::int64_t next) {
    Json json = copyJson(copy, photos);
    json["newest_joint"] = newest;
    json["next_number"] = next;
    return printed(json);
}

std::string importJson(const ImportReport& report) {
    Json chains = Json::array();
    for (const ImportedChain& one : report.chains) {
        chains.push_back(
            {{"chain", one.chain},
             {"log_id", one.logId},
             {"added", one.added},
             {"to_seq", one.toSeq},
             {"head", one.head}});
    }
    Json conflicts = Json::array();
    for (const ImportConflict& one : report.conflicts) {
        conflicts.push_back(
            {{"subject", one.subject}, {"n", one.n}, {"chain", one.chain}, {"other", one.other}});
    }
    return printed(
        {{"world", report.world},
         {"rows", report.rows},
         {"joints", report.joints},
         {"documents", report.documents},
         {"chains", std::move(chains)},
         {"conflicts", std::move(conflicts)}});
}

std::string interruptedJson(const std::string& log, const std::vector<InterruptedWeld>& welds) {
    Json list = Json::array();
    for (const InterruptedWeld& one : welds) {
        Json json = {{"weld", one.weld}, {"next", one.next}};
        if (!one.trouble.empty()) {
            json["trouble"] = one.trouble;
            list.push_back(std::move(json));
            continue;
        }
        json["number"] = one.number;
        json["phase"] = one.phase;
        json["events"] = one.events;
        json["clock"] = one.clock;
        if (!one.seam.empty()) {
            json["seam"] = one.seam;
        }
        const auto add = [&json](
                             const char* key, const std::optional<Milliseconds>& low,
                             const std::optional<Milliseconds>& high) {
            if (low && high) {
                json[key] = {
                    {"low", static_cast<double>(low->count()) / 1e3},
                    {"high", static_cast<double>(high->count()) / 1e3}};
            }
        };
        add("in_phase_s", one.inPhaseLow, one.inPhaseHigh);
        add("left_s", one.leftLow, one.leftHigh);
        if (one.bridge) {
            add("power_off_s", one.bridge->lo, one.bridge->hi);
            json["power_off_basis"] = toString(one.bridge->basis);
            json["can_be_confirmed"] = one.cannotConfirm.empty();
        }
        list.push_back(std::move(json));
    }
    return printed({{"log", log}, {"open", std::move(list)}});
}

std::string jointsJson(
    const std::string& log, const std::string& world, const std::string& logId,
    const std::vector<std::string>& joints) {
    Json list = Json::array();
    for (const std::string& joint : joints) {
        list.push_back(parsed(joint));
    }
    return printed(
        {{"log", log}, {"world", world}, {"log_id", logId}, {"joints", std::move(list)}});
}

std::string withText(const std::string& object, const std::string& key, const std::string& text) {
    Json json = parsed(object);
    json[key] = text;
    return printed(json);
}

} // namespace seamclock
