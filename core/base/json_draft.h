// A JSON text that a person edits field by field: what isn't touched keeps its order, and unknown
// fields stay. Fields are named by JSON pointer (RFC 6901). Nothing is checked here but that the
// text is JSON: what was typed and is no number stands as a text, so that whoever checks the
// document names it at its field, with the allowed range.
#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace seamclock {

class JsonDraft {
public:
    JsonDraft(); // an empty object
    JsonDraft(const JsonDraft& other);
    JsonDraft& operator=(const JsonDraft& other);
    JsonDraft(JsonDraft&&) noexcept;
    JsonDraft& operator=(JsonDraft&&) noexcept;
    ~JsonDraft();

    /// Malformed: as parseJson, or not an object. `name`: what to call it in that sentence.
    static Result<JsonDraft> read(std::string_view name, std::string_view text);

    /// The document: two blanks a level, an object or list on one line where it fits 100 columns.
    std::string text() const;

    bool has(const std::string& pointer) const;
    /// As a person would type it: a text without quotes, a list's items with blanks between them;
    /// empty if it isn't there, is null, or an object.
    std::string shown(const std::string& pointer) const;
    std::optional<double> number(const std::string& pointer) const;
    /// Items of a list; 0 of anything else.
    std::size_t size(const std::string& pointer) const;

    // Empty takes the field away. What leads to a field is made if it isn't there; a pointer
    // through a value that is no object changes nothing.
    void setText(const std::string& pointer, const std::string& typed);
    void setNumber(const std::string& pointer, const std::string& typed);
    /// Numbers with blanks between them, as a list.
    void setNumbers(const std::string& pointer, const std::string& typed);
    /// `json` must be JSON: it is written by the program.
    void put(const std::string& pointer, std::string_view json);
    /// Before the item of that pointer, or behind the last.
    void insert(const std::string& pointer, std::string_view json);
    void remove(const std::string& pointer);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

} // namespace seamclock
