#include "core/heat/material.h"

namespace seamclock {

double TemperatureCurve::at(double celsius) const {
    if (points.empty()) {
        return 0;
    }
    if (celsius <= points.front().celsius) {
        return points.front().value;
    }
    for (std::size_t i = 1; i < points.size(); ++i) {
        if (celsius <= points[i].celsius) {
            const Point& low = points[i - 1];
            const Point& high = points[i];
            return low.value + (high.value - low.value) * (celsius - low.celsius) /
                                   (high.celsius - low.celsius);
        }
    }
    return points.back().value;
}

double Material::meltingPoint() const {
    return crystals ? (crystals->meltsFrom + crystals->meltsTo) / 2 : flow.flowsFrom;
}

} // namespace seamclock
