// How fast the log is, beside SQLite's own C interface doing the same in the same process, on the
// same indexes and with the same settings. Each pair is measured in turn, so that what else the
// machine does meets both, and the median counts. "ratio NAME VALUE" is ours over the reference;
// "value NAME VALUE UNIT" is a plain measurement of this machine.
//
//     log_speed page SMALL BIG     first pages and filters, in logs made by make_big_log
//     log_speed scroll LOG         the whole list by pages of the day log; what it is narrowed to
//     log_speed write FOLDER       one event to disk; two logs are made there
//     log_speed verify LOG ROUNDS  the chain and the full check
#include "core/base/uuid.h"
#include "core/log/chain.h"
#include "core/log/fact_codec.h"
#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/log/seal.h"
#include "core/log/verify.h"
#include "core/people/signing.h"
#include "tests/speed/big_log.h"
#include "tests/support/fake_clock.h"

#include <algorithm>
#include <chrono>
#include <condition_variable>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <mutex>
#include <sodium.h>
#include <sqlite3.h>
#include <string>
#include <time.h>
#include <vector>

namespace seamclock {
namespace {

constexpr const char* kColumns =
    "weld, number, type, opened_ms, offset_min, day, bench, opened_by, seam, material, "
    "thickness_um, length_um, procedure, phase, open, verdict, verdict_now, findings, "
    "events, trouble";

[[noreturn]] void stop(const std::string& why) {
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(2);
}

template <class T>
T must(Result<T> result) {
    if (!result) {
        stop(result.error().detail);
    }
    return std::move(*result);
}
void must(const Result<void>& result) {
    if (!result) {
        stop(result.error().detail);
    }
}

/// Of the processor, which this thread had for itself: what an idle machine would take by the
/// clock. Of work on several threads: CLOCK_PROCESS_CPUTIME_ID, what they take together.
double processorMs(const std::function<void()>& work, clockid_t whose = CLOCK_THREAD_CPUTIME_ID) {
    const auto now = [whose] {
        timespec at{};
        clock_gettime(whose, &at);
        return static_cast<double>(at.tv_sec) * 1e3 + static_cast<double>(at.tv_nsec) / 1e6;
    };
    const double from = now();
    work();
    return now() - from;
}

double milliseconds(const std::function<void()>& work) {
    const auto from = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - from)
        .count();
}

double median(std::vector<double> of) {
    std::sort(of.begin(), of.end());
    return of[of.size() / 2];
}

/// Medians of things that are done in turn, `rounds` times after one that doesn't count.
std::vector<double> inTurn(int rounds, const std::vector<std::function<void()>>& works) {
    std::vector<std::vector<double>> took(works.size());
    for (int round = -1; round < rounds; ++round) {
        for (std::size_t i = 0; i < works.size(); ++i) {
            const double ms = processorMs(works[i]);
            if (round >= 0) {
                took[i].push_back(ms);
            }
        }
    }
    std::vector<double> out;
    for (auto& one : took) {
        out.push_back(median(std::move(one)));
    }
    return out;
}

void ratio(const char* name, double ours, double reference, const char* unit = "ms") {
    std::printf(
        "ratio %s %.2f   (%.4f / %.4f %s)\n", name, ours / reference, ours, reference, unit);
    std::fflush(stdout);
}

void value(const std::string& name, double of, const char* unit) {
    std::printf("value %s %.3f %s\n", name.c_str(), of, unit);
    std::fflush(stdout);
}

/// SQLite as its manual shows it.
class Plain {
public:
    explicit Plain(const std::string& path, int flags = SQLITE_OPEN_READONLY) {
        check(sqlite3_open_v2(path.c_str(), &m_database, flags, nullptr));
    }
    ~Plain() {
        for (sqlite3_stmt* one : m_statements) {
            sqlite3_finalize(one);
        }
        sqlite3_close(m_database);
    }
    Plain(const Plain&) = delete;
    Plain& operator=(const Plain&) = delete;

    sqlite3* handle() { return m_database; }
    void run(const char* sql) { check(sqlite3_exec(m_database, sql, nullptr, nullptr, nullptr)); }
    sqlite3_stmt* prepare(const std::string& sql) {
        sqlite3_stmt* made = nullptr;
        check(sqlite3_prepare_v2(m_database, sql.c_str(), -1, &made, nullptr));
        m_statements.push_back(made);
        return made;
    }
    void finish(sqlite3_stmt* statement) {
        if (sqlite3_step(statement) != SQLITE_DONE) {
            stop(sqlite3_errmsg(m_database));
        }
        check(sqlite3_reset(statement));
    }
    void check(int said) {
        if (said != SQLITE_OK) {
            stop(sqlite3_errmsg(m_database));
        }
    }

private:
    sqlite3* m_database = nullptr;
    std::vector<sqlite3_stmt*> m_statements;
};

/// Reads every column of every row and keeps nothing.
std::int64_t readAll(sqlite3_stmt* rows) {
    std::int64_t sum = 0;
    const int columns = sqlite3_column_count(rows);
    while (sqlite3_step(rows) == SQLITE_ROW) {
        for (int i = 0; i < columns; ++i) {
            if (sqlite3_column_type(rows, i) == SQLITE_INTEGER) {
                sum += sqlite3_column_int64(rows, i);
            } else {
                sum += sqlite3_column_text(rows, i)[0];
                sum += sqlite3_column_bytes(rows, i);
            }
        }
    }
    sqlite3_reset(rows);
    return sum;
}

void pages(const std::string& small, const std::string& big) {
    constexpr int kRounds = 301;
    auto ours = must(LogReader::open(big));
    auto oursSmall = must(LogReader::open(small));
    Plain plain(big);
    sqlite3_stmt* const page =
        plain.prepare(std::string("SELECT ") + kColumns + " FROM joint ORDER BY id DESC LIMIT 100");
    volatile std::int64_t sink = 0;
    std::size_t lines = 0;
    const auto took = inTurn(
        kRounds,
        {[&] { lines = must(ours.joints({})).size(); }, [&] { sink = sink + readAll(page); },
         [&] { lines += must(oursSmall.joints({})).size(); }});
    if (lines != 200) {
        stop("a page of " + std::to_string(lines / 2) + " lines, expected 100");
    }
    ratio("log-first-page", took[0], took[1]);
    ratio("log-first-page-growth", took[0], took[2]);

    struct Named {
        const char* name;
        std::function<void(JointFilter&)> choose;
        std::size_t least;
        std::size_t most;
    };
    const auto filter = [](auto member, const char* value) {
        return [member, value](JointFilter& f) { f.*member = value; };
    };
    const auto days = [](const char* from, const char* to) {
        return [from, to](JointFilter& f) { f.fromDay = from, f.toDay = to; };
    };
    const std::vector<Named> all = {
        {"bench-many", filter(&JointFilter::bench, "west"), 100, 100},
        {"bench-few", filter(&JointFilter::bench, test::kRareBench), 7, 7},
        {"bench-none", filter(&JointFilter::bench, "attic"), 0, 0},
        {"by-many", filter(&JointFilter::by, "person:ilva"), 100, 100},
        {"by-few", filter(&JointFilter::by, test::kRareBy), 7, 7},
        {"by-none", filter(&JointFilter::by, "person:nobody"), 0, 0},
        {"material-many", filter(&JointFilter::material, "PE-HD"), 100, 100},
        {"material-few", filter(&JointFilter::material, test::kRareMaterial), 7, 7},
        {"material-none", filter(&JointFilter::material, "PA"), 0, 0},
        {"verdict-many", filter(&JointFilter::verdict, "within limits"), 100, 100},
        {"verdict-few", filter(&JointFilter::verdict, test::kRareVerdict), 7, 7},
        {"verdict-none", filter(&JointFilter::verdict, "unheard of"), 0, 0},
        {"days-many", days("2030-01-01", "2099-12-31"), 100, 100},
        {"days-few", days("2030-01-07", "2030-01-07"), 10, 100},
        {"days-none", days("2029-01-01", "2029-12-31"), 0, 0},
        {"text-many", filter(&JointFilter::text, "velmorra"), 100, 100},
        {"text-many-short", filter(&JointFilter::text, "v"), 100, 100},
        {"text-many-digit", filter(&JointFilter::text, "1"), 100, 100},
        {"text-many-two-words", filter(&JointFilter::text, "velm natural"), 100, 100},
        {"text-batch", filter(&JointFilter::text, "VP-40017"), 40, 100},
        {"text-few", filter(&JointFilter::text, test::kRareWord), 7, 7},
        {"text-few-of-many", filter(&JointFilter::text, "velmorra hailst"), 7, 7},
        {"text-none", filter(&JointFilter::text, "zirconium"), 0, 0},
        {"text-none-of-many", filter(&JointFilter::text, "velmorra zirconium"), 0, 0},
        {"bench-many-verdict-few",
         [](JointFilter& f) { f.bench = "west", f.verdict = test::kRareVerdict; }, 7, 7},
        {"by-many-bench-none", [](JointFilter& f) { f.by = "person:ilva", f.bench = "attic"; }, 0,
         0},
        {"material-few-days-none",
         [](JointFilter& f) {
             f.material = test::kRareMaterial, f.fromDay = "2029-01-01", f.toDay = "2029-12-31";
         },
         0, 0},
        {"text-many-bench-few",
         [](JointFilter& f) { f.text = "velmorra", f.bench = test::kRareBench; }, 7, 7},
    };
    double slowest = 0;
    for (const Named& one : all) {
        JointFilter asked;
        one.choose(asked);
        std::size_t hits = 0;
        const double ms = inTurn(9, {[&] { hits = must(ours.joints(asked)).size(); }}).front();
        if (hits < one.least || hits > one.most) {
            stop(std::string(one.name) + ": " + std::to_string(hits) + " hits");
        }
        value(std::string("log-filter-") + one.name, ms, "ms");
        slowest = std::max(slowest, ms);
    }
    value("log-filter-slowest", slowest, "ms");
}

/// The list from its newest line to its oldest, a page of the day log at a time, beside the same
/// pages asked of SQLite itself; and the values and days that it can be narrowed to.
void scrolling(const std::string& path) {
    constexpr std::size_t kPage = 40;
    auto ours = must(LogReader::open(path));
    Plain plain(path);
    sqlite3_stmt* const page = plain.prepare(
        std::string("SELECT ") + kColumns +
        ", id FROM joint WHERE id < ? ORDER BY id DESC LIMIT ?");
    JointFilter filter;
    filter.limit = kPage;
    std::int64_t below = INT64_MAX;
    std::vector<double> tookOurs;
    std::vector<double> tookPlain;
    volatile std::int64_t sink = 0;
    std::size_t joints = 0;
    for (bool more = true; more;) {
        std::size_t lines = 0;
        tookOurs.push_back(processorMs([&] {
            const auto read = must(ours.joints(filter));
            lines = read.size();
            if (!read.empty()) {
                filter.after = keyOf(read.back());
            }
        }));
        std::size_t beside = 0;
        tookPlain.push_back(processorMs([&] {
            sqlite3_bind_int64(page, 1, below);
            sqlite3_bind_int64(page, 2, static_cast<std::int64_t>(kPage));
            const int columns = sqlite3_column_count(page);
            while (sqlite3_step(page) == SQLITE_ROW) {
                for (int i = 0; i + 1 < columns; ++i) {
                    if (sqlite3_column_type(page, i) == SQLITE_INTEGER) {
                        sink = sink + sqlite3_column_int64(page, i);
                    } else {
                        sink = sink + sqlite3_column_text(page, i)[0];
                    }
                }
                below = sqlite3_column_int64(page, columns - 1);
                ++beside;
            }
            sqlite3_reset(page);
        }));
        if (lines != beside) {
            stop("pages of " + std::to_string(lines) + " and " + std::to_string(beside) + " lines");
        }
        joints += lines;
        more = lines == kPage;
    }
    std::printf("value log-scroll-joints %zu\n", joints);
    ratio("log-scroll-page", median(tookOurs), median(tookPlain));
    value("log-scroll-longest-page", *std::max_element(tookOurs.begin(), tookOurs.end()), "ms");
    value(
        "log-scroll-longest-page-of-sqlite", *std::max_element(tookPlain.begin(), tookPlain.end()),
        "ms");
    for (const auto& [name, field] :
         {std::pair{"bench", JointField::Bench},
          {"by", JointField::By},
          {"material", JointField::Material},
          {"verdict", JointField::Verdict}}) {
        value(
            std::string("log-values-") + name,
            inTurn(9, {[&, of = field] {
                       sink = sink + static_cast<std::int64_t>(must(ours.values(of)).size());
                   }})
                .front(),
            "ms");
    }
    value(
        "log-days-60",
        inTurn(9, {[&] { sink = sink + static_cast<std::int64_t>(must(ours.days(60)).size()); }})
            .front(),
        "ms");
}

// ---- One event to disk

LogRow factRow(std::int64_t n) {
    const Fact fact{test::FakeClock().now(), "station", "station", n, RowsJoined{n}};
    return {"station", n, must(toBody(fact))};
}

void chainFunction(sqlite3_context* context, int, sqlite3_value** values) {
    const auto text = [](sqlite3_value* one) {
        return std::string_view(
            static_cast<const char*>(sqlite3_value_blob(one)),
            static_cast<std::size_t>(sqlite3_value_bytes(one)));
    };
    const std::string hash = chainHash(text(values[0]), text(values[1]));
    sqlite3_result_text(context, hash.data(), static_cast<int>(hash.size()), SQLITE_TRANSIENT);
}

/// The same row into the same tables, with the same settings, checks and transaction.
class PlainWriter {
public:
    explicit PlainWriter(const std::string& path) : m_plain(path, SQLITE_OPEN_READWRITE) {
        for (const char* setting :
             {"PRAGMA journal_mode=WAL", "PRAGMA synchronous=FULL", "PRAGMA recursive_triggers=ON",
              "PRAGMA foreign_keys=ON"}) {
            m_plain.run(setting);
        }
        m_plain.check(sqlite3_create_function(
            m_plain.handle(), "seamclock_chain", 2, SQLITE_UTF8 | SQLITE_DETERMINISTIC, nullptr,
            chainFunction, nullptr, nullptr));
        m_begin = m_plain.prepare("BEGIN IMMEDIATE");
        m_head = m_plain.prepare("SELECT seq, head FROM chain WHERE no = 1");
        m_held = m_plain.prepare("SELECT 1 FROM event WHERE chain = 1 AND subject = ? AND n = ?");
        m_add = m_plain.prepare("INSERT INTO event(chain, seq, hash, body) VALUES(1, ?, ?, ?)");
        m_sign = m_plain.prepare(
            "INSERT INTO head_signature(chain, seq, public_key, signature) VALUES(1, ?1, ?2, ?3) "
            "ON CONFLICT(chain) DO UPDATE SET seq = ?1, public_key = ?2, signature = ?3");
        m_commit = m_plain.prepare("COMMIT");
    }

    void write(const LogRow& row) {
        m_plain.finish(m_begin);
        sqlite3_step(m_head);
        const std::int64_t seq = sqlite3_column_int64(m_head, 0) + 1;
        const std::string hash =
            chainHash(reinterpret_cast<const char*>(sqlite3_column_text(m_head, 1)), row.body);
        sqlite3_reset(m_head);
        sqlite3_bind_text(m_held, 1, row.subject.data(), size(row.subject), SQLITE_STATIC);
        sqlite3_bind_int64(m_held, 2, row.n);
        m_plain.finish(m_held);
        sqlite3_bind_int64(m_add, 1, seq);
        sqlite3_bind_text(m_add, 2, hash.data(), size(hash), SQLITE_STATIC);
        sqlite3_bind_text(m_add, 3, row.body.data(), size(row.body), SQLITE_STATIC);
        m_plain.finish(m_add);
        const std::string signature = m_key.sign(headMessage("a log", {seq, hash}));
        sqlite3_bind_int64(m_sign, 1, seq);
        sqlite3_bind_text(
            m_sign, 2, m_key.publicKey().data(), size(m_key.publicKey()), SQLITE_STATIC);
        sqlite3_bind_text(m_sign, 3, signature.data(), size(signature), SQLITE_STATIC);
        m_plain.finish(m_sign);
        m_plain.finish(m_commit);
    }

private:
    static int size(const std::string& text) { return static_cast<int>(text.size()); }

    Plain m_plain;
    sqlite3_stmt* m_begin = nullptr;
    sqlite3_stmt* m_head = nullptr;
    sqlite3_stmt* m_held = nullptr;
    sqlite3_stmt* m_add = nullptr;
    sqlite3_stmt* m_sign = nullptr;
    sqlite3_stmt* m_commit = nullptr;
    SigningKey m_key = SigningKey::make();
};

void writing(const std::string& folder) {
    const test::FakeClock clock;
    const std::string ours = folder + "/ours.log";
    const std::string theirs = folder + "/plain.log";
    { must(LogWriter<Production>::open(theirs, clock)); }
    // On disk is when the program is told so; the list of joints is refreshed after that.
    std::mutex mutex;
    std::condition_variable told;
    LogWriterOptions options;
    options.changed = [&] {
        const std::lock_guard<std::mutex> lock(mutex);
        told.notify_all();
    };
    auto writer = must(LogWriter<Production>::open(ours, clock, options));
    const auto untilSaved = [&](const LogRow& row) {
        std::unique_lock<std::mutex> lock(mutex);
        told.wait(lock, [&] { return writer.status(row.subject, row.n) == RowStatus::Saved; });
    };
    test::BigLogOptions one;
    one.joints = 1;
    one.resources = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources";
    writer.submit(must(test::sampleOfBigLog(one, 1))); // from a weld's end on each head is signed
    must(writer.flush());
    must(writer.flush());
    const std::int64_t stated = must(must(LogReader::open(ours)).lastN("station"));
    PlainWriter plain(theirs);
    std::vector<double> tookOurs;
    std::vector<double> tookPlain;
    for (std::int64_t n = stated + 1; n <= stated + 2'000; ++n) {
        const LogRow row = factRow(n);
        must(writer.flush()); // nothing left of the one before: events are seconds apart
        tookOurs.push_back(milliseconds([&] {
            writer.submit({row});
            untilSaved(row);
        }));
        tookPlain.push_back(milliseconds([&] { plain.write(row); }));
    }
    ratio("log-one-event", median(tookOurs), median(tookPlain));
}

// ---- Is it what was written?

/// How long libsodium takes for the bytes that the chain hashes, read in blocks meanwhile.
double bareHash(const std::string& path) {
    constexpr std::size_t kBlock = 16 * 1024 * 1024;
    auto reader = must(LogReader::open(path));
    std::string previous = genesisHash(reader.logId(), reader.world());
    std::string block;
    crypto_hash_sha256_state state;
    crypto_hash_sha256_init(&state);
    double took = 0;
    const auto hash = [&] {
        took += processorMs([&] {
            crypto_hash_sha256_update(
                &state, reinterpret_cast<const unsigned char*>(block.data()), block.size());
        });
        block.clear();
    };
    must(reader.eachRow([&](const StoredRow& row) {
        block.append(previous).append("\n").append(row.body);
        previous = row.hash;
        if (block.size() >= kBlock) {
            hash();
        }
        return true;
    }));
    hash();
    return took;
}

void verifying(const std::string& path, int rounds) {
    std::vector<double> bare;
    std::vector<double> chain;
    std::vector<double> full;
    std::vector<double> fullProcessor;
    std::int64_t rows = 0;
    const auto sound = [&](const VerifyReport& report) {
        if (!report.ok) {
            stop(report.finding->reason);
        }
        rows = report.rows;
    };
    for (int round = 0; round < rounds; ++round) {
        bare.push_back(bareHash(path));
        chain.push_back(processorMs([&] { sound(must(verifyChain(path))); }));
        full.push_back(milliseconds([&] {
            fullProcessor.push_back(
                processorMs([&] { sound(must(verifyLog(path))); }, CLOCK_PROCESS_CPUTIME_ID));
        }));
    }
    ratio("log-verify-chain", median(chain), median(bare));
    const auto perSecond = [&](std::vector<double> ms) {
        return static_cast<double>(rows) / median(std::move(ms)) * 1000;
    };
    value("log-verify-events-per-second", perSecond(full), "/s");
    value("log-verify-events-per-processor-second", perSecond(fullProcessor), "/s");
}

} // namespace
} // namespace seamclock

int main(int argc, char** argv) {
    const std::vector<std::string> words(argv + 1, argv + argc);
    if (words.size() == 3 && words[0] == "page") {
        seamclock::pages(words[1], words[2]);
    } else if (words.size() == 2 && words[0] == "scroll") {
        seamclock::scrolling(words[1]);
    } else if (words.size() == 2 && words[0] == "write") {
        seamclock::writing(words[1]);
    } else if (words.size() == 3 && words[0] == "verify") {
        seamclock::verifying(words[1], std::max(1, std::atoi(words[2].c_str())));
    } else {
        seamclock::stop("log_speed page SMALL BIG | scroll LOG | write FOLDER | verify LOG ROUNDS");
    }
    return 0;
}
