#include "core/report/record_facts.h"

#include "core/bench/bench_codec.h"
#include "core/log/fact_codec.h"
#include "core/log/seal.h"
#include "core/weld/event_codec.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <set>
#include <utility>
#include <variant>

namespace seamclock {

namespace {

/// The rows of a seal's day, its own included, come in the order of the chain; a day may be sealed
/// twice, and an older day after a newer one.
Result<std::vector<SealFact>> sealsOf(LogReader& reader) {
    const auto bodies = reader.bodiesFrom("day:");
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    std::vector<SealFact> out;
    for (const std::string& body : *bodies) {
        const auto fact = factFromBody(body);
        const auto* seal = fact ? std::get_if<DaySealed>(&fact->d) : nullptr;
        if (seal == nullptr) {
            continue; // a kind that has no form here
        }
        out.push_back(
            {fact->subject.substr(fact->subject.find(':') + 1), fact->by, fact->at, fact->n,
             seal->toSeq, sealFingerprint(*fact), fingerprint(seal->publicKey)});
    }
    return out;
}

/// How many of its first events stand in rows up to that one.
std::int64_t coveredBy(const std::vector<std::int64_t>& rows, std::int64_t toSeq) {
    const auto behind =
        std::find_if(rows.begin(), rows.end(), [&](std::int64_t seq) { return seq > toSeq; });
    return behind - rows.begin();
}

/// A certificate, when it was noted, and by which of its person's events.
struct Noted {
    Milliseconds at{0};
    std::int64_t n = 0;
    Certificate certificate;
};

Result<std::vector<Noted>>
notedIn(const std::vector<std::string>& bodies, const std::string& person) {
    std::vector<Noted> out;
    for (const std::string& body : bodies) {
        const auto fact = factFromBody(body);
        const auto* noted = fact ? std::get_if<CertificateNoted>(&fact->d) : nullptr;
        if (noted == nullptr) {
            continue;
        }
        auto certificate = readCertificate(noted->scope, noted->until);
        if (!certificate) {
            return fail(ErrorCode::Damaged, person + ": " + certificate.error().detail);
        }
        out.push_back({fact->at.utc, fact->n, std::move(*certificate)});
    }
    return out;
}

/// Of those noted before the joint began: the one for its sheets, else the one noted last.
/// `joint`: RecordFacts or ReportJoint.
template <class Joint>
void takeCertificate(const std::vector<Noted>& noted, const WeldRecord& record, Joint& joint) {
    HeldCertificates held;
    for (const Noted& one : noted) {
        if (one.at <= record.openedAt.utc) {
            note(held, one.certificate);
        }
    }
    const Certificate* fits = heldFor(held, record.plan.material, record.plan.thicknessUm);
    if (fits == nullptr && !held.empty()) {
        fits = &held.back();
    }
    if (fits == nullptr) {
        return;
    }
    joint.certificate = *fits;
    for (const Noted& one : noted) {
        if (one.at <= record.openedAt.utc && one.certificate == *fits) {
            joint.certificateN = one.n;
        }
    }
}

/// Who is who in the joints of a log; each person's rows are read once.
class Welders {
public:
    explicit Welders(LogReader& reader) : m_reader(reader) {}

    /// Its welder's certificate and, of a joint that came with another log, whom it names, by that
    /// log: people of one name in two shops have one id.
    template <class Joint>
    Result<void> take(const WeldRecord& record, Joint& joint) {
        if (joint.elsewhere) {
            return takeElsewhere(record, joint);
        }
        auto known = m_noted.find(record.openedBy);
        if (known == m_noted.end()) {
            const auto bodies = m_reader.bodies(record.openedBy);
            if (!bodies) {
                return tl::unexpected<Error>(bodies.error());
            }
            auto noted = notedIn(*bodies, record.openedBy);
            if (!noted) {
                return tl::unexpected<Error>(noted.error());
            }
            known = m_noted.emplace(record.openedBy, std::move(*noted)).first;
        }
        takeCertificate(known->second, record, joint);
        return {};
    }

private:
    template <class Joint>
    Result<void> takeElsewhere(const WeldRecord& record, Joint& joint) {
        auto people = peopleElsewhere(m_reader, record);
        if (!people) {
            return tl::unexpected<Error>(people.error());
        }
        joint.people = std::move(*people);
        const auto bodies = m_reader.bodiesBeside(record.weld, record.openedBy);
        if (!bodies) {
            return tl::unexpected<Error>(bodies.error());
        }
        const auto noted = notedIn(*bodies, record.openedBy);
        if (!noted) {
            return tl::unexpected<Error>(noted.error());
        }
        takeCertificate(*noted, record, joint);
        return {};
    }

    LogReader& m_reader;
    std::map<std::string, std::vector<Noted>> m_noted;
};

/// The places in `seals` of those that cover more of these rows than the ones before, the first of
/// the chain first; with each, how many it covers.
std::vector<std::pair<std::size_t, std::int64_t>>
covering(const std::vector<SealFact>& seals, const std::vector<std::int64_t>& rows) {
    std::vector<std::size_t> places(seals.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    std::stable_sort(places.begin(), places.end(), [&](std::size_t a, std::size_t b) {
        return seals[a].toSeq < seals[b].toSeq;
    });
    std::vector<std::pair<std::size_t, std::int64_t>> out;
    std::int64_t covered = 0;
    for (const std::size_t place : places) {
        const std::int64_t now = coveredBy(rows, seals[place].toSeq);
        if (now > covered) {
            covered = now;
            out.emplace_back(place, now);
        }
    }
    return out;
}

/// Of the joint that this one welds again; absent: it isn't in this log.
Result<std::optional<std::int64_t>> numberOf(LogReader& reader, const std::string& uuid) {
    const bool whole = uuid.rfind("weld:", 0) == 0;
    const auto body = reader.body(whole ? uuid : "weld:" + uuid, 1);
    if (!body) {
        return tl::unexpected<Error>(body.error());
    }
    if (!*body) {
        return std::nullopt;
    }
    const auto event = eventFromBody(**body);
    const auto* opened = event ? std::get_if<WeldOpened>(&event->d) : nullptr;
    return opened == nullptr ? std::optional<std::int64_t>() : opened->number;
}

Result<WeldRecord> recordOf(LogReader& reader, const std::string& weld) {
    auto events = reader.weldEvents(weld);
    if (!events) {
        return tl::unexpected<Error>(events.error());
    }
    if (events->empty()) {
        return fail(
            ErrorCode::Missing, "\"" + weld + "\" is not in " + reader.path() +
                                    "; allowed: a weld that the list of joints shows");
    }
    auto folded = foldTaking(*events);
    if (!folded) {
        return tl::unexpected<Error>(folded.error());
    }
    return record(std::move(*folded));
}

/// None where it can't be estimated: a material without values, a weld that came to no soak.
void takeHeat(RecordFacts& facts, const std::vector<Material>& materials) {
    const auto weld = fold(facts.record.events);
    if (!weld) {
        return;
    }
    const auto course = courseOf(*weld, facts.bench ? &*facts.bench : nullptr);
    if (!course) {
        return;
    }
    if (auto heat = estimateHeat(*course, materials)) {
        facts.heat = std::move(*heat);
        facts.heatFrom = eventsOfCourse(weld->events);
    }
}

/// Errors are about the log as a whole; what can't be read of one joint stands in it.
Result<ReportJoint>
jointOf(LogReader& reader, const LogFacts& log, Welders& welders, JointLine line) {
    ReportJoint out;
    out.line = std::move(line);
    out.trouble = out.line.trouble;
    auto made = recordOf(reader, out.line.weld);
    if (made) {
        out.record = std::move(*made);
    } else if (out.trouble.empty()) {
        out.trouble = made.error().detail;
    }
    const auto rows = reader.rowsOf(out.line.weld);
    if (!rows) {
        return tl::unexpected<Error>(rows.error());
    }
    out.elsewhere = rows->empty();
    for (const auto& [place, toN] : covering(log.seals, *rows)) {
        out.seals.push_back(place);
        out.sealedToN = toN;
    }
    if (out.record) {
        if (auto taken = welders.take(*out.record, out); !taken) {
            return tl::unexpected<Error>(taken.error());
        }
    }
    return out;
}

Result<ReportFacts> reportOf(LogReader& reader, std::vector<JointLine> lines) {
    auto log = logFacts(reader);
    if (!log) {
        return tl::unexpected<Error>(log.error());
    }
    const auto coupons = readCoupons(reader);
    if (!coupons) {
        return tl::unexpected<Error>(coupons.error());
    }
    ReportFacts out{std::move(*log), {}, {}};
    Welders welders(reader);
    std::reverse(lines.begin(), lines.end());
    for (JointLine& line : lines) {
        auto joint = jointOf(reader, out.log, welders, std::move(line));
        if (!joint) {
            return tl::unexpected<Error>(joint.error());
        }
        joint->coupons = cutFrom(joint->line.weld, *coupons);
        out.joints.push_back(std::move(*joint));
    }
    return out;
}

tl::unexpected<Error> tooMany() {
    return fail(
        ErrorCode::OutOfRange, "the report would have more than " +
                                   std::to_string(kMostReportJoints) +
                                   " joints; allowed: a shorter time or a narrower filter, or the "
                                   "joints as CSV");
}

} // namespace

Result<LogFacts> logFacts(LogReader& reader) {
    auto roster = readRoster(reader);
    if (!roster) {
        return tl::unexpected<Error>(roster.error());
    }
    auto seals = sealsOf(reader);
    if (!seals) {
        return tl::unexpected<Error>(seals.error());
    }
    return LogFacts{reader.logId(), reader.world(), std::move(*roster), std::move(*seals)};
}

Result<Roster> peopleElsewhere(LogReader& reader, const WeldRecord& record) {
    std::set<std::string> named;
    for (const Event& event : record.events) {
        if (event.by.rfind("person:", 0) == 0) {
            named.insert(event.by);
        }
    }
    return peopleBeside(reader, record.weld, named);
}

Result<RecordFacts> recordFacts(
    LogReader& reader, const LogFacts& log, const std::string& weld,
    const std::vector<Material>* materials) {
    auto made = recordOf(reader, weld);
    if (!made) {
        return tl::unexpected<Error>(made.error());
    }
    RecordFacts out;
    out.record = std::move(*made);
    const auto document = reader.document(out.record.opened.docs.bench);
    if (!document) {
        return tl::unexpected<Error>(document.error());
    }
    if (*document) {
        if (auto bench = readBench("bench document", (*document)->bytes)) {
            out.bench = std::move(bench->bench);
        }
    }
    if (materials != nullptr && (out.record.stored || out.record.aborted)) {
        takeHeat(out, *materials); // of a weld that still runs nothing is told
    }
    auto coupons = readCoupons(reader, weld);
    if (!coupons) {
        return tl::unexpected<Error>(coupons.error());
    }
    out.coupons = std::move(coupons->series);
    if (out.record.opened.reweldOf) {
        const auto number = numberOf(reader, *out.record.opened.reweldOf);
        if (!number) {
            return tl::unexpected<Error>(number.error());
        }
        out.reweldOfNumber = *number;
    }
    auto dispute = reader.dispute(weld);
    if (!dispute) {
        return tl::unexpected<Error>(dispute.error());
    }
    out.trouble = std::move(*dispute);
    const auto rows = reader.rowsOf(weld);
    if (!rows) {
        return tl::unexpected<Error>(rows.error());
    }
    out.elsewhere = rows->empty();
    if (auto taken = Welders(reader).take(out.record, out); !taken) {
        return tl::unexpected<Error>(taken.error());
    }
    for (const auto& [place, toN] : covering(log.seals, *rows)) {
        out.sealed.push_back({log.seals[place], toN});
    }
    return out;
}

Result<ReportFacts> reportFacts(LogReader& reader, const JointFilter& filter) {
    std::vector<JointLine> lines;
    const auto read = reader.eachJoint(filter, [&lines](const JointLine& line) {
        lines.push_back(line);
        return lines.size() <= kMostReportJoints;
    });
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    if (lines.size() > kMostReportJoints) {
        return tooMany();
    }
    auto out = reportOf(reader, std::move(lines));
    if (out) {
        out->filter = filter;
    }
    return out;
}

Result<ReportFacts> reportFacts(LogReader& reader, const std::vector<std::string>& welds) {
    if (welds.size() > kMostReportJoints) {
        return tooMany();
    }
    std::vector<JointLine> lines;
    for (const std::string& weld : welds) {
        const auto made = recordOf(reader, weld);
        if (!made) {
            if (made.error().code == ErrorCode::Missing) {
                return tl::unexpected<Error>(made.error());
            }
            JointLine line;
            line.weld = weld;
            line.phase = "damaged";
            line.trouble = made.error().detail;
            lines.push_back(std::move(line));
            continue;
        }
        lines.push_back(lineOf(*made));
    }
    std::stable_sort(lines.begin(), lines.end(), [](const JointLine& a, const JointLine& b) {
        return std::pair(a.openedUtc, a.number) > std::pair(b.openedUtc, b.number);
    });
    return reportOf(reader, std::move(lines));
}

} // namespace seamclock
