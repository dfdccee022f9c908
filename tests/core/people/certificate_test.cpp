// That a certificate has a scope (materials, thickness) and an end is the trade's; how its line is
// written is our own.
#include "core/people/certificate.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

Certificate good() {
    return {{"PE-HD", "PP"}, 3'000, 20'000, "2031-06-30"};
}

TEST(Certificate, IsReadFromALineAndWrittenBack) {
    const auto read = readCertificate("PE-HD, PP 3-20 mm until 2031-06-30");
    ASSERT_TRUE(read) << read.error().detail;
    EXPECT_EQ(*read, good());
    EXPECT_EQ(scopeOf(*read), "PE-HD, PP 3-20 mm");
    const auto fine = readCertificate(" PVDF   2.5-12.75 mm ", "2032-02-29");
    ASSERT_TRUE(fine) << fine.error().detail;
    EXPECT_EQ(*fine, (Certificate{{"PVDF"}, 2'500, 12'750, "2032-02-29"}));
    EXPECT_EQ(*readCertificate(scopeOf(*fine), fine->until), *fine);
}

TEST(Certificate, WhatIsNoneIsRefusedInOneSentence) {
    const std::pair<const char*, const char*> wrong[] = {
        {"", "2031-06-30"},
        {"mm", "2031-06-30"},
        {"PE-HD 3-20", "2031-06-30"},
        {"PE-HD 3 mm", "2031-06-30"},
        {"3-20 mm", "2031-06-30"},
        {"PE-HD, 3-20 mm", "2031-06-30"},
        {"PE-HD, , PP 3-20 mm", "2031-06-30"},
        {"PE/HD 3-20 mm", "2031-06-30"},
        {"PE-HD x-20 mm", "2031-06-30"},
        {"PE-HD 3-20 mm", "2031-02-29"},
        {"PE-HD 3-20 mm", "2031-6-30"},
        {"PE-HD 3-20 mm", "30.06.2031"},
        {"PE-HD 3-20 mm", ""}};
    for (const auto& [scope, until] : wrong) {
        const auto read = readCertificate(scope, until);
        ASSERT_FALSE(read) << scope << ", " << until;
        EXPECT_EQ(read.error().code, ErrorCode::Malformed) << scope << ", " << until;
        EXPECT_NE(read.error().detail.find("allowed: "), std::string::npos);
        EXPECT_EQ(read.error().detail.find('\n'), std::string::npos);
    }
    for (const char* scope : {"PE-HD 20-3 mm", "PE-HD 0-20 mm", "PE-HD 3-1001 mm"}) {
        const auto read = readCertificate(scope, "2031-06-30");
        ASSERT_FALSE(read) << scope;
        EXPECT_EQ(read.error().code, ErrorCode::OutOfRange) << read.error().detail;
    }
    EXPECT_FALSE(readCertificate("PE-HD 3-20 mm"));
    EXPECT_FALSE(readCertificate(std::string(10'000, 'a') + " 3-20 mm", "2031-06-30"));
}

TEST(Certificate, HoldsForItsPersonItsSheetsAndToTheEndOfItsLastDay) {
    using State = CertificateState;
    const std::map<std::string, HeldCertificates> known{{"person:a", {good()}}};
    const auto state = [&](const char* person, const char* material, std::int64_t um,
                           const char* day) {
        return certificateFor(known, person, material, um, day);
    };
    EXPECT_EQ(state("person:a", "PE-HD", 3'000, "2031-06-30"), State::Valid);
    EXPECT_EQ(state("person:a", "PP", 20'000, "2030-01-07"), State::Valid);
    EXPECT_EQ(state("person:a", "PE-HD", 2'999, "2030-01-07"), State::OutOfScope);
    EXPECT_EQ(state("person:a", "PE-HD", 20'001, "2030-01-07"), State::OutOfScope);
    EXPECT_EQ(state("person:a", "PVDF", 8'000, "2030-01-07"), State::OutOfScope);
    EXPECT_EQ(state("person:a", "PE-HD", 8'000, "2031-07-01"), State::Expired);
    EXPECT_EQ(state("person:b", "PE-HD", 8'000, "2030-01-07"), State::Missing);
    EXPECT_EQ(state("", "PE-HD", 8'000, "2030-01-07"), State::Missing) << "nobody said who it is";
    EXPECT_EQ(certificateFor({}, "person:b", "PE-HD", 8'000, "2030-01-07"), State::NotKept);
}

// A welder has a paper for PE-HD and one for PP, each with its own last day.
TEST(Certificate, OneForAnotherMaterialStandsBesideIt) {
    using State = CertificateState;
    const auto told = [](const char* line) { return *readCertificate(line); };
    HeldCertificates held;
    note(held, told("PE-HD 3-20 mm until 2027-06-30"));
    note(held, told("PP 3-20 mm until 2029-06-30"));
    ASSERT_EQ(held.size(), 2U);
    const auto state = [&](const char* material, const char* day) {
        return certificateFor({{"person:a", held}}, "person:a", material, 8'000, day);
    };
    EXPECT_EQ(state("PE-HD", "2027-06-30"), State::Valid);
    EXPECT_EQ(state("PE-HD", "2027-07-01"), State::Expired);
    EXPECT_EQ(state("PP", "2027-07-01"), State::Valid);
    EXPECT_EQ(state("PVDF", "2027-07-01"), State::OutOfScope);
    EXPECT_EQ(state("PVDF", "2029-07-01"), State::Expired) << "nothing holds any more";
    EXPECT_EQ(heldFor(held, "PP", 8'000)->until, "2029-06-30");
    EXPECT_EQ(heldFor(held, "PP", 21'000), nullptr);
    // For its materials a new one alone counts: no older one goes on covering more.
    note(held, told("PP, PVDF 5-10 mm until 2031-06-30"));
    EXPECT_EQ(
        held,
        (HeldCertificates{
            told("PE-HD 3-20 mm until 2027-06-30"), told("PP, PVDF 5-10 mm until 2031-06-30")}));
    note(held, told("PP 3-20 mm until 2032-06-30")); // and the other one is still for PVDF
    EXPECT_EQ(
        held, (HeldCertificates{
                  told("PE-HD 3-20 mm until 2027-06-30"), told("PVDF 5-10 mm until 2031-06-30"),
                  told("PP 3-20 mm until 2032-06-30")}));
}

TEST(Certificate, WhatIsWrongWithItIsAFlagOfItsOwn) {
    EXPECT_EQ(flagOf(CertificateState::NotKept), "");
    EXPECT_EQ(flagOf(CertificateState::Valid), "");
    EXPECT_EQ(flagOf(CertificateState::Missing), "certificate_missing");
    EXPECT_EQ(flagOf(CertificateState::Expired), "certificate_expired");
    EXPECT_EQ(flagOf(CertificateState::OutOfScope), "certificate_out_of_scope");
}

} // namespace
} // namespace seamclock
