// Days without their year, in the order and with the points of each language, as the Unicode CLDR
// has them for its skeletons MMMEd and MMMd (German "Mo., 7. Jan.", Spanish "lun, 7 ene").
#include "app/text/dates.h"
#include "app/text/language.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(Dates, StandInTheOrderOfTheLanguage) {
    const QDate day(2030, 1, 7);
    speak(Language::English);
    EXPECT_EQ(dayWords(day), "Mon 7 January");
    EXPECT_EQ(shortDayWords(day), "7 Jan");
    speak(Language::German);
    EXPECT_EQ(dayWords(day), "Mo. 7. Januar");
    EXPECT_EQ(shortDayWords(day), "7. Jan.");
    speak(Language::Spanish);
    EXPECT_EQ(dayWords(day), "lun 7 de enero");
    EXPECT_EQ(shortDayWords(day), "7 ene");
    speak(Language::English);
}

} // namespace
} // namespace seamclock
