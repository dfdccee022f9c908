// A bench as a form, and a calibration as it is drawn.
#include "app/setup/bench_form.h"

#include "core/bench/bench_codec.h"
#include "core/bench/calibration.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

JsonDraft east() {
    const auto bench =
        readBenchFile(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo/bench-east.json");
    EXPECT_TRUE(bench);
    auto draft = JsonDraft::read("east", bench->bytes);
    EXPECT_TRUE(draft);
    return std::move(*draft);
}

void addPoints(JsonDraft& draft, const std::vector<std::pair<const char*, const char*>>& points) {
    draft.put("/calibration/points", "[]");
    draft.remove("/calibration/rate_uncertainty_percent");
    for (const char* gone : {"/scale/springs", "/scale/zero", "/scale/preload_N"}) {
        draft.remove(gone);
    }
    for (std::size_t i = 0; i < points.size(); ++i) {
        const std::string item = "/calibration/points/" + std::to_string(i);
        draft.insert(item, "{}");
        draft.setNumber(item + "/reading", points[i].first);
        draft.setNumber(item + "/force_N", points[i].second);
    }
}

std::vector<FormSection> checked(const JsonDraft& draft, QStringList& rest) {
    std::vector<FormSection> sections = benchForm(draft);
    std::vector<FormFinding> findings;
    for (const BenchFinding& finding : checkBench("a test", draft.text())) {
        findings.push_back({finding.field, finding.reason});
    }
    rest = placeFindings(sections, findings);
    return sections;
}

const FormField& field(const std::vector<FormSection>& sections, const std::string& pointer) {
    for (const FormSection& section : sections) {
        for (const FormRow& row : section.rows) {
            for (const FormField& each : row.fields) {
                if (each.pointer == pointer) {
                    return each;
                }
            }
        }
    }
    ADD_FAILURE() << "no field is " << pointer;
    static const FormField kNone;
    return kNone;
}

TEST(BenchForm, TheDemosBenchHasNoFindings) {
    QStringList rest;
    const auto sections = checked(east(), rest);
    for (const FormSection& section : sections) {
        EXPECT_EQ(findingsIn(section), 0) << section.title.toStdString();
    }
    EXPECT_TRUE(rest.isEmpty());
    EXPECT_EQ(field(sections, "/scale/springs/0/rate_N_per_unit").value, "62.5");
}

TEST(BenchForm, AnEmptyBenchOwesEveryValueAndHasNoOrderOfItsOwn) {
    const JsonDraft draft = emptyBench();
    EXPECT_FALSE(draft.has("/explained"));
    QStringList rest;
    const auto sections = checked(draft, rest);
    EXPECT_TRUE(rest.isEmpty()) << rest.join('\n').toStdString();
    for (const char* pointer :
         {"/id", "/name", "/longest_seam_mm", "/thickest_sheet_mm", "/scale/division",
          "/scale/zero", "/gap/floor_mm", "/release_order"}) {
        EXPECT_FALSE(field(sections, pointer).finding.isEmpty()) << pointer;
    }
    EXPECT_EQ(field(sections, "/release_order").value, "not chosen yet");
    EXPECT_EQ(draft.size("/release_order"), 0U);
}

TEST(BenchForm, AFieldIsExplainedInTheTemplatesWords) {
    EXPECT_TRUE(benchExplained("/scale/division").contains("smallest step"));
    EXPECT_TRUE(benchExplained("/scale/springs/1/rate_N_per_unit").contains("spring's force"));
    EXPECT_EQ(benchExplained("/nothing"), "");
}

TEST(BenchForm, ACalibrationIsDrawnWithItsLineBandAndWhatIsLeftOver) {
    JsonDraft draft = east();
    addPoints(draft, {{"4", "249"}, {"8", "502"}, {"12", "747"}, {"16", "1003"}, {"20", "1252"}});
    const FitShown shown = fitShown(draft);
    EXPECT_TRUE(shown.straight);
    ASSERT_EQ(shown.plot.lines.size(), 1U);
    ASSERT_EQ(shown.plot.bands.size(), 1U);
    // By hand: mean reading 12, mean force 750.6; slope = (8·501.6 + 4·248.6 + 4·252.4 + 8·501.4) /
    // 160 = 10028 / 160 = 62.675.
    EXPECT_TRUE(
        shown.words.join(' ').contains("Rate 62.67") || shown.words.join(' ').contains("62.68"))
        << shown.words.join('\n').toStdString();
    ASSERT_EQ(shown.residuals.size(), 5U);
    EXPECT_NEAR(*shown.residuals[0], 249 - (750.6 - 8 * 62.675), 1e-6);
    // The band is two-sided about the line and widest at its ends.
    const auto& band = shown.plot.bands.front();
    const auto width = [&band](std::size_t i) { return band.high[i].y() - band.low[i].y(); };
    EXPECT_GT(width(0), width(band.low.size() / 2));
    EXPECT_GT(width(band.low.size() - 1), width(band.low.size() / 2));
}

TEST(BenchForm, ABentCalibrationIsDrawnWithThePointThatIsOffAndRefusedAtItsPoints) {
    JsonDraft draft = east();
    addPoints(draft, {{"4", "249"}, {"8", "502"}, {"12", "747"}, {"16", "1390"}, {"20", "1252"}});
    draft.setText("/calibration/load_cell", "the shop's own");
    const FitShown shown = fitShown(draft);
    EXPECT_FALSE(shown.straight);
    EXPECT_TRUE(std::any_of(
        shown.plot.points.begin(), shown.plot.points.end(), [](const PlotView::Points& points) {
            return points.wrong && points.points == std::vector<QPointF>{QPointF(16, 1390)};
        }));
    QStringList rest;
    const auto sections = checked(draft, rest);
    EXPECT_GE(findingsIn(sections.back()), 1);
    EXPECT_FALSE(sections.back().findings.isEmpty());
}

TEST(BenchForm, TwoPointsAreNoLineAndTheReasonIsSaid) {
    JsonDraft draft = east();
    addPoints(draft, {{"4", "249"}, {"8", "502"}, {"12", "heavy"}});
    const FitShown shown = fitShown(draft);
    EXPECT_FALSE(shown.straight);
    EXPECT_TRUE(shown.plot.lines.empty());
    ASSERT_FALSE(shown.words.isEmpty());
    EXPECT_TRUE(shown.words.front().contains("2 points")) << shown.words.front().toStdString();
    EXPECT_FALSE(shown.residuals[2].has_value());
}

} // namespace
} // namespace seamclock
