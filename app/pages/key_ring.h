// Keys instead of touches: a ring that goes from one target of the window to the next, in the order
// in which they are read, and presses the one that it stands on. It is seen only once a key has
// moved it. A line that is typed into is a target, too: it has the keys while the ring is on it.
#pragma once

#include "app/pages/page.h"

#include <QPointer>
#include <QTimer>
#include <vector>

namespace seamclock {

class KeyRing : public QWidget {
public:
    explicit KeyRing(QWidget* window);

    void setLook(const PageLook& look);
    /// To the next target that is seen, or the one before, round and round.
    void move(int by);
    /// False: it stands nowhere, or where nothing can be pressed.
    bool press();
    /// It stands nowhere.
    void leave();
    const QWidget* on() const { return m_on; }
    /// What the screen stands at. Another one, and a key that was on its way to the old one must
    /// not press: the ring leaves. `hurried`: it leaves by itself, too, five seconds after the last
    /// key [practice].
    void look(const QString& standing, bool hurried = false);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    static bool takes(const QWidget* target);
    void follow();
    std::vector<QWidget*> targets() const;

    PageLook m_look;
    QPointer<QWidget> m_on;
    QString m_standing;
    bool m_hurried = false;
    QTimer m_patience;
};

} // namespace seamclock
