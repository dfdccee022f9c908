#include "tests/support/rehearsed_weld.h"

#include "core/heat/material_codec.h"
#include "core/practice/lesson.h"
#include "core/weld/intent.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <cmath>

namespace seamclock::test {
namespace {

WeldPlan planOf(const WeldOrder& order) {
    const auto plan = makePlan(order.request, order.procedure.procedure, &order.bench.bench);
    EXPECT_TRUE(plan) << (plan ? "" : plan.error().detail);
    return plan.value_or(WeldPlan{});
}

Weld opened(const WeldOrder& order) {
    WeldOpened opening;
    opening.number = 1;
    opening.type = WeldType::Practice;
    opening.sheets = order.sheets;
    opening.plan = planOf(order);
    const Event event{
        {Milliseconds(0), "practice:1", Milliseconds(1'893'996'000'000), std::chrono::minutes(0)},
        "person:practice",
        "weld:1",
        1,
        opening};
    auto weld = seamclock::open(event);
    EXPECT_TRUE(weld) << (weld ? "" : weld.error().detail);
    return weld.value_or(Weld{});
}

/// False: it was refused, and the test has failed.
bool put(Weld& weld, const Act& act) {
    Instant at = weld.events.back().at;
    const Milliseconds gap = std::max(act.due - weldTimeAt(weld, at)->lo, Milliseconds(0));
    at.boot += gap;
    at.utc += gap;
    WeldDetail d = act.d;
    if (auto* back = std::get_if<StepTakenBack>(&d)) {
        back->targetN = lastTakeable(weld);
    } else if (auto* dated = std::get_if<StepBackdated>(&d)) {
        dated->targetN = lastTakeable(weld);
    }
    auto next = accept(weld, Intent{lastTakeable(weld), "person:practice", d}, at);
    if (!next) {
        ADD_FAILURE() << next.error().detail;
        return false;
    }
    weld = std::move(*next);
    return true;
}

void finish(Weld& weld, const Hand& hand) {
    for (int most = 200; most > 0; --most) {
        const auto act = nextAct(weld, hand);
        if (!act || !put(weld, *act)) {
            return;
        }
    }
}

} // namespace

std::optional<WeldOrder>
orderFor(const std::string& procedure, double thicknessMm, const std::string& bench, double dragN) {
    const auto document = readProcedureFile(resource("procedures/" + procedure + ".json"));
    if (!document) {
        ADD_FAILURE() << document.error().detail;
        return {};
    }
    return orderWith(*document, thicknessMm, bench, dragN);
}

std::optional<WeldOrder> orderWith(
    const ProcedureDocument& procedure, double thicknessMm, const std::string& bench,
    double dragN) {
    const auto stand = readBenchFile(resource("demo/bench-" + bench + ".json"));
    if (!stand) {
        ADD_FAILURE() << stand.error().detail;
        return {};
    }
    WeldOrder order;
    order.procedure = procedure;
    order.bench = *stand;
    order.request.thickness = millimetres(thicknessMm);
    order.request.lengths = {millimetres(1000)};
    order.request.ambient = procedure.procedure.referenceAmbient;
    order.request.drag = newtons(dragN);
    order.type = WeldType::Practice;
    Sheet sheet;
    sheet.material = procedure.procedure.material;
    sheet.maker = "practice";
    sheet.batch = "practice";
    sheet.thicknessUm = std::llround(thicknessMm * 1e3);
    order.sheets = {sheet, sheet};
    const auto plan = makePlan(order.request, procedure.procedure, &stand->bench);
    return plan && plan->isReady() ? std::optional<WeldOrder>(order) : std::nullopt;
}

Material materialOf(const WeldOrder& order) {
    const auto all = readMaterialFolder(resource("materials"));
    EXPECT_TRUE(all) << (all ? "" : all.error().detail);
    const std::string& plastic = order.procedure.procedure.material;
    for (const Material& material : all.value_or(std::vector<Material>{})) {
        const auto& names = material.plastics;
        if (std::find(names.begin(), names.end(), plastic) != names.end()) {
            return material;
        }
    }
    ADD_FAILURE() << "no material for " << plastic;
    return {};
}

Weld rehearsed(const WeldOrder& order, const Hand& hand) {
    Weld weld = opened(order);
    Hand slipping = hand;
    slipping.faults = withSlips(hand, weld.plan, false);
    finish(weld, slipping);
    return weld;
}

RehearsedWeld onBench(const WeldOrder& order, const Hand& hand, const Material& material) {
    WeldOrder card = order;
    if (hand.faults.wrongRowUm) {
        card.request.thickness = millimetres(static_cast<double>(*hand.faults.wrongRowUm) / 1e3);
    }
    if (hand.faults.kgfForN) {
        const auto taken = takenForKgf(order.bench.bench);
        EXPECT_TRUE(taken) << (taken ? "" : taken.error().detail);
        card.bench = taken.value_or(order.bench);
    }
    RehearsedWeld made{opened(card), {}};
    BenchSetup setup;
    setup.material = material;
    setup.bench = order.bench.bench;
    setup.plan = planOf(order);
    setup.dragN = order.request.drag ? inNewtons(*order.request.drag) : 0;
    Hand slipping = hand;
    slipping.faults = withSlips(hand, made.weld.plan, true);
    const auto bench = weldOnBench(setup, made.weld.plan, slipping);
    if (!bench) {
        ADD_FAILURE() << bench.error().detail;
        return made;
    }
    for (const Act& act : bench->acts) {
        if (!put(made.weld, act)) {
            return made;
        }
    }
    finish(made.weld, slipping);
    made.bench = bench->story;
    return made;
}

RehearsedWeld onBench(const WeldOrder& order, const Hand& hand) {
    return onBench(order, hand, materialOf(order));
}

std::vector<std::string> findingsOf(const Weld& weld) {
    std::vector<std::string> all;
    for (const Finding& finding : verdict(weld).findings) {
        all.push_back(std::string(toString(finding.grade)) + " " + finding.code);
    }
    return all;
}

std::vector<Event> comparable(std::vector<Event> events) {
    for (Event& event : events) {
        event.subject = "weld:";
        event.at.bootId = "";
        if (auto* opened = std::get_if<WeldOpened>(&event.d)) {
            opened->number = 0;
        }
    }
    return events;
}

} // namespace seamclock::test
