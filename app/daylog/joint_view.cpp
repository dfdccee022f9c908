#include "app/daylog/joint_view.h"

#include "app/text/card_text.h"
#include "app/text/coupon_words.h"
#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/record_words.h"
#include "app/text/words.h"
#include "core/report/record_reasons.h"
#include "core/report/set_actual.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>
#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace seamclock {
namespace {

struct Day {
    Q_DECLARE_TR_FUNCTIONS(Day)
};

const QString kNone = QStringLiteral("–");

QString itemName(const SetActual& item, UnitSystem units) {
    const QString what = itemWord(item.item);
    const QString where = whereText(item, units);
    return where.isEmpty() ? what : Day::tr("%1, %2").arg(what, where);
}

/// How one joint's values are written.
struct Writing {
    const WeldPlan& plan;
    UnitSystem units;

    QString text(std::int64_t value, const std::string& unit) const {
        return amountText(value, unit, plan, units);
    }
    QString bare(std::int64_t value, const std::string& unit) const {
        return amountNumber(value, unit, plan, units);
    }
};

/// The verdict's row that a value is judged by.
std::string findingOf(const std::string& item) {
    if (item == "recheck_reading") {
        return "joining_reading";
    }
    return item == "soak_reading" ? "soak_pressure" : item;
}

bool isOut(const SetActual& item) {
    const bool k = item.item == "bead_k"; // above the sheet's surface everywhere
    return item.actual && ((item.low && *item.actual < *item.low) ||
                           (item.high && *item.actual > *item.high) || (k && *item.actual <= 0));
}

/// Outside its band, and the verdict calls it out of limits: not each reading outside is, as one
/// that was topped up in time.
bool isOut(const SetActual& item, const WeldRecord& record) {
    const std::string code = findingOf(item.item);
    return isOut(item) && std::any_of(
                              record.verdict.findings.begin(), record.verdict.findings.end(),
                              [&](const Finding& one) {
                                  // Pressure above its band belongs to build-up.
                                  const bool buildUp = item.item == "joining_reading" &&
                                                       one.code == "build_up" &&
                                                       one.unit == item.unit;
                                  return (one.code == code || buildUp) && one.grade == Grade::Out &&
                                         (one.n == 0 || one.n == item.n);
                              });
}

QString setText(const SetActual& item, const Writing& in) {
    if (item.set) {
        return in.text(*item.set, item.unit);
    }
    if (item.item == "bead_k") {
        return Day::tr("above 0");
    }
    if (item.high) {
        return Day::tr("to %1").arg(in.text(*item.high, item.unit));
    }
    return item.low ? Day::tr("from %1").arg(in.text(*item.low, item.unit)) : kNone;
}

QString allowedText(const SetActual& item, const Writing& in) {
    if (item.low && item.high) {
        return Day::tr("%1 to %2")
            .arg(in.bare(*item.low, item.unit), in.text(*item.high, item.unit));
    }
    if (item.high) {
        return Day::tr("to %1").arg(in.text(*item.high, item.unit));
    }
    if (item.low) {
        return Day::tr("from %1").arg(in.text(*item.low, item.unit));
    }
    return item.item == "bead_k" ? Day::tr("above 0") : kNone;
}

/// What was corrected, by event and field: what stood there before, the oldest first.
std::map<std::pair<std::int64_t, std::string>, std::vector<std::string>>
correctionsOf(const WeldRecord& record) {
    std::map<std::pair<std::int64_t, std::string>, std::vector<std::string>> out;
    for (const Event& event : record.events) {
        if (const auto* made = std::get_if<ValueCorrected>(&event.d)) {
            out[{made->targetN, made->field}].push_back(made->was);
        }
    }
    return out;
}

QString
struckText(const std::vector<std::string>& before, const std::string& unit, const Writing& in) {
    QStringList out;
    for (const std::string& was : before) {
        bool whole = false;
        const qlonglong value = fromUtf8(was).toLongLong(&whole);
        out << (whole && !unit.empty() ? in.bare(value, unit) : fromUtf8(was));
    }
    return out.join(QLatin1Char(' '));
}

QString takenText(const PhaseRecord& phase) {
    if (!phase.took) {
        return kNone;
    }
    const QString low = timeText(phase.took->lo);
    return phase.took->lo == phase.took->hi
               ? low
               : Day::tr("%1 to %2").arg(low, timeText(phase.took->hi));
}

/// The verdict alone says so: a little past a limit is a remark, and of alignment no time is out.
bool isOut(const PhaseRecord& phase, const WeldRecord& record) {
    const std::string code = phase.phase == "soak" ? "soak_time" : phase.phase;
    return std::any_of(
        record.verdict.findings.begin(), record.verdict.findings.end(), [&](const Finding& one) {
            return one.code == code && one.unit == "ms" && one.grade == Grade::Out;
        });
}

QString phaseAllowed(const PhaseRecord& phase) {
    if (phase.low && phase.high) {
        return Day::tr("%1 to %2").arg(timeText(*phase.low), timeText(*phase.high));
    }
    return phase.high  ? Day::tr("to %1").arg(timeText(*phase.high))
           : phase.low ? Day::tr("from %1").arg(timeText(*phase.low))
                       : kNone;
}

TableView::Cell cell(const QString& text) {
    return {text, {}, false, false};
}
TableView::Cell softCell(const QString& text) {
    return {text, {}, false, true};
}
TableView::Row head(const QString& text) {
    return {{cell(text)}, true, 0};
}
QString fromEvent(std::int64_t n) {
    return n == 0 ? kNone : Day::tr("event %1").arg(n);
}

/// The one of these that is nearest to being wrong, or is.
const SetActual* worst(
    const std::vector<SetActual>& all, const std::string& item,
    bool (*worse)(std::int64_t, std::int64_t)) {
    const SetActual* found = nullptr;
    for (const SetActual& one : all) {
        if (one.item == item && one.actual &&
            (found == nullptr || worse(*one.actual, *found->actual))) {
            found = &one;
        }
    }
    return found;
}

bool isLess(std::int64_t a, std::int64_t b) {
    return a < b;
}
bool isMore(std::int64_t a, std::int64_t b) {
    return a > b;
}
bool always(std::int64_t, std::int64_t) {
    return true;
}

/// Out of its window before in it, then the one further from the plan's aim, of those that it was
/// welded with.
const SetActual* worstPlate(const std::vector<SetActual>& all, const WeldRecord& record) {
    std::set<std::int64_t> inForce;
    for (const Retained& one : plateWeldedWith(record.checks)) {
        inForce.insert(one.n);
    }
    const auto off = [](const SetActual& one) {
        return std::abs(*one.actual - one.set.value_or(*one.actual));
    };
    const SetActual* found = nullptr;
    for (const SetActual& one : all) {
        if (one.item == "plate_temperature" && one.actual && inForce.count(one.n) > 0 &&
            (found == nullptr ||
             std::pair(isOut(one), off(one)) > std::pair(isOut(*found), off(*found)))) {
            found = &one;
        }
    }
    return found;
}

std::vector<JointView::Value> theFew(const WeldRecord& record, UnitSystem units) {
    const WeldPlan& plan = record.plan;
    const Writing in{plan, units};
    const std::vector<SetActual> all = setAndActual(record, nullptr);
    std::vector<JointView::Value> out;
    const auto add = [&](const QString& name, const SetActual* one, const QString& set) {
        JointView::Value value;
        value.item = name;
        value.set = set;
        value.done = kNone;
        if (one != nullptr && one->actual) {
            value.done = in.bare(*one->actual, one->unit);
            if (one->was) {
                value.done = Day::tr("%1, was %2").arg(value.done, in.bare(*one->was, one->unit));
            }
            value.out = isOut(*one, record);
            value.n = one->n;
        }
        out.push_back(value);
    };
    const auto setOf = [&](const char* item) {
        const auto found = std::find_if(
            all.begin(), all.end(), [&](const SetActual& one) { return one.item == item; });
        return found == all.end() ? kNone : setText(*found, in);
    };
    add(Day::tr("plate"), worstPlate(all, record), setOf("plate_temperature"));
    // Attested by the step that ended alignment, where nobody measured it.
    add(Day::tr("bead"), worst(all, "alignment_bead", isLess),
        plan.beadMinUm ? Day::tr("from %1").arg(in.text(*plan.beadMinUm, "um")) : kNone);
    add(Day::tr("joining"), worst(all, "joining_reading", always), setOf("joining_reading"));
    add(Day::tr("lowest"), worst(all, "recheck_reading", isLess),
        plan.scale ? lowEndText(plan.scale->joining.lowMilli, plan.scale->divisionMilli) +
                         QLatin1Char(' ') + plainText(plan.scale->unit)
                   : kNone);
    add(Day::tr("K value"), worst(all, "bead_k", isLess), Day::tr("above 0"));
    add(Day::tr("in line"), worst(all, "misalignment", isMore),
        Day::tr("to %1").arg(in.text(plan.misalignmentMaxUm, "um")));
    return out;
}

QString aboutText(const WeldRecord& record, const DayNames& names, UnitSystem units) {
    const Writing in{record.plan, units};
    QStringList batches;
    for (const Sheet& sheet : record.opened.sheets) {
        if (!sheet.batch.empty()) {
            batches << fromUtf8(sheet.batch);
        }
    }
    batches.removeDuplicates(); // two halves of one sheet
    QString about = Day::tr("Joint %1. %2 %3, %4")
                        .arg(record.opened.number)
                        .arg(
                            fromUtf8(record.plan.material), in.text(record.plan.thicknessUm, "um"),
                            in.text(record.plan.lengthUm, "um"));
    if (batches.size() == 1) {
        about += Day::tr(", batch %1").arg(batches.front());
    } else if (!batches.isEmpty()) {
        about += Day::tr(", batches %1").arg(batches.join(Day::tr(" and ")));
    }
    return about + Day::tr(". %1, %2.")
                       .arg(
                           names.person(record.openedBy),
                           fullDayWords(toIsoDate(record.openedAt.utc, record.openedAt.offset)));
}

/// The reasons that a verdict is told with.
struct Told {
    std::string_view word;
    std::vector<std::pair<std::string, QString>> reasons; // by grade
};

/// As it was stored, where that is another word than this program's.
Told toldOf(const WeldRecord& record, UnitSystem units) {
    Told out;
    out.word = toString(record.verdict.word);
    if (record.stored && record.stored->verdict != out.word) {
        out.word = record.stored->verdict;
        for (const StoredReason& reason : record.stored->reasons) {
            out.reasons.emplace_back(reason.grade, findingText(reason, record.plan, units));
        }
        return out;
    }
    for (const Finding& finding : record.verdict.findings) {
        out.reasons.emplace_back(toString(finding.grade), findingText(finding, record.plan, units));
    }
    return out;
}

QString reasonOf(const WeldRecord& record, UnitSystem units) {
    if (record.aborted) {
        return stopText(*record.aborted);
    }
    const Told told = toldOf(record, units);
    if (told.word == toString(VerdictWord::WithinLimits)) {
        return {};
    }
    const bool out = told.word == toString(VerdictWord::OutOfLimits);
    const std::string_view wanted = out ? toString(Grade::Out)
                                    : told.word == toString(VerdictWord::Incomplete)
                                        ? toString(Grade::Incomplete)
                                        : toString(Grade::Remark);
    const auto isWanted = [&](const auto& reason) { return reason.first == wanted; };
    const auto found = std::find_if(told.reasons.begin(), told.reasons.end(), isWanted);
    QString first =
        found == told.reasons.end() ? midSentence(verdictWord(told.word)) : found->second;
    if (!first.isEmpty()) {
        first[0] = first[0].toUpper();
    }
    if (out && found != told.reasons.end()) {
        if (told.reasons.size() == 1) {
            return Day::tr("%1. All else within limits.").arg(first);
        }
    }
    const auto more = static_cast<qlonglong>(told.reasons.size()) - 1;
    return more > 0 ? Day::tr("%1, and %2 more.").arg(first).arg(more) : first + QLatin1Char('.');
}

/// What this program makes of a closed joint now, where that isn't what was stored.
QString otherNow(const WeldRecord& record) {
    const bool differs = differsFromStored(record);
    const bool older = record.stored->rules != kVerdictRules;
    if (!differs && !older) {
        return {};
    }
    const std::string_view word = toString(record.verdict.word);
    QString now = midSentence(verdictWord(word));
    if (differs && word == record.stored->verdict) {
        now = Day::tr("%1, with other reasons").arg(now);
    }
    if (older) {
        return Day::tr("Stored at closing, by rules %1. By today's rules %2: %3.")
            .arg(record.stored->rules)
            .arg(kVerdictRules)
            .arg(now);
    }
    return isCorrectedSinceClosing(record)
               ? Day::tr("Stored at closing. After a correction: %1.").arg(now)
               : Day::tr("Stored at closing. Worked out again: %1.").arg(now);
}

/// With its date where it is another day than the weld's.
QString eventTime(const Instant& at, const WeldRecord& record) {
    return dateText(at) == dateText(record.openedAt) ? clockText(at) : instantText(at);
}

QString decidedText(const WeldRecord& record, const DayNames& names) {
    QString out;
    for (const Retained& one : record.decisions) {
        if (const auto* decided = std::get_if<Decided>(&one.d)) {
            out = Day::tr("%1 by %2, %3: %4")
                      .arg(
                          decisionWord(record), names.person(one.by), whenText(one.at),
                          choiceWord(decided->reason));
        }
    }
    if (!out.isEmpty()) {
        out[0] = out[0].toUpper();
    }
    for (const Retained& one : record.decisions) {
        if (std::holds_alternative<SignedOff>(one.d)) {
            const QString sign =
                Day::tr("signed off by %1, %2").arg(names.person(one.by), whenText(one.at)) +
                (changedAfter(one.n, record) == 0 ? QString() : Day::tr(", changed since"));
            out = out.isEmpty() ? sign : Day::tr("%1; %2").arg(out, sign);
        }
    }
    return out;
}

/// The events of a test are no events of the joint: each is told as the test's.
void addCoupons(
    TableView& table, const CouponSeries& series, const DayNames& names, UnitSystem units) {
    const auto row =
        [&table](const QString& what, const QString& by, TableView::Cell found, std::int64_t n) {
            table.rows.push_back(
                {{cell(what), softCell(by), std::move(found),
                  softCell(Day::tr("test, event %1").arg(n))},
                 false,
                 0});
        };
    const CouponVersion& last = series.versions.back();
    QStringList lines = couponValues(last.tested, units);
    if (series.factor) {
        lines.prepend(answerText(*series.factor, series.required));
        lines.prepend(couponResult(series, units));
    }
    for (qsizetype i = 0; i < lines.size(); ++i) {
        TableView::Cell found = cell(lines[i]);
        found.out = i == 0 && series.factor &&
                    answerOf(*series.factor, series.required) == FactorAnswer::NotMet;
        row(i == 0 ? couponTitle(last.tested) : QString(),
            i == 0 ? names.person(last.by) : QString(), found, last.n);
    }
    for (auto was = series.versions.rbegin() + 1; was != series.versions.rend(); ++was) {
        const CouponVersion& next = *(was - 1); // from the newest back
        const QString why = plainText(next.tested.reason.value_or(""));
        TableView::Cell found =
            cell(why.isEmpty() ? Day::tr("put right") : Day::tr("put right: %1").arg(why));
        const auto person = [&names](const std::string& id) { return names.person(id); };
        found.struck = (couponMoves(*was, next, units, person) + couponValues(was->tested, units))
                           .join(Day::tr("; "));
        row({}, names.person(was->by), found, was->n);
    }
    for (const UnreadEvent& one : series.unread) {
        TableView::Cell found = cell(Day::tr("can't be read"));
        found.out = true;
        row({}, {}, found, one.n);
    }
}

} // namespace

JointView jointView(
    const WeldRecord& record, const DayNames& names, const HeatEstimate* estimate,
    UnitSystem units) {
    JointView view;
    view.weld = record.weld;
    view.trial = record.opened.type == WeldType::Trial;
    view.ended = record.stored || record.aborted;
    const VerdictLook look = lookOf(record);
    view.mark = look.mark;
    view.tone = look.tone;
    view.about = aboutText(record, names, units);
    view.course = courseView(record, estimate);
    view.values = theFew(record, units);
    view.decided = decidedText(record, names);
    if (!view.ended) {
        view.verdict = Day::tr("Not finished");
        view.reason = Day::tr("It is %1.").arg(stateWord(record.phaseNow));
        return view;
    }
    view.reason = reasonOf(record, units);
    if (record.aborted) {
        view.verdict = Day::tr("Stopped");
        return view;
    }
    view.verdict = verdictWord(std::string_view(record.stored->verdict));
    view.remarks = record.stored->verdict == toString(VerdictWord::WithRemarks);
    view.stored = otherNow(record);
    return view;
}

JointView damagedView(const JointLine& line, const DayNames& names) {
    JointView view;
    view.weld = line.weld;
    view.mark = Mark::Trouble;
    view.tone = Tone::Soon;
    view.verdict = Day::tr("Its events make no weld");
    view.reason = inWords(line.trouble);
    view.about = line.number > 0
                     ? Day::tr("Joint %1. %2.").arg(line.number).arg(names.bench(line.bench))
                     : plainText(line.weld); // its opening can't be read either
    return view;
}

TableView valuesTable(
    const WeldRecord& record, const Bench* bench, const HeatEstimate* estimate, UnitSystem units) {
    const WeldPlan& plan = record.plan;
    const Writing in{plan, units};
    const auto corrected = correctionsOf(record);
    TableView table;
    table.columns = {
        Day::tr("value"), Day::tr("set"), Day::tr("allowed"),
        Day::tr("done", "beside what was set"), Day::tr("from")};
    table.widths = {0.29, 0.19, 0.21, 0.19, 0.12};
    const auto row = [&](const QString& item, const QString& set, const QString& allowed,
                         TableView::Cell done, std::int64_t n) {
        table.rows.push_back(
            {{cell(item), cell(set), softCell(allowed), std::move(done), softCell(fromEvent(n))},
             false,
             n});
    };
    table.rows.push_back(head(Day::tr("Times")));
    for (const PhaseRecord& phase : record.phases) {
        const std::optional<Milliseconds> set = phase.target               ? phase.target
                                                : phase.phase == "cooling" ? phase.low
                                                                           : phase.high;
        TableView::Cell done = cell(takenText(phase));
        done.out = isOut(phase, record);
        row(phaseName(phase.phase), set ? timeText(*set) : kNone, phaseAllowed(phase), done,
            phase.toN != 0 ? phase.toN : phase.fromN);
    }
    table.rows.push_back(head(Day::tr("Readings and measures")));
    const Surroundings air = surroundings(record);
    row(Day::tr("shop"), in.text(record.opened.ambientMc, "mC"), kNone,
        cell(in.text(air.ambientMc, "mC")), air.ambientN);
    for (const SetActual& item : setAndActual(record, bench)) {
        TableView::Cell done = cell(item.actual ? in.text(*item.actual, item.unit) : kNone);
        done.out = isOut(item, record);
        const auto before = corrected.find({item.n, std::string(fieldOfItem(item.item))});
        if (item.n != 0 && before != corrected.end()) {
            done.struck = struckText(before->second, item.unit, in);
        }
        row(itemName(item, units), item.set ? in.text(*item.set, item.unit) : kNone,
            allowedText(item, in), done, item.n);
    }
    table.rows.push_back(head(Day::tr("Sheets")));
    for (std::size_t i = 0; i < record.opened.sheets.size(); ++i) {
        const Sheet& sheet = record.opened.sheets[i];
        const QString which = Day::tr("sheet %1").arg(i + 1);
        row(Day::tr("%1, material").arg(which), kNone, kNone,
            cell((fromUtf8(sheet.material) + QLatin1Char(' ') + fromUtf8(sheet.grade.value_or("")))
                     .trimmed()),
            1);
        row(Day::tr("%1, thickness").arg(which), in.text(plan.thicknessUm, "um"), kNone,
            cell(in.text(sheet.thicknessUm, "um")), 1);
        for (const auto& [field, words, value] :
             {std::tuple{"maker", Day::tr("%1, maker"), sheet.maker},
              std::tuple{"batch", Day::tr("%1, batch"), sheet.batch}}) {
            TableView::Cell done = cell(value.empty() ? kNone : fromUtf8(value));
            const auto before = corrected.find({1, "sheets." + std::to_string(i) + "." + field});
            if (before != corrected.end()) {
                done.struck = struckText(before->second, "", in);
            }
            row(words.arg(which), kNone, kNone, done, 1);
        }
    }
    if (estimate != nullptr && (record.stored || record.aborted)) {
        table.rows.push_back(head(Day::tr("Heat, an estimate: it never judges")));
        const auto range = [&](const QString& item, const std::optional<HeatRange>& of,
                               bool degrees) {
            if (of) {
                const auto measure = [&](double value) {
                    return degrees ? temperatureIn(units, std::llround(value) * 1000)
                                   : lengthIn(units, std::llround(value * 10) * 100);
                };
                row(item, kNone,
                    Day::tr("%1 to %2")
                        .arg(measureNumber(measure(of->low)), measureNumber(measure(of->high))),
                    cell(measureText(measure(of->likely))), 0);
            }
        };
        const HeatNumbers& numbers = estimate->numbers;
        range(Day::tr("melt depth, end of soak"), numbers.meltDepthMm, false);
        range(Day::tr("skin, end of soak"), numbers.skinEndOfSoakC, true);
        range(Day::tr("skin, faces meet"), numbers.skinFacesMeetC, true);
        range(Day::tr("weld plane, release"), numbers.weldPlaneAtReleaseC, true);
    }
    const auto reason = [&](std::string_view grade, const QString& text, std::int64_t n) {
        TableView::Cell done = cell(text);
        done.out = grade != toString(Grade::Remark);
        const QString word = grade == toString(Grade::Remark) ? Day::tr("remark")
                             : grade == toString(Grade::Out)  ? Day::tr("out of limits")
                                                              : Day::tr("incomplete");
        table.rows.push_back({{cell(word), done}, false, n});
    };
    if (!record.verdict.findings.empty()) {
        table.rows.push_back(head(Day::tr("What the verdict found")));
        for (const Finding& finding : record.verdict.findings) {
            reason(toString(finding.grade), findingText(finding, plan, units), finding.n);
        }
    }
    if (differsFromStored(record)) {
        const std::int64_t n = closedN(record);
        table.rows.push_back(
            head(Day::tr("Stored at closing: %1")
                     .arg(midSentence(verdictWord(std::string_view(record.stored->verdict))))));
        for (const StoredReason& one : record.stored->reasons) {
            reason(one.grade, findingText(one, plan, units), n);
        }
    }
    return table;
}

TableView eventsTable(const WeldRecord& record, const DayNames& names, UnitSystem units) {
    TableView table;
    table.columns = {Day::tr("event"), Day::tr("time"), Day::tr("who"), Day::tr("what")};
    table.widths = {0.08, 0.21, 0.18, 0.53};
    std::map<std::int64_t, bool> takenBack;
    for (const Event& event : record.events) {
        if (const auto* back = std::get_if<StepTakenBack>(&event.d)) {
            takenBack[back->targetN] = true;
        }
    }
    for (const Event& event : record.events) {
        TableView::Cell what = cell(eventText(event.d, record.plan, units));
        if (takenBack.count(event.n) > 0) {
            what.struck = std::move(what.text);
            what.text = Day::tr("taken back");
        }
        table.rows.push_back(
            {{cell(QString::number(event.n)), cell(eventTime(event.at, record)),
              softCell(names.person(event.by)), what},
             false,
             event.n});
    }
    return table;
}

/// Whether it speaks against the joint.
bool isBad(const CouponSeries& series) {
    return cracksOf(series.now()) > 0 ||
           (series.factor && answerOf(*series.factor, series.required) == FactorAnswer::NotMet);
}

QString testedText(const std::vector<CouponSeries>& coupons, UnitSystem units) {
    if (coupons.empty()) {
        return {};
    }
    // The newest that speaks against it, else the newest; "Looked at" has them all.
    const auto bad = std::find_if(coupons.rbegin(), coupons.rend(), isBad);
    const CouponSeries& series = bad == coupons.rend() ? coupons.back() : *bad;
    const CouponVersion& last = series.versions.back();
    QStringList all{
        Day::tr("%1: %2 (event %3 of the test)")
            .arg(couponTitle(last.tested), couponResult(series, units), QString::number(last.n))};
    if (coupons.size() > 1) {
        all << Day::tr("tests in all: %1").arg(coupons.size());
    }
    if (std::any_of(coupons.begin(), coupons.end(), [](const CouponSeries& one) {
            return !one.unread.empty();
        })) {
        all << Day::tr("not all of it can be read");
    }
    return all.join(Day::tr("; "));
}

TableView lookedAtTable(
    const WeldRecord& record, const std::vector<JointPhoto>& photos, const DayNames& names,
    UnitSystem units, const std::vector<CouponSeries>& coupons, const DayNames* own) {
    TableView table;
    table.columns = {Day::tr("what"), Day::tr("by"), Day::tr("found"), Day::tr("from")};
    table.widths = {0.2, 0.22, 0.46, 0.12};
    const auto row = [&](const QString& what, const std::string& by, TableView::Cell found,
                         std::int64_t n) {
        table.rows.push_back(
            {{cell(what), softCell(names.person(by)), std::move(found), softCell(fromEvent(n))},
             false,
             n});
    };
    for (const Retained& one : record.beads) {
        row(Day::tr("bead"), one.by, cell(eventText(one.d, record.plan, units)), one.n);
    }
    for (const Retained& one : record.remarks) {
        row(Day::tr("remark"), one.by, cell(eventText(one.d, record.plan, units)), one.n);
    }
    for (const Retained& one : record.reasons) {
        row(Day::tr("reason"), one.by, cell(eventText(one.d, record.plan, units)), one.n);
    }
    for (const Retained& one : record.decisions) {
        const QString what = std::holds_alternative<Graded>(one.d)      ? Day::tr("grade")
                             : std::holds_alternative<SignedOff>(one.d) ? Day::tr("sign-off")
                                                                        : Day::tr("decision");
        row(what, one.by, cell(eventText(one.d, record.plan, units)), one.n);
    }
    for (const JointPhoto& photo : photos) {
        TableView::Cell found = cell(photoLine(photo));
        found.out = isTrouble(photo.state);
        row(Day::tr("photo"), photo.by, found, photo.n);
    }
    for (const CouponSeries& series : coupons) {
        addCoupons(table, series, own != nullptr ? *own : names, units);
    }
    if (table.rows.empty()) {
        table.rows.push_back(head(Day::tr("Nobody has looked at this joint yet.")));
    }
    return table;
}

std::vector<Correctable> correctables(const WeldRecord& record) {
    std::vector<Correctable> out;
    const Writing in{record.plan, UnitSystem::Metric}; // as it was written down
    for (const SetActual& item : setAndActual(record, nullptr)) {
        const std::string_view field = fieldOfItem(item.item);
        if (!item.actual || item.n == 0 || field.empty()) {
            continue;
        }
        Correctable one;
        one.n = item.n;
        one.field = field;
        one.value = std::to_string(*item.actual);
        one.item = itemName(item, in.units);
        one.text = in.text(*item.actual, item.unit);
        one.scale = 1000;
        one.unit = item.unit == "mC"   ? QStringLiteral("°C")
                   : item.unit == "um" ? QStringLiteral("mm")
                   : record.plan.scale ? plainText(record.plan.scale->unit)
                                       : QString();
        out.push_back(std::move(one));
    }
    for (std::size_t i = 0; i < record.opened.sheets.size(); ++i) {
        const Sheet& sheet = record.opened.sheets[i];
        for (const auto& [field, words, value] :
             {std::tuple{"maker", Day::tr("sheet %1, maker"), sheet.maker},
              std::tuple{"batch", Day::tr("sheet %1, batch"), sheet.batch}}) {
            Correctable one;
            one.n = 1;
            one.field = "sheets." + std::to_string(i) + "." + field;
            one.value = value;
            one.item = words.arg(i + 1);
            one.text = value.empty() ? kNone : fromUtf8(value);
            one.scale = 0;
            out.push_back(std::move(one));
        }
    }
    return out;
}

} // namespace seamclock
