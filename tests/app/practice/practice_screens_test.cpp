// Every screen of the practice walk, looked at by machine, as the operator's are: no word cut off,
// outside its part or over another at 100, 125, 150 and 200 % of text, lying and upright; targets
// of 15 mm that don't overlap, on every tablet; names for a screen reader; short words; and the
// stripes, the word and process time on each.
#include "app/guide/guide.h"
#include "app/parts/press_part.h"
#include "app/practice/practice_result.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/app/practice/practice_shop.h"
#include "tests/support/sanitized.h"

#include <QImage>
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <set>
#include <vector>

namespace seamclock::test {
namespace {

void expectWholeWords(PracticeWindow& window, const std::string& name) {
    int parts = 0;
    for (const std::string& trouble : wordTroubles(window, parts)) {
        ADD_FAILURE() << name << ", " << trouble;
    }
    EXPECT_GT(parts, 0) << name;
}

void expectTargets(PracticeWindow& window, const std::string& name, double dpi) {
    // What has just been said may cover a control for the seconds that it stands.
    const bool said = window.banner()->isVisible();
    window.banner()->setVisible(false);
    for (const std::string& trouble : targetTroubles(window, dpi)) {
        ADD_FAILURE() << name << ", " << trouble;
    }
    window.banner()->setVisible(said);
}

void expectSpoken(PracticeWindow& window, const std::string& name) {
    int told = 0;
    for (const std::string& trouble : spokenTroubles(window, told)) {
        ADD_FAILURE() << name << ", " << trouble;
    }
    EXPECT_GT(told, 0) << name;
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

struct Shape {
    QSize size;
    double text = 1;
    bool mirrored = false;
};

// The same lines are run in each.
std::vector<Shape> shapes() {
    std::vector<Shape> all{{{1280, 800}, 1.0}, {{800, 1280}, 1.0},      {{1280, 800}, 1.25},
                           {{1280, 800}, 1.5}, {{1280, 800}, 2.0},      {{800, 1280}, 1.5},
                           {{800, 1280}, 2.0}, {{1280, 800}, 1.0, true}};
    all.resize(kSanitized ? 2 : all.size());
    return all;
}

// Each screen of two walks in every shape: the welds are worked out once.
class EveryPracticeScreen : public testing::Test {
protected:
    void look(const QString& name) {
        m_seen.insert(name);
        for (const Shape& shape : shapes()) {
            show(shape);
            const std::string what = fmt::format(
                "{} {}x{} at {:.0f} %{}", name.toStdString(), shape.size.width(),
                shape.size.height(), 100 * shape.text, shape.mirrored ? ", mirrored" : "");
            expectWholeWords(m_shop.window(), what);
            expectTargets(m_shop.window(), what, kUnitsPerInch);
            expectManners(m_shop.window(), what);
            expectStripes(m_shop.window(), what);
        }
        // On other tablets what can be pressed; on all of them for the first screen of each page.
        const bool all =
            m_pages.insert(m_shop.window().currentPage()->objectName()).second && !kSanitized;
        const std::size_t from = all ? 0 : m_turn++ % 7 * 6;
        for (std::size_t i = from; i < (all ? tablets().size() : from + 6); ++i) {
            const Tablet& tablet = tablets()[i];
            for (const bool mirrored : {false, true}) {
                m_preferences.dpi = tablet.dpi();
                show({tablet.window(), 1, mirrored});
                expectTargets(
                    m_shop.window(), name.toStdString() + " " + tablet.name(), tablet.dpi());
            }
        }
        m_preferences.dpi = kUnitsPerInch;
        show(shapes().front());
        expectSpoken(m_shop.window(), name.toStdString());
    }
    void show(const Shape& shape) {
        m_preferences.text = shape.text;
        m_preferences.mirrored = shape.mirrored;
        m_shop.window().resize(shape.size);
        m_shop.window().setPreferences(m_preferences);
    }
    static Preferences preferences() {
        Preferences out;
        out.dpi = kUnitsPerInch;
        out.pedalKey = Qt::Key_F9;
        return out;
    }

    Preferences m_preferences = preferences();
    Practising m_shop{shapes().front().size, m_preferences, "Ilva Borrick"};
    std::set<QString> m_seen;
    std::set<QString> m_pages;
    std::size_t m_turn = 0;
};

TEST_F(EveryPracticeScreen, OfAGoodWeldCutsNoWordHasTargetsAndSaysPractice) {
    const auto done =
        m_shop.walk().weld("pe10-first", {}, [&](const QString& name) { look(name); });
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_GE(m_seen.size(), 15U);
}

TEST_F(EveryPracticeScreen, OfMistakesAndWhatComesAfterCutsNoWordHasTargetsAndSaysPractice) {
    WalkMistakes mistakes;
    mistakes.pressedSoak = true;
    mistakes.changeover = Milliseconds(9'000);
    mistakes.takesCall = true;
    mistakes.says = Wrong::WrongUnit;
    const auto picture = [&](const QString& name) { look(name); };
    auto done = m_shop.walk().weld("pe10-phone", mistakes, picture);
    ASSERT_TRUE(done) << done.error().detail;
    done = m_shop.walk().afterwards(picture);
    ASSERT_TRUE(done) << done.error().detail;
    EXPECT_GE(m_seen.size(), 15U);
    // What the user guide shows of practice is painted by this walk.
    const auto guide = readGuide(QString(SEAMCLOCK_SOURCE_DIR) + "/docs/guide", {});
    ASSERT_TRUE(guide) << guide.error().detail;
    int named = 0;
    for (const GuideChapter& chapter : guide->chapters) {
        for (const QString& name : picturesNamed(chapter)) {
            const QString own = name.mid(QStringLiteral("practice-").size());
            if (name.startsWith("practice-")) {
                EXPECT_TRUE(m_seen.count(own) > 0) << name.toStdString();
                ++named;
            }
        }
    }
    EXPECT_GE(named, 2);
}

} // namespace
} // namespace seamclock::test
