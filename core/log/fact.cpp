#include "core/log/fact.h"

namespace seamclock {

namespace {

struct KindOf {
    std::string_view operator()(const ProgramStarted&) const { return "program_started"; }
    std::string_view operator()(const ProgramStopped&) const { return "program_stopped"; }
    std::string_view operator()(const SoundLost&) const { return "sound_lost"; }
    std::string_view operator()(const SoundBack&) const { return "sound_back"; }
    std::string_view operator()(const ClockJumped&) const { return "clock_jumped"; }
    std::string_view operator()(const RowsSpilled&) const { return "rows_spilled"; }
    std::string_view operator()(const RowsJoined&) const { return "rows_joined"; }
    std::string_view operator()(const LogImported&) const { return "log_imported"; }
    std::string_view operator()(const HeadSigned&) const { return "head_signed"; }
    std::string_view operator()(const KeySet&) const { return "key_set"; }
    std::string_view operator()(const PersonSet&) const { return "person_set"; }
    std::string_view operator()(const PinChanged&) const { return "pin_changed"; }
    std::string_view operator()(const CertificateNoted&) const { return "certificate_noted"; }
    std::string_view operator()(const BenchSet&) const { return "bench_set"; }
    std::string_view operator()(const ProcedureSet&) const { return "procedure_set"; }
    std::string_view operator()(const ProcedureAttested&) const { return "procedure_attested"; }
    std::string_view operator()(const AttestationWithdrawn&) const {
        return "attestation_withdrawn";
    }
    std::string_view operator()(const SeamSet&) const { return "seam_set"; }
    std::string_view operator()(const DaySealed&) const { return "day_sealed"; }
    std::string_view operator()(const PracticeMade&) const { return "practice_made"; }
    std::string_view operator()(const CouponTested&) const { return "coupon_tested"; }
};

} // namespace

std::string_view kindOf(const FactDetail& detail) {
    return std::visit(KindOf{}, detail);
}

} // namespace seamclock
