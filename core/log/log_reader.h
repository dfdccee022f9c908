// Reading a log of either world, over a connection of its own that can't write: lists, records,
// recovery, export. What it gives are stored bytes and their folds; it repairs nothing and judges
// nothing (verify.h does). Where the cache of joint lines is missing or behind, lines are worked
// out from the events instead, so that the answer is the same. One reader belongs to one thread; a
// writer may work on the same log meanwhile.
#pragma once

#include "core/base/result.h"
#include "core/log/joint.h"
#include "core/log/joint_measures.h"
#include "core/log/log_row.h"
#include "core/weld/event.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace seamclock {

/// A row of a chain as it is stored.
struct StoredRow {
    std::int64_t seq = 0;
    std::string hash;
    std::string body;
    std::string log{}; // the id of the log whose chain it is; "": this one's

    bool operator==(const StoredRow&) const = default;
};

/// A body with the place that its row gives it, which holds also where the body can't be read.
struct NamedBody {
    std::string subject;
    std::int64_t n = 0;
    std::string body;

    bool operator==(const NamedBody&) const = default;
};

/// The first and the last row of a subject in the log's own chain.
struct RowSpan {
    std::int64_t first = 0;
    std::int64_t last = 0;

    bool operator==(const RowSpan&) const = default;
};

class LogReader {
public:
    /// Unreadable: no such file, a folder, zero bytes, not a database, a live log on a network
    /// file system (a published copy may lie there). Foreign: a database that is not a log of ours,
    /// or one of a newer program. Damaged: ours, but its tables can't be read.
    static Result<LogReader> open(const std::string& path);

    LogReader(LogReader&&) noexcept;
    LogReader& operator=(LogReader&&) noexcept;
    ~LogReader();

    const std::string& path() const;
    const std::string& world() const; // "production" or "practice"
    const std::string& logId() const;
    Result<LogHead> head();

    /// The events of "weld:UUID" in the order of n; empty if there is no such weld. Damaged: a body
    /// that is no event.
    Result<std::vector<Event>> weldEvents(const std::string& subject);
    /// The bodies of any subject in the order of n; of what is no weld, those of this log's own
    /// chain, since each log numbers its facts for itself.
    Result<std::vector<std::string>> bodies(const std::string& subject);
    /// The bodies of a subject in the chain that tells how this weld was opened: another log's
    /// where it came with that. Who its people are stands there.
    Result<std::vector<std::string>>
    bodiesBeside(const std::string& weld, const std::string& subject);
    /// The bodies of all subjects that begin so ("person:", "day:"), from the log's own chain, in
    /// the order of their rows.
    Result<std::vector<std::string>> bodiesFrom(const std::string& family);
    Result<std::vector<NamedBody>> namedBodiesFrom(const std::string& family);
    /// One of them; absent: there is no such row.
    Result<std::optional<std::string>> body(const std::string& subject, std::int64_t n);
    /// The highest n of a subject; 0 if it has none.
    Result<std::int64_t> lastN(const std::string& subject);
    /// The highest number of a joint; 0 if there is none. The next joint gets one more.
    Result<std::int64_t> highestNumber();
    /// "weld:UUID" of every weld that is neither closed nor aborted, in the order they were opened.
    /// One that stands open in an imported chain only is not among them: it is made elsewhere.
    Result<std::vector<std::string>> openWelds();
    /// "weld:UUID" of the joints with this number (one, unless another log was imported).
    Result<std::vector<std::string>> weldsNumbered(std::int64_t number);

    /// One page, newest first.
    Result<std::vector<JointLine>> joints(const JointFilter& filter);
    /// The values that the joints of this log have in that field, sorted. People's are their ids.
    Result<std::vector<std::string>> values(JointField field);
    /// The local days on which joints were opened, the newest first, at most so many; before that
    /// day, if one is given. Malformed: a date that is none.
    Result<std::vector<std::string>>
    days(std::size_t most, const std::optional<std::string>& before = {});
    /// All that match, newest first, without holding them in memory (`limit` and `after` do not
    /// count). The callback returns false to stop, must not throw, and must not use this reader.
    Result<void>
    eachJoint(const JointFilter& filter, const std::function<bool(const JointLine&)>& use);
    /// Rows that the list of joints does not know yet. What is asked of joints is worked out from
    /// them, so while they are many, as after a program that lists by other rules, each question
    /// takes as long as the list itself.
    Result<std::int64_t> unlistedRows();
    /// Those measures of the joints that match and have one of them, oldest first, likewise. Welds
    /// that the cache does not know yet are worked out from their events.
    Result<void> eachMeasured(
        const std::vector<JointMeasure>& measures, const MeasureFilter& filter,
        const std::function<void(const MeasuredJoint&)>& use);
    /// Every row of the chain from that one on by seq, likewise.
    Result<void>
    eachRow(const std::function<bool(const StoredRow&)>& use, std::int64_t fromSeq = 1);
    /// Every row of the chains that came with another log, one chain after the other, likewise.
    Result<void> eachImportedRow(const std::function<bool(const StoredRow&)>& use);
    /// Absent: the log's own chain has no such subject.
    Result<std::optional<RowSpan>> span(const std::string& subject);
    /// All of its rows there, by n.
    Result<std::vector<std::int64_t>> rowsOf(const std::string& subject);
    /// Where two chains tell a weld differently: a sentence about the first such event; else "".
    Result<std::string> dispute(const std::string& weld);

    Result<std::optional<LogDocument>> document(const std::string& sha256);

private:
    struct Inside;
    explicit LogReader(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

} // namespace seamclock
