// What the day, the job and the office read of a log whose disk goes away meanwhile: nobody plans
// by half of it.
#include "tests/support/lost_disk.h"

#include "core/log/batches.h"
#include "core/log/recover.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "core/quality/coupons.h"
#include "core/quality/shop_charts.h"
#include "core/session/align_median.h"
#include "core/session/job_book.h"
#include "core/session/job_day.h"
#include "core/session/made_seams.h"
#include "core/session/office.h"
#include "core/session/replan.h"
#include "core/session/session.h"
#include "tests/support/demo_order.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <filesystem>

namespace seamclock {
namespace {

constexpr std::int64_t kOpen = 7;

class LostDisk : public ::testing::Test {
protected:
    void SetUp() override {
        clock.wait(std::chrono::hours(24 * 10)); // behind the welds
        auto writer = LogWriter<Production>::open(path, clock, test::quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        Credentials credentials(folder.file("a.log.credentials"));
        auto office = Office::open(*writer, credentials, clock);
        ASSERT_TRUE(office) << office.error().detail;
        ASSERT_TRUE(office->addFirstForeman("Ines Falk", *Pin::read("123456")));
        const auto ines = office->enter("person:ines-falk", *Pin::read("123456"));
        ASSERT_TRUE(ines) << ines.error().detail;
        ASSERT_TRUE(office->setBench(ines->who, order.bench));
        ASSERT_TRUE(office->setProcedure(ines->who, order.procedure));
        seam.job = "J1";
        seam.label = "S3";
        seam.procedure = order.procedure.procedure.id;
        seam.thicknessMm = 8;
        seam.lengthsMm = {860};
        seam.sheets = std::get<WeldOpened>(test::closedWeld(1).front().d).sheets;
        ASSERT_TRUE(office->addSeams(ines->who, {seam}));
        for (std::int64_t number = 1; number < kOpen; ++number) {
            writer->submit(test::rowsOf(test::closedWeld(number)), test::sampleDocuments());
        }
        writer->submit(test::rowsOf(test::unfinishedWeld(kOpen, 9)));
        ASSERT_TRUE(writer->flush());
        tested.test = "tensile";
        tested.material = "PE-HD";
        tested.thicknessUm = 8'000;
        tested.procedure = "invented";
        tested.weldedPa = {30'000'000, 30'400'000};
        tested.parentPa = {31'000'000, 31'200'000};
        tested.weld = test::weldName(2);
        ASSERT_TRUE(office->noteCoupons(ines->who, tested));
        ASSERT_TRUE(writer->flush());
    }
    void
    ask(const std::string& what, const std::function<std::optional<Error>(LogReader& reader)>& of) {
        test::everyLossIsTold(disk, what, [&]() -> std::optional<Error> {
            auto reader = LogReader::open(path);
            return reader ? of(*reader) : std::optional(reader.error());
        });
    }
    static Weld weld() { return fold(test::closedWeld(1)).value(); }

    test::ScratchFolder folder;
    test::FakeClock clock;
    test::FaultyDisk disk;
    std::string path = folder.file("a.log");
    WeldOrder order = test::orderOf(test::kDemoSeams[0]);
    JobSeam seam;
    CouponTested tested;
};

TEST_F(LostDisk, OfPeopleBenchesAndProceduresIsTold) {
    ask("people", [](LogReader& log) { return test::complaintOf(readRoster(log)); });
    ask("benches and procedures", [](LogReader& log) { return test::complaintOf(readShelf(log)); });
    ask("procedures in force",
        [](LogReader& log) { return test::complaintOf(proceduresInForce(log, {})); });
    test::everyLossIsTold(disk, "the procedure of a weld", [&] {
        Weld later = weld();
        later.plan.procedure = order.procedure.procedure.id;
        std::get<WeldOpened>(later.events.front().d).docs.procedure = order.procedure.sha256;
        return test::complaintOf(procedureOf(later, {}, path));
    });
}

TEST_F(LostDisk, OfTheJobAndTheDayIsTold) {
    ask("seams of jobs", [](LogReader& log) { return test::complaintOf(readJobSeams(log)); });
    ask("which seams are made",
        [&](LogReader& log) { return test::complaintOf(MadeSeams({seam}).read(log)); });
    ask("how far a job is",
        [&](LogReader& log) { return test::complaintOf(jobProgress(log, {seam}, "2030-01-01")); });
    ask("the day's plan", [&](LogReader& log) {
        JobDayAsk all;
        all.people = {"person:op-1"};
        all.now = test::closedWeld(kOpen).back().at;
        all.seams = {seam};
        all.benches = {order.bench};
        all.procedures = {order.procedure};
        return test::complaintOf(jobDay(all, &log));
    });
    ask("the last alignments", [](LogReader& log) {
        return test::complaintOf(lastAlignments(log, "bench-a", "invented", 8'000));
    });
}

TEST_F(LostDisk, OfHowTheShopIsDoingIsTold) {
    ask("strength tests", [](LogReader& log) { return test::complaintOf(readCoupons(log)); });
    ask("strength tests of a joint",
        [](LogReader& log) { return test::complaintOf(readCoupons(log, test::weldName(2))); });
    ask("what coupons are of",
        [&](LogReader& log) { return test::complaintOf(checkOrigin(log, tested)); });
    ask("charts",
        [](LogReader& log) { return test::complaintOf(shopCharts(log, chartedMeasures(), {})); });
    ask("medians", [](LogReader& log) { return test::complaintOf(medianTimes(log)); });
    ask("joints of a batch",
        [](LogReader& log) { return test::complaintOf(jointsOfBatch(log, "batch 11")); });
}

TEST_F(LostDisk, OfTheLogItselfIsTold) {
    test::everyLossIsTold(disk, "open welds", [&] {
        auto welds = recoverOpenWelds(path);
        if (!welds) {
            return std::optional(welds.error());
        }
        for (const RecoveredWeld& one : *welds) {
            if (!one.weld) {
                return std::optional(one.weld.error());
            }
        }
        return std::optional<Error>();
    });
    for (const auto verify : {verifyLog, verifyChain}) {
        test::everyLossIsTold(disk, "verifying", [&] {
            const auto report = verify(path);
            return !report      ? std::optional(report.error())
                   : report->ok ? std::nullopt
                                : std::optional(Error{ErrorCode::Damaged, report->finding->reason});
        });
    }
    ask("what the list can be filtered by",
        [](LogReader& log) { return test::complaintOf(log.values(JointField::Bench)); });
    ask("days", [](LogReader& log) { return test::complaintOf(log.days(10, "2031-01-01")); });
    ask("the highest number",
        [](LogReader& log) { return test::complaintOf(log.highestNumber()); });
    ask("every row", [](LogReader& log) {
        return test::complaintOf(log.eachRow([](const StoredRow&) { return true; }));
    });
    ask("rows of other logs", [](LogReader& log) {
        return test::complaintOf(log.eachImportedRow([](const StoredRow&) { return true; }));
    });
}

/// What is done in an office and a session of that log; the first complaint.
std::optional<Error>
doneIn(const std::string& path, const test::FakeClock& clock, const WeldOrder& order) {
    auto writer = LogWriter<Production>::open(path, clock, test::quick());
    if (!writer) {
        return writer.error();
    }
    Credentials credentials(path + ".credentials");
    auto office = Office::open(*writer, credentials, clock);
    if (!office) {
        return office.error();
    }
    auto session = Session<Production>::start(*writer, clock);
    if (!session) {
        return session.error();
    }
    if (const auto trial = session->trialOf(order); !trial) {
        return trial.error();
    }
    const auto weld = session->open(order, "person:op-1");
    if (!weld) {
        return weld.error();
    }
    const auto ines = office->enter("person:ines-falk", *Pin::read("123456"));
    if (!ines) {
        return ines.error();
    }
    // A closed weld is read again for a foreman's word.
    const auto decided = session->act(
        test::weldName(1), Intent{{}, ines->who.person(), Decided{Decision::Accept, "looked at"}},
        ines->who);
    if (!decided) {
        return decided.error();
    }
    return test::complaintOf(office->seal(*ines));
}

// The writer writes beside it, so where exactly the loss falls differs from run to run.
TEST_F(LostDisk, UnderAWorkingProgramCostsNoRowThatWasThere) {
    WeldOrder another = order;
    another.type = WeldType::Production;
    another.carriesChecks = true;
    const auto rows = [](const std::string& of) { return verifyLog(of)->rows; };
    const std::int64_t before = rows(path);
    std::int64_t most = 1;
    int told = 0;
    for (std::int64_t n = 0; n <= most; n += n == 0 ? 1 : std::max<std::int64_t>(1, most / 40)) {
        const test::ScratchFolder own;
        const std::string log = own.file("a.log");
        for (const char* part : {"", ".credentials"}) {
            std::filesystem::copy_file(path + part, log + part);
        }
        const std::int64_t sofar = disk.accesses();
        disk.loseAt(n);
        const auto complaint = doneIn(log, clock, another);
        disk.loseAt(0);
        if (n == 0) {
            ASSERT_FALSE(complaint) << complaint->detail;
            most = disk.accesses() - sofar;
        }
        told += complaint ? 1 : 0;
        EXPECT_TRUE(!complaint || !complaint->detail.empty());
        const auto after = doneIn(log, clock, another);
        EXPECT_FALSE(after) << n << ": " << after->detail;
        const auto report = verifyLog(log);
        ASSERT_TRUE(report && report->ok) << n << ": " << report->finding->reason;
        EXPECT_GT(report->rows, before) << n;
    }
    EXPECT_GT(told, 10);
}

} // namespace
} // namespace seamclock
