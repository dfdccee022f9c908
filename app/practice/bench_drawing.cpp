#include "app/practice/bench_drawing.h"

#include "app/text/numbers.h"
#include "app/text/words.h"
#include "core/vbench/bench_numbers.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr double kSeen = 0.05; // [mm] what is less is not drawn as a gap

// A ribbon in moving air: it stands out nearly flat in a strong one, and sways slowly. Both chosen,
// so that it is seen from where the scale is read.
constexpr double kRibbonMostDeg = 80;
constexpr double kRibbonSwayDeg = 6;
constexpr double kRibbonSwayS = 2.4; // slower than anything may flash
constexpr double kPi = 3.14159265358979323846;

struct PracticeWords {
    Q_DECLARE_TR_FUNCTIONS(PracticeWords)
};

QString tr(const char* text) {
    return PracticeWords::tr(text);
}

// Whole degrees and hundredths of a millimetre: less is not seen, and would only repaint.
double fine(double mm) {
    return std::round(mm * 100) / 100;
}

SeamHeat heatOf(const SheetRun& edge) {
    const SheetField& field = edge.field();
    SeamHeat heat;
    for (std::size_t i = 0; i < field.columns(); ++i) {
        heat.depthMm.push_back(field.depthOf(i) * 1e3);
    }
    for (std::size_t row = 0; row < field.rows(); ++row) {
        const double end = field.heightOf(row) + field.grid().across[row] / 2;
        heat.rowEnds.push_back(end / field.halfThickness());
        for (std::size_t i = 0; i < field.columns(); ++i) {
            heat.celsius.push_back(std::round(field.celsius(i, row)));
        }
    }
    heat.meltingC = edge.material().meltingPoint();
    return heat;
}

void drawPlaces(BenchDrawing& drawing, const BenchView& view) {
    const bool both = view.clamped[0] && view.clamped[1];
    double least = view.stations.empty() ? 0 : view.stations.front().gapMm;
    for (const StationView& station : view.stations) {
        least = std::min(least, station.gapMm);
    }
    for (const StationView& station : view.stations) {
        PlaceDrawing place;
        place.topMm = fine(std::max(0.0, station.beadTopMm));
        place.bottomMm = fine(std::max(0.0, station.beadBottomMm));
        place.gapMm = both ? fine(station.gapMm - least) : 0;
        place.touches = station.touches != Touches::Nothing;
        place.joined = station.joined.has_value();
        place.dirty = station.marks.filmLeft || station.marks.smeared || station.marks.dirtyPlate;
        drawing.places.push_back(place);
    }
}

/// In figures, of the edge that is looked at.
QString noteOf(const StationView& station, const BenchView& view, const SheetRun* edge) {
    if (!view.clamped[0] && !view.clamped[1] && !view.barsOpen) {
        return tr("no sheet is in");
    }
    if (station.joined) {
        return tr("joined, bead %1 / %2 mm")
            .arg(numberText(station.beadTopMm, 1), numberText(station.beadBottomMm, 1));
    }
    if (station.meltMm > kSeen && edge != nullptr) {
        const QString depth = numberText(station.meltMm, 1);
        const QString melt = edge->material().crystals ? tr("melt %1 mm deep").arg(depth)
                                                       : tr("soft %1 mm deep").arg(depth);
        if (station.threadMm > 0 || station.hairMm > 0) {
            return tr("%1, it strings").arg(melt);
        }
        // A bare face: what the air takes of it.
        return station.touches == Touches::Nothing && view.plateInside < 1
                   ? tr("%1, skin %2 °C").arg(melt, numberText(station.skinC, 0))
                   : melt;
    }
    if (view.clamped[0] && view.clamped[1]) {
        if (station.behindMm > kSeen && view.plateInside <= 0) {
            const QString behind = numberText(station.behindMm, 1);
            return (view.leanMm[0] + view.leanMm[1] < 0 ? tr("%1 mm apart, %2 more above")
                                                        : tr("%1 mm apart, %2 more below"))
                .arg(numberText(station.gapMm, 1), behind);
        }
        return view.plateInside > 0 ? tr("%1 mm to the plate").arg(numberText(station.gapMm, 1))
                                    : tr("%1 mm apart").arg(numberText(station.gapMm, 1));
    }
    return {};
}

QString seamTextOf(const BenchDrawing& drawing, const BenchView& view) {
    if (!view.clamped[0] || !view.clamped[1]) {
        return tr("tables: front %1 mm, back %2 mm")
            .arg(numberText(view.gapLeftMm, 1), numberText(view.gapRightMm, 1));
    }
    const PlaceDrawing& front = drawing.places.front();
    const PlaceDrawing& back = drawing.places.back();
    const bool bead =
        std::any_of(drawing.places.begin(), drawing.places.end(), [](const PlaceDrawing& place) {
            return place.topMm > 0 || place.bottomMm > 0;
        });
    if (bead) {
        return tr("bead: front %1, back %2 mm")
            .arg(numberText(front.topMm, 1), numberText(back.topMm, 1));
    }
    return tr("stands back: front %1, back %2 mm")
        .arg(numberText(front.gapMm, 1), numberText(back.gapMm, 1));
}

} // namespace

double ribbonDegrees(double draught, Milliseconds at) {
    if (draught <= 1) {
        return 0;
    }
    const double lifted = kRibbonMostDeg * (1 - 1 / draught);
    const double seconds = static_cast<double>(at.count()) / 1e3;
    const double sway = kRibbonSwayDeg * std::sin(2 * kPi * seconds / kRibbonSwayS);
    return std::round(lifted + sway * (1 - 1 / draught));
}

QString placeName(int place, int places) {
    if (place == 0) {
        return tr("front");
    }
    if (place == places - 1) {
        return tr("back");
    }
    if (2 * place + 1 == places) {
        return tr("middle");
    }
    return 2 * place + 1 < places ? tr("near the front") : tr("near the back");
}

BenchDrawing practiceBenchView(
    const BenchView& view, const BenchSetup& setup, int place, const SheetRun* edge,
    const ScaleView& band) {
    BenchDrawing drawing;
    const auto places = static_cast<int>(view.stations.size());
    const int at = std::clamp(place, 0, std::max(places - 1, 0));
    const StationView& station = view.stations[static_cast<std::size_t>(at)];
    const WeldPlan& plan = setup.plan;

    drawing.thicknessMm = static_cast<double>(plan.thicknessUm) / 1e3;
    drawing.plateMm = bench_numbers::kPlateThickness * 1e3;
    const bool both = view.clamped[0] && view.clamped[1];
    drawing.gapMm = fine((view.gapLeftMm + view.gapRightMm) / 2);
    const bool plate = view.plateInside > 0;
    drawing.openMm = fine(
        !both   ? drawing.gapMm
        : plate ? 2 * station.gapMm + drawing.plateMm
                : station.gapMm);
    drawing.plateInside = view.plateInside;
    drawing.plateC = std::round(view.plateShownC);
    drawing.plateText = tr("%1 °C").arg(numberText(drawing.plateC, 0));
    drawing.plateDirty = view.plateDirty;
    drawing.sheetIn[0] = view.clamped[0] || view.barsOpen;
    drawing.sheetIn[1] = view.clamped[1] || view.barsOpen;
    drawing.clampsEased = view.clampsEased;
    drawing.barsOpen = view.barsOpen;
    drawing.lifted = view.lifted;
    drawing.kinkDeg = view.kinkDeg;
    const auto rate = setup.bench.scale.ratePerMillimetre(); // there, or the bench was not set
    drawing.springMm = rate ? fine(view.scale.springN / inNewtons(*rate)) : 0;
    drawing.wheelMm = fine(view.travelMm) + drawing.springMm;
    drawing.wheelMmPerS = view.wheelMmPerS;
    drawing.wheel = view.wheel;
    drawing.ribbonDeg = ribbonDegrees(view.draught, view.at);

    drawing.place = at;
    drawing.placeText = placeName(at, places);
    if (edge != nullptr && both) {
        drawing.heat = heatOf(*edge);
    }
    drawing.skinC = std::round(station.skinC);
    drawing.topMm = fine(std::max(0.0, station.beadTopMm));
    drawing.bottomMm = fine(std::max(0.0, station.beadBottomMm));
    drawing.valleyTopMm = fine(station.valleyTopMm);
    drawing.valleyBottomMm = fine(station.valleyBottomMm);
    const double below = std::max(view.leanMm[0], 0.0) + std::max(view.leanMm[1], 0.0);
    const double above = std::max(-view.leanMm[0], 0.0) + std::max(-view.leanMm[1], 0.0);
    const double whole = std::max(below, above);
    for (std::size_t sheet = 0; whole > 0 && sheet < 2; ++sheet) { // what is not yet melted back
        drawing.leanMm[sheet] = fine(view.leanMm[sheet] * station.behindMm / whole);
    }
    drawing.threadMm = fine(station.threadMm);
    drawing.hairMm = fine(station.hairMm);
    drawing.joined = station.joined.has_value() && !station.marks.parted;
    if (station.joined) {
        drawing.meltLeftMm = fine(station.joined->leftMm());
        drawing.skinned = station.joined->skinC < station.joined->leastSkinC;
        drawing.spoiled = station.marks.contaminated();
    }
    drawing.note = noteOf(station, view, edge);
    drawing.beadMm = plan.beadMinUm ? static_cast<double>(*plan.beadMinUm) / 1e3 : 0;
    drawPlaces(drawing, view);
    drawing.seamText = seamTextOf(drawing, view);

    drawing.scale = band;
    const SpringScale& scale = setup.bench.scale;
    drawing.scale.unit = fromUtf8(scale.unit);
    drawing.scale.zero = static_cast<double>(scale.zeroMilli) / 1e3;
    drawing.scale.division = static_cast<double>(scale.divisionMilli) / 1e3;
    drawing.scale.max = std::min(
        std::max(band.max, 10 * drawing.scale.division), static_cast<double>(scale.maxMilli) / 1e3);
    if (plan.scale) { // one window for the whole weld
        const double high = static_cast<double>(plan.scale->joining.highMilli) / 1e3;
        drawing.scale.max = std::max(drawing.scale.max, std::ceil(high * 1.2));
    }
    drawing.reading = fine(view.scale.reading);
    drawing.readingText =
        tr("Scale reads %1 %2")
            .arg(readingText(view.scale.seenMilli, scale.divisionMilli), drawing.scale.unit);
    return drawing;
}

} // namespace seamclock
