#include "app/guide/alarm_list.h"

#include "app/text/language.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace seamclock {
namespace {

/// In the order of the enumerator, which is that of urgency.
constexpr int kCues = static_cast<int>(CueKind::CoolingDone) + 1;

constexpr const char* kTroubleHeard =
    QT_TRANSLATE_NOOP("Alarms", "Two pairs of low tones, every 5 s, until it is seen or over.");

QString tr(const char* text) {
    return QCoreApplication::translate("Alarms", text);
}

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
            "", tr("Two pairs of low tones, every 2 s. They are the horn's own."),
            tr("The program stands still or has ended while a weld was running. The horn sounds on "
               "what was planned, for 60 s at most."),
            tr("Trust your own clock and go on by hand. Start the program again: it goes on where "
               "the log stands."));
    case CueKind::ChangeoverOverrun:
        return entry(
            "Faces together now. The limit is passed.",
            tr("Rising pulses, two a second, until the faces are together."),
            tr("The plate has been out longer than the procedure allows. The skin is cooling."),
            tr("Faces together, at once and without a jerk. It counts, and is in the record."));
    case CueKind::ActNow:
        return entry(
            "Sheets apart, plate out, faces together.",
            tr("One long tone of three notes, then two pulses a second until the plate is out."),
            tr("The soak is over; from \"Soak is over by … s.\" on it is longer than it may be."),
            tr("Sheets apart, plate out, faces together. Press \"Plate out\" as the plate "
               "leaves."));
    case CueKind::BuildUpLate:
        return entry(
            "Go on evenly to %1. Do not jerk.",
            tr("Pulses that do not rise, until the reading stands."),
            tr("The joining pressure is not there yet, and the time for it has passed."),
            tr("Turn on evenly to the reading. A jerk squeezes the melt out, and letting back "
               "repairs nothing."));
    case CueKind::CountIn:
        return entry(
            "", tr("One short pulse at 3, 2 and 1 s before the soak is over."),
            tr("The last three seconds of the soak."), tr("Stand ready. Do nothing before zero."));
    case CueKind::GetReady:
        return entry(
            "Hands on the plate and the wheel. Wait for zero.",
            tr("As many pulses as the bench's place: one for A, two for B. Once more after 1 s."),
            tr("Ten seconds of soak are left; in cooling, one minute."),
            tr("In soak go to that bench, hands on the plate and the wheel. In cooling only go "
               "there: the wheel stays locked until the time is over."));
    case CueKind::RowNotSaved:
        return entry(
            "Last step is not on disk yet. Trying again. %1", tr(kTroubleHeard),
            tr("The log can't be written just now. The step counts, and waits in the spill file."),
            tr("Go on; it tries again. Look for a full disk or a stick that was pulled out."));
    case CueKind::ClockJumped:
        return entry(
            "Clock was set %1 ahead. No time of a weld changed.", tr(kTroubleHeard),
            tr("The clock on the wall was set by more than 2 s, by hand or by the network, ahead "
               "or back. It is a remark in every open weld."),
            tr("Look whether date and time are right now, then \"Seen\"."));
    case CueKind::BatteryLow:
        return entry(
            "The battery is low: %1 %. Plug the charger in.", tr(kTroubleHeard),
            tr("Less than 15 % is left, and nothing charges it."),
            tr("Plug the charger in, and the alarm ends by itself. \"Seen\" hides it until the "
               "battery was charged and is low again."));
    case CueKind::NoSound:
        return entry(
            "No sound. Watch this screen. The weld goes on.", QString(),
            tr("The horn or the machine's sound is away."),
            tr("Go on, and watch the lamp. \"Seen\" hides the words; the clock's tile keeps \"no "
               "sound\". It comes back by itself."));
    case CueKind::AlignmentLate:
        return entry(
            "Bead is slow. Is the plate cold or dirty?",
            tr("Two pulses, every 30 s, until alignment ends."),
            tr("Alignment takes twice as long as the last ten on this bench; where there are not "
               "five yet, longer than the soak."),
            tr("Wait for the bead: it ends alignment, not the clock. Measure the plate before the "
               "next joint."));
    case CueKind::RecheckDue:
        return entry(
            "Read scale %1 now and type it in.",
            tr("Two pulses, every 30 s, until it is typed in, the next reading is due, or two "
               "thirds of cooling are over."),
            tr("The sheets close up and shrink in cooling, and the reading falls."),
            tr("Read the scale and type it in. If it is too low, turn up to the reading that is "
               "shown (\"Reading is below …\")."));
    case CueKind::CoolingDone:
        return entry(
            "Cooling is over. Number on the sheet? Then release.",
            tr("Two falling tones; again after 30, 60 and 90 s, then every 2 min until it is "
               "seen."),
            tr("The least cooling time is over. Longer never harms."),
            tr("Write the number on the sheet, then release in the order that is shown."));
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
            "Last step is in memory only: leave the machine on. %1", QString(),
            tr("Neither the log nor the spill file can be written. It sounds like a step that is "
               "not on disk."),
            tr("Go on, and don't switch off: what is in memory only is lost with the power.")),
        entry(
            "No backup of the log. %1", QString(),
            tr("The day's copy could not be made; the sentence says why."),
            tr("Go on: the log itself is well. Make room, or ask who looks after the tablet. It "
               "tries again at the next closing.")),
        entry(
            "Photos are in no backup. %1", QString(),
            tr("A photo of a bead could not be copied, or is not what was kept."),
            tr("Go on. Make room, or take the photo again. It tries again at the next closing.")),
        entry(
            "No copy of the log for others. %1", QString(),
            tr("The folder for it can't be reached."),
            tr("Go on: others read the older copy. It tries again at the next closing.")),
        entry(
            "The log's file was damaged. Nothing is lost: the log goes on in a new file, the "
            "old one is kept.",
            QString(), tr("At the start; every row could be read."), tr("\"Seen\", and go on.")),
        entry(
            "The log is damaged. Finish the weld, end the program, start it again. %1", QString(),
            tr("A log of many joints is looked through while the program runs, and its file is not "
               "whole."),
            tr("Finish what is open: steps are still kept. The next start sets the log aside and "
               "says what is lost.")),
        entry(
            "The log was damaged and is kept aside; a new one goes on.", QString(),
            tr("At the start; the new log has what could be read."),
            tr("Go on. Look at each bench whose joint is named.")),
        entry(
            "Joint %1: steps are lost, look at the bench before you go on.", QString(),
            tr("The screen shows that weld where its steps can be read to."),
            tr("If the bench is further than the screen, stop the weld.")),
        entry(
            "Joint %1: all steps are there.", QString(),
            tr("That weld was open when the log was set aside, and nothing of it is lost."),
            tr("Go on where the screen stands.")),
        entry(
            "Joint %1 is not on disk yet. Trying again.", QString(),
            tr("The joint is closed, and some of its rows wait."),
            tr("Leave the machine on: it is saved by itself. Look for a full disk.")),
        entry(
            "The plate is outside its window. Wait, then read it again.", QString(),
            tr("What was typed is no temperature to weld with; the reading is kept."),
            tr("Let the plate come to its temperature, and read that place again.")),
        entry(
            "Joint %1: not taken over.", QString(), tr("Nothing of that joint could be read."),
            tr("Look at it where it lies, and tell the foreman: its record is only in the old log, "
               "which is kept.")),
        entry(
            "The log was damaged and is kept aside; %1 tells what was taken over.", QString(),
            tr("The start before had set a log aside and did not come to its end."),
            tr("Read the file that is named, and look at each joint that it names.")),
        entry(
            "The plate has cooled. Cut back and plane.", QString(),
            tr("The power was off before the lock."),
            tr("\"Stop: cut out\", cut back and plane. Going on is in the record.")),
        entry(
            "Cooling has gone on.", QString(), tr("The power was off in cooling."),
            tr("Look at another clock. \"Seen\" if the machine's clock is right; else \"Not "
               "sure\": then only the time that has surely passed counts.")),
        entry(
            "It can't be counted as cooling.", QString(),
            tr("The power was off for more than 12 hours, or the clock shows an earlier time than "
               "before."),
            tr("\"Seen\". Cooling takes that much longer.")),
        entry(
            "Wait %2 before soak on %1. Two hands, one plate.", QString(),
            tr("This soak would end while another bench changes over or builds up."),
            tr("Wait so long, or go on if somebody else is at the other bench.")),
        entry(
            "Wait %2 before you begin %1. Two hands, one plate.", QString(),
            tr("Its alignment would end while another bench changes over or builds up."),
            tr("Wait so long, or go on if somebody else is at the other bench.")),
        entry(
            "The screen has just come to this bench. Press again.", QString(),
            tr("Another bench called for hands while you pressed. The press did not count."),
            tr("Look which bench it is, then press.")),
        entry(
            "No heat estimate: %1.", QString(), tr("The materials' values could not be read."),
            tr("Go on: no weld needs them. Ask who looks after the tablet.")),
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
    QStringList heads{tr("you see"), tr("it means"), tr("what to do")};
    if (sounds) {
        heads.insert(1, tr("you hear"));
    }
    QString out = "| " + heads.join(QStringLiteral(" | ")) + " |\n" +
                  QStringLiteral("|---").repeated(heads.size()) + "|\n";
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
