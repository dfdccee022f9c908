#include "core/rescue/set_aside.h"

#include "core/base/posix.h"
#include "core/log/chain.h"
#include "core/log/connection.h"
#include "core/log/log_lock.h"
#include "core/log/schema.h"
#include "core/log/spill.h"
#include "core/machine/machine.h"
#include "core/rescue/salvage.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <SQLiteCpp/Transaction.h>
#include <algorithm>
#include <array>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <system_error>
#include <unistd.h>

namespace seamclock {

namespace {

namespace fs = std::filesystem;

constexpr std::array kParts{"-wal", "-shm", ".spill", ""};
constexpr const char* kNoteHead = "A damaged joint log was set aside here.";
constexpr const char* kHighest = "highest joint number: ";
constexpr std::int64_t kNewestVersion = 9'999; // of a log's form: beyond, the header is damaged
constexpr std::size_t kFlushEach = 200;        // subjects

bool exists(const std::string& path) {
    std::error_code ignored;
    return fs::exists(fs::symlink_status(path, ignored));
}

void removeQuietly(const std::string& path) {
    std::error_code ignored;
    fs::remove(path, ignored);
}

bool syncFile(const std::string& path, int flags) {
    const FileHandle file(::open(path.c_str(), flags | O_CLOEXEC));
    return file.get() >= 0 && fsync(file.get()) == 0;
}

bool syncFolderOf(const std::string& path) {
    return syncFile(fs::path(path).parent_path().string(), O_RDONLY | O_DIRECTORY);
}

/// Never over a file that is there.
Result<void> move(const std::string& from, const std::string& to) {
    if (const int why = renameWithoutReplacing(from, to); why != 0) {
        return fail(
            ErrorCode::NotWritten,
            from + ": can't be moved to " + to + " (" + std::strerror(why) + ")");
    }
    return {};
}

/// "20301107T060000Z"
std::string stampOf(const Clock& clock) {
    std::string out;
    for (const char c : toIsoUtc(clock.now().utc).substr(0, 19)) {
        if (c != '-' && c != ':') {
            out += c;
        }
    }
    return out + "Z";
}

/// LOG.damaged-STAMP, and with a number behind it where any of its names is taken.
std::string freeName(const std::string& path, const Clock& clock) {
    const std::string first = path + ".damaged-" + stampOf(clock);
    std::string name = first;
    for (int i = 2;; ++i) {
        const bool taken = std::any_of(
            kParts.begin(), kParts.end(), [&](const char* part) { return exists(name + part); });
        if (!taken && !exists(name + ".txt") && !exists(name + ".new")) {
            return name;
        }
        name = first + "-" + std::to_string(i);
    }
}

/// Names beside the log that begin as a set-aside one's do and end so.
std::vector<std::string> beside(const std::string& path, std::string_view end) {
    const fs::path log(absolutePath(path));
    const std::string begin = log.filename().string() + ".damaged-";
    std::vector<std::string> out;
    std::error_code error;
    for (fs::directory_iterator i(log.parent_path(), error), last; !error && i != last;
         i.increment(error)) {
        const std::string name = i->path().filename().string();
        if (name.size() > begin.size() + end.size() && name.compare(0, begin.size(), begin) == 0 &&
            name.compare(name.size() - end.size(), end.size(), end) == 0) {
            out.push_back(i->path().string());
        }
    }
    std::sort(out.begin(), out.end());
    return out;
}

void removeNew(const std::string& name) {
    for (const char* tail :
         {".new", ".new-wal", ".new-shm", ".new-journal", ".new.lock", ".new.spill", ".new.refused",
          ".work", ".part"}) {
        removeQuietly(name + tail);
    }
}

/// From here on the move counts, and is finished whatever comes between.
Result<void> moveAll(const std::string& path, const std::string& name) {
    for (const char* part : kParts) {
        if (exists(path + part) && !exists(name + part)) {
            if (auto moved = move(path + part, name + part); !moved) {
                return moved;
            }
        }
    }
    if (auto moved = move(name + ".new", path); !moved) {
        return moved;
    }
    if (!syncFolderOf(path)) {
        return fail(ErrorCode::NotWritten, path + ": its folder can't be brought to disk");
    }
    return {};
}

enum class Header { Sound, Newer, Odd };

/// What the file's first 100 bytes say by themselves: those that are the same in every log of ours
/// (https://www.sqlite.org/fileformat2.html, "The Database Header"), and the version.
Header headerOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    std::array<char, 100> bytes{};
    if (!in.read(bytes.data(), bytes.size()) || !inspectLogFile(path)) {
        return Header::Odd;
    }
    const auto at = [&](std::size_t i, std::size_t count) {
        std::int64_t value = 0;
        for (std::size_t k = i; k < i + count; ++k) {
            value = value * 256 + static_cast<unsigned char>(bytes[k]);
        }
        return value;
    };
    const std::int64_t version = at(60, 4);
    const bool sound = (at(18, 2) == 0x0202 || at(18, 2) == 0x0101) && at(20, 4) == 0x00402020 &&
                       at(44, 4) == 4 && at(56, 4) == 1 && version >= 1 &&
                       version <= kNewestVersion;
    if (!sound) {
        return Header::Odd;
    }
    return version > migrations().back().version ? Header::Newer : Header::Sound;
}

/// Beside every log of ours stands a spill file; beside nothing else.
bool hasSpillFile(const std::string& path) {
    std::error_code none;
    const auto size = fs::file_size(path + ".spill", none);
    const auto content = readSpill(path + ".spill");
    return !none && size > 0 && content && content->damaged.empty();
}

Result<void> checkOurs(const SetAsideOrder& order, const SalvageCount& count, const Error& why) {
    const auto refuse = [&] { return tl::unexpected<Error>(why); };
    if (!count.ours && !hasSpillFile(order.path)) {
        return refuse();
    }
    if (!count.world.empty() && count.world != order.world) {
        return refuse();
    }
    return {};
}

/// Makes the new log and counts what it holds.
class Maker {
public:
    Maker(const SetAsideOrder& order, Salvage& salvage, std::string name)
        : m_order(order), m_salvage(salvage), m_name(std::move(name)) {}

    Result<SetAside> run(const Error& why) {
        m_out.damaged = m_name;
        m_out.note = m_name + ".txt";
        m_out.why = why.detail;
        // A tail that the station never signed is not made its own by copying it; and imported
        // chains can't be copied, of which the same chain would go on telling.
        m_out.sameChain = m_salvage.chainIsWhole() &&
                          why.detail.find(kNotSigned) == std::string::npos && !tellsOfImports();
        m_out.rows = m_salvage.count().rows;
        m_out.lostRows = m_salvage.count().lostRows;
        m_out.endKnown = !m_salvage.count().logId.empty();
        m_out.highestNumber = m_salvage.count().highestNumber;
        auto made = m_out.sameChain ? sameChain() : newChain();
        if (made) {
            made = putAway();
        }
        if (!made) {
            return tl::unexpected<Error>(std::move(made.error()));
        }
        return std::move(m_out);
    }

private:
    std::string newName() const { return m_name + ".new"; }

    bool tellsOfImports() {
        bool found = false;
        const auto read = m_salvage.eachRow([&](const std::string&, const std::string& body) {
            found = found || body.find("\"kind\":\"log_imported\"") != std::string::npos;
        });
        return found || !read;
    }

    Result<void> sameChain() {
        std::vector<LogDocument> found; // that the log lost
        auto told = m_salvage.eachSubject([&](const SalvagedSubject& subject) {
            for (const LogDocument* document : knownOf(subject)) {
                found.push_back(*document);
            }
            tell(subject, true);
            return Result<void>();
        });
        if (!told) {
            return told;
        }
        try {
            copyChain();
        } catch (const SQLite::Exception& thrown) {
            return tl::unexpected<Error>(errorOf(thrown, newName(), ErrorCode::NotWritten));
        }
        auto writer = m_order.open(newName());
        if (!writer) {
            return tl::unexpected<Error>(std::move(writer.error()));
        }
        found.insert(
            found.end(), m_salvage.spilledDocuments().begin(), m_salvage.spilledDocuments().end());
        writer->submit(m_salvage.spilledRows(), std::move(found));
        return writer->flush();
    }

    /// The very rows under the very id: it is the same log, in a sound file.
    void copyChain() {
        SQLite::Database database(newName(), SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
        database.exec("PRAGMA application_id=" + std::to_string(m_order.applicationId));
        if (auto made = migrate(database, newName(), migrations()); !made) {
            throw SQLite::Exception(made.error().detail);
        }
        teachChain(database);
        const SalvageCount& count = m_salvage.count();
        const std::string genesis = genesisHash(count.logId, count.world);
        SQLite::Transaction whole(database);
        SQLite::Statement chain(
            database, "INSERT INTO chain(no, log_id, world, genesis, seq, head) VALUES(1, ?, ?, ?, "
                      "0, ?)");
        chain.bind(1, count.logId);
        chain.bind(2, count.world);
        chain.bind(3, genesis);
        chain.bind(4, genesis);
        chain.exec();
        SQLite::Statement row(
            database, "INSERT INTO event(chain, seq, hash, body) VALUES(1, ?, ?, ?)");
        std::int64_t seq = 0;
        const auto rows = m_salvage.eachRow([&](const std::string& hash, const std::string& body) {
            row.reset();
            row.bind(1, ++seq);
            row.bind(2, hash);
            row.bind(3, body);
            row.exec();
        });
        SQLite::Statement add(database, "INSERT INTO document(sha256, kind, body) VALUES(?, ?, ?)");
        const auto documents = m_salvage.eachDocument([&](const LogDocument& document) {
            add.reset();
            add.bind(1, document.sha256);
            add.bind(2, document.kind);
            add.bind(3, document.bytes.data(), static_cast<int>(document.bytes.size()));
            add.exec();
        });
        if (!rows || !documents) {
            throw SQLite::Exception((rows ? documents : rows).error().detail);
        }
        whole.commit();
    }

    Result<void> newChain() {
        auto writer = m_order.open(newName());
        if (!writer) {
            return tl::unexpected<Error>(std::move(writer.error()));
        }
        std::size_t since = 0;
        auto read = m_salvage.eachSubject([&](SalvagedSubject subject) -> Result<void> {
            std::vector<LogDocument> documents = subject.documents;
            for (const LogDocument* document : knownOf(subject)) {
                documents.push_back(*document);
            }
            const bool taken = !subject.rows.empty() && (!subject.ended || subject.whole());
            tell(subject, taken);
            if (!taken) {
                return {};
            }
            writer->submit(std::move(subject.rows), std::move(documents));
            if (++since < kFlushEach) {
                return {};
            }
            since = 0;
            return writer->flush();
        });
        if (!read) {
            return read;
        }
        return writer->flush();
    }

    /// Of its lost documents those that the program has.
    std::vector<const LogDocument*> knownOf(const SalvagedSubject& subject) const {
        std::vector<const LogDocument*> out;
        for (const LogDocument& document : m_order.known) {
            const auto& lost = subject.lostDocuments;
            if (std::find(lost.begin(), lost.end(), document.sha256) != lost.end()) {
                out.push_back(&document);
            }
        }
        return out;
    }

    void tell(const SalvagedSubject& subject, bool taken) {
        SetAsideWeld out;
        out.weld = subject.subject;
        out.number = subject.number;
        out.taken = taken;
        out.open = taken && !subject.ended && subject.subject.rfind("weld:", 0) == 0;
        out.events = taken ? static_cast<std::int64_t>(subject.rows.size()) : 0;
        if (!m_out.sameChain) { // then all of it is there, whatever a damaged index says
            out.lost = subject.lost;
            out.apart = subject.apart;
            out.unproven = subject.unproven;
        }
        out.documentsLost = knownOf(subject).size() < subject.lostDocuments.size();
        if (out.open || !out.whole() || out.documentsLost) {
            m_out.welds.push_back(std::move(out));
        }
    }

    /// Only the file itself is to be left, on disk.
    Result<void> putAway() {
        for (const char* tail : {".lock", ".spill"}) {
            removeQuietly(newName() + tail);
        }
        if (exists(newName() + "-wal") || !syncFile(newName(), O_RDONLY)) {
            return fail(ErrorCode::NotWritten, newName() + ": can't be brought to disk");
        }
        return {};
    }

    const SetAsideOrder& m_order;
    Salvage& m_salvage;
    std::string m_name;
    SetAside m_out;
};

std::string lineOf(const SetAsideWeld& weld) {
    std::string out = weld.number > 0
                          ? "joint " + std::to_string(weld.number) + " (" + weld.weld + ")"
                          : weld.weld;
    if (weld.taken) {
        out += std::string(weld.open ? ": goes on" : ": taken") + " with " +
               std::to_string(weld.events) + " events";
    } else {
        out += ": not taken";
    }
    if (weld.documentsLost) {
        out += "; a document that it names is lost";
    }
    if (!weld.lost.empty()) {
        out += "; lost: event " + listOf(weld.lost);
    }
    if (!weld.apart.empty()) {
        out += "; to be read in the damaged log only: event " + listOf(weld.apart);
    }
    if (weld.unproven > 0) {
        out += "; not borne out by the chain, since the row before is lost: " +
               std::to_string(weld.unproven);
    }
    return out;
}

std::string noteOf(const SetAside& aside) {
    std::string out = std::string(kNoteHead) + "\n\n";
    out += "the log: " + aside.damaged + "\n";
    out += "why: " + aside.why + "\n";
    out += kHighest + std::to_string(aside.highestNumber) + "\n";
    out += "rows of its chain that can be read: " + std::to_string(aside.rows) + "\n";
    out += "rows that there were and that can't be read: " + std::to_string(aside.lostRows) +
           (aside.endKnown ? "" : ", and perhaps more: nothing left of it tells how many it held") +
           "\n";
    out += aside.sameChain ? "the new log: the same chain, whole\n"
                           : "the new log: a chain of its own, with every weld that could be read "
                             "whole, and the open ones\n";
    for (const SetAsideWeld& weld : aside.welds) {
        out += lineOf(weld) + "\n";
    }
    return out + "\nKeep these files: they are the proof of what was written.\n";
}

Result<void> writeNote(const std::string& name, const std::string& text) {
    const std::string part = name + ".part";
    {
        const FileHandle file(::open(part.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0644));
        if (file.get() < 0 ||
            ::write(file.get(), text.data(), text.size()) != static_cast<ssize_t>(text.size()) ||
            fsync(file.get()) != 0) {
            const int why = errno;
            removeQuietly(part);
            return fail(
                ErrorCode::NotWritten, part + ": can't be written (" + std::strerror(why) + ")");
        }
    }
    if (auto moved = move(part, name + ".txt"); !moved) {
        removeQuietly(part);
        return moved;
    }
    if (!syncFolderOf(name)) {
        return fail(ErrorCode::NotWritten, name + ".txt: can't be brought to disk");
    }
    return {};
}

} // namespace

std::string listOf(const std::vector<std::int64_t>& numbers) {
    std::string out;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t end = i + 1;
        while (end < numbers.size() && numbers[end] == numbers[end - 1] + 1) {
            ++end;
        }
        out += (out.empty() ? "" : ", ") + std::to_string(numbers[i]) +
               (end > i + 1 ? " to " + std::to_string(numbers[end - 1]) : "");
        i = end;
    }
    return out;
}

std::string remarkOf(const SetAsideWeld& weld, const SetAside& aside) {
    std::string out =
        "taken over from a damaged log, " + fs::path(aside.damaged).filename().string();
    if (!weld.lost.empty()) {
        out += "; lost: event " + listOf(weld.lost);
    }
    if (!weld.apart.empty()) {
        out += "; to be read there only: event " + listOf(weld.apart);
    }
    if (weld.unproven > 0) {
        out += "; not borne out by its chain: " + std::to_string(weld.unproven) + " of " +
               std::to_string(weld.events);
    }
    return out;
}

std::vector<std::string> sentencesOf(const SetAside& aside) {
    std::vector<std::string> out;
    if (aside.finished) {
        out.push_back(
            "The log was damaged and was set aside as " + aside.damaged + "; " + aside.note +
            " tells what was taken over.");
        return out;
    }
    out.push_back("The log was damaged: " + aside.why + ".");
    out.push_back(
        "It was set aside as " + aside.damaged + "; " +
        (aside.sameChain
             ? "nothing of it is lost, and the same chain goes on in a new file."
             : "a new one was started, and " + aside.note + " tells what was taken over."));
    if (!aside.endKnown) {
        out.emplace_back("Nothing left of it tells how many rows it held; welds may be lost that "
                         "nothing names.");
    }
    for (const SetAsideWeld& weld : aside.welds) {
        out.push_back(lineOf(weld) + ".");
    }
    return out;
}

std::int64_t highestNumberAside(const std::string& path) {
    std::int64_t highest = 0;
    for (const std::string& name : beside(path, ".txt")) {
        std::ifstream note(name);
        std::string line;
        while (std::getline(note, line)) {
            if (line.rfind(kHighest, 0) == 0) {
                highest = std::max<std::int64_t>(
                    highest, std::strtoll(line.c_str() + std::strlen(kHighest), nullptr, 10));
            }
        }
    }
    return highest;
}

Result<std::optional<SetAside>> finishSetAside(const std::string& path) {
    const std::string place = absolutePath(path);
    auto begun = beside(place, ".new");
    for (const std::string& scratch : beside(place, ".work")) {
        begun.push_back(scratch);
    }
    for (const std::string& one : begun) {
        const auto lock = lockFor(place);
        if (!lock) {
            return tl::unexpected<Error>(lock.error());
        }
        const std::string name = one.substr(0, one.rfind('.'));
        if (!exists(name + ".txt") || !exists(name + ".new")) {
            removeNew(name); // it had not come to the point at which it counts
            continue;
        }
        if (auto moved = moveAll(place, name); !moved) {
            return tl::unexpected<Error>(std::move(moved.error()));
        }
        removeNew(name);
        SetAside out;
        out.damaged = name;
        out.note = name + ".txt";
        out.finished = true;
        return out;
    }
    return std::optional<SetAside>();
}

Result<SetAside> setAside(const SetAsideOrder& asked, const Error& why) {
    SetAsideOrder order = asked;
    order.path = absolutePath(asked.path);
    const Header header = headerOf(order.path);
    const bool maybe = why.code == ErrorCode::Damaged || why.code == ErrorCode::Unreadable ||
                       why.code == ErrorCode::Foreign ||
                       (why.code == ErrorCode::NotWritten && header == Header::Odd);
    const std::string folder = fs::path(order.path).parent_path().string();
    if (!maybe || header == Header::Newer || !refuseNetwork(folder)) {
        return tl::unexpected<Error>(why);
    }
    const auto lock = lockFor(order.path);
    if (!lock) {
        return tl::unexpected<Error>(lock.error());
    }
    const std::string name = freeName(order.path, order.clock);
    const auto stays = [&](const Error& failed) {
        return fail(
            ErrorCode::NotWritten, why.detail + "; it can't be set aside: " + failed.detail);
    };
    auto salvage = Salvage::read(order.path, name + ".work");
    if (!salvage) {
        return salvage.error().code == ErrorCode::Unreadable ? tl::unexpected<Error>(why)
                                                             : stays(salvage.error());
    }
    if (auto ours = checkOurs(order, salvage->count(), why); !ours) {
        return tl::unexpected<Error>(std::move(ours.error()));
    }
    auto made = Maker(order, *salvage, name).run(why);
    auto done = made ? writeNote(name, noteOf(*made)) : Result<void>();
    if (!made || !done) {
        removeNew(name);
        return stays(made ? done.error() : made.error());
    }
    if (auto moved = moveAll(order.path, name); !moved) {
        return tl::unexpected<Error>(std::move(moved.error())); // the next start ends it
    }
    return made;
}

} // namespace seamclock
