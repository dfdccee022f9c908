// The lines between the program and its horn, read and written in one place for both ends. In:
// `schedule GEN [id boot_ms rank bench pattern]…` (the whole of what is to sound; it replaces what
// came before), `beat`, `bye`. Out: `alive boot_ms lead_ms underruns`, `heard id boot_ms`,
// `trouble code`. A pattern names one slot, `get_ready/0/1/180`: sound, round, position, length in
// ms; what that sounds like is core/shift's. Whatever comes in is held against its allowed range
// here, so that nothing behind this file meets a slot that can't be rendered.
#pragma once

#include "core/base/result.h"
#include "core/shift/voice.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace seamclock {

/// Beyond these a line is refused: an hour of the densest sound is a fifth of it.
inline constexpr std::size_t kMostSlots = 40'000;
inline constexpr std::size_t kLongestLine = 8'000'000; // bytes
inline constexpr std::size_t kLongestSlotId = 400;     // bytes

/// One slot to sound: `start` on the boot clock. The same id is the same slot, however often it is
/// sent.
struct HornSlot {
    std::string id;
    Milliseconds start{0};
    int rank = 0;
    int place = 0;
    Sound sound = Sound::GetReady;
    int round = 0;
    int position = 0;
    Milliseconds length{0};

    Milliseconds end() const { return start + length; }
    bool isFirst() const { return round == 0 && position == 0; }
    bool operator==(const HornSlot&) const = default;
};

struct HornSchedule {
    std::int64_t generation = 0;
    std::vector<HornSlot> soundSlots;

    bool operator==(const HornSchedule&) const = default;
};
struct HornBeat {
    bool operator==(const HornBeat&) const = default;
};
struct HornBye {
    bool operator==(const HornBye&) const = default;
};
using ToHorn = std::variant<HornSchedule, HornBeat, HornBye>;

struct HornAlive {
    Milliseconds boot{0};
    Milliseconds lead{0}; // from being asked for a frame to its being heard
    std::int64_t underruns = 0;

    bool operator==(const HornAlive&) const = default;
};
struct HornHeard {
    std::string id;
    Milliseconds boot{0}; // when it began; told when it is over

    bool operator==(const HornHeard&) const = default;
};
struct HornTrouble {
    std::string code;

    bool operator==(const HornTrouble&) const = default;
};
using FromHorn = std::variant<HornAlive, HornHeard, HornTrouble>;

/// Malformed or OutOfRange, with the word that is wrong and what is allowed.
Result<ToHorn> readToHorn(std::string_view line);
Result<FromHorn> readFromHorn(std::string_view line);

/// One line, without its newline.
std::string lineOf(const ToHorn& message);
std::string lineOf(const FromHorn& message);

HornSlot slotOf(const Sounding& sounding);
PatternSlot toneOf(const HornSlot& slot);

} // namespace seamclock
