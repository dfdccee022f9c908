// Which joints hold a batch of sheet, and which batches a joint holds: from a recalled sheet to the
// tanks it is in, and back. The list's index of texts finds the joints that may; each is then held
// against its own events, so that a batch is found by its whole name and nothing else. What was
// noted at first and what it was corrected to both count, each named as what it is: a batch must
// not be lost by a correction.
#pragma once

#include "core/log/log_reader.h"

#include <cstddef>
#include <string>
#include <vector>

namespace seamclock {

struct SheetBatch {
    int sheet = 1; // 1 or 2
    std::string material;
    std::string grade; // "" where none was noted
    std::string maker;
    std::string batch;
    bool corrected = false; // as it was corrected to
    bool overruled = false; // as it was noted at first, and corrected since

    bool operator==(const SheetBatch&) const = default;
};

struct BatchJoint {
    JointLine line;
    std::vector<SheetBatch> sheets; // of batchesOf, those of the batch that was asked for

    bool operator==(const BatchJoint&) const = default;
};

/// Of one weld: both sheets, and what was noted before a correction. Damaged: events that make no
/// weld.
Result<std::vector<SheetBatch>> batchesOf(const std::vector<Event>& events);

/// Newest first. Spaces at the ends don't count, letters do as they are. Malformed: an empty name.
/// Damaged joints are passed over by what their lines can't say; `damaged` counts them.
struct BatchFound {
    std::vector<BatchJoint> joints;
    std::size_t damaged = 0;
};
Result<BatchFound> jointsOfBatch(LogReader& log, const std::string& batch);

} // namespace seamclock
