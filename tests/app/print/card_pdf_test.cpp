// The page as others see it: its text by pdftotext, its size and pages by pdfinfo, its ink by
// pdftoppm (poppler's programs, which know nothing of this one).
#include "app/print/card_pdf.h"
#include "app/print/page_layout.h"
#include "tests/app/print/longer_words.h"
#include "tests/support/materials.h"
#include "tests/support/scratch_folder.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QLocale>
#include <QProcess>
#include <QRegularExpression>
#include <csignal>
#include <gtest/gtest.h>
#include <map>
#include <sys/resource.h>

namespace seamclock {
namespace {

constexpr double kMarginMm = 12;

QByteArray outputOf(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(60'000)) << program.toStdString() << " (poppler-utils)";
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput();
}

/// One blank for every run of blanks and line ends, so that wrapped text reads on.
QString plain(QString text) {
    return text.replace(QRegularExpression("\\s+"), " ");
}

class Page {
public:
    explicit Page(const CardSheet& sheet, Paper paper = Paper::A4) {
        m_file = QString::fromStdString(m_folder.file("card.pdf"));
        const auto written = writeCardPdf(sheet, paper, m_file);
        EXPECT_TRUE(written) << written.error().detail;
    }

    QString text() const { return plain(QString::fromUtf8(outputOf("pdftotext", {m_file, "-"}))); }
    QString info() const { return QString::fromUtf8(outputOf("pdfinfo", {m_file})); }

    struct Word {
        QRectF box; // points
        QString text;
    };
    std::vector<Word> words() const {
        const QString xml = QString::fromUtf8(outputOf("pdftotext", {"-bbox", m_file, "-"}));
        static const QRegularExpression kWord(
            "<word xMin=\"([0-9.-]+)\" yMin=\"([0-9.-]+)\" xMax=\"([0-9.-]+)\" yMax=\"([0-9.-]+)\">"
            "(.*?)</word>");
        std::vector<Word> words;
        for (auto at = kWord.globalMatch(xml); at.hasNext();) {
            const auto word = at.next();
            words.push_back(
                {QRectF(
                     QPointF(word.captured(1).toDouble(), word.captured(2).toDouble()),
                     QPointF(word.captured(3).toDouble(), word.captured(4).toDouble())),
                 word.captured(5)});
        }
        return words;
    }

    QImage ink() const {
        const QString stem = QString::fromStdString(m_folder.file("page"));
        outputOf("pdftoppm", {"-r", "100", "-gray", "-singlefile", m_file, stem});
        return QImage(stem + ".pgm").convertToFormat(QImage::Format_Grayscale8);
    }

private:
    test::ScratchFolder m_folder;
    QString m_file;
};

WeldPlan planOf(const char* procedure, double thickness, double length, const Bench* bench) {
    PlanRequest request;
    request.thickness = millimetres(thickness);
    request.lengths = {millimetres(length)};
    request.drag = newtons(70);
    const auto plan = makePlan(request, test::shippedProcedure(procedure), bench);
    EXPECT_TRUE(plan.has_value()) << plan.error().detail;
    return plan.value_or(WeldPlan{});
}

/// What the plan will do; null where nothing can be estimated.
std::optional<HeatEstimate> heatOf(const WeldPlan& plan, const Bench& bench) {
    const auto course = courseOf(plan, &bench);
    auto heat =
        course ? estimateHeat(*course, test::materials()) : tl::unexpected<Error>(course.error());
    return heat ? std::optional(std::move(*heat)) : std::nullopt;
}

CardWork demoWork() {
    CardWork work;
    work.bench = "A, West bench, two springs";
    work.seam = "Seam S2, wall panel 1 to 2";
    work.printed = "2030-01-07 07:00";
    Sheet sheet;
    sheet.material = "PE-HD";
    sheet.grade = "VP 8 black";
    sheet.maker = "Velmorra Sheet";
    sheet.batch = "VP-40688";
    work.sheets = {sheet, sheet};
    return work;
}

/// Long in every text that others write, with many warnings.
CardSheet wordySheet(UnitSystem units) {
    const Bench west = test::demoBench("west");
    WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 8, 1380, &west);
    const QString name(40, 'W'); // the widest letter there is, and no blank to wrap at
    plan.procedure = "a-shops-own-procedure-with-a-long-name-1";
    plan.edition = std::string(40, 'w');
    for (int i = 0; i < 14; ++i) {
        plan.warnings.push_back(
            {"a_shops_own_" + std::to_string(i),
             "A warning with a number, " + std::to_string(1000 + i) +
                 ".5 N, that goes on for some time and says at length what is to be done about it.",
             {},
             {},
             ""});
    }
    for (int i = 0; i < 10; ++i) {
        std::string source;
        while (source.size() < 220) {
            source += "handbook of a sheet maker, edition " + std::to_string(2000 + i) + ", ";
        }
        plan.sources.push_back({"value_" + std::to_string(i), {source, Standing::Memory}});
    }
    CardWork work;
    work.bench = "A, " + name;
    work.seam = "Seam " + name + ", " + name;
    work.printed = "2030-01-07 07:00";
    Sheet sheet;
    sheet.material = std::string(40, 'M');
    sheet.grade = std::string(40, 'G');
    sheet.maker = std::string(40, 'Q');
    sheet.batch = std::string(40, '8');
    work.sheets = {sheet, sheet};
    const auto heat = heatOf(planOf("pe-hd-dvs2207-1-2005", 8, 1380, &west), west);
    EXPECT_TRUE(heat);
    return cardSheet(plan, &west, work, units, heat ? &*heat : nullptr);
}

QStringList numbersIn(const QString& text) {
    static const QRegularExpression kNumber("[0-9]+(?:[.:][0-9]+)*");
    QStringList numbers;
    for (auto at = kNumber.globalMatch(text); at.hasNext();) {
        numbers << at.next().captured();
    }
    return numbers;
}

QString allTextOf(const CardSheet& sheet) {
    QStringList all{sheet.title, sheet.seam, sheet.sheet, sheet.printed, sheet.card.notReady};
    for (const CardColumn& column : sheet.card.columns) {
        all << column.big << column.under << column.times << column.scale << column.band
            << column.foot;
    }
    for (const CardSum& sum : sheet.card.sums) {
        all << sum.force << sum.reading;
    }
    for (const CardSheet::Fact& fact : sheet.facts) {
        all << fact.name << fact.text;
    }
    all << sheet.sheets << sheet.card.warnings << sheet.estimates << sheet.sources
        << sheet.cautions;
    return all.join(" ");
}

void expectEveryNumber(const CardSheet& sheet, const QString& page) {
    std::map<QString, int> there;
    for (const QString& number : numbersIn(page)) {
        ++there[number];
    }
    for (const QString& number : numbersIn(allTextOf(sheet))) {
        EXPECT_GE(there[number]--, 1) << number.toStdString() << " is not on the page";
    }
}

/// No ink outside the margins, and no word on another.
void expectTidy(const Page& page) {
    const QImage ink = page.ink();
    ASSERT_FALSE(ink.isNull());
    const double mm = ink.width() / (ink.width() > 845 ? 215.9 : 210.0);
    const int margin = static_cast<int>(kMarginMm * mm) - 1; // a pixel is smoothed over the edge
    int outside = 0;
    int inside = 0;
    for (int y = 0; y < ink.height(); ++y) {
        for (int x = 0; x < ink.width(); ++x) {
            if (ink.constScanLine(y)[x] > 250) {
                continue;
            }
            const bool within =
                x >= margin && x < ink.width() - margin && y >= margin && y < ink.height() - margin;
            ++(within ? inside : outside);
        }
    }
    EXPECT_EQ(outside, 0) << "pixels of ink in the margin";
    EXPECT_GT(inside, 5'000) << "the page is not empty";
    const auto words = page.words();
    ASSERT_GT(words.size(), 100U);
    for (std::size_t i = 0; i < words.size(); ++i) {
        for (std::size_t j = i + 1; j < words.size(); ++j) {
            const QRectF over = words[i].box.intersected(words[j].box);
            // Boxes hold the font's whole ascent and descent, so lines may touch.
            const double lower = std::min(words[i].box.height(), words[j].box.height());
            EXPECT_FALSE(over.width() > 0.7 && over.height() > 0.35 * lower)
                << words[i].text.toStdString() << " lies on " << words[j].text.toStdString();
        }
    }
}

TEST(CardPdf, IsOnePageOfItsPaper) {
    const Bench west = test::demoBench("west");
    const WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 8, 1380, &west);
    const CardSheet sheet = cardSheet(plan, &west, demoWork(), UnitSystem::Metric);
    for (const auto& [paper, size] :
         {std::pair{Paper::A4, "595 x 842 pts \\(A4\\)"},
          std::pair{Paper::Letter, "612 x 792 pts \\(letter\\)"}}) {
        const Page page(sheet, paper);
        EXPECT_TRUE(page.info().contains(QRegularExpression("Pages: +1\n")));
        EXPECT_TRUE(page.info().contains(QRegularExpression(QString("Page size: +") + size)))
            << page.info().toStdString();
        expectTidy(page);
    }
}

// Written again from the plan's integers and not with the program's own texts.
TEST(CardPdf, HoldsEveryNumberOfThePlan) {
    const Bench west = test::demoBench("west");
    const WeldPlan plan = planOf("pe-hd-dvs2207-1-2005", 8, 1380, &west);
    const QString text = Page(cardSheet(plan, &west, demoWork(), UnitSystem::Metric)).text();
    const auto number = [](std::int64_t value, double per, int decimals) {
        return QString::number(static_cast<double>(value) / per, 'f', decimals);
    };
    const auto minutes = [](Milliseconds time) {
        const auto s = time.count() / 1000;
        return QString("%1:%2").arg(s / 60).arg(s % 60, 2, 10, QLatin1Char('0'));
    };
    ASSERT_TRUE(
        plan.scale && plan.plate && plan.soak && plan.buildUp && plan.cooling &&
        plan.changeoverMax && plan.beadMinUm && plan.tolerancePa && plan.joiningPa);
    QStringList wanted{
        number(plan.thicknessUm, 1e3, 0) + " mm",
        number(plan.lengthUm, 1e3, 0) + " mm",
        number(plan.ambientMc, 1e3, 0) + " °C",
        number(plan.dragMn, 1e3, 0) + " N",
        number(plan.gapUm, 1e3, 0) + " mm",
        number(plan.clampingGapUm, 1e3, 0) + " mm",
        number(plan.edgeGapMaxUm, 1e3, 1) + " mm",
        number(plan.misalignmentMaxUm, 1e3, 1) + " mm",
        number(*plan.tolerancePa, 1e6, 2) + " N/mm²",
        number(*plan.joiningPa, 1e6, 2) + " N/mm²",
        number(*plan.soakMaxPa, 1e6, 2) + " N/mm²",
        number(*plan.soakAimPa, 1e6, 2) + " N/mm²",
        number(*plan.joiningMn, 1e3, 0) + " N",
        number(*plan.soakMaxMn, 1e3, 1) + " N",
        number(plan.plate->targetMc, 1e3, 0) + " °C",
        number(plan.plate->minMc, 1e3, 0) + " to " + number(plan.plate->maxMc, 1e3, 0),
        number(*plan.beadMinUm, 1e3, 1) + " mm",
        minutes(plan.soak->low) + " to " + minutes(plan.soak->high),
        minutes(plan.soak->target),
        number(plan.changeoverMax->count() / 100, 10, 1) + " s",
        number(plan.buildUp->target.count() / 100, 10, 1) + " s",
        number(plan.buildUp->low.count() / 100, 10, 1) + " to " +
            number(plan.buildUp->high.count() / 100, 10, 1) + " s",
        minutes(plan.cooling->atLeast),
        "read at " + minutes(plan.cooling->rechecks.at(0)) + ", " +
            minutes(plan.cooling->rechecks.at(1))};
    for (const ReadingBand& band : {plan.scale->alignment, plan.scale->soak, plan.scale->joining}) {
        wanted << number(band.setMilli, 1e3, 1);
        // A band is shown no wider than it is.
        wanted << number((band.lowMilli + 99) / 100, 10, 1) + " to " +
                      number(band.highMilli / 100, 10, 1);
    }
    for (const QString& each : wanted) {
        EXPECT_TRUE(text.contains(each))
            << each.toStdString() << " is not in: " << text.toStdString();
    }
    for (const PlanSource& source : plan.sources) {
        EXPECT_TRUE(text.contains(plain(QString::fromStdString(source.source.text))))
            << source.source.text;
    }
    EXPECT_TRUE(text.contains("from memory: not attested"));
    EXPECT_TRUE(text.contains("Seam S2, wall panel 1 to 2"));
    EXPECT_TRUE(text.contains("qualified welder decide"));
    EXPECT_TRUE(text.contains("batch VP-40688"));
}

TEST(CardPdf, HoldsEveryNumberInEitherSystemForEveryProcedure) {
    const Bench west = test::demoBench("west");
    for (const char* procedure :
         {"pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015", "pp-dvs2207-11", "pvdf-dvs2207-15"}) {
        for (const UnitSystem units : {UnitSystem::Metric, UnitSystem::Imperial}) {
            const WeldPlan plan = planOf(procedure, 12, 860, &west);
            const auto heat = heatOf(plan, west);
            ASSERT_TRUE(heat) << procedure;
            const CardSheet sheet = cardSheet(plan, &west, demoWork(), units, &*heat);
            EXPECT_EQ(sheet.estimates.size(), 4);
            const Page page(sheet, units == UnitSystem::Metric ? Paper::A4 : Paper::Letter);
            const QString text = page.text();
            expectEveryNumber(sheet, text);
            expectTidy(page);
            EXPECT_EQ(text.contains("psi"), units == UnitSystem::Imperial);
            EXPECT_EQ(text.contains("°F"), units == UnitSystem::Imperial);
        }
    }
}

TEST(CardPdf, WithLongNamesSourcesAndManyWarningsIsStillOnePage) {
    for (const bool longer : {false, true}) {
        std::optional<test::LongerWords> words;
        if (longer) {
            words.emplace();
        }
        for (const UnitSystem units : {UnitSystem::Metric, UnitSystem::Imperial}) {
            const CardSheet sheet = wordySheet(units);
            for (const Paper paper : {Paper::A4, Paper::Letter}) {
                const Page page(sheet, paper);
                EXPECT_TRUE(page.info().contains(QRegularExpression("Pages: +1\n")));
                expectTidy(page);
                // A batch of forty digits may be broken over lines, so it is left out here.
                CardSheet numbers = sheet;
                numbers.sheets.clear();
                expectEveryNumber(numbers, page.text());
            }
        }
    }
}

TEST(CardPdf, SaysThatItIsNotReadyAndWhatIsMissing) {
    const WeldPlan plan = planOf("pe-hd-dvs2207-1-2015", 55, 1000, nullptr);
    ASSERT_FALSE(plan.isComplete());
    const Page page(cardSheet(plan, nullptr, {}, UnitSystem::Metric));
    EXPECT_TRUE(page.text().contains("Not ready to weld. The procedure lacks: ")) << plan.bench;
    EXPECT_FALSE(page.text().contains("÷"));
    expectTidy(page);
}

TEST(CardPdf, SpeaksTheLanguagesDecimals) {
    QLocale::setDefault(QLocale(QLocale::German));
    const Bench west = test::demoBench("west");
    const CardSheet sheet = cardSheet(
        planOf("pe-hd-dvs2207-1-2005", 8, 1380, &west), &west, demoWork(), UnitSystem::Imperial);
    QLocale::setDefault(QLocale::c());
    const QString text = Page(sheet).text();
    EXPECT_TRUE(text.contains("0,315 in")) << text.toStdString();
    EXPECT_FALSE(text.contains("0.315 in"));
}

TEST(CardPdf, MoreThanAPageHoldsIsRefusedInOneSentence) {
    CardSheet sheet = wordySheet(UnitSystem::Metric);
    for (int i = 0; i < 200; ++i) {
        sheet.sources << QString(300, 'x');
    }
    const auto pdf = cardPdf(sheet, Paper::A4);
    ASSERT_FALSE(pdf);
    EXPECT_EQ(pdf.error().code, ErrorCode::OutOfRange);
    EXPECT_NE(pdf.error().detail.find("allowed: one page"), std::string::npos);
}

TEST(CardPdf, IsSavedUnderANameThatIsFree) {
    const test::ScratchFolder folder;
    const Bench west = test::demoBench("west");
    const CardSheet sheet = cardSheet(
        planOf("pe-hd-dvs2207-1-2005", 8, 1380, &west), &west, demoWork(), UnitSystem::Metric);
    const QString below = QString::fromStdString(folder.path()) + "/cards/of the day";
    const auto first = saveCardPdf(sheet, Paper::A4, below, "card");
    const auto second = saveCardPdf(sheet, Paper::A4, below, "card");
    ASSERT_TRUE(first) << first.error().detail;
    ASSERT_TRUE(second) << second.error().detail;
    EXPECT_TRUE(first->endsWith("/card.pdf"));
    EXPECT_TRUE(second->endsWith("/card-2.pdf"));
    EXPECT_EQ(QDir(below).entryList(QDir::Files).size(), 2);
}

TEST(CardPdf, AFolderThatCantBeWrittenIsToldInOneSentence) {
    const test::ScratchFolder folder;
    const QString file = QString::fromStdString(folder.file("a file"));
    ASSERT_TRUE(QFile(file).open(QIODevice::WriteOnly));
    const CardSheet sheet = wordySheet(UnitSystem::Metric);
    const auto saved = saveCardPdf(sheet, Paper::A4, file + "/below it", "card");
    ASSERT_FALSE(saved);
    EXPECT_EQ(saved.error().code, ErrorCode::NotWritten);
    EXPECT_NE(saved.error().detail.find("below it"), std::string::npos) << saved.error().detail;
    const auto written = writeCardPdf(sheet, Paper::A4, file + "/card.pdf");
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::NotWritten);
    EXPECT_NE(written.error().detail.find("card.pdf"), std::string::npos);
}

/// No file may grow past that while it lives: what a full disk does to a write.
class FullDisk {
public:
    explicit FullDisk(rlim_t bytes) {
        getrlimit(RLIMIT_FSIZE, &m_before);
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        rlimit limit = m_before;
        limit.rlim_cur = bytes;
        setrlimit(RLIMIT_FSIZE, &limit);
    }
    ~FullDisk() {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }

private:
    rlimit m_before{};
    void (*m_handler)(int) = nullptr;
};

TEST(CardPdf, ADiskThatFillsUpLeavesTheOldCardAndNoHalfOne) {
    const test::ScratchFolder folder;
    const QString file = QString::fromStdString(folder.file("card.pdf"));
    {
        QFile old(file);
        ASSERT_TRUE(old.open(QIODevice::WriteOnly));
        old.write("the old card");
    }
    const Bench west = test::demoBench("west");
    const CardSheet sheet = cardSheet(
        planOf("pe-hd-dvs2207-1-2005", 8, 1380, &west), &west, demoWork(), UnitSystem::Metric);
    Result<void> written;
    {
        const FullDisk full(4'096);
        written = writeCardPdf(sheet, Paper::A4, file);
    }
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().code, ErrorCode::NotWritten);
    EXPECT_NE(written.error().detail.find(file.toStdString()), std::string::npos);
    QFile now(file);
    ASSERT_TRUE(now.open(QIODevice::ReadOnly));
    EXPECT_EQ(now.readAll(), "the old card");
    EXPECT_EQ(QDir(QString::fromStdString(folder.path())).entryList(QDir::Files).size(), 1);
}

} // namespace
} // namespace seamclock
