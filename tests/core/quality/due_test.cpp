// What is due, by dates that are counted here by hand.
#include "core/quality/due.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

DueFacts facts() {
    DueFacts out;
    Bench east;
    east.id = "east";
    east.name = "East bench";
    east.calibration = CalibrationNote{"2029-02-01", "2030-02-01", 0.5, "", {}, {}};
    Bench west;
    west.id = "west";
    west.name = "West bench";
    out.benches = {east, west};
    out.roster.people = {
        {"person:ilva", "Ilva Borrick", Role::Operator, true},
        {"person:gone", "Gero Nalt", Role::Operator, false},
        {"person:new", "Nela Vost", Role::Operator, true}};
    out.roster.certificate["person:ilva"] = {*readCertificate("PE-HD 3-20 mm", "2030-01-31")};
    out.roster.certificate["person:gone"] = {*readCertificate("PE-HD 3-20 mm", "2029-01-31")};
    out.shelf.attestations = {
        {"house-pp", "d1", "2016", {"plate", "gap"}, "person:oddo", "2029-01-10"},
        {"house-pp", "d2", "2016", {"plate"}, "person:oddo", "2029-12-01"}};
    return out;
}

TEST(Due, ListsWhatEndsSoonAndWhatIsPast) {
    // On 7 January 2030, within 30 days: to 6 February. The attestation of "gap" of 10 January 2029
    // holds 365 days, to 10 January 2030; "plate" was attested again in December.
    const auto due = dueWithin(facts(), "2030-01-07", 30);
    ASSERT_TRUE(due) << due.error().detail;
    ASSERT_EQ(due->size(), 5U);
    EXPECT_EQ(
        (*due)[0],
        (DueItem{DueKind::Calibration, "bench:west", "West bench", "spring scale", "", 0}));
    EXPECT_EQ((*due)[1], (DueItem{DueKind::Certificate, "person:new", "Nela Vost", "", "", 0}));
    EXPECT_EQ(
        (*due)[2],
        (DueItem{
            DueKind::Attestation, "procedure:house-pp", "house-pp", "1 value", "2030-01-10", 3}));
    EXPECT_EQ(
        (*due)[3], (DueItem{
                       DueKind::Certificate, "person:ilva", "Ilva Borrick", "PE-HD 3-20 mm",
                       "2030-01-31", 24}));
    EXPECT_EQ(
        (*due)[4],
        (DueItem{
            DueKind::Calibration, "bench:east", "East bench", "spring scale", "2030-02-01", 25}));
}

TEST(Due, CountsTheLastDayAsInTime) {
    const auto today = dueWithin(facts(), "2030-01-31", 0);
    ASSERT_TRUE(today);
    ASSERT_EQ(today->size(), 4U); // west, Nela, the attestation, and Ilva's last day
    EXPECT_EQ((*today)[3].days, 0);
    const auto after = dueWithin(facts(), "2030-02-01", 0);
    ASSERT_TRUE(after);
    EXPECT_EQ((*after)[3].days, -1);
    const auto early = dueWithin(facts(), "2029-12-31", 30);
    ASSERT_TRUE(early);
    EXPECT_EQ(early->size(), 3U); // 30 days from the last of December is the 30th of January
}

TEST(Due, NamesAnOperatorWithoutACertificateWhereTheShopKeepsAny) {
    const auto named = [](const DueFacts& of) {
        std::vector<std::string> out;
        const auto due = dueWithin(of, "2030-01-07", 0);
        EXPECT_TRUE(due);
        for (const DueItem& item : *due) {
            if (item.kind == DueKind::Certificate) {
                out.push_back(item.subject);
            }
        }
        return out;
    };
    DueFacts shop = facts();
    // Whoever only learns welds no seam, and a foreman needs none for his desk.
    shop.roster.people.push_back({"person:young", "Juno Pell", Role::Trainee, true});
    shop.roster.people.push_back({"person:oddo", "Oddo Krall", Role::Foreman, true});
    EXPECT_EQ(named(shop), (std::vector<std::string>{"person:new"}));
    shop.roster.certificate.clear();
    EXPECT_TRUE(named(shop).empty()) << "none is kept here";
}

// An attestation holds as long as its value says the same, and is none of what is not there.
TEST(Due, ListsTheAttestedValuesThatSaySomethingElseByNow) {
    DueFacts shop = facts();
    shop.benches.clear();
    shop.roster = {};
    Procedure house;
    house.id = "house-pp";
    house.plate = PlateWindow();
    house.plate->source.standing = Standing::Memory; // it was changed since
    house.referenceAmbientSource.standing = Standing::Attested;
    shop.procedures = {house};
    shop.shelf.attestations = {
        {"house-pp",
         "d2",
         "2016",
         {"plate", "reference_ambient", "no such cell"},
         "person:oddo",
         "2029-12-01"},
        {"left-behind", "d3", "2016", {"plate"}, "person:oddo", "2029-01-10"}};
    const auto due = dueWithin(shop, "2030-01-07", 365);
    ASSERT_TRUE(due) << due.error().detail;
    ASSERT_EQ(due->size(), 2U);
    EXPECT_EQ(
        (*due)[0],
        (DueItem{DueKind::Attestation, "procedure:house-pp", "house-pp", "1 value", "", 0}));
    EXPECT_EQ((*due)[1].date, "2030-12-01") << "365 days from the first of December 2029";
    EXPECT_EQ((*due)[1].what, "1 value");
}

TEST(Due, RefusesWhatIsNoDateAndNoSpan) {
    EXPECT_EQ(
        dueWithin(facts(), "2030-02-30", 30).error().detail,
        "\"2030-02-30\" is not a date; allowed: 0000-01-01 to 9999-12-31");
    EXPECT_EQ(
        dueWithin(facts(), "2030-01-07", 3'651).error().detail, "3651 days; allowed: 0 to 3650");
    EXPECT_FALSE(dueWithin(facts(), "2030-01-07", -1).has_value());
    EXPECT_EQ(dayNumber("1970-01-02"), 1);
    EXPECT_EQ(dayNumber("2000-03-01"), 11'017); // 30 years of 365 days, 7 leap days, 59 days
    EXPECT_EQ(dayNumber("2000-2-01"), std::nullopt);
}

} // namespace
} // namespace seamclock
