// The window program: builds the parts and joins them, nothing else.
#include "app/first/first_walk.h"
#include "app/first/first_window.h"
#include "app/guide/guide_pdf.h"
#include "app/operate/log_notice.h"
#include "app/operate/pictures.h"
#include "app/operate/tablet_look.h"
#include "app/operate/window.h"
#include "app/platform/boot_clock.h"
#include "app/platform/data_folder.h"
#include "app/platform/display.h"
#include "app/platform/paced_clock.h"
#include "app/platform/resource_folder.h"
#include "app/power/stay_awake.h"
#include "app/practice/practice_pictures.h"
#include "app/practice/practice_stand.h"
#include "app/practice/practice_text.h"
#include "app/print/paper_errand.h"
#include "app/read/read_window.h"
#include "app/sound/horn_link.h"
#include "app/text/language.h"
#include "app/text/numbers.h"
#include "app/text/phrase_book.h"
#include "app/text/record_words.h"
#include "app/text/words.h"
#include "core/heat/material_codec.h"
#include "core/log/world.h"
#include "core/practice/broken_off.h"
#include "core/practice/demo_folder.h"
#include "core/practice/practice_run.h"
#include "core/practice/shift_pace.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QIcon>
#include <QScreen>
#include <QStandardPaths>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <cstring>
#include <memory>
#include <optional>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

namespace seamclock {
namespace {

constexpr Milliseconds kPaceLook{1'000};       // of the benches' time, between two looks
constexpr int kPaceTick = 50;                  // ms
constexpr int kDemoPace = 10;                  // times as fast as true time, where practice may be
constexpr Milliseconds kAfterLastRow{600'000}; // the demo shop's time goes on from there
constexpr Milliseconds kIconAfter{500};

/// The horn, as the windows see it: practice's while it stands over the operator's, whose benches
/// are free then. `paced`: the clock that the benches live by, where it isn't the machine's.
class HornSound : public SoundLink, public PracticeSound {
public:
    HornSound(const Clock& clock, const QString& program, const Clock* paced = nullptr)
        : m_link(clock, program), m_paced(paced) {
        m_link.start();
    }
    void show(const Shift& shift) override {
        if (m_paced != nullptr) {
            m_link.show(shift, m_paced->now());
        } else if (!m_practises) {
            m_link.show(shift);
        }
    }
    void show(const Shift& shift, const Instant& now) override {
        m_practises = true;
        m_link.show(shift, now);
    }
    void practiceIsOver() { m_practises = false; }
    bool soundOk() const override { return m_link.soundOk(); }
    void stop() { m_link.stop(); }

private:
    HornLink m_link;
    const Clock* m_paced;
    bool m_practises = false;
};

/// Tells a paced clock how fast it may run, before each step of the pace is over and after each
/// step of a hand; and the horn, what time it is on the benches.
class BenchPace {
public:
    BenchPace(const Floor& floor, PacedClock& clock, int pace, HornSound* sound)
        : m_floor(floor), m_clock(clock), m_pace(pace), m_sound(sound) {
        const auto look = [this] { this->look(); };
        QObject::connect(&floor, &Floor::changed, &m_tick, look);
        QObject::connect(&m_tick, &QTimer::timeout, look);
        m_tick.setTimerType(Qt::PreciseTimer);
        m_tick.start(kPaceTick);
    }

private:
    void look() {
        const Shift shift = m_floor.shift();
        const ShiftPace pace = paceOf(shift, m_clock.now(), kPaceLook * m_pace, m_pace);
        m_clock.run(pace.factor, pace.until);
        if (m_sound != nullptr) {
            m_sound->show(shift);
        }
    }

    const Floor& m_floor;
    PacedClock& m_clock;
    int m_pace;
    HornSound* m_sound;
    QTimer m_tick;
};

/// The machine's power services, as the window sees them.
class TabletPower : public PowerLink {
public:
    void hold(bool weldRuns) override { m_awake.hold(weldRuns); }
    Awake awake() const override {
        const PowerState& state = m_awake.state();
        const bool sleep = state.sleep == LockState::Held;
        const bool screen = state.screen == LockState::Held;
        if (sleep || screen) {
            return sleep && screen ? Awake::Whole
                   : sleep         ? Awake::ScreenMayGoDark
                                   : Awake::TabletMaySleep;
        }
        return state.sleep == LockState::Off ? Awake::Off : Awake::No;
    }
    bool batteryLow() const override { return m_awake.state().batteryLow; }
    int batteryPercent() const override { return m_awake.state().batteryPercent; }

private:
    StayAwake m_awake;
};

int sayAndEnd(const Error& error) {
    std::fprintf(stderr, "seamclock: %s\n", error.detail.c_str());
    return 2;
}

/// The sentence on a screen too, for who started the program without a terminal.
int showAndEnd(QApplication& application, const Error& error, const Preferences& preferences) {
    static_cast<void>(sayAndEnd(error));
    ChoicePage page;
    PageLook look;
    look.theme = &Theme::of(preferences.theme);
    ChoiceView view;
    view.title = QCoreApplication::translate("Main", "Seamclock can't start.");
    view.under = inWords(error.detail);
    view.back.look = SlotView::Look::Hidden;
    view.stop.look = SlotView::Look::Hidden;
    view.step.text = QCoreApplication::translate("Main", "Close");
    view.step.large = true;
    view.step.look = SlotView::Look::Act;
    page.setLook(look);
    page.resize(1280, 800);
    page.show(view);
    page.setWindowTitle(QCoreApplication::translate("Main", "Seamclock can't start"));
    QObject::connect(&page, &Page::slotPressed, &application, &QApplication::quit);
    Hands hands;
    application.installEventFilter(&hands);
    QObject::connect(&hands, &Hands::step, &application, &QApplication::quit);
    // Another program has the log: perhaps it guides a weld just now, whose pedal and whose screen
    // stay where they are.
    const bool another = error.code == ErrorCode::Conflict;
    page.setAttribute(Qt::WA_ShowWithoutActivating, another);
    page.QWidget::show();
    if (another) {
        page.lower();
    }
    application.exec();
    return 2;
}

struct Shop {
    std::vector<ProcedureDocument> procedures;
    std::vector<Material> materials;
    QString notice;      // what it lacks
    Job job;             // that --job names; empty: none
    std::string demo;    // the folder of the demo's job and benches, as it came with the program
    std::string lessons; // their folder
    std::vector<BenchDocument> demoBenches; // which lessons are made on
};

std::vector<BenchDocument> benchesOf(const Job& job) {
    std::vector<BenchDocument> all;
    for (const JobSeam& seam : job.seams) {
        if (auto bench = readBenchFile(seam.benchFile)) {
            all.push_back(std::move(*bench));
        }
    }
    return all;
}

/// `jobFolder`: empty: nobody named a job.
Result<Shop> readShop(const QString& jobFolder) {
    const auto resources = resourceFolder();
    if (!resources) {
        return tl::unexpected<Error>(resources.error());
    }
    Shop shop;
    auto procedures = readProcedureFolder(*resources + "/procedures");
    if (!procedures) {
        return tl::unexpected<Error>(procedures.error());
    }
    shop.procedures = std::move(*procedures);
    // Nothing that is needed for a weld: without them there is no estimate.
    if (auto materials = readMaterialFolder(*resources + "/materials")) {
        shop.materials = std::move(*materials);
    } else {
        shop.notice = QCoreApplication::translate("Main", "No heat estimate: %1.")
                          .arg(inWords(materials.error().detail));
    }
    shop.lessons = *resources + "/lessons";
    shop.demo = *resources + "/demo";
    const auto demo = readFirstJob(shop.demo);
    if (!demo) {
        return tl::unexpected<Error>(demo.error());
    }
    shop.demoBenches = benchesOf(*demo);
    if (!jobFolder.isEmpty()) {
        auto job = readFirstJob(jobFolder.toStdString());
        if (!job) {
            return tl::unexpected<Error>(job.error());
        }
        shop.job = std::move(*job);
    }
    return shop;
}

/// The program's own copies, should a damaged log have lost its.
std::vector<LogDocument> documentsOf(const Shop& shop) {
    std::vector<LogDocument> out;
    for (const ProcedureDocument& one : shop.procedures) {
        out.push_back({one.sha256, "procedure", one.bytes});
    }
    for (const auto& benches : {shop.demoBenches, benchesOf(shop.job)}) {
        for (const BenchDocument& bench : benches) {
            out.push_back({bench.sha256, "bench", bench.bytes});
        }
    }
    return out;
}

Result<void> addBenches(Floor& floor, const Job& job) {
    for (const JobSeam& seam : job.seams) {
        const auto bench = readBenchFile(seam.benchFile);
        if (!bench) {
            return tl::unexpected<Error>(bench.error());
        }
        const auto added = floor.addBench(*bench);
        if (!added && added.error().code != ErrorCode::Conflict) {
            return added;
        }
    }
    return {};
}

Result<std::string> logPath(const QString& named) {
    if (!named.isEmpty()) {
        return named.toStdString();
    }
    auto path = productionLogPath();
    if (path) {
        QDir().mkpath(QFileInfo(fromUtf8(*path)).path());
    }
    return path;
}

/// Where a person's papers lie: $XDG_DOCUMENTS_DIR, the folder that the desktop is set up with, or
/// home.
QString reportFolder() {
    const QString named = qEnvironmentVariable("XDG_DOCUMENTS_DIR");
    if (QDir::isAbsolutePath(named)) {
        return named;
    }
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    return folder.isEmpty() || !QDir(folder).exists() ? QDir::homePath() : folder;
}

/// The user guide, as it lies beside the program.
Result<Guide> guideHere() {
    const auto places = guidePlaces();
    if (!places) {
        return tl::unexpected<Error>(places.error());
    }
    QStringList pictures;
    for (const std::string& folder : places->pictures) {
        pictures << fromUtf8(folder);
    }
    return readGuide(fromUtf8(places->chapters), pictures);
}

struct Arguments {
    QString log;
    QString job;
    QString settings;
    QString pictures;
    QStringList sizes;
    QStringList themes;
    std::optional<Language> language; // in place of the one that was chosen on the screen
    bool onlyOperator = false;
    bool silent = false;
    bool whole = false;
    QString size;
    std::optional<QString> snapshots;
    bool practice = false;
    QString practiceLog;
    QString lesson;
    std::optional<int> pace; // of practice at the operator's own screens
    std::optional<QString> record;
    std::optional<QString> dayReport;
    bool jobReport = false;
    QString out;
    std::optional<QString> printer;
    QString units;
    std::optional<QString> read; // a copy of a log
    bool demoShop = false;       // log, job and papers are the demo shop's

    bool wantsPaper() const { return record || dayReport || jobReport; }
};

/// Another window comes in place of this one; the program does not end with it.
void changeWindow() {
    QApplication::setQuitOnLastWindowClosed(false);
    QCoreApplication::exit();
}

void showWindow(QWidget& window, const Arguments& arguments) {
    const QStringList sides = arguments.size.split('x');
    window.resize(sides.size() == 2 ? QSize(sides[0].toInt(), sides[1].toInt()) : QSize(1280, 800));
    if (arguments.whole) {
        window.showFullScreen();
    } else {
        window.QWidget::show();
    }
    QApplication::setQuitOnLastWindowClosed(true);
    // What has no desktop that finds the icon by the entry takes it from the window. Not before
    // there is something to be seen: the icon theme is a hundred folders to look through.
    QTimer::singleShot(kIconAfter, &window, [] {
        QApplication::setWindowIcon(QIcon::fromTheme("seamclock", QIcon(":/seamclock.png")));
    });
}

/// Over the operator's window until it is left. The log of joints is not among what it is given.
class PracticeOver {
public:
    PracticeOver(
        Window& window, const Floor& floor, const Clock& clock, const Shop& shop,
        const Arguments& arguments, QString reports, HornSound* sound)
        : m_window(window), m_floor(floor), m_clock(clock), m_shop(shop), m_arguments(arguments),
          m_reports(std::move(reports)), m_lesson(arguments.lesson.toStdString()), m_sound(sound) {
        QObject::connect(&window, &Window::practiceAsked, &window, [this] {
            open(std::exchange(m_lesson, std::string()));
        });
    }

private:
    void open(const std::string& lesson) {
        if (m_stand) {
            m_stand->window().raise();
            return;
        }
        const auto log = m_arguments.practiceLog.isEmpty()
                             ? practiceLogPath()
                             : Result<std::string>(m_arguments.practiceLog.toStdString());
        if (!log) {
            m_window.say(inWords(log.error().detail));
            return;
        }
        const std::string& at = m_window.people()->atBench();
        PracticeOrder order{
            m_clock,
            {m_floor.procedures(), practiceBenches(), m_shop.materials},
            m_shop.lessons,
            *log};
        if (!at.empty()) {
            order.by = at;
            order.who = nameFor(m_window.people()->people(), at);
        }
        order.preferences = m_window.preferences();
        order.reports = m_reports;
        order.lesson = lesson;
        order.sound = m_sound;
        order.readGuide = guideHere;
        auto stand = PracticeStand::open(std::move(order));
        if (!stand) {
            m_window.say(inWords(stand.error().detail));
            return;
        }
        m_stand = std::move(*stand);
        QObject::connect(
            &m_stand->window(), &PracticeWindow::left, &m_window, [this] { leave(); },
            Qt::QueuedConnection);
        showWindow(m_stand->window(), m_arguments);
    }

    /// The shop's own first: lessons name the demo's, which may be put right here.
    std::vector<BenchDocument> practiceBenches() const {
        std::vector<BenchDocument> all = m_floor.benches();
        for (const BenchDocument& demo : m_shop.demoBenches) {
            const bool known = std::any_of(all.begin(), all.end(), [&](const BenchDocument& one) {
                return one.bench.id == demo.bench.id;
            });
            if (!known) {
                all.push_back(demo);
            }
        }
        return all;
    }

    void leave() {
        m_stand.reset();
        if (m_sound != nullptr) {
            m_sound->practiceIsOver();
        }
    }

    Window& m_window;
    const Floor& m_floor;
    const Clock& m_clock;
    const Shop& m_shop;
    const Arguments& m_arguments;
    QString m_reports;
    std::string m_lesson; // that the command line named, for the first time
    HornSound* m_sound;   // null: without
    std::unique_ptr<PracticeStand> m_stand;
};

int paint(const Arguments& arguments) {
    speak(arguments.language.value_or(Language::English));
    const auto shop = readShop(arguments.job);
    if (!shop) {
        return sayAndEnd(shop.error());
    }
    PictureOptions options;
    options.folder = arguments.pictures;
    options.demo = arguments.job.isEmpty() ? fromUtf8(shop->demo) : arguments.job;
    options.sizes = arguments.sizes;
    options.themes = arguments.themes;
    options.onlyOperator = arguments.onlyOperator;
    options.materials = shop->materials;
    options.readGuide = guideHere;
    auto written = paintPictures(options, shop->procedures);
    if (written && !options.onlyOperator) {
        const auto more = paintPracticePictures(
            options, {shop->procedures, shop->demoBenches, shop->materials}, shop->lessons);
        const auto first = paintFirstPictures(options, shop->procedures);
        for (const auto* painted : {&more, &first}) {
            if (!*painted) {
                return sayAndEnd(painted->error());
            }
            *written += **painted;
        }
    }
    if (!written) {
        return sayAndEnd(written.error());
    }
    for (const QString& file : *written) {
        std::printf("%s\n", file.toLocal8Bit().constData());
    }
    return 0;
}

/// A record or a report, without a screen. What it is of can be told once only.
Result<PaperErrand> errandOf(const Arguments& arguments, const Shop& shop) {
    PaperErrand errand;
    const auto refuse = [](const std::string& why) { return fail(ErrorCode::Malformed, why); };
    if ((arguments.record ? 1 : 0) + (arguments.dayReport ? 1 : 0) + (arguments.jobReport ? 1 : 0) >
        1) {
        return refuse("--record, --day-report and --job-report: allowed: one of them");
    }
    if (arguments.out.isEmpty() == !arguments.printer) {
        return refuse("a record or a report needs --out FILE.pdf or --printer NAME; allowed: one");
    }
    if (arguments.record) {
        bool isNumber = false;
        errand.number = arguments.record->toLongLong(&isNumber);
        if (!isNumber || errand.number < 1) {
            return refuse(
                "--record \"" + arguments.record->toStdString() +
                "\" is no joint's number; allowed: a whole number from 1 on");
        }
        errand.materials = shop.materials;
    } else if (arguments.dayReport) {
        errand.what = PaperErrand::What::Day;
        errand.day = arguments.dayReport->toStdString();
    } else if (arguments.job.isEmpty()) {
        return refuse("--job-report needs --job FOLDER; allowed: a folder with job-*.json");
    } else {
        errand.what = PaperErrand::What::Job;
        errand.job = shop.job.name;
        for (const JobSeam& seam : shop.job.seams) {
            errand.seams.push_back(seam.label);
        }
    }
    if (!arguments.units.isEmpty() && arguments.units != "metric" &&
        arguments.units != "imperial") {
        return refuse(
            "--units \"" + arguments.units.toStdString() + "\"; allowed: metric, imperial");
    }
    errand.units = arguments.units.isEmpty()     ? readPreferences(arguments.settings).units
                   : arguments.units == "metric" ? UnitSystem::Metric
                                                 : UnitSystem::Imperial;
    errand.paper = paperOfLocale();
    errand.out = arguments.out;
    errand.printer = arguments.printer.value_or(QString());
    return errand;
}

/// What stands on papers: a job's own words, else the shop's name as it was told once.
PaperWork workOf(const Shop& shop, const Preferences& preferences) {
    PaperWork work;
    work.job = fromUtf8(shop.job.name);
    work.order = fromUtf8(shop.job.order);
    work.part = fromUtf8(shop.job.part);
    work.shop = shop.job.shop.empty() ? preferences.shop : fromUtf8(shop.job.shop);
    return work;
}

int putOnPaper(const Arguments& arguments) {
    speak(arguments.language.value_or(readPreferences(arguments.settings).language));
    const auto shop = readShop(arguments.job);
    const auto clock = BootClock::make();
    const auto log = arguments.log.isEmpty() ? productionLogPath()
                                             : Result<std::string>(arguments.log.toStdString());
    for (const Error* error :
         {shop ? nullptr : &shop.error(), clock ? nullptr : &clock.error(),
          log ? nullptr : &log.error()}) {
        if (error != nullptr) {
            return sayAndEnd(*error);
        }
    }
    auto errand = errandOf(arguments, *shop);
    if (!errand) {
        return sayAndEnd(errand.error());
    }
    errand->log = *log;
    errand->work = workOf(*shop, readPreferences(arguments.settings));
    errand->work.demo = isOfDemo(*log);
    const Instant now = clock->now();
    errand->work.printed = dateText(now) + QLatin1Char(' ') + wallClockText(now);
    const auto put = runErrand(*errand);
    if (!put) {
        return sayAndEnd(put.error());
    }
    std::printf("%s\n", put->toLocal8Bit().constData());
    return 0;
}

/// How the window on a log came to its end.
struct Ended {
    enum class Then { Quit, DemoShop, OwnShop, RemoveDemo };
    int status = 0;
    Then then = Then::Quit;
};

/// The pages of a first start on this floor, until they lead on. Absent: the floor has a bench, and
/// its window comes next, with a card if `card`.
std::optional<Ended> firstSteps(
    QApplication& application, const Arguments& arguments, Preferences& preferences, Floor& floor,
    Desk& desk, const Shop& shop, const QString& notice, const QString& told, bool& card) {
    const auto folder = demoShopFolder();
    if (!folder) {
        return Ended{sayAndEnd(folder.error()), Ended::Then::Quit};
    }
    DemoOrder order;
    order.folder = *folder;
    order.source = shop.demo;
    order.procedures = shop.procedures;
    FirstWindow window(FirstParts{
        floor, desk, preferences, arguments.settings, reportFolder(), *folder,
        [order] { return makeDemoShop(order); }, notice});
    std::optional<Ended> ended = Ended{};
    QObject::connect(&window, &FirstWindow::finished, &application, [&](bool wanted) {
        card = wanted;
        ended.reset();
        changeWindow();
    });
    QObject::connect(&window, &FirstWindow::demoAsked, &application, [&] {
        ended = Ended{0, Ended::Then::DemoShop};
        changeWindow();
    });
    QObject::connect(&window, &FirstWindow::quitAsked, &application, &QApplication::quit);
    showWindow(window, arguments);
    if (!told.isEmpty()) {
        window.say(told, true);
    }
    const int status = QApplication::exec();
    preferences = window.preferences();
    if (ended) {
        ended->status = status;
    }
    return ended;
}

/// The window on a log of that world. `paced`: the clock that the benches live by, in practice and
/// in the demo shop. `told`: what happened before it.
template <class World>
Ended weldOn(
    QApplication& application, const Arguments& arguments, const Clock& machine, PacedClock* paced,
    QString told) {
    Preferences preferences = readPreferences(arguments.settings);
    preferences.language = spoken();
    const Clock& clock = paced != nullptr ? *paced : machine;
    const auto failed = [&](const Error& error) {
        return Ended{showAndEnd(application, error, preferences), Ended::Then::Quit};
    };
    const auto shop = readShop(arguments.job);
    if (!shop) {
        return failed(shop.error());
    }
    const auto path = logPath(arguments.log);
    if (!path) {
        return failed(path.error());
    }
    KeeperOptions copies;
    if (!arguments.demoShop) { // which is nobody else's to read
        copies.snapshotFolder = preferences.snapshotFolder.toStdString();
    }
    copies.checkAbove = kCheckedAtStart;
    LogKeeper keeper(*path, clock, std::move(copies));
    LogWriterOptions options;
    options.quickCheckUpTo = kCheckedAtStart; // years of joints must not hold up a start
    options.changed = [&keeper] { keeper.look(); };
    auto opened = openLog<World>(*path, clock, documentsOf(*shop), options);
    if (!opened) {
        return failed(opened.error());
    }
    LogWriter<World>& writer = opened->writer;
    auto session = Session<World>::start(writer, clock);
    if (!session) {
        return failed(session.error());
    }
    if (opened->aside) {
        session->takeUp(*opened->aside);
    }
    QString brokenOff;
    if constexpr (std::is_same_v<World, Practice>) {
        const auto found = endBrokenOff(*session); // before its bench is looked for
        if (!found) {
            return failed(found.error());
        }
        brokenOff = brokenOffText(*found);
    }
    const std::string by = shop->job.operatorId.empty() ? "station" : shop->job.operatorId;
    Floor floor(*session, writer, clock, shop->procedures, by);
    if (paced != nullptr) {
        floor.practise();
    }
    floor.setMaterials(shop->materials);
    if (const auto added = addBenches(floor, shop->job); !added) {
        return failed(added.error());
    }
    if (const auto taken = floor.takeUpShelf(); !taken) {
        return failed(taken.error());
    }
    if (const auto taken = floor.takeUpFound(); !taken) {
        return failed(taken.error());
    }
    auto desk = Desk::open(writer, clock);
    if (!desk) {
        return failed(desk.error());
    }
    QStringList notices{brokenOff};
    notices << (opened->aside ? logNotice(*opened->aside) : shop->notice);
    if (arguments.demoShop) {
        notices.push_front(QCoreApplication::translate(
            "Main", "Demo shop: all invented, and no joint here counts. PINs are shown."));
    } else if (paced != nullptr) {
        notices.push_front(QCoreApplication::translate(
                               "Main", "Practice, up to %1 times as fast. No joint here counts.")
                               .arg(*arguments.pace));
    }
    const QString reports =
        arguments.demoShop ? fromUtf8(demoPapersOf(QFileInfo(fromUtf8(*path)).path().toStdString()))
                           : reportFolder();
    keeper.begin();
    Ended ended;
    std::unique_ptr<HornSound> sound;
    std::unique_ptr<BenchPace> pace;
    TabletPower power;
    bool first = paced == nullptr && needsFirstSteps(floor, arguments.settings);
    for (bool again = true; again;) {
        again = false;
        bool card = false;
        if (first) {
            const QString stands = std::exchange(notices, {}).join(QLatin1Char(' ')).simplified();
            if (const auto end = firstSteps(
                    application, arguments, preferences, floor, **desk, *shop, stands,
                    std::exchange(told, {}), card)) {
                ended = *end;
                break;
            }
        }
        if (!arguments.silent && !sound) {
            sound = std::make_unique<HornSound>(
                machine, QCoreApplication::applicationDirPath() + "/seamclock-horn", paced);
        }
        WindowParts parts{floor, writer, **desk, shop->job.seams, preferences, arguments.settings};
        parts.sound = sound.get();
        parts.keeper = &keeper;
        parts.notice = std::exchange(notices, {}).join(QLatin1Char(' ')).simplified();
        parts.reports = reports;
        parts.power = &power;
        parts.readGuide = guideHere;
        parts.photos = QStandardPaths::standardLocations(QStandardPaths::PicturesLocation);
        parts.work = workOf(*shop, preferences);
        parts.work.demo = arguments.demoShop;
        if (arguments.demoShop) {
            for (const DemoPerson& one : demoPeople()) {
                parts.demoPins.emplace(one.id, fromUtf8(one.pin));
            }
        }
        if (paced != nullptr && !pace) {
            pace = std::make_unique<BenchPace>(floor, *paced, *arguments.pace, sound.get());
        }
        Window window(std::move(parts));
        QObject::connect(&window, &Window::quitAsked, &application, &QApplication::quit);
        QObject::connect(&window, &Window::firstStepsAsked, &application, [&] {
            first = again = true;
            changeWindow();
        });
        QObject::connect(&window, &Window::demoLeft, &application, [&](bool removed) {
            ended.then = removed ? Ended::Then::RemoveDemo : Ended::Then::OwnShop;
            changeWindow();
        });
        showWindow(window, arguments);
        PracticeOver practice(window, floor, machine, *shop, arguments, reports, sound.get());
        if (arguments.practice) {
            window.openPractice();
        }
        if (const QString now = std::exchange(told, {}); !now.isEmpty()) {
            window.sayCalmly(now);
        }
        if (card) {
            window.openEntry();
        }
        ended.status = QApplication::exec();
        preferences = window.preferences();
    }
    desk->reset(); // what it has begun is written before the program's own last row
    if (sound) {
        sound->stop();
    }
    if (const auto stopped = session->stop(); !stopped) {
        return Ended{sayAndEnd(stopped.error()), Ended::Then::Quit};
    }
    return ended;
}

/// In its own time, which goes on from the last row of its log.
Ended weldInDemo(QApplication& application, Arguments arguments, const Clock& machine) {
    const auto failed = [&](const Error& error) {
        return Ended{
            showAndEnd(application, error, readPreferences(arguments.settings)), Ended::Then::Quit};
    };
    const auto folder = demoShopFolder();
    if (!folder) {
        return failed(folder.error());
    }
    if (lookAtDemo(*folder) != DemoFolder::Whole) {
        const auto shop = readShop({});
        const auto made = shop ? makeDemoShop({*folder, shop->demo, shop->procedures})
                               : Result<void>(tl::unexpected<Error>(shop.error()));
        if (!made) {
            return failed(made.error());
        }
    }
    const auto last = lastOf(demoLogOf(*folder));
    if (!last) {
        return failed(last.error());
    }
    arguments.demoShop = true;
    arguments.log = fromUtf8(demoLogOf(*folder));
    arguments.practiceLog = fromUtf8(demoPracticeLogOf(*folder));
    arguments.job = fromUtf8(*folder);
    arguments.pace = kDemoPace;
    PacedClock paced(machine, *last + kAfterLastRow);
    return weldOn<Practice>(application, arguments, machine, &paced, {});
}

/// Removes it and says what came of it.
QString demoRemoved() {
    const auto folder = demoShopFolder();
    const auto left = folder ? removeDemoShop(*folder) : tl::unexpected<Error>(folder.error());
    if (!left) {
        return inWords(left.error().detail);
    }
    return *left == 0 ? QCoreApplication::translate("Main", "The demo shop is removed.")
                      : QCoreApplication::translate(
                            "FirstWindow",
                            "The demo shop is removed. What is not its own stays: %1 in %2.")
                            .arg(*left)
                            .arg(fromUtf8(*folder));
}

int weld(QApplication& application, const Arguments& arguments) {
    Preferences preferences = readPreferences(arguments.settings);
    if (arguments.snapshots) {
        preferences.snapshotFolder =
            arguments.snapshots->isEmpty() ? QString() : QDir(*arguments.snapshots).absolutePath();
        writePreferences(preferences, arguments.settings);
    }
    speak(arguments.language.value_or(preferences.language));
    const auto clock = BootClock::make();
    if (!clock) {
        return showAndEnd(application, clock.error(), preferences);
    }
    if (arguments.pace) {
        PacedClock paced(*clock);
        Arguments practice = arguments;
        if (const auto resources = resourceFolder(); resources && practice.job.isEmpty()) {
            practice.job = fromUtf8(*resources) + "/demo"; // benches to practise at
        }
        return weldOn<Practice>(application, practice, *clock, &paced, {}).status;
    }
    // From one shop into the other, each with a log of its own, until somebody ends the program.
    Ended ended;
    ended.then = arguments.demoShop ? Ended::Then::DemoShop : Ended::Then::OwnShop;
    while (ended.then != Ended::Then::Quit) {
        if (ended.then == Ended::Then::DemoShop) {
            ended = weldInDemo(application, arguments, *clock);
            continue;
        }
        const QString told = ended.then == Ended::Then::RemoveDemo ? demoRemoved() : QString();
        ended = weldOn<Production>(application, arguments, *clock, nullptr, told);
    }
    return ended.status;
}

/// The day log over a copy, read only.
int readElsewhere(QApplication& application, const Arguments& arguments) {
    const Preferences preferences = readPreferences(arguments.settings);
    speak(arguments.language.value_or(preferences.language));
    const auto failed = [&](const Error& error) {
        return showAndEnd(application, error, preferences);
    };
    const auto seen = lookAtCopy(arguments.read->toStdString());
    if (!seen) {
        return failed(seen.error());
    }
    const auto clock = BootClock::make();
    if (!clock) {
        return failed(clock.error());
    }
    const auto shop = readShop(arguments.job);
    if (!shop) {
        return failed(shop.error());
    }
    ReadParts parts;
    parts.seen = *seen;
    parts.look = lookOf(preferences, QGuiApplication::primaryScreen());
    parts.units = preferences.units;
    parts.materials = shop->materials;
    parts.folder = reportFolder();
    parts.work = workOf(*shop, preferences);
    parts.work.demo = isOfDemo(arguments.read->toStdString());
    parts.readGuide = guideHere;
    ReadWindow window(std::move(parts), *clock);
    QObject::connect(&window, &ReadWindow::quitAsked, &application, &QApplication::quit);
    showWindow(window, arguments);
    return QApplication::exec();
}

/// The guide on paper, and that is all.
int putGuide(const QString& file) {
    const auto guide = guideHere();
    const auto written = guide ? writeGuidePdf(*guide, SEAMCLOCK_VERSION, paperOfLocale(), file)
                               : Result<void>(tl::unexpected<Error>(guide.error()));
    if (!written) {
        return sayAndEnd(written.error());
    }
    std::printf("%s\n", file.toLocal8Bit().constData());
    return 0;
}

int run(int argc, char** argv) {
    bool screenless = false;
    for (int i = 1; i < argc; ++i) {
        for (const char* option :
             {"--pictures", "--record", "--day-report", "--job-report", "--guide"}) {
            screenless = screenless || std::strncmp(argv[i], option, std::strlen(option)) == 0;
        }
    }
    if (screenless) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    } else if (!hasDisplay()) {
        return sayAndEnd(
            {ErrorCode::Missing, "there is no display: neither DISPLAY nor WAYLAND_DISPLAY is set; "
                                 "seamclock-cli works without one"});
    }
    QApplication application(argc, argv);
    QApplication::setApplicationName("seamclock");
    QApplication::setApplicationVersion(SEAMCLOCK_VERSION);
    // The desktop finds the entry, and with it the icon, by this name.
    QGuiApplication::setDesktopFileName("org.example.Seamclock");
    QCommandLineParser parser;
    parser.setApplicationDescription(
        "Guides butt welds of thermoplastic sheets and logs every joint.");
    parser.addHelpOption();
    parser.addVersionOption();
    const QCommandLineOption log("log", "The joint log; made if it isn't there.", "FILE");
    const QCommandLineOption job("job", "A folder with job-*.json and its benches.", "FOLDER");
    const QCommandLineOption settings("settings", "The settings' file.", "FILE");
    const QCommandLineOption size("size", "The window's size, as 1280x800.", "SIZE");
    const QCommandLineOption whole("full-screen", "Fill the screen.");
    const QCommandLineOption silent("no-sound", "Start no horn.");
    const QCommandLineOption snapshots(
        "snapshot-folder",
        "Where a copy of the log is put after each closing, for others to read; "
        "remembered, and none if the name is empty.",
        "FOLDER");
    const QCommandLineOption folder(
        "pictures", "Paint every screen into a folder, and end.", "FOLDER");
    const QCommandLineOption themes("theme", "With --pictures: dark, light or contrast.", "THEME");
    const QCommandLineOption sizes(
        "picture-size", "With --pictures: 1280x800, 1920x1200 or 800x1280.", "SIZE");
    const QCommandLineOption operators("only-operator", "With --pictures: one good weld alone.");
    const QCommandLineOption practice("practice", "Open the bench to practise at.");
    const QCommandLineOption practiceLog(
        "practice-log", "The log of practice; made if it isn't there.", "FILE");
    const QCommandLineOption pace(
        "pace",
        "Practise at the operator's screens: on the practice log that --log names, time runs N "
        "times as fast in alignment, soak and cooling.",
        "N");
    const QCommandLineOption language("language", "Of the screens: en, de or es.", "CODE");
    const QCommandLineOption lesson("lesson", "With --practice: the lesson to begin with.", "ID");
    const QCommandLineOption read(
        "read", "Read a copy of a log (a snapshot, a backup), on any computer.", "FILE");
    const QCommandLineOption record(
        "record", "The record of the joint with this number as PDF, and end.", "N");
    const QCommandLineOption dayReport(
        "day-report", "The report of that local day as PDF, and end.", "DATE");
    const QCommandLineOption jobReport(
        "job-report", "The report of the job that --job names as PDF, and end.");
    const QCommandLineOption guide("guide", "The user guide as PDF, and end.", "FILE");
    const QCommandLineOption out("out", "With these three: the PDF to write.", "FILE");
    const QCommandLineOption printer(
        "printer", "With these three: the printer; an empty name is the desktop's own.", "NAME");
    const QCommandLineOption units("units", "With these three: metric or imperial.", "UNITS");
    const QCommandLineOption home(
        "home", "The one folder in which settings, logs and demo shop lie; made if it isn't there.",
        "FOLDER");
    const QCommandLineOption demoShop(
        "demo-shop", "Look round in the demo shop; made if it isn't there.");
    parser.addOptions({log,    job,      settings, size,      whole,     silent,      snapshots,
                       folder, themes,   sizes,    operators, practice,  practiceLog, lesson,
                       pace,   language, record,   dayReport, jobReport, out,         printer,
                       units,  read,     home,     demoShop,  guide});
    parser.process(application);
    Arguments arguments;
    if (parser.isSet(home)) {
        const QString chosen = QDir(parser.value(home)).absolutePath();
        if (parser.value(home).isEmpty() || !QDir().mkpath(chosen)) {
            return sayAndEnd(
                {ErrorCode::NotWritten,
                 "--home \"" + parser.value(home).toStdString() +
                     "\" can't be made; allowed: a folder that can be written"});
        }
        qputenv(kHomeVariable, QFile::encodeName(chosen));
    }
    arguments.demoShop = parser.isSet(demoShop);
    arguments.log = parser.value(log);
    arguments.job = parser.value(job);
    arguments.settings = parser.value(settings);
    if (const auto usual = settingsPath(); usual && arguments.settings.isEmpty()) {
        arguments.settings = fromUtf8(*usual);
    }
    arguments.size = parser.value(size);
    arguments.whole = parser.isSet(whole);
    arguments.silent = parser.isSet(silent);
    if (parser.isSet(snapshots)) {
        arguments.snapshots = parser.value(snapshots);
    }
    arguments.practice = parser.isSet(practice) || parser.isSet(lesson);
    arguments.practiceLog = parser.value(practiceLog);
    arguments.lesson = parser.value(lesson);
    arguments.pictures = parser.value(folder);
    arguments.themes = parser.values(themes);
    arguments.sizes = parser.values(sizes);
    arguments.onlyOperator = parser.isSet(operators);
    const auto ifSet = [&parser](const QCommandLineOption& option) {
        return parser.isSet(option) ? std::optional(parser.value(option)) : std::nullopt;
    };
    arguments.read = ifSet(read);
    arguments.record = ifSet(record);
    arguments.dayReport = ifSet(dayReport);
    arguments.jobReport = parser.isSet(jobReport);
    arguments.out = parser.value(out);
    arguments.printer = ifSet(printer);
    arguments.units = parser.value(units);
    if (parser.isSet(language)) {
        arguments.language = languageOf(parser.value(language));
        if (!arguments.language) {
            return sayAndEnd(
                {ErrorCode::OutOfRange, "--language \"" + parser.value(language).toStdString() +
                                            "\"; allowed: en, de or es"});
        }
    }
    if (arguments.demoShop && (parser.isSet(log) || parser.isSet(job) || parser.isSet(pace))) {
        return sayAndEnd(
            {ErrorCode::Malformed, "--demo-shop has a log, a job and a pace of its own; allowed: "
                                   "without --log, --job and --pace"});
    }
    if (parser.isSet(pace)) {
        bool isNumber = false;
        const int times = parser.value(pace).toInt(&isNumber);
        const int most = practicePaces().back();
        if (!isNumber || times < 1 || times > most) {
            return sayAndEnd(
                {ErrorCode::OutOfRange, "--pace \"" + parser.value(pace).toStdString() +
                                            "\"; allowed: a whole number from 1 to " +
                                            std::to_string(most)});
        }
        if (!parser.isSet(log)) {
            return sayAndEnd(
                {ErrorCode::Missing,
                 "--pace needs --log FILE; allowed: a practice log, made if it isn't there"});
        }
        arguments.pace = times;
    }
    if (parser.isSet(guide)) {
        return putGuide(parser.value(guide));
    }
    if (arguments.read && arguments.wantsPaper()) {
        return sayAndEnd(
            {ErrorCode::Malformed, "--read shows a copy; allowed with a record or a report: --log "
                                   "FILE, which may be a copy"});
    }
    if (!arguments.wantsPaper() &&
        (parser.isSet(out) || parser.isSet(printer) || parser.isSet(units))) {
        return sayAndEnd(
            {ErrorCode::Malformed, "--out, --printer and --units go with a paper; allowed: with "
                                   "--record, --day-report or --job-report"});
    }
    if (arguments.wantsPaper()) {
        return putOnPaper(arguments);
    }
    if (arguments.read) {
        return readElsewhere(application, arguments);
    }
    return parser.isSet(folder) ? paint(arguments) : weld(application, arguments);
}

} // namespace
} // namespace seamclock

int main(int argc, char** argv) {
    const int status = seamclock::run(argc, argv);
    if (seamclock::StayAwake::isProcessHeld()) {
        std::fflush(nullptr);
        std::_Exit(status);
    }
    return status;
}
