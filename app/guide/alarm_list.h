// Every cue and every sentence of an alarm, with what it means and what to do: one list, from which
// the guide's tables are made. The cues are core's, so that a new one does not compile before it
// has its meaning here; the sentences are the screen's own words, and a test looks them up among
// its phrases. In another language than English what is heard, what it means and what to do are in
// that language, and a sentence stands beside the English one as that language's screen shows it.
#pragma once

#include "core/weld/cues.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

namespace seamclock {

struct AlarmEntry {
    std::optional<CueKind> cue; // absent: a sentence alone
    const char* phrase = "";    // what the screen says, as its source has it, with %1 for a value
    QString heard;              // empty: nothing sounds
    QString means;
    QString act;
};

/// One for each cue of core, most urgent first.
std::vector<AlarmEntry> cueEntries();
/// What else the screen says of itself, of the log and of the machine.
std::vector<AlarmEntry> sentenceEntries();

/// "No sound. Watch this screen." with its values' places as "…"; in another language that one's in
/// brackets behind it.
QString phraseShown(const char* phrase);

/// In Markdown. A column that is empty throughout is left out.
QString alarmTable(const std::vector<AlarmEntry>& entries);

} // namespace seamclock
