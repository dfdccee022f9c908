#include "app/sound/speaker.h"

#include <algorithm>
#include <map>

namespace seamclock {

namespace {

// When half of what was worked out is used up, the next minute is.
constexpr Milliseconds kExtendBelow = kSoundAhead / 2;
// As late as anything that goes stale may still begin.
constexpr Milliseconds kMayBeLate{3'000};
constexpr Milliseconds kHistory{30'000};
// With nothing to say in the next minute, the next thing stays in the schedule, so that the horn
// knows that a weld is on, and watches. Longer than the longest cooling.
constexpr Milliseconds kLongLook = std::chrono::hours{4};

std::unordered_set<std::string> idsOf(const std::vector<Request>& requests) {
    std::unordered_set<std::string> ids;
    for (const Request& request : requests) {
        ids.insert(request.id);
    }
    return ids;
}

} // namespace

void Speaker::show(const Shift& shift) {
    m_changed = m_changed || !(shift == m_shift);
    m_shift = shift;
}

void Speaker::restart(const Instant& now) {
    remember(now.boot);
    m_history.erase(
        std::remove_if(
            m_history.begin(), m_history.end(),
            [&](const Sounding& was) { return m_heard.find(slotOf(was).id) == m_heard.end(); }),
        m_history.end());
    m_ahead.clear();
    m_changed = true;
    m_whole = true;
}

void Speaker::heard(const std::string& slot) {
    m_heard.insert(slot);
}

// What the schedule said has begun meanwhile.
void Speaker::remember(Milliseconds now) {
    const auto begun = std::find_if(
        m_ahead.begin(), m_ahead.end(), [&](const Sounding& ahead) { return ahead.start >= now; });
    m_history.insert(m_history.end(), m_ahead.begin(), begun);
    m_ahead.erase(m_ahead.begin(), begun);
}

// Of a cue that still stands its last round tells how far it has come.
void Speaker::forgetOld(const Instant& now) {
    const auto standing = idsOf(requests(m_shift, now, kLongestSlot).requests);
    std::map<std::string, int> lastRound;
    for (const Sounding& was : m_history) {
        int& last = lastRound[was.request];
        last = std::max(last, was.round);
    }
    const auto isOld = [&](const Sounding& was) {
        const bool needed =
            standing.find(was.request) != standing.end() && was.round == lastRound[was.request];
        return !needed && was.end() + kHistory < now.boot;
    };
    m_history.erase(std::remove_if(m_history.begin(), m_history.end(), isOld), m_history.end());
    std::unordered_set<std::string> heard;
    for (const Sounding& was : m_history) {
        std::string id = slotOf(was).id;
        if (m_heard.find(id) != m_heard.end()) {
            heard.insert(std::move(id));
        }
    }
    m_heard = std::move(heard);
}

std::vector<HornSlot> Speaker::soundSlots(const Instant& now) {
    std::vector<HornSlot> out;
    const auto standing = idsOf(requests(m_shift, now, Milliseconds{0}).requests);
    for (const Sounding& was : m_history) {
        HornSlot slot = slotOf(was);
        if (was.start + kMayBeLate > now.boot && standing.find(was.request) != standing.end() &&
            m_heard.find(slot.id) == m_heard.end()) {
            out.push_back(std::move(slot));
        }
    }
    for (const Sounding& ahead : m_ahead) {
        out.push_back(slotOf(ahead));
    }
    return out;
}

std::optional<HornSchedule> Speaker::update(const Instant& now) {
    if (now.bootId != m_bootId) {
        m_bootId = now.bootId;
        m_history.clear();
        m_ahead.clear();
        m_heard.clear();
        m_changed = true;
    }
    if (!m_changed && m_until - now.boot > kExtendBelow) {
        return std::nullopt;
    }
    remember(now.boot);
    forgetOld(now);
    m_until = now.boot + kSoundAhead;
    m_ahead = soundings(m_shift, m_history, now, m_until).soundings;
    if (m_ahead.empty()) {
        m_ahead = soundings(m_shift, m_history, now, now.boot + kLongLook).soundings;
        const auto later = std::find_if(m_ahead.begin(), m_ahead.end(), [&](const Sounding& next) {
            return next.start >= m_ahead.front().start + kSoundAhead;
        });
        m_ahead.erase(later, m_ahead.end());
    }
    m_changed = false;
    std::vector<HornSlot> soundSlots = this->soundSlots(now);
    if (soundSlots == m_sent && !m_whole) {
        return std::nullopt;
    }
    m_whole = false;
    m_sent = soundSlots;
    return HornSchedule{++m_generation, std::move(soundSlots)};
}

} // namespace seamclock
