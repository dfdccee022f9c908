// log: the day list, one record, whether the log is what was written, its content for others, and
// what an interrupted weld's state is now. Nothing here writes to a log (log_copies_command.cpp
// does).
#include "app/cli/command.h"
#include "app/cli/estimates.h"
#include "app/cli/files.h"
#include "app/cli/numbers.h"
#include "app/cli/output_json.h"
#include "app/platform/boot_clock.h"
#include "core/copies/photo_check.h"
#include "core/log/log_reader.h"
#include "core/log/recover.h"
#include "core/log/verify.h"
#include "core/report/day_list.h"
#include "core/report/day_report.h"
#include "core/report/event_rows.h"
#include "core/report/plain_text.h"
#include "core/report/record_json.h"
#include "core/report/record_text.h"
#include "core/report/value_rows.h"
#include "core/report/wording.h"
#include "core/session/after_cut.h"
#include "core/shift/job.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <fmt/format.h>
#include <functional>
#include <memory>
#include <unordered_set>

namespace seamclock {
namespace {

constexpr std::int64_t kLongestList = 10'000;
const std::string kStillOpen = "open"; // of --verdict

struct LogCall {
    std::string log;
    bool json = false;
    bool cues = false;
    std::optional<std::string> from;
    std::optional<std::string> to;
    std::optional<std::string> bench;
    std::optional<std::string> by;
    std::optional<std::string> material;
    std::optional<std::string> verdict;
    std::optional<std::string> text;
    std::optional<std::string> job;
    std::optional<std::string> limit;
    std::optional<std::string> joint;
    std::optional<std::string> weld;
    std::string what = "joints";
    std::optional<std::string> out;
    std::optional<std::string> seal;
    std::optional<std::string> day;

    /// Whether not every joint is asked for.
    bool filters() const { return from || to || bench || by || material || verdict || text || job; }
};

using Write = std::function<void(std::string_view)>;

Result<std::string> readDate(const char* option, const std::string& word) {
    bool fits = word.size() == 10 && word[4] == '-' && word[7] == '-';
    for (std::size_t i = 0; fits && i < word.size(); ++i) {
        fits = i == 4 || i == 7 || (word[i] >= '0' && word[i] <= '9');
    }
    const int month = fits ? std::stoi(word.substr(5, 2)) : 0;
    const int day = fits ? std::stoi(word.substr(8, 2)) : 0;
    if (!fits || month < 1 || month > 12 || day < 1 || day > 31) {
        return fail(
            ErrorCode::Malformed, std::string(option) + " " + inQuotes(word) +
                                      " is not a date; allowed: 0000-01-01 to 9999-12-31");
    }
    return word;
}

Result<JointFilter> readFilter(const LogCall& call) {
    JointFilter filter;
    for (const auto& [option, word, target] :
         {std::tuple("--from", &call.from, &filter.fromDay),
          std::tuple("--to", &call.to, &filter.toDay)}) {
        if (*word) {
            const auto date = readDate(option, **word);
            if (!date) {
                return tl::unexpected(date.error());
            }
            *target = *date;
        }
    }
    if (call.verdict) {
        const VerdictWord words[] = {
            VerdictWord::WithinLimits, VerdictWord::WithRemarks, VerdictWord::OutOfLimits,
            VerdictWord::Incomplete};
        const bool known = std::any_of(std::begin(words), std::end(words), [&](VerdictWord word) {
            return toString(word) == *call.verdict;
        });
        if (!known && *call.verdict != kStillOpen) {
            return fail(
                ErrorCode::Malformed,
                "--verdict " + inQuotes(*call.verdict) +
                    " is not a verdict; allowed: \"within limits\", \"within limits with "
                    "remarks\", \"out of limits\", \"incomplete\", \"open\"");
        }
    }
    filter.bench = call.bench;
    filter.by = call.by;
    filter.material = call.material;
    filter.verdict = call.verdict == kStillOpen ? std::string() : call.verdict;
    filter.text = call.text;
    if (call.job) {
        const auto job = readFirstJob(*call.job);
        if (!job) {
            return tl::unexpected(job.error());
        }
        filter.job = job->name; // without a name: the joints that no job was told of
        filter.seams.emplace();
        for (const JobSeam& seam : job->seams) {
            filter.seams->push_back(seam.label);
        }
    }
    if (call.limit) {
        const auto limit = parseInteger("--limit", *call.limit, 1, kLongestList);
        if (!limit) {
            return tl::unexpected(limit.error());
        }
        filter.limit = static_cast<std::size_t>(*limit);
    }
    return filter;
}

Result<LogReader> openLog(const LogCall& call) {
    return LogReader::open(call.log);
}

Result<int> listJoints(const LogCall& call, Terminal& terminal) {
    const auto filter = readFilter(call);
    if (!filter) {
        return tl::unexpected(filter.error());
    }
    auto reader = openLog(call);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    const auto lines = reader->joints(*filter);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    auto reading = LineReading::open(call.log);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    std::vector<LineSaid> said;
    for (const JointLine& line : *lines) {
        auto one = reading->of(line);
        if (!one) {
            return tl::unexpected(one.error());
        }
        said.push_back(std::move(*one));
    }
    if (!call.json) {
        terminal.write(lines->empty() ? "no joints\n" : dayListText(*lines, said));
        return 0;
    }
    std::vector<std::string> joints;
    for (std::size_t i = 0; i < said.size(); ++i) {
        joints.push_back(jointLineJson((*lines)[i], said[i]));
    }
    terminal.write(jointsJson(call.log, reader->world(), reader->logId(), joints));
    return 0;
}

struct FullRecord {
    WeldRecord record;
    std::optional<Bench> bench;
    std::optional<HeatEstimate> heat;
};

/// The estimate takes some tenths of a second: for one joint, not for a whole log.
enum class WithHeat { No, Yes };

Result<FullRecord> readRecord(LogReader& reader, const std::string& weld, WithHeat withHeat) {
    const auto events = reader.weldEvents(weld);
    if (!events) {
        return tl::unexpected(events.error());
    }
    if (events->empty()) {
        return fail(
            ErrorCode::Missing, "--weld " + inQuotes(weld) +
                                    " is not in this log; allowed: one that log list --json shows");
    }
    const auto folded = fold(*events);
    if (!folded) {
        return tl::unexpected(folded.error());
    }
    FullRecord full{record(*folded), {}, {}};
    const auto document = reader.document(full.record.opened.docs.bench);
    if (!document) {
        return tl::unexpected(document.error());
    }
    if (*document) {
        const auto bench = readBench("bench document", (*document)->bytes);
        if (bench) {
            full.bench = bench->bench;
        }
    }
    if (withHeat == WithHeat::Yes && (full.record.stored || full.record.aborted)) {
        full.heat = estimatedIfKnown(courseOf(*folded, full.bench ? &*full.bench : nullptr));
    }
    return full;
}

RecordExtras extrasOf(const FullRecord& full, bool cues) {
    RecordExtras extras;
    extras.bench = full.bench ? &*full.bench : nullptr;
    extras.heat = full.heat ? &*full.heat : nullptr;
    extras.cues = cues;
    return extras;
}

Result<int> showJoint(const LogCall& call, Terminal& terminal) {
    auto reader = openLog(call);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    const auto weld = chooseWeld(*reader, call.log, call.joint, call.weld);
    if (!weld) {
        return tl::unexpected(weld.error());
    }
    const auto full = readRecord(*reader, *weld, WithHeat::Yes);
    if (!full) {
        return tl::unexpected(full.error());
    }
    const auto coupons = readCoupons(*reader, *weld);
    if (!coupons) {
        return tl::unexpected(coupons.error());
    }
    const auto dispute = reader->dispute(*weld);
    if (!dispute) {
        return tl::unexpected(dispute.error());
    }
    RecordExtras extras = extrasOf(*full, call.cues);
    extras.coupons = &coupons->series;
    if (call.json) {
        const std::string json = recordJson(full->record, extras);
        terminal.write(dispute->empty() ? json : withText(json, "trouble", *dispute));
        return 0;
    }
    terminal.write(
        (dispute->empty()
             ? ""
             : "Another log tells this joint differently: " + onOneLine(*dispute) + "\n\n") +
        recordText(full->record, extras));
    return 0;
}

/// As it stands on paper: blanks and capitals do not matter.
bool hasSeal(const VerifyReport& report, const std::string& paper) {
    const auto plain = [](const std::string& text) {
        std::string out;
        for (const char c : text) {
            if (c != ' ') {
                out += c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c;
            }
        }
        return out;
    };
    return std::any_of(report.seals.begin(), report.seals.end(), [&](const FoundSeal& seal) {
        return plain(seal.fingerprint) == plain(paper);
    });
}

std::string photosInWords(const PhotoCheck& photos) {
    if (!photos.note.empty()) {
        return photos.note;
    }
    if (photos.named == 0) {
        return "none is named";
    }
    return photos.findings.empty()
               ? fmt::format("{} named, all as they were kept", photos.named)
               : fmt::format("{} named, {} NOT as kept", photos.named, photos.findings.size());
}

Result<int> verify(const LogCall& call, Terminal& terminal) {
    const auto report = verifyLog(call.log);
    if (!report) {
        return tl::unexpected(report.error());
    }
    PhotoCheck photos; // a damaged log names nothing that can be trusted
    if (report->ok) {
        auto looked = checkPhotos(call.log);
        if (!looked) {
            return tl::unexpected(looked.error());
        }
        photos = std::move(*looked);
    }
    const bool sound = report->ok && photos.findings.empty();
    const int answer = sound && (!call.seal || hasSeal(*report, *call.seal)) ? 0 : 1;
    if (call.json) {
        terminal.write(verifyJson(*report, photos));
        return answer;
    }
    std::vector<std::vector<std::string>> rows = {
        {"Log", onOneLine(call.log)},
        {"Answer", report->ok ? "it is what was written" : "damaged"},
        {"World", onOneLine(report->world)},
        {"Log id", onOneLine(report->logId)},
        {"Rows", std::to_string(report->rows)},
        {"Head", onOneLine(report->head)},
        {"Welds", std::to_string(report->welds)},
        {"Documents", std::to_string(report->documents)},
        {"Covered", onOneLine(report->covered)}};
    for (const FoundSeal& seal : report->seals) {
        rows.push_back(
            {"Seal",
             onOneLine(fmt::format(
                 "{}, {}, rows 1..{}: {}", seal.day, seal.name, seal.toSeq, seal.fingerprint))});
    }
    if (call.seal) {
        const bool known = hasSeal(*report, *call.seal);
        rows.push_back(
            {"Paper",
             known ? "the log has this seal" : "NO seal of this log has that fingerprint"});
    }
    if (report->finding) {
        rows.insert(rows.begin() + 2, {"First finding", onOneLine(report->finding->reason)});
    }
    rows.push_back({"Photos", photosInWords(photos)});
    for (const PhotoFinding& finding : photos.findings) {
        rows.push_back({"Photo", onOneLine(finding.sentence)});
    }
    for (const std::string& note : report->notes) {
        rows.push_back({"Note", onOneLine(note)});
    }
    terminal.write(aligned(rows, 0));
    return answer;
}

Result<int> reportDay(const LogCall& call, Terminal& terminal) {
    const auto day = readDate("--day", call.day.value_or(""));
    if (!day) {
        return tl::unexpected(day.error());
    }
    auto reader = openLog(call);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    const auto text = dayReport(*reader, *day);
    if (!text) {
        return tl::unexpected(text.error());
    }
    terminal.write(call.json ? withText("{}", "report", *text) : *text);
    return 0;
}

/// A JSON list, written one value at a time.
class JsonList {
public:
    explicit JsonList(const Write& write) : m_write(write) { m_write("["); }
    void add(std::string_view value) {
        m_write(m_any ? ",\n" : "\n");
        m_write(value);
        m_any = true;
    }
    void end() { m_write("\n]\n"); }

private:
    const Write& m_write;
    bool m_any = false;
};

Result<void> exportJoints(
    LogReader& reader, const LogCall& call, const JointFilter& filter, const Write& write) {
    auto reading = LineReading::open(call.log);
    if (!reading) {
        return tl::unexpected(reading.error());
    }
    Result<void> read;
    const auto each = [&](const auto& use) {
        const auto done = reader.eachJoint(filter, [&](const JointLine& line) {
            const auto said = reading->of(line);
            if (!said) {
                read = tl::unexpected(said.error());
                return false;
            }
            use(line, *said);
            return true;
        });
        return done ? read : done;
    };
    if (!call.json) {
        write(dayListHeader());
        return each([&write](const JointLine& line, const LineSaid& said) {
            write(dayListRow(line, said));
        });
    }
    JsonList list(write);
    auto done = each([&list](const JointLine& line, const LineSaid& said) {
        list.add(jointLineJson(line, said));
    });
    list.end();
    return done;
}

Result<std::vector<std::string>> weldsOf(LogReader& reader, const JointFilter& filter) {
    std::vector<std::string> welds;
    const auto listed = reader.eachJoint(filter, [&welds](const JointLine& line) {
        welds.push_back(line.weld);
        return true;
    });
    if (!listed) {
        return tl::unexpected(listed.error());
    }
    return welds;
}

Result<void> exportRecords(LogReader& reader, const JointFilter& filter, const Write& write) {
    std::vector<JointLine> lines;
    const auto listed = reader.eachJoint(filter, [&lines](const JointLine& line) {
        lines.push_back(line);
        return true;
    });
    if (!listed) {
        return listed;
    }
    const auto coupons = readCoupons(reader);
    if (!coupons) {
        return tl::unexpected(coupons.error());
    }
    JsonList list(write);
    for (JointLine& line : lines) {
        const auto full = readRecord(reader, line.weld, WithHeat::No);
        if (full) {
            const std::vector<CouponSeries> cut = cutFrom(line.weld, *coupons);
            RecordExtras extras = extrasOf(*full, true);
            extras.coupons = &cut;
            list.add(recordJson(full->record, extras));
        } else { // the others are there, and this one says why it is not
            line.trouble = full.error().detail;
            list.add(jointLineJson(line, {}));
        }
    }
    list.end();
    return {};
}

Result<void> exportValues(LogReader& reader, const JointFilter& filter, const Write& write) {
    std::vector<NamedJoint> joints;
    const auto listed = reader.eachJoint(filter, [&joints](const JointLine& line) {
        joints.push_back({line.weld, line.number, line.openedUtc, line.seam});
        return true;
    });
    if (!listed) {
        return listed;
    }
    write(valueRowsHeader());
    for (const NamedJoint& joint : joints) {
        write(valueRows(reader, joint));
    }
    return {};
}

/// Rows of a chain, all of them, or those of the joints that a filter finds.
class RowChoice {
public:
    static Result<RowChoice> of(LogReader& reader, const LogCall& call, const JointFilter& filter) {
        RowChoice choice;
        if (call.filters()) {
            const auto welds = weldsOf(reader, filter);
            if (!welds) {
                return tl::unexpected(welds.error());
            }
            choice.m_welds.emplace(welds->begin(), welds->end());
        }
        return choice;
    }
    bool takes(const StoredRow& row) const {
        return !m_welds || m_welds->count(std::string(subjectOf(row.body))) > 0;
    }

private:
    /// A body's keys are sorted, so that the subject stands behind all that people typed.
    static std::string_view subjectOf(std::string_view body) {
        constexpr std::string_view kKey = "\"subject\":\"";
        const std::size_t at = body.rfind(kKey);
        if (at == std::string_view::npos) {
            return {};
        }
        const std::string_view rest = body.substr(at + kKey.size());
        return rest.substr(0, rest.find('"'));
    }

    std::optional<std::unordered_set<std::string>> m_welds; // absent: every row
};

/// The log's own rows, and behind them those that came with other logs.
Result<void> eachRowOfAll(LogReader& reader, const std::function<bool(const StoredRow&)>& use) {
    auto own = reader.eachRow(use);
    return own ? reader.eachImportedRow(use) : own;
}

Result<void>
exportRows(LogReader& reader, const LogCall& call, const JointFilter& filter, const Write& write) {
    const auto choice = RowChoice::of(reader, call, filter);
    if (!choice) {
        return tl::unexpected(choice.error());
    }
    Result<void> bad;
    const auto keep = [&](const StoredRow& row, const auto& textOf, const auto& use) {
        if (!choice->takes(row)) {
            return true;
        }
        const Result<std::string> text = textOf(row);
        if (text) {
            use(*text);
        } else {
            bad = bad ? Result<void>(tl::unexpected(text.error())) : bad;
        }
        return true; // the others are there
    };
    Result<void> done;
    if (call.json) {
        JsonList list(write);
        done = eachRowOfAll(reader, [&](const StoredRow& row) {
            return keep(row, eventRowJson, [&list](const std::string& text) { list.add(text); });
        });
        list.end();
    } else {
        write(eventRowsHeader());
        done =
            eachRowOfAll(reader, [&](const StoredRow& row) { return keep(row, eventRow, write); });
    }
    return done ? bad : done;
}

/// The chain as it is stored, so that anyone can work it out again with a shell.
Result<void> exportChain(LogReader& reader, const Write& write) {
    write(fmt::format("seamclock-log/1 {} {}\n", reader.logId(), reader.world()));
    return reader.eachRow([&write](const StoredRow& row) {
        write(row.hash + " " + row.body + "\n");
        return true;
    });
}

Result<void>
exportTo(LogReader& reader, const LogCall& call, const JointFilter& filter, const Write& write) {
    if (call.what == "records") {
        return exportRecords(reader, filter, write);
    }
    if (call.what == "values") {
        return exportValues(reader, filter, write);
    }
    if (call.what == "events") {
        return exportRows(reader, call, filter, write);
    }
    if (call.what == "chain") {
        return exportChain(reader, write);
    }
    return exportJoints(reader, call, filter, write);
}

Result<int> exportLog(const LogCall& call, Terminal& terminal) {
    const std::string_view known[] = {"joints", "records", "values", "events", "chain"};
    if (std::find(std::begin(known), std::end(known), call.what) == std::end(known)) {
        return fail(
            ErrorCode::Malformed, "--what " + inQuotes(call.what) +
                                      " can't be exported; allowed: joints, records, values, "
                                      "events, chain");
    }
    if (call.what == "chain" && call.filters()) {
        return fail(
            ErrorCode::Malformed,
            "--what \"chain\" is the whole chain, since a part of it proves nothing; allowed: "
            "without a filter");
    }
    if (call.what == "values" && call.json) {
        return fail(
            ErrorCode::Malformed,
            "--what \"values\" with --json; allowed: records, which hold them as JSON");
    }
    const auto filter = readFilter(call);
    if (!filter) {
        return tl::unexpected(filter.error());
    }
    auto reader = openLog(call);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    if (!call.out) {
        const auto done = exportTo(
            *reader, call, *filter, [&terminal](std::string_view text) { terminal.write(text); });
        if (!done) {
            return tl::unexpected(done.error());
        }
        return 0;
    }
    auto file = OutFile::open(*call.out);
    if (!file) {
        Error error = file.error();
        error.detail = "--out " + error.detail;
        return tl::unexpected(error);
    }
    const auto done =
        exportTo(*reader, call, *filter, [&file](std::string_view text) { file->write(text); });
    if (!done) {
        file->discard();
        return tl::unexpected(done.error());
    }
    const auto written = file->finish();
    if (!written) {
        return tl::unexpected(written.error());
    }
    if (!call.json) {
        terminal.write("written: " + onOneLine(*call.out) + "\n");
    }
    return 0;
}

struct PhaseTime {
    WeldTime from;
    std::optional<Milliseconds> whole;
};

std::optional<PhaseTime> phaseTime(const State& state) {
    if (const auto* s = std::get_if<Aligning>(&state)) {
        return PhaseTime{s->from, {}};
    }
    if (const auto* s = std::get_if<Soaking>(&state)) {
        return PhaseTime{s->from, s->due.lo - s->from.lo};
    }
    if (const auto* s = std::get_if<ChangingOver>(&state)) {
        return PhaseTime{s->from, s->limit.lo - s->from.lo};
    }
    if (const auto* s = std::get_if<BuildingUp>(&state)) {
        return PhaseTime{s->from, s->target.lo - s->from.lo};
    }
    if (const auto* s = std::get_if<Cooling>(&state)) {
        return PhaseTime{s->from, s->due.lo - s->from.lo};
    }
    return std::nullopt;
}

/// Weld time now: on the same boot to the millisecond, after a reboot an interval, on a rehearsal's
/// own clock the time of its last event.
std::optional<WeldTime> timeNow(const Weld& weld, const Instant& now, InterruptedWeld& said) {
    const auto last = weldTimeAt(weld, weld.events.back().at);
    if (weld.clock.bootId.rfind("practice:", 0) == 0) {
        said.clock = "rehearsal";
        said.next = "goes_on";
        return last ? std::optional(*last) : std::nullopt;
    }
    switch (afterCut(weld, now)) {
    case AfterCut::GoesOn:
        said.next = "goes_on";
        break;
    case AfterCut::Bridge:
        said.next = "bridge";
        break;
    case AfterCut::AbortByDefault:
        said.next = "abort_by_default";
        break;
    }
    if (now.bootId == weld.clock.bootId) {
        said.clock = "same boot";
        const auto t = weldTimeAt(weld, now);
        return t ? std::optional(*t) : std::nullopt;
    }
    said.clock = "rebooted";
    const auto bridge = bridgeTo(weld, now, false);
    if (!last || !bridge || !*bridge) {
        return std::nullopt;
    }
    said.bridge = **bridge;
    if (const auto sure = bridgeTo(weld, now, true); !sure) {
        said.cannotConfirm = sure.error().detail;
    }
    return WeldTime{last->lo + (*bridge)->lo, last->hi + (*bridge)->hi};
}

InterruptedWeld interrupted(const RecoveredWeld& found, const Instant& now) {
    InterruptedWeld said;
    said.weld = found.subject;
    if (!found.weld) {
        said.next = "damaged";
        said.trouble = found.weld.error().detail;
        return said;
    }
    const Weld& weld = *found.weld;
    said.number = weld.opened().number;
    said.seam = weld.opened().seam.value_or("");
    said.phase = phaseName(weld.state);
    said.events = static_cast<std::int64_t>(weld.events.size());
    const auto t = timeNow(weld, now, said);
    const auto phase = phaseTime(weld.state);
    if (t && phase) {
        const WeldTime in = *t - phase->from;
        said.inPhaseLow = in.lo;
        said.inPhaseHigh = in.hi;
        if (phase->whole) {
            said.leftLow = *phase->whole - in.hi;
            said.leftHigh = *phase->whole - in.lo;
        }
    }
    return said;
}

std::string interval(const Milliseconds low, const Milliseconds high) {
    return low == high ? exactTime(low) : exactTime(low) + " to " + exactTime(high);
}

std::string nextInWords(const InterruptedWeld& weld) {
    if (weld.next == "damaged") {
        return "its events can't be read: " + onOneLine(weld.trouble);
    }
    if (weld.clock == "rehearsal") {
        return "a rehearsal on a clock of its own: it stands still until it is resumed";
    }
    if (weld.next == "goes_on") {
        return "same boot: it goes on, the clock never stopped";
    }
    if (weld.next == "bridge" && !weld.cannotConfirm.empty()) {
        return "the machine was started anew: cooling has gone on, and counts from the lower time; "
               "the clock can't be confirmed: " +
               weld.cannotConfirm;
    }
    if (weld.next == "bridge") {
        return "the machine was started anew: cooling has gone on, and counts from the lower time "
               "unless a person confirms the clock";
    }
    return "the machine was started anew before the lock: stop it, cut back and plane, unless a "
           "person says to go on";
}

Result<int> recover(const LogCall& call, Terminal& terminal) {
    const auto clock = BootClock::make();
    if (!clock) {
        return tl::unexpected(clock.error());
    }
    const auto found = recoverOpenWelds(call.log);
    if (!found) {
        return tl::unexpected(found.error());
    }
    const Instant now = clock->now();
    std::vector<InterruptedWeld> welds;
    for (const RecoveredWeld& one : *found) {
        welds.push_back(interrupted(one, now));
    }
    if (call.json) {
        terminal.write(interruptedJson(call.log, welds));
        return 0;
    }
    if (welds.empty()) {
        terminal.write("no open weld\n");
    }
    for (const InterruptedWeld& weld : welds) {
        std::vector<std::vector<std::string>> rows = {{"Weld", onOneLine(weld.weld)}};
        if (weld.trouble.empty()) {
            rows.push_back({"Joint", std::to_string(weld.number)});
            rows.push_back({"State", codeInWords(weld.phase)});
        }
        if (weld.inPhaseLow && weld.inPhaseHigh) {
            rows.push_back({"For", interval(*weld.inPhaseLow, *weld.inPhaseHigh)});
        }
        if (weld.leftLow && weld.leftHigh) {
            rows.push_back({"Left", interval(*weld.leftLow, *weld.leftHigh)});
        }
        if (weld.bridge) {
            const bool known = weld.bridge->basis != BridgeBasis::Backwards;
            rows.push_back(
                {"Power off", known ? interval(weld.bridge->lo, weld.bridge->hi)
                                    : "not known: the wall clock went back"});
        }
        rows.push_back({"Next", nextInWords(weld)});
        terminal.write(aligned(rows, 0));
    }
    return 0;
}

void addFilter(CLI::App& words, LogCall& call) {
    words.add_option("--from", call.from, "local DATE of the first day, 0000-01-01 to 9999-12-31");
    words.add_option("--to", call.to, "local DATE of the last day, 0000-01-01 to 9999-12-31");
    words.add_option("--bench", call.bench, "only joints of the bench with this ID");
    words.add_option("--by", call.by, "only joints opened by this person:ID");
    words.add_option("--material", call.material, "only joints of this material");
    words.add_option("--verdict", call.verdict, "only joints with this verdict, or open ones");
    words.add_option("--text", call.text, "only joints whose texts hold these words");
    words.add_option("--job", call.job, "only seams of the job in this FOLDER");
}

} // namespace

Result<std::string> chooseWeld(
    LogReader& reader, const std::string& log, const std::optional<std::string>& joint,
    const std::optional<std::string>& weld) {
    if (weld) {
        return weld->rfind("weld:", 0) == 0 ? *weld : "weld:" + *weld;
    }
    const auto highest = reader.highestNumber();
    if (!highest) {
        return tl::unexpected(highest.error());
    }
    if (*highest < 1) {
        return fail(
            ErrorCode::Missing,
            inQuotes(log) + " holds no joint yet; allowed: a log with at least one");
    }
    const auto number = joint ? parseInteger("--joint", *joint, 1, *highest) : *highest;
    if (!number) {
        return tl::unexpected(number.error());
    }
    const auto welds = reader.weldsNumbered(*number);
    if (!welds) {
        return tl::unexpected(welds.error());
    }
    if (welds->empty()) {
        return fail(
            ErrorCode::Missing, "--joint " + inQuotes(std::to_string(*number)) +
                                    " is not in this log; allowed: a number that log list shows, "
                                    "up to " +
                                    std::to_string(*highest));
    }
    if (welds->size() > 1) {
        std::string names;
        for (const std::string& one : *welds) {
            names += (names.empty() ? "" : ", ") + one;
        }
        return fail(
            ErrorCode::Conflict, "--joint " + inQuotes(std::to_string(*number)) +
                                     " is the number of " + std::to_string(welds->size()) +
                                     " joints, as another log was imported; allowed: --weld with "
                                     "one of " +
                                     names);
    }
    return welds->front();
}

void addLog(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<LogCall>();
    CLI::App* log = root.add_subcommand("log", "A joint log: its list, records and soundness.");
    log->require_subcommand(0, 1);
    CLI::App* list = log->add_subcommand("list", "The joints, newest first.");
    addFilter(*list, *call);
    list->add_option("--limit", call->limit, "at most so many joints, 1 to 10000 (100)");
    CLI::App* show =
        log->add_subcommand("show", "The record of one joint: of the highest number, or");
    show->add_option("--joint", call->joint, "the joint with this number");
    show->add_option("--weld", call->weld, "the joint with this weld:UUID");
    show->add_flag("--cues", call->cues, "with the signals that were due");
    CLI::App* paper = log->add_subcommand(
        "day", "The day's report for paper: its joints, and its seals with their fingerprints.");
    paper->add_option("--day", call->day, "local DATE of the day")->required();
    CLI::App* check =
        log->add_subcommand("verify", "Whether a log and its photos are what was written.");
    check->add_option(
        "--seal", call->seal, "a seal's FINGERPRINT as on paper, 32 hexadecimal digits");
    CLI::App* out =
        log->add_subcommand("export", "A log's content, as CSV or with --json as JSON.");
    addFilter(*out, *call);
    out->add_option(
        "--what", call->what,
        "joints (CSV or JSON), records (JSON), values (CSV), events (CSV or JSON), chain");
    out->add_option("--out", call->out, "a FILE to write instead of standard output");
    CLI::App* open =
        log->add_subcommand("recover", "The open welds as they are now; writes nothing.");
    for (CLI::App* words : {list, show, paper, check, out, open}) {
        words->add_option("--log", call->log, "the log's FILE")->required();
        words->add_flag("--json", call->json, "as JSON");
    }
    commands.push_back({list, [call, &terminal] { return listJoints(*call, terminal); }});
    commands.push_back({show, [call, &terminal] { return showJoint(*call, terminal); }});
    commands.push_back({paper, [call, &terminal] { return reportDay(*call, terminal); }});
    commands.push_back({check, [call, &terminal] { return verify(*call, terminal); }});
    commands.push_back({out, [call, &terminal] { return exportLog(*call, terminal); }});
    commands.push_back({open, [call, &terminal] { return recover(*call, terminal); }});
    addLogCopies(*log, commands, terminal);
}

} // namespace seamclock
