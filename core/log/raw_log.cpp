#include "core/log/raw_log.h"

#include "core/base/posix.h"
#include "core/base/uuid.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <map>
#include <optional>
#include <string_view>
#include <sys/stat.h>
#include <unistd.h>
#include <utility>

namespace seamclock {

namespace {

constexpr std::size_t kUsualPage = 4096; // what SQLite takes where nothing else is asked for
constexpr std::size_t kLargestRecord =
    64 * 1024 * 1024; // of a header that is none: no memory is taken
// Serial types of texts: of 64 bytes (a hash), of 41 ("weld:" and a UUID), of 36 (a UUID).
constexpr std::string_view kTextOfHash("\x81\x0d", 2);
constexpr unsigned char kTextOfWeld = 0x5f;
constexpr unsigned char kTextOfUuid = 0x55;
constexpr std::string_view kOurTable = "CREATE TABLE event(chain INTEGER NOT NULL";
constexpr std::size_t kWalHeader = 32;
constexpr std::size_t kFrameHeader = 24;

class File {
public:
    explicit File(const std::string& path)
        : m_file(::open(path.c_str(), O_RDONLY | O_CLOEXEC)), m_why(errno) {
        struct stat facts {};
        if (m_file >= 0 && fstat(m_file, &facts) == 0) {
            m_size = static_cast<std::size_t>(facts.st_size);
        }
    }
    File(const File&) = delete;
    File& operator=(const File&) = delete;
    ~File() {
        if (m_file >= 0) {
            close(m_file);
        }
    }
    bool isOpen() const { return m_file >= 0; }
    std::size_t size() const { return m_size; }
    std::string why() const { return std::strerror(m_why); }

    /// As much as there is; empty where the disk gives nothing back.
    std::string read(std::size_t at, std::size_t count) const {
        std::string out(at < m_size ? std::min(count, m_size - at) : 0, '\0');
        std::size_t done = 0;
        while (done < out.size()) {
            const auto got =
                pread(m_file, out.data() + done, out.size() - done, static_cast<off_t>(at + done));
            if (got < 0 && errno == EINTR) {
                continue;
            }
            if (got <= 0) {
                return {};
            }
            done += static_cast<std::size_t>(got);
        }
        return out;
    }

private:
    int m_file;
    int m_why;
    std::size_t m_size = 0;
};

std::uint32_t big(std::string_view bytes, std::size_t at) {
    std::uint32_t out = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        out = out << 8U | static_cast<unsigned char>(bytes[at + i]);
    }
    return out;
}

/// A varint; moves `at` behind it. Empty: it runs over the end.
std::optional<std::uint64_t> varint(std::string_view bytes, std::size_t& at) {
    std::uint64_t out = 0;
    for (int i = 0; i < 9; ++i) {
        if (at >= bytes.size()) {
            return {};
        }
        const auto byte = static_cast<unsigned char>(bytes[at++]);
        if (i == 8) {
            return out << 8U | byte;
        }
        out = out << 7U | (byte & 0x7fU);
        if (byte < 0x80) {
            return out;
        }
    }
    return out;
}

/// How many bytes a value of this serial type takes; empty: there is no such type.
std::optional<std::size_t> sizeOf(std::uint64_t serial) {
    constexpr std::array<std::size_t, 10> kSmall{0, 1, 2, 3, 4, 6, 8, 8, 0, 0};
    if (serial < kSmall.size()) {
        return kSmall[serial];
    }
    if (serial < 12 || serial > 4'000'000'000ULL) {
        return {};
    }
    return static_cast<std::size_t>((serial - 12) / 2);
}

struct Value {
    std::uint64_t serial = 0;
    std::string_view bytes;

    bool isText() const { return serial >= 13 && serial % 2 == 1; }
    bool isBlob() const { return serial >= 12 && serial % 2 == 0; }
    std::string text() const { return std::string(bytes); }
    std::optional<std::int64_t> integer() const {
        if (serial == 8 || serial == 9) {
            return static_cast<std::int64_t>(serial) - 8;
        }
        if (serial < 1 || serial > 6) {
            return {};
        }
        std::uint64_t out = (bytes[0] & 0x80) != 0 ? ~std::uint64_t{0} : 0;
        for (const char c : bytes) {
            out = out << 8U | static_cast<unsigned char>(c);
        }
        return static_cast<std::int64_t>(out);
    }
};

enum class Tree { Index, Table };

/// The file's own pages and those of its write-ahead log.
class Pages {
public:
    struct Frame {
        std::size_t page = 0;
        std::size_t at = 0; // of the page's bytes in the write-ahead log
        bool commit = false;
        std::uint64_t salt = 0;
    };

    Pages(const std::string& path, std::size_t size)
        : m_file(path), m_wal(path + "-wal"), m_size(size) {
        readFrames();
    }

    const File& file() const { return m_file; }
    std::size_t size() const { return m_size; }
    std::size_t count() const { return (m_file.size() + m_size - 1) / m_size; }
    std::string ofFile(std::size_t page) const { return m_file.read((page - 1) * m_size, m_size); }
    std::string ofFrame(const Frame& frame) const { return m_wal.read(frame.at, m_size); }
    const std::vector<Frame>& frames() const { return m_frames; }
    /// Frames up to which SQLite will read: whole transactions with the right check sums.
    std::size_t sound() const { return m_sound; }
    std::uint64_t salt() const { return m_salt; }
    bool walHeaderSound() const { return m_headerSound; }

    /// Where a page that a record goes on to is looked for.
    enum class Source { ThisRound, File, AnyRound };

    /// The newest copy of a page there; the file's own where the write-ahead log has none.
    std::string copyOf(std::size_t page, Source source) const {
        const auto& frames = source == Source::AnyRound ? m_last : m_newest;
        const auto found = source == Source::File ? frames.end() : frames.find(page);
        return found == frames.end() ? ofFile(page) : ofFrame(m_frames[found->second]);
    }

private:
    void readFrames();

    File m_file;
    File m_wal;
    std::size_t m_size;
    std::vector<Frame> m_frames;
    std::map<std::size_t, std::size_t> m_newest; // the last frame of each page in this round
    std::map<std::size_t, std::size_t> m_last;   // the last of each in the file
    std::size_t m_sound = 0;
    std::uint64_t m_salt = 0;
    bool m_headerSound = false;
};

bool isPageSize(std::size_t size) {
    return size >= 512 && size <= 65536 && (size & (size - 1)) == 0;
}

/// The usual one, and what the header says where it says another: it may be the header that is
/// damaged. What is read with the wrong size makes no sense, and no hash fits it.
std::vector<std::size_t> pageSizes(const std::string& path) {
    std::vector<std::size_t> out{kUsualPage};
    const std::string header = File(path).read(0, 100);
    if (header.size() == 100) {
        const std::size_t said = static_cast<unsigned char>(header[16]) * std::size_t{256} +
                                 static_cast<unsigned char>(header[17]);
        const std::size_t size = said == 1 ? 65536 : said;
        if (isPageSize(size) && size != kUsualPage) {
            out.push_back(size);
        }
    }
    return out;
}

/// The check sum of the write-ahead log ("WAL File Format", section "Checksum Algorithm").
class CheckSum {
public:
    explicit CheckSum(bool bigEndian) : m_big(bigEndian) {}
    void add(std::string_view bytes) {
        for (std::size_t at = 0; at + 8 <= bytes.size(); at += 8) {
            m_first += word(bytes, at) + m_second;
            m_second += word(bytes, at + 4) + m_first;
        }
    }
    bool is(std::string_view bytes, std::size_t at) const {
        return big(bytes, at) == m_first && big(bytes, at + 4) == m_second;
    }

private:
    std::uint32_t word(std::string_view bytes, std::size_t at) const {
        const std::uint32_t value = big(bytes, at);
        return m_big ? value : __builtin_bswap32(value);
    }
    bool m_big;
    std::uint32_t m_first = 0;
    std::uint32_t m_second = 0;
};

void Pages::readFrames() {
    const std::string header = m_wal.isOpen() ? m_wal.read(0, kWalHeader) : std::string();
    if (header.size() < kWalHeader) {
        return;
    }
    CheckSum sum((big(header, 0) & 1U) != 0);
    sum.add(std::string_view(header).substr(0, 24));
    m_headerSound =
        (big(header, 0) & ~1U) == 0x377f0682 && big(header, 8) == m_size && sum.is(header, 24);
    m_salt = std::uint64_t{big(header, 16)} << 32U | big(header, 20);
    bool sound = m_headerSound;
    for (std::size_t at = kWalHeader; at + kFrameHeader + m_size <= m_wal.size();
         at += kFrameHeader + m_size) {
        const std::string head = m_wal.read(at, kFrameHeader);
        if (head.empty()) {
            sound = false;
            m_frames.push_back({0, at + kFrameHeader, false, 0});
            continue;
        }
        Frame frame{big(head, 0), at + kFrameHeader, big(head, 4) != 0, 0};
        frame.salt = std::uint64_t{big(head, 8)} << 32U | big(head, 12);
        if (sound) {
            sum.add(std::string_view(head).substr(0, 8));
            sum.add(ofFrame(frame));
            sound = frame.page != 0 && frame.salt == m_salt && sum.is(head, 16);
        }
        if (!m_headerSound || frame.salt == m_salt) {
            m_newest[frame.page] = m_frames.size();
        }
        m_last[frame.page] = m_frames.size();
        m_frames.push_back(frame);
        if (sound && frame.commit) {
            m_sound = m_frames.size();
        }
    }
}

constexpr std::array kSources{
    Pages::Source::ThisRound, Pages::Source::File, Pages::Source::AnyRound};

/// Finds the records of one page.
class PageReader {
public:
    PageReader(const Pages& pages, const std::string& page, const RawUse& use)
        : m_pages(pages), m_page(page), m_use(use) {}

    void read() {
        eachOf(kTextOfHash, [this](std::size_t at) {
            if (m_use.event && at >= 3) {
                event(at - 3);
            }
            if (m_use.document && at >= 1) {
                document(at - 1);
            }
            if (m_use.chain && at >= 4) {
                chain(at - 4);
            }
        });
        if (m_use.key || m_use.joint) {
            eachOf("weld:", [this](std::size_t at) { weld(at); });
        }
    }

private:
    template <class F>
    void eachOf(std::string_view what, F use) {
        for (auto at = m_page.find(what); at != std::string::npos; at = m_page.find(what, at + 1)) {
            use(at);
        }
    }

    unsigned char byteAt(std::size_t at) const {
        return at < m_page.size() ? static_cast<unsigned char>(m_page[at]) : 0;
    }

    /// The record whose header begins there, with what stands on other pages; empty: there is none.
    std::optional<std::vector<Value>>
    recordAt(std::size_t start, Tree tree, Pages::Source source, std::string& payload) const;

    void event(std::size_t start) {
        const unsigned char header = byteAt(start);
        const unsigned char chain = byteAt(start + 1);
        if (header < 6 || header > 9 || (chain != 9 && chain != 1) || byteAt(start + 2) == 0 ||
            byteAt(start + 2) > 9) {
            return;
        }
        std::string last;
        for (const Pages::Source source : kSources) {
            std::string payload;
            const auto values = recordAt(start, Tree::Index, source, payload);
            if (!values || values->size() != 4 || !(*values)[3].isText() || payload == last) {
                continue;
            }
            RawEvent out{
                (*values)[0].integer().value_or(0), (*values)[1].integer().value_or(0),
                (*values)[2].text(), (*values)[3].text()};
            if (out.seq >= 1 && !out.body.empty() && out.body.front() == '{') {
                m_use.event(std::move(out));
            }
            last = std::move(payload);
        }
    }

    void document(std::size_t start) {
        const unsigned char header = byteAt(start);
        if (header < 5 || header > 8) {
            return;
        }
        for (const Pages::Source source : kSources) {
            std::string payload;
            const auto values = recordAt(start, Tree::Table, source, payload);
            if (!values || values->size() != 3 || !(*values)[1].isText() ||
                !(*values)[2].isBlob()) {
                continue;
            }
            LogDocument out{(*values)[0].text(), (*values)[1].text(), (*values)[2].text()};
            if (sha256Hex(out.bytes) == out.sha256) {
                m_use.document(std::move(out));
                return;
            }
        }
    }

    void chain(std::size_t start) {
        if (byteAt(start) != 9 || byteAt(start + 1) != 0 || byteAt(start + 2) != kTextOfUuid) {
            return;
        }
        std::string payload;
        const auto values = recordAt(start, Tree::Table, Pages::Source::ThisRound, payload);
        if (values && values->size() == 6 && (*values)[2].isText() && (*values)[5].isText()) {
            m_use.chain(
                {(*values)[1].text(), (*values)[2].text(), (*values)[4].integer().value_or(0),
                 (*values)[5].text()});
        }
    }

    void weld(std::size_t at) {
        if (m_use.key && at >= 5 && byteAt(at - 5) == 5 && byteAt(at - 3) == kTextOfWeld) {
            std::string payload;
            const auto values = recordAt(at - 5, Tree::Index, Pages::Source::ThisRound, payload);
            if (values && values->size() == 4) {
                m_use.key(
                    {(*values)[1].text(), (*values)[2].integer().value_or(0),
                     (*values)[3].integer().value_or(0)});
            }
        }
        for (std::size_t header = 20; m_use.joint && header <= 48 && header <= at; ++header) {
            const std::size_t start = at - header;
            if (byteAt(start) != header || byteAt(start + 1) != kTextOfWeld) {
                continue;
            }
            std::string payload;
            const auto values = recordAt(start, Tree::Table, Pages::Source::ThisRound, payload);
            // Columns as schema.cpp has them: 14 is the phase, 15 whether it is open.
            if (values && values->size() >= 16 && (*values)[3].isText()) {
                const std::string_view phase = (*values)[14].bytes;
                const bool ended =
                    (*values)[15].integer() == 0 && (phase == "closed" || phase == "aborted");
                m_use.joint({(*values)[0].text(), (*values)[2].integer().value_or(0), ended});
            }
        }
    }

    const Pages& m_pages;
    const std::string& m_page;
    const RawUse& m_use;
};

std::optional<std::vector<Value>> PageReader::recordAt(
    std::size_t start, Tree tree, Pages::Source source, std::string& payload) const {
    const std::string_view page = m_page;
    std::size_t at = start;
    const auto header = varint(page, at);
    if (!header || *header < 2 || start + *header > page.size()) {
        return {};
    }
    std::vector<Value> values;
    std::size_t length = static_cast<std::size_t>(*header);
    while (at < start + *header) {
        const auto serial = varint(page, at);
        const auto size = serial ? sizeOf(*serial) : std::nullopt;
        if (!size) {
            return {};
        }
        values.push_back({*serial, {}});
        length += *size;
    }
    if (at != start + *header || length > kLargestRecord) {
        return {};
    }
    // How much of a record stands in its own page ("Cell Payload Overflow Pages").
    const std::size_t usable = m_pages.size();
    const std::size_t most = tree == Tree::Table ? usable - 35 : (usable - 12) * 64 / 255 - 23;
    const std::size_t least = (usable - 12) * 32 / 255 - 23;
    std::size_t local = length;
    if (length > most) {
        const std::size_t wanted = least + (length - least) % (usable - 4);
        local = wanted <= most ? wanted : least;
    }
    if (start + local + (local < length ? 4 : 0) > page.size()) {
        return {};
    }
    payload = m_page.substr(start, local);
    std::size_t next = local < length ? big(page, start + local) : 0;
    while (payload.size() < length) {
        if (next == 0) {
            return {};
        }
        const std::string more = m_pages.copyOf(next, source);
        if (more.size() < usable) {
            return {};
        }
        next = big(more, 0);
        payload.append(more, 4, std::min(length - payload.size(), usable - 4));
    }
    std::size_t from = static_cast<std::size_t>(*header);
    for (Value& value : values) {
        const std::size_t size = *sizeOf(value.serial);
        value.bytes = std::string_view(payload).substr(from, size);
        from += size;
    }
    return values;
}

} // namespace

Result<RawExtent> readRawLog(const std::string& path, const RawUse& use) {
    RawExtent out;
    for (const std::size_t size : pageSizes(path)) {
        const Pages pages(path, size);
        if (!pages.file().isOpen() && pages.frames().empty()) {
            return fail(ErrorCode::Unreadable, path + ": " + pages.file().why());
        }
        const auto look = [&](const std::string& page) {
            out.ours = out.ours || page.find(kOurTable) != std::string::npos;
            PageReader(pages, page, use).read();
        };
        for (std::size_t i = 1; i <= pages.count(); ++i) {
            look(pages.ofFile(i));
        }
        for (const Pages::Frame& frame : pages.frames()) {
            look(pages.ofFrame(frame));
        }
    }
    return out;
}

Result<WalTail> readWalTail(const std::string& path) {
    const Pages pages(path, kUsualPage);
    WalTail out;
    const RawUse use{
        [&](RawEvent event) { out.events.push_back(std::move(event)); },
        {},
        {},
        {},
        [&](LogDocument document) { out.documents.push_back(std::move(document)); }};
    const auto& frames = pages.frames();
    // Behind the end stand frames of an earlier round too, which the file itself holds by now; they
    // have another salt. With a damaged header nothing tells them apart.
    for (std::size_t i = pages.sound(); i < frames.size(); ++i) {
        if (!pages.walHeaderSound() || frames[i].salt == pages.salt()) {
            out.commits += frames[i].commit ? 1 : 0;
            PageReader(pages, pages.ofFrame(frames[i]), use).read();
        }
    }
    return out;
}

} // namespace seamclock
