#include "core/report/set_actual.h"
#include "core/weld/force_check.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

using test::Story;

std::vector<SetActual> rowsOf(const std::vector<SetActual>& rows, const std::string& item) {
    std::vector<SetActual> some;
    for (const SetActual& row : rows) {
        if (row.item == item) {
            some.push_back(row);
        }
    }
    return some;
}

Bench bench() {
    Bench one;
    one.scale = {"mm", 500, 500, 40'000, 1, {newtons(40), newtons(30)}, newtons(14), {}};
    return one;
}

TEST(SetActual, NamesTheEventThatEachActualValueComesFrom) {
    const WeldRecord now = record(Story().close().weld());
    int named = 0;
    for (const SetActual& row : setAndActual(now, nullptr)) {
        EXPECT_EQ(row.actual.has_value(), row.n != 0) << row.item;
        if (row.n == 0) {
            continue;
        }
        ++named;
        const Event& event = now.events.at(static_cast<std::size_t>(row.n - 1));
        EXPECT_TRUE(
            std::holds_alternative<CheckMade>(event.d) ||
            std::holds_alternative<ReadingTaken>(event.d) ||
            std::holds_alternative<BeadMeasured>(event.d))
            << row.item;
    }
    EXPECT_GE(named, 6);
}

/// What an event holds of an item, looked up by the event's kind and not by what is tested here.
std::optional<std::int64_t> heldBy(const WeldDetail& d, const std::string& item) {
    if (const auto* check = std::get_if<CheckMade>(&d)) {
        return check->valueMc      ? check->valueMc
               : check->valueUm    ? check->valueUm
               : check->valueMilli ? check->valueMilli
                                   : std::nullopt;
    }
    if (const auto* reading = std::get_if<ReadingTaken>(&d)) {
        const bool isReading = item.find("_reading") != std::string::npos;
        return isReading ? std::optional(reading->readingMilli) : std::nullopt;
    }
    if (const auto* bead = std::get_if<BeadMeasured>(&d)) {
        return item == "bead_height"    ? bead->heightUm
               : item == "bead_width"   ? bead->widthUm
               : item == "bead_k"       ? bead->kUm
               : item == "misalignment" ? std::optional(bead->misalignmentUm)
                                        : std::nullopt;
    }
    return std::nullopt;
}

TEST(SetActual, HasTheValueThatItsEventHolds) {
    const WeldRecord now = record(Story().close().weld());
    std::set<std::string> traced;
    for (const SetActual& row : setAndActual(now, nullptr)) {
        if (row.n == 0) {
            continue;
        }
        const auto held = heldBy(now.events.at(static_cast<std::size_t>(row.n - 1)).d, row.item);
        EXPECT_EQ(row.actual, held) << row.item << ", event " << row.n;
        traced.insert(row.item);
    }
    for (const char* item : {"joining_reading", "soak_reading", "bead_height", "bead_k"}) {
        EXPECT_EQ(traced.count(item), 1U) << item;
    }
}

TEST(SetActual, KeepsWhatStoodThereBeforeACorrectionAndTheEventThatMadeIt) {
    Story story;
    story.close();
    const std::int64_t target = test::lastReading(story.weld(), ReadingPhase::Joining);
    story.then(ValueCorrected{target, "reading_milli", "15500", "15000", "misread"});
    story.then(ValueCorrected{target, "reading_milli", "15000", "15200", "misread again"});
    const Bench scale = bench();
    const WeldRecord now = record(story.weld());
    const auto last = static_cast<std::int64_t>(now.events.size());
    for (const SetActual& row : setAndActual(now, &scale)) {
        const bool reading = row.item == "joining_reading";
        const bool follows = row.item == "joining_force" || row.item == "joining_pressure";
        EXPECT_EQ(row.correctedBy, reading || follows ? last : 0) << row.item;
        EXPECT_EQ(row.was, reading ? std::optional<std::int64_t>(15'500) : std::nullopt)
            << row.item;
    }
}

TEST(SetActual, HoldsPlannedReadingsThatWereNeverTaken) {
    const WeldRecord now = record(Story().weld());
    for (const char* item :
         {"plate_temperature", "alignment_reading", "soak_reading", "joining_reading",
          "alignment_bead", "misalignment"}) {
        const auto rows = rowsOf(setAndActual(now, nullptr), item);
        ASSERT_EQ(rows.size(), 1U) << item;
        EXPECT_FALSE(rows.front().actual) << item;
    }
    EXPECT_TRUE(rowsOf(setAndActual(now, nullptr), "recheck_reading").empty());
}

TEST(SetActual, HasWhatWasMarkedOnTheScaleBesideTheJoiningReadingAndNotAsADrag) {
    WeldPlan plan = test::inventedPlan();
    plan.checks.emplace_back("drag");
    Story story(plan);
    CheckMade mark = forceMark(story.weld().plan);
    *mark.valueMilli += 50;
    story.then(mark);
    const auto n = static_cast<std::int64_t>(story.weld().events.size());
    const auto rows = setAndActual(record(story.close().weld()), nullptr);
    const auto marked = rowsOf(rows, "marked_reading");
    ASSERT_EQ(marked.size(), 1U);
    const ReadingBand& band = story.weld().plan.scale->joining;
    EXPECT_EQ(marked[0].set, band.setMilli);
    EXPECT_EQ(marked[0].low, band.lowMilli);
    EXPECT_EQ(marked[0].high, band.highMilli);
    EXPECT_EQ(marked[0].actual, band.setMilli + 50);
    EXPECT_EQ(marked[0].n, n);
    for (const SetActual& row : rows) {
        EXPECT_TRUE(row.n != n || row.item == "marked_reading") << row.item;
    }
}

TEST(SetActual, TurnsAReadingIntoTheForceOnTheFaces) {
    // (15.5 − 0.5) · (40 + 30) − 14 preload − 20 drag = 1016 N; over 8 mm · 860 mm that is 0.147674
    // N/mm².
    const WeldRecord now = record(Story().close().weld());
    const Bench springs = bench();
    const auto rows = setAndActual(now, &springs);
    const auto force = rowsOf(rows, "joining_force");
    ASSERT_EQ(force.size(), 1U);
    EXPECT_EQ(force.front().set, 1'032'000);
    EXPECT_EQ(force.front().actual, 1'016'000);
    const auto pressure = rowsOf(rows, "joining_pressure");
    ASSERT_EQ(pressure.size(), 1U);
    EXPECT_EQ(pressure.front().low, 140'000);
    EXPECT_EQ(pressure.front().high, 160'000);
    EXPECT_EQ(pressure.front().actual, 147'674);
}

TEST(SetActual, LetsFrictionHoldTheTableOnInSoak) {
    // Coming down, drag adds: (1.5 − 0.5) · 70 − 14 + 20 = 76 N against at most 137.6 N.
    Story story;
    story.align().then(ReadingTaken{ReadingPhase::Soak, 1'500});
    const Bench springs = bench();
    const auto force = rowsOf(setAndActual(record(story.weld()), &springs), "soak_force");
    ASSERT_FALSE(force.empty());
    EXPECT_EQ(force.back().high, 137'600);
    EXPECT_FALSE(force.back().set);
    EXPECT_EQ(force.back().actual, 76'000);
}

TEST(SetActual, HasOneLineForEachPlaceOfABead) {
    Story story;
    story.release();
    story.then(BeadMeasured{10'000, 9'000, 3'000, 400, 100});
    story.then(BeadMeasured{850'000, 9'500, 3'100, -50, 900});
    const auto rows = setAndActual(record(story.weld()), nullptr);
    const auto k = rowsOf(rows, "bead_k");
    ASSERT_EQ(k.size(), 2U);
    EXPECT_EQ(k[1].actual, -50);
    EXPECT_EQ(k[1].placeUm, 850'000);
    EXPECT_EQ(placeInWords(k[1]), "at 850 mm");
    EXPECT_EQ(rowsOf(rows, "misalignment")[1].high, 800);
}

} // namespace
} // namespace seamclock
