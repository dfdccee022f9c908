// A joint's record in a person's words and units: what was set and read, what happened, what people
// said and decided. Screens and paper take their words from here. Numbers keep all that the log
// holds: a reading to its last typed digit, a time to the millisecond, so that each can be held
// against its event; lengths, forces, pressures and temperatures are turned by
// core/units/measure.h.
#pragma once

#include "core/people/person.h"
#include "core/report/set_actual.h"
#include "core/units/measure.h"
#include "core/weld/record.h"

#include <QString>
#include <string_view>
#include <vector>

namespace seamclock {

/// What somebody typed, on one line: a line break, an escape or an invisible sign becomes a blank.
QString plainText(std::string_view text);

/// Of set_actual.h: "joining_reading" is "joining reading".
QString itemWord(std::string_view item);
/// Of a PhaseRecord: "build_up" is "build-up".
QString phaseName(std::string_view phase);
/// Of a list's line: "inspecting" is "being looked at".
QString stateWord(std::string_view phaseNow);
QString typeWord(WeldType type);
/// "out", "remark", "incomplete"
QString gradeWord(std::string_view grade);
/// Why somebody stopped, went on or was late: the code of an answer, or his own words.
QString choiceWord(std::string_view choice);
QString decisionWord(Decision decision);
QString roleWord(std::string_view role);
/// "reading_milli" is "reading"; "sheets.1.batch" is "batch of sheet 2".
QString fieldWord(std::string_view field);
/// A check as what was found: "protective film off".
QString checkSentence(std::string_view check);

/// (10500, "ms") is "10.5 s", (15500, "milli") what the scale showed, with its unit; "mK" is a
/// difference of temperatures.
QString
amountText(std::int64_t value, std::string_view unit, const WeldPlan& plan, UnitSystem units);
/// The number alone, without a unit; of a time as amountText.
QString
amountNumber(std::int64_t value, std::string_view unit, const WeldPlan& plan, UnitSystem units);

/// "8.813 s", "13:36.000", "1:02:05.250": to the millisecond.
QString exactTimeText(Milliseconds time);
/// A limit or a target, without zeros: "8.8 s", "13:36", "13:36.5".
QString limitTimeText(Milliseconds time);
/// "8.813 s", or where a power cut leaves it open "8.813 s to 9.000 s".
QString tookText(const WeldTime& took);
/// "2030-01-07", "14:02:11.120" and "2030-01-07 14:02:11.120": local time at that place.
QString dateText(const Instant& at);
QString clockText(const Instant& at);
QString instantText(const Instant& at);
/// "UTC+01:00"
QString offsetText(const Instant& at);

/// A reason of a verdict with its numbers: "changeover 8.8 s, limit 6.4 s". `code`, `limit`,
/// `actual` and `unit` as in Finding and StoredReason.
struct ReasonText {
    QString what;   // "changeover"
    QString actual; // "8.8 s"; empty: none
    QString limit;

    bool operator==(const ReasonText&) const = default;
};
ReasonText reasonText(const Finding& finding, const WeldPlan& plan, UnitSystem units);
ReasonText reasonText(const StoredReason& reason, const WeldPlan& plan, UnitSystem units);

/// One event in one line, with its values; without its n and instant.
QString eventText(const WeldDetail& detail, const WeldPlan& plan, UnitSystem units);

/// Where on the plate something was read: "back, moving side"; empty: of the whole.
QString plateWhere(std::string_view place, std::string_view face);
/// Where one of set_actual.h's values was taken: so, or "at 850 mm" along the seam.
QString whereText(const SetActual& row, UnitSystem units);

/// The name that the roster gives; without one the id: "person:ilva".
QString personText(const std::vector<Person>& people, std::string_view id);

} // namespace seamclock
