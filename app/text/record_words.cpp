#include "app/text/record_words.h"

#include "app/text/card_text.h"
#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/words.h"
#include "core/base/overloaded.h"
#include "core/weld/force_check.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <map>
#include <variant>

namespace seamclock {
namespace {

struct Record {
    Q_DECLARE_TR_FUNCTIONS(Record)
};

using Table = std::map<std::string_view, const char*>;

QString lookUp(const Table& table, std::string_view code) {
    const auto found = table.find(code);
    return found == table.end() ? plainText(code).replace(QLatin1Char('_'), QLatin1Char(' '))
                                : Record::tr(found->second);
}

const Table& items() {
    static const Table kTable{
        {"plate_temperature", QT_TRANSLATE_NOOP("Record", "plate on its face")},
        {"scale_zero", QT_TRANSLATE_NOOP("Record", "scale without load")},
        {"drag_force", QT_TRANSLATE_NOOP("Record", "drag")},
        {"drag_reading", QT_TRANSLATE_NOOP("Record", "drag as read")},
        {"marked_reading", QT_TRANSLATE_NOOP("Record", "reading marked to join")},
        {"gap", QT_TRANSLATE_NOOP("Record", "gap")},
        {"clamping_gap", QT_TRANSLATE_NOOP("Record", "gap for the second sheet")},
        {"edge_gap", QT_TRANSLATE_NOOP("Record", "gap between the edges")},
        {"alignment_reading", QT_TRANSLATE_NOOP("Record", "alignment reading")},
        {"alignment_force", QT_TRANSLATE_NOOP("Record", "alignment force")},
        {"alignment_pressure", QT_TRANSLATE_NOOP("Record", "alignment pressure")},
        {"alignment_bead", QT_TRANSLATE_NOOP("Record", "smallest bead in alignment")},
        {"soak_reading", QT_TRANSLATE_NOOP("Record", "soak reading")},
        {"soak_force", QT_TRANSLATE_NOOP("Record", "soak force")},
        {"soak_pressure", QT_TRANSLATE_NOOP("Record", "soak pressure")},
        {"joining_reading", QT_TRANSLATE_NOOP("Record", "joining reading")},
        {"joining_force", QT_TRANSLATE_NOOP("Record", "joining force")},
        {"joining_pressure", QT_TRANSLATE_NOOP("Record", "joining pressure")},
        {"recheck_reading", QT_TRANSLATE_NOOP("Record", "reading in cooling")},
        {"recheck_force", QT_TRANSLATE_NOOP("Record", "force in cooling")},
        {"recheck_pressure", QT_TRANSLATE_NOOP("Record", "pressure in cooling")},
        {"bead_width", QT_TRANSLATE_NOOP("Record", "bead width")},
        {"bead_height", QT_TRANSLATE_NOOP("Record", "bead height")},
        {"bead_k", QT_TRANSLATE_NOOP("Record", "bead K")},
        {"misalignment", QT_TRANSLATE_NOOP("Record", "faces out of line")}};
    return kTable;
}

const Table& phases() {
    static const Table kTable{
        {"alignment", QT_TRANSLATE_NOOP("Record", "alignment")},
        {"soak", QT_TRANSLATE_NOOP("Record", "soak")},
        {"changeover", QT_TRANSLATE_NOOP("Record", "changeover")},
        {"build_up", QT_TRANSLATE_NOOP("Record", "build-up")},
        {"joining", QT_TRANSLATE_NOOP("Record", "joining")},
        {"recheck", QT_TRANSLATE_NOOP("Record", "in cooling")},
        {"cooling", QT_TRANSLATE_NOOP("Record", "cooling")}};
    return kTable;
}

const Table& states() {
    static const Table kTable{
        {"preparing", QT_TRANSLATE_NOOP("Record", "being prepared")},
        {"aligning", QT_TRANSLATE_NOOP("Record", "in alignment")},
        {"soaking", QT_TRANSLATE_NOOP("Record", "in soak")},
        {"changing_over", QT_TRANSLATE_NOOP("Record", "in changeover")},
        {"building_up", QT_TRANSLATE_NOOP("Record", "in build-up")},
        {"cooling", QT_TRANSLATE_NOOP("Record", "cooling")},
        {"releasing", QT_TRANSLATE_NOOP("Record", "being released")},
        {"inspecting", QT_TRANSLATE_NOOP("Record", "being looked at")},
        {"closed", QT_TRANSLATE_NOOP("Record", "finished")},
        {"aborted", QT_TRANSLATE_NOOP("Record", "stopped")},
        {"damaged", QT_TRANSLATE_NOOP("Record", "can't be read")}};
    return kTable;
}

const Table& checks() {
    static const Table kTable{
        {"scale_readable", QT_TRANSLATE_NOOP("Record", "scale fine enough for the tolerance")},
        {"plate_warm", QT_TRANSLATE_NOOP("Record", "plate settled for ten minutes")},
        {"plate_temperature", QT_TRANSLATE_NOOP("Record", "plate read on its face")},
        {"scale_zero", QT_TRANSLATE_NOOP("Record", "scale read without load")},
        {"sound_heard", QT_TRANSLATE_NOOP("Record", "signal heard at the bench")},
        {"drag", QT_TRANSLATE_NOOP("Record", "drag read with the sheet clamped")},
        {"film_off", QT_TRANSLATE_NOOP("Record", "protective film off")},
        {"edges_planed", QT_TRANSLATE_NOOP("Record", "edges planed, clean, not touched")},
        {"plate_wiped", QT_TRANSLATE_NOOP("Record", "plate wiped")},
        {"gap", QT_TRANSLATE_NOOP("Record", "gap set, the same front and back")},
        {"first_sheet", QT_TRANSLATE_NOOP("Record", "first sheet clamped evenly")},
        {"clamping_gap", QT_TRANSLATE_NOOP("Record", "gap opened for the second sheet")},
        {"second_sheet", QT_TRANSLATE_NOOP("Record", "second sheet clamped")},
        {"edges_meet", QT_TRANSLATE_NOOP("Record", "edges meet in parallel")},
        {"shielded", QT_TRANSLATE_NOOP("Record", "shielded from draught and damp")},
        {"alignment_bead", QT_TRANSLATE_NOOP("Record", "smallest bead in alignment")}};
    return kTable;
}

const Table& choices() {
    static const Table kTable{
        {"bead_missing", QT_TRANSLATE_NOOP("Record", "bead missing at one end")},
        {"sheet_slipped", QT_TRANSLATE_NOOP("Record", "a sheet slipped")},
        {"changeover_late", QT_TRANSLATE_NOOP("Record", "changeover too late")},
        {"plate_cold_or_dirty", QT_TRANSLATE_NOOP("Record", "plate cold or dirty")},
        {"wrong_sheet", QT_TRANSLATE_NOOP("Record", "wrong sheet or setting")},
        {"bench_trouble", QT_TRANSLATE_NOOP("Record", "trouble with the bench")},
        {"power_was_off", QT_TRANSLATE_NOOP("Record", "power was off")},
        {"another", QT_TRANSLATE_NOOP("Record", "another reason")},
        {"foreman_decided", QT_TRANSLATE_NOOP("Record", "the foreman decided")},
        {"bench_needed", QT_TRANSLATE_NOOP("Record", "the bench was needed")},
        {"cut_out_anyway", QT_TRANSLATE_NOOP("Record", "it will be cut out")},
        {"cut_out", QT_TRANSLATE_NOOP("Record", "cut out")},
        {"let_it_cool", QT_TRANSLATE_NOOP("Record", "let it cool")},
        {"not_reachable", QT_TRANSLATE_NOOP("Record", "the place can't be reached")},
        {"no_gauge", QT_TRANSLATE_NOOP("Record", "no gauge at hand")},
        {"hand_was_slow", QT_TRANSLATE_NOOP("Record", "the hand was slow")},
        {"plate_stuck", QT_TRANSLATE_NOOP("Record", "the plate stuck")},
        {"disturbed", QT_TRANSLATE_NOOP("Record", "somebody disturbed it")},
        {"wrong_tap", QT_TRANSLATE_NOOP("Record", "a wrong tap")},
        {"not_needed", QT_TRANSLATE_NOOP("Record", "not needed for this weld")},
        {"cannot_be_set", QT_TRANSLATE_NOOP("Record", "the bench can't be set so")},
        {"other_material",
         QT_TRANSLATE_NOOP("Record", "a sheet of another material: allowed by the foreman")},
        {"no_tool", QT_TRANSLATE_NOOP("Record", "no tool at hand")},
        {"trial_held", QT_TRANSLATE_NOOP("Record", "the trial joint held")},
        {"trial_failed", QT_TRANSLATE_NOOP("Record", "the trial joint was not good")},
        {"certificate_waived",
         QT_TRANSLATE_NOOP("Record", "no valid certificate: allowed by the foreman")},
        {"looked_good", QT_TRANSLATE_NOOP("Record", "looked at: the bead is good")},
        {"tested", QT_TRANSLATE_NOOP("Record", "a test piece held")},
        {"harmless", QT_TRANSLATE_NOOP("Record", "too small a deviation to matter here")},
        {"bead_fault", QT_TRANSLATE_NOOP("Record", "a fault in the bead")},
        {"out_of_line", QT_TRANSLATE_NOOP("Record", "faces out of line")},
        {"leaks", QT_TRANSLATE_NOOP("Record", "it leaks")},
        {"not_sound", QT_TRANSLATE_NOOP("Record", "not sound by its record")},
        {"test_failed", QT_TRANSLATE_NOOP("Record", "a test piece broke")},
        {"typed_wrong", QT_TRANSLATE_NOOP("Record", "typed wrong")},
        {"read_wrong", QT_TRANSLATE_NOOP("Record", "read wrong")}};
    return kTable;
}

const Table& cues() {
    static const Table kTable{
        {"program_lost", QT_TRANSLATE_NOOP("Record", "the program stood still")},
        {"changeover_overrun", QT_TRANSLATE_NOOP("Record", "changeover is over its limit")},
        {"act_now", QT_TRANSLATE_NOOP("Record", "soak is over")},
        {"build_up_late", QT_TRANSLATE_NOOP("Record", "build-up is late")},
        {"count_in", QT_TRANSLATE_NOOP("Record", "the last seconds of soak")},
        {"get_ready", QT_TRANSLATE_NOOP("Record", "get ready")},
        {"row_not_saved", QT_TRANSLATE_NOOP("Record", "a step is not on disk")},
        {"clock_jumped", QT_TRANSLATE_NOOP("Record", "the clock was set")},
        {"battery_low", QT_TRANSLATE_NOOP("Record", "the battery is low")},
        {"no_sound", QT_TRANSLATE_NOOP("Record", "no sound")},
        {"alignment_late", QT_TRANSLATE_NOOP("Record", "alignment is slow")},
        {"recheck_due", QT_TRANSLATE_NOOP("Record", "a reading is due")},
        {"cooling_done", QT_TRANSLATE_NOOP("Record", "cooling is over")}};
    return kTable;
}

/// Thousandths with all their decimals, and so many at least.
QString thousandthsText(std::int64_t value, int atLeast) {
    int needed = 3;
    for (std::int64_t rest = value; needed > 0 && rest % 10 == 0; rest /= 10) {
        --needed;
    }
    return numberText(static_cast<double>(value) / 1000.0, std::max(needed, atLeast));
}

Measure measureOf(std::int64_t value, std::string_view unit, UnitSystem units) {
    if (unit == "um") {
        return lengthIn(units, value);
    }
    if (unit == "mN") {
        return forceIn(units, value);
    }
    if (unit == "Pa") {
        return pressureIn(units, value);
    }
    return temperatureIn(units, value);
}

bool isMeasure(std::string_view unit) {
    return unit == "um" || unit == "mN" || unit == "Pa" || unit == "mC";
}

QString scaleUnit(const WeldPlan& plan) {
    return plan.scale ? plainText(plan.scale->unit) : QString();
}

/// Thousandths of a second behind the last whole one: "13:36.500" from 816500.
QString timeOf(Milliseconds time, int decimals) {
    const std::int64_t ms = time.count();
    if (ms < 0) {
        return QChar(0x2212) + timeOf(-time, decimals);
    }
    if (ms < 60'000) {
        return numberText(static_cast<double>(ms) / 1000.0, decimals) + QStringLiteral(" s");
    }
    const std::int64_t seconds = ms / 1000;
    QString text =
        seconds < 3600
            ? QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'))
            : QStringLiteral("%1:%2:%3")
                  .arg(seconds / 3600)
                  .arg(seconds / 60 % 60, 2, 10, QLatin1Char('0'))
                  .arg(seconds % 60, 2, 10, QLatin1Char('0'));
    if (decimals > 0) {
        text += numberText(static_cast<double>(ms % 1000) / 1000.0, decimals).mid(1);
    }
    return text;
}

QString checkText(const CheckMade& check, const WeldPlan& plan, UnitSystem units) {
    QString text = isForceMark(check) ? Record::tr("joining reading marked on the scale")
                                      : checkSentence(check.check);
    if (!check.passed) {
        text = Record::tr("not passed: %1").arg(text);
    }
    const auto add = [&](const std::optional<std::int64_t>& value, const char* unit) {
        if (value) {
            text += QStringLiteral(" ") + amountText(*value, unit, plan, units);
        }
    };
    add(check.valueMc, "mC");
    add(check.valueUm, "um");
    add(check.valueMilli, "milli");
    const QString where = plateWhere(
        check.place && !isForceMark(check) ? *check.place : std::string(), check.face.value_or(""));
    return where.isEmpty() ? text : text + QStringLiteral(" (%1)").arg(where);
}

QString beadText(const BeadMeasured& bead, const WeldPlan& plan, UnitSystem units) {
    const auto length = [&](std::int64_t um) { return amountText(um, "um", plan, units); };
    const QString values = Record::tr("width %1, height %2, K %3, faces out of line %4")
                               .arg(
                                   length(bead.widthUm), length(bead.heightUm), length(bead.kUm),
                                   length(bead.misalignmentUm));
    return bead.placeUm ? Record::tr("bead at %1: %2").arg(length(*bead.placeUm), values)
                        : Record::tr("bead: %1").arg(values);
}

QString bridgeText(const ClockBridged& bridge) {
    const QString span = tookText({bridge.lo, bridge.hi});
    switch (bridge.basis) {
    case BridgeBasis::Confirmed:
        return Record::tr("power was off; %1 since the step before, confirmed by a person")
            .arg(span);
    case BridgeBasis::Unconfirmed:
        return Record::tr(
                   "power was off; %1 since the step before, by a clock that nobody confirmed")
            .arg(span);
    case BridgeBasis::Backwards:
        return Record::tr("power was off; %1 since the step before; the clock went back").arg(span);
    }
    return {};
}

QString withOwnWords(const QString& text, std::string_view own) {
    return own.empty() ? text : text + Record::tr(", ") + plainText(storedWords(own).toStdString());
}

/// A corrected value as the record's others are: the field's name tells its unit.
QString fieldValue(
    std::string_view field, const std::string& value, const WeldPlan& plan, UnitSystem units) {
    bool isNumber = false;
    const qlonglong number = fromUtf8(value).toLongLong(&isNumber);
    const auto ends = [&field](std::string_view with) {
        return field.size() >= with.size() && field.substr(field.size() - with.size()) == with;
    };
    for (const char* unit : {"mC", "um", "milli"}) {
        if (isNumber && ends(std::string("_") + unit)) {
            return amountText(number, unit, plan, units);
        }
    }
    return QStringLiteral("“%1”").arg(plainText(value));
}

} // namespace

QString plainText(std::string_view text) {
    QString out = fromUtf8(text);
    for (QChar& each : out) {
        if (each.category() == QChar::Other_Control || each.category() == QChar::Separator_Line ||
            each.category() == QChar::Separator_Paragraph ||
            each.category() == QChar::Other_Format) {
            each = QLatin1Char(' ');
        }
    }
    return out;
}

QString itemWord(std::string_view item) {
    return lookUp(items(), item);
}

QString phaseName(std::string_view phase) {
    return lookUp(phases(), phase);
}

QString stateWord(std::string_view phaseNow) {
    return lookUp(states(), phaseNow);
}

QString typeWord(WeldType type) {
    switch (type) {
    case WeldType::Production:
        return Record::tr("production");
    case WeldType::Trial:
        return Record::tr("trial joint");
    case WeldType::Practice:
        return Record::tr("practice");
    }
    return {};
}

QString gradeWord(std::string_view grade) {
    static const Table kTable{
        {"out", QT_TRANSLATE_NOOP("Record", "out of limits")},
        {"remark", QT_TRANSLATE_NOOP("Record", "remark")},
        {"incomplete", QT_TRANSLATE_NOOP("Record", "incomplete")}};
    return lookUp(kTable, grade);
}

QString choiceWord(std::string_view choice) {
    const auto found = choices().find(choice);
    return found == choices().end() ? plainText(choice) : Record::tr(found->second);
}

QString decisionWord(Decision decision) {
    switch (decision) {
    case Decision::Accept:
        return Record::tr("accepted");
    case Decision::Repair:
        return Record::tr("to be repaired");
    case Decision::CutOut:
        return Record::tr("to be cut out");
    }
    return {};
}

QString roleWord(std::string_view role) {
    static const Table kTable{
        {"welder", QT_TRANSLATE_NOOP("Record", "welder")},
        {"operator", QT_TRANSLATE_NOOP("Record", "welder")},
        {"foreman", QT_TRANSLATE_NOOP("Record", "supervisor")},
        {"supervisor", QT_TRANSLATE_NOOP("Record", "supervisor")}};
    return lookUp(kTable, role);
}

QString fieldWord(std::string_view field) {
    static const Table kTable{
        {"reading_milli", QT_TRANSLATE_NOOP("Record", "reading")},
        {"value_mC", QT_TRANSLATE_NOOP("Record", "temperature")},
        {"value_um", QT_TRANSLATE_NOOP("Record", "length")},
        {"value_milli", QT_TRANSLATE_NOOP("Record", "reading")},
        {"width_um", QT_TRANSLATE_NOOP("Record", "bead width")},
        {"height_um", QT_TRANSLATE_NOOP("Record", "bead height")},
        {"k_um", QT_TRANSLATE_NOOP("Record", "bead K")},
        {"misalignment_um", QT_TRANSLATE_NOOP("Record", "faces out of line")}};
    static const Table kSheets{
        {"sheets.0.maker", QT_TRANSLATE_NOOP("Record", "maker of sheet 1")},
        {"sheets.1.maker", QT_TRANSLATE_NOOP("Record", "maker of sheet 2")},
        {"sheets.0.batch", QT_TRANSLATE_NOOP("Record", "batch of sheet 1")},
        {"sheets.1.batch", QT_TRANSLATE_NOOP("Record", "batch of sheet 2")}};
    return kSheets.count(field) > 0 ? lookUp(kSheets, field) : lookUp(kTable, field);
}

QString checkSentence(std::string_view check) {
    return lookUp(checks(), check);
}

QString
amountNumber(std::int64_t value, std::string_view unit, const WeldPlan& plan, UnitSystem units) {
    if (isMeasure(unit)) {
        return measureNumber(measureOf(value, unit, units));
    }
    if (unit == "ms") {
        return limitTimeText(Milliseconds(value));
    }
    if (unit == "mK") {
        return units == UnitSystem::Metric
                   ? thousandthsText(value, 0)
                   : numberText(
                         static_cast<double>(value) * 1.8 / 1000.0, value % 5000 == 0 ? 0 : 1);
    }
    if (unit == "milli") {
        return thousandthsText(value, plan.scale ? decimalsOf(plan.scale->divisionMilli) : 0);
    }
    return QString::number(value);
}

QString
amountText(std::int64_t value, std::string_view unit, const WeldPlan& plan, UnitSystem units) {
    if (isMeasure(unit)) {
        return measureText(measureOf(value, unit, units));
    }
    const QString number = amountNumber(value, unit, plan, units);
    if (unit == "ms") {
        return number;
    }
    const QString behind =
        unit == "milli" ? scaleUnit(plan)
        : unit == "mK" ? (units == UnitSystem::Metric ? QStringLiteral("K") : QStringLiteral("°F"))
                       : plainText(unit);
    return behind.isEmpty() ? number : number + QLatin1Char(' ') + behind;
}

QString exactTimeText(Milliseconds time) {
    return timeOf(time, 3);
}

QString limitTimeText(Milliseconds time) {
    int decimals = 3;
    for (std::int64_t rest = time.count(); decimals > 0 && rest % 10 == 0; rest /= 10) {
        --decimals;
    }
    return timeOf(time, decimals);
}

QString tookText(const WeldTime& took) {
    return took.lo == took.hi
               ? exactTimeText(took.lo)
               : Record::tr("%1 to %2").arg(exactTimeText(took.lo), exactTimeText(took.hi));
}

QString dateText(const Instant& at) {
    return fullDayWords(toIsoDate(at.utc, at.offset));
}

QString clockText(const Instant& at) {
    // Of local time as if it were UTC: its ISO text holds the milliseconds.
    const QString iso = fromUtf8(toIsoUtc(at.utc + at.offset));
    const qsizetype from = iso.indexOf(QLatin1Char('T')) + 1;
    return iso.mid(from, iso.size() - from - 1);
}

QString instantText(const Instant& at) {
    return dateText(at) + QLatin1Char(' ') + clockText(at);
}

QString offsetText(const Instant& at) {
    const std::int64_t minutes = at.offset.count();
    const std::int64_t size = minutes < 0 ? -minutes : minutes;
    return QStringLiteral("UTC%1%2:%3")
        .arg(minutes < 0 ? QLatin1Char('-') : QLatin1Char('+'))
        .arg(size / 60, 2, 10, QLatin1Char('0'))
        .arg(size % 60, 2, 10, QLatin1Char('0'));
}

namespace {

ReasonText reasonOf(
    const std::string& code, const std::optional<std::int64_t>& limit,
    const std::optional<std::int64_t>& actual, const std::string& unit, const WeldPlan& plan,
    UnitSystem units) {
    ReasonText out;
    out.what = findingWord(code);
    // Two faces differ by kelvins; all other temperatures stand on a thermometer's scale.
    const std::string_view of = code == "plate_faces_differ" ? std::string_view("mK") : unit;
    const auto text = [&](std::int64_t value) {
        return of == "ms" ? exactTimeText(Milliseconds(value)) : amountText(value, of, plan, units);
    };
    if (actual) {
        out.actual = text(*actual);
    }
    if (limit) {
        out.limit = of == "ms" ? limitTimeText(Milliseconds(*limit)) : text(*limit);
    }
    return out;
}

} // namespace

ReasonText reasonText(const Finding& finding, const WeldPlan& plan, UnitSystem units) {
    ReasonText out =
        reasonOf(finding.code, finding.limit, finding.actual, finding.unit, plan, units);
    if (finding.code == "remark_made" && !finding.text.empty()) {
        out.what = choiceWord(finding.text); // what was remarked, not that something was
    }
    const bool inCooling = finding.place == kInCooling;
    if (inCooling) {
        out.what = itemWord("recheck_reading");
    }
    const QString where = inCooling ? QString() : plateWhere(finding.place, finding.face);
    if (!where.isEmpty()) {
        out.what += QStringLiteral(" (%1)").arg(where);
    }
    return out;
}

ReasonText reasonText(const StoredReason& reason, const WeldPlan& plan, UnitSystem units) {
    return reasonOf(reason.code, reason.limit, reason.actual, reason.unit, plan, units);
}

QString eventText(const WeldDetail& detail, const WeldPlan& plan, UnitSystem units) {
    const auto words = Overloaded{
        [](const WeldOpened& d) { return Record::tr("joint %1 begun").arg(d.number); },
        [](const PlanReplaced& d) {
            return Record::tr("plan replaced: %1")
                .arg(plainText(storedWords(d.reason).toStdString()));
        },
        [&](const CheckMade& d) { return checkText(d, plan, units); },
        [](const CheckOverridden& d) {
            const QString text = d.authority == Authority::Foreman
                                     ? Record::tr("left out by the foreman: %1 (%2)")
                                     : Record::tr("left out by the welder: %1 (%2)");
            return text.arg(checkSentence(d.check), choiceWord(d.reason));
        },
        [](const AlignmentStarted&) { return Record::tr("alignment begun"); },
        [](const SoakStarted&) { return Record::tr("soak reading reached"); },
        [](const PlateOut&) { return Record::tr("plate out"); },
        [](const FacesMet&) { return Record::tr("faces together"); },
        [](const PressureLocked&) { return Record::tr("wheel locked"); },
        [&](const ReadingTaken& d) {
            return Record::tr("scale, %1: %2")
                .arg(
                    phaseName(toString(d.phase)), amountText(d.readingMilli, "milli", plan, units));
        },
        [](const ReasonGiven& d) {
            return withOwnWords(
                Record::tr("reason for %1: %2").arg(findingWord(d.limit), choiceWord(d.choice)),
                d.text.value_or(""));
        },
        [](const ReleaseStep& d) { return releaseDoneWord(d.step); },
        [](const JointNumbered&) { return Record::tr("number on the sheet"); },
        [](const StepTakenBack& d) { return Record::tr("event %1 taken back").arg(d.targetN); },
        [](const StepBackdated& d) {
            return Record::tr("event %1 was %2 earlier")
                .arg(QString::number(d.targetN), limitTimeText(d.earlier));
        },
        [&](const BeadMeasured& d) { return beadText(d, plan, units); },
        [](const PhotoAdded& d) {
            return Record::tr("photo %1, %2 bytes, SHA-256 %3")
                .arg(plainText(d.name), QString::number(d.bytes), plainText(d.sha256));
        },
        [](const RemarkMade& d) { return choiceWord(d.text); },
        [](const CueAcknowledged& d) {
            return Record::tr("signal seen: %1").arg(lookUp(cues(), d.cue));
        },
        [](const ClockBridged& d) { return bridgeText(d); },
        [](const ClockJumped& d) {
            return Record::tr("the clock was set by %1").arg(limitTimeText(d.delta));
        },
        [](const WeldClosed& d) {
            return Record::tr("closed: %1").arg(midSentence(verdictWord(d.verdict)));
        },
        [](const WeldAborted& d) {
            return withOwnWords(Record::tr("stopped: %1").arg(choiceWord(d.reason)), d.text);
        },
        [&](const ValueCorrected& d) {
            return Record::tr("event %1, %2: was %3, is %4 (%5)")
                .arg(
                    QString::number(d.targetN), fieldWord(d.field),
                    fieldValue(d.field, d.was, plan, units), fieldValue(d.field, d.is, plan, units),
                    choiceWord(d.reason));
        },
        [](const Graded& d) {
            return Record::tr("graded by %1: %2").arg(plainText(d.scheme), plainText(d.level));
        },
        [](const Decided& d) {
            return d.reason.empty()
                       ? decisionWord(d.decision)
                       : Record::tr("%1: %2").arg(decisionWord(d.decision), choiceWord(d.reason));
        },
        [](const SignedOff& d) { return Record::tr("signed off as %1").arg(roleWord(d.role)); }};
    return std::visit(words, detail);
}

QString plateWhere(std::string_view place, std::string_view face) {
    QStringList where;
    if (!place.empty()) {
        where << placeWord(place);
    }
    if (!face.empty()) {
        const bool known = face == "fixed" || face == "moving";
        where << (known ? plateFaceWord(face) : Record::tr("face %1").arg(plainText(face)));
    }
    return where.join(Record::tr(", "));
}

QString whereText(const SetActual& row, UnitSystem units) {
    return row.placeUm ? Record::tr("at %1", "along the seam")
                             .arg(measureText(lengthIn(units, *row.placeUm)))
                       : plateWhere(row.place, row.face);
}

QString personText(const std::vector<Person>& people, std::string_view id) {
    const Person* person = findPerson(people, id);
    return person == nullptr ? plainText(id) : plainText(person->name);
}

} // namespace seamclock
