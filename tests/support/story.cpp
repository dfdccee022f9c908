#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock::test {

using std::chrono::seconds;

WeldPlan inventedPlan() {
    WeldPlan plan;
    plan.procedure = "invented";
    plan.edition = "2030";
    plan.material = "PE-HD";
    plan.bench = "bench-a";
    plan.thicknessUm = 8'000;
    plan.lengthUm = 860'000;
    plan.ambientMc = 20'000;
    plan.alignmentPa = 150'000;
    plan.soakAimPa = 15'000;
    plan.soakMaxPa = 20'000;
    plan.joiningPa = 150'000;
    plan.tolerancePa = 10'000;
    plan.alignmentMn = 1'032'000;
    plan.soakMaxMn = 137'600;
    plan.joiningMn = 1'032'000;
    plan.dragMn = 20'000;
    plan.scale = WeldPlan::ScalePlan{
        "mm", 500, 500, {15'500, 14'600, 16'900}, {1'500, 500, 2'200}, {15'500, 14'600, 16'900}};
    plan.plate = WeldPlan::Plate{200'000, 210'000, 220'000};
    plan.gapUm = 8'000;
    plan.clampingGapUm = 16'000;
    plan.edgeGapMaxUm = 500;
    plan.misalignmentMaxUm = 800;
    plan.beadMinUm = 1'500;
    plan.alignMedian = seconds{48};
    plan.alignLate = seconds{96};
    plan.soak = TimeBand{seconds{80}, seconds{80}, seconds{88}};
    plan.changeoverMax = Milliseconds{6'400};
    plan.buildUp = TimeBand{Milliseconds{3'900}, Milliseconds{6'500}, Milliseconds{8'450}};
    plan.cooling = WeldPlan::Cooling{seconds{690}, {seconds{60}, seconds{230}}};
    plan.checks = {"plate_temperature", "film_off", "gap"};
    plan.releaseOrder = {"clamps_eased", "bars_opened", "sheet_out"};
    return plan;
}

WeldOpened inventedOpening(const WeldPlan& plan) {
    WeldOpened opened;
    opened.number = 7;
    opened.bench = plan.bench;
    opened.seam = "S3";
    opened.sheets = {
        {"PE-HD", {}, "Maker One", "batch 11", 8'000, {}},
        {"PE-HD", "natural", "Maker One", "batch 12", 8'050, "0.3"}};
    opened.lengthsUm = {860'000};
    opened.ambientMc = 20'000;
    opened.shielded = true;
    opened.plan = plan;
    opened.docs = {std::string(64, 'a'), std::string(64, 'b'), {}};
    return opened;
}

namespace {

Weld opening(const WeldOpened& opened, const Instant& at) {
    auto weld =
        open(Event{at, "person:op-1", "weld:11111111-2222-4333-8444-555555555555", 1, opened});
    if (!weld) {
        ADD_FAILURE() << weld.error().detail;
        return {};
    }
    return std::move(*weld);
}

} // namespace

Story::Story(const WeldPlan& plan) : Story(inventedOpening(plan)) {}

// 2030-01-13T06:00:00Z, two hours after the machine's start.
Story::Story(const WeldOpened& opened)
    : m_now(
          {Milliseconds{7'200'000}, "boot-1", Milliseconds{1'894'514'400'000},
           std::chrono::minutes{60}}),
      m_weld(opening(opened, m_now)) {}

Story& Story::wait(Milliseconds step) {
    m_now.boot += step;
    m_now.utc += step;
    return *this;
}

Story& Story::waitUntil(Milliseconds weldTime) {
    return wait(weldTime - time().lo);
}

Story& Story::reboot(Milliseconds off, const std::string& bootId) {
    m_now.bootId = bootId;
    m_now.boot = seconds{30};
    m_now.utc += off;
    return *this;
}

WeldTime Story::time() const {
    const auto t = weldTimeAt(m_weld, m_now);
    EXPECT_TRUE(t.has_value());
    return t.value_or(WeldTime{});
}

Result<Weld> Story::attempt(const WeldDetail& detail) const {
    const auto n = static_cast<std::int64_t>(m_weld.events.size()) + 1;
    return apply(m_weld, Event{m_now, "person:op-1", m_weld.id(), n, detail});
}

Result<Weld>
Story::attemptIntent(const WeldDetail& detail, std::optional<std::int64_t> onto) const {
    return accept(m_weld, Intent{onto, "person:op-1", detail}, m_now);
}

Story& Story::then(const WeldDetail& detail) {
    auto next = attempt(detail);
    if (next) {
        m_weld = std::move(*next);
    } else {
        ADD_FAILURE() << next.error().detail;
    }
    return *this;
}

Story& Story::prepare() {
    wait(seconds{20});
    CheckMade plate{"plate_temperature", true, 211'000, {}, {}, "middle", "left", {}};
    then(plate);
    for (const std::string& check : std::vector<std::string>(m_weld.plan.checks)) {
        if (check != "plate_temperature") {
            wait(seconds{10}).then(CheckMade{check, true, {}, {}, {}, {}, {}, {}});
        }
    }
    return *this;
}

Story& Story::align() {
    prepare().wait(seconds{10}).then(AlignmentStarted{});
    wait(seconds{49}).then(CheckMade{"alignment_bead", true, {}, 2'000, {}, {}, {}, {}});
    return wait(seconds{1}).then(SoakStarted{});
}

Story& Story::soak() {
    align().wait(seconds{5}).then(ReadingTaken{ReadingPhase::Soak, 1'500});
    return wait(seconds{77}).then(PlateOut{});
}

Story& Story::changeOver() {
    return soak().wait(seconds{4}).then(FacesMet{});
}

std::int64_t lastReading(const Weld& weld, ReadingPhase phase) {
    std::int64_t n = 0;
    for (const Event& event : weld.events) {
        const auto* reading = std::get_if<ReadingTaken>(&event.d);
        n = reading != nullptr && reading->phase == phase ? event.n : n;
    }
    return n;
}

Story& Story::buildUp() {
    changeOver().wait(seconds{6}).then(ReadingTaken{ReadingPhase::Joining, 15'500});
    return wait(seconds{2}).then(PressureLocked{});
}

Story& Story::cool() {
    const Milliseconds start = buildUp().time().lo;
    waitUntil(start + seconds{70}).then(ReadingTaken{ReadingPhase::Recheck, 15'000});
    waitUntil(start + seconds{240}).then(ReadingTaken{ReadingPhase::Recheck, 14'900});
    return waitUntil(start + m_weld.plan.cooling->atLeast);
}

Story& Story::release() {
    cool();
    for (const std::string& step : std::vector<std::string>(m_weld.plan.releaseOrder)) {
        then(ReleaseStep{step}).wait(seconds{8});
    }
    return *this;
}

Story& Story::inspect() {
    release().wait(seconds{30}).then(BeadMeasured{{}, 9'000, 4'000, 800, 200});
    return wait(seconds{5}).then(JointNumbered{});
}

Story& Story::close() {
    return inspect().wait(seconds{5}).then(closing(m_weld));
}

} // namespace seamclock::test
