// Every screen of the walk, looked at by machine: no word cut off, outside its part or over another
// at 100, 150 and 200 % of text, lying and upright; every target at least 15 mm high and wide. And
// the pictures' command says in one sentence when it can't write.
#include "app/operate/people_walk.h"
#include "app/operate/setup_walk.h"
#include "app/parts/press_part.h"
#include "tests/app/operate/demo_shop.h"
#include "tests/app/parts/text_recorder.h"
#include "tests/support/sanitized.h"

#include <QDir>
#include <QFile>
#include <gtest/gtest.h>
#include <set>
#include <tuple>
#include <vector>

namespace seamclock {
namespace {

constexpr double kTargetMm = 15;

class EveryScreen : public testing::TestWithParam<std::tuple<int, int, double, bool>> {
protected:
    /// Walks through all screens and calls `look` at each.
    template <class Look>
    void walk(const Look& look) {
        const auto [width, height, text, mirrored] = GetParam();
        Preferences preferences;
        preferences.text = text;
        preferences.mirrored = mirrored;
        preferences.pedalKey = Qt::Key_F9;
        Shop shop(QSize(width, height), preferences);
        Walk walk(shop.window(), shop.floor(), shop.clock());
        std::set<QString> seen;
        const auto picture = [&](const QString& name) {
            ASSERT_TRUE(shop.writer().flush());
            shop.window().refresh();
            seen.insert(name);
            look(shop.window(), name.toStdString());
        };
        auto done = walk.goodWeld(picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = walk.lateWeld(1, picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = walk.others(picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = walk.twoBenches(picture);
        ASSERT_TRUE(done) << done.error().detail;
        PeopleWalk people(shop.window(), shop.desk(), shop.clock());
        done = people.all(picture);
        ASSERT_TRUE(done) << done.error().detail;
        SetupWalk setup(
            shop.window(), shop.desk(), people, QString(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
            QString::fromStdString(shop.documents()));
        done = setup.all(PeopleWalk::kForemansPin, picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = setup.whatIf(picture);
        ASSERT_TRUE(done) << done.error().detail;
        EXPECT_GE(seen.size(), 114U);
    }
};

int expectWholeWords(Window& window, const std::string& name) {
    int parts = 0;
    for (Part* part : window.findChildren<Part*>()) {
        if (!part->isVisible()) {
            continue;
        }
        ++parts;
        for (const std::string& trouble : textTroubles(*part)) {
            ADD_FAILURE() << name << ", " << part->objectName().toStdString() << ": " << trouble;
        }
    }
    return parts;
}

void expectTargets(Window& window, const std::string& name) {
    std::vector<std::pair<QRect, std::string>> targets;
    for (PressPart* part : window.findChildren<PressPart*>()) {
        const auto* slot = dynamic_cast<const SlotButton*>(part);
        const bool hidden = slot != nullptr && slot->view().look == SlotView::Look::Hidden;
        if (!part->isVisible() || hidden) {
            continue;
        }
        const std::string what = name + ", " + part->objectName().toStdString();
        // Whole pixels: half a pixel to either side.
        EXPECT_GE((part->width() + 0.5) / kUnitsPerMm, kTargetMm) << what;
        EXPECT_GE((part->height() + 0.5) / kUnitsPerMm, kTargetMm) << what;
        const QRect place(part->mapTo(&window, QPoint()), part->size());
        EXPECT_TRUE(window.rect().contains(place)) << what;
        for (const auto& [other, of] : targets) {
            EXPECT_FALSE(place.intersects(other)) << what << " over " << of;
        }
        targets.emplace_back(place, what);
    }
}

TEST_P(EveryScreen, CutsNoWordAndHasTargetsOfFifteenMillimetresThatDoNotOverlap) {
    int parts = 0;
    walk([&parts](Window& window, const std::string& name) {
        parts += expectWholeWords(window, name);
        expectTargets(window, name);
    });
    EXPECT_GT(parts, 500);
}

// 10.0 inch: 1280 x 800 is the size that the units are made for.
std::vector<std::tuple<int, int, double, bool>> shapes() {
    std::vector<std::tuple<int, int, double, bool>> all{
        {1280, 800, 1.0, false}, {800, 1280, 1.0, false}, {1280, 800, 1.5, false},
        {1280, 800, 2.0, false}, {800, 1280, 1.5, false}, {800, 1280, 2.0, false},
        {1280, 800, 1.0, true}};
    if (test::kSanitized) {
        all.resize(2); // the same lines are run in each
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(Sizes, EveryScreen, testing::ValuesIn(shapes()));

TEST(Pictures, IntoAFolderThatCannotBeMadeSaysSoInOneSentence) {
    test::ScratchFolder folder;
    // A file stands where the folder should: that holds for any user, also for root.
    const QString file = QString::fromStdString(folder.file("taken"));
    QFile taken(file);
    ASSERT_TRUE(taken.open(QIODevice::WriteOnly));
    taken.close();
    PictureOptions options;
    options.folder = file + "/pictures";
    options.demo = QString(SEAMCLOCK_SOURCE_DIR) + "/resources/demo";
    const auto written = paintPictures(options, {});
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::NotWritten);
    const std::string& detail = written.error().detail;
    EXPECT_NE(detail.find(options.folder.toStdString()), std::string::npos) << detail;
    EXPECT_NE(detail.find("allowed: a folder that can be written"), std::string::npos) << detail;
    EXPECT_EQ(detail.find('\n'), std::string::npos) << detail;
}

} // namespace
} // namespace seamclock
