#include "core/machine/machine.h"

#include "tests/support/scratch_folder.h"

#include <cerrno>
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <string>
#include <sys/resource.h>
#include <thread>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

std::string textIn(const fs::path& path) {
    std::ifstream file(path);
    return {std::istreambuf_iterator<char>(file), {}};
}

class MachineFiles : public ::testing::Test {
protected:
    MachineFiles() { std::ofstream(at("one")) << "first"; }
    std::string at(const char* name) const { return m_folder.file(name); }

private:
    test::ScratchFolder m_folder; // tests run side by side
};

TEST_F(MachineFiles, AFileIsMovedToAFreeName) {
    EXPECT_EQ(renameWithoutReplacing(at("one"), at("two")), 0);
    EXPECT_FALSE(fs::exists(at("one")));
    EXPECT_EQ(textIn(at("two")), "first");
}

TEST_F(MachineFiles, AFileThatIsThereIsNotReplaced) {
    std::ofstream(at("two")) << "second";
    EXPECT_EQ(renameWithoutReplacing(at("one"), at("two")), EEXIST);
    EXPECT_EQ(textIn(at("one")), "first");
    EXPECT_EQ(textIn(at("two")), "second");
}

TEST_F(MachineFiles, WhatIsNotThereCannotBeMoved) {
    EXPECT_EQ(renameWithoutReplacing(at("none"), at("two")), ENOENT);
}

TEST_F(MachineFiles, AFolderOfThisMachineIsNotOnANetwork) {
    const auto far = liesOnNetwork(::testing::TempDir());
    ASSERT_TRUE(far) << far.error().detail;
    EXPECT_FALSE(*far);
}

TEST_F(MachineFiles, OfAPathThatIsNotThereTheSystemsSentenceIsTold) {
    const auto far = liesOnNetwork(at("none"));
    ASSERT_FALSE(far);
    EXPECT_NE(far.error().detail.find("No such file"), std::string::npos) << far.error().detail;
}

TEST(Machine, AThreadThatStandsBehindLeavesTheOthersAsTheyWere) {
    const int before = getpriority(PRIO_PROCESS, 0);
    int behind = before;
    std::thread([&behind] {
        standBehindOthers();
        behind = getpriority(PRIO_PROCESS, 0); // Linux: of the calling thread
    }).join();
    EXPECT_GT(behind, before);
    EXPECT_EQ(getpriority(PRIO_PROCESS, 0), before);
}

// Magic numbers as statfs(2) of the Linux manual lists them.
TEST(Machine, NetworkFileSystemsAreKnownByTheirMagicOrMountType) {
    for (const std::uint64_t magic :
         {0x6969ULL, 0xff534d42ULL, 0xfe534d42ULL, 0x517bULL, 0x5346414fULL, 0x73757245ULL}) {
        EXPECT_TRUE(isNetworkFileSystem(magic, "")) << magic;
    }
    for (const std::uint64_t magic :
         {0xef53ULL, 0x01021994ULL, 0x9123683eULL, 0x58465342ULL, 0x65735546ULL, 0x794c7630ULL}) {
        EXPECT_FALSE(isNetworkFileSystem(magic, "ext4")) << magic;
    }
    EXPECT_TRUE(isNetworkFileSystem(0x65735546, "fuse.sshfs"));
    EXPECT_FALSE(isNetworkFileSystem(0x65735546, "fuseblk"));
}

} // namespace
} // namespace seamclock
