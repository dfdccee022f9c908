#include "app/practice/practice_text.h"

#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <map>

namespace seamclock {
namespace {

struct PracticeWords {
    Q_DECLARE_TR_FUNCTIONS(PracticeWords)
};

QString tr(const char* text) {
    return PracticeWords::tr(text);
}

} // namespace

QString wrongWord(Wrong wrong) {
    switch (wrong) {
    case Wrong::PlateCold:
        return tr("Plate too cold");
    case Wrong::PlateHot:
        return tr("Plate too hot");
    case Wrong::PlateDirty:
        return tr("Plate is dirty");
    case Wrong::ColdSpot:
        return tr("Cold place on the plate");
    case Wrong::WrongRow:
        return tr("Card is for another sheet");
    case Wrong::WrongUnit:
        return tr("Card's unit is wrong");
    case Wrong::Draught:
        return tr("Draught at the seam");
    case Wrong::ZeroOff:
        return tr("Scale is not on zero");
    case Wrong::SpringDrifts:
        return tr("Lock gives way");
    case Wrong::EdgeLeans:
        return tr("Edge leans");
    }
    return {};
}

QString lessonSheetText(const Lesson& lesson) {
    const auto mm = [](std::int64_t um) { return millimetresText(um); };
    const QString sheet =
        tr("%1, %2 mm thick, %3 mm long")
            .arg(fromUtf8(lesson.material).toUpper(), mm(lesson.thicknessUm), mm(lesson.lengthUm));
    return lesson.welds == 1 ? sheet : tr("%1, %2 welds").arg(sheet).arg(lesson.welds);
}

QString soFarText(const LessonSoFar& so) {
    if (so.takes == 0 || !so.best) {
        return tr("Not made yet.");
    }
    if (so.found && *so.best == VerdictWord::Incomplete) {
        return tr("What was wrong was found, and the weld stopped.");
    }
    const QString bends = so.ductile ? tr("bends") : tr("breaks");
    return so.takes == 1 ? tr("Made once: %1, %2.").arg(midSentence(verdictWord(*so.best)), bends)
                         : tr("Made %1 times, best: %2, %3.")
                               .arg(so.takes)
                               .arg(midSentence(verdictWord(*so.best)), bends);
}

QString brokenOffText(const std::vector<BrokenOffWeld>& welds) {
    if (welds.empty()) {
        return {};
    }
    return welds.size() == 1
               ? tr("Joint %1 was broken off when the program ended.").arg(welds.front().number)
               : tr("%1 joints were broken off when the program ended.").arg(welds.size());
}

QString leftOutText(const std::vector<std::string>& leftOut) {
    if (leftOut.empty()) {
        return {};
    }
    const QString first = tr("A lesson of the shop is left out: %1.").arg(inWords(leftOut.front()));
    return leftOut.size() == 1 ? first
                               : tr("%1 There are %2 such files.").arg(first).arg(leftOut.size());
}

QString bendWord(BendReason reason) {
    switch (reason) {
    case BendReason::NotJoined:
        return tr("not joined");
    case BendReason::NotFrozen:
        return tr("still soft");
    case BendReason::ColdSkin:
        return tr("cold skin");
    case BendReason::ThinMelt:
        return tr("thin melt");
    case BendReason::Contaminated:
        return tr("dirt in it");
    case BendReason::Underheated:
        return tr("cold plate");
    case BendReason::Overheated:
        return tr("overheated");
    case BendReason::LowPressure:
        return tr("hollow");
    case BendReason::Notch:
        return tr("notch");
    case BendReason::NotClosedBelow:
        return tr("open below");
    case BendReason::Kinked:
        return tr("kinked");
    }
    return {};
}

QString eventName(const WeldDetail& detail) {
    if (std::holds_alternative<AlignmentStarted>(detail)) {
        return tr("align");
    }
    if (std::holds_alternative<SoakStarted>(detail)) {
        return tr("soak");
    }
    if (std::holds_alternative<PlateOut>(detail)) {
        return tr("plate out");
    }
    if (std::holds_alternative<FacesMet>(detail)) {
        return tr("faces");
    }
    if (std::holds_alternative<PressureLocked>(detail)) {
        return tr("lock");
    }
    if (std::holds_alternative<ReleaseStep>(detail)) {
        return tr("release");
    }
    if (std::holds_alternative<WeldAborted>(detail)) {
        return tr("stopped");
    }
    return {};
}

QString lapseWord(Lapse lapse) {
    switch (lapse) {
    case Lapse::SoakPressed:
        return tr("Soaked under pressure");
    case Lapse::BackedOff:
        return tr("Backed off in soak");
    case Lapse::ClockFromContact:
        return tr("Clock from first contact");
    case Lapse::SlowChangeover:
        return tr("Faces cooled in the air");
    case Lapse::Slammed:
        return tr("Slammed together");
    case Lapse::LetBack:
        return tr("Let back after the lock");
    case Lapse::NotFollowed:
        return tr("Reading not followed");
    case Lapse::EarlyRelease:
        return tr("Released too early");
    case Lapse::PlateCold:
        return tr("Plate too cold");
    case Lapse::PlateDirty:
        return tr("Plate was dirty");
    case Lapse::PlateHot:
        return tr("Plate too hot");
    case Lapse::OffParallel:
        return tr("Edges not parallel");
    case Lapse::TopBeadOnly:
        return tr("Judged by the top bead");
    case Lapse::EdgeTouched:
        return tr("Edge touched");
    case Lapse::FilmLeft:
        return tr("Film left on the edge");
    case Lapse::WrongRow:
        return tr("Wrong row of the table");
    case Lapse::WrongUnit:
        return tr("Kilograms taken for newtons");
    }
    return {};
}

QString orderWord(std::string_view code) {
    constexpr std::string_view kNotDone = "told_not_done:";
    constexpr std::string_view kLate = "told_late:";
    constexpr std::string_view kRefused = "refused:";
    if (code.rfind(kNotDone, 0) == 0) {
        return tr("told, not done: %1").arg(wordOf(code.substr(kNotDone.size())));
    }
    if (code.rfind(kLate, 0) == 0) {
        return tr("told too late: %1").arg(wordOf(code.substr(kLate.size())));
    }
    if (code.rfind(kRefused, 0) == 0) {
        return tr("could not be done: %1").arg(wordOf(code.substr(kRefused.size())));
    }
    if (code == "clock_from_contact") {
        return tr("soak counted before the bead stood");
    }
    if (code == "call_taken") {
        return tr("away on the phone in soak");
    }
    if (code == "plate_dragged") {
        return tr("plate drawn out while pressed");
    }
    if (code == "spring_kick") {
        return tr("bars opened under a loaded spring");
    }
    if (code == "parted") {
        return tr("hot faces pulled apart");
    }
    if (code == "let_go_hot") {
        return tr("let go while soft");
    }
    if (code == "scale_end") {
        return tr("turned against the scale's end");
    }
    return wordOf(code);
}

QString readingWord(std::string_view what) {
    static const std::map<std::string_view, const char*> kTable{
        {"plate_temperature", QT_TRANSLATE_NOOP("PracticeWords", "plate")},
        {"drag", QT_TRANSLATE_NOOP("PracticeWords", "drag")},
        {"scale_zero", QT_TRANSLATE_NOOP("PracticeWords", "scale zero")},
        {"alignment", QT_TRANSLATE_NOOP("PracticeWords", "alignment reading")},
        {"soak", QT_TRANSLATE_NOOP("PracticeWords", "soak reading")},
        {"joining", QT_TRANSLATE_NOOP("PracticeWords", "joining reading")},
        {"recheck", QT_TRANSLATE_NOOP("PracticeWords", "scale again")},
        {"alignment_bead", QT_TRANSLATE_NOOP("PracticeWords", "alignment bead")},
        {"bead", QT_TRANSLATE_NOOP("PracticeWords", "bead")},
        {"k", QT_TRANSLATE_NOOP("PracticeWords", "K value")},
        {"gap", QT_TRANSLATE_NOOP("PracticeWords", "gap")},
        {"clamping_gap", QT_TRANSLATE_NOOP("PracticeWords", "gap for the second sheet")}};
    const auto found = kTable.find(what);
    return found == kTable.end() ? wordOf(what) : tr(found->second);
}

QString cueWord(CueKind cue) {
    switch (cue) {
    case CueKind::ProgramLost:
        return tr("program lost");
    case CueKind::ChangeoverOverrun:
        return tr("changeover late");
    case CueKind::ActNow:
        return tr("act now");
    case CueKind::BuildUpLate:
        return tr("build-up late");
    case CueKind::CountIn:
        return tr("count-in");
    case CueKind::GetReady:
        return tr("get ready");
    case CueKind::RowNotSaved:
        return tr("not saved");
    case CueKind::ClockJumped:
        return tr("clock jumped");
    case CueKind::BatteryLow:
        return tr("battery");
    case CueKind::NoSound:
        return tr("no sound");
    case CueKind::AlignmentLate:
        return tr("bead is slow");
    case CueKind::RecheckDue:
        return tr("reading due");
    case CueKind::CoolingDone:
        return tr("cooling over");
    }
    return {};
}

QString valueText(double value, std::string_view unit) {
    if (unit == "C") {
        return tr("%1 °C").arg(numberText(value, 0));
    }
    if (unit == "Pa") {
        return tr("%1 N/mm²").arg(numberText(value / 1e6, 2));
    }
    if (unit == "s") {
        return tr("%1 s").arg(numberText(value, 1));
    }
    if (unit == "mm") {
        return tr("%1 mm").arg(numberText(value, 1));
    }
    return numberText(value, 1) + QLatin1Char(' ') + fromUtf8(unit);
}

} // namespace seamclock
