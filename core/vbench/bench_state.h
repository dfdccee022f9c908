// What the virtual bench is made of inside: private to this room.
#pragma once

#include "core/vbench/table_balance.h"
#include "core/vbench/virtual_bench.h"

#include <array>
#include <string>
#include <vector>

namespace seamclock {

/// What stays as it is from the set-up on.
struct BenchFixed {
    BenchSetup setup;
    TableSpring spring;
    double unitsPerNewton = 0; // of the scale
    double thickness = 0;      // [m]
    double length = 0;         // [m] of the seam
    // By the plan: melt when the faces meet, and what is left of it; 0: not known.
    double planMeltMm = 0;
    double planMeltPerK = 0; // more by a plate that is warmer within its window
    double planLeftMm = 0;
    double planSkinC = 0;        // of a changeover on its limit
    double planPace = 0;         // [m/s] at which one sheet is lost in build-up, on the average
    bool springOffFirst = false; // the bench's order lets the spring off before bars are opened

    std::size_t stations() const { return static_cast<std::size_t>(setup.stations); }
    double share(std::size_t station) const { // of the seam's length, to the station's middle
        return (static_cast<double>(station) + 0.5) / static_cast<double>(stations());
    }
    double area() const { return thickness * length / static_cast<double>(stations()); }
    double reading(double force) const;
    double springN(double units) const;
    double stiffness() const;  // [Pa/m] of two edges against each other
    double solidC() const;     // what cools below this is solid
    double setsC() const;      // what was molten no longer flows: half is crystalline
    double stiffC() const;     // below this a joint keeps its form when it is let go
    double leastSkinC() const; // colder faces don't weld
    double leastMeltMm(double plateC) const;
};

struct BenchEdge {
    SheetRun run;
    std::optional<HeatStage> led; // through this in the last step
    bool alike = true;     // led through just what the station before was, from the beginning
    double standsBack = 0; // [m] behind the foremost station, both sheets together, cold
    double swelling = 0;   // [m] of one sheet, as of the last step
    double creep = 0;      // [m] what both gave way by and don't give back
    double pressure = 0;   // [Pa]
    Touches touches = Touches::Nothing;
    bool heated = false; // it has been near the plate
    double hottestPlateC = 0;
    std::array<bool, 2> hand{}; // touched by the hand
    SeamMarks marks;
    bool joined = false;
    double metLost = 0;  // [m] of one sheet, when the faces met
    double farthest = 0; // [m] travel since then
    bool set = false;
    double sunk = 0;   // [m] what shrank and was not followed, until it froze
    double torn = 0;   // [m] of one sheet that left too fast
    double thread = 0; // [m] of melt that strings between it and the plate
    double hair = 0;   // [m] of that, torn and hanging on it
    JoinView join;

    explicit BenchEdge(SheetRun edge) : run(std::move(edge)) {}

    /// Travel of the table at which its faces, or those and the plate, begin to touch [m].
    double touchesAt(double plateThickness) const {
        return standsBack + creep + 2 * (run.closing() - swelling) - plateThickness;
    }
    bool bonded(const BenchFixed& fixed) const { return joined && run.faceC() < fixed.solidC(); }
};

enum class WheelDoes { Held, Turns, RunsBack, LetsOff, Locked };

struct BenchSheet {
    bool film = true;
    bool planed = false;
    bool clamped = false;
    double leftM = 0; // how far it stands out of its table
    double rightM = 0;
    double leanM = 0;
};

struct BenchState {
    Milliseconds at{0};
    Milliseconds regime{0}; // when an edge last met something else
    VirtualPlate plate;
    double plateLeftS = 0;  // of the plate's way in or out
    bool plateIn = false;   // or on its way in, or not yet out
    bool plateGoes = false; // out
    std::vector<BenchEdge> edges;
    std::array<BenchSheet, 2> sheets;
    double gapLeft = 0; // [m] between the tables, until both sheets are clamped
    double gapRight = 0;
    double reach = 0;  // [m] both sheets' standing out at the foremost place
    double wheel = 0;  // [m]
    double travel = 0; // [m]
    WheelDoes wheelDoes = WheelDoes::Held;
    double wheelSpeed = 0; // [m/s]
    double friction = 0;   // [N]
    bool clampsEased = false;
    bool barsOpen = false;
    bool lifted = false;
    BenchInstants instants;
    std::vector<Mishap> mishaps;

    explicit BenchState(VirtualPlate heated) : plate(std::move(heated)) {}

    bool bothClamped() const { return sheets[0].clamped && sheets[1].clamped; }
    double behindBelow() const; // [m] both sheets' lower sides together, cold
    double behindAbove() const;
    bool anyJoined() const;
    double springN(const BenchFixed& fixed) const { return fixed.spring.rate * (wheel - travel); }
    double plateThickness() const;
};

/// How long the bench may go on from there without another look.
Milliseconds benchStride(const BenchState& state);
/// Leads it on by so much.
void stepBench(const BenchFixed& fixed, BenchState& state, Milliseconds gap);
Result<void> doAct(const BenchFixed& fixed, BenchState& state, const BenchAct& act);
BenchView viewOf(const BenchFixed& fixed, const BenchState& state);

} // namespace seamclock
