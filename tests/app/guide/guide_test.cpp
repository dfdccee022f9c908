// The guide that ships: its chapters, its links, and that every word of the screen that it quotes
// is one that the screen still has. And what a guide that is not whole is told.
#include "app/guide/guide.h"

#include "tests/app/guide/shipped_guide.h"
#include "tests/support/scratch_folder.h"

#include <QRegularExpression>
#include <QSet>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(ShippedGuide, HasItsChaptersWithTitleAndWhatTheyAreAbout) {
    const Guide guide = test::shippedGuide();
    QStringList titles;
    for (const GuideChapter& chapter : guide.chapters) {
        titles << chapter.title;
        EXPECT_GT(chapter.about.size(), 20) << chapter.file.toStdString();
        EXPECT_LE(chapter.about.size(), 64) << chapter.file.toStdString() << ": a row of Help";
        EXPECT_GT(chapter.text.size(), 1'500) << chapter.file.toStdString();
    }
    for (const char* wanted :
         {"Cautions", "From install to a sealed day", "First morning", "One weld",
          "When something goes wrong", "The foreman's evening", "The trainee"}) {
        EXPECT_TRUE(titles.contains(wanted)) << wanted;
    }
    ASSERT_FALSE(titles.isEmpty());
    EXPECT_EQ(titles.front(), "Cautions") << "read first";
}

TEST(ShippedGuide, SaysWhoDecides) {
    QString cautions = test::shippedGuide().chapters.front().text;
    cautions = cautions.replace("\n> ", " ").simplified();
    for (const char* words :
         {"The program guides", "machine's own instructions", "standard in force", "local rules",
          "qualified welder", "burns", "crush", "hydrogen chloride", "extraction"}) {
        EXPECT_TRUE(cautions.contains(words)) << words;
    }
}

TEST(ShippedGuide, ItsLinksLeadToItsChapters) {
    const Guide guide = test::shippedGuide();
    QSet<QString> files;
    for (const GuideChapter& chapter : guide.chapters) {
        files.insert(chapter.file);
    }
    static const QRegularExpression kLink(QStringLiteral("(?<!!)\\[[^\\]]*\\]\\(([^)]*)\\)"));
    int links = 0;
    for (const GuideChapter& chapter : guide.chapters) {
        QString text = chapter.text;
        text.remove(QRegularExpression(QStringLiteral("```[^`]*```"))); // commands hold brackets
        for (auto at = kLink.globalMatch(text); at.hasNext(); ++links) {
            const QString to = at.next().captured(1);
            EXPECT_TRUE(files.contains(to))
                << chapter.file.toStdString() << " to " << to.toStdString();
        }
    }
    EXPECT_GE(links, 4);
}

/// "Wait %1 before soak on %2" as it may be quoted.
QRegularExpression asQuoted(const QString& phrase) {
    QString pattern = QRegularExpression::escape(phrase);
    pattern.replace(QRegularExpression(QStringLiteral("\\\\%L?\\d+|\\\\%n")), QStringLiteral(".+"));
    return QRegularExpression(
        QRegularExpression::anchoredPattern(pattern), QRegularExpression::CaseInsensitiveOption);
}

TEST(ShippedGuide, QuotesNoWordThatTheScreenNoLongerHas) {
    // Not of the screen: a table's heads in a file, a key of JSON, a setting of the desktop, the
    // number of an event. And the sign in place of a number, which no language translates.
    const QSet<QString> others{"above", "to", "document", "never", "#12", "?"};
    const QSet<QString> phrases = test::phrasesOfTheScreens();
    QSet<QString> plain;
    std::vector<QRegularExpression> patterns;
    for (const QString& phrase : phrases) {
        plain.insert(phrase.toLower());
        if (phrase.contains('%')) {
            patterns.push_back(asQuoted(phrase));
        }
    }
    const auto isKnown = [&](const QString& quote) {
        QString bare = quote.toLower();
        while (bare.endsWith('.') || bare.endsWith(',')) {
            bare.chop(1);
        }
        if (plain.contains(bare) || plain.contains(bare + '.') || others.contains(bare)) {
            return true;
        }
        if (bare.contains(QStringLiteral("…"))) { // its beginning, and what comes later
            QStringList parts;
            for (const QString& part : bare.split(QStringLiteral("…"))) {
                parts << QRegularExpression::escape(part.trimmed());
            }
            const QString pattern = parts.join(QStringLiteral(".*"));
            const QRegularExpression begins('^' + pattern);
            return std::any_of(plain.begin(), plain.end(), [&begins](const QString& phrase) {
                return begins.match(phrase).hasMatch();
            });
        }
        return std::any_of(patterns.begin(), patterns.end(), [&](const QRegularExpression& one) {
            return one.match(quote).hasMatch() || one.match(quote + '.').hasMatch();
        });
    };
    static const QRegularExpression kQuote(QStringLiteral("\"([^\"]{1,200})\""));
    int quotes = 0;
    for (const GuideChapter& chapter : test::shippedGuide().chapters) {
        QString text = chapter.text;
        text.remove(QRegularExpression(
            QStringLiteral("```.*?```"), QRegularExpression::DotMatchesEverythingOption));
        text.remove(QRegularExpression(QStringLiteral("`[^`]*`")));
        for (auto at = kQuote.globalMatch(text); at.hasNext(); ++quotes) {
            const QString quote = at.next().captured(1).simplified();
            EXPECT_TRUE(isKnown(quote))
                << chapter.file.toStdString() << ": " << quote.toStdString();
        }
    }
    EXPECT_GT(quotes, 100);
}

TEST(FindInGuide, FindsAWordByItsBeginningAndAllOfSeveral) {
    const Guide guide = test::shippedGuide();
    const auto hits = findInGuide(guide, "hydrogen chlor");
    ASSERT_FALSE(hits.empty());
    EXPECT_EQ(hits.front().chapter, 0);
    EXPECT_TRUE(hits.front().text.contains("hydrogen chloride")) << hits.front().text.toStdString();
    for (const GuideHit& hit : findInGuide(guide, "Battery")) {
        EXPECT_TRUE(hit.text.contains("battery", Qt::CaseInsensitive));
        EXPECT_FALSE(hit.text.contains("**"));
        EXPECT_FALSE(hit.text.contains('|'));
        EXPECT_LE(hit.text.size(), 160);
    }
    EXPECT_EQ(findInGuide(guide, "weld", 3).size(), 3U);
    EXPECT_TRUE(findInGuide(guide, "no word of any chapter").empty());
    EXPECT_TRUE(findInGuide(guide, "  ").empty());
    EXPECT_TRUE(findInGuide(guide, "(((").empty()) << "no pattern, but what was typed";
}

class SmallGuide : public ::testing::Test {
protected:
    void write(const QString& name, const QByteArray& text) {
        QFile file(QString::fromStdString(m_folder.file(name.toStdString())));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(text);
    }
    Result<Guide> read() const { return readGuide(QString::fromStdString(m_folder.path()), {}); }

    test::ScratchFolder m_folder;
};

TEST_F(SmallGuide, IsReadInTheOrderOfItsFiles) {
    write("02-b.md", "# Second\n\nOf the *second*.\n\nMore.\n");
    write(
        "01-a.md", "# First\n\nOf the first,\nin two lines.\n\n![Soak](soak.png)\n![](x-1.png)\n");
    write("README.md", "no chapter");
    const auto guide = read();
    ASSERT_TRUE(guide) << guide.error().detail;
    ASSERT_EQ(guide->chapters.size(), 2U);
    EXPECT_EQ(guide->chapters[0].title, "First");
    EXPECT_EQ(guide->chapters[0].about, "Of the first, in two lines.");
    EXPECT_EQ(picturesNamed(guide->chapters[0]), QStringList({"soak", "x-1"}));
    EXPECT_EQ(guide->chapters[1].file, "02-b.md");
}

TEST_F(SmallGuide, WithoutAChapterOrATitleIsSaidInOneSentence) {
    const auto none = read();
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error().code, ErrorCode::Missing);
    write("01-a.md", "No title.\n");
    const auto untitled = read();
    ASSERT_FALSE(untitled);
    EXPECT_EQ(untitled.error().code, ErrorCode::Malformed);
    EXPECT_NE(untitled.error().detail.find("01-a.md"), std::string::npos);
}

TEST_F(SmallGuide, ThatAsksForATableThatThereIsNotIsRefused) {
    write("01-a.md", "# A\n\nText.\n\n<!-- table of the unknown -->\n");
    const auto guide = read();
    ASSERT_FALSE(guide);
    EXPECT_EQ(guide.error().code, ErrorCode::Malformed);
    EXPECT_NE(guide.error().detail.find("table of the unknown"), std::string::npos);
}

} // namespace
} // namespace seamclock
