// Every screen of the walk in every language: no word cut off, outside its part or over another,
// lying and upright; and a change of language on the standing screen leaves no word of the old one:
// what is written then is what a window shows that spoke that language from its start.
#include "app/operate/questions.h"
#include "app/text/language.h"
#include "tests/app/operate/all_screens.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/app/parts/text_recorder.h"
#include "tests/support/sanitized.h"

#include <algorithm>
#include <map>
#include <regex>
#include <string>

namespace seamclock {
namespace {

class InLanguage : public ::testing::TestWithParam<Language> {
protected:
    ~InLanguage() override { speak(Language::English); }
};

/// Without what is another at each run: a seal's fingerprint, where the test's folder lies, and
/// when its files were made.
std::string lasting(const std::string& words) {
    static const std::regex kChance("[0-9a-f]{32}|/[^\n]*seamclock-[0-9]+-[0-9]+|"
                                    "[0-9]{2}[./][0-9]{2}[./][0-9]{6}(?::[0-9]{2})+");
    return std::regex_replace(words, kChance, "…");
}

/// What is written on each visible part.
std::map<std::string, std::string> writtenOn(Window& window) {
    std::map<std::string, std::string> all;
    for (QWidget* widget : window.findChildren<QWidget*>()) {
        auto* part = dynamic_cast<Part*>(widget);
        if (part == nullptr || !part->isVisible()) {
            continue;
        }
        TextRecorder recorder(part->size());
        part->render(&recorder, QPoint(), QRegion(), QWidget::RenderFlags());
        all[part->objectName().toStdString()] += recorder.all().toStdString() + "\n";
    }
    return all;
}

TEST_P(InLanguage, NoWordIsCutOnAnyScreen) {
    speak(GetParam());
    Preferences preferences;
    preferences.language = GetParam();
    Stage stage(QSize(1280, 800), preferences);
    int parts = 0;
    stage.walk([&parts](Window& window, const std::string& name) {
        const Preferences before = window.preferences();
        const QSize size = window.size();
        for (const bool upright : {false, true}) {
            const test::Tablet tablet{QSize(1280, 800), 1, 10, upright};
            for (const double text :
                 test::kSanitized ? std::vector<double>{1} : std::vector{1.0, 2.0}) {
                Preferences next = before;
                next.text = text;
                next.dpi = tablet.dpi();
                window.resize(tablet.window());
                window.setPreferences(next);
                for (const std::string& trouble : test::wordTroubles(window, parts)) {
                    ADD_FAILURE() << name << " " << tablet.name() << " text " << qRound(text * 100)
                                  << ": " << trouble;
                }
            }
        }
        window.resize(size);
        window.setPreferences(before);
    });
    EXPECT_GT(parts, 2'000);
}

// As a person changes it: on the menu, before the pages that come after it.
TEST_P(InLanguage, AChangeLeavesNoWordOfTheOldOne) {
    using Written = std::map<std::string, std::string>;
    std::map<std::string, Written> fromTheStart;
    {
        speak(GetParam());
        Preferences preferences;
        preferences.language = GetParam();
        Stage stage(QSize(1280, 800), preferences);
        stage.walk([&fromTheStart](Window& window, const std::string& name) {
            fromTheStart[name] = writtenOn(window);
        });
    }
    speak(Language::English);
    Stage stage;
    Preferences changed = stage.window().preferences();
    changed.language = GetParam();
    stage.window().openMenu();
    stage.window().setPreferences(changed);
    emit stage.window().currentPage()->slotPressed(SlotPlace::Step); // back to the bench
    int parts = 0;
    stage.walk([&](Window& window, const std::string& name) {
        for (const auto& [part, words] : writtenOn(window)) {
            if (words.find_first_not_of("\n") == std::string::npos) {
                continue; // nothing stands on it
            }
            EXPECT_EQ(lasting(words), lasting(fromTheStart[name][part])) << name << ": " << part;
            ++parts;
        }
    });
    EXPECT_GT(parts, 1'000);
}

TEST(LanguageOnTheMenu, IsTheNextOneByATap) {
    Stage stage;
    Window& window = stage.window();
    window.openMenu();
    const auto english = writtenOn(window);
    Preferences preferences = window.preferences();
    for (const Language next : {Language::German, Language::Spanish, Language::English}) {
        preferences = changedBy(MenuItem::Speech, preferences);
        EXPECT_EQ(preferences.language, next);
    }
    const Menu menu = menuFor(window.preferences());
    const auto at = std::find(menu.items.begin(), menu.items.end(), MenuItem::Speech);
    ASSERT_NE(at, menu.items.end());
    emit window.choicePage()->chosen(static_cast<int>(at - menu.items.begin()));
    EXPECT_EQ(spoken(), Language::German);
    EXPECT_NE(writtenOn(window), english) << "the menu itself is in German now";
    speak(Language::English);
}

INSTANTIATE_TEST_SUITE_P(
    Languages, InLanguage, ::testing::Values(Language::German, Language::Spanish),
    [](const auto& test) { return codeOf(test.param).toStdString(); });

} // namespace
} // namespace seamclock
