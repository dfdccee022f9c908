// The wall: nothing of a practice reaches a log of joints, whoever asks for it.
#include "app/practice/practice_stand.h"
#include "core/log/log_reader.h"
#include "tests/app/operate/demo_shop.h"
#include "tests/app/practice/practice_shop.h"

#include <QFile>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

QByteArray bytesOf(const std::string& path) {
    QFile file(QString::fromStdString(path));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path;
    return file.readAll();
}

TEST(PracticeWall, APracticeIsNeverOpenedOnALogOfJoints) {
    ScratchFolder folder;
    const std::string log = folder.file("joints.seamlog");
    VirtualClock clock(practiceMorning());
    {
        auto writer = LogWriter<Production>::open(log, clock);
        ASSERT_TRUE(writer);
        auto session = Session<Production>::start(*writer, clock);
        ASSERT_TRUE(session);
        ASSERT_TRUE(session->stop());
    }
    const QByteArray before = bytesOf(log);
    auto lessons = readLessonFolder(resource("lessons"));
    ASSERT_TRUE(lessons);
    const auto room = PracticeRoom::open(clock.now(), practiceShop(), *lessons, log, "person:ilva");
    ASSERT_FALSE(room);
    EXPECT_EQ(room.error().code, ErrorCode::Foreign) << room.error().detail;
    EXPECT_EQ(bytesOf(log), before) << "not a byte of it";
}

TEST(PracticeWall, TheLogsOfBothWindowsKeepToTheirWorlds) {
    // A log of joints stands open while a whole lesson is made beside it.
    ScratchFolder folder;
    const std::string joints = folder.file("joints.seamlog");
    VirtualClock clock(practiceMorning());
    auto writer = LogWriter<Production>::open(joints, clock);
    ASSERT_TRUE(writer);
    auto session = Session<Production>::start(*writer, clock);
    ASSERT_TRUE(session);
    ASSERT_TRUE(writer->flush());
    const std::int64_t head = writer->head().seq;
    {
        Practising shop;
        ASSERT_TRUE(shop.walk().toBench("pe10-first"));
        ASSERT_TRUE(shop.walk().prepare({}));
        ASSERT_TRUE(shop.room().writer().flush());
        auto reader = LogReader::open(shop.log());
        ASSERT_TRUE(reader);
        EXPECT_EQ(reader->world(), "practice");
        EXPECT_EQ(shop.room().weld()->opened().type, WeldType::Practice);
    }
    ASSERT_TRUE(writer->flush());
    EXPECT_EQ(writer->head().seq, head);
    auto reader = LogReader::open(joints);
    ASSERT_TRUE(reader);
    EXPECT_EQ(reader->world(), "production");
    EXPECT_EQ(*reader->highestNumber(), 0);
}

TEST(PracticeWall, NoPracticeWhileAWeldIsOpenOnABench) {
    Shop shop;
    int asked = 0;
    QObject::connect(&shop.window(), &Window::practiceAsked, [&asked] { ++asked; });
    shop.window().openPractice();
    EXPECT_EQ(asked, 1);
    shop.window().openNextCard();
    emit shop.window().currentPage()->slotPressed(SlotPlace::Step);
    shop.window().passTrial();
    ASSERT_NE(shop.floor().weld(0), nullptr);
    shop.window().openPractice();
    EXPECT_EQ(asked, 1) << "refused";
}

TEST(PracticeWall, StandsWithItsLogInAFolderThatIsMade) {
    ScratchFolder folder;
    VirtualClock machine(practiceMorning());
    PracticeOrder order{
        machine, practiceShop(), resource("lessons"), folder.file("deep/down/practice.seamlog")};
    order.preferences.dpi = kUnitsPerInch;
    auto stand = PracticeStand::open(std::move(order));
    ASSERT_TRUE(stand) << stand.error().detail;
    EXPECT_EQ((*stand)->room().now().bootId.rfind("practice:", 0), 0U);
    EXPECT_EQ((*stand)->window().page(), PracticePage::Lessons);
}

TEST(PracticeWall, ALessonByAProcedureWithGapsSaysWhatItLacksAndLeavesNoWeld) {
    ScratchFolder folder;
    const std::string lesson = replaced(
        textOf(resource("lessons/01-pe10-first.json")), "pe-hd-dvs2207-1-2005", "pe-uni10520");
    QFile file(QString::fromStdString(folder.file("01.json")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(lesson.data(), static_cast<qint64>(lesson.size()));
    file.close();
    VirtualClock machine(practiceMorning());
    PracticeOrder order{machine, practiceShop(), folder.path(), folder.file("practice.seamlog")};
    order.preferences.dpi = kUnitsPerInch;
    order.lesson = "pe10-first";
    auto stand = PracticeStand::open(std::move(order));
    ASSERT_TRUE(stand) << stand.error().detail;
    PracticeWindow& window = (*stand)->window();
    window.stopTimer();
    ASSERT_EQ(window.page(), PracticePage::Lesson);
    emit window.currentPage()->slotPressed(SlotPlace::Step);
    EXPECT_EQ(window.page(), PracticePage::Lessons);
    const QString said = window.banner()->text();
    EXPECT_TRUE(said.startsWith("Procedure pe-uni10520 can't be welded with yet"))
        << said.toStdString();
    EXPECT_TRUE(said.contains("the shop fills and attests first")) << said.toStdString();
    ASSERT_TRUE((*stand)->room().writer().flush());
    auto log = LogReader::open(folder.file("practice.seamlog"));
    ASSERT_TRUE(log);
    EXPECT_EQ(*log->highestNumber(), 0);
}

TEST(PracticeWall, SaysInOneSentenceWhyItCannotStand) {
    ScratchFolder folder;
    QFile taken(QString::fromStdString(folder.file("taken")));
    ASSERT_TRUE(taken.open(QIODevice::WriteOnly));
    taken.close();
    VirtualClock machine(practiceMorning());
    PracticeOrder order{
        machine, practiceShop(), resource("lessons"), folder.file("taken/practice.seamlog")};
    const auto stand = PracticeStand::open(std::move(order));
    ASSERT_FALSE(stand);
    EXPECT_EQ(stand.error().code, ErrorCode::NotWritten);
    EXPECT_NE(stand.error().detail.find("allowed:"), std::string::npos);
    EXPECT_EQ(stand.error().detail.find('\n'), std::string::npos);
}

} // namespace
} // namespace seamclock::test
