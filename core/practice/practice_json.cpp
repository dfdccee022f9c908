#include "core/practice/practice_json.h"

#include "core/base/json.h"
#include "core/practice/practice_words.h"

#include <cmath>

namespace seamclock {
namespace {

std::string printed(const Json& json) {
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

/// Rounded to thousandths: what is worked out is not better known.
double rounded(double value) {
    return std::round(value * 1e3) / 1e3;
}

Json lessonJson(const Lesson& lesson) {
    Json notice = Json::array();
    for (const Wrong wrong : lesson.notice) {
        notice.push_back(toString(wrong));
    }
    return {
        {"id", lesson.id},
        {"place", lesson.place},
        {"title", lesson.title},
        {"teaches", lesson.teaches},
        {"after", lesson.after},
        {"procedure", lesson.procedure},
        {"bench", lesson.bench},
        {"material", lesson.material},
        {"thickness_um", lesson.thicknessUm},
        {"length_um", lesson.lengthUm},
        {"welds", lesson.welds},
        {"notice", std::move(notice)}};
}

Json lineJson(const PracticeLine& line) {
    Json lapses = Json::array();
    for (const Lapse lapse : line.lapses) {
        lapses.push_back(toString(lapse));
    }
    Json json{
        {"by", line.by},
        {"utc_ms", line.at.utc.count()},
        {"offset_min", line.at.offset.count()},
        {"lesson", line.lesson},
        {"title", line.lessonTitle},
        {"weld", line.weld},
        {"number", line.number},
        {"verdict", toString(line.verdict)},
        {"judged", line.judged},
        {"in_limits", line.inLimits},
        {"reading_errors", line.readingErrors},
        {"order_errors", line.orderErrors},
        {"noticed", line.noticed},
        {"to_notice", line.toNotice},
        {"ductile", line.ductile},
        {"lapses", std::move(lapses)},
        {"take_sha256", line.takeSha256}};
    if (line.reaction) {
        json["reaction_ms"] = line.reaction->count();
    }
    if (line.brokenOff) {
        json["broken_off"] = true;
        json["left"] = line.left;
    }
    return json;
}

Json bendJson(const BendTest& bend) {
    Json stations = Json::array();
    for (const StationBend& station : bend.stations) {
        Json reasons = Json::array();
        for (const BendReason reason : station.reasons) {
            reasons.push_back(toString(reason));
        }
        stations.push_back(
            {{"place_mm", rounded(station.placeMm)},
             {"ductile", station.ductile},
             {"reasons", std::move(reasons)}});
    }
    return {{"ductile", bend.ductile}, {"stations", std::move(stations)}};
}

Json stationsJson(const BenchView& view) {
    Json stations = Json::array();
    for (const StationView& station : view.stations) {
        Json one{
            {"place_mm", rounded(station.placeMm)},
            {"bead_top_mm", rounded(station.beadTopMm)},
            {"bead_bottom_mm", rounded(station.beadBottomMm)},
            {"k_top_mm", rounded(station.valleyTopMm)},
            {"k_bottom_mm", rounded(station.valleyBottomMm)},
            {"plane_C", rounded(station.skinC)}};
        if (station.joined) {
            one["skin_C_at_joining"] = rounded(station.joined->skinC);
            one["melt_mm_at_joining"] = rounded(station.joined->meltMm);
            one["melt_left_mm"] = rounded(station.joined->meltMm - station.joined->squeezedMm);
            one["frozen_at_Pa"] = rounded(station.joined->frozePa);
        }
        stations.push_back(std::move(one));
    }
    return stations;
}

Json physicsJson(const JointPhysics& joint) {
    return {{"bend", bendJson(joint.bend)}, {"stations", stationsJson(joint.end)}};
}

Json lapseJson(const LapseFinding& finding) {
    Json json{
        {"code", toString(finding.lapse)},
        {"unit", finding.unit},
        {"where", finding.where},
        {"text", lapseSentence(finding)}};
    if (finding.was) {
        json["was"] = rounded(*finding.was);
    }
    if (finding.planned) {
        json["planned"] = rounded(*finding.planned);
    }
    return json;
}

Json verdictJson(const Verdict& verdict) {
    Json findings = Json::array();
    for (const Finding& finding : verdict.findings) {
        findings.push_back(
            {{"code", finding.code}, {"grade", toString(finding.grade)}, {"text", finding.text}});
    }
    return {{"word", toString(verdict.word)}, {"findings", std::move(findings)}};
}

Json noticeJson(const std::vector<NoticeScore>& all) {
    Json json = Json::array();
    for (const NoticeScore& notice : all) {
        Json one{{"what", toString(notice.what)}, {"noticed", notice.at.has_value()}};
        if (notice.at) {
            one["at_ms"] = notice.at->count();
        }
        json.push_back(std::move(one));
    }
    return json;
}

} // namespace

std::string lessonsJson(const std::vector<Lesson>& lessons) {
    Json json = Json::array();
    for (const Lesson& lesson : lessons) {
        json.push_back(lessonJson(lesson));
    }
    return printed(json);
}

std::string lessonFindingsJson(
    const std::vector<std::pair<std::string, std::vector<LessonFinding>>>& findings) {
    Json json = Json::array();
    for (const auto& [file, ofFile] : findings) {
        Json list = Json::array();
        for (const LessonFinding& finding : ofFile) {
            list.push_back(
                {{"line", finding.line}, {"field", finding.field}, {"reason", finding.reason}});
        }
        json.push_back({{"file", file}, {"sound", ofFile.empty()}, {"findings", std::move(list)}});
    }
    return printed(json);
}

std::string historyJson(const std::vector<PracticeLine>& lines) {
    Json json = Json::array();
    for (const PracticeLine& line : lines) {
        json.push_back(lineJson(line));
    }
    return printed(json);
}

std::string scoreJson(const PracticeLine& line, const PracticeScore& score) {
    Json reactions = Json::array();
    for (const CueReaction& reaction : score.reactions) {
        reactions.push_back(
            {{"cue", toString(reaction.cue)},
             {"at_ms", reaction.at.count()},
             {"took_ms", reaction.took.count()}});
    }
    Json readings = Json::array();
    for (const ReadingError& reading : score.readings) {
        readings.push_back(
            {{"what", reading.what},
             {"at_ms", reading.at.count()},
             {"said", rounded(reading.said)},
             {"was", rounded(reading.was)},
             {"allowed", rounded(reading.allowed)},
             {"unit", reading.unit}});
    }
    Json order = Json::array();
    for (const OrderError& error : score.order) {
        order.push_back(
            {{"code", error.code}, {"at_ms", error.at.count()}, {"size", rounded(error.size)}});
    }
    Json lapses = Json::array();
    for (const LapseFinding& finding : score.lapses) {
        lapses.push_back(lapseJson(finding));
    }
    Json alarms = Json::array();
    for (const Wrong wrong : score.falseAlarms) {
        alarms.push_back(toString(wrong));
    }
    return printed(
        {{"take", lineJson(line)},
         {"verdict", verdictJson(score.verdict)},
         {"judged", score.judged},
         {"in_limits", score.inLimits},
         {"reactions", std::move(reactions)},
         {"readings", std::move(readings)},
         {"order", std::move(order)},
         {"notice", noticeJson(score.notice)},
         {"false_alarms", std::move(alarms)},
         {"lapses", std::move(lapses)},
         {"made", physicsJson(score.made)},
         {"planned", physicsJson(score.planned)},
         {"words", practiceWords(score)}});
}

} // namespace seamclock
