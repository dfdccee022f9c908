// Files that a disk or a hand has mangled: whatever the bytes, reading them ends with a value or
// one sentence. A fixed seed and a bounded number of rounds; the sanitize stage runs it too.
#include "app/cli/numbers.h"
#include "core/bench/bench_codec.h"
#include "core/bench/calibration.h"
#include "core/plan/plan.h"
#include "core/plan/plan_codec.h"
#include "core/procedure/procedure_codec.h"
#include "core/report/weld_card.h"
#include "tests/app/cli/run_cli.h"

#include <cstdint>
#include <gtest/gtest.h>

namespace seamclock {
namespace {

constexpr int kRounds = 400;

/// The minimal standard generator of Park and Miller, so that every machine sees the same bytes.
class Chance {
public:
    explicit Chance(std::uint32_t seed) : m_state(seed) {}
    std::size_t below(std::size_t bound) {
        m_state = static_cast<std::uint32_t>(std::uint64_t{m_state} * 48271U % 2147483647U);
        return m_state % bound;
    }

private:
    std::uint32_t m_state;
};

std::string resource(const char* name) {
    return test::fileText(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/" + name);
}

/// One to four injuries: a byte changed, a stretch cut out or doubled, a number replaced, the end
/// cut off.
std::string mangled(std::string text, Chance& chance) {
    constexpr const char* kNumbers[] = {"-1",        "1e308", "1e999", "0",  "NaN",
                                        "null",      "\"x\"", "[]",    "{}", "99999999999999999999",
                                        "0.0000001", "true"};
    for (std::size_t injuries = 1 + chance.below(4); injuries > 0 && !text.empty(); --injuries) {
        const std::size_t at = chance.below(text.size());
        const std::size_t length = std::min(1 + chance.below(40), text.size() - at);
        switch (chance.below(5)) {
        case 0:
            text[at] = static_cast<char>(chance.below(256));
            break;
        case 1:
            text.erase(at, length);
            break;
        case 2:
            text.insert(at, text.substr(at, length));
            break;
        case 3: {
            const std::size_t digit = text.find_first_of("0123456789", at);
            if (digit != std::string::npos) {
                const std::size_t end = text.find_first_not_of("0123456789.", digit);
                text.replace(
                    digit, std::min(end, text.size()) - digit,
                    kNumbers[chance.below(std::size(kNumbers))]);
            }
            break;
        }
        case 4:
            text.resize(at);
            break;
        }
    }
    return text;
}

std::string junk(Chance& chance) {
    std::string bytes;
    for (std::size_t left = chance.below(600); left > 0; --left) {
        bytes += static_cast<char>(chance.below(256));
    }
    return bytes;
}

/// Whatever was read is used as the program would use it.
void usePlan(const Procedure& procedure, const Bench* bench) {
    PlanRequest request;
    request.thickness = millimetres(10);
    request.lengths = {millimetres(900)};
    const auto plan = makePlan(request, procedure, bench);
    if (plan) {
        EXPECT_FALSE(weldCard(*plan, bench).empty());
        EXPECT_FALSE(planReportJson(*plan).empty());
    } else {
        EXPECT_FALSE(plan.error().detail.empty());
    }
}

TEST(MangledFiles, OfAProcedureGiveFindingsOrAProcedure) {
    Chance chance(20300107);
    const std::string sound = resource("procedures/pvdf-dvs2207-15.json");
    int read = 0;
    for (int round = 0; round < kRounds; ++round) {
        const std::string text = round % 8 == 0 ? junk(chance) : mangled(sound, chance);
        const auto procedure = readProcedure("mangled", text);
        const auto findings = checkProcedure("mangled", text);
        EXPECT_EQ(procedure.has_value(), findings.empty()) << "round " << round;
        if (procedure) {
            ++read;
            usePlan(procedure->procedure, nullptr);
        } else {
            EXPECT_EQ(procedure.error().detail.find('\n'), std::string::npos) << "round " << round;
        }
    }
    EXPECT_GT(read, 0) << "some injuries are harmless, as inside a sentence";
    EXPECT_LT(read, kRounds);
}

TEST(MangledFiles, OfABenchGiveASentenceOrABench) {
    Chance chance(20300108);
    const auto procedure = readProcedure("pe", resource("procedures/pe-hd-dvs2207-1-2005.json"));
    ASSERT_TRUE(procedure.has_value());
    int read = 0;
    for (int round = 0; round < kRounds; ++round) {
        const std::string text =
            round % 8 == 0 ? junk(chance) : mangled(resource("demo/bench-west.json"), chance);
        const auto bench = readBench("mangled", text);
        if (bench) {
            ++read;
            usePlan(procedure->procedure, &bench->bench);
        } else {
            EXPECT_FALSE(bench.error().detail.empty());
            EXPECT_EQ(bench.error().detail.find('\n'), std::string::npos) << "round " << round;
        }
    }
    EXPECT_GT(read, 0);
    EXPECT_LT(read, kRounds);
}

TEST(MangledFiles, OfACalibrationGiveASentenceOrAFit) {
    Chance chance(20300109);
    for (int round = 0; round < kRounds; ++round) {
        const std::string text =
            round % 8 == 0 ? junk(chance)
                           : mangled("reading_mm,force_N\n2,0\n4,180\n7,450\n12,900\n", chance);
        const auto fit = fitScale("mangled", text);
        if (fit) {
            EXPECT_GT(fit->rate, 0);
        } else {
            EXPECT_FALSE(fit.error().detail.empty());
        }
    }
}

TEST(MangledFiles, NeverMakeTheProgramCrash) {
    Chance chance(20300110);
    const test::Cli cli;
    for (int round = 0; round < 15; ++round) {
        const std::string bench =
            cli.file("bench.json", mangled(resource("demo/bench-east.json"), chance));
        const std::string procedure =
            cli.file("procedure.json", mangled(resource("procedures/pp-dvs2207-11.json"), chance));
        for (const std::string& words :
             {"plan --thickness 10 --length 900 --procedure " + procedure, "bench show " + bench,
              "procedures check " + procedure,
              "plan --procedure pp-dvs2207-11 --thickness 10 --length 900 --bench " + bench}) {
            const test::Ran ran = cli.run(words);
            EXPECT_GE(ran.status, 0);
            EXPECT_LE(ran.status, 2) << "round " << round << ": " << words << "\n" << ran.err;
            EXPECT_LE(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
        }
    }
}

} // namespace
} // namespace seamclock
