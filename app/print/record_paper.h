// What stands on a joint's record, as a document: who, what, when and where; the verdict with every
// reason, and the stored one beside it where this program's rules say another; set against actual;
// the course; checks, remarks and everything that was changed, with what it was before; what people
// decided; the seal. A number in square brackets is the n of the event in the log that a value
// comes from. What has no bracket stands in the joint's first event. How it is set is paper_flow's.
#pragma once

#include "app/print/paper.h"
#include "app/print/record_pdf.h"
#include "core/weld/verdict.h"

#include <QString>
#include <QStringList>
#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

PaperDoc
recordPaper(const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units);

/// Parts that a report shares.
QString eventMark(std::int64_t n); // "[12]"
QString eventMarks(const std::set<std::int64_t>& all);
/// By what a joint is marked; the mark never stands without its word.
Mark markOf(VerdictWord word);
std::optional<VerdictWord> verdictOf(std::string_view stored);
/// "PRACTICE", for a joint that counts for nothing, or "DEMO SHOP"; else empty.
QString acrossOf(const std::string& world, WeldType type, const PaperWork& work);
QStringList paperCautions();
/// Each test of coupons with its values, and what it was before it was put right. A number in
/// square brackets is the n of an event of that test, which is named.
QStringList
couponItems(const std::vector<CouponSeries>& coupons, const LogFacts& log, UnitSystem units);
/// "Seal of 2030-01-07 by Oddo Quenley, …: fingerprint …"
QString sealText(const SealFact& seal, const LogFacts& log);

} // namespace seamclock
