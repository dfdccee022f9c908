// Every drawn value comes from the bench's own view, which the score reads: held against it here,
// value by value, through the phases of welds by a steady hand.
#include "app/practice/bench_drawing.h"
#include "app/practice/bench_scene.h"
#include "tests/support/practice_weld.h"

#include <QImage>
#include <QPainter>
#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace seamclock::test {
namespace {

constexpr double kFine = 0.0051; // [mm] what rounding to hundredths leaves

BenchDrawing drawn(const VirtualBench& bench, int place) {
    return practiceBenchView(
        bench.view(), bench.setup(), place, &bench.edge(static_cast<std::size_t>(place)), {});
}

void expectAsTheBench(const VirtualBench& bench, int place) {
    const BenchView view = bench.view();
    const BenchDrawing drawing = drawn(bench, place);
    const StationView& station = view.stations[static_cast<std::size_t>(place)];
    EXPECT_NEAR(drawing.topMm, station.beadTopMm, kFine);
    EXPECT_NEAR(drawing.bottomMm, station.beadBottomMm, kFine);
    EXPECT_NEAR(drawing.valleyTopMm, station.valleyTopMm, kFine);
    EXPECT_NEAR(drawing.skinC, station.skinC, 0.51);
    EXPECT_NEAR(drawing.reading, view.scale.reading, kFine);
    EXPECT_EQ(drawing.joined, station.joined.has_value());
    EXPECT_NEAR(drawing.meltLeftMm, station.joined ? station.joined->leftMm() : 0, kFine);
    EXPECT_EQ(
        drawing.skinned, station.joined && station.joined->skinC < station.joined->leastSkinC);
    EXPECT_EQ(drawing.spoiled, station.joined && station.marks.contaminated());
    EXPECT_EQ(drawing.plateInside, view.plateInside);
    const double rate = inNewtons(*bench.setup().bench.scale.ratePerMillimetre());
    EXPECT_NEAR(drawing.springMm, view.scale.springN / rate, kFine);
    EXPECT_NEAR(drawing.wheelMm, view.travelMm + view.scale.springN / rate, 2 * kFine);
    ASSERT_EQ(drawing.places.size(), view.stations.size());
    for (std::size_t i = 0; i < view.stations.size(); ++i) {
        EXPECT_NEAR(drawing.places[i].topMm, std::max(0.0, view.stations[i].beadTopMm), kFine);
        EXPECT_NEAR(
            drawing.places[i].bottomMm, std::max(0.0, view.stations[i].beadBottomMm), kFine);
        EXPECT_EQ(drawing.places[i].joined, view.stations[i].joined.has_value());
    }
    ASSERT_TRUE(drawing.heat);
    const SheetField& field = bench.edge(static_cast<std::size_t>(place)).field();
    ASSERT_EQ(drawing.heat->celsius.size(), field.columns() * field.rows());
    EXPECT_NEAR(drawing.heat->celsius.front(), field.celsius(0, 0), 0.51);
    EXPECT_NEAR(
        drawing.heat->celsius.back(), field.celsius(field.columns() - 1, field.rows() - 1), 0.51);
    EXPECT_NEAR(drawing.heat->depthMm.back(), field.depthOf(field.columns() - 1) * 1e3, 1e-9);
}

TEST(BenchDrawing, IsWhatTheBenchIsInEveryPhase) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    SteadyHand hand(bench, {});
    ASSERT_TRUE(hand.prepare());
    expectAsTheBench(bench, 0);
    ASSERT_TRUE(hand.align());
    expectAsTheBench(bench, 2);
    const double alignBead = drawn(bench, 2).topMm;
    EXPECT_GT(alignBead, 0.5);
    ASSERT_TRUE(hand.soak());
    expectAsTheBench(bench, 4);
    EXPECT_GT(drawn(bench, 4).heat->celsius.front(), drawn(bench, 4).heat->meltingC);
    ASSERT_TRUE(hand.changeOver());
    expectAsTheBench(bench, 1);
    ASSERT_TRUE(hand.buildUp());
    expectAsTheBench(bench, 2);
    EXPECT_TRUE(drawn(bench, 2).joined);
    EXPECT_EQ(drawn(bench, 2).wheel, WheelHold::Locked);
    ASSERT_TRUE(hand.cool());
    ASSERT_TRUE(hand.release());
    EXPECT_TRUE(drawn(bench, 2).lifted);
    EXPECT_GT(drawn(bench, 2).topMm, alignBead);
}

QImage painted(const BenchDrawing& drawing) {
    QImage image(500, 300, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paintSeamFromEnd(
        painter, QRectF(0, 0, 500, 300), drawing, Theme::of(ThemeKind::Light), Metrics{});
    return image;
}

TEST(BenchDrawing, TheCutShowsMeltSkinDirtAndKinkEachByItself) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    SteadyHand hand(bench, {});
    ASSERT_TRUE(hand.prepare());
    ASSERT_TRUE(hand.align());
    ASSERT_TRUE(hand.soak());
    ASSERT_TRUE(hand.changeOver());
    ASSERT_TRUE(hand.buildUp());
    ASSERT_TRUE(hand.cool());
    ASSERT_TRUE(hand.release());
    BenchDrawing joint = practiceBenchView(bench.view(), bench.setup(), 2, nullptr, {});
    ASSERT_TRUE(joint.joined);
    ASSERT_GT(joint.meltLeftMm, 0.2);
    std::vector<QImage> all{painted(joint)};
    BenchDrawing other = joint;
    other.meltLeftMm = joint.meltLeftMm / 2;
    all.push_back(painted(other));
    other = joint;
    other.skinned = true;
    all.push_back(painted(other));
    other = joint;
    other.spoiled = true;
    all.push_back(painted(other));
    other = joint;
    other.kinkDeg = 4;
    all.push_back(painted(other));
    for (std::size_t one = 0; one < all.size(); ++one) {
        for (std::size_t next = one + 1; next < all.size(); ++next) {
            EXPECT_NE(all[one], all[next]) << one << " and " << next;
        }
    }
    // A kink bends the sheets and leaves no gap where the faces are one.
    const int middle = 250;
    const QRgb ground = QColor(Qt::white).rgb();
    for (int y = 110; y < 190; ++y) {
        for (int x = middle - 6; x <= middle + 6; ++x) {
            EXPECT_NE(all.back().pixel(x, y), ground) << x << ", " << y;
        }
    }
}

TEST(BenchDrawing, ShowsTheBeadThatIsMissingAtOneEnd) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    HandFaults faults;
    faults.leftUm = 1'200;
    faults.alignFor = Milliseconds(60'000);
    SteadyHand hand(bench, faults);
    ASSERT_TRUE(hand.prepare());
    const BenchDrawing before = drawn(bench, 0);
    EXPECT_NEAR(before.places.front().gapMm, 0, kFine) << "the front end is the foremost";
    EXPECT_GT(before.places.back().gapMm, 0.5);
    ASSERT_TRUE(hand.align());
    const BenchDrawing after = drawn(bench, 0);
    EXPECT_GT(after.places.front().topMm, after.places.back().topMm + 0.3);
    EXPECT_NE(after.seamText.indexOf("bead: front"), -1) << after.seamText.toStdString();
}

TEST(BenchDrawing, ShowsNoHeatBeforeTheSheetsAreIn) {
    const VirtualBench bench = benchFor(setupFor(kPe10));
    const BenchDrawing drawing = drawn(bench, 2);
    EXPECT_FALSE(drawing.heat);
    EXPECT_FALSE(drawing.sheetIn[0]);
    EXPECT_EQ(drawing.placeText, "middle");
    EXPECT_EQ(drawing.seamText, "tables: front 0.0 mm, back 0.0 mm");
}

TEST(BenchDrawing, OpensAsFarAsThePlateAndTheGapsBesideIt) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    SteadyHand hand(bench, {});
    ASSERT_TRUE(hand.prepare());
    ASSERT_TRUE(bench.act(TurnWheel{-20'000}));
    bench.advance(Milliseconds(1'200));
    ASSERT_TRUE(bench.act(TurnWheel{0}));
    const double open = drawn(bench, 2).openMm;
    EXPECT_NEAR(open, bench.view().stations[2].gapMm, kFine);
    ASSERT_TRUE(bench.act(BringPlateIn{}));
    bench.advance(Milliseconds(1'500));
    EXPECT_EQ(drawn(bench, 2).plateInside, 1);
    EXPECT_NEAR(drawn(bench, 2).openMm, open, 0.3) << "the plate takes room and moves no table";
}

TEST(BenchDrawing, ShowsTheLeanOfTheSheetThatLeans) {
    VirtualBench bench = benchFor(setupFor(kPe10));
    HandFaults faults;
    faults.leanUm = 1'200;
    SteadyHand hand(bench, faults);
    ASSERT_TRUE(hand.prepare());
    const BenchDrawing cold = drawn(bench, 2);
    EXPECT_EQ(cold.leanMm[0], 0);
    EXPECT_NEAR(cold.leanMm[1], 1.2, kFine);
    EXPECT_TRUE(cold.note.contains("1.2 more below")) << cold.note.toStdString();
    ASSERT_TRUE(hand.align()); // until the lower bead stands: melted back by then
    EXPECT_EQ(drawn(bench, 2).leanMm[1], 0);
    EXPECT_NEAR(drawn(bench, 2).leanMm[1], bench.view().stations[2].behindMm, kFine);
}

TEST(BenchDrawing, ARibbonHangsInStillAirAndADraughtLiftsIt) {
    EXPECT_EQ(ribbonDegrees(1, Milliseconds(900)), 0);
    EXPECT_EQ(ribbonDegrees(0.5, Milliseconds(900)), 0) << "shielded from what still air takes";
    double before = 0;
    for (const double draught : {1.5, 2.0, 4.0, 6.0, 10.0}) {
        const double lifted = ribbonDegrees(draught, Milliseconds(0));
        EXPECT_GT(lifted, before);
        EXPECT_LT(lifted, 90);
        before = lifted;
    }
    EXPECT_NE(ribbonDegrees(6, Milliseconds(600)), ribbonDegrees(6, Milliseconds(1'800)));
    BenchSetup setup = setupFor(kPe10);
    setup.faults.draught = 6;
    const VirtualBench bench = benchFor(setup);
    EXPECT_EQ(drawn(bench, 2).ribbonDeg, ribbonDegrees(6, bench.now()));
}

TEST(BenchDrawing, TheAirTakesOfABareFaceAndThatIsRead) {
    // Soaked and drawn off, a second in the air: the skin is in the words, and colder in a draught.
    double skin = 400;
    for (const double draught : {1.0, 6.0}) {
        BenchSetup setup = setupFor(kPe10);
        setup.faults.draught = draught;
        VirtualBench bench = benchFor(setup);
        SteadyHand hand(bench, {});
        ASSERT_TRUE(hand.prepare());
        ASSERT_TRUE(hand.align());
        ASSERT_TRUE(hand.soak());
        ASSERT_TRUE(HandMoves(bench).apart(1.5));
        ASSERT_TRUE(bench.act(TakePlateOut{}));
        bench.advance(Milliseconds(3'000));
        const BenchDrawing drawing = drawn(bench, 2);
        EXPECT_TRUE(drawing.note.contains(QString("skin %1").arg(drawing.skinC)))
            << drawing.note.toStdString();
        EXPECT_LT(drawing.skinC, skin);
        skin = drawing.skinC;
    }
}

TEST(BenchDrawing, MeltThatIsTooHotStrings) {
    BenchSetup setup = setupFor(kPe10);
    setup.faults.plateOffsetK = 35;
    VirtualBench bench = benchFor(setup);
    SteadyHand hand(bench, {});
    ASSERT_TRUE(hand.prepare());
    ASSERT_TRUE(hand.align());
    ASSERT_TRUE(hand.soak());
    EXPECT_EQ(drawn(bench, 2).threadMm, 0) << "nothing parts yet";
    ASSERT_TRUE(HandMoves(bench).apart(1.5));
    const BenchDrawing parted = drawn(bench, 2);
    EXPECT_NEAR(parted.threadMm, bench.view().stations[2].threadMm, kFine);
    EXPECT_GT(parted.threadMm, 1.4);
    EXPECT_TRUE(parted.note.contains("it strings")) << parted.note.toStdString();
    ASSERT_TRUE(bench.act(TakePlateOut{}));
    bench.advance(Milliseconds(800));
    EXPECT_EQ(drawn(bench, 2).threadMm, 0);
    EXPECT_GT(drawn(bench, 2).hairMm, 1);
}

TEST(BenchDrawing, KeepsAPlaceThatIsNotThereWithinTheSeam) {
    const VirtualBench bench = benchFor(setupFor(kPe10));
    EXPECT_EQ(practiceBenchView(bench.view(), bench.setup(), 99, nullptr, {}).place, 4);
    EXPECT_EQ(practiceBenchView(bench.view(), bench.setup(), -3, nullptr, {}).place, 0);
}

TEST(BenchDrawing, NamesThePlacesFromFrontToBack) {
    EXPECT_EQ(placeName(0, 5), "front");
    EXPECT_EQ(placeName(1, 5), "near the front");
    EXPECT_EQ(placeName(2, 5), "middle");
    EXPECT_EQ(placeName(3, 5), "near the back");
    EXPECT_EQ(placeName(4, 5), "back");
}

} // namespace
} // namespace seamclock::test
