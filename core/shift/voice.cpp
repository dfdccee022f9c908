#include "core/shift/voice.h"

#include <algorithm>
#include <cassert>
#include <tuple>
#include <unordered_map>

namespace seamclock {

namespace {

// The ranks whose first soundings no repeat may delay, and for which the claim stands.
constexpr int kClaimFrom = 2;
constexpr int kClaimTo = 6;

// In the order in which they come.
enum class Turn { First, Group, Repeat };

bool isOver(const Request& request, Milliseconds at) {
    return request.until && *request.until <= at;
}

bool hasClaim(const Request& request) {
    return request.rank >= kClaimFrom && request.rank <= kClaimTo;
}

// How far a request has come.
struct Voice {
    const Request* request = nullptr;
    int round = 0; // of the next slot
    int position = 0;
    Milliseconds due{0};
    Milliseconds roundStart{0};
    bool finished = false;

    bool isFirst() const { return round == 0 && position == 0; }

    // After the very slot that is next has sounded.
    void sounded(int ofRound, int ofPosition, Milliseconds start, Milliseconds end) {
        const Sound sound = request->sound;
        const int place = request->place;
        if (ofPosition == 0) {
            roundStart = start;
        }
        if (ofPosition + 1 < slotCount(sound, place, ofRound)) {
            const Milliseconds step = slotTime(sound, place, ofRound, ofPosition + 1).offset -
                                      slotTime(sound, place, ofRound, ofPosition).offset;
            round = ofRound;
            position = ofPosition + 1;
            due = start + step;
            return;
        }
        const std::optional<Milliseconds> pause = pauseAfter(sound, place, ofRound);
        finished = !pause;
        round = ofRound + 1;
        position = 0;
        due = end + pause.value_or(Milliseconds{0});
    }

    std::optional<Milliseconds> staleAt() const {
        // A second round of get ready that comes too late is no more use than a first.
        if (!request->staleAfter || position != 0) {
            return std::nullopt;
        }
        return due + *request->staleAfter + Milliseconds{1};
    }

    // When the round now sounding has no more right to be kept together.
    Milliseconds roundEnd() const {
        return roundStart + roundLength(request->sound, request->place, round) + kGroupSlack;
    }
    bool isOpenRound(Milliseconds at) const {
        return request->sound == Sound::GetReady && position > 0 && at < roundEnd();
    }
    bool isOpenGroup(Milliseconds at) const { return round == 0 && isOpenRound(at); }

    Turn turn(Milliseconds at) const {
        if (request->sound == Sound::Tick) {
            return Turn::Repeat;
        }
        if (isFirst()) {
            return Turn::First;
        }
        return isOpenGroup(at) ? Turn::Group : Turn::Repeat;
    }
};

class Arbiter {
public:
    Arbiter(std::vector<Request> requests, const std::vector<Sounding>& history)
        : m_requests(std::move(requests)) {
        std::sort(m_requests.begin(), m_requests.end(), [](const Request& a, const Request& b) {
            return std::tie(a.onset, a.rank, a.place, a.id) <
                   std::tie(b.onset, b.rank, b.place, b.id);
        });
        m_voices.reserve(m_requests.size());
        for (const Request& request : m_requests) {
            assert(request.place >= 0 && request.place <= kMostBenches);
            Voice voice;
            voice.request = &request;
            voice.due = request.onset;
            m_voices.push_back(voice);
        }
        recall(history);
    }

    Arbitration run(Milliseconds from, Milliseconds to) {
        Milliseconds now = std::max(from, m_busyUntil);
        // What was given up while a slot from before still sounded belongs to this span.
        m_from = from;
        m_to = to;
        while (now < to) {
            wake(now);
            giveUp(now);
            if (Voice* const next = choose(now)) {
                now = sound(*next, now);
            } else if (const std::optional<Milliseconds> later = nextInstant(now)) {
                now = *later;
            } else {
                break;
            }
        }
        // A slot that lasts beyond the span may yet see cues given up within it.
        wake(to - Milliseconds{1});
        giveUp(to - Milliseconds{1});
        std::stable_sort(
            m_out.dropped.begin(), m_out.dropped.end(), [](const Dropped& a, const Dropped& b) {
                return std::tie(a.at, a.request) < std::tie(b.at, b.request);
            });
        return std::move(m_out);
    }

private:
    void recall(const std::vector<Sounding>& history) {
        if (history.empty()) {
            return;
        }
        std::unordered_map<std::string_view, Voice*> byId;
        for (Voice& voice : m_voices) {
            byId.emplace(voice.request->id, &voice);
        }
        for (const Sounding& heard : history) {
            m_busyUntil = std::max(m_busyUntil, heard.end());
            const auto found = byId.find(heard.request);
            if (found != byId.end()) {
                found->second->sounded(heard.round, heard.position, heard.start, heard.end());
            }
            separate(heard);
        }
        m_last = history.back().request;
    }

    // After the last pulse of a get ready the next one waits, so that they can be counted apart.
    void separate(const Sounding& heard) {
        if (heard.sound != Sound::GetReady ||
            heard.position + 1 < slotCount(heard.sound, heard.place, heard.round)) {
            return;
        }
        m_roundPauseUntil = heard.end() + kGroupPause;
        if (heard.round == 0) {
            m_groupPauseUntil = m_roundPauseUntil;
        }
    }

    // Requests whose onset has come; those ahead are only made way for.
    void wake(Milliseconds now) {
        for (; m_ahead < m_voices.size() && m_voices[m_ahead].request->onset <= now; ++m_ahead) {
            Voice& voice = m_voices[m_ahead];
            const bool stood =
                !voice.request->until || *voice.request->until > voice.request->onset;
            if (stood && !voice.finished) {
                m_standing.push_back(&voice);
            }
        }
    }

    void giveUp(Milliseconds now) {
        const auto ended = [&](Voice* voice) {
            const Request& request = *voice->request;
            const std::optional<Milliseconds> stale = voice->staleAt();
            const bool over = isOver(request, now);
            const bool late = stale && *stale <= now;
            if (!over && !late) {
                return voice->finished;
            }
            if (voice->isFirst()) {
                // The earlier of both.
                const bool byStep = over && !(late && *stale < *request.until);
                drop(
                    request, byStep ? DropReason::Over : DropReason::Stale,
                    byStep ? *request.until : *stale);
            }
            return true;
        };
        m_standing.erase(
            std::remove_if(m_standing.begin(), m_standing.end(), ended), m_standing.end());
    }

    void drop(const Request& request, DropReason reason, Milliseconds at) {
        // An earlier span has reported what it gave up.
        if (at < m_from || at >= m_to) {
            return;
        }
        m_out.dropped.push_back(
            {request.id, request.code, request.place, reason, at, at - request.onset, m_last});
    }

    // Whether a slot starting now, `length` long, leaves alone every onset that it must.
    bool isFree(const Request& request, Turn turn, Milliseconds now, Milliseconds length) const {
        for (std::size_t i = m_ahead; i < m_voices.size(); ++i) {
            const Request& ahead = *m_voices[i].request;
            if (ahead.onset >= now + length) {
                break;
            }
            const bool higher = ahead.rank < request.rank;
            const bool delays = higher || (turn == Turn::Repeat && hasClaim(ahead));
            if (ahead.knownAhead && delays && !isOver(ahead, now) && m_voices[i].isFirst()) {
                return false;
            }
        }
        return (turn == Turn::First && request.rank <= kClaimTo) || turn == Turn::Group ||
               !isCountedOn(now, now + length);
    }

    // Whether a get ready that keeps its distance from the last one begins between these instants.
    bool isCountedOn(Milliseconds now, Milliseconds end) const {
        return now < m_groupPauseUntil &&
               std::any_of(m_standing.begin(), m_standing.end(), [&](const Voice* voice) {
                   return voice->isFirst() && voice->request->sound == Sound::GetReady &&
                          std::min(m_groupPauseUntil, voice->due + kPatience) < end;
               });
    }

    bool othersHaveWaited(const Voice& voice, Milliseconds now) const {
        return std::any_of(m_standing.begin(), m_standing.end(), [&](const Voice* other) {
            return other != &voice && other->isFirst() && hasClaim(*other->request) &&
                   now - other->due >= kPatience;
        });
    }

    // The slot's length if it may start now.
    std::optional<Milliseconds> fits(const Voice& voice, Turn turn, Milliseconds now) const {
        const Request& request = *voice.request;
        Milliseconds length =
            slotTime(request.sound, request.place, voice.round, voice.position).length;
        if (turn == Turn::First) {
            const Milliseconds shortest = shortestFirst(request.sound, request.place);
            if (shortest < length &&
                (othersHaveWaited(voice, now) || !isFree(request, turn, now, length))) {
                length = shortest;
            }
        }
        return isFree(request, turn, now, length) ? std::optional(length) : std::nullopt;
    }

    // Whether another bench's get ready would be spoilt.
    bool isKeptOut(const Voice& voice, Turn turn, Milliseconds now) const {
        const Request& request = *voice.request;
        const bool first = turn == Turn::First;
        if (turn == Turn::Group || (first && request.rank < kClaimTo) ||
            (first && request.rank == kClaimTo && now - voice.due >= kPatience)) {
            return false;
        }
        const bool startsRound = request.sound == Sound::GetReady && voice.position == 0;
        if (startsRound && now < (first ? m_groupPauseUntil : m_roundPauseUntil)) {
            return true;
        }
        return std::any_of(m_standing.begin(), m_standing.end(), [&](const Voice* other) {
            return other != &voice &&
                   (other->isOpenGroup(now) || (startsRound && !first && other->isOpenRound(now)));
        });
    }

    Voice* choose(Milliseconds now) {
        Voice* best = nullptr;
        Milliseconds length{0};
        const auto order = [now](const Voice& voice) {
            const Request& request = *voice.request;
            return std::tuple(
                voice.turn(now), request.rank, voice.due, request.place,
                std::string_view(request.id));
        };
        for (Voice* const voice : m_standing) {
            if (voice->due > now || (best != nullptr && order(*best) < order(*voice))) {
                continue;
            }
            const Turn turn = voice->turn(now);
            if (isKeptOut(*voice, turn, now)) {
                continue;
            }
            if (const std::optional<Milliseconds> fitting = fits(*voice, turn, now)) {
                best = voice;
                length = *fitting;
            }
        }
        m_length = length;
        return best;
    }

    Milliseconds sound(Voice& voice, Milliseconds now) {
        const Request& request = *voice.request;
        const Milliseconds end = now + m_length;
        m_out.soundings.push_back(
            {now, m_length, request.id, request.code, request.sound, request.place, request.rank,
             voice.round, voice.position});
        m_last = request.id;
        separate(m_out.soundings.back());
        voice.sounded(voice.round, voice.position, now, end);
        return end;
    }

    // When anything that decides can next have changed by time alone.
    std::optional<Milliseconds> nextInstant(Milliseconds now) const {
        std::optional<Milliseconds> next;
        const auto consider = [&](Milliseconds at) {
            if (at > now && (!next || at < *next)) {
                next = at;
            }
        };
        if (m_ahead < m_voices.size()) {
            consider(m_voices[m_ahead].request->onset);
        }
        // A cue that is called off before its onset is made way for no longer.
        for (std::size_t i = m_ahead;
             i < m_voices.size() && m_voices[i].request->onset < now + kLongestSlot; ++i) {
            if (m_voices[i].request->until) {
                consider(*m_voices[i].request->until);
            }
        }
        consider(m_groupPauseUntil);
        consider(m_roundPauseUntil);
        for (const Voice* const voice : m_standing) {
            consider(voice->due);
            if (voice->isFirst()) {
                consider(voice->due + kPatience);
            }
            if (voice->isOpenRound(now)) {
                consider(voice->roundEnd());
            }
            if (voice->request->until) {
                consider(*voice->request->until);
            }
            if (const std::optional<Milliseconds> stale = voice->staleAt()) {
                consider(*stale);
            }
        }
        return next;
    }

    std::vector<Request> m_requests; // by onset
    std::vector<Voice> m_voices;     // likewise
    std::size_t m_ahead = 0;         // the first whose onset is yet to come
    std::vector<Voice*> m_standing;
    Milliseconds m_busyUntil = Milliseconds::min();
    Milliseconds m_groupPauseUntil = Milliseconds::min(); // after a first round of get ready
    Milliseconds m_roundPauseUntil = Milliseconds::min(); // after any round of it
    Milliseconds m_from{0};
    Milliseconds m_to{0};
    Milliseconds m_length{0}; // of the slot that was chosen
    std::string m_last;       // the request that sounded last
    Arbitration m_out;
};

} // namespace

PatternSlot toneOf(const Sounding& sounding) {
    PatternSlot slot = pattern(
        sounding.sound, sounding.place,
        sounding.round)[static_cast<std::size_t>(sounding.position)];
    slot.time.length = sounding.length;
    return slot;
}

Arbitration arbitrate(
    std::vector<Request> requests, const std::vector<Sounding>& history, Milliseconds from,
    Milliseconds to) {
    return Arbiter(std::move(requests), history).run(from, to);
}

} // namespace seamclock
