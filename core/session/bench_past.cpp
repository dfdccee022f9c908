#include "core/session/bench_past.h"

#include "core/log/log_reader.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace seamclock {

namespace {

// More than a bench makes in a day: the trial joint of a long series is among them.
constexpr std::size_t kMost = 200;
constexpr Milliseconds kDay = std::chrono::hours(24);

bool isNewer(const Weld& one, const Weld& other) {
    return one.opened().number > other.opened().number;
}

Milliseconds openedUtc(const Weld& weld) {
    return weld.events.front().at.utc;
}

} // namespace

Result<std::vector<Weld>>
BenchPast::readBefore(const std::string& bench, const Instant& now) const {
    auto reader = LogReader::open(m_path);
    if (!reader) {
        return tl::unexpected<Error>(reader.error());
    }
    JointFilter filter;
    filter.bench = bench;
    filter.limit = kMost;
    const auto lines = reader->joints(filter);
    if (!lines) {
        return tl::unexpected<Error>(lines.error());
    }
    std::vector<Weld> found;
    for (const JointLine& line : *lines) {
        if (now.utc - line.openedUtc > kDay) {
            break;
        }
        auto events = reader->weldEvents(line.weld);
        if (!events) {
            return tl::unexpected<Error>(events.error());
        }
        auto weld = foldTaking(*events);
        if (!weld) {
            break; // what a damaged weld said is not known, nor what stood before it
        }
        found.push_back(std::move(*weld));
    }
    return found;
}

Result<std::vector<Weld>> BenchPast::before(
    const std::string& bench, const Instant& now,
    const std::function<bool(const std::string& weld)>& here) {
    auto known = m_before.find(bench);
    if (known == m_before.end()) {
        auto read = readBefore(bench, now);
        if (!read) {
            return read;
        }
        std::sort(read->begin(), read->end(), isNewer);
        known = m_before.emplace(bench, std::move(*read)).first;
    }
    std::vector<Weld> out;
    for (const Weld& weld : known->second) {
        if (!here(weld.id()) && now.utc - openedUtc(weld) <= kDay) {
            out.push_back(weld);
        }
    }
    return out;
}

Result<std::optional<AlignTimes>> BenchPast::usualAlignment(
    const std::string& bench, const std::string& procedure, std::int64_t thicknessUm) {
    const Kind kind(bench, procedure, thicknessUm);
    auto known = m_alignments.find(kind);
    if (known == m_alignments.end()) {
        auto reader = LogReader::open(m_path);
        if (!reader) {
            return tl::unexpected<Error>(reader.error());
        }
        auto read = lastAlignments(*reader, bench, procedure, thicknessUm);
        if (!read) {
            return tl::unexpected<Error>(read.error());
        }
        known = m_alignments.emplace(kind, std::move(*read)).first;
    }
    return alignTimesOf(known->second);
}

void BenchPast::closed(const Weld& weld) {
    const WeldOpened& opened = weld.opened();
    const std::int64_t thickness = opened.sheets.empty() ? 0 : opened.sheets.front().thicknessUm;
    const auto known = m_alignments.find(Kind(opened.bench, weld.plan.procedure, thickness));
    const auto took = alignmentOf(weld);
    if (known == m_alignments.end() || !took) {
        return;
    }
    std::vector<Milliseconds>& times = known->second;
    times.insert(times.begin(), *took);
    times.resize(std::min(times.size(), kAlignmentsKept));
}

void BenchPast::gone(const Weld& weld) {
    const auto known = m_before.find(weld.opened().bench);
    if (known == m_before.end()) {
        return; // it is read with the others
    }
    std::vector<Weld>& welds = known->second;
    welds.erase(
        std::remove_if(
            welds.begin(), welds.end(), [&weld](const Weld& one) { return one.id() == weld.id(); }),
        welds.end());
    welds.insert(std::upper_bound(welds.begin(), welds.end(), weld, isNewer), weld);
    if (welds.size() > kMost) {
        welds.pop_back();
    }
}

} // namespace seamclock
