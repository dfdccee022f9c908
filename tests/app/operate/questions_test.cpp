#include "app/operate/questions.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

TEST(Questions, EveryReasonHasItsOwnCodeAndItsOwnWords) {
    for (const AskReason& asked :
         {AskReason{ReasonFor::Stop, ""}, AskReason{ReasonFor::EarlyRelease, ""},
          AskReason{ReasonFor::Owed, "changeover"}, AskReason{ReasonFor::Owed, "bead_not_measured"},
          AskReason{ReasonFor::CheckLeftOut, "gap"}}) {
        const Reasons reasons = reasonsFor(asked, "3:20");
        EXPECT_FALSE(reasons.page.title.isEmpty());
        ASSERT_EQ(reasons.answers.size(), reasons.page.choices.size());
        ASSERT_GE(reasons.answers.size(), 3U);
        std::set<std::string> codes;
        std::set<QString> words;
        for (std::size_t i = 0; i < reasons.answers.size(); ++i) {
            const auto& [code, text] = reasons.answers[i];
            EXPECT_TRUE(codes.insert(code).second) << code;
            EXPECT_TRUE(words.insert(text).second) << qPrintable(text);
            EXPECT_EQ(reasons.page.choices[i].text, text);
        }
        EXPECT_EQ(reasons.answers.back().first, "another");
    }
    EXPECT_EQ(
        reasonsFor({ReasonFor::EarlyRelease, ""}, "3:20").page.title,
        QStringLiteral("Cooling is 3:20 short. Why?"));
}

TEST(Questions, OnlyAForemanGoesOnWithoutAPlateTemperature) {
    const AskReason plate{ReasonFor::CheckLeftOut, "plate_temperature"};
    const Reasons nobody = reasonsFor(plate, "", false);
    EXPECT_TRUE(nobody.answers.empty());
    EXPECT_EQ(nobody.page.title, "Only a foreman may go on here.");
    const Reasons foreman = reasonsFor(plate, "", true);
    EXPECT_EQ(foreman.answers.size(), foreman.page.choices.size());
    EXPECT_EQ(foreman.answers.front().first, "cannot_be_set");
    for (const Reasons& reasons : {nobody, foreman}) {
        EXPECT_EQ(reasons.page.back.text, "Stop this weld");
    }
    const Reasons gap = reasonsFor({ReasonFor::CheckLeftOut, "gap"}, "", false);
    EXPECT_EQ(gap.page.back.look, SlotView::Look::Hidden);
    EXPECT_FALSE(gap.answers.empty());
}

TEST(Questions, ASheetOfAnotherMaterialIsSaidWhereASheetIsInHand) {
    for (const bool foremanHere : {false, true}) {
        for (const char* check : {"film_off", "edges_planed", "first_sheet", "second_sheet"}) {
            const Reasons why = reasonsFor({ReasonFor::CheckLeftOut, check}, "", foremanHere);
            EXPECT_EQ(why.answers.front().first, kOtherMaterial) << check;
            EXPECT_EQ(why.page.choices.front().under, "the foreman's PIN is asked");
        }
        const Reasons gap = reasonsFor({ReasonFor::CheckLeftOut, "gap"}, "", foremanHere);
        EXPECT_NE(gap.answers.front().first, kOtherMaterial);
    }
}

TEST(Questions, AMenusTileIsItsItem) {
    const Menu menu = menuFor({});
    ASSERT_EQ(menu.items.size(), menu.page.choices.size());
    const std::set<MenuItem> items(menu.items.begin(), menu.items.end());
    EXPECT_EQ(items.size(), menu.items.size());
    EXPECT_EQ(menu.items.front(), MenuItem::Day);
    EXPECT_EQ(menu.page.stop.text, "End the program");
    EXPECT_LE(menu.items.size(), 18U) << "more would be on a second leaf of every tablet";
    EXPECT_EQ(menu.items.back(), MenuItem::Motion) << "what a small tablet may have there";
    EXPECT_TRUE(menu.page.narrow) << "and more than eight, too, in two columns";
    const auto people = std::find(menu.items.begin(), menu.items.end(), MenuItem::People);
    const auto tile = static_cast<std::size_t>(people - menu.items.begin());
    EXPECT_EQ(menu.page.choices.at(tile).text, "Who is it?");
    EXPECT_EQ(menuFor({}, "Ilva Borrick").page.choices.at(tile).text, "Ilva Borrick");
}

TEST(Questions, APreferenceComesRoundToWhereItBegan) {
    const Preferences before;
    for (const auto& [item, rounds] :
         {std::pair{MenuItem::Theme, 3}, std::pair{MenuItem::Words, 4},
          std::pair{MenuItem::Hand, 2}, std::pair{MenuItem::Motion, 2},
          std::pair{MenuItem::Units, 2}}) {
        Preferences now = before;
        for (int i = 1; i <= rounds; ++i) {
            const Preferences next = changedBy(item, now);
            EXPECT_NE(menuFor(next).page, menuFor(now).page) << "the menu says so";
            EXPECT_EQ(menuFor(next).page == menuFor(before).page, i == rounds);
            now = next;
        }
    }
    for (const MenuItem item : {MenuItem::Day, MenuItem::Card, MenuItem::People, MenuItem::Pedal}) {
        EXPECT_EQ(menuFor(changedBy(item, before)).page, menuFor(before).page);
    }
}

} // namespace
} // namespace seamclock
