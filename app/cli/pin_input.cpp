#include "app/cli/pin_input.h"

#include "core/base/posix.h"

#include <cerrno>
#include <termios.h>
#include <unistd.h>

namespace seamclock {
namespace {

/// The terminal shows nothing while this stands.
class Unseen {
public:
    Unseen() {
        m_terminal = isatty(STDIN_FILENO) != 0 && tcgetattr(STDIN_FILENO, &m_was) == 0;
        if (m_terminal) {
            termios now = m_was;
            now.c_lflag &= ~static_cast<tcflag_t>(ECHO);
            tcsetattr(STDIN_FILENO, TCSAFLUSH, &now);
        }
    }
    ~Unseen() {
        if (m_terminal) {
            tcsetattr(STDIN_FILENO, TCSAFLUSH, &m_was);
        }
    }
    Unseen(const Unseen&) = delete;
    Unseen& operator=(const Unseen&) = delete;
    bool onTerminal() const { return m_terminal; }

private:
    termios m_was{};
    bool m_terminal = false;
};

void say(const std::string& text) {
    // A question that can't be shown is asked all the same.
    static_cast<void>(::write(STDERR_FILENO, text.data(), text.size()) < 0);
}

} // namespace

Result<Pin> readPin(const std::string& whose) {
    const Unseen unseen;
    if (unseen.onTerminal()) {
        say(whose + ": ");
    }
    // Byte by byte and unbuffered: what stands behind the line is the next PIN, and no copy stays.
    Secret digits(kLongestPin + 1);
    std::size_t length = 0;
    bool any = false;
    for (;;) {
        char byte = 0;
        const ssize_t got = ::read(STDIN_FILENO, &byte, 1);
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got <= 0 || byte == '\n') {
            any = any || got > 0;
            break;
        }
        any = true;
        if (byte != '\r' && length < digits.size()) {
            digits.bytes()[length++] = static_cast<unsigned char>(byte);
        }
    }
    if (unseen.onTerminal()) {
        say("\n");
    }
    if (!any) {
        return fail(
            ErrorCode::Missing,
            whose + " is missing on standard input; allowed: 1 to 12 digits on a line");
    }
    auto pin = Pin::read(digits.view().substr(0, length));
    if (!pin) {
        return fail(pin.error().code, whose + ": " + pin.error().detail);
    }
    return pin;
}

} // namespace seamclock
