#include "app/cli/files.h"

#include "app/cli/numbers.h"
#include "core/log/log_reader.h"
#include "core/log/shelf.h"

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <memory>
#include <system_error>

namespace seamclock {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t kLargestFile = 16 * 1024 * 1024;
constexpr const char* kBeside = ".part";

struct Close {
    void operator()(std::FILE* file) const { std::fclose(file); }
};
using File = std::unique_ptr<std::FILE, Close>;

std::string lastSystemWord() {
    return std::generic_category().message(errno);
}

tl::unexpected<Error> unreadable(const std::string& path, const std::string& why) {
    return fail(
        ErrorCode::Unreadable,
        inQuotes(path) + " can't be read: " + why + "; allowed: a readable file of up to 16 MB");
}

tl::unexpected<Error> notWritten(const std::string& path, const std::string& why) {
    return fail(
        ErrorCode::NotWritten, inQuotes(path) + " can't be written: " + why +
                                   "; allowed: a file in a folder that can be written");
}

bool isFolder(const fs::path& path) {
    std::error_code code;
    return fs::is_directory(path, code);
}

bool endsWith(const std::string& text, std::string_view end) {
    return text.size() >= end.size() &&
           text.compare(text.size() - end.size(), end.size(), end) == 0;
}

} // namespace

Result<std::string> readText(const std::string& path) {
    if (isFolder(path)) {
        return unreadable(path, "it is a folder");
    }
    const File file(std::fopen(path.c_str(), "rb"));
    if (!file) {
        return unreadable(path, lastSystemWord());
    }
    std::string text;
    char block[65536];
    for (std::size_t read = sizeof block; read == sizeof block;) {
        read = std::fread(block, 1, sizeof block, file.get());
        text.append(block, read);
        if (text.size() > kLargestFile) {
            return unreadable(path, "it is too large");
        }
    }
    if (std::ferror(file.get()) != 0) {
        return unreadable(path, lastSystemWord());
    }
    return text;
}

Result<OutFile> OutFile::open(const std::string& path) {
    if (isFolder(path)) {
        return notWritten(path, "it is a folder");
    }
    OutFile out;
    out.m_path = path;
    // A device or a pipe is written straight into: a rename would replace it.
    std::error_code code;
    const bool plain = !fs::exists(path, code) || fs::is_regular_file(path, code);
    out.m_written = plain ? path + kBeside : path;
    out.m_file.reset(std::fopen(out.m_written.c_str(), "wb"));
    if (!out.m_file) {
        return notWritten(path, lastSystemWord());
    }
    return out;
}

void OutFile::write(std::string_view text) {
    const bool open = m_trouble.empty() && m_file;
    if (open && std::fwrite(text.data(), 1, text.size(), m_file.get()) != text.size()) {
        m_trouble = lastSystemWord();
    }
}

void OutFile::discard() {
    m_file.reset();
    if (m_written != m_path) {
        std::remove(m_written.c_str());
    }
}

Result<void> OutFile::finish() {
    if (m_trouble.empty() && std::fflush(m_file.get()) != 0) {
        m_trouble = lastSystemWord();
    }
    m_file.reset();
    const bool beside = m_written != m_path;
    if (m_trouble.empty() && beside && std::rename(m_written.c_str(), m_path.c_str()) != 0) {
        m_trouble = lastSystemWord();
    }
    if (m_trouble.empty()) {
        return {};
    }
    discard();
    return notWritten(m_path, m_trouble);
}

Result<std::vector<ProcedureDocument>> shippedProcedures() {
    const auto folder = resourceFolder();
    if (!folder) {
        return tl::unexpected(folder.error());
    }
    return readProcedureFolder(*folder + "/procedures");
}

Result<std::vector<ProcedureDocument>> proceduresOf(const std::optional<std::string>& log) {
    auto shipped = shippedProcedures();
    if (!shipped || !log) {
        return shipped;
    }
    auto reader = LogReader::open(*log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    return proceduresInForce(*reader, std::move(*shipped));
}

Result<ProcedureDocument>
findProcedure(const std::string& idOrFile, const std::optional<std::string>& log) {
    if (idOrFile.find('/') != std::string::npos || endsWith(idOrFile, ".json")) {
        return readProcedureFile(idOrFile);
    }
    auto all = proceduresOf(log);
    if (!all) {
        return tl::unexpected(all.error());
    }
    const auto found = std::find_if(all->begin(), all->end(), [&](const ProcedureDocument& one) {
        return one.procedure.id == idOrFile;
    });
    if (found != all->end()) {
        return std::move(*found);
    }
    std::string ids;
    for (const ProcedureDocument& one : *all) {
        ids += (ids.empty() ? "" : ", ") + one.procedure.id;
    }
    return fail(
        ErrorCode::Missing, inQuotes(idOrFile) + " is not a procedure; allowed: " + ids +
                                ", or a file with / or .json in its name");
}

} // namespace seamclock
