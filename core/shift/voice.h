// One voice for all benches: which slot of which cue sounds when. A pure function of the requests,
// of what has sounded already and of a span of time, so that horn, rehearsal and tests get the same
// answer, and a span can be worked out in pieces or again. It reads no clock and makes no sound.
//
// The law (contracts §6): a sounding slot is never cut; first soundings before repeats, then rank,
// then onset, then bench; a slot starts only if it ends before the next scheduled onset of a higher
// rank, a repeat only if it delays no scheduled first sounding of ranks 2 to 6 at all. The claim:
// the top scheduled cue sounds at its instant, and every cue of ranks 2 to 6 that isn't stale first
// sounds within 2.4 s.
//
// The details that make the claim hold, each found by searching for its worst case:
//  - A first act now has 250 ms instead of 600 where 600 doesn't end before a higher onset, or
//  while another first
//    sounding of ranks 2 to 6 has waited kPatience. Else three overruns 949 ms apart keep it silent
//    for 2.8 s, and three act now between count-ins a get ready for 3.
//  - Get ready sounds pulse by pulse, so that it fits between count-ins. Its first round is one
//  sign, since the
//    number of pulses is what it says: until it is over, but no longer than kGroupSlack more than
//    it takes alone, no repeat and no first sounding of rank 6 and below comes between, and the
//    next get ready waits kGroupPause more; one that has waited kPatience breaks in all the same.
//  - Repeats of one rank go by turns: what is longest due comes first.
// What nobody could know before it happened (ranks 1 and 7, and every `until`) has no say before
// its instant.
#pragma once

#include "core/base/instant.h"
#include "core/shift/pattern.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// How long a first sounding waits before others are cut short or broken into for it.
inline constexpr Milliseconds kPatience{1'000};
/// How much longer than alone a round of get ready may take and still be kept together.
inline constexpr Milliseconds kGroupSlack{600};
/// Between the last pulse of one bench's get ready and the first of another's.
inline constexpr Milliseconds kGroupPause{350};
/// What any of ranks 2 to 6 that isn't stale may wait at most: the claim.
inline constexpr Milliseconds kLongestWait{2'400};
inline constexpr int kTickRank = 10;

/// A cue that wants to be heard. Times are the boot clock's.
struct Request {
    std::string id;   // the same for the same cue, however often it is asked
    std::string code; // the cue's, or "tick"
    Sound sound = Sound::GetReady;
    int place = 0; // 1 to 4; 0: the station
    int rank = 0;
    Milliseconds onset{0};
    bool knownAhead = false;           // others make way for its onset
    std::optional<Milliseconds> until; // no slot of it starts then or later
    std::optional<Milliseconds> staleAfter;

    bool operator==(const Request&) const = default;
};

/// A slot that sounds, whole and alone.
struct Sounding {
    Milliseconds start{0};
    Milliseconds length{0};
    std::string request;
    std::string code;
    Sound sound = Sound::GetReady;
    int place = 0;
    int rank = 0;
    int round = 0;
    int position = 0;

    Milliseconds end() const { return start + length; }
    bool operator==(const Sounding&) const = default;
};

/// What to render: its partials and level, at the length it has.
PatternSlot toneOf(const Sounding& sounding);

enum class DropReason {
    Stale, // too late to be of use
    Over   // its step was made, or its time was over, before it could begin
};

/// A cue that never sounded.
struct Dropped {
    std::string request;
    std::string code;
    int place = 0;
    DropReason reason = DropReason::Stale;
    Milliseconds at{0};   // when it was given up
    Milliseconds late{0}; // since its onset
    std::string heldBy;   // the request that sounded last; empty: nothing has

    bool operator==(const Dropped&) const = default;
};

struct Arbitration {
    std::vector<Sounding> soundings; // by start
    std::vector<Dropped> dropped;    // by time

    bool operator==(const Arbitration&) const = default;
};

/// The slots that start, and the cues that are given up, in [from, to). `history`: what started
/// before `from`, by start, of these requests and of others that are gone. Ids must be unique.
Arbitration arbitrate(
    std::vector<Request> requests, const std::vector<Sounding>& history, Milliseconds from,
    Milliseconds to);

} // namespace seamclock
