// The demo shop in its folder: whole or not there, its log of the practice world and the same for
// the same seed, its PINs as they are told; and a removal that takes what is its own and nothing
// else: links are not followed, strangers stay.
#include "core/base/made_files.h"
#include "core/copies/log_import.h"
#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/log/roster.h"
#include "core/log/shelf.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "core/people/credentials.h"
#include "core/practice/demo_folder.h"
#include "core/practice/virtual_clock.h"
#include "core/practice/virtual_operator.h"
#include "core/session/office.h"
#include "core/shift/job.h"
#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <set>
#include <string>
#include <vector>

namespace seamclock::test {
namespace {

namespace fs = std::filesystem;

std::string source() {
    return std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo";
}

DemoOrder orderFor(const std::string& folder) {
    DemoOrder order;
    order.folder = folder;
    order.source = source();
    auto procedures =
        readProcedureFolder(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures");
    EXPECT_TRUE(procedures);
    order.procedures = procedures ? std::move(*procedures) : std::vector<ProcedureDocument>();
    order.days = 2;
    return order;
}

void put(const fs::path& file, const std::string& text = "a stranger's\n") {
    fs::create_directories(file.parent_path());
    std::ofstream(file) << text;
}

std::string textOf(const fs::path& file) {
    std::ifstream in(file);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// All that the day list says of each joint, without what is another at each making.
std::vector<std::string> joints(const std::string& log) {
    std::vector<std::string> all;
    auto reader = LogReader::open(log);
    EXPECT_TRUE(reader);
    const auto read = reader->eachJoint({}, [&all](const JointLine& line) {
        all.push_back(
            std::to_string(line.number) + " " + line.type + " " + line.day + " " +
            std::to_string(line.openedUtc.count()) + " " + line.by + " " + line.bench + " " +
            line.seam + " " + line.phase + " " + line.verdict + " " +
            std::to_string(line.findings) + " " + std::to_string(line.events));
        return true;
    });
    EXPECT_TRUE(read);
    return all;
}

/// One shop for all tests that only look.
class DemoFolderTest : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        s_folder = new ScratchFolder;
        const auto made = makeDemoShop(orderFor(shop()));
        ASSERT_TRUE(made) << made.error().detail;
    }
    static void TearDownTestSuite() {
        delete s_folder;
        s_folder = nullptr;
    }
    static std::string shop() { return s_folder->file("data/demo-shop"); }
    /// A copy of it, to be taken apart.
    std::string copy() const {
        const std::string to = m_scratch.file("demo-shop");
        fs::copy(shop(), to, fs::copy_options::recursive);
        return to;
    }

    ScratchFolder m_scratch;
    static ScratchFolder* s_folder;
};
ScratchFolder* DemoFolderTest::s_folder = nullptr;

TEST_F(DemoFolderTest, HoldsAShopWithPeopleBenchesAJobAndALogThatVerifies) {
    EXPECT_EQ(lookAtDemo(shop()), DemoFolder::Whole);
    EXPECT_FALSE(fs::exists(shop() + ".new"));
    EXPECT_TRUE(isOfDemo(demoLogOf(shop())));
    const auto job = readFirstJob(shop());
    ASSERT_TRUE(job) << job.error().detail;
    EXPECT_EQ(job->seams.size(), 6U);
    const auto sound = verifyLog(demoLogOf(shop()));
    ASSERT_TRUE(sound) << sound.error().detail;
    EXPECT_TRUE(sound->ok) << (sound->finding ? sound->finding->reason : "");
    auto reader = LogReader::open(demoLogOf(shop()));
    ASSERT_TRUE(reader);
    EXPECT_EQ(reader->world(), Practice::kName);
    const auto roster = readRoster(*reader);
    ASSERT_TRUE(roster);
    ASSERT_EQ(roster->people.size(), demoPeople().size());
    for (const DemoPerson& one : demoPeople()) {
        const Person* person = findPerson(roster->people, one.id);
        ASSERT_NE(person, nullptr) << one.id;
        EXPECT_EQ(person->name, one.name);
    }
    EXPECT_EQ(roster->people.front().role, Role::Foreman);
    const auto shelf = readShelf(*reader);
    ASSERT_TRUE(shelf);
    EXPECT_EQ(shelf->benches.size(), 2U);
    const auto days = reader->days(10);
    ASSERT_TRUE(days);
    EXPECT_EQ(*days, (std::vector<std::string>{"2030-01-08", "2030-01-07"}));
    EXPECT_GE(joints(demoLogOf(shop())).size(), 16U) << "eight a day at least";
    const auto seams = reader->eachJoint({}, [](const JointLine& line) {
        EXPECT_EQ(line.seam.front(), 'K') << "the job's own seams are still to be made";
        EXPECT_EQ(line.job, "QV-104") << "an earlier tank's";
        return true;
    });
    EXPECT_TRUE(seams);
    const auto last = lastOf(demoLogOf(shop()));
    ASSERT_TRUE(last);
    EXPECT_GT(*last, kPracticeStart + std::chrono::hours(24));
    EXPECT_LT(*last, kPracticeStart + std::chrono::hours(48));
}

TEST_F(DemoFolderTest, OpensWithThePinsThatItTells) {
    const std::string log = demoLogOf(copy());
    Instant later;
    later.bootId = "practice:8a2e4e0c-46f1-4b3f-9f57-1de1ab5b2a11";
    later.utc = *lastOf(log);
    const VirtualClock clock(later);
    auto writer = LogWriter<Practice>::open(log, clock);
    ASSERT_TRUE(writer) << writer.error().detail;
    Credentials credentials(log + ".credentials");
    auto office = Office::open(*writer, credentials, clock);
    ASSERT_TRUE(office);
    for (const DemoPerson& one : demoPeople()) {
        const auto pin = Pin::read(one.pin);
        ASSERT_TRUE(pin);
        const auto entered = office->enter(one.id, *pin);
        EXPECT_TRUE(entered) << one.name;
        EXPECT_EQ(entered && entered->key.has_value(), one == demoPeople().front());
    }
}

TEST_F(DemoFolderTest, IsTheSameForTheSameSeedAndAnotherForAnother) {
    DemoOrder order = orderFor(m_scratch.file("again"));
    ASSERT_TRUE(makeDemoShop(order));
    EXPECT_EQ(joints(demoLogOf(order.folder)), joints(demoLogOf(shop())));
    order.folder = m_scratch.file("other");
    order.seed = 2;
    ASSERT_TRUE(makeDemoShop(order));
    EXPECT_NE(joints(demoLogOf(order.folder)), joints(demoLogOf(shop())));
}

TEST_F(DemoFolderTest, ItsJointsEnterNoShopsLogNotEvenByImport) {
    const VirtualClock clock(Instant{
        Milliseconds(1), "6c2f0d5e-0a54-4d3e-9a52-d0c1f6a7b8c9", kPracticeStart,
        std::chrono::minutes(0)});
    const std::string own = m_scratch.file("joints.seamlog");
    ASSERT_TRUE(LogWriter<Production>::open(own, clock));
    const std::string before = textOf(own);
    // By its type: a shop's program does not open it, and does not take it in.
    const std::string demo = demoLogOf(copy());
    const auto opened = LogWriter<Production>::open(demo, clock);
    ASSERT_FALSE(opened);
    EXPECT_EQ(opened.error().code, ErrorCode::Foreign);
    const auto taken = importLog(demo, own, clock);
    ASSERT_FALSE(taken);
    EXPECT_EQ(joints(own).size(), 0U);
}

TEST_F(DemoFolderTest, IsRemovedWithAllThatIsItsOwn) {
    const std::string folder = copy();
    const std::string log = demoLogOf(folder);
    for (const char* beside :
         {".lock", ".spill", ".photos/ab12", ".backups/2030-01-07/copy", "-wal", "-shm"}) {
        put(log + beside);
    }
    put(demoPracticeLogOf(folder));
    put(fs::path(demoPapersOf(folder)) / "joint-12.pdf", "a record");
    noteMadeFile((fs::path(demoPapersOf(folder)) / "joint-12.pdf").string());
    put(m_scratch.file("joints.seamlog"), "the shop's own");
    const auto left = removeDemoShop(folder);
    ASSERT_TRUE(left) << left.error().detail;
    EXPECT_EQ(*left, 0);
    EXPECT_FALSE(fs::exists(folder));
    EXPECT_EQ(lookAtDemo(folder), DemoFolder::None);
    EXPECT_EQ(textOf(m_scratch.file("joints.seamlog")), "the shop's own");
}

TEST_F(DemoFolderTest, ARemovalLeavesAPersonsOwnPapers) {
    const std::string folder = copy();
    const fs::path papers = demoPapersOf(folder);
    for (const char* made : {"joint-12.pdf", "joint-13.pdf", "joint-14.pdf"}) {
        put(papers / made, "a record");
        noteMadeFile((papers / made).string());
    }
    put(papers / "joint-13.pdf", "a record with a note on it"); // of a person, since
    fs::remove(papers / "joint-14.pdf");
    fs::create_symlink(papers / "my-drawing.pdf", papers / "joint-14.pdf");
    put(papers / "my-drawing.pdf", "a record"); // the same bytes, which the program did not write
    const auto left = removeDemoShop(folder);
    ASSERT_TRUE(left) << left.error().detail;
    EXPECT_EQ(*left, 3);
    std::set<std::string> there;
    for (const auto& each : fs::recursive_directory_iterator(folder)) {
        there.insert(each.path().filename().string());
    }
    EXPECT_EQ(
        there, (std::set<std::string>{"papers", "joint-13.pdf", "joint-14.pdf", "my-drawing.pdf"}));
    EXPECT_EQ(textOf(papers / "joint-13.pdf"), "a record with a note on it");
}

TEST_F(DemoFolderTest, ARemovalFollowsNoLinkAndLeavesStrangers) {
    const std::string folder = copy();
    const fs::path kept = m_scratch.file("kept");
    put(kept / "photo.jpg", "mine");
    put(kept / "list.csv", "mine, too");
    // Where its own would lie stand links to what is somebody's.
    fs::create_directory_symlink(kept, demoLogOf(folder) + ".photos");
    fs::remove_all(demoPapersOf(folder));
    fs::create_directory_symlink(kept, demoPapersOf(folder));
    fs::remove(fs::path(folder) / "bench-east.json");
    fs::create_symlink(kept / "list.csv", fs::path(folder) / "bench-east.json");
    fs::create_directory_symlink(kept, demoLogOf(folder) + ".backups");
    // And what is nobody's business here.
    put(fs::path(folder) / "notes.txt");
    put(fs::path(folder) / "drawings/tank.svg");
    put(fs::path(folder) / "joints.seamlogs"); // no log's: another name
    fs::create_directory_symlink(kept, fs::path(folder) / "link");
    const auto left = removeDemoShop(folder);
    ASSERT_TRUE(left) << left.error().detail;
    EXPECT_EQ(*left, 4);
    EXPECT_EQ(textOf(kept / "photo.jpg"), "mine");
    EXPECT_EQ(textOf(kept / "list.csv"), "mine, too");
    std::set<std::string> there;
    for (const auto& each : fs::directory_iterator(folder)) {
        there.insert(each.path().filename().string());
    }
    EXPECT_EQ(there, (std::set<std::string>{"notes.txt", "drawings", "joints.seamlogs", "link"}));
    EXPECT_EQ(lookAtDemo(folder), DemoFolder::Stranger);
    const auto again = removeDemoShop(folder);
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().code, ErrorCode::Foreign);
}

TEST_F(DemoFolderTest, NoOtherFolderIsTakenForOne) {
    EXPECT_EQ(lookAtDemo(m_scratch.file("nothing")), DemoFolder::None);
    const fs::path own = m_scratch.file("own");
    put(own / "joints.seamlog", "the shop's own");
    EXPECT_EQ(lookAtDemo(own), DemoFolder::Stranger);
    put(own / "demo-shop.txt", "some notes\njoints.seamlog\n");
    EXPECT_EQ(lookAtDemo(own), DemoFolder::Stranger) << "a mark says in its first line what it is";
    const std::string folder = copy();
    const std::string link = m_scratch.file("link");
    fs::create_directory_symlink(folder, link);
    EXPECT_EQ(lookAtDemo(link), DemoFolder::Stranger);
    for (const std::string& one : {own.string(), link, m_scratch.file("nothing")}) {
        const auto removed = removeDemoShop(one);
        ASSERT_FALSE(removed) << one;
        EXPECT_EQ(removed.error().code, ErrorCode::Foreign);
        EXPECT_NE(removed.error().detail.find(one), std::string::npos);
    }
    EXPECT_EQ(textOf(own / "joints.seamlog"), "the shop's own");
    EXPECT_EQ(lookAtDemo(folder), DemoFolder::Whole);
    const auto made = makeDemoShop(orderFor(own.string()));
    ASSERT_FALSE(made);
    EXPECT_EQ(made.error().code, ErrorCode::Conflict);
}

TEST_F(DemoFolderTest, AMarkNamesNothingOutsideItsFolder) {
    const std::string folder = copy();
    const fs::path outside = m_scratch.file("joints.seamlog");
    put(outside, "the shop's own");
    std::ofstream(fs::path(folder) / "demo-shop.txt", std::ios::app)
        << "../joints.seamlog\n"
        << outside.string() << "\n..\n.\n";
    ASSERT_TRUE(removeDemoShop(folder));
    EXPECT_FALSE(fs::exists(folder));
    EXPECT_EQ(textOf(outside), "the shop's own");
}

TEST_F(DemoFolderTest, WhatWasCutOffIsDoneAgain) {
    // A making: everything but the log was there.
    const std::string place = m_scratch.file("place");
    fs::copy(copy(), place + ".new", fs::copy_options::recursive);
    fs::remove(demoLogOf(place + ".new"));
    EXPECT_EQ(lookAtDemo(place), DemoFolder::None);
    ASSERT_TRUE(makeDemoShop(orderFor(place)));
    EXPECT_EQ(lookAtDemo(place), DemoFolder::Whole);
    EXPECT_FALSE(fs::exists(place + ".new"));
    // A removal: the mark goes last.
    fs::remove(demoLogOf(place));
    fs::remove(fs::path(place) / "bench-west.json");
    EXPECT_EQ(lookAtDemo(place), DemoFolder::Half);
    ASSERT_TRUE(makeDemoShop(orderFor(place)));
    EXPECT_EQ(lookAtDemo(place), DemoFolder::Whole);
    fs::remove(demoLogOf(place));
    ASSERT_TRUE(removeDemoShop(place));
    EXPECT_FALSE(fs::exists(place));
}

TEST_F(DemoFolderTest, ThatAnotherProgramHasOpenStaysWhole) {
    const std::string folder = copy();
    const VirtualClock clock(Instant{
        Milliseconds(1), "practice:8a2e4e0c-46f1-4b3f-9f57-1de1ab5b2a11",
        *lastOf(demoLogOf(folder)), std::chrono::minutes(0)});
    const auto writer = LogWriter<Practice>::open(demoLogOf(folder), clock);
    ASSERT_TRUE(writer);
    const auto removed = removeDemoShop(folder);
    ASSERT_FALSE(removed);
    EXPECT_EQ(removed.error().code, ErrorCode::Conflict);
    EXPECT_EQ(lookAtDemo(folder), DemoFolder::Whole);
}

TEST_F(DemoFolderTest, ThatCannotBeFilledIsNotThere) {
    DemoOrder order = orderFor(m_scratch.file("none"));
    order.days = 0;
    const auto none = makeDemoShop(order);
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::OutOfRange);
    EXPECT_FALSE(fs::exists(order.folder));
    EXPECT_FALSE(fs::exists(order.folder + ".new"));
    order.days = 1;
    order.source = m_scratch.file("no such folder");
    EXPECT_FALSE(makeDemoShop(order));
    EXPECT_FALSE(fs::exists(order.folder));
    put(m_scratch.file("file"));
    order.source = source();
    order.folder = m_scratch.file("file") + "/demo-shop";
    const auto unwritable = makeDemoShop(order);
    ASSERT_FALSE(unwritable);
    EXPECT_EQ(unwritable.error().code, ErrorCode::NotWritten);
}

} // namespace
} // namespace seamclock::test
