#include "tests/core/rescue/damage.h"

#include "core/log/log_reader.h"
#include "core/log/verify.h"
#include "core/rescue/set_aside.h"
#include "core/weld/event_codec.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <map>
#include <random>
#include <set>

namespace seamclock::test {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kPage = 4096; // of a log as it is made
constexpr std::size_t kFrame = kPage + 24;

struct Files {
    std::string log;
    std::string wal;
    std::string spill;
};

Files readFiles(const std::string& path) {
    const auto read = [](const std::string& name) {
        return fs::exists(name) ? textOf(name) : std::string();
    };
    return {read(path), read(path + "-wal"), read(path + ".spill")};
}

void writeFile(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

void writeFiles(const std::string& path, const Files& files) {
    writeFile(path, files.log);
    if (!files.wal.empty()) {
        writeFile(path + "-wal", files.wal);
    }
    if (!files.spill.empty()) {
        writeFile(path + ".spill", files.spill);
    }
}

using Rows = std::map<std::string, std::map<std::int64_t, std::string>>; // subject, n, body

Rows rowsIn(const std::string& path) {
    Rows rows;
    auto reader = LogReader::open(path);
    EXPECT_TRUE(reader) << (reader ? "" : reader.error().detail);
    if (reader) {
        const auto read = reader->eachRow([&](const StoredRow& row) {
            if (const auto event = eventFromBody(row.body)) {
                rows[event->subject][event->n] = row.body;
            }
            return true;
        });
        EXPECT_TRUE(read) << (read ? "" : read.error().detail);
    }
    return rows;
}

/// A log as a killed program leaves it, and what it held.
struct Original {
    Files files;
    Rows rows;
    std::vector<std::string> open;
    std::int64_t highest = 0;
};

/// Twelve closed welds, two open ones whose rows lie among the others', and one with rows at the
/// end; with a write-ahead log that was not brought into the file, or (`settled`) without one.
Original makeOriginal(bool settled) {
    const ScratchFolder folder;
    const std::string path = folder.file("o.log");
    const FakeClock clock;
    Original out;
    {
        auto writer = LogWriter<Production>::open(path, clock, quick());
        if (!writer) {
            ADD_FAILURE() << writer.error().detail;
            return out;
        }
        const auto documents = sampleDocuments();
        static_cast<void>(writer->note(clock.now(), "station", "station", ProgramStarted{}));
        static_cast<void>(writer->note(
            clock.now(), "station", "bench:bench-a", BenchSet{documents[1].sha256}, documents));
        const auto first = rowsOf(unfinishedWeld(13, 12));
        const auto second = rowsOf(unfinishedWeld(14, 9));
        std::size_t added = 0;
        const auto addOpen = [&](std::size_t upTo) {
            for (; added < upTo; ++added) {
                if (added < first.size()) {
                    writer->submit({first[added]}, documents);
                }
                if (added < second.size()) {
                    writer->submit({second[added]}, documents);
                }
                static_cast<void>(writer->flush());
            }
        };
        for (std::int64_t number = 1; number <= 12; ++number) {
            for (LogRow& row : rowsOf(closedWeld(number))) {
                writer->submit({std::move(row)}, documents);
            }
            static_cast<void>(writer->flush());
            addOpen(static_cast<std::size_t>(number) - 1);
            if (number == 8 && !settled) { // a part of them lies in the file, a part before it
                SQLite::Database other(path, SQLite::OPEN_READWRITE);
                other.exec("PRAGMA wal_checkpoint(TRUNCATE)");
            }
        }
        addOpen(12);
        for (LogRow& row : rowsOf(unfinishedWeld(15, 4))) {
            writer->submit({std::move(row)}, documents);
            static_cast<void>(writer->flush());
        }
        if (!settled) {
            out.files = readFiles(path);
        }
    }
    if (settled) {
        out.files = readFiles(path);
    }
    EXPECT_EQ(out.files.wal.empty(), settled);
    out.rows = rowsIn(path);
    out.open = {weldName(13), weldName(14), weldName(15)};
    out.highest = 15;
    return out;
}

/// Where something was changed: [from, to) of the log or its write-ahead log.
struct Damage {
    std::string what;
    bool inWal = false;
    std::size_t from = 0;
    std::size_t to = 0;
};

class Vandal {
public:
    explicit Vandal(std::uint64_t seed) : m_chance(seed) {}

    Damage strike(Files& files) {
        const bool wal = !files.wal.empty() && below(2) == 0;
        std::string& bytes = wal ? files.wal : files.log;
        Damage out{"", wal, 0, 0};
        switch (below(9)) {
        case 0:
        case 1:
            out = change(bytes, "a byte", below(bytes.size()), 1);
            break;
        case 2:
            out = change(bytes, "a few bytes", below(bytes.size()), 2 + below(14));
            break;
        case 3:
            out = change(bytes, "bytes of the header", below(100), 1 + below(4));
            break;
        case 4: // its first pages are the roots of the tables
            out = change(bytes, "bytes of a root", kPage * below(9) + below(12), 1 + below(8));
            break;
        case 5:
            out = change(bytes, "a page", place(bytes, wal), kPage);
            break;
        case 6:
            out = fill(bytes, "a page of zeros", place(bytes, wal), kPage);
            break;
        case 7:
            out = fill(bytes, "a sector of zeros", below(bytes.size()) / 512 * 512, 512);
            break;
        default:
            out = {"cut off", false, below(bytes.size()), bytes.size()};
            bytes.resize(out.from);
            break;
        }
        out.inWal = wal;
        return out;
    }

    std::size_t below(std::size_t end) {
        return std::uniform_int_distribution<std::size_t>(0, end - 1)(m_chance);
    }

private:
    std::size_t place(const std::string& bytes, bool wal) {
        return wal ? 32 + kFrame * below(std::max<std::size_t>(bytes.size() / kFrame, 1))
                   : kPage * below(std::max<std::size_t>(bytes.size() / kPage, 1));
    }
    Damage change(std::string& bytes, const char* what, std::size_t at, std::size_t count) {
        const std::size_t from = std::min(at, bytes.size() - 1);
        const std::size_t to = std::min(from + count, bytes.size());
        for (std::size_t i = from; i < to; ++i) {
            bytes[i] = static_cast<char>(
                static_cast<unsigned char>(bytes[i]) ^ static_cast<unsigned char>(1 + below(255)));
        }
        return {what, false, from, to};
    }
    Damage fill(std::string& bytes, const char* what, std::size_t at, std::size_t count) {
        const std::size_t from = std::min(at, bytes.size() - 1);
        const std::size_t to = std::min(from + count, bytes.size());
        std::fill(
            bytes.begin() + static_cast<std::ptrdiff_t>(from),
            bytes.begin() + static_cast<std::ptrdiff_t>(to), '\0');
        return {what, false, from, to};
    }

    std::mt19937_64 m_chance;
};

/// One damaged log.
class Trial {
public:
    Trial(const Original& original, const Files& damaged, const Damage& damage, DamageCount& count)
        : m_original(original), m_damaged(damaged), m_damage(damage), m_count(count),
          m_path(m_folder.file("a.log")) {
        writeFiles(m_path, damaged);
    }

    void run() {
        SCOPED_TRACE(
            m_damage.what + (m_damage.inWal ? " of the write-ahead log, " : " of the log, ") +
            std::to_string(m_damage.from) + " to " + std::to_string(m_damage.to));
        std::optional<SetAside> aside;
        {
            const FakeClock clock;
            auto opened = openLog<Production>(m_path, clock, {}, quick());
            if (!opened) {
                ++m_count.refused;
                expectUntouched(opened.error());
                return;
            }
            aside = std::move(opened->aside);
            // It can be gone on with.
            opened->writer.submit(rowsOf(closedWeld(20)), sampleDocuments());
            const auto flushed = opened->writer.flush();
            EXPECT_TRUE(flushed) << (flushed ? "" : flushed.error().detail);
            EXPECT_TRUE(opened->writer.state().refused.empty());
        }
        m_now = rowsIn(m_path);
        if (!aside) {
            ++m_count.opened;
            expectOpenWelds(nullptr);
            return;
        }
        ++(aside->sameChain ? m_count.mended : m_count.newChain);
        expectKept(*aside);
        expectSound();
        expectNothingInvented(*aside);
        expectOpenWelds(&*aside);
        EXPECT_LE(highestNumberAside(m_path), m_original.highest);
        if (readable(m_original.open.back(), 1)) {
            EXPECT_EQ(highestNumberAside(m_path), m_original.highest);
        }
    }

private:
    /// A refusal is for what may be a newer program's: the version in the header was changed into
    /// a small number.
    void expectUntouched(const Error& error) {
        EXPECT_EQ(textOf(m_path), m_damaged.log);
        EXPECT_NE(error.detail.find("newer program"), std::string::npos) << error.detail;
        EXPECT_TRUE(!m_damage.inWal && m_damage.from <= 63 && m_damage.to > 60) << error.detail;
    }

    void expectKept(const SetAside& aside) {
        EXPECT_TRUE(fs::exists(aside.note));
        EXPECT_FALSE(aside.why.empty());
        EXPECT_EQ(readFiles(aside.damaged).log, m_damaged.log) << "the damaged log was changed";
        EXPECT_EQ(readFiles(aside.damaged).wal, m_damaged.wal) << "its write-ahead log was changed";
        for (const auto& entry : fs::directory_iterator(m_folder.path())) {
            const std::string name = entry.path().filename().string();
            EXPECT_TRUE(
                name.find(".new") == std::string::npos && name.find(".work") == std::string::npos &&
                name.find(".part") == std::string::npos)
                << name << " was left over";
        }
    }

    void expectSound() {
        const auto verified = verifyLog(m_path);
        ASSERT_TRUE(verified) << verified.error().detail;
        EXPECT_TRUE(verified->ok) << (verified->finding ? verified->finding->reason : "");
    }

    /// What is in the new log is what was given, but for rows that the note says nothing vouches
    /// for.
    void expectNothingInvented(const SetAside& aside) {
        for (const auto& [subject, rows] : m_now) {
            if (subject == weldName(20)) {
                continue;
            }
            const auto given = m_original.rows.find(subject);
            ASSERT_NE(given, m_original.rows.end()) << subject << " never was";
            for (const auto& [n, body] : rows) {
                const auto row = given->second.find(n);
                ASSERT_NE(row, given->second.end()) << subject << ", n " << n << " never was";
                EXPECT_TRUE(row->second == body || unproven(aside, subject) > 0)
                    << subject << ", n " << n << " was changed";
            }
        }
    }

    static std::int64_t unproven(const SetAside& aside, const std::string& subject) {
        for (const SetAsideWeld& weld : aside.welds) {
            if (weld.weld == subject) {
                return weld.unproven;
            }
        }
        return 0;
    }

    /// Whether the row stands in the damaged bytes as it stood in the sound ones: its own bytes
    /// from the record's header on, and its page's head.
    bool readable(const std::string& subject, std::int64_t n) const {
        const std::string& body = m_original.rows.at(subject).at(n);
        if (body.size() > 900) {
            return false; // goes over several pages; not looked for here
        }
        const std::string start = body.substr(0, 200);
        return standsIn(m_original.files.log, m_damaged.log, body) ||
               standsIn(m_original.files.wal, m_damaged.wal, body);
    }

    static bool
    standsIn(const std::string& sound, const std::string& damaged, const std::string& body) {
        constexpr std::size_t kBefore = 64 + 16; // the hash, and the record's header
        for (auto at = sound.find(body); at != std::string::npos; at = sound.find(body, at + 1)) {
            const std::size_t from = at - kBefore;
            const std::size_t count = body.size() + kBefore;
            if (from + count <= damaged.size() &&
                damaged.compare(from, count, sound, from, count) == 0) {
                return true;
            }
        }
        return false;
    }

    void expectOpenWelds(const SetAside* aside) {
        for (const std::string& subject : m_original.open) {
            const auto& given = m_original.rows.at(subject);
            const auto& now = m_now[subject];
            if (now == given) {
                ++m_count.openWhole;
                continue;
            }
            if (aside == nullptr) {
                expectOnlyLastTransactionLost(subject);
                continue;
            }
            ++m_count.openNamed;
            expectNamed(*aside, subject, given, now);
        }
    }

    /// The last transaction before the program ended may be what a power cut tore: nothing in a
    /// file tells that from damage. Only its rows may go, and only from the write-ahead log; and
    /// where that was cut off, nothing tells that it was longer.
    void expectOnlyLastTransactionLost(const std::string& subject) {
        EXPECT_TRUE(m_damage.inWal) << subject;
        if (m_damage.what == "cut off") {
            const auto& given = m_original.rows.at(subject);
            for (const auto& [n, body] : m_now[subject]) {
                EXPECT_EQ(given.at(n), body) << subject << ", n " << n;
            }
            return;
        }
        EXPECT_EQ(subject, m_original.open.back());
        EXPECT_GE(m_now[subject].size() + 1, m_original.rows.at(subject).size()) << subject;
    }

    void expectNamed(
        const SetAside& aside, const std::string& subject,
        const std::map<std::int64_t, std::string>& given,
        const std::map<std::int64_t, std::string>& now) {
        const auto found =
            std::find_if(aside.welds.begin(), aside.welds.end(), [&](const SetAsideWeld& weld) {
                return weld.weld == subject;
            });
        const bool named = found != aside.welds.end();
        const bool told = aside.lostRows > 0 || !aside.endKnown;
        EXPECT_TRUE(named || told) << subject << " is gone without a word";
        const std::set<std::int64_t> lost =
            named ? std::set<std::int64_t>(found->lost.begin(), found->lost.end())
                  : std::set<std::int64_t>();
        const std::set<std::int64_t> apart =
            named ? std::set<std::int64_t>(found->apart.begin(), found->apart.end())
                  : std::set<std::int64_t>();
        for (const auto& [n, body] : given) {
            const bool here = now.count(n) != 0;
            if (!here) {
                EXPECT_TRUE(lost.count(n) != 0 || apart.count(n) != 0 || told)
                    << subject << ", n " << n << " is gone without a word";
                EXPECT_FALSE(readable(subject, n) && apart.count(n) == 0)
                    << subject << ", n " << n << " can be read and did not come back";
            }
        }
    }

    const Original& m_original;
    const Files& m_damaged;
    const Damage& m_damage;
    DamageCount& m_count;
    ScratchFolder m_folder;
    std::string m_path;
    Rows m_now;
};

} // namespace

DamageCount damageLogs(int trials, std::uint64_t seed) {
    const Original withWal = makeOriginal(false);
    const Original settled = makeOriginal(true);
    Vandal vandal(seed);
    DamageCount count;
    for (int i = 0; i < trials && !::testing::Test::HasFailure(); ++i) {
        const Original& original = vandal.below(2) == 0 ? withWal : settled;
        Files files = original.files;
        const Damage damage = vandal.strike(files);
        SCOPED_TRACE("trial " + std::to_string(i) + " of seed " + std::to_string(seed));
        Trial(original, files, damage, count).run();
    }
    return count;
}

} // namespace seamclock::test
