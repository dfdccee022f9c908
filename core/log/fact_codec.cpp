#include "core/log/fact_codec.h"

#include "core/base/json.h"
#include "core/log/body_codec.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace seamclock {

namespace {

struct DetailJson {
    Json operator()(const ProgramStarted&) const { return Json::object(); }
    Json operator()(const ProgramStopped&) const { return Json::object(); }
    Json operator()(const SoundLost&) const { return Json::object(); }
    Json operator()(const SoundBack&) const { return Json::object(); }
    Json operator()(const ClockJumped& d) const { return {{"delta_ms", d.delta.count()}}; }
    Json operator()(const RowsSpilled& d) const { return {{"count", d.count}}; }
    Json operator()(const RowsJoined& d) const { return {{"count", d.count}}; }
    Json operator()(const LogImported& d) const {
        return {{"log", d.log}, {"to_seq", d.toSeq}, {"head", d.head}};
    }
    Json operator()(const HeadSigned& d) const {
        return {
            {"to_seq", d.toSeq},
            {"head", d.head},
            {"public_key", d.publicKey},
            {"signature", d.signature}};
    }
    Json operator()(const KeySet& d) const {
        return {{"public_key", d.publicKey}, {"reason", d.reason}};
    }
    Json operator()(const PersonSet& d) const {
        return {{"name", d.name}, {"role", d.role}, {"active", d.active}};
    }
    Json operator()(const PinChanged& d) const { return {{"reason", d.reason}}; }
    Json operator()(const CertificateNoted& d) const {
        return {{"scope", d.scope}, {"until", d.until}};
    }
    Json operator()(const BenchSet& d) const { return {{"doc", d.doc}}; }
    Json operator()(const ProcedureSet& d) const { return {{"doc", d.doc}}; }
    Json operator()(const ProcedureAttested& d) const {
        return {{"doc", d.doc}, {"edition", d.edition}, {"cells", d.cells}};
    }
    Json operator()(const AttestationWithdrawn& d) const {
        Json out{{"reason", d.reason}, {"cells", d.cells}};
        if (d.doc) {
            out["doc"] = *d.doc;
        }
        return out;
    }
    Json operator()(const SeamSet& d) const { return {{"doc", d.doc}}; }
    Json operator()(const DaySealed& d) const {
        return {
            {"log", d.log},
            {"to_seq", d.toSeq},
            {"head", d.head},
            {"public_key", d.publicKey},
            {"signature", d.signature}};
    }
    Json operator()(const CouponTested& d) const {
        Json out{{"test", d.test},           {"standard", d.standard},
                 {"material", d.material},   {"thickness_um", d.thicknessUm},
                 {"procedure", d.procedure}, {"remark", d.remark}};
        const auto text = [&out](const char* key, const std::optional<std::string>& value) {
            if (value) {
                out[key] = *value;
            }
        };
        const auto list = [&out](const char* key, const std::vector<std::int64_t>& values) {
            if (!values.empty()) {
                out[key] = values;
            }
        };
        text("weld", d.weld);
        text("welder", d.welder);
        text("reason", d.reason);
        list("welded_Pa", d.weldedPa);
        list("parent_Pa", d.parentPa);
        list("angle_milli", d.angleMilli);
        list("ram_um", d.ramUm);
        list("cracked", d.cracked);
        return out;
    }
    Json operator()(const PracticeMade& d) const {
        Json out{
            {"doc", d.take},
            {"lesson_doc", d.lessonDoc},
            {"lesson", d.lesson},
            {"title", d.title},
            {"weld", d.weld},
            {"verdict", d.verdict},
            {"judged", d.judged},
            {"in_limits", d.inLimits},
            {"reading_errors", d.readingErrors},
            {"order_errors", d.orderErrors},
            {"noticed", d.noticed},
            {"to_notice", d.toNotice},
            {"ductile", d.ductile},
            {"lapses", d.lapses}};
        if (d.reaction) {
            out["reaction_ms"] = d.reaction->count();
        }
        return out;
    }
};

/// Reads the details of one kind; every field must be used.
class Fields {
public:
    explicit Fields(const Json& d) : m_d(d) {}

    std::int64_t integer(const char* key) {
        ++m_used;
        const auto found = m_d.find(key);
        if (found == m_d.end() || !found->is_number_integer()) {
            m_wrong = true;
            return 0;
        }
        return found->get<std::int64_t>();
    }
    std::string text(const char* key) {
        ++m_used;
        const auto found = m_d.find(key);
        if (found == m_d.end() || !found->is_string()) {
            m_wrong = true;
            return {};
        }
        return found->get<std::string>();
    }
    std::optional<std::int64_t> integerIf(const char* key) {
        return m_d.contains(key) ? std::optional(integer(key)) : std::nullopt;
    }
    std::optional<std::string> textIf(const char* key) {
        return m_d.contains(key) ? std::optional(text(key)) : std::nullopt;
    }
    std::vector<std::string> texts(const char* key) {
        ++m_used;
        std::vector<std::string> out;
        const auto found = m_d.find(key);
        if (found == m_d.end() || !found->is_array()) {
            m_wrong = true;
            return out;
        }
        for (const Json& each : *found) {
            m_wrong = m_wrong || !each.is_string();
            out.push_back(each.is_string() ? each.get<std::string>() : std::string());
        }
        return out;
    }
    /// Empty where it isn't there.
    std::vector<std::int64_t> integersIf(const char* key) {
        std::vector<std::int64_t> out;
        const auto found = m_d.find(key);
        if (found == m_d.end()) {
            return out;
        }
        ++m_used;
        if (!found->is_array()) {
            m_wrong = true;
            return out;
        }
        for (const Json& each : *found) {
            m_wrong = m_wrong || !each.is_number_integer();
            out.push_back(each.is_number_integer() ? each.get<std::int64_t>() : 0);
        }
        return out;
    }
    bool flag(const char* key) {
        ++m_used;
        const auto found = m_d.find(key);
        if (found == m_d.end() || !found->is_boolean()) {
            m_wrong = true;
            return false;
        }
        return found->get<bool>();
    }
    bool sound() const { return !m_wrong && m_used == m_d.size(); }

private:
    const Json& m_d;
    std::size_t m_used = 0;
    bool m_wrong = false;
};

PracticeMade practiceMade(Fields& fields) {
    PracticeMade made;
    made.take = fields.text("doc");
    made.lessonDoc = fields.text("lesson_doc");
    made.lesson = fields.text("lesson");
    made.title = fields.text("title");
    made.weld = fields.text("weld");
    made.verdict = fields.text("verdict");
    made.judged = fields.integer("judged");
    made.inLimits = fields.integer("in_limits");
    if (const auto reaction = fields.integerIf("reaction_ms")) {
        made.reaction = Milliseconds(*reaction);
    }
    made.readingErrors = fields.integer("reading_errors");
    made.orderErrors = fields.integer("order_errors");
    made.noticed = fields.integer("noticed");
    made.toNotice = fields.integer("to_notice");
    made.ductile = fields.flag("ductile");
    made.lapses = fields.texts("lapses");
    return made;
}

CouponTested couponTested(Fields& fields) {
    CouponTested tested;
    tested.test = fields.text("test");
    tested.standard = fields.text("standard");
    tested.material = fields.text("material");
    tested.thicknessUm = fields.integer("thickness_um");
    tested.procedure = fields.text("procedure");
    tested.remark = fields.text("remark");
    tested.weld = fields.textIf("weld");
    tested.welder = fields.textIf("welder");
    tested.reason = fields.textIf("reason");
    tested.weldedPa = fields.integersIf("welded_Pa");
    tested.parentPa = fields.integersIf("parent_Pa");
    tested.angleMilli = fields.integersIf("angle_milli");
    tested.ramUm = fields.integersIf("ram_um");
    tested.cracked = fields.integersIf("cracked");
    return tested;
}

std::optional<FactDetail> detailOf(const std::string& kind, Fields& fields) {
    if (kind == "program_started") {
        return ProgramStarted{};
    }
    if (kind == "program_stopped") {
        return ProgramStopped{};
    }
    if (kind == "sound_lost") {
        return SoundLost{};
    }
    if (kind == "sound_back") {
        return SoundBack{};
    }
    if (kind == "clock_jumped") {
        return ClockJumped{Milliseconds(fields.integer("delta_ms"))};
    }
    if (kind == "rows_spilled") {
        return RowsSpilled{fields.integer("count")};
    }
    if (kind == "rows_joined") {
        return RowsJoined{fields.integer("count")};
    }
    if (kind == "log_imported") {
        return LogImported{fields.text("log"), fields.integer("to_seq"), fields.text("head")};
    }
    if (kind == "head_signed") {
        return HeadSigned{
            fields.integer("to_seq"), fields.text("head"), fields.text("public_key"),
            fields.text("signature")};
    }
    if (kind == "key_set") {
        return KeySet{fields.text("public_key"), fields.text("reason")};
    }
    if (kind == "person_set") {
        return PersonSet{fields.text("name"), fields.text("role"), fields.flag("active")};
    }
    if (kind == "pin_changed") {
        return PinChanged{fields.text("reason")};
    }
    if (kind == "certificate_noted") {
        return CertificateNoted{fields.text("scope"), fields.text("until")};
    }
    if (kind == "bench_set") {
        return BenchSet{fields.text("doc")};
    }
    if (kind == "procedure_set") {
        return ProcedureSet{fields.text("doc")};
    }
    if (kind == "procedure_attested") {
        return ProcedureAttested{fields.text("doc"), fields.text("edition"), fields.texts("cells")};
    }
    if (kind == "attestation_withdrawn") {
        return AttestationWithdrawn{
            fields.textIf("doc"), fields.text("reason"), fields.texts("cells")};
    }
    if (kind == "seam_set") {
        return SeamSet{fields.text("doc")};
    }
    if (kind == "day_sealed") {
        return DaySealed{
            fields.text("log"), fields.integer("to_seq"), fields.text("head"),
            fields.text("public_key"), fields.text("signature")};
    }
    if (kind == "practice_made") {
        return practiceMade(fields);
    }
    if (kind == "coupon_tested") {
        return couponTested(fields);
    }
    return std::nullopt;
}

} // namespace

Result<std::string> toBody(const Fact& fact) {
    const Json body = {
        {"at",
         {{"boot", fact.at.bootId},
          {"boot_ms", fact.at.boot.count()},
          {"offset_min", fact.at.offset.count()},
          {"utc_ms", fact.at.utc.count()}}},
        {"by", fact.by},
        {"d", std::visit(DetailJson{}, fact.d)},
        {"kind", kindOf(fact.d)},
        {"n", fact.n},
        {"subject", fact.subject},
        {"v", 1}};
    return canonicalJson(body);
}

Result<Fact> factFromBody(std::string_view body) {
    auto envelope = readEnvelope(body);
    if (!envelope) {
        return tl::unexpected<Error>(std::move(envelope.error()));
    }
    const auto parsed = parseCanonical(body);
    if (isWeld(envelope->subject) || !isFactWithForm(envelope->kind)) {
        return fail(ErrorCode::Malformed, "an event of kind \"" + envelope->kind + "\" is no fact");
    }
    Fields fields((*parsed)["d"]);
    auto detail = detailOf(envelope->kind, fields);
    if (!detail || !fields.sound()) {
        return fail(
            ErrorCode::Malformed, "a fact of kind \"" + envelope->kind +
                                      "\" has a field missing, unknown or of the wrong type");
    }
    return Fact{
        std::move(envelope->at), std::move(envelope->by), std::move(envelope->subject), envelope->n,
        std::move(*detail)};
}

} // namespace seamclock
