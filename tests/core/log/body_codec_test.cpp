#include "core/log/body_codec.h"

#include "core/log/fact_codec.h"
#include "tests/support/fake_clock.h"
#include "tests/support/log_samples.h"
#include "tests/support/shipped.h"

#include <gtest/gtest.h>
#include <set>

namespace seamclock {
namespace {

using test::replaced;

// Written by hand from the contract's description of a body, not by this program.
const std::string kBody =
    R"({"at":{"boot":"boot-1","boot_ms":5000000,"offset_min":60,"utc_ms":1893996000000},"by":"station",)"
    R"("d":{"count":3},"kind":"rows_spilled","n":12,"subject":"station","v":1})";

TEST(FactCodec, WritesTheBodyThatWasWrittenByHand) {
    const Fact fact{test::FakeClock().now(), "station", "station", 12, RowsSpilled{3}};
    EXPECT_EQ(toBody(fact).value(), kBody);
    EXPECT_EQ(factFromBody(kBody).value(), fact);
}

TEST(FactCodec, BringsEveryFormBackAsItWas) {
    const std::string hash(64, '5');
    PracticeMade made;
    made.take = hash;
    made.lessonDoc = std::string(64, '6');
    made.lesson = "pe10-first";
    made.title = "A first good weld";
    made.weld = "weld:00000000-0000-4000-8000-000000000001";
    made.verdict = "out of limits";
    made.judged = 9;
    made.inLimits = 8;
    made.reaction = Milliseconds(410);
    made.readingErrors = 1;
    made.orderErrors = 2;
    made.noticed = 3;
    made.toNotice = 4;
    made.ductile = true;
    made.lapses = {"slammed", "film_left"};
    PracticeMade unanswered = made;
    unanswered.reaction.reset();
    unanswered.ductile = false;
    unanswered.lapses.clear();
    CouponTested tensile;
    tensile.test = "tensile";
    tensile.standard = "EN 12814-2";
    tensile.material = "PE-HD";
    tensile.thicknessUm = 8'000;
    tensile.procedure = "house-pp";
    tensile.weld = "weld:00000000-0000-4000-8000-000000000001";
    tensile.weldedPa = {27'400'000, 28'000'000};
    tensile.parentPa = {30'100'000};
    CouponTested bend;
    bend.test = "bend";
    bend.welder = "person:k-7";
    bend.angleMilli = {160'000, 97'500};
    bend.ramUm = {0};
    bend.cracked = {0, 1};
    bend.remark = "at the root";
    bend.reason = "typed wrongly";
    const std::vector<std::pair<std::string, FactDetail>> all = {
        {"station", ProgramStarted{}},
        {"station", ProgramStopped{}},
        {"station", SoundLost{}},
        {"station", SoundBack{}},
        {"station", ClockJumped{Milliseconds(-7200000)}},
        {"station", RowsSpilled{1}},
        {"station", RowsJoined{INT64_MAX}},
        {"station", LogImported{"7f", 12, hash}},
        {"station", HeadSigned{12, hash, hash, hash + hash}},
        {"station", KeySet{hash, "first"}},
        {"person:k-7", KeySet{hash, "forgotten"}},
        {"person:k-7", PersonSet{"In\xC3\xA9s Falk", "foreman", false}},
        {"person:k-7", PinChanged{"changed"}},
        {"person:k-7", CertificateNoted{"PE-HD, PP 3-20 mm", "2031-06-30"}},
        {"day:2030-01-07", DaySealed{"7f", 12, hash, hash, hash + hash}},
        {"bench:east", BenchSet{hash}},
        {"procedure:house-pp", ProcedureSet{hash}},
        {"procedure:house-pp", ProcedureAttested{hash, "2016-03", {"plate", "soak_s.table[1..4]"}}},
        {"procedure:house-pp", AttestationWithdrawn{{}, "the copy is older", {"plate"}}},
        {"procedure:house-pp", AttestationWithdrawn{hash, "wrong line", {}}},
        {"seam:00000000-0000-4000-8000-000000000001", SeamSet{hash}},
        {"practice:00000000-0000-4000-8000-000000000001", made},
        {"practice:00000000-0000-4000-8000-000000000002", unanswered},
        {"coupon:00000000-0000-4000-8000-000000000001", tensile},
        {"coupon:00000000-0000-4000-8000-000000000002", bend}};
    std::set<std::string_view> kinds;
    for (const auto& [subject, detail] : all) {
        kinds.insert(kindOf(detail));
    }
    ASSERT_EQ(kinds.size(), std::variant_size_v<FactDetail>);
    for (const auto& [subject, detail] : all) {
        const Fact fact{test::FakeClock().now(), "person:k-7", subject, 1, detail};
        const auto body = toBody(fact);
        ASSERT_TRUE(body.has_value());
        const auto back = factFromBody(*body);
        ASSERT_TRUE(back.has_value()) << back.error().detail;
        EXPECT_EQ(*back, fact) << *body;
    }
}

TEST(FactCodec, RefusesCellsThatAreNoTexts) {
    const Fact fact{
        test::FakeClock().now(), "person:k-7", "procedure:pp", 1,
        ProcedureAttested{std::string(64, '5'), "1", {"plate"}}};
    const std::string body = toBody(fact).value();
    ASSERT_TRUE(factFromBody(body));
    for (const char* now : {R"("cells":[7])", R"("cells":"plate")", R"("cells":[["plate"]])"}) {
        EXPECT_FALSE(factFromBody(replaced(body, R"("cells":["plate"])", now))) << now;
    }
}

TEST(FactCodec, RefusesWhatIsNoFact) {
    const std::vector<std::pair<std::string, std::string>> wrong = {
        {R"("count":3)", R"("count":3,"more":1)"},
        {R"("count":3)", R"("count":"3")"},
        {R"({"count":3})", "{}"},
        {R"("kind":"rows_spilled")", R"("kind":"coffee_made")"},
        {R"("kind":"rows_spilled")", R"("kind":"bench_set")"},
        {R"("subject":"station")", R"("subject":"bench:east")"},
        {R"("kind":"rows_spilled")", R"("kind":"head_signed")"}};
    for (const auto& [was, now] : wrong) {
        EXPECT_FALSE(factFromBody(replaced(kBody, was, now)).has_value()) << now;
    }
}

TEST(Envelope, TellsWhatEveryBodyHas) {
    const auto read = readEnvelope(kBody);
    ASSERT_TRUE(read.has_value()) << read.error().detail;
    EXPECT_EQ(read->at, test::FakeClock().now());
    EXPECT_EQ(read->by, "station");
    EXPECT_EQ(read->subject, "station");
    EXPECT_EQ(read->n, 12);
    EXPECT_EQ(read->kind, "rows_spilled");
    EXPECT_TRUE(read->documents.empty());
}

TEST(Envelope, NamesTheDocumentsOfAWeld) {
    const auto read = readEnvelope(test::rowsOf(test::unfinishedWeld(3, 1)).front().body);
    ASSERT_TRUE(read.has_value()) << read.error().detail;
    const auto documents = test::sampleDocuments();
    EXPECT_EQ(
        read->documents, (std::vector<std::string>{documents[0].sha256, documents[1].sha256}));
}

TEST(Envelope, RefusesWhatIsNoBody) {
    const std::vector<std::pair<std::string, std::string>> wrong = {
        {R"("n":12)", R"("n":0)"},
        {R"("n":12)", R"("n":12.5)"},
        {R"("n":12)", R"("n":"12")"},
        {R"("n":12)", R"("n": 12)"},
        {R"("v":1)", R"("v":2)"},
        {R"(,"v":1)", ""},
        {R"("v":1})", R"("v":1,"w":1})"},
        {R"("v":1})", R"("v":1}x)"},
        {R"("v":1})", R"("v":1)"},
        {R"("by":"station",)", R"("by":null,)"},
        {R"("boot":"boot-1",)", ""},
        {R"("utc_ms":1893996000000)", R"("utc_ms":"now")"},
        {R"("offset_min":60)", R"("offset_min":1441)"},
        {R"("subject":"station")", R"("subject":"station:2")"},
        {R"({"count":3})", "[]"},
        {R"("kind":"rows_spilled","n":12)", R"("n":12,"kind":"rows_spilled")"}};
    for (const auto& [was, now] : wrong) {
        const auto read = readEnvelope(replaced(kBody, was, now));
        EXPECT_FALSE(read.has_value()) << now;
    }
    EXPECT_FALSE(readEnvelope("").has_value());
    EXPECT_FALSE(readEnvelope("[]").has_value());
    EXPECT_FALSE(readEnvelope(std::string(300, '[')).has_value());
}

TEST(Envelope, KnowsTheKindsThatLaterPartsWrite) {
    for (const auto& [kind, subject] : std::vector<std::pair<std::string, std::string>>{
             {"person_set", "person:k-7"},
             {"pin_changed", "person:k-7"},
             {"certificate_noted", "person:k-7"},
             {"calibration_set", "bench:east"},
             {"procedure_set", "procedure:house-pp"},
             {"procedure_attested", "procedure:house-pp"},
             {"attestation_withdrawn", "procedure:house-pp"},
             {"coupon_tested", "seam:1"},
             {"coupon_tested", "coupon:1"},
             {"head_signed", "station"},
             {"log_imported", "station"},
             {"day_sealed", "day:2030-01-07"}}) {
        EXPECT_TRUE(fits(kind, subject)) << kind;
        EXPECT_FALSE(fits(kind, "weld:1")) << kind;
    }
    EXPECT_TRUE(fits("clock_jumped", "station"));
    EXPECT_TRUE(fits("clock_jumped", "weld:1"));
    EXPECT_FALSE(fits("bench_set", "bench:"));
    EXPECT_FALSE(fits("weld_opened", "station"));
}

} // namespace
} // namespace seamclock
