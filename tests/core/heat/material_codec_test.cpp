#include "core/heat/material_codec.h"

#include "tests/support/shipped.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>
#include <regex>

namespace seamclock {
namespace {

using test::replaced;

std::string pe() {
    return test::textOf(test::resource("materials/pe-hd.json"));
}

std::size_t lineOf(const std::string& text, const std::string& what) {
    const auto at = text.find(what);
    EXPECT_NE(at, std::string::npos) << what;
    const auto end = text.begin() + static_cast<std::ptrdiff_t>(std::min(at, text.size()));
    return 1 + static_cast<std::size_t>(std::count(text.begin(), end, '\n'));
}

TEST(MaterialFile, OfEachShippedPlasticIsReadWithASourceForEveryNumber) {
    std::size_t files = 0;
    const std::filesystem::path folder = test::resource("materials");
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() != ".json") {
            continue;
        }
        ++files;
        const auto read = readMaterialFile(entry.path().string());
        ASSERT_TRUE(read) << read.error().detail;
        EXPECT_EQ(read->id, entry.path().stem().string());
        EXPECT_FALSE(read->plastics.empty());
        // Every number of the text stands in an object that has its source.
        const std::string text = test::textOf(entry.path().string());
        const std::regex field(R"re("([a-zA-Z0-9_]+)": \{)re");
        std::size_t fields = 0;
        for (auto it = std::sregex_iterator(text.begin(), text.end(), field);
             it != std::sregex_iterator(); ++it, ++fields) {
            const auto source = read->sources.find((*it)[1]);
            ASSERT_NE(source, read->sources.end()) << (*it)[1];
            EXPECT_GE(source->second.text.size(), 10U) << (*it)[1];
        }
        EXPECT_EQ(fields, read->sources.size()) << entry.path();
        EXPECT_GE(fields, 10U);
        // Melting, where there is any, holds together with what conducts and flows.
        EXPECT_GT(read->meltingPoint(), 100);
        EXPECT_GT(read->density, read->meltDensity);
        EXPECT_GT(read->spread.at("conductivity_W_mK"), 0);
        EXPECT_GT(read->spread.at("consistency_Pa_s_n"), 0);
    }
    EXPECT_EQ(files, 4U);
}

TEST(MaterialFile, GivesItsNumbersInSi) {
    const auto read = readMaterial("pe", pe());
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_EQ(read->crystals->heat, 195e3);
    EXPECT_EQ(read->flow.activation, 27e3);
    EXPECT_EQ(read->crystals->meltsFrom, 120);
    EXPECT_EQ(read->crystals->meltsTo, 135);
    EXPECT_EQ(read->crystals->crystallisesTo, 112);
    EXPECT_EQ(read->crystals->crystallisesFrom, 120);
    EXPECT_DOUBLE_EQ(read->spread.at("consistency_Pa_s_n"), 0.6);
    EXPECT_EQ(read->spread.count("flow_index"), 0U);
    EXPECT_NEAR(read->conductivity.at(70), (0.46 + 0.33) / 2, 1e-12);
    EXPECT_EQ(read->conductivity.at(-40), 0.46); // level beyond the ends
    EXPECT_EQ(read->conductivity.at(300), 0.33);
    EXPECT_EQ(read->sources.at("heat_of_fusion_kJ_kg").standing, "seen");
}

TEST(MaterialFile, OfAPlasticWithoutCrystalsSaysFromWhereItFlows) {
    const auto read = readMaterialFile(test::resource("materials/pvc-u.json"));
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_FALSE(read->crystals);
    EXPECT_EQ(read->meltingPoint(), 170);
    EXPECT_EQ(read->gasFrom, 285);
}

TEST(MaterialFile, IsRefusedWithLineFieldAndReason) {
    struct Row {
        const char* was;
        const char* now;
        const char* field;
        const char* reason;
    };
    for (const Row& row : {
             Row{"\"value\": 950", "\"value\": 95", "density_kg_m3", "95 is outside 500 to 3000"},
             Row{"\"value\": 950", "\"value\": \"950\"", "density_kg_m3", "is not a number"},
             Row{"\"value\": 780", "\"value\": 990", "melt_density_kg_m3", "above the solid's"},
             Row{"\"C\": 120, \"value\": 0.33", "\"C\": 20, \"value\": 0.33", "conductivity_W_mK",
                 "20 is not above the one before"},
             Row{"\"C\": 120, \"value\": 0.33", "\"C\": 120, \"value\": 33", "conductivity_W_mK",
                 "33 is outside 0.05 to 2"},
             Row{"[{\"C\": 20, \"value\": 0.25}]", "[]", "melt_conductivity_W_mK", "is empty"},
             Row{"\"from\": 120, \"to\": 135", "\"from\": 135, \"to\": 120", "melting_C",
                 "120 is not above 135"},
             Row{"\"from\": 112, \"to\": 120", "\"from\": 122, \"to\": 140", "crystallisation_C",
                 "lies above melting_C"},
             Row{"\"value\": 0.45", "\"value\": 1.45", "flow_index", "1.45 is outside 0.1 to 1"},
             Row{"\"spread_percent\": 60", "\"spread_percent\": 95", "consistency_Pa_s_n",
                 "95 is outside 0 to 90"},
             Row{"\"format\": \"seamclock-material/1\"", "\"format\": \"seamclock-material/9\"",
                 "format", "is not \"seamclock-material/1\""},
             Row{"\"value\": 780, ", "\"value\": 780, \"colour\": 1, ", "melt_density_kg_m3",
                 "colour"},
             Row{"\"standing\": \"derived\"", "\"standing\": \"guessed\"", "flow_reference_C",
                 "is not one of seen, memory, common_practice, derived"},
         }) {
        const std::string text = replaced(pe(), row.was, row.now);
        const auto read = readMaterial("pe", text);
        ASSERT_FALSE(read) << row.now;
        EXPECT_EQ(read.error().code, ErrorCode::Malformed) << row.now;
        EXPECT_NE(read.error().detail.find(row.field), std::string::npos) << read.error().detail;
        EXPECT_NE(read.error().detail.find(row.reason), std::string::npos) << read.error().detail;
        const std::string line = std::to_string(lineOf(text, row.now));
        EXPECT_TRUE(
            std::regex_search(read.error().detail, std::regex("\\b" + line + "\\b")) ||
            std::string(row.field) == "crystallisation_C" ||
            std::string(row.field) == "flow_reference_C")
            << line << ": " << read.error().detail;
    }
}

TEST(MaterialFile, IsRefusedWithoutASourceOrAnyOfItsFields) {
    const std::string whole = pe();
    // A number without its source, or without what that is worth.
    for (const char* lost : {"\"source\"", "\"standing\""}) {
        const auto read = readMaterial("pe", replaced(whole, lost, "\"remark\""));
        ASSERT_FALSE(read);
        EXPECT_NE(read.error().detail.find("is missing"), std::string::npos) << read.error().detail;
    }
    const auto fields = readMaterial("pe", whole)->sources;
    for (const auto& [field, source] : fields) {
        const auto read =
            readMaterial("pe", replaced(whole, "\"" + field + "\": {", "\"x_" + field + "\": {"));
        ASSERT_FALSE(read) << field;
        EXPECT_NE(read.error().detail.find(field), std::string::npos) << read.error().detail;
    }
}

TEST(MaterialFile, IsUnreadableWhereThereIsNone) {
    const auto read = readMaterialFile(test::resource("materials/none.json"));
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().code, ErrorCode::Unreadable);
    EXPECT_EQ(readMaterial("x", "{").error().code, ErrorCode::Malformed);
    EXPECT_FALSE(readMaterial("x", ""));
    EXPECT_FALSE(readMaterial("x", "[]"));
}

} // namespace
} // namespace seamclock
