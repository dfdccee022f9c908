// The smallest tablet, 8 inch with 1280 x 800 pixels, lying and upright: everything keeps its size
// in millimetres, so there is least room for words. On the card and on the seam's picture, the two
// that say most in words, none is cut, outside its part or over another, on any screen.
#include "tests/app/operate/all_screens.h"
#include "tests/app/parts/screen_checks.h"

#include <set>

namespace seamclock {
namespace {

TEST(SmallTablet, CutsNoWordOfTheCardAndOfTheSeam) {
    Stage stage;
    int parts = 0;
    std::set<std::string> told;
    stage.walk([&](Window& window, const std::string& name) {
        const Preferences before = window.preferences();
        const QSize size = window.size();
        for (const bool upright : {false, true}) {
            const test::Tablet tablet{QSize(1280, 800), 1, 8, upright};
            Preferences next = before;
            next.dpi = tablet.dpi();
            window.resize(tablet.window());
            window.setPreferences(next);
            for (const std::string& trouble : test::wordTroubles(window, parts)) {
                const bool held =
                    trouble.rfind("cardPanel:", 0) == 0 || trouble.rfind("seam:", 0) == 0;
                if (held && told.insert(trouble).second) { // once, and not on each screen
                    ADD_FAILURE() << name << " " << tablet.name() << ": " << trouble;
                }
            }
        }
        window.resize(size);
        window.setPreferences(before);
    });
    EXPECT_GT(parts, 2'000);
}

} // namespace
} // namespace seamclock
