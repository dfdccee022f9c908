// A welder's certificate as far as the bench needs it: for which materials and thicknesses it
// holds, and until when. Who examined whom, and by which standard, is the paper's; the log keeps
// who entered it here.
#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

struct Certificate {
    std::vector<std::string> materials; // "PE-HD", "PP"
    std::int64_t thinnestUm = 0;
    std::int64_t thickestUm = 0;
    std::string until; // local date, the last day on which it holds: "2031-06-30"

    bool operator==(const Certificate&) const = default;
};

inline constexpr std::size_t kLongestCertificate = 120; // signs of its text

/// What one person holds, the one noted last at the end.
using HeldCertificates = std::vector<Certificate>;
/// Notes one: a paper for PP stands beside one for PE-HD. For its own materials it alone counts
/// from then on, so that no older one goes on covering what a newer one does not; with a day that
/// is past it ends them.
void note(HeldCertificates& held, Certificate certificate);
/// The one for that sheet, also if it has expired; null: none covers it.
const Certificate*
heldFor(const HeldCertificates& held, std::string_view material, std::int64_t thicknessUm);

/// "PE-HD, PP 3-20 mm"
std::string scopeOf(const Certificate& certificate);
/// From such a scope and a date. Malformed: neither, with what is allowed. OutOfRange: a thickness
/// outside 0.1 to 1000 mm, or from thick to thin.
Result<Certificate> readCertificate(std::string_view scope, std::string_view until);
/// From one line, "PE-HD, PP 3-20 mm until 2031-06-30"; errors as above.
Result<Certificate> readCertificate(std::string_view line);

enum class CertificateState {
    NotKept, // nobody in this log has one: the shop keeps them elsewhere
    Valid,
    Missing, // this person has none
    Expired,
    OutOfScope // another material or thickness
};

/// `known`: by person. `today`: the local date.
CertificateState certificateFor(
    const std::map<std::string, HeldCertificates>& known, const std::string& person,
    std::string_view material, std::int64_t thicknessUm, std::string_view today);

/// What a weld carries among its flags; empty: nothing.
std::string_view flagOf(CertificateState state);

} // namespace seamclock
