// A document as a form: sections of rows of fields, each field one value of the JSON text that a
// foreman edits, named by its pointer. Forms are worked out anew from the draft after every key, so
// they hold no state; what is wrong with a value is core's finding, put at its field here. A form
// decides nothing of the trade: which values may be is the check's, and its sentence is shown.
#pragma once

#include "app/setup/plot.h"
#include "core/base/json_draft.h"

#include <QString>
#include <QStringList>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace seamclock {

struct FormField {
    enum class Kind {
        Text,
        Number,
        Numbers, // several, with blanks between them
        Choice,  // one of `choices`, on a page of its own
        Order,   // a list, asked step by step
        Shown    // worked out, not typed
    };
    Kind kind = Kind::Text;
    std::string pointer;
    QString caption; // with its unit
    QString value;
    QString help;    // what it means; may be empty
    QString finding; // what is wrong with it; empty: nothing
    double share = 1;
    std::vector<std::pair<std::string, QString>> choices; // as stored, and its words

    bool operator==(const FormField&) const = default;
};

/// What a button beside or below the fields does to the document.
struct FormAction {
    enum class Kind {
        Insert, // an item before that one of a list
        Put,    // a field
        Remove,
        ReadFile // points of a calibration
    };
    QString text;
    Kind kind = Kind::Remove;
    std::string pointer;
    std::string json; // what is inserted or put

    bool operator==(const FormAction&) const = default;
};

struct FormRow {
    std::string item; // pointer of what the row is as a whole; empty: of nothing
    std::vector<FormField> fields;
    std::vector<FormAction> actions;
    QString finding; // of the row as a whole

    bool operator==(const FormRow&) const = default;
};

struct FormSection {
    QString title;
    QString under;                  // what it holds, in a few words
    std::vector<std::string> roots; // findings below these belong here
    std::vector<FormRow> rows;
    QStringList findings; // those that are of no field and no row
    std::optional<PlotView> plot;
    QStringList notes; // beside the plot, or in its place

    bool operator==(const FormSection&) const = default;
};

struct FormFinding {
    std::string field; // JSON pointer
    std::string reason;
};

/// Puts each finding at its field, else its row, else its section; what fits nowhere comes back.
QStringList
placeFindings(std::vector<FormSection>& sections, const std::vector<FormFinding>& findings);
/// How many things are to be put right in it.
int findingsIn(const FormSection& section);

/// The document with what was typed into that field. A decimal comma counts as a point.
void typeInto(JsonDraft& draft, const FormField& field, const QString& typed);
/// Reading a file is not done here.
void act(JsonDraft& draft, const FormAction& action);

// Pieces that forms are made of.
FormField textField(const JsonDraft& draft, const std::string& pointer, const QString& caption);
FormField numberField(const JsonDraft& draft, const std::string& pointer, const QString& caption);
FormField choiceField(
    const JsonDraft& draft, const std::string& pointer, const QString& caption,
    std::vector<std::pair<std::string, QString>> choices);
FormRow rowOf(std::vector<FormField> fields);

} // namespace seamclock
