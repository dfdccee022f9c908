// log backup, restore and import: copies of a whole log, and another tablet's joints in this list.
#include "app/cli/command.h"
#include "app/cli/numbers.h"
#include "app/cli/output_json.h"
#include "app/platform/boot_clock.h"
#include "core/copies/backup.h"
#include "core/copies/log_import.h"
#include "core/copies/photo_copies.h"
#include "core/log/log_reader.h"
#include "core/log/spill.h"
#include "core/report/plain_text.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <fmt/format.h>
#include <memory>

namespace seamclock {
namespace {

struct CopyCall {
    std::string log;
    std::string from;
    std::optional<std::string> out;
    bool json = false;
};

using Rows = std::vector<std::vector<std::string>>;

void describe(const LogCopy& copy, Rows& rows) {
    rows.push_back({"World", onOneLine(copy.world)});
    rows.push_back({"Log id", onOneLine(copy.logId)});
    rows.push_back({"Rows", std::to_string(copy.rows)});
    rows.push_back({"Head", onOneLine(copy.head)});
    rows.push_back({"Bytes", std::to_string(copy.bytes)});
}

/// Rows that stand beside the log, where no copy of it can have them.
std::size_t waitingBeside(const std::string& log) {
    const auto spilled = readSpill(log + ".spill");
    return spilled ? spilled->rows.size() : 0;
}

void describe(const PhotosCopied& photos, Rows& rows) {
    rows.push_back(
        {"Photos", fmt::format("{} copied, {} were there", photos.copied, photos.there)});
    if (const std::string damaged = damagedPhotos(photos); !damaged.empty()) {
        rows.push_back({"Note", onOneLine(damaged)});
    }
}

Result<int> backUp(const CopyCall& call, Terminal& terminal) {
    LogCopy copy;
    std::vector<std::string> removed;
    std::string photoFolder = backupPhotoFolderOf(call.log);
    if (call.out) {
        auto made = copyLog(call.log, *call.out, {});
        if (!made) {
            return tl::unexpected(made.error());
        }
        copy = std::move(*made);
        photoFolder = photoFolderOf(*call.out);
    } else {
        const auto clock = BootClock::make();
        if (!clock) {
            return tl::unexpected(clock.error());
        }
        const Instant now = clock->now();
        CopyOptions options;
        options.reserveBytes = kBackupReserve;
        auto made = backUpDay(call.log, toIsoDate(now.utc, now.offset), options, true);
        if (!made) {
            return tl::unexpected(made.error());
        }
        copy = std::move(*made->made);
        removed = std::move(made->removed);
    }
    CopyOptions how;
    how.reserveBytes = call.out ? 0 : kBackupReserve;
    const auto photos = copyPhotos(photoFolderOf(call.log), photoFolder, how);
    if (!photos) {
        return fail(
            photos.error().code,
            photos.error().detail + "; the log's copy itself stands as " + copy.file);
    }
    const std::size_t waiting = waitingBeside(call.log);
    if (call.json) {
        terminal.write(backupJson(copy, *photos, removed, waiting));
        return 0;
    }
    Rows rows = {{"Backup", onOneLine(copy.file)}};
    describe(copy, rows);
    describe(*photos, rows);
    for (const std::string& name : removed) {
        rows.push_back({"Removed", onOneLine(name)});
    }
    if (waiting > 0) {
        rows.push_back(
            {"Note", fmt::format(
                         "{} rows wait in the spill file beside the log and are not in the backup; "
                         "start the program, so that they join the log, and make another",
                         waiting)});
    }
    terminal.write(aligned(rows, 0));
    return 0;
}

/// The newest joint of a log, to compare with the shop floor.
Result<std::optional<JointLine>> newestOf(const std::string& log) {
    auto reader = LogReader::open(log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    JointFilter filter;
    filter.limit = 1;
    auto lines = reader->joints(filter);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    return lines->empty() ? std::optional<JointLine>() : std::move(lines->front());
}

Result<int> restore(const CopyCall& call, Terminal& terminal) {
    const auto copy = restoreLog(call.from, call.log);
    if (!copy) {
        return tl::unexpected(copy.error());
    }
    const auto photos = copyPhotos(photosOfCopy(call.from), photoFolderOf(call.log), {});
    if (!photos) {
        return fail(
            photos.error().code,
            photos.error().detail + "; the log itself is restored: copy the folder " +
                photosOfCopy(call.from) + " to " + photoFolderOf(call.log) + " by hand");
    }
    const auto newest = newestOf(call.from);
    if (!newest) {
        return tl::unexpected(newest.error());
    }
    std::int64_t next = 1;
    if (auto reader = LogReader::open(call.from)) {
        next = reader->highestNumber().value_or(0) + 1;
    }
    if (call.json) {
        terminal.write(restoreJson(*copy, *photos, *newest ? (*newest)->number : 0, next));
        return 0;
    }
    Rows rows = {{"Restored", onOneLine(copy->file)}};
    describe(*copy, rows);
    describe(*photos, rows);
    rows.push_back(
        {"Newest joint",
         *newest ? fmt::format("{}, {}", (*newest)->number, toIsoUtc((*newest)->openedUtc))
                 : "none"});
    rows.push_back(
        {"Note", "joints made since the backup are not in it, and cannot be worked out from it"});
    rows.push_back(
        {"Note",
         fmt::format(
             "the next joint gets number {}: if a sheet on the floor bears that number or a "
             "higher one, its record is lost and its number will come twice",
             next)});
    terminal.write(aligned(rows, 0));
    return 0;
}

std::string conflictSentence(const ImportConflict& one) {
    return fmt::format(
        "{}, event {}: chain {} and chain {} hold different ones; both are kept, and the list "
        "shows "
        "what chain {} says",
        one.subject, one.n, one.other, one.chain, std::min(one.chain, one.other));
}

Result<int> import(const CopyCall& call, Terminal& terminal) {
    const auto clock = BootClock::make();
    if (!clock) {
        return tl::unexpected(clock.error());
    }
    const auto report = importLog(call.from, call.log, *clock);
    if (!report) {
        return tl::unexpected(report.error());
    }
    if (call.json) {
        terminal.write(importJson(*report));
        return 0;
    }
    if (report->rows == 0) {
        terminal.write("nothing new: this log holds all of it already\n");
        return 0;
    }
    Rows rows = {
        {"Rows added", std::to_string(report->rows)},
        {"New joints", std::to_string(report->joints)},
        {"Documents added", std::to_string(report->documents)}};
    for (const ImportedChain& chain : report->chains) {
        rows.push_back(
            {fmt::format("Chain {}", chain.chain),
             onOneLine(fmt::format(
                 "log {}{}: {} rows added, {} now", chain.logId,
                 chain.chain == 1 ? " (this one)" : "", chain.added, chain.toSeq))});
    }
    for (const ImportConflict& one : report->conflicts) {
        rows.push_back({"Conflict", onOneLine(conflictSentence(one))});
    }
    terminal.write(aligned(rows, 0));
    return 0;
}

} // namespace

void addLogCopies(CLI::App& log, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<CopyCall>();
    CLI::App* out = log.add_subcommand(
        "backup",
        "A complete copy of a log, also of one in use: a new FILE that --out names, or the "
        "backup of the day in the folder LOG.backups, whose older ones are thinned out.");
    out->add_option("--out", call->out, "a new FILE, in a folder that is there");
    CLI::App* back = log.add_subcommand(
        "restore",
        "Makes a log of a backup that verifies, where none is; what stands there is never "
        "overwritten. Joints made since the backup are not in it.");
    back->add_option("--from", call->from, "the backup's FILE")->required();
    CLI::App* in = log.add_subcommand(
        "import",
        "Adds the joints of another tablet's log, each once; later what is new in it. The "
        "program that writes this log must be closed.");
    in->add_option("--from", call->from, "the other log's FILE, or a copy of it")->required();
    for (CLI::App* words : {out, back, in}) {
        words->add_option("--log", call->log, "the log's FILE")->required();
        words->add_flag("--json", call->json, "as JSON");
    }
    commands.push_back({out, [call, &terminal] { return backUp(*call, terminal); }});
    commands.push_back({back, [call, &terminal] { return restore(*call, terminal); }});
    commands.push_back({in, [call, &terminal] { return import(*call, terminal); }});
}

} // namespace seamclock
