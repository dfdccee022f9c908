// Benches from JSON files, and the empty one that a shop starts from.
#pragma once

#include "core/base/result.h"
#include "core/bench/bench.h"

#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// A bench with the very bytes it was read from (a weld's record names them by SHA-256).
struct BenchDocument {
    Bench bench;
    std::string bytes;
    std::string sha256;
};

/// One thing that is wrong with a bench file.
struct BenchFinding {
    int line = 0;      // from 1
    std::string field; // JSON pointer
    std::string reason;

    bool operator==(const BenchFinding&) const = default;
};

/// All findings of a file's text; empty: the bench is sound. Syntax errors are findings too.
std::vector<BenchFinding> checkBench(std::string_view name, std::string_view text);

/// The steps that an order of release can have; the last of them always ends it.
std::vector<std::string> releaseSteps();

/// Malformed with line, field and reason of the first finding.
Result<BenchDocument> readBench(std::string_view name, std::string_view text);
Result<BenchDocument> readBenchFile(const std::string& path);

/// The bench as a document's bytes, in the template's order; read back they give the same bench. A
/// calibration's points are written, not what was worked out from them.
std::string benchText(const Bench& bench);

/// A bench file to fill in, with every field explained in an "explained" object, which reading
/// ignores.
std::string benchTemplate();

} // namespace seamclock
