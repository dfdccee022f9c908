#include "core/session/office.h"

#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "core/session/job_book.h"
#include "core/session/session.h"
#include "core/shift/job_csv.h"
#include "tests/support/demo_order.h"
#include "tests/support/fake_clock.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <algorithm>
#include <gtest/gtest.h>
#include <tuple>

namespace seamclock {
namespace {

class OfficeTest : public ::testing::Test {
protected:
    void SetUp() override { start(); }

    void start() {
        auto opened = LogWriter<Production>::open(folder.file("a.log"), clock);
        ASSERT_TRUE(opened.has_value()) << opened.error().detail;
        writer.emplace(std::move(*opened));
        auto made = Office::open(*writer, credentials, clock);
        ASSERT_TRUE(made.has_value()) << made.error().detail;
        office.emplace(std::move(*made));
    }
    void restart() {
        ASSERT_TRUE(writer->flush().has_value());
        office.reset();
        writer.reset();
        start();
    }
    static Pin pin(const char* digits) { return std::move(*Pin::read(digits)); }
    Access enter(const std::string& person, const char* digits) {
        auto access = office->enter(person, pin(digits));
        EXPECT_TRUE(access.has_value()) << (access ? "" : access.error().detail);
        return std::move(*access);
    }
    Access foreman() {
        EXPECT_TRUE(office->addFirstForeman("Ines Falk", pin("123456")).has_value());
        return enter("person:ines-falk", "123456");
    }
    std::vector<std::string> facts() {
        EXPECT_TRUE(writer->flush().has_value());
        SQLite::Database database(writer->path(), SQLite::OPEN_READONLY);
        SQLite::Statement query(
            database, "SELECT subject || ' ' || kind || ' by ' || (body->>'$.by') FROM event "
                      "WHERE subject <> 'station' ORDER BY seq");
        std::vector<std::string> out;
        while (query.executeStep()) {
            out.push_back(query.getColumn(0).getString());
        }
        return out;
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    Credentials credentials{folder.file("a.log.credentials")};
    std::optional<LogWriter<Production>> writer;
    std::optional<Office> office;
};

TEST_F(OfficeTest, SeamsOfAJobAreKeptInTheLogUntilTheyAreTakenAway) {
    const Access ines = foreman();
    JobCsv read =
        readJobCsv("label,what,material,procedure,bench,thickness_mm,length_mm,drag_N,"
                   "rewelds_allowed,sheet_1_batch,sheet_2_grade\n"
                   "S1,\"floor, left\",PE-HD,pe-hd-dvs2207-1-2005,east,15,1130,55,2,B-1,\n"
                   "S2,,PP,pp-dvs2207-11,,8.5,620+580,,,,natural\n");
    ASSERT_TRUE(read.isSound());
    const auto seams = [&] {
        EXPECT_TRUE(writer->flush());
        auto reader = LogReader::open(writer->path());
        const auto kept =
            reader ? readJobSeams(*reader) : Result<KeptSeams>(fail(ErrorCode::Unreadable, ""));
        EXPECT_TRUE(kept) << (kept ? "" : kept.error().detail);
        EXPECT_TRUE(kept && kept->unread.empty());
        return kept ? kept->seams : std::vector<JobSeam>();
    };
    EXPECT_EQ(office->addSeams(ines.who, read.seams).error().code, ErrorCode::Malformed)
        << "no job is named";
    for (JobSeam& seam : read.seams) {
        seam.job = "QV-131";
        seam.part = "Brine settling tank";
    }
    ASSERT_TRUE(office->addSeams(ines.who, read.seams));
    EXPECT_EQ(
        office->addSeams(ines.who, read.seams).error().detail,
        "the job \"QV-131\" has a seam \"S1\" already; allowed: each label once in a job");
    auto kept = seams();
    ASSERT_EQ(kept.size(), 2U);
    for (std::size_t i = 0; i < 2; ++i) {
        EXPECT_EQ(kept[i].id.rfind("seam:", 0), 0U);
        const JobSeam& is = kept[i];
        const JobSeam& was = read.seams[i];
        EXPECT_EQ(nameOf(is), nameOf(was));
        EXPECT_EQ(is.part, "Brine settling tank");
        EXPECT_EQ(
            std::tie(is.what, is.procedure, is.bench, is.thicknessMm, is.lengthsMm, is.dragN),
            std::tie(
                was.what, was.procedure, was.bench, was.thicknessMm, was.lengthsMm, was.dragN));
        EXPECT_EQ(
            std::tie(is.ambientC, is.shielded, is.beadPlaces, is.rewelds, is.sheets),
            std::tie(was.ambientC, was.shielded, was.beadPlaces, was.rewelds, was.sheets));
    }
    ASSERT_TRUE(office->withdrawSeams(ines.who, {kept[0].id}));
    EXPECT_EQ(office->withdrawSeams(ines.who, {kept[0].id}).error().code, ErrorCode::Missing);
    ASSERT_EQ(seams().size(), 1U);
    EXPECT_EQ(seams()[0].label, "S2");
    EXPECT_TRUE(office->addSeams(ines.who, {read.seams[0]})) << "its label is free again";
    ASSERT_TRUE(office->addPerson(ines.who, "Jo Brandt", Role::Operator, pin("7777")));
    const Access jo = enter("person:jo-brandt", "7777");
    EXPECT_EQ(office->addSeams(jo.who, {read.seams[1]}).error().code, ErrorCode::Refused);
    EXPECT_EQ(office->withdrawSeams(jo.who, {seams()[0].id}).error().code, ErrorCode::Refused);
    ASSERT_TRUE(writer->flush());
    const auto whole = verifyLog(writer->path());
    ASSERT_TRUE(whole) << whole.error().detail;
    EXPECT_TRUE(whole->ok) << (whole->finding ? whole->finding->reason : "");
}

TEST_F(OfficeTest, ASeamThatCannotBeReadTakesNoOtherWithIt) {
    const Access ines = foreman();
    JobCsv read = readJobCsv("label,material,procedure,thickness_mm,length_mm\n"
                             "S1,PE-HD,pe-hd-dvs2207-1-2005,15,1130\n"
                             "S2,PE-HD,pe-hd-dvs2207-1-2005,15,1180\n"
                             "S3,PE-HD,pe-hd-dvs2207-1-2005,15,1200\n");
    ASSERT_TRUE(read.isSound());
    for (JobSeam& seam : read.seams) {
        seam.job = "QV-131";
    }
    ASSERT_TRUE(office->addSeams(ines.who, read.seams));
    ASSERT_TRUE(writer->flush());
    const auto kept = [&] {
        auto reader = LogReader::open(writer->path());
        EXPECT_TRUE(reader);
        return readJobSeams(*reader).value();
    };
    const std::vector<JobSeam> before = kept().seams;
    ASSERT_EQ(before.size(), 3U);
    {
        test::BehindTheBack back(writer->path());
        back.database().exec(
            "UPDATE event SET body = replace(body, '\"v\":', '\"w\":') WHERE subject = '" +
            before[0].id + "'");
        back.database().exec(
            "DELETE FROM document WHERE kind = 'seam' AND sha256 IN (SELECT body->>'$.d.doc' FROM "
            "event WHERE subject = '" +
            before[1].id + "')");
    }
    const KeptSeams after = kept();
    ASSERT_EQ(after.seams.size(), 1U);
    EXPECT_EQ(after.seams[0].label, "S3");
    ASSERT_EQ(after.unread.size(), 2U);
    EXPECT_EQ(after.unread[0], writer->path() + ": a fact of a seam can't be read");
    EXPECT_EQ(
        after.unread[1], writer->path() + ": the document of " + before[1].id + ": is not there");
}

TEST_F(OfficeTest, CouponsAreAForemansWordAndPutRightWithAReason) {
    const Access ines = foreman();
    CouponTested tested;
    tested.test = "tensile";
    tested.material = "PE-HD";
    tested.thicknessUm = 8'000;
    tested.weldedPa = {27'000'000, 28'000'000};
    const auto series = office->noteCoupons(ines.who, tested);
    ASSERT_TRUE(series) << series.error().detail;
    EXPECT_EQ(series->rfind("coupon:", 0), 0U);
    EXPECT_EQ(
        office->correctCoupons(ines.who, *series, tested).error().detail,
        "no reason is given; allowed: a few words why");
    tested.reason = "the scale was in kgf";
    EXPECT_EQ(office->noteCoupons(ines.who, tested).error().code, ErrorCode::Malformed);
    EXPECT_TRUE(office->correctCoupons(ines.who, *series, tested));
    EXPECT_EQ(
        office->correctCoupons(ines.who, "coupon:none", tested).error().detail,
        "there is no series \"coupon:none\"; allowed: one that coupons list shows");
    tested.weldedPa.clear();
    EXPECT_EQ(office->correctCoupons(ines.who, *series, tested).error().code, ErrorCode::Missing);
    const auto said = facts();
    EXPECT_EQ(
        std::count(said.begin(), said.end(), *series + " coupon_tested by person:ines-falk"), 2);
    EXPECT_TRUE(office->addPerson(ines.who, "Jo", Role::Operator, pin("4711")));
    const Access jo = enter("person:jo", "4711");
    EXPECT_EQ(office->noteCoupons(jo.who, tested).error().code, ErrorCode::Refused);
}

TEST_F(OfficeTest, TheFirstForemanComesByNobodysWordAndOnlyOnce) {
    EXPECT_TRUE(office->roster().people.empty());
    const auto tooShort = office->addFirstForeman("Ines Falk", pin("12345"));
    ASSERT_FALSE(tooShort.has_value());
    EXPECT_TRUE(office->roster().people.empty()) << "and is not half there";
    const auto first = office->addFirstForeman("Ines Falk", pin("123456"));
    ASSERT_TRUE(first.has_value()) << first.error().detail;
    EXPECT_EQ(first->id, "person:ines-falk");
    EXPECT_EQ(
        facts(),
        (std::vector<std::string>{
            "person:ines-falk person_set by station", "person:ines-falk pin_changed by station",
            "person:ines-falk key_set by station"}));
    EXPECT_EQ(office->addFirstForeman("Max", pin("123456")).error().code, ErrorCode::Conflict);
    restart();
    EXPECT_EQ(office->roster().people.size(), 1U);
    EXPECT_TRUE(office->enter("person:ines-falk", pin("123456")).has_value());
}

TEST_F(OfficeTest, AForemanAddsPeopleInHisName) {
    const Access ines = foreman();
    const auto jo = office->addPerson(ines.who, "Jo", Role::Operator, {});
    ASSERT_TRUE(jo.has_value()) << jo.error().detail;
    const auto lea = office->addPerson(ines.who, "Lea", Role::Operator, pin("4711"));
    ASSERT_TRUE(lea.has_value());
    EXPECT_EQ(office->enter("person:jo", pin("4711")).error().code, ErrorCode::Missing);
    EXPECT_TRUE(office->enter("person:lea", pin("4711")).has_value());
    const auto bare = office->addPerson(ines.who, "Max", Role::Foreman, {});
    EXPECT_EQ(bare.error().detail, "a foreman needs a PIN, which locks the key of the seal");
    const auto all = facts();
    EXPECT_EQ(all[3], "person:jo person_set by person:ines-falk");
    EXPECT_EQ(all[5], "person:lea pin_changed by person:ines-falk");
    EXPECT_EQ(all.size(), 6U);
}

TEST_F(OfficeTest, NobodyElseChangesAnything) {
    const Access ines = foreman();
    ASSERT_TRUE(office->addPerson(ines.who, "Lea", Role::Operator, pin("4711")).has_value());
    const Access lea = enter("person:lea", "4711");
    const auto before = facts();
    const Person risen{"person:lea", "Lea", Role::Foreman, true};
    const auto bench = test::orderOf(test::kDemoSeams[0]).bench;
    const auto procedure = test::orderOf(test::kDemoSeams[0]).procedure;
    for (const auto& refused :
         {office->addPerson(lea.who, "Eve", Role::Trainee, {}).error(),
          office->changePerson(lea.who, risen, pin("123456")).error(),
          office->givePin(lea.who, "person:ines-falk", pin("999999")).error(),
          office->setBench(lea.who, bench).error(),
          office->setProcedure(lea.who, procedure).error(), office->seal(lea).error()}) {
        EXPECT_EQ(refused.code, ErrorCode::Refused);
        EXPECT_EQ(refused.detail, "person:lea is no foreman; only a foreman may do that");
    }
    EXPECT_EQ(facts(), before);
}

// Proof holds as long as its role does: who was demoted meanwhile is refused.
TEST_F(OfficeTest, ProofOfAFormerForemanIsWorthNothing) {
    const Access ines = foreman();
    ASSERT_TRUE(office->addPerson(ines.who, "Max", Role::Foreman, pin("222222")).has_value());
    const Access max = enter("person:max", "222222");
    ASSERT_TRUE(office->changePerson(ines.who, {"person:max", "Max", Role::Operator, true}, {})
                    .has_value());
    EXPECT_FALSE(office->addPerson(max.who, "Eve", Role::Trainee, {}).has_value());
    EXPECT_FALSE(office->seal(max).has_value());
    ASSERT_TRUE(office->changePerson(ines.who, {"person:max", "Max", Role::Operator, false}, {})
                    .has_value());
    EXPECT_EQ(office->enter("person:max", pin("222222")).error().detail, "Max has left the shop");
    EXPECT_EQ(
        office->changePerson(ines.who, {"person:ines-falk", "Ines", Role::Operator, true}, {})
            .error()
            .code,
        ErrorCode::Refused)
        << "the last foreman";
}

TEST_F(OfficeTest, ANewForemanGetsAKeyThatSeals) {
    const Access ines = foreman();
    ASSERT_TRUE(office->addPerson(ines.who, "Lea", Role::Operator, pin("4711")).has_value());
    const Person risen{"person:lea", "Lea", Role::Foreman, true};
    EXPECT_FALSE(office->changePerson(ines.who, risen, {}).has_value());
    ASSERT_TRUE(office->changePerson(ines.who, risen, pin("313131")).has_value());
    const auto sealed = office->seal(enter("person:lea", "313131"));
    ASSERT_TRUE(sealed.has_value()) << sealed.error().detail;
    EXPECT_EQ(sealed->subject, "day:2030-01-07");
    const auto report = verifyLog(writer->path());
    ASSERT_TRUE(report->ok) << report->finding->reason;
    ASSERT_EQ(report->seals.size(), 1U);
    EXPECT_EQ(report->seals.front().name, "Lea");
}

TEST_F(OfficeTest, ACertificateIsNotedByAForemanAndTheLastOneHolds) {
    const Access ines = foreman();
    ASSERT_TRUE(office->addPerson(ines.who, "Max Thorne", Role::Operator, {}).has_value());
    const auto first = *readCertificate("PE-HD 3-20 mm", "2031-06-30");
    const auto second = *readCertificate("PE-HD, PP 3-15 mm", "2033-06-30");
    ASSERT_TRUE(office->noteCertificate(ines.who, "person:max-thorne", first).has_value());
    EXPECT_EQ(office->roster().certificate.at("person:max-thorne"), HeldCertificates{first});
    ASSERT_TRUE(office->noteCertificate(ines.who, "person:max-thorne", second).has_value());
    EXPECT_EQ(
        office->noteCertificate(ines.who, "person:nobody", first).error().code, ErrorCode::Missing);
    EXPECT_EQ(facts().back(), "person:max-thorne certificate_noted by person:ines-falk");
    restart();
    EXPECT_EQ(office->roster().certificate.size(), 1U);
    EXPECT_EQ(office->roster().certificate.at("person:max-thorne"), HeldCertificates{second});
    const auto other = *readCertificate("PVDF 3-10 mm", "2034-06-30");
    ASSERT_TRUE(
        office->noteCertificate(enter("person:ines-falk", "123456").who, "person:max-thorne", other)
            .has_value());
    EXPECT_EQ(
        office->roster().certificate.at("person:max-thorne"), (HeldCertificates{second, other}));
}

TEST_F(OfficeTest, AForgottenPinMeansAnotherKeyAndTheLogSaysSo) {
    const Access ines = foreman();
    const std::string first = office->roster().key.at("person:ines-falk");
    ASSERT_TRUE(office->seal(ines).has_value());
    ASSERT_TRUE(office->changePin("person:ines-falk", pin("123456"), pin("654321")).has_value());
    EXPECT_EQ(office->roster().key.at("person:ines-falk"), first);
    ASSERT_TRUE(office->seal(enter("person:ines-falk", "654321")).has_value());
    ASSERT_TRUE(office->replaceForgottenPin("person:ines-falk", pin("777777")).has_value());
    EXPECT_NE(office->roster().key.at("person:ines-falk"), first);
    const auto old = office->seal(ines);
    ASSERT_FALSE(old.has_value()) << "the old key seals nothing any more";
    EXPECT_EQ(old.error().code, ErrorCode::Missing);
    ASSERT_TRUE(office->seal(enter("person:ines-falk", "777777")).has_value());
    EXPECT_EQ(facts().back(), "day:2030-01-07 day_sealed by person:ines-falk");
    const auto report = verifyLog(writer->path());
    ASSERT_TRUE(report->ok) << report->finding->reason;
    EXPECT_EQ(report->seals.size(), 3U);
    EXPECT_NE(report->seals[0].keyFingerprint, report->seals[2].keyFingerprint);
}

TEST_F(OfficeTest, AForemanGivesWhoeverHasNoneOrForgotItAPin) {
    const Access ines = foreman();
    ASSERT_TRUE(office->addPerson(ines.who, "Jo", Role::Operator, {}));
    ASSERT_TRUE(office->addPerson(ines.who, "Lea", Role::Operator, pin("4711")));
    EXPECT_TRUE(office->givePin(ines.who, "person:jo", pin("1212")));
    EXPECT_TRUE(office->givePin(ines.who, "person:lea", pin("3434")));
    const Access jo = enter("person:jo", "1212");
    enter("person:lea", "3434");
    EXPECT_FALSE(office->enter("person:lea", pin("4711"))) << "the forgotten one is gone";
    EXPECT_EQ(office->givePin(jo.who, "person:lea", pin("5656")).error().code, ErrorCode::Refused);
    EXPECT_EQ(
        office->givePin(ines.who, "person:max", pin("5656")).error().code, ErrorCode::Missing);
    EXPECT_FALSE(office->givePin(ines.who, "person:jo", pin("12"))) << "too short";
    enter("person:jo", "1212");
    ASSERT_TRUE(writer->flush());
    auto reader = LogReader::open(writer->path());
    const auto why = [&reader](const char* person) {
        const auto fact = factFromBody(reader->bodies(person)->back());
        return std::get<PinChanged>(fact->d).reason;
    };
    EXPECT_EQ(why("person:jo"), "first");
    EXPECT_EQ(why("person:lea"), "forgotten");
}

TEST_F(OfficeTest, BenchesAndProceduresAreSetWithTheirDocuments) {
    const Access ines = foreman();
    const auto bench = test::orderOf(test::kDemoSeams[0]).bench;
    const auto procedure = test::orderOf(test::kDemoSeams[0]).procedure;
    ASSERT_TRUE(office->setBench(ines.who, bench).has_value());
    ASSERT_TRUE(office->setProcedure(ines.who, procedure).has_value());
    const auto all = facts();
    EXPECT_EQ(all[3], "bench:" + bench.bench.id + " bench_set by person:ines-falk");
    EXPECT_EQ(all[4], "procedure:" + procedure.procedure.id + " procedure_set by person:ines-falk");
    EXPECT_EQ(verifyLog(writer->path())->documents, 2);
}

TEST_F(OfficeTest, AForemansStepTakesHisProofAndStandsInHisName) {
    const Access ines = foreman();
    ASSERT_TRUE(office->addPerson(ines.who, "Lea", Role::Operator, pin("4711")).has_value());
    const Access lea = enter("person:lea", "4711");
    auto session = Session<Production>::start(*writer, clock);
    ASSERT_TRUE(session.has_value()) << session.error().detail;
    WeldOrder order = test::orderOf(test::kDemoSeams[0]);
    order.type = WeldType::Production;
    const auto weld = session->open(order, "person:lea");
    ASSERT_TRUE(weld.has_value()) << weld.error().detail;
    Intent intent{
        {}, "person:lea", CheckOverridden{"plate_temperature", "meter away", Authority::Foreman}};
    EXPECT_FALSE(session->act(weld->id(), intent).has_value());
    intent.foreman = true; // said, not proved
    EXPECT_FALSE(session->act(weld->id(), intent).has_value());
    EXPECT_FALSE(session->act(weld->id(), intent, lea.who).has_value());
    const auto done = session->act(weld->id(), intent, ines.who);
    ASSERT_TRUE(done.has_value()) << done.error().detail;
    EXPECT_EQ(done->events.back().by, "person:ines-falk");
}

// What waits in the spill file belongs to the roster too.
TEST_F(OfficeTest, KnowsPeopleWhoseRowsWait) {
    const Access ines = foreman();
    ASSERT_TRUE(writer->flush().has_value());
    SQLite::Database other(writer->path(), SQLite::OPEN_READWRITE);
    other.exec("BEGIN IMMEDIATE");
    ASSERT_TRUE(office->addPerson(ines.who, "Jo", Role::Operator, {}).has_value());
    EXPECT_FALSE(writer->flush().has_value());
    const auto again = Office::open(*writer, credentials, clock);
    ASSERT_TRUE(again.has_value()) << again.error().detail;
    EXPECT_NE(findPerson(again->roster().people, "person:jo"), nullptr);
    EXPECT_EQ(office->seal(ines).error().code, ErrorCode::NotWritten);
    other.exec("ROLLBACK");
    EXPECT_TRUE(office->seal(ines).has_value());
}

} // namespace
} // namespace seamclock
