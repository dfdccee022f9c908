#include "app/horn/stream_time.h"

#include <algorithm>

namespace seamclock {

namespace {

// A pull may be seen this much after the device has taken the last frame before the stream counts
// as run dry: what the estimate is uncertain by.
constexpr Nanoseconds kSlack = std::chrono::milliseconds{20};
// How long a new stream takes to be filled to its depth for certain.
constexpr Nanoseconds kFilling = std::chrono::milliseconds{200};

Nanoseconds lengthOf(std::int64_t frames) {
    return Nanoseconds{frames * 1'000'000 / kFramesPerMilli};
}

} // namespace

StreamTime::StreamTime(Nanoseconds depth) : m_depth(depth) {}

void StreamTime::restart(Nanoseconds now) {
    m_started = now;
    m_stretchFrom = now;
    m_smallest.reset();
    m_smallestBefore.reset();
    m_running = true;
}

bool StreamTime::pulled(Nanoseconds now, std::int64_t frames) {
    const std::int64_t first = m_frames;
    m_frames += frames;
    bool dry = false;
    if (!m_running) {
        restart(now);
    } else if (m_settled && now > heardAt(first) + kSlack) {
        dry = true;
        ++m_underruns;
        restart(now);
    }
    fold(now, now - lengthOf(m_frames));
    m_settled = m_settled || now - m_started >= kFilling;
    m_lead = heardAt(first) - now;
    return dry;
}

void StreamTime::fold(Nanoseconds now, Nanoseconds offset) {
    if (now - m_stretchFrom >= kStretch) {
        m_stretchFrom = now;
        m_smallestBefore = m_smallest;
        m_smallest.reset();
    }
    m_smallest = m_smallest ? std::min(*m_smallest, offset) : offset;
}

Nanoseconds StreamTime::heardAt(std::int64_t frame) const {
    const Nanoseconds smallest = m_smallest.value_or(Nanoseconds{0});
    const Nanoseconds offset = m_smallestBefore ? std::min(smallest, *m_smallestBefore) : smallest;
    return offset + m_depth + lengthOf(frame);
}

} // namespace seamclock
