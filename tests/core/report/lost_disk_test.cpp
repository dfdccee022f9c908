// What is put on paper of a log whose disk goes away meanwhile: nothing, rather than a part.
#include "tests/support/lost_disk.h"

#include "core/log/log_reader.h"
#include "core/log/world.h"
#include "core/report/day_list.h"
#include "core/report/day_report.h"
#include "core/report/evidence.h"
#include "core/report/record_facts.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

namespace seamclock {
namespace {

class LostDisk : public ::testing::Test {
protected:
    void SetUp() override {
        clock.wait(std::chrono::hours(24 * 10));
        test::writeSealedLog(path, clock, SigningKey::make());
        auto log = LogWriter<Production>::open(path, clock, test::signing());
        ASSERT_TRUE(log) << log.error().detail;
        CouponTested tested;
        tested.test = "bend";
        tested.material = "PE-HD";
        tested.thicknessUm = 8'000;
        tested.angleMilli = {160'000};
        tested.cracked = {0};
        tested.weld = test::weldName(2);
        ASSERT_TRUE(log->note(clock.now(), test::kForeman, "coupon:2", tested));
        auto again = test::closedWeld(81);
        std::get<WeldOpened>(again.front().d).reweldOf = test::weldName(2);
        log->submit(test::rowsOf(again));
        ASSERT_TRUE(log->flush());
    }
    void
    ask(const std::string& what, const std::function<std::optional<Error>(LogReader& reader)>& of) {
        test::everyLossIsTold(disk, what, [&]() -> std::optional<Error> {
            auto reader = LogReader::open(path);
            return reader ? of(*reader) : std::optional(reader.error());
        });
    }

    test::ScratchFolder folder;
    test::FakeClock clock;
    test::FaultyDisk disk;
    std::string path = folder.file("a.log");
};

TEST_F(LostDisk, OfOneJointIsTold) {
    for (const std::int64_t number : {2, 81}) {
        ask("the facts of a joint", [number](LogReader& reader) {
            const auto log = logFacts(reader);
            return log ? test::complaintOf(recordFacts(reader, *log, test::weldName(number)))
                       : std::optional(log.error());
        });
    }
    ask("evidence", [](LogReader& reader) {
        return test::complaintOf(evidenceJson(reader, test::weldName(1)));
    });
}

TEST_F(LostDisk, OfADayIsTold) {
    ask("the day's report",
        [](LogReader& reader) { return test::complaintOf(dayReport(reader, "2030-01-13")); });
    ask("the report of a list",
        [](LogReader& reader) { return test::complaintOf(reportFacts(reader, JointFilter{})); });
    ask("the report of some joints", [](LogReader& reader) {
        const std::vector<std::string> some = {
            test::weldName(1), test::weldName(81), test::weldName(2)};
        return test::complaintOf(reportFacts(reader, some));
    });
    ask("what a list says of each joint", [this](LogReader& reader) -> std::optional<Error> {
        const auto lines = reader.joints(JointFilter{});
        if (!lines) {
            return lines.error();
        }
        auto reading = LineReading::open(path);
        for (const JointLine& line : *lines) {
            if (!reading) {
                return reading.error();
            }
            if (const auto said = reading->of(line); !said) {
                return said.error();
            }
        }
        return std::nullopt;
    });
}

} // namespace
} // namespace seamclock
