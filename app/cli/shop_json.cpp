#include "app/cli/shop_json.h"

#include "core/base/json.h"
#include "core/report/coupon_text.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

std::string printed(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

double inSeconds(Milliseconds time) {
    return static_cast<double>(time.count()) / 1e3;
}

double inThousands(std::int64_t thousandths) {
    return static_cast<double>(thousandths) / 1e3;
}

/// To four significant places after the dot, as nobody reads more.
double rounded(double value) {
    return std::round(value * 1e4) / 1e4;
}

Json jointBrief(const JointLine& line) {
    Json out = {{"joint", line.number}, {"weld", line.weld},   {"day", line.day},
                {"bench", line.bench},  {"state", line.phase}, {"by", line.by}};
    if (!line.seam.empty()) {
        out["seam"] = line.seam;
    }
    if (!line.verdict.empty()) {
        out["verdict"] = line.verdict;
    }
    return out;
}

Json progressList(const JobProgress& progress) {
    Json seams = Json::array();
    for (const SeamProgress& seam : progress.seams) {
        Json joints = Json::array();
        for (const SeamJoint& joint : seam.joints) {
            Json one = jointBrief(joint.line);
            if (joint.decision) {
                one["decision"] = toString(*joint.decision);
            }
            joints.push_back(std::move(one));
        }
        Json one = {
            {"seam", seam.label}, {"state", toString(seam.state)}, {"joints", std::move(joints)}};
        if (!seam.why.empty()) {
            one["reason"] = seam.why;
        }
        seams.push_back(std::move(one));
    }
    return seams;
}

Json sheetJson(const SheetBatch& sheet) {
    Json out = {
        {"sheet", sheet.sheet},
        {"material", sheet.material},
        {"maker", sheet.maker},
        {"batch", sheet.batch}};
    if (!sheet.grade.empty()) {
        out["grade"] = sheet.grade;
    }
    if (sheet.corrected) {
        out["corrected"] = true;
    }
    if (sheet.overruled) {
        out["overruled"] = true;
    }
    return out;
}

Json chartJson(const ShopChart& chart, std::size_t mostFindings, bool points) {
    Json out = {{"measure", toString(chart.measure)},
                {"unit", unitOf(chart.measure)},
                {"bench", chart.joints.bench},
                {"by", chart.joints.by},
                {"procedure", chart.joints.procedure},
                {"thickness_mm", inThousands(chart.joints.thicknessUm)},
                {"points", chart.values.size()}};
    if (chart.limits) {
        out["mean"] = rounded(chart.limits->mean);
        out["lower"] = rounded(chart.limits->lower);
        out["upper"] = rounded(chart.limits->upper);
        out["mean_range"] = rounded(chart.limits->meanRange);
        out["upper_range"] = rounded(chart.limits->upperRange);
        out["provisional"] = chart.values.size() < kFirmLimits;
    }
    if (chart.measure == JointMeasure::Alignment) {
        out["plate_cold_or_dirty"] = chart.plateColdOrDirty;
    }
    const std::size_t left = chart.findings.size() - std::min(chart.findings.size(), mostFindings);
    Json findings = Json::array();
    for (std::size_t i = left; i < chart.findings.size(); ++i) {
        const ChartFinding& finding = chart.findings[i];
        findings.push_back(
            {{"sign", toString(finding.sign)},
             {"from_joint", chart.numbers[finding.from]},
             {"to_joint", chart.numbers[finding.to]},
             {"to_utc", toIsoUtc(Milliseconds(chart.openedUtcMs[finding.to]))},
             {"value", rounded(chart.values[finding.to])}});
    }
    out["findings"] = std::move(findings);
    out["findings_left_out"] = left;
    if (points) {
        out["values"] = chart.values;
        out["joints"] = chart.numbers;
    }
    return out;
}

} // namespace

std::string jobDayJson(const std::string& file, const JobDay& day, const Instant& now) {
    const auto who = [&](const std::optional<std::size_t>& person) {
        return person ? day.work.people[*person] : std::string();
    };
    Json stretches = Json::array();
    for (const DayStretch& one : day.plan.stretches) {
        Json json = {
            {"kind", toString(one.kind)},
            {"seam", one.label},
            {"bench", day.work.benches[one.bench].id},
            {"from_s", inSeconds(one.from)},
            {"to_s", inSeconds(one.to)},
            {"from_local", toIsoLocal(now.utc + one.from, now.offset)}};
        if (one.person) {
            json["person"] = who(one.person);
        }
        if (one.trial) {
            json["trial"] = true;
        }
        stretches.push_back(std::move(json));
    }
    Json impossible = Json::array();
    for (const DayImpossible& one : day.plan.impossible) {
        impossible.push_back({{"seam", one.label}, {"reason", one.why}});
    }
    Json unread = Json::array();
    for (const UnreadWeld& one : day.unread) {
        unread.push_back(
            {{"joint", one.number}, {"weld", one.weld}, {"bench", one.bench}, {"reason", one.why}});
    }
    Json times = Json::array();
    for (const auto& [key, work] : day.times) {
        times.push_back(
            {{"seam", key.first},
             {"bench", key.second},
             {"preparation_s", inSeconds(work.times.preparation)},
             {"preparation_from", toString(work.preparation)},
             {"alignment_s", inSeconds(work.times.alignment)},
             {"alignment_from", toString(work.alignment)},
             {"soak_s", inSeconds(work.times.soak)},
             {"changeover_s", inSeconds(work.times.changeover)},
             {"build_up_s", inSeconds(work.times.buildUp)},
             {"cooling_s", inSeconds(work.times.cooling)},
             {"release_s", inSeconds(work.times.release)},
             {"release_from", toString(work.release)},
             {"plate_C", inThousands(work.times.plate.targetMc)}});
    }
    return printed(
        {{"file", file},
         {"begins_local", toIsoLocal(now.utc, now.offset)},
         {"people", day.work.people},
         {"finish_s", inSeconds(day.plan.finish)},
         {"bound_s", inSeconds(day.plan.bound.atLeast)},
         {"bound_by", toString(day.plan.bound.by)},
         {"bound_which", day.plan.bound.which},
         {"stretches", std::move(stretches)},
         {"impossible", std::move(impossible)},
         {"seams_later", day.later},
         {"unread", std::move(unread)},
         {"times", std::move(times)},
         {"seams", progressList(day.progress)}});
}

std::string
jobProgressJson(const std::string& file, const std::string& log, const JobProgress& progress) {
    Json elsewhere = Json::array();
    for (const JointLine& line : progress.elsewhere) {
        elsewhere.push_back(jointBrief(line));
    }
    Json counts;
    for (const JobSeamState state :
         {JobSeamState::Open, JobSeamState::Running, JobSeamState::Done, JobSeamState::ToDecide,
          JobSeamState::ToRedo, JobSeamState::CutOut}) {
        counts[std::string(toString(state))] = progress.count(state);
    }
    return printed(
        {{"file", file},
         {"log", log},
         {"counts", std::move(counts)},
         {"seams", progressList(progress)},
         {"other_sheets", std::move(elsewhere)}});
}

std::string batchJson(const std::string& log, const std::string& batch, const BatchFound& found) {
    Json joints = Json::array();
    for (const BatchJoint& joint : found.joints) {
        Json one = jointBrief(joint.line);
        one["sheets"] = Json::array();
        for (const SheetBatch& sheet : joint.sheets) {
            one["sheets"].push_back(sheetJson(sheet));
        }
        joints.push_back(std::move(one));
    }
    return printed(
        {{"log", log},
         {"batch", batch},
         {"joints", std::move(joints)},
         {"damaged_passed_over", found.damaged}});
}

std::string traceJson(
    const std::string& log, std::int64_t joint, const std::string& weld,
    const std::vector<SheetTrace>& sheets) {
    Json list = Json::array();
    for (const SheetTrace& one : sheets) {
        Json sheet = sheetJson(one.sheet);
        sheet["other_joints"] = Json::array();
        for (const JointLine& line : one.others) {
            sheet["other_joints"].push_back(jointBrief(line));
        }
        list.push_back(std::move(sheet));
    }
    return printed({{"log", log}, {"joint", joint}, {"weld", weld}, {"sheets", std::move(list)}});
}

std::string couponsJson(const std::string& log, const CouponsRead& read) {
    Json list = Json::array();
    for (const CouponSeries& one : read.series) {
        list.push_back(Json::parse(couponJson(one), nullptr, false));
    }
    return printed(
        {{"log", log},
         {"coupons", std::move(list)},
         {"unread", Json::parse(unreadEventsJson(read.unread), nullptr, false)}});
}

std::string chartsJson(
    const std::string& log, const std::vector<ShopChart>& charts, std::size_t mostFindings,
    bool points) {
    Json list = Json::array();
    for (const ShopChart& chart : charts) {
        list.push_back(chartJson(chart, mostFindings, points));
    }
    return printed({{"log", log}, {"charts", std::move(list)}});
}

std::string
dueJson(const std::string& today, std::int64_t days, const std::vector<DueItem>& items) {
    Json list = Json::array();
    for (const DueItem& item : items) {
        Json one = {
            {"kind", toString(item.kind)},
            {"subject", item.subject},
            {"name", item.name},
            {"what", item.what}};
        if (!item.date.empty()) {
            one["until"] = item.date;
            one["days"] = item.days;
        }
        list.push_back(std::move(one));
    }
    return printed({{"today", today}, {"within_days", days}, {"due", std::move(list)}});
}

} // namespace seamclock
