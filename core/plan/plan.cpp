#include "core/plan/plan.h"

#include "core/base/plain_number.h"

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

namespace seamclock {

namespace {

// Binary fractions leave a decimal like 2.2 at 2199.9999999999995 thousandths. Whatever is rounded
// in one direction gets this much of the step (a millionth of a thousandth) first: far above the
// noise, far below what can be read.
constexpr double kNoise = 1e-6;

std::int64_t roundedDown(double value) {
    return static_cast<std::int64_t>(std::floor(value + kNoise));
}
std::int64_t roundedUp(double value) {
    return static_cast<std::int64_t>(std::ceil(value - kNoise));
}
std::int64_t nearest(double value) {
    return std::llround(value);
}

std::string milliShown(double milli) {
    return plainNumber(std::round(milli) / 1e3);
}
std::string newtonsShown(double force) {
    return plainNumber(std::round(force * 1e3) / 1e3) + " N";
}
std::string millimetresShown(Length length) {
    return plainNumber(inMillimetres(length));
}

tl::unexpected<Error> outOfRange(std::string detail) {
    return fail(ErrorCode::OutOfRange, std::move(detail));
}

constexpr const char* kForceBelow = "force_below_bench";

std::int64_t floorDivision(std::int64_t value, std::int64_t divisor) {
    const std::int64_t quotient = value / divisor;
    return quotient * divisor > value ? quotient - 1 : quotient;
}

// Forces of a seam to readings of a scale, in thousandths of its unit.
class Readings {
public:
    Readings(const SpringScale& scale, double drag)
        : m_scale(scale), m_rate(inNewtons(scale.rate())), m_preload(inNewtons(scale.preload)),
          m_drag(drag) {}

    /// The table is pushed forwards against drag, which the scale therefore shows as well.
    double pushing(double force) const { return at(force + m_drag); }
    /// Coming down from alignment, friction holds the table on.
    double comingDown(double force) const { return at(force - m_drag); }
    double width(double force) const { return force / m_rate * 1e3; }
    /// The largest force that can still be shown while pushing.
    double greatestForce() const {
        return static_cast<double>(m_scale.maxMilli - m_scale.zeroMilli) / 1e3 * m_rate - m_drag -
               m_preload;
    }

    /// The nearest mark of the scale, the lower of two that are as near, never past the scale's
    /// end.
    std::int64_t nearestMark(double milli) const {
        const auto division = static_cast<double>(m_scale.divisionMilli);
        const auto marks =
            static_cast<std::int64_t>(std::ceil((milli - division / 2 - kNoise) / division));
        return std::min(marks * m_scale.divisionMilli, markBelow(m_scale.maxMilli));
    }
    std::int64_t markBelow(std::int64_t milli) const {
        return floorDivision(milli, m_scale.divisionMilli) * m_scale.divisionMilli;
    }
    std::int64_t firstMarkAboveZero() const {
        return markBelow(m_scale.zeroMilli) + m_scale.divisionMilli;
    }

private:
    double at(double force) const {
        return static_cast<double>(m_scale.zeroMilli) + (force + m_preload) / m_rate * 1e3;
    }

    const SpringScale& m_scale;
    double m_rate;
    double m_preload;
    double m_drag;
};

class Planner {
public:
    Planner(const PlanRequest& request, const Procedure& procedure, const Bench* bench)
        : m_request(request), m_procedure(procedure), m_bench(bench) {}

    Result<WeldPlan> make() {
        for (const auto step :
             {&Planner::takeThickness, &Planner::takeLength, &Planner::takeSurroundings,
              &Planner::takeCoolingRule, &Planner::takeHalfCooling, &Planner::takePlate}) {
            if (const auto taken = (this->*step)(); !taken) {
                return tl::unexpected<Error>(taken.error());
            }
        }
        name();
        pressures();
        gaps();
        if (const auto read = readings(); !read) {
            return tl::unexpected<Error>(read.error());
        }
        bead();
        times();
        m_plan.checks = weldChecks();
        if (m_scaleIsForemans) {
            m_plan.checks.insert(m_plan.checks.begin(), kForemansScale);
        }
        return std::move(m_plan);
    }

private:
    Result<void> takeThickness() {
        const double mm = inMillimetres(m_request.thickness);
        const std::string range = millimetresShown(m_procedure.thinnest()) + " to " +
                                  millimetresShown(m_procedure.thickest()) + " mm of " +
                                  m_procedure.id;
        if (!std::isfinite(mm)) {
            return outOfRange(
                "thickness " + plainNumber(mm) + " is not a finite number; allowed " + range);
        }
        constexpr double kFarTooThickMm =
            1e6; // beyond any table, and safe to turn into micrometres
        const std::string value = "thickness " + plainNumber(mm) + " mm is outside ";
        if (std::fabs(mm) > kFarTooThickMm) {
            return outOfRange(value + range);
        }
        m_plan.thicknessUm = nearest(inMicrometres(m_request.thickness));
        m_thickness = micrometres(static_cast<double>(m_plan.thicknessUm));
        const auto within = [this](Length from, Length to) {
            return m_plan.thicknessUm >= nearest(inMicrometres(from)) &&
                   m_plan.thicknessUm <= nearest(inMicrometres(to));
        };
        if (!within(m_procedure.thinnest(), m_procedure.thickest())) {
            return outOfRange(value + range);
        }
        if (m_bench != nullptr && !within(m_bench->thinnestSheet, m_bench->thickestSheet)) {
            return outOfRange(
                value + millimetresShown(m_bench->thinnestSheet) + " to " +
                millimetresShown(m_bench->thickestSheet) + " mm of bench " + m_bench->id);
        }
        return {};
    }

    Result<void> takeLength() {
        constexpr double kShortestMm = 1; // a seam shorter than a millimetre is a slip of the pen
        constexpr double kLongestMm = 100000;
        const double most = m_bench != nullptr ? inMillimetres(m_bench->longestSeam) : kLongestMm;
        const std::string range = plainNumber(kShortestMm) + " to " + plainNumber(most) + " mm" +
                                  (m_bench != nullptr ? " of bench " + m_bench->id : "");
        if (m_request.lengths.empty()) {
            return outOfRange("no seam length is given; allowed " + range);
        }
        const auto refused = [&range](const char* what, double mm) {
            return outOfRange(
                what + plainNumber(mm) +
                (std::isfinite(mm) ? " mm is outside " : " is not a finite number; allowed ") +
                range);
        };
        double total = 0;
        for (const Length& each : m_request.lengths) {
            const double mm = inMillimetres(each);
            if (!std::isfinite(mm) || mm < kShortestMm || mm > kLongestMm) {
                return refused("length ", mm);
            }
            total += mm;
        }
        m_plan.lengthUm = nearest(total * 1e3);
        if (m_plan.lengthUm > nearest(most * 1e3)) {
            return refused(m_request.lengths.size() > 1 ? "total length " : "length ", total);
        }
        return {};
    }

    Result<void> takeSurroundings() {
        constexpr double kColdestC =
            -40; // beyond these a thermometer is broken or the unit is wrong
        constexpr double kHottestC = 60;
        const double ambient = m_request.ambient.inCelsius();
        if (!std::isfinite(ambient)) {
            return outOfRange(
                "ambient " + plainNumber(ambient) + " is not a finite number; allowed " +
                plainNumber(kColdestC) + " to " + plainNumber(kHottestC) + " °C");
        }
        m_plan.ambientMc = nearest(ambient * 1e3);
        const std::string shown = milliShown(static_cast<double>(m_plan.ambientMc)) + " °C";
        if (ambient < kColdestC - kNoise || ambient > kHottestC + kNoise) {
            return outOfRange(
                "ambient " + shown + " is outside " + plainNumber(kColdestC) + " to " +
                plainNumber(kHottestC) + " °C");
        }
        constexpr std::int64_t kCoolMc = 5000;
        constexpr std::int64_t kWarmMc = 45000;
        if (m_plan.ambientMc < kCoolMc || m_plan.ambientMc > kWarmMc) {
            warn(
                {"ambient_outside_range", "ambient " + shown + " is outside 5 to 45 °C",
                 m_plan.ambientMc < kCoolMc ? kCoolMc : kWarmMc, m_plan.ambientMc, "mC"});
        }
        constexpr double kMostDrag = 100000;
        m_drag = m_request.drag ? inNewtons(*m_request.drag) : 0;
        if (!std::isfinite(m_drag) || m_drag < 0 || m_drag > kMostDrag) {
            return outOfRange(
                "drag " + plainNumber(m_drag) +
                (std::isfinite(m_drag) ? " N is outside 0 to "
                                       : " is not a number; allowed 0 to ") +
                plainNumber(kMostDrag) + " N");
        }
        m_plan.dragMn = nearest(m_drag * 1e3);
        m_drag = static_cast<double>(m_plan.dragMn) / 1e3;
        if (!m_request.drag) {
            warn(
                {kDragNotMeasured, "drag was not measured; it is taken as 0 N", std::nullopt,
                 std::nullopt, ""});
        }
        if (m_request.alignMedian) {
            constexpr Milliseconds kDay = std::chrono::hours(24);
            if (*m_request.alignMedian <= Milliseconds(0) || *m_request.alignMedian > kDay) {
                return outOfRange(
                    "median of alignment " + std::to_string(m_request.alignMedian->count()) +
                    " ms is outside 1 to " + std::to_string(kDay.count()) + " ms");
            }
        }
        return {};
    }

    Result<void> takeCoolingRule() {
        m_plan.coolingRule = m_request.coolingRule.value_or(m_procedure.coolingRule);
        if (m_plan.coolingRule == BandRule::BandEnd && !m_procedure.coolingHasBands()) {
            return outOfRange(
                "cooling rule band-end is not offered by " + m_procedure.id +
                ", whose cooling has no bands; allowed line");
        }
        return {};
    }

    Result<void> takeHalfCooling() {
        if (!m_request.halfCooling) {
            return {};
        }
        const auto& rule = m_procedure.halfCooling;
        if (!rule) {
            return outOfRange(
                "half cooling is not allowed by " + m_procedure.id +
                "; allowed: the whole cooling time");
        }
        const std::string allowed =
            "allowed only in workshop conditions, with hardly any load on the joint at removal and "
            "storage, and from " +
            millimetresShown(rule->from) + " mm of wall";
        if (!m_request.halfCooling->workshop) {
            return outOfRange("half cooling outside workshop conditions; " + allowed);
        }
        if (!m_request.halfCooling->hardlyLoaded) {
            return outOfRange("half cooling of a joint that is loaded at once; " + allowed);
        }
        if (m_plan.thicknessUm < nearest(inMicrometres(rule->from))) {
            return outOfRange(
                "half cooling of " + millimetresShown(m_thickness) + " mm; " + allowed);
        }
        m_plan.halfCooling = true;
        return {};
    }

    Result<void> takePlate() {
        const auto& window = m_procedure.plate;
        const auto& asked = m_request.plateTarget;
        if (!window) {
            lacks("heated_tool_C");
            if (asked) {
                return outOfRange(
                    "plate target " + plainNumber(asked->inCelsius()) +
                    " °C can't be judged: " + m_procedure.id + " has no plate window");
            }
            return {};
        }
        const auto milli = [](Temperature t) { return nearest(t.inCelsius() * 1e3); };
        WeldPlan::Plate plate;
        plate.minMc = milli(window->min);
        plate.maxMc = milli(window->max);
        plate.targetMc = (plate.minMc + plate.maxMc) / 2;
        source("heated_tool_C", window->source);
        filled("heated_tool_C", window->source);
        if (asked) {
            const double celsius = asked->inCelsius();
            // Compared before it is rounded: not every double fits an integer.
            if (!(celsius * 1e3 >= static_cast<double>(plate.minMc) - 0.5 &&
                  celsius * 1e3 <= static_cast<double>(plate.maxMc) + 0.5)) {
                return outOfRange(
                    "plate target " + plainNumber(celsius) + " °C is outside " +
                    milliShown(static_cast<double>(plate.minMc)) + " to " +
                    milliShown(static_cast<double>(plate.maxMc)) + " °C of " + m_procedure.id);
            }
            plate.targetMc = std::clamp(milli(*asked), plate.minMc, plate.maxMc);
            source("heated_tool_C.target", plateTargetSetByForeman());
        } else if (window->target) {
            plate.targetMc = milli(*window->target);
            source("heated_tool_C.target", window->source);
        } else {
            source(
                "heated_tool_C.target",
                {"the middle of the procedure's window", Standing::Derived});
        }
        m_plan.plate = plate;
        return {};
    }

    void name() {
        m_plan.procedure = m_procedure.id;
        m_plan.edition = m_procedure.edition;
        m_plan.material = m_procedure.material;
        if (m_bench != nullptr) {
            m_plan.bench = m_bench->id;
            m_plan.releaseOrder = m_bench->releaseOrder;
        }
    }

    void pressures() {
        const PressureRule& rule = m_procedure.pressure;
        const auto take = [this](
                              const char* key, const std::optional<Pressure>& pressure,
                              const Source& from, std::optional<std::int64_t>& pascals) {
            if (pressure) {
                pascals = nearest(inPascals(*pressure));
                source(key, from);
                filled(key, from);
            } else {
                lacks(key);
            }
        };
        take("pressure_N_mm2.alignment", rule.alignment, rule.alignmentSource, m_plan.alignmentPa);
        if (rule.soakToDrag) {
            source("scale.soak", *rule.soakToDrag);
        } else {
            take("pressure_N_mm2.soak_aim", rule.soakAim, rule.soakAimSource, m_plan.soakAimPa);
            take("pressure_N_mm2.soak_max", rule.soakMax, rule.soakMaxSource, m_plan.soakMaxPa);
        }
        take("pressure_N_mm2.joining", rule.joining, rule.joiningSource, m_plan.joiningPa);
        take("pressure_N_mm2.tolerance", rule.tolerance, rule.toleranceSource, m_plan.tolerancePa);
        const auto force = [this](const std::optional<std::int64_t>& pascals) {
            return pascals ? std::optional(nearest(forceAt(*pascals) * 1e3)) : std::nullopt;
        };
        m_plan.alignmentMn = force(m_plan.alignmentPa);
        m_plan.soakMaxMn = force(m_plan.soakMaxPa);
        m_plan.joiningMn = force(m_plan.joiningPa);
        if (m_plan.alignmentMn || m_plan.soakMaxMn || m_plan.joiningMn) {
            source(
                "force_N", {"pressure times thickness times length: common practice, no source",
                            Standing::CommonPractice});
        }
    }

    void gaps() {
        const Source rule{
            "the gap is the sheet's thickness, twice that before the second sheet, by the bench's "
            "rule: common practice, no source",
            Standing::CommonPractice};
        const GapRule gapRule = m_bench != nullptr ? m_bench->gapRule : GapRule{};
        const Length gap = gapRule.gap(m_thickness);
        m_plan.gapUm = nearest(inMicrometres(gap));
        m_plan.clampingGapUm = nearest(inMicrometres(gap) * gapRule.clampingFactor);
        source("gap_mm", rule);
        source("clamping_gap_mm", rule);
        constexpr std::int64_t kEdgeGapUm = 500;
        if (m_bench != nullptr) {
            m_plan.edgeGapMaxUm = roundedDown(inMicrometres(m_bench->edgeGapMax));
            source("edge_gap_max_mm", {"the bench's own data", Standing::CommonPractice});
        } else {
            m_plan.edgeGapMaxUm = kEdgeGapUm;
            source(
                "edge_gap_max_mm",
                {"0.5 mm, as for pipe up to 355 mm; for sheet from memory", Standing::Memory});
        }
        m_plan.misalignmentMaxUm = m_plan.thicknessUm / 10;
        source("misalignment_max_mm", {"a tenth of the thickness, as DVS 2207-1", Standing::Seen});
    }

    Result<void> readings() {
        if (m_bench == nullptr) {
            return {};
        }
        const SpringScale& scale = m_bench->scale;
        const Readings readings(scale, m_drag);
        for (const auto& [phase, pascals] :
             {std::pair{"alignment", m_plan.alignmentPa}, std::pair{"joining", m_plan.joiningPa}}) {
            if (pascals) {
                if (auto shown = canBeShown(readings, phase, forceAt(*pascals)); !shown) {
                    return shown;
                }
                if (auto held = canBeHeld(phase, forceAt(*pascals)); !held) {
                    return held;
                }
            }
        }
        const bool soakKnown =
            m_procedure.pressure.soakToDrag || (m_plan.soakAimPa && m_plan.soakMaxPa);
        if (!m_plan.alignmentPa || !m_plan.joiningPa || !m_plan.tolerancePa || !soakKnown) {
            return {}; // named in missing
        }
        const double tolerance = readings.width(forceAt(*m_plan.tolerancePa));
        const auto division = static_cast<double>(scale.divisionMilli);
        if (division / 2 > 2 * tolerance + kNoise) {
            const std::string why =
                "half a division, " + milliShown(division / 2) + " " + scale.unit +
                ", is more than twice the tolerance of " + milliShown(tolerance) + " " +
                scale.unit + " (" + newtonsShown(forceAt(*m_plan.tolerancePa)) + "): bench " +
                m_bench->id + " can't show this seam's " +
                newtonsShown(forceAt(*m_plan.joiningPa)) + "; allowed divisions up to " +
                milliShown(std::floor(4 * tolerance)) + " " + scale.unit;
            if (!m_request.scaleIsForemans) {
                return outOfRange(why);
            }
            m_scaleIsForemans = true;
            m_plan.warnings.insert( // before all others
                m_plan.warnings.begin(),
                {"scale_too_coarse", why + "; only a foreman can allow this weld",
                 roundedDown(4 * tolerance), scale.divisionMilli, "milli"});
        }
        // With a tolerance under one division, the marks on both sides of the right reading lie
        // outside the band or on its edge: the scale then shows whether the force is right only
        // between its marks.
        if (!m_scaleIsForemans && tolerance < division - kNoise) {
            warn(
                {"scale_coarse",
                 "the scale's divisions of " + milliShown(division) + " " + scale.unit +
                     " can hardly show the tolerance of " + milliShown(tolerance) + " " +
                     scale.unit + ": " + wayOut(readings, division / tolerance),
                 scale.divisionMilli, roundedDown(tolerance), "milli"});
        }
        WeldPlan::ScalePlan plan;
        plan.unit = scale.unit;
        plan.divisionMilli = scale.divisionMilli;
        plan.zeroMilli = scale.zeroMilli;
        plan.alignment = pressed(readings, "alignment", *m_plan.alignmentPa);
        plan.joining = *m_plan.joiningPa == *m_plan.alignmentPa
                           ? plan.alignment // and no second warning
                           : pressed(readings, "joining", *m_plan.joiningPa);
        plan.soak = m_procedure.pressure.soakToDrag ? soakingToDrag(readings) : soaking(readings);
        m_plan.scale = std::move(plan);
        if (auto known = insideCalibration(readings); !known) {
            return known;
        }
        uncertainty();
        source(
            "scale", {"zero and (force, drag and preload) by the spring's rate, from the bench's "
                      "own data: common practice, no source",
                      Standing::CommonPractice});
        return {};
    }

    Result<void>
    canBeShown(const Readings& readings, const std::string& phase, double force) const {
        const SpringScale& scale = m_bench->scale;
        const double reading = readings.pushing(force);
        if (reading <= static_cast<double>(scale.maxMilli) + kNoise) {
            return {};
        }
        // The greatest force is below zero where drag alone moves the scale past its end.
        return outOfRange(
            phase + " reading " + milliShown(reading) + " " + scale.unit + " is above " +
            milliShown(static_cast<double>(scale.maxMilli)) + " " + scale.unit +
            ", the end of the scale of bench " + m_bench->id + ": the seam needs " +
            newtonsShown(force) + ", with a drag of " + newtonsShown(m_drag) +
            " the scale shows up to " + newtonsShown(std::max(0.0, readings.greatestForce())));
    }

    /// At the spring, where the drive holds it: with drag and preload.
    double atSpring(double force) const {
        return force + m_drag + inNewtons(m_bench->scale.preload);
    }

    Result<void> canBeHeld(const std::string& phase, double force) {
        const ForceLimits& limits = m_bench->forceLimits;
        const double spring = atSpring(force);
        const std::string shown =
            phase + " needs " + newtonsShown(spring) + " at the spring, with drag and preload, ";
        const auto limitMn = [](Force limit) { return nearest(inNewtons(limit) * 1e3); };
        if (limits.max && spring > inNewtons(*limits.max) + kNoise) {
            return outOfRange(
                shown + "above " + newtonsShown(inNewtons(*limits.max)) + ", the most that bench " +
                m_bench->id + " can hold");
        }
        const bool told = !m_plan.warnings.empty() && m_plan.warnings.back().code == kForceBelow;
        if (limits.min && spring < inNewtons(*limits.min) - kNoise && !told) {
            warn(
                {kForceBelow,
                 shown + "below " + newtonsShown(inNewtons(*limits.min)) +
                     ", the least that bench " + m_bench->id +
                     " holds steadily: weld an offcut beside it, or pair seams",
                 limitMn(*limits.min), nearest(spring * 1e3), "mN"});
        }
        return {};
    }

    /// What makes the tolerance a division wide, in numbers; `times` as much force is needed.
    std::string wayOut(const Readings& readings, double times) const {
        const SpringScale& scale = m_bench->scale;
        const double length = static_cast<double>(m_plan.lengthUm) / 1e3;
        const double longest = inMillimetres(m_bench->longestSeam);
        const double whole = std::ceil(length * times - kNoise);
        const double seams = std::ceil(times - kNoise);
        const auto possible = [&](double mm) {
            const double force =
                forceAt(std::max(*m_plan.alignmentPa, *m_plan.joiningPa)) * mm / length;
            const auto& fit = m_bench->calibration ? m_bench->calibration->fit : std::nullopt;
            const double end = static_cast<double>(scale.maxMilli);
            return mm <= longest + kNoise && readings.pushing(force) <= end + kNoise &&
                   (!fit || readings.pushing(force) <= fit->highestReading * 1e3) &&
                   (!m_bench->forceLimits.max ||
                    atSpring(force) <= inNewtons(*m_bench->forceLimits.max) + kNoise);
        };
        std::string text;
        if (possible(whole)) {
            text = "weld an offcut of " + plainNumber(std::ceil(whole - length - kNoise)) +
                   " mm beside it";
        }
        if (possible(seams * length)) {
            text += (text.empty() ? "weld " : ", or ") + plainNumber(seams) +
                    " such seams in one clamping";
        }
        const double softer = std::floor(inNewtons(scale.rate()) / times * 10 + kNoise) / 10;
        return (text.empty() ? "no offcut that this bench can take would help; take "
                             : text + ", or take ") +
               "a spring of at most " + plainNumber(softer) + " N for one " + scale.unit;
    }

    /// Between the calibration's lowest and highest point the line was measured; beyond them it is
    /// a guess, and a full force is not set by a guess.
    Result<void> insideCalibration(const Readings& readings) {
        const auto& calibration = m_bench->calibration;
        if (!calibration || !calibration->fit) {
            return {};
        }
        const double lowest = calibration->fit->lowestReading * 1e3;
        const double highest = calibration->fit->highestReading * 1e3;
        const std::string& unit = m_bench->scale.unit;
        for (const auto& [phase, pascals, band] :
             {std::tuple{"alignment", *m_plan.alignmentPa, m_plan.scale->alignment},
              std::tuple{"joining", *m_plan.joiningPa, m_plan.scale->joining}}) {
            for (const double reading :
                 {readings.pushing(forceAt(pascals)), static_cast<double>(band.setMilli)}) {
                if (reading < lowest - kNoise || reading > highest + kNoise) {
                    return outOfRange(
                        std::string(phase) + " reading " + milliShown(reading) + " " + unit +
                        " is outside " + milliShown(lowest) + " to " + milliShown(highest) + " " +
                        unit + ", the readings that the calibration of bench " + m_bench->id +
                        " covers");
                }
            }
        }
        const std::int64_t soak = m_plan.scale->soak.setMilli;
        if (static_cast<double>(soak) < lowest - kNoise) {
            warn(
                {"soak_below_calibration",
                 "soak: the reading " + milliShown(static_cast<double>(soak)) + " " + unit +
                     " is below " + milliShown(lowest) + " " + unit +
                     ", the lowest that the calibration covers: its force is worked out, not "
                     "measured",
                 roundedUp(lowest), soak, "milli"});
        }
        return {};
    }

    /// Our judgement: a calibration may use up half of what the pressure tolerates.
    void uncertainty() {
        const double allowed = forceAt(*m_plan.tolerancePa) / 2;
        double worst = 0;
        for (const ReadingBand& band : {m_plan.scale->alignment, m_plan.scale->joining}) {
            const auto half = calibrationBand(*m_bench, static_cast<double>(band.setMilli));
            worst = std::max(worst, half ? inNewtons(*half) : 0);
        }
        if (worst > allowed + kNoise) {
            warn(
                {"calibration_uncertain",
                 "the calibration's 95 % band is ± " + newtonsShown(worst) +
                     " at the set reading, more than half of the force's tolerance of ± " +
                     newtonsShown(2 * allowed) + " (our judgement)",
                 roundedDown(allowed * 1e3), roundedUp(worst * 1e3), "mN"});
        }
    }

    ReadingBand pressed(const Readings& readings, const std::string& phase, std::int64_t pascals) {
        const std::string& unit = m_bench->scale.unit;
        ReadingBand band;
        band.setMilli = readings.nearestMark(readings.pushing(forceAt(pascals)));
        band.lowMilli = roundedUp(readings.pushing(forceAt(pascals - *m_plan.tolerancePa)));
        band.highMilli = roundedDown(readings.pushing(forceAt(pascals + *m_plan.tolerancePa)));
        if (!band.holds(band.setMilli)) {
            const std::int64_t limit =
                band.setMilli < band.lowMilli ? band.lowMilli : band.highMilli;
            warn(
                {"set_outside_band",
                 phase + ": the nearest division, " +
                     milliShown(static_cast<double>(band.setMilli)) + " " + unit +
                     ", lies outside " + milliShown(static_cast<double>(band.lowMilli)) + " to " +
                     milliShown(static_cast<double>(band.highMilli)) + " " + unit +
                     "; the band is extended to it",
                 limit, band.setMilli, "milli"});
            band.lowMilli = std::min(band.lowMilli, band.setMilli);
            band.highMilli = std::max(band.highMilli, band.setMilli);
        }
        return band;
    }

    ReadingBand soaking(const Readings& readings) {
        const SpringScale& scale = m_bench->scale;
        const std::int64_t most = roundedDown(readings.comingDown(forceAt(*m_plan.soakMaxPa)));
        ReadingBand band;
        band.lowMilli = scale.zeroMilli;
        band.highMilli = std::max(most, scale.zeroMilli);
        band.setMilli = scale.zeroMilli;
        if (most >= readings.firstMarkAboveZero()) {
            const std::int64_t aimed =
                readings.nearestMark(readings.comingDown(forceAt(*m_plan.soakAimPa)));
            band.setMilli = std::max(std::min(aimed, readings.markBelow(most)), scale.zeroMilli);
        }
        const std::string high = milliShown(static_cast<double>(most)) + " " + scale.unit;
        if (most < scale.zeroMilli) {
            warn(
                {"drag_above_soak",
                 "soak: the drag of " + newtonsShown(m_drag) +
                     " holds the table on by more than the " +
                     newtonsShown(forceAt(*m_plan.soakMaxPa)) +
                     " that soak allows: the reading would have to be " + high,
                 scale.zeroMilli, most, "milli"});
        }
        if (band.setMilli == scale.zeroMilli) {
            warn(
                {"just_in_contact",
                 "soak: just in contact; " +
                     (most < readings.firstMarkAboveZero()
                          ? "the most allowed, " + high + ", is under the scale's first division"
                          : std::string("zero is the division nearest to the aim")),
                 readings.firstMarkAboveZero(), most, "milli"});
        }
        return band;
    }

    /// Soak's pressure is anything from zero to what the drag takes: the mark next below that.
    ReadingBand soakingToDrag(const Readings& readings) {
        const SpringScale& scale = m_bench->scale;
        const std::int64_t most = roundedDown(readings.pushing(0));
        ReadingBand band;
        band.lowMilli = scale.zeroMilli;
        band.highMilli = std::max(most, scale.zeroMilli);
        band.setMilli = std::max(readings.markBelow(band.highMilli), scale.zeroMilli);
        if (band.setMilli == scale.zeroMilli) {
            warn(
                {"just_in_contact",
                 "soak: just in contact; the drag, " +
                     milliShown(static_cast<double>(band.highMilli)) + " " + scale.unit +
                     ", is under the scale's first division",
                 readings.firstMarkAboveZero(), most, "milli"});
        }
        return band;
    }

    void bead() {
        const auto value = column(m_procedure.bead, "bead_min_mm");
        if (value) {
            m_plan.beadMinUm = roundedUp(*value * 1e3);
        }
    }

    void times() {
        if (const auto soak = column(m_procedure.soak, "soak_s")) {
            const auto at = [&soak](double percent) {
                return Milliseconds(nearest(*soak * (1 + percent / 100) * 1e3));
            };
            m_plan.soak =
                TimeBand{at(m_procedure.soakLowPercent), at(0), at(m_procedure.soakHighPercent)};
            source("soak_s.tolerance", m_procedure.soakTolerance);
        }
        if (const auto most = column(m_procedure.changeover, "changeover_max_s")) {
            m_plan.changeoverMax = Milliseconds(roundedDown(*most * 1e3));
        }
        if (const auto target = column(m_procedure.buildUp, "build_up_s")) {
            const auto at = [&target](double part) {
                return Milliseconds(nearest(*target * part * 1e3));
            };
            m_plan.buildUp = TimeBand{at(0.6), at(1), at(1.3)};
            source(
                "build_up_s.tolerance",
                {"60 to 130 % of the target: our judgement", Standing::CommonPractice});
        }
        cooling();
        alignment();
    }

    void cooling() {
        std::optional<double> minutes;
        std::optional<Source> from;
        bool inAClass = false;
        bool filledIn = false; // by the shop
        for (const CoolingClass& each : m_procedure.cooling) {
            const auto milli = [](Temperature t) { return nearest(t.inCelsius() * 1e3); };
            if ((each.from && m_plan.ambientMc < milli(*each.from)) ||
                (each.to && m_plan.ambientMc > milli(*each.to))) {
                continue;
            }
            inAClass = true;
            const auto value = each.minutes.at(m_thickness, m_plan.coolingRule);
            if (value && (!minutes || *value > *minutes)) { // on a boundary the longer time
                minutes = value;
                from = each.minutes.sourceAt(m_thickness);
                filledIn = m_procedure.isFill("cooling_min", each.minutes, m_thickness);
            }
        }
        if (!inAClass) {
            if (const auto corrected = correctedCooling()) {
                minutes = corrected;
                const Column& column = m_procedure.cooling.front().minutes;
                from = column.sourceAt(m_thickness);
                filledIn = m_procedure.isFill("cooling_min", column, m_thickness);
            }
        }
        if (!minutes) {
            if (!inAClass && !m_procedure.cooling.empty()) {
                outsideClasses();
            }
            lacks("cooling_min");
            return;
        }
        source("cooling_min", *from);
        filledIf(filledIn, "cooling_min", *from);
        WeldPlan::Cooling cooling;
        cooling.atLeast = Milliseconds(roundedUp(*minutes * 60e3));
        if (m_plan.halfCooling) {
            const Milliseconds whole = cooling.atLeast;
            cooling.atLeast = Milliseconds((whole.count() + 1) / 2);
            source("half_cooling", m_procedure.halfCooling->source);
            warn(
                {"half_cooling",
                 "cooling is cut by half: full load only after the whole " +
                     plainNumber(static_cast<double>(whole.count()) / 60e3) + " min",
                 whole.count(), cooling.atLeast.count(), "ms"});
        }
        constexpr Milliseconds kFirst = std::chrono::minutes(1);
        constexpr Milliseconds kShort = std::chrono::minutes(6);
        if (cooling.atLeast > kFirst) {
            cooling.rechecks.push_back(kFirst);
        }
        if (cooling.atLeast > kShort) {
            cooling.rechecks.emplace_back(
                nearest(static_cast<double>(cooling.atLeast.count()) / 3));
        }
        source(
            "rechecks_min", {"at 1 min and, for more than 6 min of cooling, at a third of it: our "
                             "judgement",
                             Standing::CommonPractice});
        m_plan.cooling = std::move(cooling);
    }

    /// Outside the one class, as far as the procedure's correction goes.
    std::optional<double> correctedCooling() {
        const auto& rule = m_procedure.perKelvin;
        const auto milli = [](Temperature t) { return nearest(t.inCelsius() * 1e3); };
        if (!rule || m_procedure.cooling.size() != 1 || m_plan.ambientMc < milli(rule->from) ||
            m_plan.ambientMc > milli(rule->to)) {
            return std::nullopt;
        }
        const auto minutes =
            m_procedure.cooling.front().minutes.at(m_thickness, m_plan.coolingRule);
        if (!minutes) {
            return std::nullopt;
        }
        const double warmer =
            static_cast<double>(m_plan.ambientMc - milli(m_procedure.referenceAmbient)) / 1e3;
        source("cooling_min.per_kelvin", rule->source);
        filled("cooling_min.per_kelvin", rule->source);
        return *minutes * (1 + rule->percent / 100 * (rule->longerWhenWarmer ? warmer : -warmer));
    }

    void outsideClasses() {
        const auto milli = [](Temperature t) { return nearest(t.inCelsius() * 1e3); };
        const auto& last = m_procedure.cooling.back().to;
        const auto& first = m_procedure.cooling.front().from;
        const bool tooWarm = last && m_plan.ambientMc > milli(*last);
        const auto limit = tooWarm ? last : first;
        warn(
            {"ambient_outside_classes",
             "ambient " + milliShown(static_cast<double>(m_plan.ambientMc)) +
                 " °C is outside the classes for which " + m_procedure.id + " has cooling times" +
                 (limit ? (tooWarm ? ", up to " : ", from ") +
                              milliShown(static_cast<double>(milli(*limit))) + " °C"
                        : std::string()),
             limit ? std::optional(milli(*limit)) : std::nullopt, m_plan.ambientMc, "mC"});
        warnOfGap("cooling_min.per_kelvin");
    }

    void alignment() {
        m_plan.alignMedian = m_request.alignMedian;
        if (m_plan.alignMedian) {
            m_plan.alignLate = 2 * *m_plan.alignMedian;
            source(
                "align_late_s", {"twice the median of this bench's last such welds: our judgement",
                                 Standing::CommonPractice});
        } else if (m_plan.soak) {
            m_plan.alignLate = m_plan.soak->target;
            source(
                "align_late_s",
                {"the soak time, while there is no median of this bench: common practice, no "
                 "source",
                 Standing::CommonPractice});
        }
    }

    std::optional<double> column(const std::optional<Column>& from, const char* key) {
        const auto value = from ? from->at(m_thickness, BandRule::Line) : std::nullopt;
        if (value) {
            const Source& where = from->sourceAt(m_thickness);
            source(key, where);
            filledIf(m_procedure.isFill(key, *from, m_thickness), key, where);
        } else {
            lacks(key);
        }
        return value;
    }

    /// p · s · L in newtons, from the plan's own integers, so that a reader of the plan can
    /// recompute it.
    double forceAt(std::int64_t pascals) const {
        return inNewtons(
            newtonsPerSquareMillimetre(static_cast<double>(pascals) / 1e6) *
            (m_thickness * micrometres(static_cast<double>(m_plan.lengthUm))));
    }

    void lacks(const std::string& key) {
        m_plan.missing.push_back(key);
        warnOfGap(key);
    }
    void warnOfGap(const std::string& key) {
        if (const KnownGap* gap = m_procedure.gapOf(key, m_thickness)) {
            warn({"known_gap", key + ": " + gap->says, std::nullopt, std::nullopt, ""});
        }
    }
    /// A value that its source lacks came from the shop, which answers for it by attesting it.
    void filledIf(bool filled, const std::string& key, const Source& from) {
        if (filled && from.standing != Standing::Attested) {
            m_plan.unattested.push_back(key);
        }
    }
    void filled(const std::string& key, const Source& from) {
        filledIf(m_procedure.gapOf(key, m_thickness) != nullptr, key, from);
    }
    void source(const std::string& value, const Source& from) {
        m_plan.sources.push_back(PlanSource{value, from});
    }
    void warn(PlanWarning warning) { m_plan.warnings.push_back(std::move(warning)); }

    const PlanRequest& m_request;
    const Procedure& m_procedure;
    const Bench* m_bench;
    WeldPlan m_plan;
    bool m_scaleIsForemans = false; // it is too coarse, and that is left to him
    Length m_thickness;
    double m_drag = 0; // [N]
};

} // namespace

const Source& plateTargetSetByForeman() {
    static const Source kSource{"set by the foreman inside the window", Standing::CommonPractice};
    return kSource;
}

const std::vector<std::string>& weldChecks() {
    static const std::vector<std::string> kChecks{
        "plate_warm",   "plate_temperature", "scale_zero",  "sound_heard", "drag",
        "film_off",     "edges_planed",      "plate_wiped", "gap",         "first_sheet",
        "clamping_gap", "second_sheet",      "edges_meet",  "shielded"};
    return kChecks;
}

Result<WeldPlan>
makePlan(const PlanRequest& request, const Procedure& procedure, const Bench* bench) {
    return Planner(request, procedure, bench).make();
}

} // namespace seamclock
