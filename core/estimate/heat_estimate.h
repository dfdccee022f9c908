// What the heat model says of a course: numbers with a spread, and curves. It explains a weld and
// never judges one.
//
// The spread: seven inputs that nobody measures at a bench are each moved to the ends of their
// range in a designed sample of eight runs (Plackett & Burman, Biometrika 33, 305, 1946;
// NIST/SEMATECH e-Handbook 5.3.3.5), which gives the effect of each; the half width is the root of
// the sum of their squares about the run with nominal values.
#pragma once

#include "core/estimate/heat_course.h"

#include <array>
#include <atomic>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct HeatRange {
    double low = 0;
    double likely = 0;
    double high = 0;

    bool operator==(const HeatRange&) const = default;
};

/// Each absent where the course did not come to it.
struct HeatNumbers {
    std::optional<HeatRange> alignS;         // until the bead stood, where the course says no time
    std::optional<HeatRange> beadMm;         // at the end of alignment
    std::optional<HeatRange> meltDepthMm;    // at the end of soak
    std::optional<HeatRange> skinEndOfSoakC; // as the other temperatures, at mid thickness
    std::optional<HeatRange> moltenInAirS;   // how long the skin would stay molten, once out
    std::optional<HeatRange> skinFacesMeetC;
    std::optional<HeatRange> weldPlaneAtReleaseC;
    std::optional<HeatRange> chosenReachedS;   // from the faces' meeting to the chosen temperature
    std::optional<HeatRange> sheetLossMm;      // each sheet, in all
    std::optional<HeatRange> closingMm;        // of both, after the lock
    std::optional<HeatRange> pressureFallPa;   // by that
    std::optional<HeatRange> readingFallUnits; // likewise, in units of the scale

    bool operator==(const HeatNumbers&) const = default;
};

struct HeatPoint {
    double seconds; // since alignment began
    HeatStage::At at;
    double faceC;
    double meltDepthMm;
    double beadMm;
    double sheetLossMm;
    double pressurePa;

    bool operator==(const HeatPoint&) const = default;
};

struct HeatEstimate {
    Material material;
    HeatCourse course;
    double chosenC = 60;
    HeatNumbers numbers;
    std::vector<HeatPoint> curve; // of the run with nominal values
    /// The skin's temperature when the faces meet, below which it is no longer molten.
    double meltingC = 0;
};

/// One of the uncertain inputs, with its ends.
struct HeatFactor {
    std::string name;
    std::string range; // in words, with its standing
};
std::array<HeatFactor, 7> heatFactors(const Material& material);

/// `stop`, if given, ends the work early; then nothing comes back but Refused.
Result<HeatEstimate> estimateHeat(
    const HeatCourse& course, const std::vector<Material>& materials, double chosenC = 60,
    const std::atomic<bool>* stop = nullptr);

/// The likely values alone, low and high the same, in a ninth of the time: for what is being moved
/// by hand. Errors as materialFor.
Result<HeatEstimate>
likelyHeat(const HeatCourse& course, const std::vector<Material>& materials, double chosenC = 60);

/// The material that goes by that name. Missing, with the names that there are.
Result<Material> materialFor(const std::vector<Material>& materials, const std::string& plastic);

} // namespace seamclock
