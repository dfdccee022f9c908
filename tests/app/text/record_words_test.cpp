// A record in a person's words: what somebody typed stands as it was typed, what the program wrote
// as a code in words.
#include "app/text/record_words.h"

#include "app/text/coupon_words.h"
#include "core/weld/cues.h"
#include "core/weld/record.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(RecordWords, LeaveWhatSomebodyTypedAsItIs) {
    EXPECT_EQ(choiceWord("see NCR_2030_014"), "see NCR_2030_014");
    EXPECT_EQ(choiceWord("sheet_slipped"), "a sheet slipped");
    const WeldPlan plan = test::inventedPlan();
    EXPECT_EQ(eventText(RemarkMade{"NCR_14"}, plan, UnitSystem::Metric), "NCR_14");
}

TEST(RecordWords, SayWhichSignalWasSeen) {
    const WeldPlan plan = test::inventedPlan();
    EXPECT_EQ(
        eventText(CueAcknowledged{"cooling_done"}, plan, UnitSystem::Metric),
        "signal seen: cooling is over");
    for (int i = 0; i <= static_cast<int>(CueKind::CoolingDone); ++i) {
        const std::string code(toString(static_cast<CueKind>(i)));
        const QString text = eventText(CueAcknowledged{code}, plan, UnitSystem::Metric);
        QString bare = QString::fromStdString(code);
        bare.replace('_', ' ');
        EXPECT_TRUE(bare == "get ready" || bare == "no sound" || !text.endsWith(": " + bare))
            << text.toStdString();
    }
}

// Two readings of one joint, of which each is told with its own event.
TEST(RecordWords, TellAReadingInCoolingFromTheOneThatWasJoinedWith) {
    test::Story story;
    story.buildUp().wait(std::chrono::minutes(3));
    const std::int64_t low = story.weld().plan.scale->joining.lowMilli - 300;
    story.then(ReadingTaken{ReadingPhase::Recheck, low});
    const auto n = static_cast<std::int64_t>(story.weld().events.size());
    story.wait(std::chrono::minutes(40)).then(ReleaseStep{"clamps_eased"});
    const WeldRecord made = record(story.weld());
    const auto found = std::find_if(
        made.verdict.findings.begin(), made.verdict.findings.end(),
        [](const Finding& one) { return one.code == "joining_reading"; });
    ASSERT_NE(found, made.verdict.findings.end());
    EXPECT_EQ(found->n, n);
    EXPECT_EQ(reasonText(*found, made.plan, UnitSystem::Metric).what, "reading in cooling");
}

TEST(RecordWords, GiveCouponsInTheReadersUnits) {
    CouponTested tested;
    tested.weldedPa = {27'000'000};
    tested.ramUm = {25'400};
    // 27 N/mm² is 27e6 / 6894.757 psi (NIST SP 811, B.8).
    const QStringList imperial = couponValues(tested, UnitSystem::Imperial);
    EXPECT_EQ(imperial[0], "welded 3916.02 psi") << imperial.join("; ").toStdString();
    EXPECT_TRUE(imperial[1].startsWith("travel of the ram 1.00")) << imperial[1].toStdString();
    EXPECT_EQ(couponValues(tested)[0], "welded 27.00 N/mm²");
}

} // namespace
} // namespace seamclock
