#include "core/base/json.h"
#include "core/report/event_rows.h"
#include "core/report/separated.h"

namespace seamclock {
namespace {

Result<Json> bodyOf(const StoredRow& row) {
    auto body = parseCanonical(row.body);
    if (!body) {
        return fail(
            ErrorCode::Damaged, "row " + std::to_string(row.seq) + ": " + body.error().detail);
    }
    return body;
}

const Json* at(const Json& body, const char* key) {
    const auto found = body.is_object() ? body.find(key) : body.end();
    return found == body.end() ? nullptr : &*found;
}

std::string text(const Json* value) {
    return value == nullptr ? "" : value->is_string() ? value->get<std::string>() : value->dump();
}

std::string utcOf(const Json* instant) {
    const Json* utc = instant == nullptr ? nullptr : at(*instant, "utc_ms");
    return utc != nullptr && utc->is_number_integer()
               ? toIsoUtc(Milliseconds(utc->get<std::int64_t>()))
               : "";
}

} // namespace

std::string eventRowsHeader() {
    return separatedRow(
        {"seq", "subject", "n", "kind", "at_utc", "offset_min", "boot", "boot_ms", "by", "d",
         "hash", "log"});
}

Result<std::string> eventRow(const StoredRow& row) {
    const auto body = bodyOf(row);
    if (!body) {
        return tl::unexpected(body.error());
    }
    const Json* instant = at(*body, "at");
    const auto ofInstant = [instant](const char* key) {
        return instant == nullptr ? "" : text(at(*instant, key));
    };
    return separatedRow(
        {std::to_string(row.seq), text(at(*body, "subject")), text(at(*body, "n")),
         text(at(*body, "kind")), utcOf(instant), ofInstant("offset_min"), ofInstant("boot"),
         ofInstant("boot_ms"), text(at(*body, "by")), text(at(*body, "d")), row.hash, row.log});
}

Result<std::string> eventRowJson(const StoredRow& row) {
    const auto body = bodyOf(row);
    if (!body) {
        return tl::unexpected(body.error());
    }
    Json json = {{"seq", row.seq}, {"hash", row.hash}, {"event", *body}};
    if (!row.log.empty()) {
        json["log"] = row.log;
    }
    return json.dump();
}

} // namespace seamclock
