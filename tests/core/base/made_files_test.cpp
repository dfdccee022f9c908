#include "core/base/made_files.h"

#include "tests/support/scratch_folder.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

void put(const std::string& file, const std::string& text) {
    std::ofstream(file) << text;
}

TEST(MadeFiles, AreThoseThatWereNotedAndAreStillAsTheyWereWritten) {
    const test::ScratchFolder scratch;
    const std::string folder = scratch.file("papers");
    ASSERT_TRUE(keepMadeFiles(folder));
    ASSERT_EQ(madeFiles(folder).size(), 1U) << "the list itself";
    for (const char* name : {"a report.pdf", "changed.pdf", "gone.pdf", "linked.pdf"}) {
        put(folder + "/" + name, "ours");
        noteMadeFile(folder + "/" + name);
    }
    put(folder + "/theirs.pdf", "ours"); // the same bytes, never noted
    put(folder + "/changed.pdf", "ours, and a note");
    fs::remove(folder + "/gone.pdf");
    fs::remove(folder + "/linked.pdf");
    fs::create_symlink(folder + "/a report.pdf", folder + "/linked.pdf");
    const auto made = madeFiles(folder);
    ASSERT_EQ(made.size(), 2U);
    EXPECT_EQ(made.front(), "a report.pdf");
    ASSERT_TRUE(keepMadeFiles(folder)) << "begun again, it goes on";
    EXPECT_EQ(madeFiles(folder), made);
}

TEST(MadeFiles, AreNotedOnlyWhereAListWasBegun) {
    const test::ScratchFolder scratch;
    put(scratch.file("a.pdf"), "a person's folder");
    noteMadeFile(scratch.file("a.pdf"));
    EXPECT_TRUE(madeFiles(scratch.file("")).empty());
    EXPECT_TRUE(madeFiles(scratch.file("nowhere")).empty());
    put(scratch.file("file"), "no folder");
    const auto begun = keepMadeFiles(scratch.file("file") + "/papers");
    ASSERT_FALSE(begun);
    EXPECT_EQ(begun.error().code, ErrorCode::NotWritten);
}

TEST(MadeFiles, AListNamesNothingOutsideItsFolder) {
    const test::ScratchFolder scratch;
    const std::string folder = scratch.file("papers");
    ASSERT_TRUE(keepMadeFiles(folder));
    const std::string list = folder + "/" + madeFiles(folder).front();
    put(scratch.file("a.pdf"), "outside");
    noteMadeFile(folder + "/../a.pdf"); // its own folder has no list
    put(folder + "/a.pdf", "x");
    noteMadeFile(folder + "/a.pdf");
    std::string line;
    std::getline(std::ifstream(list), line);
    std::ofstream(list, std::ios::app) << line.substr(0, 65) << "../a.pdf\n"
                                       << line.substr(0, 65) << "\n\n";
    EXPECT_EQ(madeFiles(folder).size(), 2U);
}

} // namespace
} // namespace seamclock
