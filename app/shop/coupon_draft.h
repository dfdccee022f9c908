// Coupons as they are typed, value by value: which number is asked next, within which range, and
// what the numbers make together. A strength may be typed as such, or as the greatest force with
// the coupon's width and thickness: force over section, by definition.
#pragma once

#include "app/shop/value_page.h"
#include "core/log/fact.h"

#include <QString>

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// How a coupon's result is told: of a pulled one its strength, or its greatest force with width
/// and thickness; of a bent one the angle, or how far the ram travelled.
enum class CouponBy { Strength, Load, Angle, Ram };

/// What stands to be typed.
enum class CouponStep { Welded, Parent, Bend, Cracked };

class CouponDraft {
public:
    /// `by`: what the laboratory tells of each coupon. `series`: to put that one right; empty: a
    /// new one.
    CouponDraft(CouponTested about, CouponBy by, std::string series = {});
    /// To put that one right a number at a time: what was entered stands, strengths as such.
    static CouponDraft of(CouponTested entered, std::string series);

    const CouponTested& tested() const { return m_tested; }
    CouponTested& tested() { return m_tested; }
    const std::string& series() const { return m_series; }
    /// In words, the joint that a series is moved to; empty: it stays where it was.
    const QString& joint() const { return m_joint; }
    void setJoint(const QString& words) { m_joint = words; }
    CouponStep step() const { return m_step; }
    bool isBend() const { return m_tested.test == "bend"; }
    bool isByRam() const { return m_by == CouponBy::Ram; }
    /// How many of the coupons that are asked for now have their number.
    std::size_t count() const { return values().size(); }
    /// Nothing is typed yet.
    bool isEmpty() const;
    /// As much as a series needs.
    bool isWhole() const;

    /// The number that is asked now; what stands on the pad already.
    ValueTask task() const;
    QString typed() const;
    /// That number. True: a coupon is whole by it.
    bool take(double value);
    /// Of the bend coupon whose angle or travel was just typed.
    void takeCracked(bool cracked);
    /// The last number, or the last coupon; nothing if there is none.
    void takeBack();
    /// No more of this kind: parents after welded ones. False: there is none behind it.
    bool next();

    /// Each number that stands, with its words ("Welded coupon 2: 22.90 N/mm²").
    struct Entered {
        CouponStep step = CouponStep::Welded;
        std::size_t at = 0;
        QString text;
    };
    std::vector<Entered> entered() const;
    /// To type that one anew.
    ValueTask taskOf(const Entered& one) const;
    /// In its place; of a bend coupon also whether it cracked.
    void replace(const Entered& one, double value);
    void replaceCracked(const Entered& one, bool cracked);

private:
    enum class Piece { Strength, Load, Width, Thickness };
    std::vector<std::int64_t>& values() { return valuesOf(m_step); }
    const std::vector<std::int64_t>& values() const { return valuesOf(m_step); }
    std::vector<std::int64_t>& valuesOf(CouponStep step);
    const std::vector<std::int64_t>& valuesOf(CouponStep step) const;
    ValueTask taskOf(CouponStep step, std::size_t at) const;

    CouponTested m_tested;
    std::string m_series;
    QString m_joint;
    CouponBy m_by;
    CouponStep m_step = CouponStep::Welded;
    Piece m_piece = Piece::Strength;
    double m_force = 0;                // [N]
    std::optional<double> m_width;     // [mm], of the coupon before, too
    std::optional<double> m_thickness; // likewise
};

} // namespace seamclock
