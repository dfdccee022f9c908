// The operator's window in one process, worked by keys, offscreen or on a display:
//
//     window_speed steps [WELDS]    from a key's press to the painted screen, while each of the
//                                   log's syncs takes 30 ms and the desk's thread is kept busy
//                                   with PINs and pages of PDF
//     window_speed memory [WELDS]   what the process holds while it makes so many welds
//     window_speed PHASE LOG        makes a log with one joint that begins to soak or to cool now,
//                                   by this machine's clock; PHASE: soaking, cooling
//
// Weld time is virtual: whole welds go by as fast as they are pressed. What is measured is true
// time.
#include "app/operate/window.h"
#include "app/parts/metrics.h"
#include "app/platform/boot_clock.h"
#include "app/print/card_pdf.h"
#include "core/heat/material_codec.h"
#include "core/log/world.h"
#include "core/people/credentials.h"
#include "core/practice/virtual_clock.h"
#include "core/session/job_order.h"
#include "core/weld/intent.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/scratch_folder.h"

#include <QApplication>
#include <QKeyEvent>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <fstream>
#include <malloc.h>
#include <string>
#include <string_view>
#include <vector>

namespace seamclock::test {
namespace {

using std::chrono::milliseconds;
using std::chrono::seconds;

constexpr Milliseconds kSync{30};

double msOf(clockid_t which) {
    timespec at{};
    clock_gettime(which, &at);
    return static_cast<double>(at.tv_sec) * 1e3 + static_cast<double>(at.tv_nsec) / 1e6;
}

double nowMs() {
    return msOf(CLOCK_MONOTONIC);
}

double load() {
    double now = 0;
    return getloadavg(&now, 1) == 1 ? now : -1;
}

[[noreturn]] void giveUp(const std::string& why) {
    std::fprintf(stderr, "window_speed: %s\n", why.c_str());
    std::exit(1);
}

/// The window over the demo's benches.
class Shop {
public:
    Shop(const std::string& log, VirtualClock& clock, const std::string& documents)
        : m_clock(clock) {
        const std::string resources = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/";
        auto procedures = readProcedureFolder(resources + "procedures");
        auto job = readFirstJob(resources + "demo");
        auto writer = LogWriter<Production>::open(log, m_clock);
        if (!procedures || !job || !writer) {
            giveUp("the demo is not there, or " + log + " can't be made");
        }
        m_job = std::move(*job);
        m_writer = std::make_unique<LogWriter<Production>>(std::move(*writer));
        auto session = Session<Production>::start(*m_writer, m_clock);
        if (!session) {
            giveUp(session.error().detail);
        }
        m_session = std::make_unique<Session<Production>>(std::move(*session));
        m_floor =
            std::make_unique<Floor>(*m_session, *m_writer, m_clock, *procedures, m_job.operatorId);
        if (auto materials = readMaterialFolder(resources + "materials")) {
            m_floor->setMaterials(std::move(*materials));
        }
        for (const JobSeam& seam : m_job.seams) {
            if (const auto bench = readBenchFile(seam.benchFile)) {
                static_cast<void>(m_floor->addBench(*bench)); // another seam's
            }
        }
        auto desk = Desk::open(*m_writer, m_clock);
        if (!desk) {
            giveUp(desk.error().detail);
        }
        m_desk = std::move(*desk);
        WindowParts parts{*m_floor, *m_writer,
                          *m_desk,  m_job.seams,
                          {},       QString::fromStdString(documents + "/settings.ini")};
        parts.reports = QString::fromStdString(documents);
        parts.preferences.dpi = kUnitsPerInch;
        m_window = std::make_unique<Window>(std::move(parts));
        m_window->resize(1280, 800);
        m_window->QWidget::show();
        m_documents = documents;
    }

    /// A weld of the job's first seam on its own bench, as a production weld each time.
    void openWeld() {
        const JobSeam& seam = m_job.seams.front();
        auto order = orderOf(seam, m_floor->procedures());
        if (!order) {
            giveUp(order.error().detail);
        }
        order->bench = m_floor->posts().front().bench;
        order->request.scaleIsForemans = true;
        order->type = WeldType::Production;
        order->seam.reset();
        const auto opened = m_floor->open(0, *order);
        if (!opened) {
            giveUp(opened.error().detail);
        }
    }

    Window& window() { return *m_window; }
    Floor& floor() { return *m_floor; }
    Desk& desk() { return *m_desk; }
    LogWriterBase& writer() { return *m_writer; }
    VirtualClock& clock() { return m_clock; }
    const std::string& documents() const { return m_documents; }

private:
    VirtualClock& m_clock;
    std::string m_documents;
    Job m_job;
    std::unique_ptr<LogWriter<Production>> m_writer;
    std::unique_ptr<Session<Production>> m_session;
    std::unique_ptr<Floor> m_floor;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Window> m_window;
};

/// Counts what is painted.
class Paints : public QObject {
public:
    bool eventFilter(QObject*, QEvent* event) override {
        count += event->type() == QEvent::Paint ? 1 : 0;
        asked += event->type() == QEvent::UpdateRequest ? 1 : 0;
        return false;
    }
    int count = 0;
    int asked = 0;
};

/// Whole welds by the keys of a hand.
class Hand {
public:
    explicit Hand(Shop& shop) : m_shop(shop) { qApp->installEventFilter(&m_paints); }
    ~Hand() { qApp->removeEventFilter(&m_paints); }
    Hand(const Hand&) = delete;
    Hand& operator=(const Hand&) = delete;

    /// Times of steps are kept only while this is set; else nothing is waited for.
    bool measures = false;
    std::vector<double> steps;  // ms
    std::vector<double> work;   // of the screen's own thread for a step [ms of a processor]
    std::vector<double> digits; // ms
    WeldPlan plan;              // of the last weld

    void go(Milliseconds gap) {
        m_shop.clock().advance(gap);
        m_shop.window().refresh();
        if (measures) {
            QCoreApplication::processEvents();
        }
    }

    void key(int code, const QString& text, std::vector<double>& took) {
        m_stamp += 700; // ms of the display's own clock, so that no press is a repeat
        const int before = m_paints.count;
        const double begun = nowMs();
        const double worked = msOf(CLOCK_THREAD_CPUTIME_ID);
        QKeyEvent press(QEvent::KeyPress, code, Qt::NoModifier, text);
        press.setTimestamp(m_stamp);
        QCoreApplication::sendEvent(&m_shop.window(), &press);
        if (measures) {
            double painted = 0;
            while (painted == 0 && nowMs() - begun < 2'000) {
                QCoreApplication::processEvents();
                painted = m_paints.count > before ? nowMs() : 0;
            }
            if (painted == 0) {
                giveUp("a key painted nothing within 2 s");
            }
            took.push_back(painted - begun);
            if (&took == &steps) {
                work.push_back(msOf(CLOCK_THREAD_CPUTIME_ID) - worked);
            }
        }
        QKeyEvent release(QEvent::KeyRelease, code, Qt::NoModifier, text);
        release.setTimestamp(m_stamp + 80);
        QCoreApplication::sendEvent(&m_shop.window(), &release);
    }

    void step() { key(Qt::Key_Space, " ", steps); }

    /// One whole weld; no further than `until`, the name of a phase.
    void weld(std::string_view until = {}) {
        m_shop.openWeld();
        std::vector<double> ignored;
        const bool measured = std::exchange(measures, false);
        key(Qt::Key_1, "1", ignored);
        measures = measured;
        for (int press = 0; press < 200; ++press) {
            const Weld* now = m_shop.floor().weld(0);
            // A closed weld's step would open the next of its kind.
            if (now == nullptr || std::holds_alternative<Closed>(now->state)) {
                return;
            }
            plan = now->plan;
            if (phaseName(now->state) == until) {
                return;
            }
            if (m_shop.window().page() == PageKind::Pad) {
                number(*now);
            } else if (m_shop.window().page() == PageKind::Reasons) {
                emit m_shop.window().choicePage()->chosen(0);
                continue;
            } else {
                wait(*now);
            }
            step();
        }
        const Weld* now = m_shop.floor().weld(0);
        giveUp(
            "a weld did not end: " + std::string(now != nullptr ? phaseName(now->state) : "none"));
    }

private:
    void number(const Weld& now) {
        const NumberTask& task = m_shop.window().padPage()->task();
        double value = task.view.target.value_or(1.0);
        if (task.what == NumberFor::Recheck) {
            value = static_cast<double>(now.plan.scale->joining.setMilli) / 1000;
        } else if (task.what == NumberFor::PlateTemperature) {
            value = std::floor(value);
        }
        const QString text = task.what == NumberFor::BeadHeight     ? "4.2"
                             : task.what == NumberFor::BeadWidth    ? "9.5"
                             : task.what == NumberFor::BeadK        ? "0.8"
                             : task.what == NumberFor::Misalignment ? "0.4"
                                                                    : QString::number(value);
        for (const QChar sign : text) {
            key(sign == QLatin1Char('.') ? Qt::Key_Period : Qt::Key_0 + sign.digitValue(),
                QString(sign), digits);
        }
        go(seconds(3));
    }

    /// Until the step is due.
    void wait(const Weld& now) {
        if (std::holds_alternative<Aligning>(now.state)) {
            go(seconds(62));
        } else if (std::holds_alternative<Soaking>(now.state)) {
            go(plan.soak->target + milliseconds(400));
        } else if (std::holds_alternative<ChangingOver>(now.state)) {
            go(milliseconds(4'600));
        } else if (std::holds_alternative<BuildingUp>(now.state)) {
            // the reading, then the lock
            m_locking = !m_locking;
            go(m_locking ? plan.buildUp->target * 9 / 10 : milliseconds(1'500));
        } else if (std::holds_alternative<Cooling>(now.state)) {
            for (int i = 0; i < 2'000 && !isDue(); ++i) {
                go(seconds(10));
            }
        } else {
            go(seconds(6));
        }
    }

    bool isDue() const {
        const auto view = m_shop.floor().view(0, m_shop.floor().now(), false, false);
        return !view || view->step.view.look == SlotView::Look::Act;
    }

    Shop& m_shop;
    Paints m_paints;
    quint64 m_stamp = 1'000'000;
    bool m_locking = false;
};

Instant morning() {
    Instant start;
    start.boot = milliseconds(7'200'000);
    start.bootId = "practice:2c8b5d1e-70a3-4f0e-9a9c-1f6e4f6f4a10";
    start.utc = milliseconds(1'893'996'000'000); // 2030-01-07T06:00Z
    start.offset = std::chrono::minutes(60);
    return start;
}

/// PIN after page after PIN, on the desk's own thread, for as long as it lives.
class BusyDesk {
public:
    BusyDesk(Shop& shop, const std::string& secrets, const WeldPlan& plan)
        : m_shop(shop), m_credentials(std::make_shared<Credentials>(secrets)) {
        m_who.id = "person:measure";
        m_who.name = "Measure";
        m_who.role = Role::Operator;
        auto pin = Pin::read("4711");
        if (!pin || !m_credentials->setPin(m_who, *pin)) {
            giveUp("no PIN can be set in " + secrets);
        }
        m_pin = std::make_shared<Pin>(std::move(*pin));
        CardWork work;
        work.bench = "A, east";
        work.printed = "2030-01-07 07:00";
        m_sheet = cardSheet(
            plan, &m_shop.floor().posts().front().bench.bench, work, UnitSystem::Metric, nullptr);
        check();
    }

    int pins() const { return m_pins; }
    int pages() const { return m_pages; }

private:
    void check() {
        m_shop.desk().run<bool>(
            &m_guard,
            [credentials = m_credentials, who = m_who, pin = m_pin, now = morning()](Office&) {
                return credentials->enter(who, *pin, now).has_value();
            },
            [this](const bool& entered) {
                if (!entered) {
                    giveUp("the PIN was not taken");
                }
                ++m_pins;
                print();
            });
    }
    void print() {
        m_shop.desk().run<bool>(
            &m_guard,
            [sheet = m_sheet, folder = QString::fromStdString(m_shop.documents()),
             stem = QString("card-%1").arg(m_pages)](Office&) {
                return saveCardPdf(sheet, paperOfLocale(), folder, stem).has_value();
            },
            [this](const bool& saved) {
                if (!saved) {
                    giveUp("no page was made");
                }
                ++m_pages;
                check();
            });
    }

    Shop& m_shop;
    std::shared_ptr<Credentials> m_credentials;
    Person m_who;
    std::shared_ptr<Pin> m_pin;
    CardSheet m_sheet;
    int m_pins = 0;
    int m_pages = 0;
    QObject m_guard; // last: what still comes after it finds nobody
};

void tell(const char* name, std::vector<double>& ms, const std::string& beside) {
    std::sort(ms.begin(), ms.end());
    const auto at = [&ms](double part) {
        return ms[std::min(
            ms.size() - 1, static_cast<std::size_t>(part * static_cast<double>(ms.size())))];
    };
    std::printf(
        "value %s %.1f ms   (99th percentile of %zu; middle %.1f, longest %.1f ms; %s; load "
        "%.1f)\n",
        name, at(0.99), ms.size(), at(0.5), ms.back(), beside.c_str(), load());
}

int steps(int welds) {
    const ScratchFolder folder;
    VirtualClock clock(morning());
    FaultyDisk disk;
    Shop shop(folder.file("steps.seamlog"), clock, folder.path());
    Hand hand(shop);
    hand.weld(); // fonts and pictures are there afterwards
    hand.measures = true;
    hand.weld();
    tell("window-step-idle", hand.steps, "an own disk, nothing beside it");
    hand.steps.clear();
    hand.work.clear();
    hand.digits.clear();
    disk.slowSync(kSync);
    BusyDesk busy(shop, folder.file("secrets"), hand.plan);
    for (int i = 0; i < welds; ++i) {
        hand.weld();
    }
    const std::string beside = "each sync 30 ms, " + std::to_string(busy.pins()) + " PINs and " +
                               std::to_string(busy.pages()) + " pages meanwhile";
    tell("window-step", hand.steps, beside);
    tell("window-step-work", hand.work, "of a processor, in the screen's own thread");
    tell("window-digit", hand.digits, beside);
    disk.slowSync(Milliseconds(0));
    return 0;
}

struct Held {
    double rss = 0; // MB
    double pss = 0;
};

Held held() {
    std::ifstream rollup("/proc/self/smaps_rollup");
    Held now;
    for (std::string line; std::getline(rollup, line);) {
        const auto of = [&line](const char* what) {
            return line.rfind(what, 0) == 0 ? std::strtod(line.c_str() + std::strlen(what), nullptr)
                                            : 0;
        };
        now.rss += of("Rss:") / 1024;
        now.pss += of("Pss:") / 1024;
    }
    return now;
}

int memory(int welds) {
    const ScratchFolder folder;
    VirtualClock clock(morning());
    Shop shop(folder.file("memory.seamlog"), clock, folder.path());
    Hand hand(shop);
    Held early;
    for (int i = 1; i <= welds; ++i) {
        hand.weld();
        QCoreApplication::processEvents(); // painted once a weld
        if (i == 100 || i == welds) {
            if (!shop.writer().flush()) {
                giveUp("the log can't be written");
            }
            const Held now = held();
            const double heap = static_cast<double>(mallinfo2().uordblks) / 1024 / 1024;
            std::printf(
                "value window-memory-%d %.1f MB   (resident; its own share %.1f, in use on the "
                "heap "
                "%.1f MB)\n",
                i, now.rss, now.pss, heap);
            if (i == 100) {
                early = now;
            } else {
                std::printf(
                    "value window-memory-growth %.1f kB   (a weld, from the 100th to the %dth; "
                    "own share %.1f; load %.1f)\n",
                    (now.rss - early.rss) * 1024 / (i - 100), i,
                    (now.pss - early.pss) * 1024 / (i - 100), load());
            }
        }
    }
    return 0;
}

/// A weld that reached that phase when `start` was so long ago.
Milliseconds reach(const std::string& log, const std::string& phase, const Instant& start) {
    const ScratchFolder folder;
    VirtualClock clock(start);
    Shop shop(log, clock, folder.path());
    Hand hand(shop);
    hand.weld(phase);
    if (!shop.writer().flush()) {
        giveUp(log + " is not on disk");
    }
    return clock.now().boot - start.boot;
}

int stands(const std::string& phase, const std::string& log) {
    const auto machine = BootClock::make();
    if (!machine) {
        giveUp(machine.error().detail);
    }
    const ScratchFolder folder;
    const Milliseconds takes = reach(folder.file("tried.seamlog"), phase, machine->now());
    Instant start = machine->now();
    start.boot -= takes;
    start.utc -= takes;
    reach(log, phase, start);
    return 0;
}

} // namespace
} // namespace seamclock::test

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    const QApplication application(argc, argv);
    const std::string what = argc > 1 ? argv[1] : "";
    const int count = argc > 2 ? std::atoi(argv[2]) : 0;
    if (what == "steps") {
        return seamclock::test::steps(count > 0 ? count : 30);
    }
    if (what == "memory") {
        return seamclock::test::memory(count > 0 ? count : 500);
    }
    if ((what == "soaking" || what == "cooling") && argc == 3) {
        return seamclock::test::stands(what, argv[2]);
    }
    std::fprintf(
        stderr, "window_speed steps [WELDS] | memory [WELDS] | soaking LOG | cooling LOG\n");
    return 2;
}
