// The cache of joint lines: kept up to the head of each chain by the writer, read in pages by the
// reader, and never trusted further than it says it reaches. Functions here throw
// SQLite::Exception.
#pragma once

#include "core/base/result.h"
#include "core/log/joint.h"
#include "core/log/joint_measures.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
} // namespace SQLite

namespace seamclock {

/// A joint's line with the text that a search looks through and the numbers that charts follow.
struct CachedJoint {
    JointLine line;
    std::string text;
    JointMeasures measures;

    bool operator==(const CachedJoint&) const = default;
};

CachedJoint cachedJointOf(const WeldRecord& record);

/// Malformed: a date that is none; OutOfRange: a page of no lines.
Result<void> checkFilter(const JointFilter& filter);

/// The order of every list.
bool isNewer(const JointLine& a, const JointLine& b);

/// The numbers of the chains that the log holds: its own, 1, and those imported.
std::vector<std::int64_t> chainsOf(SQLite::Database& database);

/// The stored bodies of a subject by n. A weld's come from all chains, and the same body in two
/// chains comes once; where two chains hold different events of it, they are those of the first
/// chain that has any, this log's own before others, and `dispute` says so in a sentence. Facts are
/// numbered by each log for itself: theirs are those of the own chain.
std::vector<std::string>
bodiesOf(SQLite::Database& events, const std::string& subject, std::string* dispute = nullptr);

/// What the events of a weld make of it. A weld whose events make none has a line too, with its
/// trouble; so has one that is told differently in two chains.
CachedJoint foldedJoint(SQLite::Database& events, const std::string& weld);

/// Whether the cache's tables are there, and as this program makes them.
bool hasJointCache(SQLite::Database& database);

/// Gives a cache that an earlier program made the indexes that it has not; they are no part of what
/// makes it this program's.
void addMissingIndexes(SQLite::Database& database);

/// Asks before each list whether the cache can be trusted as it is; its statements stay prepared,
/// as that question would cost more than a page.
class CacheWatch {
public:
    explicit CacheWatch(SQLite::Database& database);
    CacheWatch(CacheWatch&&) noexcept;
    CacheWatch& operator=(CacheWatch&&) noexcept;
    ~CacheWatch();

    /// Whether there is a line of every weld: staleWelds would give none.
    bool isComplete();

private:
    bool isHere(); // as hasJointCache

    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

/// Welds with rows behind the row to which the cache is complete; all, if there is no cache.
std::vector<std::string> staleWelds(SQLite::Database& database);

/// The row of a chain to which the cache is complete; 0 without a cache, or with one made by other
/// rules or lines than this program's.
std::int64_t cachedTo(SQLite::Database& database, std::int64_t chain);

/// Puts lines with their texts into the cache, or in the place of those that it has.
class JointStore {
public:
    explicit JointStore(SQLite::Database& cache);
    JointStore(JointStore&&) noexcept;
    JointStore& operator=(JointStore&&) noexcept;
    ~JointStore();

    void store(const CachedJoint& joint);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

/// Folds these welds and stores their lines.
void cacheJoints(
    SQLite::Database& events, SQLite::Database& cache, const std::vector<std::string>& welds);

/// One step towards a complete cache, at most `rows` rows of a chain further, in one transaction.
/// True: there is more.
bool refreshJointCache(SQLite::Database& database, std::int64_t rows);

/// The values that its joints have there, sorted; found by steps along the field's index.
std::vector<std::string> cachedValues(SQLite::Database& cache, JointField field);

/// The local days on which its joints were opened, the newest first, at most so many, and before
/// that day, if one is given.
std::vector<std::string> cachedDays(
    SQLite::Database& cache, std::size_t most, const std::optional<std::string>& before = {});

/// The lines of single welds as the cache has them.
class CachedJoints {
public:
    explicit CachedJoints(SQLite::Database& cache);
    CachedJoints(CachedJoints&&) noexcept;
    CachedJoints& operator=(CachedJoints&&) noexcept;
    ~CachedJoints();

    std::optional<CachedJoint> of(const std::string& weld);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

/// Lines that match, newest first; `filter.limit` does not count.
class JointCursor {
public:
    JointCursor(SQLite::Database& cache, const JointFilter& filter);
    JointCursor(JointCursor&&) noexcept;
    JointCursor& operator=(JointCursor&&) noexcept;
    ~JointCursor();

    /// False at the end.
    bool next(JointLine& line);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

/// Those measures of the joints that match and have one of them, by the instants of their openings.
class MeasureCursor {
public:
    MeasureCursor(
        SQLite::Database& cache, const std::vector<JointMeasure>& measures,
        const MeasureFilter& filter);
    MeasureCursor(MeasureCursor&&) noexcept;
    MeasureCursor& operator=(MeasureCursor&&) noexcept;
    ~MeasureCursor();

    /// False at the end. The texts hold until the next call.
    bool next(MeasuredJoint& joint);

private:
    struct Inside;
    std::unique_ptr<Inside> m_inside;
};

} // namespace seamclock
