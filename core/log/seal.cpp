#include "core/log/seal.h"

#include "core/log/fact_codec.h"
#include "core/log/joint_cache.h"
#include "core/log/log_reader.h"
#include "core/log/log_writer.h"

#include <algorithm>
#include <utility>
#include <variant>

namespace seamclock {

namespace {

constexpr std::string_view kDay = "day:";

std::string lines(std::initializer_list<std::string_view> parts) {
    std::string out;
    for (const std::string_view part : parts) {
        out.append(out.empty() ? "" : "\n").append(part);
    }
    return out;
}

/// The last row that a seal of this log covers, and the row that holds that seal is right behind.
Result<std::int64_t> sealedWith(LogReader& reader) {
    const auto bodies = reader.bodiesFrom(std::string(kDay));
    if (!bodies) {
        return tl::unexpected<Error>(bodies.error());
    }
    std::int64_t last = 0;
    for (const std::string& body : *bodies) {
        const auto fact = factFromBody(body);
        const auto* sealed = fact ? std::get_if<DaySealed>(&fact->d) : nullptr;
        last = sealed != nullptr ? std::max(last, sealed->toSeq + 1) : last;
    }
    return last;
}

} // namespace

std::string headMessage(std::string_view logId, const LogHead& head) {
    return lines({"seamclock-head/1", logId, std::to_string(head.seq), head.hash});
}

std::string sealMessage(
    std::string_view logId, std::string_view day, std::string_view person, const LogHead& head) {
    return lines({"seamclock-seal/1", logId, day, person, std::to_string(head.seq), head.hash});
}

std::string sealFingerprint(const Fact& sealed) {
    const auto* d = std::get_if<DaySealed>(&sealed.d);
    if (d == nullptr) {
        return {};
    }
    const std::string day = sealed.subject.substr(kDay.size());
    return fingerprint(lines(
        {sealMessage(d->log, day, sealed.by, {d->toSeq, d->head}), d->publicKey, d->signature}));
}

Result<Fact> sealDay(
    LogWriterBase& writer, const SigningKey& key, const std::string& foreman,
    const std::string& day, const Instant& at) {
    JointFilter date;
    date.fromDay = day;
    if (const auto sound = checkFilter(date); !sound) {
        return tl::unexpected<Error>(sound.error());
    }
    if (day > toIsoDate(at.utc, at.offset)) {
        return fail(
            ErrorCode::OutOfRange,
            "the day " + day + " has not come yet; allowed: up to " + toIsoDate(at.utc, at.offset));
    }
    if (const auto flushed = writer.flush(); !flushed) {
        return fail(
            ErrorCode::NotWritten, "the day can't be sealed yet: " + flushed.error().detail);
    }
    const LogHead head = writer.head();
    if (head.seq == 0) {
        return fail(ErrorCode::Refused, "the log has no rows, so there is nothing to seal");
    }
    auto reader = LogReader::open(writer.path());
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    const auto sealed = sealedWith(*reader);
    if (!sealed) {
        return tl::unexpected<Error>(sealed.error());
    }
    if (*sealed >= head.seq) {
        return fail(
            ErrorCode::Refused,
            "nothing came since the last seal, which covers row " + std::to_string(*sealed - 1));
    }
    const std::string signature = key.sign(sealMessage(writer.logId(), day, foreman, head));
    auto fact = writer.note(
        at, foreman, std::string(kDay) + day,
        DaySealed{writer.logId(), head.seq, head.hash, key.publicKey(), signature});
    if (!fact) {
        return fact;
    }
    if (const auto flushed = writer.flush(); !flushed) {
        return tl::unexpected<Error>(flushed.error());
    }
    return fact;
}

} // namespace seamclock
