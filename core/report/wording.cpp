#include "core/report/wording.h"

#include "core/base/overloaded.h"
#include "core/report/plain_text.h"
#include "core/weld/force_check.h"

#include <algorithm>
#include <fmt/format.h>
#include <utility>

namespace seamclock {
namespace {

struct Words {
    std::string_view code;
    std::string_view words;
};

constexpr Words kWords[] = {
    // checks
    {"scale_readable", "scale too coarse for the tolerance: the foreman's word"},
    {"plate_warm", "plate hot and settled for ten minutes"},
    {"plate_temperature", "plate temperature, read on its face"},
    {"scale_zero", "scale reads its zero without load"},
    {"sound_heard", "signal heard at the bench"},
    {"drag", "drag read with the sheet clamped"},
    {"film_off", "protective film off"},
    {"edges_planed", "edges planed, clean and not touched"},
    {"plate_wiped", "plate wiped"},
    {"gap", "gap set, the same front and back"},
    {"first_sheet", "first sheet clamped evenly"},
    {"clamping_gap", "gap opened for the second sheet"},
    {"second_sheet", "second sheet clamped against the first"},
    {"edges_meet", "edges meet in parallel"},
    {"shielded", "seam shielded from draught and damp"},
    {"alignment_bead", "smallest alignment bead"},
    // phases
    {"preparing", "being prepared"},
    {"aligning", "in alignment"},
    {"soaking", "in soak"},
    {"changing_over", "in changeover"},
    {"building_up", "in build-up"},
    {"cooling", "cooling"},
    {"releasing", "being released"},
    {"inspecting", "being looked at"},
    {"build_up", "build-up"},
    {"recheck", "re-check"},
    // release steps
    {"clamps_eased", "clamps eased on both sides"},
    {"bars_opened", "clamp bars opened"},
    {"bars_open", "clamp bars opened"},
    {"spring_off", "spring let off"},
    {"sheet_out", "sheet lifted out, seam supported"},
    // values of a plan
    {"cooling_min.per_kelvin", "cooling, by the shop's temperature"},
    {"half_cooling", "half cooling"},
    {"scale.soak", "soak reading"},
    {"heated_tool_C", "plate"},
    {"heated_tool_C.target", "plate, to aim at"},
    {"pressure_N_mm2.alignment", "alignment pressure"},
    {"pressure_N_mm2.joining", "joining pressure"},
    {"pressure_N_mm2.tolerance", "tolerance of the pressure"},
    {"pressure_N_mm2.soak_aim", "soak pressure to aim at"},
    {"pressure_N_mm2.soak_max", "soak pressure at most"},
    {"force_N", "force"},
    {"gap_mm", "gap"},
    {"clamping_gap_mm", "gap for the second sheet"},
    {"edge_gap_max_mm", "gap between the edges"},
    {"misalignment_max_mm", "faces out of line"},
    {"bead_min_mm", "bead in alignment"},
    {"align_late_s", "alignment is slow from"},
    {"soak_s", "soak"},
    {"soak_s.tolerance", "tolerance of soak"},
    {"changeover_max_s", "changeover"},
    {"build_up_s", "build-up"},
    {"build_up_s.tolerance", "tolerance of build-up"},
    {"cooling_min", "cooling"},
    {"rechecks_min", "readings in cooling"},
    {"ambient_C", "shop"},
    // events
    {"weld_opened", "weld opened"},
    {"alignment_started", "alignment started"},
    {"soak_started", "soak reading reached: soak started"},
    {"plate_out", "plate out"},
    {"faces_met", "faces together"},
    {"pressure_locked", "wheel locked at the joining reading"},
    {"joint_numbered", "number on the sheet"},
    // reasons of a stop or an overrun
    {"cut_out", "cut out"},
    {"let_it_cool", "let it cool"},
    // flags
    {"calibration_overdue", "scale calibration overdue"},
    {"certificate_missing", "no certificate noted"},
    {"certificate_expired", "certificate expired"},
    {"certificate_out_of_scope", "certificate for other sheets"},
    {"certificate_waived", "no valid certificate: allowed by the foreman"},
    {"other_material", "a sheet of another material: allowed by the foreman"},
    {"trial_not_made", "no trial joint was made before"},
    {"trial_not_released", "the trial joint was not released yet"},
    {"trial_refused", "the trial joint was not accepted"},
    {"rewelds_exceeded", "welded again more often than the job allows"},
    {"batch_missing", "a sheet's batch was not entered"},
};

std::string_view onlyWords(std::string_view code) {
    const auto* found = std::find_if(
        std::begin(kWords), std::end(kWords), [code](const Words& w) { return w.code == code; });
    return found == std::end(kWords) ? std::string_view() : found->words;
}

std::string scaleUnit(const WeldPlan& plan) {
    return plan.scale ? plan.scale->unit : "on the scale";
}

std::string free(std::string_view text) {
    return onOneLine(text);
}

std::string checkValue(const CheckMade& check, const WeldPlan& plan) {
    std::string text;
    if (check.valueMc) {
        text += ": " + fromThousandths(*check.valueMc) + " °C";
    }
    if (check.valueUm) {
        text += ": " + fromThousandths(*check.valueUm) + " mm";
    }
    if (check.valueMilli) {
        text += ": " + fromThousandths(*check.valueMilli) + " " + scaleUnit(plan);
    }
    if ((check.place && !isForceMark(check)) || check.face) {
        text += " (" + free(check.place.value_or("")) + (check.place && check.face ? ", " : "") +
                (check.face ? "face " + free(*check.face) : "") + ")";
    }
    if (check.takenUtc) {
        text += ", taken " + toIsoUtc(*check.takenUtc);
    }
    return text;
}

} // namespace

std::string standingInWords(Standing standing) {
    switch (standing) {
    case Standing::Seen:
        return "seen in a published text";
    case Standing::Memory:
        return "from memory: not attested";
    case Standing::CommonPractice:
        return "common practice, no source";
    case Standing::Derived:
        return "worked out from the others";
    case Standing::Attested:
        return "attested by the shop";
    }
    return "";
}

std::string sourceInWords(const Source& source) {
    const std::string text = free(source.text);
    const std::string standing = standingInWords(source.standing);
    // Whatever its first letter: a sentence may begin with it.
    const bool saysSo =
        text.size() >= standing.size() &&
        text.compare(text.size() - standing.size() + 1, std::string::npos, standing, 1) == 0;
    return saysSo ? text : text + " [" + standing + "]";
}

std::vector<std::string> sourcesInWords(const WeldPlan& plan) {
    // One source usually stands behind several values: it is told once.
    std::vector<std::pair<Source, std::string>> bySource;
    for (const PlanSource& entry : plan.sources) {
        auto found = bySource.begin();
        while (found != bySource.end() && !(found->first == entry.source)) {
            ++found;
        }
        if (found == bySource.end()) {
            bySource.emplace_back(entry.source, codeInWords(entry.value));
        } else {
            found->second += "; " + codeInWords(entry.value);
        }
    }
    std::vector<std::string> lines;
    lines.reserve(bySource.size());
    for (const auto& [source, values] : bySource) {
        lines.push_back(values + ": " + sourceInWords(source));
    }
    return lines;
}

std::string ruleInWords(BandRule rule) {
    switch (rule) {
    case BandRule::Line:
        return "along the table's straight line";
    case BandRule::BandEnd:
        return "the upper end of the table's band";
    }
    return "";
}

std::string codeInWords(std::string_view code) {
    const std::string_view words = onlyWords(code);
    if (!words.empty()) {
        return std::string(words);
    }
    std::string text = free(code);
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

std::string cueInWords(const Cue& cue) {
    switch (cue.kind) {
    case CueKind::ProgramLost:
        return "the program does not answer";
    case CueKind::ChangeoverOverrun:
        return "late: changeover is over its limit";
    case CueKind::ActNow:
        return "act now";
    case CueKind::BuildUpLate:
        return "late: build-up is over its limit";
    case CueKind::CountIn:
        return "count-in " + std::to_string(cue.count);
    case CueKind::GetReady:
        return "get ready";
    case CueKind::RowNotSaved:
        return "trouble: last step is not on disk yet";
    case CueKind::ClockJumped:
        return "trouble: the clock jumped";
    case CueKind::BatteryLow:
        return "trouble: battery is low";
    case CueKind::NoSound:
        return "trouble: no sound";
    case CueKind::AlignmentLate:
        return "alignment is slow";
    case CueKind::RecheckDue:
        return cue.count > 0 ? fmt::format("scale reading {} is due", cue.count)
                             : "scale reading is due";
    case CueKind::CoolingDone:
        return "cooling is over";
    }
    return "";
}

std::string valueInWords(std::int64_t value, std::string_view unit, const WeldPlan& plan) {
    if (unit == "ms") {
        return exactTime(Milliseconds(value));
    }
    if (unit == "um") {
        return fromThousandths(value) + " mm";
    }
    if (unit == "mC") {
        return fromThousandths(value) + " °C";
    }
    if (unit == "mK") {
        return fromThousandths(value) + " K";
    }
    if (unit == "mN") {
        return fromThousandths(value) + " N";
    }
    if (unit == "Pa") {
        return fromMillionths(value, 6) + " N/mm²";
    }
    if (unit == "milli") {
        return fromThousandths(value) + " " + scaleUnit(plan);
    }
    return std::to_string(value) + (unit.empty() ? "" : " " + free(unit));
}

std::string eventInWords(const WeldDetail& detail, const WeldPlan& plan) {
    const auto reading = [&plan](std::int64_t milli) {
        return fromThousandths(milli) + " " + scaleUnit(plan);
    };
    const auto words = Overloaded{
        [](const WeldOpened& d) { return fmt::format("weld opened: joint {}", d.number); },
        [](const PlanReplaced& d) { return "plan replaced: " + free(d.reason); },
        [&plan](const CheckMade& d) -> std::string {
            if (isForceMark(d)) {
                return std::string(d.passed ? "checked" : "check failed") +
                       ", joining reading marked on the scale" + checkValue(d, plan);
            }
            return (d.passed ? "checked, " : "check failed, ") + codeInWords(d.check) +
                   checkValue(d, plan);
        },
        [](const CheckOverridden& d) {
            return "check passed over by the " + std::string(toString(d.authority)) + ", " +
                   codeInWords(d.check) + ": " + free(d.reason);
        },
        [](const AlignmentStarted&) { return codeInWords("alignment_started"); },
        [](const SoakStarted&) { return codeInWords("soak_started"); },
        [](const PlateOut&) { return codeInWords("plate_out"); },
        [](const FacesMet&) { return codeInWords("faces_met"); },
        [](const PressureLocked&) { return codeInWords("pressure_locked"); },
        [&reading](const ReadingTaken& d) {
            return "scale reading, " + codeInWords(toString(d.phase)) + ": " +
                   reading(d.readingMilli);
        },
        [](const ReasonGiven& d) {
            return "reason given for " + codeInWords(d.limit) + ": " + codeInWords(d.choice) +
                   (d.text ? ", " + free(*d.text) : "");
        },
        [](const ReleaseStep& d) { return "release: " + codeInWords(d.step); },
        [](const JointNumbered&) { return codeInWords("joint_numbered"); },
        [](const StepTakenBack& d) { return fmt::format("step {} taken back", d.targetN); },
        [](const StepBackdated& d) {
            return fmt::format("step {} was {} earlier", d.targetN, exactTime(d.earlier));
        },
        [](const BeadMeasured& d) {
            return fmt::format(
                "bead measured{}: width {} mm, height {} mm, K {} mm, offset {} mm",
                d.placeUm ? " at " + fromThousandths(*d.placeUm) + " mm" : "",
                fromThousandths(d.widthUm), fromThousandths(d.heightUm), fromThousandths(d.kUm),
                fromThousandths(d.misalignmentUm));
        },
        [](const PhotoAdded& d) {
            return fmt::format("photo {}, {} bytes, SHA-256 {}", free(d.name), d.bytes, d.sha256);
        },
        [](const RemarkMade& d) {
            const std::string_view known = onlyWords(d.text);
            return "remark: " + (known.empty() ? free(d.text) : std::string(known));
        },
        [](const CueAcknowledged& d) { return "signal seen: " + codeInWords(d.cue); },
        [](const ClockBridged& d) {
            return fmt::format(
                "power was off for {} to {} ({})", exactTime(d.lo), exactTime(d.hi),
                toString(d.basis));
        },
        [](const ClockJumped& d) { return "the wall clock jumped by " + exactTime(d.delta); },
        [](const WeldClosed& d) { return "closed: " + free(d.verdict); },
        [](const WeldAborted& d) {
            return "stopped: " + codeInWords(d.reason) + (d.text.empty() ? "" : ", ") +
                   free(d.text);
        },
        [](const ValueCorrected& d) {
            return fmt::format(
                "{} of step {} corrected from {} to {}: {}", codeInWords(d.field), d.targetN,
                free(d.was), free(d.is), free(d.reason));
        },
        [](const Graded& d) { return "graded by " + free(d.scheme) + ": " + free(d.level); },
        [](const Decided& d) {
            return "decided: " + codeInWords(toString(d.decision)) + ", " + free(d.reason);
        },
        [](const SignedOff& d) { return "signed off by the " + codeInWords(d.role); }};
    return std::visit(words, detail);
}

} // namespace seamclock
