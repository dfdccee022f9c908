#include "app/horn/player.h"

#include "core/base/overloaded.h"

#include <algorithm>
#include <fmt/format.h>

namespace seamclock {

namespace {

constexpr int kClaimTo = 6; // the ranks above have a claim to be heard in time
// A later part of a round without its beginning means nothing; the voice's own limit for a beat.
constexpr Milliseconds kPartStale{150};
// How long what has begun is remembered: longer than anything is sent again.
constexpr Milliseconds kRemembered{120'000};
constexpr Milliseconds kTickStale{50};
// A slot counts as on time up to here: half a frame of rounding, and what the estimate moves by.
constexpr Nanoseconds kOnTime = std::chrono::milliseconds{5};
constexpr Milliseconds kLostPeriod{2'000};

std::optional<Milliseconds> staleAfterOf(Sound sound) {
    switch (sound) {
    case Sound::CountIn:
        return staleAfter(CueKind::CountIn);
    case Sound::GetReady:
        return staleAfter(CueKind::GetReady);
    case Sound::Tick:
        return kTickStale;
    case Sound::ProgramLost:
    case Sound::Overrun:
    case Sound::ActNow:
    case Sound::BuildUpLate:
    case Sound::Trouble:
    case Sound::Reminder:
    case Sound::Done:
        return std::nullopt;
    }
    return std::nullopt;
}

bool isSameCue(const HornSlot& a, const HornSlot& b) {
    return a.sound == b.sound && a.place == b.place;
}

Milliseconds inMillis(Nanoseconds at) {
    return std::chrono::floor<Milliseconds>(at + std::chrono::microseconds{500});
}

} // namespace

void Player::take(const ToHorn& message, Milliseconds now) {
    const std::lock_guard<std::mutex> held(m_mutex);
    m_beat = now; // any word shows that the program lives
    std::visit(
        Overloaded{
            [&](const HornSchedule& schedule) { replace(schedule); }, [](const HornBeat&) {},
            [&](const HornBye&) {
                m_bye = true;
                m_stands = false;
                m_waiting.clear();
            }},
        message);
}

void Player::inputEnded(Milliseconds now) {
    const std::lock_guard<std::mutex> held(m_mutex);
    m_ended = now;
}

void Player::replace(const HornSchedule& schedule) {
    m_waiting.clear();
    m_stands = !schedule.soundSlots.empty();
    m_bye = false;
    for (const HornSlot& slot : schedule.soundSlots) {
        if (m_begun.find(slot.id) == m_begun.end()) {
            m_waiting.push_back({slot, dueOf(slot)});
        }
    }
    std::stable_sort(m_waiting.begin(), m_waiting.end(), [](const Waiting& a, const Waiting& b) {
        return a.slot.start < b.slot.start;
    });
}

// Whether the slot is a part of the round that is known to have begun, not of one long gone.
bool Player::belongs(const HornSlot& slot, const Round& round) {
    return slot.start - round.start <= roundLength(slot.sound, slot.place, slot.round) &&
           slot.start >= round.start;
}

Nanoseconds Player::dueOf(const HornSlot& slot) const {
    Nanoseconds due = slot.start;
    if (slot.position > 0) {
        const auto round = m_late.find({slot.sound, slot.place, slot.round});
        return round != m_late.end() && belongs(slot, round->second) ? due + round->second.late
                                                                     : due;
    }
    // A repeat keeps its pause after a round that came late.
    const auto pause = m_pauses.find({slot.sound, slot.place});
    if (pause != m_pauses.end() && pause->second.round < slot.round) {
        due = std::max(due, pause->second.until);
    }
    return due;
}

std::optional<Milliseconds> Player::lostAt() const {
    if (!m_stands || m_bye) {
        return std::nullopt;
    }
    std::optional<Milliseconds> at;
    if (m_beat) {
        at = *m_beat + kBeatMissedAfter;
    }
    if (m_ended && (!at || *m_ended < *at)) {
        at = m_ended;
    }
    return at;
}

bool Player::watchIsOn(Nanoseconds at) const {
    const auto lost = lostAt();
    return lost && *lost <= at && at < *lost + kWatchdogFor;
}

bool Player::isMute(Nanoseconds at) const {
    const auto lost = lostAt();
    return lost && at >= *lost + kWatchdogFor;
}

// One slot of program_lost waits while the watch is on, and none when it is off.
void Player::watch(Nanoseconds at) {
    const auto own = std::find_if(m_waiting.begin(), m_waiting.end(), [](const Waiting& waiting) {
        return waiting.slot.rank == 1;
    });
    if (!watchIsOn(at)) {
        if (own != m_waiting.end()) {
            m_waiting.erase(own);
        }
        m_lostRound.reset();
        m_lostPosition = 0;
        return;
    }
    if (own != m_waiting.end()) {
        return;
    }
    const SlotTime time = slotTime(Sound::ProgramLost, 0, 0, m_lostPosition);
    HornSlot slot;
    slot.id = fmt::format("program_lost/{}", m_lostCount++);
    slot.rank = 1;
    slot.sound = Sound::ProgramLost;
    slot.round = m_lostRound ? 1 : 0;
    slot.position = m_lostPosition;
    slot.length = time.length;
    Nanoseconds due = *lostAt();
    if (m_lostRound) {
        due = *m_lostRound + (m_lostPosition == 0 ? Nanoseconds{kLostPeriod} : time.offset);
    }
    slot.start = inMillis(due);
    m_waiting.push_back({slot, due});
}

bool Player::isStale(const Waiting& waiting, Nanoseconds at) const {
    const HornSlot& slot = waiting.slot;
    const Nanoseconds late = at - waiting.due;
    if (late <= kOnTime || slot.rank == 1) {
        return false;
    }
    const auto isOthers = [&](const Waiting& other) {
        return isSameCue(slot, other.slot) && other.slot.rank != 1;
    };
    if (slot.position > 0) {
        // With its round, as long as that may still begin or has.
        const bool leads = std::any_of(m_waiting.begin(), m_waiting.end(), [&](const Waiting& it) {
            return isOthers(it) && it.slot.round == slot.round && it.slot.position < slot.position;
        });
        const auto round = m_late.find({slot.sound, slot.place, slot.round});
        const bool begun = round != m_late.end() && belongs(slot, round->second);
        return !leads && !begun && late > kPartStale;
    }
    if (const auto limit = staleAfterOf(slot.sound); limit && late > *limit) {
        return true;
    }
    // A repeat is overtaken by the next one.
    return slot.round > 0 &&
           std::any_of(m_waiting.begin(), m_waiting.end(), [&](const Waiting& other) {
               return isOthers(other) && other.slot.round > slot.round && other.due <= at;
           });
}

void Player::dropLate(Nanoseconds at) {
    // What leads a round may go first, and the rest of it then.
    while (true) {
        const auto stale =
            std::find_if(m_waiting.begin(), m_waiting.end(), [&](const Waiting& waiting) {
                return isStale(waiting, at);
            });
        if (stale == m_waiting.end()) {
            return;
        }
        m_waiting.erase(stale);
    }
}

// Whether it may begin now, beside what the schedule has still to come. What comes at its own time
// has been arranged with the rest already.
bool Player::makesWay(const Waiting& candidate, Nanoseconds at) const {
    const HornSlot& slot = candidate.slot;
    if (slot.rank != 1 && at - candidate.due <= kOnTime && candidate.due == slot.start) {
        return true;
    }
    const Nanoseconds end = at + slot.length;
    const bool first = slot.isFirst();
    return std::none_of(m_waiting.begin(), m_waiting.end(), [&](const Waiting& other) {
        const bool claims = other.slot.isFirst() && other.slot.rank <= kClaimTo;
        const bool higher = other.slot.rank < slot.rank && other.slot.isFirst();
        return other.due > at && other.due < end && (higher || (claims && !first));
    });
}

std::optional<std::size_t> Player::choose(Nanoseconds at) const {
    std::optional<std::size_t> best;
    const auto order = [](const Waiting& waiting) {
        return std::tuple(!waiting.slot.isFirst(), waiting.slot.rank, waiting.due);
    };
    for (std::size_t i = 0; i < m_waiting.size(); ++i) {
        const Waiting& waiting = m_waiting[i];
        if (waiting.due > at || !makesWay(waiting, at)) {
            continue;
        }
        if (!best || order(waiting) < order(m_waiting[*best])) {
            best = i;
        }
    }
    return best;
}

bool Player::begin(Nanoseconds at) {
    watch(at);
    if (isMute(at)) {
        return false;
    }
    dropLate(at);
    const auto chosen = choose(at);
    if (!chosen) {
        return false;
    }
    const Waiting waiting = m_waiting[*chosen];
    m_waiting.erase(m_waiting.begin() + static_cast<std::ptrdiff_t>(*chosen));
    const HornSlot& slot = waiting.slot;
    m_sounding = Begun{slot, render(toneOf(slot)), 0, at};
    if (slot.rank == 1) {
        if (slot.position == 0) {
            m_lostRound = at;
        }
        m_lostPosition =
            (slot.position + 1) % slotCount(Sound::ProgramLost, slot.place, slot.round);
        return true;
    }
    const Milliseconds now = inMillis(at);
    for (auto old = m_begun.begin(); old != m_begun.end();) {
        old = old->second + kRemembered < now ? m_begun.erase(old) : std::next(old);
    }
    m_begun.emplace(slot.id, now + slot.length);
    // By less than the ear tells apart is no delay; else the estimate's own trembling would add up.
    const Nanoseconds late = at - Nanoseconds{slot.start};
    const bool isLate = late > kOnTime;
    m_late[{slot.sound, slot.place, slot.round}] = {slot.start, isLate ? late : Nanoseconds{0}};
    const auto pause = pauseAfter(slot.sound, slot.place, slot.round);
    if (isLate && pause && slot.position + 1 == slotCount(slot.sound, slot.place, slot.round)) {
        m_pauses[{slot.sound, slot.place}] = {slot.round, at + slot.length + *pause};
    }
    for (Waiting& other : m_waiting) {
        if (isSameCue(other.slot, slot) && other.slot.rank != 1) {
            other.due = dueOf(other.slot);
        }
    }
    return true;
}

Nanoseconds Player::nextDue(Nanoseconds at) const {
    Nanoseconds next = Nanoseconds::max();
    for (const Waiting& waiting : m_waiting) {
        if (waiting.due > at) {
            next = std::min(next, waiting.due);
        }
    }
    if (const auto lost = lostAt(); lost && *lost > at) {
        next = std::min(next, Nanoseconds{*lost});
    }
    return next;
}

void Player::fill(std::int16_t* out, std::size_t frames, Nanoseconds firstHeard) {
    const std::lock_guard<std::mutex> held(m_mutex);
    const auto heardAt = [&](std::size_t frame) {
        return firstHeard +
               Nanoseconds{static_cast<std::int64_t>(frame) * 1'000'000 / kFramesPerMilli};
    };
    std::size_t done = 0;
    while (done < frames) {
        if (m_sounding) {
            Begun& now = *m_sounding;
            const std::size_t count = std::min(frames - done, now.samples.size() - now.at);
            std::copy_n(
                now.samples.begin() + static_cast<std::ptrdiff_t>(now.at), count, out + done);
            now.at += count;
            done += count;
            if (now.at == now.samples.size()) {
                m_played.push_back({now.slot.id, inMillis(now.heard)});
                m_playedEnds.push_back(inMillis(heardAt(done)));
                m_sounding.reset();
            }
            continue;
        }
        const Nanoseconds at = heardAt(done);
        if (begin(at)) {
            continue;
        }
        // Silence up to the first frame that is heard at or after what is due next.
        const Nanoseconds next = nextDue(at);
        std::size_t silent = frames - done;
        if (next < heardAt(frames)) {
            const std::int64_t ahead = (next - at).count();
            silent = static_cast<std::size_t>((ahead * kFramesPerMilli + 999'999) / 1'000'000);
        }
        // What waits for the voice, not for its time, is looked at again each millisecond.
        if (!m_waiting.empty() && m_waiting.front().due <= at) {
            silent = std::min<std::size_t>(silent, kFramesPerMilli);
        }
        silent = std::clamp<std::size_t>(silent, 1, frames - done);
        std::fill_n(out + done, silent, std::int16_t{0});
        done += silent;
    }
}

std::vector<HornHeard> Player::takeHeard(Milliseconds now) {
    const std::lock_guard<std::mutex> held(m_mutex);
    const auto over = static_cast<std::size_t>(
        std::find_if(
            m_playedEnds.begin(), m_playedEnds.end(), [&](Milliseconds end) { return end > now; }) -
        m_playedEnds.begin());
    const auto count = static_cast<std::ptrdiff_t>(over);
    std::vector<HornHeard> out(m_played.begin(), m_played.begin() + count);
    m_played.erase(m_played.begin(), m_played.begin() + count);
    m_playedEnds.erase(m_playedEnds.begin(), m_playedEnds.begin() + count);
    return out;
}

bool Player::isFinished(Milliseconds now) const {
    const std::lock_guard<std::mutex> held(m_mutex);
    if (m_sounding || !m_playedEnds.empty()) {
        return false;
    }
    if (m_bye) {
        return true;
    }
    return m_ended && (!m_stands || isMute(now));
}

} // namespace seamclock
