#include "app/guide/alarm_list.h"

#include "app/text/language.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace seamclock {
namespace {

/// In the order of the enumerator, which is that of urgency.
constexpr int kCues = static_cast<int>(CueKind::CoolingDone) + 1;

constexpr const char* kTroubleHeard =
    "Two pairs of low tones, every 5 s, until it is seen or over.";

AlarmEntry
entry(const char* phrase, const QString& heard, const QString& means, const QString& act) {
    AlarmEntry made;
    made.phrase = phrase;
    made.heard = heard;
    made.means = means;
    made.act = act;
    return made;
}

AlarmEntry entryOf(CueKind kind) {
    switch (kind) {
    case CueKind::ProgramLost:
        return entry(
            "", "Two pairs of low tones, every 2 s. They are the horn's own.",
            "The program stands still or has ended while a weld was running. The horn sounds on "
            "what "
            "was planned, for 60 s at most.",
            "Trust your own clock and go on by hand. Start the program again: it goes on where the "
            "log stands.");
    case CueKind::ChangeoverOverrun:
        return entry(
            "Faces together now. The limit is passed.",
            "Rising pulses, two a second, until the faces are together.",
            "The plate has been out longer than the procedure allows. The skin is cooling.",
            "Faces together, at once and without a jerk. It counts, and is in the record.");
    case CueKind::ActNow:
        return entry(
            "Sheets apart, plate out, faces together.",
            "One long tone of three notes, then two pulses a second until the plate is out.",
            "The soak is over; from \"Soak is over by … s.\" on it is longer than it may be.",
            "Sheets apart, plate out, faces together. Press \"Plate out\" as "
            "the plate leaves.");
    case CueKind::BuildUpLate:
        return entry(
            "Go on evenly to %1. Do not jerk.",
            "Pulses that do not rise, until the reading stands.",
            "The joining pressure is not there yet, and the time for it has passed.",
            "Turn on evenly to the reading. A jerk squeezes the melt out, and letting back repairs "
            "nothing.");
    case CueKind::CountIn:
        return entry(
            "", "One short pulse at 3, 2 and 1 s before the soak is over.",
            "The last three seconds of the soak.", "Stand ready. Do nothing before zero.");
    case CueKind::GetReady:
        return entry(
            "Hands on the plate and the wheel. Wait for zero.",
            "As many pulses as the bench's place: one for A, two for B. Once more after 1 s.",
            "Ten seconds of soak are left; in cooling, one minute.",
            "In soak go to that bench, hands on the plate and the wheel. In cooling only go there: "
            "the wheel stays locked until the time is over.");
    case CueKind::RowNotSaved:
        return entry(
            "Last step is not on disk yet. Trying again. %1", kTroubleHeard,
            "The log can't be written just now. The step counts, and waits in the spill file.",
            "Go on; it tries again. Look for a full disk or a stick that was pulled out.");
    case CueKind::ClockJumped:
        return entry(
            "Clock was set %1 ahead. No time of a weld changed.", kTroubleHeard,
            "The clock on the wall was set by more than 2 s, by hand or by the network, ahead or "
            "back. It is a remark in every open weld.",
            "Look whether date and time are right now, then \"Seen\".");
    case CueKind::BatteryLow:
        return entry(
            "The battery is low: %1 %. Plug the charger in.", kTroubleHeard,
            "Less than 15 % is left, and nothing charges it.",
            "Plug the charger in, and the alarm ends by itself. \"Seen\" hides it until the "
            "battery "
            "was charged and is low again.");
    case CueKind::NoSound:
        return entry(
            "No sound. Watch this screen. The weld goes on.", "",
            "The horn or the machine's sound is away.",
            "Go on, and watch the lamp. \"Seen\" hides the words; the clock's tile keeps \"no "
            "sound\". It comes back by itself.");
    case CueKind::AlignmentLate:
        return entry(
            "Bead is slow. Is the plate cold or dirty?",
            "Two pulses, every 30 s, until alignment ends.",
            "Alignment takes twice as long as the last ten on this bench; where there are not five "
            "yet, longer than the soak.",
            "Wait for the bead: it ends alignment, not the clock. Measure the plate before the "
            "next "
            "joint.");
    case CueKind::RecheckDue:
        return entry(
            "Read scale %1 now and type it in.",
            "Two pulses, every 30 s, until it is typed in, the next reading is due, or two thirds "
            "of "
            "cooling are over.",
            "The sheets close up and shrink in cooling, and the reading falls.",
            "Read the scale and type it in. If it is too low, turn up to the reading that is shown "
            "(\"Reading is below …\").");
    case CueKind::CoolingDone:
        return entry(
            "Cooling is over. Number on the sheet? Then release.",
            "Two falling tones; again after 30, 60 and 90 s, then every 2 min until it is seen.",
            "The least cooling time is over. Longer never harms.",
            "Write the number on the sheet, then release in the order that is shown.");
    }
    return {};
}

/// A cell of a table holds no bar.
QString cell(QString text) {
    return text.replace(QLatin1Char('|'), QLatin1Char('/'));
}

} // namespace

std::vector<AlarmEntry> cueEntries() {
    std::vector<AlarmEntry> all;
    for (int i = 0; i < kCues; ++i) {
        const auto kind = static_cast<CueKind>(i);
        AlarmEntry made = entryOf(kind);
        made.cue = kind;
        all.push_back(std::move(made));
    }
    return all;
}

std::vector<AlarmEntry> sentenceEntries() {
    return {
        entry(
            "Last step is in memory only: leave the machine on. %1", "",
            "Neither the log nor the spill file can be written. It sounds like a step that is not "
            "on disk.",
            "Go on, and don't switch off: what is in memory only is lost with the power."),
        entry(
            "No backup of the log. %1", "",
            "The day's copy could not be made; the sentence says why.",
            "Go on: the log itself is well. Make room, or ask who looks after the tablet. It tries "
            "again at the next closing."),
        entry(
            "Photos are in no backup. %1", "",
            "A photo of a bead could not be copied, or is not what was kept.",
            "Go on. Make room, or take the photo again. It tries again at the next closing."),
        entry(
            "No copy of the log for others. %1", "", "The folder for it can't be reached.",
            "Go on: others read the older copy. It tries again at the next closing."),
        entry(
            "The log's file was damaged. Nothing is lost: the log goes on in a new file, the "
            "old one is kept.",
            "", "At the start; every row could be read.", "\"Seen\", and go on."),
        entry(
            "The log is damaged. Finish the weld, end the program, start it again. %1", "",
            "A log of many joints is looked through while the program runs, and its file is not "
            "whole.",
            "Finish what is open: steps are still kept. The next start sets the log aside and says "
            "what is lost."),
        entry(
            "The log was damaged and is kept aside; a new one goes on.", "",
            "At the start; the new log has what could be read.",
            "Go on. Look at each bench whose joint is named."),
        entry(
            "Joint %1: steps are lost, look at the bench before you go on.", "",
            "The screen shows that weld where its steps can be read to.",
            "If the bench is further than the screen, stop the weld."),
        entry(
            "Joint %1: all steps are there.", "",
            "That weld was open when the log was set aside, and nothing of it is lost.",
            "Go on where the screen stands."),
        entry(
            "Joint %1 is not on disk yet. Trying again.", "",
            "The joint is closed, and some of its rows wait.",
            "Leave the machine on: it is saved by itself. Look for a full disk."),
        entry(
            "The plate is outside its window. Wait, then read it again.", "",
            "What was typed is no temperature to weld with; the reading is kept.",
            "Let the plate come to its temperature, and read that place again."),
        entry(
            "Joint %1: not taken over.", "", "Nothing of that joint could be read.",
            "Look at it where it lies, and tell the foreman: its record is only in the old log, "
            "which is kept."),
        entry(
            "The log was damaged and is kept aside; %1 tells what was taken over.", "",
            "The start before had set a log aside and did not come to its end.",
            "Read the file that is named, and look at each joint that it names."),
        entry(
            "The plate has cooled. Cut back and plane.", "", "The power was off before the lock.",
            "\"Stop: cut out\", cut back and plane. Going on is in the record."),
        entry(
            "Cooling has gone on.", "", "The power was off in cooling.",
            "Look at another clock. \"Seen\" if the machine's clock is right; else \"Not sure\": "
            "then "
            "only the time that has surely passed counts."),
        entry(
            "It can't be counted as cooling.", "",
            "The power was off for more than 12 hours, or the clock shows an earlier time than "
            "before.",
            "\"Seen\". Cooling takes that much longer."),
        entry(
            "Wait %2 before soak on %1. Two hands, one plate.", "",
            "This soak would end while another bench changes over or builds up.",
            "Wait so long, or go on if somebody else is at the other bench."),
        entry(
            "Wait %2 before you begin %1. Two hands, one plate.", "",
            "Its alignment would end while another bench changes over or builds up.",
            "Wait so long, or go on if somebody else is at the other bench."),
        entry(
            "The screen has just come to this bench. Press again.", "",
            "Another bench called for hands while you pressed. The press did not count.",
            "Look which bench it is, then press."),
        entry(
            "No heat estimate: %1.", "", "The materials' values could not be read.",
            "Go on: no weld needs them. Ask who looks after the tablet."),
    };
}

QString phraseShown(const char* phrase) {
    const auto shown = [](QString text) {
        text.replace(QRegularExpression(QStringLiteral("%\\d")), QStringLiteral("…"));
        return text.simplified();
    };
    const QString english = shown(QString::fromUtf8(phrase));
    if (english.isEmpty() || spoken() == Language::English) {
        return english;
    }
    const QString other = shown(QCoreApplication::translate("Alarms", phrase));
    return other == english ? english : english + QStringLiteral(" (") + other + QLatin1Char(')');
}

QString alarmTable(const std::vector<AlarmEntry>& entries) {
    bool sounds = false;
    for (const AlarmEntry& one : entries) {
        sounds = sounds || !one.heard.isEmpty();
    }
    QString out = sounds ? QStringLiteral("| you see | you hear | it means | what to do |\n"
                                          "|---|---|---|---|\n")
                         : QStringLiteral("| you see | it means | what to do |\n|---|---|---|\n");
    for (const AlarmEntry& one : entries) {
        const QString seen = phraseShown(one.phrase);
        QStringList cells{seen.isEmpty() ? QStringLiteral("–") : "**" + seen + "**"};
        if (sounds) {
            cells << (one.heard.isEmpty() ? QStringLiteral("–") : one.heard);
        }
        cells << one.means << one.act;
        QStringList written;
        for (const QString& text : cells) {
            written << cell(text);
        }
        out += "| " + written.join(QStringLiteral(" | ")) + " |\n";
    }
    return out;
}

} // namespace seamclock
