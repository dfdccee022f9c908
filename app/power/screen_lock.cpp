#include "app/power/screen_lock.h"

namespace seamclock {
namespace {

constexpr auto kService = "org.freedesktop.ScreenSaver";

QDBusMessage call(const char* method) {
    return QDBusMessage::createMethodCall(
        kService, "/org/freedesktop/ScreenSaver", "org.freedesktop.ScreenSaver", method);
}

} // namespace

ScreenLock::ScreenLock(int retryMs, QObject* parent) : WakeLock(kService, retryMs, parent) {}

QDBusMessage ScreenLock::question() const {
    return call("Inhibit") << QString("Seamclock") << QString("A weld is running");
}

bool ScreenLock::keep(const QDBusMessage& answer) {
    const QVariant given = answer.arguments().value(0);
    if (given.metaType() != QMetaType::fromType<quint32>()) {
        return false;
    }
    m_cookie = given.value<quint32>();
    return true;
}

void ScreenLock::giveBack(const std::optional<QDBusConnection>& bus) {
    if (m_cookie && bus) {
        QDBusMessage back = call("UnInhibit") << *m_cookie;
        back.setAutoStartService(false); // a new one would not know it
        bus->send(back);
    }
    m_cookie.reset();
}

void ScreenLock::giverGone() {
    m_cookie.reset();
}

} // namespace seamclock
