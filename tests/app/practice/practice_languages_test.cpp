// Every screen of the practice walk in every other language: no word cut off, outside its part or
// over another, lying and upright. practice_screens_test holds the rest, in English.
#include "app/text/language.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/app/practice/practice_shop.h"
#include "tests/support/sanitized.h"

#include <gtest/gtest.h>
#include <set>
#include <string>
#include <vector>

namespace seamclock::test {
namespace {

class PracticeInLanguage : public ::testing::TestWithParam<Language> {
protected:
    PracticeInLanguage() { speak(GetParam()); }
    ~PracticeInLanguage() override { speak(Language::English); }

    static Preferences preferences() {
        Preferences out;
        out.dpi = kUnitsPerInch;
        out.language = GetParam();
        return out;
    }
    void look(const QString& name) {
        m_seen.insert(name);
        for (const QSize size : {QSize(800, 1280), QSize(1280, 800)}) {
            for (const double text : kSanitized ? std::vector{1.0} : std::vector{2.0, 1.5, 1.0}) {
                m_preferences.text = text;
                m_shop->window().resize(size);
                m_shop->window().setPreferences(m_preferences);
                for (const std::string& trouble : wordTroubles(m_shop->window(), m_parts)) {
                    ADD_FAILURE() << name.toStdString() << " " << size.width() << "x"
                                  << size.height() << " text " << qRound(text * 100) << ": "
                                  << trouble;
                }
            }
        }
    }

    Preferences m_preferences = preferences();
    std::unique_ptr<Practising> m_shop =
        std::make_unique<Practising>(QSize(1280, 800), m_preferences, "Ilva Borrick");
    std::set<QString> m_seen;
    int m_parts = 0;
};

TEST_P(PracticeInLanguage, NoWordIsCutOnAnyScreen) {
    const auto picture = [this](const QString& name) { look(name); };
    auto done = m_shop->walk().weld("pe10-first", {}, picture);
    ASSERT_TRUE(done) << done.error().detail;
    m_shop = std::make_unique<Practising>(QSize(1280, 800), m_preferences, "Ilva Borrick");
    WalkMistakes mistakes;
    mistakes.pressedSoak = true;
    mistakes.changeover = Milliseconds(9'000);
    mistakes.takesCall = true;
    mistakes.says = Wrong::WrongUnit;
    done = m_shop->walk().weld("pe10-phone", mistakes, picture);
    ASSERT_TRUE(done) << done.error().detail;
    done = m_shop->walk().afterwards(picture);
    ASSERT_TRUE(done) << done.error().detail;
    for (const char* lesson : {"pe10-parallel", "pe10-cold-start"}) {
        m_shop = std::make_unique<Practising>(QSize(1280, 800), m_preferences, "Ilva Borrick");
        done = m_shop->walk().toBench(lesson, picture);
        ASSERT_TRUE(done) << done.error().detail;
        done = m_shop->walk().prepare({}, picture);
        ASSERT_TRUE(done) << done.error().detail;
    }
    EXPECT_GE(m_seen.size(), 24U);
    EXPECT_GT(m_parts, 500);
}

INSTANTIATE_TEST_SUITE_P(
    Languages, PracticeInLanguage, ::testing::Values(Language::German, Language::Spanish),
    [](const auto& test) { return codeOf(test.param).toStdString(); });

} // namespace
} // namespace seamclock::test
