// Eyes: each screen of the walk as it is seen in grey and under each of the three deficiencies, in
// each theme. The marks that stand on the lamps, in the benches' cells, on a list's rows, on the
// day log's lines and over a joint are cut out of the painted screen and compared: each stands
// clearly out of its field, and two that mean different things differ in shape. Beside each stands
// a word, and those of late, done and cut are their own.
#include "app/parts/changeover_field.h"
#include "app/parts/lamp.h"
#include "app/parts/strip.h"
#include "tests/app/operate/all_screens.h"
#include "tests/app/parts/eyes.h"
#include "tests/support/sanitized.h"

#include <map>
#include <utility>
#include <vector>

namespace seamclock {
namespace {

using test::Eyes;

// WCAG 2.1, 1.4.11: graphics that are needed to understand.
constexpr double kNonTextNeeds = 3;
// A pixel counts as the mark's where it stands out of its ground at least so much: the rim of a
// line fades into the ground.
constexpr double kInk = 1.8;
// Of all pixels that either mark inks; tick and cross, in the same square, differ by more.
constexpr double kDistinct = 0.12;

struct Shape {
    std::vector<bool> ink;
    double contrast = 0; // the most of its pixels
};

/// The ground is the corner's colour: no mark reaches there.
Shape shapeOf(const QImage& image) {
    Shape shape;
    const QColor ground = image.pixelColor(0, 0);
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const double ratio = contrastRatio(image.pixelColor(x, y), ground);
            shape.ink.push_back(ratio >= kInk);
            shape.contrast = std::max(shape.contrast, ratio);
        }
    }
    return shape;
}

double distance(const Shape& a, const Shape& b) {
    int either = 0;
    int unlike = 0;
    for (std::size_t i = 0; i < a.ink.size(); ++i) {
        either += a.ink[i] || b.ink[i] ? 1 : 0;
        unlike += a.ink[i] != b.ink[i] ? 1 : 0;
    }
    return either == 0 ? 0 : static_cast<double>(unlike) / either;
}

/// What was cut out of the screens: for each mark its pictures, each once.
struct Cut {
    std::map<Mark, std::vector<QImage>> marks;
    std::map<Mark, std::set<QString>> words;

    void add(Mark mark, const QImage& image, const QString& word) {
        words[mark].insert(word);
        std::vector<QImage>& known = marks[mark];
        // The ring of a wait fills: some of its states stand for all.
        if (known.size() < 8 && std::find(known.begin(), known.end(), image) == known.end()) {
            known.push_back(image);
        }
    }
};

QImage cutOut(const QImage& screen, const QWidget& window, const QWidget& part, QRectF place) {
    return screen.copy(
        QRect(part.mapTo(&window, place.topLeft().toPoint()), place.size().toSize()));
}

void expectDistinct(const Cut& cut, const std::string& where) {
    for (const Eyes& eyes : test::weakEyes()) {
        std::vector<std::pair<Mark, Shape>> shapes;
        for (const auto& [mark, images] : cut.marks) {
            for (const QImage& image : images) {
                shapes.emplace_back(mark, shapeOf(test::seenBy(image, eyes)));
                EXPECT_GE(shapes.back().second.contrast, kNonTextNeeds)
                    << where << ", " << eyes.name << ", mark " << static_cast<int>(mark);
            }
        }
        for (std::size_t i = 0; i < shapes.size(); ++i) {
            for (std::size_t j = i + 1; j < shapes.size(); ++j) {
                const auto& [one, a] = shapes[i];
                const auto& [other, b] = shapes[j];
                if (one != other && a.ink.size() == b.ink.size()) {
                    EXPECT_GE(distance(a, b), kDistinct)
                        << where << ", " << eyes.name << ", marks " << static_cast<int>(one)
                        << " and " << static_cast<int>(other);
                }
            }
        }
    }
}

/// Part of the pixels that are clearly lighter or darker on one than on the other.
double unlike(const QImage& a, const QImage& b) {
    int count = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x) {
            count += contrastRatio(a.pixelColor(x, y), b.pixelColor(x, y)) >= kNonTextNeeds ? 1 : 0;
        }
    }
    return static_cast<double>(count) / (static_cast<double>(a.width()) * a.height());
}

TEST(Seen, MarksOnEveryScreenAreToldApartWithoutColour) {
    Stage stage;
    std::map<ThemeKind, Cut> lamps;
    std::map<ThemeKind, Cut> cells;
    std::map<ThemeKind, Cut> rows; // and a joint's head: where lists stand
    std::vector<ThemeKind> themes{ThemeKind::Dark, ThemeKind::Light, ThemeKind::Contrast};
    themes.resize(test::kSanitized ? 1 : themes.size());
    QImage onTime;
    QImage late;
    stage.walk([&](Window& window, const std::string& name) {
        const Preferences before = window.preferences();
        for (const ThemeKind theme : themes) {
            Preferences next = before;
            next.theme = theme;
            window.setPreferences(next);
            const QImage screen = window.grab().toImage();
            for (const QWidget* widget : window.findChildren<QWidget*>()) {
                const auto* lamp = dynamic_cast<const Lamp*>(widget);
                if (lamp != nullptr && lamp->isVisible()) {
                    const LampView& view = lamp->view();
                    EXPECT_FALSE(view.word.isEmpty()) << name << ": a lamp without a word";
                    const bool over = name == "trial-not-released"; // nobody is timed any more
                    EXPECT_EQ(view.framed, view.tone == Tone::Late && !view.calm && !over)
                        << name << ": a passed limit, and nothing else, is framed";
                    lamps[theme].add(
                        view.mark, cutOut(screen, window, *lamp, lamp->markPlace()), view.word);
                }
            }
            for (const StripCell* cell : window.findChildren<StripCell*>()) {
                if (cell->isVisible()) {
                    const StripCellView& view = cell->view();
                    EXPECT_FALSE(view.phase.isEmpty()) << name << ": a bench without a word";
                    if (!view.plain) { // over the changeover they are colourless
                        cells[theme].add(
                            view.mark, cutOut(screen, window, *cell, cell->markPlace()), {});
                    }
                }
            }
            for (const QWidget* widget : window.findChildren<QWidget*>()) {
                const auto* shows = dynamic_cast<const ShowsMark*>(widget);
                if (shows == nullptr || !widget->isVisible() || !shows->markShown() ||
                    dynamic_cast<const Lamp*>(widget) != nullptr ||
                    dynamic_cast<const StripCell*>(widget) != nullptr) {
                    continue;
                }
                EXPECT_FALSE(widget->accessibleName().isEmpty()) << name << ": a mark, no word";
                rows[theme].add(
                    *shows->markShown(), cutOut(screen, window, *widget, shows->markPlace()), {});
            }
            if (name == "changeover") {
                onTime = screen;
            } else if (name == "changeover-late") {
                late = screen;
            }
        }
        window.setPreferences(before);
    });
    for (const ThemeKind theme : themes) {
        const std::string where = "theme " + std::to_string(static_cast<int>(theme));
        EXPECT_GE(lamps[theme].marks.size(), 6U) << "the walk came by few states";
        EXPECT_GE(cells[theme].marks.size(), 6U) << "the walk came by few states";
        EXPECT_GE(rows[theme].marks.size(), 5U) << "the walk came by few lists";
        expectDistinct(rows[theme], where + ", row");
        expectDistinct(lamps[theme], where + ", lamp");
        expectDistinct(cells[theme], where + ", bench's cell");
        // "Read" is asked for with the arrow and with the triangle; how a thing went is one mark's.
        for (const Mark mark : {Mark::Late, Mark::Done, Mark::Cut}) {
            for (const auto& [other, words] : lamps[theme].words) {
                for (const QString& word : lamps[theme].words[mark]) {
                    EXPECT_TRUE(mark == other || words.count(word) == 0)
                        << word.toStdString() << " stands beside two marks";
                }
            }
        }
    }
    // Act and late are the same grey: frame and words must tell, over the whole screen.
    ASSERT_FALSE(onTime.isNull() || late.isNull());
    for (const Eyes& eyes : test::weakEyes()) {
        EXPECT_GE(unlike(test::seenBy(onTime, eyes), test::seenBy(late, eyes)), 0.02) << eyes.name;
    }
}

TEST(Seen, TheCheckSeesTwoMarksOfOneShape) {
    QImage one(44, 44, QImage::Format_RGB32);
    one.fill(Qt::black);
    QImage other = one;
    for (int y = 10; y < 34; ++y) {
        for (int x = 10; x < 34; ++x) {
            one.setPixelColor(x, y, QColor(255, 90, 90));
            other.setPixelColor(x, y, QColor(90, 255, 90));
        }
    }
    for (const Eyes& eyes : test::weakEyes()) {
        const Shape a = shapeOf(test::seenBy(one, eyes));
        EXPECT_LT(distance(a, shapeOf(test::seenBy(other, eyes))), kDistinct) << eyes.name;
        EXPECT_GE(a.contrast, kNonTextNeeds);
    }
}

} // namespace
} // namespace seamclock
