// What can be seen and measured at the virtual bench at one moment: the one account that pictures
// are drawn from and a scorer reads.
#pragma once

#include "core/base/instant.h"

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace seamclock {

enum class Touches { Nothing, Plate, Face };

/// What spoils a joint and stays, by place.
struct SeamMarks {
    bool filmLeft = false; // on the edge as it met plate or face
    bool handTouched = false;
    bool dirtyPlate = false; // it met one
    bool smeared = false;    // the plate was drawn out of pressed melt
    bool parted = false;     // joined, and pulled apart while molten

    bool contaminated() const { return filmLeft || handTouched || dirtyPlate || smeared; }
    bool operator==(const SeamMarks&) const = default;
};

/// How one place of the seam was joined: what the bend test asks.
struct JoinView {
    double skinC = 0;      // when its faces met
    double meltMm = 0;     // of one sheet, likewise
    double squeezedMm = 0; // of one sheet, since
    // What these must be for a joint that bends (the bend test's; 0: not known).
    double leastSkinC = 0;
    double leastMeltMm = 0;
    double leastLeftMm = 0; // of the melt, when the pressing is over
    double behindMm = 0;    // how far one side stood behind when the faces met, both sheets
    double frozePa = 0;     // on the faces when half of the weld plane had frozen
    bool frozen = false;
    double peakPa = 0;            // the most since the faces met
    std::optional<double> letGoC; // the weld plane's when clamps or bars first gave it free

    double leftMm() const { return meltMm > squeezedMm ? meltMm - squeezedMm : 0; }
    bool operator==(const JoinView&) const = default;
};

struct StationView {
    double placeMm = 0; // its middle, from the left
    Touches touches = Touches::Nothing;
    double gapMm = 0;         // to the other face; with the plate in, to the plate
    double pressurePa = 0;    // on the face; negative: pulled
    double plateC = 0;        // the plate's face there
    double hottestPlateC = 0; // that this edge has touched; 0: none
    double skinC = 0;         // of the face, in the middle of the wall; joined: the weld plane
    double meltMm = 0;        // of one sheet
    double lostMm = 0;        // of one sheet, pressed out
    double beadTopMm = 0;     // of one sheet: both are alike
    double beadBottomMm = 0;
    double valleyTopMm = 0; // K: of the seam's valley above the surface; joined only
    double valleyBottomMm = 0;
    double behindMm = 0; // how far one side of the edge still stands behind, both sheets
    double threadMm = 0; // melt drawn between edge and plate as they part: strings
    double hairMm = 0;   // what hangs on the edge of those that tore
    SeamMarks marks;
    std::optional<JoinView> joined;

    bool operator==(const StationView&) const = default;
};

struct BenchScale {
    double reading = 0;         // in the scale's unit, as exact as it is
    std::int64_t seenMilli = 0; // as a person reads it: the nearest division
    double springN = 0;
    double facesN = 0;    // what presses the faces
    double frictionN = 0; // what the tables' drag takes of it; negative: it holds them on
    double storedJ = 0;

    bool operator==(const BenchScale&) const = default;
};

enum class WheelHold { Held, Loose, Locked };

/// Done against the order of things, with what came of it.
enum class MishapKind {
    PlateDragged, // out while pressed
    SpringKick,   // bars opened with the spring on, where the bench wants it off before
    Parted,       // hot faces pulled apart
    LetGoHot,     // clamps or bars opened over a soft weld plane
    ScaleEnd      // turned against the end of the scale
};
/// "plate_dragged" …
std::string_view toString(MishapKind kind);

struct Mishap {
    MishapKind kind = MishapKind::PlateDragged;
    Milliseconds at{0};
    double size = 0; // pressure [Pa], energy [J], distance [mm], temperature [°C] or reading

    bool operator==(const Mishap&) const = default;
};

/// When it first came to that, to within a step of the bench; absent: it has not.
struct BenchInstants {
    std::optional<Milliseconds> plateTouched; // by the first station
    std::optional<Milliseconds> plateLeft;    // by the last
    std::optional<Milliseconds> facesMet;     // the first, hot
    std::optional<Milliseconds> locked;       // after that
    std::optional<Milliseconds> letGo;

    bool operator==(const BenchInstants&) const = default;
};

struct BenchView {
    Milliseconds at{0};
    BenchScale scale;
    WheelHold wheel = WheelHold::Held;
    double wheelMmPerS = 0;
    double travelMm = 0;     // of the moving table; 0: the edges, as they were clamped, just meet
    double plateShownC = 0;  // its own display
    double plateTargetC = 0; // what its controller is set to
    bool plateDirty = false;
    double plateInside = 0; // 0: parked, 1: between the edges
    double gapLeftMm = 0;   // between the tables
    double gapRightMm = 0;
    bool film[2] = {true, true}; // on the sheets' edges
    bool planed[2] = {false, false};
    bool clamped[2] = {false, false};
    double leanMm[2] = {0, 0}; // how far the edge's lower side stands behind, as it was clamped
    double draught = 1;        // times as much heat as a bare face loses in still air
    bool clampsEased = false;
    bool barsOpen = false;
    bool lifted = false;
    double kinkDeg = 0; // of the lifted or freed joint
    /// Of one sheet when the faces meet, and of that what is left when the pressing is over, had
    /// all been done by the plan; 0: the plan does not say enough.
    double planMeltMm = 0;
    double planLeftMm = 0;
    std::vector<StationView> stations;
    BenchInstants instants;
    std::vector<Mishap> mishaps;

    bool operator==(const BenchView&) const = default;
};

} // namespace seamclock
