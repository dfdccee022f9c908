// How far a job is, by joints in a real log.
#include "core/session/job_state.h"

#include "core/log/log_reader.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

JobSeam seam(const std::string& label) {
    JobSeam out;
    out.label = label;
    out.procedure = "invented";
    out.thicknessMm = 8;
    out.lengthsMm = {860};
    out.sheets = {
        {"PE-HD", {}, "Maker One", "batch 11", 8'000, {}},
        {"PE-HD", {}, "Maker One", "batch 12", 8'000, {}}};
    return out;
}

/// The sample welds are of seam S3.
class JobState : public ::testing::Test {
protected:
    void write(std::vector<Event> events, const std::string& label = "S3") {
        std::get<WeldOpened>(events.front().d).seam = label;
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        writer->submit(test::rowsOf(events), test::sampleDocuments());
        ASSERT_TRUE(writer->flush());
    }
    static std::vector<Event> decided(std::vector<Event> events, Decision decision) {
        Event said = events.back();
        ++said.n;
        said.d = Decided{decision, "seen"};
        events.push_back(said);
        return events;
    }
    /// A weld whose changeover took 20 s: out of limits, and its reason given.
    static std::vector<Event> slow(std::int64_t number) {
        WeldOpened opened = test::inventedOpening();
        opened.number = number;
        opened.docs = std::get<WeldOpened>(test::closedWeld(1).front().d).docs;
        test::Story story(opened);
        story.soak().wait(std::chrono::seconds(20)).then(FacesMet{});
        story.wait(std::chrono::seconds(6)).then(ReadingTaken{ReadingPhase::Joining, 15'500});
        story.wait(std::chrono::seconds(2)).then(PressureLocked{});
        story.wait(std::chrono::seconds(700));
        for (const std::string& step : std::vector<std::string>(story.weld().plan.releaseOrder)) {
            story.then(ReleaseStep{step}).wait(std::chrono::seconds(2));
        }
        story.then(ReasonGiven{"changeover", "other", "stuck"});
        story.then(closing(story.weld()));
        std::vector<Event> events = story.weld().events;
        for (Event& event : events) {
            event.subject = test::weldName(number);
            event.at.boot += std::chrono::hours(number);
            event.at.utc += std::chrono::hours(number);
        }
        return events;
    }
    SeamProgress state(const std::optional<std::string>& from = {}) {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader) << reader.error().detail;
        const auto progress = jobProgress(*reader, {seam("S3"), seam("S4")}, from);
        EXPECT_TRUE(progress) << (progress ? "" : progress.error().detail);
        if (!progress) {
            return {};
        }
        EXPECT_EQ(progress->seams[1].state, JobSeamState::Open);
        elsewhere = progress->elsewhere.size();
        return progress->seams[0];
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
    std::size_t elsewhere = 0;
};

TEST_F(JobState, GoesFromOpenOverRunningToDone) {
    write(test::closedWeld(1), "S9");
    EXPECT_EQ(state().state, JobSeamState::Open);
    write(test::unfinishedWeld(2, 8));
    EXPECT_EQ(state().state, JobSeamState::Running);
    EXPECT_EQ(state().why, "soaking");
    write(test::closedWeld(2));
    EXPECT_EQ(state().state, JobSeamState::Done);
    EXPECT_EQ(state().joints.size(), 1U);
}

TEST_F(JobState, FollowsWhatAForemanDecided) {
    write(decided(test::closedWeld(1), Decision::CutOut));
    EXPECT_EQ(state().state, JobSeamState::CutOut);
    EXPECT_EQ(state().why, "joint 1 was cut out");
    write(decided(test::closedWeld(2), Decision::Repair));
    EXPECT_EQ(state().state, JobSeamState::ToRedo);
    write(test::closedWeld(3), "S3/R1"); // S3 welded again
    EXPECT_EQ(state().state, JobSeamState::Done);
    EXPECT_EQ(state().joints.size(), 3U);
    EXPECT_EQ(state().joints[0].line.number, 3); // newest first
}

TEST_F(JobState, OutOfLimitsWaitsForTheForeman) {
    const auto events = slow(1);
    write(events);
    const SeamProgress before = state();
    EXPECT_EQ(before.state, JobSeamState::ToDecide);
    EXPECT_EQ(before.weld, test::weldName(1));
    EXPECT_EQ(before.why, "joint 1 is out of limits and not decided");
    write(decided(events, Decision::Accept));
    EXPECT_EQ(state().state, JobSeamState::Done);
}

TEST_F(JobState, AWeldStoppedBeforeItsAlignmentMeltedNothing) {
    WeldOpened opened = test::inventedOpening();
    opened.docs = std::get<WeldOpened>(test::closedWeld(1).front().d).docs;
    test::Story early(opened);
    early.prepare().then(WeldAborted{"other", "dinner"});
    write(early.weld().events);
    EXPECT_EQ(state().state, JobSeamState::Open);
    opened.number = 8;
    test::Story late(opened);
    late.align().then(WeldAborted{"power", ""});
    std::vector<Event> events = late.weld().events;
    for (Event& event : events) {
        event.subject = test::weldName(8);
    }
    write(events);
    EXPECT_EQ(state().state, JobSeamState::ToRedo);
    EXPECT_EQ(state().why, "joint 8 was stopped");
}

// What is offered at the bench and what the foreman reads can't differ: made_seams says both.
TEST_F(JobState, SaysWhatTheBenchIsOffered) {
    const auto compare = [this](const char* after) {
        const SeamProgress seen = state();
        auto reader = LogReader::open(path);
        MadeSeams made({seam("S3")});
        ASSERT_TRUE(reader && made.read(*reader));
        const bool offered = isToBeWelded(made.of({"S3", ""}).state);
        const bool planned = seen.state == JobSeamState::Open ||
                             seen.state == JobSeamState::ToRedo ||
                             seen.state == JobSeamState::CutOut;
        EXPECT_EQ(offered, planned) << after << ": " << toString(seen.state);
    };
    write(test::closedWeld(9), "S9");
    compare("another seam alone");
    write(slow(1));
    compare("out of limits");
    write(decided(slow(1), Decision::Repair));
    compare("to repair");
    write(test::closedWeld(2), "S3/R1");
    compare("repaired");
    // Stopped in alignment, when S3/R1 stands: it stands.
    WeldOpened opened = test::inventedOpening();
    opened.number = 3;
    opened.docs = std::get<WeldOpened>(test::closedWeld(1).front().d).docs;
    test::Story late(opened);
    late.align().then(WeldAborted{"power", ""});
    std::vector<Event> events = late.weld().events;
    for (Event& event : events) {
        event.subject = test::weldName(3);
        event.at.utc += std::chrono::hours(90);
    }
    write(events, "S3/R2");
    compare("a re-weld that was stopped before its faces met");
    EXPECT_EQ(state().state, JobSeamState::Done);
    write(decided(test::closedWeld(4), Decision::CutOut), "S3/R3");
    compare("cut out");
}

TEST_F(JobState, ALabelOnOtherSheetsAndATrialDoNotCount) {
    auto thick = test::closedWeld(1);
    auto& opened = std::get<WeldOpened>(thick.front().d);
    opened.plan.thicknessUm = 12'000;
    for (Sheet& sheet : opened.sheets) {
        sheet.thicknessUm = 12'000;
    }
    write(thick);
    EXPECT_EQ(state().state, JobSeamState::Open);
    EXPECT_EQ(elsewhere, 1U);
    auto trial = test::closedWeld(2);
    std::get<WeldOpened>(trial.front().d).type = WeldType::Trial;
    write(trial);
    EXPECT_EQ(state().state, JobSeamState::Open);
    write(test::closedWeld(3));
    EXPECT_EQ(state().state, JobSeamState::Done);
    EXPECT_EQ(state("2031-01-01").state, JobSeamState::Open); // none so late
}

} // namespace
} // namespace seamclock
