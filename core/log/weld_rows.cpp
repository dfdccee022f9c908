#include "core/log/weld_rows.h"

#include "core/log/body_codec.h"
#include "core/weld/event_codec.h"
#include "core/weld/record.h"

#include <chrono>
#include <utility>

namespace seamclock {

namespace {

constexpr std::size_t kMostBegun = 10'000; // welds whose rows are held at once
constexpr std::size_t kUsualEvents = 24;   // of a weld

/// What readEnvelope asks of an event that its own codec does not.
bool hasEnvelope(const Event& event) {
    return event.n >= 1 && std::chrono::abs(event.at.offset) <= std::chrono::hours(24);
}

bool opensPractice(const Event& event) {
    const auto* opened = std::get_if<WeldOpened>(&event.d);
    return opened != nullptr && opened->type == WeldType::Practice;
}

const PlanDocuments* documentsOf(const Event& event) {
    if (const auto* opened = std::get_if<WeldOpened>(&event.d)) {
        return &opened->docs;
    }
    const auto* replaced = std::get_if<PlanReplaced>(&event.d);
    return replaced != nullptr ? &replaced->docs : nullptr;
}

std::size_t refusedAt(const std::vector<Event>& events) {
    auto weld = seamclock::open(events.front());
    for (std::size_t i = 1; weld && i < events.size(); ++i) {
        auto next = apply(*weld, events[i]);
        if (!next) {
            return i;
        }
        weld = std::move(next);
    }
    return weld ? events.size() - 1 : 0;
}

} // namespace

void RowBatch::add(std::int64_t seq, std::string_view body) {
    m_rows.push_back({seq, m_bodies.size(), body.size()});
    m_bodies.append(body);
}

std::string_view RowBatch::bodyOf(const Row& row) const {
    return std::string_view(m_bodies).substr(row.from, row.size);
}

WeldFolded foldHeld(const std::string& weld, HeldWeld held, bool soFar, bool lines) {
    auto folded = foldTaking(held.events);
    if (!folded) {
        return WeldRefused{
            held.seqs[refusedAt(held.events)], weld, std::move(folded.error().detail)};
    }
    WeldMade out{held.seqs.back(), weld, static_cast<std::int64_t>(held.seqs.size()), soFar, {}};
    if (lines) {
        out.joint = cachedJointOf(record(std::move(*folded)));
    }
    return out;
}

std::vector<RowNews> WeldRows::take(const RowBatch& batch) {
    std::vector<RowNews> out;
    for (const RowBatch::Row& row : batch.rows()) {
        const std::string_view body = batch.bodyOf(row);
        auto event = eventFromBody(body);
        if (!event || !isWeld(event->subject) || !hasEnvelope(*event)) {
            out.emplace_back(OtherRow{row.seq, std::string(body)});
            continue;
        }
        if (const PlanDocuments* documents = documentsOf(*event)) {
            out.emplace_back(DocumentsNamed{row.seq, *documents, opensPractice(*event)});
        }
        hold(row.seq, std::move(*event), out);
    }
    return out;
}

void WeldRows::hold(std::int64_t seq, Event event, std::vector<RowNews>& out) {
    const bool over =
        std::holds_alternative<WeldClosed>(event.d) || std::holds_alternative<WeldAborted>(event.d);
    const auto [at, isNew] = m_begun.try_emplace(event.subject);
    HeldWeld& held = at->second;
    if (isNew) {
        held.events.reserve(kUsualEvents);
    }
    if (event.n != static_cast<std::int64_t>(held.events.size()) + 1) {
        out.emplace_back(WeldLate{seq, at->first});
        m_begun.erase(at);
        return;
    }
    if (event.n == 1) {
        out.emplace_back(WeldBegun{seq, at->first});
    }
    held.seqs.push_back(seq);
    held.events.push_back(std::move(event));
    if (over) {
        out.emplace_back(foldHeld(at->first, std::move(held), true, m_lines));
        m_begun.erase(at);
    } else if (m_begun.size() > kMostBegun) {
        for (const auto& [weld, unused] : m_begun) {
            out.emplace_back(WeldLate{seq, weld});
        }
        m_begun.clear();
    }
}

std::vector<RowNews> WeldRows::end() {
    std::vector<RowNews> out;
    for (auto& [weld, held] : std::exchange(m_begun, {})) {
        out.emplace_back(foldHeld(weld, std::move(held), false, m_lines));
    }
    return out;
}

} // namespace seamclock
