#include "app/print/record_paper.h"

#include "app/text/card_text.h"
#include "app/text/coupon_words.h"
#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/record_words.h"
#include "app/text/words.h"
#include "core/people/certificate.h"
#include "core/report/record_reasons.h"
#include "core/report/set_actual.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>

namespace seamclock {
namespace {

struct RecordPage {
    Q_DECLARE_TR_FUNCTIONS(RecordPaper)
};

QString tr(const char* text) {
    return RecordPage::tr(text);
}

class Writer {
public:
    Writer(const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units)
        : m_joint(joint), m_record(joint.record), m_log(log),
          m_work(workOfJob(work, joint.record.opened.job)), m_units(units) {
        for (const Event& event : m_record.events) {
            if (const auto* corrected = std::get_if<ValueCorrected>(&event.d)) {
                m_corrections.emplace_back(event.n, corrected);
            }
            if (std::holds_alternative<PlanReplaced>(event.d)) {
                m_planN = event.n;
            }
        }
    }

    PaperDoc write() {
        PaperDoc doc;
        doc.onePage = true;
        doc.what = QStringLiteral("record");
        head(doc);
        notices(doc);
        doc.blocks.emplace_back(
            PaperHeading{tr("What was welded"), tr("by the first event [1], unless told")});
        doc.blocks.emplace_back(PaperFacts{cover(), 2});
        verdict(doc);
        values(doc);
        course(doc);
        checks(doc);
        told(doc);
        decisions(doc);
        coupons(doc);
        seals(doc);
        estimate(doc);
        doc.blocks.emplace_back(PaperHeading{tr("Where the plan's values come from"), {}});
        doc.blocks.emplace_back(PaperList{sources(), true, true});
        doc.blocks.emplace_back(PaperHeading{tr("Take care"), {}});
        doc.blocks.emplace_back(PaperList{paperCautions(), true, true});
        doc.blocks.emplace_back(signatures());
        return doc;
    }

private:
    // ---- words

    QString amount(std::int64_t value, std::string_view unit) const {
        return amountText(value, unit, m_record.plan, m_units);
    }
    QString number(std::int64_t value, std::string_view unit) const {
        return amountNumber(value, unit, m_record.plan, m_units);
    }
    QString person(std::string_view id) const {
        return personText(m_joint.elsewhere ? m_joint.people.people : m_log.roster.people, id);
    }
    static QString given(const QString& text) { return text.isEmpty() ? tr("not given") : text; }
    /// No event holds what stands in a job's file alone.
    static QString ofWork(const QString& text, bool isInLog) {
        return isInLog || text.isEmpty() ? given(text) : tr("%1 (from the job's file)").arg(text);
    }

    /// "2030-01-07" only where it is another day than the weld's.
    QString when(const Instant& at) const {
        return dateText(at) == dateText(m_record.openedAt) ? clockText(at) : instantText(at);
    }

    QString allowed(
        const std::optional<std::int64_t>& low, const std::optional<std::int64_t>& high,
        std::string_view unit) const {
        if (low && high) {
            return tr("%1 to %2").arg(number(*low, unit), amount(*high, unit));
        }
        if (low) {
            return tr("at least %1").arg(amount(*low, unit));
        }
        return high ? tr("at most %1").arg(amount(*high, unit)) : QString();
    }

    /// "was 51.5 mm [44]": what stood there before somebody corrected it.
    /// `field`: how the event's own name of that value ends, as "reading_milli".
    QString
    before(std::int64_t n, std::string_view field, std::string_view unit, std::int64_t now) const {
        QStringList all;
        for (const auto& [at, corrected] : m_corrections) {
            bool isNumber = false;
            const qlonglong was = fromUtf8(corrected->was).toLongLong(&isNumber);
            if (corrected->targetN == n && isNumber && endsSo(corrected->field, field) &&
                was != now) {
                all << tr("was %1 %2").arg(amount(was, unit), eventMark(at));
            }
        }
        return all.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(all.join(tr(", ")));
    }

    static bool endsSo(const std::string& field, std::string_view end) {
        return field.size() >= end.size() &&
               field.compare(field.size() - end.size(), end.size(), end) == 0;
    }

    // ---- the head

    void head(PaperDoc& doc) const {
        const WeldOpened& opened = m_record.opened;
        doc.title = tr("Joint %1").arg(opened.number);
        if (opened.type != WeldType::Production) {
            doc.title += tr(", ") + typeWord(opened.type);
        }
        doc.under << tr("Record of a heated-tool butt weld");
        const QString seam = opened.seam ? plainText(*opened.seam) : QString();
        const QString part = opened.part ? plainText(*opened.part) : m_work.part;
        if (!seam.isEmpty() || !part.isEmpty()) {
            QStringList parts;
            if (!seam.isEmpty()) {
                parts << tr("Seam %1").arg(seam);
            }
            if (!part.isEmpty()) {
                parts << part;
            }
            doc.under << parts.join(tr(", "));
        }
        QStringList made;
        if (!m_work.shop.isEmpty()) {
            made << m_work.shop;
        }
        if (!m_work.printed.isEmpty()) {
            made << tr("printed %1").arg(m_work.printed);
        }
        made << tr("local times, %1").arg(offsetText(m_record.openedAt));
        made << tr("[n]: the event in the log that a value comes from");
        doc.made = made.join(tr("; "));
        const VerdictWord now = m_record.verdict.word;
        if (m_record.stored && differsInWord()) {
            doc.verdict = tr("Closed as: %1").arg(verdictWord(m_record.stored->verdict)) +
                          QChar(QChar::LineSeparator) +
                          (isCorrectedSinceClosing(m_record) ? tr("After a correction: %1")
                                                             : tr("By the rules now: %1"))
                              .arg(verdictWord(now));
            doc.mark = Mark::Trouble;
        } else if (isOpenNow()) {
            doc.verdict = tr("Not finished: %1").arg(stateWord(m_record.phaseNow));
            doc.mark = Mark::Open;
        } else if (m_record.aborted) {
            doc.verdict = tr("Stopped: %1").arg(midSentence(verdictWord(now)));
            doc.mark = Mark::Cut;
        } else {
            doc.verdict = verdictWord(now);
            doc.mark = markOf(now);
        }
        doc.across = acrossOf(m_log.world, opened.type, m_work);
        doc.goesOn = doc.title + tr(", ") + doc.under.value(1, doc.under.first());
        // Upright, too: a reader that takes the text out may lose a slanted word.
        doc.foot =
            (doc.across.isEmpty() ? QString() : doc.across + tr("; ")) +
            tr("Seamclock; log %1, %2").arg(plainText(m_log.logId), plainText(m_record.weld));
        doc.pageOf = tr("page %1 of %2");
    }

    bool isOpenNow() const { return !m_record.stored && !m_record.aborted; }
    bool differsInWord() const {
        return m_record.stored->verdict != toString(m_record.verdict.word);
    }

    void notices(PaperDoc& doc) const {
        if (!doc.across.isEmpty()) {
            doc.blocks.emplace_back(PaperNotice{
                m_work.demo
                    ? tr("Demo shop: shop, people and joint are invented. This is no certificate.")
                    : tr("Practice. This joint counts for nothing, and this record is no "
                         "certificate.")});
        }
        if (!m_joint.trouble.empty()) {
            doc.blocks.emplace_back(
                PaperNotice{tr("Another log tells this joint differently: %1.")
                                .arg(plainText(inWords(m_joint.trouble).toStdString()))});
        }
    }

    // ---- who, what, when, where

    QString sheetText(std::size_t at) const {
        const Sheet& sheet = m_record.opened.sheets[at];
        QStringList parts;
        parts << plainText(sheet.material);
        if (sheet.grade && !sheet.grade->empty()) {
            parts << plainText(*sheet.grade);
        }
        parts << amount(sheet.thicknessUm, "um");
        parts << tr("maker %1").arg(given(plainText(sheet.maker)) + sheetBefore(at, "maker"));
        parts << tr("batch %1").arg(given(plainText(sheet.batch)) + sheetBefore(at, "batch"));
        if (sheet.mfr) {
            parts << tr("melt flow %1").arg(plainText(*sheet.mfr));
        }
        return parts.join(tr(", "));
    }

    QString sheetBefore(std::size_t at, const char* what) const {
        const std::string field = "sheets." + std::to_string(at) + "." + what;
        QStringList all;
        for (const auto& [n, corrected] : m_corrections) {
            if (corrected->targetN == 1 && corrected->field == field) {
                all << tr("was %1 %2").arg(given(plainText(corrected->was)), eventMark(n));
            }
        }
        return all.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(all.join(tr(", ")));
    }

    QString lengths() const {
        QString text = amount(m_record.plan.lengthUm, "um");
        const auto& all = m_record.opened.lengthsUm;
        if (all.size() > 1) {
            QStringList parts;
            for (const std::int64_t each : all) {
                parts << number(each, "um");
            }
            text += QStringLiteral(" (%1)").arg(parts.join(QStringLiteral(" + ")));
        }
        return text;
    }

    /// Who else took steps, and which.
    QString welders() const {
        QString text = person(m_record.openedBy);
        std::vector<std::pair<std::string, std::set<std::int64_t>>> others;
        for (const Event& event : m_record.events) {
            if (event.by == m_record.openedBy || event.by == "station" || !isOfTheWork(event.d)) {
                continue;
            }
            const auto known = std::find_if(others.begin(), others.end(), [&](const auto& one) {
                return one.first == event.by;
            });
            if (known == others.end()) {
                others.push_back({event.by, {event.n}});
            } else {
                known->second.insert(event.n);
            }
        }
        for (const auto& [by, events] : others) {
            text += tr("; also %1 %2").arg(person(by), eventMarks(events));
        }
        return text;
    }

    static bool isOfTheWork(const WeldDetail& d) {
        return isPivotal(d) || std::holds_alternative<ReleaseStep>(d) ||
               std::holds_alternative<ReadingTaken>(d) || std::holds_alternative<CheckMade>(d) ||
               std::holds_alternative<BeadMeasured>(d);
    }

    QString certificate() const {
        QStringList parts;
        if (m_joint.certificate) {
            parts << tr("%1, to %2, event %3 of %4")
                         .arg(
                             plainText(scopeOf(*m_joint.certificate)),
                             fullDayWords(m_joint.certificate->until),
                             QString::number(m_joint.certificateN), plainText(m_record.openedBy));
        } else {
            parts << tr("none noted in this log");
        }
        for (const std::string& flag : m_record.opened.flags) {
            if (flag.rfind("certificate", 0) == 0) {
                parts << findingWord(flag);
            }
        }
        return parts.join(tr("; "));
    }

    QString benchText() const {
        QStringList parts{plainText(m_record.opened.bench)};
        if (!m_joint.bench) {
            parts << tr("its document is not in the log, so there are no actual forces");
            return parts.join(tr("; "));
        }
        const Bench& bench = *m_joint.bench;
        if (!bench.name.empty()) {
            parts.front() += tr(", ") + plainText(bench.name);
        }
        parts << tr("scale in %1 from %2, %3")
                     .arg(
                         plainText(bench.scale.unit), number(bench.scale.zeroMilli, "milli"),
                         measureText(rateIn(
                             m_units, std::llround(inNewtons(bench.scale.rate()) * 1000),
                             bench.scale.unit)));
        if (bench.calibration) {
            parts << tr("calibrated %1, due %2")
                         .arg(
                             fullDayWords(bench.calibration->doneOn),
                             fullDayWords(bench.calibration->dueOn));
        }
        return parts.join(tr("; "));
    }

    QString procedure() const {
        const WeldPlan& plan = m_record.plan;
        QStringList parts{
            tr("%1, edition %2").arg(plainText(plan.procedure), plainText(plan.edition))};
        const QString cooling = plan.coolingRule == BandRule::Line
                                    ? tr("cooling along the table's straight line")
                                    : tr("cooling by the upper end of the table's band");
        parts
            << (plan.halfCooling
                    ? tr("%1, cut to half: full load only after the whole time").arg(cooling)
                    : cooling);
        if (m_planN > 0) {
            parts << tr("plan replaced %1").arg(eventMark(m_planN));
        }
        return parts.join(tr("; "));
    }

    QString onSheet() const {
        if (!m_record.numberedAt) {
            return tr("number not written on it yet");
        }
        std::int64_t n = 0;
        for (const Event& event : m_record.events) {
            if (std::holds_alternative<JointNumbered>(event.d)) {
                n = event.n;
            }
        }
        return tr("number %1, %2 %3")
            .arg(QString::number(m_record.opened.number), when(*m_record.numberedAt), eventMark(n));
    }

    std::vector<PaperFacts::Fact> cover() const {
        const WeldOpened& opened = m_record.opened;
        std::vector<PaperFacts::Fact> facts;
        const auto add = [&facts](const QString& name, const QString& text) {
            facts.push_back({name, text});
        };
        add(tr("Order"), ofWork(m_work.order, opened.job.has_value()));
        add(tr("Part"), opened.part ? plainText(*opened.part) : ofWork(m_work.part, false));
        add(tr("Seam"), opened.seam ? given(plainText(*opened.seam)) : given({}));
        add(tr("Date"), instantText(m_record.openedAt));
        add(tr("Bench"), benchText());
        add(tr("Welder"), welders());
        add(tr("Certificate"), certificate());
        add(tr("Procedure"), procedure());
        for (std::size_t i = 0; i < opened.sheets.size(); ++i) {
            add(tr("Sheet %1").arg(i + 1), sheetText(i));
        }
        add(tr("Thickness"), amount(m_record.plan.thicknessUm, "um"));
        add(tr("Length"), lengths());
        const Surroundings air = surroundings(m_record);
        add(tr("Shop"), marked(amount(air.ambientMc, "mC"), air.ambientN));
        add(tr("Guard"), marked(guardText(air.guard), air.guardN));
        if (opened.reweldOf) {
            add(tr("Welds again"), reweld());
        }
        QStringList flags;
        for (const std::string& flag : opened.flags) {
            if (flag.rfind("certificate", 0) != 0) {
                flags << findingWord(flag);
            }
        }
        if (!flags.isEmpty()) {
            add(tr("Known before"), flags.join(tr("; ")));
        }
        add(tr("On the sheet"), onSheet());
        return facts;
    }

    /// Where the cover's own event does not say it.
    static QString marked(const QString& text, std::int64_t n) {
        return n == 1 ? text : text + QLatin1Char(' ') + eventMark(n);
    }

    static QString guardText(Surroundings::Guard guard) {
        switch (guard) {
        case Surroundings::Guard::None:
            return tr("no weather guard noted");
        case Surroundings::Guard::Asked:
            return tr("asked for by the order, not looked at");
        case Surroundings::Guard::Seen:
            return tr("seam shielded from draught, wet and sun");
        case Surroundings::Guard::LeftOut:
            return tr("the check of the guard was passed over");
        }
        return {};
    }

    QString reweld() const {
        const WeldOpened& opened = m_record.opened;
        QString text = m_joint.reweldOfNumber ? tr("joint %1").arg(*m_joint.reweldOfNumber)
                                              : plainText(*opened.reweldOf);
        if (opened.lostUm) {
            text += tr(", %1 cut away of both sheets together").arg(amount(*opened.lostUm, "um"));
        }
        return text;
    }

    // ---- the verdict

    static PaperTable reasonTable() {
        PaperTable table;
        table.heads = {{tr("Grade")}, {tr("What")}, {tr("Actual")}, {tr("Limit")}, {tr("Events")}};
        table.shares = {0.19, 0.35, 0.16, 0.16, 0.14};
        return table;
    }

    static std::vector<PaperCell>
    reasonRow(std::string_view grade, const ReasonText& reason, const QString& events) {
        PaperCell first{gradeWord(grade)};
        first.strong = grade != "remark";
        first.mark = grade == "out" ? Mark::Late : grade == "incomplete" ? Mark::Open : Mark::Soon;
        PaperCell what{reason.what};
        what.strong = first.strong;
        return {first, what, {reason.actual}, {reason.limit}, {events}};
    }

    void verdict(PaperDoc& doc) const {
        const Verdict& verdict = m_record.verdict;
        doc.blocks.emplace_back(PaperHeading{
            tr("Verdict: %1").arg(midSentence(verdictWord(verdict.word))),
            tr("rules %1, by the plan's limits alone").arg(kVerdictRules)});
        if (verdict.findings.empty()) {
            doc.blocks.emplace_back(PaperText{tr("Every value is within its limits.")});
        } else {
            PaperTable table = reasonTable();
            for (const Finding& finding : verdict.findings) {
                ReasonText reason = reasonText(finding, m_record.plan, m_units);
                if (finding.code == "remark_made") {
                    reason.what = findingWord(finding.code); // its words stand below, whole
                }
                table.rows.push_back(reasonRow(
                    toString(finding.grade), reason, eventMarks(eventsBehind(finding, m_record))));
            }
            doc.blocks.emplace_back(std::move(table));
        }
        stored(doc);
    }

    void stored(PaperDoc& doc) const {
        if (!m_record.stored) {
            doc.blocks.emplace_back(PaperText{
                m_record.aborted ? tr("The weld was stopped, so no verdict was stored.")
                                 : tr("The weld is not closed, so no verdict is stored yet.")});
            return;
        }
        const WeldClosed& closed = *m_record.stored;
        const QString word = midSentence(verdictWord(closed.verdict));
        if (!differsFromStored(m_record)) {
            doc.blocks.emplace_back(
                PaperText{tr("The same was stored at closing %1, by rules %2.")
                              .arg(eventMark(closedN(m_record)), QString::number(closed.rules))});
            return;
        }
        doc.blocks.emplace_back(PaperHeading{
            tr("Stored at closing: %1").arg(word),
            tr("rules %1 %2; it stands as it was stored")
                .arg(QString::number(closed.rules), eventMark(closedN(m_record)))});
        if (closed.reasons.empty()) {
            doc.blocks.emplace_back(PaperText{tr("No reason was stored.")});
            return;
        }
        PaperTable table = reasonTable();
        for (const StoredReason& reason : closed.reasons) {
            table.rows.push_back(reasonRow(
                reason.grade, reasonText(reason, m_record.plan, m_units),
                eventMark(closedN(m_record))));
        }
        doc.blocks.emplace_back(std::move(table));
    }

    // ---- set and actual

    /// Reading, force and pressure of one reading stand in one row.
    void values(PaperDoc& doc) const {
        const auto rows = setAndActual(m_record, m_joint.bench ? &*m_joint.bench : nullptr);
        PaperTable measures;
        measures.heads = {
            {tr("Set and actual")}, {RecordPage::tr("Set", "what was to be, beside what was")},
            {tr("Allowed")},        {tr("Actual")},
            {tr("Where")},          {tr("Event")}};
        measures.shares = {0.22, 0.14, 0.2, 0.2, 0.17, 0.07};
        PaperTable readings;
        readings.heads = {
            {tr("Scale and force")},
            {RecordPage::tr("Set", "what was to be, beside what was")},
            {tr("Allowed")},
            {tr("Actual")},
            {tr("Force set")},
            {tr("Actual")},
            {tr("Pressure set")},
            {tr("Actual")},
            {tr("Event")}};
        readings.shares = {0.1, 0.08, 0.12, 0.13, 0.13, 0.09, 0.17, 0.13, 0.05};
        for (std::size_t i = 0; i < rows.size(); ++i) {
            const SetActual& row = rows[i];
            const bool triple = i + 2 < rows.size() && endsWith(row.item, "_reading") &&
                                endsWith(rows[i + 1].item, "_force") &&
                                endsWith(rows[i + 2].item, "_pressure");
            if (triple) {
                readings.rows.push_back(readingRow(row, rows[i + 1], rows[i + 2]));
                i += 2;
            } else {
                measures.rows.push_back(measureRow(row));
            }
        }
        doc.blocks.emplace_back(std::move(readings));
        doc.blocks.emplace_back(std::move(measures));
    }

    static bool endsWith(const std::string& text, std::string_view with) {
        return text.size() >= with.size() &&
               text.compare(text.size() - with.size(), with.size(), with) == 0;
    }

    QString setOf(const SetActual& row) const {
        return row.set ? amount(*row.set, row.unit) : QString();
    }
    QString actualOf(const SetActual& row) const {
        return row.actual ? amount(*row.actual, row.unit) : QStringLiteral("–");
    }

    std::vector<PaperCell> measureRow(const SetActual& row) const {
        QString actual = actualOf(row);
        if (row.actual) {
            actual += before(
                row.n, row.unit == "um" ? itemField(row.item) : row.unit, row.unit, *row.actual);
        }
        return {
            {itemWord(row.item)},
            {setOf(row)},
            {allowed(row.low, row.high, row.unit)},
            {actual},
            {whereText(row, m_units)},
            {row.n == 0 ? QString() : eventMark(row.n)}};
    }

    /// A bead has several lengths in one event, told apart by their fields.
    static std::string_view itemField(const std::string& item) {
        return item == "bead_width"     ? std::string_view("width_um")
               : item == "bead_height"  ? std::string_view("height_um")
               : item == "bead_k"       ? std::string_view("k_um")
               : item == "misalignment" ? std::string_view("misalignment_um")
                                        : std::string_view("value_um");
    }

    std::vector<PaperCell>
    readingRow(const SetActual& reading, const SetActual& force, const SetActual& pressure) const {
        QString actual = actualOf(reading);
        if (reading.actual) {
            actual += before(reading.n, reading.unit, reading.unit, *reading.actual);
        }
        const auto set = [this](const SetActual& row) {
            return row.set    ? amount(*row.set, row.unit)
                   : row.high ? tr("at most %1").arg(amount(*row.high, row.unit))
                              : QString();
        };
        QString pressureSet = set(pressure);
        if (pressure.set && m_record.plan.tolerancePa) {
            pressureSet += tr(" ± %1").arg(number(*m_record.plan.tolerancePa, "Pa"));
        }
        const std::string phase = reading.item.substr(0, reading.item.rfind('_'));
        return {
            {phaseName(phase)},
            {setOf(reading)},
            {reading.low && reading.high
                 ? tr("%1 to %2")
                       .arg(number(*reading.low, reading.unit), number(*reading.high, reading.unit))
                 : QString()},
            {actual},
            {set(force)},
            {actualOf(force)},
            {pressureSet},
            {actualOf(pressure)},
            {reading.n == 0 ? QString() : eventMark(reading.n)}};
    }

    // ---- the course

    static QString planned(const PhaseRecord& phase) {
        return phase.target ? limitTimeText(*phase.target) : QString();
    }

    static QString allowedTime(const PhaseRecord& phase) {
        if (phase.low && phase.high) {
            return tr("%1 to %2").arg(limitTimeText(*phase.low), limitTimeText(*phase.high));
        }
        if (phase.low) {
            return tr("at least %1").arg(limitTimeText(*phase.low));
        }
        if (phase.high) {
            return phase.phase == "alignment" ? tr("slow from %1").arg(limitTimeText(*phase.high))
                                              : tr("at most %1").arg(limitTimeText(*phase.high));
        }
        return phase.phase == "alignment" ? tr("till the bead stands") : QString();
    }

    void course(PaperDoc& doc) const {
        PaperTable table;
        table.heads = {
            {tr("Course")},
            {RecordPage::tr("Set", "what was to be, beside what was")},
            {tr("Allowed")},
            {tr("Took")},
            {tr("Allowed in grey, took in black")},
            {tr("From")},
            {tr("Events")}};
        table.shares = {0.11, 0.1, 0.17, 0.16, 0.24, 0.13, 0.09};
        const auto seconds = [](const std::optional<Milliseconds>& time) {
            return time ? std::optional(static_cast<double>(time->count()) / 1e3) : std::nullopt;
        };
        for (const PhaseRecord& phase : m_record.phases) {
            PaperCell bar;
            PaperBar lengths{
                seconds(phase.low), seconds(phase.target), seconds(phase.high), std::nullopt};
            if (phase.took) {
                // A minimum is held against the time that has surely passed.
                lengths.actual =
                    seconds(phase.phase == "cooling" ? phase.took->lo : phase.took->hi);
            }
            bar.bar = lengths;
            PaperCell name{phaseName(phase.phase)};
            name.strong = true;
            table.rows.push_back(
                {name,
                 {planned(phase)},
                 {allowedTime(phase)},
                 {phase.took ? tookText(*phase.took) : tr("not over")},
                 bar,
                 {when(phase.from)},
                 {phase.toN == 0 ? eventMark(phase.fromN)
                                 : QStringLiteral("[%1–%2]").arg(phase.fromN).arg(phase.toN)}});
        }
        if (table.rows.empty()) {
            doc.blocks.emplace_back(PaperText{tr("No phase was begun.")});
            return;
        }
        doc.blocks.emplace_back(std::move(table));
    }

    void checks(PaperDoc& doc) const {
        QStringList items;
        for (const Retained& check : m_record.checks) {
            QString text = eventText(check.d, m_record.plan, m_units);
            const auto* made = std::get_if<CheckMade>(&check.d);
            if (made != nullptr && made->takenUtc) {
                Instant taken = check.at;
                taken.utc = *made->takenUtc;
                text += tr(", taken %1").arg(when(taken));
            }
            items << text + QLatin1Char(' ') + eventMark(check.n);
        }
        for (const Retained& step : m_record.releases) {
            items << eventText(step.d, m_record.plan, m_units) + QLatin1Char(' ') + when(step.at) +
                         QLatin1Char(' ') + eventMark(step.n);
        }
        if (!items.isEmpty()) {
            doc.blocks.emplace_back(PaperHeading{tr("Checks and release"), {}});
            doc.blocks.emplace_back(PaperList{items, true, true});
        }
    }

    // ---- what people said and changed

    QString
    told(const Instant& at, const std::string& by, const WeldDetail& d, std::int64_t n) const {
        return tr("%1 %2, %3: %4")
            .arg(eventMark(n), when(at), person(by), eventText(d, m_record.plan, m_units));
    }

    static bool isTold(const WeldDetail& d) {
        return std::holds_alternative<ReasonGiven>(d) || std::holds_alternative<RemarkMade>(d) ||
               std::holds_alternative<StepTakenBack>(d) ||
               std::holds_alternative<StepBackdated>(d) ||
               std::holds_alternative<ValueCorrected>(d) ||
               std::holds_alternative<ClockBridged>(d) || std::holds_alternative<ClockJumped>(d) ||
               std::holds_alternative<PlanReplaced>(d) || std::holds_alternative<WeldAborted>(d) ||
               std::holds_alternative<PhotoAdded>(d) || std::holds_alternative<Graded>(d);
    }

    QString takenBack(const Event& answer) const {
        const auto* back = std::get_if<StepTakenBack>(&answer.d);
        const auto* earlier = std::get_if<StepBackdated>(&answer.d);
        const std::int64_t target = back != nullptr      ? back->targetN
                                    : earlier != nullptr ? earlier->targetN
                                                         : 0;
        for (const Event& event : m_record.events) {
            if (event.n == target) {
                return tr(" (%1, pressed %2)")
                    .arg(eventText(event.d, m_record.plan, m_units), when(event.at));
            }
        }
        return {};
    }

    void told(PaperDoc& doc) const {
        QStringList items;
        for (const Event& event : m_record.events) {
            if (isTold(event.d)) {
                items << told(event.at, event.by, event.d, event.n) + takenBack(event);
            }
        }
        doc.blocks.emplace_back(
            PaperHeading{tr("Said, changed and seen"), tr("remarks, reasons, photos, grading")});
        if (items.isEmpty()) {
            items << tr("Nothing.");
        }
        doc.blocks.emplace_back(PaperList{items});
    }

    void decisions(PaperDoc& doc) const {
        QStringList items;
        for (const Retained& one : m_record.decisions) {
            if (!std::holds_alternative<Graded>(one.d)) {
                items << told(one.at, one.by, one.d, one.n);
            }
        }
        if (items.isEmpty()) {
            items << tr("No decision and no sign-off yet.");
        }
        doc.blocks.emplace_back(
            PaperHeading{tr("Decision and sign-off"), tr("a person's, whatever the verdict says")});
        doc.blocks.emplace_back(PaperList{items});
    }

    void coupons(PaperDoc& doc) const {
        if (!m_joint.coupons.empty()) {
            doc.blocks.emplace_back(PaperHeading{
                tr("Coupons cut from it"), tr("[n]: the event in the log of the test itself")});
            doc.blocks.emplace_back(PaperList{couponItems(m_joint.coupons, m_log, m_units)});
        }
    }

    // ---- seals and the rest

    void seals(PaperDoc& doc) const {
        const auto last = static_cast<std::int64_t>(m_record.events.size());
        QStringList items;
        std::int64_t from = 1;
        for (const SealedPart& part : m_joint.sealed) {
            items << tr("Events %1 to %2: %3")
                         .arg(
                             QString::number(from), QString::number(part.toN),
                             sealText(part.seal, m_log));
            from = part.toN + 1;
        }
        if (m_joint.elsewhere) {
            items << tr("It came with another log; its seal stands in that one.");
        } else if (m_joint.sealed.empty()) {
            items << tr("Not sealed yet.");
        } else if (from <= last) {
            items << tr("Events %1 to %2: not sealed yet.")
                         .arg(QString::number(from), QString::number(last));
        }
        doc.blocks.emplace_back(PaperHeading{
            tr("Seal"), tr("held against this paper it shows whether the log was changed")});
        doc.blocks.emplace_back(PaperList{items});
    }

    QString range(const HeatRange& range, bool isTemperature) const {
        const auto one = [&](double value) {
            return isTemperature ? temperatureIn(m_units, std::llround(value) * 1000)
                                 : lengthIn(m_units, std::llround(value * 100) * 10);
        };
        return tr("%1 (%2 to %3)")
            .arg(
                measureText(one(range.likely)), measureNumber(one(range.low)),
                measureNumber(one(range.high)));
    }

    void estimate(PaperDoc& doc) const {
        if (!m_joint.heat) {
            return;
        }
        const HeatNumbers& numbers = m_joint.heat->numbers;
        QStringList items;
        const auto add = [&](const QString& name, const std::optional<HeatRange>& of,
                             bool degrees) {
            if (of) {
                items << tr("%1 %2").arg(name, range(*of, degrees));
            }
        };
        add(tr("molten at the end of soak"), numbers.meltDepthMm, false);
        add(tr("skin at the end of soak"), numbers.skinEndOfSoakC, true);
        add(tr("skin when the faces met"), numbers.skinFacesMeetC, true);
        add(tr("weld plane at release"), numbers.weldPlaneAtReleaseC, true);
        add(tr("each sheet lost"), numbers.sheetLossMm, false);
        if (items.isEmpty()) {
            return;
        }
        items << tr("by a model of heat in the sheet, no measurement and no part of the verdict; "
                    "worked out from %1")
                     .arg(eventMarks(m_joint.heatFrom));
        doc.blocks.emplace_back(PaperHeading{tr("Estimate, not a limit"), {}});
        doc.blocks.emplace_back(PaperList{items, true, true});
    }

    QStringList sources() const {
        QStringList all;
        for (const CardSource& source : cardTexts(m_record.plan, nullptr, m_units).sources) {
            const QString standing = standingText(source.standing);
            const bool saysSo = source.text.contains(standing, Qt::CaseInsensitive) ||
                                source.standing == Standing::Attested;
            all << QStringLiteral("%1: %2").arg(source.values, source.text) +
                       (saysSo ? QString() : QStringLiteral(" [%1]").arg(standing));
        }
        if (all.isEmpty()) {
            all << tr("The plan names no source.");
        }
        return all;
    }

    PaperSignatures signatures() const {
        PaperSignatures lines;
        lines.lines = {{tr("Welder"), {}}, {tr("Supervisor"), {}}, {tr("Date"), {}}};
        for (const Retained& one : m_record.decisions) {
            const auto* signedOff = std::get_if<SignedOff>(&one.d);
            if (signedOff == nullptr) {
                continue;
            }
            const bool welder = signedOff->role == "welder" || signedOff->role == "operator";
            lines.lines[welder ? 0 : 1].signedBy =
                tr("%1, %2 %3").arg(person(one.by), instantText(one.at), eventMark(one.n));
            if (const std::int64_t changed = changedAfter(one.n, m_record); changed != 0) {
                lines.lines[welder ? 0 : 1].signedBy +=
                    tr("; changed since %1").arg(eventMark(changed));
            }
        }
        return lines;
    }

    const RecordFacts& m_joint;
    const WeldRecord& m_record;
    const LogFacts& m_log;
    const PaperWork m_work;
    UnitSystem m_units;
    std::vector<std::pair<std::int64_t, const ValueCorrected*>> m_corrections; // by their n
    std::int64_t m_planN = 0;
};

} // namespace

QString eventMark(std::int64_t n) {
    return n == 0 ? QString() : QStringLiteral("[%1]").arg(n);
}

QString eventMarks(const std::set<std::int64_t>& all) {
    QStringList numbers;
    for (const std::int64_t n : all) {
        numbers << QString::number(n);
    }
    return all.empty() ? QString() : QStringLiteral("[%1]").arg(numbers.join(QStringLiteral(", ")));
}

Mark markOf(VerdictWord word) {
    switch (word) {
    case VerdictWord::WithinLimits:
    case VerdictWord::WithRemarks:
        return Mark::Done;
    case VerdictWord::OutOfLimits:
        return Mark::Late;
    case VerdictWord::Incomplete:
        return Mark::Open;
    }
    return Mark::Open;
}

std::optional<VerdictWord> verdictOf(std::string_view stored) {
    for (const VerdictWord word :
         {VerdictWord::WithinLimits, VerdictWord::WithRemarks, VerdictWord::OutOfLimits,
          VerdictWord::Incomplete}) {
        if (toString(word) == stored) {
            return word;
        }
    }
    return std::nullopt;
}

QString acrossOf(const std::string& world, WeldType type, const PaperWork& work) {
    if (work.demo) {
        return tr("DEMO SHOP");
    }
    return world != "production" || type == WeldType::Practice ? tr("PRACTICE") : QString();
}

QStringList paperCautions() {
    return {
        tr("A verdict tells how a joint was made, by what people typed and tapped; it does not "
           "prove that the joint is good, and no bead does."),
        tr("The machine's own instructions, the standard in force, local rules and a qualified "
           "welder decide."),
        tr("The plate burns at once; the tables crush, and the spring stores its force; "
           "overheated plastic and coatings give off harmful fume.")};
}

QStringList
couponItems(const std::vector<CouponSeries>& coupons, const LogFacts& log, UnitSystem units) {
    QStringList items;
    const auto person = [&log](const std::string& id) { return personText(log.roster.people, id); };
    for (const CouponSeries& series : coupons) {
        const CouponVersion& last = series.versions.back();
        QStringList parts{tr("%1, entered %2 by %3: %4")
                              .arg(
                                  couponTitle(last.tested), instantText(last.at),
                                  personText(log.roster.people, last.by),
                                  couponValues(last.tested, units).join(tr("; ")))};
        if (series.factor) {
            parts << couponResult(series, units) << answerText(*series.factor, series.required);
        }
        if (!last.tested.remark.empty()) {
            parts << plainText(last.tested.remark);
        }
        items << QStringLiteral("%1 %2 (%3)")
                     .arg(parts.join(tr("; ")), eventMark(last.n), plainText(series.id));
        for (std::size_t i = 0; i + 1 < series.versions.size(); ++i) {
            const CouponVersion& was = series.versions[i];
            items << tr("before it was put right (%1): %2 %3")
                         .arg(
                             plainText(series.versions[i + 1].tested.reason.value_or("")),
                             (couponMoves(was, series.versions[i + 1], units, person) +
                              couponValues(was.tested, units))
                                 .join(tr("; ")),
                             eventMark(was.n));
        }
        for (const UnreadEvent& one : series.unread) {
            items << tr("event %1 of %2 can't be read").arg(one.n).arg(plainText(one.subject));
        }
    }
    return items;
}

QString sealText(const SealFact& seal, const LogFacts& log) {
    return tr("seal of %1 by %2, made %3 (event %7 of that day), rows 1 to %4; fingerprint %5; "
              "key %6")
        .arg(
            fullDayWords(seal.day), personText(log.roster.people, seal.by), instantText(seal.at),
            QString::number(seal.toSeq), plainText(seal.fingerprint),
            plainText(seal.keyFingerprint), QString::number(seal.n));
}

PaperDoc recordPaper(
    const RecordFacts& joint, const LogFacts& log, const PaperWork& work, UnitSystem units) {
    return Writer(joint, log, work, units).write();
}

} // namespace seamclock
