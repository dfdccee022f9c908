#include "core/procedure/procedure.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace seamclock {

namespace {

std::vector<const Piece*> piecesOf(const Procedure& procedure) {
    std::vector<const Piece*> out;
    const auto add = [&out](const Column& column) {
        for (const Curve& curve : column.curves) {
            for (const Piece& piece : curve.pieces) {
                out.push_back(&piece);
            }
        }
    };
    for (const auto* column :
         {&procedure.bead, &procedure.soak, &procedure.changeover, &procedure.buildUp}) {
        if (*column) {
            add(**column);
        }
    }
    for (const CoolingClass& cooling : procedure.cooling) {
        add(cooling.minutes);
    }
    return out;
}

} // namespace

Length Procedure::thinnest() const {
    const auto pieces = piecesOf(*this);
    if (pieces.empty()) {
        return {};
    }
    Length thinnest = pieces.front()->from;
    for (const Piece* piece : pieces) {
        thinnest = std::min(thinnest, piece->from);
    }
    return thinnest;
}

Length Procedure::thickest() const {
    Length thickest;
    for (const Piece* piece : piecesOf(*this)) {
        thickest = std::max(thickest, piece->to);
    }
    return thickest;
}

bool Procedure::coolingHasBands() const {
    return !cooling.empty() &&
           std::all_of(cooling.begin(), cooling.end(), [](const CoolingClass& each) {
               return each.minutes.hasBands();
           });
}

const KnownGap* Procedure::gapOf(const std::string& value, Length thickness) const {
    const auto micrometres = [](Length length) { return std::llround(inMicrometres(length)); };
    const std::int64_t s = micrometres(thickness);
    for (const KnownGap& gap : gaps) {
        if (gap.value == value && micrometres(gap.from) <= s && s <= micrometres(gap.to)) {
            return &gap;
        }
    }
    return nullptr;
}

bool Procedure::isFill(const std::string& value, const Column& column, Length thickness) const {
    const KnownGap* gap = gapOf(value, thickness);
    if (gap == nullptr) {
        return false;
    }
    // A row that only meets the gap at its edge belongs to the source.
    const Length edge = micrometres(0.5);
    return std::any_of(column.curves.begin(), column.curves.end(), [&](const Curve& curve) {
        const Piece* piece = curve.pieceAt(thickness);
        return piece != nullptr && piece->from < gap->to - edge && piece->to > gap->from + edge;
    });
}

} // namespace seamclock
