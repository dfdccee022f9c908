// The phrase book: every template that core's sentences are made of comes out in each language with
// all that was put into it, no sentence fits two of them equally well, and what core really says
// when it refuses something has words. No outside source: the sentences are the program's own. The
// decimal signs are the Unicode CLDR's, which Qt has inside.
#include "app/text/language.h"
#include "app/text/phrase_book.h"
#include "core/bench/calibration.h"
#include "core/people/certificate.h"
#include "core/plan/plan.h"
#include "core/practice/lesson_codec.h"
#include "core/practice/practice_words.h"
#include "core/procedure/cells.h"
#include "core/procedure/procedure_codec.h"
#include "core/shift/job_csv.h"
#include "tests/support/shipped.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

struct Filled {
    QString english;
    QString phrase; // for the translator: "%1 is empty"
    QStringList values;
};

/// With values that no other template knows a word of.
Filled filledIn(const QString& line) {
    static const QRegularExpression kValue("\\{[#=]?\\}");
    Filled out;
    qsizetype at = 0;
    auto all = kValue.globalMatch(line);
    while (all.hasNext()) {
        const auto value = all.next();
        const auto place = static_cast<int>(out.values.size()) + 1;
        out.values
            << (value.captured() == "{#}" ? QString::number(70 + place)
                                          : QStringLiteral("Vq-%1-x").arg(place));
        const QString before = line.mid(at, value.capturedStart() - at);
        out.english += before + out.values.back();
        out.phrase += before + QStringLiteral("%%1").arg(place);
        at = value.capturedEnd();
    }
    out.english += line.mid(at);
    out.phrase += line.mid(at);
    return out;
}

QString withValues(QString text, const QStringList& values) {
    for (qsizetype i = values.size(); i > 0; --i) {
        text.replace(QStringLiteral("%%1").arg(i), values[i - 1]);
    }
    return text;
}

/// Words that no German or Spanish sentence has.
QStringList englishIn(const QString& text) {
    static const QRegularExpression kWords("\\b(the|is|are|were|which|that|and|of|with|from|"
                                           "this|there|allowed|can't|holds|must|at "
                                           "least|not)\\b");
    QString plain = text;
    plain.remove(QRegularExpression("[„«\"][^“»\"]*[“»\"]")); // names
    QStringList found;
    auto all = kWords.globalMatch(plain);
    while (all.hasNext()) {
        found << all.next().captured();
    }
    return found;
}

class PhraseBook : public ::testing::TestWithParam<Language> {
protected:
    PhraseBook() { speak(GetParam()); }
    ~PhraseBook() override { speak(Language::English); }

    static void expectWords(const std::string& english) {
        const QString words = inWords(english);
        EXPECT_NE(words.toStdString(), english);
        EXPECT_TRUE(englishIn(words).isEmpty()) << english << "\n"
                                                << words.toStdString() << "\n"
                                                << englishIn(words).join(' ').toStdString();
    }
};

TEST_P(PhraseBook, HasWordsForEachTemplateWithAllThatWasPutIn) {
    ASSERT_GT(phrasesOfCore().size(), 500);
    for (const QString& line : phrasesOfCore()) {
        const Filled one = filledIn(line);
        const QString phrase =
            QCoreApplication::translate("PhraseBook", one.phrase.toUtf8().constData());
        const QString words = inWords(one.english);
        EXPECT_NE(words.toStdString(), one.english.toStdString());
        EXPECT_EQ(words.toStdString(), withValues(phrase, one.values).toStdString())
            << line.toStdString();
        for (const QString& value : one.values) {
            EXPECT_TRUE(words.contains(value)) << words.toStdString();
        }
        EXPECT_TRUE(englishIn(words).isEmpty())
            << words.toStdString() << ": " << englishIn(words).join(' ').toStdString();
    }
}

TEST_P(PhraseBook, ReadsASentenceInsideASentence) {
    const std::string inner =
        "shop/logs/east.seamlog: its structure is damaged (row 7 missing from index)";
    const QString inside = inWords(inner);
    EXPECT_TRUE(inside.startsWith("shop/logs/east.seamlog: ")) << inside.toStdString();
    EXPECT_TRUE(inside.endsWith("(row 7 missing from index)")) << "a machine's own words stay";
    const QString outer = inWords(inner + "; it can't be set aside: shop/logs: not readable");
    EXPECT_TRUE(outer.startsWith(inside + "; ")) << outer.toStdString();
    EXPECT_TRUE(outer.endsWith(": shop/logs: " + inWords(std::string_view("not readable"))));
    EXPECT_TRUE(englishIn(outer.section("; ", 1)).isEmpty()) << outer.toStdString();
    expectWords("the day can't be sealed yet: 3 rows stand in the spill file and 2 in memory only: "
                "shop/logs/east.seamlog: the disk is full (SQLITE_FULL)");
}

TEST_P(PhraseBook, SaysCodesAsTheScreensDo) {
    expectWords("plate_out does not fit while changing_over");
    expectWords("the check \"film_off\" can only be overridden by a foreman");
    expectWords("procedure pe can't be welded with yet: it lacks soak_s, cooling_min, which the "
                "shop fills and attests first");
    const QString words = inWords(std::string_view("plate_out does not fit while changing_over"));
    EXPECT_FALSE(words.contains('_')) << words.toStdString();
    EXPECT_FALSE(inWords(std::string_view("joint 7 is out of limits and not decided"))
                     .contains("limits and"));
    EXPECT_FALSE(wordOf("edges_meet").contains("meet"));
}

TEST_P(PhraseBook, LeavesNamesAsTheyWereGiven) {
    EXPECT_TRUE(inWords(std::string_view("nobody here is \"soak\"")).contains("soak"));
    EXPECT_TRUE(
        inWords(std::string_view("the bench \"%2 trial\" is there already")).contains("%2 trial"));
    EXPECT_EQ(inWords(std::string_view("Seam 3 of Ilva Marchetti")), "Seam 3 of Ilva Marchetti");
    EXPECT_EQ(inWords(std::string_view("")), "");
}

TEST_P(PhraseBook, LeavesADocumentAsItWasWrittenAndSaysWhoAttestedIt) {
    const QString document = "A handbook, edition 3: 200 to 220 °C, hotter for thin sheet";
    EXPECT_EQ(storedWords(document.toStdString()), document);
    const QString attested = storedWords(
        document.toStdString() + "; attested by Oddo Quenley, 2030-01-07, against edition 2015");
    EXPECT_TRUE(attested.startsWith(document + "; ")) << attested.toStdString();
    EXPECT_TRUE(attested.endsWith("2015")) << attested.toStdString();
    EXPECT_TRUE(englishIn(attested.mid(document.size())).isEmpty()) << attested.toStdString();
    EXPECT_EQ(
        storedWords("the clamp is loose: it was the third time"),
        "the clamp is loose: it was the third time");
    EXPECT_NE(storedWords("drag measured"), "drag measured");
    EXPECT_TRUE(englishIn(storedWords("a tenth of the thickness, as DVS 2207-1")).isEmpty());
}

TEST_P(PhraseBook, HasWordsForEachValueOfAProcedure) {
    const auto all = readProcedureFolder(test::resource("procedures"));
    ASSERT_TRUE(all) << all.error().detail;
    for (const ProcedureDocument& document : *all) {
        for (const Cell& cell : cellsOf(document.procedure)) {
            const QString words = inWords(cell.content);
            EXPECT_TRUE(englishIn(words).isEmpty()) << cell.content << "\n" << words.toStdString();
            EXPECT_FALSE(words.contains(" to ")) << words.toStdString();
        }
    }
}

TEST_P(PhraseBook, WritesNumbersAsTheScreensDo) {
    const QString words =
        inWords(std::string_view("thickness 0.5 mm is outside 1.5 to 30 mm of bench east"));
    EXPECT_TRUE(words.contains("0,5 mm")) << words.toStdString();
    EXPECT_TRUE(words.contains(" 1,5 ")) << words.toStdString();
    const QString cold = inWords(std::string_view("ambient -41.5 °C is outside -40 to 60 °C"));
    EXPECT_TRUE(cold.contains(QStringLiteral("−41,5 °C"))) << cold.toStdString();
    EXPECT_TRUE(cold.contains(QStringLiteral("−40 "))) << cold.toStdString();
    EXPECT_TRUE(inWords(std::string_view("the day 2030-02-11 has not come yet; allowed: up to "
                                         "2030-02-10"))
                    .endsWith("2030-02-10"));
}

TEST_P(PhraseBook, HasWordsForAllThatIsWrongInATableOfSeams) {
    const std::string header =
        "label,material,procedure,thickness_mm,length_mm,drag_N,ambient_C,shielded,bead_places\r\n";
    const std::string rows =
        ",PE-HD,nobodys,12;5,1130+,-3,99,maybe,2.5\r\n"
        "S1,PE-HD,pe,0,,5,,yes,1\r\nS1,PE-HD,pe,15,1130,5,,yes,1\r\n"
        "a label that is far too long to stand on any line of a list,,pe,,7,,,,99\r\nS2,PE\r\n";
    std::size_t told = 0;
    for (const std::string& csv :
         {std::string(), header, header + rows, "label;material\r\n" + rows,
          "label,label,colour\r\n" + rows, header + "S1,\"PE", header + "S1,P\"E,pe,1,1,,,,\r\n"}) {
        const JobCsv read = readJobCsv(csv, {{{"pe", {"PP", 3'000, 12'000}}}, {"east"}});
        EXPECT_FALSE(read.isSound());
        for (const JobCsvProblem& problem : read.problems) {
            expectWords(problem.text);
            expectWords(problem.inWords());
            ++told;
        }
    }
    EXPECT_GT(told, 20U);
}

TEST_P(PhraseBook, HasWordsForWhatAPlanRefuses) {
    const Procedure procedure = test::shippedProcedure("pe-hd-dvs2207-1-2015");
    const Bench bench = test::demoBench("east");
    const auto refused = [&](double thickness, double length, double ambient, double drag) {
        PlanRequest request;
        request.thickness = millimetres(thickness);
        request.lengths = {millimetres(length)};
        request.ambient = Temperature::celsius(ambient);
        request.drag = newtons(drag);
        const auto plan = makePlan(request, procedure, &bench);
        if (!plan) {
            expectWords(plan.error().detail);
            return true;
        }
        for (const PlanWarning& warning : plan->warnings) {
            expectWords(warning.text);
        }
        return false;
    };
    EXPECT_TRUE(refused(0.5, 1000, 20, 30));
    EXPECT_TRUE(refused(900, 1000, 20, 30));
    EXPECT_TRUE(refused(10, 0.1, 20, 30));
    EXPECT_TRUE(refused(10, 90'000, 20, 30));
    EXPECT_TRUE(refused(10, 1000, 99, 30));
    EXPECT_TRUE(refused(10, 1000, 20, -4));
    EXPECT_TRUE(refused(10, 1000, 20, 9'000));
    EXPECT_FALSE(refused(10, 1000, 2, 30));
    EXPECT_FALSE(refused(5, 200, 20, 30));
}

TEST_P(PhraseBook, HasWordsForPeopleScalesAndDocuments) {
    for (const char* line :
         {"PE-HD 3-20 mm", "PE-HD 20-3 mm until 2031-06-30", "PE until 2031-06-30",
          "PE-HD 3-20 mm until tomorrow"}) {
        const auto read = readCertificate(line);
        ASSERT_FALSE(read) << line;
        expectWords(read.error().detail);
    }
    for (const char* csv :
         {"", "reading,force_N\n1,2\n", "reading;force_N\n", "reading,force_N\n1;2\n",
          "reading,force_N\n1,2,3,4\n", "reading,force_N\n1,x\n",
          "reading,force_N\n1,5\n1,6\n1,7\n", "reading,force_N\n1,9\n2,8\n3,7\n",
          "reading,force_N\n1,99999999\n"}) {
        const auto read = fitScale("points.csv", csv);
        ASSERT_FALSE(read) << csv;
        expectWords(read.error().detail);
    }
    const std::string bench = test::textOf(test::resource("demo/bench-east.json"));
    for (const auto& [was, now] : std::vector<std::pair<std::string, std::string>>{
             {"\"name\"", "\"nome\""}, {"{", ""}, {"\"unit\": \"mm\"", "\"unit\": 5"}}) {
        const auto read = readBench("bench.json", test::replaced(bench, was, now));
        ASSERT_FALSE(read) << was;
        expectWords(read.error().detail);
    }
}

TEST_P(PhraseBook, HasWordsForWhatEveryMistakeDoesToAJoint) {
    for (int i = 0; i <= static_cast<int>(Lapse::WrongUnit); ++i) {
        const auto lapse = static_cast<Lapse>(i);
        for (const char* unit : {"mm", "C", "s", "Pa"}) {
            for (const std::vector<int>& where :
                 {std::vector<int>{}, std::vector<int>{2}, std::vector<int>{0, 1, 3}}) {
                expectWords(lapseSentence({lapse, 12.34, 5.6, unit, where}));
            }
        }
        expectWords(whyItMatters(lapse));
    }
}

TEST_P(PhraseBook, HasWordsForEachLesson) {
    const auto lessons = readLessonFolder(test::resource("lessons"));
    ASSERT_TRUE(lessons) << lessons.error().detail;
    EXPECT_GE(lessons->size(), 18U);
    for (const Lesson& lesson : *lessons) {
        for (const std::string& text : {lesson.title, lesson.teaches, lesson.after}) {
            EXPECT_NE(inWords(text).toStdString(), text);
            EXPECT_TRUE(englishIn(inWords(text)).isEmpty()) << inWords(text).toStdString();
        }
    }
}

INSTANTIATE_TEST_SUITE_P(
    Languages, PhraseBook, ::testing::Values(Language::German, Language::Spanish),
    [](const auto& test) { return codeOf(test.param).toStdString(); });

TEST(PhraseBookOfCore, NoSentenceFitsTwoTemplatesEquallyWell) {
    for (const QString& line : phrasesOfCore()) {
        const auto fits = phrasesThatFit(filledIn(line).english);
        ASSERT_FALSE(fits.empty()) << line.toStdString();
        EXPECT_EQ(fits[0].phrase.toStdString(), line.toStdString());
        if (fits.size() > 1) {
            EXPECT_LT(fits[1].weight, fits[0].weight) << line.toStdString() << "\n"
                                                      << fits[1].phrase.toStdString();
        }
    }
}

TEST(PhraseBookOfCore, LeavesEnglishAsItIs) {
    speak(Language::English);
    EXPECT_EQ(inWords(std::string_view("a sum of -3.5 mm")), "a sum of -3.5 mm");
    EXPECT_EQ(sentenceOf("the PIN is wrong"), "The PIN is wrong.");
    EXPECT_EQ(sentenceOf(""), "");
    EXPECT_EQ(wordOf("no_such_code"), "no such code");
}

TEST(PhraseBookOfCore, ChangesItsLanguageWhileItRuns) {
    const std::string_view english = "the PIN is wrong";
    speak(Language::German);
    const QString german = inWords(english);
    speak(Language::Spanish);
    const QString spanish = inWords(english);
    speak(Language::English);
    EXPECT_EQ(std::set<QString>({german, spanish, inWords(english)}).size(), 3U);
    EXPECT_EQ(inWords(english), "the PIN is wrong");
}

} // namespace
} // namespace seamclock
