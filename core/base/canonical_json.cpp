#include "core/base/canonical_json.h"

#include "core/base/json.h"

#include <array>
#include <charconv>
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

/// Kept from one text of a thread to the next, as its buffers cost more than the parse.
struct CanonicalText::Parsed {
    std::string bytes; // with the room behind them that the parser reads into
    dom::document document;
    std::vector<Node> nodes;

    static std::unique_ptr<Parsed>& spare() {
        thread_local std::unique_ptr<Parsed> mine;
        return mine;
    }
};

CanonicalText::CanonicalText() : m_parsed(std::move(Parsed::spare())) {
    if (!m_parsed) {
        m_parsed = std::make_unique<Parsed>();
    }
    m_parsed->nodes.clear();
}
CanonicalText::CanonicalText(CanonicalText&&) noexcept = default;
CanonicalText& CanonicalText::operator=(CanonicalText&&) noexcept = default;
CanonicalText::~CanonicalText() {
    if (m_parsed) {
        Parsed::spare() = std::move(m_parsed);
    }
}

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

    /// Bytes of what was taken over when it is written without spaces and escapes.
    std::size_t shortest() const { return m_shortest; }

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
            return text(element, m_nodes[index].text);
        case dom::element_type::INT64:
            m_nodes[index].kind = Kind::Integer;
            return integer(element, m_nodes[index].number);
        case dom::element_type::BOOL: {
            bool flag = false;
            const bool got = element.get(flag) == simdjson::SUCCESS;
            m_nodes[index].kind = Kind::Flag;
            m_nodes[index].number = flag ? 1 : 0;
            m_shortest += flag ? 4 : 5;
            return got;
        }
        case dom::element_type::UINT64:
        case dom::element_type::DOUBLE:
        case dom::element_type::NULL_VALUE:
            return false;
        }
        return false;
    }

    bool text(dom::element element, std::string_view& out) {
        const bool got = element.get(out) == simdjson::SUCCESS;
        m_shortest += out.size() + 2;
        return got;
    }

    bool integer(dom::element element, std::int64_t& out) {
        const bool got = element.get(out) == simdjson::SUCCESS;
        std::array<char, 24> digits{};
        m_shortest += static_cast<std::size_t>(
            std::to_chars(digits.begin(), digits.end(), out).ptr - digits.begin());
        return got;
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
            m_shortest += member.key.size() + 3;
            ++count;
        }
        close(index, count);
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
        close(index, count);
        return true;
    }

    void close(std::size_t index, std::uint32_t count) {
        m_nodes[index].count = count;
        m_shortest += 2 + (count > 0 ? count - 1 : 0);
    }

    std::vector<Node>& m_nodes;
    std::size_t m_shortest = 0;
};

Result<CanonicalText> CanonicalText::parse(std::string_view body) {
    CanonicalText out;
    Parsed& parsed = *out.m_parsed;
    parsed.bytes.assign(body);
    parsed.bytes.append(simdjson::SIMDJSON_PADDING, '\0');
    dom::element root;
    const auto said =
        parser()
            .parse_into_document(parsed.document, parsed.bytes.data(), body.size(), false)
            .get(root);
    Filler filler(parsed.nodes);
    if (said == simdjson::SUCCESS && filler.value(root, {}, 1)) {
        // Without an escape the canonical form is the shortest; otherwise it is written again.
        const bool canonical = body.find('\\') == std::string_view::npos
                                   ? filler.shortest() == body.size()
                                   : simdjson::to_string(root) == body;
        if (canonical) {
            return out;
        }
    }
    const auto why = parseCanonical(body);
    return why ? fail(ErrorCode::Malformed, "an event body is not in canonical form")
               : tl::unexpected<Error>(why.error());
}

CanonicalValue CanonicalText::root() const {
    return {m_parsed->nodes.data(), m_parsed->nodes.data()};
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
