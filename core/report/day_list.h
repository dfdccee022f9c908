// The day list: one line a joint, as text for a terminal, as JSON and as comma-separated values.
// Lists may be long, so each form is written a line at a time.
#pragma once

#include "core/log/joint.h"
#include "core/log/log_reader.h"

#include <string>
#include <utility>
#include <vector>

namespace seamclock {

/// What a reader of the list asks next, and the log keeps in the joint's events alone.
struct LineSaid {
    std::string part;        // that the seam is of
    std::string firstReason; // of the verdict by this program's rules, one English sentence
    std::string decision;    // the last one: "accept", "repair", "cut_out"
    std::string decidedBy;
    std::string signedOffBy; // all of them: "person:runa as foreman; …"

    bool operator==(const LineSaid&) const = default;
};

LineSaid saidOf(const WeldRecord& record);

/// Reads it beside a list that is being read: the list's own reader must not be used meanwhile.
class LineReading {
public:
    /// Errors as LogReader::open.
    static Result<LineReading> open(const std::string& log);
    /// Nothing of a joint whose events make no weld: its line says so. Errors as the reader's.
    Result<LineSaid> of(const JointLine& line);

private:
    explicit LineReading(LogReader reader) : m_reader(std::move(reader)) {}
    LogReader m_reader;
};

/// A table with a headline for each day, newest first as the log gives it; `said`: of each line.
std::string
dayListText(const std::vector<JointLine>& lines, const std::vector<LineSaid>& said = {});

/// Header and rows with CRLF. Instants in UTC, the unit in the column's name.
std::string dayListHeader();
std::string dayListRow(const JointLine& line, const LineSaid& said);

/// One JSON object, without a line feed.
std::string jointLineJson(const JointLine& line, const LineSaid& said);

} // namespace seamclock
