// Requests as benches at work would make them, without welds: a test says when a soak ends and how
// long the person takes, and gets every cue of it.
#pragma once

#include "core/shift/shift.h"

#include <optional>
#include <ostream>
#include <string>
#include <vector>

namespace seamclock {

/// Ids are "B/act_now/0": the bench's letter, the cue, its count.
Request cueOf(
    CueKind kind, int place, std::int64_t onsetMs, std::optional<std::int64_t> untilMs = {},
    int count = 0);

/// With which a request begins to be heard.
inline bool isFirst(const Sounding& slot) {
    return slot.round == 0 && slot.position == 0;
}

/// What one bench does around a soak's end; all in ms.
struct BenchStory {
    enum class Kind {
        Cycle,    // get ready, count-in, act now, perhaps overrun, build-up late
        Reminded, // get ready of cooling alone
        Idle
    };
    Kind kind = Kind::Cycle;
    std::int64_t soakEnd = 0;        // of a reminded bench: its get ready
    std::int64_t plateOut = 2'000;   // after the soak's end
    std::int64_t changeover = 5'000; // the limit, after plate out
    std::int64_t facesMet = 3'000;   // after plate out
    std::int64_t buildUp = 8'000;    // the limit, after the faces met
};

void addStory(std::vector<Request>& requests, const BenchStory& story, int place);
std::vector<Request> requestsOf(const std::vector<BenchStory>& stories);

void PrintTo(const Request& request, std::ostream* out);
void PrintTo(const Sounding& sounding, std::ostream* out);
void PrintTo(const Dropped& dropped, std::ostream* out);

} // namespace seamclock
