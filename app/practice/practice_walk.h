// A whole practice weld by the presses of a hand: controls, steps and typed numbers, on a clock
// that only this moves. It looks at the bench as a trainee looks at the screen. For pictures and
// tests; nothing here is shown to a person at work.
#pragma once

#include "app/practice/practice_window.h"

#include <QString>
#include <functional>
#include <optional>
#include <string>
#include <utility>

namespace seamclock {

/// What this hand gets wrong; nothing set: nothing.
struct WalkMistakes {
    bool pressedSoak = false;               // the reading is never brought down
    std::optional<Milliseconds> changeover; // the faces are kept apart so long
    bool offParallel = false;               // the second sheet is pushed at one end only
    bool leavesLean = false;                // an edge that leans is not shimmed
    bool topBeadOnly = false;               // nobody looks underneath
    bool trustsDisplay = false;             // the plate's own, and measures no face
    bool takesCall = false;
    bool touchesEdge = false;
    std::optional<Wrong> says; // in preparation
};

class PracticeWalk {
public:
    PracticeWalk(PracticeWindow& window, PracticeRoom& room, VirtualClock& machine);

    using Picture = std::function<void(const QString& name)>;
    /// From the lesson's page to the result, which is waited for. Refused: a press that led
    /// nowhere, with the sentence.
    Result<void>
    weld(const std::string& lesson, const WalkMistakes& mistakes, const Picture& picture = {});
    /// Its first parts.
    Result<void> toBench(const std::string& lesson, const Picture& picture = {});
    Result<void> prepare(const WalkMistakes& mistakes, const Picture& picture = {});
    Result<void> align(const WalkMistakes& mistakes, const Picture& picture = {});
    /// All of that, until the plate is out and the faces are bare.
    Result<void> toChangeover(
        const std::string& lesson, const WalkMistakes& mistakes, const Picture& picture = {});
    /// After the result: the take seen again, the history, the record on paper.
    Result<void> afterwards(const Picture& picture = {});

    /// True time goes on.
    void go(Milliseconds gap);
    /// From now on in frames of at most so long, each made by `make` in place of the window's tick.
    void frames(Milliseconds longest, std::function<void()> make) {
        m_frame = longest;
        m_make = std::move(make);
    }
    /// Presses the control of that word.
    Result<void> control(const QString& english);
    /// One after the other.
    Result<void> several(const QStringList& controls);
    Result<void> step();
    /// A weld that is over is worked out: until its result stands.
    Result<void> waitForResult(const Picture& picture = {});

private:
    static void take(const Picture& picture, const QString& name);
    Result<void>
    check(const std::string& asked, const WalkMistakes& mistakes, const Picture& picture);
    Result<void> number(double value, int decimals);
    Result<void> evenGap(std::int64_t um);
    Result<void> clamp(const QString& which, bool even);
    Result<void> shim(const Picture& picture);
    Result<void> soak(const WalkMistakes& mistakes, const Picture& picture);
    Result<void> changeOver(const WalkMistakes& mistakes, const Picture& picture);
    Result<void> buildUp(const Picture& picture);
    Result<void> cool(const Picture& picture);
    Result<void> release(const Picture& picture);
    Result<void> finish(const Picture& picture);
    Result<void> topUp();

    void hold(double mmPerS);
    void approach();
    void apart(double mm);
    void turnTo(double reading, double mmPerS);
    BenchView bench() const;
    double least(double StationView::*field) const;
    bool touches() const;
    double bead(const WalkMistakes& mistakes) const;
    const Weld* weldNow() const { return m_room.weld(); }
    const WeldPlan& plan() const { return weldNow()->plan; }
    double mmPerUnit() const;

    PracticeWindow& m_window;
    PracticeRoom& m_room;
    VirtualClock& m_machine;
    Milliseconds m_frame{200};
    std::function<void()> m_make; // empty: the window's tick
    int m_holding = 0;            // 1, -1: the control that is held
};

} // namespace seamclock
