// Charts and medians out of a real log, against numbers that were put into it.
#include "core/quality/shop_charts.h"

#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

/// The sample weld, whose alignment takes 50 s, with so much more of it.
std::vector<Event> aligned(std::int64_t number, Milliseconds more) {
    auto events = test::closedWeld(number);
    bool later = false;
    for (Event& event : events) {
        later = later || std::holds_alternative<SoakStarted>(event.d);
        if (later) {
            event.at.boot += more;
            event.at.utc += more;
        }
    }
    return events;
}

class ShopCharts : public ::testing::Test {
protected:
    /// One joint for each: seconds of alignment beyond 50.
    void write(const std::vector<int>& more) {
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        for (const int seconds : more) {
            writer->submit(
                test::rowsOf(aligned(++number, std::chrono::seconds(seconds))),
                test::sampleDocuments());
        }
        ASSERT_TRUE(writer->flush());
    }
    std::vector<ShopChart> charts(JointMeasure measure, const MeasureFilter& filter = {}) {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader);
        auto made = shopCharts(*reader, {measure}, filter);
        EXPECT_TRUE(made) << (made ? "" : made.error().detail);
        return made.value_or(std::vector<ShopChart>());
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    std::string path = folder.file("a.log");
    std::int64_t number = 0;
};

TEST_F(ShopCharts, ShowWhatTheSampleWeldsTook) {
    write({0, 2, 1});
    const auto alignment = charts(JointMeasure::Alignment);
    ASSERT_EQ(alignment.size(), 1U);
    EXPECT_EQ(alignment[0].joints, (LikeJoints{"bench-a", "person:op-1", "invented", 8'000}));
    EXPECT_EQ(alignment[0].values, (std::vector<double>{50, 52, 51}));
    EXPECT_EQ(alignment[0].numbers, (std::vector<std::int64_t>{1, 2, 3}));
    ASSERT_TRUE(alignment[0].limits);
    EXPECT_DOUBLE_EQ(alignment[0].limits->mean, 51);
    EXPECT_DOUBLE_EQ(alignment[0].limits->meanRange, 1.5); // of 2 and 1
    // tests/support/story.cpp: 4 s of changeover, 211 °C, the reading from 15.5 to 15.0.
    EXPECT_EQ(charts(JointMeasure::Changeover)[0].values, (std::vector<double>{4, 4, 4}));
    EXPECT_EQ(charts(JointMeasure::Plate)[0].values, (std::vector<double>{211, 211, 211}));
    EXPECT_EQ(charts(JointMeasure::Drift)[0].values, (std::vector<double>{-0.5, -0.5, -0.5}));
}

TEST_F(ShopCharts, OfAllMeasuresAtOnceAreThoseOfEach) {
    write({0, 2, 1});
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader);
    const auto all = shopCharts(*reader, chartedMeasures(), {});
    ASSERT_TRUE(all) << all.error().detail;
    std::vector<ShopChart> each;
    for (const JointMeasure measure : chartedMeasures()) {
        for (const ShopChart& chart : charts(measure)) {
            each.push_back(chart);
        }
    }
    EXPECT_EQ(each.size(), 4U);
    EXPECT_EQ(*all, each);
    EXPECT_TRUE(shopCharts(*reader, {}, {})->empty());
}

TEST_F(ShopCharts, ARisingAlignmentIsNamedForAColdOrDirtyPlate) {
    write({0, 3, 1, 2, 3, 4, 5});
    ASSERT_EQ(charts(JointMeasure::Alignment).size(), 1U);
    EXPECT_FALSE(charts(JointMeasure::Alignment)[0].plateColdOrDirty) << "five that rise";
    write({6});
    const auto rising = charts(JointMeasure::Alignment);
    ASSERT_EQ(rising.size(), 1U);
    EXPECT_TRUE(rising[0].plateColdOrDirty) << "six";
    write({0, 3});
    EXPECT_FALSE(charts(JointMeasure::Alignment)[0].plateColdOrDirty) << "it came down again";
}

// Eight above the mean, of which the last six come down: whoever wiped the plate is not told to.
TEST_F(ShopCharts, WhatComesDownAgainIsNotNamedForThePlate) {
    write({0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 19, 20});
    write({19, 18, 17, 16, 15, 14});
    const auto down = charts(JointMeasure::Alignment);
    ASSERT_EQ(down.size(), 1U);
    EXPECT_TRUE(down[0].endsWith(ChartSign::AboveMean));
    EXPECT_TRUE(down[0].endsWith(ChartSign::Falling));
    EXPECT_FALSE(down[0].plateColdOrDirty);
    write({15, 14});
    EXPECT_FALSE(charts(JointMeasure::Alignment)[0].endsWith(ChartSign::Falling));
    EXPECT_TRUE(charts(JointMeasure::Alignment)[0].plateColdOrDirty) << "it stays long";
}

TEST_F(ShopCharts, AreOfJointsThatAreAlikeAndMatch) {
    write({0, 1});
    MeasureFilter filter;
    filter.bench = "bench-b";
    EXPECT_TRUE(charts(JointMeasure::Alignment, filter).empty());
    filter.bench = "bench-a";
    filter.by = "person:op-1";
    filter.procedure = "invented";
    filter.thicknessUm = 8'000;
    filter.fromDay = "2030-01-01";
    filter.toDay = "2030-12-31";
    EXPECT_EQ(charts(JointMeasure::Alignment, filter).size(), 1U);
    filter.fromDay = "2030-06-01";
    EXPECT_TRUE(charts(JointMeasure::Alignment, filter).empty());
}

TEST_F(ShopCharts, AreTheSameWithoutTheCacheAndWithAnOldOne) {
    write({0, 2, 1, 5});
    const auto whole = charts(JointMeasure::Alignment);
    {
        test::BehindTheBack tool(path);
        tool.database().exec("DELETE FROM joint_measure WHERE number = 2");
        tool.database().exec("UPDATE joint_state SET seq = 3"); // as the guard would have it
    }
    EXPECT_EQ(charts(JointMeasure::Alignment), whole);
    {
        SQLite::Database tool(path, SQLite::OPEN_READWRITE);
        tool.exec("DROP TABLE joint_measure");
    }
    EXPECT_EQ(charts(JointMeasure::Alignment), whole);
    write({});
    EXPECT_EQ(charts(JointMeasure::Alignment), whole);
}

TEST_F(ShopCharts, MediansNeedFiveJointsAndTakeTheLastTen) {
    const LikeTimes like{"bench-a", "invented", 8'000};
    const auto medians = [&] {
        auto reader = LogReader::open(path);
        EXPECT_TRUE(reader);
        return medianTimes(*reader).value_or(std::map<LikeTimes, MedianTimes>());
    };
    write({90, 90, 1, 2});
    EXPECT_TRUE(medians().empty());
    write({3});
    EXPECT_EQ(medians().at(like).alignment, std::chrono::seconds(53)); // of 51, 52, 53, 140, 140
    write({4, 5, 6, 7, 8, 9, 10});
    // The last ten: 1 to 10 s more; the lower of the two in the middle.
    EXPECT_EQ(medians().at(like).alignment, std::chrono::seconds(55));
    EXPECT_EQ(medians().at(like).preparation, std::chrono::seconds(50));
    EXPECT_EQ(medians().at(like).release, std::chrono::seconds(16));
}

// Each sheet is measured, and no two measure the same: what they were planned as is what is alike.
TEST_F(ShopCharts, OfOneNominalThicknessAreOneHoweverTheSheetsMeasure) {
    auto writer = LogWriter<Production>::open(path, clock, test::quick());
    ASSERT_TRUE(writer) << writer.error().detail;
    for (int i = 0; i < 8; ++i) {
        auto events = aligned(++number, std::chrono::seconds(i));
        auto& opened = std::get<WeldOpened>(events.front().d);
        opened.sheets.at(0).thicknessUm = 8'000 + 25 * i;
        opened.sheets.at(1).thicknessUm = 8'200 - 25 * i;
        writer->submit(test::rowsOf(events), test::sampleDocuments());
    }
    ASSERT_TRUE(writer->flush());
    const auto alignment = charts(JointMeasure::Alignment);
    ASSERT_EQ(alignment.size(), 1U);
    EXPECT_EQ(alignment[0].joints, (LikeJoints{"bench-a", "person:op-1", "invented", 8'000}));
    EXPECT_EQ(alignment[0].values.size(), 8U);
    auto reader = LogReader::open(path);
    ASSERT_TRUE(reader);
    const auto medians = medianTimes(*reader);
    ASSERT_TRUE(medians);
    EXPECT_EQ(medians->at({"bench-a", "invented", 8'000}).alignment, std::chrono::seconds(53));
    const auto times = reader->joints({});
    ASSERT_TRUE(times);
    EXPECT_EQ(times->at(0).lengthUm, 860'000);
}

} // namespace
} // namespace seamclock
