// Materials from JSON files (resources/materials/README.md describes the fields).
#pragma once

#include "core/base/result.h"
#include "core/heat/material.h"

#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// Malformed with line, field and reason of the first thing that is wrong: an unknown or missing
/// field, a value outside its range, a curve whose temperatures don't rise, melting below
/// crystallisation, a number without a source.
Result<Material> readMaterial(std::string_view name, std::string_view text);

/// Unreadable, or as readMaterial.
Result<Material> readMaterialFile(const std::string& path);

/// All *.json of a folder, in the order of their names. Unreadable: there is no such folder; else
/// as readMaterialFile.
Result<std::vector<Material>> readMaterialFolder(const std::string& folder);

} // namespace seamclock
