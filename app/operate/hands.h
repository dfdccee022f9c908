// Keys and pedal as steps. The next step is on Space, Enter, Page Down and on a key of the user's
// own choice (a foot switch types one). A held key counts once, and a key that repeats because the
// machine is busy, too: X11 tells a repeat as release and press with one time stamp, and under load
// Qt does not always mark it, so it is told apart by the events' own time stamps. Ordinary
// shortcuts can't do that.
#pragma once

#include <QObject>
#include <map>

class QKeyEvent;
class QWidget;

namespace seamclock {

class KeyRing;

class Hands : public QObject {
    Q_OBJECT

public:
    explicit Hands(QObject* parent = nullptr);

    /// Only keys of that window count; null: of every one. It must outlive this.
    void setWindow(const QWidget* window) { m_window = window; }

    /// A Qt::Key; 0: none.
    void setPedalKey(int key) { m_pedal = key; }
    int pedalKey() const { return m_pedal; }
    /// Tab and Shift+Tab move it, Space and Enter press what it stands on, Escape leaves it; the
    /// pedal and Page Down are the next step wherever it stands. It must outlive this.
    void setRing(KeyRing* ring) { m_ring = ring; }
    /// The next key that is pressed becomes the pedal's, and is told by pedalLearnt.
    void learnPedal();
    void stopLearning() { m_learning = false; }

    /// From an application-wide filter; true: it was a step's key and is dealt with.
    bool eventFilter(QObject* watched, QEvent* event) override;

signals:
    void step();
    void help();           // F1
    void bench(int place); // 1 to 4
    void typed(QChar sign);
    void erased();
    void escaped(); // and no ring stood
    void pedalLearnt(int key);

private:
    bool pressed(const QKeyEvent& key);
    bool ringPressed(int key);

    const QWidget* m_window = nullptr;
    KeyRing* m_ring = nullptr;
    int m_pedal = 0;
    bool m_learning = false;
    std::map<int, quint64> m_released; // by key: the time stamp of its last release [ms]
    std::map<int, bool> m_down;
};

} // namespace seamclock
