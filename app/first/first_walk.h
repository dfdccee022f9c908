// A first start walked through by the presses that a person makes, for pictures and tests; it
// counts them. Nothing here is shown to a person at work.
#pragma once

#include "app/first/first_window.h"
#include "app/operate/pictures.h"

#include <functional>
#include <string>

namespace seamclock {

class FirstWalk {
public:
    using Picture = std::function<void(const QString& name)>;

    FirstWalk(FirstWindow& window, Desk& desk);

    /// From the first page to the weld card: every step done, in the order in which it is asked.
    /// Refused: a press that led nowhere, with what was expected.
    Result<void> all(const Picture& picture = {});
    /// Of those, to before the bench.
    Result<void> people(const Picture& picture = {});
    /// The bench, to its summary, by the rate of a plate or by a calibration.
    Result<void> bench(bool calibrates, const Picture& picture = {});
    /// Every step left for later, and then what stands without a bench.
    Result<void> nothing(const Picture& picture = {});

    /// Touches, and keys of the pad, so far.
    int presses() const { return m_presses; }
    /// Letters typed by a keyboard.
    int letters() const { return m_letters; }

    void settle();
    Result<void> press(SlotPlace place);
    Result<void> choose(int index);
    Result<void> name(const QString& text);
    Result<void> number(const QString& digits);
    Result<void> pin(const char* digits);

    static constexpr const char* kForemansPin = "716294";

private:
    void take(const Picture& picture, const QString& name);
    Result<void> expect(const Page* page, const std::string& what) const;
    Result<void> twice(const char* digits, const Picture& picture, const QString& name);

    FirstWindow& m_window;
    Desk& m_desk;
    int m_presses = 0;
    int m_letters = 0;
};

/// The pages of a first start, into the folder. Errors as paintPictures.
Result<QStringList>
paintFirstPictures(const PictureOptions& options, const std::vector<ProcedureDocument>& procedures);

} // namespace seamclock
