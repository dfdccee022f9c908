// The table of what becomes of each fault, held against real welds: what it says the verdict finds
// the verdict must find, and nothing else; what it says a timer can't see must leave the verdict as
// it is. The bend test is the virtual bench's.
#include "tests/support/rehearsed_weld.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <set>

namespace seamclock::test {
namespace {

WeldOrder pe10() {
    return *orderFor("pe-hd-dvs2207-1-2005", 10, "east", 40);
}

Hand handWith(const FaultAccount& account, const WeldOrder& order) {
    const auto plan = makePlan(order.request, order.procedure.procedure, &order.bench.bench);
    EXPECT_TRUE(plan);
    Hand hand;
    const auto faults = singleFault(account.code, *plan);
    EXPECT_TRUE(faults) << (faults ? "" : faults.error().detail);
    hand.faults = faults.value_or(RehearseFaults{});
    return hand;
}

/// Whether the verdict says what the account says.
void holds(const FaultAccount& account, const Weld& weld) {
    const std::vector<std::string> found = findingsOf(weld);
    std::string all;
    for (const std::string& one : found) {
        all += " " + one;
    }
    SCOPED_TRACE(std::string(account.code) + ":" + all);
    if (account.finding.empty()) {
        EXPECT_EQ(toString(verdict(weld).word), "within limits");
        return;
    }
    const std::string told = std::string(account.grade) + " " + std::string(account.finding);
    EXPECT_NE(std::find(found.begin(), found.end(), told), found.end());
    for (const std::string& one : found) {
        EXPECT_TRUE(
            one == told || (!account.also.empty() && one == "out " + std::string(account.also)))
            << one;
    }
}

} // namespace

TEST(FaultAccounts, HaveEachFaultOnceWithASentence) {
    std::set<std::string_view> codes;
    for (const FaultAccount& account : faultAccounts()) {
        EXPECT_TRUE(codes.insert(account.code).second) << account.code;
        EXPECT_EQ(account.option.substr(0, 2), "--") << account.code;
        EXPECT_EQ(account.why.back(), '.') << account.code;
        EXPECT_EQ(account.finding.empty(), account.grade.empty()) << account.code;
        if (account.finding.empty() && account.code != "low_reading_corrected") {
            EXPECT_EQ(account.why.substr(0, 20), "A timer can't see it") << account.code;
        }
        const Hand hand = handWith(account, pe10());
        EXPECT_EQ(hand.faults.needBench(), account.needsBench) << account.code;
        EXPECT_NE(hand.faults, RehearseFaults{}) << account.code;
    }
    const auto none = singleFault("tea", WeldPlan{});
    ASSERT_FALSE(none);
    EXPECT_NE(
        none.error().detail.find("\"tea\" is not a fault; allowed: late_changeover, "),
        std::string::npos);
}

TEST(FaultAccounts, SayWhatTheVerdictFindsOfEachSingleFaultWithEveryProcedure) {
    int welds = 0;
    for (const char* procedure :
         {"pe-hd-dvs2207-1-2005", "pe-hd-dvs2207-1-2015", "pp-dvs2207-11", "pvdf-dvs2207-15"}) {
        for (const double thickness : {3.0, 5.0, 8.0, 10.0, 15.0, 20.0, 25.0}) {
            for (const char* bench : {"east", "west"}) {
                const auto order = orderFor(procedure, thickness, bench, 30);
                for (const FaultAccount& account : faultAccounts()) {
                    if (order && !account.needsBench) {
                        SCOPED_TRACE(
                            std::string(procedure) + " " + std::to_string(thickness) + " " + bench);
                        holds(account, rehearsed(*order, handWith(account, *order)));
                        ++welds;
                    }
                }
            }
        }
    }
    EXPECT_GT(welds, 300);
}

class OnTheBench : public testing::TestWithParam<std::size_t> {};

TEST_P(OnTheBench, EachSingleFaultHasTheVerdictAndTheBendTestOfItsAccount) {
    const FaultAccount& account = faultAccounts()[GetParam()];
    const WeldOrder order = pe10();
    const RehearsedWeld made = onBench(order, handWith(account, order));
    holds(account, made.weld);
    ASSERT_TRUE(made.bench);
    std::string bend;
    for (const StationBend& station : made.bench->bend.stations) {
        for (const BendReason reason : station.reasons) {
            bend += " " + std::string(toString(reason));
        }
    }
    if (account.bend != BendSays::Depends) {
        EXPECT_EQ(made.bench->bend.ductile, account.bend == BendSays::Nothing) << bend;
    }
}

INSTANTIATE_TEST_SUITE_P(
    Faults, OnTheBench, testing::Range(std::size_t{0}, faultAccounts().size()),
    [](const auto& index) { return std::string(faultAccounts()[index.param].code); });

} // namespace seamclock::test
