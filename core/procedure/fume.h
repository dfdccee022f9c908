// Which plastics give off harmful gas when they are too hot at the plate, by the name that a
// procedure has for its material. What a screen says of it is its own; at which temperature it
// begins is the heat model's (core/heat/material.h), where it is known. A plastic that is not named
// here is not thereby harmless: the caution on every card holds for all.
#pragma once

#include <string_view>

namespace seamclock {

enum class Fume {
    None,
    HydrogenChloride, // PVC: hydrogen chloride, from about 285 °C, as read in a published text
    Fluorine          // fluoropolymers: toxic fume, reported above about 300 °C, as read likewise
};

/// "PVC-U", "PVC-C": HydrogenChloride. "PVDF", "ECTFE", "PTFE", "ETFE", "FEP", "PFA": Fluorine.
/// Letters may be small.
Fume fumeOf(std::string_view material);

} // namespace seamclock
