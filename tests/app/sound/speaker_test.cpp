#include "app/sound/speaker.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace seamclock;
using namespace seamclock::test;
using std::chrono::seconds;

namespace {

// When the soak of an invented plan is due, 80 s after the story's soak began.
Milliseconds dueOf(const Story& story) {
    return story.now().boot + (std::get<Soaking>(story.state()).due - story.time()).lo;
}

std::vector<HornSlot> slotsOf(const HornSchedule& schedule, Sound sound) {
    std::vector<HornSlot> out;
    std::copy_if(
        schedule.soundSlots.begin(), schedule.soundSlots.end(), std::back_inserter(out),
        [&](const HornSlot& slot) { return slot.sound == sound; });
    return out;
}

HornSchedule expectUpdate(Speaker& speaker, const Instant& now) {
    auto schedule = speaker.update(now);
    EXPECT_TRUE(schedule.has_value());
    return schedule.value_or(HornSchedule{});
}

Instant at(const Story& story, Milliseconds boot) {
    Instant out = story.now();
    out.utc += boot - out.boot;
    out.boot = boot;
    return out;
}

} // namespace

// The design's table: get ready 10 s before, count-in at 3, 2 and 1 s, act now at zero for 600 ms
// and then at 2 Hz.
TEST(Speaker, SchedulesASoaksEndAheadOfTime) {
    Story story;
    story.align();
    const Milliseconds due = dueOf(story);
    Speaker speaker;
    speaker.show(shiftOf(story.weld()));
    const HornSchedule schedule = expectUpdate(speaker, at(story, due - seconds{30}));
    const auto ready = slotsOf(schedule, Sound::GetReady);
    ASSERT_EQ(ready.size(), 2U);
    EXPECT_EQ(ready[0].start, due - seconds{10});
    EXPECT_EQ(ready[0].length, Milliseconds{180});
    EXPECT_EQ(ready[0].place, 1);
    const auto counts = slotsOf(schedule, Sound::CountIn);
    ASSERT_EQ(counts.size(), 3U);
    EXPECT_EQ(counts[0].start, due - seconds{3});
    EXPECT_EQ(counts[2].start, due - seconds{1});
    const auto act = slotsOf(schedule, Sound::ActNow);
    ASSERT_GT(act.size(), 50U); // a minute ahead: 30 s of it after the due time
    EXPECT_EQ(act[0].start, due);
    EXPECT_EQ(act[0].length, Milliseconds{600});
    EXPECT_EQ(act[1].start, due + Milliseconds{850});
    EXPECT_EQ(act[2].start, due + Milliseconds{1'350});
    std::vector<std::string> ids;
    for (const HornSlot& slot : schedule.soundSlots) {
        ids.push_back(slot.id);
    }
    std::sort(ids.begin(), ids.end());
    EXPECT_EQ(std::adjacent_find(ids.begin(), ids.end()), ids.end());
}

TEST(Speaker, GivesAScheduleOnlyWhenSomethingChanged) {
    Story story;
    story.align();
    Speaker speaker;
    speaker.show(shiftOf(story.weld()));
    const auto first = expectUpdate(speaker, at(story, dueOf(story) - seconds{30}));
    speaker.show(shiftOf(story.weld()));
    EXPECT_FALSE(speaker.update(at(story, dueOf(story) - Milliseconds{29'750})));
    EXPECT_FALSE(speaker.update(at(story, dueOf(story) - Milliseconds{1'000})));
    // Half a minute later the schedule goes half a minute further.
    const auto next = expectUpdate(speaker, at(story, dueOf(story) + seconds{1}));
    EXPECT_GT(next.generation, first.generation);
    EXPECT_GT(next.soundSlots.back().start, first.soundSlots.back().start + seconds{29});
}

TEST(Speaker, GoesOnInOneRhythmFromScheduleToSchedule) {
    Story story;
    story.align();
    const Milliseconds due = dueOf(story);
    Speaker speaker;
    speaker.show(shiftOf(story.weld()));
    std::vector<HornSlot> begun; // each slot when it is first due, as a horn would
    HornSchedule standing;
    for (Milliseconds now = due - seconds{5}; now < due + seconds{120}; now += Milliseconds{250}) {
        if (auto schedule = speaker.update(at(story, now))) {
            standing = *std::move(schedule);
        }
        for (const HornSlot& slot : standing.soundSlots) {
            const bool known = std::any_of(begun.begin(), begun.end(), [&](const HornSlot& other) {
                return other.id == slot.id;
            });
            if (!known && slot.sound == Sound::ActNow && slot.start < now + Milliseconds{250}) {
                begun.push_back(slot);
                speaker.heard(slot.id);
            }
        }
    }
    ASSERT_EQ(begun.size(), 240U); // 600 ms, then from 850 on every 500 up to 120 s
    for (std::size_t i = 1; i < begun.size(); ++i) {
        EXPECT_EQ(begun[i].start, due + Milliseconds{350 + 500 * static_cast<int>(i)});
    }
}

TEST(Speaker, TakesBackWhatAStepMakesIdle) {
    Story story;
    story.align();
    const Milliseconds due = dueOf(story);
    Speaker speaker;
    speaker.show(shiftOf(story.weld()));
    expectUpdate(speaker, at(story, due - seconds{30}));
    story.wait(due - story.now().boot + Milliseconds{1'000}).then(PlateOut{});
    speaker.show(shiftOf(story.weld()));
    const auto after = expectUpdate(speaker, story.now());
    EXPECT_TRUE(slotsOf(after, Sound::ActNow).empty());
    // 6.4 s of changeover: a tick each second, the overrun one millisecond past it.
    EXPECT_EQ(slotsOf(after, Sound::Tick).size(), 6U);
    ASSERT_FALSE(slotsOf(after, Sound::Overrun).empty());
    EXPECT_EQ(slotsOf(after, Sound::Overrun).front().start, story.now().boot + Milliseconds{6'401});
}

TEST(Speaker, KeepsWhatHasJustBegunUntilItIsConfirmed) {
    Story story;
    story.align();
    const Milliseconds due = dueOf(story);
    for (const bool confirmed : {false, true}) {
        Speaker speaker;
        Shift shift = shiftOf(story.weld());
        speaker.show(shift);
        const auto first = expectUpdate(speaker, at(story, due - seconds{1} - Milliseconds{20}));
        const auto last = slotsOf(first, Sound::CountIn);
        ASSERT_FALSE(last.empty());
        if (confirmed) {
            speaker.heard(last.back().id);
        }
        shift.ticks = false; // any change
        speaker.show(shift);
        // No new schedule: the one before stands.
        const auto next = speaker.update(at(story, due - Milliseconds{900})).value_or(first);
        EXPECT_EQ(slotsOf(next, Sound::CountIn).size(), confirmed ? 0U : 1U);
        // It is over when its time is.
        speaker.show(shiftOf(story.weld()));
        const auto later = expectUpdate(speaker, at(story, due + seconds{4}));
        EXPECT_TRUE(slotsOf(later, Sound::CountIn).empty());
    }
}

TEST(Speaker, AfterALossSoundsAgainWhatNobodyHeard) {
    Story story;
    story.align();
    const Milliseconds due = dueOf(story);
    for (const bool heard : {false, true}) {
        Speaker speaker;
        speaker.show(shiftOf(story.weld()));
        const auto first = expectUpdate(speaker, at(story, due - seconds{5}));
        if (heard) {
            speaker.heard(slotsOf(first, Sound::ActNow).front().id);
        }
        const Instant back = at(story, due + seconds{6});
        speaker.restart(back);
        const auto again = slotsOf(expectUpdate(speaker, back), Sound::ActNow);
        ASSERT_FALSE(again.empty());
        // At once: the first itself, or the repeat that was not heard.
        EXPECT_EQ(again.front().start, back.boot);
        EXPECT_EQ(again.front().round, heard ? 1 : 0);
        EXPECT_EQ(again.front().length, Milliseconds{heard ? 250 : 600});
        // What is too late to be of use is not made up for.
        EXPECT_TRUE(
            slotsOf(expectUpdate(speaker, at(story, due + seconds{60})), Sound::CountIn).empty());
    }
}

TEST(Speaker, KeepsTheNextSoundOfALongCoolingInTheSchedule) {
    Story story;
    story.buildUp();
    const Milliseconds lock = story.now().boot;
    story.wait(seconds{65}).then(ReadingTaken{ReadingPhase::Recheck, 15'000});
    Speaker speaker;
    speaker.show(shiftOf(story.weld()));
    // The invented plan's second re-check is 230 s after the lock.
    const auto& cooling = std::get<Cooling>(story.state());
    const Instant early = at(story, lock + seconds{100});
    ASSERT_GT((cooling.due - story.time()).lo, seconds{600});
    const auto schedule = expectUpdate(speaker, early);
    ASSERT_FALSE(schedule.soundSlots.empty());
    EXPECT_GT(schedule.soundSlots.front().start, early.boot + kSoundAhead);
}

TEST(Speaker, IsSilentForNobody) {
    Speaker speaker;
    Instant now;
    now.bootId = "boot-1";
    now.boot = seconds{100};
    const auto schedule = expectUpdate(speaker, now);
    EXPECT_TRUE(schedule.soundSlots.empty());
    now.boot += seconds{100};
    EXPECT_FALSE(speaker.update(now)); // nothing new, however late
}
