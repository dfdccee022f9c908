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

/// `known`: by person, the one that was noted last. `today`: the local date.
CertificateState certificateFor(
    const std::map<std::string, Certificate>& known, const std::string& person,
    std::string_view material, std::int64_t thicknessUm, std::string_view today);

/// What a weld carries among its flags; empty: nothing.
std::string_view flagOf(CertificateState state);

} // namespace seamclock
