#include "app/sound/horn_link.h"

#include "core/base/overloaded.h"

#include <algorithm>

namespace seamclock {

namespace {

constexpr int kBeatMs = 250;
constexpr Milliseconds kSilentFor{1'500};
// A horn that hangs in opening is given longer each time, so that a slow machine gets one at all.
constexpr Milliseconds kLongestPatience{4'000};
// This program itself didn't run, so that it can't tell how long the horn was silent.
constexpr Milliseconds kAsleep{1'000};
constexpr int kRelaunchMs = 250;
// Two clocks that run equally fast are read so far apart at most.
constexpr Milliseconds kSlip{10};
// The longest slot and what lies in the sound's buffer.
constexpr int kFarewellMs = 1'000;

} // namespace

HornLink::HornLink(const Clock& clock, QString program, QObject* parent)
    : QObject(parent), m_clock(clock), m_program(std::move(program)) {
    m_horn.setObjectName("horn");
    m_horn.setProcessChannelMode(QProcess::SeparateChannels);
    m_horn.setStandardErrorFile(QProcess::nullDevice());
    m_beat.setInterval(kBeatMs);
    m_beat.setTimerType(Qt::PreciseTimer);
    m_relaunch.setInterval(kRelaunchMs);
    m_relaunch.setSingleShot(true);
    connect(&m_beat, &QTimer::timeout, this, &HornLink::beat);
    connect(&m_relaunch, &QTimer::timeout, this, &HornLink::launch);
    connect(&m_horn, &QProcess::readyReadStandardOutput, this, &HornLink::readLines);
    connect(&m_horn, &QProcess::finished, this, &HornLink::ended);
    connect(&m_horn, &QProcess::errorOccurred, this, [this](QProcess::ProcessError error) {
        if (error == QProcess::FailedToStart && m_wanted) {
            lose("not_started");
            m_relaunch.start();
        }
    });
}

HornLink::~HornLink() {
    stop();
}

void HornLink::start() {
    if (m_wanted) {
        return;
    }
    m_wanted = true;
    m_patience = kSilentFor;
    m_code.clear();
    m_lastBeat = m_clock.now().boot;
    m_beat.start();
    launch();
}

void HornLink::launch() {
    if (!m_wanted || m_horn.state() != QProcess::NotRunning) {
        return;
    }
    m_answered = false;
    m_lastAlive = m_clock.now().boot;
    m_horn.start(m_program, {});
}

void HornLink::show(const Shift& shift) {
    m_ahead = Milliseconds{0};
    m_bootId.clear();
    m_speaker.show(shift);
    update();
}

void HornLink::show(const Shift& shift, const Instant& now) {
    const Milliseconds ahead = m_clock.now().boot - now.boot;
    if (std::chrono::abs(ahead - m_ahead) > kSlip || now.bootId != m_bootId) {
        m_speaker.again();
        m_ahead = ahead;
        m_bootId = now.bootId;
    }
    m_speaker.show(shift);
    update();
}

// A new horn gets nothing before it has said alive: what it may still play is decided then.
void HornLink::update() {
    if (!m_answered) {
        return;
    }
    if (auto schedule = m_speaker.update(shiftNow())) {
        for (HornSlot& slot : schedule->soundSlots) {
            slot.start += m_ahead;
        }
        send(*schedule);
    }
}

Instant HornLink::shiftNow() const {
    Instant now = m_clock.now();
    if (!m_bootId.empty()) {
        now.boot -= m_ahead;
        now.bootId = m_bootId;
    }
    return now;
}

void HornLink::beat() {
    const Milliseconds now = m_clock.now().boot;
    if (now - m_lastBeat >= kAsleep) {
        m_lastAlive = now;
    }
    m_lastBeat = now;
    const Milliseconds silent = now - m_lastAlive;
    if (m_horn.state() != QProcess::NotRunning &&
        silent >= (m_answered ? kSilentFor : m_patience)) {
        if (!m_answered) {
            m_patience = std::min(m_patience * 2, kLongestPatience);
        }
        lose("no_answer");
        m_horn.kill();
        return;
    }
    if (m_answered) {
        send(HornBeat{});
    }
    update();
}

void HornLink::send(const ToHorn& message) {
    if (m_horn.state() == QProcess::Running) {
        m_horn.write(QByteArray::fromStdString(lineOf(message) + "\n"));
    }
}

void HornLink::readLines() {
    while (m_horn.canReadLine()) {
        takeLine(m_horn.readLine().chopped(1));
    }
}

void HornLink::takeLine(const QByteArray& line) {
    const auto message = readFromHorn({line.constData(), static_cast<std::size_t>(line.size())});
    if (!message) {
        return; // not a line of ours: the sound stack may print as well
    }
    std::visit(
        Overloaded{
            [this](const HornAlive&) {
                m_lastAlive = m_clock.now().boot;
                if (m_answered || !m_wanted) {
                    return;
                }
                m_answered = true;
                m_patience = kSilentFor;
                m_speaker.restart(shiftNow());
                update();
                m_ok = true;
                m_code.clear();
                emit soundChanged(true, {});
            },
            [this](const HornHeard& told) {
                m_speaker.heard(told.id);
                emit heard(QString::fromStdString(told.id), told.boot.count());
            },
            [this](const HornTrouble& trouble) {
                // A line that it couldn't read is our mistake; sound is there.
                if (trouble.code != "bad_line") {
                    lose(QString::fromStdString(trouble.code));
                }
            }},
        *message);
}

void HornLink::ended() {
    readLines();
    m_answered = false;
    if (!m_wanted) {
        return;
    }
    if (m_ok || m_code.isEmpty()) {
        lose("ended");
    }
    m_relaunch.start();
}

// The first reason is told at once; another one only after sound was there again, or if it differs.
void HornLink::lose(const QString& code) {
    if (!m_ok && m_code == code) {
        return;
    }
    m_ok = false;
    m_code = code;
    emit soundChanged(false, code);
}

void HornLink::stop() {
    if (!m_wanted) {
        return;
    }
    m_wanted = false;
    m_beat.stop();
    m_relaunch.stop();
    const bool answered = m_answered;
    if (answered) {
        send(HornBye{});
    }
    m_horn.closeWriteChannel();
    if (m_horn.state() != QProcess::NotRunning &&
        (!answered || !m_horn.waitForFinished(kFarewellMs))) {
        m_horn.kill();
        m_horn.waitForFinished(kFarewellMs);
    }
    m_answered = false;
    m_ok = false;
}

} // namespace seamclock
