// A bench without anything that a test of one thing would have to think of.
#pragma once

#include "core/bench/bench.h"

#include <cstdint>

namespace seamclock::test {

/// A scale in mm with that rate [N/mm] and division, up to 100 mm.
inline Bench tryBench(double rate, std::int64_t divisionMilli) {
    Bench bench;
    bench.id = "try";
    bench.name = "try";
    bench.longestSeam = millimetres(3000);
    bench.thinnestSheet = millimetres(1);
    bench.thickestSheet = millimetres(70);
    bench.edgeGapMax = millimetres(0.5);
    bench.scale.unit = "mm";
    bench.scale.divisionMilli = divisionMilli;
    bench.scale.maxMilli = 100'000;
    bench.scale.ratePerUnit = {newtons(rate)};
    bench.releaseOrder = {"sheet_out"};
    return bench;
}

} // namespace seamclock::test
