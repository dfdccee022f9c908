#include "core/copies/copy_look.h"

#include "core/base/posix.h"
#include "core/log/body_codec.h"
#include "core/log/log_reader.h"

#include <sys/stat.h>
#include <utility>

namespace seamclock {

namespace {

Milliseconds fileTime(const std::string& file) {
    struct stat facts {};
    if (stat(file.c_str(), &facts) != 0) {
        return Milliseconds(0);
    }
    return std::chrono::seconds(facts.st_mtim.tv_sec) +
           Milliseconds(facts.st_mtim.tv_nsec / 1'000'000);
}

} // namespace

Result<CopySeen> lookAtCopy(const std::string& file) {
    auto copy = readCopy(file); // looks at the file's first bytes before it opens anything
    if (!copy && copy.error().code == ErrorCode::Foreign) {
        Error error = copy.error();
        error.detail += "; allowed: a snapshot, a backup, or what log backup made";
        return tl::unexpected<Error>(std::move(error));
    }
    auto reader = LogReader::open(file); // it tells of a newer program
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    if (!copy) {
        return tl::unexpected<Error>(copy.error());
    }
    CopySeen out{std::move(*copy), fileTime(file), std::nullopt};
    const auto read = reader->eachRow(
        [&out](const StoredRow& row) {
            if (const auto envelope = readEnvelope(row.body)) {
                out.lastRow = envelope->at;
            }
            return true;
        },
        out.copy.rows);
    if (!read) {
        return tl::unexpected<Error>(read.error());
    }
    return out;
}

} // namespace seamclock
