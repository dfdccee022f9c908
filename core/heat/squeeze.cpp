#include "core/heat/squeeze.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr double kGas = 8.314462618; // [J/molK] CODATA 2018
constexpr double kZero = 273.15;
/// Half molten is still a solid with melt in it: the share that flows falls steeply with the
/// crystals that are left (our judgement; no source gives it for this case).
constexpr double kCrystalPower = 4;
/// A glassy plastic does not begin to flow at one temperature; over this range it does [K] (ours).
constexpr double kSoftening = 20;

double
flowing(const SheetField& field, const Material& material, std::size_t column, std::size_t row) {
    if (material.crystals) {
        return std::pow(1 - field.crystalline(column, row), kCrystalPower);
    }
    const double over = (field.celsius(column, row) - material.flow.flowsFrom) / kSoftening;
    return std::clamp(over + 0.5, 0.0, 1.0);
}

} // namespace

std::vector<double>
fluidity(const SheetField& field, const Material& material, double consistencyFactor) {
    const PowerLawFlow& flow = material.flow;
    std::vector<double> out(field.columns(), 0);
    for (std::size_t i = 0; i < field.columns(); ++i) {
        double sum = 0;
        for (std::size_t row = 0; row < field.rows(); ++row) {
            const double share = flowing(field, material, i, row);
            if (share > 0) {
                const double shift =
                    flow.activation / kGas *
                    (1 / (field.celsius(i, row) + kZero) - 1 / (flow.reference + kZero));
                sum += share * std::exp(-shift / flow.index) * field.grid().across[row];
            }
        }
        if (sum <= 0) {
            break; // what lies behind solid does not flow out
        }
        out[i] = sum / field.halfThickness() *
                 std::pow(flow.consistency * consistencyFactor, -1 / flow.index);
    }
    return out;
}

SheetFlow squeezeFilm(
    const std::vector<double>& fluidity, const std::vector<double>& widths, double halfThickness,
    double pressure, double index, FilmWall wall) {
    SheetFlow flow;
    flow.share.assign(widths.size(), 0);
    std::size_t n = 0;
    std::vector<double> depth;
    double edge = 0;
    while (n < fluidity.size() && fluidity[n] > 0) {
        depth.push_back(edge + widths[n] / 2);
        edge += widths[n];
        ++n;
    }
    if (n == 0 || pressure <= 0) {
        return flow;
    }
    const double power = 1 / index;
    // The depth at which nothing shears, so that both walls stand still: the shear's integral from
    // wall to wall is nothing there. It falls as the depth grows.
    double still = 0;
    if (wall == FilmWall::Plate) {
        double low = 0;
        double high = edge;
        for (int round = 0; round < 60 && high - low > 1e-7 * edge; ++round) {
            const double middle = (low + high) / 2;
            double sum = 0;
            for (std::size_t i = 0; i < n; ++i) {
                const double arm = depth[i] - middle;
                sum +=
                    std::copysign(std::pow(std::fabs(arm), power), arm) * fluidity[i] * widths[i];
            }
            (sum > 0 ? low : high) = middle;
        }
        still = (low + high) / 2;
    }
    // The outflow's speed for a gradient of 1, from the solid towards the face, where it stands
    // still at the solid; and K, what it adds up to.
    std::vector<double> speed(n, 0);
    double at = 0;
    double sum = 0;
    for (std::size_t i = n; i-- > 0;) {
        const double arm = depth[i] - still;
        const double shear = std::copysign(std::pow(std::fabs(arm), power), arm) * fluidity[i];
        speed[i] = std::max(0.0, at + shear * widths[i] / 2);
        at += shear * widths[i];
        sum += speed[i] * widths[i];
    }
    if (sum <= 0) {
        return flow;
    }
    for (std::size_t i = 0; i < n; ++i) {
        flow.share[i] = speed[i] / sum;
    }
    flow.rate = sum * std::pow(pressure * (index + 2) / std::pow(halfThickness, index + 1), power);
    return flow;
}

} // namespace seamclock
