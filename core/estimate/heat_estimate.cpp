#include "core/estimate/heat_estimate.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace seamclock {
namespace {

constexpr double kLongestAlignment = 1800; // [s] no bead by then: it will not come
constexpr double kLongestInAir = 600;      // [s] no changeover is as long
constexpr double kLongestCooling = 4;      // times the course's own, until the chosen temperature
constexpr double kPlateOff = 5;            // [K] how well a face is measured: common practice
constexpr double kAmbientOff = 2;          // [K]

/// The model's outputs of one run, as they come.
struct Outputs {
    std::optional<double> alignS;
    std::optional<double> beadMm;
    std::optional<double> meltDepthMm;
    std::optional<double> skinEndOfSoakC;
    std::optional<double> moltenInAirS;
    std::optional<double> skinFacesMeetC;
    std::optional<double> weldPlaneAtReleaseC;
    std::optional<double> chosenReachedS;
    std::optional<double> sheetLossMm;
    std::optional<double> closingMm;
    std::optional<double> pressureFallPa;
    std::optional<double> readingFallUnits;
};

/// Where a number stands among one run's outputs, and among the estimate's.
struct Place {
    std::optional<double> Outputs::*one;
    std::optional<HeatRange> HeatNumbers::*all;
};
constexpr std::array kPlaces{
    Place{&Outputs::alignS, &HeatNumbers::alignS},
    Place{&Outputs::beadMm, &HeatNumbers::beadMm},
    Place{&Outputs::meltDepthMm, &HeatNumbers::meltDepthMm},
    Place{&Outputs::skinEndOfSoakC, &HeatNumbers::skinEndOfSoakC},
    Place{&Outputs::moltenInAirS, &HeatNumbers::moltenInAirS},
    Place{&Outputs::skinFacesMeetC, &HeatNumbers::skinFacesMeetC},
    Place{&Outputs::weldPlaneAtReleaseC, &HeatNumbers::weldPlaneAtReleaseC},
    Place{&Outputs::chosenReachedS, &HeatNumbers::chosenReachedS},
    Place{&Outputs::sheetLossMm, &HeatNumbers::sheetLossMm},
    Place{&Outputs::closingMm, &HeatNumbers::closingMm},
    Place{&Outputs::pressureFallPa, &HeatNumbers::pressureFallPa},
    Place{&Outputs::readingFallUnits, &HeatNumbers::readingFallUnits}};

// Between the last point that was not yet there and the first that was.
double between(double from, double to, double before, double now, double wanted) {
    return now == before ? to : from + (to - from) * (wanted - before) / (now - before);
}

class CourseRun {
public:
    CourseRun(
        const HeatCourse& course, const Material& material, const HeatInputs& inputs,
        double chosenC, std::vector<HeatPoint>* curve, const std::atomic<bool>* stop)
        : m_course(course), m_run(material, inputs), m_chosenC(chosenC), m_curve(curve),
          m_stop(stop) {}

    Outputs outputs() {
        align();
        if (m_course.soak && m_course.aligned) {
            stage(HeatStage::At::Plate, *m_course.soak, m_course.soakPa, m_course.soakPa);
            m_out.skinEndOfSoakC = m_run.faceC();
            m_out.meltDepthMm = m_run.meltDepth() * 1e3;
            m_out.moltenInAirS = moltenInAir(m_run);
        }
        if (m_course.changeover) {
            stage(HeatStage::At::Air, *m_course.changeover, 0, 0);
        }
        if (m_course.buildUp) {
            m_out.skinFacesMeetC = m_run.faceC();
            m_met = m_run.seconds();
            stage(HeatStage::At::Sheet, *m_course.buildUp, 0, m_course.joiningPa);
        }
        if (m_course.cooling) {
            cool();
        }
        m_out.sheetLossMm = m_run.closing() * 1e3;
        return m_out;
    }

private:
    /// How long a skin stays above melting once the plate is out [s]; the sheet is one beside the
    /// course's.
    static double moltenInAir(SheetRun sheet) {
        const double melting = sheet.material().meltingPoint();
        const double out = sheet.seconds();
        double before = sheet.faceC();
        if (before <= melting) {
            return 0;
        }
        while (sheet.faceC() > melting && sheet.seconds() - out < kLongestInAir) {
            before = sheet.faceC();
            sheet.go({HeatStage::At::Air, 1, 0, 0, {}});
        }
        const double now = sheet.seconds() - out;
        return between(now - 1, now, before, sheet.faceC(), melting);
    }

    void align() {
        if (m_course.alignSeconds) {
            stage(
                HeatStage::At::Plate, *m_course.alignSeconds, m_course.alignmentPa,
                m_course.alignmentPa);
        } else {
            // A second at a time, so that the bead's moment is known well enough.
            constexpr double kStride = 1;
            double before = 0;
            while (m_run.beadHeight() < m_course.beadM && m_run.seconds() < kLongestAlignment &&
                   !stopped()) {
                before = m_run.beadHeight();
                stage(HeatStage::At::Plate, kStride, m_course.alignmentPa, m_course.alignmentPa);
            }
            if (m_run.beadHeight() >= m_course.beadM) {
                m_out.alignS = between(
                    m_run.seconds() - kStride, m_run.seconds(), before, m_run.beadHeight(),
                    m_course.beadM);
            }
        }
        m_out.beadMm = m_run.beadHeight() * 1e3;
    }

    void cool() {
        const double closing = m_run.closing() - m_run.swelling();
        stage(
            HeatStage::At::Sheet, *m_course.cooling, m_course.joiningPa, m_course.joiningPa,
            m_course.springPaPerMetre);
        m_out.weldPlaneAtReleaseC = m_run.faceC();
        const double closed = 2 * (m_run.closing() - m_run.swelling() - closing);
        m_out.closingMm = closed * 1e3;
        if (m_course.springPaPerMetre) {
            m_out.pressureFallPa = m_course.joiningPa - m_run.pressure();
        }
        if (m_course.unitsPerMetre) {
            // A spring that is let go further shows no force, and not less.
            const double most = m_course.springPaPerMetre
                                    ? m_course.joiningPa / *m_course.springPaPerMetre
                                    : closed;
            m_out.readingFallUnits = std::min(closed, most) * *m_course.unitsPerMetre;
        }
        // On, where it lies, until the chosen temperature; what the curve shows ends at the
        // release.
        m_curve = nullptr;
        const double longest = m_run.seconds() + (kLongestCooling - 1) * *m_course.cooling;
        while (!m_out.chosenReachedS && m_run.seconds() < longest && !stopped()) {
            stage(
                HeatStage::At::Sheet, *m_course.cooling / 10, m_course.joiningPa,
                m_course.joiningPa, m_course.springPaPerMetre);
        }
    }

    void stage(
        HeatStage::At at, double seconds, double from, double to,
        std::optional<double> spring = {}) {
        if (seconds <= 0 || stopped()) {
            return;
        }
        double face = m_run.faceC();
        double time = m_run.seconds();
        m_run.go({at, seconds, from, to, spring}, [&] {
            const double now = m_run.faceC();
            if (m_met && !m_out.chosenReachedS && now <= m_chosenC && face > m_chosenC) {
                m_out.chosenReachedS =
                    between(time, m_run.seconds(), face, now, m_chosenC) - *m_met;
            }
            face = now;
            time = m_run.seconds();
            if (m_curve != nullptr) {
                m_curve->push_back(
                    {m_run.seconds(), at, now, m_run.meltDepth() * 1e3, m_run.beadHeight() * 1e3,
                     m_run.closing() * 1e3, m_run.pressure()});
            }
        });
    }

    bool stopped() const { return m_stop != nullptr && *m_stop; }

    const HeatCourse& m_course;
    SheetRun m_run;
    double m_chosenC;
    std::vector<HeatPoint>* m_curve;
    const std::atomic<bool>* m_stop;
    Outputs m_out;
    std::optional<double> m_met;
};

double spreadOf(const Material& material, const char* field) {
    const auto found = material.spread.find(field);
    return found == material.spread.end() ? 0 : found->second;
}

// Plackett and Burman's design for eight runs: the first row, cycled, and a row of low ends.
constexpr std::array<int, 7> kFirstRow{1, 1, 1, -1, 1, -1, -1};

std::array<int, 7> signsOf(std::size_t run) {
    std::array<int, 7> signs{};
    for (std::size_t i = 0; i < signs.size(); ++i) {
        signs[i] = run == kFirstRow.size() ? -1 : kFirstRow[(i + kFirstRow.size() - run) % 7];
    }
    return signs;
}

HeatInputs moved(HeatInputs inputs, const Material& material, const std::array<int, 7>& signs) {
    const auto scaled = [](int sign, double share) {
        return sign > 0 ? 1 + share : 1 / (1 + share);
    };
    // Contact: through a cloth about 1000 (derived), a coated plate 1000 to 5000 (memory).
    inputs.contact *= scaled(signs[0], 1.0);
    // Air: a hot face 10 to 17, the cooler sides 7 to 10 (memory).
    inputs.faceAir = signs[1] > 0 ? 17 : 10;
    inputs.sideAir = signs[1] > 0 ? 10 : 7;
    inputs.plateC += signs[2] * kPlateOff;
    inputs.factors.conductivity = scaled(signs[3], spreadOf(material, "conductivity_W_mK"));
    inputs.factors.specificHeat = scaled(signs[4], spreadOf(material, "specific_heat_J_kgK"));
    inputs.factors.heat = scaled(signs[4], spreadOf(material, "heat_of_fusion_kJ_kg"));
    inputs.consistency = scaled(signs[5], spreadOf(material, "consistency_Pa_s_n"));
    inputs.ambientC += signs[6] * kAmbientOff;
    return inputs;
}

/// By the nominal values alone, low and high the same.
Result<HeatEstimate> nominalHeat(
    const HeatCourse& course, const std::vector<Material>& materials, double chosenC,
    const std::atomic<bool>* stop) {
    auto material = materialFor(materials, course.material);
    if (!material) {
        return tl::unexpected<Error>(material.error());
    }
    HeatEstimate estimate;
    estimate.course = course;
    estimate.chosenC = chosenC;
    estimate.meltingC = material->meltingPoint();
    const Outputs outputs =
        CourseRun(course, *material, course.inputs, chosenC, &estimate.curve, stop).outputs();
    for (const Place& place : kPlaces) {
        if (const auto likely = outputs.*place.one) {
            estimate.numbers.*place.all = HeatRange{*likely, *likely, *likely};
        }
    }
    estimate.material = std::move(*material);
    return estimate;
}

} // namespace

std::array<HeatFactor, 7> heatFactors(const Material& material) {
    const auto percent = [&material](const char* field) {
        return "± " + std::to_string(std::lround(spreadOf(material, field) * 100)) + " %";
    };
    return {
        {{"contact with the plate", "750 to 3000 W/m²K; from memory"},
         {"air", "10 to 17 W/m²K at a hot face, 7 to 10 at the sides; from memory"},
         {"plate temperature", "± 5 K; common practice, no source"},
         {"conductivity", percent("conductivity_W_mK")},
         {"specific heat and heat of fusion",
          percent("specific_heat_J_kgK") + " and " + percent("heat_of_fusion_kJ_kg")},
         {"the melt's consistency",
          "times or divided by " +
              std::to_string(1 + spreadOf(material, "consistency_Pa_s_n")).substr(0, 4)},
         {"air temperature", "± 2 K; common practice, no source"}}};
}

Result<Material> materialFor(const std::vector<Material>& materials, const std::string& plastic) {
    std::string names;
    for (const Material& material : materials) {
        if (std::find(material.plastics.begin(), material.plastics.end(), plastic) !=
            material.plastics.end()) {
            return material;
        }
        names += (names.empty() ? "" : ", ") + material.name;
    }
    return fail(
        ErrorCode::Missing,
        "no heat values for the material \"" + plastic + "\"; allowed: " + names);
}

Result<HeatEstimate> estimateHeat(
    const HeatCourse& course, const std::vector<Material>& materials, double chosenC,
    const std::atomic<bool>* stop) {
    auto estimate = nominalHeat(course, materials, chosenC, stop);
    if (!estimate) {
        return estimate;
    }
    constexpr std::size_t kRuns = 8;
    std::array<Outputs, kRuns> runs;
    for (std::size_t i = 0; i < kRuns; ++i) {
        const Material& material = estimate->material;
        runs[i] = CourseRun(
                      course, material, moved(course.inputs, material, signsOf(i)), chosenC,
                      nullptr, stop)
                      .outputs();
        if (stop != nullptr && *stop) {
            return fail(ErrorCode::Refused, "the heat estimate was stopped");
        }
    }
    for (const Place& place : kPlaces) {
        auto& range = estimate->numbers.*place.all;
        if (!range) {
            continue;
        }
        double squares = 0;
        bool whole = true;
        for (std::size_t factor = 0; factor < kFirstRow.size(); ++factor) {
            double effect = 0;
            for (std::size_t i = 0; i < kRuns; ++i) {
                const auto value = runs[i].*place.one;
                whole = whole && value.has_value();
                effect += signsOf(i)[factor] * value.value_or(range->likely) / kRuns;
            }
            squares += effect * effect;
        }
        if (!whole) {
            range.reset(); // at some end of the ranges it does not come about at all
            continue;
        }
        const double half = std::sqrt(squares);
        *range = HeatRange{range->likely - half, range->likely, range->likely + half};
    }
    return estimate;
}

Result<HeatEstimate>
likelyHeat(const HeatCourse& course, const std::vector<Material>& materials, double chosenC) {
    return nominalHeat(course, materials, chosenC, nullptr);
}

} // namespace seamclock
