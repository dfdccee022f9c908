#include "tests/faults/fault_matrix.h"

#include "app/platform/boot_clock.h"
#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/log/spill.h"
#include "core/log/verify.h"
#include "core/log/world.h"
#include "tests/faults/driver.h"
#include "tests/support/scratch_folder.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <algorithm>
#include <atomic>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <map>
#include <memory>
#include <optional>
#include <poll.h>
#include <set>
#include <sstream>
#include <thread>
#include <unistd.h>

namespace seamclock::test {

namespace {

namespace fs = std::filesystem;
using std::chrono::milliseconds;

constexpr int kAtOnce = 12;          // programs that weld side by side: they mostly wait
constexpr int kHand = 3;             // % of the operator's times, so that his steps come apart
constexpr Milliseconds kLeast{400};  // a fault stands at least that long,
constexpr Milliseconds kMost{8'000}; // and at most that

/// Where a case happens.
struct Scene {
    explicit Scene(FaultCase one) : what(std::move(one)) {
        fs::create_directories(fs::path(log()).parent_path());
        call.log = log();
        call.trueTime = true;
        call.hand = kHand;
    }
    std::string log() const { return folder.file("shop/joint.seamlog"); }
    std::string control() const { return folder.file("fault"); }

    FaultCase what;
    ScratchFolder folder;
    DriverCall call;
};

class Fault {
public:
    virtual ~Fault() = default;
    virtual std::string whyNot(const Scene&) { return ""; }
    virtual void prepare(Scene&) {}
    virtual void begin(Scene&) = 0;
    virtual void end(Scene&) = 0;
    /// Whether the operator must be told of rows that can't be written.
    virtual bool troubles() const { return true; }
    /// The log to look at when all is over.
    virtual std::string fetch(Scene& scene) { return scene.log(); }
    /// What else was seen of it, for the report; what was wrong.
    virtual std::string seen() const { return ""; }
    virtual std::vector<std::string> wrong() const { return {}; }
};

/// What fault_shim.cpp makes.
class DiskFault : public Fault {
public:
    explicit DiskFault(std::string word) : m_word(std::move(word)) {}
    /// One that comes and goes may be over before anybody is to be told.
    bool troubles() const override { return m_word != "every 7"; }
    void prepare(Scene& scene) override {
        say(scene, "none");
        scene.call.before = {
            "env", std::string("LD_PRELOAD=") + SEAMCLOCK_FAULT_SHIM,
            "SEAMCLOCK_FAULT=" + scene.control()};
    }
    void begin(Scene& scene) override { say(scene, m_word); }
    void end(Scene& scene) override { say(scene, "none"); }

private:
    static void say(const Scene& scene, const std::string& word) {
        std::ofstream(scene.control() + ".new") << word << "\n";
        fs::rename(scene.control() + ".new", scene.control());
    }
    std::string m_word;
};

/// A file system of 6 MB in a mount namespace, filled to the last byte.
class SmallDisk : public Fault {
public:
    ~SmallDisk() override {
        if (m_holder > 0) {
            ::kill(m_holder, SIGKILL);
        }
    }
    std::string whyNot(const Scene& scene) override {
        if (::geteuid() != 0) {
            return "only root may mount a small file system";
        }
        const std::string command = "unshare --mount mount -t tmpfs -o size=6m tmpfs '" +
                                    fs::path(scene.log()).parent_path().string() + "' 2>/dev/null";
        return std::system(command.c_str()) == 0 ? ""
                                                 : "this machine gives root no mount namespace";
    }
    void prepare(Scene& scene) override {
        m_place = fs::path(scene.log()).parent_path().string();
        const std::string pidFile = scene.folder.file("holder");
        const std::string command =
            "unshare --mount sh -c 'mount -t tmpfs -o size=6m tmpfs \"$0\" && echo $$ > \"$1.new\" "
            "&& mv \"$1.new\" \"$1\" && exec sleep 600' '" +
            m_place + "' '" + pidFile + "' >/dev/null 2>&1 &";
        if (std::system(command.c_str()) == 0) {
            for (int i = 0; i < 1'000 && !fs::exists(pidFile); ++i) {
                ::poll(nullptr, 0, 10);
            }
        }
        std::ifstream(pidFile) >> m_holder;
        scene.call.before = {
            "nsenter", "--mount=/proc/" + std::to_string(m_holder) + "/ns/mnt", "--"};
    }
    void begin(Scene&) override {
        std::ofstream filler(inside("filler"), std::ios::binary);
        const std::string block(1024, 'x');
        while (filler.write(block.data(), static_cast<std::streamsize>(block.size())).flush()) {
        }
    }
    void end(Scene&) override {
        std::error_code ignored;
        fs::remove(inside("filler"), ignored);
    }
    std::string fetch(Scene& scene) override {
        const std::string to = scene.folder.file("fetched");
        fs::create_directories(to);
        for (const auto& entry : fs::directory_iterator(inside(""))) {
            fs::copy_file(entry.path(), to + "/" + entry.path().filename().string());
        }
        return to + "/joint.seamlog";
    }

private:
    std::string inside(const std::string& name) const {
        return "/proc/" + std::to_string(m_holder) + "/root" + m_place + "/" + name;
    }
    pid_t m_holder = 0;
    std::string m_place;
};

class Locked : public Fault {
public:
    void begin(Scene& scene) override {
        m_other = std::make_unique<SQLite::Database>(scene.log(), SQLite::OPEN_READWRITE, 10'000);
        m_other->exec("BEGIN IMMEDIATE");
    }
    void end(Scene&) override {
        m_other->exec("ROLLBACK");
        m_other.reset();
    }

private:
    std::unique_ptr<SQLite::Database> m_other;
};

class FolderGone : public Fault {
public:
    void begin(Scene& scene) override {
        m_place = fs::path(scene.log()).parent_path();
        fs::rename(m_place, m_place.string() + ".away");
    }
    void end(Scene&) override { fs::rename(m_place.string() + ".away", m_place); }

private:
    fs::path m_place;
};

class SecondProgram : public Fault {
public:
    bool troubles() const override { return false; }
    void begin(Scene& scene) override {
        DriverCall second = scene.call;
        second.seed = 2;
        m_told = runDriver(second);
    }
    void end(Scene&) override {}
    std::vector<std::string> wrong() const override {
        if (m_told.error.find("another program is writing this log") == std::string::npos) {
            return {"the second program was not refused: " + m_told.error};
        }
        return {};
    }
    std::string seen() const override { return "the second is refused"; }

private:
    Told m_told;
};

/// Where what stands in the file is changed between two runs.
class Damaged : public Fault {
public:
    bool troubles() const override { return false; }
    void begin(Scene&) override {}
    void end(Scene& scene) override {
        std::fstream file(scene.log(), std::ios::binary | std::ios::in | std::ios::out);
        file.write(std::string(20, '\0').data(), 20);
    }
    std::string seen() const override { return "set aside"; }
};

std::unique_ptr<Fault> makeFault(const std::string& name) {
    static const std::map<std::string, std::string> kWords{
        {"disk full", "full"},     {"disk error", "error"},        {"sync error", "sync"},
        {"read-only", "readonly"}, {"every 3rd write", "every 3"}, {"every 7th write", "every 7"}};
    if (const auto word = kWords.find(name); word != kWords.end()) {
        return std::make_unique<DiskFault>(word->second);
    }
    if (name == "small disk full") {
        return std::make_unique<SmallDisk>();
    }
    if (name == "locked") {
        return std::make_unique<Locked>();
    }
    if (name == "folder gone") {
        return std::make_unique<FolderGone>();
    }
    if (name == "second program") {
        return std::make_unique<SecondProgram>();
    }
    return std::make_unique<Damaged>();
}

/// Whether the weld has come into a phase: by the kinds that were told.
bool hasReached(const Told& told, const std::string& phase) {
    static const std::map<std::string, std::pair<std::string, int>> kBegins{
        {"preparing", {"check_made", 2}}, {"alignment", {"alignment_started", 1}},
        {"soak", {"soak_started", 1}},    {"changeover", {"plate_out", 1}},
        {"build-up", {"faces_met", 1}},   {"cooling", {"pressure_locked", 1}},
        {"release", {"release_step", 1}}, {"inspection", {"release_step", 4}}};
    const auto& [kind, times] = kBegins.at(phase);
    return std::count_if(told.events.begin(), told.events.end(), [&, k = kind](const auto& event) {
               return event.second.kind == k;
           }) >= times;
}

class Case {
public:
    explicit Case(Scene& scene) : m_scene(scene), m_fault(makeFault(scene.what.fault)) {
        m_row.fault = scene.what.fault + (scene.what.killed ? ", killed" : "");
        m_row.phase = scene.what.phase;
    }

    FaultRow run() {
        if (const std::string why = m_fault->whyNot(m_scene); !why.empty()) {
            m_row.skipped = true;
            m_row.outcome = "skipped: " + why;
            return m_row;
        }
        m_fault->prepare(m_scene);
        m_first = runDriverWatched(m_scene.call, [this](const Told& told) { return look(told); });
        if (m_standing) {
            end(m_first);
        }
        hold(m_began.has_value(), "the phase was never reached: " + m_first.error);
        if (m_scene.what.killed) {
            hold(m_first.killed, "it ended before it could be killed");
            m_leftToJoin = isLeftToJoin();
            again();
        }
        examine();
        return m_row;
    }

private:
    void hold(bool good, const std::string& otherwise) {
        if (!good) {
            m_row.wrong.push_back(otherwise);
        }
    }

    static bool hasTrouble(const Told& told) {
        return std::any_of(
            told.troubles.begin(), told.troubles.end(),
            [](const std::string& trouble) { return !trouble.empty(); });
    }

    /// Begins the fault, lets it stand until the weld has gone on and the operator was told, ends
    /// it; or has the program killed meanwhile.
    bool look(const Told& told) {
        if (!m_began) {
            if (hasReached(told, m_scene.what.phase)) {
                m_eventsBefore = told.events.size();
                m_fault->begin(m_scene);
                m_began = bootTime();
                m_standing = true;
            }
            return true;
        }
        if (!m_standing) {
            return true;
        }
        const Milliseconds stood = bootTime() - *m_began;
        const bool wentOn = told.events.size() > m_eventsBefore;
        const bool wasTold = hasTrouble(told) || !m_fault->troubles();
        if (stood < kMost && (stood < kLeast || !wentOn || !wasTold)) {
            return true;
        }
        if (m_scene.what.killed) {
            return false;
        }
        end(told);
        return true;
    }

    void end(const Told& told) {
        m_during = told.events.size() - m_eventsBefore;
        m_fault->end(m_scene);
        m_standing = false;
    }

    /// Whether the killed program spilled a row that the log does not hold.
    bool isLeftToJoin() const {
        const auto left = readSpill(m_scene.log() + ".spill");
        auto reader = LogReader::open(m_scene.log());
        if (!left || !reader) {
            return false;
        }
        return std::any_of(left->rows.begin(), left->rows.end(), [&](const LogRow& row) {
            const auto held = reader->bodies(row.subject);
            return !held || std::find(held->begin(), held->end(), row.body) == held->end();
        });
    }

    /// The program is started again on what the killed one left, without the fault.
    void again() {
        DriverCall call = m_scene.call;
        call.resume = true;
        m_second = runDriver(call);
        // On a busy machine the kill may come when the weld's end is already safe.
        const std::string last = m_first.events.empty() ? "" : m_first.events.rbegin()->second.kind;
        const bool over = last == kindOf(WeldDetail{WeldClosed{}}) &&
                          m_second->error.find("nothing to resume") != std::string::npos;
        hold(
            over || !m_second->done.empty(),
            "it did not go on after the start: " + m_second->error);
    }

    void examine() {
        const std::string log = m_fault->fetch(m_scene);
        m_toldOf = hasTrouble(m_first);
        hold(m_during > 0, "no event came while the fault stood");
        if (m_fault->troubles()) {
            hold(m_toldOf, "the operator was not told");
        }
        hold(
            m_scene.what.killed || !m_first.done.empty() || m_toldOf,
            "the weld did not go on to its end: " + m_first.error);
        joinAtNextStart(log);
        const auto verified = verifyLog(log);
        hold(verified && verified->ok, "the log does not verify");
        compare(log);
        describe();
        for (const std::string& one : m_fault->wrong()) {
            m_row.wrong.push_back(one);
        }
    }

    /// What the program could not write before its end, the next one does.
    void joinAtNextStart(const std::string& log) {
        const auto waiting = readSpill(log + ".spill");
        m_waited = waiting && !waiting->rows.empty();
        const auto clock = BootClock::make();
        auto writer = LogWriter<Practice>::open(log, *clock);
        hold(
            writer.has_value(),
            "it can't be opened again: " + (writer ? "" : writer.error().detail));
        if (writer) {
            const auto flushed = writer->flush();
            hold(flushed.has_value(), "its rows can't be joined");
        }
    }

    /// Every event that was told is in the log, at its instant, and nothing told as saved is
    /// missing.
    void compare(const std::string& log) {
        auto reader = LogReader::open(log);
        const auto events =
            reader ? reader->weldEvents(m_first.weld) : Result<std::vector<Event>>();
        if (!reader || !events) {
            hold(false, "the weld can't be read");
            return;
        }
        std::map<std::int64_t, Told::Event> told = m_first.events;
        std::set<std::int64_t> saved = m_first.saved;
        if (m_second) {
            // What was only in memory when it was killed is lost, and was never told as saved.
            for (const auto& [n, event] : m_second->events) {
                told[n] = event;
            }
            saved.insert(m_second->saved.begin(), m_second->saved.end());
        }
        for (const std::int64_t n : saved) {
            hold(
                n <= static_cast<std::int64_t>(events->size()),
                "event " + std::to_string(n) + " was told as saved and is not there");
        }
        hold(
            told.size() == events->size(), std::to_string(told.size()) + " events were told, " +
                                               std::to_string(events->size()) + " are there");
        for (const Event& event : *events) {
            const auto found = told.find(event.n);
            hold(
                found != told.end() && found->second.kind == kindOf(event.d) &&
                    found->second.bootMs == event.at.boot.count(),
                "event " + std::to_string(event.n) + " is not the one that was told");
        }
        countFacts(*reader);
    }

    void countFacts(LogReader& reader) {
        const auto bodies = reader.bodies("station");
        for (const std::string& body : bodies ? *bodies : std::vector<std::string>()) {
            m_spilled = m_spilled || body.find("\"kind\":\"rows_spilled\"") != std::string::npos;
            m_joined = m_joined || body.find("\"kind\":\"rows_joined\"") != std::string::npos;
        }
    }

    void describe() {
        std::ostringstream text;
        text << "went on with " << m_during << (m_during == 1 ? " event" : " events");
        const std::string seen = m_fault->seen();
        if (!seen.empty()) {
            text << ", " << seen;
        }
        if (m_toldOf) {
            text << ", told";
        }
        if (m_spilled) {
            text << ", spilled";
        }
        if (m_joined) {
            text << (m_waited ? ", joined at the next start" : ", joined");
        }
        if (m_second) {
            text << ", resumed" << (m_second->aside.empty() ? "" : " from a log set aside");
        }
        m_row.outcome = text.str();
        const bool damage = m_scene.what.fault == "damaged at start";
        hold(
            !damage || (m_second && m_second->aside.rfind("same ", 0) == 0),
            "the damaged log was not set aside");
        if (m_fault->troubles()) {
            // A kill may come before anything was spilled, after it and before the log was told,
            // or when what was spilled had been written and only not synced: then it is in the log
            // when the program comes back, and nothing is left to be joined.
            hold(m_spilled || m_scene.what.killed, "the log does not tell of rows spilled");
            hold(
                m_joined || (m_scene.what.killed && !m_leftToJoin),
                "the log does not tell of rows joined");
        }
    }

    Scene& m_scene;
    std::unique_ptr<Fault> m_fault;
    FaultRow m_row;
    Told m_first;
    std::optional<Told> m_second;
    std::optional<Milliseconds> m_began;
    bool m_standing = false;
    std::size_t m_eventsBefore = 0;
    std::size_t m_during = 0;
    bool m_toldOf = false;
    bool m_waited = false;
    bool m_leftToJoin = false;
    bool m_spilled = false;
    bool m_joined = false;
};

} // namespace

std::vector<std::string> faultNames() {
    return {"small disk full", "disk full",       "disk error", "sync error",  "read-only",
            "every 3rd write", "every 7th write", "locked",     "folder gone", "second program"};
}

std::vector<std::string> phaseNames() {
    return {"preparing", "alignment", "soak",    "changeover",
            "build-up",  "cooling",   "release", "inspection"};
}

std::vector<FaultRow> runFaults(const std::vector<FaultCase>& cases) {
    std::vector<std::unique_ptr<Scene>> scenes;
    scenes.reserve(cases.size());
    for (const FaultCase& one : cases) {
        scenes.push_back(std::make_unique<Scene>(one));
    }
    std::vector<FaultRow> rows(cases.size());
    std::atomic<std::size_t> next{0};
    std::vector<std::thread> workers;
    for (int i = 0; i < kAtOnce; ++i) {
        workers.emplace_back([&] {
            for (std::size_t at = next++; at < scenes.size(); at = next++) {
                rows[at] = Case(*scenes[at]).run();
            }
        });
    }
    for (std::thread& worker : workers) {
        worker.join();
    }
    return rows;
}

void writeReport(const std::vector<FaultRow>& rows) {
    std::ostringstream text;
    for (const FaultRow& row : rows) {
        text << row.fault << " | " << row.phase << " | " << row.outcome;
        for (const std::string& wrong : row.wrong) {
            text << " | WRONG: " << wrong;
        }
        text << "\n";
    }
    std::printf("fault | phase | outcome\n%s", text.str().c_str());
    std::ofstream(std::string(SEAMCLOCK_BIN_DIR) + "/../fault_report.txt")
        << "fault | phase | outcome\n"
        << text.str();
}

void expectAllHeld(const std::vector<FaultRow>& rows) {
    for (const FaultRow& row : rows) {
        for (const std::string& wrong : row.wrong) {
            ADD_FAILURE() << row.fault << ", " << row.phase << ": " << wrong;
        }
    }
}

} // namespace seamclock::test
