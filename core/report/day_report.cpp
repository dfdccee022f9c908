#include "core/report/day_report.h"

#include "core/quality/coupons.h"
#include "core/report/coupon_text.h"
#include "core/report/day_list.h"
#include "core/report/plain_text.h"
#include "core/report/record_facts.h"

#include <fmt/format.h>
#include <map>
#include <set>
#include <vector>

namespace seamclock {

namespace {

std::string countsOf(const std::vector<JointLine>& lines) {
    std::map<std::string, int> counts;
    for (const JointLine& line : lines) {
        const std::string& judged = judgedOf(line); // no correction hides one that is out
        ++counts
            [line.phase == "damaged" ? "that can't be read"
             : judged.empty()        ? "still open"
                                     : judged];
    }
    std::string text;
    for (const auto& [word, count] : counts) {
        text += (text.empty() ? "" : ", ") + std::to_string(count) + " " + word;
    }
    return text;
}

/// "joints 7 and 9", which have events that no seal covers.
std::string notCovered(const std::vector<ReportJoint>& joints) {
    std::vector<std::string> numbers;
    for (const ReportJoint& joint : joints) {
        const auto events = joint.record ? static_cast<std::int64_t>(joint.record->events.size())
                                         : joint.line.events;
        if (joint.sealedToN < events && !joint.elsewhere) {
            numbers.push_back(std::to_string(joint.line.number));
        }
    }
    std::string text;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        text += (i == 0 ? "" : i + 1 == numbers.size() ? " and " : ", ") + numbers[i];
    }
    return numbers.size() == 1 ? "joint " + text : numbers.empty() ? text : "joints " + text;
}

std::string sealText(const SealFact& seal, const LogFacts& log) {
    const Person* by = findPerson(log.roster.people, seal.by);
    return headline("Seal of " + onOneLine(seal.day)) +
           aligned(
               {{"By", onOneLine(by == nullptr ? seal.by : by->name + " (" + by->id + ")")},
                {"At", toIsoLocal(seal.at.utc, seal.at.offset)},
                {"Rows", fmt::format("1..{}", seal.toSeq)},
                {"Fingerprint", seal.fingerprint},
                {"Key", seal.keyFingerprint}},
               0);
}

} // namespace

Result<std::string> dayReport(LogReader& reader, const std::string& day) {
    JointFilter filter;
    filter.fromDay = day;
    filter.toDay = day;
    const auto report = reportFacts(reader, filter);
    if (!report) {
        return tl::unexpected<Error>(report.error());
    }
    std::vector<JointLine> lines;
    std::vector<LineSaid> said;
    std::set<std::size_t> covering;
    for (const ReportJoint& joint : report->joints) {
        lines.insert(lines.begin(), joint.line); // the list has the newest first
        said.insert(said.begin(), joint.record ? saidOf(*joint.record) : LineSaid());
        covering.insert(joint.seals.begin(), joint.seals.end());
    }
    std::string text = headline("Day report, " + onOneLine(day));
    text += aligned(
        {{"Log", onOneLine(report->log.logId)},
         {"Joints",
          lines.empty() ? "none" : std::to_string(lines.size()) + ": " + countsOf(lines)}},
        0);
    if (!lines.empty()) {
        text += "\n" + dayListText(lines, said);
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
    bool sealed = false;
    for (std::size_t i = 0; i < report->log.seals.size(); ++i) {
        const SealFact& seal = report->log.seals[i];
        if (seal.day == day || covering.count(i) > 0) {
            text += "\n" + sealText(seal, report->log);
            sealed = true;
        }
    }
    const std::string open = notCovered(report->joints);
    if (!sealed) {
        text += "\nNot sealed.\n";
    } else if (!open.empty()) {
        text += "\nNot wholly covered by a seal: " + open + ".\n";
    }
    return text;
}

} // namespace seamclock
