// A first start by the presses that a person makes: it leads to a weld card in less than two
// minutes' worth of them, what was kept stays wherever it is broken off, what is left for later
// means what the page says, and what is typed wrong is told with its range.
#include "app/operate/window.h"
#include "core/log/log_reader.h"
#include "core/log/roster.h"
#include "core/log/shelf.h"
#include "core/log/verify.h"
#include "core/practice/demo_folder.h"
#include "tests/app/first/first_rig.h"

#include <QSignalSpy>
#include <algorithm>
#include <filesystem>

namespace seamclock::test {
namespace {

// A press a second: slower than a hand that knows the page, quicker than one that reads each twice
// [practice: no source].
constexpr int kTwoMinutes = 120;

void expectSound(const FirstRig& rig) {
    const auto sound = verifyLog(rig.log());
    ASSERT_TRUE(sound) << sound.error().detail;
    EXPECT_TRUE(sound->ok) << (sound->finding ? sound->finding->reason : "");
}

QString textOf(const FirstRig&, const ChoicePage* page, int choice) {
    return page->view().choices.at(static_cast<std::size_t>(choice)).text;
}

TEST(FirstStart, LeadsToAWeldCardInTwoMinutes) {
    FirstRig rig;
    EXPECT_TRUE(needsFirstSteps(rig.floor(), rig.settings()));
    FirstWalk walk(rig.window(), rig.desk());
    const auto walked = walk.all();
    ASSERT_TRUE(walked) << walked.error().detail;
    EXPECT_EQ(rig.finished, 1);
    EXPECT_TRUE(rig.card);
    EXPECT_FALSE(needsFirstSteps(rig.floor(), rig.settings()));
    // The weld's own pages come then, as main.cpp joins them: a seam is typed in.
    int presses = walk.presses();
    Preferences preferences = readPreferences(rig.settings());
    preferences.dpi = kUnitsPerInch;
    Window window(
        WindowParts{rig.floor(), rig.writer(), rig.desk(), {}, preferences, rig.settings()});
    window.resize(1280, 800);
    window.QWidget::show();
    window.openEntry();
    const auto tile = [&](const char* name) {
        ++presses;
        auto* button = window.currentPage()->findChild<SlotButton*>(name);
        ASSERT_NE(button, nullptr) << name;
        emit button->pressed();
    };
    const auto number = [&](const QString& digits) {
        for (const QChar digit : digits) {
            ++presses;
            window.padPage()->pad()->type(digit);
        }
        ++presses;
        emit window.currentPage()->slotPressed(SlotPlace::Step);
    };
    // Who is at the bench is asked first.
    ASSERT_EQ(window.page(), PageKind::People);
    ++presses;
    emit window.people()->choicePage()->chosen(1);
    walk.settle();
    for (const char digit : {'5', '0', '8', '3'}) {
        ++presses;
        window.people()->typed(QLatin1Char(digit));
    }
    ++presses;
    emit window.currentPage()->slotPressed(SlotPlace::Step);
    walk.settle();
    EXPECT_EQ(window.people()->atBench(), "person:ilva-borrick");
    ASSERT_EQ(window.page(), PageKind::Entry);
    tile("entryProcedure");
    ++presses;
    emit window.choicePage()->chosen(0);
    tile("entryThickness");
    number("10");
    tile("entryLength");
    number("1200");
    ++presses;
    emit window.currentPage()->slotPressed(SlotPlace::Step);
    EXPECT_EQ(window.page(), PageKind::Card);
    RecordProperty("presses", presses);
    RecordProperty("letters", walk.letters());
    std::printf(
        "first start: %d presses to the shop, %d to its first weld card, and %d letters of three "
        "names\n",
        walk.presses(), presses, walk.letters());
    EXPECT_LE(presses + walk.letters(), kTwoMinutes + 30) << "names are typed quicker than read";
    EXPECT_LE(presses, kTwoMinutes);
}

TEST(FirstStart, KeepsEverythingWhereItBelongs) {
    FirstRig rig;
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.all());
    ASSERT_TRUE(rig.writer().flush());
    auto reader = LogReader::open(rig.log());
    ASSERT_TRUE(reader);
    const auto roster = readRoster(*reader);
    ASSERT_TRUE(roster);
    ASSERT_EQ(roster->people.size(), 2U);
    EXPECT_EQ(roster->people[0].name, "Oddo Quenley");
    EXPECT_EQ(roster->people[0].role, Role::Foreman);
    EXPECT_EQ(roster->people[1].name, "Ilva Borrick");
    EXPECT_EQ(roster->people[1].role, Role::Operator);
    const auto shelf = readShelf(*reader);
    ASSERT_TRUE(shelf);
    EXPECT_EQ(shelf->benches.count("bench-1"), 1U);
    EXPECT_EQ(readPreferences(rig.settings()).shop, "Quillmere Vat Works");
    EXPECT_EQ(readAnswers(rig.settings()), BenchAnswers()) << "the bench is told no more";
    expectSound(rig);
    // Both PINs open what they are for.
    bool foreman = false;
    bool welder = false;
    const auto enter = [&](const char* who, const char* digits, bool& in) {
        auto pin = Pin::read(digits);
        ASSERT_TRUE(pin);
        rig.desk().enter(
            &rig.window(), who, std::make_shared<const Pin>(std::move(*pin)),
            [&in](const Entry& entry) { in = entry.access != nullptr; });
        walk.settle();
    };
    enter("person:oddo-quenley", FirstWalk::kForemansPin, foreman);
    enter("person:ilva-borrick", "5083", welder);
    EXPECT_TRUE(foreman);
    EXPECT_TRUE(welder);
}

/// Answers whatever page stands, as it may: the least number that is allowed, the first answer.
/// False: nothing moves any more.
bool answerPage(FirstRig& rig, FirstWalk& walk) {
    FirstWindow& window = rig.window();
    Page* page = window.currentPage();
    if (page == window.people()->namePage()) {
        const bool first = window.state().foreman.isEmpty();
        return walk.name(first ? "Oddo Quenley" : "Ilva Borrick").has_value();
    }
    if (page == window.people()->pinPage()) {
        const bool welder = window.people()->pinPage()->view().title.contains("Ilva") ||
                            window.people()->pinPage()->view().where.contains("Ilva");
        return walk.pin(welder ? "5083" : FirstWalk::kForemansPin).has_value();
    }
    if (page == window.namePage()) {
        const bool bench = !window.namePage()->name().isEmpty();
        return (bench ? walk.press(SlotPlace::Step) : walk.name("Quillmere Vat Works")).has_value();
    }
    if (page == window.padPage()) {
        const NumberTask& task = window.padPage()->task();
        return walk.number(QString::number(task.least, 'g', 6)).has_value();
    }
    const SlotView::Look step = page->stepView().look;
    if (step != SlotView::Look::Hidden && step != SlotView::Look::Gone) {
        return walk.press(SlotPlace::Step).has_value();
    }
    return walk.choose(0).has_value();
}

/// To the end, as far as `most` pages.
int answerPages(FirstRig& rig, int most) {
    FirstWalk walk(rig.window(), rig.desk());
    int pages = 0;
    while (pages < most && rig.finished == 0 && answerPage(rig, walk)) {
        ++pages;
    }
    return pages;
}

class BrokenOff : public ::testing::TestWithParam<int> {};

TEST_P(BrokenOff, AfterSoManyPagesLosesNothingAndGoesOn) {
    FirstRig rig;
    ASSERT_EQ(answerPages(rig, GetParam()), GetParam());
    const FirstState before = rig.window().state();
    const BenchAnswers told = rig.window().answers();
    rig.again();
    EXPECT_EQ(rig.window().state(), before);
    EXPECT_EQ(rig.window().answers(), told);
    const auto next = nextStep(before);
    if (before.begun && next == FirstStep::Shop) {
        EXPECT_EQ(rig.window().currentPage(), rig.window().namePage());
    } else if (before.begun && next == FirstStep::Foreman) {
        EXPECT_EQ(rig.window().currentPage(), rig.window().people()->namePage());
    } else if (next == FirstStep::Bench && told != BenchAnswers()) {
        EXPECT_EQ(rig.window().currentPage(), rig.window().choicePage()) << "what was told";
        EXPECT_TRUE(rig.window().choicePage()->view().title.contains(told.name));
    }
    answerPages(rig, 80);
    EXPECT_EQ(rig.finished, 1);
    const FirstState after = rig.window().state();
    for (const FirstStep step : kFirstSteps) {
        EXPECT_TRUE(isKept(after, step));
    }
    ASSERT_TRUE(rig.writer().flush());
    expectSound(rig);
    // Nobody and nothing is there twice.
    EXPECT_EQ(rig.desk().people().people.size(), 2U);
    EXPECT_EQ(rig.floor().benches().size(), 1U);
}

// A page each: language, what it is, shop, foreman and his PIN twice, the bench's eleven and its
// release in three, its summary, the operator with PIN.
INSTANTIATE_TEST_SUITE_P(
    Pages, BrokenOff, ::testing::Values(0, 1, 2, 3, 5, 6, 8, 10, 12, 15, 17, 19, 20, 21, 23),
    [](const auto& test) { return "After" + std::to_string(test.param); });

TEST(FirstStart, LeavesForLaterWhatItIsAskedToAndComesBackToIt) {
    FirstRig rig;
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.nothing());
    EXPECT_EQ(rig.finished, 0);
    EXPECT_TRUE(needsFirstSteps(rig.floor(), rig.settings())) << "no bench, no weld card";
    const ChoiceView& page = rig.window().choicePage()->view();
    EXPECT_TRUE(page.title.contains("no bench")) << page.title.toStdString();
    rig.again();
    ASSERT_EQ(rig.window().currentPage(), rig.window().choicePage());
    EXPECT_TRUE(rig.window().choicePage()->view().title.contains("no bench"))
        << "what was left for later is not asked again by itself";
    FirstWalk later(rig.window(), rig.desk());
    ASSERT_TRUE(later.press(SlotPlace::Step)); // the bench
    EXPECT_EQ(textOf(rig, rig.window().choicePage(), 0), "Enter the foreman")
        << "who keeps it comes first";
    ASSERT_TRUE(later.choose(0));
    ASSERT_TRUE(later.name("Oddo Quenley"));
    ASSERT_TRUE(later.pin(FirstWalk::kForemansPin));
    ASSERT_TRUE(later.pin(FirstWalk::kForemansPin));
    ASSERT_TRUE(later.press(SlotPlace::Step));
    ASSERT_TRUE(later.bench(false));
    ASSERT_TRUE(later.press(SlotPlace::Step));
    EXPECT_EQ(rig.floor().benches().size(), 1U);
    EXPECT_TRUE(rig.window().choicePage()->view().title.contains("weld card"));
    ASSERT_TRUE(later.press(SlotPlace::Step));
    EXPECT_EQ(rig.finished, 1);
}

TEST(FirstStart, TellsWhatIsTypedWrongWithItsRangeAndKeepsNothingOfIt) {
    FirstRig rig;
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(walk.name("  "));
    EXPECT_TRUE(rig.window().said().contains("allowed: 1 to 60")) << "a shop without a name";
    ASSERT_TRUE(walk.name("Quillmere Vat Works"));
    ASSERT_TRUE(walk.name(""));
    EXPECT_TRUE(rig.window().said().contains("1 to 40")) << rig.window().said().toStdString();
    ASSERT_TRUE(walk.name("Oddo Quenley"));
    ASSERT_TRUE(walk.pin("123"));
    EXPECT_EQ(rig.window().people()->pinPage()->view().digits, 3) << "too short: it stands";
    for (const char digit : {'4', '5', '6'}) {
        rig.window().people()->typed(QLatin1Char(digit));
    }
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(walk.pin("123456"));
    ASSERT_TRUE(walk.press(SlotPlace::Step)); // the bench's name
    PadPage* pad = rig.window().padPage();
    for (const char* wrong : {"900000", "9"}) {
        pad->ask(NumberTask(pad->task()));
        ASSERT_TRUE(walk.number(wrong));
        EXPECT_EQ(rig.window().currentPage(), pad) << wrong;
        const QString sentence = pad->now().sentence;
        EXPECT_TRUE(sentence.startsWith(QString(wrong) + " mm")) << sentence.toStdString();
        EXPECT_TRUE(sentence.contains("10 to")) << sentence.toStdString();
        EXPECT_FALSE(rig.window().answers().longestMm);
    }
    pad->ask(NumberTask(pad->task()));
    ASSERT_TRUE(walk.number("2600"));
    ASSERT_TRUE(walk.number("12"));
    ASSERT_TRUE(walk.number("8")); // thicker than the thinnest
    EXPECT_EQ(rig.window().currentPage(), pad);
    EXPECT_TRUE(pad->now().sentence.contains("12 to 300")) << pad->now().sentence.toStdString();
}

TEST(FirstStart, AnAnswerIsGivenAnewByATouch) {
    FirstRig rig;
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.people());
    ASSERT_TRUE(walk.bench(false));
    ASSERT_TRUE(walk.choose(1)); // the longest seam
    ASSERT_TRUE(walk.number("1500"));
    EXPECT_EQ(rig.window().currentPage(), rig.window().choicePage()) << "all else is known";
    ASSERT_TRUE(walk.choose(5)); // the division
    ASSERT_TRUE(walk.choose(3)); // 1 mm
    ASSERT_EQ(rig.window().currentPage(), rig.window().padPage())
        << "the reading without force hangs on it";
    ASSERT_TRUE(walk.number("2"));
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_EQ(rig.floor().benches().size(), 1U);
    const Bench bench = rig.floor().benches().front().bench;
    EXPECT_EQ(bench.longestSeam, millimetres(1500));
    EXPECT_EQ(bench.scale.divisionMilli, 1000);
    EXPECT_EQ(bench.scale.zeroMilli, 2000);
}

// The form is Set-up's; its points are the demo's calibration.
TEST(FirstStart, ABenchIsCalibratedInSetUpAndKeptInTheForemansName) {
    FirstRig rig;
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.people());
    ASSERT_TRUE(walk.bench(true));
    ASSERT_TRUE(walk.press(SlotPlace::Step)); // calibrate it
    FormPage* form = rig.window().setup()->formPage();
    ASSERT_EQ(rig.window().currentPage(), form);
    const auto type = [&](const std::string& pointer, const QString& text) {
        FormCell* cell = form->cellOf(pointer);
        ASSERT_NE(cell, nullptr) << pointer;
        cell->type(text);
    };
    type("/calibration/done_on", "2030-01-07");
    type("/calibration/due_on", "2031-01-07");
    type("/calibration/load_cell", "the shop's own, 5 kN");
    const double force[] = {500, 1'250, 2'000};
    for (int i = 0; i < 3; ++i) {
        const std::string item = "/calibration/points/" + std::to_string(i);
        type(item + "/reading", QString::number(8 + 12 * i));
        type(item + "/force_N", QString::number(force[i]));
    }
    ASSERT_TRUE(walk.press(SlotPlace::Step)); // to the overview
    ASSERT_EQ(rig.window().currentPage(), rig.window().setup()->listPage());
    ASSERT_TRUE(walk.press(SlotPlace::Step)); // keep it: the foreman has just proved himself
    walk.settle();
    ASSERT_EQ(rig.floor().benches().size(), 1U);
    const Bench bench = rig.floor().benches().front().bench;
    ASSERT_TRUE(bench.calibration);
    EXPECT_EQ(bench.calibration->points.size(), 3U);
    // (8, 500), (20, 1250), (32, 2000): a line of 62.5 N for each mm through zero.
    EXPECT_NEAR(inNewtons(bench.scale.rate()), 62.5, 1e-9);
    EXPECT_EQ(bench.scale.zeroMilli, 0);
    EXPECT_EQ(rig.window().currentPage(), rig.window().people()->namePage()) << "who welds is next";
    EXPECT_EQ(rig.window().answers(), BenchAnswers());
}

TEST(FirstStart, AForemansProofGoesAfterTwoMinutes) {
    FirstRig rig;
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.people());
    ASSERT_TRUE(walk.bench(false));
    rig.clock().advance(kDeskStaysOpen);
    rig.window().refresh();
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_EQ(rig.window().currentPage(), rig.window().people()->pinPage());
    EXPECT_TRUE(rig.floor().benches().empty());
    ASSERT_TRUE(walk.press(SlotPlace::Stop)); // not now
    EXPECT_EQ(rig.window().currentPage(), rig.window().choicePage()) << "and nothing is lost";
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(walk.pin(FirstWalk::kForemansPin));
    walk.settle();
    EXPECT_EQ(rig.floor().benches().size(), 1U);
}

TEST(FirstStart, LanguageAndUnitsHoldAtOnce) {
    FirstRig rig;
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.choose(1));
    EXPECT_EQ(spoken(), Language::German);
    EXPECT_EQ(rig.window().choicePage()->view().title, "Sprache und Einheiten");
    ASSERT_TRUE(walk.choose(4));
    const Preferences kept = readPreferences(rig.settings());
    EXPECT_EQ(kept.language, Language::German);
    EXPECT_EQ(kept.units, UnitSystem::Imperial);
    rig.again();
    EXPECT_EQ(rig.window().choicePage()->view().title, "Sprache und Einheiten");
    speak(Language::English);
}

TEST(FirstStart, SaysOnceWhoDecides) {
    FirstRig rig;
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    const ChoiceView page = rig.window().choicePage()->view();
    EXPECT_TRUE(page.title.contains("guides"));
    for (const char* who :
         {"machine's own instructions", "standard in force", "local rules", "qualified welder"}) {
        EXPECT_TRUE(page.under.contains(who)) << who;
    }
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    rig.again();
    EXPECT_EQ(rig.window().currentPage(), rig.window().namePage()) << "told once";
}

TEST(FirstStart, MakesTheDemoShopOnceAndTakesItAwayInOneStep) {
    FirstRig rig;
    int made = 0;
    rig.makeDemo = [&]() -> Result<void> {
        ++made;
        DemoOrder order;
        order.folder = rig.demoFolder();
        order.source = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo";
        order.procedures = rig.procedures();
        order.days = 1;
        return makeDemoShop(order);
    };
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(walk.choose(0));
    EXPECT_EQ(rig.demos, 1);
    EXPECT_EQ(lookAtDemo(rig.demoFolder()), DemoFolder::Whole);
    rig.again();
    FirstWalk back(rig.window(), rig.desk());
    ASSERT_TRUE(back.choose(0));
    EXPECT_EQ(rig.demos, 2);
    EXPECT_EQ(made, 1) << "it is there";
    rig.again();
    FirstWalk then(rig.window(), rig.desk());
    EXPECT_EQ(textOf(rig, rig.window().choicePage(), 1), "Remove the demo shop");
    ASSERT_TRUE(then.choose(1));
    EXPECT_FALSE(std::filesystem::exists(rig.demoFolder()));
    EXPECT_TRUE(rig.window().said().contains("removed"));
    EXPECT_EQ(rig.window().choicePage()->view().choices.size(), 1U);
    ASSERT_TRUE(rig.writer().flush());
    expectSound(rig); // the shop's own log knows nothing of it
    auto reader = LogReader::open(rig.log());
    ASSERT_TRUE(reader);
    EXPECT_EQ(reader->highestNumber().value_or(-1), 0);
}

TEST(FirstStart, SaysWhyThereIsNoDemoShop) {
    FirstRig rig;
    rig.makeDemo = [] { return Result<void>(fail(ErrorCode::NotWritten, "the disk is full")); };
    FirstWalk walk(rig.window(), rig.desk());
    ASSERT_TRUE(walk.press(SlotPlace::Step));
    ASSERT_TRUE(walk.choose(0));
    EXPECT_EQ(rig.demos, 0);
    EXPECT_EQ(rig.window().said(), "the disk is full");
    EXPECT_TRUE(rig.window().choicePage()->view().title.contains("guides"));
    // Something else stands in its place: it is neither used nor removed.
    std::filesystem::create_directories(rig.demoFolder());
    rig.again();
    const ChoiceView page = rig.window().choicePage()->view();
    ASSERT_EQ(page.choices.size(), 1U);
    EXPECT_FALSE(page.choices.front().enabled);
}

} // namespace
} // namespace seamclock::test
