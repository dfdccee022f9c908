#include "core/report/record_text.h"

#include "core/report/coupon_text.h"
#include "core/report/heat_text.h"
#include "core/report/plain_text.h"
#include "core/report/record_reasons.h"
#include "core/report/set_actual.h"
#include "core/report/wording.h"
#include "core/weld/back_off.h"

#include <algorithm>
#include <fmt/format.h>

namespace seamclock {
namespace {

using Rows = std::vector<std::vector<std::string>>;

constexpr const char* kNotGiven = "not given";

std::string orNotGiven(const std::optional<std::string>& text) {
    return text && !text->empty() ? onOneLine(*text) : kNotGiven;
}

std::string sheetText(const Sheet& sheet) {
    std::string text = sheet.material + (sheet.grade ? " " + *sheet.grade : "") + ", " +
                       fromThousandths(sheet.thicknessUm) + " mm, maker " +
                       (sheet.maker.empty() ? kNotGiven : sheet.maker) + ", batch " +
                       (sheet.batch.empty() ? kNotGiven : sheet.batch);
    if (sheet.mfr) {
        text += ", melt flow " + *sheet.mfr;
    }
    return onOneLine(text);
}

std::string sizeText(const WeldOpened& opened, const WeldPlan& plan) {
    std::string text = fmt::format(
        "{} × {} mm", fromThousandths(plan.thicknessUm), fromThousandths(plan.lengthUm));
    if (opened.lengthsUm.size() > 1) {
        text += " (";
        for (std::size_t i = 0; i < opened.lengthsUm.size(); ++i) {
            text += (i == 0 ? "" : " + ") + fromThousandths(opened.lengthsUm[i]);
        }
        text += ")";
    }
    return text;
}

/// Who signed last on one of the two lines that the trade has: the welder's, and that of whoever
/// answers for him (a foreman, a supervisor).
std::string signedOffBy(const WeldRecord& record, bool welder) {
    std::string text = "not yet";
    for (const Retained& decision : record.decisions) {
        const auto* signedOff = std::get_if<SignedOff>(&decision.d);
        if (signedOff != nullptr &&
            (signedOff->role == "welder" || signedOff->role == "operator") == welder) {
            text = fmt::format(
                "{}, {} (event {})", onOneLine(decision.by), toIsoUtc(decision.at.utc), decision.n);
            if (const std::int64_t changed = changedAfter(decision.n, record); changed != 0) {
                text += fmt::format(", before the change of event {}", changed);
            }
        }
    }
    return text;
}

std::string_view guardInWords(Surroundings::Guard guard) {
    switch (guard) {
    case Surroundings::Guard::None:
        return "no weather guard noted";
    case Surroundings::Guard::Asked:
        return "weather guard asked for, not looked at";
    case Surroundings::Guard::Seen:
        return "seam shielded";
    case Surroundings::Guard::LeftOut:
        return "the check of the weather guard passed over";
    }
    return {};
}

std::string headText(const WeldRecord& record) {
    const WeldOpened& opened = record.opened;
    Rows rows = {
        {"Weld", onOneLine(record.weld)},
        {"Date", toIsoUtc(record.openedAt.utc)},
        {"Order", orNotGiven(opened.job)},
        {"Part or seam", opened.part && opened.seam
                             ? onOneLine(*opened.part + ", " + *opened.seam)
                             : orNotGiven(opened.part ? opened.part : opened.seam)},
        {"Welder", onOneLine(record.openedBy)},
        {"Bench", onOneLine(opened.bench)},
        {"Procedure", onOneLine(record.plan.procedure + ", edition " + record.plan.edition)}};
    if (opened.reweldOf) {
        const std::string lost =
            opened.lostUm ? fmt::format(", {} mm cut away", fromThousandths(*opened.lostUm)) : "";
        rows.insert(rows.begin() + 1, {"Welds again", onOneLine(*opened.reweldOf) + lost});
    }
    for (std::size_t i = 0; i < opened.sheets.size(); ++i) {
        rows.push_back({fmt::format("Sheet {}", i + 1), sheetText(opened.sheets[i])});
    }
    rows.push_back({"Size", sizeText(opened, record.plan)});
    const Surroundings air = surroundings(record);
    rows.push_back(
        {"Shop",
         fmt::format("{} °C, {}", fromThousandths(air.ambientMc), guardInWords(air.guard))});
    for (const std::string& flag : opened.flags) {
        rows.push_back({"Note", codeInWords(flag)});
    }
    rows.push_back({"State", codeInWords(record.phaseNow)});
    rows.push_back(
        {"On the sheet",
         record.numberedAt
             ? fmt::format("number {}, since {}", opened.number, toIsoUtc(record.numberedAt->utc))
             : "number not written on it yet"});
    rows.push_back({"Signed, welder", signedOffBy(record, true)});
    rows.push_back({"Signed, supervisor", signedOffBy(record, false)});
    return aligned(rows);
}

/// Without its unit, which stands behind the next value.
std::string bare(std::int64_t value, const SetActual& row) {
    return row.unit == "Pa" ? fromMillionths(value, 6) : fromThousandths(value);
}

std::string limits(const SetActual& row, const WeldPlan& plan) {
    const auto value = [&](std::int64_t v) { return valueInWords(v, row.unit, plan); };
    std::string text = row.set ? value(*row.set) : "";
    if (row.low && row.high) {
        text +=
            fmt::format("{}{} to {}", row.set ? ", " : "", bare(*row.low, row), value(*row.high));
    } else if (row.low) {
        text += (row.set ? ", at least " : "at least ") + value(*row.low);
    } else if (row.high) {
        text += (row.set ? ", at most " : "at most ") + value(*row.high);
    }
    return text.empty() ? "-" : text;
}

/// A check's words tell what to do; here the shorter name of what was read stands.
std::string itemInWords(const std::string& item) {
    if (item == "plate_temperature") {
        return "plate on its face";
    }
    if (item == "gap" || item == "clamping_gap") {
        return item == "gap" ? "gap" : "gap, second sheet";
    }
    if (item == "scale_zero") {
        return "scale without load";
    }
    if (item == "alignment_bead") {
        return "bead in alignment";
    }
    if (item == "bead_k") {
        return "bead K";
    }
    if (item == "misalignment") {
        return "faces out of line";
    }
    return codeInWords(item);
}

std::string setAndActualText(const WeldRecord& record, const Bench* bench) {
    Rows rows = {{"", "set", "actual", "event"}};
    for (const SetActual& row : setAndActual(record, bench)) {
        std::string actual = row.actual ? valueInWords(*row.actual, row.unit, record.plan) : "-";
        if (const std::string place = placeInWords(row); !place.empty()) {
            actual += " (" + onOneLine(place) + ")";
        }
        if (row.was) {
            actual += fmt::format(
                ", was {} [{}]", valueInWords(*row.was, row.unit, record.plan), row.correctedBy);
        }
        rows.push_back(
            {itemInWords(row.item), limits(row, record.plan), actual,
             row.n == 0 ? "" : std::to_string(row.n)});
    }
    return "\nSet and actual\n" + aligned(rows);
}

std::string planned(const PhaseRecord& phase) {
    std::string text = phase.target ? spokenTime(*phase.target) : "";
    if (phase.low && phase.high) {
        text += fmt::format(
            "{}{} to {}", text.empty() ? "" : ", ", spokenTime(*phase.low),
            spokenTime(*phase.high, Seconds::Down));
    } else if (phase.low) {
        text += (text.empty() ? "at least " : ", at least ") + spokenTime(*phase.low);
    } else if (phase.high) {
        text += (text.empty() ? "at most " : ", at most ") + spokenTime(*phase.high, Seconds::Down);
    }
    return text.empty() ? "by the bead" : text;
}

std::string took(const std::optional<WeldTime>& time) {
    if (!time) {
        return "-";
    }
    return time->lo == time->hi ? exactTime(time->lo)
                                : fmt::format("{} to {}", exactTime(time->lo), exactTime(time->hi));
}

std::string timesText(const WeldRecord& record) {
    Rows rows = {{"", "set", "actual", "from (UTC)", "events"}};
    for (const PhaseRecord& phase : record.phases) {
        rows.push_back(
            {codeInWords(phase.phase), planned(phase), took(phase.took),
             utcTimeOfDay(phase.from.utc),
             phase.toN == 0 ? fmt::format("{} to -", phase.fromN)
                            : fmt::format("{} to {}", phase.fromN, phase.toN)});
    }
    return "\nTimes\n" + aligned(rows);
}

std::string listText(const char* title, const std::vector<Retained>& list, const WeldPlan& plan) {
    if (list.empty()) {
        return "";
    }
    Rows rows;
    rows.reserve(list.size());
    for (const Retained& entry : list) {
        rows.push_back(
            {fmt::format("event {}", entry.n), utcTimeOfDay(entry.at.utc),
             eventInWords(entry.d, plan)});
    }
    return fmt::format("\n{}\n{}", title, aligned(rows));
}

std::string joined(const std::string& prefix, const std::string& text) {
    const std::size_t indent = columnsOf(prefix);
    return prefix + wrapped(text, indent) + "\n";
}

std::string eventsText(const WeldRecord& record, bool withCues) {
    std::string text = withCues ? "\nEvents, and the signals due between them\n" : "\nEvents\n";
    const std::vector<CueDue> cues = withCues ? cueHistory(record.events) : std::vector<CueDue>();
    auto cue = cues.begin();
    for (const Event& event : record.events) {
        for (; cue != cues.end() && cue->afterN < event.n; ++cue) {
            text += cueLine(cue->utc, cue->cue);
        }
        text += eventLine(event, record.events.front(), record.plan);
    }
    return text;
}

std::string sourcesText(const WeldPlan& plan) {
    std::string text = "\nWhere the plan's values come from\n";
    for (const std::string& line : sourcesInWords(plan)) {
        text += joined("  - ", line);
    }
    return plan.sources.empty() ? "" : text;
}

std::string
reasonLines(const std::vector<std::string>& grades, const std::vector<std::string>& texts) {
    Rows rows;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        rows.push_back({grades[i], onOneLine(texts[i])});
    }
    return aligned(rows);
}

} // namespace

std::string eventLine(const Event& event, const Event& opening, const WeldPlan& plan) {
    std::string since;
    if (event.at.bootId == opening.at.bootId) {
        since = exactTime(event.at.boot - opening.at.boot);
    }
    return joined(
        fmt::format("  {:>3}  {}  {:>11}  ", event.n, utcTimeOfDay(event.at.utc), since),
        eventInWords(event.d, plan));
}

std::string cueLine(Milliseconds utc, const Cue& cue) {
    return joined(fmt::format("       {}           >>  ", utcTimeOfDay(utc)), cueInWords(cue));
}

std::string verdictText(const WeldRecord& record) {
    std::string text = "Verdict: " + std::string(toString(record.verdict.word)) + "\n";
    std::vector<std::string> grades;
    std::vector<std::string> texts;
    for (const Finding& finding : record.verdict.findings) {
        grades.emplace_back(toString(finding.grade));
        texts.push_back(finding.text);
    }
    text += reasonLines(grades, texts);
    const std::string now(toString(record.verdict.word));
    if (!record.stored) {
        return text;
    }
    std::vector<std::string> storedGrades;
    std::vector<std::string> storedTexts;
    for (const StoredReason& reason : record.stored->reasons) {
        storedGrades.push_back(reason.grade);
        storedTexts.push_back(reason.text.empty() ? codeInWords(reason.code) : reason.text);
    }
    if (record.stored->verdict == now && storedGrades == grades && storedTexts == texts) {
        return text;
    }
    text += fmt::format(
        "Stored at closing, by rules {}: {}\n", record.stored->rules,
        onOneLine(record.stored->verdict));
    return text + reasonLines(storedGrades, storedTexts);
}

std::string recordText(const WeldRecord& record, const RecordExtras& extras) {
    std::string text =
        headline(fmt::format("Joint {} ({})", record.opened.number, toString(record.opened.type)));
    text += verdictText(record) + "\n" + headText(record);
    text += setAndActualText(record, extras.bench) + timesText(record);
    if (const auto backOff = backOffIn(record.readings, record.plan)) {
        text += fmt::format(
            "Alignment: backed off after overshoot, from {} to {}\n",
            valueInWords(backOff->overMilli, "milli", record.plan),
            valueInWords(backOff->backMilli, "milli", record.plan));
    }
    if (extras.heat != nullptr) {
        text += recordHeatText(*extras.heat, record.plan);
    }
    text += listText("Reasons given", record.reasons, record.plan);
    text += listText("Remarks", record.remarks, record.plan);
    text += listText("Photos", record.photos, record.plan);
    text += listText("Decisions of people", record.decisions, record.plan);
    if (extras.coupons != nullptr) {
        for (const CouponSeries& series : *extras.coupons) {
            text += "\n" + couponText(series);
        }
    }
    text += sourcesText(record.plan);
    return extras.events ? text + eventsText(record, extras.cues) : text;
}

} // namespace seamclock
