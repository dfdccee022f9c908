#include "app/cli/estimates.h"

#include "app/platform/resource_folder.h"
#include "core/heat/material_codec.h"

namespace seamclock {

Result<HeatEstimate> estimated(const Result<HeatCourse>& course, double chosenC) {
    if (!course) {
        return tl::unexpected<Error>(course.error());
    }
    const auto folder = resourceFolder();
    if (!folder) {
        return tl::unexpected<Error>(folder.error());
    }
    const auto materials = readMaterialFolder(*folder + "/materials");
    if (!materials) {
        return tl::unexpected<Error>(materials.error());
    }
    return estimateHeat(*course, *materials, chosenC);
}

std::optional<HeatEstimate> estimatedIfKnown(const Result<HeatCourse>& course) {
    auto estimate = estimated(course);
    return estimate ? std::optional(std::move(*estimate)) : std::nullopt;
}

} // namespace seamclock
