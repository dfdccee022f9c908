// The virtual operator's hand: how long it takes and how far it is off, drawn from his seed by
// name, so that an interrupted rehearsal draws the same again. Times are plausible for a practised
// hand and invented here [practice].
#pragma once

#include "core/practice/chance.h"
#include "core/practice/rehearse_fault.h"

#include <string_view>
#include <utility>

namespace seamclock {

/// He is slow and careful, and never out of limits by himself.
inline constexpr int kPerfect = 100;
inline constexpr int kPractised = 85;
inline constexpr int kTrainee = 30;

struct Hand {
    std::uint64_t seed = 1;
    std::int64_t handPercent = 100; // of his times for checks, release and inspection
    RehearseFaults faults;
    int skill = kPerfect; // 0 to 100
};

class HandChance {
public:
    explicit HandChance(const Hand& hand)
        : m_chance(hand.seed), m_percent(hand.handPercent), m_skill(hand.skill) {}

    const Chance& chance() const { return m_chance; }
    /// What a skill below perfect adds, of `atNone` without any.
    std::int64_t unskilled(std::int64_t atNone) const { return atNone * (100 - m_skill) / 100; }

    Milliseconds draw(std::string_view name, Milliseconds low, Milliseconds high) const;
    /// The same, for what is a matter of his hand's pace alone: a trainee's is up to half as slow
    /// again.
    Milliseconds handTime(std::string_view name, Milliseconds low, Milliseconds high) const;
    /// In divisions of a scale; always 0 for a perfect eye.
    std::int64_t misreading(std::string_view name) const;

    // Of what is asked [percent]
    std::int64_t changeoverShare() const; // of its limit, without a bench
    std::int64_t buildUpShare() const;
    Milliseconds plateOutLag(const TimeBand& soak) const; // after it is due

private:
    Chance m_chance;
    std::int64_t m_percent;
    int m_skill;
};

/// How long a practised hand needs for each check.
std::pair<Milliseconds, Milliseconds> timeForCheck(std::string_view check);

/// What happens to a hand of less than perfect skill besides what it was asked to do wrong, the
/// more and the worse the less its skill. `bench`: there is one for slips to happen to.
RehearseFaults withSlips(const Hand& hand, const WeldPlan& plan, bool bench);

} // namespace seamclock
