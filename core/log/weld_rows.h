// The rows of a chain on their way from stored bodies to welds: each body is parsed, and the events
// of a weld, which are nearly all, are held until it is over and folded then. Nothing here reads
// the log, so this half of a check can run on another thread than the one that reads the rows; what
// it says comes in the order of the rows, so that the first that is wrong is still found first.
#pragma once

#include "core/log/joint_cache.h"
#include "core/weld/event.h"

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace seamclock {

/// Some rows in their order.
class RowBatch {
public:
    struct Row {
        std::int64_t seq = 0;
        std::size_t from = 0;
        std::size_t size = 0;
    };

    /// With room for so much.
    explicit RowBatch(std::size_t bytes) { m_bodies.reserve(bytes); }

    void add(std::int64_t seq, std::string_view body);
    std::size_t bytes() const { return m_bodies.size(); }
    const std::vector<Row>& rows() const { return m_rows; }
    std::string_view bodyOf(const Row& row) const;

private:
    std::string m_bodies;
    std::vector<Row> m_rows;
};

/// A row that holds no event of a weld, or nothing that can be read; not looked at any further.
struct OtherRow {
    std::int64_t seq = 0;
    std::string body;
};
struct WeldBegun {
    std::int64_t seq = 0;
    std::string weld;
};
struct DocumentsNamed {
    std::int64_t seq = 0;
    PlanDocuments documents;
    bool practice = false; // it opens a weld of practice
};
/// A weld whose rows come in another order, or after it was over (a decision, a signature), or stay
/// open while too many others do: it must be read again by n.
struct WeldLate {
    std::int64_t seq = 0;
    std::string weld;
};
/// The events that were met fit into a weld.
struct WeldMade {
    std::int64_t seq = 0;
    std::string weld;
    std::int64_t events = 0;
    bool soFar = false;               // it is over, but later rows may speak of it
    std::optional<CachedJoint> joint; // if lines are wanted
};
struct WeldRefused {
    std::int64_t seq = 0; // the first event that a live weld would have refused
    std::string weld;
    std::string reason;
};

using WeldFolded = std::variant<WeldMade, WeldRefused>;
using RowNews = std::variant<OtherRow, WeldBegun, DocumentsNamed, WeldLate, WeldFolded>;

/// The rows of one weld by n, as far as they were met.
struct HeldWeld {
    std::vector<std::int64_t> seqs;
    std::vector<Event> events;
};

/// At least one event.
WeldFolded foldHeld(const std::string& weld, HeldWeld held, bool soFar, bool lines);

/// The welds of one chain.
class WeldRows {
public:
    /// `lines`: whether what is folded comes with its line of the list.
    explicit WeldRows(bool lines) : m_lines(lines) {}

    std::vector<RowNews> take(const RowBatch& batch);
    /// At the end of the chain: the welds that are not over.
    std::vector<RowNews> end();

private:
    void hold(std::int64_t seq, Event event, std::vector<RowNews>& out);

    bool m_lines;
    std::map<std::string, HeldWeld> m_begun;
};

} // namespace seamclock
