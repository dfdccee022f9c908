// Frequencies are checked against ISO 16:1975 (A is 440 Hz) in equal temperament, and against the
// whole hertz of the project's own page of tones; bands and pulse rates against ISO 7731 (at least
// two parts between 500 and 2500 Hz, pulsed at 0.5 to 4 Hz) as that page quotes it.
#include "core/shift/pattern.h"

#include <cmath>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

// [mHz], a note so many semitones above A4.
std::int64_t note(int semitones) {
    return std::llround(440'000.0 * std::pow(2.0, semitones / 12.0));
}

std::vector<Milliseconds> starts(Sound sound, int place, int round) {
    std::vector<Milliseconds> out;
    for (const PatternSlot& slot : pattern(sound, place, round)) {
        out.push_back(slot.time.offset);
    }
    return out;
}

std::vector<Milliseconds> ms(const std::vector<int>& values) {
    std::vector<Milliseconds> out;
    for (const int value : values) {
        out.emplace_back(value);
    }
    return out;
}

TEST(Pattern, PartialsAreNotesOfEqualTemperamentThreeSemitonesApartFromBenchToBench) {
    // f1, f2, f3 are D5, A5, D6: 5, 12 and 17 semitones above A4.
    for (int place = 1; place <= 4; ++place) {
        const int up = 3 * (place - 1);
        const std::vector<std::int64_t> expected{note(5 + up), note(12 + up), note(17 + up)};
        EXPECT_EQ(pattern(Sound::ActNow, place, 0)[0].partials, expected) << place;
    }
}

TEST(Pattern, PartialsRoundToTheWholeHertzOfThePageOfTones) {
    const auto hertz = [](Sound sound, int place, int position) {
        std::vector<std::int64_t> out;
        const auto slots = pattern(sound, place, 0);
        for (const std::int64_t partial : slots[static_cast<std::size_t>(position)].partials) {
            out.push_back((partial + 500) / 1000);
        }
        return out;
    };
    EXPECT_EQ(hertz(Sound::ActNow, 1, 0), (std::vector<std::int64_t>{587, 880, 1175}));
    EXPECT_EQ(hertz(Sound::ActNow, 4, 0), (std::vector<std::int64_t>{988, 1480, 1976}));
    EXPECT_EQ(hertz(Sound::GetReady, 1, 0), (std::vector<std::int64_t>{587, 880}));
    EXPECT_EQ(hertz(Sound::CountIn, 1, 0), (std::vector<std::int64_t>{587, 880}));
    EXPECT_EQ(hertz(Sound::Tick, 1, 0), (std::vector<std::int64_t>{880}));
    EXPECT_EQ(hertz(Sound::Done, 1, 0), (std::vector<std::int64_t>{880, 1175}));
    EXPECT_EQ(hertz(Sound::Done, 1, 1), (std::vector<std::int64_t>{587, 880}));
    for (const int place : {0, 3}) { // no bench pitch
        EXPECT_EQ(hertz(Sound::Trouble, place, 0), (std::vector<std::int64_t>{554, 1109}));
        EXPECT_EQ(hertz(Sound::Trouble, place, 1), (std::vector<std::int64_t>{740, 1480}));
    }
}

TEST(Pattern, PitchFactorsAreThoseOfThePageOfTones) {
    const double factors[] = {1.0, 1.189, 1.414, 1.682};
    for (int place = 1; place <= 4; ++place) {
        for (std::size_t i = 0; i < 3; ++i) {
            const double base = static_cast<double>(pattern(Sound::ActNow, 1, 0)[0].partials[i]);
            const double here =
                static_cast<double>(pattern(Sound::ActNow, place, 0)[0].partials[i]);
            // The page gives three decimals.
            EXPECT_NEAR(here / base, factors[place - 1], 0.0005);
        }
    }
}

TEST(Pattern, EveryWarningHasTwoPartsBetween500And2500HertzAtBothEndsOfItsSlots) {
    for (const Sound sound : kAllSounds) {
        if (sound == Sound::Tick) {
            continue; // a help, not a warning
        }
        for (int place = 1; place <= 4; ++place) {
            for (const PatternSlot& slot : pattern(sound, place, 0)) {
                int within = 0;
                for (const std::int64_t partial : slot.partials) {
                    const double end =
                        static_cast<double>(partial) * std::pow(2.0, slot.riseSemitones / 12.0);
                    within += partial >= 500'000 && end <= 2'500'000.0 ? 1 : 0;
                }
                EXPECT_GE(within, 2) << toString(sound) << " at place " << place;
            }
        }
    }
}

TEST(Pattern, UrgentCuesPulseWithinHalfToFourHertz) {
    for (const Sound sound : {Sound::Overrun, Sound::ActNow, Sound::BuildUpLate}) {
        const Milliseconds period = roundLength(sound, 1, 1) + *pauseAfter(sound, 1, 1);
        EXPECT_EQ(period, Milliseconds{500}) << toString(sound); // 2 Hz
    }
    const Milliseconds pulses = slotTime(Sound::GetReady, 4, 0, 1).offset;
    EXPECT_GE(pulses, Milliseconds{250});
    EXPECT_LE(pulses, Milliseconds{2'000});
}

TEST(Pattern, NoSlotIsLongerThanSixHundredMilliseconds) {
    for (const Sound sound : kAllSounds) {
        for (int place = 0; place <= 4; ++place) {
            for (int round = 0; round < 6; ++round) {
                Milliseconds end{0};
                for (const PatternSlot& slot : pattern(sound, place, round)) {
                    EXPECT_GT(slot.time.length, kRise + kFall);
                    EXPECT_LE(slot.time.length, Milliseconds{600});
                    EXPECT_GE(slot.time.offset, end);
                    end = slot.time.offset + slot.time.length;
                }
                EXPECT_EQ(end, roundLength(sound, place, round));
            }
        }
    }
}

TEST(Pattern, GetReadyHasAsManyPulsesAsTheBenchsPlaceAndComesAgainOnce) {
    const std::vector<std::vector<int>> expected{{0}, {0, 350}, {0, 350, 700}, {0, 350, 700, 1050}};
    for (int place = 1; place <= 4; ++place) {
        for (const int round : {0, 1}) {
            EXPECT_EQ(
                starts(Sound::GetReady, place, round),
                ms(expected[static_cast<std::size_t>(place - 1)]));
            EXPECT_EQ(pattern(Sound::GetReady, place, round)[0].time.length, Milliseconds{180});
        }
        EXPECT_EQ(pauseAfter(Sound::GetReady, place, 0), Milliseconds{1'000});
        EXPECT_EQ(pauseAfter(Sound::GetReady, place, 1), std::nullopt);
        EXPECT_TRUE(pattern(Sound::GetReady, place, 2).empty());
    }
}

TEST(Pattern, CountInIsOnePulseAndNeverComesAgain) {
    EXPECT_EQ(starts(Sound::CountIn, 3, 0), ms({0}));
    EXPECT_EQ(roundLength(Sound::CountIn, 3, 0), Milliseconds{120});
    EXPECT_EQ(pauseAfter(Sound::CountIn, 3, 0), std::nullopt);
    EXPECT_TRUE(pattern(Sound::CountIn, 3, 1).empty());
}

TEST(Pattern, ActNowIsLongAtFirstThenQuarterSeconds) {
    EXPECT_EQ(roundLength(Sound::ActNow, 2, 0), Milliseconds{600});
    EXPECT_EQ(roundLength(Sound::ActNow, 2, 1), Milliseconds{250});
    EXPECT_EQ(roundLength(Sound::ActNow, 2, 7), Milliseconds{250});
    EXPECT_EQ(pauseAfter(Sound::ActNow, 2, 0), Milliseconds{250});
    EXPECT_EQ(shortestFirst(Sound::ActNow, 2), Milliseconds{250});
}

TEST(Pattern, OverrunRisesFiveSemitonesAndIsThreeDecibelsLouderBuildUpLateDoesNotRise) {
    PatternSlot overrun = pattern(Sound::Overrun, 2, 0)[0];
    EXPECT_EQ(overrun.time.length, Milliseconds{350});
    EXPECT_EQ(overrun.riseSemitones, 5);
    EXPECT_EQ(overrun.level, 3);
    overrun.riseSemitones = 0;
    EXPECT_EQ(pattern(Sound::BuildUpLate, 2, 0)[0], overrun);
}

TEST(Pattern, DoneFallsAndComesAtZeroThirtySixtyNinetySecondsThenEachTwoMinutes) {
    EXPECT_EQ(starts(Sound::Done, 1, 0), ms({0, 300}));
    EXPECT_EQ(roundLength(Sound::Done, 1, 0), Milliseconds{800});
    std::vector<Milliseconds> at{Milliseconds{0}};
    for (int round = 0; round < 5; ++round) {
        at.push_back(
            at.back() + roundLength(Sound::Done, 1, round) + *pauseAfter(Sound::Done, 1, round));
    }
    EXPECT_EQ(at, ms({0, 30'000, 60'000, 90'000, 210'000, 330'000}));
}

TEST(Pattern, TroubleIsTwoTonesTwiceEveryFiveSecondsAndEveryTwoForALostProgram) {
    for (const Sound sound : {Sound::Trouble, Sound::ProgramLost}) {
        EXPECT_EQ(starts(sound, 0, 0), ms({0, 300, 600, 900}));
        EXPECT_EQ(pattern(sound, 0, 0)[3].time.length, Milliseconds{300});
        EXPECT_EQ(pattern(sound, 0, 2), pattern(sound, 0, 0));
        EXPECT_EQ(pattern(sound, 0, 0), pattern(Sound::Trouble, 0, 0));
    }
    EXPECT_EQ(
        roundLength(Sound::Trouble, 0, 0) + *pauseAfter(Sound::Trouble, 0, 0), Milliseconds{5'000});
    EXPECT_EQ(
        roundLength(Sound::ProgramLost, 0, 0) + *pauseAfter(Sound::ProgramLost, 0, 0),
        Milliseconds{2'000});
}

TEST(Pattern, RemindersAreTwoPulsesAndTheTickIsShortAndSoft) {
    EXPECT_EQ(starts(Sound::Reminder, 4, 0), ms({0, 350}));
    EXPECT_EQ(pattern(Sound::Reminder, 4, 0)[1].time.length, Milliseconds{180});
    EXPECT_EQ(
        pattern(Sound::Reminder, 4, 0)[0].partials, pattern(Sound::GetReady, 4, 0)[0].partials);
    EXPECT_EQ(roundLength(Sound::Tick, 1, 0), Milliseconds{50});
    EXPECT_EQ(pattern(Sound::Tick, 1, 0)[0].level, -8);
}

TEST(Pattern, EveryCueButTheScreensOwnHasASound) {
    EXPECT_EQ(soundOf(CueKind::NoSound), std::nullopt);
    const std::vector<std::pair<CueKind, Sound>> table{
        {CueKind::ProgramLost, Sound::ProgramLost}, {CueKind::ChangeoverOverrun, Sound::Overrun},
        {CueKind::ActNow, Sound::ActNow},           {CueKind::BuildUpLate, Sound::BuildUpLate},
        {CueKind::CountIn, Sound::CountIn},         {CueKind::GetReady, Sound::GetReady},
        {CueKind::RowNotSaved, Sound::Trouble},     {CueKind::ClockJumped, Sound::Trouble},
        {CueKind::BatteryLow, Sound::Trouble},      {CueKind::AlignmentLate, Sound::Reminder},
        {CueKind::RecheckDue, Sound::Reminder},     {CueKind::CoolingDone, Sound::Done},
    };
    for (const auto& [kind, sound] : table) {
        EXPECT_EQ(soundOf(kind), sound) << toString(kind);
    }
}

TEST(Pattern, ThreeEqualHalfSecondPulsesBelongToEvacuationAndAreNeverUsed) {
    // ISO 8201: three pulses of 0.5 s, 0.5 s apart, then 1.5 s of silence.
    for (const Sound sound : kAllSounds) {
        for (int place = 1; place <= 4; ++place) {
            const auto slots = pattern(sound, place, 0);
            const bool three = slots.size() == 3 && slots[0].time.length == slots[2].time.length;
            EXPECT_FALSE(three && slots[0].time.length > Milliseconds{400}) << toString(sound);
        }
    }
}

// The design's own numbers: a rise of 10 ms and a fall of 20 ms, no slot above 600 ms, four
// pitches.
TEST(Pattern, ItsBoundsAreTheDesigns) {
    EXPECT_EQ(kRise, Milliseconds{10});
    EXPECT_EQ(kFall, Milliseconds{20});
    EXPECT_EQ(kLongestSlot, Milliseconds{600});
    EXPECT_EQ(kMostBenches, 4);
}

} // namespace
} // namespace seamclock
