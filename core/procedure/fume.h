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

/// A shop spells its plastics as it likes, and a warning too many harms nobody: it is enough that
/// the letters of the name hold, anywhere, "PVC" or "chlorid": HydrogenChloride; "PVDF", "CTFE",
/// "PTFE", "ETFE", "FEP", "PFA" or "fluor": Fluorine. "uPVC", "E-CTFE", "m-PVDF" are such names.
Fume fumeOf(std::string_view material);

} // namespace seamclock
