#include "tests/core/log/power_loss.h"

#include "core/base/uuid.h"
#include "core/log/connection.h"
#include "core/log/log_reader.h"
#include "core/log/recover.h"
#include "core/log/schema.h"
#include "core/log/spill.h"
#include "core/log/verify.h"
#include "tests/core/log/losing_disk.h"
#include "tests/support/log_samples.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <functional>
#include <gtest/gtest.h>
#include <set>
#include <sstream>

namespace seamclock::test {

namespace {

constexpr const char* kLog = "shop.log";
constexpr std::array kLosses{
    Loss::Everything, Loss::Nothing, Loss::LastTorn, Loss::OnlyLast, Loss::Sectors};

const char* nameOf(Loss loss) {
    switch (loss) {
    case Loss::Everything:
        return "nothing unsynced is there";
    case Loss::Nothing:
        return "all is there";
    case Loss::LastTorn:
        return "the last write tore";
    case Loss::OnlyLast:
        return "the last write overtook the others";
    case Loss::Sectors:
        return "sectors by chance";
    }
    return "";
}

std::string contentOf(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream content;
    content << file.rdbuf();
    return content.str();
}

/// What a program does on a floor, with what it was seen to promise.
class ShiftOnTheFloor {
public:
    explicit ShiftOnTheFloor(const std::string& path) : m_path(path) {}

    void work() {
        run(3, false, false);
        run(10, true, true); // long enough that SQLite moves its write-ahead log into the file
        run(3, false, false);
        Recorder::say("over");
    }

    /// Every body that was handed over.
    const std::set<std::string>& handedOver() const { return m_bodies; }

private:
    void run(int welds, bool lockedAtTheEnd, bool refusesOne) {
        LogWriterOptions options = quick();
        options.busyTimeout = Milliseconds(2);
        options.spillBytes = 64 * 1024;
        {
            auto writer = LogWriter<Production>::open(m_path, m_clock, options);
            ASSERT_TRUE(writer) << writer.error().detail;
            Recorder::say("made");
            for (int i = 0; i < welds; ++i) {
                const bool last = i + 1 == welds;
                weld(*writer, !last || lockedAtTheEnd, last && lockedAtTheEnd);
                if (refusesOne && i == 0) {
                    writer->submit({{"weld:none", 1, kRefused}});
                    ASSERT_TRUE(writer->flush());
                    Recorder::say(std::string("refused ") + kRefused);
                }
            }
        }
        m_locker.reset();
    }

    void lock() {
        m_locker = std::make_unique<SQLite::Database>(m_path, SQLite::OPEN_READWRITE, 1000);
        m_locker->exec("BEGIN IMMEDIATE");
    }

    /// Locked by another program from its seventh row on, for seven rows or (`stays`) to its end.
    void weld(LogWriter<Production>& writer, bool locked, bool stays) {
        const auto rows = rowsOf(closedWeld(++m_number));
        std::size_t told = 0;
        for (std::size_t i = 0; i < rows.size(); ++i) {
            if (locked && i == 6) {
                ASSERT_TRUE(writer.flush());
                lock();
            }
            if (i == 13 && !stays) {
                m_locker.reset();
            }
            m_bodies.insert(rows[i].body);
            writer.submit({rows[i]}, sampleDocuments());
            if (i % 3 == 2 || i + 1 == rows.size()) {
                static_cast<void>(writer.flush());
            }
            for (; told <= i; ++told) {
                const RowStatus status = writer.status(rows[told].subject, rows[told].n);
                if (status == RowStatus::Pending) {
                    break;
                }
                Recorder::say(
                    (status == RowStatus::Saved ? "saved " : "spilled ") + rows[told].body);
            }
        }
        for (const LogRow& row : rows) {
            if (writer.status(row.subject, row.n) == RowStatus::Saved) {
                Recorder::say("saved " + row.body);
            }
        }
    }

    static constexpr const char* kRefused = "{\"this\":\"is no event\"}";

    std::string m_path;
    FakeClock m_clock;
    std::int64_t m_number = 0;
    std::set<std::string> m_bodies;
    std::unique_ptr<SQLite::Database> m_locker;
};

/// What was promised so far.
struct Promises {
    bool made = false;
    std::set<std::string> saved;
    std::set<std::string> spilled;
    std::set<std::string> refused;
    std::set<std::string> words;

    void add(const std::string& said) {
        const auto space = said.find(' ');
        const std::string word = said.substr(0, space);
        const std::string body = space == std::string::npos ? "" : said.substr(space + 1);
        made = made || word == "made";
        words.insert(word);
        if (word == "saved") {
            saved.insert(body);
        } else if (word == "spilled") {
            spilled.insert(body);
        } else if (word == "refused") {
            refused.insert(body);
        }
    }
};

std::set<std::string> bodiesIn(const std::string& path) {
    std::set<std::string> bodies;
    auto reader = LogReader::open(path);
    if (!reader) {
        ADD_FAILURE() << reader.error().detail;
        return bodies;
    }
    const auto read = reader->eachRow([&](const StoredRow& row) {
        EXPECT_TRUE(bodies.insert(row.body).second) << "a row stands twice";
        return true;
    });
    EXPECT_TRUE(read) << (read ? "" : read.error().detail);
    return bodies;
}

void expectSound(const std::string& path) {
    const auto verified = verifyLog(path);
    ASSERT_TRUE(verified) << verified.error().detail;
    EXPECT_TRUE(verified->ok) << (verified->finding ? verified->finding->reason : "");
}

void expectAll(
    const std::set<std::string>& promised, const std::set<std::string>& there, const char* what) {
    for (const std::string& body : promised) {
        EXPECT_EQ(there.count(body), 1U) << what << ", and lost: " << body.substr(0, 200);
    }
}

/// What is in SQLite's own index file beside the log means nothing after a cut: anything may stand
/// there.
void spoilIndex(std::map<std::string, std::string>& files, std::mt19937_64& random) {
    for (auto file = files.begin(); file != files.end();) {
        const bool index =
            file->first.size() > 4 && file->first.compare(file->first.size() - 4, 4, "-shm") == 0;
        const auto fate = random() % 3;
        if (index && fate == 0) {
            file = files.erase(file);
            continue;
        }
        if (index && fate == 1) {
            for (char& byte : file->second) {
                byte = static_cast<char>(random());
            }
        }
        ++file;
    }
}

using Look = std::function<void(
    const std::map<std::string, std::string>& files, const Promises&, PowerLossReport&)>;

/// Replays the notes and looks at each of these moments (the number of notes before it), with every
/// kind of loss.
PowerLossReport cutAt(
    const std::vector<DiskNote>& notes, const std::vector<std::size_t>& moments, std::uint64_t seed,
    const Look& look) {
    PowerLossReport report;
    std::mt19937_64 random(seed);
    LosingDisk disk;
    Promises promises;
    auto next = moments.begin();
    for (std::size_t i = 0; i <= notes.size() && !::testing::Test::HasFailure(); ++i) {
        for (; next != moments.end() && *next == i; ++next) {
            for (const Loss loss : kLosses) {
                SCOPED_TRACE(
                    "cut before note " + std::to_string(i) + " of " + std::to_string(notes.size()) +
                    ", " + nameOf(loss));
                auto files = disk.afterPowerCut(loss, random);
                spoilIndex(files, random);
                ++report.states;
                look(files, promises, report);
                if (::testing::Test::HasFailure()) {
                    return report;
                }
            }
        }
        if (i < notes.size()) {
            disk.replay(notes[i]);
            if (notes[i].kind == DiskNote::Kind::Said) {
                promises.add(notes[i].bytes);
            }
        }
    }
    return report;
}

std::vector<std::size_t> everyMoment(const std::vector<DiskNote>& notes, std::size_t every) {
    std::vector<std::size_t> moments;
    for (std::size_t i = 0; i <= notes.size(); i += every) {
        moments.push_back(i);
    }
    return moments;
}

std::vector<std::size_t>
byChance(const std::vector<DiskNote>& notes, int count, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    std::vector<std::size_t> moments;
    for (int i = 0; i < count; ++i) {
        moments.push_back(random() % (notes.size() + 1));
    }
    std::sort(moments.begin(), moments.end());
    return moments;
}

/// Rows of a weld are saved in their order: what is there of it makes a weld.
void expectWeldsGoOn(const std::string& path) {
    const auto open = recoverOpenWelds(path);
    ASSERT_TRUE(open) << open.error().detail;
    for (const RecoveredWeld& one : *open) {
        ASSERT_TRUE(one.weld) << one.subject << ": " << one.weld.error().detail;
        const std::int64_t number = one.weld->opened().number;
        const auto whole = closedWeld(number);
        const std::size_t there = one.weld->events.size();
        ASSERT_LE(there, whole.size());
        // Phase and time are those of the weld as it was at that event.
        auto live = seamclock::open(whole.front());
        for (std::size_t i = 1; live && i < there; ++i) {
            live = apply(*live, whole[i]);
        }
        ASSERT_TRUE(live) << live.error().detail;
        EXPECT_EQ(*one.weld, *live);
    }
}

void lookAtShift(
    const std::map<std::string, std::string>& files, const Promises& promises,
    const std::set<std::string>& handedOver, PowerLossReport& report) {
    const ScratchFolder folder;
    writeFiles(files, folder.path());
    const std::string path = folder.file(kLog);
    std::set<std::string> safe;
    if (files.count(kLog) == 0) {
        EXPECT_FALSE(promises.made) << "the log was there, and is gone";
        ++report.beforeTheLog;
    } else {
        expectSound(path);
        safe = bodiesIn(path);
        expectAll(promises.saved, safe, "saved");
        expectWeldsGoOn(path);
    }
    const auto spill = readSpill(path + ".spill");
    ASSERT_TRUE(spill) << spill.error().detail;
    EXPECT_TRUE(spill->damaged.empty()) << spill->damaged.front();
    report.joined += spill->rows.empty() ? 0 : 1;
    for (const LogRow& row : spill->rows) {
        safe.insert(row.body);
    }
    expectAll(promises.spilled, safe, "spilled");
    const std::string refused = contentOf(path + ".refused");
    for (const std::string& body : promises.refused) {
        EXPECT_NE(refused.find(body), std::string::npos) << "refused, and lost: " << body;
    }
    report.promises +=
        static_cast<int>(promises.saved.size() + promises.spilled.size() + promises.refused.size());
    // The next start.
    const FakeClock clock;
    {
        auto writer = LogWriter<Production>::open(path, clock, quick());
        ASSERT_TRUE(writer) << writer.error().detail;
        ASSERT_TRUE(writer->flush());
        EXPECT_TRUE(writer->state().refused.empty());
        EXPECT_EQ(writer->origin(), files.count(kLog) == 0 ? LogOrigin::New : LogOrigin::Known);
    }
    expectSound(path);
    const auto after = bodiesIn(path);
    for (const std::string& body : safe) {
        EXPECT_EQ(after.count(body), 1U) << "not joined: " << body.substr(0, 200);
    }
    for (const std::string& body : after) {
        const bool ofStation = body.find("\"subject\":\"station\"") != std::string::npos;
        EXPECT_TRUE(ofStation || handedOver.count(body) == 1) << "nobody gave this: " << body;
    }
    expectWeldsGoOn(path);
}

struct Recorded {
    std::vector<DiskNote> notes;
    std::set<std::string> handedOver;
};

Recorded recordShift() {
    const ScratchFolder folder;
    Recorder recorder(folder.path());
    ShiftOnTheFloor shift(folder.file(kLog));
    shift.work();
    Recorded recorded{recorder.finish(), shift.handedOver()};
    // The notes are worth nothing if a write passed them by.
    LosingDisk disk;
    std::mt19937_64 random(1);
    std::map<std::string, std::string> expected;
    for (const DiskNote& note : recorded.notes) {
        disk.replay(note);
    }
    const auto all = disk.afterPowerCut(Loss::Nothing, random);
    EXPECT_GT(all.size(), 3U);
    for (const auto& [name, content] : all) {
        EXPECT_TRUE(content == contentOf(folder.file(name))) << name << " was not noted whole";
    }
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) {
        EXPECT_EQ(all.count(entry.path().filename().string()), 1U) << entry.path();
    }
    return recorded;
}

} // namespace

PowerLossReport losePowerInAShift(int moments, std::uint64_t seed) {
    const Recorded recorded = recordShift();
    std::vector<std::size_t> cuts = byChance(recorded.notes, moments, seed);
    // And once while a row stands in the spill file: few moments do, and chance may miss them all.
    const auto spilled =
        std::find_if(recorded.notes.begin(), recorded.notes.end(), [](const DiskNote& note) {
            return note.kind == DiskNote::Kind::Said && note.bytes.rfind("spilled ", 0) == 0;
        });
    if (spilled != recorded.notes.end()) {
        cuts.push_back(static_cast<std::size_t>(spilled - recorded.notes.begin()) + 1);
        std::sort(cuts.begin(), cuts.end());
    }
    return cutAt(
        recorded.notes, cuts, seed,
        [&](const auto& files, const Promises& promises, PowerLossReport& report) {
            lookAtShift(files, promises, recorded.handedOver, report);
        });
}

PowerLossReport losePowerWhileALogIsMade(std::size_t every) {
    const ScratchFolder folder;
    Recorder recorder(folder.path());
    {
        const FakeClock clock;
        LogWriterOptions options = quick();
        options.spillBytes = 16 * 1024;
        auto writer = LogWriter<Production>::open(folder.file(kLog), clock, options);
        if (!writer) {
            ADD_FAILURE() << writer.error().detail;
            return {};
        }
        Recorder::say("made");
    }
    const auto notes = recorder.finish();
    return cutAt(
        notes, everyMoment(notes, every), 1,
        [](const auto& files, const Promises& promises, PowerLossReport& report) {
            lookAtShift(files, promises, {}, report);
        });
}

PowerLossReport losePowerInAMigration(std::size_t every) {
    auto steps = migrations();
    const int first = steps.back().version;
    steps.push_back({first + 1, "CREATE TABLE later(x INTEGER) STRICT;"});
    steps.push_back({first + 2, "INSERT INTO later VALUES(7);"});
    const std::string copyName = std::string(kLog) + ".before-" + std::to_string(first + 2);
    const ScratchFolder folder;
    const std::string path = folder.file(kLog);
    Recorder recorder(folder.path());
    const FakeClock clock;
    writeSampleLog(path, clock);
    const std::set<std::string> rows = bodiesIn(path);
    Recorder::say("written");
    {
        auto database = openForWriting(path, 100);
        if (!database || !migrate(**database, path, steps)) {
            ADD_FAILURE() << "the migration itself failed";
            return {};
        }
    }
    Recorder::say("migrated");
    const auto notes = recorder.finish();
    const auto written = std::find_if(notes.begin(), notes.end(), [](const DiskNote& note) {
        return note.kind == DiskNote::Kind::Said && note.bytes == "written";
    });
    std::vector<std::size_t> moments;
    for (auto i = static_cast<std::size_t>(written - notes.begin()) + 1; i <= notes.size();
         i += every) {
        moments.push_back(i);
    }
    const auto bodiesOf = [](SQLite::Database& database) {
        std::set<std::string> bodies;
        SQLite::Statement query(database, "SELECT body FROM event");
        while (query.executeStep()) {
            bodies.insert(query.getColumn(0).getString());
        }
        return bodies;
    };
    return cutAt(
        notes, moments, 1,
        [&](const auto& files, const Promises& promises, PowerLossReport& report) {
            const ScratchFolder place;
            writeFiles(files, place.path());
            const std::string log = place.file(kLog);
            ASSERT_TRUE(std::filesystem::exists(log));
            report.promises += static_cast<int>(rows.size());
            const bool done = promises.words.count("migrated") == 1;
            const bool copied = std::filesystem::exists(place.file(copyName));
            {
                auto database = openForWriting(log, 100);
                ASSERT_TRUE(database) << database.error().detail;
                EXPECT_EQ(textOf(**database, "PRAGMA integrity_check"), "ok");
                const auto version = integerOf(**database, "PRAGMA user_version");
                EXPECT_GE(version, done ? first + 2 : first);
                EXPECT_EQ(hasTable(**database, "later"), version > first);
                EXPECT_TRUE(bodiesOf(**database) == rows);
                // The copy was there, whole, before anything was changed.
                EXPECT_TRUE(copied || version == first);
                const auto again = migrate(**database, log, steps);
                ASSERT_TRUE(again) << again.error().detail;
                EXPECT_EQ(integerOf(**database, "SELECT count(*) FROM later"), 1);
                EXPECT_TRUE(bodiesOf(**database) == rows);
            }
            expectSound(place.file(copyName));
            EXPECT_TRUE(bodiesIn(place.file(copyName)) == rows);
        });
}

PowerLossReport loseTheFilesBesideTheLog(int moments, std::uint64_t seed) {
    const Recorded recorded = recordShift();
    return cutAt(
        recorded.notes, byChance(recorded.notes, moments, seed), seed,
        [&](const auto& files, const Promises&, PowerLossReport& report) {
            auto left = files;
            left.erase(std::string(kLog) + "-wal");
            if (report.states % 2 == 0) {
                left.erase(std::string(kLog) + "-shm");
            }
            if (left.count(kLog) == 0) {
                ++report.beforeTheLog;
                return;
            }
            const ScratchFolder folder;
            writeFiles(left, folder.path());
            const std::string path = folder.file(kLog);
            const auto verified = verifyLog(path);
            const bool sound = verified && verified->ok;
            const FakeClock clock;
            const auto writer = LogWriter<Production>::open(path, clock, quick());
            // Either one tells, in a sentence; what is called sound holds rows that were given.
            EXPECT_TRUE(verified || !verified.error().detail.empty());
            EXPECT_TRUE(writer || !writer.error().detail.empty());
            if (sound) {
                ++report.promises;
                for (const std::string& body : bodiesIn(path)) {
                    const bool ofStation =
                        body.find("\"subject\":\"station\"") != std::string::npos;
                    EXPECT_TRUE(ofStation || recorded.handedOver.count(body) == 1) << body;
                }
                EXPECT_TRUE(writer) << writer.error().detail;
            }
        });
}

} // namespace seamclock::test
