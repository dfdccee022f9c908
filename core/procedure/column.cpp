#include "core/procedure/column.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace seamclock {

namespace {

std::int64_t wholeMicrometres(Length length) {
    return std::llround(inMicrometres(length));
}

} // namespace

std::string toString(Standing standing) {
    switch (standing) {
    case Standing::Seen:
        return "seen";
    case Standing::Memory:
        return "memory";
    case Standing::CommonPractice:
        return "common_practice";
    case Standing::Derived:
        return "derived";
    case Standing::Attested:
        return "attested";
    }
    return "unknown";
}

std::string toString(BandRule rule) {
    switch (rule) {
    case BandRule::Line:
        return "line";
    case BandRule::BandEnd:
        return "band-end";
    }
    return "unknown";
}

double Piece::at(Length thickness) const {
    const double s = static_cast<double>(wholeMicrometres(thickness)) / 1e3;
    double value = 0;
    for (auto coefficient = coefficients.rbegin(); coefficient != coefficients.rend();
         ++coefficient) {
        value = value * s + *coefficient;
    }
    return value;
}

const Piece* Curve::pieceAt(Length thickness) const {
    const std::int64_t s = wholeMicrometres(thickness);
    // Ascending: the first that ends at or after s is the one, so a boundary belongs to the band
    // that ends there.
    for (const Piece& piece : pieces) {
        if (s <= wholeMicrometres(piece.to)) {
            return s >= wholeMicrometres(piece.from) ? &piece : nullptr;
        }
    }
    return nullptr;
}

std::optional<double> Curve::at(Length thickness, BandRule rule) const {
    const Piece* piece = pieceAt(thickness);
    if (piece == nullptr) {
        return std::nullopt;
    }
    const double line = piece->at(thickness);
    switch (rule) {
    case BandRule::Line:
        return line;
    case BandRule::BandEnd:
        return isTable ? std::max(line, piece->at(piece->to)) : line;
    }
    return std::nullopt;
}

std::optional<double> Column::at(Length thickness, BandRule rule) const {
    std::optional<double> longest;
    for (const Curve& curve : curves) {
        const std::optional<double> value = curve.at(thickness, rule);
        if (!value) {
            return std::nullopt;
        }
        longest = std::max(longest.value_or(*value), *value);
    }
    return longest;
}

const Source& Column::sourceAt(Length thickness) const {
    const Source* found = nullptr;
    for (const Curve& curve : curves) {
        const Piece* piece = curve.pieceAt(thickness);
        if (piece == nullptr || !piece->attested) {
            return source;
        }
        found = found == nullptr ? &*piece->attested : found;
    }
    return found == nullptr ? source : *found;
}

bool Column::hasBands() const {
    return std::any_of(curves.begin(), curves.end(), [](const Curve& curve) {
        return curve.isTable && !curve.pieces.empty();
    });
}

} // namespace seamclock
