#include "core/log/spill.h"

#include "core/base/posix.h"
#include "core/base/uuid.h"
#include "core/log/body_codec.h"

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <optional>
#include <string_view>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace seamclock {

namespace {

constexpr std::size_t kHashLength = 64;
constexpr std::string_view kLogWord = "log ";
constexpr std::string_view kDocumentWord = "document ";

std::string lineOf(std::string_view text) {
    return sha256Hex(text) + " " + std::string(text) + "\n";
}

std::string toHex(std::string_view bytes) {
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string out;
    out.reserve(bytes.size() * 2);
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        out += kDigits[byte >> 4U];
        out += kDigits[byte & 15U];
    }
    return out;
}

std::optional<std::string> fromHex(std::string_view hex) {
    const auto digit = [](char c) {
        return c >= '0' && c <= '9' ? c - '0' : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
    };
    std::string out;
    if (hex.size() % 2 != 0) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < hex.size(); i += 2) {
        const int high = digit(hex[i]);
        const int low = digit(hex[i + 1]);
        if (high < 0 || low < 0) {
            return std::nullopt;
        }
        out += static_cast<char>(high * 16 + low);
    }
    return out;
}

std::optional<LogDocument> documentFrom(std::string_view text) {
    text.remove_prefix(kDocumentWord.size());
    const auto space = text.find(' ');
    if (space == std::string_view::npos) {
        return std::nullopt;
    }
    auto bytes = fromHex(text.substr(space + 1));
    if (!bytes) {
        return std::nullopt;
    }
    std::string hash = sha256Hex(*bytes);
    return LogDocument{std::move(hash), std::string(text.substr(0, space)), std::move(*bytes)};
}

bool take(std::string_view line, SpillContent& content) {
    if (line.size() < kHashLength + 1 || line[kHashLength] != ' ') {
        return false;
    }
    const std::string_view text = line.substr(kHashLength + 1);
    if (sha256Hex(text) != line.substr(0, kHashLength)) {
        return false;
    }
    if (text.substr(0, kLogWord.size()) == kLogWord) {
        content.logId = std::string(text.substr(kLogWord.size()));
        return true;
    }
    if (text.substr(0, kDocumentWord.size()) == kDocumentWord) {
        auto document = documentFrom(text);
        if (document) {
            content.documents.push_back(std::move(*document));
        }
        return document.has_value();
    }
    auto envelope = readEnvelope(text);
    if (!envelope) {
        return false;
    }
    content.rows.push_back({std::move(envelope->subject), envelope->n, std::string(text)});
    return true;
}

/// Where the last whole line ends.
std::size_t takeAll(std::string_view bytes, SpillContent& content) {
    std::size_t at = 0;
    while (at < bytes.size() && bytes[at] != '\0') {
        const auto end = bytes.find('\n', at);
        const auto zero = bytes.find('\0', at);
        if (end == std::string_view::npos || zero < end) {
            break; // torn: it was never reported as spilled
        }
        const std::string_view line = bytes.substr(at, end - at);
        if (!take(line, content)) {
            content.damaged.emplace_back(line);
        }
        at = end + 1;
    }
    return at;
}

bool writeAll(int file, std::string_view bytes, std::int64_t at) {
    while (!bytes.empty()) {
        const auto done = pwrite(file, bytes.data(), bytes.size(), at);
        if (done < 0 && errno == EINTR) {
            continue;
        }
        if (done <= 0) {
            return false;
        }
        bytes.remove_prefix(static_cast<std::size_t>(done));
        at += done;
    }
    return true;
}

tl::unexpected<Error> refused(const std::string& path, const char* what) {
    return fail(ErrorCode::NotWritten, path + ": " + what + " (" + std::strerror(errno) + ")");
}

struct Bytes {
    std::string written;   // up to the last byte that is not zero
    std::int64_t size = 0; // of the file
};

/// The first is zero, and each is what the one before it is.
bool allZero(std::string_view bytes) {
    return bytes.empty() || (bytes.front() == '\0' &&
                             std::memcmp(bytes.data(), bytes.data() + 1, bytes.size() - 1) == 0);
}

/// The zeros written in advance are looked at, not kept: a start reads megabytes of them.
Result<Bytes> readAll(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file) {
        return fail(ErrorCode::Unreadable, path + ": not readable");
    }
    Bytes out;
    char block[65536];
    while (file.read(block, sizeof block), file.gcount() > 0) {
        const std::string_view bytes(block, static_cast<std::size_t>(file.gcount()));
        if (!allZero(bytes)) {
            out.written.resize(static_cast<std::size_t>(out.size), '\0');
            out.written.append(bytes.substr(0, bytes.find_last_not_of('\0') + 1));
        }
        out.size += static_cast<std::int64_t>(bytes.size());
    }
    if (file.bad()) {
        return fail(ErrorCode::Unreadable, path + ": can't be read");
    }
    return out;
}

} // namespace

Result<SpillContent> readSpill(const std::string& path) {
    std::error_code ignored;
    if (!std::filesystem::exists(path, ignored)) {
        return SpillContent{};
    }
    const auto bytes = readAll(path);
    if (!bytes) {
        return tl::unexpected<Error>(bytes.error());
    }
    SpillContent content;
    takeAll(bytes->written, content);
    return content;
}

Result<SpillFile>
SpillFile::open(const std::string& path, const std::string& logId, std::int64_t bytes) {
    const int file = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0644);
    if (file < 0) {
        return refused(path, "can't be opened");
    }
    SpillFile out(file, path, logId);
    const auto content = readAll(path);
    if (!content) {
        return tl::unexpected<Error>(content.error());
    }
    out.m_end = static_cast<std::int64_t>(takeAll(content->written, out.m_found));
    out.m_size = content->size;
    if (!out.m_found.empty() && out.m_found.logId != logId) {
        return fail(
            ErrorCode::Conflict, path + ": holds " + std::to_string(out.m_found.rows.size()) +
                                     " rows of another log (\"" + out.m_found.logId +
                                     "\", expected \"" + logId +
                                     "\"); move it away, or put its own log back");
    }
    // What is behind the last whole line was never reported as spilled, and must not be met again.
    const bool torn = static_cast<std::int64_t>(content->written.size()) > out.m_end;
    const std::int64_t size = std::max(out.m_size, bytes);
    if (torn || size > out.m_size) {
        if (auto done = out.zero(torn ? out.m_end : out.m_size, size); !done) {
            return tl::unexpected<Error>(std::move(done.error()));
        }
        out.m_size = size;
    }
    const int folder = ::open(
        std::filesystem::path(path).parent_path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder >= 0) {
        fsync(folder);
        close(folder);
    }
    return out;
}

SpillFile::SpillFile(SpillFile&& other) noexcept
    : m_file(std::exchange(other.m_file, -1)), m_path(std::move(other.m_path)),
      m_logId(std::move(other.m_logId)), m_end(other.m_end), m_size(other.m_size),
      m_found(std::move(other.m_found)) {}

SpillFile& SpillFile::operator=(SpillFile&& other) noexcept {
    std::swap(m_file, other.m_file);
    std::swap(m_path, other.m_path);
    std::swap(m_logId, other.m_logId);
    std::swap(m_end, other.m_end);
    std::swap(m_size, other.m_size);
    std::swap(m_found, other.m_found);
    return *this;
}

SpillFile::~SpillFile() {
    if (m_file >= 0) {
        close(m_file);
    }
}

Result<void>
SpillFile::append(const std::vector<LogRow>& rows, const std::vector<LogDocument>& documents) {
    std::string bytes;
    if (m_end == 0) {
        bytes += lineOf(std::string(kLogWord) + m_logId);
    }
    for (const LogDocument& document : documents) {
        bytes += lineOf(std::string(kDocumentWord) + document.kind + " " + toHex(document.bytes));
    }
    for (const LogRow& row : rows) {
        bytes += lineOf(row.body);
    }
    const auto end = m_end + static_cast<std::int64_t>(bytes.size());
    if (end > m_size) {
        return fail(
            ErrorCode::NotWritten, m_path + ": " + std::to_string(bytes.size()) +
                                       " bytes do not fit; it has room for " +
                                       std::to_string(m_size - m_end));
    }
    struct stat facts {};
    if (fstat(m_file, &facts) != 0 || facts.st_nlink == 0) {
        return fail(ErrorCode::NotWritten, m_path + ": was deleted");
    }
    if (!writeAll(m_file, bytes, m_end) || fdatasync(m_file) != 0) {
        auto out = refused(m_path, "can't be written");
        // Pieces of it are only confusing; what stays whole is a row that was really given.
        static_cast<void>(zero(m_end, end));
        return out;
    }
    m_end = end;
    return {};
}

Result<void> SpillFile::zero(std::int64_t from, std::int64_t to) {
    const std::string zeros(65536, '\0');
    for (std::int64_t at = from; at < to; at += static_cast<std::int64_t>(zeros.size())) {
        const auto length = std::min(to - at, static_cast<std::int64_t>(zeros.size()));
        if (!writeAll(
                m_file, std::string_view(zeros).substr(0, static_cast<std::size_t>(length)), at)) {
            return refused(m_path, "can't be written");
        }
    }
    if (fsync(m_file) != 0) {
        return refused(m_path, "can't be brought to disk");
    }
    return {};
}

Result<void> SpillFile::clear() {
    if (m_end == 0) {
        return {};
    }
    if (auto done = zero(0, m_end); !done) {
        return done;
    }
    m_end = 0;
    return {};
}

} // namespace seamclock
