// What must hold whatever the table says: force by pressure, thickness and length; times that don't
// fall; the band's end never shorter than the line; readings that keep the face pressure legal.
#include "core/plan/plan.h"

#include "tests/support/shipped.h"

#include <cmath>

namespace seamclock {
namespace {

const std::vector<std::string> kAll{"pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015",
                                    "pe-iso21307-slp",      "pe-uni10520",
                                    "pp-dvs2207-11",        "pvdf-dvs2207-15"};

/// At the ambient that the procedure's own values are for.
Result<WeldPlan> planAt(PlanRequest request, const Procedure& procedure, const Bench* bench) {
    request.ambient = procedure.referenceAmbient;
    return makePlan(request, procedure, bench);
}

std::vector<BandRule> rulesOf(const Procedure& procedure) {
    return procedure.coolingHasBands() ? std::vector{BandRule::Line, BandRule::BandEnd}
                                       : std::vector{BandRule::Line};
}

PlanRequest request(std::int64_t um, double length, BandRule rule = BandRule::Line) {
    PlanRequest out;
    out.thickness = micrometres(static_cast<double>(um));
    out.lengths = {millimetres(length)};
    out.drag = newtons(0);
    out.coolingRule = rule;
    return out;
}

std::int64_t thinnestUm(const Procedure& procedure) {
    return std::llround(inMicrometres(procedure.thinnest()));
}
std::int64_t thickestUm(const Procedure& procedure) {
    return std::llround(inMicrometres(procedure.thickest()));
}

TEST(Identity, ForceIsProportionalToLengthAndToThickness) {
    for (const std::string& id : kAll) {
        const Procedure procedure = test::shippedProcedure(id);
        const auto one = planAt(request(4000, 350), procedure, nullptr);
        const auto longer = planAt(request(4000, 1050), procedure, nullptr);
        const auto thicker = planAt(request(20'000, 350), procedure, nullptr);
        ASSERT_TRUE(one && longer && thicker);
        EXPECT_EQ(*longer->joiningMn, 3 * *one->joiningMn) << id;
        EXPECT_EQ(one->soakMaxMn.has_value(), id != "pe-iso21307-slp");
        if (one->soakMaxMn) {
            EXPECT_EQ(*longer->soakMaxMn, 3 * *one->soakMaxMn) << id;
        }
        EXPECT_EQ(*thicker->alignmentMn, 5 * *one->alignmentMn) << id;
        // and it is the plan's own p · s · L, in mN from Pa, um and um
        EXPECT_EQ(
            *one->joiningMn, *one->joiningPa * one->thicknessUm * one->lengthUm / 1'000'000'000);
    }
}

TEST(Identity, EveryThicknessOfEveryTableHasAPlanAndNoneOutside) {
    for (const std::string& id : kAll) {
        const Procedure procedure = test::shippedProcedure(id);
        for (std::int64_t um = thinnestUm(procedure); um <= thickestUm(procedure); um += 50) {
            const auto plan = planAt(request(um, 900), procedure, nullptr);
            ASSERT_TRUE(plan) << id << " " << um << ": " << plan.error().detail;
            EXPECT_TRUE(plan->cooling) << id << " " << um;
        }
        EXPECT_FALSE(planAt(request(thinnestUm(procedure) - 1, 900), procedure, nullptr)) << id;
        EXPECT_FALSE(planAt(request(thickestUm(procedure) + 1, 900), procedure, nullptr)) << id;
    }
}

// Except cooling where the source itself jumps down, ISO 21307's card at 18 mm.
TEST(Identity, NoTimeAndNoBeadFallsWithThickness) {
    for (const std::string& id : kAll) {
        const Procedure procedure = test::shippedProcedure(id);
        const bool jumps = procedure.cooling[0].minutes.fallsByDeclaration;
        EXPECT_EQ(jumps, id == "pe-iso21307-slp");
        for (const BandRule rule : rulesOf(procedure)) {
            std::optional<WeldPlan> last;
            for (std::int64_t um = thinnestUm(procedure); um <= thickestUm(procedure); um += 25) {
                const auto plan = planAt(request(um, 900, rule), procedure, nullptr);
                ASSERT_TRUE(plan);
                if (last) {
                    SCOPED_TRACE(id + " " + std::to_string(um));
                    if (jumps && um == 18'025) {
                        EXPECT_LT(plan->cooling->atLeast, last->cooling->atLeast);
                    } else {
                        EXPECT_GE(plan->cooling->atLeast, last->cooling->atLeast);
                    }
                    if (last->beadMinUm && plan->beadMinUm) {
                        EXPECT_GE(*plan->beadMinUm, *last->beadMinUm);
                    }
                    if (last->changeoverMax && plan->changeoverMax) {
                        EXPECT_GE(*plan->changeoverMax, *last->changeoverMax);
                    }
                    if (last->buildUp && plan->buildUp) {
                        EXPECT_GE(plan->buildUp->target, last->buildUp->target);
                    }
                    if (last->soak && plan->soak) {
                        EXPECT_GE(plan->soak->target, last->soak->target);
                    }
                }
                last = *plan;
            }
        }
    }
}

TEST(Identity, TheBandsEndIsNeverShorterThanTheLineAndMeetsItAtTheEdge) {
    for (const std::string& id : kAll) {
        const Procedure procedure = test::shippedProcedure(id);
        if (!procedure.coolingHasBands()) {
            EXPECT_FALSE(planAt(request(9000, 900, BandRule::BandEnd), procedure, nullptr)) << id;
            continue;
        }
        for (std::int64_t um = thinnestUm(procedure); um <= thickestUm(procedure); um += 50) {
            const auto line = planAt(request(um, 900), procedure, nullptr);
            const auto end = planAt(request(um, 900, BandRule::BandEnd), procedure, nullptr);
            ASSERT_TRUE(line && end);
            EXPECT_GE(end->cooling->atLeast, line->cooling->atLeast) << id << " " << um;
        }
        for (const Piece& piece : procedure.cooling[0].minutes.curves[0].pieces) {
            const auto um = std::llround(inMicrometres(piece.to));
            EXPECT_EQ(
                planAt(request(um, 900), procedure, nullptr)->cooling,
                planAt(request(um, 900, BandRule::BandEnd), procedure, nullptr)->cooling);
        }
    }
}

// A column may jump up at a boundary (the bead does), but a sheet one micrometre thicker never
// gains or loses more than the table's own step: cooling is continuous in every table, by the line.
TEST(Identity, CoolingByTheLineHasNoJump) {
    for (const std::string& id : kAll) {
        const Procedure procedure = test::shippedProcedure(id);
        for (const Piece& piece : procedure.cooling[0].minutes.curves[0].pieces) {
            const auto um = std::llround(inMicrometres(piece.to));
            if (um == thickestUm(procedure) || procedure.cooling[0].minutes.fallsByDeclaration) {
                continue;
            }
            const auto at = planAt(request(um, 900), procedure, nullptr);
            const auto above = planAt(request(um + 1, 900), procedure, nullptr);
            ASSERT_TRUE(at && above);
            // the steepest column, PP's, rises 2.4 min per mm: 0.144 s for a micrometre
            EXPECT_LE(above->cooling->atLeast - at->cooling->atLeast, Milliseconds(145)) << id;
        }
    }
}

// At the highest soak reading, friction included, the faces feel at most the limit; at the next
// thousandth, more.
TEST(Identity, TheHighestSoakReadingKeepsTheFacePressureLegal) {
    int seams = 0;
    for (const char* name : {"east", "west"}) {
        const Bench bench = test::demoBench(name);
        const double rate = inNewtons(bench.scale.rate());
        for (const std::string& id : kAll) {
            const Procedure procedure = test::shippedProcedure(id);
            for (std::int64_t um = 5000; um <= 24'000; um += 700) {
                for (const double drag : {0.0, 12.5, 40.0}) {
                    PlanRequest seam = request(um, 811);
                    seam.drag = newtons(drag);
                    const auto plan = makePlan(seam, procedure, &bench);
                    if (!plan || !plan->scale) {
                        continue; // the bench can't make it
                    }
                    const ReadingBand& soak = plan->scale->soak;
                    const double limit = inPascals(*procedure.pressure.soakMax) *
                                         static_cast<double>(um) * 1e-6 * 0.811; // [N]
                    const auto felt = [&](std::int64_t milli) {
                        return static_cast<double>(milli - bench.scale.zeroMilli) / 1e3 * rate -
                               inNewtons(bench.scale.preload) + drag;
                    };
                    EXPECT_LE(soak.setMilli, soak.highMilli);
                    EXPECT_GE(soak.setMilli, bench.scale.zeroMilli);
                    EXPECT_GT(felt(soak.highMilli + 1), limit);
                    if (soak.highMilli > bench.scale.zeroMilli) {
                        EXPECT_LE(felt(soak.highMilli), limit + 1e-6); // binary noise of a product
                    }
                    ++seams;
                }
            }
        }
    }
    EXPECT_GT(seams, 400);
}

} // namespace
} // namespace seamclock
