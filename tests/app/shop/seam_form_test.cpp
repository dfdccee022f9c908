// A seam typed by hand is held against the same checks as a table's row.
#include "app/shop/seam_form.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

SeamChoices choices() {
    SeamChoices out;
    out.procedures = {{"p-pe", "PE-HD by the book"}};
    out.welds["p-pe"] = {"PE-HD", 3'000, 20'000};
    out.benches = {{"east", "A: East bench"}};
    return out;
}

SeamValues whole() {
    return {{"job", "QV-131"},        {"part", "Salt tank"},
            {"label", "L1"},          {"what", "lid \"upper\", left"},
            {"procedure", "p-pe"},    {"thickness_mm", "8,5"},
            {"length_mm", "620+580"}, {"rewelds_allowed", "2"},
            {"shielded", "yes"},      {"sheet_1_batch", "B-1"}};
}

const FormField* fieldOf(const FormSection& section, const std::string& column) {
    for (const FormRow& row : section.rows) {
        for (const FormField& field : row.fields) {
            if (field.pointer == column) {
                return &field;
            }
        }
    }
    return nullptr;
}

TEST(SeamForm, WhatIsWholeBecomesASeamOfItsJob) {
    const auto seam = seamOf(whole(), choices());
    ASSERT_TRUE(seam);
    EXPECT_EQ(seam->job, "QV-131");
    EXPECT_EQ(seam->part, "Salt tank");
    EXPECT_EQ(seam->what, "lid \"upper\", left");
    EXPECT_EQ(seam->thicknessMm, 8.5); // a decimal comma counts as a point
    EXPECT_EQ(seam->lengthsMm, (std::vector<double>{620, 580}));
    EXPECT_EQ(seam->sheets[0].material, "PE-HD") << "the procedure's";
    EXPECT_EQ(seam->sheets[0].batch, "B-1");
    EXPECT_EQ(seam->rewelds, 2);
    EXPECT_TRUE(seam->shielded);
}

TEST(SeamForm, AThicknessOutsideItsProceduresTableIsWrong) {
    SeamValues values = whole();
    values["thickness_mm"] = "25";
    EXPECT_FALSE(seamOf(values, choices()));
    EXPECT_EQ(
        fieldOf(seamForm(values, choices(), false), "thickness_mm")->finding,
        "25 mm is outside what p-pe is for; allowed: 3 to 20 mm");
}

TEST(SeamForm, WhatIsWrongStandsAtItsField) {
    SeamValues values = whole();
    values["thickness_mm"] = "1800";
    values["bench"] = "north";
    values.erase("label");
    EXPECT_FALSE(seamOf(values, choices()));
    FormSection section = seamForm(values, choices(), false);
    EXPECT_TRUE(fieldOf(section, "thickness_mm")->finding.contains("allowed: 0.1 to 1000 mm"));
    EXPECT_TRUE(fieldOf(section, "bench")->finding.contains("north"));
    EXPECT_TRUE(fieldOf(section, "label")->finding.isEmpty()) << "it was not touched yet";
    section = seamForm(values, choices(), true);
    EXPECT_TRUE(fieldOf(section, "label")->finding.startsWith("is empty"));
    values = whole();
    values["job"] = QString(41, 'x');
    EXPECT_FALSE(seamOf(values, choices()));
    EXPECT_EQ(
        fieldOf(seamForm(values, choices(), true), "job")->finding,
        "has 41 signs; allowed: 1 to 40");
    values = whole();
    values.erase("procedure");
    EXPECT_TRUE(
        fieldOf(seamForm(values, choices(), true), "procedure")->finding.startsWith("is empty"));
}

} // namespace
} // namespace seamclock
