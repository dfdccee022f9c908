// The languages: each phrase file is part of the program, whoever asks finds its phrase, numbers
// and dates follow, and back in English everything is as before. What German and Spanish decimals
// and months look like is the Unicode CLDR's, which Qt has inside.
#include "app/text/language.h"
#include "app/text/numbers.h"

#include <QCoreApplication>
#include <QDate>
#include <QFile>
#include <QLocale>
#include <QXmlStreamReader>
#include <gtest/gtest.h>
#include <vector>

namespace seamclock {
namespace {

class Spoken : public ::testing::TestWithParam<Language> {
protected:
    ~Spoken() override { speak(Language::English); }
};

struct Phrase {
    QString source;
    QString comment;
    QString translation;
    bool plural = false;
};

std::vector<Phrase> phrasesOf(Language language) {
    QFile file(
        QString(SEAMCLOCK_SOURCE_DIR) + "/resources/translations/seamclock_" + codeOf(language) +
        ".ts");
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
    std::vector<Phrase> all;
    QXmlStreamReader xml(&file);
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) {
            continue;
        }
        if (xml.name() == QLatin1String("message")) {
            all.emplace_back().plural = xml.attributes().value("numerus") == QLatin1String("yes");
        } else if (xml.name() == QLatin1String("source")) {
            all.back().source = xml.readElementText();
        } else if (xml.name() == QLatin1String("comment")) {
            all.back().comment = xml.readElementText();
        } else if (xml.name() == QLatin1String("translation") && !all.back().plural) {
            all.back().translation = xml.readElementText();
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return all;
}

TEST_P(Spoken, EachPhraseIsFoundWhoeverAsks) {
    speak(GetParam());
    EXPECT_EQ(spoken(), GetParam());
    int other = 0;
    const std::vector<Phrase> all = phrasesOf(GetParam());
    EXPECT_GT(all.size(), 1'000U);
    for (const Phrase& one : all) {
        if (one.plural) {
            continue;
        }
        const QByteArray source = one.source.toUtf8();
        const QByteArray comment = one.comment.toUtf8();
        const QString found = QCoreApplication::translate(
            "seamclock::Window", source.constData(),
            comment.isEmpty() ? nullptr : comment.constData());
        EXPECT_EQ(found.toStdString(), one.translation.toStdString());
        other += found != one.source ? 1 : 0;
    }
    EXPECT_GT(other, static_cast<int>(all.size()) * 9 / 10) << "hardly any word is another";
}

INSTANTIATE_TEST_SUITE_P(
    Languages, Spoken, ::testing::Values(Language::German, Language::Spanish),
    [](const auto& test) { return codeOf(test.param).toStdString(); });

TEST(LanguageChange, TakesNumbersAndDatesAlong) {
    const QDate day(2030, 1, 7);
    speak(Language::German);
    EXPECT_EQ(numberText(8.8, 1), QStringLiteral("8,8"));
    EXPECT_EQ(QLocale().toString(day, "MMMM"), QStringLiteral("Januar"));
    speak(Language::Spanish);
    EXPECT_EQ(numberText(8.8, 1), QStringLiteral("8,8"));
    EXPECT_EQ(QLocale().toString(day, "MMMM"), QStringLiteral("enero"));
    speak(Language::English);
    EXPECT_EQ(numberText(8.8, 1), QStringLiteral("8.8"));
    EXPECT_EQ(QLocale().toString(day, "MMMM"), QStringLiteral("January"));
    EXPECT_EQ(QCoreApplication::translate("x", "Close"), QStringLiteral("Close"));
}

TEST(LanguageChange, KnowsItsLanguagesByCodeAlsoWithATerritory) {
    for (const Language one : kLanguages) {
        EXPECT_EQ(languageOf(codeOf(one)), one);
        EXPECT_FALSE(ownNameOf(one).isEmpty());
    }
    EXPECT_EQ(languageOf("de_AT"), Language::German);
    EXPECT_EQ(languageOf("es-MX"), Language::Spanish);
    EXPECT_EQ(languageOf("den"), std::nullopt);
    EXPECT_EQ(languageOf("fr_FR"), std::nullopt);
    EXPECT_EQ(languageOf(""), std::nullopt);
}

} // namespace
} // namespace seamclock
