// A trainee's weld in true time, with a horn: as far as soak without sound and faster than time,
// then as the program does it, with the machine's own time, at thirty times the speed until it must
// be true time. It tells when process time passed the instants of the cues, on the boot clock, so
// that a test can work out what should have been heard.
#include "app/platform/boot_clock.h"
#include "app/sound/horn_link.h"
#include "tests/app/practice/practice_shop.h"

#include <QApplication>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

using namespace seamclock;
using namespace seamclock::test;

namespace {

constexpr Milliseconds kFrame{40};        // as the window's own timer
constexpr Milliseconds kBefore{25'000};   // of soak's end, when sound begins
constexpr Milliseconds kPlateOut{900};    // after it: early in a sound, which is never cut
constexpr Milliseconds kListensOn{2'300}; // after it the driver ends, well before a third tick

void tell(const std::string& what, double at) {
    std::printf("%s %.0f\n", what.c_str(), at);
    std::fflush(stdout);
}

double ms(Milliseconds time) {
    return static_cast<double>(time.count());
}

/// The program's joining of window and horn, but that it can be opened late.
class LateSound : public PracticeSound {
public:
    explicit LateSound(HornLink& link) : m_link(link) {}
    void open() { m_open = true; }
    void show(const Shift& shift, const Instant& now) override {
        if (m_open) {
            m_link.show(shift, now);
        }
    }

private:
    HornLink& m_link;
    bool m_open = false;
};

struct Mark {
    const char* name;
    Milliseconds ofDue; // in process time
};

class Driver : public QObject {
public:
    Driver(Practising& shop, const BootClock& clock, LateSound& sound, HornLink& link)
        : m_shop(shop), m_clock(clock), m_sound(sound), m_link(link) {
        m_timer.setTimerType(Qt::PreciseTimer);
        connect(&m_timer, &QTimer::timeout, this, [this] { frame(); });
    }

    /// As far as that, without a sound.
    Result<void> bring() {
        auto done = m_shop.walk().toBench("pe10-first");
        if (done) {
            done = m_shop.walk().prepare({});
        }
        if (done) {
            done = m_shop.walk().align({});
        }
        while (done && left() > kBefore) {
            m_shop.walk().go(kFrame);
        }
        return done;
    }

    void begin() {
        m_shop.window().setPace(30); // the window itself must be true where it matters
        m_sound.open();
        m_last = m_clock.now().boot;
        m_timer.start(kFrame);
    }

private:
    /// Of soak, in process time; negative once it is over.
    Milliseconds left() const {
        const Weld& weld = *m_shop.room().weld();
        const auto* soaking = std::get_if<Soaking>(&weld.state);
        const auto t = weldTimeAt(weld, m_shop.room().now());
        return soaking != nullptr && t ? soaking->due.lo - t->lo : Milliseconds(0);
    }

    void frame() {
        const Milliseconds now = m_clock.now().boot;
        const Milliseconds real = now - m_last;
        m_last = now;
        const Milliseconds before = left();
        m_shop.machine().advance(real);
        m_shop.window().tick();
        if (m_out) {
            if (now - *m_out >= kListensOn) {
                m_link.stop();
                QCoreApplication::quit();
            }
            return;
        }
        const Milliseconds after = left();
        if (after <= Milliseconds(9'900) && before - after > real) {
            tell("hurried", ms(before - after - real)); // it must not, from get ready on
        }
        for (const Mark& mark : kMarks) { // passed in this frame: process time was true then
            if (before > mark.ofDue && after <= mark.ofDue) {
                tell(mark.name, ms(now) - ms(mark.ofDue - after));
            }
        }
        if (after <= -kPlateOut) {
            emit m_shop.window().currentPage()->slotPressed(SlotPlace::Step);
            m_out = m_clock.now().boot;
            tell("plate_out", ms(*m_out));
        }
    }

    static constexpr Mark kMarks[] = {
        {"get_ready", Milliseconds(10'000)}, {"get_ready_again", Milliseconds(8'820)},
        {"three", Milliseconds(3'000)},      {"two", Milliseconds(2'000)},
        {"one", Milliseconds(1'000)},        {"due", Milliseconds(0)}};

    Practising& m_shop;
    const BootClock& m_clock;
    LateSound& m_sound;
    HornLink& m_link;
    QTimer m_timer;
    Milliseconds m_last{0};
    std::optional<Milliseconds> m_out;
};

} // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    const auto clock = BootClock::make();
    if (argc != 2 || !clock) {
        std::fprintf(stderr, "practice_sound_driver HORN\n");
        return 2;
    }
    HornLink link(*clock, argv[1]);
    LateSound sound(link);
    Practising shop({1280, 800}, {}, {}, {}, &sound);
    Driver driver(shop, *clock, sound, link);
    if (const auto brought = driver.bring(); !brought) {
        std::fprintf(stderr, "%s\n", brought.error().detail.c_str());
        return 1;
    }
    bool begun = false;
    QObject::connect(&link, &HornLink::soundChanged, &link, [&](bool heard, const QString& code) {
        tell(heard ? "sound" : "no_sound_" + code.toStdString(), ms(clock->now().boot));
        if (heard && !begun) {
            begun = true;
            driver.begin();
        }
    });
    link.start();
    return QCoreApplication::exec();
}
