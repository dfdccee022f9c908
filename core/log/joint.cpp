#include "core/log/joint.h"

#include "core/weld/state.h"

#include <set>
#include <variant>

namespace seamclock {

namespace {

void add(std::string& text, const std::string& words) {
    if (!words.empty()) {
        text += text.empty() ? "" : "\n";
        text += words;
    }
}

} // namespace

JointKey keyOf(const JointLine& line) {
    return {line.openedUtc.count(), line.number, line.weld};
}

const std::string& valueOf(const JointLine& line, JointField field) {
    switch (field) {
    case JointField::Bench:
        return line.bench;
    case JointField::By:
        return line.by;
    case JointField::Material:
        return line.material;
    case JointField::Verdict:
        break;
    }
    return judgedOf(line);
}

const std::string& judgedOf(const JointLine& line) {
    const bool worse = line.verdictNow == toString(VerdictWord::OutOfLimits) ||
                       (line.verdictNow == toString(VerdictWord::Incomplete) &&
                        line.verdict != toString(VerdictWord::OutOfLimits)) ||
                       (line.verdictNow == toString(VerdictWord::WithRemarks) &&
                        line.verdict == toString(VerdictWord::WithinLimits));
    return worse ? line.verdictNow : line.verdict;
}

JointLine lineOf(const WeldRecord& record) {
    JointLine line;
    line.weld = record.weld;
    line.number = record.opened.number;
    line.type = toString(record.opened.type);
    line.openedUtc = record.openedAt.utc;
    line.offset = record.openedAt.offset;
    line.day = toIsoDate(record.openedAt.utc, record.openedAt.offset);
    line.bench = record.opened.bench;
    line.by = record.openedBy;
    line.seam = record.opened.seam.value_or("");
    line.job = record.opened.job.value_or("");
    if (!record.opened.sheets.empty()) {
        line.material = record.opened.sheets.front().material;
    }
    line.thicknessUm = record.plan.thicknessUm;
    line.lengthUm = record.plan.lengthUm;
    line.procedure = record.plan.procedure;
    line.phase = record.phaseNow;
    line.open = !record.stored && !record.aborted;
    line.events = static_cast<std::int64_t>(record.events.size());
    if (!line.open) {
        const std::string now(toString(record.verdict.word));
        line.verdict = record.stored ? record.stored->verdict : now;
        line.verdictNow = now == line.verdict ? "" : now;
        line.findings = static_cast<std::int64_t>(record.verdict.findings.size());
    }
    return line;
}

std::string textOf(const WeldRecord& record) {
    std::string text;
    add(text, std::to_string(record.opened.number));
    add(text, record.opened.seam.value_or(""));
    add(text, record.opened.job.value_or(""));
    add(text, record.opened.part.value_or(""));
    add(text, record.opened.bench);
    std::set<std::string_view> people;
    for (const Event& event : record.events) {
        if (people.insert(event.by).second) {
            add(text, event.by);
        }
    }
    for (const Sheet& sheet : record.opened.sheets) {
        add(text, sheet.material);
        add(text, sheet.grade.value_or(""));
        add(text, sheet.maker);
        add(text, sheet.batch);
        add(text, sheet.mfr.value_or(""));
    }
    for (const Event& event : record.events) {
        const auto* corrected = std::get_if<ValueCorrected>(&event.d);
        if (corrected != nullptr && corrected->field.rfind("sheets.", 0) == 0) {
            add(text, corrected->was); // a batch that was corrected is still found
        }
    }
    for (const Retained& remark : record.remarks) {
        if (const auto* made = std::get_if<RemarkMade>(&remark.d)) {
            add(text, made->text);
        }
    }
    for (const Retained& reason : record.reasons) {
        if (const auto* given = std::get_if<ReasonGiven>(&reason.d)) {
            add(text, given->choice);
            add(text, given->text.value_or(""));
        }
    }
    for (const Retained& decision : record.decisions) {
        if (const auto* decided = std::get_if<Decided>(&decision.d)) {
            add(text, std::string(toString(decided->decision)));
            add(text, decided->reason);
        }
    }
    if (record.aborted) {
        add(text, record.aborted->reason);
        add(text, record.aborted->text);
    }
    return text;
}

} // namespace seamclock
