// How long a frame of the practice bench takes, offscreen: process time goes on by 40 ms, all is
// looked at, and what has changed is painted. Apart from it: the bench's own part of that, and the
// whole window painted anew, as after a change of page. In processor time of the screen's own
// thread, at 1280 x 800: over a whole weld, beside a fill of the same area by the same painter, and
// in the phases that draw most. The design's limit for a frame is 8 ms.
#include "tests/app/practice/practice_shop.h"

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cstdio>
#include <ctime>
#include <utility>
#include <vector>

namespace seamclock::test {
namespace {

constexpr Milliseconds kFrame{40};
constexpr int kFrames = 150;

double processorMs() {
    timespec at{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &at);
    return static_cast<double>(at.tv_sec) * 1e3 + static_cast<double>(at.tv_nsec) / 1e6;
}

struct Took {
    std::vector<double> ms;

    void tell(const char* what, const QString& name) {
        std::sort(ms.begin(), ms.end());
        double sum = 0;
        for (const double each : ms) {
            sum += each;
        }
        std::printf(
            "value practice-%s-%s %.2f ms   (mean of %zu; the middle %.2f, the longest %.2f ms)\n",
            what, name.toLocal8Bit().constData(), sum / static_cast<double>(ms.size()), ms.size(),
            ms[ms.size() / 2], ms.back());
    }
};

/// Frames as the timer makes them: what has changed is painted; and, apart, the whole window.
void frames(Practising& shop, const QString& name) {
    Took frame;
    Took led;
    Took whole;
    QImage image(shop.window().size(), QImage::Format_ARGB32_Premultiplied);
    for (int i = 0; i < kFrames; ++i) {
        const double from = processorMs();
        shop.machine().advance(kFrame);
        shop.window().tick();
        const double ticked = processorMs();
        QCoreApplication::processEvents();
        const double painted = processorMs();
        shop.window().render(&image);
        led.ms.push_back(ticked - from);
        frame.ms.push_back(painted - from);
        whole.ms.push_back(processorMs() - painted);
    }
    frame.tell("frame", name);
    led.tell("frame-led", name);
    whole.tell("window-painted", name);
}

/// Where the longest frame was, and which part of it took its time.
struct Longest {
    double ms = 0;
    double led = 0;
    Milliseconds at{0};
    QString page;
    QString step;

    void see(Practising& shop, double ledMs, double frameMs) {
        if (frameMs <= ms) {
            return;
        }
        ms = frameMs;
        led = ledMs;
        at = shop.room().runs() ? shop.room().run().now() : Milliseconds(-1);
        page = shop.window().currentPage()->objectName();
        step = shop.window().currentPage()->stepView().text;
    }
    void tell() const {
        std::printf(
            "note  the longest: %.2f ms, of that %.2f the bench's and what is shown of it; %s, "
            "\"%s\", process time %.1f s\n",
            ms, led, page.toLocal8Bit().constData(), step.toLocal8Bit().constData(),
            static_cast<double>(at.count()) / 1e3);
    }
};

/// All frames of a whole weld as the program makes them; 500 of them, evenly chosen, count.
bool wholeWeld() {
    constexpr std::size_t kChosen = 500;
    Practising shop;
    QImage area(shop.window().size(), QImage::Format_ARGB32_Premultiplied);
    std::vector<std::pair<double, double>> all; // the frame, the fill behind it
    Longest longest;
    shop.walk().frames(kFrame, [&] {
        const double from = processorMs();
        shop.window().tick();
        const double ticked = processorMs();
        QCoreApplication::processEvents();
        const double painted = processorMs();
        QPainter painter(&area);
        painter.fillRect(area.rect(), QColor(40, 50, 60, 200));
        painter.end();
        all.emplace_back(painted - from, processorMs() - painted);
        longest.see(shop, ticked - from, painted - from);
    });
    const auto done = shop.walk().weld("pe10-first", {});
    if (!done || all.size() < kChosen) {
        std::fprintf(stderr, "%s\n", done ? "too few frames" : done.error().detail.c_str());
        return false;
    }
    std::vector<double> frame;
    std::vector<double> fill;
    for (std::size_t i = 0; i < kChosen; ++i) {
        const auto& [took, beside] = all[i * all.size() / kChosen];
        frame.push_back(took);
        fill.push_back(beside);
    }
    std::sort(frame.begin(), frame.end());
    std::sort(fill.begin(), fill.end());
    const double middle = frame[kChosen / 2];
    std::printf(
        "value practice-frame-ms %.2f ms   (the middle of %zu frames of a whole weld; the longest "
        "%.2f, of all %zu %.2f ms)\n",
        middle, kChosen, frame.back(), all.size(), longest.ms);
    longest.tell();
    std::printf(
        "ratio practice-frame %.2f   (a frame / one fill of its area by the same painter: %.2f / "
        "%.2f ms)\n",
        middle / fill[kChosen / 2], middle, fill[kChosen / 2]);
    return true;
}

int run() {
    if (!wholeWeld()) {
        return 1;
    }
    Practising shop;
    WalkMistakes none;
    const auto done = shop.walk().weld("pe10-first", none, [&shop](const QString& name) {
        for (const char* phase : {"align", "soak", "cooling"}) {
            if (name == QLatin1String(phase)) {
                const int pace = shop.window().pace();
                shop.window().setPace(1);
                frames(shop, name);
                shop.window().setPace(pace);
            }
        }
    });
    if (!done) {
        std::fprintf(stderr, "%s\n", done.error().detail.c_str());
        return 1;
    }
    return 0;
}

} // namespace
} // namespace seamclock::test

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    return seamclock::test::run();
}
