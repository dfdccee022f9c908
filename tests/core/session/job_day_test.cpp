// The day's plan of the demo's job on the demo's benches, without a log and with one.
#include "core/session/job_day.h"

#include "core/log/fact.h"
#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/log/world.h"
#include "core/session/job_order.h"
#include "core/session/session.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>
#include <string>
#include <utility>

namespace seamclock {
namespace {

using std::chrono::minutes;

BenchDocument benchOf(const std::string& name) {
    auto read = readBenchFile(test::resource("demo/bench-" + name + ".json"));
    EXPECT_TRUE(read) << read.error().detail;
    return *read;
}

JobDayAsk demo() {
    JobDayAsk ask;
    auto job = readFirstJob(test::resource("demo"));
    EXPECT_TRUE(job) << job.error().detail;
    ask.seams = job->seams;
    ask.benches = {benchOf("east"), benchOf("west")};
    ask.people = {"person:ilva"};
    ask.procedures = readProcedureFolder(test::resource("procedures")).value();
    ask.now = test::FakeClock().now();
    return ask;
}

TEST(JobDay, PlansTheWholeDemoJob) {
    const JobDayAsk ask = demo();
    const auto day = jobDay(ask, nullptr);
    ASSERT_TRUE(day) << day.error().detail;
    EXPECT_TRUE(day->plan.impossible.empty());
    EXPECT_EQ(day->progress.count(JobSeamState::Open), ask.seams.size());
    EXPECT_LE(day->plan.bound.atLeast, day->plan.finish);
    for (const DayStretch& one : day->plan.stretches) {
        // As the job wishes: S1 and S5 on the east bench, the others on the west one.
        const bool east = one.label == "S1" || one.label == "S5";
        EXPECT_EQ(day->work.benches[one.bench].id, east ? "east" : "west") << one.label;
    }
    const auto& s1 = day->times.at({"S1", "east"});
    EXPECT_EQ(s1.alignment, TimeFrom::Chosen);
    EXPECT_EQ(s1.times.soak, std::chrono::seconds(150)); // PE-HD 15 mm, 10 s per mm (trade.md)
}

TEST(JobOrder, SaysWhoseSeamItIsAndOfWhichPart) {
    JobDayAsk ask = demo();
    const auto order = orderOf(ask.seams[0], ask.procedures);
    ASSERT_TRUE(order) << order.error().detail;
    EXPECT_EQ(order->seam, ask.seams[0].label);
    EXPECT_EQ(order->job, ask.seams[0].job);
    EXPECT_EQ(order->part, "Brine settling tank, 1.4 m across, with weir and lid");
    ask.seams[0].part.clear();
    EXPECT_FALSE(orderOf(ask.seams[0], ask.procedures)->part);
}

// A job's table may hold ten times as many seams as a plan.
TEST(JobDay, LeavesForLaterWhatNoPlanHolds) {
    JobDayAsk ask = demo();
    ask.benches = {benchOf("west")};
    JobSeam seam = ask.seams[1];
    ask.seams.clear();
    for (std::size_t i = 0; i < kMostDaySeams + 2; ++i) {
        seam.label = "S" + std::to_string(i);
        ask.seams.push_back(seam);
    }
    auto day = jobDay(ask, nullptr);
    ASSERT_TRUE(day) << day.error().detail;
    EXPECT_EQ(day->later, 2U);
    EXPECT_EQ(day->work.seams.size(), kMostDaySeams);
    EXPECT_TRUE(day->plan.impossible.empty());
    EXPECT_GT(day->plan.finish.count(), 0);
    ask.seams.resize(kMostDaySeams);
    day = jobDay(ask, nullptr);
    ASSERT_TRUE(day);
    EXPECT_EQ(day->later, 0U);
}

TEST(JobDay, SaysWhyASeamIsNotPlanned) {
    JobDayAsk ask = demo();
    ask.benches = {benchOf("west")};
    auto day = jobDay(ask, nullptr);
    ASSERT_TRUE(day);
    ASSERT_EQ(day->plan.impossible.size(), 2U);
    EXPECT_EQ(
        day->plan.impossible[0],
        (DayImpossible{"S1", "it is wished on the bench \"east\", which is not planned for"}));
    ask = demo();
    ask.seams.resize(1);
    ask.seams[0].procedure = "nobody";
    day = jobDay(ask, nullptr);
    ASSERT_TRUE(day);
    EXPECT_EQ(day->plan.impossible[0].why, "the procedure \"nobody\" is not there");
    ask = demo();
    ask.seams.resize(1);
    ask.seams[0].benchFile.clear();
    ask.seams[0].lengthsMm = {50'000};
    day = jobDay(ask, nullptr);
    ASSERT_TRUE(day);
    const std::string why = day->plan.impossible[0].why;
    EXPECT_EQ(why.rfind("east: ", 0), 0U) << why;
    EXPECT_NE(why.find("; west: "), std::string::npos) << why;
}

TEST(JobDay, GoesOnFromWhatRuns) {
    test::ScratchFolder folder;
    test::FakeClock clock;
    const std::string path = folder.file("a.log");
    JobDayAsk ask = demo();
    auto writer = LogWriter<Production>::open(path, clock);
    ASSERT_TRUE(writer) << writer.error().detail;
    auto session = Session<Production>::start(*writer, clock);
    ASSERT_TRUE(session) << session.error().detail;
    const auto s2 = std::find_if(
        ask.seams.begin(), ask.seams.end(), [](const JobSeam& one) { return one.label == "S2"; });
    auto order = orderOf(*s2, ask.procedures);
    ASSERT_TRUE(order) << order.error().detail;
    ASSERT_TRUE(session->open(*order, "person:ilva"));
    ASSERT_TRUE(writer->flush());
    clock.wait(minutes(4));
    ask.now = clock.now();
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader);
    const auto day = jobDay(ask, &*reader);
    ASSERT_TRUE(day) << day.error().detail;
    EXPECT_EQ(day->progress.count(JobSeamState::Running), 1U);
    EXPECT_EQ(day->work.seams.size(), ask.seams.size() - 1);
    const DayBench& west = day->work.benches[1];
    ASSERT_TRUE(west.running);
    EXPECT_EQ(west.running->label, "S2");
    // From cold to 210 °C, ten minutes and 12 s for each of 190 K, and nobody has read the plate
    // yet.
    EXPECT_EQ(west.running->plateWait, minutes(48 - 4));
    EXPECT_EQ(west.running->left.preparation, minutes(48 - 4)) << "it is prepared meanwhile";
    EXPECT_EQ(west.plate, (PlateUse{"PE-HD", 210'000})); // nobody heats it anew
    EXPECT_EQ(day->work.benches[0].plate.material, "");  // the other is cold
    // Its tablet started again: it doesn't know the time, so all of the stretch is counted.
    clock.reboot(minutes(1));
    ask.now = clock.now();
    const auto after = jobDay(ask, &*reader);
    ASSERT_TRUE(after);
    EXPECT_EQ(after->work.benches[1].running->left.preparation, minutes(48));
}

/// Whose hands weld at each of the demo's two benches while those two people weld there.
std::vector<std::size_t> handsAt(
    const std::vector<std::string>& planned, const std::string& first, const std::string& second) {
    test::ScratchFolder folder;
    test::FakeClock clock;
    const std::string path = folder.file("a.log");
    JobDayAsk ask = demo();
    ask.people = planned;
    auto writer = LogWriter<Production>::open(path, clock);
    EXPECT_TRUE(writer) << writer.error().detail;
    auto session = Session<Production>::start(*writer, clock);
    EXPECT_TRUE(session) << session.error().detail;
    for (const auto& [label, who] : {std::pair("S1", first), std::pair("S2", second)}) {
        const auto seam =
            std::find_if(ask.seams.begin(), ask.seams.end(), [name = label](const JobSeam& one) {
                return one.label == name;
            });
        auto order = orderOf(*seam, ask.procedures);
        EXPECT_TRUE(order) << order.error().detail;
        EXPECT_TRUE(session->open(*order, who));
    }
    EXPECT_TRUE(writer->flush());
    ask.now = clock.now();
    auto reader = LogReader::open(path);
    const auto day = jobDay(ask, &*reader);
    EXPECT_TRUE(day) << day.error().detail;
    std::vector<std::size_t> out;
    for (const DayBench& bench : day->work.benches) {
        if (bench.running) {
            out.push_back(bench.running->person);
        }
    }
    return out;
}

TEST(JobDay, TwoWhomThePlanDoesNotNameHaveTwoPairsOfHands) {
    const auto hands = handsAt({"operator 1", "operator 2"}, "person:ilva", "person:oddo");
    ASSERT_EQ(hands.size(), 2U);
    EXPECT_NE(hands[0], hands[1]);
}

// The weld of somebody who isn't planned came first, and takes nobody's hands who is at a bench.
TEST(JobDay, WhoIsPlannedForKeepsHisOwnHandsAtARunningWeld) {
    const auto hands = handsAt({"person:ilva", "person:oddo"}, "person:somebody", "person:ilva");
    ASSERT_EQ(hands.size(), 2U);
    EXPECT_EQ(hands[1], 0U) << "Ilva's own";
    EXPECT_EQ(hands[0], 1U) << "the hands that are left";
}

TEST(JobDay, ARunningWeldIsToldFromAnotherJobsSeamOfThatLabel) {
    test::ScratchFolder folder;
    test::FakeClock clock;
    const std::string path = folder.file("a.log");
    JobDayAsk ask = demo();
    auto writer = LogWriter<Production>::open(path, clock);
    ASSERT_TRUE(writer) << writer.error().detail;
    auto session = Session<Production>::start(*writer, clock);
    ASSERT_TRUE(session) << session.error().detail;
    auto order = orderOf(ask.seams.front(), ask.procedures);
    ASSERT_TRUE(order) << order.error().detail;
    const std::string job = ask.seams.front().job;
    const std::string label = ask.seams.front().label;
    ASSERT_TRUE(session->open(*order, "person:ilva"));
    ASSERT_TRUE(writer->flush());
    ask.now = clock.now();
    for (JobSeam& seam : ask.seams) {
        seam.job = "another";
    }
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader);
    const auto day = jobDay(ask, &*reader);
    ASSERT_TRUE(day) << day.error().detail;
    EXPECT_EQ(day->work.seams.size(), ask.seams.size()) << "none of them is under way";
    std::set<std::string> labels;
    for (const DayBench& bench : day->work.benches) {
        if (bench.running) {
            labels.insert(bench.running->label);
        }
    }
    EXPECT_EQ(labels, (std::set<std::string>{job + " " + label}));
}

// As the bench asks: core/session/carry_test.cpp holds the rule itself.
TEST(JobDay, LaysOutTheTrialJointsThatTheBenchWillAskFor) {
    test::ScratchFolder folder;
    test::FakeClock clock;
    const std::string path = folder.file("a.log");
    JobDayAsk ask = demo();
    const auto trials = [&](const JobDay& day) {
        std::multiset<std::string> out;
        for (const DayStretch& one : day.plan.stretches) {
            if (one.kind == DayKind::Decision) {
                EXPECT_TRUE(one.trial);
                EXPECT_FALSE(one.person) << "a foreman, who is none of the welders";
                out.insert(day.work.benches[one.bench].id);
            }
        }
        return out;
    };
    const auto first = jobDay(ask, nullptr);
    ASSERT_TRUE(first);
    // The demo job's own saying: on the east bench S1 of PE-HD and S5 of PP, on the west one S2 to
    // S4 of PE-HD in one thickness, and S6 of PP.
    std::set<std::pair<std::string, std::string>> setUps;
    for (const DaySeam& seam : first->work.seams) {
        setUps.emplace(seam.on[0] ? "east" : "west", seam.setUp);
    }
    EXPECT_EQ(setUps.size(), 4U);
    EXPECT_EQ(trials(*first), (std::multiset<std::string>{"east", "east", "west", "west"}))
        << "one for each set-up of a bench";
    EXPECT_EQ(first->work.decision, kChosenDecision);

    auto writer = LogWriter<Production>::open(path, clock);
    ASSERT_TRUE(writer) << writer.error().detail;
    auto session = Session<Production>::start(*writer, clock);
    ASSERT_TRUE(session) << session.error().detail;
    const auto s1 = std::find_if(
        ask.seams.begin(), ask.seams.end(), [](const JobSeam& one) { return one.label == "S1"; });
    auto order = orderOf(*s1, ask.procedures);
    ASSERT_TRUE(order) << order.error().detail;
    order->type = WeldType::Trial;
    ASSERT_TRUE(session->open(*order, "person:ilva"));
    ASSERT_TRUE(writer->flush());
    ask.now = clock.now();
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader);
    auto day = jobDay(ask, &*reader);
    ASSERT_TRUE(day) << day.error().detail;
    // Under way it counts for S1, which is still to be made, and is not asked for again.
    const DayBench& east = day->work.benches[0];
    ASSERT_TRUE(east.running && east.tried);
    EXPECT_TRUE(east.running->trial);
    EXPECT_EQ(east.running->label, "S1");
    EXPECT_EQ(east.tried->decision, kChosenDecision);
    EXPECT_EQ(day->work.seams.size(), ask.seams.size());
    EXPECT_EQ(trials(*day), trials(*first));
    // Another plate is another document: what was made before stands for nothing.
    ask.benches[0].sha256 = std::string(64, 'c');
    day = jobDay(ask, &*reader);
    ASSERT_TRUE(day);
    EXPECT_FALSE(day->work.benches[0].tried);
}

TEST(JobDay, InPracticeNobodyTestsWhatIsPractised) {
    test::ScratchFolder folder;
    test::FakeClock clock;
    const std::string path = folder.file("a.log");
    ASSERT_TRUE(LogWriter<Practice>::open(path, clock));
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader);
    const auto day = jobDay(demo(), &*reader);
    ASSERT_TRUE(day) << day.error().detail;
    for (const DaySeam& seam : day->work.seams) {
        EXPECT_EQ(seam.setUp, "");
    }
}

TEST(JobDay, SeamsOfTwoJobsWithOneLabelAreTwoSeams) {
    JobDayAsk ask = demo();
    JobSeam other = ask.seams.front();
    other.job = "QV-131";
    ask.seams.push_back(other);
    const auto day = jobDay(ask, nullptr);
    ASSERT_TRUE(day);
    std::set<std::string> planned;
    for (const DayStretch& one : day->plan.stretches) {
        planned.insert(one.label);
    }
    EXPECT_EQ(planned.size(), ask.seams.size());
    EXPECT_EQ(planned.count("QV-118 S1"), 1U); // the demo's job
    EXPECT_EQ(planned.count("QV-131 S1"), 1U);
    EXPECT_EQ(planned.count("S2"), 1U);
}

// Who may weld what comes from the certificates that the log keeps; without any, anybody may.
TEST(JobDay, WhoHasNoCertificateIsNotPlannedForIt) {
    const test::ScratchFolder folder;
    test::FakeClock clock;
    const std::string path = folder.file("a.log");
    auto writer = LogWriter<Production>::open(path, clock);
    ASSERT_TRUE(writer);
    const auto note = [&](const std::string& person, const char* scope, const char* until) {
        ASSERT_TRUE(
            writer->note(clock.now(), "station", person, CertificateNoted{scope, until}, {}));
        ASSERT_TRUE(writer->flush());
    };
    JobDayAsk ask = demo();
    ask.people = {"person:ilva", "person:bram"};
    const auto plan = [&] {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader);
        const auto day = jobDay(ask, &*reader);
        EXPECT_TRUE(day) << (day ? "" : day.error().detail);
        return *day;
    };
    EXPECT_TRUE(plan().work.seams.front().welders.empty()) << "the shop keeps none here";
    note("person:bram", "PE-HD 3-20 mm", "2099-06-30");
    JobDay day = plan();
    for (const DayStretch& one : day.plan.stretches) {
        if (one.person && one.kind != DayKind::Release) {
            EXPECT_EQ(one.person, 1U) << one.label << ": Ilva has none";
        }
    }
    std::vector<std::string> left;
    for (const DayImpossible& one : day.plan.impossible) {
        left.push_back(one.label);
        EXPECT_EQ(one.why, "nobody who is here has a certificate for its sheets that holds today");
    }
    EXPECT_EQ(left, (std::vector<std::string>{"S5", "S6"}))
        << "those of PP (the demo job's own saying)";
    note("person:ilva", "PE-HD, PP 3-20 mm", "2099-06-30");
    EXPECT_TRUE(plan().plan.impossible.empty());
    note("person:ilva", "PE-HD, PP 3-20 mm", "2000-06-30");
    EXPECT_EQ(plan().plan.impossible.size(), 2U) << "expired";
    // Of hands that are only counted nobody can ask for a certificate.
    ask.people = {"operator 1", "operator 2"};
    EXPECT_TRUE(plan().plan.impossible.empty());
}

// A sheet that measures more than its nominal thickness is welded by that one's certificate.
TEST(JobDay, ACertificateIsHeldAgainstTheNominalThickness) {
    const test::ScratchFolder folder;
    test::FakeClock clock;
    const std::string path = folder.file("a.log");
    auto writer = LogWriter<Production>::open(path, clock);
    ASSERT_TRUE(writer);
    ASSERT_TRUE(writer->note(
        clock.now(), "station", "person:ilva", CertificateNoted{"PE-HD 3-15 mm", "2099-06-30"},
        {}));
    ASSERT_TRUE(writer->flush());
    JobDayAsk ask = demo();
    ask.seams.resize(1); // of 15 mm
    for (Sheet& sheet : ask.seams[0].sheets) {
        sheet.thicknessUm = 15'300;
    }
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader);
    const auto day = jobDay(ask, &*reader);
    ASSERT_TRUE(day) << day.error().detail;
    EXPECT_TRUE(day->plan.impossible.empty());
}

} // namespace
} // namespace seamclock
