#include "core/weld/correction.h"

#include <algorithm>
#include <charconv>
#include <functional>
#include <variant>

namespace seamclock {

namespace {

using Place = std::variant<std::int64_t*, std::string*>;

struct Field {
    std::string name;
    Place place;
};

void add(std::vector<Field>& fields, const char* name, std::int64_t& value) {
    fields.push_back({name, Place(&value)});
}

void add(std::vector<Field>& fields, const char* name, std::optional<std::int64_t>& value) {
    if (value) {
        fields.push_back({name, Place(&*value)});
    }
}

// The fields that can be corrected, by the names they have in the stored event ("sheets.1.batch"
// inside lists).
std::vector<Field> fieldsOf(WeldDetail& detail) {
    std::vector<Field> fields;
    if (auto* reading = std::get_if<ReadingTaken>(&detail)) {
        add(fields, "reading_milli", reading->readingMilli);
    } else if (auto* check = std::get_if<CheckMade>(&detail)) {
        add(fields, "value_mC", check->valueMc);
        add(fields, "value_um", check->valueUm);
        add(fields, "value_milli", check->valueMilli);
    } else if (auto* bead = std::get_if<BeadMeasured>(&detail)) {
        add(fields, "width_um", bead->widthUm);
        add(fields, "height_um", bead->heightUm);
        add(fields, "k_um", bead->kUm);
        add(fields, "misalignment_um", bead->misalignmentUm);
    } else if (auto* opened = std::get_if<WeldOpened>(&detail)) {
        for (std::size_t i = 0; i < opened->sheets.size(); ++i) {
            const std::string prefix = "sheets." + std::to_string(i) + ".";
            fields.push_back({prefix + "maker", Place(&opened->sheets[i].maker)});
            fields.push_back({prefix + "batch", Place(&opened->sheets[i].batch)});
        }
    }
    return fields;
}

std::optional<std::int64_t> wholeNumber(const std::string& text) {
    std::int64_t value = 0;
    const char* end = text.data() + text.size();
    const auto parsed = std::from_chars(text.data(), end, value);
    if (parsed.ec != std::errc{} || parsed.ptr != end) {
        return std::nullopt;
    }
    return value;
}

std::string valueAt(const Place& place) {
    if (const auto* number = std::get_if<std::int64_t*>(&place)) {
        return std::to_string(**number);
    }
    return *std::get<std::string*>(place);
}

bool put(const Place& place, const std::string& text) {
    if (const auto* number = std::get_if<std::int64_t*>(&place)) {
        const auto value = wholeNumber(text);
        if (value) {
            **number = *value;
        }
        return value.has_value();
    }
    *std::get<std::string*>(place) = text;
    return true;
}

Result<void> correct(const ValueCorrected& correction, std::vector<Retained>& events) {
    const auto target = std::find_if(events.begin(), events.end(), [&](const Retained& one) {
        return one.n == correction.targetN;
    });
    if (target == events.end()) {
        return fail(
            ErrorCode::Refused,
            "n " + std::to_string(correction.targetN) + " is not an event that still stands");
    }
    std::string allowed;
    for (const Field& field : fieldsOf(target->d)) {
        if (field.name == correction.field) {
            if (valueAt(field.place) != correction.was) {
                return fail(
                    ErrorCode::Refused,
                    correction.field + " is " + valueAt(field.place) + ", not " + correction.was);
            }
            if (!put(field.place, correction.is)) {
                return fail(
                    ErrorCode::Refused,
                    "\"" + correction.is + "\" is not a whole number for " + correction.field);
            }
            return {};
        }
        allowed += (allowed.empty() ? "" : ", ") + field.name;
    }
    return fail(
        ErrorCode::Refused, "\"" + correction.field + "\" can't be corrected in " +
                                std::string(kindOf(target->d)) +
                                "; these can: " + (allowed.empty() ? "none" : allowed));
}

} // namespace

Result<void>
checkCorrection(const ValueCorrected& correction, const std::vector<Retained>& events) {
    std::vector<Retained> copy = events;
    return correct(correction, copy);
}

void applyCorrection(const ValueCorrected& correction, std::vector<Retained>& events) {
    (void)correct(correction, events);
}

} // namespace seamclock
