// Core's codes in a person's words: phases, checks, release steps, verdicts and what was found.
// Core speaks codes so that logs and scripts do not depend on a language; every screen takes its
// words from here. A code that has no words is shown with blanks for its underscores, since data
// may bring checks and release steps of a shop's own.
#pragma once

#include "core/units/measure.h"
#include "core/weld/verdict.h"

#include <QString>
#include <string>
#include <string_view>

namespace seamclock {

/// "soak", as the strip shows it.
QString phaseWord(const State& state);
/// Two words at most, for the row of checks: "gap × 2".
QString checkWord(std::string_view check);
/// Where along the plate: "front", "middle", "back"; another place as it was named.
QString placeWord(std::string_view place);
/// The plate's face, by the table that it is turned to: "fixed", "moving".
QString plateFaceWord(std::string_view face);
/// What its button says once it was done: "Clamps are eased".
QString releaseDoneWord(std::string_view step);
/// What to do: "Ease the clamps on both sides."
QString releaseSentence(std::string_view step);
/// "Within limits".
QString verdictWord(VerdictWord word);
/// With a small first letter, to stand in a sentence; nouns inside keep theirs.
QString midSentence(const QString& words);
/// The stored word of a verdict; empty stays empty.
QString verdictWord(std::string_view stored);
/// "changeover 11.2 s, limit 8.8 s": its numbers as they are, never rounded onto each other.
QString
findingText(const Finding& finding, const WeldPlan& plan, UnitSystem units = UnitSystem::Metric);
QString findingText(
    const StoredReason& reason, const WeldPlan& plan, UnitSystem units = UnitSystem::Metric);
/// What it is about, without values: "changeover".
QString findingWord(std::string_view code);
/// A value of a plan by the terminal's name: "soak_s" is "soak".
QString planValueWord(std::string_view name);
/// "within limits", or the first reason.
QString
firstReason(const Verdict& verdict, const WeldPlan& plan, UnitSystem units = UnitSystem::Metric);
/// A warning of a plan, in one line.
QString warningText(const PlanWarning& warning);
/// What that plastic gives off when it is too hot, and what to do; empty: nothing is known of it.
QString fumeCaution(std::string_view material);
/// Where a value comes from and what that is worth: "DVS 2207-1: from memory, not attested".
QString standingText(Standing standing);

QString fromUtf8(std::string_view text);

} // namespace seamclock
