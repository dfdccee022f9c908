// The plan of one weld: everything the operator must set, wait for or not exceed, as integers that
// were rounded once. makePlan joins sheet, procedure, bench, ambient and drag. It refuses on
// geometry and the bench's data only; what the procedure lacks is named in `missing`, and such a
// plan is a card to read, not one to weld with. Once alignment starts the plan is fixed, and it is
// stored with the weld.
#pragma once

#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/bench/bench.h"
#include "core/procedure/procedure.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// A reading to set and the band in which it counts, in thousandths of the scale's unit.
struct ReadingBand {
    std::int64_t setMilli = 0;
    std::int64_t lowMilli = 0;
    std::int64_t highMilli = 0;

    bool holds(std::int64_t milli) const { return lowMilli <= milli && milli <= highMilli; }
    bool operator==(const ReadingBand&) const = default;
};

/// Something a person should know before, with its code for translation: ambient_outside_range,
/// ambient_outside_classes, known_gap, half_cooling, drag_not_measured, scale_coarse,
/// scale_too_coarse, set_outside_band, just_in_contact, drag_above_soak, force_below_bench,
/// soak_below_calibration, calibration_uncertain, and those of sheets.h. Limit and actual are in
/// `unit`: "mC", "ms", "mN", or "milli" for thousandths of the scale's unit.
struct PlanWarning {
    std::string code;
    std::string text;
    std::optional<std::int64_t> limit;
    std::optional<std::int64_t> actual;
    std::string unit;

    bool operator==(const PlanWarning&) const = default;
};

struct PlanSource {
    std::string value; // which of the plan's values
    Source source;

    bool operator==(const PlanSource&) const = default;
};

struct TimeBand {
    Milliseconds low{0};
    Milliseconds target{0};
    Milliseconds high{0};

    bool operator==(const TimeBand&) const = default;
};

struct WeldPlan {
    struct ScalePlan {
        std::string unit;
        std::int64_t divisionMilli = 0;
        std::int64_t zeroMilli = 0;
        ReadingBand alignment;
        ReadingBand soak;
        ReadingBand joining;

        bool operator==(const ScalePlan&) const = default;
    };
    struct Plate {
        std::int64_t minMc = 0; // [m°C]
        std::int64_t targetMc = 0;
        std::int64_t maxMc = 0;

        bool operator==(const Plate&) const = default;
    };
    struct Cooling {
        Milliseconds atLeast{0};
        std::vector<Milliseconds> rechecks; // after the lock

        bool operator==(const Cooling&) const = default;
    };

    std::string procedure;
    std::string edition;
    std::string material;
    std::string bench; // "" without one
    std::int64_t thicknessUm = 0;
    std::int64_t lengthUm = 0;
    std::int64_t ambientMc = 0;
    BandRule coolingRule = BandRule::Line;
    bool halfCooling = false;

    std::optional<std::int64_t> alignmentPa;
    std::optional<std::int64_t> soakAimPa;
    std::optional<std::int64_t> soakMaxPa;
    std::optional<std::int64_t> joiningPa;
    std::optional<std::int64_t> tolerancePa;
    std::optional<std::int64_t> alignmentMn; // p · s · L, without drag [mN]
    std::optional<std::int64_t> soakMaxMn;
    std::optional<std::int64_t> joiningMn;
    std::int64_t dragMn = 0;

    std::optional<ScalePlan> scale;
    std::optional<Plate> plate;
    std::int64_t gapUm = 0;
    std::int64_t clampingGapUm = 0;
    std::int64_t edgeGapMaxUm = 0;
    std::int64_t misalignmentMaxUm = 0;
    std::optional<std::int64_t> beadMinUm;
    std::optional<Milliseconds>
        alignMedian; // of this bench's last ten such welds, if at least five
    std::optional<Milliseconds> alignLate;
    std::optional<TimeBand> soak;
    std::optional<Milliseconds> changeoverMax;
    std::optional<TimeBand> buildUp;
    std::optional<Cooling> cooling;

    std::vector<std::string> checks;       // codes that must pass before alignment
    std::vector<std::string> releaseOrder; // the bench's
    std::vector<PlanWarning> warnings;
    std::vector<PlanSource> sources;
    std::vector<std::string> missing; // the terminal's names of values that the procedure lacks
    /// Likewise those that the shop filled into a gap of the source and no foreman attested.
    std::vector<std::string> unattested;

    /// The procedure lacks nothing, and what the shop filled in is attested: the card is whole, as
    /// far as the procedure goes. This is "ready" in the terminal's report, where a plan without a
    /// bench is a card to read.
    bool isComplete() const { return missing.empty() && unattested.empty(); }
    /// A weld can be opened with it: complete, and made for a bench. Without a bench there is no
    /// scale, hence no reading to set and no band in which "locked" could count, so such a plan is
    /// never ready.
    bool isReady() const { return isComplete() && scale.has_value(); }
    bool operator==(const WeldPlan&) const = default;
};

/// What a person states who asks for half the cooling time. Both must hold.
struct HalfCooling {
    bool workshop = false;     // workshop conditions
    bool hardlyLoaded = false; // hardly any load on the joint at removal and storage

    bool operator==(const HalfCooling&) const = default;
};

struct PlanRequest {
    Length thickness;
    std::vector<Length> lengths; // several short seams in one clamping: their lengths add up
    Temperature ambient =
        Temperature::celsius(20);        // whoever isn't told takes the procedure's reference
    std::optional<Force> drag;           // absent: taken as 0, with a warning
    std::optional<BandRule> coolingRule; // absent: the procedure's
    std::optional<HalfCooling> halfCooling;
    std::optional<Temperature>
        plateTarget; // absent: the procedure's, else the middle of its window
    std::optional<Milliseconds> alignMedian;
    /// A scale that is too coarse for the tolerance is then no refusal: kForemansScale is among the
    /// checks, and only a foreman can pass it over.
    bool scaleIsForemans = false;
};

/// The check that nobody can make, because the scale doesn't show what it asks.
inline constexpr const char* kForemansScale = "scale_readable";
/// The warning of a plan whose request named no drag.
inline constexpr const char* kDragNotMeasured = "drag_not_measured";

/// What a plan's sources say of a plate target that was asked for.
const Source& plateTargetSetByForeman();

/// The checks that a weld needs before alignment, in the order in which they are made (contracts,
/// "Checks"). A plan may have kForemansScale before them.
const std::vector<std::string>& weldChecks();

/// OutOfRange: thickness outside the procedure or the bench, a seam longer than the bench, a force
/// the scale can't show (above its end, or half a division more than twice the tolerance, unless
/// that is the foreman's), the
/// drive can't hold or the scale's calibration doesn't cover (soak may lie below it), drag that is
/// negative, values that are not finite; band-end where the procedure has no bands; half the
/// cooling where the procedure does not allow it, one of its conditions is not stated, or the wall
/// is too thin. `bench` may be null: then there is no scale.
Result<WeldPlan>
makePlan(const PlanRequest& request, const Procedure& procedure, const Bench* bench);

} // namespace seamclock
