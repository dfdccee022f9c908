#include "core/weld/event_codec.h"

#include "core/base/canonical_json.h"
#include "core/base/json.h"
#include "core/base/overloaded.h"
#include "core/plan/plan_codec.h"

#include <array>
#include <bitset>
#include <utility>

namespace seamclock {

namespace {

constexpr std::int64_t kVersion = 1;

// --- out

template <class Value>
void putIf(Json& json, const char* key, const std::optional<Value>& value) {
    if (value) {
        json[key] = *value;
    }
}

Json toJson(const Sheet& sheet) {
    Json out{
        {"material", sheet.material},
        {"maker", sheet.maker},
        {"batch", sheet.batch},
        {"thickness_um", sheet.thicknessUm}};
    putIf(out, "grade", sheet.grade);
    putIf(out, "mfr", sheet.mfr);
    return out;
}

Json toJson(const PlanDocuments& docs) {
    Json out{{"procedure", docs.procedure}, {"bench", docs.bench}};
    putIf(out, "material", docs.material);
    return out;
}

Json toJson(const StoredReason& reason) {
    Json out{{"code", reason.code}, {"grade", reason.grade}, {"text", reason.text}};
    putIf(out, "limit", reason.limit);
    putIf(out, "actual", reason.actual);
    if (!reason.unit.empty()) {
        out["unit"] = reason.unit;
    }
    return out;
}

template <class List>
Json listOf(const List& items) {
    Json out = Json::array();
    for (const auto& item : items) {
        out.push_back(toJson(item));
    }
    return out;
}

Json detailJson(const WeldDetail& detail) {
    return std::visit(
        Overloaded{
            [](const WeldOpened& d) {
                Json out{{"number", d.number},        {"type", toString(d.type)},
                         {"bench", d.bench},          {"sheets", listOf(d.sheets)},
                         {"lengths_um", d.lengthsUm}, {"ambient_mC", d.ambientMc},
                         {"shielded", d.shielded},    {"plan", planToJson(d.plan)},
                         {"docs", toJson(d.docs)},    {"flags", d.flags}};
                putIf(out, "reweld_of", d.reweldOf);
                putIf(out, "lost_um", d.lostUm);
                putIf(out, "bead_places", d.beadPlaces);
                putIf(out, "seam", d.seam);
                putIf(out, "job", d.job);
                putIf(out, "part", d.part);
                return out;
            },
            [](const PlanReplaced& d) {
                return Json{
                    {"plan", planToJson(d.plan)}, {"docs", toJson(d.docs)}, {"reason", d.reason}};
            },
            [](const CheckMade& d) {
                Json out{{"check", d.check}, {"result", d.passed ? "pass" : "fail"}};
                putIf(out, "value_mC", d.valueMc);
                putIf(out, "value_um", d.valueUm);
                putIf(out, "value_milli", d.valueMilli);
                putIf(out, "place", d.place);
                putIf(out, "face", d.face);
                if (d.takenUtc) {
                    out["taken_utc_ms"] = d.takenUtc->count();
                }
                return out;
            },
            [](const CheckOverridden& d) {
                return Json{
                    {"check", d.check}, {"reason", d.reason}, {"authority", toString(d.authority)}};
            },
            [](const ReadingTaken& d) {
                return Json{{"phase", toString(d.phase)}, {"reading_milli", d.readingMilli}};
            },
            [](const ReasonGiven& d) {
                Json out{{"limit", d.limit}, {"choice", d.choice}};
                putIf(out, "text", d.text);
                return out;
            },
            [](const ReleaseStep& d) {
                return Json{{"step", d.step}};
            },
            [](const StepTakenBack& d) {
                return Json{{"target_n", d.targetN}};
            },
            [](const StepBackdated& d) {
                return Json{{"target_n", d.targetN}, {"earlier_ms", d.earlier.count()}};
            },
            [](const BeadMeasured& d) {
                Json out{
                    {"width_um", d.widthUm},
                    {"height_um", d.heightUm},
                    {"k_um", d.kUm},
                    {"misalignment_um", d.misalignmentUm}};
                putIf(out, "place_um", d.placeUm);
                return out;
            },
            [](const PhotoAdded& d) {
                return Json{{"sha256", d.sha256}, {"bytes", d.bytes}, {"name", d.name}};
            },
            [](const RemarkMade& d) {
                return Json{{"text", d.text}};
            },
            [](const CueAcknowledged& d) {
                return Json{{"cue", d.cue}};
            },
            [](const ClockBridged& d) {
                return Json{
                    {"from", d.from},
                    {"lo_ms", d.lo.count()},
                    {"hi_ms", d.hi.count()},
                    {"basis", toString(d.basis)}};
            },
            [](const ClockJumped& d) {
                return Json{{"delta_ms", d.delta.count()}};
            },
            [](const WeldClosed& d) {
                return Json{
                    {"verdict", d.verdict}, {"reasons", listOf(d.reasons)}, {"rules", d.rules}};
            },
            [](const WeldAborted& d) {
                return Json{{"reason", d.reason}, {"text", d.text}};
            },
            [](const ValueCorrected& d) {
                return Json{
                    {"target_n", d.targetN},
                    {"field", d.field},
                    {"was", d.was},
                    {"is", d.is},
                    {"reason", d.reason}};
            },
            [](const Graded& d) {
                return Json{{"scheme", d.scheme}, {"level", d.level}};
            },
            [](const Decided& d) {
                return Json{{"decision", toString(d.decision)}, {"reason", d.reason}};
            },
            [](const SignedOff& d) {
                return Json{{"role", d.role}};
            },
            [](const auto&) { return Json::object(); },
        },
        detail);
}

// --- in

/// Takes an object apart, field by field; the first thing wrong is kept, and what nobody asked for
/// is wrong too.
class Fields {
public:
    Fields(CanonicalValue json, std::string_view where) : m_json(json), m_where(where) {
        if (!json.isObject()) {
            complain("is not an object");
        }
    }

    std::string text(const char* key) { return std::string(view(key)); }
    std::optional<std::string> textIf(const char* key) {
        return has(key) ? std::optional<std::string>(text(key)) : std::nullopt;
    }
    /// As long as the text that is read.
    std::string_view view(const char* key) {
        const auto value = need(key);
        if (value && !value->isText()) {
            complain(std::string(key) + " is not a text");
            return {};
        }
        return value ? value->text() : std::string_view();
    }
    std::int64_t integer(const char* key) {
        const auto value = need(key);
        if (value && !value->isInteger()) {
            complain(std::string(key) + " is not a whole number");
            return 0;
        }
        return value ? value->integer() : 0;
    }
    std::optional<std::int64_t> integerIf(const char* key) {
        return has(key) ? std::optional<std::int64_t>(integer(key)) : std::nullopt;
    }
    Milliseconds milliseconds(const char* key) { return Milliseconds{integer(key)}; }
    bool flag(const char* key) {
        const auto value = need(key);
        if (value && !value->isFlag()) {
            complain(std::string(key) + " is not true or false");
            return false;
        }
        return value && value->flag();
    }
    template <class Enum, std::size_t N>
    Enum oneOf(const char* key, const std::array<Enum, N>& values) {
        const std::string_view word = view(key);
        for (const Enum value : values) {
            if (word == toString(value)) {
                return value;
            }
        }
        complain(std::string(key) + " \"" + std::string(word) + "\" is not known");
        return values[0];
    }
    /// The items of a list, each handed to `read`.
    template <class Read>
    void list(const char* key, Read read) {
        const auto value = need(key);
        if (!value) {
            return;
        }
        if (!value->isList()) {
            complain(std::string(key) + " is not a list");
            return;
        }
        for (const CanonicalValue item : *value) {
            read(item);
        }
    }
    std::vector<std::string> texts(const char* key) {
        std::vector<std::string> out;
        list(key, [&](CanonicalValue item) {
            if (item.isText()) {
                out.emplace_back(item.text());
            } else {
                complain(std::string(key) + " holds something that is not a text");
            }
        });
        return out;
    }
    std::vector<std::int64_t> integers(const char* key) {
        std::vector<std::int64_t> out;
        list(key, [&](CanonicalValue item) {
            if (item.isInteger()) {
                out.push_back(item.integer());
            } else {
                complain(std::string(key) + " holds something that is not a whole number");
            }
        });
        return out;
    }
    std::optional<CanonicalValue> json(const char* key) { return need(key); }
    /// Without one, it reads as one that is no object; `key` is missing then, or will be found not
    /// to be an object.
    Fields object(const char* key) {
        const auto value = need(key);
        return value ? Fields(*value, m_where + "." + key)
                     : Fields(m_json, std::nullopt, m_where + "." + key);
    }
    bool has(const char* key) const { return m_there && m_json.find(key).has_value(); }

    void take(const std::optional<Error>& problem) {
        if (!m_problem && problem) {
            m_problem = problem;
        }
    }
    void complain(const std::string& what) {
        if (!m_problem) {
            m_problem = Error{ErrorCode::Malformed, m_where + ": " + what};
        }
    }
    /// The first thing wrong, fields that nobody read included.
    std::optional<Error> done() {
        if (m_there && m_json.isObject() && m_read.count() != m_json.size()) {
            std::size_t place = 0;
            for (const CanonicalValue each : m_json) {
                if (place >= m_read.size() || !m_read.test(place)) {
                    complain("the field \"" + std::string(each.key()) + "\" is not known here");
                }
                ++place;
            }
        }
        return m_problem;
    }

private:
    /// Of an object that isn't there.
    Fields(CanonicalValue parent, std::nullopt_t, std::string where)
        : m_json(parent), m_where(std::move(where)), m_there(false) {}

    std::optional<CanonicalValue> need(const char* key) {
        const auto member = m_there ? m_json.find(key) : std::nullopt;
        if (!member) {
            complain(std::string(key) + " is missing");
            return std::nullopt;
        }
        if (member->place < m_read.size()) {
            m_read.set(member->place);
        }
        return m_json.at(*member);
    }

    CanonicalValue m_json;
    std::string m_where;
    bool m_there = true;
    std::bitset<64> m_read; // by place; no object of an event has as many fields
    std::optional<Error> m_problem;
};

constexpr std::array kTypes{WeldType::Production, WeldType::Trial, WeldType::Practice};
constexpr std::array kAuthorities{Authority::Operator, Authority::Foreman};
constexpr std::array kReadings{
    ReadingPhase::Alignment, ReadingPhase::Soak, ReadingPhase::Joining, ReadingPhase::Recheck};
constexpr std::array kBases{
    BridgeBasis::Confirmed, BridgeBasis::Unconfirmed, BridgeBasis::Backwards};
constexpr std::array kDecisions{Decision::Accept, Decision::Repair, Decision::CutOut};

Sheet sheetFrom(CanonicalValue json, Fields& parent) {
    Fields in(json, "sheet");
    Sheet out{in.text("material"), in.textIf("grade"),         in.text("maker"),
              in.text("batch"),    in.integer("thickness_um"), in.textIf("mfr")};
    parent.take(in.done());
    return out;
}

PlanDocuments docsFrom(Fields& parent) {
    Fields in = parent.object("docs");
    PlanDocuments out{in.text("procedure"), in.text("bench"), in.textIf("material")};
    parent.take(in.done());
    return out;
}

WeldPlan planFrom(Fields& parent) {
    const auto json = parent.json("plan");
    if (!json) {
        return {};
    }
    auto plan = planFromJson(*json);
    if (!plan) {
        parent.complain("plan: " + plan.error().detail);
        return {};
    }
    return std::move(*plan);
}

StoredReason reasonFrom(CanonicalValue json, Fields& parent) {
    Fields in(json, "reason");
    StoredReason out{
        in.text("code"),
        in.text("grade"),
        in.integerIf("limit"),
        in.integerIf("actual"),
        in.textIf("unit").value_or(""),
        in.text("text")};
    parent.take(in.done());
    return out;
}

WeldDetail openedFrom(Fields& in) {
    WeldOpened out;
    out.number = in.integer("number");
    out.type = in.oneOf("type", kTypes);
    out.reweldOf = in.textIf("reweld_of");
    out.lostUm = in.integerIf("lost_um");
    out.beadPlaces = in.integerIf("bead_places");
    out.bench = in.text("bench");
    out.seam = in.textIf("seam");
    out.job = in.textIf("job");
    out.part = in.textIf("part");
    in.list("sheets", [&](CanonicalValue item) { out.sheets.push_back(sheetFrom(item, in)); });
    out.lengthsUm = in.integers("lengths_um");
    out.ambientMc = in.integer("ambient_mC");
    out.shielded = in.flag("shielded");
    out.plan = planFrom(in);
    out.docs = docsFrom(in);
    out.flags = in.texts("flags");
    return out;
}

WeldDetail closedFrom(Fields& in) {
    WeldClosed out{in.text("verdict"), {}, in.integer("rules")};
    in.list("reasons", [&](CanonicalValue item) { out.reasons.push_back(reasonFrom(item, in)); });
    return out;
}

WeldDetail checkFrom(Fields& in) {
    CheckMade out;
    out.check = in.text("check");
    const std::string_view result = in.view("result");
    out.passed = result == "pass";
    if (!out.passed && result != "fail") {
        in.complain("result \"" + std::string(result) + "\" is not known");
    }
    out.valueMc = in.integerIf("value_mC");
    out.valueUm = in.integerIf("value_um");
    out.valueMilli = in.integerIf("value_milli");
    out.place = in.textIf("place");
    out.face = in.textIf("face");
    if (const auto taken = in.integerIf("taken_utc_ms")) {
        out.takenUtc = Milliseconds{*taken};
    }
    return out;
}

using ReadDetail = WeldDetail (*)(Fields&);

// One row a kind. Evaluation inside braces is left to right, so each field is read once.
constexpr std::array<std::pair<std::string_view, ReadDetail>, 27> kReaders{{
    {"weld_opened", openedFrom},
    {"plan_replaced",
     [](Fields& in) -> WeldDetail {
         return PlanReplaced{planFrom(in), docsFrom(in), in.text("reason")};
     }},
    {"check_made", checkFrom},
    {"check_overridden",
     [](Fields& in) -> WeldDetail {
         return CheckOverridden{
             in.text("check"), in.text("reason"), in.oneOf("authority", kAuthorities)};
     }},
    {"alignment_started", [](Fields&) -> WeldDetail { return AlignmentStarted{}; }},
    {"soak_started", [](Fields&) -> WeldDetail { return SoakStarted{}; }},
    {"plate_out", [](Fields&) -> WeldDetail { return PlateOut{}; }},
    {"faces_met", [](Fields&) -> WeldDetail { return FacesMet{}; }},
    {"pressure_locked", [](Fields&) -> WeldDetail { return PressureLocked{}; }},
    {"reading_taken",
     [](Fields& in) -> WeldDetail {
         return ReadingTaken{in.oneOf("phase", kReadings), in.integer("reading_milli")};
     }},
    {"reason_given",
     [](Fields& in) -> WeldDetail {
         return ReasonGiven{in.text("limit"), in.text("choice"), in.textIf("text")};
     }},
    {"release_step", [](Fields& in) -> WeldDetail { return ReleaseStep{in.text("step")}; }},
    {"joint_numbered", [](Fields&) -> WeldDetail { return JointNumbered{}; }},
    {"step_taken_back",
     [](Fields& in) -> WeldDetail { return StepTakenBack{in.integer("target_n")}; }},
    {"step_backdated",
     [](Fields& in) -> WeldDetail {
         return StepBackdated{in.integer("target_n"), in.milliseconds("earlier_ms")};
     }},
    {"bead_measured",
     [](Fields& in) -> WeldDetail {
         return BeadMeasured{
             in.integerIf("place_um"), in.integer("width_um"), in.integer("height_um"),
             in.integer("k_um"), in.integer("misalignment_um")};
     }},
    {"photo_added",
     [](Fields& in) -> WeldDetail {
         return PhotoAdded{in.text("sha256"), in.integer("bytes"), in.text("name")};
     }},
    {"remark_made", [](Fields& in) -> WeldDetail { return RemarkMade{in.text("text")}; }},
    {"cue_acknowledged", [](Fields& in) -> WeldDetail { return CueAcknowledged{in.text("cue")}; }},
    {"clock_bridged",
     [](Fields& in) -> WeldDetail {
         return ClockBridged{
             in.text("from"), in.milliseconds("lo_ms"), in.milliseconds("hi_ms"),
             in.oneOf("basis", kBases)};
     }},
    {"clock_jumped",
     [](Fields& in) -> WeldDetail { return ClockJumped{in.milliseconds("delta_ms")}; }},
    {"weld_closed", closedFrom},
    {"weld_aborted",
     [](Fields& in) -> WeldDetail {
         return WeldAborted{in.text("reason"), in.text("text")};
     }},
    {"value_corrected",
     [](Fields& in) -> WeldDetail {
         return ValueCorrected{
             in.integer("target_n"), in.text("field"), in.text("was"), in.text("is"),
             in.text("reason")};
     }},
    {"graded",
     [](Fields& in) -> WeldDetail {
         return Graded{in.text("scheme"), in.text("level")};
     }},
    {"decided",
     [](Fields& in) -> WeldDetail {
         return Decided{in.oneOf("decision", kDecisions), in.text("reason")};
     }},
    {"signed_off", [](Fields& in) -> WeldDetail { return SignedOff{in.text("role")}; }},
}};

Result<Event> eventFrom(CanonicalValue json) {
    Fields in(json, "event");
    Event out;
    Fields at = in.object("at");
    out.at = {
        at.milliseconds("boot_ms"), at.text("boot"), at.milliseconds("utc_ms"),
        std::chrono::minutes{at.integer("offset_min")}};
    in.take(at.done());
    out.by = in.text("by");
    out.subject = in.text("subject");
    out.n = in.integer("n");
    if (in.integer("v") != kVersion) {
        in.complain("v is not 1; a newer program wrote this");
    }
    const std::string_view kind = in.view("kind");
    bool known = false;
    for (const auto& [name, read] : kReaders) {
        if (name == kind) {
            Fields d = in.object("d");
            out.d = read(d);
            in.take(d.done());
            known = true;
        }
    }
    if (!known) {
        in.complain("the kind \"" + std::string(kind) + "\" is not known");
    }
    if (const auto problem = in.done()) {
        return tl::unexpected<Error>(*problem);
    }
    return out;
}

} // namespace

Result<std::string> toBody(const Event& event) {
    try {
        return canonicalJson(Json{
            {"at",
             {{"boot", event.at.bootId},
              {"boot_ms", event.at.boot.count()},
              {"offset_min", event.at.offset.count()},
              {"utc_ms", event.at.utc.count()}}},
            {"by", event.by},
            {"d", detailJson(event.d)},
            {"kind", kindOf(event.d)},
            {"n", event.n},
            {"subject", event.subject},
            {"v", kVersion}});
    } catch (const Json::exception& error) {
        return fail(ErrorCode::Malformed, error.what());
    }
}

Result<Event> eventFromBody(std::string_view body) {
    const auto json = CanonicalText::parse(body);
    if (!json) {
        return tl::unexpected<Error>(json.error());
    }
    return eventFrom(json->root());
}

} // namespace seamclock
