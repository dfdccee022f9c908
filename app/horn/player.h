// The horn's one voice: which slot begins at which sample, and what a horn does whose program no
// longer answers. It plans nothing: the schedule says what is due when. It only settles what the
// schedule couldn't know. A slot begins at its sample when nothing else sounds; one that has begun
// is played whole, whatever a new schedule says, and never begun again; one that is late comes as
// soon as the voice is free, first soundings before repeats, then rank, unless it is too late to be
// of use; the pulses of one round keep their distance. A watchdog: without a beat for 2 s, or at
// the end of input without a bye, while a schedule stands, it plays on and adds program_lost, for
// at most 60 s.
//
// Two threads: one hands it lines, one asks it for sound. Both may call at any time.
#pragma once

#include "app/horn/protocol.h"
#include "app/horn/stream_time.h"

#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <tuple>
#include <unordered_map>
#include <vector>

namespace seamclock {

inline constexpr Milliseconds kBeatMissedAfter{2'000};
inline constexpr Milliseconds kWatchdogFor{60'000};

class Player {
public:
    /// The reader's side. `now`: the boot clock. A bye silences everything but the slot that
    /// sounds.
    void take(const ToHorn& message, Milliseconds now);
    /// The input has ended without another word.
    void inputEnded(Milliseconds now);

    /// The sound's side: writes `frames` samples, the first of which is heard at `firstHeard` on
    /// the boot clock. Spans must follow each other; time may jump ahead between them.
    void fill(std::int16_t* out, std::size_t frames, Nanoseconds firstHeard);
    /// The slots that have been played whole and heard by `now`, once each.
    std::vector<HornHeard> takeHeard(Milliseconds now);

    /// Whether nothing sounds, or will, and nobody is left to ask for more: after a bye, or once a
    /// horn without a program has done its minute.
    bool isFinished(Milliseconds now) const;

private:
    using RoundKey = std::tuple<Sound, int, int>; // sound, place, round
    struct Round {
        Milliseconds start{0}; // of its slot that began last, by the schedule
        Nanoseconds late{0};   // by how much it began later
    };
    struct Pause {
        int round = 0; // the one before
        Nanoseconds until{0};
    };
    struct Waiting {
        HornSlot slot;
        Nanoseconds due{0}; // its start, moved with the round it belongs to
    };
    struct Begun {
        HornSlot slot;
        std::vector<std::int16_t> samples;
        std::size_t at = 0;
        Nanoseconds heard{0};
    };

    void replace(const HornSchedule& schedule);
    std::optional<Milliseconds> lostAt() const;
    bool watchIsOn(Nanoseconds at) const;
    bool isMute(Nanoseconds at) const;
    void watch(Nanoseconds at);
    bool isStale(const Waiting& waiting, Nanoseconds at) const;
    void dropLate(Nanoseconds at);
    std::optional<std::size_t> choose(Nanoseconds at) const;
    bool makesWay(const Waiting& candidate, Nanoseconds at) const;
    bool begin(Nanoseconds at);
    Nanoseconds nextDue(Nanoseconds at) const;
    static bool belongs(const HornSlot& slot, const Round& round);
    Nanoseconds dueOf(const HornSlot& slot) const;

    mutable std::mutex m_mutex;
    std::vector<Waiting> m_waiting; // by start
    std::optional<Begun> m_sounding;
    std::unordered_map<std::string, Milliseconds> m_begun; // id to end
    std::map<RoundKey, Round> m_late;
    std::map<std::pair<Sound, int>, Pause> m_pauses; // by sound and place
    std::vector<HornHeard> m_played;                 // not yet reported
    std::vector<Milliseconds> m_playedEnds;
    bool m_stands = false; // a schedule that is not empty
    bool m_bye = false;
    std::optional<Milliseconds> m_beat;
    std::optional<Milliseconds> m_ended;    // the input
    std::optional<Nanoseconds> m_lostRound; // when the last round of program_lost began
    int m_lostPosition = 0;
    std::int64_t m_lostCount = 0;
};

} // namespace seamclock
