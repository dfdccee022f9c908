// The day's joints as lines, and one joint with set against actual, as values to paint. Read from
// the log, not from the screen's memory: what is shown here is what is on disk.
#pragma once

#include "app/parts/mark.h"
#include "app/parts/theme.h"
#include "core/bench/bench.h"
#include "core/log/joint.h"
#include "core/weld/record.h"

#include <QString>
#include <vector>

namespace seamclock {

struct JointRowView {
    Mark mark = Mark::Open;
    Tone tone = Tone::Rest;
    QString number;
    QString seam;
    QString time;
    QString reason;
    bool remarks = false; // the note sign beside the tick
    bool chosen = false;

    bool operator==(const JointRowView&) const = default;
};

struct JointView {
    struct Row {
        QString item;
        QString set;
        QString actual;
        bool out = false;

        bool operator==(const Row&) const = default;
    };

    Mark mark = Mark::Open;
    Tone tone = Tone::Rest;
    QString verdict;
    QString reason;
    QString about;
    std::vector<Row> rows;
    std::vector<QString> findings;

    bool operator==(const JointView&) const = default;
};

/// How a verdict is marked in every list.
struct VerdictLook {
    Mark mark = Mark::Open;
    Tone tone = Tone::Rest;
};
VerdictLook lookOf(VerdictWord word);

JointRowView jointRow(const JointLine& line, const std::string& firstReason);
JointView jointView(const WeldRecord& record, const Bench* bench);

} // namespace seamclock
