// Practice in a person's words: what can be wrong, what a lesson's sheet is, how it went so far,
// why a joint breaks in the bend test, what was told when.
#pragma once

#include "app/practice/practice_room.h"
#include "core/vbench/bend_test.h"

#include <QString>
#include <string_view>
#include <vector>

namespace seamclock {

/// "Plate too cold", as a trainee says it.
QString wrongWord(Wrong wrong);
/// "PE-HD 10 mm, 1000 mm long, 3 welds".
QString lessonSheetText(const Lesson& lesson);
/// "Not made yet." or "Made 2 times, best: within limits, bends."
QString soFarText(const LessonSoFar& so);
/// What became of welds that the program's end left open, at the next start; empty: none were.
QString brokenOffText(const std::vector<BrokenOffWeld>& welds);
/// Lessons of the shop's own that could not be read; empty: none.
QString leftOutText(const std::vector<std::string>& leftOut);
/// "flat fracture: skin too cold"
QString bendWord(BendReason reason);
/// "Soaked under pressure".
QString lapseWord(Lapse lapse);
/// A step that a weld's course is told by, short: "soak"; empty for the others.
QString eventName(const WeldDetail& detail);
/// What was done against the order of things: a mishap, or a step that was told and not done.
QString orderWord(std::string_view code);
/// What a number was typed for: "plate", "scale".
QString readingWord(std::string_view what);
/// Which cue: "act now".
QString cueWord(CueKind cue);
/// A value with its unit as it is read: "11.2 s".
QString valueText(double value, std::string_view unit);

} // namespace seamclock
