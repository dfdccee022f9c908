// Set-up by presses and typed lines, as a foreman works: a shop's own procedure from a file with a
// slip in it, values attested and one of them changed, a bench calibrated from a file. What comes
// of it is read back from the log, and from the card that a new weld gets.
#include "app/operate/setup_walk.h"

#include "app/text/words.h"
#include "core/log/log_reader.h"
#include "core/log/shelf.h"
#include "tests/app/operate/demo_shop.h"

#include <QDir>
#include <QLineEdit>
#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

const char* const kPin = PeopleWalk::kForemansPin;
const QString kDemoFolder = QString(SEAMCLOCK_SOURCE_DIR) + "/resources/demo";

class SetupWalkTest : public testing::Test {
protected:
    SetupWalkTest()
        : people(shop.window(), shop.desk(), shop.clock()),
          walk(
              shop.window(), shop.desk(), people, kDemoFolder,
              QString::fromStdString(shop.documents())) {}

    void foreman() {
        ASSERT_TRUE(people.openWho());
        const auto done = people.firstForeman("Oddo Quenley", kPin);
        ASSERT_TRUE(done) << done.error().detail;
        ASSERT_TRUE(people.press(SlotPlace::Step)); // the desk is left
    }
    SetupFlow& setup() { return *shop.window().setup(); }
    FormPage& form() { return *setup().formPage(); }
    const ListView& list() { return setup().listPage()->view(); }
    const ProcedureDocument* procedure(const std::string& id) {
        for (const ProcedureDocument& one : shop.floor().procedures()) {
            if (one.procedure.id == id) {
                return &one;
            }
        }
        return nullptr;
    }
    std::vector<std::string> attestedCells(const std::string& id) {
        std::vector<std::string> names;
        for (const Cell& cell : cellsOf(procedure(id)->procedure)) {
            if (cell.source.standing == Standing::Attested) {
                names.push_back(cell.name);
            }
        }
        return names;
    }
    Shelf shelf() {
        EXPECT_TRUE(shop.writer().flush());
        auto reader = LogReader::open(shop.log());
        EXPECT_TRUE(reader);
        auto read = readShelf(*reader);
        EXPECT_TRUE(read);
        return std::move(*read);
    }

    Shop shop;
    PeopleWalk people;
    SetupWalk walk;
};

#define DONE(call)                                                                                 \
    do {                                                                                           \
        const auto done_ = (call);                                                                 \
        ASSERT_TRUE(done_) << done_.error().detail;                                                \
    } while (false)

TEST_F(SetupWalkTest, AShopsOwnProcedureIsReadPutRightKeptAndPlannedWith) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    const std::size_t before = shop.floor().procedures().size();
    DONE(walk.importProcedure(kPin)); // with a plate of 410 °C that can't be kept
    ASSERT_EQ(shop.floor().procedures().size(), before + 1);
    const ProcedureDocument* pvc = procedure("pvc-u-demo-shop");
    ASSERT_NE(pvc, nullptr);
    EXPECT_EQ(pvc->procedure.plate->max, Temperature::celsius(235));
    EXPECT_EQ(shelf().procedures.at("pvc-u-demo-shop"), pvc->sha256);

    // It is told calmly, in the benches' place, which no press reaches until it was seen.
    auto* banner = shop.window().findChild<AlarmBanner*>("alarm");
    auto* bench = shop.window().findChild<StripCell*>("bench1");
    ASSERT_TRUE(banner != nullptr && bench != nullptr);
    EXPECT_EQ(banner->text(), "The procedure is kept.");
    EXPECT_TRUE(banner->isVisible() && banner->isCalm());
    EXPECT_FALSE(bench->isVisible());
    emit banner->pressed();
    shop.window().refresh();
    EXPECT_FALSE(banner->isVisible());
    EXPECT_TRUE(bench->isVisible());
    DONE(walk.press(SlotPlace::Back));
    EXPECT_TRUE(std::any_of(list().rows.begin(), list().rows.end(), [](const ListRowView& row) {
        return row.text.startsWith("PVC-U") && row.second.contains("pvc-u-demo-shop");
    }));

    // A seam of 10 mm and 600 mm by it. By hand: soak between 92 s at 6 mm and 181 s at 12 mm is
    // 92 + 89 · 4 / 6 = 151.33 s; force 0.6 N/mm² · 10 mm · 600 mm = 3600 N is past the east
    // bench's scale (62.5 N/mm · 48 mm), so 200 mm: 1200 N.
    const auto plan = makePlan(
        [] {
            PlanRequest request;
            request.thickness = millimetres(10);
            request.lengths = {millimetres(200)};
            request.ambient = Temperature::celsius(20);
            return request;
        }(),
        pvc->procedure, &shop.floor().posts()[0].bench.bench);
    ASSERT_TRUE(plan) << plan.error().detail;
    EXPECT_NEAR(static_cast<double>(plan->soak->target.count()), 151'333, 1);
    EXPECT_TRUE(plan->isComplete());

    // And on the screen: another seam, the procedure, thickness, length, the card.
    DONE(walk.press(SlotPlace::Step)); // back to the bench
    ASSERT_EQ(shop.window().page(), PageKind::Seams);
    DONE(people.press(SlotPlace::Stop));
    ASSERT_EQ(shop.window().page(), PageKind::Entry);
    const auto tile = [this](const char* name) {
        auto* button = shop.window().currentPage()->findChild<SlotButton*>(name);
        ASSERT_NE(button, nullptr) << name;
        emit button->pressed();
        shop.window().refresh();
    };
    tile("entryProcedure");
    const auto& choices = shop.window().choicePage()->view().choices;
    const auto own = std::find_if(choices.begin(), choices.end(), [](const auto& choice) {
        return choice.under == QLatin1String("PVC-U");
    });
    ASSERT_NE(own, choices.end());
    emit shop.window().choicePage()->chosen(static_cast<int>(own - choices.begin()));
    for (const auto& [name, digits] : {std::pair{"entryThickness", "10"}, {"entryLength", "200"}}) {
        tile(name);
        for (const char* digit = digits; *digit != '\0'; ++digit) {
            shop.window().padPage()->pad()->type(QLatin1Char(*digit));
        }
        DONE(people.press(SlotPlace::Step));
    }
    DONE(people.press(SlotPlace::Step));
    EXPECT_EQ(shop.window().page(), PageKind::Card);
}

TEST_F(SetupWalkTest, NothingIsKeptWhileAValueIsRefusedNorWithoutThePin) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    DONE(walk.edit("PP · "));
    DONE(walk.section("Plate and air"));
    DONE(walk.type("/plate/max_C", "410"));
    EXPECT_TRUE(form().said().startsWith("plate, highest °C: 410 is outside 100 to 320 °C"))
        << form().said().toStdString();
    DONE(walk.press(SlotPlace::Step));
    EXPECT_EQ(list().step.look, SlotView::Look::Gone);
    DONE(walk.press(SlotPlace::Step));
    EXPECT_EQ(shop.window().currentPage(), setup().listPage()) << "no PIN is asked for";
    DONE(walk.section("Plate and air"));
    DONE(walk.type("/plate/max_C", "219"));
    DONE(walk.press(SlotPlace::Step));
    DONE(walk.press(SlotPlace::Step));
    DONE(people.givePin("111111")); // wrong
    DONE(people.press(SlotPlace::Stop));
    EXPECT_EQ(shop.window().page(), PageKind::Setup) << "what is edited waits";
    EXPECT_TRUE(setup().isChanged());
    EXPECT_TRUE(shelf().procedures.empty());
    DONE(walk.keep(kPin));
    EXPECT_EQ(procedure("pp-dvs2207-11")->procedure.plate->max, Temperature::celsius(219));
    EXPECT_EQ(shelf().procedures.size(), 1U);
}

TEST_F(SetupWalkTest, WhatIsEditedWaitsWhileABenchIsTouchedAndGoesWithItsForm) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    DONE(walk.edit("PP · "));
    DONE(walk.section("Plate and air"));
    DONE(walk.type("/plate/max_C", "219"));
    shop.window().openMenu();
    EXPECT_EQ(setup().page(), nullptr);
    EXPECT_TRUE(setup().isChanged());
    DONE(walk.open());
    EXPECT_TRUE(list().title.startsWith("PP ")) << list().title.toStdString();
    EXPECT_EQ(list().step.look, SlotView::Look::Act);
    DONE(walk.press(SlotPlace::Stop));
    EXPECT_FALSE(setup().isChanged());
    DONE(walk.edit("PP · "));
    EXPECT_EQ(list().under, "Nothing is changed yet.");
    EXPECT_TRUE(shelf().procedures.empty());
}

TEST_F(SetupWalkTest, AChangeOfAnAttestedValueTakesTheStandingFromThatOneAlone) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    DONE(walk.attest("PP · ", "Soak", 2, kPin));
    const std::vector<std::string> two = attestedCells("pp-dvs2207-11");
    ASSERT_EQ(two.size(), 2U);
    const Shelf kept = shelf();
    ASSERT_EQ(kept.attestations.size(), 1U);
    EXPECT_EQ(kept.attestations[0].by, "person:oddo-quenley");
    EXPECT_EQ(kept.attestations[0].edition, "Table 2, printed March 2029");
    EXPECT_EQ(kept.attestations[0].date, "2030-01-07");
    // Shown back with name and date.
    const ProcedureView& shown = setup().procedurePage()->view();
    const auto soak = std::find(shown.tabs.begin(), shown.tabs.end(), QString("Soak"));
    emit setup().procedurePage()->tabChosen(static_cast<int>(soak - shown.tabs.begin()));
    EXPECT_TRUE(setup().procedurePage()->view().source.contains("Oddo Quenley"));
    EXPECT_TRUE(setup().procedurePage()->view().source.contains("7 Jan 2030"));

    // A value of another table is changed: both keep their standing. One of the two: only the
    // other.
    DONE(walk.edit("PP · "));
    DONE(walk.section("Plate and air"));
    DONE(walk.type("/plate/max_C", "219"));
    DONE(walk.keep(kPin));
    EXPECT_EQ(attestedCells("pp-dvs2207-11"), two);
    const std::string row = "/soak_s/table/0/lower";
    DONE(walk.edit("PP · "));
    DONE(walk.section("Soak"));
    DONE(walk.type(row, "134"));
    DONE(walk.keep(kPin));
    EXPECT_EQ(attestedCells("pp-dvs2207-11"), std::vector<std::string>{two[1]});
    DONE(walk.edit("PP · "));
    DONE(walk.section("Soak"));
    DONE(walk.type(row, "135")); // as it was
    DONE(walk.keep(kPin));
    EXPECT_EQ(attestedCells("pp-dvs2207-11"), two);
}

TEST_F(SetupWalkTest, AnAttestationIsWithdrawnWithAReason) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    DONE(walk.attest("PP · ", "Soak", 2, kPin));
    DONE(walk.press(SlotPlace::Stop)); // attest
    DONE(walk.press(SlotPlace::Back)); // withdraw
    EXPECT_EQ(list().title, "Which attested values hold no more?");
    DONE(walk.choose("Soak"));
    ASSERT_EQ(list().rows.size(), 2U);
    DONE(walk.choose(list().rows[0].text));
    DONE(walk.press(SlotPlace::Step));
    DONE(walk.press(SlotPlace::Step));
    DONE(walk.press(SlotPlace::Step)); // without a reason
    EXPECT_TRUE(list().trouble.contains("Nothing is typed")) << list().trouble.toStdString();
    setup().listPage()->setLine("misread: the copy says 140");
    DONE(walk.press(SlotPlace::Step));
    DONE(people.givePin(kPin));
    EXPECT_EQ(attestedCells("pp-dvs2207-11").size(), 1U);
}

TEST_F(SetupWalkTest, ABenchIsCalibratedFromAFileAndABentOneIsRefused) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    DONE(walk.edit("East bench"));
    DONE(walk.calibrate()); // refuses the bent one on its way
    ASSERT_TRUE(form().view().section.plot);
    EXPECT_EQ(form().view().section.plot->lines.size(), 1U);
    EXPECT_EQ(form().view().section.plot->bands.size(), 1U);
    DONE(walk.keep(kPin));
    const Bench& east = shop.floor().posts()[0].bench.bench;
    ASSERT_EQ(east.id, "east");
    ASSERT_TRUE(east.calibration && east.calibration->fit);
    EXPECT_EQ(east.calibration->points.size(), 10U);
    EXPECT_EQ(east.calibration->dueOn, "2031-01-07");
    EXPECT_NEAR(inNewtons(east.scale.rate()), 62.5, 0.5);
    EXPECT_EQ(shelf().benches.at("east"), shop.floor().posts()[0].bench.sha256);
}

TEST_F(SetupWalkTest, ABentFileIsSaidWithItsWorstPointAndChangesNothing) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    DONE(walk.edit("East bench"));
    DONE(walk.section("Calibration"));
    DONE(walk.act("Read a CSV file"));
    QDir().mkpath(QString::fromStdString(shop.documents()));
    QFile bent(QDir(QString::fromStdString(shop.documents())).filePath("bent.csv"));
    ASSERT_TRUE(bent.open(QIODevice::WriteOnly));
    bent.write("reading_mm,force_N\n4,249\n8,502\n12,747\n16,1390\n20,1252\n24,1497\n");
    bent.close();
    DONE(walk.readFile(bent.fileName()));
    EXPECT_EQ(shop.window().currentPage(), setup().listPage());
    EXPECT_TRUE(list().trouble.startsWith("bent.csv: ")) << list().trouble.toStdString();
    EXPECT_TRUE(list().trouble.contains("16")) << list().trouble.toStdString();
    DONE(walk.readFile(bent.fileName() + ".not"));
    EXPECT_TRUE(list().trouble.contains("can't be read")) << list().trouble.toStdString();
    DONE(walk.press(SlotPlace::Stop));
    EXPECT_FALSE(setup().isChanged());
}

TEST_F(SetupWalkTest, TheOrderOfReleaseIsAskedStepByStepAndEndsWithTheSheet) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    DONE(walk.edit("East bench"));
    DONE(walk.releaseOrder());
    DONE(walk.keep(kPin));
    EXPECT_EQ(
        shop.floor().posts()[0].bench.bench.releaseOrder,
        (std::vector<std::string>{"spring_off", "clamps_eased", "bars_opened", "sheet_out"}));
}

TEST_F(SetupWalkTest, AWeldUnderWayKeepsItsBenchUntilItIsLeft) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    ASSERT_TRUE(people.signIn("Oddo Quenley", kPin));
    DONE(people.toPlate());
    const std::string before = shop.floor().posts()[0].bench.sha256;
    DONE(walk.edit("East bench"));
    DONE(walk.section("What fits"));
    DONE(walk.type("/longest_seam_mm", "2500"));
    DONE(walk.keep(kPin));
    EXPECT_EQ(shop.floor().posts()[0].bench.sha256, before);
    EXPECT_NE(shop.floor().benches()[0].sha256, before);
    shop.floor().leave(0);
    EXPECT_EQ(shop.floor().posts()[0].bench.bench.longestSeam, millimetres(2500));
}

TEST_F(SetupWalkTest, TheNextStartTakesUpWhatWasKept) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    DONE(walk.importProcedure(kPin));
    DONE(walk.attest("PP · ", "Soak", 2, kPin));
    DONE(walk.edit("East bench"));
    DONE(walk.section("What fits"));
    DONE(walk.type("/longest_seam_mm", "2500"));
    DONE(walk.keep(kPin));
    const auto held = attestedCells("pp-dvs2207-11");
    // As the program begins: what came with it, and then the log.
    shop.floor().setProcedures(shop.floor().shipped());
    const auto job = readBenchFile(kDemoFolder.toStdString() + "/bench-east.json");
    ASSERT_TRUE(job);
    ASSERT_TRUE(shop.floor().setBench(*job));
    ASSERT_EQ(procedure("pvc-u-demo-shop"), nullptr);
    const auto taken = shop.floor().takeUpShelf();
    ASSERT_TRUE(taken) << taken.error().detail;
    EXPECT_NE(procedure("pvc-u-demo-shop"), nullptr);
    EXPECT_EQ(attestedCells("pp-dvs2207-11"), held);
    EXPECT_EQ(shop.floor().posts()[0].bench.bench.longestSeam, millimetres(2500));
}

TEST_F(SetupWalkTest, ANewBenchIsAskedForEveryValue) {
    ASSERT_NO_FATAL_FAILURE(foreman());
    DONE(walk.open());
    DONE(walk.press(SlotPlace::Stop));
    EXPECT_EQ(list().step.look, SlotView::Look::Gone);
    EXPECT_TRUE(list().under.contains("to be put right")) << list().under.toStdString();
}

} // namespace
} // namespace seamclock
