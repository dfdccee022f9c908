// The heat in a weld that is being made: it goes on from where it was at the last look, and begins
// anew when what was done is told otherwise (a step taken back or backdated, a plate read again).
// One for each bench; nominal values, no spread.
#pragma once

#include "core/estimate/heat_estimate.h"

#include <cstddef>
#include <memory>
#include <string>
#include <vector>

namespace seamclock {

class LiveHeat {
public:
    /// The materials must outlive it.
    explicit LiveHeat(const std::vector<Material>& materials) : m_materials(materials) {}

    /// The sheet at that weld time; null before alignment, for a plan without an estimate, and for
    /// a material without values. `bench` may be null. Valid until the next call.
    const SheetRun* follow(const Weld& weld, Milliseconds now, const Bench* bench);
    /// The same for a screen that looks many times a second: once a second, or when the weld has
    /// another event, it goes on; in between the sheet is as it was.
    const SheetRun* followBySecond(const Weld& weld, Milliseconds now, const Bench* bench);

private:
    /// What was run through, stage by stage [s].
    struct Past {
        double align = 0;
        double soak = 0;
        double changeover = 0;
        double buildUp = 0;
        double cooling = 0;

        bool operator==(const Past&) const = default;
    };
    bool goesOn(const HeatCourse& course) const;
    void catchUp(const HeatCourse& course);

    const std::vector<Material>& m_materials;
    std::string m_weld;
    HeatCourse m_course; // as it was at the last look
    Past m_past;
    std::unique_ptr<SheetRun> m_run;
    Milliseconds m_at{0}; // of the last look by second, in weld time
    std::size_t m_events = 0;
};

} // namespace seamclock
