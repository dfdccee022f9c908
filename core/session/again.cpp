#include "core/session/again.h"

#include "core/session/replan.h"

namespace seamclock {

WeldOrder
sameAgain(const Weld& weld, const ProcedureDocument& procedure, const BenchDocument& bench) {
    const WeldOpened& opened = weld.opened();
    WeldOrder order;
    order.procedure = procedure;
    order.bench = bench;
    order.request = requestOf(weld);
    order.request.alignMedian.reset(); // of the welds until now, not until then
    order.type = opened.type;
    order.beadPlaces = opened.beadPlaces;
    order.sheets = opened.sheets;
    order.shielded = opened.shielded;
    return order;
}

WeldOrder weldAgain(
    const Weld& weld, const ProcedureDocument& procedure, const BenchDocument& bench,
    std::int64_t lostUm) {
    WeldOrder order = sameAgain(weld, procedure, bench);
    order.reweldOf = weld.id();
    order.lostUm = lostUm;
    if (const auto& seam = weld.opened().seam) {
        order.seam = reweldLabel(*seam);
        order.job = weld.opened().job;
        order.part = weld.opened().part;
    }
    return order;
}

} // namespace seamclock
