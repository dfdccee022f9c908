#include "core/session/again.h"

#include "core/session/replan.h"

#include <charconv>
#include <optional>
#include <utility>

namespace seamclock {

namespace {

constexpr std::string_view kMark = "/R";

/// "S3" and 2 of "S3/R2".
std::pair<std::string_view, int> parted(std::string_view label) {
    const std::size_t mark = label.rfind(kMark);
    if (mark == std::string_view::npos || mark == 0) {
        return {label, 0};
    }
    const std::string_view digits = label.substr(mark + kMark.size());
    int count = 0;
    const char* end = digits.data() + digits.size();
    const auto read = std::from_chars(digits.data(), end, count);
    const bool whole = read.ec == std::errc() && read.ptr == end && count > 0;
    return whole ? std::pair{label.substr(0, mark), count} : std::pair{label, 0};
}

} // namespace

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

std::string_view seamOf(std::string_view label) {
    return parted(label).first;
}

int reweldsOf(std::string_view label) {
    return parted(label).second;
}

std::string reweldLabel(std::string_view label) {
    const auto [seam, count] = parted(label);
    return std::string(seam) + std::string(kMark) + std::to_string(count + 1);
}

} // namespace seamclock
