#include "app/print/report_paper.h"

#include "app/print/record_paper.h"
#include "app/text/card_text.h"
#include "app/text/dates.h"
#include "app/text/phrase_book.h"
#include "app/text/record_words.h"
#include "app/text/words.h"
#include "core/people/certificate.h"
#include "core/report/record_reasons.h"

#include <QCoreApplication>
#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <string_view>
#include <utility>

namespace seamclock {
namespace {

struct ReportPage {
    Q_DECLARE_TR_FUNCTIONS(ReportPaper)
};

QString tr(const char* text) {
    return ReportPage::tr(text);
}

const std::string kTrial(toString(WeldType::Trial));

Instant openedAt(const JointLine& line) {
    Instant at;
    at.utc = line.openedUtc;
    at.offset = line.offset;
    return at;
}

/// Where a joint stands in the report: the worse of what was stored and what the rules say now.
enum class Group { Out, Incomplete, Remarks, Within, Open, Damaged };

Group groupOf(const ReportJoint& joint) {
    if (!joint.record) {
        return Group::Damaged;
    }
    if (joint.line.open) {
        return Group::Open;
    }
    std::set<VerdictWord> words{joint.record->verdict.word};
    if (const auto stored = verdictOf(joint.line.verdict)) {
        words.insert(*stored);
    }
    if (words.count(VerdictWord::OutOfLimits) > 0) {
        return Group::Out;
    }
    if (words.count(VerdictWord::Incomplete) > 0) {
        return Group::Incomplete;
    }
    return words.count(VerdictWord::WithRemarks) > 0 ? Group::Remarks : Group::Within;
}

struct Sum {
    std::int64_t joints = 0;
    std::int64_t lengthUm = 0;
    std::map<Group, std::int64_t> groups;

    void add(const ReportJoint& joint) {
        ++joints;
        lengthUm += joint.record ? joint.record->plan.lengthUm : 0;
        ++groups[groupOf(joint)];
    }
    std::int64_t of(Group group) const {
        const auto found = groups.find(group);
        return found == groups.end() ? 0 : found->second;
    }
};

/// The jobs that its joints tell, each once; where one of them isn't that of `work`, no part is
/// named. Joints that tell none leave the order of `work`, which is then no word of the log.
struct JointsWork {
    PaperWork work;
    bool told = false; // by a joint, or by who asked for it
};

JointsWork workOfJoints(const PaperWork& work, const ReportFacts& report) {
    JointsWork out{work};
    QStringList orders;
    const auto take = [&](const std::optional<std::string>& job) {
        const PaperWork own = workOfJob(work, job);
        if (!own.order.isEmpty() && !orders.contains(own.order)) {
            orders << own.order;
        }
        if (own.part != work.part) {
            out.work.part.clear();
        }
    };
    for (const ReportJoint& joint : report.joints) {
        if (joint.record && joint.record->opened.job) {
            take(joint.record->opened.job);
            out.told = true;
        }
    }
    if (orders.isEmpty()) {
        const std::optional<std::string>& job = report.filter.job;
        out.told = job && !job->empty(); // it was asked for by name
        take(out.told ? job : std::nullopt);
    }
    orders.sort();
    out.work.order = orders.join(tr(", "));
    return out;
}

class Writer {
public:
    Writer(const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units)
        : m_report(report), m_of(of), m_joints(workOfJoints(work, report)), m_work(m_joints.work),
          m_units(units) {
        for (const ReportJoint& joint : report.joints) {
            (joint.line.type == kTrial ? m_trials : m_sum).add(joint);
            m_days.insert(joint.line.day);
        }
    }

    PaperDoc write() const {
        PaperDoc doc;
        doc.what = QStringLiteral("report");
        head(doc);
        cover(doc);
        sums(doc);
        reasons(doc, Group::Out, tr("Out of limits"));
        reasons(doc, Group::Incomplete, tr("Incomplete"));
        damaged(doc);
        joints(doc);
        coupons(doc);
        reasons(doc, Group::Remarks, tr("Within limits with remarks"));
        seals(doc);
        doc.blocks.emplace_back(PaperHeading{tr("Take care"), {}});
        doc.blocks.emplace_back(PaperList{paperCautions(), true, true});
        doc.blocks.emplace_back(PaperSignatures{
            {{tr("Supervisor"), {}}, {tr("For the customer"), {}}, {tr("Date"), {}}}});
        return doc;
    }

private:
    QString person(std::string_view id) const { return personText(m_report.log.roster.people, id); }
    /// As that joint's own log knows who it is.
    QString person(std::string_view id, const ReportJoint& joint) const {
        return personText(joint.elsewhere ? joint.people.people : m_report.log.roster.people, id);
    }
    QString length(std::int64_t um) const { return measureText(lengthIn(m_units, um)); }

    void head(PaperDoc& doc) const {
        switch (m_of) {
        case ReportOf::Day:
            doc.title = tr("Day report, %1").arg(day());
            break;
        case ReportOf::Job:
            doc.title =
                m_work.order.isEmpty() ? tr("Job report") : tr("Job report, %1").arg(m_work.order);
            break;
        case ReportOf::Selection:
            doc.title = tr("Report of chosen joints");
            break;
        }
        QStringList under;
        for (const QString& text : {m_work.shop, m_work.part}) {
            if (!text.isEmpty()) {
                under << text;
            }
        }
        if (!under.isEmpty()) {
            doc.under << under.join(tr(", "));
        }
        QStringList made;
        if (!m_work.printed.isEmpty()) {
            made << tr("printed %1").arg(m_work.printed);
        }
        made << tr("local times");
        made << tr(
            "[n]: the event of that joint in the log; sheet, bench, welder and seam stand in [1], "
            "verdicts and sums are worked out");
        doc.made = made.join(tr("; "));
        const bool practice =
            std::any_of(m_report.joints.begin(), m_report.joints.end(), [](const auto& joint) {
                return joint.line.type == "practice";
            });
        doc.across = acrossOf(
            m_report.log.world, practice ? WeldType::Practice : WeldType::Production, m_work);
        if (!doc.across.isEmpty()) {
            doc.blocks.emplace_back(PaperNotice{
                m_work.demo
                    ? tr("Demo shop: shop, people and joints are invented. This is no certificate.")
                    : tr("Practice. No joint here counts, and this report is no certificate.")});
        }
        doc.goesOn = doc.title;
        doc.foot = (doc.across.isEmpty() ? QString() : doc.across + tr("; ")) +
                   tr("Seamclock; log %1").arg(plainText(m_report.log.logId));
        doc.pageOf = tr("page %1 of %2");
    }

    QString day() const {
        return fullDayWords(
            m_report.filter.fromDay.value_or(m_days.empty() ? std::string("–") : *m_days.begin()));
    }

    /// What was asked for, so that a reader knows what is not in it.
    QString asked() const {
        const JointFilter& filter = m_report.filter;
        QStringList parts;
        const auto add = [&parts](const QString& text, const std::optional<std::string>& value) {
            if (value) {
                parts << text.arg(plainText(*value));
            }
        };
        const auto addDay = [&parts](const QString& text, const std::optional<std::string>& day) {
            if (day) {
                parts << text.arg(fullDayWords(*day));
            }
        };
        if (filter.fromDay && filter.fromDay == filter.toDay) {
            addDay(tr("the day %1"), filter.fromDay);
        } else {
            addDay(tr("from %1"), filter.fromDay);
            addDay(tr("to %1"), filter.toDay);
        }
        add(tr("bench %1"), filter.bench);
        if (filter.by) {
            parts << tr("begun by %1").arg(person(*filter.by));
        }
        add(tr("material %1"), filter.material);
        if (filter.verdict) {
            parts
                << (filter.verdict->empty()
                        ? tr("not finished")
                        : tr("verdict %1").arg(midSentence(verdictWord(*filter.verdict))));
        }
        add(tr("with the words “%1”"), filter.text);
        if (filter.job) {
            parts
                << (filter.job->empty() ? tr("that no job was told of")
                                        : tr("of the job %1").arg(plainText(*filter.job)));
        }
        add(tr("of the seam %1"), filter.seam);
        if (filter.damaged) {
            parts << tr("only what can't be read");
        }
        if (filter.seams) {
            QStringList seams;
            for (const std::string& seam : *filter.seams) {
                seams << plainText(seam);
            }
            parts << tr("the job's seams: %1").arg(seams.join(tr(", ")));
        }
        return parts.isEmpty() ? tr("the joints that were chosen") : parts.join(tr(", "));
    }

    void cover(PaperDoc& doc) const {
        std::vector<PaperFacts::Fact> facts;
        const auto add = [&facts](const QString& name, const QString& text) {
            if (!text.isEmpty()) {
                facts.push_back({name, text});
            }
        };
        add(tr("Order"), m_joints.told || m_work.order.isEmpty()
                             ? m_work.order
                             : tr("%1 (from the job's file)").arg(m_work.order));
        QStringList parts; // as the joints tell it
        for (const ReportJoint& joint : m_report.joints) {
            if (joint.record && joint.record->opened.part) {
                parts << plainText(*joint.record->opened.part);
            }
        }
        parts.removeDuplicates();
        add(tr("Part"), !parts.isEmpty()        ? parts.join(tr("; "))
                        : m_work.part.isEmpty() ? QString()
                                                : tr("%1 (from the job's file)").arg(m_work.part));
        add(tr("Asked for"), asked());
        add(tr("Joints"), QString::number(static_cast<qlonglong>(m_report.joints.size())));
        if (!m_report.joints.empty()) {
            std::int64_t first = m_report.joints.front().line.number;
            std::int64_t last = first;
            for (const ReportJoint& joint : m_report.joints) {
                first = std::min(first, joint.line.number);
                last = std::max(last, joint.line.number);
            }
            add(tr("Numbers"), tr("%1 to %2").arg(first).arg(last));
            add(tr("Time"),
                tr("%1 to %2")
                    .arg(
                        minuteText(openedAt(m_report.joints.front().line), true),
                        minuteText(openedAt(m_report.joints.back().line), m_days.size() > 1)));
        }
        add(tr("Types"), types());
        add(tr("Welders"), welders());
        add(tr("Benches"), names([](const JointLine& line) { return line.bench; }));
        add(tr("Procedures"), names([](const JointLine& line) { return line.procedure; }));
        doc.blocks.emplace_back(PaperFacts{std::move(facts), 2});
    }

    static QString minuteText(const Instant& at, bool withDay) {
        return withDay ? dateText(at) + QLatin1Char(' ') + clockText(at).left(5)
                       : clockText(at).left(5);
    }

    QString types() const {
        std::map<std::string, int> counts;
        for (const ReportJoint& joint : m_report.joints) {
            if (joint.record) {
                ++counts[joint.line.type];
            }
        }
        QStringList all;
        for (const auto& [type, count] : counts) {
            const WeldType known = type == "trial"      ? WeldType::Trial
                                   : type == "practice" ? WeldType::Practice
                                                        : WeldType::Production;
            all << tr("%1: %2").arg(typeWord(known), QString::number(count));
        }
        return all.join(tr(", "));
    }

    template <class Name>
    QString names(Name name) const {
        std::set<std::string> all;
        for (const ReportJoint& joint : m_report.joints) {
            if (!name(joint.line).empty()) {
                all.insert(name(joint.line));
            }
        }
        QStringList texts;
        for (const std::string& one : all) {
            texts << plainText(one);
        }
        return texts.join(tr(", "));
    }

    QString welders() const {
        // by id and name, as two logs may have two people of one id; with the certificates that
        // each had then
        std::map<std::pair<std::string, QString>, QStringList> all;
        for (const ReportJoint& joint : m_report.joints) {
            if (joint.line.by.empty()) {
                continue;
            }
            QStringList& held = all[{joint.line.by, person(joint.line.by, joint)}];
            if (joint.certificate) {
                const QString text =
                    tr("%1, to %2, event %3 of %4")
                        .arg(
                            plainText(scopeOf(*joint.certificate)),
                            fullDayWords(joint.certificate->until),
                            QString::number(joint.certificateN), plainText(joint.line.by));
                if (!held.contains(text)) {
                    held << text;
                }
            }
        }
        QStringList texts;
        for (const auto& [who, held] : all) {
            texts
                << (held.isEmpty() ? who.second
                                   : tr("%1 (%2)").arg(who.second, held.join(tr("; "))));
        }
        return texts.join(tr("; "));
    }

    // ---- sums

    static PaperCell numberCell(std::int64_t value, bool strong = false) {
        PaperCell cell{value == 0 ? QStringLiteral("–") : QString::number(value)};
        cell.right = true;
        cell.strong = strong;
        return cell;
    }

    /// What can't be read has a column where there is such a joint.
    std::vector<PaperCell> sumRow(const QString& name, const Sum& sum, bool strong) const {
        PaperCell first{name};
        first.strong = strong;
        PaperCell seam{length(sum.lengthUm)};
        seam.right = true;
        seam.strong = strong;
        std::vector<PaperCell> row{
            first,
            numberCell(sum.joints, strong),
            seam,
            numberCell(sum.of(Group::Within), strong),
            numberCell(sum.of(Group::Remarks), strong),
            numberCell(sum.of(Group::Out), strong),
            numberCell(sum.of(Group::Incomplete), strong),
            numberCell(sum.of(Group::Open), strong)};
        if (anyDamaged()) {
            row.push_back(numberCell(sum.of(Group::Damaged), strong));
        }
        return row;
    }

    bool anyDamaged() const { return m_sum.of(Group::Damaged) + m_trials.of(Group::Damaged) > 0; }

    void sums(PaperDoc& doc) const {
        if (m_report.joints.empty()) {
            doc.blocks.emplace_back(PaperText{tr("There is no such joint in this log."), true});
            return;
        }
        std::map<std::pair<std::string, std::int64_t>, Sum> bySheet;
        for (const ReportJoint& joint : m_report.joints) {
            if (joint.line.type != kTrial) {
                bySheet[{joint.line.material, joint.line.thicknessUm}].add(joint);
            }
        }
        PaperTable table;
        const auto head = [](const QString& text) {
            PaperCell cell{text};
            cell.right = true;
            return cell;
        };
        table.heads = {{tr("Sums by sheet")},  head(tr("Joints")),  head(tr("Seams")),
                       head(tr("Within")),     head(tr("Remarks")), head(tr("Out")),
                       head(tr("Incomplete")), head(tr("Open"))};
        table.shares = {0.23, 0.09, 0.14, 0.1, 0.1, 0.1, 0.15, 0.09};
        if (anyDamaged()) {
            table.heads.push_back(head(tr("Unread")));
            table.shares = {0.19, 0.08, 0.13, 0.09, 0.09, 0.09, 0.15, 0.08, 0.1};
        }
        for (const auto& [sheet, sum] : bySheet) {
            table.rows.push_back(sumRow(
                sheet.first.empty()
                    ? QStringLiteral("–")
                    : tr("%1, %2").arg(plainText(sheet.first), length(sheet.second)),
                sum, false));
        }
        table.rows.push_back(sumRow(tr("All"), m_sum, true));
        if (m_trials.joints > 0) {
            table.rows.push_back(sumRow(tr("Trial joints, not in All"), m_trials, false));
        }
        doc.blocks.emplace_back(std::move(table));
    }

    // ---- joints by what is wrong with them

    static QString seamOf(const JointLine& line) {
        return line.seam.empty() ? QStringLiteral("–") : plainText(line.seam);
    }

    static QString seamCell(const JointLine& line) {
        return line.type == kTrial ? tr("trial %1").arg(seamOf(line)) : seamOf(line);
    }

    /// What the welder said to it.
    QString answers(const WeldRecord& record, std::string_view code) const {
        QStringList all;
        for (const Retained& one : record.reasons) {
            const auto& given = std::get<ReasonGiven>(one.d);
            if (given.limit == code) {
                all << choiceWord(given.choice) +
                           (given.text ? tr(", ") + plainText(*given.text) : QString()) +
                           QLatin1Char(' ') + eventMark(one.n);
            }
        }
        for (const Event& event : record.events) {
            if (code == "aborted" && std::holds_alternative<WeldAborted>(event.d)) {
                all << eventText(event.d, record.plan, m_units) + QLatin1Char(' ') +
                           eventMark(event.n);
            }
        }
        return all.join(tr("; "));
    }

    void reasons(PaperDoc& doc, Group group, const QString& title) const {
        PaperTable table;
        table.heads = {
            {tr("Joint")},
            {tr("Seam")},
            {tr("Reason")},
            {tr("Actual")},
            {tr("Limit")},
            {tr("Events")},
            {tr("What was said, what was decided")}};
        table.shares = {0.08, 0.13, 0.21, 0.12, 0.12, 0.1, 0.24};
        std::int64_t count = 0;
        for (const ReportJoint& joint : m_report.joints) {
            if (groupOf(joint) == group && joint.record) {
                ++count;
                addReasons(table, joint, group);
            }
        }
        if (count == 0) {
            return;
        }
        doc.blocks.emplace_back(PaperHeading{tr("%1: %2").arg(title).arg(count), {}});
        doc.blocks.emplace_back(std::move(table));
    }

    void addReasons(PaperTable& table, const ReportJoint& joint, Group group) const {
        const WeldRecord& record = *joint.record;
        bool first = true;
        const auto add = [&](const QString& what, const ReasonText& reason, const QString& events,
                             const QString& said, bool strong) {
            PaperCell number{first ? QString::number(joint.line.number) : QString()};
            number.strong = true;
            if (first) {
                number.mark = group == Group::Out ? Mark::Late
                              : group == Group::Incomplete
                                  ? (record.aborted ? Mark::Cut : Mark::Open)
                                  : Mark::Soon;
            }
            PaperCell name{what};
            name.strong = strong;
            table.rows.push_back(
                {number,
                 {first ? seamCell(joint.line) : QString()},
                 name,
                 {reason.actual},
                 {reason.limit},
                 {events},
                 {said}});
            first = false;
        };
        if (record.stored && differsFromStored(record)) {
            add(tr("closed as %1").arg(midSentence(verdictWord(record.stored->verdict))), {}, {},
                (isCorrectedSinceClosing(record) ? tr("after a correction: %1")
                                                 : tr("by the rules now: %1"))
                    .arg(midSentence(verdictWord(record.verdict.word))),
                true);
            for (const StoredReason& stored : record.stored->reasons) {
                const ReasonText reason = reasonText(stored, record.plan, m_units);
                add(tr("stored: %1").arg(reason.what), reason, eventMark(closedN(record)), {},
                    false);
            }
        }
        for (const Finding& finding : record.verdict.findings) {
            const ReasonText reason = reasonText(finding, record.plan, m_units);
            add(reason.what, reason, eventMarks(eventsBehind(finding, record)),
                answers(record, finding.code), finding.grade != Grade::Remark);
        }
        const QString decided = decision(record);
        if (!decided.isEmpty()) {
            add(tr("decision"), {}, {}, decided, false);
        }
    }

    QString decision(const WeldRecord& record) const {
        QString text;
        for (const Retained& one : record.decisions) {
            if (const auto* decided = std::get_if<Decided>(&one.d)) {
                text =
                    decisionWord(decided->decision) +
                    (decided->reason.empty() ? QString() : tr(": ") + choiceWord(decided->reason)) +
                    QLatin1Char(' ') + eventMark(one.n); // the last one holds
            }
        }
        return text;
    }

    void damaged(PaperDoc& doc) const {
        QStringList items;
        for (const ReportJoint& joint : m_report.joints) {
            if (!joint.trouble.empty()) {
                items << tr("Joint %1 (%2): %3")
                             .arg(
                                 QString::number(joint.line.number), plainText(joint.line.weld),
                                 plainText(inWords(joint.trouble).toStdString()));
            }
        }
        if (!items.isEmpty()) {
            doc.blocks.emplace_back(PaperHeading{tr("Can't be read, or told in two ways"), {}});
            doc.blocks.emplace_back(PaperList{items});
        }
    }

    // ---- all of them

    PaperCell verdictCell(const ReportJoint& joint) const {
        const JointLine& line = joint.line;
        PaperCell cell;
        if (line.open || !joint.record) {
            cell.text = stateWord(line.phase);
            cell.mark = joint.record ? Mark::Open : Mark::Trouble;
            return cell;
        }
        cell.text = verdictWord(line.verdict);
        const auto word = verdictOf(line.verdict);
        cell.mark = joint.record->aborted ? Mark::Cut : word ? markOf(*word) : Mark::Trouble;
        if (!line.verdictNow.empty()) {
            cell.text += (isCorrectedSinceClosing(*joint.record) ? tr("; after a correction: %1")
                                                                 : tr("; by the rules now: %1"))
                             .arg(midSentence(verdictWord(line.verdictNow)));
            cell.mark = Mark::Trouble;
        }
        return cell;
    }

    QString signedOff(const ReportJoint& joint) const {
        const WeldRecord& record = *joint.record;
        QStringList all;
        for (const Retained& one : record.decisions) {
            if (const auto* done = std::get_if<SignedOff>(&one.d)) {
                const std::int64_t changed = changedAfter(one.n, record);
                all << tr("%1 (%2) %3")
                               .arg(person(one.by, joint), roleWord(done->role), eventMark(one.n)) +
                           (changed == 0 ? QString()
                                         : tr("; changed since %1").arg(eventMark(changed)));
            }
        }
        return all.join(tr(", "));
    }

    QString sealed(const ReportJoint& joint) const {
        const auto events = joint.record ? static_cast<std::int64_t>(joint.record->events.size())
                                         : joint.line.events;
        return joint.elsewhere             ? tr("in its own log")
               : joint.sealedToN == 0      ? tr("no")
               : joint.sealedToN >= events ? tr("yes")
                                           : tr("to [%1]").arg(joint.sealedToN);
    }

    void joints(PaperDoc& doc) const {
        if (m_report.joints.empty()) {
            return;
        }
        const bool days = m_days.size() > 1;
        PaperTable table;
        table.heads = {{tr("Joint")},   {tr("Begun")},    {tr("Seam")},
                       {tr("Sheet")},   {tr("Bench")},    {tr("Welder")},
                       {tr("Verdict")}, {tr("Decision")}, {tr("Sealed")}};
        table.shares = {0.07, days ? 0.12 : 0.07, 0.11, 0.16, 0.11, 0.12, 0.16, 0.13, 0.07};
        for (const ReportJoint& joint : m_report.joints) {
            const JointLine& line = joint.line;
            PaperCell number{QString::number(line.number)};
            number.strong = true;
            QString decided;
            QString sheet = QStringLiteral("–");
            if (joint.record) {
                QStringList parts{decision(*joint.record), signedOff(joint)};
                parts.removeAll(QString());
                decided = parts.join(tr("; "));
                sheet = tr("%1 %2 × %3")
                            .arg(
                                plainText(line.material),
                                measureNumber(lengthIn(m_units, line.thicknessUm)),
                                length(joint.record->plan.lengthUm));
            }
            table.rows.push_back(
                {number,
                 {minuteText(openedAt(line), days)},
                 {seamCell(line)},
                 {sheet},
                 {plainText(line.bench)},
                 {person(line.by, joint)},
                 verdictCell(joint),
                 {decided},
                 {sealed(joint)}});
        }
        doc.blocks.emplace_back(PaperHeading{tr("All joints"), {}});
        doc.blocks.emplace_back(std::move(table));
    }

    void coupons(PaperDoc& doc) const {
        QStringList items;
        for (const ReportJoint& joint : m_report.joints) {
            for (const QString& item : couponItems(joint.coupons, m_report.log, m_units)) {
                items << tr("Joint %1: %2").arg(QString::number(joint.line.number), item);
            }
        }
        if (!items.isEmpty()) {
            doc.blocks.emplace_back(PaperHeading{
                tr("Coupons cut from these joints"),
                tr("[n]: the event in the log of the test itself")});
            doc.blocks.emplace_back(PaperList{items});
        }
    }

    // ---- seals

    void seals(PaperDoc& doc) const {
        doc.blocks.emplace_back(PaperHeading{
            tr("Seals"), tr("held against this paper they show whether the log was changed")});
        QStringList items;
        std::set<std::size_t> covering; // a seal covers all before it, whatever its day
        for (const ReportJoint& joint : m_report.joints) {
            covering.insert(joint.seals.begin(), joint.seals.end());
        }
        for (std::size_t i = 0; i < m_report.log.seals.size(); ++i) {
            const SealFact& seal = m_report.log.seals[i];
            if (covering.count(i) > 0 || seal.day == m_report.filter.fromDay) {
                items << sealText(seal, m_report.log);
            }
        }
        QStringList open;
        for (const ReportJoint& joint : m_report.joints) {
            const auto events = joint.record
                                    ? static_cast<std::int64_t>(joint.record->events.size())
                                    : joint.line.events;
            if (joint.sealedToN < events && !joint.elsewhere) {
                open << QString::number(joint.line.number);
            }
        }
        if (items.isEmpty() && m_report.joints.empty()) {
            items << tr("These days are not sealed.");
        }
        if (!open.isEmpty()) {
            items
                << (open.size() == static_cast<qsizetype>(m_report.joints.size())
                        ? tr("No joint here is wholly covered by a seal.")
                        : tr("Not wholly covered by a seal: joints %1.").arg(open.join(tr(", "))));
        }
        doc.blocks.emplace_back(PaperList{items});
    }

    const ReportFacts& m_report;
    ReportOf m_of;
    const JointsWork m_joints;
    const PaperWork& m_work;
    UnitSystem m_units;
    Sum m_sum;    // without what was only tried
    Sum m_trials; // which count for no work
    std::set<std::string> m_days;
};

/// What a file's name may hold everywhere.
QString fileWord(const QString& text) {
    QString out;
    for (const QChar each : text) {
        const bool plain = (each >= QLatin1Char('0') && each <= QLatin1Char('9')) ||
                           (each >= QLatin1Char('A') && each <= QLatin1Char('Z')) ||
                           (each >= QLatin1Char('a') && each <= QLatin1Char('z'));
        out += plain ? each : QLatin1Char('-');
    }
    constexpr qsizetype kLongest = 40;
    return out.left(kLongest);
}

} // namespace

PaperDoc
reportPaper(const ReportFacts& report, ReportOf of, const PaperWork& work, UnitSystem units) {
    return Writer(report, of, work, units).write();
}

QString reportStem(const ReportFacts& report, ReportOf of, const PaperWork& work) {
    switch (of) {
    case ReportOf::Day:
        return QStringLiteral("day-%1").arg(fileWord(fromUtf8(report.filter.fromDay.value_or(
            report.joints.empty() ? std::string("none") : report.joints.front().line.day))));
    case ReportOf::Job: {
        const QString order = workOfJoints(work, report).work.order;
        return order.isEmpty() ? QStringLiteral("job")
                               : QStringLiteral("job-%1").arg(fileWord(order));
    }
    case ReportOf::Selection:
        return QStringLiteral("joints");
    }
    return {};
}

} // namespace seamclock
