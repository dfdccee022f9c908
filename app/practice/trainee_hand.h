// What the trainee's hands do at the virtual bench: the six controls, the wheel that a finger or a
// key holds, and how gap and sheets are held before they are clamped. It knows the bench and no
// page; what there is to say to it, it emits.
#pragma once

#include "app/practice/bench_controls.h"
#include "app/practice/practice_room.h"

#include <QObject>
#include <QString>
#include <cstdint>
#include <optional>

namespace seamclock {

class TraineeHand : public QObject {
    Q_OBJECT

public:
    /// Both must outlive it. `machine`: true time.
    TraineeHand(PracticeRoom& room, const Clock& machine, QObject* parent = nullptr);

    /// A new weld: nothing is held yet. `seed`: of how gap and sheets are held at first.
    void begin(std::uint64_t seed);
    ControlPanel panel() const { return m_panel; }
    const Push& push() const { return m_push; }

    /// Leads the bench by an act; what it refuses is said.
    bool act(const BenchAct& act);
    /// Holds the wheel at that speed [mm/s], positive closing; 0: it is held still.
    void turnWheel(double mmPerS);
    /// The hand goes to the screen.
    void leave();
    /// A control as a finger does it: pressed, slid by so many units for the speed, let go.
    void press(const Control& control);
    void slide(const Control& control, double units);
    void letGo();
    /// Whether the key is the wheel's; a held key repeats, by release and press where the system
    /// says so.
    bool key(int key, Qt::KeyboardModifiers modifiers, bool down, bool repeats);
    /// Each frame: a key that was left, and did not repeat, lets the wheel stand.
    void look();
    /// The hand on the edge of sheet 0 or 1, at that station.
    void touchEdge(int sheet, int place);

signals:
    void said(const QString& text, bool calmly);
    /// Take back: the operator's own slot.
    void backPressed();
    void changed();

private:
    void showPanel(ControlPanel panel);
    void gapMore(const Push& by);
    void readPlate(int place);

    PracticeRoom& m_room;
    const Clock& m_machine;
    std::uint64_t m_seed = 1;
    ControlPanel m_panel = ControlPanel::None;
    Push m_push;
    double m_turning = 0;                  // [mm/s]
    int m_turnKey = 0;                     // that is held
    std::optional<Milliseconds> m_keyLeft; // of the machine; it may be a repeat
};

} // namespace seamclock
