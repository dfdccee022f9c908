// A person at the keyboard: real key events with time stamps as X11 gives them, a release 80 ms
// after its press, the next press half a second later. (QTest's own carry none, and so look like
// the repeats of a held key.)
#pragma once

#include <QApplication>
#include <QKeyEvent>
#include <QWidget>

namespace seamclock::test {

class Typist {
public:
    explicit Typist(QWidget& window) : m_window(window) {}

    void press(Qt::Key key) {
        QWidget* to = m_window.focusWidget() != nullptr ? m_window.focusWidget() : &m_window;
        m_at += 500;
        send(*to, QEvent::KeyPress, key, m_at);
        send(*to, QEvent::KeyRelease, key, m_at + 80);
    }

private:
    static void send(QWidget& to, QEvent::Type type, Qt::Key key, quint64 at) {
        const auto with = key == Qt::Key_Backtab ? Qt::ShiftModifier : Qt::NoModifier;
        QKeyEvent event(type, key, with, textOf(key));
        event.setTimestamp(at);
        QApplication::sendEvent(&to, &event);
    }
    static QString textOf(Qt::Key key) {
        if (key == Qt::Key_Tab) {
            return QStringLiteral("\t");
        }
        if (key == Qt::Key_Return) {
            return QStringLiteral("\r");
        }
        if (key == Qt::Key_Escape) {
            return QString(QChar(0x1b));
        }
        return key < 0x80 ? QString(QChar(key)).toLower() : QString();
    }

    QWidget& m_window;
    quint64 m_at = 10'000;
};

} // namespace seamclock::test
