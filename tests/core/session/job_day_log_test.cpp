// The day's plan by what a log holds of one bench: invented welds in every state, their times by
// hand, and events that can't be read.
#include "core/session/job_day.h"

#include "core/log/log_reader.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <string>
#include <utility>

namespace seamclock {
namespace {

using std::chrono::minutes;
using std::chrono::seconds;
using test::Story;

WeldOpened opening(std::int64_t number = 1) {
    WeldOpened opened = test::inventedOpening();
    opened.number = number;
    opened.docs = std::get<WeldOpened>(test::closedWeld(1).front().d).docs;
    return opened;
}

/// Of a cold plate to the invented 210 °C, by the words of day_plan.h: ten minutes, and 12 s for
/// each of 190 K.
constexpr minutes kFromCold{48};

/// The invented welds are of seam S3 on bench-a; S4 is still to be made there, of the same sheets.
class JobDayLog : public ::testing::Test {
protected:
    void write(std::vector<Event> events) {
        const std::int64_t number = std::get<WeldOpened>(events.front().d).number;
        for (Event& event : events) {
            event.subject = test::weldName(number);
        }
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        writer->submit(test::rowsOf(events), test::sampleDocuments());
        ASSERT_TRUE(writer->flush());
    }
    void write(const Story& story) { write(story.weld().events); }

    JobDay dayAt(const Instant& now) {
        JobDayAsk ask;
        ask.people = {"person:op-1"};
        ask.now = now;
        JobSeam seam;
        seam.label = "S4";
        seam.procedure = "invented";
        seam.thicknessMm = 8;
        seam.lengthsMm = {860};
        seam.sheets = opening().sheets;
        ask.seams = {seam};
        ask.benches = {readBenchFile(test::resource("demo/bench-west.json")).value()};
        ask.benches[0].bench.id = "bench-a";
        ask.benches[0].sha256 = opening().docs.bench;
        // The shipped values of PE-HD under the invented name.
        ask.procedures = readProcedureFolder(test::resource("procedures")).value();
        const auto shipped =
            std::find_if(ask.procedures.begin(), ask.procedures.end(), [](const auto& one) {
                return one.procedure.id == "pe-hd-dvs2207-1-2005";
            });
        EXPECT_NE(shipped, ask.procedures.end());
        shipped->procedure.id = "invented";
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader) << reader.error().detail;
        const auto day = jobDay(ask, &*reader);
        EXPECT_TRUE(day) << (day ? "" : day.error().detail);
        return day.value_or(JobDay());
    }
    JobDay dayAfter(Story story, Milliseconds later) {
        write(story);
        return dayAt(story.wait(later).now());
    }
    static bool hasTrial(const JobDay& day) {
        return std::any_of(
            day.plan.stretches.begin(), day.plan.stretches.end(),
            [](const DayStretch& one) { return one.trial && one.kind == DayKind::Soak; });
    }
    void damage(std::int64_t weld, std::int64_t n) {
        test::BehindTheBack tool(path);
        tool.database().exec(
            "UPDATE event SET body = replace(body, '\"v\":', '\"w\":') WHERE subject = '" +
            test::weldName(weld) + "' AND n = " + std::to_string(n));
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
};

struct Left {
    const char* name;
    Story& (*to)(Story& story);
    Milliseconds later;
    std::optional<SeamTimes> left; // absent: the bench is free
};

/// What is chosen for its preparation and release, 65 % of its soak for the alignment, and the
/// invented plan's own times (tests/support/story.cpp).
SeamTimes whole() {
    SeamTimes out;
    out.preparation = minutes(10);
    out.alignment = seconds(52);
    out.soak = seconds(80);
    out.changeover = Milliseconds{6'400};
    out.buildUp = Milliseconds{6'500};
    out.cooling = seconds(690);
    out.release = minutes(3);
    out.plate = {"PE-HD", 210'000};
    return out;
}

SeamTimes leftFrom(Milliseconds SeamTimes::*first, Milliseconds left) {
    SeamTimes out = whole();
    for (const auto stretch :
         {&SeamTimes::preparation, &SeamTimes::alignment, &SeamTimes::soak, &SeamTimes::changeover,
          &SeamTimes::buildUp, &SeamTimes::cooling, &SeamTimes::release}) {
        if (stretch == first) {
            out.*stretch = left;
            break;
        }
        out.*stretch = Milliseconds{0};
    }
    return out;
}

class JobDayLeft : public JobDayLog, public ::testing::WithParamInterface<Left> {};

TEST_P(JobDayLeft, IsWhatIsStillToComeOfAWeld) {
    Story story(opening());
    GetParam().to(story);
    const JobDay day = dayAfter(story, GetParam().later);
    ASSERT_EQ(day.work.benches.size(), 1U);
    const auto& running = day.work.benches[0].running;
    ASSERT_EQ(running.has_value(), GetParam().left.has_value());
    if (running) {
        EXPECT_EQ(running->label, "S3");
        EXPECT_EQ(running->left, *GetParam().left);
        EXPECT_EQ(running->plateWait.count(), 0);
    }
}

INSTANTIATE_TEST_SUITE_P(
    States, JobDayLeft,
    ::testing::Values(
        Left{
            "preparing", [](Story& s) -> Story& { return s.prepare(); }, seconds(20),
            leftFrom(&SeamTimes::preparation, minutes(9))}, // prepared for 40 s
        Left{
            "preparing_for_long", [](Story& s) -> Story& { return s.prepare(); }, minutes(11),
            leftFrom(&SeamTimes::preparation, minutes(0))},
        Left{
            "aligning", [](Story& s) -> Story& { return s.prepare().then(AlignmentStarted{}); },
            seconds(12), leftFrom(&SeamTimes::alignment, seconds(40))},
        Left{
            "soaking", [](Story& s) -> Story& { return s.align(); }, seconds(30),
            leftFrom(&SeamTimes::soak, seconds(50))},
        Left{
            "changing_over", [](Story& s) -> Story& { return s.soak(); }, seconds(2),
            leftFrom(&SeamTimes::changeover, Milliseconds{4'400})},
        Left{
            "building_up", [](Story& s) -> Story& { return s.changeOver(); }, seconds(2),
            leftFrom(&SeamTimes::buildUp, Milliseconds{4'500})},
        Left{
            "cooling", [](Story& s) -> Story& { return s.buildUp(); }, seconds(90),
            leftFrom(&SeamTimes::cooling, minutes(10))},
        Left{
            "releasing",
            [](Story& s) -> Story& { return s.cool().then(ReleaseStep{"clamps_eased"}); },
            seconds(5), leftFrom(&SeamTimes::release, minutes(3))},
        Left{"inspecting", [](Story& s) -> Story& { return s.release(); }, seconds(5), {}},
        Left{"closed", [](Story& s) -> Story& { return s.close(); }, seconds(5), {}},
        Left{
            "aborted",
            [](Story& s) -> Story& {
                return s.align().then(WeldAborted{"power", "dark"});
            },
            seconds(5),
            {}}),
    [](const auto& one) { return std::string(one.param.name); });

TEST_F(JobDayLog, UnderAWeldThatIsPreparedThePlateStillSettles) {
    const JobDay day = dayAfter(Story(opening()), minutes(5));
    ASSERT_TRUE(day.work.benches[0].running);
    const DayRunning& running = *day.work.benches[0].running;
    EXPECT_EQ(running.plateWait, kFromCold - minutes(5)) << "nobody has read it yet";
    EXPECT_EQ(running.left.preparation, kFromCold - minutes(5));
    const auto& stretches = day.plan.stretches;
    const auto waits = std::find_if(stretches.begin(), stretches.end(), [](const DayStretch& one) {
        return one.kind == DayKind::PlateWait;
    });
    ASSERT_NE(waits, stretches.end());
    EXPECT_EQ(waits->label, "S3");
    EXPECT_EQ(waits->to, kFromCold - minutes(5));
    for (const DayStretch& one : stretches) {
        if (one.label == "S3" && one.kind == DayKind::Alignment) {
            EXPECT_EQ(one.from, waits->to);
        }
    }
}

TEST_F(JobDayLog, AForemansWordOnThePlateEndsItsWait) {
    Story story(opening());
    story.wait(seconds(30))
        .then(CheckOverridden{"plate_temperature", "the probe is broken", Authority::Foreman});
    const JobDay day = dayAfter(story, seconds(30));
    ASSERT_TRUE(day.work.benches[0].running);
    EXPECT_EQ(day.work.benches[0].running->plateWait.count(), 0);
    EXPECT_EQ(day.work.benches[0].running->left.preparation, minutes(9));
}

TEST_F(JobDayLog, APlateThatTheLastWeldLeftRightNeedsNoWait) {
    Story first(opening(1));
    first.close();
    write(first);
    Story next(opening(2));
    next.wait(first.now().utc - next.now().utc + minutes(1));
    const Instant begun = next.now();
    auto events = next.weld().events;
    events.front().at = begun;
    write(events);
    Instant now = begun;
    now.boot += minutes(2);
    now.utc += minutes(2);
    EXPECT_EQ(dayAt(now).work.benches[0].running->plateWait.count(), 0);
    EXPECT_EQ(dayAt(now).work.benches[0].running->left.preparation, minutes(8));
    // After another material at the same temperature it is the ten minutes of day_plan.h.
    auto other = first.weld().events;
    auto& opened = std::get<WeldOpened>(other.front().d);
    opened.number = 3;
    opened.plan.material = "PP";
    for (Event& event : other) {
        event.at.boot += minutes(1);
        event.at.utc += minutes(1);
    }
    path = folder.file("b.log");
    write(other);
    write(events);
    EXPECT_EQ(dayAt(now).work.benches[0].running->plateWait, minutes(8));
}

TEST_F(JobDayLog, ATrialJointThatWaitsCountsAsGoodFromItsDecisionOn) {
    WeldOpened trial = opening();
    trial.type = WeldType::Trial;
    Story story(trial);
    story.close();
    const JobDay day = dayAfter(story, minutes(5));
    ASSERT_TRUE(day.work.benches[0].tried);
    EXPECT_EQ(day.work.benches[0].tried->decision, kChosenDecision - minutes(5));
    EXPECT_EQ(day.work.benches[0].tried->label, "S3");
    EXPECT_FALSE(hasTrial(day)) << "none is made besides";
}

TEST_F(JobDayLog, ATrialJointThatIsReleasedAsksForNothing) {
    WeldOpened trial = opening();
    trial.type = WeldType::Trial;
    Story story(trial);
    story.close().then(Decided{Decision::Accept, "bent, no crack"});
    const JobDay day = dayAfter(story, minutes(5));
    ASSERT_TRUE(day.work.benches[0].tried);
    EXPECT_EQ(day.work.benches[0].tried->decision.count(), 0);
    EXPECT_FALSE(hasTrial(day));
}

TEST_F(JobDayLog, ATrialJointThatIsRefusedIsMadeAgain) {
    EXPECT_TRUE(hasTrial(dayAfter(Story(opening(9)).then(WeldAborted{"other", "x"}), minutes(5))))
        << "without any";
    WeldOpened trial = opening();
    trial.type = WeldType::Trial;
    Story story(trial);
    story.close().then(Decided{Decision::CutOut, "it broke in the weld"});
    const JobDay day = dayAfter(story, minutes(5));
    EXPECT_FALSE(day.work.benches[0].tried);
    EXPECT_TRUE(hasTrial(day));
}

TEST_F(JobDayLog, CountsWithTheShopsOwnTimesFromFiveJointsOn) {
    const auto planned = [&](std::int64_t joints) {
        Instant now = test::closedWeld(joints).back().at;
        now.utc += minutes(5);
        return dayAt(now).times.at({"S4", "bench-a"});
    };
    for (std::int64_t joint = 1; joint <= 4; ++joint) {
        write(test::closedWeld(joint));
    }
    const SeamWork few = planned(4);
    EXPECT_EQ(few.preparation, TimeFrom::Chosen);
    EXPECT_EQ(few.times.preparation, minutes(10));
    write(test::closedWeld(5));
    const SeamWork many = planned(5);
    EXPECT_EQ(many.preparation, TimeFrom::Shop);
    EXPECT_EQ(many.alignment, TimeFrom::Shop);
    EXPECT_EQ(many.release, TimeFrom::Shop);
    // tests/support/story.cpp: each aligned 50 s from the 50th on; from its first step of release
    // to its last.
    EXPECT_EQ(many.times.preparation, seconds(50));
    EXPECT_EQ(many.times.alignment, seconds(50));
    EXPECT_EQ(many.times.release, seconds(16));
    // What runs is counted with them, too.
    Story story(opening(6));
    story.prepare();
    auto events = story.weld().events;
    for (Event& event : events) {
        event.at.boot += std::chrono::hours(6);
        event.at.utc += std::chrono::hours(6);
    }
    write(events);
    const JobDay day = dayAt(events.back().at);
    const auto& running = day.work.benches[0].running;
    ASSERT_TRUE(running);
    EXPECT_EQ(running->left.alignment, seconds(50));
    EXPECT_EQ(running->left.release, seconds(16));
}

TEST_F(JobDayLog, GoesOnWithoutAWeldThatCantBeReadAndNamesIt) {
    write(Story(opening(1)).close());
    Story story(opening(2));
    story.wait(minutes(30)).align();
    auto events = story.weld().events;
    write(events);
    EXPECT_TRUE(dayAt(story.now()).unread.empty());
    damage(2, 3);
    JobDay day = dayAt(story.now());
    EXPECT_FALSE(day.work.benches[0].running);
    EXPECT_FALSE(day.plan.stretches.empty()) << "S4 is planned all the same";
    ASSERT_EQ(day.unread.size(), 1U);
    EXPECT_EQ(day.unread[0].weld, test::weldName(2));
    EXPECT_EQ(day.unread[0].number, 2);
    EXPECT_EQ(day.unread[0].bench, "bench-a");
    EXPECT_NE(day.unread[0].why.find("event 3"), std::string::npos) << day.unread[0].why;
    // One that is closed, too: where it left the plate is not known.
    damage(1, 2);
    day = dayAt(story.now());
    EXPECT_EQ(day.unread.size(), 2U);
    EXPECT_EQ(day.work.benches[0].plate.material, "");
    // Its opening: not even the number is left, once the list is made anew.
    damage(2, 1);
    {
        SQLite::Database tool(path, SQLite::OPEN_READWRITE);
        tool.exec("DROP TABLE joint_text");
    }
    day = dayAt(story.now());
    const auto nameless = std::find_if(day.unread.begin(), day.unread.end(), [](const auto& one) {
        return one.weld == test::weldName(2);
    });
    ASSERT_NE(nameless, day.unread.end());
    EXPECT_EQ(nameless->number, 0);
}

TEST_F(JobDayLog, AJointOfTheJobThatCantBeReadWaitsForTheForeman) {
    WeldOpened opened = opening(3);
    opened.seam = "S4";
    Story story(opened);
    story.close();
    EXPECT_EQ(dayAfter(story, minutes(5)).progress.count(JobSeamState::Done), 1U);
    damage(3, 4); // after its line was worked out
    const JobDay day = dayAt(story.now());
    ASSERT_EQ(day.progress.seams.size(), 1U);
    EXPECT_EQ(day.progress.seams[0].state, JobSeamState::ToDecide);
    EXPECT_EQ(day.progress.seams[0].why.rfind("joint 3 can't be read: ", 0), 0U)
        << day.progress.seams[0].why;
}

} // namespace
} // namespace seamclock
