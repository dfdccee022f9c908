// A screen reader's view of every screen: what can be pressed, typed into or dragged has a name
// that says what stands on it.
#include "tests/app/operate/all_screens.h"
#include "tests/app/parts/screen_checks.h"

#include "app/setup/value_slider.h"

#include <QAccessible>

namespace seamclock {
namespace {

TEST(Spoken, EveryInteractiveWidgetOfEveryScreenHasANameThatSaysWhatIsOnIt) {
    Stage stage;
    int told = 0;
    stage.walk([&told](Window& window, const std::string& name) {
        for (const std::string& trouble : test::spokenTroubles(window, told)) {
            ADD_FAILURE() << name << ", " << trouble;
        }
    });
    EXPECT_GT(told, 1'000);
}

TEST(Spoken, TheCheckHearsAButtonWithoutAName) {
    QWidget window;
    window.resize(400, 200);
    auto* button = new SlotButton("mute", &window);
    button->resize(300, 100);
    SlotView view;
    view.text = "Plate out";
    button->show(view);
    window.show();
    int told = 0;
    EXPECT_TRUE(test::spokenTroubles(window, told).empty());
    EXPECT_EQ(told, 1);
    button->setAccessibleName({});
    EXPECT_EQ(test::spokenTroubles(window, told).size(), 1U);
    button->setAccessibleName("Faces together");
    EXPECT_EQ(test::spokenTroubles(window, told).size(), 1U);
    view.look = SlotView::Look::Hidden;
    button->show(view);
    EXPECT_TRUE(test::spokenTroubles(window, told).empty()) << "nothing stands there";
}

TEST(Spoken, ASliderTellsItsValueAndIsMovedByAScreenReader) {
    ValueSlider slider("plate");
    slider.resize(500, 100);
    slider.show({"Plate", "210 °C", 200, 220, 5, 210, 210});
    double moved = 0;
    QObject::connect(&slider, &ValueSlider::moved, [&moved](double value) { moved = value; });
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(&slider);
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->role(), QAccessible::Slider);
    EXPECT_EQ(told->text(QAccessible::Name), "Plate, 210 °C");
    QAccessibleValueInterface* value = told->valueInterface();
    ASSERT_NE(value, nullptr);
    EXPECT_EQ(value->minimumValue().toDouble(), 200);
    EXPECT_EQ(value->maximumValue().toDouble(), 220);
    EXPECT_EQ(value->minimumStepSize().toDouble(), 5);
    EXPECT_EQ(value->currentValue().toDouble(), 210);
    value->setCurrentValue(217);
    EXPECT_EQ(moved, 215) << "the nearest step";
    value->setCurrentValue(500);
    EXPECT_EQ(moved, 220);
}

} // namespace
} // namespace seamclock
