// From which events a reason follows, told by a joint that was corrected and one that was bridged.
#include "core/report/record_reasons.h"

#include "core/weld/intent.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>
#include <vector>

namespace seamclock {
namespace {

using test::Story;

std::int64_t lastOf(const Story& story) {
    return static_cast<std::int64_t>(story.weld().events.size());
}

TEST(RecordReasons, NameTheCorrectionOfAnEventBehindThem) {
    Story story;
    CheckMade read;
    read.check = "plate_temperature";
    read.valueMc = 211'000;
    read.place = "front";
    story.then(read);
    const std::int64_t n = lastOf(story);
    story.close();
    EXPECT_EQ(eventsBehind("plate_temperature", record(story.weld())).count(n), 1U);
    EXPECT_FALSE(isCorrectedSinceClosing(record(story.weld())));
    story.then(ValueCorrected{n, "value_mC", "211000", "225000", "misread"});
    const WeldRecord made = record(story.weld());
    ASSERT_EQ(made.verdict.word, VerdictWord::OutOfLimits);
    EXPECT_EQ(eventsBehind("plate_temperature", made).count(n), 1U);
    EXPECT_EQ(eventsBehind("plate_temperature", made).count(lastOf(story)), 1U);
    EXPECT_EQ(eventsBehind("changeover", made).count(lastOf(story)), 0U);
    EXPECT_TRUE(isCorrectedSinceClosing(made));
    WeldRecord older = made;
    older.stored->rules = 0; // then nobody can say which of both it was
    EXPECT_FALSE(isCorrectedSinceClosing(older));
}

TEST(RecordReasons, OfARemarkNameThatRemarkAlone) {
    Story story;
    story.inspect().then(RemarkMade{"draught"});
    const std::int64_t first = lastOf(story);
    story.then(RemarkMade{"film was torn"});
    const WeldRecord made = record(story.weld());
    std::vector<std::set<std::int64_t>> behind;
    for (const Finding& finding : made.verdict.findings) {
        if (finding.code == "remark_made") {
            behind.push_back(eventsBehind(finding, made));
        }
    }
    EXPECT_EQ(behind, (std::vector<std::set<std::int64_t>>{{first}, {first + 1}}));
}

TEST(RecordReasons, OfAPlaceThatWasTooHotNameItsOwnReadingAndWhatCorrectedIt) {
    Story story;
    std::vector<std::int64_t> at;
    for (const char* place : {"front", "back"}) {
        CheckMade read;
        read.check = "plate_temperature";
        read.valueMc = 211'000;
        read.place = place;
        read.face = "moving";
        story.then(read);
        at.push_back(lastOf(story));
    }
    story.close().then(ValueCorrected{at[1], "value_mC", "211000", "231000", "misread"});
    const WeldRecord made = record(story.weld());
    const auto hot = std::find_if(
        made.verdict.findings.begin(), made.verdict.findings.end(),
        [](const auto& one) { return one.code == "plate_temperature" && one.place == "back"; });
    ASSERT_NE(hot, made.verdict.findings.end());
    EXPECT_EQ(hot->face, "moving");
    EXPECT_EQ(eventsBehind(*hot, made), (std::set<std::int64_t>{at[1], lastOf(story)}));
}

/// Behind which kinds of events that code stands.
std::set<std::string_view> kindsBehind(const char* code, const WeldRecord& made) {
    std::set<std::string_view> kinds;
    for (const std::int64_t n : eventsBehind(code, made)) {
        kinds.insert(kindOf(made.events.at(static_cast<std::size_t>(n - 1)).d));
    }
    return kinds;
}

TEST(RecordReasons, EachNamesTheEventsThatItsValueIsReadFrom) {
    using Kinds = std::set<std::string_view>;
    Story story;
    CheckMade bead;
    bead.check = "alignment_bead";
    bead.passed = true;
    bead.valueUm = 1'200;
    story.prepare().then(AlignmentStarted{}).wait(std::chrono::seconds(40)).then(bead);
    story.then(SoakStarted{}).wait(std::chrono::seconds(1));
    story.then(ReadingTaken{ReadingPhase::Soak, 1'500});
    const WeldRecord soaking = record(story.weld());
    EXPECT_EQ(kindsBehind("alignment_bead", soaking), Kinds{"check_made"});
    EXPECT_EQ(eventsBehind("alignment_bead", soaking).size(), 1U) << "that check alone";
    EXPECT_EQ(kindsBehind("soak_pressure", soaking), Kinds{"reading_taken"});
    EXPECT_EQ(kindsBehind("alignment_time", soaking), (Kinds{"alignment_started", "soak_started"}));
    WeldOpened flagged = test::inventedOpening();
    flagged.flags = {"calibration_overdue"};
    Story whole(flagged);
    whole.close();
    const WeldRecord closed = record(whole.weld());
    EXPECT_EQ(kindsBehind("misalignment", closed), Kinds{"bead_measured"});
    EXPECT_EQ(kindsBehind("bead_height", closed), Kinds{"bead_measured"});
    EXPECT_EQ(kindsBehind("calibration_overdue", closed), Kinds{"weld_opened"});
    EXPECT_EQ(kindsBehind("certificate_expired", closed), Kinds{}) << "that flag it has not";
    EXPECT_EQ(kindsBehind("joining_reading", closed), Kinds{"reading_taken"});
    Story stopped;
    stopped.prepare().then(WeldAborted{"cut_out", ""});
    EXPECT_EQ(kindsBehind("aborted", record(stopped.weld())), Kinds{"weld_aborted"});
    EXPECT_FALSE(isCorrectedSinceClosing(record(stopped.weld()))) << "it was never closed";
    Story over;
    over.buildUp().wait(std::chrono::seconds(100)).reboot(std::chrono::seconds(700));
    const auto bridge = bridgeTo(over.weld(), over.now(), false);
    ASSERT_TRUE(bridge && *bridge);
    over.then(**bridge);
    EXPECT_EQ(kindsBehind("bridge_used", record(over.weld())), Kinds{"clock_bridged"});
}

TEST(RecordReasons, NameTheBridgeOverATime) {
    Story story;
    story.buildUp().wait(std::chrono::seconds(100)).reboot(std::chrono::seconds(700));
    const auto bridge = bridgeTo(story.weld(), story.now(), false);
    ASSERT_TRUE(bridge && *bridge);
    story.then(**bridge);
    const std::int64_t n = lastOf(story);
    story.wait(std::chrono::seconds(690)).then(ReleaseStep{"clamps_eased"});
    const WeldRecord made = record(story.weld());
    EXPECT_EQ(eventsBehind("cooling", made).count(n), 1U);
    EXPECT_EQ(eventsBehind("changeover", made).count(n), 0U);
}

TEST(RecordReasons, NameTheStepThatWasSetEarlier) {
    Story story;
    story.soak();
    const std::int64_t step = lastOf(story);
    story.wait(std::chrono::seconds(2)).then(StepBackdated{step, std::chrono::seconds(1)});
    const std::int64_t n = lastOf(story);
    const WeldRecord made = record(story.weld());
    std::int64_t found = 0;
    for (const char* code : {"soak_time", "changeover"}) {
        const auto behind = eventsBehind(code, made);
        if (behind.count(step) > 0) {
            ++found;
            EXPECT_EQ(behind.count(n), 1U) << code;
        }
    }
    EXPECT_GT(found, 0);
}

} // namespace
} // namespace seamclock
