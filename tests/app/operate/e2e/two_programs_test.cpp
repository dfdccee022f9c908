// One log, two programs: the second is refused with one sentence and exit status 2, whether it is a
// window or a command that would write; the first goes on with screen and keys as if nothing had
// been, and the log verifies.
#include "core/log/verify.h"
#include "tests/app/operate/e2e/rig.h"
#include "tests/app/operate/e2e/weld_log.h"

#include <algorithm>
#include <fstream>
#include <gtest/gtest.h>
#include <string>

namespace seamclock::test {
namespace {

/// What the program itself says; Qt adds lines of its own about the folders it is given here.
std::string textOf(const std::string& file) {
    std::ifstream in(file);
    std::string text;
    for (std::string line; std::getline(in, line);) {
        text += line.rfind("seamclock", 0) == 0 ? line + "\n" : std::string();
    }
    return text;
}

std::size_t stepsIn(const std::string& log) {
    const auto weld = weldIn(log);
    return weld ? handsEvents(*weld).size() : 0;
}

class TwoPrograms : public ::testing::Test {
protected:
    TwoPrograms() {
        bringLog(m_rig.log(), {"preparing", 4, Milliseconds{5'000}, 0, {}});
        m_before = stepsIn(m_rig.log());
        m_rig.startProgram();
    }

    /// What stands on standard error: one line that names the log and what to do.
    void expectSentence(const std::string& errors) {
        const std::string text = textOf(errors);
        EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 1) << text;
        EXPECT_NE(text.find(m_rig.log()), std::string::npos) << text;
        EXPECT_NE(text.find("another program is writing this log"), std::string::npos) << text;
        EXPECT_NE(text.find("close that one first"), std::string::npos) << text;
    }
    /// The first program takes the next step by its key, without being given the keys again.
    void expectFirstGoesOn() {
        m_rig.key("space");
        ++m_before;
        EXPECT_TRUE(waitFor([&] { return stepsIn(m_rig.log()) >= m_before; }))
            << "the step is lost";
        EXPECT_EQ(stepsIn(m_rig.log()), m_before);
    }
    void expectSound() {
        const auto sound = verifyLog(m_rig.log());
        ASSERT_TRUE(sound) << sound.error().detail;
        EXPECT_TRUE(sound->ok) << (sound->finding ? sound->finding->reason : "");
    }
    std::vector<std::string> cli(std::vector<std::string> words) const {
        words.insert(words.begin(), std::string(SEAMCLOCK_BIN_DIR) + "/seamclock-cli");
        return words;
    }

    ScratchFolder m_folder;
    Rig m_rig;
    std::size_t m_before = 0;
};

TEST_F(TwoPrograms, ASecondWindowIsRefusedAndTakesNeitherScreenNorKeys) {
    const QRect body = pixels(frameFor(FrameKind::Check).body);
    const QImage before = m_rig.screen();
    const std::string errors = m_folder.file("errors");
    const auto second = m_rig.start(m_rig.command(), errors);
    ASSERT_TRUE(waitFor([&] { return textOf(errors).find('\n') != std::string::npos; }));
    expectSentence(errors);
    // Its window says so too, behind the first: that one may guide a changeover just now.
    expectFirstGoesOn();
    EXPECT_TRUE(waitFor([&] { return difference(m_rig.screen(), body, before.copy(body)) > 0; }))
        << "the next check does not stand";
    m_rig.giveKeysTo("^Seamclock can.t start$");
    m_rig.key("space");
    EXPECT_EQ(second->waitForEnd(Milliseconds{20'000}), 2);
    m_rig.giveKeysTo("^Seamclock$");
    expectFirstGoesOn();
    m_rig.killProgram();
    expectSound();
    // And the log is free again.
    m_rig.startProgram();
    expectFirstGoesOn();
    m_rig.killProgram();
    expectSound();
}

TEST_F(TwoPrograms, CommandsThatWouldWriteAreRefusedAndThoseThatReadAreNot) {
    const std::string other = m_folder.file("other.seamlog");
    bringLog(other, {"aligning", 0, Milliseconds{5'000}, 1, {}});
    const std::string errors = m_folder.file("errors");
    const std::vector<std::vector<std::string>> writing{
        {"log", "import", "--from", other, "--log", m_rig.log()},
        {"people", "add", "--name", "Orla Fennick", "--role", "operator", "--log", m_rig.log()},
        {"log", "seal", "--by", "person:nobody", "--log", m_rig.log()}};
    for (const auto& words : writing) {
        SCOPED_TRACE(words[0] + " " + words[1]);
        const auto second = m_rig.start(cli(words), errors);
        second->closeInput();
        EXPECT_EQ(second->waitForEnd(Milliseconds{20'000}), 2);
        expectSentence(errors);
        expectFirstGoesOn();
    }
    const auto reading = m_rig.start(cli({"log", "verify", "--log", m_rig.log()}), errors);
    EXPECT_EQ(reading->waitForEnd(Milliseconds{20'000}), 0) << textOf(errors);
    m_rig.killProgram();
    expectSound();
    EXPECT_EQ(stepsIn(m_rig.log()), m_before) << "nothing came in beside the hand's steps";
}

} // namespace
} // namespace seamclock::test
