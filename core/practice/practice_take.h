// What is kept of a practice weld beside its events: the hands' acts at the virtual bench with
// their times, and what the trainee noticed. The lesson and these give the whole weld again, to the
// last bit, so a replay and a score need no pictures.
#pragma once

#include "core/base/instant.h"
#include "core/practice/lesson.h"
#include "core/vbench/bench_act.h"

#include <optional>
#include <string>
#include <vector>

namespace seamclock {

struct TimedAct {
    Milliseconds at{0}; // process time since the take began
    BenchAct act;

    bool operator==(const TimedAct&) const = default;
};

struct Noticed {
    Milliseconds at{0};
    Wrong what = Wrong::PlateCold;

    bool operator==(const Noticed&) const = default;
};

struct PracticeTake {
    std::string lesson; // its id
    std::string weld;   // "weld:UUID"; its events have instants of the take's own clock
    Instant began;
    Milliseconds length{0};
    std::vector<TimedAct> acts;  // by time
    std::vector<TimedAct> tries; // likewise: what the bench refused
    std::vector<Noticed> noticed;
    bool callTaken = false;             // where the lesson has one
    std::optional<Milliseconds> callAt; // then; absent in a take kept before takes said so
    // The documents that it was made by; empty: kept before takes said so.
    std::string procedureSha256;
    std::string benchSha256; // the bench's own, not that of a wrong card

    bool operator==(const PracticeTake&) const = default;
};

} // namespace seamclock
