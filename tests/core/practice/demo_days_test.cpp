// Many welds into one log: a series, and the demo shop's days.
#include "core/practice/demo_days.h"

#include "core/log/joint.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "tests/support/demo_order.h"
#include "tests/support/materials.h"
#include "tests/support/rehearsed_weld.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>
#include <set>

namespace seamclock::test {
namespace {

struct Made {
    SeriesResult result;
    std::vector<SeriesWeld> welds;
};

Made series(
    const std::string& log, const std::function<std::optional<SeriesStep>(std::int64_t)>& next) {
    Made made;
    auto result =
        rehearseSeries(log, next, [&](const SeriesWeld& weld) { made.welds.push_back(weld); });
    EXPECT_TRUE(result) << (result ? "" : result.error().detail);
    made.result = result.value_or(SeriesResult{});
    return made;
}

std::function<std::optional<SeriesStep>(std::int64_t)>
sameSeam(std::int64_t count, const RehearseOptions& options) {
    return [=](std::int64_t i) -> std::optional<SeriesStep> {
        if (i >= count) {
            return {};
        }
        SeriesStep step{options, Milliseconds(0)};
        step.options.seed = static_cast<std::uint64_t>(i) + 1;
        return step;
    };
}

DemoShop shop(bool physics) {
    DemoShop out;
    for (const DemoSeam& seam : kDemoSeams) {
        out.orders.push_back(orderOf(seam));
    }
    if (physics) {
        out.materials = materials();
    }
    return out;
}

/// Since the weld began; without what is the log's.
std::vector<Event> relative(const WeldRecord& record) {
    std::vector<Event> events = comparable(record.events);
    const Instant start = events.front().at;
    for (Event& event : events) {
        event.at.boot -= start.boot;
        event.at.utc -= start.utc;
    }
    return events;
}

} // namespace

TEST(Series, PutsEachWeldIntoOneLogThatVerifies) {
    const ScratchFolder folder;
    RehearseOptions options;
    options.order = orderOf(kDemoSeams[1]);
    const std::string log = folder.file("a/series.seamlog");
    const Made made = series(log, sameSeam(7, options));
    EXPECT_EQ(made.result.welds, 7);
    EXPECT_EQ(made.result.notSaved, "");
    ASSERT_EQ(made.welds.size(), 7U);
    const auto verified = verifyLog(log);
    ASSERT_TRUE(verified);
    EXPECT_TRUE(verified->ok);
    auto reader = LogReader::open(log);
    ASSERT_TRUE(reader);
    for (std::size_t i = 0; i < made.welds.size(); ++i) {
        const WeldRecord& record = made.welds[i].record;
        EXPECT_EQ(record.opened.number, static_cast<std::int64_t>(i) + 1);
        EXPECT_EQ(toString(record.verdict.word), "within limits");
        EXPECT_EQ(reader->weldEvents(record.weld).value_or(std::vector<Event>{}), record.events);
        if (i > 0) { // one after the other
            EXPECT_GT(record.openedAt.boot, made.welds[i - 1].record.events.back().at.boot);
        }
    }
}

TEST(Series, MakesOfASeedWhatASingleRehearsalMakes) {
    const ScratchFolder folder;
    RehearseOptions options;
    options.order = orderOf(kDemoSeams[0]);
    options.skill = kTrainee;
    const Made made = series(folder.file("series.seamlog"), sameSeam(4, options));
    options.seed = 3;
    options.logPath = folder.file("single.seamlog");
    const auto single = rehearse(options, {});
    ASSERT_TRUE(single);
    EXPECT_EQ(relative(made.welds[2].record), relative(single->record));
}

TEST(Series, KeepsWhatWasMadeBeforeAStepThatCannotBe) {
    const ScratchFolder folder;
    RehearseOptions options;
    options.order = orderOf(kDemoSeams[1]);
    const std::string log = folder.file("series.seamlog");
    const auto next = [&](std::int64_t i) -> std::optional<SeriesStep> {
        SeriesStep step{options, Milliseconds(0)};
        step.options.faults.filmLeft = i == 2;
        return step;
    };
    int done = 0;
    const auto refused = rehearseSeries(log, next, [&](const SeriesWeld&) { ++done; });
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().code, ErrorCode::Refused);
    EXPECT_EQ(done, 2);
    EXPECT_TRUE(verifyLog(log)->ok);
}

TEST(DemoDays, AreTheSameFromTheSameSeed) {
    const ScratchFolder folder;
    const auto days = DemoDays::plan(shop(false), 3, 11);
    ASSERT_TRUE(days);
    const auto next = [&](std::int64_t i) { return days->step(i); };
    const Made once = series(folder.file("1.seamlog"), next);
    const auto same = DemoDays::plan(shop(false), 3, 11);
    const Made again =
        series(folder.file("2.seamlog"), [&](std::int64_t i) { return same->step(i); });
    EXPECT_EQ(once.result.welds, days->count());
    ASSERT_EQ(once.welds.size(), again.welds.size());
    std::set<std::string> dates;
    std::set<std::string> people;
    int out = 0;
    for (std::size_t i = 0; i < once.welds.size(); ++i) {
        const WeldRecord& record = once.welds[i].record;
        EXPECT_EQ(comparable(record.events), comparable(again.welds[i].record.events)) << i;
        dates.insert(toIsoDate(record.openedAt.utc, std::chrono::minutes(0)));
        people.insert(record.openedBy);
        out += record.verdict.word == VerdictWord::OutOfLimits ? 1 : 0;
    }
    EXPECT_EQ(dates, (std::set<std::string>{"2030-01-07", "2030-01-08", "2030-01-09"}));
    EXPECT_EQ(people.size(), 3U);
    EXPECT_GT(out, 0);
    EXPECT_LT(out, days->count() * 2 / 3);
    const auto other = DemoDays::plan(shop(false), 3, 12);
    ASSERT_TRUE(other);
    EXPECT_NE(other->step(0)->options.seed, days->step(0)->options.seed);
}

TEST(DemoDays, LeaveTheWeekendOutAndAskNothingImpossible) {
    for (std::uint64_t seed = 1; seed <= 5; ++seed) {
        const auto days = DemoDays::plan(shop(false), 20, seed);
        ASSERT_TRUE(days) << days.error().detail;
        for (std::int64_t i = 0; i < days->count(); ++i) {
            const SeriesStep step = *days->step(i);
            const std::chrono::sys_days day = std::chrono::floor<std::chrono::days>(
                std::chrono::sys_time<Milliseconds>(step.notBefore));
            const std::chrono::weekday weekday(day);
            EXPECT_NE(weekday, std::chrono::Saturday);
            EXPECT_NE(weekday, std::chrono::Sunday);
            const WeldOrder& order = step.options.order;
            const auto plan =
                makePlan(order.request, order.procedure.procedure, &order.bench.bench);
            ASSERT_TRUE(plan);
            const auto fits = checkFaults(step.options.faults, *plan);
            EXPECT_TRUE(fits) << (fits ? "" : fits.error().detail);
        }
        EXPECT_FALSE(days->step(days->count()));
        EXPECT_FALSE(days->step(-1));
    }
}

TEST(DemoDays, OfTheBenchKnowWhatBecameOfTheJoints) {
    const ScratchFolder folder;
    const auto days = DemoDays::plan(shop(true), 1, 3);
    ASSERT_TRUE(days) << days.error().detail;
    const Made made =
        series(folder.file("p.seamlog"), [&](std::int64_t i) { return days->step(i); });
    EXPECT_EQ(made.result.welds, days->count());
    for (const SeriesWeld& weld : made.welds) {
        EXPECT_TRUE(weld.bench);
    }
}

TEST(DemoDays, AreRefusedWithValueAndRange) {
    EXPECT_EQ(DemoDays::plan(shop(false), 0, 1).error().detail, "0 days are outside 1 to 60");
    EXPECT_EQ(DemoDays::plan(shop(false), 61, 1).error().detail, "61 days are outside 1 to 60");
    EXPECT_EQ(DemoDays::plan({}, 1, 1).error().code, ErrorCode::Missing);
}

} // namespace seamclock::test
