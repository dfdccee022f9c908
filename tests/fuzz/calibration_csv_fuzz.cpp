// A calibration's table as anybody might hand it in: it is refused with one sentence or fitted, and
// what was fitted is finite, has its points on both sides of the line, and makes a bench whose
// document reads back as itself.
#include "core/bench/bench_codec.h"
#include "core/bench/calibration.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace seamclock {
namespace {

void must(bool held) {
    if (!held) {
        std::abort();
    }
}

bool isOneSentence(const Error& error) {
    return !error.detail.empty() && error.detail.find('\n') == std::string::npos;
}

void tryFit(const ScaleFit& fit) {
    must(fit.rate > 0 && std::isfinite(fit.rate) && std::isfinite(fit.zero));
    must(fit.line.t95 > 1.9 && fit.line.residuals.size() == fit.points.size());
    must(fit.lowestReading < fit.highestReading);
    for (const double reading : {fit.lowestReading, fit.zero, fit.line.meanX}) {
        const double line = fit.line.confidenceAt(reading);
        must(line >= 0 && line <= fit.line.predictionAt(reading));
    }
    const auto [least, most] =
        std::minmax_element(fit.line.residuals.begin(), fit.line.residuals.end());
    must(*least <= fit.worstResidual && *most <= fit.worstResidual);
}

Bench benchOf(const ScaleFit& fit) {
    Bench bench;
    bench.id = "fuzz";
    bench.name = "fuzz";
    bench.longestSeam = millimetres(2000);
    bench.thinnestSheet = millimetres(3);
    bench.thickestSheet = millimetres(20);
    bench.edgeGapMax = millimetres(0.5);
    bench.scale.unit = "mm";
    bench.scale.divisionMilli = 500;
    bench.scale.maxMilli = 60'000;
    bench.releaseOrder = {"sheet_out"};
    CalibrationNote note;
    note.doneOn = "2030-01-07";
    note.dueOn = "2031-01-07";
    note.loadCell = "cell";
    note.points = fit.points;
    bench.calibration = note;
    return bench;
}

void tryText(std::string_view text) {
    const auto fit = fitScale("fuzz.csv", text);
    const auto points = readCalibrationCsv("fuzz.csv", text);
    must(points || !fit);
    must(points || isOneSentence(points.error()));
    must(fit || isOneSentence(fit.error()));
    if (!points) {
        return;
    }
    must(points->size() <= kMostCalibrationPoints);
    const auto bent = fitPoints(*points);
    if (bent) {
        tryFit(*bent);
    }
    if (!fit) {
        return;
    }
    must(bent && *bent == *fit);
    const auto read = readBench("fuzz.json", benchText(benchOf(*fit)));
    must(read || isOneSentence(read.error())); // its zero may lie off every scale
    if (read) {
        must(read->bench.calibration->points == *points);
        must(read->bench.calibration->fit == *fit);
        const auto again = readBench("fuzz.json", benchText(read->bench));
        must(again && again->bench == read->bench);
    }
}

} // namespace
} // namespace seamclock

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    seamclock::tryText({reinterpret_cast<const char*>(data), size});
    return 0;
}
