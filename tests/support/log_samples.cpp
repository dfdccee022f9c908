#include "tests/support/log_samples.h"

#include "core/base/uuid.h"
#include "core/log/fact_codec.h"
#include "core/log/seal.h"
#include "core/weld/event_codec.h"
#include "tests/support/story.h"

#include <cstdio>
#include <gtest/gtest.h>

namespace seamclock::test {

namespace {

const std::string kProcedureBytes = "{\"id\":\"invented\",\"edition\":\"2030\"}\n";
const std::string kBenchBytes = "{\"id\":\"bench-a\",\"rate_N_per_mm\":70}\n";

WeldOpened opening(std::int64_t number) {
    WeldOpened opened = inventedOpening();
    opened.number = number;
    opened.docs = {sha256Hex(kProcedureBytes), sha256Hex(kBenchBytes), {}};
    return opened;
}

std::vector<Event> renamed(std::vector<Event> events, std::int64_t number, Milliseconds later) {
    for (Event& event : events) {
        event.subject = weldName(number);
        event.at.boot += later;
        event.at.utc += later;
    }
    return events;
}

} // namespace

std::string weldName(std::int64_t number) {
    char name[64];
    std::snprintf(
        name, sizeof name, "weld:00000000-0000-4000-8000-%012lld", static_cast<long long>(number));
    return name;
}

std::vector<Event> closedWeld(std::int64_t number) {
    Story story(opening(number));
    story.close();
    return renamed(story.weld().events, number, std::chrono::hours(number));
}

std::vector<Event> unfinishedWeld(std::int64_t number, std::size_t count) {
    auto events = closedWeld(number);
    events.resize(count);
    return events;
}

std::vector<Event> abortedWeld(std::int64_t number, const std::string& remark) {
    WeldOpened opened = opening(number);
    opened.bench = "bench-b";
    opened.plan.bench = "bench-b";
    opened.plan.material = "PP";
    for (Sheet& sheet : opened.sheets) {
        sheet.material = "PP";
    }
    Story story(opened);
    story.prepare().then(RemarkMade{remark}).then(WeldAborted{"power", "the plate went cold"});
    return renamed(story.weld().events, number, std::chrono::hours(number + 48));
}

std::vector<LogRow> rowsOf(const std::vector<Event>& events) {
    std::vector<LogRow> rows;
    for (const Event& event : events) {
        auto body = toBody(event);
        if (!body) {
            ADD_FAILURE() << body.error().detail;
            continue;
        }
        rows.push_back({event.subject, event.n, std::move(*body)});
    }
    return rows;
}

std::vector<LogDocument> sampleDocuments() {
    return {
        {sha256Hex(kProcedureBytes), "procedure", kProcedureBytes},
        {sha256Hex(kBenchBytes), "bench", kBenchBytes}};
}

LogRow stationRow(std::int64_t n, std::int64_t count) {
    const Fact fact{FakeClock().now(), "station", "station", n, RowsJoined{count}};
    return {"station", n, toBody(fact).value()};
}

LogWriterOptions quick() {
    LogWriterOptions options;
    options.retryFirst = Milliseconds(1);
    options.retryLongest = Milliseconds(4);
    options.busyTimeout = Milliseconds(20);
    options.spillBytes = 256 * 1024;
    options.sign = false; // seal_test.cpp is about that
    return options;
}

void writeSampleLog(const std::string& path, const FakeClock& clock) {
    auto writer = LogWriter<Production>::open(path, clock, quick());
    ASSERT_TRUE(writer.has_value()) << writer.error().detail;
    ASSERT_TRUE(writer->note(clock.now(), "station", "station", ProgramStarted{}).has_value());
    const auto documents = sampleDocuments();
    ASSERT_TRUE(
        writer
            ->note(
                clock.now(), "station", "bench:bench-a", BenchSet{documents[1].sha256}, documents)
            .has_value());
    for (const std::int64_t number : {1, 2, 3}) {
        for (LogRow& row : rowsOf(closedWeld(number))) {
            writer->submit({std::move(row)}, documents);
        }
    }
    writer->submit(rowsOf(abortedWeld(4, "draught from the hall door")));
    writer->submit(rowsOf(unfinishedWeld(5, 9)));
    ASSERT_TRUE(writer->note(clock.now(), "station", "station", ProgramStopped{}).has_value());
    const auto flushed = writer->flush();
    ASSERT_TRUE(flushed.has_value()) << flushed.error().detail;
}

LogWriterOptions signing() {
    LogWriterOptions options = quick();
    options.sign = true;
    return options;
}

void enterForeman(LogWriterBase& writer, const Clock& clock, const SigningKey& key) {
    for (const FactDetail& detail :
         {FactDetail(PersonSet{"Ines Falk", "foreman", true}), FactDetail(PinChanged{"first"}),
          FactDetail(KeySet{key.publicKey(), "first"})}) {
        ASSERT_TRUE(writer.note(clock.now(), "station", kForeman, detail).has_value());
    }
}

void writeSealedLog(const std::string& path, const FakeClock& clock, const SigningKey& key) {
    writeSampleLog(path, clock);
    auto writer = LogWriter<Production>::open(path, clock, signing());
    ASSERT_TRUE(writer.has_value()) << writer.error().detail;
    enterForeman(*writer, clock, key);
    const auto sealed = sealDay(*writer, key, kForeman, "2030-01-07", clock.now());
    ASSERT_TRUE(sealed.has_value()) << sealed.error().detail;
    writer->submit(rowsOf(closedWeld(6)), sampleDocuments());
    ASSERT_TRUE(writer->flush().has_value());
}

BehindTheBack::BehindTheBack(const std::string& path)
    : m_database(std::make_unique<SQLite::Database>(path, SQLite::OPEN_READWRITE)) {
    m_database->exec("PRAGMA synchronous=OFF");
    std::vector<std::string> names;
    {
        SQLite::Statement query(
            *m_database, "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'");
        while (query.executeStep()) {
            names.push_back(query.getColumn(0).getString());
            m_guards.push_back(query.getColumn(1).getString());
        }
    }
    for (const std::string& name : names) {
        m_database->exec("DROP TRIGGER " + name);
    }
}

BehindTheBack::~BehindTheBack() {
    for (const std::string& guard : m_guards) {
        m_database->exec(guard);
    }
}

} // namespace seamclock::test
