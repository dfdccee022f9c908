// A PIN as it is being typed: digits in memory that is kept from dumps and overwritten (secret.h),
// never in a text of the screen.
#pragma once

#include "core/people/pin.h"

#include <QChar>
#include <cstddef>

namespace seamclock {

class PinDraft {
public:
    PinDraft();

    /// What is no digit, and a digit too many, changes nothing.
    void type(QChar digit);
    void erase();
    void clear();
    int count() const { return static_cast<int>(m_count); }
    /// Malformed: nothing typed yet.
    Result<Pin> read() const;

private:
    Secret m_digits;
    std::size_t m_count = 0;
};

} // namespace seamclock
