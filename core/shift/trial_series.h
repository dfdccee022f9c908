// When a trial joint is asked for: before the first joint of a day on a bench, and again after a
// change of material, thickness or plate (common practice, no source). Series work stands on it as
// long as joint follows joint of one set-up; another between them, however it ended, begins another
// series. This is the one place that says so: session asks it for the joint that is opened now, the
// day's plan for those to come.
#pragma once

#include <optional>

namespace seamclock {

/// What the joints of one bench so far say, told as they came. `SetUp`: whatever is equal for
/// joints that one trial joint stands for; `Made`: what is known of a trial joint.
template <class SetUp, class Made>
class TrialSeries {
public:
    /// A joint was begun, a trial joint or another.
    void begin(const SetUp& of) {
        if (!m_of || !(*m_of == of)) {
            m_of = of;
            m_made.reset();
        }
    }

    /// A trial joint of the series was made; the last one counts.
    void tried(const Made& made) { m_made = made; }

    /// That stands for a joint of that set-up which is begun now; null: one is to be made first.
    const Made* standingFor(const SetUp& next) const {
        return m_of && *m_of == next && m_made ? &*m_made : nullptr;
    }

private:
    std::optional<SetUp> m_of;
    std::optional<Made> m_made;
};

} // namespace seamclock
