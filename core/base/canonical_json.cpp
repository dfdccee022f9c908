#include "core/base/canonical_json.h"

#include "core/base/json.h"

#include <simdjson.h>

namespace seamclock {

namespace {

namespace dom = simdjson::dom;

constexpr int kDeepest = 64; // as json.cpp has it

/// Parsing again and again, a parser keeps its buffers; the document has the content.
dom::parser& parser() {
    thread_local dom::parser mine;
    return mine;
}

Json contentOf(CanonicalValue value) {
    if (value.isText()) {
        return std::string(value.text());
    }
    if (value.isInteger()) {
        return value.integer();
    }
    if (value.isFlag()) {
        return value.flag();
    }
    Json out = value.isObject() ? Json::object() : Json::array();
    for (const CanonicalValue each : value) {
        if (value.isObject()) {
            out[std::string(each.key())] = contentOf(each);
        } else {
            out.push_back(contentOf(each));
        }
    }
    return out;
}

} // namespace

struct CanonicalText::Parsed {
    dom::document document;
};

CanonicalText::CanonicalText() = default;
CanonicalText::CanonicalText(CanonicalText&&) noexcept = default;
CanonicalText& CanonicalText::operator=(CanonicalText&&) noexcept = default;
CanonicalText::~CanonicalText() = default;

/// Takes over what was parsed, as long as it is what the canonical form allows.
class CanonicalText::Filler {
public:
    explicit Filler(std::vector<Node>& nodes) : m_nodes(nodes) {}

    bool value(dom::element element, std::string_view key, int level) {
        const std::size_t index = m_nodes.size();
        m_nodes.emplace_back();
        m_nodes[index].key = key;
        if (!content(element, index, level)) {
            return false;
        }
        m_nodes[index].end = static_cast<std::uint32_t>(m_nodes.size());
        return true;
    }

private:
    bool content(dom::element element, std::size_t index, int level) {
        switch (element.type()) {
        case dom::element_type::OBJECT:
            m_nodes[index].kind = Kind::Object;
            return level <= kDeepest && members(element, index, level);
        case dom::element_type::ARRAY:
            m_nodes[index].kind = Kind::List;
            return level <= kDeepest && items(element, index, level);
        case dom::element_type::STRING:
            m_nodes[index].kind = Kind::Text;
            return element.get(m_nodes[index].text) == simdjson::SUCCESS;
        case dom::element_type::INT64:
            m_nodes[index].kind = Kind::Integer;
            return element.get(m_nodes[index].number) == simdjson::SUCCESS;
        case dom::element_type::BOOL: {
            bool flag = false;
            const bool got = element.get(flag) == simdjson::SUCCESS;
            m_nodes[index].kind = Kind::Flag;
            m_nodes[index].number = flag ? 1 : 0;
            return got;
        }
        case dom::element_type::UINT64:
        case dom::element_type::DOUBLE:
        case dom::element_type::NULL_VALUE:
            return false;
        }
        return false;
    }

    bool members(const dom::object& object, std::size_t index, int level) {
        std::string_view before;
        std::uint32_t count = 0;
        for (const dom::key_value_pair& member : object) {
            if ((count > 0 && member.key <= before) ||
                !value(member.value, member.key, level + 1)) {
                return false;
            }
            before = member.key;
            ++count;
        }
        m_nodes[index].count = count;
        return true;
    }

    bool items(const dom::array& array, std::size_t index, int level) {
        std::uint32_t count = 0;
        for (const dom::element item : array) {
            if (!value(item, {}, level + 1)) {
                return false;
            }
            ++count;
        }
        m_nodes[index].count = count;
        return true;
    }

    std::vector<Node>& m_nodes;
};

Result<CanonicalText> CanonicalText::parse(std::string_view body) {
    CanonicalText out;
    out.m_parsed = std::make_unique<Parsed>();
    dom::element root;
    const auto parsed =
        parser().parse_into_document(out.m_parsed->document, body.data(), body.size()).get(root);
    out.m_nodes.reserve(body.size() / 16 + 8);
    // What is written again is the same only without spaces, and with the shortest escapes.
    if (parsed == simdjson::SUCCESS && Filler(out.m_nodes).value(root, {}, 1) &&
        simdjson::to_string(root) == body) {
        return out;
    }
    const auto why = parseCanonical(body);
    return why ? fail(ErrorCode::Malformed, "an event body is not in canonical form")
               : tl::unexpected<Error>(why.error());
}

CanonicalValue CanonicalText::root() const {
    return {m_nodes.data(), m_nodes.data()};
}

std::string CanonicalValue::written() const {
    return contentOf(*this).dump();
}

std::optional<CanonicalValue::Member> CanonicalValue::find(std::string_view key) const {
    if (!isObject()) {
        return std::nullopt;
    }
    std::size_t place = 0;
    for (const CanonicalValue each : *this) {
        if (each.key() == key) {
            return Member{each.m_node, place};
        }
        ++place;
    }
    return std::nullopt;
}

} // namespace seamclock
