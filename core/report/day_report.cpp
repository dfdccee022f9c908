#include "core/report/day_report.h"

#include "core/log/fact_codec.h"
#include "core/log/roster.h"
#include "core/log/seal.h"
#include "core/quality/coupons.h"
#include "core/report/coupon_text.h"
#include "core/report/day_list.h"
#include "core/report/plain_text.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <variant>

namespace seamclock {

namespace {

std::string countsOf(const std::vector<JointLine>& lines) {
    std::map<std::string, int> counts;
    for (const JointLine& line : lines) {
        ++counts[line.verdict.empty() ? "still open" : line.verdict];
    }
    std::string text;
    for (const auto& [word, count] : counts) {
        text += (text.empty() ? "" : ", ") + std::to_string(count) + " " + word;
    }
    return text;
}

/// "joints 7 and 9", which have rows behind that one.
Result<std::string>
behind(LogReader& reader, const std::vector<JointLine>& lines, std::int64_t seq) {
    std::vector<std::string> numbers;
    for (const JointLine& line : lines) {
        const auto span = reader.span(line.weld);
        if (!span) {
            return tl::unexpected<Error>(span.error());
        }
        if (*span && (*span)->last > seq) {
            numbers.push_back(std::to_string(line.number));
        }
    }
    std::reverse(numbers.begin(), numbers.end()); // the list has the newest first
    std::string text;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        text += (i == 0 ? "" : i + 1 == numbers.size() ? " and " : ", ") + numbers[i];
    }
    return numbers.size() == 1 ? "joint " + text : numbers.empty() ? text : "joints " + text;
}

} // namespace

Result<std::string> dayReport(LogReader& reader, const std::string& day) {
    JointFilter filter;
    filter.fromDay = day;
    filter.toDay = day;
    std::vector<JointLine> lines;
    const auto read = reader.eachJoint(filter, [&lines](const JointLine& line) {
        lines.push_back(line);
        return true;
    });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    const auto roster = readRoster(reader);
    if (!roster) {
        return tl::unexpected<Error>(roster.error());
    }
    const auto bodies = reader.bodies("day:" + day);
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    std::string text = headline("Day report, " + onOneLine(day));
    text += aligned(
        {{"Log", onOneLine(reader.logId())},
         {"Joints",
          lines.empty() ? "none" : std::to_string(lines.size()) + ": " + countsOf(lines)}},
        0);
    if (!lines.empty()) {
        text += "\n" + dayListText(lines);
    }
    const auto coupons = readCoupons(reader);
    if (!coupons) {
        return tl::unexpected<Error>(coupons.error());
    }
    for (auto line = lines.rbegin(); line != lines.rend(); ++line) { // the oldest first
        for (const CouponSeries& series : cutFrom(line->weld, *coupons)) {
            text += "\n" + couponText(series);
        }
    }
    std::int64_t sealedTo = 0;
    for (const std::string& body : *bodies) {
        const auto fact = factFromBody(body);
        const auto* seal = fact ? std::get_if<DaySealed>(&fact->d) : nullptr;
        if (seal == nullptr) {
            continue;
        }
        const Person* by = findPerson(roster->people, fact->by);
        sealedTo = std::max(sealedTo, seal->toSeq);
        text += "\n" + headline("Seal") +
                aligned(
                    {{"By", onOneLine(by == nullptr ? fact->by : by->name + " (" + by->id + ")")},
                     {"At", toIsoLocal(fact->at.utc, fact->at.offset)},
                     {"Rows", fmt::format("1..{}", seal->toSeq)},
                     {"Fingerprint", sealFingerprint(*fact)},
                     {"Key", fingerprint(seal->publicKey)}},
                    0);
    }
    if (sealedTo == 0) {
        return text + "\nNot sealed.\n";
    }
    const auto open = behind(reader, lines, sealedTo);
    if (!open) {
        return tl::unexpected<Error>(open.error());
    }
    if (!open->empty()) {
        text += "\nBehind the seal, and not covered by it: " + *open + ".\n";
    }
    return text;
}

} // namespace seamclock
