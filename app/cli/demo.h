// The demo job: seams of an invented tank, which a rehearsal takes what it wasn't told from.
#pragma once

#include "core/base/result.h"
#include "core/weld/event.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct DemoSeam {
    std::string label;
    std::string what;
    std::string procedure; // id
    std::string benchFile; // with its path
    double thicknessMm = 0;
    std::vector<double> lengthsMm;
    double dragN = 0;
    double ambientC = 20;
    bool shielded = false;
    std::vector<Sheet> sheets;
};

struct DemoJob {
    std::string operatorId; // "person:ID" of the first operator
    std::vector<DemoSeam> seams;
};

/// The first job (by file name) of the demo folder. Missing: there is none; Unreadable, Malformed:
/// as the file says.
Result<DemoJob> readDemoJob(const std::string& folder);

} // namespace seamclock
