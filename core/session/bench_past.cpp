#include "core/session/bench_past.h"

#include "core/log/log_reader.h"
#include "core/session/set_up.h"

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <iterator>
#include <utility>

namespace seamclock {

namespace {

constexpr std::size_t kRead = 200; // more than a bench makes in a day
constexpr std::size_t kWhole = 20; // kept whatever they are
constexpr Milliseconds kDay = std::chrono::hours(24);

bool isNewer(const Weld& one, const Weld& other) {
    return one.opened().number > other.opened().number;
}

Milliseconds openedUtc(const Weld& weld) {
    return weld.events.front().at.utc;
}

/// Of a long series its trial joints stay, however many joints came after them: they stand as long
/// as no joint between has another set-up, so what came before such a joint goes.
void keepWhatMayStand(std::vector<Weld>& welds) {
    if (welds.size() <= kWhole) {
        return;
    }
    const auto from = welds.begin() + static_cast<std::ptrdiff_t>(kWhole);
    const SetUp series = setUpOf(*std::prev(from));
    const auto changed = std::find_if(
        from, welds.end(), [&series](const Weld& weld) { return setUpOf(weld) != series; });
    const auto kept = std::remove_if(
        from, changed, [](const Weld& weld) { return weld.opened().type != WeldType::Trial; });
    welds.erase(kept, welds.end());
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
    filter.limit = kRead;
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
        if (!events && events.error().code != ErrorCode::Damaged) {
            return tl::unexpected<Error>(events.error());
        }
        auto weld = events ? foldTaking(*events) : tl::unexpected<Error>(events.error());
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
        keepWhatMayStand(*read);
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
    const auto known =
        m_alignments.find(Kind(opened.bench, weld.plan.procedure, weld.plan.thicknessUm));
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
    keepWhatMayStand(welds);
}

} // namespace seamclock
