// A procedure's file as anybody might hand it in: it is refused with findings or read, and never
// both; what was read gives cells that can be attested and a plan or a refusal for every thickness
// that is tried.
#include "core/plan/plan.h"
#include "core/procedure/cells.h"
#include "core/procedure/procedure_codec.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace seamclock {
namespace {

void must(bool held) {
    if (!held) {
        std::abort();
    }
}

void tryPlans(const Procedure& procedure) {
    const double thinnest = inMillimetres(procedure.thinnest());
    const double thickest = inMillimetres(procedure.thickest());
    for (const double part : {0.0, 0.1, 0.37, 0.5, 0.99, 1.0}) {
        for (const double ambient : {-10.0, 23.0, 24.9, 41.0}) {
            PlanRequest request;
            request.thickness = millimetres(thinnest + part * (thickest - thinnest));
            request.lengths = {millimetres(640)};
            request.ambient = Temperature::celsius(ambient);
            request.halfCooling =
                procedure.halfCooling ? std::optional(HalfCooling{true, true}) : std::nullopt;
            const auto plan = makePlan(request, procedure, nullptr);
            if (plan && plan->cooling) {
                must(plan->cooling->atLeast > Milliseconds(0));
            }
        }
    }
}

void tryText(std::string_view text) {
    const auto findings = checkProcedure("fuzz.json", text);
    const auto read = readProcedure("fuzz.json", text);
    must(findings.empty() == read.has_value());
    if (!read) {
        must(!read.error().detail.empty());
        return;
    }
    const std::vector<Cell> cells = cellsOf(read->procedure);
    const Procedure all = attested(read->procedure, {{"Ana", "2030-01-07", "1", cells}});
    const std::vector<Cell> again = cellsOf(all);
    must(again.size() == cells.size());
    for (std::size_t i = 0; i < cells.size(); ++i) {
        must(again[i].name == cells[i].name && again[i].content == cells[i].content);
        must(again[i].source.standing == Standing::Attested);
    }
    tryPlans(read->procedure);
    tryPlans(all);
}

} // namespace
} // namespace seamclock

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    seamclock::tryText({reinterpret_cast<const char*>(data), size});
    return 0;
}
