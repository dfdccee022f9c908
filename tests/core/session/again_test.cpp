#include "core/session/again.h"

#include "core/session/sheet_plan.h"
#include "tests/support/demo_order.h"
#include "tests/support/story.h"

#include <cmath>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

TEST(Reweld, CountsUpAfterTheSeamsOwnName) {
    EXPECT_EQ(reweldLabel("S3"), "S3/R1");
    EXPECT_EQ(reweldLabel("S3/R1"), "S3/R2");
    EXPECT_EQ(reweldLabel("S3/R9"), "S3/R10");
    EXPECT_EQ(seamOf("S3/R2"), "S3");
    EXPECT_EQ(reweldsOf("S3/R2"), 2);
    EXPECT_EQ(reweldsOf("S3"), 0);
}

TEST(Reweld, ANameThatOnlyLooksAlikeIsItsOwn) {
    for (const char* label : {"", "S/R", "S/Rx", "S/R1x", "S/R0", "S/R-1", "/R1", "A/B"}) {
        EXPECT_EQ(seamOf(label), label);
        EXPECT_EQ(reweldsOf(label), 0) << label;
    }
    EXPECT_EQ(reweldLabel("A/B"), "A/B/R1");
}

Weld opened(const WeldOrder& order) {
    const auto plan =
        planWithSheets(order.request, order.procedure.procedure, &order.bench.bench, order.sheets);
    EXPECT_TRUE(plan) << (plan ? "" : plan.error().detail);
    WeldOpened opened;
    opened.number = 12;
    opened.type = order.type;
    opened.bench = order.bench.bench.id;
    opened.seam = order.seam;
    opened.job = order.job;
    opened.part = order.part;
    opened.beadPlaces = order.beadPlaces;
    opened.sheets = order.sheets;
    for (const Length length : order.request.lengths) {
        opened.lengthsUm.push_back(std::llround(inMicrometres(length)));
    }
    opened.shielded = order.shielded;
    opened.plan = *plan;
    opened.docs = {order.procedure.sha256, order.bench.sha256, {}};
    return test::Story(opened).weld();
}

TEST(SameAgain, IsPlannedToTheSameNumbers) {
    for (const test::DemoSeam& seam : test::kDemoSeams) {
        WeldOrder order = test::orderOf(seam);
        order.beadPlaces = 3;
        const Weld weld = opened(order);
        const WeldOrder again = sameAgain(weld, order.procedure, order.bench);
        const auto plan = planWithSheets(
            again.request, again.procedure.procedure, &again.bench.bench, again.sheets);
        ASSERT_TRUE(plan) << seam.label;
        EXPECT_EQ(*plan, weld.plan) << seam.label;
        EXPECT_EQ(again.sheets, order.sheets);
        EXPECT_EQ(again.shielded, order.shielded);
        EXPECT_EQ(again.type, order.type);
        EXPECT_EQ(again.beadPlaces, 3);
        EXPECT_FALSE(again.seam) << "the next seam has its own name";
        EXPECT_FALSE(again.reweldOf);
    }
}

TEST(WeldAgain, IsLinkedToTheJointCutOut) {
    WeldOrder order = test::orderOf(test::kDemoSeams[0]);
    order.job = "QV-131";
    order.part = "Salt tank";
    const Weld weld = opened(order);
    const WeldOrder again = weldAgain(weld, order.procedure, order.bench, 24'000);
    EXPECT_EQ(again.reweldOf, weld.id());
    EXPECT_EQ(again.lostUm, 24'000);
    EXPECT_EQ(again.seam, std::string("S1/R1"));
    EXPECT_EQ(again.job, "QV-131");
    EXPECT_EQ(again.part, "Salt tank");
    WeldOrder unnamed = order;
    unnamed.seam.reset();
    EXPECT_FALSE(weldAgain(opened(unnamed), order.procedure, order.bench, 0).seam);
}

} // namespace
} // namespace seamclock
