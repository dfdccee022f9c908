// Three and four benches on an upright tablet: no phase's word and no time is cut, in any language.
// A weld's own words for each of its phases, as the strip gets them from the weld's view.
#include "app/operate/strip_bar.h"

#include "app/operate/weld_view.h"
#include "app/pages/frame.h"
#include "app/text/language.h"
#include "tests/app/operate/demo_shop.h"
#include "tests/app/operate/typist.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/app/parts/text_recorder.h"
#include "tests/support/story.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

StripCellView cellOf(const test::Story& story, const char* letter) {
    ViewContext context;
    context.now = story.now();
    context.letter = QString::fromLatin1(letter);
    return weldView(story.weld(), context).cell;
}

/// A bench in each phase, one that is free, and one that names its next seam.
std::vector<StripCellView> cellsOfAWeld() {
    using Stretch = test::Story& (test::Story::*)();
    const std::vector<Stretch> stretches{
        &test::Story::prepare, &test::Story::align, &test::Story::soak,    &test::Story::changeOver,
        &test::Story::buildUp, &test::Story::cool,  &test::Story::release, &test::Story::close};
    std::vector<StripCellView> cells{cellOf(test::Story(), "A")};
    for (const Stretch stretch : stretches) {
        test::Story story;
        (story.*stretch)();
        cells.push_back(cellOf(story, "B"));
    }
    test::Story stopped;
    stopped.align();
    stopped.then(WeldAborted{"another", "another reason"});
    cells.push_back(cellOf(stopped, "C"));
    return cells;
}

TEST(StripOfFourBenches, CutsNoWordUprightInAnyLanguage) {
    int seen = 0;
    for (const Language language : {Language::English, Language::German, Language::Spanish}) {
        speak(language);
        const std::vector<StripCellView> all = cellsOfAWeld();
        for (const double inch : {8.0, 10.0}) {
            const test::Tablet tablet{QSize(1280, 800), 1, inch, true};
            PageLook look;
            look.metrics.perUnit = tablet.dpi() / kUnitsPerInch;
            const QSizeF units = QSizeF(tablet.window()) / look.metrics.perUnit;
            const QRectF place = frameOf(units, FrameKind::Phase, false).strip;
            for (const std::size_t benches : {3U, 4U}) {
                for (std::size_t first = 0; first < all.size(); ++first) {
                    std::vector<StripCellView> cells;
                    for (std::size_t i = 0; i < benches; ++i) {
                        cells.push_back(all[(first + i) % all.size()]);
                    }
                    StripBar bar;
                    bar.setLook(look);
                    bar.resize((place.size() * look.metrics.perUnit).toSize());
                    StatusView status;
                    status.clock = "14:05";
                    bar.show(cells, status);
                    bar.QWidget::show();
                    for (StripCell* cell : bar.findChildren<StripCell*>()) {
                        if (!cell->isVisible()) {
                            continue;
                        }
                        ++seen;
                        for (const std::string& trouble : textTroubles(*cell)) {
                            ADD_FAILURE() << tablet.name() << ", " << benches
                                          << " benches: " << cell->view().phase.toStdString() << " "
                                          << cell->view().time.toStdString() << ": " << trouble;
                        }
                    }
                }
            }
        }
    }
    speak(Language::English);
    EXPECT_GT(seen, 300);
}

TEST(StripOfFourBenches, TheThirdAndTheFourthAreChosenByTheirKeysToo) {
    Shop shop(
        QSize(800, 1280), {}, std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
        [](WindowParts& parts) {
            for (const char* id : {"north", "south"}) {
                BenchDocument more = parts.floor.posts().front().bench;
                more.bench.id = id;
                static_cast<void>(parts.floor.addBench(more));
            }
        });
    ASSERT_EQ(shop.floor().posts().size(), 4U);
    test::Typist typist(shop.window());
    for (const auto& [key, post] :
         {std::pair{Qt::Key_3, 2}, std::pair{Qt::Key_4, 3}, std::pair{Qt::Key_1, 0}}) {
        typist.press(key);
        EXPECT_EQ(shop.floor().selected(), post);
    }
}

} // namespace
} // namespace seamclock
