// The law of the core: after every event of any stream, the live weld equals the fold of all its
// events, and what comes back from the stored bytes folds to the same weld.
#include "core/weld/cues.h"
#include "core/weld/event_codec.h"
#include "core/weld/fold.h"
#include "core/weld/verdict.h"
#include "tests/support/sanitized.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>
#include <map>
#include <random>
#include <set>

namespace seamclock {
namespace {

using std::chrono::seconds;

// A person who mostly does the next right thing, often something else, and sometimes nonsense.
class Stream {
public:
    explicit Stream(std::uint64_t seed) : m_random(seed) {
        m_now = {seconds{100}, "boot-1", Milliseconds{1'894'514'400'000}, std::chrono::minutes{0}};
    }

    Event opening() const {
        return {
            m_now, "person:op-1", "weld:11111111-2222-4333-8444-555555555555", 1,
            test::inventedOpening()};
    }

    Event next(const Weld& weld) {
        pass(weld);
        return {
            m_now, "person:op-1", weld.id(), static_cast<std::int64_t>(weld.events.size()) + 1,
            chance(3, 4) ? onward(weld) : anything(weld)};
    }

private:
    std::uint64_t below(std::uint64_t limit) { return m_random() % limit; }
    bool chance(std::uint64_t of, std::uint64_t outOf) { return below(outOf) < of; }

    void pass(const Weld& weld) {
        const auto step =
            Milliseconds{static_cast<std::int64_t>(chance(1, 2) ? below(3'000) : below(200'000))};
        m_now.boot += step;
        m_now.utc += step;
        if (chance(1, 40)) {
            m_old = weld.clock.bootId;
            m_now.bootId = "boot-" + std::to_string(++m_boots);
            m_now.boot = seconds{10};
            m_now.utc += Milliseconds{static_cast<std::int64_t>(below(600'000)) - 60'000};
        }
    }

    WeldDetail onward(const Weld& weld) {
        if (m_now.bootId != weld.clock.bootId && isOpen(weld.state)) {
            return ClockBridged{
                weld.clock.bootId, Milliseconds{0}, seconds{30}, BridgeBasis::Unconfirmed};
        }
        const WeldDetail reading = ReadingTaken{
            static_cast<ReadingPhase>(below(4)), static_cast<std::int64_t>(below(18)) * 1'000};
        if (const auto* preparing = std::get_if<Preparing>(&weld.state)) {
            if (preparing->openChecks.empty()) {
                return AlignmentStarted{};
            }
            return CheckMade{
                preparing->openChecks.front(), chance(9, 10), 205'000, {}, {}, {}, {}, {}};
        }
        if (std::holds_alternative<Aligning>(weld.state)) {
            return chance(1, 3) ? reading : WeldDetail(SoakStarted{});
        }
        if (std::holds_alternative<Soaking>(weld.state)) {
            return chance(1, 3) ? reading : WeldDetail(PlateOut{});
        }
        if (std::holds_alternative<ChangingOver>(weld.state)) {
            return FacesMet{};
        }
        if (std::holds_alternative<BuildingUp>(weld.state)) {
            return chance(1, 2) ? reading : WeldDetail(PressureLocked{});
        }
        if (std::holds_alternative<Cooling>(weld.state)) {
            return chance(2, 3) ? reading : WeldDetail(ReleaseStep{"clamps_eased"});
        }
        if (const auto* releasing = std::get_if<Releasing>(&weld.state)) {
            return ReleaseStep{
                weld.plan.releaseOrder[static_cast<std::size_t>(releasing->stepsDone)]};
        }
        if (std::holds_alternative<Inspecting>(weld.state)) {
            return chance(1, 4) ? WeldDetail(WeldClosed{"within limits", {}, 1})
                                : WeldDetail(BeadMeasured{{}, 9'000, 4'000, 500, 900});
        }
        for (const Retained& one : retained(weld.events)) {
            const auto* read = std::get_if<ReadingTaken>(&one.d);
            if (read != nullptr && chance(1, 2)) {
                return ValueCorrected{
                    one.n, "reading_milli", std::to_string(read->readingMilli), "15500", "misread"};
            }
        }
        return RemarkMade{"after the end"};
    }

    WeldDetail anything(const Weld& weld) {
        const std::int64_t last = lastTakeable(weld);
        switch (below(14)) {
        case 0:
        case 1:
        case 2:
            return StepTakenBack{last};
        case 3:
        case 4:
            return StepBackdated{last, Milliseconds{static_cast<std::int64_t>(below(11'000))}};
        case 5:
            return RemarkMade{"said"};
        case 6:
            return ReasonGiven{"changeover", "let it cool", {}};
        case 7:
            return CueAcknowledged{chance(1, 2) ? "recheck_due" : "cooling_done"};
        case 8: {
            WeldPlan plan = test::inventedPlan();
            plan.dragMn = static_cast<std::int64_t>(below(9)) * 1'000;
            return PlanReplaced{plan, {"a", "b", {}}, "drag"};
        }
        case 9:
            return Graded{"EN 16296", "B"};
        case 10:
            return CheckOverridden{"gap", "measured by eye", Authority::Operator};
        case 11:
            return ClockBridged{m_old, seconds{0}, seconds{5}, BridgeBasis::Unconfirmed};
        case 12:
            return ValueCorrected{last, "reading_milli", "15000", "14000", "misread"};
        default:
            return chance(1, 6) ? WeldDetail(WeldAborted{"cut_out", ""})
                                : WeldDetail(JointNumbered{});
        }
    }

    std::mt19937_64 m_random;
    Instant m_now;
    std::string m_old = "boot-0";
    int m_boots = 1;
};

TEST(Law, TenThousandRandomStreamsFoldToTheLiveWeld) {
    std::map<std::string, int> accepted;
    std::set<std::string> ends;
    int refused = 0;
    constexpr auto kStreams = static_cast<std::uint64_t>(test::rounds(10'000));
    for (std::uint64_t seed = 1; seed <= kStreams; ++seed) {
        Stream stream(seed);
        auto weld = open(stream.opening());
        ASSERT_TRUE(weld);
        const std::size_t length = 12 + seed % 24;
        for (std::size_t i = 0; i < length; ++i) {
            const Event event = stream.next(*weld);
            auto next = apply(*weld, event);
            if (!next) {
                ASSERT_EQ(next.error().code, ErrorCode::Refused) << next.error().detail;
                ++refused;
                continue;
            }
            ++accepted[std::string(kindOf(event.d))];
            weld = std::move(next);
            const auto folded = fold(weld->events);
            ASSERT_TRUE(folded) << "seed " << seed << ": " << folded.error().detail;
            ASSERT_EQ(folded->state, weld->state) << "seed " << seed;
            ASSERT_EQ(*folded, *weld) << "seed " << seed;
        }
        ends.insert(std::string(phaseName(weld->state)));
        // The verdict and the cues can be asked of any weld at any time.
        (void)verdict(*weld);
        (void)cuesUntil(*weld, weld->clock.at, seconds{100'000});
    }
    // The streams must have been worth something: every kind got in, every state was an end.
    EXPECT_EQ(ends.size(), std::variant_size_v<State>);
    EXPECT_GT(refused, test::rounds(1'000));
    for (const char* kind :
         {"step_taken_back", "step_backdated", "clock_bridged", "plan_replaced", "value_corrected",
          "weld_closed", "weld_aborted", "pressure_locked", "release_step", "check_overridden"}) {
        EXPECT_GT(accepted[kind], test::rounds(20)) << kind;
    }
}

TEST(Law, HoldsThroughTheStoredBytes) {
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        Stream stream(seed);
        Weld weld = *open(stream.opening());
        for (int i = 0; i < 30; ++i) {
            if (auto next = apply(weld, stream.next(weld))) {
                weld = std::move(*next);
            }
        }
        std::vector<Event> back;
        for (const Event& event : weld.events) {
            const auto body = toBody(event);
            ASSERT_TRUE(body);
            auto again = eventFromBody(*body);
            ASSERT_TRUE(again) << again.error().detail;
            back.push_back(std::move(*again));
        }
        EXPECT_EQ(*fold(back), weld) << "seed " << seed;
    }
}

} // namespace
} // namespace seamclock
