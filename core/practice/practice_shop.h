// Everything that lessons are made with: what came with the program, and in its place and beside it
// what a shop's log keeps.
#pragma once

#include "core/log/log_reader.h"
#include "core/practice/lesson.h"

#include <string>

namespace seamclock {

/// `resources`: the folder that holds procedures/, demo/ and materials/. `log` may be null; a
/// practice log keeps none. Errors as readProcedureFolder, readBenchFile, readMaterialFolder and
/// proceduresInForce.
Result<PracticeShop> practiceShop(const std::string& resources, LogReader* log);

} // namespace seamclock
