// Every page of a first start, looked at by machine as the operator's are: no word cut off, outside
// its part or over another, in each language, at each size of words, lying and upright; targets of
// 15 mm that don't overlap, on every tablet; names for a screen reader.
#include "app/text/language.h"
#include "tests/app/first/first_rig.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/support/sanitized.h"

#include <set>

namespace seamclock::test {
namespace {

/// As shown to that tablet and hand, and afterwards as it was.
class Held {
public:
    Held(FirstWindow& window, const Tablet& tablet, double text, bool mirrored)
        : m_window(window), m_size(window.size()), m_before(window.preferences()) {
        Preferences next = m_before;
        next.dpi = tablet.dpi();
        next.text = text;
        next.mirrored = mirrored;
        m_window.resize(tablet.window());
        m_window.setPreferences(next);
    }
    ~Held() {
        m_window.resize(m_size);
        m_window.setPreferences(m_before);
    }
    Held(const Held&) = delete;
    Held& operator=(const Held&) = delete;

private:
    FirstWindow& m_window;
    QSize m_size;
    Preferences m_before;
};

class EveryFirstPage : public ::testing::TestWithParam<Language> {
protected:
    EveryFirstPage() { speak(GetParam()); }
    ~EveryFirstPage() override { speak(Language::English); }

    void look(FirstWindow& window, const QString& name) {
        m_seen.insert(name);
        for (const bool upright : {false, true}) {
            for (const double text :
                 kSanitized ? std::vector<double>{1} : std::vector{1.0, 1.5, 2.0}) {
                const Tablet tablet{QSize(1280, 800), 1, 10, upright};
                const Held held(window, tablet, text, false);
                const std::string what = name.toStdString() + " " + tablet.name() + " text " +
                                         std::to_string(qRound(text * 100));
                int parts = 0;
                for (const std::string& trouble : wordTroubles(window, parts)) {
                    ADD_FAILURE() << what << ": " << trouble;
                }
                EXPECT_GT(parts, 0) << what;
            }
        }
        for (const std::string& trouble : blueTroubles(window)) {
            ADD_FAILURE() << name.toStdString() << ": " << trouble;
        }
        int told = 0;
        for (const std::string& trouble : spokenTroubles(window, told)) {
            ADD_FAILURE() << name.toStdString() << ": " << trouble;
        }
        if (GetParam() != Language::English) {
            return; // targets stand where they stand
        }
        // All tablets on the first of each page; then one scale of pixels after the other, in turn.
        const std::vector<Tablet>& all = tablets();
        const bool every = m_pages.insert(window.currentPage()->objectName()).second && !kSanitized;
        const std::size_t from = every ? 0 : m_turn++ % 7 * 6;
        for (std::size_t i = from; i < (every ? all.size() : from + 6); ++i) {
            for (const bool mirrored : {false, true}) {
                const Held held(window, all[i], 1, mirrored);
                for (const std::string& trouble : targetTroubles(window, all[i].dpi())) {
                    ADD_FAILURE() << name.toStdString() << " " << all[i].name()
                                  << (mirrored ? ", left-handed: " : ": ") << trouble;
                }
            }
        }
    }

    Preferences preferences() const {
        Preferences all;
        all.language = GetParam();
        return all;
    }

    std::set<QString> m_seen;
    std::set<QString> m_pages;
    std::size_t m_turn = 0;
};

TEST_P(EveryFirstPage, IsWholeAndCanBeTouched) {
    {
        FirstRig rig(preferences());
        FirstWalk walk(rig.window(), rig.desk());
        const auto walked = walk.all([&](const QString& name) { look(rig.window(), name); });
        ASSERT_TRUE(walked) << walked.error().detail;
        // As the menu's "First steps" shows it later, with a demo shop.
        rig.again();
        look(rig.window(), "first-overview-later");
    }
    {
        FirstRig rig(preferences());
        FirstWalk walk(rig.window(), rig.desk());
        const auto walked = walk.nothing([&](const QString& name) { look(rig.window(), name); });
        ASSERT_TRUE(walked) << walked.error().detail;
    }
    Preferences inches = preferences();
    inches.units = UnitSystem::Imperial;
    FirstRig rig(inches);
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.people());
    ASSERT_TRUE(walk.press(SlotPlace::Step)); // the bench's name
    look(rig.window(), "first-seam-in-inches");
    ASSERT_TRUE(walk.number("100"));
    ASSERT_TRUE(walk.number("1"));
    ASSERT_TRUE(walk.number("2"));
    look(rig.window(), "first-scale-unit");
    ASSERT_TRUE(walk.choose(1));
    ASSERT_TRUE(walk.number("2"));
    look(rig.window(), "first-division-in-inches");
    ASSERT_TRUE(walk.press(SlotPlace::Stop));
    look(rig.window(), "first-bench-half-told");
    EXPECT_GE(m_seen.size(), 22U);
}

INSTANTIATE_TEST_SUITE_P(
    Languages, EveryFirstPage,
    ::testing::Values(Language::English, Language::German, Language::Spanish),
    [](const auto& test) { return codeOf(test.param).toStdString(); });

} // namespace
} // namespace seamclock::test
