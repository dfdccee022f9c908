#include "app/text/words.h"

#include "app/text/record_words.h"
#include "core/base/overloaded.h"
#include "core/procedure/fume.h"

#include <QCoreApplication>
#include <map>

namespace seamclock {
namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Words)
};

using Table = std::map<std::string_view, const char*>;

QString blanksFor(std::string_view code) {
    return fromUtf8(code).replace(QLatin1Char('_'), QLatin1Char(' '));
}

QString lookUp(const Table& table, std::string_view code) {
    const auto found = table.find(code);
    return found == table.end() ? blanksFor(code) : Words::tr(found->second);
}

const Table& checks() {
    static const Table kTable{
        {"scale_readable", QT_TRANSLATE_NOOP("Words", "scale")},
        {"plate_warm", QT_TRANSLATE_NOOP("Words", "wait")},
        {"plate_temperature", QT_TRANSLATE_NOOP("Words", "plate")},
        {"scale_zero", QT_TRANSLATE_NOOP("Words", "zero")},
        {"sound_heard", QT_TRANSLATE_NOOP("Words", "sound")},
        {"drag", QT_TRANSLATE_NOOP("Words", "drag")},
        {"film_off", QT_TRANSLATE_NOOP("Words", "film")},
        {"edges_planed", QT_TRANSLATE_NOOP("Words", "edges")},
        {"plate_wiped", QT_TRANSLATE_NOOP("Words", "wiped")},
        {"gap", QT_TRANSLATE_NOOP("Words", "gap")},
        {"first_sheet", QT_TRANSLATE_NOOP("Words", "sheet 1")},
        {"clamping_gap", QT_TRANSLATE_NOOP("Words", "gap × 2")},
        {"second_sheet", QT_TRANSLATE_NOOP("Words", "sheet 2")},
        {"edges_meet", QT_TRANSLATE_NOOP("Words", "in line")},
        {"shielded", QT_TRANSLATE_NOOP("Words", "draught")}};
    return kTable;
}

const Table& findingsTable() {
    static const Table kTable{
        {"plate_temperature", QT_TRANSLATE_NOOP("Words", "plate temperature")},
        {"plate_faces_differ", QT_TRANSLATE_NOOP("Words", "plate faces differ")},
        {"alignment_bead", QT_TRANSLATE_NOOP("Words", "alignment bead")},
        {"alignment_time", QT_TRANSLATE_NOOP("Words", "alignment time")},
        {"soak_pressure", QT_TRANSLATE_NOOP("Words", "soak reading")},
        {"soak_time", QT_TRANSLATE_NOOP("Words", "soak")},
        {"changeover", QT_TRANSLATE_NOOP("Words", "changeover")},
        {"build_up", QT_TRANSLATE_NOOP("Words", "build-up")},
        {"joining_reading", QT_TRANSLATE_NOOP("Words", "joining reading")},
        {"recheck_missed", QT_TRANSLATE_NOOP("Words", "a reading in cooling was missed")},
        {"cooling", QT_TRANSLATE_NOOP("Words", "cooling")},
        {"misalignment", QT_TRANSLATE_NOOP("Words", "faces out of line")},
        {"bead_k", QT_TRANSLATE_NOOP("Words", "K value")},
        {"bead_not_measured", QT_TRANSLATE_NOOP("Words", "bead not measured")},
        {"step_taken_back", QT_TRANSLATE_NOOP("Words", "a step was taken back")},
        {"step_backdated", QT_TRANSLATE_NOOP("Words", "a step was set earlier")},
        {"bridge_used", QT_TRANSLATE_NOOP("Words", "power was off")},
        {"clock_jumped", QT_TRANSLATE_NOOP("Words", "the clock was set")},
        {"check_overridden", QT_TRANSLATE_NOOP("Words", "a check was left out")},
        {"remark_made", QT_TRANSLATE_NOOP("Words", "a remark")},
        {"aborted", QT_TRANSLATE_NOOP("Words", "stopped")},
        {"not_closed", QT_TRANSLATE_NOOP("Words", "not finished")},
        {"calibration_overdue", QT_TRANSLATE_NOOP("Words", "scale calibration overdue")},
        {"certificate_missing", QT_TRANSLATE_NOOP("Words", "no certificate noted")},
        {"certificate_expired", QT_TRANSLATE_NOOP("Words", "certificate expired")},
        {"certificate_out_of_scope", QT_TRANSLATE_NOOP("Words", "certificate for other sheets")},
        {"trial_not_made", QT_TRANSLATE_NOOP("Words", "no trial joint was made before")},
        {"trial_not_released", QT_TRANSLATE_NOOP("Words", "the trial joint was not released yet")},
        {"trial_refused", QT_TRANSLATE_NOOP("Words", "the trial joint was not accepted")},
        {"rewelds_exceeded",
         QT_TRANSLATE_NOOP("Words", "welded again more often than the job allows")},
        {"batch_missing", QT_TRANSLATE_NOOP("Words", "a sheet's batch was not entered")}};
    return kTable;
}

/// What holds of a reason that was found and of one that was stored. The time that it took stands
/// without the zeros that a record has behind it.
template <class Reason>
QString reasonLine(const Reason& reason, const WeldPlan& plan, UnitSystem units) {
    const ReasonText text = reasonText(reason, plan, units);
    const QString actual = reason.unit == "ms" && reason.actual
                               ? limitTimeText(Milliseconds(*reason.actual))
                               : text.actual;
    if (!actual.isEmpty() && !text.limit.isEmpty()) {
        return Words::tr("%1 %2, limit %3").arg(text.what, actual, text.limit);
    }
    return actual.isEmpty() ? text.what : text.what + QLatin1Char(' ') + actual;
}

} // namespace

QString fromUtf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString phaseWord(const State& state) {
    return std::visit(
        Overloaded{
            [](const Preparing&) { return Words::tr("prepare"); },
            [](const Aligning&) { return Words::tr("align"); },
            [](const Soaking&) { return Words::tr("soak"); },
            [](const ChangingOver&) { return Words::tr("changeover"); },
            [](const BuildingUp&) { return Words::tr("build-up"); },
            [](const Cooling&) { return Words::tr("cooling"); },
            [](const Releasing&) { return Words::tr("release"); },
            [](const Inspecting&) { return Words::tr("look at the bead"); },
            [](const Closed&) { return Words::tr("done"); },
            [](const Aborted&) { return Words::tr("stopped"); }},
        state);
}

QString checkWord(std::string_view check) {
    return lookUp(checks(), check);
}

QString placeWord(std::string_view place) {
    static const Table kTable{
        {"front", QT_TRANSLATE_NOOP("Words", "front")},
        {"middle", QT_TRANSLATE_NOOP("Words", "middle")},
        {"back", QT_TRANSLATE_NOOP("Words", "back")},
        {"outlived", QT_TRANSLATE_NOOP("Words", "held no longer")}};
    return lookUp(kTable, place);
}

QString plateFaceWord(std::string_view face) {
    static const Table kTable{
        {"fixed", QT_TRANSLATE_NOOP("Words", "fixed side")},
        {"moving", QT_TRANSLATE_NOOP("Words", "moving side")}};
    return lookUp(kTable, face);
}

QString releaseDoneWord(std::string_view step) {
    static const Table kTable{
        {"clamps_eased", QT_TRANSLATE_NOOP("Words", "Clamps are eased")},
        {"bars_opened", QT_TRANSLATE_NOOP("Words", "Bars are open")},
        {"bars_open", QT_TRANSLATE_NOOP("Words", "Bars are open")},
        {"spring_off", QT_TRANSLATE_NOOP("Words", "Spring is off")},
        {"sheet_out", QT_TRANSLATE_NOOP("Words", "Sheet is out")},
        {"force_off", QT_TRANSLATE_NOOP("Words", "Force is off")}};
    return lookUp(kTable, step);
}

QString releaseSentence(std::string_view step) {
    static const Table kTable{
        {"clamps_eased", QT_TRANSLATE_NOOP("Words", "Ease the clamps on both sides.")},
        {"bars_opened", QT_TRANSLATE_NOOP("Words", "Open the clamp bars.")},
        {"bars_open", QT_TRANSLATE_NOOP("Words", "Open the clamp bars.")},
        {"spring_off", QT_TRANSLATE_NOOP("Words", "Let the spring off.")},
        {"sheet_out", QT_TRANSLATE_NOOP("Words", "Lift the sheet out, seam supported.")},
        {"force_off", QT_TRANSLATE_NOOP("Words", "Bring the force to zero, never past it.")}};
    return lookUp(kTable, step);
}

QString verdictWord(VerdictWord word) {
    switch (word) {
    case VerdictWord::WithinLimits:
        return Words::tr("Within limits");
    case VerdictWord::WithRemarks:
        return Words::tr("Within limits with remarks");
    case VerdictWord::OutOfLimits:
        return Words::tr("Out of limits");
    case VerdictWord::Incomplete:
        return Words::tr("Incomplete");
    }
    return {};
}

QString midSentence(const QString& words) {
    return words.left(1).toLower() + words.mid(1);
}

QString verdictWord(std::string_view stored) {
    for (const VerdictWord word :
         {VerdictWord::WithinLimits, VerdictWord::WithRemarks, VerdictWord::OutOfLimits,
          VerdictWord::Incomplete}) {
        if (toString(word) == stored) {
            return verdictWord(word);
        }
    }
    return fromUtf8(stored);
}

QString findingWord(std::string_view code) {
    return lookUp(findingsTable(), code);
}

QString planValueWord(std::string_view name) {
    static const Table kTable{
        {"heated_tool_C", QT_TRANSLATE_NOOP("Words", "plate")},
        {"heated_tool_C.target", QT_TRANSLATE_NOOP("Words", "plate to aim at")},
        {"pressure_N_mm2.alignment", QT_TRANSLATE_NOOP("Words", "alignment pressure")},
        {"pressure_N_mm2.joining", QT_TRANSLATE_NOOP("Words", "joining pressure")},
        {"pressure_N_mm2.tolerance", QT_TRANSLATE_NOOP("Words", "tolerance of the pressure")},
        {"pressure_N_mm2.soak_aim", QT_TRANSLATE_NOOP("Words", "soak pressure to aim at")},
        {"pressure_N_mm2.soak_max", QT_TRANSLATE_NOOP("Words", "soak pressure at most")},
        {"force_N", QT_TRANSLATE_NOOP("Words", "force")},
        {"scale", QT_TRANSLATE_NOOP("Words", "readings")},
        {"gap_mm", QT_TRANSLATE_NOOP("Words", "gap")},
        {"clamping_gap_mm", QT_TRANSLATE_NOOP("Words", "gap for the second sheet")},
        {"edge_gap_max_mm", QT_TRANSLATE_NOOP("Words", "gap between the edges")},
        {"misalignment_max_mm", QT_TRANSLATE_NOOP("Words", "faces in line")},
        {"bead_min_mm", QT_TRANSLATE_NOOP("Words", "bead")},
        {"align_late_s", QT_TRANSLATE_NOOP("Words", "alignment is slow from")},
        {"soak_s", QT_TRANSLATE_NOOP("Words", "soak")},
        {"soak_s.tolerance", QT_TRANSLATE_NOOP("Words", "tolerance of soak")},
        {"changeover_max_s", QT_TRANSLATE_NOOP("Words", "changeover")},
        {"build_up_s", QT_TRANSLATE_NOOP("Words", "build-up")},
        {"build_up_s.tolerance", QT_TRANSLATE_NOOP("Words", "tolerance of build-up")},
        {"cooling_min", QT_TRANSLATE_NOOP("Words", "cooling")},
        {"cooling_min.per_kelvin",
         QT_TRANSLATE_NOOP("Words", "cooling, by the shop's temperature")},
        {"half_cooling", QT_TRANSLATE_NOOP("Words", "half cooling")},
        {"scale.soak", QT_TRANSLATE_NOOP("Words", "soak reading")},
        {"rechecks_min", QT_TRANSLATE_NOOP("Words", "readings in cooling")},
        {"ambient_C", QT_TRANSLATE_NOOP("Words", "shop")}};
    return lookUp(kTable, name);
}

QString findingText(const Finding& finding, const WeldPlan& plan, UnitSystem units) {
    return reasonLine(finding, plan, units);
}

QString findingText(const StoredReason& reason, const WeldPlan& plan, UnitSystem units) {
    return reasonLine(reason, plan, units);
}

QString firstReason(const Verdict& verdict, const WeldPlan& plan, UnitSystem units) {
    const Grade wanted = verdict.word == VerdictWord::Incomplete    ? Grade::Incomplete
                         : verdict.word == VerdictWord::OutOfLimits ? Grade::Out
                                                                    : Grade::Remark;
    for (const Finding& finding : verdict.findings) {
        if (finding.grade == wanted) {
            return findingText(finding, plan, units);
        }
    }
    return midSentence(verdictWord(verdict.word));
}

QString warningText(const PlanWarning& warning) {
    static const Table kTable{
        {"ambient_outside_range",
         QT_TRANSLATE_NOOP("Words", "The shop is too cold or too warm for this procedure.")},
        {"ambient_outside_classes",
         QT_TRANSLATE_NOOP("Words", "No cooling time is printed for this shop temperature.")},
        {"known_gap", QT_TRANSLATE_NOOP("Words", "The procedure lacks a value for this sheet.")},
        {"half_cooling",
         QT_TRANSLATE_NOOP("Words", "Half cooling: full load only after the whole time.")},
        {"drag_not_measured",
         QT_TRANSLATE_NOOP("Words", "Drag is not measured: taken as nothing.")},
        {"scale_coarse", QT_TRANSLATE_NOOP("Words", "This scale hardly shows the tolerance.")},
        {"scale_too_coarse",
         QT_TRANSLATE_NOOP("Words", "Scale too coarse: only a foreman may allow it.")},
        {"force_below_bench",
         QT_TRANSLATE_NOOP("Words", "The force is less than this bench holds steadily.")},
        {"soak_below_calibration",
         QT_TRANSLATE_NOOP("Words", "Soak's reading lies below the calibration.")},
        {"calibration_uncertain",
         QT_TRANSLATE_NOOP("Words", "The calibration is too uncertain for this seam.")},
        {"grades_differ", QT_TRANSLATE_NOOP("Words", "The sheets' grades differ: ask first.")},
        {"mfr_outside_range",
         QT_TRANSLATE_NOOP("Words", "A melt flow rate is outside the printed ranges.")},
        {"mfr_far_apart", QT_TRANSLATE_NOOP("Words", "The melt flow rates are far apart.")},
        {"mfr_unknown_condition",
         QT_TRANSLATE_NOOP("Words", "The melt flow rates can't be compared.")},
        {"set_outside_band", QT_TRANSLATE_NOOP("Words", "No mark of the scale lies in the band.")},
        {"just_in_contact",
         QT_TRANSLATE_NOOP("Words", "In soak the scale can't show it: just in contact.")},
        {"drag_above_soak",
         QT_TRANSLATE_NOOP("Words", "Drag is above the soak force: just in contact.")}};
    const auto found = kTable.find(warning.code);
    return found == kTable.end() ? fromUtf8(warning.text) : Words::tr(found->second);
}

QString fumeCaution(std::string_view material) {
    switch (fumeOf(material)) {
    case Fume::None:
        return {};
    case Fume::HydrogenChloride:
        return Words::tr("Too hot, it gives off hydrogen chloride: extraction on.");
    case Fume::Fluorine:
        return Words::tr("Too hot, it gives off toxic acid gas: extraction on, do not smoke.");
    }
    return {};
}

QString standingText(Standing standing) {
    switch (standing) {
    case Standing::Seen:
        return Words::tr("seen in a text");
    case Standing::Memory:
        return Words::tr("from memory: not attested");
    case Standing::CommonPractice:
        return Words::tr("common practice, no source");
    case Standing::Derived:
        return Words::tr("worked out from the others");
    case Standing::Attested:
        return Words::tr("attested by the shop");
    }
    return {};
}

} // namespace seamclock
