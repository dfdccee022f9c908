// One paper without a screen: which joint, day or job of which log, and whether it goes to a file
// or to a printer. The log is only read. For the command line and for scripts.
#pragma once

#include "app/print/report_pdf.h"
#include "core/base/result.h"
#include "core/heat/material.h"
#include "core/units/measure.h"

#include <QString>
#include <cstdint>
#include <string>
#include <vector>

namespace seamclock {

struct PaperErrand {
    enum class What { Record, Day, Job };

    What what = What::Record;
    std::string log;
    std::int64_t number = 0;        // of the joint
    std::string day;                // "2030-01-07"
    std::vector<std::string> seams; // the job's, by their labels
    std::string job;                // its name
    std::vector<Material> materials;
    PaperWork work;
    UnitSystem units = UnitSystem::Metric;
    Paper paper = Paper::A4;
    QString out;     // a file; empty: to a printer
    QString printer; // empty: the desktop's own
};

/// Where it went: the file, or the printer. Missing: no such joint, nothing to report of, no such
/// printer. Conflict: several joints have that number. Otherwise as the reader and as the paper.
Result<QString> runErrand(const PaperErrand& errand);

} // namespace seamclock
