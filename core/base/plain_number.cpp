#include "core/base/plain_number.h"

#include <cmath>
#include <cstdio>

namespace seamclock {

std::string plainNumber(double value) {
    char text[64];
    const double size = std::fabs(value);
    if (size >= 1e15 || (size > 0 && size < 1e-6) || !std::isfinite(value)) {
        std::snprintf(text, sizeof text, "%.6g", value);
        return text;
    }
    std::snprintf(text, sizeof text, "%.6f", value);
    std::string out(text);
    out.erase(out.find_last_not_of('0') + 1);
    if (out.back() == '.') {
        out.pop_back();
    }
    return out == "-0" ? "0" : out;
}

} // namespace seamclock
