// The program's end of the horn: starts the sound process, hands it what is to sound, shows it that
// the program lives, and replaces it when it ends or falls silent. Sound counts as good only while
// a horn says `alive`, which it does only when a device takes its sound; so neither a missing
// device nor a dead or frozen sound server can hide. Nothing here waits for the horn: a weld goes
// on without sound.
#pragma once

#include "app/sound/speaker.h"
#include "core/base/instant.h"

#include <QObject>
#include <QProcess>
#include <QString>
#include <QTimer>
#include <string>

namespace seamclock {

class HornLink : public QObject {
    Q_OBJECT
public:
    /// `program`: the horn's file. The clock must outlive the link.
    HornLink(const Clock& clock, QString program, QObject* parent = nullptr);
    ~HornLink() override;

    void start();
    /// The benches as they are now; between the calls it goes on as time does.
    void show(const Shift& shift);
    /// As above, of benches that live by another clock than the machine's, such as practice, whose
    /// time may run faster: what begins within the next beat sounds as it is due then.
    void show(const Shift& shift, const Instant& now);
    bool soundOk() const { return m_ok; }
    /// Takes leave of the horn: what sounds is played to its end, nothing after it.
    void stop();

signals:
    /// False: no sound, with why: not_started, ended, no_answer, or the horn's own no_device,
    /// open_failed, device_lost, format_refused. True: sound is (again) there; the code is empty.
    void soundChanged(bool heard, const QString& code);
    /// A slot was played whole; it began then, on the boot clock.
    void heard(const QString& id, qint64 bootMs);

private:
    void launch();
    void beat();
    void readLines();
    void takeLine(const QByteArray& line);
    void ended();
    void lose(const QString& code);
    void send(const ToHorn& message);
    void update();
    Instant shiftNow() const; // by the clock of the benches

    const Clock& m_clock;
    QString m_program;
    Speaker m_speaker;
    QProcess m_horn;
    QTimer m_beat;
    QTimer m_relaunch;
    Milliseconds m_lastAlive{0}; // or when the horn was started
    Milliseconds m_lastBeat{0};
    Milliseconds m_ahead{0};    // of the shift's clock the machine's is
    std::string m_bootId;       // of the shift's clock; empty: it is the machine's
    Milliseconds m_patience{0}; // for a horn that has not yet said alive
    bool m_ok = false;
    bool m_answered = false; // this horn has said alive
    bool m_wanted = false;
    QString m_code; // why there is no sound
};

} // namespace seamclock
