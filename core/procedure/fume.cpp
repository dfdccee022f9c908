#include "core/procedure/fume.h"

#include <algorithm>
#include <array>

namespace seamclock {
namespace {

/// Whether the name begins with that word: "PVC" of "pvc-u", and not of "PVCX".
bool beginsWith(std::string_view name, std::string_view word) {
    const auto isLetter = [](char sign) {
        return (sign >= 'A' && sign <= 'Z') || (sign >= 'a' && sign <= 'z');
    };
    const auto upper = [](char sign) {
        return sign >= 'a' && sign <= 'z' ? static_cast<char>(sign - 'a' + 'A') : sign;
    };
    if (name.size() < word.size() || (name.size() > word.size() && isLetter(name[word.size()]))) {
        return false;
    }
    return std::equal(word.begin(), word.end(), name.begin(), [upper](char wanted, char sign) {
        return wanted == upper(sign);
    });
}

constexpr std::array<std::string_view, 2> kChlorine{"PVC", "CPVC"};
constexpr std::array<std::string_view, 6> kFluorine{"PVDF", "ECTFE", "PTFE", "ETFE", "FEP", "PFA"};

} // namespace

Fume fumeOf(std::string_view material) {
    const auto isOf = [material](std::string_view word) { return beginsWith(material, word); };
    if (std::any_of(kChlorine.begin(), kChlorine.end(), isOf)) {
        return Fume::HydrogenChloride;
    }
    return std::any_of(kFluorine.begin(), kFluorine.end(), isOf) ? Fume::Fluorine : Fume::None;
}

} // namespace seamclock
