// Hands: on every screen one button at most is blue; on each tablet, for either hand, what can be
// pressed is at least 15 mm high and wide by the screen's own size, lies apart from its neighbours
// and within the window. And for the left hand the whole screen mirrors, but not the seam, the
// scale, or what is read.
#include "app/parts/changeover_field.h"
#include "app/parts/scale_view.h"
#include "app/parts/seam_picture.h"
#include "app/setup/value_slider.h"
#include "tests/app/operate/all_screens.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/support/sanitized.h"

#include <cmath>
#include <map>

namespace seamclock {
namespace {

using test::Tablet;

/// That preference and size, and afterwards what was.
class Turned {
public:
    explicit Turned(Window& window)
        : m_window(window), m_size(window.size()), m_before(window.preferences()) {}
    ~Turned() {
        m_window.resize(m_size);
        m_window.setPreferences(m_before);
    }
    Turned(const Turned&) = delete;
    Turned& operator=(const Turned&) = delete;

    void to(const Tablet& tablet, bool mirrored) {
        Preferences next = m_before;
        next.dpi = tablet.dpi();
        next.mirrored = mirrored;
        m_window.resize(tablet.window());
        m_window.setPreferences(next);
    }

private:
    Window& m_window;
    QSize m_size;
    Preferences m_before;
};

void expectEndsOfSliders(Window& window, double dpi, const std::string& what) {
    for (const ValueSlider* slider : window.findChildren<ValueSlider*>()) {
        if (slider->isVisible()) {
            EXPECT_GE(slider->ends() / dpi * 25.4, test::kTargetMm)
                << what << ", a step of " << slider->objectName().toStdString();
        }
    }
}

TEST(Touch, EveryTargetIsFifteenMillimetresApartFromOthersAndInTheWindow) {
    // 8, 10 and 12 inch, 16 to 10, lie in that order for each number of pixels and scale.
    const std::vector<Tablet>& tablets = test::tablets();
    ASSERT_EQ(tablets.size(), 42U);
    Stage stage;
    std::set<QString> pages;
    std::size_t turn = 0;
    std::size_t targets = 0;
    stage.walk([&](Window& window, const std::string& name) {
        for (const std::string& trouble : test::blueTroubles(window)) {
            ADD_FAILURE() << name << ": " << trouble;
        }
        Turned turned(window);
        // All tablets on the first screen of each page; then one pixel scale after the other, at
        // all sizes.
        const bool all =
            pages.insert(window.currentPage()->objectName()).second && !test::kSanitized;
        const std::size_t from = all ? 0 : turn++ % 7 * 6;
        const std::size_t to = all ? tablets.size() : from + 6;
        for (std::size_t i = from; i < to; ++i) {
            for (const bool mirrored : {false, true}) {
                turned.to(tablets[i], mirrored);
                const std::string what =
                    name + " " + tablets[i].name() + (mirrored ? ", left-handed" : "");
                targets += test::targetsOf(window).size();
                for (const std::string& trouble : test::targetTroubles(window, tablets[i].dpi())) {
                    ADD_FAILURE() << what << ": " << trouble;
                }
                expectEndsOfSliders(window, tablets[i].dpi(), what);
            }
        }
    });
    EXPECT_GT(targets, 10'000U);
}

/// Nobody's hand needs these elsewhere: they are read, or stand over the whole width.
bool keepsItsPlace(const QWidget& part) {
    static const char* const kRead[] = {"choice",   "key_",         "listRow",
                                        "listMore", "formCell",     "formAction",
                                        "entry",    "procedureTab", "bench"};
    const QString name = part.objectName();
    return std::any_of(std::begin(kRead), std::end(kRead), [&name](const char* start) {
        return name.startsWith(QLatin1String(start));
    });
}

QImage seen(QWidget& part) {
    return part.grab().toImage();
}

TEST(Touch, TheLeftHandsScreenIsTheMirroredOneWithItsSeamAndScaleAsTheyWere) {
    Stage stage;
    int moved = 0;
    int pictures = 0;
    stage.walk([&](Window& window, const std::string& name) {
        for (const QSize size : {QSize(1280, 800), QSize(800, 1280)}) {
            Turned turned(window);
            const Tablet tablet{{1280, 800}, 1, 10, size.height() > size.width()};
            turned.to(tablet, false);
            std::map<QWidget*, QRect> places;
            std::map<QWidget*, QImage> painted;
            for (QWidget* widget : window.findChildren<QWidget*>()) {
                auto* part = dynamic_cast<Part*>(widget);
                if (part == nullptr || !part->isVisible()) {
                    continue;
                }
                places[part] = QRect(part->mapTo(&window, QPoint()), part->size());
                if (dynamic_cast<SeamPicture*>(part) != nullptr ||
                    dynamic_cast<ScalePanel*>(part) != nullptr) {
                    painted[part] = seen(*part);
                }
            }
            turned.to(tablet, true);
            for (const auto& [part, before] : places) {
                const std::string what = name + ", " + part->objectName().toStdString() +
                                         (tablet.upright ? ", upright" : "");
                const QRect now(part->mapTo(&window, QPoint()), part->size());
                QRect mirrored = before;
                mirrored.moveLeft(window.width() - 1 - before.right());
                if (keepsItsPlace(*part)) {
                    continue;
                }
                // whole pixels on either side
                EXPECT_LE(std::abs(now.left() - mirrored.left()), 1) << what;
                EXPECT_LE(std::abs(now.right() - mirrored.right()), 1) << what;
                EXPECT_EQ(now.top(), before.top()) << what;
                EXPECT_EQ(now.height(), before.height()) << what;
                moved += std::abs(now.left() - before.left()) > 50 ? 1 : 0;
            }
            for (const auto& [part, before] : painted) {
                const QImage now = seen(*part);
                if (now.size() == before.size()) { // whole pixels, as above
                    EXPECT_EQ(now, before) << name << ", " << part->objectName().toStdString();
                    ++pictures;
                }
            }
        }
    });
    EXPECT_GT(moved, 500);
    EXPECT_GT(pictures, 50);
}

} // namespace
} // namespace seamclock
