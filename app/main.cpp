// The window program: builds the parts and joins them, nothing else.
#include "app/operate/log_notice.h"
#include "app/operate/pictures.h"
#include "app/operate/window.h"
#include "app/platform/boot_clock.h"
#include "app/platform/data_folder.h"
#include "app/platform/resource_folder.h"
#include "app/power/stay_awake.h"
#include "app/sound/horn_link.h"
#include "app/text/words.h"
#include "core/heat/material_codec.h"
#include "core/log/world.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFileInfo>
#include <QStandardPaths>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <optional>

namespace seamclock {
namespace {

/// The horn, as the window sees it.
class HornSound : public SoundLink {
public:
    HornSound(const Clock& clock, const QString& program) : m_link(clock, program) {
        m_link.start();
    }
    void show(const Shift& shift) override { m_link.show(shift); }
    bool soundOk() const override { return m_link.soundOk(); }
    void stop() { m_link.stop(); }

private:
    HornLink m_link;
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
    page.setWindowTitle("Seamclock");
    QObject::connect(&page, &Page::slotPressed, &application, &QApplication::quit);
    Hands hands;
    application.installEventFilter(&hands);
    QObject::connect(&hands, &Hands::step, &application, &QApplication::quit);
    page.QWidget::show();
    application.exec();
    return 2;
}

struct Shop {
    std::vector<ProcedureDocument> procedures;
    std::vector<Material> materials;
    QString notice; // what it lacks
    Job job;
    std::string demo;
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

struct Arguments {
    QString log;
    QString job;
    QString settings;
    QString pictures;
    QStringList sizes;
    QStringList themes;
    bool onlyOperator = false;
    bool silent = false;
    bool whole = false;
    QString size;
    std::optional<QString> snapshots;
};

int paint(const Arguments& arguments) {
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
    const auto written = paintPictures(options, shop->procedures);
    if (!written) {
        return sayAndEnd(written.error());
    }
    for (const QString& file : *written) {
        std::printf("%s\n", file.toLocal8Bit().constData());
    }
    return 0;
}

int weld(QApplication& application, const Arguments& arguments) {
    Preferences preferences = readPreferences(arguments.settings);
    if (arguments.snapshots) {
        preferences.snapshotFolder =
            arguments.snapshots->isEmpty() ? QString() : QDir(*arguments.snapshots).absolutePath();
        writePreferences(preferences, arguments.settings);
    }
    const auto failed = [&](const Error& error) {
        return showAndEnd(application, error, preferences);
    };
    const auto clock = BootClock::make();
    if (!clock) {
        return failed(clock.error());
    }
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
    LogKeeper keeper(*path, *clock, std::move(copies));
    LogWriterOptions options;
    options.changed = [&keeper] { keeper.look(); };
    auto opened = openLog<Production>(*path, *clock, documentsOf(*shop), options);
    if (!opened) {
        return failed(opened.error());
    }
    LogWriter<Production>& writer = opened->writer;
    auto session = Session<Production>::start(writer, *clock);
    if (!session) {
        return failed(session.error());
    }
    if (opened->aside) {
        session->takeUp(*opened->aside);
    }
    const std::string by = shop->job.operatorId.empty() ? "station" : shop->job.operatorId;
    Floor floor(*session, writer, *clock, shop->procedures, by);
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
    auto desk = Desk::open(writer, *clock);
    if (!desk) {
        return failed(desk.error());
    }
    std::unique_ptr<HornSound> sound;
    if (!arguments.silent) {
        sound = std::make_unique<HornSound>(
            *clock, QCoreApplication::applicationDirPath() + "/seamclock-horn");
    }
    TabletPower power;
    WindowParts parts{
        floor,           writer,      **desk,
        shop->job.seams, preferences, arguments.settings,
        sound.get(),     &keeper,     opened->aside ? logNotice(*opened->aside) : shop->notice,
        reportFolder(),  &power};
    keeper.begin();
    int status = 0;
    {
        Window window(std::move(parts));
        QObject::connect(&window, &Window::quitAsked, &application, &QApplication::quit);
        const QStringList sides = arguments.size.split('x');
        window.resize(
            sides.size() == 2 ? QSize(sides[0].toInt(), sides[1].toInt()) : QSize(1280, 800));
        if (arguments.whole) {
            window.showFullScreen();
        } else {
            window.QWidget::show();
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

/// Without a display Qt would abort; a sentence is better.
bool hasDisplay() {
    const auto set = [](const char* name) {
        const char* value = std::getenv(name);
        return value != nullptr && *value != '\0';
    };
    return set("DISPLAY") || set("WAYLAND_DISPLAY") || set("QT_QPA_PLATFORM");
}

int run(int argc, char** argv) {
    bool pictures = false;
    for (int i = 1; i < argc; ++i) {
        pictures = pictures || std::strncmp(argv[i], "--pictures", 10) == 0;
    }
    if (pictures) {
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
    parser.addOptions(
        {log, job, settings, size, whole, silent, snapshots, folder, themes, sizes, operators});
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
    arguments.pictures = parser.value(folder);
    arguments.themes = parser.values(themes);
    arguments.sizes = parser.values(sizes);
    arguments.onlyOperator = parser.isSet(operators);
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
