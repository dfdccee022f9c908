// Which seams of a job stand on a bench's page: a bench is known by the id in its file, wherever
// the file lies and whatever it is called.
#include "app/operate/job_seams.h"

#include "tests/app/operate/demo_shop.h"

#include <algorithm>
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

QStringList choicesOf(Shop& shop) {
    QStringList texts;
    for (const ChoiceView::Choice& choice : shop.window().choicePage()->view().choices) {
        texts << choice.text.section(':', 0, 0) + "|" + choice.under;
    }
    return texts;
}

const Weld& weldOf(Shop& shop) {
    return *shop.floor().weld(shop.floor().selected());
}

void slot(Shop& shop, SlotPlace place) {
    emit shop.window().currentPage()->slotPressed(place);
    shop.window().refresh();
}

TEST(JobSeams, OneThatIsMadeIsNotOfferedFromItsOpeningOn) {
    Shop shop;
    shop.floor().select(1);
    shop.window().openNextCard();
    slot(shop, SlotPlace::Step);
    shop.window().passTrial();
    const std::string made = *weldOf(shop).opened().seam;
    // Nothing waits for the disk, and nothing is read again.
    shop.floor().select(0);
    shop.floor().select(1);
    EXPECT_FALSE(seamsOffered(shop, "west").contains(QString::fromStdString(made)));
    // Stopped before its faces met it is as open as before.
    ASSERT_TRUE(shop.floor().answer(
        1, ReasonAnswer{AskReason{ReasonFor::Stop, {}}, "sheet_slipped", "A sheet slipped"}));
    shop.floor().leave(1);
    EXPECT_TRUE(seamsOffered(shop, "west").contains(QString::fromStdString(made)));
}

TEST(JobSeams, OneWithoutABatchSaysSoOnItsCardAndInTheRecord) {
    Shop shop(QSize(1280, 800), {}, SEAMCLOCK_SOURCE_DIR "/resources/demo", [](WindowParts& parts) {
        for (JobSeam& seam : parts.seams) {
            if (seam.label == "S2") {
                seam.sheets[1].batch.clear();
            }
        }
    });
    for (const int bench : {0, 1}) { // S1 has both
        shop.floor().select(bench);
        shop.window().openNextCard();
        ASSERT_EQ(shop.window().page(), PageKind::Card);
        slot(shop, SlotPlace::Step);
        shop.window().passTrial();
        const auto& flags = weldOf(shop).opened().flags;
        const bool missing = std::find(flags.begin(), flags.end(), "batch_missing") != flags.end();
        EXPECT_EQ(missing, bench == 1) << *weldOf(shop).opened().seam;
    }
}

TEST(JobSeams, OneThatWasCutOutIsOfferedAndOpenedAsItsReweld) {
    Shop shop;
    Walk walk(shop.window(), shop.floor(), shop.clock());
    ASSERT_TRUE(walk.toCooling());
    const Weld cut = weldOf(shop);
    const std::string again = *cut.opened().seam + "/R1";
    ASSERT_TRUE(shop.floor().answer(
        0, ReasonAnswer{AskReason{ReasonFor::Stop, {}}, "sheet_slipped", "A sheet slipped"}));
    slot(shop, SlotPlace::Step); // next seam: to the list
    ASSERT_EQ(shop.window().page(), PageKind::Seams);
    EXPECT_EQ(
        choicesOf(shop).front().toStdString(),
        again + "|again: joint " + std::to_string(cut.opened().number) + " was cut out");
    emit shop.window().choicePage()->chosen(0);
    ASSERT_EQ(shop.window().page(), PageKind::Pad);
    EXPECT_EQ(shop.window().padPage()->task().what, NumberFor::LengthLost);
    slot(shop, SlotPlace::Stop); // not now
    ASSERT_EQ(shop.window().page(), PageKind::Seams);
    emit shop.window().choicePage()->chosen(0);
    for (const QChar digit : QString("24")) {
        shop.window().padPage()->pad()->type(digit);
    }
    slot(shop, SlotPlace::Step);
    ASSERT_EQ(shop.window().page(), PageKind::Card);
    slot(shop, SlotPlace::Step);
    shop.window().passTrial();
    const WeldOpened& opened = weldOf(shop).opened();
    EXPECT_EQ(opened.seam, again);
    EXPECT_EQ(opened.reweldOf, cut.id());
    EXPECT_EQ(opened.lostUm, 24'000);
    EXPECT_EQ(opened.number, cut.opened().number + 1);
    // Stopped before its faces met, the same re-weld is asked for again.
    ASSERT_TRUE(shop.floor().answer(
        0, ReasonAnswer{AskReason{ReasonFor::Stop, {}}, "sheet_slipped", "A sheet slipped"}));
    shop.floor().leave(0);
    EXPECT_EQ(choicesOf(shop).front().section('|', 0, 0).toStdString(), again);
}

TEST(JobSeams, AreRememberedByTheLogAtTheNextStart) {
    const test::ScratchFolder kept;
    const auto log = kept.file("kept.seamlog");
    {
        Shop shop;
        Walk walk(shop.window(), shop.floor(), shop.clock());
        ASSERT_TRUE(walk.toCooling());
        ASSERT_TRUE(shop.floor().answer(
            0, ReasonAnswer{AskReason{ReasonFor::Stop, {}}, "sheet_slipped", "A sheet slipped"}));
        ASSERT_TRUE(shop.writer().flush());
        std::filesystem::copy_file(shop.log(), log);
        if (std::filesystem::exists(shop.log() + "-wal")) {
            std::filesystem::copy_file(shop.log() + "-wal", log + "-wal");
        }
    }
    auto job = readFirstJob(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo");
    ASSERT_TRUE(job);
    JobSeams seams(job->seams);
    EXPECT_TRUE(seams.openOn("east").empty()) << "nothing is offered before the log was asked";
    seams.read(log);
    ASSERT_TRUE(seams.isRead());
    const auto next = seams.nextOn("east");
    ASSERT_TRUE(next);
    EXPECT_EQ(seams.nextLabel(*next), next->label + "/R1");
}

} // namespace
} // namespace seamclock
