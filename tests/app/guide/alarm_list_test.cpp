// No cue of core is without its meaning in the guide, and no sentence of the guide's tables is one
// that the program no longer says.
#include "app/guide/alarm_list.h"

#include "app/text/language.h"
#include "core/shift/pattern.h"
#include "tests/app/guide/shipped_guide.h"

#include <QRegularExpression>
#include <gtest/gtest.h>
#include <set>
#include <string>

namespace seamclock {
namespace {

/// As they stand in core's own header: the list that the program's cues come from.
QStringList cuesInCore() {
    QFile file(test::sourceFolder() + "/core/weld/cues.h");
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    static const QRegularExpression kEnum(QStringLiteral("enum class CueKind \\{([^}]*)\\}"));
    QString inside = kEnum.match(QString::fromUtf8(file.readAll())).captured(1);
    inside.remove(QRegularExpression(QStringLiteral("//[^\\n]*")));
    QStringList names;
    for (const QString& name : inside.split(QLatin1Char(','))) {
        names << name.trimmed();
    }
    return names;
}

TEST(AlarmList, HasEveryCueOfCoreOnceAndInTheOrderOfUrgency) {
    const QStringList inCore = cuesInCore();
    ASSERT_GE(inCore.size(), 13);
    const std::vector<AlarmEntry> all = cueEntries();
    ASSERT_EQ(static_cast<qsizetype>(all.size()), inCore.size());
    std::set<std::string> codes;
    int before = 0;
    for (qsizetype i = 0; i < inCore.size(); ++i) {
        const AlarmEntry& one = all[static_cast<std::size_t>(i)];
        ASSERT_TRUE(one.cue);
        const std::string code(toString(*one.cue));
        QString name = inCore[i]; // "ActNow" is "act_now"
        name.replace(QRegularExpression(QStringLiteral("(?<!^)([A-Z])")), QStringLiteral("_\\1"));
        EXPECT_EQ(code, name.toLower().toStdString());
        codes.insert(code);
        EXPECT_GE(rank(*one.cue), before);
        before = rank(*one.cue);
        EXPECT_FALSE(one.means.isEmpty()) << code;
        EXPECT_FALSE(one.act.isEmpty()) << code;
    }
    EXPECT_EQ(static_cast<qsizetype>(codes.size()), inCore.size());
}

// What is heard, and how often, is the pattern's own: the guide may not say otherwise.
TEST(AlarmList, SaysHowOftenEachIsHeard) {
    for (const AlarmEntry& one : cueEntries()) {
        const auto sound = soundOf(*one.cue);
        ASSERT_EQ(sound.has_value(), !one.heard.isEmpty()) << toString(*one.cue);
        if (!sound) {
            continue;
        }
        const auto pause = pauseAfter(*sound, 1, 1);
        const auto period =
            pause ? std::optional(*pause + roundLength(*sound, 1, 1)) : std::nullopt;
        const bool slow = period && *period >= std::chrono::seconds(2);
        EXPECT_EQ(slow && *sound != Sound::Done, one.heard.contains(", every "))
            << toString(*one.cue);
        if (slow && *sound != Sound::Done) {
            const QString every = QStringLiteral(", every %1 s").arg(period->count() / 1000);
            EXPECT_TRUE(one.heard.contains(every)) << one.heard.toStdString();
        }
    }
    const auto chime = [](int round) {
        return (*pauseAfter(Sound::Done, 1, round) + roundLength(Sound::Done, 1, round)).count();
    };
    EXPECT_EQ(chime(0), 30'000); // 30, 60 and 90 s, then every 2 min
    EXPECT_EQ(chime(2), 30'000);
    EXPECT_EQ(chime(3), 120'000);
}

TEST(AlarmList, StandsWholeInTheShippedGuide) {
    QString text;
    for (const GuideChapter& chapter : test::shippedGuide().chapters) {
        text += chapter.text;
    }
    EXPECT_FALSE(text.contains("<!--"));
    for (const auto& list : {cueEntries(), sentenceEntries()}) {
        for (const AlarmEntry& one : list) {
            EXPECT_TRUE(text.contains(one.means)) << one.means.toStdString();
            EXPECT_TRUE(text.contains(phraseShown(one.phrase))) << one.phrase;
        }
    }
}

TEST(AlarmList, QuotesOnlyWhatTheScreenSays) {
    const QSet<QString> phrases = test::phrasesOfTheScreens();
    int quoted = 0;
    for (const auto& list : {cueEntries(), sentenceEntries()}) {
        for (const AlarmEntry& one : list) {
            const QString phrase = QString::fromUtf8(one.phrase);
            if (!phrase.isEmpty()) {
                EXPECT_TRUE(phrases.contains(phrase)) << one.phrase;
                ++quoted;
            }
        }
    }
    EXPECT_GE(quoted, 20);
}

/// The whole sentences that a source hands to tr(), as one text each.
QStringList sentencesIn(const QString& source) {
    QFile file(test::sourceFolder() + source);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << source.toStdString();
    const QString text = QString::fromUtf8(file.readAll());
    static const QRegularExpression kCall(QStringLiteral("\\btr\\(\\s*((?:\"[^\"]*\"\\s*)+)"));
    static const QRegularExpression kPiece(QStringLiteral("\"([^\"]*)\""));
    QStringList out;
    for (auto call = kCall.globalMatch(text); call.hasNext();) {
        QString whole;
        for (auto piece = kPiece.globalMatch(call.next().captured(1)); piece.hasNext();) {
            whole += piece.next().captured(1);
        }
        if (whole.contains(QLatin1Char('.')) || whole.contains(QLatin1Char(';'))) {
            out << whole;
        }
    }
    return out;
}

// Whoever adds an alarm is led here: Help has to say what it means.
TEST(AlarmList, HasEverySentenceOfTheBannerAndOfALogThatWasSetAside) {
    QSet<QString> meant;
    for (const auto& list : {cueEntries(), sentenceEntries()}) {
        for (const AlarmEntry& one : list) {
            meant.insert(QString::fromUtf8(one.phrase));
        }
    }
    // What Set-up says of the machine's rest is no alarm.
    const QSet<QString> calm{
        "The tablet is kept awake until no joint is open.",
        "The tablet is kept awake. Its screen may go dark: see its own settings.",
        "The screen is kept on. The tablet may sleep: see its own settings.",
        "This machine can't be kept awake from here: see its own settings."};
    int alarms = 0;
    for (const char* source : {"/app/operate/window_alarms.cpp", "/app/operate/log_notice.cpp"}) {
        for (const QString& sentence : sentencesIn(source)) {
            if (!calm.contains(sentence)) {
                EXPECT_TRUE(meant.contains(sentence)) << sentence.toStdString();
                ++alarms;
            }
        }
    }
    EXPECT_GE(alarms, 13) << "as many as there were when this was written";
}

TEST(AlarmList, ShowsASentenceInTheLanguageOfTheScreenBesideTheEnglish) {
    const char* phrase = "No sound. Watch this screen. The weld goes on.";
    EXPECT_EQ(phraseShown(phrase), phrase);
    EXPECT_EQ(
        phraseShown("The battery is low: %1 %. Plug the charger in."),
        "The battery is low: … %. Plug the charger in.");
    speak(Language::German);
    const QString both = phraseShown(phrase);
    const QString table = alarmTable(cueEntries());
    const QStringList english{"you see", "it means", "The least cooling time is over."};
    for (const QString& words : english) {
        EXPECT_FALSE(table.contains(words)) << words.toStdString();
    }
    EXPECT_TRUE(table.contains("Die Mindestabkühlzeit ist um."));
    speak(Language::English);
    for (const QString& words : english) {
        EXPECT_TRUE(alarmTable(cueEntries()).contains(words)) << words.toStdString();
    }
    EXPECT_TRUE(both.startsWith(QString::fromUtf8(phrase) + " (")) << both.toStdString();
    EXPECT_GT(both.size(), QString::fromUtf8(phrase).size() + 10);
    EXPECT_TRUE(table.contains(both));
}

TEST(AlarmList, IsATableOfAsManyRowsAsItHasEntries) {
    const QString cues = alarmTable(cueEntries());
    EXPECT_EQ(cues.count('\n'), static_cast<qsizetype>(cueEntries().size()) + 2);
    for (const QString& row : cues.split('\n', Qt::SkipEmptyParts)) {
        EXPECT_EQ(row.count('|'), 5) << row.toStdString();
    }
    for (const QString& row : alarmTable(sentenceEntries()).split('\n', Qt::SkipEmptyParts)) {
        EXPECT_EQ(row.count('|'), 4) << "nothing sounds there: " << row.toStdString();
    }
}

} // namespace
} // namespace seamclock
