#include "core/practice/practice_history.h"

#include "core/base/uuid.h"
#include "core/bench/bench_codec.h"
#include "core/log/fact_codec.h"
#include "core/practice/broken_off.h"
#include "core/practice/lesson_codec.h"
#include "core/practice/practice_take_codec.h"
#include "core/procedure/procedure_codec.h"

#include <algorithm>
#include <map>
#include <type_traits>

namespace seamclock {
namespace {

constexpr std::string_view kWeld = "weld:";
constexpr std::string_view kPractice = "practice:";

// The wall: what keeps a take can't be handed a log of joints.
static_assert(!std::is_convertible_v<LogWriter<Production>&, LogWriter<Practice>&>);
static_assert(!std::is_constructible_v<LogWriter<Practice>, LogWriter<Production>&&>);

bool isOff(const ReadingError& reading) {
    return std::abs(reading.said - reading.was) > reading.allowed;
}

std::optional<Milliseconds> middleOf(const std::vector<CueReaction>& reactions) {
    if (reactions.empty()) {
        return std::nullopt;
    }
    std::vector<Milliseconds> took;
    for (const CueReaction& reaction : reactions) {
        took.push_back(reaction.took);
    }
    std::sort(took.begin(), took.end());
    return took[(took.size() - 1) / 2];
}

std::optional<VerdictWord> verdictWordOf(std::string_view text) {
    for (const VerdictWord word :
         {VerdictWord::WithinLimits, VerdictWord::WithRemarks, VerdictWord::OutOfLimits,
          VerdictWord::Incomplete}) {
        if (toString(word) == text) {
            return word;
        }
    }
    return std::nullopt;
}

std::optional<Lapse> lapseOf(std::string_view code) {
    for (const Lapse lapse : allLapses()) {
        if (toString(lapse) == code) {
            return lapse;
        }
    }
    return std::nullopt;
}

Result<PracticeLine> lineOf(const Fact& fact, const PracticeMade& made, LogReader& log) {
    PracticeLine line;
    line.by = fact.by;
    line.at = fact.at;
    line.lesson = made.lesson;
    line.lessonTitle = made.title;
    line.weld = made.weld;
    line.judged = static_cast<int>(made.judged);
    line.inLimits = static_cast<int>(made.inLimits);
    line.reaction = made.reaction;
    line.readingErrors = static_cast<int>(made.readingErrors);
    line.orderErrors = static_cast<int>(made.orderErrors);
    line.noticed = static_cast<int>(made.noticed);
    line.toNotice = static_cast<int>(made.toNotice);
    line.ductile = made.ductile;
    line.takeSha256 = made.take;
    const auto verdict = verdictWordOf(made.verdict);
    if (!verdict) {
        return fail(
            ErrorCode::Malformed,
            fact.subject + ": \"" + made.verdict + "\" is no verdict of this program");
    }
    line.verdict = *verdict;
    for (const std::string& code : made.lapses) {
        // One that a later program knows is passed over; its other lines still count.
        if (const auto lapse = lapseOf(code)) {
            line.lapses.push_back(*lapse);
        }
    }
    const auto events = log.weldEvents(made.weld);
    if (!events) {
        return tl::unexpected<Error>(events.error());
    }
    if (!events->empty()) {
        if (const auto* opened = std::get_if<WeldOpened>(&events->front().d)) {
            line.number = opened->number;
        }
    }
    return line;
}

/// Among the lines, oldest first, where its number has it.
void takeIn(const BrokenOffWeld& broken, std::vector<PracticeLine>& lines) {
    PracticeLine line;
    line.by = broken.by;
    line.at = broken.last;
    line.lesson = broken.lesson;
    line.lessonTitle = broken.lesson;
    line.weld = broken.weld;
    line.number = broken.number;
    line.brokenOff = true;
    line.left = broken.left;
    const auto after = std::find_if(lines.begin(), lines.end(), [&line](const auto& other) {
        return other.number > line.number;
    });
    lines.insert(after, std::move(line));
}

/// The bytes of a document; empty: the take does not say which.
Result<std::string> bytesOf(LogReader& log, const std::string& sha256) {
    if (sha256.empty()) {
        return std::string();
    }
    auto document = log.document(sha256);
    if (!document) {
        return tl::unexpected<Error>(document.error());
    }
    if (!*document) {
        return fail(
            ErrorCode::Damaged, log.path() + ": the document " + sha256 + " of a take is gone");
    }
    return std::move((*document)->bytes);
}

Result<void> addDocuments(LogReader& log, KeptTake& kept) {
    const auto procedure = bytesOf(log, kept.take.procedureSha256);
    const auto bench = bytesOf(log, kept.take.benchSha256);
    if (!procedure || !bench) {
        return tl::unexpected<Error>(procedure ? bench.error() : procedure.error());
    }
    if (!procedure->empty()) {
        auto read = readProcedure("the procedure " + kept.take.procedureSha256, *procedure);
        if (!read) {
            return tl::unexpected<Error>(read.error());
        }
        kept.procedure = std::move(*read);
    }
    if (!bench->empty()) {
        auto read = readBench("the bench " + kept.take.benchSha256, *bench);
        if (!read) {
            return tl::unexpected<Error>(read.error());
        }
        kept.bench = std::move(*read);
    }
    return {};
}

Result<PracticeMade> madeOf(
    const PracticeTake& take, const SetLesson& set, const PracticeScore& score,
    std::vector<LogDocument>& documents) {
    const Lesson& lesson = set.lesson;
    auto text = takeText(take);
    if (!text) {
        return tl::unexpected<Error>(text.error());
    }
    std::string lessonBytes = lessonText(lesson);
    PracticeMade made;
    made.take = sha256Hex(*text);
    made.lessonDoc = sha256Hex(lessonBytes);
    documents = {
        {made.take, "take", std::move(*text)},
        {made.lessonDoc, "lesson", std::move(lessonBytes)},
        {set.order.procedure.sha256, "procedure", set.order.procedure.bytes},
        {set.bench.sha256, "bench", set.bench.bytes}};
    made.lesson = lesson.id;
    made.title = lesson.title;
    made.weld = take.weld;
    made.verdict = toString(score.verdict.word);
    made.judged = score.judged;
    made.inLimits = score.inLimits;
    made.reaction = middleOf(score.reactions);
    made.readingErrors = std::count_if(score.readings.begin(), score.readings.end(), isOff);
    made.orderErrors = static_cast<std::int64_t>(score.order.size());
    made.noticed =
        std::count_if(score.notice.begin(), score.notice.end(), [](const NoticeScore& notice) {
            return notice.at.has_value();
        });
    made.toNotice = static_cast<std::int64_t>(score.notice.size());
    made.ductile = score.made.bend.ductile;
    for (const LapseFinding& finding : score.lapses) {
        made.lapses.emplace_back(toString(finding.lapse));
    }
    return made;
}

} // namespace

Result<void> keepTake(
    LogWriter<Practice>& writer, const PracticeTake& take, const SetLesson& set,
    const PracticeScore& score, const std::string& by, const Instant& at) {
    if (take.weld.rfind(kWeld, 0) != 0 || take.weld.size() == kWeld.size()) {
        return fail(
            ErrorCode::Malformed,
            "the take's weld is \"" + take.weld + "\"; allowed: weld: and its UUID");
    }
    std::vector<LogDocument> documents;
    auto made = madeOf(take, set, score, documents);
    if (!made) {
        return tl::unexpected<Error>(made.error());
    }
    const std::string subject = std::string(kPractice) + take.weld.substr(kWeld.size());
    const auto noted = writer.note(at, by, subject, std::move(*made), std::move(documents));
    if (!noted) {
        return tl::unexpected<Error>(noted.error());
    }
    return {};
}

Result<std::vector<PracticeLine>> practiceHistory(LogReader& log, const std::string& by) {
    if (log.world() != Practice::kName) {
        return fail(
            ErrorCode::Foreign,
            log.path() + ": is a " + log.world() + " log; practice stands in a practice log only");
    }
    const auto bodies = log.bodiesFrom(std::string(kPractice));
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    std::vector<PracticeLine> lines;
    std::map<std::string, std::size_t> places; // by weld: kept again, the later holds
    for (const std::string& body : *bodies) {
        const auto fact = factFromBody(body);
        if (!fact) {
            return tl::unexpected<Error>(fact.error());
        }
        const auto* made = std::get_if<PracticeMade>(&fact->d);
        if (made == nullptr || (!by.empty() && fact->by != by)) {
            continue;
        }
        auto line = lineOf(*fact, *made, log);
        if (!line) {
            return tl::unexpected<Error>(line.error());
        }
        const auto [place, isNew] = places.emplace(made->weld, lines.size());
        if (isNew) {
            lines.push_back(std::move(*line));
        } else {
            lines[place->second] = std::move(*line);
        }
    }
    const auto broken = brokenOffIn(log);
    if (!broken) {
        return tl::unexpected<Error>(broken.error());
    }
    for (const BrokenOffWeld& one : *broken) {
        // Left with its take kept, it has its line.
        if ((by.empty() || one.by == by) && places.count(one.weld) == 0) {
            takeIn(one, lines);
        }
    }
    std::reverse(lines.begin(), lines.end());
    return lines;
}

Result<KeptTake> keptTake(LogReader& log, const PracticeLine& line) {
    const auto missing = [&line] {
        return fail(ErrorCode::Missing, "this log has no take of " + line.weld);
    };
    if (line.brokenOff) {
        return fail(
            ErrorCode::Missing,
            "practice weld " + std::to_string(line.number) + " was broken off when " +
                (line.left ? "practice was left" : "the program ended") + ": no take was kept");
    }
    if (line.weld.rfind(kWeld, 0) != 0) {
        return missing();
    }
    const auto bodies = log.bodies(std::string(kPractice) + line.weld.substr(kWeld.size()));
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    for (const std::string& body : *bodies) {
        const auto fact = factFromBody(body);
        const auto* made = fact ? std::get_if<PracticeMade>(&fact->d) : nullptr;
        if (made == nullptr || made->take != line.takeSha256) {
            continue;
        }
        const auto takeDocument = log.document(made->take);
        const auto lessonDocument = log.document(made->lessonDoc);
        if (!takeDocument || !lessonDocument) {
            return tl::unexpected<Error>(
                takeDocument ? lessonDocument.error() : takeDocument.error());
        }
        if (!*takeDocument || !*lessonDocument) {
            return missing();
        }
        auto take = readTake("the take " + made->take, (*takeDocument)->bytes);
        if (!take) {
            return tl::unexpected<Error>(take.error());
        }
        auto lesson = readLesson("the lesson " + made->lessonDoc, (*lessonDocument)->bytes);
        if (!lesson) {
            return tl::unexpected<Error>(lesson.error());
        }
        KeptTake kept{std::move(*take), std::move(*lesson), {}, {}};
        if (const auto with = addDocuments(log, kept); !with) {
            return tl::unexpected<Error>(with.error());
        }
        return kept;
    }
    return missing();
}

PracticeShop shopOf(const KeptTake& kept, PracticeShop today) {
    const auto put = [](auto& all, const auto& document, auto own) {
        if (!document) {
            return;
        }
        const auto same = std::find_if(all.begin(), all.end(), [&](const auto& one) {
            return ((*document).*own).id == (one.*own).id;
        });
        if (same == all.end()) {
            all.push_back(*document);
        } else if (same->sha256 != document->sha256) { // the same may be attested since
            *same = *document;
        }
    };
    put(today.procedures, kept.procedure, &ProcedureDocument::procedure);
    put(today.benches, kept.bench, &BenchDocument::bench);
    return today;
}

} // namespace seamclock
