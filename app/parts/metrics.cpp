#include "app/parts/metrics.h"

namespace seamclock {

Metrics Metrics::forDpi(double dpi) {
    Metrics metrics;
    metrics.perUnit = dpi / kUnitsPerInch;
    return metrics;
}

} // namespace seamclock
