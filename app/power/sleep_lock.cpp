#include "app/power/sleep_lock.h"

namespace seamclock {
namespace {

constexpr auto kService = "org.freedesktop.login1";

} // namespace

SleepLock::SleepLock(int retryMs, QObject* parent) : WakeLock(kService, retryMs, parent) {}

// https://www.freedesktop.org/software/systemd/man/org.freedesktop.login1.html, "Inhibit"
QDBusMessage SleepLock::question() const {
    QDBusMessage question = QDBusMessage::createMethodCall(
        kService, "/org/freedesktop/login1", "org.freedesktop.login1.Manager", "Inhibit");
    question << QString("sleep:idle") << QString("Seamclock") << QString("A weld is running")
             << QString("block");
    return question;
}

bool SleepLock::keep(const QDBusMessage& answer) {
    const auto given = answer.arguments().value(0).value<QDBusUnixFileDescriptor>();
    if (!given.isValid()) {
        return false;
    }
    m_descriptor = given;
    return true;
}

void SleepLock::giveBack(const std::optional<QDBusConnection>&) {
    m_descriptor = {};
}

// It stays open until there is another: a login manager that was started again finds what it had
// given, and there is no gap.
void SleepLock::giverGone() {}

} // namespace seamclock
