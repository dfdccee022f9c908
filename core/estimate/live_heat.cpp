#include "core/estimate/live_heat.h"

namespace seamclock {

const SheetRun* LiveHeat::follow(const Weld& weld, Milliseconds now, const Bench* bench) {
    const auto course = courseOf(weld, now, bench);
    if (!course) {
        m_run.reset();
        return nullptr;
    }
    if (!m_run || weld.id() != m_weld || !goesOn(*course)) {
        m_run.reset();
        const auto material = materialFor(m_materials, course->material);
        if (!material) {
            return nullptr;
        }
        m_weld = weld.id();
        m_past = {};
        // A look every quarter of a second is a step of its own, so the grid can be coarse in time.
        m_run = std::make_unique<SheetRun>(*material, course->inputs);
    }
    m_course = *course;
    catchUp(*course);
    return m_run.get();
}

const SheetRun* LiveHeat::followBySecond(const Weld& weld, Milliseconds now, const Bench* bench) {
    const bool recent = m_run && weld.id() == m_weld && weld.events.size() == m_events &&
                        now >= m_at && now - m_at < std::chrono::seconds(1);
    if (recent) {
        return m_run.get();
    }
    m_at = now;
    m_events = weld.events.size();
    return follow(weld, now, bench);
}

/// Nothing that was run through has become shorter, no stage before the one that lasts longer, and
/// the surroundings are the same.
bool LiveHeat::goesOn(const HeatCourse& course) const {
    if (!(course.inputs == m_course.inputs) || course.material != m_course.material ||
        course.joiningPa != m_course.joiningPa || course.alignmentPa != m_course.alignmentPa) {
        return false;
    }
    const struct {
        double past;
        double now;
        bool later; // something was run through behind it
    } stages[] = {
        {m_past.align, course.alignSeconds.value_or(0),
         m_past.soak + m_past.changeover + m_past.buildUp + m_past.cooling > 0},
        {m_past.soak, course.soak.value_or(0),
         m_past.changeover + m_past.buildUp + m_past.cooling > 0},
        {m_past.changeover, course.changeover.value_or(0), m_past.buildUp + m_past.cooling > 0},
        {m_past.buildUp, course.buildUp.value_or(0), m_past.cooling > 0},
        {m_past.cooling, course.cooling.value_or(0), false}};
    for (const auto& stage : stages) {
        if (stage.now < stage.past || (stage.later && stage.now > stage.past)) {
            return false;
        }
    }
    return true;
}

void LiveHeat::catchUp(const HeatCourse& course) {
    const auto go = [this](
                        HeatStage::At at, std::optional<double> lasted, double& past, double from,
                        double to, std::optional<double> spring = {}) {
        const double left = lasted.value_or(0) - past;
        if (left > 0) {
            m_run->go({at, left, from, to, spring});
            past = *lasted;
        }
    };
    go(HeatStage::At::Plate, course.alignSeconds, m_past.align, course.alignmentPa,
       course.alignmentPa);
    go(HeatStage::At::Plate, course.soak, m_past.soak, course.soakPa, course.soakPa);
    go(HeatStage::At::Air, course.changeover, m_past.changeover, 0, 0);
    // How evenly the hand turns is not known: half the joining pressure while it grows.
    go(HeatStage::At::Sheet, course.buildUp, m_past.buildUp, course.joiningPa / 2,
       course.joiningPa / 2);
    go(HeatStage::At::Sheet, course.cooling, m_past.cooling, course.joiningPa, course.joiningPa,
       course.springPaPerMetre);
}

} // namespace seamclock
