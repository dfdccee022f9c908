// What sounds, what stands as an alarm, and what is said: the station's own cues, the banner and
// its frame.
#include "app/operate/clock_notice.h"
#include "app/operate/window.h"
#include "app/text/phrase_book.h"

#include <QString>

namespace seamclock {
namespace {

constexpr Milliseconds kSaid{6'000};
constexpr Milliseconds kUnsaved{2'000};
constexpr Milliseconds kTrialEvery{4'000};

} // namespace

// While a person is asked whether the signal is heard, it sounds every four seconds.
void Window::trySound(const Instant& now) {
    const bool asked = m_kind == PageKind::Weld && m_parts.sound != nullptr &&
                       m_weld->view().layout == WeldView::Layout::Check &&
                       m_weld->view().drawing.check == QLatin1String("sound_heard");
    if (!asked) {
        m_triedAt.reset();
        return;
    }
    if (!m_triedAt || now.boot - *m_triedAt >= kTrialEvery) {
        m_triedAt = now.boot;
        m_floor.soundTrial(m_floor.selected());
    }
}

// Sound that never was there is not lost: nobody can have heard it.
void Window::watchSound() {
    const bool ok = m_parts.sound != nullptr && m_parts.sound->soundOk();
    if (ok == m_soundWas) {
        return;
    }
    m_soundWas = ok;
    if (!ok || m_soundLost) {
        m_soundLost = !ok;
        m_floor.soundChanged(ok); // repaints, and comes here again with nothing new
    }
}

void Window::sound() {
    if (m_parts.sound != nullptr) {
        m_parts.sound->show(m_floor.shift());
    }
}

// Who has seen that the battery is low need not hear it any more.
void Window::power() {
    if (m_parts.power == nullptr) {
        return;
    }
    m_parts.power->hold(m_floor.isWelding());
    const bool low = m_parts.power->batteryLow();
    m_batterySeen = m_batterySeen && low;
    m_floor.soundStation(CueKind::BatteryLow, low && !m_batterySeen);
}

/// Empty while no weld runs.
QString Window::awakeText() const {
    if (m_parts.power == nullptr) {
        return {};
    }
    switch (m_parts.power->awake()) {
    case PowerLink::Awake::Off:
        return {};
    case PowerLink::Awake::Whole:
        return tr("The tablet is kept awake until no joint is open.");
    case PowerLink::Awake::ScreenMayGoDark:
        return tr("The tablet is kept awake. Its screen may go dark: see its own settings.");
    case PowerLink::Awake::TabletMaySleep:
        return tr("The screen is kept on. The tablet may sleep: see its own settings.");
    case PowerLink::Awake::No:
        return tr("This machine can't be kept awake from here: see its own settings.");
    }
    return {};
}

void Window::alarms(const Instant& now) {
    const auto trouble = m_parts.writer.state().trouble;
    const bool memoryOnly = trouble && trouble->spillFailed;
    if (memoryOnly && !m_memoryOnly) {
        m_unsavedSeen.reset(); // that is worse than what was seen
    }
    m_memoryOnly = memoryOnly;
    int unsaved = 0; // of those that left their bench, too
    bool unsavedStands = false;
    m_floor.eachWeld([&](const Weld& weld) {
        const Floor::Unsaved waits = m_floor.unsaved(weld, m_unsavedSeen);
        unsaved += waits.rows;
        // One row's own age: rows that follow each other quickly are none that waits.
        unsavedStands = unsavedStands || (waits.since && now.boot - *waits.since >= kUnsaved);
    });
    m_floor.soundStation(CueKind::RowNotSaved, unsavedStands);
    const auto jump = m_floor.clockJump();
    m_floor.soundStation(CueKind::ClockJumped, jump.has_value());
    const bool soundOk = m_parts.sound == nullptr || m_parts.sound->soundOk();
    if (soundOk) {
        m_soundSeen = false;
    }
    QString text;
    m_alarm = Alarm::None;
    if (!m_parts.notice.isEmpty()) {
        text = m_parts.notice; // to be known before anything is done
        m_alarm = Alarm::Notice;
    } else if (unsavedStands) {
        m_alarm = Alarm::NotSaved;
        text = (memoryOnly ? tr("Last step is in memory only: leave the machine on. %1")
                           : tr("Last step is not on disk yet. Trying again. %1"))
                   .arg(unsaved == 1 ? tr("1 step") : tr("%1 steps").arg(unsaved));
    } else if (!soundOk && !m_soundSeen) {
        m_alarm = Alarm::NoSound;
        text = tr("No sound. Watch this screen. The weld goes on.");
    } else if (m_parts.power != nullptr && m_parts.power->batteryLow() && !m_batterySeen) {
        text = tr("The battery is low: %1 %. Plug the charger in.")
                   .arg(m_parts.power->batteryPercent());
        m_alarm = Alarm::Battery;
    } else if (jump) {
        text = clockNotice(*jump);
        m_alarm = Alarm::Clock;
    }
    const bool standing = !text.isEmpty();
    bool calm = false;
    if (!standing && !m_said.isEmpty()) {
        if (now.boot - m_saidAt >= kSaid) {
            m_said.clear();
        }
        text = m_said;
        calm = m_saidCalmly;
        m_alarm = text.isEmpty() ? Alarm::None : Alarm::Said;
    }
    const QString copy = copyTrouble();
    if (text.isEmpty() && copy != m_copySeen) {
        m_copySeen.clear();
        text = copy; // no limit of a weld hangs on it, so it stands without the frame
        m_alarm = Alarm::Copy;
    }
    // Nothing stands over the changeover but the frame; and a bench that calls for hands is seen in
    // the strip.
    const bool changeover =
        m_kind == PageKind::Weld && m_weld->view().layout == WeldView::Layout::Changeover;
    const bool away = callsAway(now);
    m_banner->setVisible(!text.isEmpty() && !changeover && !away);
    const bool covers = !text.isEmpty() && m_kind != PageKind::Weld && !away;
    m_strip->setCovered(covers);
    m_dayLog->dayPage()->setCovered(covers && isDayPage());
    if (!text.isEmpty()) {
        // Never over a sentence, a key or a button: over the ribbon, or over the benches' cells.
        m_banner->setGeometry(
            m_kind == PageKind::Weld ? m_bannerOnWeld
            : isDayPage()            ? m_dayLog->dayPage()->bannerPlace()
                                     : m_strip->benchesPlace().translated(m_strip->pos()));
        m_banner->setText(text, tr("Seen"), calm);
    }
    m_frame->setVisible(standing && now.boot.count() / 500 % 2 == 0);
}

// What stands there was seen, and nothing behind it: that comes next.
void Window::alarmSeen() {
    switch (m_alarm) {
    case Alarm::None:
        break;
    case Alarm::Notice:
        m_parts.notice.clear();
        break;
    case Alarm::NotSaved:
        m_unsavedSeen = m_floor.now().boot;
        break;
    case Alarm::NoSound:
        m_soundSeen = true;
        break;
    case Alarm::Battery:
        m_batterySeen = true;
        break;
    case Alarm::Clock:
        m_floor.clockJumpSeen();
        break;
    case Alarm::Said:
        m_said.clear();
        break;
    case Alarm::Copy:
        m_copySeen = copyTrouble();
        break;
    }
    refresh();
}

/// Why there is no backup or no copy for others; empty while there are.
QString Window::copyTrouble() const {
    if (m_parts.keeper == nullptr) {
        return {};
    }
    const KeeperState state = m_parts.keeper->state();
    if (state.structureTrouble) {
        return tr("The log is damaged. Finish the weld, end the program, start it again. %1")
            .arg(inWords(*state.structureTrouble));
    }
    if (state.backupTrouble) {
        return tr("No backup of the log. %1").arg(inWords(*state.backupTrouble));
    }
    if (state.photoTrouble) {
        return tr("Photos are in no backup. %1").arg(inWords(*state.photoTrouble));
    }
    if (state.snapshotTrouble) {
        return tr("No copy of the log for others. %1").arg(inWords(*state.snapshotTrouble));
    }
    return {};
}

void Window::say(const QString& text) {
    tell(text, false);
}

void Window::sayCalmly(const QString& text) {
    tell(text, true);
}

void Window::tell(const QString& text, bool calmly) {
    m_said = text;
    m_saidCalmly = calmly;
    m_saidAt = m_floor.now().boot;
    refresh();
}

void Window::told(const Result<void>& done) {
    if (!done && !isBounce(done.error())) {
        say(inWords(done.error().detail));
    }
}

} // namespace seamclock
