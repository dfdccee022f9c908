// People and the day's seal, walked through by presses as a hand makes them, for pictures and
// tests: names are set and not typed, and what the desk's thread does is waited for. Nothing here
// is shown to a person at work.
#pragma once

#include "app/operate/pictures.h"

#include <functional>
#include <initializer_list>
#include <optional>

namespace seamclock {

/// One step after the other, until one fails.
Result<void> inOrder(std::initializer_list<std::function<Result<void>()>> steps);

class PeopleWalk {
public:
    using Picture = Walk::Picture;
    static constexpr const char* kForemansPin = "402917"; // of the walk's own foreman
    PeopleWalk(Window& window, Desk& desk, VirtualClock& clock);

    /// Every page of people, PINs and the seal, and a foreman's word on a weld, in a log without
    /// people. Refused: a press that led nowhere, with the sentence.
    Result<void> all(const Picture& picture);

    /// From any page to "Who is it?".
    Result<void> openWho();
    /// From there; the desk stands open then.
    Result<void> firstForeman(const QString& name, const char* pin, const Picture& picture = {});
    Result<void> openDesk(const char* pin);
    /// At the open desk; without a PIN for null.
    Result<void> add(const QString& name, Role role, const char* pin, const Picture& picture = {});
    Result<void> seal(const Picture& picture = {});
    /// From "Who is it?"; null: that person has no PIN.
    Result<void> signIn(const QString& name, const char* pin);
    /// At the check of the plate of the weld that stands.
    Result<void> allowPlate(const char* pin, const Picture& picture = {});
    /// The weld of the next seam, up to the check of its plate.
    Result<void> toPlate();

    /// Digits on the pad, one by one.
    void type(const char* digits);
    /// Digits, and the step's button; then what comes of it.
    Result<void> givePin(const char* digits);
    Result<void> press(SlotPlace place);
    /// The answer with these words.
    Result<void> choose(const QString& words);
    /// Until the desk has told what it was asked for.
    void settle();

private:
    void take(const Picture& picture, const QString& name);
    Result<void> expect(const Page* page, const std::string& what) const;
    Result<void> wrongPins(const Picture& picture);
    Result<void> entries(const Picture& picture);

    Window& m_window;
    Desk& m_desk;
    VirtualClock& m_clock;
};

} // namespace seamclock
