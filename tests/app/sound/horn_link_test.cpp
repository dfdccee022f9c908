// The program's end of the horn against processes that behave as a horn may: small shell programs
// that speak its lines. The horn itself and real sound are judged in tests/app/horn.
#include "app/platform/boot_clock.h"
#include "app/sound/horn_link.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/story.h"

#include <QCoreApplication>
#include <QFile>
#include <QtTest/qtestsystem.h>
#include <algorithm>
#include <cstdio>
#include <fstream>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

constexpr int kSoon = 10'000; // ms; a wait that ends as soon as it has what it waits for

// Keeps what it is told in `told`, one line after the other.
const char* const kListens = "exec 3<&0\ncat <&3 >>\"$(dirname \"$0\")/told\" &\n";
// … and says that it lives for as long as it is spoken to.
const char* const kAlive =
    "while kill -0 $! 2>/dev/null; do echo 'alive 1000 40 0'; sleep 0.1; done\n";

class HornLinkTest : public ::testing::Test {
protected:
    HornLinkTest() {
        static int count = 1;
        static char name[] = "horn_link_test";
        static char* words[] = {name, nullptr};
        static QCoreApplication application(count, words);
        m_link = std::make_unique<HornLink>(m_clock, QString::fromStdString(m_folder.file("horn")));
        QObject::connect(
            m_link.get(), &HornLink::soundChanged, m_link.get(),
            [this](bool heard, const QString& code) {
                m_told.push_back(heard ? "heard" : code.toStdString());
            });
    }

    /// In one step, so that no half of it is ever started.
    void horn(const std::string& body) {
        const std::string path = m_folder.file("horn");
        std::ofstream(path + ".new") << "#!/bin/sh\n" << kListens << body;
        QFile::setPermissions(
            QString::fromStdString(path + ".new"),
            QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
        ASSERT_EQ(std::rename((path + ".new").c_str(), path.c_str()), 0);
    }
    void expectTold(const std::vector<std::string>& wanted) {
        EXPECT_TRUE(QTest::qWaitFor([&] { return m_told.size() >= wanted.size(); }, kSoon));
        std::vector<std::string> first = m_told;
        first.resize(std::min(first.size(), wanted.size()));
        EXPECT_EQ(first, wanted);
    }
    void letPass(Milliseconds time) {
        const Milliseconds end = m_clock.now().boot + time;
        EXPECT_TRUE(QTest::qWaitFor([&] { return m_clock.now().boot >= end; }, kSoon));
    }
    std::vector<std::string> linesToHorn() {
        std::ifstream file(m_folder.file("told"));
        std::vector<std::string> lines;
        for (std::string line; std::getline(file, line);) {
            lines.push_back(line);
        }
        return lines;
    }

    ScratchFolder m_folder;
    BootClock m_clock = BootClock::make().value();
    std::vector<std::string> m_told;
    std::unique_ptr<HornLink> m_link;
};

TEST_F(HornLinkTest, AHornThatIsNotThereIsToldOnceAndTriedUntilItIs) {
    m_link->start();
    expectTold({"not_started"});
    letPass(Milliseconds{600}); // two more tries
    EXPECT_EQ(m_told.size(), 1U);
    EXPECT_FALSE(m_link->soundOk());
    horn(kAlive);
    expectTold({"not_started", "heard"});
    EXPECT_TRUE(m_link->soundOk());
}

TEST_F(HornLinkTest, AHornThatEndsIsReplaced) {
    horn("echo 'alive 1000 40 0'; sleep 0.2; exit 3\n");
    m_link->start();
    expectTold({"heard", "ended"});
    horn(kAlive);
    EXPECT_TRUE(QTest::qWaitFor([&] { return m_told.back() == "heard"; }, kSoon));
}

TEST_F(HornLinkTest, AHornThatFallsSilentIsKilledAndReplaced) {
    horn("echo 'alive 1000 40 0'; exec sleep 60\n");
    m_link->start();
    expectTold({"heard", "no_answer"});
    EXPECT_FALSE(m_link->soundOk());
    horn(kAlive);
    EXPECT_TRUE(QTest::qWaitFor([&] { return m_told.back() == "heard"; }, kSoon));
}

TEST_F(HornLinkTest, AHornThatNeverAnswersIsNotTakenForSound) {
    horn("exec sleep 60\n");
    m_link->start();
    expectTold({"no_answer"});
    EXPECT_FALSE(m_link->soundOk());
}

TEST_F(HornLinkTest, TroubleIsToldWithItsCodeAndSoundComesBackWhenItSaysAlive) {
    horn(std::string("echo 'trouble no_device'; sleep 0.5\n") + kAlive);
    m_link->start();
    expectTold({"no_device", "heard"});
    EXPECT_TRUE(m_link->soundOk());
}

TEST_F(HornLinkTest, WhatTheSoundStackPrintsIsNotTakenForTrouble) {
    horn(std::string("echo 'ALSA lib: some words'; echo; echo 'trouble bad_line'\n") + kAlive);
    m_link->start();
    expectTold({"heard"});
    letPass(Milliseconds{500});
    EXPECT_EQ(m_told.size(), 1U);
}

TEST_F(HornLinkTest, AHornIsToldNothingBeforeItLivesThenTheScheduleThenBeatsAndAtLastBye) {
    horn(
        std::string("sleep 1\ncp \"$(dirname \"$0\")/told\" \"$(dirname \"$0\")/before\"\n") +
        kAlive);
    Story story;
    story.align();
    m_link->show(shiftOf(story.weld()));
    m_link->start();
    expectTold({"heard"});
    const auto beats = [&] {
        const std::vector<std::string> lines = linesToHorn();
        return std::count(lines.begin(), lines.end(), "beat");
    };
    EXPECT_TRUE(QTest::qWaitFor([&] { return beats() >= 3; }, kSoon));
    m_link->stop();
    EXPECT_FALSE(m_link->soundOk());
    const std::vector<std::string> lines = linesToHorn();
    ASSERT_FALSE(lines.empty());
    EXPECT_EQ(lines.front().rfind("schedule ", 0), 0U) << lines.front();
    EXPECT_EQ(lines.back(), "bye");
    EXPECT_EQ(std::count(lines.begin(), lines.end(), "bye"), 1);
    std::ifstream before(m_folder.file("before"));
    EXPECT_TRUE(before.is_open());
    EXPECT_EQ(before.peek(), std::ifstream::traits_type::eof()) << "spoken to before it was alive";
}

// Practice runs faster than the machine while nobody's reflexes are asked for; the horn knows the
// machine's clock only.
TEST_F(HornLinkTest, WhatLivesByAFasterClockSoundsByTheMachines) {
    horn(kAlive);
    Story story;
    story.align();
    const Milliseconds due =
        story.now().boot + (std::get<Soaking>(story.state()).due - story.time()).lo;
    m_link->start();
    expectTold({"heard"});
    const auto actNow = [&] {
        std::optional<Milliseconds> start;
        for (const std::string& line : linesToHorn()) {
            const auto told = readToHorn(line);
            const auto* schedule = told ? std::get_if<HornSchedule>(&*told) : nullptr;
            for (std::size_t i = 0; schedule && i < schedule->soundSlots.size(); ++i) {
                const HornSlot& slot = schedule->soundSlots[i];
                if (slot.sound == Sound::ActNow && slot.isFirst()) {
                    start = slot.start;
                }
            }
        }
        return start;
    };
    Instant now = story.now();
    for (const Milliseconds left : {Milliseconds{40'000}, Milliseconds{7'000}}) {
        now.boot = due - left;
        const Milliseconds machine = m_clock.now().boot;
        m_link->show(shiftOf(story.weld()), now);
        EXPECT_TRUE(QTest::qWaitFor(
            [&] {
                const auto start = actNow();
                return start && std::chrono::abs(*start - (machine + left)) < Milliseconds{500};
            },
            kSoon))
            << "the plate's signal, " << left.count() << " ms before it";
    }
}

TEST_F(HornLinkTest, StoppedItStartsNoHornAgain) {
    horn(kAlive);
    m_link->start();
    expectTold({"heard"});
    m_link->stop();
    const std::vector<std::string> lines = linesToHorn();
    letPass(Milliseconds{600});
    EXPECT_EQ(m_told.size(), 1U);
    EXPECT_EQ(linesToHorn(), lines);
}

} // namespace
} // namespace seamclock::test
