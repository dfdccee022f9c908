// A lesson's weld that stands open at a start: ended with its reason, in the log and the history;
// a weld of another kind in the same log is left alone.
#include "core/practice/broken_off.h"

#include "core/log/verify.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/trainee.h"

#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

const std::string kBy = "person:tilda";

Instant nextStart(std::chrono::minutes later) {
    Instant start = practiceClock().now();
    start.bootId = "practice:2b5f0c0e-2f43-4a5c-8a42-6d8c1f7f9d10";
    start.boot = Milliseconds(4'000'000);
    start.utc += later;
    return start;
}

/// Opens these orders in a log, goes on with the first by `details`, and ends without a word.
std::vector<std::string> leftOpen(
    const std::string& path, const std::vector<WeldOrder>& orders,
    const std::vector<WeldDetail>& details) {
    VirtualClock clock = practiceClock();
    auto log = LogWriter<Practice>::open(path, clock);
    EXPECT_TRUE(log) << log.error().detail;
    auto session = Session<Practice>::start(*log, clock);
    EXPECT_TRUE(session);
    std::vector<std::string> welds;
    for (const WeldOrder& order : orders) {
        const auto opened = session->open(order, kBy);
        EXPECT_TRUE(opened) << opened.error().detail;
        welds.push_back(opened->id());
    }
    for (const WeldDetail& detail : details) {
        clock.advance(std::chrono::seconds(3));
        const auto acted = session->act(welds.front(), Intent{{}, kBy, detail});
        EXPECT_TRUE(acted) << acted.error().detail;
    }
    EXPECT_TRUE(log->flush());
    return welds;
}

std::vector<BrokenOffWeld> startAgain(const std::string& path, std::chrono::minutes later) {
    VirtualClock clock(nextStart(later));
    auto log = LogWriter<Practice>::open(path, clock);
    EXPECT_TRUE(log) << log.error().detail;
    auto session = Session<Practice>::start(*log, clock);
    EXPECT_TRUE(session);
    const auto ended = endBrokenOff(*session);
    EXPECT_TRUE(ended) << ended.error().detail;
    EXPECT_TRUE(session->stop());
    return ended.value_or(std::vector<BrokenOffWeld>());
}

TEST(BrokenOff, TheNextStartEndsTheLessonsWeldWithItsReason) {
    const ScratchFolder folder;
    const std::string path = folder.file("practice.db");
    const SetLesson set = setFor(shippedLesson("pe10-first"));
    CheckMade wiped;
    wiped.check = "plate_wiped";
    wiped.passed = true;
    const auto welds = leftOpen(path, {set.order}, {wiped});
    for (const int minutes : {90, -90}) { // the wall clock may have been set back since
        const ScratchFolder other;
        const std::string copy = other.file("practice.db");
        const auto again = leftOpen(copy, {set.order}, {wiped});
        const auto ended = startAgain(copy, std::chrono::minutes(minutes));
        ASSERT_EQ(ended.size(), 1U) << minutes;
        EXPECT_EQ(ended[0].weld, again[0]);
    }
    const auto ended = startAgain(path, std::chrono::minutes(90));
    ASSERT_EQ(ended.size(), 1U);
    EXPECT_EQ(ended[0].weld, welds[0]);
    EXPECT_EQ(ended[0].number, 1);
    EXPECT_EQ(ended[0].lesson, "pe10-first");
    EXPECT_EQ(ended[0].by, kBy);
    EXPECT_EQ(ended[0].phase, "preparing");

    auto log = LogReader::open(path);
    ASSERT_TRUE(log);
    EXPECT_TRUE(log->openWelds()->empty());
    const auto events = log->weldEvents(welds[0]);
    ASSERT_TRUE(events);
    const auto* aborted = std::get_if<WeldAborted>(&events->back().d);
    ASSERT_NE(aborted, nullptr);
    EXPECT_EQ(aborted->reason, "practice_broken_off");
    EXPECT_NE(aborted->text.find("the program ended"), std::string::npos);
    EXPECT_EQ(events->back().by, "station");
    EXPECT_TRUE(verifyLog(path)->ok);
    EXPECT_EQ(*brokenOffIn(*log), ended) << "the log tells the same later";
    EXPECT_TRUE(startAgain(path, std::chrono::minutes(95)).empty()) << "ended once";
}

TEST(BrokenOff, StandsInItsMakersHistoryWithoutATake) {
    const ScratchFolder folder;
    const std::string path = folder.file("practice.db");
    const SetLesson set = setFor(shippedLesson("pe10-first"));
    leftOpen(path, {set.order}, {});
    startAgain(path, std::chrono::minutes(5));
    {
        VirtualClock clock(nextStart(std::chrono::minutes(10)));
        auto log = LogWriter<Practice>::open(path, clock);
        ASSERT_TRUE(log);
        const MadeWeld made = practised(set, {}, *log, clock);
        ASSERT_TRUE(keepTake(*log, made.take, set, scoreOf(set, made), kBy, clock.now()));
        ASSERT_TRUE(log->flush());
    }
    auto log = LogReader::open(path);
    ASSERT_TRUE(log);
    const auto lines = practiceHistory(*log, kBy);
    ASSERT_TRUE(lines) << lines.error().detail;
    ASSERT_EQ(lines->size(), 2U);
    EXPECT_FALSE(lines->front().brokenOff) << "the newer first";
    EXPECT_EQ(lines->front().number, 2);
    const PracticeLine& broken = lines->back();
    EXPECT_TRUE(broken.brokenOff);
    EXPECT_EQ(broken.number, 1);
    EXPECT_EQ(broken.verdict, VerdictWord::Incomplete);
    EXPECT_EQ(broken.at.utc, practiceClock().now().utc)
        << "when it was left, not when that was found";
    const auto kept = keptTake(*log, broken);
    ASSERT_FALSE(kept);
    EXPECT_EQ(kept.error().code, ErrorCode::Missing);
    EXPECT_NE(kept.error().detail.find("broken off"), std::string::npos);
    EXPECT_TRUE(practiceHistory(*log, "person:other")->empty());
}

TEST(BrokenOff, WhoClosesPracticeInMidWeldFindsItInHisHistory) {
    const ScratchFolder folder;
    const std::string path = folder.file("practice.db");
    const SetLesson set = setFor(shippedLesson("pe10-first"));
    CheckMade wiped;
    wiped.check = "plate_wiped";
    wiped.passed = true;
    leftOpen(path, {set.order}, {wiped, WeldAborted{std::string(kLeft), ""}});
    auto log = LogReader::open(path);
    ASSERT_TRUE(log);
    const auto lines = practiceHistory(*log, kBy);
    ASSERT_TRUE(lines) << lines.error().detail;
    ASSERT_EQ(lines->size(), 1U);
    EXPECT_TRUE(lines->front().brokenOff);
    EXPECT_TRUE(lines->front().left);
    EXPECT_EQ(lines->front().number, 1);
    EXPECT_EQ(brokenOffIn(*log)->front().phase, "preparing");
    const auto kept = keptTake(*log, lines->front());
    ASSERT_FALSE(kept);
    EXPECT_NE(kept.error().detail.find("practice was left"), std::string::npos);
    EXPECT_TRUE(startAgain(path, std::chrono::minutes(5)).empty()) << "it is ended";
}

TEST(BrokenOff, AWeldThatStandsOnNoLessonsBenchGoesOn) {
    const ScratchFolder folder;
    const std::string path = folder.file("practice.db");
    const SetLesson set = setFor(shippedLesson("pe10-first"));
    WeldOrder rehearsed = set.order; // as `rehearse` and the operator's screens open them
    for (Sheet& sheet : rehearsed.sheets) {
        sheet.maker = "Ostrel";
        sheet.batch = "K-118";
    }
    RemarkMade remark;
    remark.text = "what practice_broken_off means"; // the word alone ends nothing
    const auto welds = leftOpen(path, {rehearsed}, {remark});
    EXPECT_TRUE(startAgain(path, std::chrono::minutes(5)).empty());
    auto log = LogReader::open(path);
    ASSERT_TRUE(log);
    EXPECT_EQ(*log->openWelds(), welds);
    EXPECT_TRUE(brokenOffIn(*log)->empty());
}

} // namespace
} // namespace seamclock::test
