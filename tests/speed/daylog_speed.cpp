// The day log over a log of any size, scrolled as a hand does, on the window's own thread: how long
// each line and each leaf takes until it is painted, and how long a page of lines is waited for. A
// pause is what the thread that paints is busy with in one go. "value NAME VALUE UNIT" is a plain
// measurement of this machine.
//
//     daylog_speed LOG [LINES]     made by make_big_log; so many lines, 4,000 if not said
#include "app/daylog/daylog_flow.h"
#include "core/base/instant.h"

#include <QApplication>
#include <QImage>
#include <QKeyEvent>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

namespace seamclock {
namespace {

using Clock = std::chrono::steady_clock;

double since(Clock::time_point from) {
    return std::chrono::duration<double, std::milli>(Clock::now() - from).count();
}

void tell(const std::string& name, std::vector<double> took) {
    std::sort(took.begin(), took.end());
    std::printf(
        "value %s-median %.2f ms\nvalue %s-99th %.2f ms\nvalue %s-longest %.2f ms\n", name.c_str(),
        took[took.size() / 2], name.c_str(), took[took.size() * 99 / 100], name.c_str(),
        took.back());
    std::fflush(stdout);
}

class Screen {
public:
    explicit Screen(const std::string& log) : m_flow(shopOf(log), &m_ring, &m_window) {
        m_window.resize(1280, 800);
        m_look.metrics = Metrics::forDpi(kUnitsPerInch);
        for (Page* page : m_flow.pages()) {
            page->setLook(m_look);
            page->setGeometry(m_window.rect());
        }
        m_window.show();
        QObject::connect(
            &m_flow, &DayLogFlow::turned, &m_window, [this] { m_flow.page()->QWidget::show(); });
        QObject::connect(&m_flow, &DayLogFlow::said, &m_window, [](const QString& text) {
            std::fprintf(stderr, "%s\n", text.toUtf8().constData());
            std::exit(2);
        });
    }

    DayPage& page() { return *m_flow.dayPage(); }
    void open() {
        m_flow.open();
        settle();
    }
    void settle() {
        while (m_flow.isBusy()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
    }
    void paint() { page().render(&m_image); }
    void press(int key) {
        QKeyEvent event(QEvent::KeyPress, key, Qt::NoModifier);
        QApplication::sendEvent(&m_window, &event);
    }

private:
    static DayLogShop shopOf(const std::string& log) {
        DayLogShop shop;
        shop.log = log;
        shop.hasForeman = [] { return false; };
        shop.materials = [] { return std::vector<Material>{}; };
        shop.units = [] { return UnitSystem::Metric; };
        shop.now = [] { return Instant(); };
        return shop;
    }

    QWidget m_window;
    PageLook m_look;
    KeyRing m_ring{&m_window};
    DayLogFlow m_flow;
    QImage m_image{1280, 800, QImage::Format_RGB32};
};

void scrolling(const std::string& log, int lines) {
    Screen screen(log);
    const auto begun = Clock::now();
    screen.open();
    screen.paint();
    std::printf("value daylog-first-page %.1f ms\n", since(begun));
    std::vector<double> byLine;
    std::vector<double> waited; // until no line that stands is still being read
    const std::string last = [&] { return screen.page().view().rows.front().weld; }();
    for (int i = 0; i < lines; ++i) {
        auto from = Clock::now();
        emit screen.page().scrolled(1);
        screen.paint();
        byLine.push_back(since(from));
        // What came from the reading thread is told in goes of its own.
        from = Clock::now();
        QCoreApplication::processEvents();
        byLine.push_back(since(from));
    }
    screen.settle();
    if (screen.page().view().rows.front().weld == last) {
        std::fprintf(stderr, "%s: the list did not move\n", log.c_str());
        std::exit(2);
    }
    std::vector<double> byLeaf;
    for (int i = 0; i < lines / 10; ++i) {
        const auto asked = Clock::now();
        auto from = asked;
        emit screen.page().pressed(DayPress::Older);
        screen.paint();
        byLeaf.push_back(since(from));
        const auto unread = [&] {
            const auto& rows = screen.page().view().rows;
            return std::any_of(
                rows.begin(), rows.end(), [](const JointRowView& row) { return row.weld.empty(); });
        };
        while (unread()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
        waited.push_back(since(asked));
    }
    // By keys, as deep in the list as all this came.
    screen.settle();
    emit screen.page().rowChosen(QString::fromStdString(screen.page().view().rows.front().weld));
    screen.settle();
    const std::string chosen = screen.page().view().rows.front().weld;
    std::vector<double> byKey;
    for (int i = 0; i < std::max(10, lines / 100); ++i) {
        const auto from = Clock::now();
        screen.press(Qt::Key_Down);
        screen.paint();
        byKey.push_back(since(from));
        screen.settle();
    }
    if (screen.page().view().rows.front().weld == chosen) {
        std::fprintf(stderr, "%s: no key moved the list\n", log.c_str());
        std::exit(2);
    }
    tell("daylog-key-deep", byKey);
    tell("daylog-scroll-line", byLine);
    tell("daylog-scroll-leaf", byLeaf);
    tell("daylog-leaf-whole", waited);
}

} // namespace
} // namespace seamclock

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    if (argc < 2 || argc > 3) {
        std::fprintf(stderr, "daylog_speed LOG [LINES]\n");
        return 2;
    }
    seamclock::scrolling(argv[1], argc > 2 ? std::max(10, std::atoi(argv[2])) : 4'000);
    return 0;
}
