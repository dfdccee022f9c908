// A program that welds in true time and has a horn: what the window program is to the horn, without
// a window. It tells each step's instant on the boot clock, one line each, so that a test can work
// out what should have been heard, and when sound was lost and came back. `weld`: one short weld
// whose steps fall in the middle of a sound. `stand`: a soak that is past due after so many ms and
// stays so; it ends when its input does.
#include "app/platform/boot_clock.h"
#include "app/sound/horn_link.h"
#include "tests/support/story.h"

#include <QCoreApplication>
#include <QSocketNotifier>
#include <cstdio>
#include <cstdlib>
#include <functional>
#include <string>
#include <unistd.h>

using namespace seamclock;
using namespace seamclock::test;
using std::chrono::seconds;

namespace {

void tell(const std::string& what, Milliseconds at) {
    std::printf("%s %lld\n", what.c_str(), static_cast<long long>(at.count()));
    std::fflush(stdout);
}

WeldPlan shortPlan(Milliseconds soak) {
    WeldPlan plan = inventedPlan();
    plan.alignMedian.reset();
    plan.alignLate.reset();
    plan.soak = TimeBand{soak, soak, soak + seconds{1'000}};
    plan.changeoverMax = Milliseconds{2'250};
    plan.buildUp = TimeBand{Milliseconds{1'000}, Milliseconds{1'500}, Milliseconds{2'000}};
    plan.cooling = WeldPlan::Cooling{seconds{6}, {}};
    plan.checks = {"film_off"};
    return plan;
}

class Driver {
public:
    Driver(const BootClock& clock, HornLink& link, Milliseconds soak)
        : m_clock(clock), m_link(link), m_soak(soak) {}

    void open() {
        const WeldPlan plan = shortPlan(m_soak);
        Instant at = m_clock.now();
        at.boot -= seconds{60};
        at.utc -= seconds{60};
        const auto opened = seamclock::open(Event{
            at, "person:op-1", "weld:11111111-2222-4333-8444-555555555555", 1,
            inventedOpening(plan)});
        if (!opened) {
            std::fprintf(stderr, "%s\n", opened.error().detail.c_str());
            std::exit(1);
        }
        m_weld = *opened;
        step("check", CheckMade{"film_off", true, {}, {}, {}, {}, {}, {}});
        step("aligning", AlignmentStarted{});
        step("soaking", SoakStarted{});
        tell("due", m_weld.clock.boot + (std::get<Soaking>(m_weld.state).due - m_weld.clock.at).lo);
    }

    void weld() {
        const Milliseconds out = m_soak + Milliseconds{1'050};
        const Milliseconds met = out + Milliseconds{2'900};
        const Milliseconds reading = met + Milliseconds{2'650};
        const Milliseconds lock = met + Milliseconds{3'100};
        after(out, [this] { step("plate_out", PlateOut{}); });
        after(met, [this] { step("faces_met", FacesMet{}); });
        after(reading, [this] { step("reading", ReadingTaken{ReadingPhase::Joining, 15'500}); });
        after(lock, [this] { step("locked", PressureLocked{}); });
        after(lock + seconds{7} + Milliseconds{500}, [this] {
            m_link.stop();
            QCoreApplication::quit();
        });
    }

private:
    void after(Milliseconds wait, std::function<void()> what) {
        QTimer::singleShot(wait, Qt::PreciseTimer, &m_link, std::move(what));
    }

    void step(const std::string& name, const WeldDetail& detail) {
        const auto n = static_cast<std::int64_t>(m_weld.events.size()) + 1;
        const Instant now = m_clock.now();
        auto next = apply(m_weld, Event{now, "person:op-1", m_weld.id(), n, detail});
        if (!next) {
            std::fprintf(stderr, "%s: %s\n", name.c_str(), next.error().detail.c_str());
            std::exit(1);
        }
        m_weld = *std::move(next);
        m_link.show(shiftOf(m_weld));
        tell(name, now.boot);
    }

    const BootClock& m_clock;
    HornLink& m_link;
    Milliseconds m_soak;
    Weld m_weld;
};

int run(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    if (argc != 4) {
        std::fprintf(stderr, "sound_driver HORN weld|stand SOAK_MS\n");
        return 2;
    }
    const auto clock = BootClock::make();
    if (!clock) {
        return 1;
    }
    const bool stands = std::string(argv[2]) == "stand";
    HornLink link(*clock, argv[1]);
    Driver driver(*clock, link, Milliseconds{std::atoll(argv[3])});
    bool opened = false;
    QObject::connect(&link, &HornLink::soundChanged, &link, [&](bool heard, const QString& code) {
        tell(heard ? "sound" : "no_sound_" + code.toStdString(), clock->now().boot);
        if (heard && !opened && !stands) {
            opened = true;
            driver.open();
            driver.weld();
        }
    });
    QObject::connect(&link, &HornLink::heard, &link, [](const QString& id, qint64 boot) {
        tell("heard_" + id.toStdString(), Milliseconds{boot});
    });
    link.start();
    tell("started", clock->now().boot);
    if (stands) {
        driver.open();
    }
    QSocketNotifier input(STDIN_FILENO, QSocketNotifier::Read);
    QObject::connect(&input, &QSocketNotifier::activated, &link, [&] {
        char ignored = 0;
        if (::read(STDIN_FILENO, &ignored, 1) <= 0) {
            link.stop();
            QCoreApplication::quit();
        }
    });
    return QCoreApplication::exec();
}

} // namespace

int main(int argc, char** argv) {
    return run(argc, argv);
}
