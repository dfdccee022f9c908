// A procedure as a form: every value has a field, every finding of the check a place, and what is
// typed changes that value alone.
#include "app/setup/procedure_form.h"

#include "core/procedure/procedure_codec.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

const std::string kProcedures = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures";

JsonDraft draftOf(const std::string& id) {
    const auto document = readProcedureFile(kProcedures + "/" + id + ".json");
    EXPECT_TRUE(document);
    auto draft = JsonDraft::read(id, document->bytes);
    EXPECT_TRUE(draft);
    return std::move(*draft);
}

JsonDraft pp() {
    return draftOf("pp-dvs2207-11");
}

std::vector<FormSection> checked(const JsonDraft& draft, QStringList* rest = nullptr) {
    std::vector<FormSection> sections = procedureForm(draft);
    std::vector<FormFinding> findings;
    for (const ProcedureFinding& finding : checkProcedure("a test", draft.text())) {
        findings.push_back({finding.field, finding.reason});
    }
    const QStringList left = placeFindings(sections, findings);
    if (rest != nullptr) {
        *rest = left;
    }
    return sections;
}

const FormField* find(const std::vector<FormSection>& sections, const std::string& pointer) {
    for (const FormSection& section : sections) {
        for (const FormRow& row : section.rows) {
            for (const FormField& field : row.fields) {
                if (field.pointer == pointer) {
                    return &field;
                }
            }
        }
    }
    return nullptr;
}

int allFindings(const std::vector<FormSection>& sections) {
    int count = 0;
    for (const FormSection& section : sections) {
        count += findingsIn(section);
    }
    return count;
}

void type(JsonDraft& draft, const std::string& pointer, const QString& text) {
    const auto sections = procedureForm(draft);
    const FormField* field = find(sections, pointer);
    ASSERT_NE(field, nullptr) << pointer;
    typeInto(draft, *field, text);
}

TEST(Form, EveryShippedProcedureHasAFormWithoutFindings) {
    const auto all = readProcedureFolder(kProcedures);
    ASSERT_TRUE(all);
    for (const ProcedureDocument& one : *all) {
        const JsonDraft draft = draftOf(one.procedure.id);
        QStringList rest;
        const auto sections = checked(draft, &rest);
        EXPECT_EQ(allFindings(sections), 0) << one.procedure.id;
        EXPECT_TRUE(rest.isEmpty());
        EXPECT_GE(sections.size(), 10U);
        std::set<std::string> pointers;
        for (const FormSection& section : sections) {
            EXPECT_FALSE(section.title.isEmpty());
            for (const FormRow& row : section.rows) {
                for (const FormField& field : row.fields) {
                    EXPECT_TRUE(pointers.insert(field.pointer).second)
                        << field.pointer << " stands twice";
                }
            }
        }
    }
}

TEST(Form, AValueOutOfRangeIsSaidAtItsFieldWithTheRange) {
    JsonDraft draft = pp();
    type(draft, "/plate/max_C", "410");
    const auto sections = checked(draft);
    const FormField* field = find(sections, "/plate/max_C");
    ASSERT_NE(field, nullptr);
    EXPECT_TRUE(field->finding.startsWith("410 is outside 100 to 320 °C"))
        << field->finding.toStdString();
    EXPECT_EQ(field->value, "410");
    EXPECT_EQ(allFindings(sections), 1);
}

TEST(Form, WordsInANumbersFieldAreSaidThere) {
    JsonDraft draft = pp();
    type(draft, "/soak_s/table/2/upper", "about 330");
    const auto sections = checked(draft);
    const FormField* field = find(sections, "/soak_s/table/2/upper");
    ASSERT_NE(field, nullptr);
    EXPECT_TRUE(field->finding.startsWith("\"about 330\" is not a number"))
        << field->finding.toStdString();
    EXPECT_EQ(field->value, "about 330");
}

TEST(Form, AFindingOfARowStandsAtTheRow) {
    JsonDraft draft = pp();
    type(draft, "/soak_s/table/2/upper", "300"); // the next row begins at 330
    type(draft, "/soak_s/table/3/lower", "290"); // and now falls
    const auto sections = checked(draft);
    const auto soak = std::find_if(sections.begin(), sections.end(), [](const FormSection& one) {
        return one.title == QLatin1String("Soak");
    });
    ASSERT_NE(soak, sections.end());
    const auto row = std::find_if(soak->rows.begin(), soak->rows.end(), [](const FormRow& one) {
        return one.item == "/soak_s/table/3";
    });
    ASSERT_NE(row, soak->rows.end());
    EXPECT_TRUE(row->finding.contains("jumps down from 300 to 290")) << row->finding.toStdString();
}

TEST(Form, NoFindingIsLostWhereverItIs) {
    JsonDraft draft = pp();
    draft.remove("/gaps");         // soak then lacks a value in silence
    draft.remove("/material");     // a text
    draft.put("/odd", "7");        // unknown
    draft.remove("/plate/source"); // of a group
    draft.put("/bead_mm/table/0/odd", "7");
    draft.remove("/cooling_min/default_rule");
    const auto found = checkProcedure("a test", draft.text());
    ASSERT_GE(found.size(), 6U);
    QStringList rest;
    const auto sections = checked(draft, &rest);
    EXPECT_EQ(
        allFindings(sections) + static_cast<int>(rest.size()), static_cast<int>(found.size()));
    EXPECT_EQ(find(sections, "/material")->finding, "is missing");
}

TEST(Form, OneValueOfABandBecomesTwoWhereOneEndIsTyped) {
    JsonDraft draft = pp();
    EXPECT_EQ(find(procedureForm(draft), "/bead_mm/table/2/lower")->value, "1.0");
    type(draft, "/bead_mm/table/2/upper", "1,2"); // a comma counts as a point
    EXPECT_FALSE(draft.has("/bead_mm/table/2/value"));
    EXPECT_EQ(draft.number("/bead_mm/table/2/lower"), 1.0);
    EXPECT_EQ(draft.number("/bead_mm/table/2/upper"), 1.2);
}

TEST(Form, RowsComeAndGoByTheirButtons) {
    JsonDraft draft = pp();
    const std::size_t before = draft.size("/soak_s/table");
    const auto actionOf = [&draft](const std::string& item, const QString& text) {
        for (const FormSection& section : procedureForm(draft)) {
            for (const FormRow& row : section.rows) {
                for (const FormAction& action : row.actions) {
                    if (row.item == item && action.text == text) {
                        return action;
                    }
                }
            }
        }
        ADD_FAILURE() << text.toStdString();
        return FormAction();
    };
    act(draft, actionOf("/soak_s/table/1", "Row below"));
    EXPECT_EQ(draft.size("/soak_s/table"), before + 1);
    EXPECT_EQ(draft.shown("/soak_s/table/2/from_mm"), draft.shown("/soak_s/table/1/to_mm"));
    act(draft, actionOf("/soak_s/table/2", "Take out"));
    EXPECT_EQ(draft.text(), pp().text());
}

TEST(Form, AttestedIsNothingThatAFormCanGive) {
    for (const FormSection& section : procedureForm(pp())) {
        for (const FormRow& row : section.rows) {
            for (const FormField& field : row.fields) {
                for (const auto& [stored, words] : field.choices) {
                    EXPECT_NE(stored, "attested") << field.pointer;
                }
            }
        }
    }
}

TEST(Form, AColumnIsDrawnAsItIsTypedAlsoWhileItIsWrong) {
    JsonDraft draft = pp();
    type(draft, "/soak_s/table/2/upper", "9999999");
    const auto lines = linesOf(draft, "/soak_s");
    ASSERT_EQ(lines.size(), 1U);
    EXPECT_EQ(lines.front().points.size(), 2 * draft.size("/soak_s/table"));
    EXPECT_TRUE(std::any_of(
        lines.front().points.begin(), lines.front().points.end(),
        [](const QPointF& point) { return point.y() == 9999999; }));
    type(draft, "/soak_s/table/2/upper", "much");
    EXPECT_EQ(linesOf(draft, "/soak_s").front().points.size(), 2 * draft.size("/soak_s/table") - 2);
}

TEST(Form, TheDrawnLineIsTheColumnsOwnValue) {
    // Held against what a plan takes from the column, at thicknesses inside every band.
    const auto all = readProcedureFolder(kProcedures);
    ASSERT_TRUE(all);
    int looked = 0;
    for (const ProcedureDocument& one : *all) {
        const JsonDraft draft = draftOf(one.procedure.id);
        for (const auto& [pointer, column] :
             {std::pair{"/soak_s", &one.procedure.soak}, {"/build_up_s", &one.procedure.buildUp}}) {
            if (!*column || (*column)->curves.size() != 1) {
                continue; // of two the longer holds
            }
            const auto lines = linesOf(draft, pointer);
            ASSERT_EQ(lines.size(), 1U) << one.procedure.id << pointer;
            const auto& points = lines.front().points;
            for (std::size_t i = 1; i < points.size(); i += 2) { // a band's upper end is its own
                const auto value = (*column)->at(millimetres(points[i].x()), BandRule::Line);
                ASSERT_TRUE(value) << one.procedure.id << pointer << " " << points[i].x();
                EXPECT_NEAR(points[i].y(), *value, 1e-9) << one.procedure.id << pointer;
                ++looked;
            }
        }
    }
    EXPECT_GT(looked, 20);
}

} // namespace
} // namespace seamclock
