// Every screen of the practice walk, looked at by machine, as the operator's are: no word cut off,
// outside its part or over another at 100, 150 and 200 % of text, lying and upright; targets of
// 15 mm that don't overlap; short words; and the stripes, the word and process time on each.
#include "app/parts/press_part.h"
#include "app/practice/practice_result.h"
#include "tests/app/parts/text_recorder.h"
#include "tests/app/practice/practice_shop.h"
#include "tests/support/sanitized.h"

#include <QImage>
#include <gtest/gtest.h>
#include <set>
#include <tuple>

namespace seamclock::test {
namespace {

constexpr double kTargetMm = 15;

void expectWholeWords(PracticeWindow& window, const std::string& name) {
    for (Part* part : window.findChildren<Part*>()) {
        if (!part->isVisible()) {
            continue;
        }
        for (const std::string& trouble : textTroubles(*part)) {
            ADD_FAILURE() << name << ", " << part->objectName().toStdString() << ": " << trouble;
        }
    }
}

bool isHidden(const PressPart* part) {
    if (const auto* slot = dynamic_cast<const SlotButton*>(part)) {
        return slot->view().look == SlotView::Look::Hidden;
    }
    if (const auto* control = dynamic_cast<const ControlButton*>(part)) {
        return control->view().hidden;
    }
    return false;
}

void expectTargets(PracticeWindow& window, const std::string& name) {
    std::vector<std::pair<QRect, std::string>> targets;
    for (PressPart* part : window.findChildren<PressPart*>()) {
        if (!part->isVisible() || isHidden(part) || part == window.banner()) {
            continue;
        }
        const std::string what = name + ", " + part->objectName().toStdString();
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

void expectManners(PracticeWindow& window, const std::string& name) {
    static const std::set<QString> kNever{"OK", "Yes", "No", "Error", "Warning"};
    for (const SlotButton* button : window.currentPage()->findChildren<SlotButton*>()) {
        EXPECT_EQ(kNever.count(button->view().text), 0U) << name;
    }
    if (window.page() != PracticePage::Bench) {
        return;
    }
    int blue = 0;
    for (const SlotButton* button : window.currentPage()->findChildren<SlotButton*>()) {
        blue += button->isVisible() && button->view().look == SlotView::Look::Act ? 1 : 0;
    }
    EXPECT_LE(blue, 1) << name;
    const QString sentence = window.benchPage()->view().weld.sentence;
    EXPECT_FALSE(sentence.isEmpty()) << name;
    EXPECT_LE(sentence.size(), 90) << sentence.toStdString();
}

/// Black and white along all four edges, and no colour: no signal says "practice".
void expectStripes(PracticeWindow& window, const std::string& name) {
    const QImage image = window.grab().toImage();
    const int middle = static_cast<int>(kStripes / 2);
    const auto along = [&](bool horizontal, int at) {
        int light = 0;
        int dark = 0;
        int other = 0;
        const int length = horizontal ? image.width() : image.height();
        for (int i = 0; i < length; ++i) {
            const QColor colour = horizontal ? image.pixelColor(i, at) : image.pixelColor(at, i);
            EXPECT_LE(colour.saturation(), 100) << name; // black's own saturation means nothing
            light += colour.lightness() > 200 ? 1 : 0;
            dark += colour.lightness() < 60 ? 1 : 0;
            other += colour.lightness() >= 60 && colour.lightness() <= 200 ? 1 : 0;
        }
        EXPECT_GT(light, length / 4) << name;
        EXPECT_GT(dark, length / 4) << name;
        EXPECT_LT(other, length / 3) << name << ": edges of stripes alone";
    };
    along(true, middle);
    along(true, image.height() - 1 - middle);
    along(false, middle);
    along(false, image.width() - 1 - middle);
    const auto* tag = window.findChild<QWidget*>("practiceTag"); // it has no signals of its own
    ASSERT_NE(tag, nullptr);
    EXPECT_TRUE(tag->isVisible()) << name;
    const QRect place(tag->mapTo(&window, QPoint()), tag->size());
    EXPECT_GT(place.left(), window.width() / 2) << name;
    EXPECT_LT(place.bottom(), 140) << name;
}

class EveryPracticeScreen : public testing::TestWithParam<std::tuple<int, int, double, bool>> {};

TEST_P(EveryPracticeScreen, CutsNoWordHasTargetsAndSaysPractice) {
    const auto [width, height, text, mirrored] = GetParam();
    Preferences preferences;
    preferences.text = text;
    preferences.mirrored = mirrored;
    preferences.pedalKey = Qt::Key_F9;
    Practising shop(QSize(width, height), preferences, "Ilva Borrick");
    std::set<QString> seen;
    const auto picture = [&](const QString& name) {
        shop.window().refresh();
        seen.insert(name);
        const std::string what = name.toStdString();
        expectWholeWords(shop.window(), what);
        expectTargets(shop.window(), what);
        expectManners(shop.window(), what);
        expectStripes(shop.window(), what);
    };
    auto done = shop.walk().weld("pe10-first", {}, picture);
    ASSERT_TRUE(done) << done.error().detail;
    WalkMistakes mistakes;
    mistakes.pressedSoak = true;
    mistakes.changeover = Milliseconds(9'000);
    mistakes.takesCall = true;
    mistakes.says = Wrong::WrongUnit;
    done = shop.walk().weld("pe10-phone", mistakes, picture);
    ASSERT_TRUE(done) << done.error().detail;
    done = shop.walk().afterwards(picture);
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_GE(seen.size(), 30U);
}

std::vector<std::tuple<int, int, double, bool>> shapes() {
    std::vector<std::tuple<int, int, double, bool>> all{
        {1280, 800, 1.0, false}, {800, 1280, 1.0, false}, {1280, 800, 1.5, false},
        {1280, 800, 2.0, false}, {800, 1280, 1.5, false}, {800, 1280, 2.0, false},
        {1280, 800, 1.0, true}};
    if (kSanitized) {
        all.resize(2); // the same lines are run in each
    }
    return all;
}

INSTANTIATE_TEST_SUITE_P(Sizes, EveryPracticeScreen, testing::ValuesIn(shapes()));

} // namespace
} // namespace seamclock::test
