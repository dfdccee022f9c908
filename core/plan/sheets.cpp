#include "core/plan/sheets.h"

#include "core/base/plain_number.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace seamclock {

namespace {

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::string folded(std::string_view text) {
    std::string out(trimmed(text));
    std::transform(out.begin(), out.end(), out.begin(), [](char c) {
        return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    });
    return out;
}

/// What may be welded to what, before grades: PP-H, PP-B and PP-R are polypropylene, PE 80 and
/// PE 100 high-density polyethylene; every other name stands for itself.
std::string familyOf(std::string_view material) {
    std::string name = folded(material);
    name.erase(std::remove(name.begin(), name.end(), ' '), name.end());
    for (const char* each : {"PP", "PP-H", "PP-B", "PP-R", "PPH", "PPB", "PPR"}) {
        if (name == each) {
            return "PP";
        }
    }
    for (const char* each : {"PE", "PE-HD", "HDPE", "PEHD", "PE80", "PE100", "PE-80", "PE-100"}) {
        if (name == each) {
            return "PE-HD";
        }
    }
    return name;
}

std::string inMarks(std::string_view text) {
    return "\"" + std::string(text) + "\"";
}

std::string mm(std::int64_t um) {
    return plainNumber(static_cast<double>(um) / 1e3);
}

PlanWarning warning(const char* code, std::string text) {
    return {code, std::move(text), std::nullopt, std::nullopt, ""};
}

struct FlowRange {
    double low;
    double high;
    bool holds(double value) const { return low <= value && value <= high; }
};

// DVS 2207-1 on PE-HD, MFR 190/5 in g/10 min; seen.
constexpr std::array kPrintedFlows{FlowRange{0.3, 1.7}, FlowRange{0.2, 0.7}};
constexpr const char* kPrintedCondition = "190/5";
// Where no range is printed, "neighbouring groups" is taken as a factor of three between the two:
// our judgement.
constexpr double kNeighbours = 3;

bool inOnePrintedRange(double a, double b) {
    return std::any_of(kPrintedFlows.begin(), kPrintedFlows.end(), [&](const FlowRange& range) {
        return range.holds(a) && range.holds(b);
    });
}

std::string shown(const MeltFlow& flow) {
    return meltFlowText(flow.gPer10Min, flow.condition);
}

void judgeFlows(
    const MeltFlow& first, const MeltFlow& second, bool printed,
    std::vector<PlanWarning>& warnings) {
    if (first.condition != second.condition && !first.condition.empty() &&
        !second.condition.empty()) {
        warnings.push_back(warning(
            "mfr_unknown_condition", "melt flow rates " + shown(first) + " and " + shown(second) +
                                         " were measured differently and can't be compared"));
        return;
    }
    const auto isPrinted = [printed](const MeltFlow& flow) {
        return printed && (flow.condition.empty() || flow.condition == kPrintedCondition);
    };
    for (const MeltFlow& flow : {first, second}) {
        if (isPrinted(flow) && !inOnePrintedRange(flow.gPer10Min, flow.gPer10Min)) {
            warnings.push_back(warning(
                "mfr_outside_range",
                "melt flow rate " + shown(flow) +
                    " is outside 0.2 to 1.7 g/10 min (190/5), the ranges of DVS 2207-1"));
            break;
        }
    }
    const double low = std::min(first.gPer10Min, second.gPer10Min);
    const double high = std::max(first.gPer10Min, second.gPer10Min);
    if (isPrinted(first) && isPrinted(second) && inOnePrintedRange(low, high)) {
        return;
    }
    const bool bothPrinted = isPrinted(first) && isPrinted(second) && inOnePrintedRange(low, low) &&
                             inOnePrintedRange(high, high);
    if (bothPrinted || high > kNeighbours * low) {
        warnings.push_back(warning(
            "mfr_far_apart",
            "melt flow rates " + shown(first) + " and " + shown(second) + " are far apart: " +
                (bothPrinted ? "no one range of DVS 2207-1 (0.3 to 1.7, 0.2 to 0.7) holds both"
                             : "one is more than " + plainNumber(kNeighbours) +
                                   " times the other (our judgement)")));
    }
}

} // namespace

std::optional<MeltFlow> meltFlowIn(std::string_view text) {
    text = trimmed(text);
    MeltFlow flow;
    const auto [end, trouble] =
        std::from_chars(text.data(), text.data() + text.size(), flow.gPer10Min);
    if (trouble != std::errc() || !std::isfinite(flow.gPer10Min) || !(flow.gPer10Min > 0)) {
        return std::nullopt;
    }
    const std::string_view rest = text.substr(static_cast<std::size_t>(end - text.data()));
    if (!rest.empty() && rest.front() != ' ' && rest.front() != '(' && rest.front() != 'g') {
        return std::nullopt; // "0,5" or "0.3-0.7"
    }
    const auto open = rest.find('(');
    const auto close = rest.find(')', open == std::string_view::npos ? 0 : open);
    if (open != std::string_view::npos && close != std::string_view::npos) {
        flow.condition = std::string(trimmed(rest.substr(open + 1, close - open - 1)));
    }
    return flow;
}

bool isSamePlastic(std::string_view one, std::string_view other) {
    return familyOf(one) == familyOf(other);
}

Result<std::vector<PlanWarning>>
judgeSheets(const SheetFacts& first, const SheetFacts& second, std::string_view material) {
    for (const SheetFacts& sheet : {first, second}) {
        if (!isSamePlastic(sheet.material, material)) {
            return fail(
                ErrorCode::OutOfRange, "a sheet is of " + inMarks(sheet.material) +
                                           ", the procedure is for " + inMarks(material) +
                                           ": only the same plastic is welded");
        }
    }
    const std::int64_t thin = std::min(first.thicknessUm, second.thicknessUm);
    const std::int64_t apart = std::max(first.thicknessUm, second.thicknessUm) - thin;
    if (apart * 10 > thin) {
        return fail(
            ErrorCode::OutOfRange, "the sheets are " + mm(first.thicknessUm) + " and " +
                                       mm(second.thicknessUm) + " mm thick, " + mm(apart) +
                                       " mm apart; allowed a tenth of the thinner, " +
                                       mm(thin / 10) + " mm");
    }
    std::vector<PlanWarning> warnings;
    const bool otherName = folded(first.material) != folded(second.material);
    const bool otherGrade =
        first.grade && second.grade && folded(*first.grade) != folded(*second.grade);
    if (otherName || otherGrade) {
        const auto name = [&](const SheetFacts& sheet) {
            return inMarks(otherGrade ? *sheet.grade : sheet.material);
        };
        warnings.push_back(warning(
            "grades_differ",
            "the sheets' grades differ, " + name(first) + " and " + name(second) +
                ": colour does not matter, but conductive, flame-retardant or other types (PP-H, "
                "PP-B, PP-R) are not mixed unasked"));
    }
    const auto flow = [](const SheetFacts& sheet) {
        return sheet.mfr ? meltFlowIn(*sheet.mfr) : std::nullopt;
    };
    const auto one = flow(first);
    const auto two = flow(second);
    if (one && two) {
        judgeFlows(*one, *two, familyOf(material) == "PE-HD", warnings);
    }
    return warnings;
}

std::string meltFlowText(double gPer10Min, std::string_view condition) {
    return plainNumber(gPer10Min) + " g/10 min" +
           (condition.empty() ? "" : " (" + std::string(condition) + ")");
}

} // namespace seamclock
