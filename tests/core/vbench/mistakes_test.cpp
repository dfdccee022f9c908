// Every mistake that practice must teach, made by an otherwise steady hand in the common sheets: a
// table of what the bend test names. The mistakes and their sides are the trade's (common practice
// and the list); the sizes here are a beginner's [practice].
#include "tests/support/practice_weld.h"

#include <functional>
#include <gtest/gtest.h>

namespace seamclock::test {
namespace {

using Reasons = std::vector<BendReason>;

const PracticeWeld kPe8{"pe-hd-dvs2207-1-2005", "pe-hd", 8};
const PracticeWeld kPp8{"pp-dvs2207-11", "pp-h", 8};

/// A weld of that sheet by the plan, made once.
struct Reference {
    BenchSetup setup;
    WeldStory byPlan;
};

const Reference& referenceOf(const PracticeWeld& weld) {
    static std::map<std::string, Reference> made;
    const std::string key = weld.procedure + std::to_string(weld.thicknessMm);
    auto found = made.find(key);
    if (found == made.end()) {
        const BenchSetup setup = setupFor(weld);
        found = made.emplace(key, Reference{setup, welded(setup)}).first;
    }
    return found->second;
}

struct Mistake {
    const char* name;
    std::function<void(const Reference&, HandFaults&, BenchFaults&)> make;
    Reasons everywhere; // named at each station
};

std::string everyReason(const BendTest& bend) {
    std::string text;
    for (const StationBend& station : bend.stations) {
        for (const BendReason reason : station.reasons) {
            text += std::string(toString(reason)) + " ";
        }
        text += "/ ";
    }
    return text;
}

Milliseconds shareOf(Milliseconds time, int percent) {
    return Milliseconds(time.count() * percent / 100);
}

const std::vector<Mistake>& mistakes() {
    using R = BendReason;
    static const std::vector<Mistake> kRows{
        {"soak under pressure",
         [](const Reference&, HandFaults& hand, BenchFaults&) { hand.soakUnderPressure = true; },
         {R::ThinMelt, R::Notch}},
        {"backed off in soak",
         [](const Reference&, HandFaults& hand, BenchFaults&) { hand.backedOffUm = 500; },
         {R::ColdSkin, R::ThinMelt}},
        {"soak's clock from first contact",
         [](const Reference& by, HandFaults& hand, BenchFaults&) {
             hand.soakFor = by.setup.plan.soak->target - by.byPlan.times.alignment;
         },
         {R::ThinMelt}},
        {"changeover three times as long",
         [](const Reference& by, HandFaults& hand, BenchFaults&) {
             hand.changeover = *by.setup.plan.changeoverMax * 3;
         },
         {R::ColdSkin}},
        {"a draught, and the changeover on its limit",
         [](const Reference& by, HandFaults& hand, BenchFaults& bench) {
             hand.changeover = *by.setup.plan.changeoverMax;
             bench.draught = 4;
         },
         {R::ColdSkin}},
        {"slammed",
         [](const Reference&, HandFaults& hand, BenchFaults&) { hand.slammed = true; },
         {R::Notch}},
        {"let back",
         [](const Reference&, HandFaults& hand, BenchFaults&) {
             hand.letBackAfter = Milliseconds(5000);
         },
         {R::LowPressure, R::Notch}},
        {"a lock that gives way, not followed",
         [](const Reference&, HandFaults& hand, BenchFaults& bench) {
             hand.noTopUp = true;
             bench.lockCreepMmPerMin = 10;
         },
         {R::LowPressure}},
        {"released early",
         [](const Reference& by, HandFaults& hand, BenchFaults&) {
             hand.coolFor = shareOf(by.setup.plan.cooling->atLeast, 30);
         },
         {R::Kinked}},
        {"plate 15 K cold",
         [](const Reference&, HandFaults&, BenchFaults& bench) { bench.plateOffsetK = -15; },
         {R::Underheated}},
        {"plate dirty and not wiped",
         [](const Reference&, HandFaults& hand, BenchFaults& bench) {
             bench.plateDirty = true;
             hand.plateNotWiped = true;
         },
         {R::Contaminated}},
        {"plate 30 K hot",
         [](const Reference&, HandFaults&, BenchFaults& bench) { bench.plateOffsetK = 30; },
         {R::Overheated}},
        {"the top bead looked at only",
         [](const Reference&, HandFaults& hand, BenchFaults&) {
             hand.leanUm = 2500;
             hand.topBeadOnly = true;
         },
         {R::NotClosedBelow}},
        {"film left on",
         [](const Reference&, HandFaults& hand, BenchFaults&) { hand.filmLeft = true; },
         {R::Contaminated}},
        {"kgf read as N",
         [](const Reference& by, HandFaults& hand, BenchFaults&) {
             hand.card = kgfForN(by.setup);
             hand.alignFor = Milliseconds(300'000); // the bead never comes
         },
         {R::LowPressure}},
        {"the row of half the thickness",
         [](const Reference& by, HandFaults& hand, BenchFaults&) {
             hand.card = rowOf(by.setup, 0.5);
         },
         {}}, // by pressure, melt or cooling, as the table has it
        {"the row of twice the thickness",
         [](const Reference& by, HandFaults& hand, BenchFaults&) {
             hand.card = rowOf(by.setup, 2);
         },
         {R::ThinMelt}},
    };
    return kRows;
}

WeldStory storyOf(const Reference& by, HandFaults hand, const BenchFaults& bench = {}) {
    BenchSetup setup = by.setup;
    setup.faults = bench;
    return welded(setup, hand);
}

class Mistakes : public testing::TestWithParam<PracticeWeld> {};

TEST_P(Mistakes, EachIsNamedAndNoOtherWayAbout) {
    const Reference& by = referenceOf(GetParam());
    EXPECT_TRUE(by.byPlan.bend.ductile) << everyReason(by.byPlan.bend);
    for (const Mistake& mistake : mistakes()) {
        HandFaults hand;
        BenchFaults bench;
        mistake.make(by, hand, bench);
        const WeldStory story = storyOf(by, hand, bench);
        EXPECT_FALSE(story.bend.ductile) << mistake.name;
        for (const BendReason reason : mistake.everywhere) {
            EXPECT_EQ(with(story.bend, reason), 5)
                << mistake.name << ": " << toString(reason) << " in " << everyReason(story.bend);
        }
    }
}

TEST_P(Mistakes, WhatStandsAtOnePlaceIsNamedThereOnly) {
    const Reference& by = referenceOf(GetParam());
    HandFaults touched;
    touched.touched = 700;
    const WeldStory hand = storyOf(by, touched);
    for (std::size_t i = 0; i < 5; ++i) {
        EXPECT_EQ(hand.bend.stations[i].ductile, i != 3) << everyReason(hand.bend);
    }
    EXPECT_EQ(with(hand.bend, BendReason::Contaminated), 1);

    HandFaults skew; // who looks at one bead only
    skew.rightUm = -2500;
    skew.firstBeadOnly = true;
    const WeldStory off = storyOf(by, skew);
    EXPECT_LT(
        off.soaked.stations[4].beadTopMm, static_cast<double>(*by.setup.plan.beadMinUm) / 1e3);
    EXPECT_FALSE(off.bend.stations[4].ductile) << everyReason(off.bend);
}

TEST_P(Mistakes, ABeadAloneDoesNotTell) {
    const Reference& by = referenceOf(GetParam());
    HandFaults pressed;
    pressed.soakUnderPressure = true;
    const WeldStory story = storyOf(by, pressed);
    for (std::size_t i = 0; i < 5; ++i) {
        const StationView& fat = story.lifted.stations[i];
        const StationView& right = by.byPlan.lifted.stations[i];
        EXPECT_GT(fat.beadTopMm, 1.2 * right.beadTopMm);
        EXPECT_LT(fat.joined->meltMm, 0.75 * right.joined->meltMm);
        EXPECT_FALSE(story.bend.stations[i].ductile);
    }
}

TEST_P(Mistakes, ASlamPressesMoreOutAndTearsTheValley) {
    const Reference& by = referenceOf(GetParam());
    HandFaults slam;
    slam.slammed = true;
    const WeldStory story = storyOf(by, slam);
    for (std::size_t i = 0; i < 5; ++i) {
        const StationView& slammed = story.lifted.stations[i];
        const StationView& even = by.byPlan.lifted.stations[i];
        EXPECT_GT(slammed.joined->peakPa, 1.7 * even.joined->peakPa);
        EXPECT_GT(slammed.joined->squeezedMm, 1.02 * even.joined->squeezedMm);
        EXPECT_LT(slammed.joined->leftMm(), 0.95 * even.joined->leftMm());
        EXPECT_GT(slammed.beadTopMm, even.beadTopMm);
        EXPECT_LE(slammed.valleyTopMm, 0);
    }
}

TEST_P(Mistakes, AWrongRowShowsInBeadMeltAndPressure) {
    // Three quarters are not enough to break it, and plain to who measures.
    const Reference& by = referenceOf(GetParam());
    const StationView* before = nullptr;
    std::vector<WeldStory> made;
    for (const double times : {0.5, 0.75, 1.0, 1.5, 2.0}) {
        HandFaults wrong;
        wrong.card = rowOf(by.setup, times);
        made.push_back(storyOf(by, wrong));
    }
    for (const WeldStory& story : made) {
        const StationView& one = story.lifted.stations[2];
        if (before != nullptr) {
            EXPECT_GT(one.beadTopMm, 1.05 * before->beadTopMm);
            EXPECT_GT(one.joined->frozePa, 1.15 * before->joined->frozePa);
            EXPECT_LT(one.joined->leftMm(), 0.97 * before->joined->leftMm());
        }
        before = &one;
    }
    EXPECT_FALSE(made.front().bend.ductile);
    EXPECT_TRUE(made[2].bend.ductile);
    EXPECT_FALSE(made.back().bend.ductile);
}

TEST_P(Mistakes, EverythingOnItsLimitStillHolds) {
    const Reference& by = referenceOf(GetParam());
    const WeldPlan& plan = by.setup.plan;
    const auto off = [&plan](std::int64_t mc) {
        return static_cast<double>(mc - plan.plate->targetMc) / 1e3;
    };
    const auto holds = [&by](const char* what, const HandFaults& hand, const BenchFaults& bench) {
        const WeldStory story = storyOf(by, hand, bench);
        EXPECT_TRUE(story.bend.ductile) << what << ": " << everyReason(story.bend);
    };
    BenchFaults cool;
    cool.plateOffsetK = off(plan.plate->minMc);
    BenchFaults warm;
    warm.plateOffsetK = off(plan.plate->maxMc);
    HandFaults hand;
    hand.changeover = plan.changeoverMax;
    holds("a cool plate and a changeover on the limit", hand, cool);
    hand = {};
    hand.card = plan;
    hand.card->scale->joining.setMilli = plan.scale->joining.highMilli;
    hand.card->buildUp->target = shareOf(plan.buildUp->target, 60);
    holds("a warm plate, pressed quickly to the band's upper end", hand, warm);
    hand.card->scale->joining.setMilli = plan.scale->joining.lowMilli;
    hand.card->buildUp->target = shareOf(plan.buildUp->target, 130);
    holds("a cool plate, pressed slowly to the band's lower end", hand, cool);
    hand = {};
    hand.rightUm = -plan.edgeGapMaxUm;
    holds("edges apart at one end by as much as is allowed", hand, {});
}

INSTANTIATE_TEST_SUITE_P(
    Sheets, Mistakes, testing::Values(kPe8, kPe10, kPp8, kPp12, kPvdf8),
    [](const testing::TestParamInfo<PracticeWeld>& sheet) {
        const std::string plastic = sheet.param.material.substr(0, sheet.param.material.find('-'));
        return plastic + std::to_string(static_cast<int>(sheet.param.thicknessMm));
    });

struct ProcedureAt {
    const char* procedure;
    const char* material;
    const char* bench;
};

class EveryThickness : public testing::TestWithParam<ProcedureAt> {};

TEST_P(EveryThickness, IsDuctileByThePlan) {
    int made = 0;
    for (const double thickness : {3, 4, 6, 8, 10, 15, 20, 30}) {
        for (const double drag : {0, 55}) {
            const PracticeWeld weld{
                GetParam().procedure, GetParam().material, thickness, drag, GetParam().bench};
            const auto setup = setupIfPlanned(weld);
            if (!setup) {
                continue; // the bench or the procedure doesn't take that sheet
            }
            const WeldStory story = welded(*setup);
            EXPECT_TRUE(story.bend.ductile)
                << thickness << " mm, drag " << drag << ": " << everyReason(story.bend);
            EXPECT_TRUE(story.lifted.mishaps.empty()) << thickness;
            // An eye sees the nearest division, so half of one may be missed.
            const SpringScale& scale = setup->bench.scale;
            const double eyeN =
                0.5 * static_cast<double>(scale.divisionMilli) / 1e3 * inNewtons(scale.rate());
            EXPECT_LE(story.soaked.scale.seenMilli, setup->plan.scale->soak.highMilli);
            // Below its first division there is no reading to go by: just in contact, as the plan
            // says.
            if (setup->plan.scale->soak.highMilli - scale.zeroMilli >= scale.divisionMilli) {
                EXPECT_LE(
                    story.soaked.scale.facesN,
                    static_cast<double>(*setup->plan.soakMaxPa) * thickness / 1e3 + eyeN)
                    << thickness << " mm, drag " << drag; // of a metre
            }
            ++made;
        }
    }
    EXPECT_GE(made, 12);
}

INSTANTIATE_TEST_SUITE_P(
    Procedures, EveryThickness,
    testing::Values(
        ProcedureAt{"pe-hd-dvs2207-1-2005", "pe-hd", "east"},
        ProcedureAt{"pe-hd-dvs2207-1-2005", "pe-hd", "west"},
        ProcedureAt{"pe-hd-dvs2207-1-2015", "pe-hd", "east"},
        ProcedureAt{"pe-hd-dvs2207-1-2015", "pe-hd", "west"},
        ProcedureAt{"pp-dvs2207-11", "pp-h", "east"}, ProcedureAt{"pp-dvs2207-11", "pp-h", "west"},
        ProcedureAt{"pvdf-dvs2207-15", "pvdf", "east"},
        ProcedureAt{"pvdf-dvs2207-15", "pvdf", "west"}));

TEST(OneClamp, MovedItChangesBeadAndBend) {
    // Left, right and lean, one at a time, by so much; who looks at the largest bead stops there.
    const Reference& by = referenceOf(kPe10);
    const auto made = [&by](std::int64_t left, std::int64_t right, std::int64_t lean) {
        HandFaults hand;
        hand.leftUm = left;
        hand.rightUm = right;
        hand.leanUm = lean;
        hand.firstBeadOnly = true;
        return storyOf(by, hand);
    };
    const WeldStory left = made(-2500, 0, 0);
    EXPECT_LT(left.soaked.stations[0].beadTopMm, 0.5);
    EXPECT_GE(left.soaked.stations[4].beadTopMm, 1.5);
    EXPECT_FALSE(left.bend.stations[0].ductile);
    const WeldStory right = made(0, -2500, 0);
    EXPECT_GE(right.soaked.stations[0].beadTopMm, 1.5);
    EXPECT_LT(right.soaked.stations[4].beadTopMm, 0.5);
    EXPECT_FALSE(right.bend.stations[4].ductile);
    // One is the other's picture in a mirror.
    for (std::size_t i = 0; i < 5; ++i) {
        EXPECT_NEAR(
            left.lifted.stations[i].beadTopMm, right.lifted.stations[4 - i].beadTopMm, 1e-6);
        EXPECT_EQ(left.bend.stations[i].reasons, right.bend.stations[4 - i].reasons);
    }
    const WeldStory lean = made(0, 0, 2500);
    const WeldStory over = made(0, 0, -2500);
    for (std::size_t i = 0; i < 5; ++i) {
        EXPECT_EQ(lean.soaked.stations[i].beadBottomMm, 0);
        EXPECT_EQ(over.soaked.stations[i].beadTopMm, 0);
        EXPECT_GE(lean.soaked.stations[i].beadTopMm, 1.5);
        EXPECT_GE(over.soaked.stations[i].beadBottomMm, 1.5);
    }
    EXPECT_EQ(with(lean.bend, BendReason::NotClosedBelow), 5);
    EXPECT_EQ(with(over.bend, BendReason::NotClosedBelow), 5);
    EXPECT_TRUE(made(0, 0, 0).bend.ductile);
}

TEST(Stations, WhatIsWorkedOutOnceIsWhatEachWouldBe) {
    // A cold spot of a millionth of a kelvin parts the stations, and moves nothing else.
    BenchFaults parted;
    parted.coldSpotK = 1e-6;
    parted.coldSpotAt = 0.4;
    parted.coldSpotWidth = 1;
    const Reference& by = referenceOf(kPe10);
    const WeldStory each = storyOf(by, {}, parted);
    for (std::size_t i = 0; i < 5; ++i) {
        const StationView& once = by.byPlan.lifted.stations[i];
        const StationView& own = each.lifted.stations[i];
        EXPECT_NEAR(once.beadTopMm, own.beadTopMm, 1e-4);
        EXPECT_NEAR(once.skinC, own.skinC, 1e-3);
        EXPECT_NEAR(once.joined->meltMm, own.joined->meltMm, 1e-4);
        EXPECT_NEAR(once.joined->frozePa, own.joined->frozePa, 100);
    }
}

} // namespace
} // namespace seamclock::test
