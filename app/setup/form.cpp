#include "app/setup/form.h"

#include "app/text/phrase_book.h"
#include "app/text/words.h"

#include <algorithm>

namespace seamclock {
namespace {

bool isBelow(const std::string& pointer, const std::string& root) {
    return pointer == root ||
           (pointer.size() > root.size() && pointer.compare(0, root.size(), root) == 0 &&
            (root.empty() || pointer[root.size()] == '/'));
}

bool placeAtField(FormSection& section, const FormFinding& finding) {
    for (FormRow& row : section.rows) {
        for (FormField& field : row.fields) {
            if (field.pointer == finding.field && field.kind != FormField::Kind::Shown) {
                field.finding = field.finding.isEmpty() ? inWords(finding.reason) : field.finding;
                return true;
            }
        }
    }
    return false;
}

/// A field that the form doesn't show stands before what is said of it.
QString named(const FormFinding& finding, const std::string& below) {
    std::string field = finding.field.substr(std::min(below.size(), finding.field.size()));
    std::replace(field.begin(), field.end(), '/', ' ');
    const QString words = fromUtf8(field).trimmed();
    const QString reason = inWords(finding.reason);
    return words.isEmpty() ? reason : words + " " + reason;
}

bool placeAtRow(FormSection& section, const FormFinding& finding) {
    FormRow* best = nullptr;
    for (FormRow& row : section.rows) {
        const bool fits = !row.item.empty() && isBelow(finding.field, row.item);
        if (fits && (best == nullptr || row.item.size() > best->item.size())) {
            best = &row;
        }
    }
    if (best == nullptr) {
        return false;
    }
    best->finding = best->finding.isEmpty() ? named(finding, best->item) : best->finding;
    return true;
}

FormSection* sectionOf(std::vector<FormSection>& sections, const std::string& pointer) {
    FormSection* best = nullptr;
    std::size_t length = 0;
    for (FormSection& section : sections) {
        for (const std::string& root : section.roots) {
            if (isBelow(pointer, root) && (best == nullptr || root.size() > length)) {
                best = &section;
                length = root.size();
            }
        }
    }
    return best;
}

} // namespace

QStringList
placeFindings(std::vector<FormSection>& sections, const std::vector<FormFinding>& findings) {
    QStringList rest;
    for (const FormFinding& finding : findings) {
        const auto placed =
            std::any_of(sections.begin(), sections.end(), [&finding](FormSection& section) {
                return placeAtField(section, finding);
            });
        if (placed) {
            continue;
        }
        FormSection* section = sectionOf(sections, finding.field);
        if (section == nullptr) {
            rest << named(finding, "");
        } else if (!placeAtRow(*section, finding)) {
            section->findings << named(finding, "");
        }
    }
    return rest;
}

int findingsIn(const FormSection& section) {
    auto count = static_cast<int>(section.findings.size());
    for (const FormRow& row : section.rows) {
        count += row.finding.isEmpty() ? 0 : 1;
        count += static_cast<int>(
            std::count_if(row.fields.begin(), row.fields.end(), [](const FormField& field) {
                return !field.finding.isEmpty();
            }));
    }
    return count;
}

void typeInto(JsonDraft& draft, const FormField& field, const QString& typed) {
    std::string text = typed.trimmed().toStdString();
    const bool isNumber =
        field.kind == FormField::Kind::Number || field.kind == FormField::Kind::Numbers;
    if (isNumber) {
        std::replace(text.begin(), text.end(), ',', '.');
        // One value for a whole band becomes a lower and an upper one where either is changed.
        const auto slash = field.pointer.rfind('/');
        const std::string row = field.pointer.substr(0, slash);
        const std::string end = field.pointer.substr(slash + 1);
        if ((end == "lower" || end == "upper") && draft.has(row + "/value")) {
            const std::string value = draft.shown(row + "/value");
            draft.remove(row + "/value");
            draft.setNumber(row + "/lower", value);
            draft.setNumber(row + "/upper", value);
        }
    }
    switch (field.kind) {
    case FormField::Kind::Number:
        draft.setNumber(field.pointer, text);
        break;
    case FormField::Kind::Numbers:
        draft.setNumbers(field.pointer, text);
        break;
    case FormField::Kind::Text:
    case FormField::Kind::Choice:
        draft.setText(field.pointer, text);
        break;
    case FormField::Kind::Order:
    case FormField::Kind::Shown:
        break;
    }
}

void act(JsonDraft& draft, const FormAction& action) {
    switch (action.kind) {
    case FormAction::Kind::Insert:
        draft.insert(action.pointer, action.json);
        break;
    case FormAction::Kind::Put:
        draft.put(action.pointer, action.json);
        break;
    case FormAction::Kind::Remove:
        draft.remove(action.pointer);
        break;
    case FormAction::Kind::ReadFile:
        break;
    }
}

FormField textField(const JsonDraft& draft, const std::string& pointer, const QString& caption) {
    FormField field;
    field.pointer = pointer;
    field.caption = caption;
    field.value = fromUtf8(draft.shown(pointer));
    return field;
}

FormField numberField(const JsonDraft& draft, const std::string& pointer, const QString& caption) {
    FormField field = textField(draft, pointer, caption);
    field.kind = FormField::Kind::Number;
    return field;
}

FormField choiceField(
    const JsonDraft& draft, const std::string& pointer, const QString& caption,
    std::vector<std::pair<std::string, QString>> choices) {
    FormField field = textField(draft, pointer, caption);
    field.kind = FormField::Kind::Choice;
    field.choices = std::move(choices);
    for (const auto& [stored, words] : field.choices) {
        if (field.value == fromUtf8(stored)) {
            field.value = words;
            break;
        }
    }
    return field;
}

FormRow rowOf(std::vector<FormField> fields) {
    FormRow row;
    row.fields = std::move(fields);
    return row;
}

} // namespace seamclock
