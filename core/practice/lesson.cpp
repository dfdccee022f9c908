#include "core/practice/lesson.h"

#include "core/base/uuid.h"
#include "core/session/sheet_plan.h"

#include <algorithm>
#include <array>
#include <utility>

namespace seamclock {
namespace {

constexpr std::array<std::pair<Wrong, std::string_view>, 10> kNames{{
    {Wrong::PlateCold, "plate_cold"},
    {Wrong::PlateHot, "plate_hot"},
    {Wrong::PlateDirty, "plate_dirty"},
    {Wrong::ColdSpot, "cold_spot"},
    {Wrong::WrongRow, "wrong_row"},
    {Wrong::WrongUnit, "wrong_unit"},
    {Wrong::Draught, "draught"},
    {Wrong::ZeroOff, "zero_off"},
    {Wrong::SpringDrifts, "spring_drifts"},
    {Wrong::EdgeLeans, "edge_leans"},
}};

/// What stands for maker and batch of a lesson's sheets.
constexpr const char* kNoPaper = "practice";

template <class Each, class Fits>
Result<const Each*>
find(const std::vector<Each>& all, const std::string& id, const char* what, Fits fits) {
    const auto found = std::find_if(all.begin(), all.end(), fits);
    if (found == all.end()) {
        return fail(
            ErrorCode::Missing, std::string("the lesson needs the ") + what + " \"" + id +
                                    "\", and this shop has none of that name");
    }
    return &*found;
}

Length micrometres(std::int64_t um) {
    return millimetres(static_cast<double>(um) / 1e3);
}

} // namespace

Result<BenchDocument> takenForKgf(Bench bench) {
    for (Force& rate : bench.scale.ratePerUnit) {
        rate = newtons(inNewtons(rate) * kNewtonsPerKgf);
    }
    if (bench.scale.ratePerMm) {
        bench.scale.ratePerMm = newtons(inNewtons(*bench.scale.ratePerMm) * kNewtonsPerKgf);
    }
    bench.calibration.reset(); // it would give the right rate
    bench.forceLimits = {};
    return readBench("the card's bench", benchText(bench));
}

std::string_view toString(Wrong wrong) {
    const auto* const found = std::find_if(
        kNames.begin(), kNames.end(), [wrong](const auto& entry) { return entry.first == wrong; });
    return found->second;
}

std::optional<Wrong> wrongFromString(std::string_view code) {
    for (const auto& [wrong, name] : kNames) {
        if (name == code) {
            return wrong;
        }
    }
    return std::nullopt;
}

const std::vector<Wrong>& allWrong() {
    static const std::vector<Wrong> kAll = [] {
        std::vector<Wrong> all;
        for (const auto& [wrong, name] : kNames) {
            all.push_back(wrong);
        }
        return all;
    }();
    return kAll;
}

std::vector<Wrong> wrongIn(const Lesson& lesson) {
    const BenchFaults& faults = lesson.faults;
    const Handout& handout = lesson.handout;
    const std::pair<Wrong, bool> kRows[] = {
        {Wrong::PlateCold, faults.plateOffsetK < 0 || !lesson.plateWarm},
        {Wrong::PlateHot, faults.plateOffsetK > 0},
        {Wrong::PlateDirty, faults.plateDirty},
        {Wrong::ColdSpot, faults.coldSpotK > 0},
        {Wrong::WrongRow, handout.thicknessUm && *handout.thicknessUm != lesson.thicknessUm},
        {Wrong::WrongUnit, handout.kgfForN},
        {Wrong::Draught, faults.draught > 1},
        {Wrong::ZeroOff, faults.zeroOff != 0},
        {Wrong::SpringDrifts, faults.lockCreepMmPerMin > 0},
        {Wrong::EdgeLeans, faults.leanMm != 0},
    };
    std::vector<Wrong> there;
    for (const auto& [wrong, so] : kRows) {
        if (so) {
            there.push_back(wrong);
        }
    }
    return there;
}

bool isOfLesson(const WeldOpened& opened) {
    return opened.type == WeldType::Practice && opened.seam &&
           std::all_of(opened.sheets.begin(), opened.sheets.end(), [](const Sheet& sheet) {
               return sheet.maker == kNoPaper && sheet.batch == kNoPaper;
           });
}

Result<SetLesson> setLesson(const Lesson& lesson, const PracticeShop& shop, LessonFor what) {
    const auto asked = [what](WeldPlan& plan) {
        if (what == LessonFor::MadeAlready) {
            plan.unattested.clear();
        }
    };
    const auto procedure =
        find(shop.procedures, lesson.procedure, "procedure", [&](const ProcedureDocument& each) {
            return each.procedure.id == lesson.procedure;
        });
    if (!procedure) {
        return tl::unexpected<Error>(procedure.error());
    }
    const auto bench = find(shop.benches, lesson.bench, "bench", [&](const BenchDocument& each) {
        return each.bench.id == lesson.bench;
    });
    if (!bench) {
        return tl::unexpected<Error>(bench.error());
    }
    const auto material =
        find(shop.materials, lesson.material, "material", [&](const Material& each) {
            return each.id == lesson.material;
        });
    if (!material) {
        return tl::unexpected<Error>(material.error());
    }

    SetLesson set;
    set.lesson = lesson;
    WeldOrder& order = set.order;
    order.procedure = **procedure;
    order.bench = **bench;
    order.type = WeldType::Practice;
    order.seam = lesson.id;
    order.shielded = lesson.faults.draught <= 1;
    order.request.thickness = micrometres(lesson.thicknessUm);
    order.request.lengths = {micrometres(lesson.lengthUm)};
    order.request.ambient = (*procedure)->procedure.referenceAmbient;
    if (lesson.ambientMc) {
        order.request.ambient = Temperature::celsius(static_cast<double>(*lesson.ambientMc) / 1e3);
    }
    order.request.drag = newtons(static_cast<double>(lesson.dragMn) / 1e3);
    Sheet sheet;
    sheet.material = (*procedure)->procedure.material;
    sheet.maker = kNoPaper;
    sheet.batch = kNoPaper;
    sheet.thicknessUm = lesson.thicknessUm; // as it lies there, whatever the card says
    order.sheets = {sheet, sheet};

    auto plan =
        planWithSheets(order.request, order.procedure.procedure, &order.bench.bench, order.sheets);
    if (!plan) {
        return tl::unexpected<Error>(plan.error());
    }
    asked(*plan);
    if (const auto ready = checkReady(*plan); !ready) {
        return tl::unexpected<Error>(ready.error());
    }
    set.bench = order.bench;
    BenchSetup& setup = set.setup;
    setup.material = **material;
    setup.bench = order.bench.bench;
    setup.plan = std::move(*plan);
    setup.faults = lesson.faults;
    setup.dragN = static_cast<double>(lesson.dragMn) / 1e3;
    setup.plateWarm = lesson.plateWarm;
    if (auto can = VirtualBench::set(setup); !can) {
        return tl::unexpected<Error>(can.error());
    }

    if (lesson.handout.thicknessUm) {
        order.request.thickness = micrometres(*lesson.handout.thicknessUm);
    }
    if (lesson.handout.kgfForN) {
        auto card = takenForKgf(order.bench.bench);
        if (!card) {
            return tl::unexpected<Error>(card.error());
        }
        order.bench = std::move(*card);
    }
    if (!wrongIn(lesson).empty()) { // what is handed out must be a card that a weld opens with
        auto handed = planWithSheets(
            order.request, order.procedure.procedure, &order.bench.bench, order.sheets);
        if (!handed) {
            return tl::unexpected<Error>(handed.error());
        }
        asked(*handed);
        if (!handed->isReady()) {
            return fail(
                ErrorCode::Missing, "the card that this lesson hands out lacks what a weld needs");
        }
    }
    return set;
}

} // namespace seamclock
