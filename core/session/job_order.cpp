#include "core/session/job_order.h"

#include <algorithm>

namespace seamclock {

Result<WeldOrder> orderOf(const JobSeam& seam, const std::vector<ProcedureDocument>& procedures) {
    const auto found =
        std::find_if(procedures.begin(), procedures.end(), [&](const ProcedureDocument& one) {
            return one.procedure.id == seam.procedure;
        });
    if (found == procedures.end()) {
        std::string ids;
        for (const ProcedureDocument& one : procedures) {
            ids += (ids.empty() ? "" : ", ") + one.procedure.id;
        }
        return fail(
            ErrorCode::Missing, "seam " + seam.label + " asks for the procedure \"" +
                                    seam.procedure + "\", which is not there; allowed: " + ids);
    }
    auto bench = seam.benchFile.empty() ? Result<BenchDocument>() : readBenchFile(seam.benchFile);
    if (!bench) {
        return tl::unexpected<Error>(bench.error());
    }
    WeldOrder order;
    order.procedure = *found;
    order.bench = std::move(*bench);
    order.request.thickness = millimetres(seam.thicknessMm);
    for (const double length : seam.lengthsMm) {
        order.request.lengths.push_back(millimetres(length));
    }
    order.request.ambient =
        seam.ambientC ? Temperature::celsius(*seam.ambientC) : found->procedure.referenceAmbient;
    if (seam.dragN) {
        order.request.drag = newtons(*seam.dragN);
    }
    order.seam = seam.label;
    if (!seam.job.empty()) {
        order.job = seam.job;
    }
    if (!seam.part.empty()) {
        order.part = seam.part;
    }
    order.sheets = seam.sheets;
    order.shielded = seam.shielded;
    order.beadPlaces = seam.beadPlaces;
    return order;
}

} // namespace seamclock
