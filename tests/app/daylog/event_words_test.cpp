#include "app/daylog/event_words.h"

#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(EventWords, EveryEventOfAWeldHasALineWithoutCodes) {
    test::Story story;
    story.close();
    story.then(Decided{Decision::Accept, "looked_good"});
    story.then(SignedOff{"foreman"});
    for (const Event& event : story.weld().events) {
        const QString line = eventWords(event.d, story.weld().plan);
        EXPECT_FALSE(line.isEmpty()) << kindOf(event.d);
        EXPECT_FALSE(line.contains('_')) << line.toStdString();
    }
}

TEST(EventWords, ValuesAreInThem) {
    const WeldPlan plan = test::inventedPlan();
    EXPECT_EQ(
        eventWords(ReadingTaken{ReadingPhase::Joining, 15'500}, plan),
        "scale reading, joining: 15.5 mm");
    EXPECT_EQ(
        eventWords(BeadMeasured{{}, 4'200, 3'100, 800, 400}, plan),
        "bead 4.2 mm wide, 3.1 mm high, K 0.8 mm, out of line 0.4 mm");
    EXPECT_EQ(
        eventWords(Decided{Decision::CutOut, "broke at the back"}, plan),
        "to be cut out: broke at the back");
    EXPECT_EQ(
        eventWords(ValueCorrected{12, "reading_milli", "15500", "15000", "misread"}, plan),
        "event 12 corrected: 15000 instead of 15500, misread");
}

TEST(EventWords, TheClockIsThatPlacesToTheMillisecond) {
    Instant at;
    at.utc = Milliseconds(1'894'514'400'000 + 64'318); // 2030-01-13T06:01:04.318Z
    at.offset = std::chrono::minutes(60);
    EXPECT_EQ(clockTextToMs(at), "7:01:04.318");
}

} // namespace
} // namespace seamclock
