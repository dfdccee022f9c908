#include "core/weld/verdict.h"

#include "core/weld/record.h"

#include <algorithm>
#include <cstdlib>
#include <fmt/format.h>
#include <iterator>
#include <map>
#include <set>
#include <utility>

namespace seamclock {

namespace {

constexpr std::int64_t kFacesDifferMc = 10'000; // [mK] faces of one plate
constexpr std::int64_t kBeadAboveMinUm = 1'000; // bead within up to this above its minimum
constexpr Milliseconds kTwoTaps{500};           // changeover: the error of two taps
constexpr Milliseconds kSoakShortRemark{2'000};

std::string seconds(Milliseconds value) {
    return fmt::format("{:.3f} s", static_cast<double>(value.count()) / 1e3);
}
std::string minutes(Milliseconds value) {
    return fmt::format("{:.2f} min", static_cast<double>(value.count()) / 6e4);
}
std::string thousandths(std::int64_t value) {
    return fmt::format("{:.1f}", static_cast<double>(value) / 1e3);
}
std::string hundredths(std::int64_t value) {
    return fmt::format("{:.2f}", static_cast<double>(value) / 1e3);
}

// One pass over what still stands; each rule then looks at what it needs.
struct Course {
    Course(const Weld& weld, const std::vector<Retained>& standing)
        : plan(weld.plan), state(weld.state), events(standing) {
        for (const Retained& one : events) {
            if (std::holds_alternative<AlignmentStarted>(one.d)) {
                aligned = &one;
            } else if (std::holds_alternative<SoakStarted>(one.d)) {
                soaked = &one;
            } else if (std::holds_alternative<PlateOut>(one.d)) {
                plateOut = &one;
            } else if (std::holds_alternative<FacesMet>(one.d)) {
                met = &one;
            } else if (std::holds_alternative<PressureLocked>(one.d)) {
                lastLock = &one;
            } else if (std::holds_alternative<ReleaseStep>(one.d) && released == nullptr) {
                released = &one;
            }
        }
        // While building up, a lock out of band did not start cooling.
        locked = std::holds_alternative<BuildingUp>(state) ? nullptr : lastLock;
    }

    std::vector<const Retained*> readings(ReadingPhase phase) const {
        std::vector<const Retained*> out;
        for (const Retained& one : events) {
            const auto* reading = std::get_if<ReadingTaken>(&one.d);
            if (reading != nullptr && reading->phase == phase) {
                out.push_back(&one);
            }
        }
        return out;
    }

    const WeldPlan& plan;
    const State& state;
    const std::vector<Retained>& events;
    const Retained* aligned = nullptr;
    const Retained* soaked = nullptr;
    const Retained* plateOut = nullptr;
    const Retained* met = nullptr;
    const Retained* lastLock = nullptr;
    const Retained* locked = nullptr;
    const Retained* released = nullptr;
};

using Findings = std::vector<Finding>;

/// Of one event alone.
Finding at(std::int64_t n, Finding finding) {
    finding.n = n;
    return finding;
}

std::int64_t valueOf(const Retained* reading) {
    return std::get<ReadingTaken>(reading->d).readingMilli;
}

struct PlaceRead {
    std::int64_t mc = 0;
    std::int64_t n = 0;
};
using PlacesRead = std::map<std::pair<std::string, std::string>, PlaceRead>; // place, face

/// Each place outside the window, the farthest first.
void addPlacesOutside(const PlacesRead& places, const WeldPlan::Plate& window, Findings& out) {
    Findings outside;
    for (const auto& [where, read] : places) {
        const std::int64_t actual = read.mc;
        const bool cold = actual < window.minMc;
        const bool hot = actual > window.maxMc;
        if (!cold && !hot) {
            continue;
        }
        const std::int64_t limit = cold ? window.minMc : window.maxMc;
        const auto& [place, face] = where;
        const std::string named =
            place.empty() && face.empty()
                ? ""
                : fmt::format(" ({}{}{})", place, place.empty() || face.empty() ? "" : ", ", face);
        outside.push_back(
            {"plate_temperature", Grade::Out, limit, actual, "mC",
             fmt::format(
                 "The plate's face{} was {} °C, {} the allowed {} °C.", named, thousandths(actual),
                 cold ? "below" : "above", thousandths(limit)),
             read.n, place, face});
    }
    const auto farther = [](const Finding& a, const Finding& b) {
        return std::abs(*a.actual - *a.limit) > std::abs(*b.actual - *b.limit);
    };
    std::stable_sort(outside.begin(), outside.end(), farther);
    std::move(outside.begin(), outside.end(), std::back_inserter(out));
}

void judgePlate(const Course& course, Findings& out) {
    PlacesRead latest;
    for (const Retained& one : plateWeldedWith(course.events)) {
        const auto& check = std::get<CheckMade>(one.d);
        latest[{check.place.value_or(""), check.face.value_or("")}] = {*check.valueMc, one.n};
    }
    if (latest.empty()) {
        out.push_back(
            {"plate_temperature",
             Grade::Incomplete,
             {},
             {},
             "",
             "The plate's temperature was never given."});
        return;
    }
    const auto colder = [](const auto& a, const auto& b) { return a.second.mc < b.second.mc; };
    const std::int64_t low = std::min_element(latest.begin(), latest.end(), colder)->second.mc;
    const std::int64_t high = std::max_element(latest.begin(), latest.end(), colder)->second.mc;
    if (course.aligned != nullptr) {
        addPlacesOutside(latest, *course.plan.plate, out);
    }
    if (high - low > kFacesDifferMc) {
        out.push_back(
            {"plate_faces_differ", Grade::Remark, kFacesDifferMc, high - low, "mC",
             fmt::format("The plate's faces differ by {} K.", thousandths(high - low))});
    }
}

void judgeAlignment(const Course& course, Findings& out) {
    const std::int64_t least = *course.plan.beadMinUm;
    std::optional<std::int64_t> bead;
    std::int64_t beadN = 0;
    for (const Retained& one : course.events) {
        const auto* check = std::get_if<CheckMade>(&one.d);
        if (check != nullptr && check->check == "alignment_bead" && check->valueUm) {
            bead = *check->valueUm;
            beadN = one.n;
        }
    }
    if (course.soaked != nullptr && bead && *bead < least) {
        out.push_back(
            at(beadN, {"alignment_bead", Grade::Out, least, *bead, "um",
                       fmt::format(
                           "The smallest alignment bead was {} mm; at least {} mm is asked.",
                           hundredths(*bead), hundredths(least))}));
    } else if (course.soaked != nullptr && bead && *bead > least + kBeadAboveMinUm) {
        out.push_back(
            at(beadN, {"alignment_bead", Grade::Remark, least + kBeadAboveMinUm, *bead, "um",
                       fmt::format(
                           "The alignment bead was {} mm, above {} mm.", hundredths(*bead),
                           hundredths(least + kBeadAboveMinUm))}));
    }
    if (course.soaked == nullptr || course.aligned == nullptr || !course.plan.alignMedian) {
        return;
    }
    const WeldTime took = course.soaked->t - course.aligned->t;
    const Milliseconds median = *course.plan.alignMedian;
    const bool slow = took.hi > median * 2;
    const bool fast = took.lo * 4 < median;
    if (slow || fast) {
        out.push_back(
            {"alignment_time", Grade::Remark, (slow ? median * 2 : median / 4).count(),
             (slow ? took.hi : took.lo).count(), "ms",
             fmt::format(
                 "Alignment took {}; this bench's median is {}.", seconds(slow ? took.hi : took.lo),
                 seconds(median))});
    }
}

void judgeSoak(const Course& course, Findings& out) {
    if (course.soaked == nullptr || course.plateOut == nullptr) {
        return;
    }
    const ReadingBand& band = course.plan.scale->soak;
    const auto readings = course.readings(ReadingPhase::Soak);
    const auto highest =
        std::max_element(readings.begin(), readings.end(), [](const auto* a, const auto* b) {
            return valueOf(a) < valueOf(b);
        });
    if (readings.empty()) {
        out.push_back(
            {"soak_pressure", Grade::Remark, {}, {}, "", "The soak reading was not taken."});
    } else if (valueOf(*highest) > band.highMilli) {
        out.push_back(at(
            (*highest)->n, {"soak_pressure", Grade::Out, band.highMilli, valueOf(*highest), "milli",
                            fmt::format(
                                "The soak reading was {}; at most {} is allowed.",
                                hundredths(valueOf(*highest)), hundredths(band.highMilli))}));
    }
    const TimeBand& soak = *course.plan.soak;
    const WeldTime took = course.plateOut->t - course.soaked->t;
    const bool isShort = took.lo < soak.low;
    const bool isLong = took.hi > soak.high;
    if (!isShort && !isLong) {
        return;
    }
    const Milliseconds limit = isShort ? soak.low : soak.high;
    const Milliseconds actual = isShort ? took.lo : took.hi;
    const bool remark =
        took.lo >= soak.low - kSoakShortRemark && took.hi.count() * 4 <= soak.target.count() * 5;
    out.push_back(
        {"soak_time", remark ? Grade::Remark : Grade::Out, limit.count(), actual.count(), "ms",
         fmt::format(
             "Soak took {}; {} is {}.", seconds(actual), isShort ? "at least" : "at most",
             seconds(limit))});
}

void judgeChangeover(const Course& course, Findings& out) {
    if (course.plateOut == nullptr || course.met == nullptr) {
        return;
    }
    const Milliseconds limit = *course.plan.changeoverMax;
    const Milliseconds took = (course.met->t - course.plateOut->t).hi;
    if (took <= limit) {
        return;
    }
    out.push_back(
        {"changeover", took <= limit + kTwoTaps ? Grade::Remark : Grade::Out, limit.count(),
         took.count(), "ms",
         fmt::format("Changeover took {}; at most {} is allowed.", seconds(took), seconds(limit))});
}

const Retained* firstInBand(const Course& course) {
    for (const Retained* reading : course.readings(ReadingPhase::Joining)) {
        if (course.plan.scale->joining.holds(valueOf(reading))) {
            return reading;
        }
    }
    return nullptr;
}

void judgeBuildUp(const Course& course, Findings& out) {
    if (course.met == nullptr) {
        return;
    }
    const ReadingBand& band = course.plan.scale->joining;
    for (const Retained* reading : course.readings(ReadingPhase::Joining)) {
        if (valueOf(reading) > band.highMilli) {
            out.push_back(
                at(reading->n, {"build_up", Grade::Out, band.highMilli, valueOf(reading), "milli",
                                fmt::format(
                                    "The joining reading was {}, above its band's end of {}.",
                                    hundredths(valueOf(reading)), hundredths(band.highMilli))}));
            break;
        }
    }
    const Retained* inBand = firstInBand(course);
    const bool before =
        inBand != nullptr && (course.locked == nullptr || inBand->n < course.locked->n);
    const Retained* end = before ? inBand : course.locked;
    if (end == nullptr) {
        return;
    }
    const TimeBand& planned = *course.plan.buildUp;
    const WeldTime took = end->t - course.met->t;
    const bool fast = took.lo < planned.low;
    const bool slow = took.hi > planned.high;
    if (!fast && !slow) {
        return;
    }
    const Milliseconds actual = fast ? took.lo : took.hi;
    const Milliseconds limit = fast ? planned.low : planned.high;
    const bool remark = took.lo.count() * 100 >= planned.target.count() * 40 &&
                        took.hi.count() * 100 <= planned.target.count() * 170;
    out.push_back(
        {"build_up", remark ? Grade::Remark : Grade::Out, limit.count(), actual.count(), "ms",
         fmt::format(
             "Build-up took {}; {} is {}.", seconds(actual), fast ? "at least" : "at most",
             seconds(limit))});
}

bool belowHalf(const WeldPlan::ScalePlan& scale, std::int64_t reading) {
    return 2 * (reading - scale.zeroMilli) < scale.joining.setMilli - scale.zeroMilli;
}

// Low at a re-check: topped up in the first third it is a remark, later or never it was left low.
// Each reading that was out is listed; of what was topped up in time the first, and only where
// nothing was out.
void judgeRechecks(const Course& course, Findings& out) {
    const WeldPlan::ScalePlan& scale = *course.plan.scale;
    const auto readings = course.readings(ReadingPhase::Recheck);
    const auto finding = [](Grade grade, std::int64_t limit, const Retained& reading,
                            const std::string& text) {
        const std::int64_t actual = valueOf(&reading);
        return Finding{
            "joining_reading",
            grade,
            limit,
            actual,
            "milli",
            fmt::format("{}: {}, limit {}.", text, hundredths(actual), hundredths(limit)),
            reading.n,
            kInCooling,
            ""};
    };
    const std::size_t before = out.size();
    std::optional<Finding> toppedUpEarly;
    for (std::size_t i = 0; i < readings.size(); ++i) {
        const std::int64_t actual = valueOf(readings[i]);
        if (belowHalf(scale, actual)) {
            out.push_back(finding(
                Grade::Out, scale.zeroMilli + (scale.joining.setMilli - scale.zeroMilli) / 2,
                *readings[i], "The reading fell below half in cooling"));
            continue;
        }
        if (actual > scale.joining.highMilli) {
            out.push_back(finding(
                Grade::Out, scale.joining.highMilli, *readings[i],
                "The reading was above its band in cooling"));
        }
        if (actual >= scale.joining.lowMilli) {
            continue;
        }
        const auto toppedUp = std::find_if(
            readings.begin() + static_cast<std::ptrdiff_t>(i), readings.end(),
            [&](const Retained* later) { return valueOf(later) >= scale.joining.lowMilli; });
        const bool early =
            toppedUp != readings.end() &&
            ((*toppedUp)->t - course.locked->t).hi * 3 <= course.plan.cooling->atLeast;
        if (early && !toppedUpEarly) {
            toppedUpEarly = finding(
                Grade::Remark, scale.joining.lowMilli, *readings[i],
                "The reading was low and was topped up in the first third of cooling");
        } else if (!early && (toppedUp != readings.end() || course.released != nullptr)) {
            out.push_back(finding(
                Grade::Out, scale.joining.lowMilli, *readings[i],
                "The reading was left low in cooling"));
        }
    }
    if (toppedUpEarly && out.size() == before) {
        out.push_back(std::move(*toppedUpEarly));
    }
}

void judgeJoining(const Course& course, Findings& out) {
    const auto readings = course.readings(ReadingPhase::Joining);
    if (readings.empty()) {
        out.push_back(
            {"joining_reading",
             Grade::Incomplete,
             {},
             {},
             "",
             "The joining reading was never given."});
    } else if (
        course.locked != nullptr &&
        valueOf(readings.back()) < course.plan.scale->joining.lowMilli) {
        out.push_back(at(
            readings.back()->n, {"joining_reading", Grade::Out, course.plan.scale->joining.lowMilli,
                                 valueOf(readings.back()), "milli",
                                 fmt::format(
                                     "The joining reading was {}, below its band's end of {}.",
                                     hundredths(valueOf(readings.back())),
                                     hundredths(course.plan.scale->joining.lowMilli))}));
    }
    if (course.locked != nullptr) {
        judgeRechecks(course, out);
    }
}

void judgeMissedRechecks(const Course& course, Findings& out) {
    if (course.locked == nullptr || course.released == nullptr) {
        return;
    }
    const WeldPlan::Cooling& cooling = *course.plan.cooling;
    for (std::size_t i = 0; i < cooling.rechecks.size(); ++i) {
        const bool last = i + 1 == cooling.rechecks.size();
        const Milliseconds from = cooling.rechecks[i];
        const Milliseconds until = last ? cooling.atLeast * 2 / 3 : cooling.rechecks[i + 1];
        const auto readings = course.readings(ReadingPhase::Recheck);
        // Over a bridge a reading counts if it may have been in time.
        const bool read = std::any_of(readings.begin(), readings.end(), [&](const Retained* one) {
            const WeldTime at = one->t - course.locked->t;
            return at.hi >= from && at.lo < until;
        });
        if (!read) {
            out.push_back(
                {"recheck_missed",
                 Grade::Remark,
                 from.count(),
                 {},
                 "ms",
                 fmt::format("The scale was not read again at {} of cooling.", minutes(from))});
        }
    }
}

void judgeCooling(const Course& course, Findings& out) {
    if (course.locked == nullptr || course.released == nullptr) {
        return;
    }
    const Milliseconds least = course.plan.cooling->atLeast;
    const Milliseconds took = (course.released->t - course.locked->t).lo;
    if (took < least) {
        out.push_back(
            {"cooling", Grade::Out, least.count(), took.count(), "ms",
             fmt::format("Cooling took {}; at least {} is asked.", minutes(took), minutes(least))});
    }
}

void judgeBead(const Course& course, Findings& out) {
    std::optional<std::int64_t> smallestK;
    std::optional<std::int64_t> worstStep;
    std::int64_t smallestN = 0;
    std::int64_t worstN = 0;
    for (const Retained& one : course.events) {
        const auto* bead = std::get_if<BeadMeasured>(&one.d);
        if (bead != nullptr && (!smallestK || bead->kUm < *smallestK)) {
            smallestK = bead->kUm;
            smallestN = one.n;
        }
        if (bead != nullptr && (!worstStep || bead->misalignmentUm > *worstStep)) {
            worstStep = bead->misalignmentUm;
            worstN = one.n;
        }
    }
    const bool looked = std::holds_alternative<Inspecting>(course.state) ||
                        std::holds_alternative<Closed>(course.state);
    if (!smallestK) {
        if (looked) {
            out.push_back(
                {"bead_not_measured", Grade::Remark, {}, {}, "", "The bead was not measured."});
        }
        return;
    }
    const std::int64_t most = course.plan.misalignmentMaxUm;
    if (*worstStep > most) {
        out.push_back(
            at(worstN, {"misalignment", Grade::Out, most, *worstStep, "um",
                        fmt::format(
                            "The faces are out of line by {} mm; at most {} mm is allowed.",
                            hundredths(*worstStep), hundredths(most))}));
    }
    if (*smallestK <= 0) {
        out.push_back(
            at(smallestN,
               {"bead_k", Grade::Out, 0, *smallestK, "um",
                fmt::format(
                    "The valley of the bead lies {} mm above the sheet; it must stand above it.",
                    hundredths(*smallestK))}));
    }
}

bool isPhaseStep(const WeldDetail& detail, const WeldPlan& plan) {
    const auto* release = std::get_if<ReleaseStep>(&detail);
    return isPivotal(detail) || (release != nullptr && release->step == plan.releaseOrder.front());
}

Finding remark(const char* code, std::string text, std::int64_t n) {
    Finding finding{code, Grade::Remark, {}, {}, "", std::move(text)};
    finding.n = n;
    return finding;
}

void addRemarks(const Weld& weld, const Course& course, Findings& out) {
    for (const Event& event : weld.events) {
        const auto* back = std::get_if<StepTakenBack>(&event.d);
        const auto* dated = std::get_if<StepBackdated>(&event.d);
        if (back != nullptr || dated != nullptr) {
            const std::int64_t n = back != nullptr ? back->targetN : dated->targetN;
            const Event& target = weld.events[static_cast<std::size_t>(n - 1)];
            // A reading that is set back moves the end of build-up.
            const bool reading = dated != nullptr && std::holds_alternative<ReadingTaken>(target.d);
            if (!reading && !isPhaseStep(target.d, course.plan)) {
                continue;
            }
            const std::string first = toIsoUtc(target.at.utc);
            if (back != nullptr) {
                out.push_back(remark(
                    "step_taken_back",
                    fmt::format(
                        "{} of {} was taken back at {}.", kindOf(target.d), first,
                        toIsoUtc(event.at.utc)),
                    event.n));
            } else {
                out.push_back(remark(
                    "step_backdated",
                    fmt::format(
                        "{} of {} was set back to {}.", kindOf(target.d), first,
                        toIsoUtc(target.at.utc - dated->earlier)),
                    event.n));
            }
        } else if (const auto* bridge = std::get_if<ClockBridged>(&event.d)) {
            out.push_back(remark(
                "bridge_used",
                fmt::format(
                    "The power was off; between {} and {} passed ({}{}).", seconds(bridge->lo),
                    seconds(bridge->hi), toString(bridge->basis),
                    bridge->basis == BridgeBasis::Backwards
                        ? ": the wall clock went back, the true time is not known"
                        : ""),
                event.n));
        } else if (const auto* jump = std::get_if<ClockJumped>(&event.d)) {
            out.push_back(remark(
                "clock_jumped", fmt::format("The wall clock jumped by {}.", seconds(jump->delta)),
                event.n));
        } else if (const auto* overridden = std::get_if<CheckOverridden>(&event.d)) {
            out.push_back(remark(
                "check_overridden",
                fmt::format(
                    "The check {} was passed over: {}.", overridden->check, overridden->reason),
                event.n));
        } else if (const auto* said = std::get_if<RemarkMade>(&event.d)) {
            out.push_back(remark("remark_made", said->text, event.n));
        }
    }
    for (const std::string& flag : weld.opened().flags) {
        out.push_back(remark(flag.c_str(), fmt::format("At the start: {}.", flag), 1));
    }
}

VerdictWord wordFor(const Findings& all) {
    const auto has = [&](Grade grade) {
        return std::any_of(all.begin(), all.end(), [grade](const Finding& finding) {
            return finding.grade == grade;
        });
    };
    if (has(Grade::Incomplete)) {
        return VerdictWord::Incomplete;
    }
    if (has(Grade::Out)) {
        return VerdictWord::OutOfLimits;
    }
    return all.empty() ? VerdictWord::WithinLimits : VerdictWord::WithRemarks;
}

Findings findingsOf(const Weld& weld, const std::vector<Retained>& standing) {
    const Course course(weld, standing);
    Findings out;
    for (const Retained& one : course.events) {
        if (const auto* aborted = std::get_if<WeldAborted>(&one.d)) {
            out.push_back(
                {"aborted",
                 Grade::Incomplete,
                 {},
                 {},
                 "",
                 fmt::format("The weld was stopped: {}.", aborted->reason)});
        }
    }
    judgePlate(course, out);
    judgeAlignment(course, out);
    judgeSoak(course, out);
    judgeChangeover(course, out);
    judgeBuildUp(course, out);
    judgeJoining(course, out);
    judgeMissedRechecks(course, out);
    judgeCooling(course, out);
    judgeBead(course, out);
    addRemarks(weld, course, out);
    std::stable_sort(out.begin(), out.end(), [](const Finding& a, const Finding& b) {
        return a.grade < b.grade;
    });
    return out;
}

} // namespace

std::string_view toString(Grade grade) {
    switch (grade) {
    case Grade::Incomplete:
        return "incomplete";
    case Grade::Out:
        return "out";
    case Grade::Remark:
        return "remark";
    }
    return "";
}

std::string_view toString(VerdictWord word) {
    switch (word) {
    case VerdictWord::WithinLimits:
        return "within limits";
    case VerdictWord::WithRemarks:
        return "within limits with remarks";
    case VerdictWord::OutOfLimits:
        return "out of limits";
    case VerdictWord::Incomplete:
        return "incomplete";
    }
    return "";
}

std::vector<Finding> findings(const Weld& weld) {
    return findingsOf(weld, retained(weld.events));
}

Verdict verdict(const Weld& weld) {
    return verdict(weld, retained(weld.events));
}

Verdict verdict(const Weld& weld, const std::vector<Retained>& standing) {
    Verdict out{VerdictWord::Incomplete, findingsOf(weld, standing)};
    if (isOpen(weld.state)) {
        out.findings.insert(
            out.findings.begin(),
            {"not_closed",
             Grade::Incomplete,
             {},
             {},
             "",
             fmt::format("The weld is not closed; it is {}.", phaseName(weld.state))});
    }
    out.word = wordFor(out.findings);
    return out;
}

Verdict verdictAtClosing(const Weld& weld) {
    Verdict out{VerdictWord::Incomplete, findings(weld)};
    out.word = wordFor(out.findings);
    return out;
}

namespace {

/// What is out by now, each once.
std::vector<std::string> outOf(const Weld& weld) {
    std::vector<std::string> out;
    for (const Finding& finding : findings(weld)) {
        const bool listed = std::find(out.begin(), out.end(), finding.code) != out.end();
        if (finding.grade == Grade::Out && !listed) {
            out.push_back(finding.code);
        }
    }
    return out;
}

/// For what a reason stands: one for a step that was taken back since went with it, and if that
/// happens again it is another time with another reason.
std::set<std::string> reasonsGiven(const Weld& weld) {
    std::set<std::string> given;
    for (auto event = weld.events.begin(); event != weld.events.end(); ++event) {
        if (const auto* reason = std::get_if<ReasonGiven>(&event->d)) {
            given.insert(reason->limit);
            continue;
        }
        if (given.empty() || !std::holds_alternative<StepTakenBack>(event->d)) {
            continue;
        }
        const auto then = fold({weld.events.begin(), event + 1});
        const std::vector<std::string> out = then ? outOf(*then) : std::vector<std::string>();
        for (auto one = given.begin(); one != given.end();) {
            const bool stands = std::find(out.begin(), out.end(), *one) != out.end();
            one = stands ? std::next(one) : given.erase(one);
        }
    }
    return given;
}

} // namespace

std::vector<std::string> reasonsOwed(const Weld& weld) {
    std::vector<std::string> owed = outOf(weld);
    for (const std::string& given : reasonsGiven(weld)) {
        owed.erase(std::remove(owed.begin(), owed.end(), given), owed.end());
    }
    return owed;
}

} // namespace seamclock
