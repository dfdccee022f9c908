#include "app/horn/player.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <thread>

using namespace seamclock;
using std::chrono::seconds;

namespace {

constexpr Milliseconds kEpoch{100'000};

struct Stretch {
    std::int64_t from = 0; // frames since the epoch
    std::int64_t length = 0;

    bool operator==(const Stretch&) const = default;
};

std::ostream& operator<<(std::ostream& out, const Stretch& stretch) {
    return out << stretch.from << "+" << stretch.length;
}

// A sound device that never stops: it asks for so many frames at a time and keeps them all.
class Ear {
public:
    explicit Ear(std::size_t chunk = 441) : m_chunk(chunk) {}

    void listen(Milliseconds until) {
        const auto end = static_cast<std::size_t>((until - kEpoch).count() * kFramesPerMilli);
        while (m_pcm.size() < end) {
            const std::size_t from = m_pcm.size();
            const std::size_t count = std::min(m_chunk, end - from);
            m_pcm.resize(from + count, 99);
            player.fill(
                m_pcm.data() + from, count,
                kEpoch + m_slipped +
                    Nanoseconds{static_cast<std::int64_t>(from) * 1'000'000 / kFramesPerMilli});
        }
    }
    void beatUntil(Milliseconds until) {
        for (Milliseconds at = now(); at < until; at += Milliseconds{250}) {
            player.take(HornBeat{}, at);
            listen(std::min(at + Milliseconds{250}, until));
        }
    }
    /// Nothing was asked for meanwhile.
    void slip(Milliseconds by) { m_slipped += by; }
    Milliseconds now() const {
        return kEpoch + Milliseconds{static_cast<std::int64_t>(m_pcm.size()) / kFramesPerMilli};
    }
    /// What is not silence; up to 2 ms of silence belong to it.
    std::vector<Stretch> sounds() const {
        std::vector<Stretch> out;
        std::int64_t last = -1'000;
        for (std::int64_t i = 0; i < static_cast<std::int64_t>(m_pcm.size()); ++i) {
            if (m_pcm[static_cast<std::size_t>(i)] == 0) {
                continue;
            }
            if (i - last > 2 * kFramesPerMilli) {
                out.push_back({i, 0});
            }
            out.back().length = i - out.back().from + 1;
            last = i;
        }
        return out;
    }

    Player player;

private:
    std::size_t m_chunk;
    Milliseconds m_slipped{0};
    std::vector<std::int16_t> m_pcm;
};

HornSlot countIn(const std::string& id, Milliseconds after) {
    return {id, kEpoch + after, 5, 1, Sound::CountIn, 0, 0, Milliseconds{120}};
}
HornSlot actNow(int round, Milliseconds after) {
    return {"act/" + std::to_string(round) + "/0", kEpoch + after, 3, 1, Sound::ActNow, round, 0,
            Milliseconds{round == 0 ? 600 : 250}};
}
HornSlot pulse(int place, int position, Milliseconds after) {
    return {
        "ready/0/" + std::to_string(position),
        kEpoch + after,
        6,
        place,
        Sound::GetReady,
        0,
        position,
        Milliseconds{180}};
}

// The envelope begins and ends at nothing, so that the outermost samples round to 0: 0.6 ms at
// most.
void expectSlots(
    const std::vector<Stretch>& heard, const std::vector<std::pair<int, int>>& soundSlots) {
    ASSERT_EQ(heard.size(), soundSlots.size()) << ::testing::PrintToString(heard);
    for (std::size_t i = 0; i < soundSlots.size(); ++i) {
        const auto from = std::int64_t{soundSlots[i].first} * kFramesPerMilli;
        const auto length = std::int64_t{soundSlots[i].second} * kFramesPerMilli;
        EXPECT_GE(heard[i].from, from) << i;
        EXPECT_LE(heard[i].from, from + 3) << i;
        EXPECT_LE(heard[i].length, length) << i;
        EXPECT_GE(heard[i].length, length - 30) << i;
    }
}

} // namespace

TEST(Player, BeginsEachSlotAtItsSampleWhateverTheChunks) {
    std::vector<Stretch> first;
    for (const std::size_t chunk : {1U, 48U, 441U, 960U, 6'960U}) {
        Ear ear(chunk);
        ear.player.take(
            HornSchedule{
                1,
                {countIn("a", Milliseconds{100}), countIn("b", Milliseconds{333}),
                 countIn("c", Milliseconds{1'001})}},
            kEpoch);
        ear.listen(kEpoch + Milliseconds{1'500});
        expectSlots(ear.sounds(), {{100, 120}, {333, 120}, {1'001, 120}});
        first = first.empty() ? ear.sounds() : first;
        EXPECT_EQ(ear.sounds(), first) << chunk;
    }
}

TEST(Player, PlaysWhatHasBegunWholeThoughANewScheduleLacksIt) {
    Ear ear;
    ear.player.take(
        HornSchedule{1, {actNow(0, Milliseconds{50}), actNow(1, Milliseconds{900})}}, kEpoch);
    ear.listen(kEpoch + Milliseconds{200});
    ear.player.take(HornSchedule{2, {}}, ear.now());
    ear.listen(kEpoch + Milliseconds{1'500});
    expectSlots(ear.sounds(), {{50, 600}});
}

TEST(Player, BeginsNothingTwice) {
    Ear ear;
    const HornSchedule schedule{
        1, {countIn("a", Milliseconds{50}), countIn("b", Milliseconds{500})}};
    ear.player.take(schedule, kEpoch);
    for (int ms : {60, 120, 180, 400, 520, 800}) {
        ear.listen(kEpoch + Milliseconds{ms});
        ear.player.take(schedule, ear.now());
    }
    ear.listen(kEpoch + Milliseconds{1'500});
    expectSlots(ear.sounds(), {{50, 120}, {500, 120}});
}

TEST(Player, DropsACountInThatIsLateByMoreThan150Milliseconds) {
    for (const int late : {149, 150, 152, 400}) {
        Ear ear;
        ear.listen(kEpoch + Milliseconds{1'000});
        ear.player.take(HornSchedule{1, {countIn("a", Milliseconds{1'000 - late})}}, ear.now());
        ear.listen(kEpoch + Milliseconds{1'500});
        EXPECT_EQ(ear.sounds().size(), late <= 150 ? 1U : 0U) << late;
    }
}

TEST(Player, NeverDropsAnActNowAndPlaysOnlyTheLatestOfItsRepeats) {
    Ear ear;
    ear.listen(kEpoch + seconds{20});
    std::vector<HornSlot> soundSlots{actNow(0, Milliseconds{0})};
    for (int round = 1; round < 50; ++round) {
        soundSlots.push_back(actNow(round, Milliseconds{850 + (round - 1) * 500}));
    }
    ear.player.take(HornSchedule{1, soundSlots}, ear.now());
    ear.beatUntil(kEpoch + Milliseconds{22'100});
    // The first at once; then, with their pause, repeats in the schedule's own rhythm.
    expectSlots(ear.sounds(), {{20'000, 600}, {20'850, 250}, {21'350, 250}, {21'850, 250}});
}

TEST(Player, KeepsThePulsesOfALateRoundApart) {
    Ear ear;
    ear.listen(kEpoch + seconds{1});
    ear.player.take(
        HornSchedule{
            1,
            {pulse(3, 0, Milliseconds{200}), pulse(3, 1, Milliseconds{550}),
             pulse(3, 2, Milliseconds{900})}},
        ear.now());
    ear.listen(kEpoch + Milliseconds{2'500});
    expectSlots(ear.sounds(), {{1'000, 180}, {1'350, 180}, {1'700, 180}});
}

TEST(Player, DropsALateRoundOfGetReadyWhole) {
    Ear ear;
    ear.listen(kEpoch + seconds{4});
    ear.player.take(
        HornSchedule{1, {pulse(2, 0, Milliseconds{900}), pulse(2, 1, Milliseconds{1'250})}},
        ear.now());
    ear.listen(kEpoch + seconds{6});
    EXPECT_TRUE(ear.sounds().empty());
}

TEST(Player, LetsNothingLateBeginIntoAHigherOnset) {
    Ear ear;
    ear.listen(kEpoch + seconds{1});
    // 180 ms of a pulse don't fit before the act now that is due in 100.
    ear.player.take(
        HornSchedule{1, {pulse(1, 0, Milliseconds{500}), actNow(0, Milliseconds{1'100})}},
        ear.now());
    ear.listen(kEpoch + Milliseconds{2'500});
    expectSlots(ear.sounds(), {{1'100, 780}}); // 600, and the pulse right after
}

TEST(Player, SlipsWithItsDeviceAndMissesNothing) {
    Ear ear;
    ear.player.take(
        HornSchedule{1, {actNow(0, Milliseconds{500}), countIn("z", Milliseconds{2'000})}}, kEpoch);
    ear.listen(kEpoch + Milliseconds{400});
    ear.slip(Milliseconds{400}); // 500 has passed when the next frame is heard
    ear.player.take(HornBeat{}, kEpoch + Milliseconds{800});
    ear.listen(kEpoch + Milliseconds{1'900});
    expectSlots(ear.sounds(), {{400, 600}, {1'600, 120}});
}

TEST(Player, TellsWhatWasHeardOnceItIsOver) {
    Ear ear;
    ear.player.take(HornSchedule{1, {countIn("a", Milliseconds{100})}}, kEpoch);
    ear.listen(kEpoch + Milliseconds{300});
    EXPECT_TRUE(ear.player.takeHeard(kEpoch + Milliseconds{219}).empty());
    const auto heard = ear.player.takeHeard(kEpoch + Milliseconds{221});
    ASSERT_EQ(heard.size(), 1U);
    EXPECT_EQ(heard[0], (HornHeard{"a", kEpoch + Milliseconds{100}}));
    EXPECT_TRUE(ear.player.takeHeard(kEpoch + seconds{9}).empty());
}

TEST(Watchdog, SoundsTwoSecondsAfterTheLastBeatAndStopsWithTheNext) {
    Ear ear;
    ear.player.take(HornSchedule{1, {countIn("later", seconds{50})}}, kEpoch);
    ear.beatUntil(kEpoch + seconds{5}); // the last beat at 4.75 s
    ear.listen(kEpoch + Milliseconds{6'749});
    EXPECT_TRUE(ear.sounds().empty());
    ear.listen(kEpoch + seconds{11});
    ear.player.take(HornBeat{}, ear.now());
    ear.listen(kEpoch + seconds{12});
    // Four tones of 300 ms, every two seconds; the last one that had begun is played whole.
    expectSlots(ear.sounds(), {{6'750, 1'200}, {8'750, 1'200}, {10'750, 300}});
}

TEST(Watchdog, PlaysOnWhatIsScheduled) {
    Ear ear;
    ear.player.take(
        HornSchedule{1, {countIn("a", Milliseconds{2'500}), actNow(0, Milliseconds{4'300})}},
        kEpoch);
    ear.listen(kEpoch + Milliseconds{5'000});
    const auto heard = ear.sounds();
    // Trouble from 2,000, a tone of it held back so that the count-in comes at 2,500.
    expectSlots(heard, {{2'000, 300}, {2'500, 1'020}, {4'000, 1'000}});
    EXPECT_TRUE(std::any_of(heard.begin(), heard.end(), [](const Stretch& stretch) {
        return stretch.from / kFramesPerMilli == 2'500;
    }));
}

TEST(Watchdog, StopsAfterAMinute) {
    Ear ear(4'800);
    ear.player.take(
        HornSchedule{1, {countIn("a", seconds{50}), countIn("b", seconds{90})}}, kEpoch);
    ear.listen(kEpoch + seconds{120});
    const auto heard = ear.sounds();
    ASSERT_GT(heard.size(), 29U);
    EXPECT_NEAR(static_cast<double>(heard.front().from), 2'000.0 * kFramesPerMilli, 3);
    EXPECT_LE(heard.back().from + heard.back().length, 62'300 * kFramesPerMilli);
    EXPECT_GE(heard.back().from + heard.back().length, 61'000 * kFramesPerMilli);
}

TEST(Watchdog, SoundsAtOnceWhenTheInputEndsWithoutABye) {
    Ear ear;
    ear.player.take(HornSchedule{1, {countIn("a", seconds{50})}}, kEpoch);
    ear.beatUntil(kEpoch + seconds{1});
    ear.player.inputEnded(ear.now());
    EXPECT_FALSE(ear.player.isFinished(ear.now()));
    ear.listen(kEpoch + seconds{3});
    expectSlots(ear.sounds(), {{1'000, 1'200}});
    EXPECT_FALSE(ear.player.isFinished(kEpoch + seconds{60}));
    ear.listen(kEpoch + seconds{62});
    (void)ear.player.takeHeard(kEpoch + seconds{70});
    EXPECT_TRUE(ear.player.isFinished(kEpoch + seconds{62}));
}

TEST(Watchdog, IsSilentAfterAByeAndWithoutASchedule) {
    for (const bool bye : {true, false}) {
        Ear ear;
        ear.player.take(HornSchedule{1, {countIn("a", seconds{5})}}, kEpoch);
        if (bye) {
            ear.player.take(HornBye{}, kEpoch + Milliseconds{10});
        } else {
            ear.player.take(HornSchedule{2, {}}, kEpoch + Milliseconds{10});
        }
        ear.player.inputEnded(kEpoch + Milliseconds{20});
        EXPECT_TRUE(ear.player.isFinished(kEpoch + Milliseconds{20}));
        ear.listen(kEpoch + seconds{10});
        EXPECT_TRUE(ear.sounds().empty()) << bye;
    }
}

// For the thread sanitizer: lines come while sound is made.
TEST(Player, TakesLinesWhileItPlays) {
    Ear ear(480);
    std::thread reader([&] {
        for (int i = 0; i < 2'000; ++i) {
            ear.player.take(
                HornSchedule{i, {countIn("n" + std::to_string(i), Milliseconds{i * 10})}},
                kEpoch + Milliseconds{i * 10});
            (void)ear.player.takeHeard(kEpoch + Milliseconds{i * 10});
        }
        ear.player.take(HornSchedule{1, {countIn("end", seconds{30})}}, kEpoch + seconds{29});
    });
    ear.listen(kEpoch + seconds{20});
    reader.join();
    ear.listen(kEpoch + seconds{31});
    const auto heard = ear.sounds();
    ASSERT_FALSE(heard.empty());
    EXPECT_NEAR(static_cast<double>(heard.back().from), 30'000.0 * kFramesPerMilli, 3);
}
