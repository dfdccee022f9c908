// Which files can be chosen.
#include "app/setup/setup_files.h"

#include "tests/support/scratch_folder.h"

#include <QDir>
#include <QFile>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

void make(const QString& path) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
}

TEST(SetupFiles, ListsThoseOfTheEndingThenFoldersThenTheWayUp) {
    test::ScratchFolder scratch;
    const QString folder = QString::fromStdString(scratch.file("files"));
    ASSERT_TRUE(QDir().mkpath(folder + "/below"));
    make(folder + "/b.json");
    make(folder + "/a.json");
    make(folder + "/c.csv");
    std::vector<FileRow> files;
    const ListView page = filesPage("Which?", folder, "json", {}, files);
    ASSERT_EQ(page.rows.size(), 4U);
    ASSERT_EQ(files.size(), 4U);
    EXPECT_EQ(page.rows[0].text, "a.json");
    EXPECT_EQ(page.rows[1].text, "b.json");
    EXPECT_EQ(page.rows[2].text, "below");
    EXPECT_TRUE(files[2].isFolder);
    EXPECT_EQ(page.rows[3].text, "The folder above");
    EXPECT_EQ(QDir(files[3].path), QDir(folder + "/.."));
    EXPECT_FALSE(files[0].isFolder);
}

TEST(SetupFiles, AFolderThatIsNotThereAndOneWithoutSuchFilesAreSaid) {
    test::ScratchFolder scratch;
    const QString folder = QString::fromStdString(scratch.file("nothing"));
    std::vector<FileRow> files;
    EXPECT_TRUE(filesPage("Which?", folder, "csv", {}, files).under.contains(folder));
    EXPECT_TRUE(files.empty());
    ASSERT_TRUE(QDir().mkpath(folder));
    EXPECT_TRUE(filesPage("Which?", folder, "csv", {}, files).under.contains("No *.csv"));
    EXPECT_EQ(filesPage("Which?", folder, "csv", "It is bent.", files).trouble, "It is bent.");
}

} // namespace
} // namespace seamclock
