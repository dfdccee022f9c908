// A bench to practise at: physics, moved by acts and by time. It knows no lesson and judges nobody;
// what it does in a wrong order is what the thing itself would do.
//
// The seam is cut into a few stations. Each has an edge of its own (a SheetRun of core/heat that
// stands for both sheets, which are taken to be alike), its own plate temperature, contact and
// melt; the rigid tables press them all with one spring, so who touches first carries the load
// until he has melted back.
//
// Time goes in steps that the bench chooses by what is going on, never by how it is asked: it is
// always led a step ahead, what is seen between is a straight line, and an act within a step cuts
// it there. So the same acts at the same times give the same weld to the last bit, whatever the
// frames were.
#pragma once

#include "core/base/result.h"
#include "core/bench/bench.h"
#include "core/heat/sheet_run.h"
#include "core/plan/plan.h"
#include "core/vbench/bench_act.h"
#include "core/vbench/bench_view.h"
#include "core/vbench/virtual_plate.h"

#include <functional>
#include <memory>
#include <optional>
#include <utility>

namespace seamclock {

/// What is wrong with bench, plate, sheets or air from the beginning, and nobody is told.
struct BenchFaults {
    double plateOffsetK = 0;
    double coldSpotK = 0; // deep, at that share of the seam's length, so wide (a share likewise)
    double coldSpotAt = 0.5;
    double coldSpotWidth = 0.1;
    bool plateDirty = false;
    bool filmOn[2] = {true, true};   // as delivered
    bool planed[2] = {false, false}; // as delivered
    /// The second sheet lies so that its edge's lower side stands so much behind, until shimmed.
    double leanMm = 0;
    double draught = 1;           // times as much heat as a bare face loses in still air
    double zeroOff = 0;           // the scale shows so much more, in its unit
    double lockCreepMmPerMin = 0; // a locked wheel gives way

    bool operator==(const BenchFaults&) const = default;
};

struct BenchSetup {
    Material material;
    Bench bench;
    WeldPlan plan;
    BenchFaults faults;
    double dragN = 0;      // as it is; the plan has what was measured
    bool plateWarm = true; // it stands at the plan's target when the practice begins
    int stations = 5;
    /// Coarser than the estimate's; the tests say by how much it differs.
    HeatGrid grid = {millimetres(0.1), 1.25, 3, 1.5, 0.25, 0.05, 30};
};

struct BenchFixed;
struct BenchState;

class VirtualBench {
public:
    /// Missing: a plan without scale, plate temperature or joining pressure, a bench whose spring
    /// is not known in N/mm. OutOfRange: 3 to 7 stations, and faults outside what the detail says.
    static Result<VirtualBench> set(const BenchSetup& setup);

    /// Refused: it can't be done just now, whatever comes of it; nothing has happened then.
    /// OutOfRange: a value nobody could set.
    Result<void> act(const BenchAct& act);
    /// From now on `told` is called with each act that was done here, and when; copies of the bench
    /// call it too.
    void watch(std::function<void(Milliseconds at, const BenchAct&)> told) {
        m_told = std::move(told);
    }
    /// Nothing happens unless positive.
    void advance(Milliseconds gap);

    Milliseconds now() const { return m_now; }
    BenchView view() const;
    /// The heat in the edge there, up to one step of the bench ahead of `now`.
    const SheetRun& edge(std::size_t station) const;
    const BenchSetup& setup() const;

private:
    VirtualBench() = default;

    std::shared_ptr<const BenchFixed> m_fixed; // copies of the bench share these
    std::shared_ptr<const BenchState> m_from;  // at the step's beginning
    std::shared_ptr<const BenchState> m_to;    // at its end
    Milliseconds m_now{0};
    std::function<void(Milliseconds, const BenchAct&)> m_told;
};

} // namespace seamclock
