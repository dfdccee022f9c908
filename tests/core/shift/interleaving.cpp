#include "tests/core/shift/interleaving.h"

#include "core/shift/shift.h"
#include "core/weld/intent.h"
#include "tests/support/story.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <random>
#include <vector>

namespace seamclock::test {
namespace {

using std::chrono::seconds;

// The claim's figures.
constexpr Milliseconds kWithin{2'400};
constexpr Milliseconds kLongest{600};
constexpr int kTopRank = 2;
constexpr int kLastRank = 6;

/// A cue that the benches asked for, over all the spans.
struct Asked {
    Request request;
    Milliseconds known{0}; // since when, without a break
    std::optional<Milliseconds> gone;
};

class Run {
public:
    explicit Run(std::uint32_t seed) : m_random(seed) {
        Story story;
        story.prepare();
        m_now = story.now();
        for (int place = 1; place <= 4; ++place) {
            Weld weld = story.weld();
            for (Event& event : weld.events) {
                event.subject = "weld:" + std::to_string(place);
            }
            m_shift.benches.push_back({"bench-" + std::to_string(place), place, std::move(weld)});
            // Alignments end within some seconds of one another: so do soaks, and so does cooling.
            m_next.push_back(m_now.boot + Milliseconds(from(0, 6'000)));
        }
    }

    Interleaved run() {
        for (int i = 0; i < 3'000; ++i) {
            const auto soonest = std::min_element(m_next.begin(), m_next.end());
            if (*soonest == Milliseconds::max()) {
                break;
            }
            sound(std::max(*soonest, m_now.boot));
            step(static_cast<std::size_t>(soonest - m_next.begin()));
        }
        sound(m_now.boot + seconds(5));
        for (const auto& [id, asked] : m_asked) {
            judge(asked);
        }
        return m_told;
    }

private:
    std::int64_t from(std::int64_t low, std::int64_t high) {
        return low +
               static_cast<std::int64_t>(m_random() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool oneIn(int times) { return from(1, times) == 1; }

    /// Time goes on until then, and what sounds meanwhile is kept.
    void sound(Milliseconds to) {
        const Milliseconds horizon = to - m_now.boot + kLongest;
        const std::vector<Request> asked = requests(m_shift, m_now, horizon).requests;
        note(asked);
        if (to <= m_now.boot) {
            return;
        }
        const Arbitration given = arbitrate(asked, m_heard, m_now.boot, to);
        m_heard.insert(m_heard.end(), given.soundings.begin(), given.soundings.end());
        m_now.utc += to - m_now.boot;
        m_now.boot = to;
    }

    void note(const std::vector<Request>& asked) {
        std::map<std::string, const Request*> now;
        for (const Request& request : asked) {
            if (request.rank >= kTopRank && request.rank <= kLastRank) {
                now.emplace(request.id, &request);
            }
        }
        for (auto& [id, one] : m_asked) {
            const auto stands = now.find(id);
            const bool over = one.request.until && *one.request.until <= m_now.boot;
            if (!one.gone && (stands == now.end() || over)) {
                one.gone = over ? *one.request.until : m_now.boot;
            }
        }
        for (const auto& [id, request] : now) {
            const auto [place, isNew] = m_asked.emplace(id, Asked{*request, m_now.boot, {}});
            if (!isNew && place->second.gone && *place->second.gone <= m_now.boot &&
                !(request->until && *request->until <= m_now.boot)) {
                place->second = {*request, m_now.boot, {}}; // a step was taken back
            }
        }
    }

    void step(std::size_t bench) {
        Weld& weld = m_shift.benches[bench].weld;
        const std::int64_t onto = lastTakeable(weld);
        const Milliseconds since =
            onto == 0 ? Milliseconds::max()
                      : m_now.boot - weld.events[static_cast<std::size_t>(onto - 1)].at.boot;
        // A check that was taken back would be made again by nobody here.
        const bool steps =
            !std::holds_alternative<Preparing>(weld.state) && onto > 1 && since <= kTakeBackWindow;
        if (steps && oneIn(6)) {
            if (make(weld, onto, StepTakenBack{onto})) {
                ++m_told.takenBack;
            }
        } else if (steps && oneIn(8)) {
            if (make(weld, onto, StepBackdated{onto, Milliseconds(from(500, 6'000))})) {
                ++m_told.backdated;
            }
        } else if (oneIn(8) && acknowledge(weld, onto)) {
            ++m_told.acknowledged;
        } else if (const auto detail = nextStep(weld)) {
            make(weld, onto, *detail);
        }
        m_next[bench] = whenNext(weld);
    }

    bool make(Weld& weld, std::int64_t onto, const WeldDetail& detail) {
        auto next = accept(weld, Intent{onto, "person:op-1", detail}, m_now);
        if (!next) {
            return false; // a bounce, or what no longer fits: as at the screen, nothing happened
        }
        weld = std::move(*next);
        ++m_told.events;
        return true;
    }

    bool acknowledge(Weld& weld, std::int64_t onto) {
        const std::vector<Cue> cues = cuesAt(weld, *weldTimeAt(weld, m_now));
        if (cues.empty()) {
            return false;
        }
        const Cue& one =
            cues[static_cast<std::size_t>(from(0, static_cast<std::int64_t>(cues.size()) - 1))];
        return make(weld, onto, CueAcknowledged{std::string(toString(one.kind))});
    }

    std::optional<WeldDetail> nextStep(const Weld& weld) {
        const WeldPlan& plan = weld.plan;
        if (std::holds_alternative<Preparing>(weld.state)) {
            return AlignmentStarted{};
        }
        if (std::holds_alternative<Aligning>(weld.state)) {
            return SoakStarted{};
        }
        if (std::holds_alternative<Soaking>(weld.state)) {
            return PlateOut{};
        }
        if (std::holds_alternative<ChangingOver>(weld.state)) {
            return FacesMet{};
        }
        if (const auto* rising = std::get_if<BuildingUp>(&weld.state)) {
            const ReadingBand& band = plan.scale->joining;
            if (rising->lastReading && band.holds(*rising->lastReading)) {
                return PressureLocked{};
            }
            return ReadingTaken{
                ReadingPhase::Joining, oneIn(4) ? band.lowMilli - 1'000 : band.setMilli};
        }
        if (const auto* cooling = std::get_if<Cooling>(&weld.state)) {
            const auto t = weldTimeAt(weld, m_now);
            if (t->lo < cooling->due.lo) {
                return ReadingTaken{ReadingPhase::Recheck, plan.scale->joining.setMilli};
            }
            return ReleaseStep{plan.releaseOrder.front()};
        }
        if (const auto* releasing = std::get_if<Releasing>(&weld.state)) {
            return ReleaseStep{plan.releaseOrder[static_cast<std::size_t>(releasing->stepsDone)]};
        }
        return std::nullopt;
    }

    /// The hands of that bench come about when they should, now and then late or early by seconds.
    Milliseconds whenNext(const Weld& weld) {
        const WeldTime t = *weldTimeAt(weld, m_now);
        const auto in = [&](Milliseconds due, std::int64_t early, std::int64_t late) {
            return m_now.boot + std::max(Milliseconds(700), due + Milliseconds(from(-early, late)));
        };
        if (std::holds_alternative<Aligning>(weld.state)) {
            return in(seconds(45), 3'000, 3'000);
        }
        if (const auto* soaking = std::get_if<Soaking>(&weld.state)) {
            return in(soaking->due.lo - t.lo, oneIn(5) ? 4'000 : 300, oneIn(3) ? 9'000 : 1'500);
        }
        if (std::holds_alternative<ChangingOver>(weld.state)) {
            return in(Milliseconds(1'100), 0, oneIn(3) ? 12'000 : 4'000);
        }
        if (std::holds_alternative<BuildingUp>(weld.state)) {
            return in(Milliseconds(2'000), 1'000, oneIn(3) ? 12'000 : 3'000);
        }
        if (const auto* cooling = std::get_if<Cooling>(&weld.state)) {
            const Milliseconds left = cooling->due.lo - t.lo;
            return oneIn(3) ? in(left / 3, 0, 20'000) : in(left, 5'000, 30'000);
        }
        if (std::holds_alternative<Inspecting>(weld.state)) {
            ++m_told.welds;
            return Milliseconds::max();
        }
        return in(seconds(3), 2'000, 6'000);
    }

    void complain(const char* what, const Asked& one, Milliseconds at) {
        m_told.complaints += one.request.id + " " + what + ", " +
                             std::to_string((at - one.request.onset).count()) +
                             " ms after its onset\n";
    }

    void judge(const Asked& one) {
        const Request& request = one.request;
        const Milliseconds end = std::min(one.gone.value_or(Milliseconds::max()), m_now.boot);
        if (end <= request.onset) {
            return; // a step came before it: it never was
        }
        ++m_told.cues;
        // What a take-back has brought into force again is asked for from then on.
        const Milliseconds since = std::max(request.onset, one.known);
        const auto first =
            std::find_if(m_heard.begin(), m_heard.end(), [&request](const Sounding& slot) {
                return slot.request == request.id;
            });
        const bool heard = first != m_heard.end();
        if (heard && first->start < since) {
            return; // before it was taken back
        }
        const Milliseconds wait = (heard ? first->start : end) - since;
        if (heard) {
            m_told.longest = std::max(m_told.longest, wait.count());
            m_told.atOnce += wait == Milliseconds(0) ? 1 : 0;
        }
        // One that a take-back has restored when it was stale says nothing.
        if (wait > kWithin && !(request.staleAfter && since > request.onset)) {
            complain(heard ? "first sounds too late" : "is never heard", one, since + wait);
        }
        if (one.known < request.onset - kLongest) {
            judgeOnset(one, heard ? std::optional(first->start) : std::nullopt);
        }
    }

    // The top scheduled cue sounds at its instant.
    void judgeOnset(const Asked& one, std::optional<Milliseconds> start) {
        const Request& request = one.request;
        for (const auto& [id, other] : m_asked) {
            const Request& rival = other.request;
            const bool near = rival.onset <= request.onset + kLongest &&
                              other.gone.value_or(Milliseconds::max()) > request.onset - kLongest;
            if (id != request.id && rival.rank <= request.rank && near) {
                return; // not the top one, or not alone
            }
        }
        if (start != request.onset) {
            complain("does not sound at its instant", one, start.value_or(m_now.boot));
        }
    }

    std::mt19937 m_random;
    Instant m_now;
    Shift m_shift;
    std::vector<Milliseconds> m_next; // by bench: when its hands come next
    std::vector<Sounding> m_heard;
    std::map<std::string, Asked> m_asked;
    Interleaved m_told;
};

} // namespace

Interleaved interleave(std::uint32_t seed) {
    return Run(seed).run();
}

} // namespace seamclock::test
