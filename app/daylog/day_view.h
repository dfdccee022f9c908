// A joint's line in the day log, as values to paint: mark, number, seam, time, the first reason,
// and what a person decided. Read from the log, not from the screen's memory: what is shown here is
// what is on disk.
#pragma once

#include "app/parts/mark.h"
#include "app/parts/theme.h"
#include "core/log/joint.h"
#include "core/units/measure.h"
#include "core/weld/record.h"

#include <QString>
#include <map>
#include <string>

namespace seamclock {

struct JointRowView {
    std::string weld; // "weld:UUID"
    Mark mark = Mark::Open;
    Tone tone = Tone::Rest;
    double fraction = 0; // of a wait that runs
    QString number;
    QString seam;
    QString time;
    QString reason;
    QString decided;      // by a person, beside the verdict and never in its place
    bool remarks = false; // the note sign beside the tick
    bool chosen = false;

    bool operator==(const JointRowView&) const = default;
};

/// How benches and people are called, by their ids.
struct DayNames {
    std::map<std::string, QString> benches;
    std::map<std::string, std::string> people;

    QString bench(const std::string& id) const;
    QString person(const std::string& id) const;
};

/// How a verdict is marked in every list.
struct VerdictLook {
    Mark mark = Mark::Open;
    Tone tone = Tone::Rest;
};
VerdictLook lookOf(VerdictWord word);
/// Of a joint whose weld was stopped the cross, whatever its verdict.
VerdictLook lookOf(const WeldRecord& record);

/// What was decided last: "accepted"; of a trial joint "released"; empty: nothing yet.
QString decisionWord(const WeldRecord& record);
/// As it stands in a list: "Seam 5, A".
QString seamText(const std::string& seam, const QString& bench);
/// What a stop's reason says: the words that were typed, or its code's.
QString stopText(const WeldAborted& aborted);

/// "7 Jan 2030 14:02"
QString whenText(const Instant& at);

/// `record`: null where the joint's events make none; its line says why. `oneDay`: the list is of
/// one day, and a line has its time instead.
JointRowView jointRow(
    const JointLine& line, const WeldRecord* record, const DayNames& names,
    UnitSystem units = UnitSystem::Metric, bool oneDay = true);

} // namespace seamclock
