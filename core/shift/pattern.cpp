#include "core/shift/pattern.h"

#include <algorithm>

namespace seamclock {

namespace {

constexpr Milliseconds kPulse{180}; // get ready, reminders
constexpr Milliseconds kPulsePeriod{350};
constexpr Milliseconds kTroubleTone{300};
constexpr int kTroubleTones = 4;
// Common practice, no source: nobody is late by seconds for a bead or a re-check.
constexpr Milliseconds kReminderPeriod{30'000};

using Notes = std::array<std::int64_t, 3>; // [mHz]

// D5, A5, D6, then each three semitones up.
constexpr std::array<Notes, kMostBenches> kBenchNotes{{
    {587'330, 880'000, 1'174'659},
    {698'456, 1'046'502, 1'396'913},
    {830'609, 1'244'508, 1'661'219},
    {987'767, 1'479'978, 1'975'533},
}};
constexpr std::array<std::array<std::int64_t, 2>, 2> kTroubleNotes{{
    {554'365, 1'108'731},
    {739'989, 1'479'978},
}};

std::vector<std::int64_t> partials(Sound sound, int place, int position) {
    const auto [f1, f2, f3] = kBenchNotes[static_cast<std::size_t>(std::max(place, 1) - 1)];
    switch (sound) {
    case Sound::ProgramLost:
    case Sound::Trouble: {
        const auto& pair = kTroubleNotes[static_cast<std::size_t>(position % 2)];
        return {pair.begin(), pair.end()};
    }
    case Sound::Overrun:
    case Sound::BuildUpLate:
    case Sound::CountIn:
    case Sound::GetReady:
    case Sound::Reminder:
        return {f1, f2};
    case Sound::ActNow:
        return {f1, f2, f3};
    case Sound::Done:
        return position == 0 ? std::vector{f2, f3} : std::vector{f1, f2};
    case Sound::Tick:
        return {f2};
    }
    return {};
}

int level(Sound sound) {
    switch (sound) {
    case Sound::Overrun:
    case Sound::BuildUpLate:
        return 3;
    case Sound::Tick:
        return -8;
    case Sound::ProgramLost:
    case Sound::ActNow:
    case Sound::CountIn:
    case Sound::GetReady:
    case Sound::Trouble:
    case Sound::Reminder:
    case Sound::Done:
        return 0;
    }
    return 0;
}

} // namespace

std::string_view toString(Sound sound) {
    switch (sound) {
    case Sound::ProgramLost:
        return "program_lost";
    case Sound::Overrun:
        return "overrun";
    case Sound::ActNow:
        return "act_now";
    case Sound::BuildUpLate:
        return "build_up_late";
    case Sound::CountIn:
        return "count_in";
    case Sound::GetReady:
        return "get_ready";
    case Sound::Trouble:
        return "trouble";
    case Sound::Reminder:
        return "reminder";
    case Sound::Done:
        return "done";
    case Sound::Tick:
        return "tick";
    }
    return "";
}

std::optional<Sound> soundOf(CueKind kind) {
    switch (kind) {
    case CueKind::ProgramLost:
        return Sound::ProgramLost;
    case CueKind::ChangeoverOverrun:
        return Sound::Overrun;
    case CueKind::ActNow:
        return Sound::ActNow;
    case CueKind::BuildUpLate:
        return Sound::BuildUpLate;
    case CueKind::CountIn:
        return Sound::CountIn;
    case CueKind::GetReady:
        return Sound::GetReady;
    case CueKind::RowNotSaved:
    case CueKind::ClockJumped:
    case CueKind::BatteryLow:
        return Sound::Trouble;
    case CueKind::NoSound:
        return std::nullopt;
    case CueKind::AlignmentLate:
    case CueKind::RecheckDue:
        return Sound::Reminder;
    case CueKind::CoolingDone:
        return Sound::Done;
    }
    return std::nullopt;
}

int slotCount(Sound sound, int place, int round) {
    switch (sound) {
    case Sound::ProgramLost:
    case Sound::Trouble:
        return kTroubleTones;
    case Sound::Overrun:
    case Sound::ActNow:
    case Sound::BuildUpLate:
        return 1;
    case Sound::CountIn:
    case Sound::Tick:
        return round == 0 ? 1 : 0;
    case Sound::GetReady:
        return round < 2 ? std::max(place, 1) : 0;
    case Sound::Reminder:
    case Sound::Done:
        return 2;
    }
    return 0;
}

SlotTime slotTime(Sound sound, int, int round, int position) {
    switch (sound) {
    case Sound::ProgramLost:
    case Sound::Trouble:
        return {kTroubleTone * position, kTroubleTone};
    case Sound::Overrun:
    case Sound::BuildUpLate:
        return {Milliseconds{0}, Milliseconds{350}};
    case Sound::ActNow:
        return {Milliseconds{0}, Milliseconds{round == 0 ? 600 : 250}};
    case Sound::CountIn:
        return {Milliseconds{0}, Milliseconds{120}};
    case Sound::GetReady:
    case Sound::Reminder:
        return {kPulsePeriod * position, kPulse};
    case Sound::Done:
        return position == 0 ? SlotTime{Milliseconds{0}, Milliseconds{300}}
                             : SlotTime{Milliseconds{300}, Milliseconds{500}};
    case Sound::Tick:
        return {Milliseconds{0}, Milliseconds{50}};
    }
    return {};
}

Milliseconds roundLength(Sound sound, int place, int round) {
    const int count = slotCount(sound, place, round);
    if (count == 0) {
        return Milliseconds{0};
    }
    const SlotTime last = slotTime(sound, place, round, count - 1);
    return last.offset + last.length;
}

std::optional<Milliseconds> pauseAfter(Sound sound, int place, int round) {
    const auto restOf = [&](Milliseconds period) {
        return period - roundLength(sound, place, round);
    };
    switch (sound) {
    case Sound::ProgramLost:
        return restOf(Milliseconds{2'000});
    case Sound::Trouble:
        return restOf(Milliseconds{5'000});
    case Sound::Overrun:
    case Sound::BuildUpLate:
        return Milliseconds{150};
    case Sound::ActNow:
        return Milliseconds{250};
    case Sound::GetReady:
        return round == 0 ? std::optional(Milliseconds{1'000}) : std::nullopt;
    case Sound::Reminder:
        return restOf(kReminderPeriod);
    case Sound::Done:
        return restOf(Milliseconds{round < 3 ? 30'000 : 120'000});
    case Sound::CountIn:
    case Sound::Tick:
        return std::nullopt;
    }
    return std::nullopt;
}

Milliseconds shortestFirst(Sound sound, int place) {
    const Milliseconds first = slotTime(sound, place, 0, 0).length;
    return slotCount(sound, place, 1) == 0 ? first
                                           : std::min(first, slotTime(sound, place, 1, 0).length);
}

std::vector<PatternSlot> pattern(Sound sound, int place, int round) {
    const int count = slotCount(sound, place, round);
    std::vector<PatternSlot> slots(static_cast<std::size_t>(count));
    for (int position = 0; position < count; ++position) {
        slots[static_cast<std::size_t>(position)] = {
            slotTime(sound, place, round, position), partials(sound, place, position),
            sound == Sound::Overrun ? 5 : 0, level(sound)};
    }
    return slots;
}

} // namespace seamclock
