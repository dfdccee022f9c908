#include "app/daylog/day_view.h"

#include "app/text/dates.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/record_words.h"
#include "app/text/words.h"
#include "core/report/record_reasons.h"

#include <QCoreApplication>

namespace seamclock {
namespace {

struct Day {
    Q_DECLARE_TR_FUNCTIONS(Day)
};

/// The verdict's word, which its mark alone would leave to the eye, and its first reason.
QString verdictLine(const Verdict& verdict, const WeldPlan& plan, UnitSystem units) {
    const QString reason = firstReason(verdict, plan, units);
    switch (verdict.word) {
    case VerdictWord::WithinLimits:
        break;
    case VerdictWord::WithRemarks:
        return Day::tr("remark: %1").arg(reason);
    case VerdictWord::OutOfLimits:
        return Day::tr("out of limits: %1").arg(reason);
    case VerdictWord::Incomplete:
        return Day::tr("incomplete: %1").arg(reason);
    }
    return reason;
}

} // namespace

QString DayNames::bench(const std::string& id) const {
    const auto found = benches.find(id);
    return found == benches.end() ? fromUtf8(id) : found->second;
}

QString DayNames::person(const std::string& id) const {
    if (id == "station") {
        return Day::tr("station");
    }
    const auto found = people.find(id);
    if (found != people.end()) {
        return fromUtf8(found->second);
    }
    const std::string prefix = "person:";
    return fromUtf8(id.rfind(prefix, 0) == 0 ? id.substr(prefix.size()) : id);
}

VerdictLook lookOf(VerdictWord word) {
    switch (word) {
    case VerdictWord::WithinLimits:
    case VerdictWord::WithRemarks:
        return {Mark::Done, Tone::Normal};
    case VerdictWord::OutOfLimits:
        return {Mark::Late, Tone::Late};
    case VerdictWord::Incomplete:
        return {Mark::Open, Tone::Rest};
    }
    return {};
}

VerdictLook lookOf(const WeldRecord& record) {
    if (record.aborted) {
        return {Mark::Cut, Tone::Late};
    }
    if (record.stored) {
        for (const VerdictWord word :
             {VerdictWord::WithinLimits, VerdictWord::WithRemarks, VerdictWord::OutOfLimits}) {
            if (toString(word) == record.stored->verdict) {
                return lookOf(word);
            }
        }
    }
    return {};
}

QString decisionWord(const WeldRecord& record) {
    QString word;
    for (const Retained& one : record.decisions) {
        if (const auto* decided = std::get_if<Decided>(&one.d)) {
            switch (decided->decision) {
            case Decision::Accept:
                word = record.opened.type == WeldType::Trial ? Day::tr("released")
                                                             : Day::tr("accepted");
                break;
            case Decision::Repair:
                word = Day::tr("to repair");
                break;
            case Decision::CutOut:
                word = Day::tr("to cut out");
                break;
            }
        }
    }
    return word;
}

QString seamText(const std::string& seam, const QString& bench) {
    return seam.empty() ? bench : Day::tr("Seam %1, %2").arg(fromUtf8(seam), bench);
}

QString stopText(const WeldAborted& aborted) {
    return aborted.text.empty() ? findingWord(aborted.reason) : storedWords(aborted.text);
}

QString whenText(const Instant& at) {
    // With the year: a log is kept for many.
    return fullDayWords(toIsoDate(at.utc, at.offset)) + QLatin1Char(' ') + wallClockText(at);
}

JointRowView jointRow(
    const JointLine& line, const WeldRecord* record, const DayNames& names, UnitSystem units,
    bool oneDay) {
    JointRowView row;
    row.weld = line.weld;
    row.number = QString::number(line.number);
    row.seam = seamText(line.seam, names.bench(line.bench));
    Instant opened;
    opened.utc = line.openedUtc;
    opened.offset = line.offset;
    row.time = oneDay ? wallClockText(opened) : fullDayWords(line.day);
    if (record == nullptr) {
        row.mark = Mark::Trouble;
        row.tone = Tone::Soon;
        row.reason = line.trouble.empty() ? Day::tr("its events can't be read")
                                          : Day::tr("damaged: %1").arg(inWords(line.trouble));
        return row;
    }
    const VerdictLook look = lookOf(*record);
    row.mark = look.mark;
    row.tone = look.tone;
    row.decided = decisionWord(*record);
    if (line.open) {
        row.reason = Day::tr("not finished: %1").arg(stateWord(line.phase));
    } else if (record->aborted) {
        row.reason = Day::tr("stopped: %1").arg(stopText(*record->aborted));
    } else if (!line.verdictNow.empty() && isCorrectedSinceClosing(*record)) {
        row.mark = Mark::Trouble; // nobody has decided by the newer word yet
        row.tone = Tone::Soon;
        row.reason = Day::tr("%1; after a correction %2")
                         .arg(
                             midSentence(verdictWord(std::string_view(line.verdict))),
                             midSentence(verdictLine(record->verdict, record->plan, units)));
    } else if (!line.verdictNow.empty()) {
        row.reason = Day::tr("%1; by today's rules %2")
                         .arg(
                             midSentence(verdictWord(std::string_view(line.verdict))),
                             midSentence(verdictWord(std::string_view(line.verdictNow))));
    } else {
        row.remarks = record->verdict.word == VerdictWord::WithRemarks;
        row.reason = verdictLine(record->verdict, record->plan, units);
    }
    if (record->opened.type == WeldType::Trial) {
        row.reason = Day::tr("trial: %1").arg(row.reason);
    }
    if (!line.trouble.empty()) { // another log tells it differently
        row.mark = Mark::Trouble;
        row.tone = Tone::Soon;
        row.reason = Day::tr("%1; %2").arg(row.reason, inWords(line.trouble));
    }
    return row;
}

} // namespace seamclock
