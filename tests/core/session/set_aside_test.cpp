// What a session makes of a log that had to be set aside.
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "core/rescue/set_aside.h"
#include "core/session/session.h"
#include "tests/support/demo_order.h"
#include "tests/support/fake_clock.h"
#include "tests/support/scratch_folder.h"

#include <fstream>
#include <gtest/gtest.h>
#include <iterator>

using namespace seamclock;
using namespace seamclock::test;
using std::chrono::seconds;

namespace {

std::string bytesOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

class AfterDamage : public ::testing::Test {
protected:
    WeldOrder order() {
        WeldOrder made = orderOf(kDemoSeams[0]);
        made.type = WeldType::Production;
        return made;
    }
    /// An open weld with five checks made, on disk; its name.
    std::string leaveOpenWeld(int before) {
        auto writer = LogWriter<Production>::open(m_path, m_clock);
        EXPECT_TRUE(writer);
        auto session = Session<Production>::start(*writer, m_clock);
        EXPECT_TRUE(session);
        for (int i = 0; i < before; ++i) {
            const auto weld = session->open(order(), "person:ilva");
            EXPECT_TRUE(weld);
            EXPECT_TRUE(
                session->act(weld->id(), Intent{{}, "person:ilva", WeldAborted{"practice", "no"}}));
            m_clock.wait(seconds(40)); // no two welds begin alike, so that one alone is spoilt
        }
        const auto weld = session->open(order(), "person:ilva");
        EXPECT_TRUE(weld);
        for (int i = 0; i < 5; ++i) {
            m_clock.wait(seconds(3));
            EXPECT_TRUE(session->act(weld->id(), Intent{{}, "person:ilva", RemarkMade{"as ever"}}));
        }
        EXPECT_TRUE(writer->flush());
        return weld->id();
    }
    /// Changes event n of a weld behind the program's back.
    void spoil(const std::string& weld, std::size_t n) {
        const std::string body = LogReader::open(m_path)->bodies(weld).value().at(n - 1);
        std::string bytes = bytesOf(m_path);
        // The first goes over several pages; a page that was divided may keep an old copy.
        const std::string begin = body.substr(0, 150);
        const auto boot = body.find("\"boot_ms\":") + 11;
        ASSERT_NE(bytes.find(begin), std::string::npos);
        for (auto at = bytes.find(begin); at != std::string::npos; at = bytes.find(begin)) {
            bytes[at + boot] ^= 1;
        }
        std::ofstream(m_path, std::ios::binary) << bytes;
    }

    ScratchFolder m_folder;
    FakeClock m_clock;
    std::string m_path = m_folder.file("a.log");
};

} // namespace

TEST_F(AfterDamage, AWeldThatLostStepsSaysSoInARemarkAndTheNumbersGoOn) {
    const std::string id = leaveOpenWeld(2);
    spoil(id, 4);
    m_clock.wait(seconds(60));
    {
        auto opened = openLog<Production>(m_path, m_clock);
        ASSERT_TRUE(opened) << opened.error().detail;
        ASSERT_TRUE(opened->aside);
        auto session = Session<Production>::start(opened->writer, m_clock);
        ASSERT_TRUE(session) << session.error().detail;
        session->takeUp(*opened->aside);
        const Weld* weld = session->find(id);
        ASSERT_NE(weld, nullptr);
        ASSERT_EQ(weld->events.size(), 4U) << "three are left, and the remark";
        const auto* remark = std::get_if<RemarkMade>(&weld->events.back().d);
        ASSERT_NE(remark, nullptr);
        EXPECT_EQ(weld->events.back().by, "station");
        EXPECT_EQ(weld->events.back().at, m_clock.now());
        EXPECT_NE(
            remark->text.find("lost: event 4; to be read there only: event 5 to 6"),
            std::string::npos)
            << remark->text;
        EXPECT_EQ(remark->text.find(m_folder.path()), std::string::npos) << "no machine's path";
        ASSERT_TRUE(session->act(id, Intent{{}, "person:ilva", WeldAborted{"practice", "no"}}));
        const auto next = session->open(order(), "person:ilva");
        ASSERT_TRUE(next) << next.error().detail;
        EXPECT_EQ(next->opened().number, 4);
        ASSERT_TRUE(opened->writer.flush());
    }
    EXPECT_TRUE(verifyLog(m_path)->ok);
}

TEST_F(AfterDamage, TheHighestNumberIsKnownEvenIfItsWeldIsLost) {
    const std::string id = leaveOpenWeld(2);
    spoil(id, 1);
    auto opened = openLog<Production>(m_path, m_clock);
    ASSERT_TRUE(opened) << opened.error().detail;
    ASSERT_TRUE(opened->aside);
    auto session = Session<Production>::start(opened->writer, m_clock);
    ASSERT_TRUE(session);
    session->takeUp(*opened->aside);
    EXPECT_TRUE(session->openWelds().empty());
    const auto next = session->open(order(), "person:ilva");
    ASSERT_TRUE(next) << next.error().detail;
    EXPECT_EQ(next->opened().number, 4);
}

TEST_F(AfterDamage, AfterARebootTheRemarkComesWithThePersonsWord) {
    const std::string id = leaveOpenWeld(0);
    spoil(id, 4);
    m_clock.reboot(seconds(90));
    auto opened = openLog<Production>(m_path, m_clock);
    ASSERT_TRUE(opened) << opened.error().detail;
    auto session = Session<Production>::start(opened->writer, m_clock);
    ASSERT_TRUE(session);
    session->takeUp(*opened->aside);
    EXPECT_EQ(session->find(id)->events.size(), 3U);
    const auto settled = session->settle(id, RebootWord::GoOnUnconfirmed, "person:ilva");
    ASSERT_TRUE(settled) << settled.error().detail;
    EXPECT_TRUE(std::holds_alternative<RemarkMade>(settled->events.back().d));
    EXPECT_EQ(*settled, *session->find(id));
}

TEST_F(AfterDamage, AWholeWeldGetsNoRemark) {
    const std::string id = leaveOpenWeld(0);
    std::string bytes = bytesOf(m_path);
    bytes.replace(16, 4, "\xff\xff\xff\xff");
    std::ofstream(m_path, std::ios::binary) << bytes;
    auto opened = openLog<Production>(m_path, m_clock);
    ASSERT_TRUE(opened) << opened.error().detail;
    auto session = Session<Production>::start(opened->writer, m_clock);
    ASSERT_TRUE(session);
    session->takeUp(*opened->aside);
    EXPECT_EQ(session->find(id)->events.size(), 6U);
}
