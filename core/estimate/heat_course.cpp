#include "core/estimate/heat_course.h"

#include "core/weld/record.h"

#include <algorithm>

namespace seamclock {
namespace {

double seconds(Milliseconds time) {
    return static_cast<double>(time.count()) / 1e3;
}

double celsius(std::int64_t milli) {
    return static_cast<double>(milli) / 1e3;
}

/// The mean of what was read on the plate's faces; absent if nothing was.
std::optional<double> plateRead(const std::vector<Retained>& events) {
    double sum = 0;
    int count = 0;
    for (const Retained& event : plateWeldedWith(events)) {
        sum += celsius(*std::get<CheckMade>(event.d).valueMc);
        ++count;
    }
    return count > 0 ? std::optional<double>(sum / count) : std::nullopt;
}

/// When each phase began, and cooling ended; absent: not come to that.
struct Steps {
    std::optional<Milliseconds> aligned;
    std::optional<Milliseconds> soaked;
    std::optional<Milliseconds> plateOut;
    std::optional<Milliseconds> facesMet;
    std::optional<Milliseconds> locked;
    std::optional<Milliseconds> released;
    std::optional<Milliseconds> aborted;
};

Steps stepsOf(const Weld& weld, const std::vector<Retained>& events) {
    Steps steps;
    for (const Retained& event : events) {
        const Milliseconds at = event.t.lo;
        if (std::holds_alternative<AlignmentStarted>(event.d)) {
            steps.aligned = at;
        } else if (std::holds_alternative<SoakStarted>(event.d)) {
            steps.soaked = at;
        } else if (std::holds_alternative<PlateOut>(event.d)) {
            steps.plateOut = at;
        } else if (std::holds_alternative<FacesMet>(event.d)) {
            steps.facesMet = at;
        } else if (
            std::holds_alternative<PressureLocked>(event.d) &&
            !std::holds_alternative<BuildingUp>(weld.state)) { // out of band it is stored only
            steps.locked = at;
        } else if (std::holds_alternative<ReleaseStep>(event.d) && !steps.released) {
            steps.released = at;
        } else if (std::holds_alternative<WeldAborted>(event.d)) {
            steps.aborted = at;
        }
    }
    return steps;
}

} // namespace

Result<HeatCourse> courseOf(const WeldPlan& plan, const Bench* bench) {
    std::string lacks;
    const auto need = [&lacks](bool there, const char* what) {
        if (!there) {
            lacks += (lacks.empty() ? "" : ", ") + std::string(what);
        }
    };
    need(plan.alignmentPa.has_value(), "alignment pressure");
    need(plan.joiningPa.has_value(), "joining pressure");
    need(plan.plate.has_value(), "plate temperature");
    need(plan.beadMinUm.has_value(), "alignment bead");
    need(plan.soak.has_value(), "soak time");
    need(plan.changeoverMax.has_value(), "changeover");
    need(plan.buildUp.has_value(), "build-up time");
    need(plan.cooling.has_value(), "cooling time");
    if (!lacks.empty()) {
        return fail(
            ErrorCode::Missing, "no heat estimate: procedure " + plan.procedure + " lacks " +
                                    lacks + " for " + std::to_string(plan.thicknessUm / 1000) +
                                    " mm");
    }
    HeatCourse course;
    course.material = plan.material;
    course.inputs.thickness = micrometres(static_cast<double>(plan.thicknessUm));
    course.inputs.ambientC = celsius(plan.ambientMc);
    course.inputs.plateC = celsius(plan.plate->targetMc);
    course.beadM = static_cast<double>(*plan.beadMinUm) / 1e6;
    course.alignmentPa = static_cast<double>(*plan.alignmentPa);
    course.soakPa = static_cast<double>(plan.soakAimPa.value_or(0));
    course.joiningPa = static_cast<double>(*plan.joiningPa);
    course.soak = seconds(plan.soak->target);
    course.changeover = seconds(*plan.changeoverMax);
    course.buildUp = seconds(plan.buildUp->target);
    course.cooling = seconds(plan.cooling->atLeast);
    if (bench != nullptr) {
        if (const auto rate = bench->scale.ratePerMillimetre()) {
            const double area =
                course.inputs.thickness.si() * static_cast<double>(plan.lengthUm) / 1e6;
            course.springPaPerMetre = inNewtons(*rate) * 1e3 / area;
            course.unitsPerMetre = inNewtons(*rate) * 1e3 / inNewtons(bench->scale.rate());
        }
    }
    return course;
}

Result<HeatCourse> courseOf(const Weld& weld, Milliseconds now, const Bench* bench) {
    auto course = courseOf(weld.plan, bench);
    if (!course) {
        return course;
    }
    const auto events = retained(weld.events);
    const Steps steps = stepsOf(weld, events);
    if (!steps.aligned) {
        return fail(ErrorCode::Missing, "no heat estimate: alignment has not begun");
    }
    if (const auto plate = plateRead(events)) {
        course->inputs.plateC = *plate;
    }
    // Each phase lasts from its step to the next that was made, else until now.
    const Milliseconds end = steps.aborted ? std::min(now, *steps.aborted) : now;
    const auto lasted = [&](std::optional<Milliseconds> from,
                            std::optional<Milliseconds> to) -> std::optional<double> {
        if (!from || *from > end) {
            return std::nullopt;
        }
        return seconds(std::max(std::min(to.value_or(end), end) - *from, Milliseconds(0)));
    };
    course->alignSeconds = lasted(steps.aligned, steps.soaked);
    course->aligned = steps.soaked && *steps.soaked <= end;
    course->soak = lasted(steps.soaked, steps.plateOut);
    course->changeover = lasted(steps.plateOut, steps.facesMet);
    course->buildUp = lasted(steps.facesMet, steps.locked);
    course->cooling = lasted(steps.locked, steps.released);
    return course;
}

Result<HeatCourse> courseOf(const Weld& weld, const Bench* bench) {
    Milliseconds last{0};
    for (const Retained& event : retained(weld.events)) {
        last = std::max(last, event.t.lo);
    }
    return courseOf(weld, last, bench);
}

std::set<std::int64_t> eventsOfCourse(const std::vector<Event>& events) {
    std::set<std::int64_t> out;
    const auto standing = retained(events);
    for (const Retained& event : plateWeldedWith(standing)) {
        out.insert(event.n);
    }
    bool released = false;
    std::optional<std::int64_t> locked; // the last: one before it was out of band
    for (const Retained& event : standing) {
        if (std::holds_alternative<PressureLocked>(event.d)) {
            locked = event.n;
        }
        const bool release = std::holds_alternative<ReleaseStep>(event.d);
        if (std::holds_alternative<WeldOpened>(event.d) ||
            std::holds_alternative<PlanReplaced>(event.d) ||
            std::holds_alternative<AlignmentStarted>(event.d) ||
            std::holds_alternative<SoakStarted>(event.d) ||
            std::holds_alternative<PlateOut>(event.d) ||
            std::holds_alternative<FacesMet>(event.d) ||
            std::holds_alternative<WeldAborted>(event.d) || (release && !released)) {
            out.insert(event.n);
        }
        released = released || release;
    }
    if (locked) {
        out.insert(*locked);
    }
    return out;
}

} // namespace seamclock
