#include "app/daylog/day_filter.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

const DayNames kNames{{{"east", "A"}}, {{"person:ilva", "Ilva Borrick"}}};

TEST(DayFilter, AsksTheLogForWhatWasChosen) {
    DayFilter filter;
    EXPECT_EQ(asked(filter, kNames).seams, std::nullopt);
    filter.day = "2030-01-07";
    filter.bench = "east";
    filter.verdict = "";
    filter.by = "person:ilva";
    filter.material = "PP";
    filter.job = "QV-118";
    filter.seams = {"S1", "S2"};
    filter.words = "borrick 10";
    const JointFilter made = asked(filter, kNames);
    EXPECT_EQ(made.fromDay, "2030-01-07");
    EXPECT_EQ(made.toDay, "2030-01-07");
    EXPECT_EQ(made.bench, "east");
    EXPECT_EQ(made.verdict, "") << "not finished is asked for, too";
    EXPECT_EQ(made.by, "person:ilva");
    EXPECT_EQ(made.material, "PP");
    EXPECT_EQ(made.seams, (std::vector<std::string>{"S1", "S2"}));
    EXPECT_EQ(made.job, "QV-118");
    filter.job = ""; // of a file that tells none
    EXPECT_EQ(asked(filter, kNames).job, "") << "another job's joints of that label are not its";
    EXPECT_EQ(asked(filter, kNames).seams, made.seams);
    EXPECT_EQ(made.text, "borrick 10");
    EXPECT_EQ(made.names, kNames.people);
}

TEST(DayFilter, BlanksAskForNothing) {
    DayFilter filter;
    filter.words = "   ";
    EXPECT_EQ(asked(filter, kNames).text, std::nullopt);
}

TEST(DayFilter, SaysWhatStandsInPersonsWords) {
    DayFilter filter;
    EXPECT_EQ(filterText(filter, FilterBy::Day, kNames), "all");
    EXPECT_EQ(searchText(filter, kNames), "Search");
    filter.day = "2030-01-07";
    EXPECT_EQ(filterText(filter, FilterBy::Day, kNames), "Mon 7 January");
    filter.bench = "east";
    EXPECT_EQ(filterText(filter, FilterBy::Bench, kNames), "A");
    filter.verdict = "";
    EXPECT_EQ(filterText(filter, FilterBy::Verdict, kNames), "Not finished");
    filter.verdict = "out of limits";
    EXPECT_EQ(filterText(filter, FilterBy::Verdict, kNames), "Out of limits");
    EXPECT_FALSE(filter.searches());
    filter.by = "person:ilva";
    filter.words = "lid";
    EXPECT_EQ(searchText(filter, kNames), "“lid”, Ilva Borrick");
    EXPECT_TRUE(filter.searches());
}

TEST(DayFilter, AFullListOfDaysEndsWithTheWayToEarlierOnes) {
    const std::vector<std::string> few(kMostDays - 1, "2030-01-07");
    const std::vector<std::string> full(kMostDays, "2030-01-07");
    const int behind = static_cast<int>(kMostDays) + 1;
    EXPECT_EQ(filterQuestion({}, FilterBy::Day, few, {}).choices.back().under, "7 Jan 2030");
    const ChoiceView view = filterQuestion({}, FilterBy::Day, full, {});
    ASSERT_EQ(static_cast<int>(view.choices.size()), behind + 1);
    EXPECT_EQ(view.choices.back().text, "Earlier …");
    EXPECT_TRUE(isEarlier(FilterBy::Day, full, behind));
    EXPECT_FALSE(isEarlier(FilterBy::Day, full, behind - 1));
    EXPECT_FALSE(isEarlier(FilterBy::Day, few, behind - 1));
    EXPECT_FALSE(isEarlier(FilterBy::Bench, full, behind)) << "days alone are asked in parts";
}

TEST(DayFilter, EveryAnswerOfAQuestionIsWhatItSays) {
    const std::vector<std::string> values{"", "out of limits", "within limits"};
    DayFilter filter;
    const ChoiceView question = filterQuestion(filter, FilterBy::Verdict, values, kNames);
    ASSERT_EQ(question.choices.size(), 4U);
    EXPECT_TRUE(question.choices.front().chosen) << "all, as it stands";
    for (int i = 0; i < 4; ++i) {
        const DayFilter next = chosen(filter, FilterBy::Verdict, values, i);
        EXPECT_EQ(
            filterText(next, FilterBy::Verdict, kNames).toLower(),
            question.choices[static_cast<std::size_t>(i)].text.toLower());
        EXPECT_TRUE(filterQuestion(next, FilterBy::Verdict, values, kNames)
                        .choices[static_cast<std::size_t>(i)]
                        .chosen);
    }
    const std::vector<std::string> jobs{"", "QV-118"};
    EXPECT_EQ(
        filterText(chosen(filter, FilterBy::Job, jobs, 1), FilterBy::Job, kNames), "this job");
    const DayFilter job = chosen(filter, FilterBy::Job, jobs, 2);
    EXPECT_EQ(filterText(job, FilterBy::Job, kNames), "QV-118");
    EXPECT_EQ(searchText(job, kNames), "QV-118");
    EXPECT_TRUE(filterQuestion(job, FilterBy::Job, jobs, kNames).choices[2].chosen);
    EXPECT_FALSE(chosen(job, FilterBy::Job, jobs, 0).job);
}

} // namespace
} // namespace seamclock
