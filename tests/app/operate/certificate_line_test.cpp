// The line of a certificate, typed in each language and read back.
#include "app/operate/certificate_line.h"
#include "app/text/language.h"

#include <gtest/gtest.h>
#include <utility>
#include <vector>

namespace seamclock {
namespace {

TEST(CertificateLine, IsTypedWithTheWordOfTheLanguageOrTheEnglishOne) {
    const auto english = readCertificateLine("PE-HD, PP 3-20 mm until 2031-06-30");
    ASSERT_TRUE(english);
    EXPECT_EQ(certificateLine(*english), "PE-HD, PP 3-20 mm until 2031-06-30");
    for (const auto& [language, line] : std::vector<std::pair<Language, QString>>{
             {Language::German, "PE-HD, PP 3-20 mm bis 2031-06-30"},
             {Language::Spanish, "PE-HD, PP 3-20 mm hasta 2031-06-30"}}) {
        speak(language);
        EXPECT_EQ(certificateLine(*english), line);
        const auto read = readCertificateLine(line);
        ASSERT_TRUE(read) << read.error().detail;
        EXPECT_EQ(*read, *english);
        EXPECT_TRUE(readCertificateLine("PE-HD, PP 3-20 mm until 2031-06-30"));
        EXPECT_FALSE(readCertificateLine("PE-HD, PP 3-20 mm 2031-06-30"));
    }
    speak(Language::English);
    EXPECT_FALSE(readCertificateLine("PE-HD, PP 3-20 mm bis 2031-06-30"));
}

} // namespace
} // namespace seamclock
