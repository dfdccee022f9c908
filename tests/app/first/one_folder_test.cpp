// Where the program keeps what it keeps: all in one folder that is named, which is the same shop
// where it is copied to; the demo shop in a folder of its own, beside the shop's log and never in
// it. The whole program runs, without a display.
#include "core/log/log_reader.h"
#include "core/log/roster.h"
#include "core/log/shelf.h"
#include "core/log/verify.h"
#include "core/practice/demo_folder.h"
#include "tests/app/first/first_rig.h"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <poll.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

namespace seamclock::test {
namespace {

namespace fs = std::filesystem;

std::string inShell(const std::string& text) {
    return "'" + text + "'";
}

/// The program in a home of its own, in which nothing must be left.
class Program {
public:
    Program() : m_home(m_scratch.file("home")) { fs::create_directories(m_home); }

    int run(const std::string& words) const {
        const std::string command = environment() + inShell(program()) + " " + words + " 2>" +
                                    inShell(m_scratch.file("err")) + " >" +
                                    inShell(m_scratch.file("out"));
        const int status = std::system(command.c_str());
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    /// Until `there`, then it is told to end.
    template <class There>
    bool runUntil(const std::string& words, const There& there) const {
        const std::string command = "exec " + environment() + inShell(program()) + " " + words +
                                    " >/dev/null 2>" + inShell(m_scratch.file("err"));
        const pid_t child = ::fork();
        if (child == 0) {
            ::execl("/bin/sh", "sh", "-c", command.c_str(), nullptr);
            ::_exit(127);
        }
        bool came = false;
        for (int i = 0; i < 1'200 && !came; ++i) {
            came = there();
            int status = 0;
            if (::waitpid(child, &status, WNOHANG) == child) {
                return came;
            }
            ::poll(nullptr, 0, 100);
        }
        ::kill(child, SIGTERM);
        int status = 0;
        ::waitpid(child, &status, 0);
        return came;
    }
    std::string errors() const {
        std::ifstream file(m_scratch.file("err"));
        return {std::istreambuf_iterator<char>(file), {}};
    }
    bool homeIsEmpty() const {
        return !fs::exists(m_home + "/.local") && !fs::exists(m_home + "/.config");
    }
    std::string file(const std::string& name) const { return m_scratch.file(name); }

private:
    static std::string program() { return std::string(SEAMCLOCK_BIN_DIR) + "/seamclock"; }
    std::string environment() const {
        return "env -u XDG_DATA_HOME -u XDG_CONFIG_HOME -u SEAMCLOCK_HOME "
               "QT_QPA_PLATFORM=offscreen "
               "HOME=" +
               inShell(m_home) + " XDG_RUNTIME_DIR=" + inShell(m_home) +
               " SEAMCLOCK_RESOURCES=" + inShell(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources") +
               " ";
    }

    ScratchFolder m_scratch;
    std::string m_home;
};

void expectSound(const std::string& log) {
    const auto sound = verifyLog(log);
    ASSERT_TRUE(sound) << sound.error().detail;
    EXPECT_TRUE(sound->ok) << (sound->finding ? sound->finding->reason : "");
}

TEST(OneFolder, CopiedElsewhereIsTheSameShop) {
    const Program program;
    const std::string shop = program.file("shop");
    {
        FirstRig rig({}, shop);
        FirstWalk walk(rig.window(), rig.desk());
        ASSERT_TRUE(walk.all());
        ASSERT_TRUE(rig.writer().flush());
    }
    const std::string elsewhere = program.file("elsewhere/on a stick");
    fs::create_directories(fs::path(elsewhere).parent_path());
    fs::copy(shop, elsewhere, fs::copy_options::recursive);
    fs::remove_all(shop);
    // By the program itself: no first start, and the day's paper names the shop.
    ASSERT_EQ(
        program.run(
            "--home " + inShell(elsewhere) + " --day-report 2030-01-07 --out " +
            inShell(program.file("day.pdf"))),
        0)
        << program.errors();
    EXPECT_GT(fs::file_size(program.file("day.pdf")), 1'000U);
    EXPECT_TRUE(program.homeIsEmpty());
    FirstRig rig({}, elsewhere);
    EXPECT_EQ(rig.desk().people().people.size(), 2U);
    ASSERT_EQ(rig.floor().benches().size(), 1U);
    EXPECT_EQ(rig.floor().benches().front().bench.name, "Bench 1");
    EXPECT_EQ(readPreferences(rig.settings()).shop, "Quillmere Vat Works");
    EXPECT_FALSE(needsFirstSteps(rig.floor(), rig.settings()));
    bool foreman = false;
    auto pin = Pin::read(FirstWalk::kForemansPin);
    ASSERT_TRUE(pin);
    rig.desk().enter(
        &rig.window(), "person:oddo-quenley", std::make_shared<const Pin>(std::move(*pin)),
        [&foreman](const Entry& entry) { foreman = entry.access != nullptr; });
    FirstWalk(rig.window(), rig.desk()).settle();
    EXPECT_TRUE(foreman) << "the secrets came along";
    ASSERT_TRUE(rig.writer().flush());
    expectSound(rig.log());
}

TEST(OneFolder, HoldsEverythingOfAProgramThatIsStartedWithIt) {
    const Program program;
    const std::string folder = program.file("new/shop");
    ASSERT_TRUE(program.runUntil("--no-sound --home " + inShell(folder), [&] {
        return fs::exists(folder + "/joints.seamlog.backups");
    })) << program.errors();
    expectSound(folder + "/joints.seamlog");
    EXPECT_TRUE(program.homeIsEmpty());
    // It has no bench and no demo's either: nothing invented stands in a shop's own log.
    auto reader = LogReader::open(folder + "/joints.seamlog");
    ASSERT_TRUE(reader);
    EXPECT_EQ(reader->world(), "production");
    const auto shelf = readShelf(*reader);
    ASSERT_TRUE(shelf);
    EXPECT_TRUE(shelf->benches.empty());
    EXPECT_FALSE(fs::exists(folder + "/demo-shop"));
    std::ofstream(program.file("file")) << "no folder\n";
    EXPECT_EQ(program.run("--no-sound --home " + inShell(program.file("file") + "/shop")), 2);
    EXPECT_NE(program.errors().find("--home"), std::string::npos);
}

TEST(DemoShop, StandsBesideTheShopsLogAndNeverInIt) {
    const Program program;
    const std::string folder = program.file("shop");
    const std::string demo = folder + "/demo-shop";
    ASSERT_TRUE(program.runUntil("--no-sound --demo-shop --home " + inShell(folder), [&] {
        return lookAtDemo(demo) == DemoFolder::Whole &&
               fs::exists(demoLogOf(demo) + ".backups"); // its window stands
    })) << program.errors();
    EXPECT_FALSE(fs::exists(folder + "/joints.seamlog")) << "the shop's own is not touched";
    expectSound(demoLogOf(demo));
    auto reader = LogReader::open(demoLogOf(demo));
    ASSERT_TRUE(reader);
    EXPECT_EQ(reader->world(), "practice");
    EXPECT_GE(reader->highestNumber().value_or(0), 40) << "five days of eight joints at least";
    const auto roster = readRoster(*reader);
    ASSERT_TRUE(roster);
    EXPECT_EQ(roster->people.size(), 4U);
    const auto last = lastOf(demoLogOf(demo));
    ASSERT_TRUE(last);
    // A shop's program does not open it as its own.
    EXPECT_EQ(
        program.run(
            "--no-sound --log " + inShell(demoLogOf(demo)) + " --record 1 --out " +
            inShell(program.file("joint.pdf"))),
        0)
        << program.errors();
    EXPECT_EQ(
        std::system(("pdftotext " + inShell(program.file("joint.pdf")) + " - | grep -q 'DEMO SHOP'")
                        .c_str()),
        0)
        << "every paper says so";
    EXPECT_EQ(program.run("--demo-shop --log x.seamlog"), 2);
    const auto left = removeDemoShop(demo);
    ASSERT_TRUE(left) << left.error().detail;
    EXPECT_EQ(*left, 0) << "whatever the program made there is its own";
}

} // namespace
} // namespace seamclock::test
