#include "tests/app/operate/e2e/rig.h"

#include "app/operate/weld_page.h"
#include "app/parts/metrics.h"

#include <QLocale>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <poll.h>
#include <signal.h>
#include <unistd.h>

namespace seamclock::test {

namespace {

int frameOfPractice = 0; // px on each side of the screen

constexpr int kLook = 10; // ms between two looks
// A finger needs longer than this between letting go of a key and pressing it again [ms]; the
// program takes what comes within 50 ms of a release for the repetition of a held key.
constexpr double kBetweenPresses = 100;
constexpr double kHandReturns = 340;
constexpr int kShade = 40; // of 255: less is the same shade

std::string variable(const char* name) {
    const char* const value = std::getenv(name);
    return value == nullptr ? std::string() : std::string(value);
}

/// The display's number, once the server has said it: then it takes programs.
std::string readNumber(int from) {
    std::string text;
    const double most = bootMs() + 20'000;
    while (bootMs() < most && text.find('\n') == std::string::npos) {
        pollfd ready{from, POLLIN, 0};
        char sign = 0;
        if (::poll(&ready, 1, 100) > 0 && ::read(from, &sign, 1) == 1) {
            text += sign;
        }
    }
    return text.substr(0, text.find('\n'));
}

std::uint32_t word(const std::string& bytes, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        value = value << 8U | static_cast<unsigned char>(bytes[at * 4 + i]);
    }
    return value;
}

} // namespace

bool waitFor(const std::function<bool()>& done, Milliseconds most) {
    const double end = bootMs() + static_cast<double>(most.count());
    while (!done()) {
        if (bootMs() > end) {
            return done();
        }
        ::poll(nullptr, 0, kLook);
    }
    return true;
}

// Less motion: the changeover field then moves once a second, with its number. No cursor, which
// would be painted into the frame buffer. A held key repeats 40 times a second.
Rig::Rig()
    : m_resources(std::string(SEAMCLOCK_SOURCE_DIR) + "/tests/data/e2e"),
      m_buses("unix:path=" + m_folder.file("no-bus")) {
    QLocale::setDefault(QLocale::c()); // as the program's, below
    const std::vector<std::string> command{
        "Xvfb",        "-displayfd", "1",      "-screen",      "0",        "1280x800x24",
        "-nocursor",   "-nolisten",  "tcp",    "-noreset",     "-ardelay", "300",
        "-arinterval", "25",         "-fbdir", m_folder.path()};
    m_server = std::make_unique<Child>(command, environment());
    m_display = readNumber(m_server->output());
    EXPECT_FALSE(m_display.empty()) << "Xvfb gives no display";
    std::ofstream settings(m_folder.file("settings.ini"));
    settings << "[screen]\ntheme=dark\nless_motion=true\ndpi=" << kUnitsPerInch
             << "\n[hands]\npedal_key=" << kPedalKey << "\n";
}

Rig::~Rig() {
    m_program.reset();
    if (m_server) {
        m_server->signal(SIGTERM);
        m_server->waitForEnd(Milliseconds{5'000});
    }
}

std::vector<std::string> Rig::environment() const {
    std::vector<std::string> all{
        "PATH=" + variable("PATH"),
        "HOME=" + m_folder.path(),
        "XDG_RUNTIME_DIR=" + m_folder.path(),
        "DISPLAY=:" + m_display,
        "QT_QPA_PLATFORM=xcb",
        "LANG=C.UTF-8",
        "DBUS_SYSTEM_BUS_ADDRESS=" + m_buses,
        "DBUS_SESSION_BUS_ADDRESS=" + m_buses,
        "SEAMCLOCK_RESOURCES=" + m_resources};
    if (std::getenv("TZ") != nullptr) {
        all.push_back("TZ=" + variable("TZ"));
    }
    return all;
}

std::vector<std::string> Rig::command() const {
    std::vector<std::string> all{
        std::string(SEAMCLOCK_BIN_DIR) + "/seamclock",
        "--log",
        log(),
        "--job",
        m_resources + "/demo",
        "--settings",
        m_folder.file("settings.ini"),
        "--size",
        "1280x800",
        "--no-sound"};
    all.insert(all.end(), m_arguments.begin(), m_arguments.end());
    return all;
}

void Rig::startProgram() {
    std::vector<std::string> all = environment();
    all.insert(all.end(), m_more.begin(), m_more.end());
    m_program = std::make_unique<Child>(command(), all);
    giveKeysTo("^Seamclock$");
}

void Rig::takeMaterials() {
    const std::string without = m_folder.file("resources");
    std::filesystem::create_directory(without);
    for (const char* folder : {"demo", "procedures"}) {
        std::filesystem::create_directory_symlink(
            m_resources + "/" + folder, without + "/" + folder);
    }
    m_resources = without;
}

void Rig::giveFaultyDisk() {
    failDisk("none");
    m_more = {
        std::string("LD_PRELOAD=") + SEAMCLOCK_FAULT_SHIM,
        "SEAMCLOCK_FAULT=" + m_folder.file("fault")};
}

void Rig::failDisk(const std::string& word) {
    std::ofstream(m_folder.file("fault.new")) << word << "\n";
    std::filesystem::rename(m_folder.file("fault.new"), m_folder.file("fault"));
}

std::unique_ptr<Child> Rig::start(const std::string& program, const std::string& title) {
    const std::vector<std::string> command{program};
    auto child = std::make_unique<Child>(command, environment());
    giveKeysTo(title);
    return child;
}

std::unique_ptr<Child>
Rig::start(const std::vector<std::string>& command, const std::string& errors) const {
    std::vector<std::string> all{"sh", "-c", "exec \"$@\" 2>\"$0\"", errors};
    all.insert(all.end(), command.begin(), command.end());
    return std::make_unique<Child>(all, environment());
}

// Without a window manager nobody gives a window the keys by himself.
void Rig::giveKeysTo(const std::string& title) {
    const std::vector<std::string> command{"xdotool", "search", "--sync",      "--onlyvisible",
                                           "--name",  title,    "windowfocus", "--sync"};
    Child focus(command, environment());
    EXPECT_EQ(focus.waitForEnd(Milliseconds{30'000}), 0) << "no window " << title;
}

void Rig::killProgram() {
    m_program->signal(SIGKILL);
    m_program->waitForEnd(Milliseconds{10'000});
    m_program.reset();
}

int Rig::waitForEnd(Milliseconds most) {
    const int code = m_program->waitForEnd(most);
    m_program.reset();
    return code;
}

// The second number of /proc/PID/schedstat (the kernel's sched-stats.rst); PID is its first thread,
// which is the window's.
double Rig::waited() const {
    if (!m_program) {
        return 0;
    }
    std::ifstream file("/proc/" + std::to_string(m_program->pid()) + "/schedstat");
    double ran = 0;
    double waited = 0;
    file >> ran >> waited;
    return waited / 1e6;
}

Stamp Rig::type(const std::vector<std::string>& words) {
    std::vector<std::string> command{"xdotool"};
    command.insert(command.end(), words.begin(), words.end());
    Stamp stamp;
    stamp.waited = waited();
    stamp.before = bootMs();
    Child child(command, environment());
    EXPECT_EQ(child.waitForEnd(Milliseconds{20'000}), 0) << words.back();
    stamp.after = bootMs();
    return stamp;
}

// What a window takes for a second contact of one press, a hand never does.
void Rig::waitForHand() {
    waitUntil(m_pressed + kHandReturns);
    m_pressed = bootMs();
}

Stamp Rig::key(const std::string& name) {
    if (name.size() > 1 && name != "period") { // no digit
        waitForHand();
    }
    if (const auto last = m_keyUp.find(name); last != m_keyUp.end()) {
        waitUntil(last->second + kBetweenPresses);
    }
    const Stamp stamp = type({"key", name});
    m_keyUp[name] = stamp.after;
    return stamp;
}

Stamp Rig::keyDown(const std::string& name) {
    return type({"keydown", name});
}

Stamp Rig::keyUp(const std::string& name) {
    return type({"keyup", name});
}

Stamp Rig::click(QPointF at) {
    at += QPointF(frameOfPractice, frameOfPractice);
    type({"mousemove", std::to_string(qRound(at.x())), std::to_string(qRound(at.y()))});
    waitForHand();
    return type({"click", "1"});
}

// The file is an X window dump (XWDFile.h, version 7): a header of 25 big-endian words, the name,
// the colours, the picture in this machine's own order.
QImage Rig::screen() const {
    std::ifstream file(m_folder.file("Xvfb_screen0"), std::ios::binary);
    std::string bytes(std::size_t{kScreenWidth} * kScreenHeight * 4 + 16'384, '\0');
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(file.gcount()));
    if (bytes.size() < 100 || word(bytes, 1) != 7 || word(bytes, 11) != 32) {
        ADD_FAILURE() << "the frame buffer is no X window dump of 32 bits";
        return {};
    }
    const std::size_t start = word(bytes, 0) + word(bytes, 19) * std::size_t{12};
    const auto width = static_cast<int>(word(bytes, 4));
    const auto height = static_cast<int>(word(bytes, 5));
    const auto line = static_cast<qsizetype>(word(bytes, 12));
    if (bytes.size() < start + static_cast<std::size_t>(line) * word(bytes, 5)) {
        ADD_FAILURE() << "the frame buffer is cut off";
        return {};
    }
    return QImage(
               reinterpret_cast<const uchar*>(bytes.data() + start), width, height, line,
               QImage::Format_RGB32)
        .copy();
}

void standInFrame(int wide) {
    frameOfPractice = wide;
}

Frame frameFor(FrameKind kind) {
    const int both = 2 * frameOfPractice;
    return frameOf(QSizeF(QSize(kScreenWidth - both, kScreenHeight - both)), kind, false);
}

PageLook lookOfTests() {
    PageLook look;
    look.theme = &Theme::of(ThemeKind::Dark);
    look.metrics = Metrics::forDpi(kUnitsPerInch);
    return look;
}

QRect pixels(const QRectF& place) {
    return place.toRect().translated(frameOfPractice, frameOfPractice);
}

QImage painted(Page& page, const QRect& place) {
    page.setLook(lookOfTests());
    const int both = 2 * frameOfPractice;
    page.resize(kScreenWidth - both, kScreenHeight - both);
    page.QWidget::show();
    return page.grab(place.translated(-frameOfPractice, -frameOfPractice))
        .toImage()
        .convertToFormat(QImage::Format_RGB32);
}

QImage painted(const WeldView& view, const QRect& place) {
    static WeldPage* page = nullptr; // one for all; it lives as long as its application
    if (page == nullptr) {
        page = new WeldPage;
    }
    page->show(view);
    return painted(*page, place);
}

double difference(const QImage& screen, const QRect& place, const QImage& wanted) {
    if (!screen.rect().contains(place) || wanted.size() != place.size()) {
        return 1;
    }
    int differ = 0;
    for (int y = 0; y < place.height(); ++y) {
        const auto* is = reinterpret_cast<const QRgb*>(screen.constScanLine(place.y() + y));
        const auto* should = reinterpret_cast<const QRgb*>(wanted.constScanLine(y));
        for (int x = 0; x < place.width(); ++x) {
            const QRgb a = is[place.x() + x];
            const QRgb b = should[x];
            const bool same = std::abs(qRed(a) - qRed(b)) < kShade &&
                              std::abs(qGreen(a) - qGreen(b)) < kShade &&
                              std::abs(qBlue(a) - qBlue(b)) < kShade;
            differ += same ? 0 : 1;
        }
    }
    return static_cast<double>(differ) / (static_cast<double>(place.width()) * place.height());
}

} // namespace seamclock::test
