#include "core/weld/event.h"

#include "core/base/overloaded.h"
#include "core/weld/state.h"

namespace seamclock {

std::string_view kindOf(const WeldDetail& detail) {
    return std::visit(
        Overloaded{
            [](const WeldOpened&) { return "weld_opened"; },
            [](const PlanReplaced&) { return "plan_replaced"; },
            [](const CheckMade&) { return "check_made"; },
            [](const CheckOverridden&) { return "check_overridden"; },
            [](const AlignmentStarted&) { return "alignment_started"; },
            [](const SoakStarted&) { return "soak_started"; },
            [](const PlateOut&) { return "plate_out"; },
            [](const FacesMet&) { return "faces_met"; },
            [](const PressureLocked&) { return "pressure_locked"; },
            [](const ReadingTaken&) { return "reading_taken"; },
            [](const ReasonGiven&) { return "reason_given"; },
            [](const ReleaseStep&) { return "release_step"; },
            [](const JointNumbered&) { return "joint_numbered"; },
            [](const StepTakenBack&) { return "step_taken_back"; },
            [](const StepBackdated&) { return "step_backdated"; },
            [](const BeadMeasured&) { return "bead_measured"; },
            [](const PhotoAdded&) { return "photo_added"; },
            [](const RemarkMade&) { return "remark_made"; },
            [](const CueAcknowledged&) { return "cue_acknowledged"; },
            [](const ClockBridged&) { return "clock_bridged"; },
            [](const ClockJumped&) { return "clock_jumped"; },
            [](const WeldClosed&) { return "weld_closed"; },
            [](const WeldAborted&) { return "weld_aborted"; },
            [](const ValueCorrected&) { return "value_corrected"; },
            [](const Graded&) { return "graded"; },
            [](const Decided&) { return "decided"; },
            [](const SignedOff&) { return "signed_off"; },
        },
        detail);
}

bool isTakeable(const WeldDetail& detail) {
    return isPivotal(detail) || std::holds_alternative<CheckMade>(detail) ||
           std::holds_alternative<ReadingTaken>(detail) ||
           std::holds_alternative<ReleaseStep>(detail) ||
           std::holds_alternative<JointNumbered>(detail) ||
           std::holds_alternative<BeadMeasured>(detail);
}

bool isPivotal(const WeldDetail& detail) {
    return std::holds_alternative<AlignmentStarted>(detail) ||
           std::holds_alternative<SoakStarted>(detail) ||
           std::holds_alternative<PlateOut>(detail) || std::holds_alternative<FacesMet>(detail) ||
           std::holds_alternative<PressureLocked>(detail);
}

std::string_view toString(WeldType type) {
    switch (type) {
    case WeldType::Production:
        return "production";
    case WeldType::Trial:
        return "trial";
    case WeldType::Practice:
        return "practice";
    }
    return "";
}

std::string_view toString(Authority authority) {
    switch (authority) {
    case Authority::Operator:
        return "operator";
    case Authority::Foreman:
        return "foreman";
    }
    return "";
}

std::string_view toString(ReadingPhase phase) {
    switch (phase) {
    case ReadingPhase::Alignment:
        return "alignment";
    case ReadingPhase::Soak:
        return "soak";
    case ReadingPhase::Joining:
        return "joining";
    case ReadingPhase::Recheck:
        return "recheck";
    }
    return "";
}

std::string_view toString(BridgeBasis basis) {
    switch (basis) {
    case BridgeBasis::Confirmed:
        return "confirmed";
    case BridgeBasis::Unconfirmed:
        return "unconfirmed";
    case BridgeBasis::Backwards:
        return "backwards";
    }
    return "";
}

std::string_view toString(Decision decision) {
    switch (decision) {
    case Decision::Accept:
        return "accept";
    case Decision::Repair:
        return "repair";
    case Decision::CutOut:
        return "cut_out";
    }
    return "";
}

std::string_view phaseName(const State& state) {
    return std::visit(
        Overloaded{
            [](const Preparing&) { return "preparing"; },
            [](const Aligning&) { return "aligning"; },
            [](const Soaking&) { return "soaking"; },
            [](const ChangingOver&) { return "changing_over"; },
            [](const BuildingUp&) { return "building_up"; },
            [](const Cooling&) { return "cooling"; },
            [](const Releasing&) { return "releasing"; },
            [](const Inspecting&) { return "inspecting"; },
            [](const Closed&) { return "closed"; },
            [](const Aborted&) { return "aborted"; },
        },
        state);
}

bool isOpen(const State& state) {
    return !std::holds_alternative<Closed>(state) && !std::holds_alternative<Aborted>(state);
}

} // namespace seamclock
