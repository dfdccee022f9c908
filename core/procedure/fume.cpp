#include "core/procedure/fume.h"

#include <algorithm>
#include <array>
#include <string>

namespace seamclock {
namespace {

constexpr std::array<std::string_view, 2> kChlorine{"PVC", "CHLORID"};
constexpr std::array<std::string_view, 7> kFluorine{"PVDF", "CTFE", "PTFE", "ETFE",
                                                    "FEP",  "PFA",  "FLUOR"};

/// "M-PVDF" as "MPVDF", "poly(vinyl chloride)" as "POLYVINYLCHLORIDE".
std::string lettersOf(std::string_view name) {
    std::string letters;
    for (const char sign : name) {
        if (sign >= 'A' && sign <= 'Z') {
            letters += sign;
        } else if (sign >= 'a' && sign <= 'z') {
            letters += static_cast<char>(sign - 'a' + 'A');
        }
    }
    return letters;
}

} // namespace

Fume fumeOf(std::string_view material) {
    const std::string letters = lettersOf(material);
    const auto has = [&letters](std::string_view word) {
        return letters.find(word) != std::string::npos;
    };
    if (std::any_of(kFluorine.begin(), kFluorine.end(), has)) {
        return Fume::Fluorine;
    }
    return std::any_of(kChlorine.begin(), kChlorine.end(), has) ? Fume::HydrogenChloride
                                                                : Fume::None;
}

} // namespace seamclock
