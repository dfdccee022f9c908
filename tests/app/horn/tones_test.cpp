#include "app/horn/tones.h"
#include "tests/app/horn/goertzel.h"

#include <algorithm>
#include <cstdlib>
#include <gtest/gtest.h>

using namespace seamclock;
using namespace seamclock::test;

namespace {

PatternSlot slotOf(Sound sound, int place, int round, int position) {
    return pattern(sound, place, round).at(static_cast<std::size_t>(position));
}

double strength(const std::vector<std::int16_t>& pcm, double hertz, int fromMs, int lengthMs) {
    return strengthAt(
        hertz, pcm.data() + fromMs * kFramesPerMilli,
        static_cast<std::size_t>(lengthMs * kFramesPerMilli));
}

// ISO 16: A4 is 440 Hz; each semitone of equal temperament is a factor of 2^(1/12).
double note(int semitonesAboveA4) {
    return 440 * std::pow(2, semitonesAboveA4 / 12.0);
}

int loudest(const std::vector<std::int16_t>& pcm, std::size_t from, std::size_t to) {
    int most = 0;
    for (std::size_t i = from; i < to; ++i) {
        most = std::max(most, std::abs(static_cast<int>(pcm[i])));
    }
    return most;
}

constexpr int kD5 = 5; // semitones above A4
constexpr int kA5 = 12;
constexpr int kD6 = 17;
constexpr double kHeard = 0.9 * kPartialStrength; // what a Hann window estimates it to
constexpr double kAbsent = 0.02;

} // namespace

TEST(Tones, HaveTheNotesOfEqualTemperamentForEachBench) {
    for (int place = 1; place <= kMostBenches; ++place) {
        const int up = 3 * (place - 1); // benches are three semitones apart
        const auto pcm = render(slotOf(Sound::ActNow, place, 0, 0));
        for (const int semitones : {kD5, kA5, kD6}) {
            EXPECT_GT(strength(pcm, note(semitones + up), 20, 550), kHeard) << place;
            EXPECT_LT(strength(pcm, note(semitones + up + 1), 20, 550), kAbsent) << place;
            EXPECT_LT(strength(pcm, note(semitones + up - 1), 20, 550), kAbsent) << place;
        }
        const auto ready = render(slotOf(Sound::GetReady, place, 0, 0));
        EXPECT_GT(strength(ready, note(kD5 + up), 20, 130), kHeard) << place;
        EXPECT_GT(strength(ready, note(kA5 + up), 20, 130), kHeard) << place;
        EXPECT_LT(strength(ready, note(kD6 + up), 20, 130), kAbsent) << place;
    }
}

TEST(Tones, OfTroubleAlternateBetweenTwoPairs) {
    // 554 + 1109 and 740 + 1480 Hz: C#5, C#6, F#5, F#6.
    for (int position = 0; position < 4; ++position) {
        const auto pcm = render(slotOf(Sound::Trouble, 0, 0, position));
        const bool low = position % 2 == 0;
        for (const int semitones : {4, 16}) {
            const double heard = strength(pcm, note(semitones), 20, 250);
            EXPECT_EQ(heard > kHeard, low) << position;
            EXPECT_EQ(heard < kAbsent, !low) << position;
        }
        for (const int semitones : {9, 21}) {
            EXPECT_EQ(strength(pcm, note(semitones), 20, 250) > kHeard, !low) << position;
        }
    }
}

TEST(Tones, OfAnOverrunRiseByFiveSemitonesAndAreThreeDecibelsUp) {
    const auto pcm = render(slotOf(Sound::Overrun, 1, 0, 0));
    ASSERT_EQ(pcm.size(), 350U * kFramesPerMilli);
    // Even in pitch over time: 40 ms around the middle are 2.5 semitones up, and the ends are near
    // their notes. Over 40 ms it moves by 0.57 semitones, within the window's width (50 Hz at 880).
    for (const int start : {kD5, kA5}) {
        const double middle = note(start) * std::pow(2, 2.5 / 12);
        const double there = strength(pcm, middle, 155, 40);
        EXPECT_GT(there, kHeard * 1.3) << start; // 3 dB is a factor of 1.41
        EXPECT_LT(there, kPartialStrength * 1.5) << start;
        EXPECT_GT(strength(pcm, note(start), 5, 40), 2 * strength(pcm, note(start + 5), 5, 40));
        EXPECT_GT(strength(pcm, note(start + 5), 305, 40), 2 * strength(pcm, note(start), 305, 40));
    }
    const auto flat = render(slotOf(Sound::BuildUpLate, 1, 0, 0));
    EXPECT_GT(strength(flat, note(kD5), 20, 300), kHeard * 1.41);
}

TEST(Tones, RiseInTenAndFallInTwentyMilliseconds) {
    // One partial of 880 Hz: its peaks follow the envelope, 1.1 ms apart.
    const PatternSlot slot{{Milliseconds{0}, Milliseconds{200}}, {880'000}, 0, 0};
    const auto pcm = render(slot);
    ASSERT_EQ(pcm.size(), 200U * kFramesPerMilli);
    const auto peak = [&](int fromMs, int toMs) {
        return loudest(
            pcm, static_cast<std::size_t>(fromMs * kFramesPerMilli),
            static_cast<std::size_t>(toMs * kFramesPerMilli));
    };
    const int full = static_cast<int>(kPartialStrength * 32'767);
    EXPECT_EQ(pcm.front(), 0);
    EXPECT_LT(peak(0, 2), full / 8);
    EXPECT_NEAR(peak(4, 6), full / 2, full / 6); // half way up
    EXPECT_LT(peak(7, 9), full * 98 / 100);
    EXPECT_NEAR(peak(10, 12), full, full / 50);
    EXPECT_NEAR(peak(178, 180), full, full / 50);
    EXPECT_NEAR(peak(189, 191), full / 2, full / 6);
    EXPECT_LT(peak(198, 200), full / 30);
}

TEST(Tones, NeverClip) {
    for (const Sound sound : kAllSounds) {
        for (int place = 0; place <= kMostBenches; ++place) {
            for (const PatternSlot& slot : pattern(sound, place, 0)) {
                const auto pcm = render(slot);
                EXPECT_EQ(
                    pcm.size(),
                    static_cast<std::size_t>(slot.time.length.count()) * kFramesPerMilli);
                const int most = loudest(pcm, 0, pcm.size());
                EXPECT_LT(most, 32'767) << toString(sound) << place;
                EXPECT_GT(most, 2'000) << toString(sound) << place;
            }
        }
    }
}
