#include "app/shop/coupon_draft.h"

#include "app/text/numbers.h"
#include "core/quality/coupons.h"
#include "core/quality/welding_factor.h"

#include <QCoreApplication>
#include <cmath>
#include <utility>

namespace seamclock {
namespace {

struct Draft {
    Q_DECLARE_TR_FUNCTIONS(CouponDraft)
};

QString tr(const char* text) {
    return Draft::tr(text);
}

constexpr double kPaPerMpa = 1e6;
constexpr double kGreatestForceN = 1e6;
constexpr double kWidestMm = 200;
constexpr double kThickestMm = 200;
constexpr double kLeastMm = 0.5;

/// "12.5" as a person would type it.
QString typedText(double value) {
    QString text = QString::number(value, 'f', 2);
    while (text.endsWith(QLatin1Char('0'))) {
        text.chop(1);
    }
    if (text.endsWith(QLatin1Char('.'))) {
        text.chop(1);
    }
    return text;
}

} // namespace

CouponDraft::CouponDraft(CouponTested about, CouponBy by, std::string series)
    : m_tested(std::move(about)), m_series(std::move(series)), m_by(by) {
    m_tested.weldedPa.clear();
    m_tested.parentPa.clear();
    m_tested.angleMilli.clear();
    m_tested.ramUm.clear();
    m_tested.cracked.clear();
    m_step = isBend() ? CouponStep::Bend : CouponStep::Welded;
    m_piece = m_by == CouponBy::Load ? Piece::Load : Piece::Strength;
}

CouponDraft CouponDraft::of(CouponTested entered, std::string series) {
    const CouponBy by = !entered.ramUm.empty()   ? CouponBy::Ram
                        : entered.test == "bend" ? CouponBy::Angle
                                                 : CouponBy::Strength;
    CouponDraft out({}, by, std::move(series));
    out.m_tested = std::move(entered);
    out.m_step = out.isBend()                    ? CouponStep::Bend
                 : out.m_tested.parentPa.empty() ? CouponStep::Welded
                                                 : CouponStep::Parent;
    return out;
}

std::vector<std::int64_t>& CouponDraft::valuesOf(CouponStep step) {
    return step == CouponStep::Welded   ? m_tested.weldedPa
           : step == CouponStep::Parent ? m_tested.parentPa
           : m_by == CouponBy::Ram      ? m_tested.ramUm
                                        : m_tested.angleMilli;
}

const std::vector<std::int64_t>& CouponDraft::valuesOf(CouponStep step) const {
    return const_cast<CouponDraft*>(this)->valuesOf(step);
}

bool CouponDraft::isEmpty() const {
    return m_tested.weldedPa.empty() && m_tested.parentPa.empty() && m_tested.angleMilli.empty() &&
           m_tested.ramUm.empty();
}

bool CouponDraft::isWhole() const {
    return isBend() ? !values().empty() && values().size() == m_tested.cracked.size()
                    : !m_tested.weldedPa.empty();
}

ValueTask CouponDraft::task() const {
    ValueTask task = taskOf(m_step, values().size());
    const bool bend = isBend();
    for (const std::int64_t one : values()) {
        task.before << numberText(static_cast<double>(one) / (bend ? 1e3 : kPaPerMpa), 1);
    }
    return task;
}

ValueTask CouponDraft::taskOf(CouponStep step, std::size_t at) const {
    ValueTask task;
    const std::size_t number = at + 1;
    if (isBend()) {
        task.title = tr("Bend coupon %1").arg(number);
        const bool ram = m_by == CouponBy::Ram;
        task.where = ram ? tr("The ram's travel at the crack, or at the end.")
                         : tr("The angle at the crack, or at the end.");
        task.unit = ram ? QStringLiteral("mm") : QStringLiteral("°");
        task.least = 0;
        task.most = static_cast<double>(ram ? kGreatestRamUm : kGreatestBendMilli) / 1e3;
        task.decimals = 1;
        return task;
    }
    task.title = step == CouponStep::Welded ? tr("Welded coupon %1").arg(number)
                                            : tr("Coupon %1 of the parent sheet").arg(number);
    switch (m_piece) {
    case Piece::Strength:
        task.where = tr("Greatest force over its section.");
        task.unit = QStringLiteral("N/mm²");
        task.least = kLeastStrengthMpa;
        task.most = kGreatestStrengthMpa;
        break;
    case Piece::Load:
        task.where = tr("The greatest force that it held.");
        task.unit = QStringLiteral("N");
        task.least = 1;
        task.most = kGreatestForceN;
        task.decimals = 1;
        break;
    case Piece::Width:
        task.where = tr("Its width where it is narrowest.");
        task.unit = QStringLiteral("mm");
        task.least = kLeastMm;
        task.most = kWidestMm;
        break;
    case Piece::Thickness:
        task.where = tr("Its thickness there, without bead.");
        task.unit = QStringLiteral("mm");
        task.least = kLeastMm;
        task.most = kThickestMm;
        break;
    }
    return task;
}

QString CouponDraft::typed() const {
    const auto& before = m_piece == Piece::Width ? m_width : m_thickness;
    const bool stays = m_piece == Piece::Width || m_piece == Piece::Thickness;
    return stays && before ? typedText(*before) : QString();
}

bool CouponDraft::take(double value) {
    if (isBend()) {
        values().push_back(std::llround(value * 1e3)); // thousandths of a degree, or µm
        m_step = CouponStep::Cracked;
        return false;
    }
    switch (m_piece) {
    case Piece::Load:
        m_force = value;
        m_piece = Piece::Width;
        return false;
    case Piece::Width:
        m_width = value;
        m_piece = Piece::Thickness;
        return false;
    case Piece::Thickness:
        m_thickness = value;
        value = m_force / (*m_width * *m_thickness);
        m_piece = Piece::Load;
        break;
    case Piece::Strength:
        break;
    }
    values().push_back(std::llround(value * 1e3) * 1'000); // kPa, as they are stored
    return true;
}

void CouponDraft::takeCracked(bool cracked) {
    m_tested.cracked.push_back(cracked ? 1 : 0);
    m_step = CouponStep::Bend;
}

void CouponDraft::takeBack() {
    if (m_step == CouponStep::Cracked) {
        values().pop_back();
        m_step = CouponStep::Bend;
        return;
    }
    if (m_piece == Piece::Width || m_piece == Piece::Thickness) {
        m_piece = m_piece == Piece::Thickness ? Piece::Width : Piece::Load;
        return;
    }
    if (!values().empty()) {
        values().pop_back();
        if (isBend()) {
            m_tested.cracked.pop_back();
        }
    } else if (m_step == CouponStep::Parent) {
        m_step = CouponStep::Welded;
    }
}

bool CouponDraft::next() {
    if (m_step != CouponStep::Welded) {
        return false;
    }
    m_step = CouponStep::Parent;
    m_piece = m_by == CouponBy::Load ? Piece::Load : Piece::Strength;
    return true;
}

std::vector<CouponDraft::Entered> CouponDraft::entered() const {
    std::vector<Entered> out;
    const auto add = [&](CouponStep step, double scale, int decimals) {
        const auto& values = valuesOf(step);
        for (std::size_t i = 0; i < values.size(); ++i) {
            const ValueTask task = taskOf(step, i);
            out.push_back(
                {step, i,
                 tr("%1: %2").arg(
                     task.title, numberText(static_cast<double>(values[i]) / scale, decimals) +
                                     QLatin1Char(' ') + task.unit)});
        }
    };
    if (isBend()) {
        add(CouponStep::Bend, 1e3, 1);
    } else {
        add(CouponStep::Welded, kPaPerMpa, 2);
        add(CouponStep::Parent, kPaPerMpa, 2);
    }
    return out;
}

ValueTask CouponDraft::taskOf(const Entered& one) const {
    return taskOf(one.step, one.at);
}

void CouponDraft::replace(const Entered& one, double value) {
    valuesOf(one.step)[one.at] =
        isBend() ? std::llround(value * 1e3) : std::llround(value * 1e3) * 1'000; // as take()
}

void CouponDraft::replaceCracked(const Entered& one, bool cracked) {
    m_tested.cracked[one.at] = cracked ? 1 : 0;
}

} // namespace seamclock
