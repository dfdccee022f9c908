// Days without their year, in the order and with the points of each language, as the Unicode CLDR
// has them for its skeletons MMMEd and MMMd (German "Mo., 7. Jan.", Spanish "lun, 7 ene"); with the
// year yMMMd of English and, for narrow columns, the padded yMd of German and Spanish.
#include "app/text/dates.h"
#include "app/text/language.h"
#include "app/text/record_words.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(Dates, StandInTheOrderOfTheLanguage) {
    const QDate day(2030, 1, 7);
    speak(Language::English);
    EXPECT_EQ(dayWords(day), "Mon 7 January");
    EXPECT_EQ(shortDayWords(day), "7 Jan");
    EXPECT_EQ(fullDayWords(day), "7 Jan 2030");
    speak(Language::German);
    EXPECT_EQ(dayWords(day), "Mo. 7. Januar");
    EXPECT_EQ(shortDayWords(day), "7. Jan.");
    EXPECT_EQ(fullDayWords(day), "07.01.2030");
    speak(Language::Spanish);
    EXPECT_EQ(dayWords(day), "lun 7 de enero");
    EXPECT_EQ(shortDayWords(day), "7 ene");
    EXPECT_EQ(fullDayWords(day), "07/01/2030");
    speak(Language::English);
}

TEST(Dates, OfCoreAreWordsAndWhatIsNoDateStandsAsItIs) {
    speak(Language::German);
    EXPECT_EQ(fullDayWords("2031-06-30"), "30.06.2031");
    EXPECT_EQ(dateText(Instant{{}, "", Milliseconds(1'893'996'000'000), {}}), "07.01.2030");
    speak(Language::English);
    for (const char* text : {"", "–", "2031-02-30", "2031-06-30T07:00", "any day"}) {
        EXPECT_EQ(fullDayWords(text), QString(text));
        EXPECT_EQ(withFullDays(text), QString(text));
    }
    EXPECT_EQ(
        withFullDays("2031-06-30 by Oddo, against 2015-08, again 2031-07-01"),
        "30 Jun 2031 by Oddo, against 2015-08, again 1 Jul 2031");
}

} // namespace
} // namespace seamclock
