// Which seams of a job stand on a bench's page: a bench is known by the id in its file, wherever
// the file lies and whatever it is called.
#include "tests/app/operate/demo_shop.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

/// The demo job with its two benches in files of the same name, in different folders.
void writeJob(const std::string& folder) {
    const fs::path demo = fs::path(SEAMCLOCK_SOURCE_DIR) / "resources/demo";
    std::ifstream in(demo / "job-brine-tank.json");
    std::stringstream read;
    read << in.rdbuf();
    std::string job = read.str();
    for (const std::string name : {"east", "west"}) {
        const std::string there = "bench-" + name + ".json";
        const std::string here = name + "/bench.json";
        fs::create_directories(fs::path(folder) / name);
        fs::copy_file(demo / there, fs::path(folder) / here);
        for (auto at = job.find(there); at != std::string::npos; at = job.find(there)) {
            job.replace(at, there.size(), here);
        }
    }
    std::ofstream(fs::path(folder) / "job-moved.json") << job;
}

QStringList seamsOffered(Shop& shop, const std::string& bench) {
    const auto& posts = shop.floor().posts();
    for (int i = 0; i < static_cast<int>(posts.size()); ++i) {
        if (posts[static_cast<std::size_t>(i)].bench.bench.id == bench) {
            shop.floor().select(i);
        }
    }
    shop.window().openNextCard(); // reads what is offered anew
    QStringList texts;
    for (const ChoiceView::Choice& choice : shop.window().choicePage()->view().choices) {
        texts << choice.text.section(':', 0, 0);
    }
    return texts;
}

// Which seam is wished on which bench is the demo job's own saying: S1 on east, S2 and S3 on west.
TEST(JobSeams, AreFoundByTheBenchsIdWhereTwoBenchFilesHaveTheSameName) {
    test::ScratchFolder folder;
    writeJob(folder.path());
    Shop shop(QSize(1280, 800), {}, folder.path());
    ASSERT_EQ(shop.floor().posts().size(), 2U);
    const QStringList east = seamsOffered(shop, "east");
    const QStringList west = seamsOffered(shop, "west");
    EXPECT_TRUE(east.contains("S1")) << east.join(' ').toStdString();
    EXPECT_FALSE(west.contains("S1")) << west.join(' ').toStdString();
    EXPECT_TRUE(west.contains("S2")) << west.join(' ').toStdString();
    EXPECT_FALSE(east.contains("S2")) << east.join(' ').toStdString();
}

} // namespace
} // namespace seamclock
