// How the terminal program reads and writes the files that a person names, and the procedures that
// come with it.
#pragma once

#include "app/platform/resource_folder.h"
#include "core/base/result.h"
#include "core/bench/bench_codec.h"
#include "core/procedure/procedure_codec.h"

#include <cstdio>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// The whole file. Unreadable: not there, a folder, not readable, or larger than 16 MB. Zero bytes
/// are a file too.
Result<std::string> readText(const std::string& path);

/// A file that is there complete or not at all: it is written beside and renamed at the end.
/// NotWritten: with the path and the system's word for it.
class OutFile {
public:
    static Result<OutFile> open(const std::string& path);
    /// After a failed write the rest is left out; finish() tells.
    void write(std::string_view text);
    Result<void> finish();
    /// Nothing is left of it.
    void discard();

private:
    struct Close {
        void operator()(std::FILE* file) const { std::fclose(file); }
    };
    std::string m_path;
    std::string m_written;
    std::unique_ptr<std::FILE, Close> m_file;
    std::string m_trouble;
};

Result<std::vector<ProcedureDocument>> shippedProcedures();
/// As they hold in that log: the shipped ones, the shop's own, and what is attested. Without a log
/// the shipped ones. Also errors as LogReader::open and proceduresInForce.
Result<std::vector<ProcedureDocument>> proceduresOf(const std::optional<std::string>& log);

/// By id, or a file: what holds a "/" or ends with ".json". Missing: the sentence lists the ids.
/// A file is taken as it is, whatever the log says.
Result<ProcedureDocument>
findProcedure(const std::string& idOrFile, const std::optional<std::string>& log = {});

} // namespace seamclock
