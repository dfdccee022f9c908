#include "app/horn/stream_time.h"

#include <gtest/gtest.h>

using namespace seamclock;
using std::chrono::milliseconds;

namespace {

// A device that takes 48 frames a millisecond of its own clock, refilled to `depth` at each pull.
class Device {
public:
    Device(Nanoseconds start, Nanoseconds depth, double perMillion)
        : m_start(start), m_depth(depth), m_pace(1 + perMillion / 1e6) {}

    std::int64_t taken(Nanoseconds now) const {
        return static_cast<std::int64_t>(
            static_cast<double>((now - m_start).count()) * m_pace * kFramesPerMilli / 1e6);
    }
    /// When this frame is heard in truth.
    Nanoseconds heard(std::int64_t frame) const {
        return m_start + Nanoseconds{static_cast<std::int64_t>(
                             static_cast<double>(frame) * 1e6 / kFramesPerMilli / m_pace)};
    }
    std::int64_t wanted(Nanoseconds now, std::int64_t pulled) const {
        return taken(now) + m_depth.count() * kFramesPerMilli / 1'000'000 - pulled;
    }
    /// It waited in silence for the next pull.
    void slip(Nanoseconds by) { m_start += by; }

private:
    Nanoseconds m_start;
    Nanoseconds m_depth;
    double m_pace;
};

constexpr Nanoseconds kDepth = milliseconds{135};
constexpr Nanoseconds kStart = std::chrono::hours{5};

double errorMs(const StreamTime& time, const Device& device) {
    const std::int64_t frame = time.frames();
    return static_cast<double>((time.heardAt(frame) - device.heard(frame)).count()) / 1e6;
}

} // namespace

TEST(StreamTime, IsExactHoweverLateThePullsAre) {
    Device device(kStart, kDepth, 0);
    StreamTime time(kDepth);
    Nanoseconds now = kStart;
    for (int i = 0; i < 2'000; ++i) {
        time.pulled(now, device.wanted(now, time.frames()));
        if (i > 20) {
            ASSERT_TRUE(time.isSettled());
            ASSERT_NEAR(errorMs(time, device), 0, 0.1) << i;
        }
        now += milliseconds{20} + milliseconds{i % 10 == 0 ? 90 : i % 3};
    }
    EXPECT_EQ(time.underruns(), 0);
}

// 100 parts in a million are more than a sound card's quartz is off (common practice, no source).
TEST(StreamTime, FollowsADevicesOwnClock) {
    for (const double perMillion : {-100.0, 100.0}) {
        Device device(kStart, kDepth, perMillion);
        StreamTime time(kDepth);
        Nanoseconds now = kStart;
        for (int i = 0; i < 180'000; ++i) { // an hour: 360 ms apart in the end
            time.pulled(now, device.wanted(now, time.frames()));
            now += milliseconds{20};
        }
        EXPECT_NEAR(errorMs(time, device), 0, 1.5) << perMillion; // 10 s of drift, and half of it
        EXPECT_EQ(time.underruns(), 0);
    }
}

TEST(StreamTime, CountsAnUnderrunAndIsRightAgainAtOnce) {
    Device device(kStart, kDepth, 0);
    StreamTime time(kDepth);
    Nanoseconds now = kStart;
    for (int i = 0; i < 50; ++i, now += milliseconds{20}) {
        time.pulled(now, device.wanted(now, time.frames()));
    }
    EXPECT_EQ(time.underruns(), 0);
    now += milliseconds{300};
    device.slip(now - device.heard(time.frames()));
    EXPECT_TRUE(time.pulled(now, device.wanted(now, time.frames())));
    EXPECT_EQ(time.underruns(), 1);
    EXPECT_NEAR(errorMs(time, device), 0, 0.1);
}

TEST(StreamTime, IsNotReliedUponBeforeTheBufferWasFull) {
    StreamTime time(kDepth);
    time.pulled(kStart, 960);
    EXPECT_FALSE(time.isSettled());
    time.pulled(kStart + milliseconds{250}, 960);
    EXPECT_TRUE(time.isSettled());
}
