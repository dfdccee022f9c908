// What becomes of a weld that a power cut or a crash interrupted. On the same boot it simply goes
// on: the boot clock never stopped. After a reboot only cooling, and what follows it, goes on by
// itself, over a bridge that is an interval and never shortens cooling; before the lock the default
// is to abort, cut back and re-plane. A person's word decides.
#pragma once

#include "core/base/result.h"
#include "core/weld/intent.h"

#include <optional>
#include <vector>

namespace seamclock {

enum class RebootWord {
    None,            // the default for the state it is in
    GoOnConfirmed,   // "the wall clock was right": the bridge is the wall clock's difference
    GoOnUnconfirmed, // go on, but nobody vouches for the time
    Abort
};

enum class AfterCut {
    GoesOn, // same boot: nothing to say
    Bridge, // rebooted in cooling or later: goes on by an unconfirmed bridge unless a person says
            // more
    AbortByDefault // rebooted before the lock
};

AfterCut afterCut(const Weld& weld, const Instant& now);

/// The events' details that the word makes of it, in order: nothing on the same boot, else a
/// bridge, and an abort after it. Refused: a confirmation that bridgeTo refuses; nothing is lost,
/// another word can be given.
Result<std::vector<WeldDetail>> settle(const Weld& weld, const Instant& now, RebootWord word);

} // namespace seamclock
