// What the pages of strength tests show: each series of coupons as a line, one series whole with
// everything that was ever entered of it, and the welding factor in words. A factor never stands
// without its interval, or without saying why there is none.
#pragma once

#include "app/daylog/day_view.h"
#include "app/pages/list_page.h"
#include "app/text/coupon_words.h"
#include "core/quality/coupons.h"

#include <QString>
#include <QStringList>
#include <utility>
#include <vector>

namespace seamclock {

struct AnswerLook {
    Mark mark = Mark::Open;
    Tone tone = Tone::Rest;
};
AnswerLook lookOf(FactorAnswer answer);

/// "joint 12", or "a procedure trial"
QString sourceText(const CouponSeries& series);

ListRowView couponRow(const CouponSeries& series, const DayNames& names);
/// The newest first, behind them what can't be read; with nothing entered a sentence that says so.
ListView couponList(const CouponsRead& all, const DayNames& names);
/// One series: its result, its values, and each version with who entered it and why.
ListView couponPage(const CouponSeries& series, const DayNames& names);
/// What was typed, before it is kept: its result as it would be, and its values.
std::vector<ListRowView> draftRows(const CouponTested& tested);
/// What the laboratory's paper says besides, each to be touched: by which standard it was tested
/// and, of a trial without a joint here, who welded.
enum class CouponWord { Standard, Welder };
std::vector<std::pair<CouponWord, ListRowView>>
wordRows(const CouponTested& tested, const DayNames& names);

} // namespace seamclock
