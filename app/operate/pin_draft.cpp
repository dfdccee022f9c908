#include "app/operate/pin_draft.h"

namespace seamclock {

PinDraft::PinDraft() : m_digits(kLongestPin) {}

void PinDraft::type(QChar digit) {
    if (digit < QLatin1Char('0') || digit > QLatin1Char('9') || m_count >= kLongestPin) {
        return;
    }
    m_digits.bytes()[m_count++] = static_cast<unsigned char>(digit.unicode());
}

void PinDraft::erase() {
    if (m_count > 0) {
        m_digits.bytes()[--m_count] = 0;
    }
}

void PinDraft::clear() {
    while (m_count > 0) {
        erase();
    }
}

Result<Pin> PinDraft::read() const {
    return Pin::read(m_digits.view().substr(0, m_count));
}

} // namespace seamclock
