// When a frame will be heard, from nothing but how many were pulled and when. The device takes
// frames at its own even pace and the stream is refilled to the same depth each time, so the
// smallest of "clock minus frames pulled" over a while marks a refill that was not late; one buffer
// after it the frame is heard. Timers say no more than that: a late pull changes nothing. After an
// underrun the stream has slipped and the count starts anew.
#pragma once

#include "app/horn/tones.h"
#include "core/base/instant.h"

#include <array>
#include <optional>

namespace seamclock {

using Nanoseconds = std::chrono::nanoseconds;

class StreamTime {
public:
    /// `depth`: how much sound lies between a full buffer's last frame and the ear.
    explicit StreamTime(Nanoseconds depth);

    /// Frames were pulled at `now`; call it for every pull, before heardAt(). True: the stream had
    /// run dry before this pull.
    bool pulled(Nanoseconds now, std::int64_t frames);
    /// Frames pulled so far, with the last pull.
    std::int64_t frames() const { return m_frames; }
    /// Whether the buffer has been full once, so that heardAt() can be relied upon.
    bool isSettled() const { return m_settled; }
    /// On the clock of `now`.
    Nanoseconds heardAt(std::int64_t frame) const;
    std::int64_t underruns() const { return m_underruns; }
    /// From the last pull to its first frame's being heard.
    Nanoseconds lead() const { return m_lead; }

private:
    void restart(Nanoseconds now);
    void fold(Nanoseconds now, Nanoseconds offset);

    // The smallest offset of the stretch now running and of the one before it, so that the clocks
    // may drift.
    static constexpr Nanoseconds kStretch = std::chrono::seconds{5};
    Nanoseconds m_depth;
    std::int64_t m_frames = 0;
    std::int64_t m_underruns = 0;
    Nanoseconds m_started{0}; // since the start, or the last underrun
    Nanoseconds m_stretchFrom{0};
    std::optional<Nanoseconds> m_smallest;
    std::optional<Nanoseconds> m_smallestBefore;
    Nanoseconds m_lead{0};
    bool m_settled = false;
    bool m_running = false;
};

} // namespace seamclock
