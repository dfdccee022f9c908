#include "app/operate/log_notice.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

SetAside lossy() {
    SetAside aside;
    aside.damaged = "shop/joint.seamlog.damaged-20300107T060000Z";
    aside.note = aside.damaged + ".txt";
    return aside;
}

SetAsideWeld weld(std::int64_t number, bool taken, std::vector<std::int64_t> lost) {
    SetAsideWeld out;
    out.weld = "weld:" + std::to_string(number);
    out.number = number;
    out.taken = taken;
    out.open = taken;
    out.lost = std::move(lost);
    return out;
}

TEST(LogNotice, SaysThatNothingIsLostWhereNothingIs) {
    SetAside aside = lossy();
    aside.sameChain = true;
    aside.welds = {weld(7, true, {})};
    EXPECT_EQ(
        logNotice(aside), "The log's file was damaged. Nothing is lost: the log goes on in a new "
                          "file, the old one is kept.");
}

TEST(LogNotice, NamesTheJointsThatGoOnThatLackStepsAndThatAreGone) {
    SetAside aside = lossy();
    EXPECT_EQ(logNotice(aside), "The log was damaged and is kept aside; a new one goes on.");
    aside.welds = {weld(7, true, {})};
    EXPECT_EQ(
        logNotice(aside), "The log was damaged and is kept aside; a new one goes on. Joint 7: all "
                          "steps are there.");
    aside.welds = {
        weld(7, true, {}), weld(8, true, {5, 6}), weld(9, true, {2}), weld(3, false, {1})};
    EXPECT_EQ(
        logNotice(aside),
        "The log was damaged and is kept aside; a new one goes on. Joint 8, 9: steps are lost, "
        "look at the bench before you go on. Joint 3: not taken over.");
}

TEST(LogNotice, PointsToTheNoteAfterAMoveThatAnEarlierRunBegan) {
    SetAside aside = lossy();
    aside.finished = true;
    EXPECT_EQ(
        logNotice(aside), "The log was damaged and is kept aside; "
                          "joint.seamlog.damaged-20300107T060000Z.txt tells what was taken over.");
}

} // namespace
} // namespace seamclock
