#include "core/practice/rehearse_fault.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <functional>

namespace seamclock {
namespace {

using std::chrono::seconds;

constexpr Milliseconds kLongestBackdate{8000}; // with the thought within the ten seconds allowed
constexpr Milliseconds kLongestFault = std::chrono::hours(12);

constexpr std::array kPhases{"preparing",   "aligning", "soaking",   "changing_over",
                             "building_up", "cooling",  "releasing", "inspecting"};

Result<void> checkTime(
    const char* name, const std::optional<Milliseconds>& value, Milliseconds high,
    const std::string& why) {
    if (!value || (*value >= Milliseconds(0) && *value <= high)) {
        return {};
    }
    return fail(
        ErrorCode::OutOfRange,
        fmt::format(
            "{} of {} ms is outside 0 to {} ms{}", name, value->count(), high.count(), why));
}

Result<void> checkSize(
    const char* name, const std::optional<std::int64_t>& value, std::int64_t low, std::int64_t high,
    const char* unit) {
    if (!value || (*value >= low && *value <= high)) {
        return {};
    }
    return fail(
        ErrorCode::OutOfRange,
        fmt::format("{} of {} {} is outside {} to {} {}", name, *value, unit, low, high, unit));
}

std::string listed(const std::vector<std::string>& words) {
    std::string all;
    for (const std::string& word : words) {
        all += (all.empty() ? "" : ", ") + word;
    }
    return all;
}

Result<void> checkTimes(const RehearseFaults& faults, const WeldPlan& plan) {
    const Milliseconds soak = plan.soak->target;
    const Milliseconds cooling = plan.cooling->atLeast;
    const std::string forThis = " with this plan";
    for (const Result<void>& one :
         {checkTime("late changeover", faults.lateChangeover, kLongestFault, ""),
          checkTime("early release", faults.earlyRelease, cooling, forThis),
          checkTime("short soak", faults.shortSoak, soak / 2, forThis),
          checkTime("long soak", faults.longSoak, kLongestFault, ""),
          checkTime("the phone call", faults.phoneCall, kLongestFault, ""),
          checkTime("slow build-up", faults.slowBuildUp, kLongestFault, ""),
          checkTime("backdating", faults.backdate, std::min(kLongestBackdate, soak / 4), forThis),
          checkTime("letting back", faults.letBack, cooling, forThis)}) {
        if (!one) {
            return one;
        }
    }
    if (faults.backdate && faults.backdate->count() == 0) {
        return fail(ErrorCode::OutOfRange, "backdating of 0 ms says nothing: 1 ms at least");
    }
    const int soaks = (faults.shortSoak ? 1 : 0) + (faults.longSoak || faults.phoneCall ? 1 : 0);
    if (soaks > 1) {
        return fail(ErrorCode::Conflict, "a soak is either short or long, not both");
    }
    return {};
}

Result<void> checkSizes(const RehearseFaults& faults) {
    for (const Result<void>& one :
         {checkSize("backing off", faults.backedOffUm, 0, 20'000, "µm"),
          checkSize("a draught", faults.draughtPercent, 10, 1000, "%"),
          checkSize("the plate's offset", faults.plateOffMk, -100'000, 60'000, "mK"),
          checkSize("off parallel", faults.offParallelUm, 0, 10'000, "µm"),
          checkSize("a touch", faults.touchedPermille, 0, 1000, "permille"),
          checkSize("the cold spot", faults.coldSpotMk, 0, 150'000, "mK")}) {
        if (!one) {
            return one;
        }
    }
    const int ways = (faults.soakPressed ? 1 : 0) + (faults.backedOffUm ? 1 : 0);
    if (ways > 1) {
        return fail(ErrorCode::Conflict, "soak is either pressed or backed off, not both");
    }
    const int plates = (faults.coldPlate ? 1 : 0) + (faults.plateOffMk ? 1 : 0);
    if (plates > 1) {
        return fail(
            ErrorCode::Conflict,
            "the plate is either cold as a measured one or off by so much, not both");
    }
    return {};
}

} // namespace

bool RehearseFaults::needBench() const {
    return soakPressed || backedOffUm || clockFromContact || draughtPercent || slammed || letBack ||
           notFollowed || plateOffMk || plateDirty || offParallelUm || topBeadOnly ||
           touchedPermille || filmLeft || wrongRowUm || kgfForN || coldSpotMk;
}

Result<void> checkFaults(const RehearseFaults& faults, const WeldPlan& plan) {
    if (auto ok = checkTimes(faults, plan); !ok) {
        return ok;
    }
    if (auto ok = checkSizes(faults); !ok) {
        return ok;
    }
    const auto& checks = plan.checks;
    if (faults.skipCheck &&
        std::find(checks.begin(), checks.end(), *faults.skipCheck) == checks.end()) {
        return fail(
            ErrorCode::OutOfRange, "the check to skip, \"" + *faults.skipCheck +
                                       "\", is none of this weld's: " + listed(checks));
    }
    if (faults.skipCheck && *faults.skipCheck == "plate_temperature") {
        return fail(
            ErrorCode::OutOfRange,
            "the check \"plate_temperature\" can be skipped by a foreman only");
    }
    if (faults.abortIn &&
        std::find(kPhases.begin(), kPhases.end(), *faults.abortIn) == kPhases.end()) {
        return fail(
            ErrorCode::OutOfRange, "the phase to abort in, \"" + *faults.abortIn +
                                       "\", is none of " +
                                       listed({kPhases.begin(), kPhases.end()}));
    }
    return {};
}

std::string_view toString(BendSays bend) {
    switch (bend) {
    case BendSays::Nothing:
        return "no_change";
    case BendSays::Brittle:
        return "brittle";
    case BendSays::Depends:
        return "depends";
    }
    return "";
}

const std::vector<FaultAccount>& faultAccounts() {
    using B = BendSays;
    static const std::vector<FaultAccount> kAccounts = {
        {"late_changeover", "--late-changeover S", false, "changeover", "out",
         "The clock runs from plate out to contact; a skin forms meanwhile.", B::Depends},
        {"early_release", "--early-release MIN", false, "cooling", "out",
         "Cooling is counted from the lock to the first release step.", B::Depends},
        {"short_soak", "--short-soak S", false, "soak_time", "out",
         "Soak is counted from its reading to plate out.", B::Depends},
        {"long_soak", "--long-soak S", false, "soak_time", "out",
         "Soak is counted from its reading to plate out.", B::Nothing},
        {"phone_call", "--phone-call S", false, "soak_time", "out",
         "Nobody was there when soak was due, so the plate came out late.", B::Nothing},
        {"slow_build_up", "--slow-build-up S", false, "build_up", "out",
         "Build-up is counted from contact to the first joining reading in its band.", B::Depends},
        {"low_reading_corrected", "--low-reading corrected", false, "", "",
         "It was seen and put right before cooling began: nothing is wrong with the joint.",
         B::Nothing},
        {"low_reading_left", "--low-reading left", false, "joining_reading", "out",
         "The re-checks have the reading that the spring really had.", B::Depends},
        {"missed_recheck", "--missed-recheck", false, "recheck_missed", "remark",
         "A re-check without a reading is missed when the next is due.", B::Nothing},
        {"cold_plate", "--cold-plate", false, "plate_temperature", "out",
         "The plate was measured on its face, and welded with all the same.", B::Depends},
        {"thin_bead", "--thin-bead", false, "alignment_bead", "out",
         "The bead that ended alignment was told as it was.", B::Nothing},
        {"misaligned", "--misaligned", false, "misalignment", "out",
         "The step between the sheets is measured at the end.", B::Nothing},
        {"take_back", "--take-back", false, "step_taken_back", "remark",
         "A phase step that was taken back is always told.", B::Nothing},
        {"backdate", "--backdate S", false, "step_backdated", "remark",
         "A phase step whose instant was changed is always told.", B::Nothing},
        {"skip_check", "--skip-check CODE", false, "check_overridden", "remark",
         "A check that was passed over is always told.", B::Nothing},
        {"abort", "--abort-in PHASE", false, "aborted", "incomplete",
         "A weld that was stopped is incomplete.", B::Nothing},

        {"soak_pressed", "--soak-pressed", true, "soak_pressure", "out",
         "The soak reading was told as it was: the melt is pressed out, a fat bead over a brittle "
         "joint.",
         B::Brittle, "bead_k"},
        {"backed_off", "--backed-off MM", true, "bead_k", "out",
         "A timer can't see it, as without force the scale shows no air gap; the bead's valley "
         "tells, if it is measured.",
         B::Brittle},
        {"clock_from_contact", "--clock-from-contact", true, "", "",
         "A timer can't see it: it believes whoever says that the bead stands.", B::Brittle},
        {"draught", "--draught TIMES", true, "", "",
         "A timer can't see it: it does not feel the air.", B::Depends},
        {"slammed", "--slammed", true, "build_up", "out",
         "The reading was above its band when the wheel stood still, and told as it was.",
         B::Depends, "bead_k"},
        {"let_back", "--let-back S", true, "joining_reading", "out",
         "The re-checks find the spring without its force.", B::Brittle, "bead_k"},
        {"not_followed", "--not-followed", true, "joining_reading", "out",
         "The re-checks find the reading fallen, and nobody tops up.", B::Depends},
        {"plate_cold", "--plate-off -15", true, "plate_temperature", "out",
         "The plate's display is right and its face is cold: the probe on the face tells.",
         B::Depends},
        {"plate_hot", "--plate-off 45", true, "plate_temperature", "out",
         "The plate's display is right and its face is hot: the probe on the face tells.",
         B::Brittle},
        {"plate_dirty", "--plate-dirty", true, "", "",
         "A timer can't see it: it believes whoever says that the plate was wiped.", B::Brittle},
        {"off_parallel", "--off-parallel MM", true, "bead_k", "out",
         "Whoever measures the worst place finds no bead there.", B::Brittle},
        {"top_bead_only", "--top-bead-only", true, "", "",
         "A timer can't see it: nobody looked at the lower side.", B::Brittle},
        {"touched_edge", "--touched-edge PERCENT", true, "", "",
         "A timer can't see it: grease from a hand leaves no time and no reading.", B::Brittle},
        {"film_left", "--film-left", true, "", "",
         "A timer can't see it: it believes whoever says that the film is off.", B::Brittle},
        {"wrong_row", "--wrong-row MM", true, "", "",
         "A timer can't see it: all agrees with the card, and the card is another sheet's.",
         B::Depends},
        {"kgf_for_n", "--kgf-for-n", true, "", "",
         "A timer can't see it: all agrees with the card, and its readings are a tenth.",
         B::Brittle},
        {"cold_spot", "--cold-spot K", true, "", "",
         "A timer can't see it: the plate is cold between the places where it is measured.",
         B::Depends},
    };
    return kAccounts;
}

Result<RehearseFaults> singleFault(std::string_view code, const WeldPlan& plan) {
    RehearseFaults faults;
    const Milliseconds soak = plan.soak ? plan.soak->target : Milliseconds(0);
    const Milliseconds build = plan.buildUp ? plan.buildUp->target : Milliseconds(0);
    const Milliseconds cooling = plan.cooling ? plan.cooling->atLeast : Milliseconds(0);
    using F = RehearseFaults;
    struct Row {
        std::string_view code;
        std::function<void(F&)> make;
    };
    const std::array kRows{
        Row{"late_changeover", [](F& f) { f.lateChangeover = seconds(5); }},
        Row{"early_release", [&](F& f) { f.earlyRelease = cooling / 2; }},
        Row{"short_soak", [&](F& f) { f.shortSoak = soak * 2 / 5; }},
        Row{"long_soak", [&](F& f) { f.longSoak = soak * 2 / 5; }},
        Row{"phone_call", [&](F& f) { f.phoneCall = soak / 2; }},
        Row{"slow_build_up", [&](F& f) { f.slowBuildUp = build; }},
        Row{"low_reading_corrected", [](F& f) { f.lowReading = F::LowReading::Corrected; }},
        Row{"low_reading_left", [](F& f) { f.lowReading = F::LowReading::LeftLow; }},
        Row{"missed_recheck", [](F& f) { f.missedRecheck = true; }},
        Row{"cold_plate", [](F& f) { f.coldPlate = true; }},
        Row{"thin_bead", [](F& f) { f.thinBead = true; }},
        Row{"misaligned", [](F& f) { f.misaligned = true; }},
        Row{"take_back", [](F& f) { f.takeBack = true; }},
        Row{"backdate", [&](F& f) { f.backdate = std::min<Milliseconds>(seconds(3), soak / 4); }},
        Row{"skip_check", [](F& f) { f.skipCheck = "scale_zero"; }},
        Row{"abort", [](F& f) { f.abortIn = "inspecting"; }},
        Row{"soak_pressed", [](F& f) { f.soakPressed = true; }},
        Row{"backed_off", [](F& f) { f.backedOffUm = 500; }},
        Row{"clock_from_contact", [](F& f) { f.clockFromContact = true; }},
        Row{"draught", [](F& f) { f.draughtPercent = 400; }},
        Row{"slammed", [](F& f) { f.slammed = true; }},
        Row{"let_back", [](F& f) { f.letBack = seconds(5); }},
        Row{"not_followed", [](F& f) { f.notFollowed = true; }},
        Row{"plate_cold", [](F& f) { f.plateOffMk = -15'000; }},
        Row{"plate_hot", [](F& f) { f.plateOffMk = 45'000; }},
        Row{"plate_dirty", [](F& f) { f.plateDirty = true; }},
        Row{"off_parallel", [](F& f) { f.offParallelUm = 2500; }},
        Row{"top_bead_only", [](F& f) { f.topBeadOnly = true; }},
        Row{"touched_edge", [](F& f) { f.touchedPermille = 300; }},
        Row{"film_left", [](F& f) { f.filmLeft = true; }},
        Row{"wrong_row", [&](F& f) { f.wrongRowUm = plan.thicknessUm * 3 / 5 / 1000 * 1000; }},
        Row{"kgf_for_n", [](F& f) { f.kgfForN = true; }},
        Row{"cold_spot", [](F& f) { f.coldSpotMk = 40'000; }},
    };
    const auto row = std::find_if(
        kRows.begin(), kRows.end(), [&](const Row& each) { return each.code == code; });
    if (row == kRows.end()) {
        std::vector<std::string> codes;
        for (const FaultAccount& account : faultAccounts()) {
            codes.emplace_back(account.code);
        }
        return fail(
            ErrorCode::Missing,
            "\"" + std::string(code) + "\" is not a fault; allowed: " + listed(codes));
    }
    row->make(faults);
    return faults;
}

} // namespace seamclock
