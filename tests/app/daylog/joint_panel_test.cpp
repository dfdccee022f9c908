// What stands at the head of a joint at its longest: no word of it is cut or over another, and the
// course keeps its place below.
#include "app/daylog/joint_panel.h"
#include "app/text/language.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/support/story.h"

#include <QWidget>
#include <gtest/gtest.h>
#include <vector>

namespace seamclock {
namespace {

CouponSeries tested(const char* id, const CouponTested& what) {
    CouponSeries series;
    series.id = id;
    series.versions = {{{}, "person:oddo", what, 1}};
    return series;
}

/// Pulled and bent, three times each.
std::vector<CouponSeries> manyTests() {
    CouponTested pulled;
    pulled.test = "tensile";
    pulled.standard = "EN 12814-2";
    pulled.weldedPa = {20'000'000, 27'400'000};
    pulled.parentPa = {29'500'000, 30'500'000};
    CouponTested bent;
    bent.test = "bend";
    bent.standard = "EN 12814-1";
    bent.angleMilli = {160'000, 95'500};
    bent.cracked = {0, 1};
    std::vector<CouponSeries> all;
    for (int i = 0; i < 3; ++i) {
        all.push_back(tested("coupon:1", pulled));
        all.back().factor = weldingFactor({20, 27.4}, {29.5, 30.5}).value();
        all.back().required = 0.9;
        all.push_back(tested("coupon:2", bent));
    }
    return all;
}

TEST(JointPanel, CutsNoWordOfALongHead) {
    for (const Language language : {Language::English, Language::German, Language::Spanish}) {
        speak(language);
        test::Story story;
        story.prepare().then(AlignmentStarted{}).wait(std::chrono::seconds(50));
        story.then(SoakStarted{}).wait(std::chrono::seconds(120)).then(PlateOut{});
        const WeldRecord made = record(story.weld());
        JointView view = jointView(made, DayNames());
        view.stored = "Stored at closing: within limits (rules 0)";
        view.decided = "to be repaired by Oddo Quenley at 8:15, a test piece held";
        view.tested = testedText(manyTests());
        for (const QSize units : {QSize(822, 670), QSize(768, 560)}) {
            for (const double text : {1.0, 1.5, 2.0}) {
                QWidget window;
                window.resize(units);
                auto* panel = new JointPanel(&window);
                panel->setGeometry(window.rect());
                Metrics metrics = Metrics::forDpi(kUnitsPerInch);
                metrics.text = text;
                panel->setLook(Theme::of(ThemeKind::Light), metrics);
                panel->setFoot(120);
                panel->show(view);
                window.show();
                int parts = 0;
                for (const std::string& trouble : test::wordTroubles(window, parts)) {
                    ADD_FAILURE() << codeOf(language).toStdString() << " " << units.width()
                                  << " text " << text << ": " << trouble;
                }
                EXPECT_EQ(parts, 1);
            }
        }
    }
    speak(Language::English);
}

} // namespace
} // namespace seamclock
