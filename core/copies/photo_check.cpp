#include "core/copies/photo_check.h"

#include "core/base/uuid.h"
#include "core/copies/photo_copies.h"
#include "core/log/connection.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <utility>

namespace seamclock {

namespace {

namespace fs = std::filesystem;

std::string sentenceOf(const PhotoFinding& found, const std::string& name, bool there) {
    const std::string which = "joint " + std::to_string(found.number) + ", event " +
                              std::to_string(found.n) + ", photo \"" + name + "\": " + found.file;
    if (!there) {
        return which + " is missing; expected SHA-256 " + found.expected;
    }
    if (found.found.empty()) {
        return which + " can't be read; expected SHA-256 " + found.expected;
    }
    return which + " was changed; expected SHA-256 " + found.expected + ", found " + found.found;
}

/// Throws SQLite::Exception.
PhotoCheck lookAtAll(const std::string& log, const std::string& folder, bool look) {
    PhotoCheck out;
    const auto database = openForReading(log);
    // "instr" first: it reads the bytes, where "kind" would read JSON of every row.
    SQLite::Statement query(
        *database,
        "SELECT body->>'$.d.sha256', body->>'$.d.name', n, "
        "(SELECT first.body->>'$.d.number' FROM event AS first WHERE first.chain = 1 AND "
        "first.subject = event.subject AND first.n = 1) FROM event WHERE chain = 1 AND "
        "instr(body, '\"kind\":\"photo_added\"') > 0 AND kind = 'photo_added' ORDER BY seq");
    while (query.executeStep()) {
        ++out.named;
        if (!look) {
            continue;
        }
        PhotoFinding finding;
        finding.expected = query.getColumn(0).getString();
        finding.n = query.getColumn(2).getInt64();
        finding.number = query.getColumn(3).getInt64();
        const PhotoFile file = findPhoto(folder, finding.expected);
        if (file.there && file.sha256 == finding.expected) {
            continue;
        }
        finding.file = file.path;
        finding.found = file.sha256;
        finding.sentence = sentenceOf(finding, query.getColumn(1).getString(), file.there);
        out.findings.push_back(std::move(finding));
    }
    return out;
}

} // namespace

std::optional<std::string> photoBytes(const std::string& file) {
    try { // a file's buffer throws where the disk can't read, whatever the stream is told
        std::ifstream in(file, std::ios::binary);
        if (!in) {
            return std::nullopt;
        }
        std::string bytes{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
        return in.bad() ? std::nullopt : std::optional(std::move(bytes));
    } catch (const std::ios_base::failure&) {
        return std::nullopt;
    }
}

PhotoFile findPhoto(const std::string& folder, const std::string& sha256) {
    PhotoFile out;
    for (const char* form : {".png", ".jpg"}) { // where there is none, the last is named
        out.path = (fs::path(folder) / (sha256 + form)).string();
        std::error_code unknown;
        if (fs::exists(out.path, unknown)) {
            out.there = true;
            break;
        }
    }
    if (out.there) {
        if (const auto bytes = photoBytes(out.path)) {
            out.sha256 = sha256Hex(*bytes);
        }
    }
    return out;
}

Result<PhotoCheck> checkPhotos(const std::string& log) {
    const auto file = inspectLogFile(log);
    if (!file) {
        return tl::unexpected<Error>(file.error());
    }
    // A live log has its own folder, whatever lies beside it.
    const std::string folder = file->published ? photosOfCopy(log) : photoFolderOf(log);
    try {
        PhotoCheck out = lookAtAll(file->path, folder, !folder.empty());
        if (out.named > 0 && folder.empty()) {
            out.note = out.named == 1
                           ? std::string("1 photo is named, and no folder of photos lies beside "
                                         "this copy: it was not looked at")
                           : std::to_string(out.named) +
                                 " photos are named, and no folder of photos lies beside this "
                                 "copy: they were not looked at";
        }
        return out;
    } catch (const SQLite::Exception& thrown) {
        return tl::unexpected<Error>(errorOf(thrown, log, ErrorCode::Unreadable));
    }
}

} // namespace seamclock
