#include "app/operate/day_view.h"

#include "core/weld/record.h"
#include "tests/support/story.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

test::Story withPlateRead() {
    test::Story story;
    for (const auto& [place, mc] :
         {std::pair{"front", 211'000}, std::pair{"middle", 208'000}, std::pair{"back", 209'000}}) {
        CheckMade read;
        read.check = "plate_temperature";
        read.valueMc = mc;
        read.place = place;
        read.passed = true;
        story.then(read);
    }
    return story;
}

const JointView::Row* rowOf(const JointView& view, const QString& item) {
    const auto found =
        std::find_if(view.rows.begin(), view.rows.end(), [&](const JointView::Row& row) {
            return row.item == item;
        });
    return found == view.rows.end() ? nullptr : &*found;
}

TEST(DayView, ThePlatesReadingsStandWithTheirPlaces) {
    test::Story story = withPlateRead();
    story.close();
    const JointView view = jointView(record(story.weld()), nullptr);
    for (const auto& [item, actual] :
         {std::pair{"plate, front", "211 °C"}, std::pair{"plate, middle", "208 °C"},
          std::pair{"plate, back", "209 °C"}}) {
        const JointView::Row* row = rowOf(view, QString::fromUtf8(item));
        ASSERT_NE(row, nullptr) << item;
        EXPECT_EQ(row->actual, QString::fromUtf8(actual));
        EXPECT_FALSE(row->out);
    }
}

TEST(DayView, AReadingOutOfItsWindowIsMarked) {
    test::Story story = withPlateRead();
    CheckMade read;
    read.check = "plate_temperature";
    read.valueMc = story.weld().plan.plate->maxMc + 1'000;
    read.place = "front";
    read.passed = false;
    story.then(read);
    story.close();
    const JointView view = jointView(record(story.weld()), nullptr);
    EXPECT_TRUE(std::any_of(view.rows.begin(), view.rows.end(), [](const JointView::Row& row) {
        return row.item.startsWith("plate") && row.out;
    }));
}

TEST(DayView, ABatchOfBothSheetsIsNamedOnce) {
    WeldOpened opened = test::inventedOpening();
    ASSERT_EQ(opened.sheets.size(), 2U);
    opened.sheets[0].batch = "K-7";
    opened.sheets[1].batch = "K-7";
    test::Story same(opened);
    EXPECT_TRUE(jointView(record(same.weld()), nullptr).about.endsWith("Batches K-7."));
    opened.sheets[1].batch = "K-8";
    test::Story other(opened);
    EXPECT_TRUE(jointView(record(other.weld()), nullptr).about.endsWith("Batches K-7 and K-8."));
}

TEST(DayView, AStoppedWeldSaysSoAndWhy) {
    test::Story story;
    story.align();
    story.then(WeldAborted{"bead_missing", "Bead missing at one end"});
    const JointView view = jointView(record(story.weld()), nullptr);
    EXPECT_EQ(view.verdict, QStringLiteral("Stopped"));
    EXPECT_EQ(view.reason, QStringLiteral("Bead missing at one end"));
    EXPECT_EQ(view.mark, Mark::Cut);
    EXPECT_EQ(view.tone, Tone::Late);
    const JointView::Row* align = rowOf(view, "align");
    ASSERT_NE(align, nullptr);
    EXPECT_NE(align->actual, QStringLiteral("–"));
    const JointView::Row* soak = rowOf(view, "soak");
    ASSERT_NE(soak, nullptr);
    EXPECT_EQ(soak->actual, QStringLiteral("–"));
}

} // namespace
} // namespace seamclock
