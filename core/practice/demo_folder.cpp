#include "core/practice/demo_folder.h"

#include "core/base/made_files.h"
#include "core/log/body_codec.h"
#include "core/log/log_lock.h"
#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/log/world.h"
#include "core/people/credentials.h"
#include "core/practice/demo_days.h"
#include "core/practice/virtual_clock.h"
#include "core/practice/virtual_operator.h"
#include "core/session/job_order.h"
#include "core/session/office.h"
#include "core/shift/job.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <optional>
#include <set>
#include <system_error>
#include <utility>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

constexpr const char* kMark = "demo-shop.txt";
constexpr const char* kMarkFormat = "seamclock-demo/1";
constexpr const char* kLog = "joints.seamlog";
constexpr const char* kPracticeLog = "practice.seamlog";
constexpr const char* kPapers = "papers";
constexpr const char* kBoot = "practice:d3a0c6d2-7a55-4d5c-8c1e-5b0b4d1f7e20";
constexpr Milliseconds kBeforeWork{3'600'000}; // people and benches are entered then
constexpr const char* kEarlier = "K"; // of an earlier tank: the job's own seams stay to be made
constexpr const char* kEarlierJob = "QV-104";

std::string inQuotes(const std::string& text) {
    return '"' + text + '"';
}

Result<void> notWritten(const std::string& what, const std::error_code& code) {
    return fail(
        ErrorCode::NotWritten, inQuotes(what) + " can't be written: " + code.message() +
                                   "; allowed: a folder that can be written");
}

bool isFolder(const fs::path& path) {
    std::error_code code;
    return fs::symlink_status(path, code).type() == fs::file_type::directory;
}

bool isFile(const fs::path& path) {
    std::error_code code;
    return fs::symlink_status(path, code).type() == fs::file_type::regular;
}

/// The names that the mark lists; absent: it is none.
std::optional<std::set<std::string>> readMark(const fs::path& folder) {
    if (!isFile(folder / kMark)) {
        return std::nullopt;
    }
    std::ifstream file(folder / kMark);
    std::string line;
    if (!std::getline(file, line) || line != kMarkFormat) {
        return std::nullopt;
    }
    std::set<std::string> names;
    while (std::getline(file, line)) {
        if (!line.empty() && line != "." && line != ".." && line.find('/') == std::string::npos) {
            names.insert(line);
        }
    }
    return names;
}

bool beginsWith(const std::string& text, const std::string& start) {
    return text.compare(0, start.size(), start) == 0;
}

/// Of a log and what stands beside it: its spill, its secrets, photos, backups.
bool isOfLog(const std::string& name) {
    for (const char* const log : {kLog, kPracticeLog}) {
        const std::string own = log;
        if (name == own || beginsWith(name, own + ".") || beginsWith(name, own + "-")) {
            return true;
        }
    }
    return false;
}

/// What of the demo's files came with the program: copied, and written into the mark.
Result<std::vector<fs::path>> sourcesIn(const std::string& folder) {
    std::vector<fs::path> found;
    std::error_code code;
    for (fs::directory_iterator each(folder, code), end; !code && each != end;
         each.increment(code)) {
        const std::string ending = each->path().extension().string();
        if (each->is_regular_file(code) && (ending == ".json" || ending == ".csv")) {
            found.push_back(each->path());
        }
    }
    if (code) {
        return fail(
            ErrorCode::Unreadable,
            "the demo's folder " + inQuotes(folder) + " can't be read: " + code.message());
    }
    std::sort(found.begin(), found.end());
    return found;
}

Result<void> copyFiles(const std::string& source, const fs::path& folder) {
    const auto files = sourcesIn(source);
    if (!files) {
        return tl::unexpected<Error>(files.error());
    }
    // The mark first: whatever is cut off after it can be told for ours.
    std::ofstream mark(folder / kMark);
    mark << kMarkFormat << "\n";
    for (const fs::path& file : *files) {
        mark << file.filename().string() << "\n";
    }
    mark.close();
    std::error_code code;
    if (!mark) {
        return notWritten((folder / kMark).string(), std::make_error_code(std::errc::io_error));
    }
    for (const fs::path& file : *files) {
        if (!fs::copy_file(file, folder / file.filename(), code)) {
            return notWritten((folder / file.filename()).string(), code);
        }
    }
    return {};
}

Instant before() {
    Instant at;
    at.boot = kBeforeWork;
    at.bootId = kBoot;
    at.utc = kPracticeStart - kBeforeWork;
    return at;
}

Result<void> enterPeople(Office& office, const ProvenPerson& by) {
    const auto& people = demoPeople();
    for (std::size_t i = 1; i < people.size(); ++i) {
        auto pin = Pin::read(people[i].pin);
        if (!pin) {
            return tl::unexpected<Error>(pin.error());
        }
        const Role role = i + 1 == people.size() ? Role::Trainee : Role::Operator;
        const auto added = office.addPerson(by, people[i].name, role, std::move(*pin));
        if (!added) {
            return tl::unexpected<Error>(added.error());
        }
    }
    return {};
}

/// People, PINs and benches, in the foreman's name, before anybody works.
Result<void> enterShop(const std::string& log, const Job& job) {
    const VirtualClock clock(before());
    auto writer = LogWriter<Practice>::open(log, clock);
    if (!writer) {
        return tl::unexpected<Error>(writer.error());
    }
    Credentials credentials(log + ".credentials");
    auto office = Office::open(*writer, credentials, clock);
    if (!office) {
        return tl::unexpected<Error>(office.error());
    }
    const auto pin = Pin::read(demoPeople().front().pin);
    if (!pin) {
        return tl::unexpected<Error>(pin.error());
    }
    const auto foreman = office->addFirstForeman(demoPeople().front().name, *pin);
    if (!foreman) {
        return tl::unexpected<Error>(foreman.error());
    }
    const auto access = office->enter(foreman->id, *pin);
    if (!access) {
        return tl::unexpected<Error>(access.error());
    }
    if (auto others = enterPeople(*office, access->who); !others) {
        return others;
    }
    std::set<std::string> there;
    for (const JobSeam& seam : job.seams) {
        const auto bench = readBenchFile(seam.benchFile);
        if (!bench) {
            return tl::unexpected<Error>(bench.error());
        }
        if (there.insert(bench->bench.id).second) {
            if (const auto set = office->setBench(access->who, *bench); !set) {
                return set;
            }
        }
    }
    return writer->flush();
}

Result<void> weldDays(const DemoOrder& order, const std::string& log, const Job& job) {
    DemoShop shop;
    for (const JobSeam& seam : job.seams) {
        auto weld = orderOf(seam, order.procedures);
        if (!weld) {
            return tl::unexpected<Error>(weld.error());
        }
        weld->seam = kEarlier + seam.label;
        weld->job = kEarlierJob;
        shop.orders.push_back(std::move(*weld));
    }
    const auto& people = demoPeople();
    for (std::size_t i = 1; i < people.size(); ++i) {
        shop.people.push_back(people[i].id);
    }
    const auto days = DemoDays::plan(std::move(shop), order.days, order.seed);
    if (!days) {
        return tl::unexpected<Error>(days.error());
    }
    const auto made = rehearseSeries(log, [&days](std::int64_t i) { return days->step(i); }, {});
    if (!made) {
        return tl::unexpected<Error>(made.error());
    }
    if (!made->notSaved.empty()) {
        return fail(ErrorCode::NotWritten, made->notSaved);
    }
    return {};
}

Result<void> fill(const DemoOrder& order, const fs::path& folder) {
    if (auto copied = copyFiles(order.source, folder); !copied) {
        return copied;
    }
    if (auto papers = keepMadeFiles(demoPapersOf(folder.string())); !papers) {
        return papers;
    }
    const auto job = readFirstJob(folder.string());
    if (!job) {
        return tl::unexpected<Error>(job.error());
    }
    const std::string log = demoLogOf(folder.string());
    if (auto entered = enterShop(log, *job); !entered) {
        return entered;
    }
    return weldDays(order, log, *job);
}

/// How many of the papers are somebody else's; what is the program's is added to `ours`, the folder
/// itself where nothing else is in it. A link in its place is taken away like the folder.
int choosePapers(const fs::path& papers, std::vector<fs::path>& ours) {
    std::error_code code;
    if (fs::is_symlink(papers, code)) {
        ours.push_back(papers);
        return 0;
    }
    if (!isFolder(papers)) {
        return 1;
    }
    const auto made = madeFiles(papers.string());
    int others = 0;
    for (fs::directory_iterator each(papers, code), end; !code && each != end;
         each.increment(code)) {
        const std::string name = each->path().filename().string();
        others += std::find(made.begin(), made.end(), name) == made.end() ? 1 : 0;
    }
    for (const std::string& name : made) {
        ours.push_back(papers / name);
    }
    if (!code && others == 0) {
        ours.push_back(papers);
    }
    return others;
}

} // namespace

const std::vector<DemoPerson>& demoPeople() {
    static const std::vector<DemoPerson> kPeople{
        {"person:oddo-quenley", "Oddo Quenley", "482915"},
        {"person:ilva-borrick", "Ilva Borrick", "2580"},
        {"person:marn-tessaly", "Marn Tessaly", "1470"},
        {"person:sefi-oakhurn", "Sefi Oakhurn", "3690"}};
    return kPeople;
}

std::string demoLogOf(const std::string& folder) {
    return (fs::path(folder) / kLog).string();
}

std::string demoPracticeLogOf(const std::string& folder) {
    return (fs::path(folder) / kPracticeLog).string();
}

std::string demoPapersOf(const std::string& folder) {
    return (fs::path(folder) / kPapers).string();
}

bool isOfDemo(const std::string& log) {
    return readMark(fs::path(log).parent_path()).has_value();
}

DemoFolder lookAtDemo(const std::string& folder) {
    std::error_code code;
    if (fs::symlink_status(folder, code).type() == fs::file_type::not_found) {
        return DemoFolder::None;
    }
    if (!isFolder(folder) || !readMark(folder)) {
        return DemoFolder::Stranger;
    }
    return isFile(demoLogOf(folder)) ? DemoFolder::Whole : DemoFolder::Half;
}

Result<void> makeDemoShop(const DemoOrder& order) {
    if (lookAtDemo(order.folder) == DemoFolder::Half) {
        if (const auto removed = removeDemoShop(order.folder); !removed) {
            return tl::unexpected<Error>(removed.error());
        }
    }
    if (lookAtDemo(order.folder) != DemoFolder::None) {
        return fail(
            ErrorCode::Conflict, "the demo shop's place " + inQuotes(order.folder) +
                                     " is taken; allowed: a name at which nothing stands");
    }
    const std::string made = order.folder + ".new"; // of a start that was cut off, too
    std::error_code code;
    fs::remove(made, code); // one without a mark was empty
    if (const DemoFolder found = lookAtDemo(made); found != DemoFolder::None) {
        if (const auto removed = removeDemoShop(made); !removed) {
            return tl::unexpected<Error>(removed.error());
        }
    }
    fs::create_directories(made, code);
    if (code) {
        return notWritten(made, code);
    }
    if (auto filled = fill(order, made); !filled) {
        static_cast<void>(removeDemoShop(made)); // the next start tries it again
        return filled;
    }
    fs::rename(made, order.folder, code);
    return code ? notWritten(order.folder, code) : Result<void>();
}

Result<int> removeDemoShop(const std::string& folder) {
    const auto mark = isFolder(folder) ? readMark(folder) : std::nullopt;
    if (!mark) {
        return fail(
            ErrorCode::Foreign, inQuotes(folder) +
                                    " is no demo shop and is left as it is; "
                                    "allowed: a folder with the mark " +
                                    kMark);
    }
    const auto lock = lockFor(demoLogOf(folder));
    if (!lock) {
        return tl::unexpected<Error>(lock.error());
    }
    std::vector<fs::path> ours;
    int left = 0;
    std::error_code code;
    for (fs::directory_iterator each(folder, code), end; !code && each != end;
         each.increment(code)) {
        const std::string name = each->path().filename().string();
        if (name == kPapers) {
            left += choosePapers(each->path(), ours);
        } else if (mark->count(name) > 0 || isOfLog(name)) {
            ours.push_back(each->path());
        } else if (name != kMark) {
            ++left;
        }
    }
    for (const fs::path& one : ours) {
        if (!code) {
            fs::remove_all(one, code); // a link itself, never what it leads to
        }
    }
    if (!code) {
        fs::remove(fs::path(folder) / kMark, code); // last: until then it can be told for ours
    }
    if (!code && left == 0) {
        fs::remove(folder, code);
    }
    if (code) {
        return fail(
            ErrorCode::NotWritten,
            "the demo shop in " + inQuotes(folder) + " can't be taken away: " + code.message());
    }
    return left;
}

Result<Milliseconds> lastOf(const std::string& log) {
    auto reader = LogReader::open(log);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    const auto head = reader->head();
    if (!head) {
        return tl::unexpected<Error>(head.error());
    }
    Result<Milliseconds> last = fail(ErrorCode::Missing, inQuotes(log) + " has no row");
    const auto read = reader->eachRow(
        [&last](const StoredRow& row) {
            const auto envelope = readEnvelope(row.body);
            last = envelope ? Result<Milliseconds>(envelope->at.utc)
                            : tl::unexpected<Error>(envelope.error());
            return true;
        },
        head->seq);
    return read ? last : tl::unexpected<Error>(read.error());
}

} // namespace seamclock
