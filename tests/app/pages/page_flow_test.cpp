// What stands and what a press does: a press may turn the page under its own feet, an answer that
// comes late is dropped, and nothing of a page that was left can be pressed.
#include "app/pages/page_flow.h"

#include <QSignalSpy>
#include <gtest/gtest.h>
#include <optional>

namespace seamclock {
namespace {

class Rooms : public PageFlow {
public:
    explicit Rooms(QWidget* window)
        : PageFlow(window), choices(new ChoicePage(window)), rows(new ListPage(window)),
          words(new NamePage(window)) {
        take({choices, rows, words});
        takeAnswers(choices);
        takeAnswers(rows);
    }

    using PageFlow::askWords;
    using PageFlow::choose;
    using PageFlow::dropAnswers;
    using PageFlow::here;
    using PageFlow::list;
    using PageFlow::shut;
    using PageFlow::tell;
    using PageFlow::turnTo;

    ChoicePage* choices;
    ListPage* rows;
    NamePage* words;
    std::optional<SlotPlace> taken; // the press that this room does itself

protected:
    bool takesPress(SlotPlace place) override { return taken == place; }
};

class PageFlows : public ::testing::Test {
protected:
    QWidget window;
    Rooms rooms{&window};
    int pressed = 0;

    static void press(Page* page, SlotPlace place) { emit page->slotPressed(place); }
};

TEST_F(PageFlows, PressDoesWhatThePageWasPutUpWith) {
    rooms.turnTo(
        rooms.rows, [this] { pressed += 1; }, [this] { pressed += 10; },
        [this] { pressed += 100; });
    EXPECT_EQ(rooms.page(), rooms.rows);
    press(rooms.rows, SlotPlace::Step);
    EXPECT_EQ(pressed, 1);
    press(rooms.rows, SlotPlace::Stop);
    EXPECT_EQ(pressed, 11);
    press(rooms.rows, SlotPlace::Back);
    EXPECT_EQ(pressed, 111);
    press(rooms.rows, SlotPlace::Earlier);
    EXPECT_EQ(pressed, 111);
}

TEST_F(PageFlows, PressMayTurnThePageWhileItIsDone) {
    const QString told = "what the press has with it";
    QString after;
    rooms.turnTo(rooms.rows, [this, told, &after] {
        rooms.turnTo(rooms.choices); // this press is gone from the flow now
        after = told;
    });
    press(rooms.rows, SlotPlace::Step);
    EXPECT_EQ(after, told);
    EXPECT_EQ(rooms.page(), rooms.choices);
}

TEST_F(PageFlows, RoomMayTakeAPressFirst) {
    rooms.taken = SlotPlace::Step;
    rooms.turnTo(
        rooms.rows, [this] { pressed += 1; }, [this] { pressed += 10; });
    press(rooms.rows, SlotPlace::Step);
    press(rooms.rows, SlotPlace::Stop);
    EXPECT_EQ(pressed, 10);
}

TEST_F(PageFlows, AnswerGoesToTheQuestionThatStands) {
    int first = -1;
    int second = -1;
    rooms.choose(
        ChoiceView(),
        [this, &first, &second](int index) {
            first = index;
            rooms.list(ListView(), [&second](int next) { second = next; }, {}, {});
        },
        {}, {});
    emit rooms.choices->chosen(2);
    EXPECT_EQ(first, 2);
    EXPECT_EQ(rooms.page(), rooms.rows);
    emit rooms.rows->chosen(5);
    EXPECT_EQ(second, 5);
    EXPECT_EQ(first, 2);
}

TEST_F(PageFlows, NothingOfAPageThatWasLeftIsDone) {
    int answer = -1;
    rooms.choose(
        ChoiceView(), [&answer](int index) { answer = index; }, [this] { ++pressed; }, {});
    rooms.shut();
    EXPECT_EQ(rooms.page(), nullptr);
    emit rooms.choices->chosen(1);
    press(rooms.choices, SlotPlace::Step);
    EXPECT_EQ(answer, -1);
    EXPECT_EQ(pressed, 0);
}

TEST_F(PageFlows, LateAnswerIsDropped) {
    int come = 0;
    const auto waiting = [this, &come] {
        return rooms.here<int>([&come](const int& value) { come = value; });
    };
    rooms.turnTo(rooms.rows);
    waiting()(1);
    EXPECT_EQ(come, 1);
    const auto beforeTurn = waiting();
    rooms.turnTo(rooms.choices);
    beforeTurn(2);
    const auto beforeDrop = waiting();
    rooms.dropAnswers();
    beforeDrop(3);
    const auto beforeShut = waiting();
    rooms.shut();
    beforeShut(4);
    EXPECT_EQ(come, 1);
}

TEST_F(PageFlows, WordIsAskedForUntilThereIsOne) {
    QString word;
    const QSignalSpy said(&rooms, &PageFlow::said);
    rooms.askWords(
        rooms.words, {"Why?", "in a word", "why", 40},
        [&word](const QString& typed) { word = typed; }, [this] { ++pressed; });
    EXPECT_EQ(rooms.words->view().most, 40);
    rooms.words->setName("   ");
    press(rooms.words, SlotPlace::Step);
    EXPECT_EQ(said.count(), 1);
    EXPECT_EQ(word, QString());
    EXPECT_EQ(rooms.page(), rooms.words);
    rooms.words->setName(" a knock at the door ");
    press(rooms.words, SlotPlace::Step);
    EXPECT_EQ(word, QString("a knock at the door"));
    press(rooms.words, SlotPlace::Stop);
    EXPECT_EQ(pressed, 1);
}

TEST_F(PageFlows, ErrorIsToldInASentence) {
    QSignalSpy said(&rooms, &PageFlow::said);
    rooms.tell({ErrorCode::Refused, "the length is 0 mm; allowed: 1 to 4000"});
    ASSERT_EQ(said.count(), 1);
    EXPECT_TRUE(said.first().first().toString().contains("allowed"));
}

} // namespace
} // namespace seamclock
