// At the operator's own screens, too, all that is practice stands in black and white stripes.
#include "tests/app/operate/demo_shop.h"

#include <QImage>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

/// Along the middle of the left edge, from top to bottom.
std::set<QRgb> inksAtTheEdge(Window& window) {
    const QImage image = window.grab().toImage();
    const int middle = static_cast<int>(kStripes / 2);
    std::set<QRgb> inks;
    for (int y = 0; y < image.height(); ++y) {
        inks.insert(image.pixel(middle, y));
    }
    return inks;
}

TEST(PracticeFrame, StandsAroundTheOperatorsScreensOfAPracticeLog) {
    test::ScratchFolder folder;
    VirtualClock clock(morning());
    const std::string resources = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/";
    auto procedures = readProcedureFolder(resources + "procedures");
    auto job = readFirstJob(resources + "demo");
    auto writer = LogWriter<Practice>::open(folder.file("practice.seamlog"), clock);
    ASSERT_TRUE(procedures && job && writer);
    auto session = Session<Practice>::start(*writer, clock);
    ASSERT_TRUE(session);
    Floor floor(*session, *writer, clock, *procedures, job->operatorId);
    floor.practise();
    const auto bench = readBenchFile(job->seams.front().benchFile);
    ASSERT_TRUE(bench);
    ASSERT_TRUE(floor.addBench(*bench));
    auto desk = Desk::open(*writer, clock);
    ASSERT_TRUE(desk);
    WindowParts parts{floor,      *writer, **desk,
                      job->seams, {},      QString::fromStdString(folder.file("settings.ini"))};
    parts.preferences.dpi = kUnitsPerInch;
    Window window(std::move(parts));
    window.resize(1280, 800);
    window.QWidget::show();
    const std::set<QRgb> inks = inksAtTheEdge(window);
    EXPECT_TRUE(inks.count(qRgb(0x0D, 0x12, 0x15)) > 0);
    EXPECT_TRUE(inks.count(qRgb(0xF2, 0xF5, 0xF6)) > 0);
    // Everything stands within the frame, as large as a glove needs it.
    const QRect inner = window.rect().adjusted(19, 19, -19, -19);
    for (QWidget* child : window.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        if (child->isVisible() && child->objectName() != "practiceFrame" &&
            child->objectName() != "alarmFrame") {
            EXPECT_TRUE(inner.contains(child->geometry())) << child->objectName().toStdString();
        }
    }
    EXPECT_FALSE(window.currentPage()->look().watermark.isEmpty());
}

TEST(PracticeFrame, IsNotThereWhereJointsCount) {
    Shop shop;
    EXPECT_EQ(shop.window().findChild<QWidget*>("practiceFrame"), nullptr);
    EXPECT_EQ(inksAtTheEdge(shop.window()).count(qRgb(0xF2, 0xF5, 0xF6)), 0U);
    EXPECT_TRUE(shop.window().currentPage()->look().watermark.isEmpty());
}

} // namespace
} // namespace seamclock
