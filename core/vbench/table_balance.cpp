#include "core/vbench/table_balance.h"

#include <algorithm>
#include <cmath>

namespace seamclock {
namespace {

constexpr double kEnough = 1e-8; // [N] what may be missing to the balance
constexpr int kMostRounds = 200;

struct Answer {
    double pressure = 0;
    double slope = 0; // [Pa/m]
};

/// p/k + s·p^m = d. Both terms alone give an upper bound, and from above Newton's method comes down
/// to the one root of a convex function without a miss.
Answer pressureAt(double d, double stiffness, double softness, double m) {
    if (softness <= 0) {
        return {stiffness * d, stiffness};
    }
    double p = std::min(stiffness * d, std::pow(d / softness, 1 / m));
    double slope = stiffness;
    for (int round = 0; round < 50; ++round) {
        const double power = softness * std::pow(p, m - 1);
        const double wrong = p / stiffness + power * p - d;
        slope = 1 / (1 / stiffness + m * power);
        const double next = p - wrong * slope;
        const bool enough = std::fabs(next - p) <= 1e-13 * p;
        p = next;
        if (enough) {
            break;
        }
    }
    return {p, slope};
}

class Faces {
public:
    Faces(const std::vector<TablePoint>& points, double index)
        : m_points(points), m_power(1 / index) {}

    Answer at(const TablePoint& point, double travel) const {
        const double d = travel - point.touchesAt;
        if (d <= 0) {
            return point.bonded ? Answer{point.stiffness * d, point.stiffness} : Answer{};
        }
        return pressureAt(d, point.stiffness, point.softness, m_power);
    }

    Answer force(double travel) const {
        Answer sum;
        for (const TablePoint& point : m_points) {
            const Answer each = at(point, travel);
            sum.pressure += each.pressure * point.area;
            sum.slope += each.slope * point.area;
        }
        return sum;
    }

private:
    const std::vector<TablePoint>& m_points;
    double m_power;
};

} // namespace

TableBalance balanceTable(
    const TableSpring& spring, double wheel, double travel, const std::vector<TablePoint>& points,
    double index) {
    const Faces faces(points, index);
    // What is left to move the table; it falls with every bit of travel.
    const auto left = [&](double at, double force) {
        return spring.rate * (wheel - at) - spring.preload - force;
    };
    TableBalance out;
    out.travel = travel;
    out.friction = left(travel, faces.force(travel).pressure);
    if (std::fabs(out.friction) > spring.drag) {
        const double wanted = std::copysign(spring.drag, out.friction);
        const double sign = out.friction > 0 ? 1 : -1;
        // The root lies between here and there.
        double here = travel;
        double there = wheel - (spring.preload + wanted) / spring.rate;
        double step = 1e-4;
        while (sign * (left(there, faces.force(there).pressure) - wanted) > 0) {
            there += sign * step;
            step *= 2;
        }
        double low = std::min(here, there);
        double high = std::max(here, there);
        double at = here;
        for (int round = 0; round < kMostRounds; ++round) {
            const Answer force = faces.force(at);
            const double wrong = left(at, force.pressure) - wanted;
            out.travel = at;
            if (std::fabs(wrong) <= kEnough || high - low <= 0) {
                break;
            }
            (wrong > 0 ? low : high) = at;
            double next = at + wrong / (spring.rate + force.slope);
            if (!(next > low && next < high)) {
                next = low + (high - low) / 2;
                if (!(next > low && next < high)) {
                    break; // no number lies between them
                }
            }
            at = next;
        }
    }
    out.pressures.reserve(points.size());
    for (const TablePoint& point : points) {
        out.pressures.push_back(faces.at(point, out.travel).pressure);
        out.faces += out.pressures.back() * point.area;
    }
    out.friction = left(out.travel, out.faces);
    return out;
}

} // namespace seamclock
