// Every procedure and bench that ships, through the draft that Set-up edits: nothing of it changes,
// and a value that was changed is the only one that differs.
#include "core/base/json_draft.h"
#include "core/bench/bench_codec.h"
#include "core/procedure/procedure_codec.h"

#include <filesystem>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

const std::string kResources = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/";

TEST(ProcedureDraft, EveryShippedProcedureIsTheSameBehindIt) {
    const auto all = readProcedureFolder(kResources + "procedures");
    ASSERT_TRUE(all);
    ASSERT_GE(all->size(), 4U);
    for (const ProcedureDocument& one : *all) {
        const auto draft = JsonDraft::read(one.procedure.id, one.bytes);
        ASSERT_TRUE(draft);
        const auto again = readProcedure(one.procedure.id, draft->text());
        ASSERT_TRUE(again) << again.error().detail;
        EXPECT_EQ(again->procedure, one.procedure) << one.procedure.id;
    }
}

TEST(ProcedureDraft, EveryShippedBenchIsTheSameBehindIt) {
    int looked = 0;
    for (const auto& entry : std::filesystem::directory_iterator(kResources + "demo")) {
        if (entry.path().filename().string().rfind("bench-", 0) != 0) {
            continue;
        }
        ++looked;
        const auto bench = readBenchFile(entry.path().string());
        ASSERT_TRUE(bench);
        const auto draft = JsonDraft::read("bench", bench->bytes);
        ASSERT_TRUE(draft);
        const auto again = readBench("bench", draft->text());
        ASSERT_TRUE(again) << again.error().detail;
        EXPECT_EQ(again->bench, bench->bench);
    }
    EXPECT_GE(looked, 2);
}

TEST(ProcedureDraft, OneChangedValueIsTheOnlyDifference) {
    const auto shipped = readProcedureFile(kResources + "procedures/pp-dvs2207-11.json");
    ASSERT_TRUE(shipped);
    auto draft = JsonDraft::read("pp", shipped->bytes);
    ASSERT_TRUE(draft);
    draft->setNumber("/plate/max_C", "218");
    const auto changed = readProcedure("pp", draft->text());
    ASSERT_TRUE(changed) << changed.error().detail;
    Procedure expected = shipped->procedure;
    expected.plate->max = Temperature::celsius(218);
    EXPECT_EQ(changed->procedure, expected);
}

TEST(ProcedureDraft, WhatIsNoNumberIsNamedByTheCheckWithItsRange) {
    const auto shipped = readProcedureFile(kResources + "procedures/pp-dvs2207-11.json");
    ASSERT_TRUE(shipped);
    auto draft = JsonDraft::read("pp", shipped->bytes);
    ASSERT_TRUE(draft);
    draft->setNumber("/plate/max_C", "hot");
    const auto findings = checkProcedure("pp", draft->text());
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings.front().field, "/plate/max_C");
    EXPECT_EQ(findings.front().reason.rfind("\"hot\" is not a number; allowed 100 to 320", 0), 0U)
        << findings.front().reason;
}

} // namespace
} // namespace seamclock
