#include "core/base/json_reader.h"
#include "core/base/uuid.h"
#include "core/bench/bench_codec.h"
#include "core/log/body_codec.h"
#include "core/log/chain.h"
#include "core/log/fact_codec.h"
#include "core/log/seal.h"
#include "core/report/evidence.h"
#include "core/report/record_text.h"
#include "core/weld/event_codec.h"
#include "core/weld/fold.h"

#include <algorithm>
#include <set>
#include <utility>

namespace seamclock {

namespace {

constexpr const char* kFormat = "seamclock-evidence/1";
constexpr std::int64_t kMostRows = std::int64_t{1} << 40;

/// A signature in the chain, whichever of the two kinds.
struct Signature {
    std::int64_t seq = 0; // the row that holds it
    LogHead head;
    std::string by;  // "person:…", "station"
    std::string day; // of a seal; else ""
    std::string publicKey;
    std::string signature;
    std::string fingerprint; // of a seal; else ""
};

std::optional<Signature> signatureIn(const StoredRow& row) {
    const auto fact = factFromBody(row.body);
    if (!fact) {
        return std::nullopt;
    }
    if (const auto* seal = std::get_if<DaySealed>(&fact->d)) {
        return Signature{
            row.seq,
            {seal->toSeq, seal->head},
            fact->by,
            fact->subject.substr(std::string_view("day:").size()),
            seal->publicKey,
            seal->signature,
            sealFingerprint(*fact)};
    }
    if (const auto* head = std::get_if<HeadSigned>(&fact->d)) {
        return Signature{row.seq,         {head->toSeq, head->head}, fact->by, "",
                         head->publicKey, head->signature,           ""};
    }
    return std::nullopt;
}

bool fits(const Signature& signature, const std::string& logId) {
    const std::string message =
        signature.day.empty() ? headMessage(logId, signature.head)
                              : sealMessage(logId, signature.day, signature.by, signature.head);
    return signatureFits(signature.publicKey, message, signature.signature);
}

Result<bool> isSealedBehind(LogReader& reader, std::int64_t seq) {
    const auto bodies = reader.bodiesFrom("day:");
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    return std::any_of(bodies->begin(), bodies->end(), [&](const std::string& body) {
        const auto fact = factFromBody(body);
        const auto* seal = fact ? std::get_if<DaySealed>(&fact->d) : nullptr;
        return seal != nullptr && seal->toSeq >= seq;
    });
}

struct Slice {
    LogHead before; // the row right before the first
    std::vector<StoredRow> rows;
    Signature signature; // in the last row
};

Result<Slice> sliceOf(LogReader& reader, const std::string& weld) {
    const auto span = reader.span(weld);
    if (!span) {
        return tl::unexpected<Error>(span.error());
    }
    if (!*span) {
        return fail(ErrorCode::Missing, weld + " is not in this log's own chain");
    }
    const auto sealed = isSealedBehind(reader, (*span)->last);
    if (!sealed) {
        return tl::unexpected<Error>(sealed.error());
    }
    Slice out;
    out.before = {0, genesisHash(reader.logId(), reader.world())};
    bool found = false;
    const std::int64_t from = std::max<std::int64_t>(1, (*span)->first - 1);
    const auto read = reader.eachRow(
        [&](const StoredRow& row) {
            if (row.seq < (*span)->first) {
                out.before = {row.seq, row.hash};
                return true;
            }
            out.rows.push_back(row);
            auto signature = row.seq > (*span)->last ? signatureIn(row) : std::nullopt;
            found = signature && signature->head.seq >= (*span)->last &&
                    (!*sealed || !signature->day.empty());
            if (found) {
                out.signature = std::move(*signature);
            }
            return !found;
        },
        from);
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    if (!found) {
        return fail(
            ErrorCode::Refused,
            "no signature covers all rows of " + weld + " yet; sealing the day makes one");
    }
    return out;
}

std::vector<std::string> linesOf(const std::string& text) {
    std::vector<std::string> out;
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t end = std::min(text.find('\n', from), text.size());
        out.push_back(text.substr(from, end - from));
        from = end + 1;
    }
    return out;
}

/// The weld that these rows hold under that name; the first bad row in the complaint.
Result<Weld> weldIn(const std::vector<StoredRow>& rows, const std::string& subject) {
    std::vector<Event> events;
    for (const StoredRow& row : rows) {
        const auto envelope = readEnvelope(row.body);
        if (!envelope) {
            return fail(
                ErrorCode::Damaged,
                "row " + std::to_string(row.seq) + ": " + envelope.error().detail);
        }
        if (envelope->subject != subject) {
            continue;
        }
        auto event = eventFromBody(row.body);
        if (!event) {
            return fail(
                ErrorCode::Damaged, "row " + std::to_string(row.seq) + ": " + event.error().detail);
        }
        if (event->n != static_cast<std::int64_t>(events.size()) + 1) {
            return fail(
                ErrorCode::Damaged, "row " + std::to_string(row.seq) + ": it is event " +
                                        std::to_string(event->n) + " of " + subject +
                                        ", and event " + std::to_string(events.size() + 1) +
                                        " is missing");
        }
        events.push_back(std::move(*event));
    }
    if (events.empty()) {
        return fail(ErrorCode::Damaged, "there is no row of " + subject);
    }
    auto weld = fold(events);
    if (!weld) {
        return fail(
            ErrorCode::Damaged,
            "the events of " + subject + " fit no weld: " + weld.error().detail);
    }
    return weld;
}

std::string textOf(const Weld& weld, const std::vector<LogDocument>& documents) {
    const WeldRecord made = record(weld);
    std::optional<Bench> bench;
    for (const LogDocument& document : documents) {
        if (document.sha256 == made.opened.docs.bench) {
            if (auto read = readBench("bench", document.bytes)) {
                bench = std::move(read->bench);
            }
        }
    }
    RecordExtras extras;
    extras.bench = bench ? &*bench : nullptr;
    return recordText(made, extras);
}

/// Of the weld's rows among these.
Result<std::vector<LogDocument>>
documentsOf(LogReader& reader, const std::vector<StoredRow>& rows, const std::string& weld) {
    std::set<std::string> named;
    for (const StoredRow& row : rows) {
        const auto envelope = readEnvelope(row.body);
        if (envelope && envelope->subject == weld) {
            named.insert(envelope->documents.begin(), envelope->documents.end());
        }
    }
    std::vector<LogDocument> out;
    for (const std::string& name : named) {
        auto document = reader.document(name);
        if (!document) {
            return tl::unexpected<Error>(document.error());
        }
        if (!*document) {
            return fail(ErrorCode::Damaged, "the document " + name + " is not in the log");
        }
        out.push_back(std::move(**document));
    }
    return out;
}

/// What an evidence file says, before anything of it is believed.
struct Told {
    std::string logId;
    std::string world;
    std::string weld;
    Slice slice;
    std::vector<LogDocument> documents;
    std::vector<std::string> record;
    std::int64_t words = 1; // files of before they were counted
};

Result<Told> readTold(std::string_view name, std::string_view text) {
    const auto parsed = parseJson(name, text);
    if (!parsed) {
        return tl::unexpected<Error>(parsed.error());
    }
    JsonReader root(*parsed);
    if (const std::string format = root.text("format"); format != kFormat) {
        root.complain("format", "is \"" + format + "\", expected \"" + kFormat + "\"");
    }
    Told out;
    JsonReader log = root.object("log");
    out.logId = log.text("id");
    out.world = log.text("world");
    log.refuseUnknown();
    out.weld = root.text("weld");
    JsonReader before = root.object("before");
    out.slice.before.seq = before.integer("seq", 0, kMostRows);
    out.slice.before.hash = before.text("hash");
    before.refuseUnknown();
    for (JsonReader& row : root.objects("rows")) {
        out.slice.rows.push_back(
            {row.integer("seq", 1, kMostRows), row.text("hash"), row.text("body")});
        row.refuseUnknown();
    }
    for (JsonReader& document : root.objects("documents")) {
        out.documents.push_back(
            {document.text("sha256"), document.text("kind"), document.text("body")});
        document.refuseUnknown();
    }
    out.record = root.texts("record");
    out.words = root.integerIf("words", 1, kMostRows).value_or(1);
    root.refuseUnknown();
    if (const auto sound = root.verdict(); !sound) {
        return tl::unexpected<Error>(sound.error());
    }
    return out;
}

/// Judges in the order in which one thing rests on the other; the answer is the first complaint.
std::string judge(const Told& told, EvidenceReport& report) {
    std::string previous = told.slice.before.hash;
    std::int64_t last = told.slice.before.seq;
    if (last == 0 && previous != genesisHash(told.logId, told.world)) {
        return "the chain does not begin with the genesis of its log";
    }
    for (const StoredRow& row : told.slice.rows) {
        const std::string name = "row " + std::to_string(row.seq);
        if (row.seq != last + 1) {
            return "row " + std::to_string(last + 1) + " is missing";
        }
        if (chainHash(previous, row.body) != row.hash) {
            return name + ": its hash does not follow from the row before and its own body";
        }
        previous = row.hash;
        last = row.seq;
    }
    report.rows = static_cast<std::int64_t>(told.slice.rows.size());
    const auto signature =
        told.slice.rows.empty() ? std::nullopt : signatureIn(told.slice.rows.back());
    if (!signature) {
        return "the last row is no signature";
    }
    report.sealed = !signature->day.empty();
    report.by = signature->by;
    report.day = signature->day;
    report.fingerprint = signature->fingerprint;
    report.publicKey = signature->publicKey;
    report.keyFingerprint = fingerprint(signature->publicKey);
    const auto signedRow =
        std::find_if(told.slice.rows.begin(), told.slice.rows.end(), [&](const StoredRow& row) {
            return row.seq == signature->head.seq;
        });
    if (signedRow == told.slice.rows.end() || signedRow->hash != signature->head.hash) {
        return "the signature is not of a row that is here";
    }
    if (!fits(*signature, told.logId)) {
        return "the signature is not one of the key that it names";
    }
    for (const StoredRow& row : told.slice.rows) {
        const auto envelope = readEnvelope(row.body);
        if (envelope && envelope->subject == told.weld && row.seq > signature->head.seq) {
            return "row " + std::to_string(row.seq) + " of the joint stands behind the signature";
        }
    }
    const auto weld = weldIn(told.slice.rows, told.weld);
    if (!weld) {
        return weld.error().detail;
    }
    std::set<std::string> here;
    for (const LogDocument& document : told.documents) {
        if (sha256Hex(document.bytes) != document.sha256) {
            return "the document " + document.sha256 + " was changed";
        }
        here.insert(document.sha256);
    }
    for (const StoredRow& row : told.slice.rows) {
        const auto envelope = readEnvelope(row.body);
        if (envelope->subject != told.weld) {
            continue;
        }
        for (const std::string& named : envelope->documents) {
            if (here.count(named) == 0) {
                return "the document " + named + " is missing; row " + std::to_string(row.seq) +
                       " names it";
            }
        }
    }
    const WeldRecord made = record(*weld);
    report.number = made.opened.number;
    report.verdict =
        made.stored ? made.stored->verdict : std::string(toString(VerdictWord::Incomplete));
    report.record = textOf(*weld, told.documents);
    if (linesOf(report.record) == told.record) {
        return {};
    }
    // Another version of the program says it in other words, and the rows are the proof.
    report.otherWords = told.words != kRecordWords;
    return report.otherWords ? "" : "the record in the file is not what its rows make";
}

} // namespace

Result<std::string> evidenceJson(LogReader& reader, const std::string& weld) {
    const auto slice = sliceOf(reader, weld);
    if (!slice) {
        return tl::unexpected<Error>(slice.error());
    }
    const auto folded = weldIn(slice->rows, weld);
    if (!folded) {
        return tl::unexpected<Error>(folded.error());
    }
    const auto documents = documentsOf(reader, slice->rows, weld);
    if (!documents) {
        return tl::unexpected<Error>(documents.error());
    }
    Json rows = Json::array();
    for (const StoredRow& row : slice->rows) {
        rows.push_back({{"seq", row.seq}, {"hash", row.hash}, {"body", row.body}});
    }
    Json papers = Json::array();
    for (const LogDocument& document : *documents) {
        papers.push_back(
            {{"sha256", document.sha256}, {"kind", document.kind}, {"body", document.bytes}});
    }
    const Json root = {
        {"format", kFormat},
        {"log", {{"id", reader.logId()}, {"world", reader.world()}}},
        {"weld", weld},
        {"before", {{"seq", slice->before.seq}, {"hash", slice->before.hash}}},
        {"rows", std::move(rows)},
        {"documents", std::move(papers)},
        {"record", linesOf(textOf(*folded, *documents))},
        {"words", kRecordWords}};
    try {
        return root.dump(1) + "\n";
    } catch (const Json::exception&) {
        return fail(ErrorCode::Damaged, "a document of " + weld + " is not UTF-8");
    }
}

Result<EvidenceReport> checkEvidence(std::string_view name, std::string_view text) {
    const auto told = readTold(name, text);
    if (!told) {
        return tl::unexpected<Error>(told.error());
    }
    EvidenceReport report;
    report.logId = told->logId;
    report.world = told->world;
    report.weld = told->weld;
    report.finding = judge(*told, report);
    report.ok = report.finding.empty();
    return report;
}

} // namespace seamclock
