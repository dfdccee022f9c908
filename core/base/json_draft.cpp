#include "core/base/json_draft.h"

#include "core/base/json.h"

#include <charconv>
#include <cmath>
#include <sstream>

namespace seamclock {
namespace {

using Ordered = nlohmann::ordered_json;

constexpr std::size_t kColumns = 100;
constexpr std::size_t kIndent = 2;

Ordered::json_pointer pointerOf(const std::string& text) {
    return Ordered::json_pointer(text);
}

const Ordered* find(const Ordered& root, const std::string& pointer) {
    const auto where = pointerOf(pointer);
    return root.contains(where) ? &root.at(where) : nullptr;
}

std::string plain(const Ordered& value) {
    return value.dump(-1, ' ', false, Ordered::error_handler_t::replace);
}

/// On one line, with a blank after each comma and colon.
std::string compact(const Ordered& value) {
    if (!value.is_structured()) {
        return plain(value);
    }
    std::string out;
    for (auto item = value.begin(); item != value.end(); ++item) {
        out += out.empty() ? "" : ", ";
        out += value.is_object() ? plain(Ordered(item.key())) + ": " : "";
        out += compact(*item);
    }
    return value.is_object() ? "{" + out + "}" : "[" + out + "]";
}

/// `before`: columns taken on its line by then.
void write(std::string& out, const Ordered& value, std::size_t level, std::size_t before) {
    const std::string line = compact(value);
    if (!value.is_structured() || value.empty() ||
        (level > 0 && before + line.size() < kColumns)) { // room for the comma
        out += line;
        return;
    }
    const std::string indent((level + 1) * kIndent, ' ');
    out += value.is_object() ? "{" : "[";
    bool first = true;
    for (auto item = value.begin(); item != value.end(); ++item) {
        out += first ? "\n" : ",\n";
        first = false;
        const std::string key = value.is_object() ? plain(Ordered(item.key())) + ": " : "";
        out += indent + key;
        write(out, *item, level + 1, indent.size() + key.size());
    }
    out += "\n" + std::string(level * kIndent, ' ');
    out += value.is_object() ? "}" : "]";
}

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    return first == std::string_view::npos
               ? std::string_view()
               : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

Ordered numberOrText(std::string_view typed) {
    const char* const end = typed.data() + typed.size();
    std::int64_t whole = 0;
    if (const auto [at, trouble] = std::from_chars(typed.data(), end, whole);
        trouble == std::errc() && at == end) {
        return whole;
    }
    double value = 0;
    if (const auto [at, trouble] = std::from_chars(typed.data(), end, value);
        trouble == std::errc() && at == end && std::isfinite(value)) {
        return value;
    }
    return std::string(typed);
}

std::size_t indexOf(const std::string& step, std::size_t most) {
    std::size_t index = 0;
    const auto [at, trouble] = std::from_chars(step.data(), step.data() + step.size(), index);
    return trouble == std::errc() && at == step.data() + step.size() && index < most ? index : most;
}

} // namespace

struct JsonDraft::Inside {
    Ordered root = Ordered::object();

    /// What the pointer's last step belongs to; null: the way there leads through a value.
    Ordered* parent(const Ordered::json_pointer& where) {
        Ordered* at = &root;
        std::vector<std::string> steps;
        for (auto up = where.parent_pointer(); !up.empty(); up = up.parent_pointer()) {
            steps.push_back(up.back());
        }
        for (auto step = steps.rbegin(); step != steps.rend(); ++step) {
            if (at->is_array()) {
                const std::size_t index = indexOf(*step, at->size());
                if (index == at->size()) {
                    return nullptr;
                }
                at = &(*at)[index];
                continue;
            }
            if (!at->is_object()) {
                return nullptr;
            }
            Ordered& next = (*at)[*step];
            next = next.is_null() ? Ordered::object() : std::move(next);
            at = &next;
        }
        return at->is_structured() ? at : nullptr;
    }

    void set(const std::string& pointer, Ordered value) {
        const auto where = pointerOf(pointer);
        Ordered* owner = where.empty() ? nullptr : parent(where);
        if (owner == nullptr) {
            return;
        }
        if (owner->is_object()) {
            (*owner)[where.back()] = std::move(value);
        } else if (const auto index = indexOf(where.back(), owner->size()); index < owner->size()) {
            (*owner)[index] = std::move(value);
        }
    }
};

JsonDraft::JsonDraft() : m_inside(std::make_unique<Inside>()) {}
JsonDraft::JsonDraft(const JsonDraft& other)
    : m_inside(std::make_unique<Inside>(*other.m_inside)) {}
JsonDraft& JsonDraft::operator=(const JsonDraft& other) {
    m_inside = std::make_unique<Inside>(*other.m_inside);
    return *this;
}
JsonDraft::JsonDraft(JsonDraft&&) noexcept = default;
JsonDraft& JsonDraft::operator=(JsonDraft&&) noexcept = default;
JsonDraft::~JsonDraft() = default;

Result<JsonDraft> JsonDraft::read(std::string_view name, std::string_view text) {
    const auto parsed = parseJson(name, text); // refuses what a second parser would pass over
    if (!parsed) {
        return tl::unexpected<Error>(parsed.error());
    }
    if (!parsed->root.is_object()) {
        return fail(ErrorCode::Malformed, std::string(name) + ": expected a JSON object");
    }
    if (text.substr(0, 3) == "\xEF\xBB\xBF") {
        text.remove_prefix(3);
    }
    JsonDraft draft;
    draft.m_inside->root = Ordered::parse(text, nullptr, false);
    if (!draft.m_inside->root.is_object()) {
        return fail(ErrorCode::Malformed, std::string(name) + ": expected a JSON object");
    }
    return draft;
}

std::string JsonDraft::text() const {
    std::string out;
    write(out, m_inside->root, 0, 0);
    return out + "\n";
}

bool JsonDraft::has(const std::string& pointer) const {
    const Ordered* value = find(m_inside->root, pointer);
    return value != nullptr && !value->is_null();
}

std::string JsonDraft::shown(const std::string& pointer) const {
    const Ordered* value = find(m_inside->root, pointer);
    if (value == nullptr || value->is_null() || value->is_object()) {
        return {};
    }
    if (value->is_string()) {
        return value->get<std::string>();
    }
    if (!value->is_array()) {
        return plain(*value);
    }
    std::string out;
    for (const Ordered& item : *value) {
        out += out.empty() ? "" : " ";
        out += item.is_string() ? item.get<std::string>() : plain(item);
    }
    return out;
}

std::optional<double> JsonDraft::number(const std::string& pointer) const {
    const Ordered* value = find(m_inside->root, pointer);
    return value != nullptr && value->is_number() ? std::optional(value->get<double>())
                                                  : std::nullopt;
}

std::size_t JsonDraft::size(const std::string& pointer) const {
    const Ordered* value = find(m_inside->root, pointer);
    return value != nullptr && value->is_array() ? value->size() : 0;
}

void JsonDraft::setText(const std::string& pointer, const std::string& typed) {
    if (typed.empty()) {
        remove(pointer);
    } else {
        m_inside->set(pointer, typed);
    }
}

void JsonDraft::setNumber(const std::string& pointer, const std::string& typed) {
    const std::string_view value = trimmed(typed);
    if (value.empty()) {
        remove(pointer);
    } else {
        m_inside->set(pointer, numberOrText(value));
    }
}

void JsonDraft::setNumbers(const std::string& pointer, const std::string& typed) {
    Ordered list = Ordered::array();
    std::istringstream words(typed);
    for (std::string word; words >> word;) {
        list.push_back(numberOrText(word));
    }
    if (list.empty()) {
        remove(pointer);
    } else {
        m_inside->set(pointer, std::move(list));
    }
}

void JsonDraft::put(const std::string& pointer, std::string_view json) {
    m_inside->set(pointer, Ordered::parse(json, nullptr, false));
}

void JsonDraft::insert(const std::string& pointer, std::string_view json) {
    const auto where = pointerOf(pointer);
    Ordered* owner = where.empty() ? nullptr : m_inside->parent(where);
    if (owner == nullptr) {
        return;
    }
    if (owner->is_object() && owner->empty()) {
        *owner = Ordered::array(); // made on the way
    }
    if (owner->is_array()) {
        const std::size_t index = indexOf(where.back(), owner->size());
        owner->insert(
            owner->begin() + static_cast<std::ptrdiff_t>(index),
            Ordered::parse(json, nullptr, false));
    }
}

void JsonDraft::remove(const std::string& pointer) {
    if (find(m_inside->root, pointer) == nullptr || pointer.empty()) {
        return;
    }
    const auto where = pointerOf(pointer);
    Ordered* owner = m_inside->parent(where);
    if (owner == nullptr) {
        return;
    }
    if (owner->is_object()) {
        owner->erase(where.back());
    } else if (const auto index = indexOf(where.back(), owner->size()); index < owner->size()) {
        owner->erase(index);
    }
}

} // namespace seamclock
