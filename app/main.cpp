// The window program: builds the parts and joins them, nothing else.
#include "app/guide/guide_pdf.h"
#include "app/operate/log_notice.h"
#include "app/operate/pictures.h"
#include "app/operate/window.h"
#include "app/platform/boot_clock.h"
#include "app/platform/data_folder.h"
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
#include "app/text/record_words.h"
#include "app/text/words.h"
#include "core/heat/material_codec.h"
#include "core/log/world.h"
#include "core/practice/broken_off.h"
#include "core/practice/practice_run.h"
#include "core/practice/shift_pace.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFileInfo>
#include <QScreen>
#include <QStandardPaths>
#include <QTimer>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <optional>
#include <type_traits>
#include <utility>

namespace seamclock {
namespace {

constexpr Milliseconds kPaceLook{1'000}; // of the benches' time, between two looks
constexpr int kPaceTick = 50;            // ms

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
    view.under = fromUtf8(error.detail);
    view.back.look = SlotView::Look::Hidden;
    view.stop.look = SlotView::Look::Hidden;
    view.step.text = QCoreApplication::translate("Main", "Close");
    view.step.large = true;
    view.step.look = SlotView::Look::Act;
    page.setLook(look);
    page.resize(1280, 800);
    page.show(view);
    page.setWindowTitle("Seamclock can't start");
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
    QString notice; // what it lacks
    Job job;
    std::string demo;
    std::string lessons; // their folder
};

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
                          .arg(fromUtf8(materials.error().detail));
    }
    shop.lessons = *resources + "/lessons";
    shop.demo = jobFolder.isEmpty() ? *resources + "/demo" : jobFolder.toStdString();
    auto job = readFirstJob(shop.demo);
    if (!job) {
        return tl::unexpected<Error>(job.error());
    }
    shop.job = std::move(*job);
    return shop;
}

/// The program's own copies, should a damaged log have lost its.
std::vector<LogDocument> documentsOf(const Shop& shop) {
    std::vector<LogDocument> out;
    for (const ProcedureDocument& one : shop.procedures) {
        out.push_back({one.sha256, "procedure", one.bytes});
    }
    for (const JobSeam& seam : shop.job.seams) {
        if (const auto bench = readBenchFile(seam.benchFile)) {
            out.push_back({bench->sha256, "bench", bench->bytes});
        }
    }
    return out;
}

std::vector<BenchDocument> benchesOf(const Job& job) {
    std::vector<BenchDocument> all;
    for (const JobSeam& seam : job.seams) {
        if (auto bench = readBenchFile(seam.benchFile)) {
            all.push_back(std::move(*bench));
        }
    }
    return all;
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

    bool wantsPaper() const { return record || dayReport || jobReport; }
};

void showWindow(QWidget& window, const Arguments& arguments) {
    const QStringList sides = arguments.size.split('x');
    window.resize(sides.size() == 2 ? QSize(sides[0].toInt(), sides[1].toInt()) : QSize(1280, 800));
    if (arguments.whole) {
        window.showFullScreen();
    } else {
        window.QWidget::show();
    }
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
            m_window.say(fromUtf8(log.error().detail));
            return;
        }
        const std::string& at = m_window.people()->atBench();
        PracticeOrder order{
            m_clock,
            {m_floor.procedures(), m_floor.benches(), m_shop.materials},
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
        auto stand = PracticeStand::open(std::move(order));
        if (!stand) {
            m_window.say(fromUtf8(stand.error().detail));
            return;
        }
        m_stand = std::move(*stand);
        QObject::connect(
            &m_stand->window(), &PracticeWindow::left, &m_window, [this] { leave(); },
            Qt::QueuedConnection);
        showWindow(m_stand->window(), m_arguments);
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
    options.demo = fromUtf8(shop->demo);
    options.sizes = arguments.sizes;
    options.themes = arguments.themes;
    options.onlyOperator = arguments.onlyOperator;
    options.materials = shop->materials;
    options.readGuide = guideHere;
    auto written = paintPictures(options, shop->procedures);
    if (written && !options.onlyOperator) {
        const auto more = paintPracticePictures(
            options, {shop->procedures, benchesOf(shop->job), shop->materials}, shop->lessons);
        if (!more) {
            return sayAndEnd(more.error());
        }
        *written += *more;
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
    } else {
        errand.what = PaperErrand::What::Job;
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
    if (!arguments.job.isEmpty() || arguments.jobReport) { // the demo's is nobody else's
        errand->work.order = fromUtf8(shop->job.order);
        errand->work.part = fromUtf8(shop->job.part);
        errand->work.shop = fromUtf8(shop->job.shop);
    }
    const Instant now = clock->now();
    errand->work.printed = instantText(now).left(16); // to the minute
    const auto put = runErrand(*errand);
    if (!put) {
        return sayAndEnd(put.error());
    }
    std::printf("%s\n", put->toLocal8Bit().constData());
    return 0;
}

PageLook lookOf(const Preferences& preferences, const QScreen* screen) {
    PageLook look;
    look.theme = &Theme::of(preferences.theme);
    const double dpi = preferences.dpi > 0 ? preferences.dpi
                       : screen != nullptr ? screen->physicalDotsPerInch()
                                           : kUnitsPerInch;
    look.metrics = Metrics::forDpi(dpi);
    look.metrics.text = preferences.text;
    look.mirrored = preferences.mirrored;
    return look;
}

/// The window on a log of that world. `paced`: the clock that the benches live by, in practice.
template <class World>
int weldOn(
    QApplication& application, const Arguments& arguments, const Preferences& preferences,
    const Clock& machine, PacedClock* paced) {
    const Clock& clock = paced != nullptr ? *paced : machine;
    const auto failed = [&](const Error& error) {
        return showAndEnd(application, error, preferences);
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
    copies.snapshotFolder = preferences.snapshotFolder.toStdString();
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
    QString ended;
    if constexpr (std::is_same_v<World, Practice>) {
        const auto brokenOff = endBrokenOff(*session); // before its bench is looked for
        if (!brokenOff) {
            return failed(brokenOff.error());
        }
        ended = brokenOffText(*brokenOff);
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
    std::unique_ptr<HornSound> sound;
    if (!arguments.silent) {
        sound = std::make_unique<HornSound>(
            machine, QCoreApplication::applicationDirPath() + "/seamclock-horn", paced);
    }
    TabletPower power;
    WindowParts parts{
        floor,           writer,      **desk,
        shop->job.seams, preferences, arguments.settings,
        sound.get(),     &keeper,     opened->aside ? logNotice(*opened->aside) : shop->notice,
        reportFolder(),  &power};
    parts.readGuide = guideHere;
    parts.photos = QStandardPaths::standardLocations(QStandardPaths::PicturesLocation);
    if (!arguments.job.isEmpty()) { // the demo's is nobody else's
        parts.work.order = fromUtf8(shop->job.order);
        parts.work.part = fromUtf8(shop->job.part);
        parts.work.shop = fromUtf8(shop->job.shop);
    }
    std::unique_ptr<BenchPace> pace;
    if (paced != nullptr) {
        const QString practice =
            QCoreApplication::translate(
                "Main", "Practice, up to %1 times as fast. No joint here counts.")
                .arg(*arguments.pace);
        parts.notice =
            QStringList{practice, ended, parts.notice}.join(QLatin1Char(' ')).simplified();
        pace = std::make_unique<BenchPace>(floor, *paced, *arguments.pace, sound.get());
    }
    keeper.begin();
    int status = 0;
    {
        Window window(std::move(parts));
        QObject::connect(&window, &Window::quitAsked, &application, &QApplication::quit);
        showWindow(window, arguments);
        PracticeOver practice(
            window, floor, machine, *shop, arguments, reportFolder(), sound.get());
        if (arguments.practice) {
            window.openPractice();
        }
        status = QApplication::exec();
    }
    desk->reset(); // what it has begun is written before the program's own last row
    if (sound) {
        sound->stop();
    }
    if (const auto stopped = session->stop(); !stopped) {
        return sayAndEnd(stopped.error());
    }
    return status;
}

int weld(QApplication& application, const Arguments& arguments) {
    Preferences preferences = readPreferences(arguments.settings);
    if (arguments.snapshots) {
        preferences.snapshotFolder =
            arguments.snapshots->isEmpty() ? QString() : QDir(*arguments.snapshots).absolutePath();
        writePreferences(preferences, arguments.settings);
    }
    preferences.language = arguments.language.value_or(preferences.language);
    speak(preferences.language);
    const auto failed = [&](const Error& error) {
        return showAndEnd(application, error, preferences);
    };
    const auto clock = BootClock::make();
    if (!clock) {
        return failed(clock.error());
    }
    if (arguments.pace) {
        PacedClock paced(*clock);
        return weldOn<Practice>(application, arguments, preferences, *clock, &paced);
    }
    return weldOn<Production>(application, arguments, preferences, *clock, nullptr);
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
    if (!arguments.job.isEmpty()) {
        parts.work = {
            fromUtf8(shop->job.shop), fromUtf8(shop->job.order), fromUtf8(shop->job.part), {}};
    }
    ReadWindow window(std::move(parts), clock->now());
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

/// Without a display Qt would abort; a sentence is better.
bool hasDisplay() {
    const auto set = [](const char* name) {
        const char* value = std::getenv(name);
        return value != nullptr && *value != '\0';
    };
    return set("DISPLAY") || set("WAYLAND_DISPLAY") || set("QT_QPA_PLATFORM");
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
    parser.addOptions({log,         job,    settings, size,     whole,     silent,
                       snapshots,   folder, themes,   sizes,    operators, practice,
                       practiceLog, lesson, pace,     language, record,    dayReport,
                       jobReport,   out,    printer,  units,    read,      guide});
    parser.process(application);
    Arguments arguments;
    arguments.log = parser.value(log);
    arguments.job = parser.value(job);
    arguments.settings = parser.value(settings);
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
