// What is drawn of the virtual bench at one moment, as a pure function of its view: the same
// account that the score reads, and nothing beside it. One place along the seam is looked at
// closely, as from its end; all places are shown in the row along it. Front is the seam's
// beginning. What is painted of it is bench_scene.h's.
#pragma once

#include "app/parts/scale_view.h"
#include "app/parts/seam_picture.h"
#include "core/vbench/virtual_bench.h"

#include <QString>
#include <optional>
#include <vector>

namespace seamclock {

/// One place along the seam.
struct PlaceDrawing {
    double topMm = 0; // of one sheet's bead
    double bottomMm = 0;
    double gapMm = 0; // more than at the foremost place, once both sheets are clamped
    bool touches = false;
    bool joined = false;
    bool dirty = false; // something is on the edge that can be seen: film, melt drawn out

    bool operator==(const PlaceDrawing&) const = default;
};

struct BenchDrawing {
    double thicknessMm = 10;
    double openMm = 0; // between the faces at the place that is looked at
    double plateMm = 10;
    double plateInside = 0; // 0: parked above, 1: between the edges
    double plateC = 20;     // its own display
    QString plateText;
    bool plateDirty = false;

    double gapMm = 0; // between the tables, in the middle
    bool sheetIn[2] = {false, false};
    bool clampsEased = false;
    bool barsOpen = false;
    bool lifted = false;
    double kinkDeg = 0;
    double springMm = 0; // pressed by so much
    double wheelMm = 0;  // the spring's far end
    double wheelMmPerS = 0;
    double ribbonDeg = 0; // of a ribbon on the bench, from hanging straight: the draught
    WheelHold wheel = WheelHold::Held;

    int place = 0; // the one that is looked at
    QString placeText;
    std::optional<SeamHeat> heat;
    double skinC = 20;
    double topMm = 0;
    double bottomMm = 0;
    double valleyTopMm = 0;
    double valleyBottomMm = 0;
    double leanMm[2] = {0, 0}; // how far each edge's lower side still stands behind its upper
    double threadMm = 0;       // melt strings between edge and plate
    double hairMm = 0;         // or hangs on the edge
    bool joined = false;
    // Of the joint, as a cut across it would show it:
    double meltLeftMm = 0; // of each sheet, between the faces and what never melted
    bool skinned = false;  // a face was too cold as they met: a line of its own
    bool spoiled = false;  // film, grease or melt drawn out lies between the faces
    QString note;          // melt and gap in figures
    double beadMm = 0;     // to reach; 0: none
    std::vector<PlaceDrawing> places;
    QString seamText; // what the row along the seam says beside its picture

    ScaleView scale; // band and mark, as the operator's screen has them
    double reading = 0;
    QString readingText;

    bool operator==(const BenchDrawing&) const = default;
};

/// `edge`: the heat at that place; may be null. `band`: the operator's view of the scale.
BenchDrawing practiceBenchView(
    const BenchView& view, const BenchSetup& setup, int place, const SheetRun* edge,
    const ScaleView& band);

/// How far a draught of that strength lifts a ribbon from hanging straight, at that time [°].
double ribbonDegrees(double draught, Milliseconds at);

/// "front", "middle", "back", and between.
QString placeName(int place, int places);

} // namespace seamclock
