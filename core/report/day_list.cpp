#include "core/report/day_list.h"

#include "core/report/plain_text.h"
#include "core/report/separated.h"
#include "core/report/wording.h"

#include <algorithm>
#include <fmt/format.h>
#include <variant>

namespace seamclock {
namespace {

std::string resultOf(const JointLine& line, const LineSaid& said) {
    std::string result = line.verdict.empty() ? codeInWords(line.phase) : line.verdict;
    if (line.phase == "aborted") {
        result += ", stopped";
    }
    if (!line.verdictNow.empty()) {
        result += "; by this program's rules: " + line.verdictNow;
    }
    if (!line.trouble.empty()) {
        result += (line.phase == "damaged" ? "; its events can't be read: " : "; ") + line.trouble;
    }
    if (line.findings > 0) {
        result += fmt::format(" ({} {})", line.findings, line.findings == 1 ? "reason" : "reasons");
    }
    if (!said.firstReason.empty()) {
        result += ": " + said.firstReason;
    }
    if (!said.decision.empty()) {
        result += "; " + codeInWords(said.decision) + " by " + said.decidedBy;
    }
    if (!said.signedOffBy.empty()) {
        result += "; signed off by " + said.signedOffBy;
    }
    return onOneLine(result);
}

} // namespace

std::string dayListText(const std::vector<JointLine>& lines, const std::vector<LineSaid>& said) {
    std::string text;
    std::size_t i = 0;
    while (i < lines.size()) {
        const std::string& day = lines[i].day;
        std::vector<std::vector<std::string>> rows = {
            {"joint", "UTC", "seam", "sheet", "bench", "result"}};
        for (; i < lines.size() && lines[i].day == day; ++i) {
            const JointLine& line = lines[i];
            rows.push_back(
                {std::to_string(line.number), utcTimeOfDay(line.openedUtc).substr(0, 8),
                 line.seam.empty() ? "-" : onOneLine(line.seam),
                 onOneLine(fmt::format(
                     "{} {} × {} mm", line.material, fromThousandths(line.thicknessUm),
                     fromThousandths(line.lengthUm))),
                 onOneLine(line.bench), resultOf(line, i < said.size() ? said[i] : LineSaid())});
        }
        text += (text.empty() ? "" : "\n") + headline(onOneLine(day)) + aligned(rows);
    }
    return text;
}

std::string dayListHeader() {
    return separatedRow({"number",     "weld",         "type",      "opened_utc", "day_local",
                         "offset_min", "seam",         "job",       "bench",      "opened_by",
                         "material",   "thickness_mm", "length_mm", "procedure",  "state",
                         "verdict",    "verdict_now",  "reasons",   "events",     "trouble",
                         "part",       "first_reason", "decision",  "decided_by", "signed_off_by"});
}

LineSaid saidOf(const WeldRecord& record) {
    LineSaid said;
    said.part = record.opened.part.value_or("");
    if (record.stored || record.aborted) {
        // In the order of the work: the first of those that gave the verdict its word.
        const auto& findings = record.verdict.findings;
        const auto worst = std::min_element(
            findings.begin(), findings.end(),
            [](const Finding& a, const Finding& b) { return a.grade < b.grade; });
        said.firstReason = worst == findings.end() ? "" : worst->text;
    }
    for (const Retained& one : record.decisions) {
        if (const auto* decided = std::get_if<Decided>(&one.d)) {
            said.decision = toString(decided->decision);
            said.decidedBy = one.by;
        } else if (const auto* done = std::get_if<SignedOff>(&one.d)) {
            said.signedOffBy +=
                (said.signedOffBy.empty() ? "" : "; ") + one.by + " as " + done->role;
        }
    }
    return said;
}

Result<LineReading> LineReading::open(const std::string& log) {
    auto reader = LogReader::open(log);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    return LineReading(std::move(*reader));
}

Result<LineSaid> LineReading::of(const JointLine& line) {
    const auto events = m_reader.weldEvents(line.weld);
    if (!events && events.error().code != ErrorCode::Damaged) {
        return tl::unexpected<Error>(events.error());
    }
    auto folded = events ? fold(*events) : Result<Weld>(tl::unexpected<Error>(events.error()));
    return folded ? saidOf(record(std::move(*folded))) : LineSaid{};
}

std::string dayListRow(const JointLine& line, const LineSaid& said) {
    return separatedRow(
        {std::to_string(line.number),
         line.weld,
         line.type,
         toIsoUtc(line.openedUtc),
         line.day,
         std::to_string(line.offset.count()),
         line.seam,
         line.job,
         line.bench,
         line.by,
         line.material,
         fromThousandths(line.thicknessUm),
         fromThousandths(line.lengthUm),
         line.procedure,
         line.phase,
         line.verdict,
         line.verdictNow,
         std::to_string(line.findings),
         std::to_string(line.events),
         line.trouble,
         said.part,
         said.firstReason,
         said.decision,
         said.decidedBy,
         said.signedOffBy});
}

} // namespace seamclock
