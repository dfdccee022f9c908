#include "core/shift/shift.h"
#include "tests/core/shift/requests.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using test::Story;

WeldOpened openedOn(const std::string& bench) {
    WeldOpened opened = test::inventedOpening();
    opened.bench = bench;
    return opened;
}

// The stories share one weld id; a shift tells welds apart by it.
Weld renamed(Weld weld, const std::string& id) {
    for (Event& event : weld.events) {
        event.subject = "weld:" + id;
    }
    return weld;
}

ShiftBench benchAt(int place, const std::string& name, Weld weld) {
    return {name, place, renamed(std::move(weld), name)};
}

std::vector<std::string> codesOf(const std::vector<Request>& requests) {
    std::vector<std::string> codes;
    for (const Request& request : requests) {
        codes.push_back(request.code);
    }
    return codes;
}

TEST(Shift, HoldsFourBenchesAtFourPlacesAndRefusesAFifth) {
    Shift shift;
    for (int place = 1; place <= 4; ++place) {
        const auto more =
            withBench(shift, benchAt(place, "bench-" + std::to_string(place), Story().weld()));
        ASSERT_TRUE(more) << more.error().detail;
        shift = *more;
    }
    EXPECT_FALSE(withBench(shift, benchAt(5, "bench-5", Story().weld())));
    EXPECT_FALSE(withBench(shift, benchAt(0, "bench-0", Story().weld())));
    shift = withoutBench(shift, "bench-2");
    EXPECT_EQ(shift.benches.size(), 3U);
    EXPECT_TRUE(withBench(shift, benchAt(2, "bench-9", Story().weld())));
    EXPECT_EQ(withoutBench(shift, "nobody"), shift);
}

TEST(Shift, SaysInOneSentenceWhatWasRefusedAndWhatIsAllowed) {
    Shift shift;
    for (int place = 1; place <= 3; ++place) {
        shift = *withBench(shift, benchAt(place, "bench-" + std::to_string(place), Story().weld()));
    }
    const auto outside = withBench(shift, benchAt(5, "far", Story().weld()));
    ASSERT_FALSE(outside);
    EXPECT_EQ(outside.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(outside.error().detail, "Bench \"far\" at place 5: a place is 1 to 4");

    const auto taken = withBench(shift, benchAt(2, "late", Story().weld()));
    ASSERT_FALSE(taken);
    EXPECT_EQ(taken.error().code, ErrorCode::Conflict);
    EXPECT_EQ(
        taken.error().detail, "Bench \"late\" can't have place 2: bench \"bench-2\" has it; each "
                              "of 1 to 4 is given once");

    shift = *withBench(shift, benchAt(4, "bench-4", Story().weld()));
    const auto fifth = withBench(shift, benchAt(4, "fifth", Story().weld()));
    ASSERT_FALSE(fifth);
    EXPECT_EQ(fifth.error().code, ErrorCode::OutOfRange);
    EXPECT_EQ(
        fifth.error().detail, "Bench \"fifth\" would be number 5: a shift has 1 to 4 benches");
}

TEST(Shift, RefusesAPlaceABenchOrAWeldThatIsThereAlready) {
    const Shift shift = *withBench(Shift{}, benchAt(1, "a", Story().weld()));
    const auto samePlace = withBench(shift, benchAt(1, "b", Story().weld()));
    ASSERT_FALSE(samePlace);
    EXPECT_EQ(samePlace.error().code, ErrorCode::Conflict);
    EXPECT_FALSE(withBench(shift, benchAt(2, "a", Story().weld())));
    EXPECT_FALSE(withBench(shift, {"b", 2, shift.benches[0].weld}));
    EXPECT_FALSE(withWeld(shift, "nobody", Story().weld()));
    EXPECT_TRUE(withWeld(shift, "a", Story().weld()));
}

TEST(Shift, AsksOnTheBootClockForEveryCueThatStandsOrComes) {
    Story story;
    story.align();
    const Shift shift = shiftOf(story.weld());
    const Milliseconds now = story.now().boot;
    const auto asked = requests(shift, story.now(), seconds{80});
    EXPECT_TRUE(asked.silent.empty());
    EXPECT_EQ(
        codesOf(asked.requests),
        (std::vector<std::string>{"get_ready", "count_in", "count_in", "count_in", "act_now"}));
    EXPECT_EQ(asked.requests[0].onset, now + seconds{70});
    EXPECT_EQ(asked.requests[4].onset, now + seconds{80});
    EXPECT_EQ(asked.requests[0].staleAfter, seconds{3});
    EXPECT_TRUE(asked.requests[4].knownAhead);
}

TEST(Shift, GivesACueTheSameIdHoweverOftenItIsAsked) {
    Story story;
    story.align();
    const Shift shift = shiftOf(story.weld());
    const auto first = requests(shift, story.now(), seconds{80});
    story.wait(seconds{75});
    const auto later = requests(shift, story.now(), seconds{5});
    for (const Request& request : later.requests) {
        EXPECT_TRUE(std::any_of(
            first.requests.begin(), first.requests.end(),
            [&](const Request& other) {
                return other.id == request.id && other.onset == request.onset;
            }))
            << request.id;
    }
    EXPECT_EQ(later.requests.size(), 5U);
}

TEST(Shift, SpeaksOfABenchThatDoesNotKnowTheTime) {
    Story story;
    story.buildUp();
    const Shift shift = shiftOf(story.weld());
    story.reboot(seconds{40});
    const auto asked = requests(shift, story.now(), minutes{60});
    EXPECT_TRUE(asked.requests.empty());
    ASSERT_EQ(asked.silent.size(), 1U);
    EXPECT_NE(asked.silent[0].detail.find("bridge"), std::string::npos) << asked.silent[0].detail;
}

TEST(Shift, TicksEachSecondOfChangeoverUnlessTurnedOff) {
    Story story;
    story.soak();
    Shift shift = shiftOf(story.weld());
    const auto ticksIn = [&](const Shift& which) {
        const auto codes = codesOf(requests(which, story.now(), Milliseconds{5'999}).requests);
        return std::count(codes.begin(), codes.end(), "tick");
    };
    EXPECT_EQ(ticksIn(shift), 5);
    shift.ticks = false;
    EXPECT_EQ(ticksIn(shift), 0);
}

TEST(Shift, TheStationsOwnCuesHaveNoBenchAndNoSoundIsForTheScreenOnly) {
    Shift shift;
    const Instant now = Story().now();
    shift.station = {
        {CueKind::RowNotSaved, now.boot, {}},
        {CueKind::NoSound, now.boot, {}},
        {CueKind::BatteryLow, now.boot - seconds{9}, now.boot - seconds{1}}};
    const auto asked = requests(shift, now, seconds{1});
    EXPECT_EQ(codesOf(asked.requests), (std::vector<std::string>{"row_not_saved"}));
    EXPECT_EQ(asked.requests[0].place, 0);
}

// The whole way from two welds to one voice: B's act now at its instant, A's overrun in between.
TEST(Shift, TwoBenchesAreHeardWithOneVoice) {
    Story a(openedOn("a"));
    Story b(openedOn("b"));
    a.soak();
    b.align();
    // A's faces are not together when its limit passes; B's soak ends two seconds later.
    const Milliseconds limit = a.now().boot + Milliseconds{6'401};
    b.waitUntil(b.time().lo + seconds{80} - Milliseconds{8'401});
    Instant now = a.now();
    Weld second = b.weld();
    // Put B's clock where A's stands.
    const Milliseconds shiftBy = now.boot - b.now().boot;
    for (Event& event : second.events) {
        event.at.boot += shiftBy;
    }
    second.clock.boot += shiftBy;
    Shift shift = *withBench(Shift{}, benchAt(1, "a", a.weld()));
    shift = *withBench(shift, benchAt(2, "b", second));
    const auto heard = soundings(shift, {}, now, now.boot + seconds{20});
    const auto first = [&](const std::string& code, int place) {
        const auto found = std::find_if(
            heard.soundings.begin(), heard.soundings.end(), [&](const Sounding& sounding) {
                return sounding.code == code && sounding.place == place && isFirst(sounding);
            });
        EXPECT_NE(found, heard.soundings.end()) << code;
        return found == heard.soundings.end() ? Milliseconds{-1} : found->start;
    };
    EXPECT_EQ(first("changeover_overrun", 1), limit);
    EXPECT_EQ(first("act_now", 2), now.boot + Milliseconds{8'401});
    for (std::size_t i = 1; i < heard.soundings.size(); ++i) {
        EXPECT_GE(heard.soundings[i].start, heard.soundings[i - 1].end());
    }
}

TEST(Shift, SoundsATrialOnceAndLetsEveryRealCueGoFirst) {
    Story story;
    story.align();
    story.waitUntil(story.time().lo + seconds{1});
    const Instant now = story.now();
    Shift shift = *withBench(Shift{}, benchAt(2, "b", story.weld()));
    shift.trial = Trial{2, now.boot + Milliseconds{300}};
    const auto heard = soundings(shift, {}, now, now.boot + seconds{10}).soundings;
    const auto trials = std::count_if(
        heard.begin(), heard.end(), [](const Sounding& one) { return one.code == "trial"; });
    EXPECT_GE(trials, 1);
    EXPECT_EQ(heard.front().start, shift.trial->onset);
    // Its time is over after three seconds: nothing of it is asked for any more.
    Instant later = now;
    later.boot += Milliseconds{3'301};
    for (const Request& request : requests(shift, later, seconds{60}).requests) {
        EXPECT_NE(request.code, "trial");
    }
    const auto asked = requests(shift, now, seconds{60}).requests;
    for (const Request& request : asked) {
        EXPECT_TRUE(request.code == "trial" || request.rank < asked.back().rank) << request.code;
    }
    EXPECT_EQ(asked.back().code, "trial");
}

} // namespace
} // namespace seamclock
