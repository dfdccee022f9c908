#include "app/operate/number_task.h"

#include "tests/support/demo_order.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

NumberTask plateTask() {
    NumberTask task;
    task.what = NumberFor::PlateTemperature;
    task.view.unit = "°C";
    task.view.low = 200;
    task.view.high = 220;
    task.view.allowed = "allowed 200 to 220 °C";
    task.most = 400;
    return task;
}

TEST(NumberTask, OffersToKeepWhatIsWithinAndStopsAPlateThatIsNot) {
    struct Row {
        const char* typed;
        NumberOutcome outcome;
        const char* button;
        const char* sentence;
    };
    const Row rows[] = {
        {"", NumberOutcome::None, "Type it in", ""},
        {".", NumberOutcome::None, "Type it in", ""},
        {"212", NumberOutcome::Keep, "Keep 212 °C", ""},
        {"200", NumberOutcome::Keep, "Keep 200 °C", ""},
        {"220", NumberOutcome::Keep, "Keep 220 °C", ""},
        {"220.1", NumberOutcome::StopPlate, "Stop: plate too hot",
         "220.1 °C is too hot: allowed 200 to 220 °C."},
        {"199.9", NumberOutcome::StopPlate, "Stop: plate too cold",
         "199.9 °C is too cold: allowed 200 to 220 °C."},
        {"2120", NumberOutcome::None, "Type it again", "2120 °C can't be meant: 0 to 400 °C."},
    };
    for (const Row& row : rows) {
        const NumberShown number = shown(plateTask(), row.typed, '.');
        EXPECT_EQ(number.outcome, row.outcome) << row.typed;
        EXPECT_EQ(number.button, QString(row.button)) << row.typed;
        EXPECT_EQ(number.sentence, QString(row.sentence)) << row.typed;
    }
}

TEST(NumberTask, ReadsTheLanguagesOwnDecimalSign) {
    const NumberShown number = shown(plateTask(), "212,5", ',');
    EXPECT_EQ(number.outcome, NumberOutcome::Keep);
    EXPECT_DOUBLE_EQ(number.value, 212.5);
}

TEST(NumberTask, NeverRefusesAReadingThatIsAFactThoughItIsOutsideItsBand) {
    NumberTask task = plateTask();
    task.what = NumberFor::Recheck;
    const NumberShown number = shown(task, "150", '.');
    EXPECT_EQ(number.outcome, NumberOutcome::Keep);
    EXPECT_EQ(number.view.mark, Mark::Late);
    EXPECT_FALSE(number.sentence.isEmpty());
}

TEST(NumberTask, RefusesASheetThatNeitherProcedureNorBenchTakes) {
    const NumberTask task = entryTask(NumberFor::SheetThickness, 3, 30);
    EXPECT_EQ(shown(task, "30.5", '.').outcome, NumberOutcome::None);
    EXPECT_EQ(shown(task, "2.9", '.').outcome, NumberOutcome::None);
    EXPECT_EQ(shown(task, "3", '.').outcome, NumberOutcome::Keep);
    EXPECT_EQ(
        shown(task, "31", '.').sentence,
        QString("31 mm can't be welded here: allowed 3 to 30 mm."));
}

} // namespace
} // namespace seamclock
