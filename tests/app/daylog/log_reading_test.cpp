// The reading beside the window, over real logs in files.
#include "app/daylog/log_reading.h"

#include "core/copies/log_import.h"
#include "core/log/log_writer.h"
#include "core/log/weld_rows.h"
#include "core/log/world.h"
#include "core/weld/event_codec.h"
#include "tests/support/fake_clock.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/story.h"

#include <QCoreApplication>
#include <filesystem>
#include <fstream>
#include <functional>
#include <gtest/gtest.h>
#include <map>
#include <utility>

namespace seamclock {
namespace {

std::string weldName(int number) {
    std::string digits = std::to_string(number);
    return "weld:00000000-0000-4000-8000-" + std::string(12 - digits.size(), '0') + digits;
}

class Reading : public testing::Test {
protected:
    /// So many closed joints, the higher number the later.
    void write(int joints, const std::function<void(WeldOpened&)>& change = {}) {
        test::Story story;
        story.close();
        auto writer = LogWriter<Production>::open(path, clock);
        ASSERT_TRUE(writer) << writer.error().detail;
        for (int number = 1; number <= joints; ++number) {
            std::vector<LogRow> rows;
            for (Event event : story.weld().events) {
                event.subject = weldName(number);
                event.at.utc += std::chrono::hours(number);
                event.at.boot += std::chrono::hours(number);
                if (auto* opened = std::get_if<WeldOpened>(&event.d)) {
                    opened->number = number;
                    if (change) {
                        change(*opened);
                    }
                }
                auto body = toBody(event);
                ASSERT_TRUE(body);
                rows.push_back({event.subject, event.n, *body});
            }
            writer->submit(rows);
        }
        ASSERT_TRUE(writer->flush());
    }
    static void settle(const LogReading& reading) {
        while (reading.isBusy()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
};

TEST_F(Reading, GivesPagesThatMeet) {
    write(25);
    LogReading reading(path);
    JointFilter filter;
    filter.limit = 10;
    QStringList numbers;
    std::vector<bool> more;
    for (int page = 0; page < 3; ++page) {
        reading.askLines(filter, {}, UnitSystem::Metric, [&](const Result<DayLines>& lines) {
            ASSERT_TRUE(lines) << lines.error().detail;
            for (const JointRowView& row : lines->rows) {
                numbers << row.number;
                EXPECT_EQ(row.reason, "within limits");
            }
            more.push_back(lines->more);
            filter.after = lines->last;
        });
        settle(reading);
    }
    ASSERT_EQ(numbers.size(), 25);
    for (int i = 0; i < 25; ++i) {
        EXPECT_EQ(numbers[i], QString::number(25 - i));
    }
    EXPECT_EQ(more, (std::vector<bool>{true, true, false}));
}

TEST_F(Reading, GivesOneJointWhole) {
    write(3);
    LogReading reading(path);
    bool came = false;
    reading.askJoint(weldName(2), [&](const Result<JointSeen>& joint) {
        ASSERT_TRUE(joint) << joint.error().detail;
        ASSERT_TRUE(joint->record);
        EXPECT_EQ(joint->line.number, 2);
        EXPECT_EQ(joint->record->events.size(), static_cast<std::size_t>(joint->line.events));
        EXPECT_FALSE(joint->bench) << "the story's bench is no document";
        EXPECT_TRUE(joint->coupons.empty());
        came = true;
    });
    settle(reading);
    EXPECT_TRUE(came);
    CouponTested bent;
    bent.test = "bend";
    bent.material = "PE-HD";
    bent.thicknessUm = 8'000;
    bent.angleMilli = {160'000};
    bent.cracked = {0};
    bent.weld = weldName(2);
    {
        auto writer = LogWriter<Production>::open(path, clock);
        ASSERT_TRUE(writer) << writer.error().detail;
        ASSERT_TRUE(writer->note(clock.now(), "person:ines", "coupon:1", bent));
        ASSERT_TRUE(writer->flush());
    }
    std::vector<CouponSeries> cut;
    reading.askJoint(weldName(2), [&](const Result<JointSeen>& joint) {
        ASSERT_TRUE(joint) << joint.error().detail;
        cut = joint->coupons;
    });
    settle(reading);
    ASSERT_EQ(cut.size(), 1U);
    EXPECT_EQ(cut[0].now(), bent);
    reading.askJoint(weldName(9), [&](const Result<JointSeen>& joint) {
        ASSERT_FALSE(joint);
        EXPECT_EQ(joint.error().code, ErrorCode::Missing);
        came = false;
    });
    settle(reading);
    EXPECT_FALSE(came);
}

// Two shops name their people alike: a joint's own log knows whom it means.
TEST_F(Reading, NamesThePeopleOfAJointOfAnotherLogByThatLog) {
    write(1);
    const std::string other = path + ".other";
    const std::string welder = test::closedWeld(11).front().by;
    for (const auto& [file, name] : {std::pair{path, "Jan Tolm"}, {other, "Jan Verrik"}}) {
        auto writer = LogWriter<Production>::open(file, clock);
        ASSERT_TRUE(writer) << writer.error().detail;
        ASSERT_TRUE(writer->note(clock.now(), "station", welder, PersonSet{name, "operator"}));
        if (file == other) {
            writer->submit(test::rowsOf(test::closedWeld(11)), test::sampleDocuments());
        }
        ASSERT_TRUE(writer->flush());
    }
    ASSERT_TRUE(importLog(other, path, clock));
    LogReading reading(path);
    int came = 0;
    reading.askJoint(weldName(11), [&](const Result<JointSeen>& joint) {
        ASSERT_TRUE(joint) << joint.error().detail;
        ASSERT_TRUE(joint->people);
        EXPECT_EQ(joint->people->at(welder), "Jan Verrik");
        ++came;
    });
    settle(reading);
    reading.askJoint(weldName(1), [&](const Result<JointSeen>& joint) {
        ASSERT_TRUE(joint) << joint.error().detail;
        EXPECT_FALSE(joint->people) << "it is this log's own";
        ++came;
    });
    settle(reading);
    EXPECT_EQ(came, 2);
}

TEST_F(Reading, SaysWhyALogCantBeReadAndReadsItOnceItCan) {
    std::ofstream(path) << "no log";
    LogReading reading(path);
    std::string said;
    const auto ask = [&] {
        said.clear();
        reading.askHead(
            [&](const Result<std::int64_t>& head) { said = head ? "" : head.error().detail; });
        settle(reading);
    };
    ask();
    EXPECT_NE(said.find(path), std::string::npos) << said;
    ASSERT_TRUE(std::filesystem::remove(path));
    write(1);
    ask();
    EXPECT_EQ(said, "");
}

TEST_F(Reading, NamesTheValuesToChooseFrom) {
    write(2);
    LogReading reading(path);
    std::map<FilterBy, std::vector<std::string>> found;
    for (const FilterBy by :
         {FilterBy::Day, FilterBy::Bench, FilterBy::Verdict, FilterBy::Operator, FilterBy::Material,
          FilterBy::Job}) {
        reading.askValues(by, {}, [&found, by](const Result<std::vector<std::string>>& values) {
            ASSERT_TRUE(values);
            found[by] = *values;
        });
    }
    settle(reading);
    using Values = std::vector<std::string>;
    EXPECT_EQ(found[FilterBy::Day], (Values{"2030-01-13"}));
    reading.askValues(FilterBy::Day, "2030-01-13", [&found](const Result<Values>& values) {
        ASSERT_TRUE(values);
        found[FilterBy::Day] = *values;
    });
    settle(reading);
    EXPECT_EQ(found[FilterBy::Day], Values()) << "none lies before the only one";
    EXPECT_EQ(found[FilterBy::Bench], (Values{"bench-a"}));
    EXPECT_EQ(found[FilterBy::Verdict], (Values{"within limits"}));
    EXPECT_EQ(found[FilterBy::Operator], (Values{"person:op-1"}));
    EXPECT_EQ(found[FilterBy::Material], (Values{"PE-HD"}));
    EXPECT_EQ(found[FilterBy::Job], Values()) << "no joint names one";
}

TEST_F(Reading, KnowsTheJobsThatItsJointsName) {
    write(5, [](WeldOpened& opened) {
        opened.seam = opened.number == 3 ? "S1/R1" : "S" + std::to_string(opened.number);
        if (opened.number != 5) {
            opened.job = opened.number == 4 ? "QV-131" : "QV-118";
        }
    });
    LogReading reading(path);
    std::vector<DayJob> jobs;
    reading.askJobs([&jobs](const Result<std::vector<DayJob>>& come) {
        ASSERT_TRUE(come);
        jobs = *come;
    });
    settle(reading);
    EXPECT_EQ(jobs, (std::vector<DayJob>{{"QV-118", {"S1", "S2"}}, {"QV-131", {"S4"}}}));
    // This tablet's own comes first, whether the log knows it or not.
    EXPECT_EQ(
        withOwn(jobs, {"QV-131", {"S4", "S9"}}),
        (std::vector<DayJob>{{"QV-131", {"S4", "S9"}}, {"QV-118", {"S1", "S2"}}}));
    EXPECT_EQ(withOwn(jobs, {"", {"A"}}).front(), (DayJob{"", {"A"}}));
    EXPECT_EQ(withOwn(jobs, {}), jobs);
    // What is chosen is what the list shows.
    DayFilter filter;
    filter.job = "QV-118";
    filter.seams = jobs.front().seams;
    std::size_t lines = 0;
    reading.askLines(
        asked(filter, {}), {}, UnitSystem::Metric, [&lines](const Result<DayLines>& come) {
            ASSERT_TRUE(come);
            lines = come->rows.size();
        });
    settle(reading);
    EXPECT_EQ(lines, 3U);
}

TEST_F(Reading, GoesAwayWithQuestionsOpen) {
    write(5);
    int told = 0;
    {
        LogReading reading(path);
        for (int i = 0; i < 20; ++i) {
            reading.askLines({}, {}, UnitSystem::Metric, [&](const Result<DayLines>&) { ++told; });
        }
    }
    QCoreApplication::processEvents();
    EXPECT_EQ(told, 0);
}

} // namespace
} // namespace seamclock
