// Logs for tests: welds from the invented story (tests/support/story.h) under ids and numbers of
// their own, and the documents that they name.
#pragma once

#include "core/log/log_row.h"
#include "core/log/log_writer.h"
#include "core/people/signing.h"
#include "core/weld/event.h"
#include "tests/support/fake_clock.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <cstdint>
#include <memory>
#include <string>
#include <vector>

namespace seamclock::test {

/// "weld:00000000-0000-4000-8000-" and 12 digits.
std::string weldName(std::int64_t number);

/// A whole good weld that ends closed; and the first `count` of its events.
std::vector<Event> closedWeld(std::int64_t number);
std::vector<Event> unfinishedWeld(std::int64_t number, std::size_t count);
/// Another bench, material and opening day, a remark, and aborted in the end.
std::vector<Event> abortedWeld(std::int64_t number, const std::string& remark);

/// Stored form; a test fails if an event has none.
std::vector<LogRow> rowsOf(const std::vector<Event>& events);

/// What the sample welds name.
std::vector<LogDocument> sampleDocuments();

/// A row of the station, for tests that need no weld.
LogRow stationRow(std::int64_t n, std::int64_t count = 1);

/// Options for tests: nothing waits long.
LogWriterOptions quick();

/// Three closed welds, one aborted, one unfinished, and the station's facts. Closed when it
/// returns.
void writeSampleLog(const std::string& path, const FakeClock& clock);

/// As quick(), and the station signs.
LogWriterOptions signing();

inline constexpr const char* kForeman = "person:ines";
/// A foreman with that key, in the facts as the office writes them.
void enterForeman(LogWriterBase& writer, const Clock& clock, const SigningKey& key);

/// The sample log, sealed by a foreman; then one more weld, whose closing the station signs.
void writeSealedLog(const std::string& path, const FakeClock& clock, const SigningKey& key);

/// A connection as a stranger with a tool would have it, guards taken away; put back when it goes.
class BehindTheBack {
public:
    explicit BehindTheBack(const std::string& path);
    ~BehindTheBack();
    BehindTheBack(const BehindTheBack&) = delete;
    BehindTheBack& operator=(const BehindTheBack&) = delete;

    SQLite::Database& database() { return *m_database; }
    std::string text(const std::string& sql) { return m_database->execAndGet(sql).getString(); }
    std::int64_t number(const std::string& sql) { return m_database->execAndGet(sql).getInt64(); }

private:
    std::unique_ptr<SQLite::Database> m_database;
    std::vector<std::string> m_guards;
};

} // namespace seamclock::test
