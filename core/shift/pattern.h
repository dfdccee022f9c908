// What each cue sounds like, as values: which partials, how long, how loud, in which rhythm. No
// audio here; the sound process renders it and voice.h decides when. A pattern comes in rounds (the
// first sounding, then its repeats), a round in slots of at most 600 ms, between which another
// bench may be heard: get ready is one slot a pulse, so that its pulses fit between another bench's
// count-in. Bench 1 to 4 differ by pitch, three semitones each; pitch is only a help, the count of
// pulses in get ready names the bench. Place 0 is the station itself and sounds like bench 1.
//
// Partials are the notes of equal temperament at 440 Hz (ISO 16) that the design rounds to whole
// hertz (587, 880, 1175; 554, 1109, 740, 1480), so that bench 4 comes out at its 988, 1480 and
// 1976.
#pragma once

#include "core/base/instant.h"
#include "core/weld/cues.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace seamclock {

enum class Sound {
    ProgramLost, // trouble, every 2 s
    Overrun,
    ActNow,
    BuildUpLate, // overrun without its rise
    CountIn,
    GetReady,
    Trouble,
    Reminder, // alignment late, re-check due
    Done,
    Tick // each second of changeover
};

inline constexpr std::array kAllSounds{
    Sound::ProgramLost, Sound::Overrun, Sound::ActNow,   Sound::BuildUpLate, Sound::CountIn,
    Sound::GetReady,    Sound::Trouble, Sound::Reminder, Sound::Done,        Sound::Tick};

std::string_view toString(Sound sound); // "get_ready"
/// Absent: the cue is for the screen only.
std::optional<Sound> soundOf(CueKind kind);

inline constexpr Milliseconds kLongestSlot{600};
inline constexpr Milliseconds kRise{10}; // of a slot's envelope, within its length
inline constexpr Milliseconds kFall{20};
inline constexpr int kMostBenches = 4;

/// When a slot of a round sounds: `offset` from the round's start, were it heard alone.
struct SlotTime {
    Milliseconds offset{0};
    Milliseconds length{0};

    bool operator==(const SlotTime&) const = default;
};

struct PatternSlot {
    SlotTime time;
    std::vector<std::int64_t> partials; // [mHz], at the start
    int riseSemitones = 0;              // how far every partial has risen at the end
    int level = 0;                      // [dB] against the level set for this bench

    bool operator==(const PatternSlot&) const = default;
};

/// `place` 0 to 4, `round` from 0; a round that the sound doesn't have is empty.
std::vector<PatternSlot> pattern(Sound sound, int place, int round);

int slotCount(Sound sound, int place, int round);
/// `position` from 0, below slotCount.
SlotTime slotTime(Sound sound, int place, int round, int position);
/// From the first slot's start to the last one's end.
Milliseconds roundLength(Sound sound, int place, int round);
/// The silence between a round's end and the next round; absent: it was the last.
std::optional<Milliseconds> pauseAfter(Sound sound, int place, int round);
/// What a first slot may be cut down to where others would wait too long for its whole length
/// (voice.h). Only act now is longer than its own repeats.
Milliseconds shortestFirst(Sound sound, int place);

} // namespace seamclock
