#include "app/operate/pictures.h"

#include "app/text/words.h"
#include "core/log/world.h"

#include <QCoreApplication>
#include <QDir>
#include <QPixmap>
#include <QTemporaryDir>

namespace seamclock {
namespace {

using std::chrono::milliseconds;
using std::chrono::minutes;
using std::chrono::seconds;

Result<void> refused(const std::string& why) {
    return fail(ErrorCode::Refused, "the walk through the screens stopped: " + why);
}

Instant demoMorning() {
    Instant start;
    start.boot = milliseconds(3'600'000);
    start.bootId = "practice:5d0c4a3e-8f11-4c0e-9b53-2a6a1d4e7f10";
    start.utc = milliseconds(1'893'996'000'000); // 2030-01-07T06:00Z
    start.offset = minutes(60);
    return start;
}

} // namespace

Walk::Walk(Window& window, Floor& floor, VirtualClock& clock)
    : m_window(window), m_floor(floor), m_clock(clock) {}

void Walk::go(Milliseconds gap) {
    m_clock.advance(gap);
    m_window.refresh();
}

const Weld* Walk::weld() const {
    return m_floor.weld(m_floor.selected());
}

// The step's button, as a hand presses it; and a number where one is asked for.
Result<void> Walk::press() {
    const Weld* before = weld();
    const std::size_t events = before != nullptr ? before->events.size() : 0;
    const PageKind page = m_window.page();
    emit m_window.currentPage()->slotPressed(SlotPlace::Step);
    const Weld* after = weld();
    const bool moved = m_window.page() != page || (after != nullptr) != (before != nullptr) ||
                       (after != nullptr && after->events.size() != events) ||
                       page == PageKind::Pad;
    if (!moved) {
        return refused(
            "\"" + m_window.currentPage()->stepView().text.toStdString() + "\" changed nothing");
    }
    return {};
}

void Walk::key(const QString& digits) {
    for (const QChar digit : digits) {
        m_window.padPage()->pad()->type(digit);
    }
    m_window.refresh();
}

Result<void> Walk::prepare(const Picture& picture) {
    for (int step = 0; step < 60; ++step) {
        const Weld* now = weld();
        const auto* state = now != nullptr ? std::get_if<Preparing>(&now->state) : nullptr;
        if (state == nullptr) {
            return refused("preparation ended early");
        }
        if (m_window.page() == PageKind::Pad) {
            const NumberTask& task = m_window.padPage()->task();
            const double value = task.view.target.value_or(1.0);
            if (platePlacesRead(*now) == 1 && picture) {
                key(QString::number(static_cast<int>(*task.view.high) + 5));
                picture("pad-too-hot");
                m_window.padPage()->pad()->setText({});
                m_window.padPage()->ask(task);
            }
            key(QString::number(static_cast<int>(value) + 1));
            if (platePlacesRead(*now) == 1 && picture) {
                picture("pad-plate");
            }
        } else {
            const std::string asked = checkAsked(*now, *state);
            if (asked.empty()) {
                return {};
            }
            if (picture && (asked != "plate_temperature" || platePlacesRead(*now) == 0)) {
                picture("check-" + fromUtf8(asked));
            }
        }
        go(seconds(9));
        if (const auto done = press(); !done) {
            return done;
        }
    }
    return refused("preparation did not end");
}

Result<void> Walk::goodWeld(const Picture& picture) {
    const auto step = [&](const QString& name, Milliseconds wait) -> Result<void> {
        go(wait);
        picture(name);
        return press();
    };
    picture("seams");
    m_window.openNextCard();
    picture("card");
    if (const auto done = press(); !done) {
        return done;
    }
    if (const auto done = prepare(picture); !done) {
        return done;
    }
    if (const auto done = step("ready", seconds(6)); !done) {
        return done;
    }
    go(seconds(12));
    picture("align");
    if (const auto done = step("align-asked", seconds(50)); !done) {
        return done;
    }
    const Milliseconds soak = weld()->plan.soak->target;
    go(soak / 2);
    picture("soak");
    go(soak - soak / 2 - seconds(7));
    picture("get-ready");
    go(seconds(7));
    picture("act-now");
    go(milliseconds(400));
    if (const auto done = press(); !done) {
        return done;
    }
    go(milliseconds(3'400));
    picture("changeover");
    go(milliseconds(1'200));
    if (const auto done = press(); !done) {
        return done;
    }
    go(weld()->plan.buildUp->target * 6 / 10);
    picture("build-up");
    go(weld()->plan.buildUp->target * 3 / 10);
    if (const auto done = press(); !done) {
        return done;
    }
    if (const auto done = step("lock", milliseconds(1'500)); !done) {
        return done;
    }
    const std::vector<Milliseconds> rechecks = weld()->plan.cooling->rechecks;
    const Milliseconds cooling = weld()->plan.cooling->atLeast;
    Milliseconds gone(0);
    for (std::size_t i = 0; i < rechecks.size(); ++i) {
        go(rechecks[i] * 2 / 3 - gone * 2 / 3);
        picture(QString("cooling-%1").arg(i + 1));
        go(rechecks[i] + seconds(4) - gone - (rechecks[i] * 2 / 3 - gone * 2 / 3));
        gone = rechecks[i] + seconds(4);
        picture(QString("reading-due-%1").arg(i + 1));
        if (const auto done = press(); !done) {
            return done;
        }
        const WeldPlan::ScalePlan& scale = *weld()->plan.scale;
        const bool low = i == 0;
        const std::int64_t read =
            low ? scale.joining.lowMilli / 1000 * 1000 - 1000 : scale.joining.setMilli;
        key(QString::number(static_cast<double>(read) / 1000.0));
        picture(low ? "pad-reading-low" : "pad-reading");
        if (const auto done = press(); !done) {
            return done;
        }
        if (low) {
            if (const auto done = step("reading-low", seconds(5)); !done) {
                return done;
            }
            gone += seconds(5);
        }
    }
    go(cooling - gone + seconds(2));
    picture("cooling-done");
    if (const auto done = press(); !done) {
        return done;
    }
    const std::size_t releases = weld()->plan.releaseOrder.size();
    for (std::size_t i = 0; i < releases; ++i) {
        if (const auto done = step(QString("release-%1").arg(i + 1), seconds(5)); !done) {
            return done;
        }
    }
    go(seconds(5));
    picture("look-at-bead");
    const char* const values[] = {"4.2", "9.5", "0.8", "0.4"};
    for (const char* value : values) {
        if (m_window.page() != PageKind::Pad) {
            if (const auto done = press(); !done) {
                return done;
            }
        }
        key(QString(value));
        go(seconds(6));
        if (const auto done = press(); !done) {
            return done;
        }
    }
    if (const auto done = step("save", seconds(3)); !done) {
        return done;
    }
    go(seconds(1));
    picture("saved");
    return {};
}

Result<void> Walk::lateWeld(int post, const Picture& picture) {
    m_floor.select(post);
    m_floor.leave(post);
    m_window.refresh();
    m_window.openNextCard();
    if (const auto done = press(); !done) {
        return done;
    }
    if (const auto done = prepare({}); !done) {
        return done;
    }
    go(seconds(5));
    if (const auto done = press(); !done) {
        return done;
    }
    const Milliseconds slow = weld()->plan.alignLate.value_or(weld()->plan.soak->target);
    go(slow + seconds(10));
    picture("align-late");
    if (const auto done = press(); !done) {
        return done;
    }
    go(weld()->plan.soak->high + seconds(6));
    picture("soak-late");
    if (const auto done = press(); !done) {
        return done;
    }
    go(*weld()->plan.changeoverMax + milliseconds(2'400));
    picture("changeover-late");
    if (const auto done = press(); !done) {
        return done;
    }
    go(weld()->plan.buildUp->high + seconds(1));
    picture("build-up-late");
    if (const auto done = press(); !done) {
        return done;
    }
    go(seconds(2));
    if (const auto done = press(); !done) {
        return done;
    }
    go(seconds(3));
    picture("after-the-lock");
    return {};
}

Result<void> Walk::others(const Picture& picture) {
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop);
    m_window.refresh();
    picture("stop");
    emit m_window.currentPage()->slotPressed(SlotPlace::Stop);
    m_window.openMenu();
    m_window.refresh();
    picture("menu");
    m_window.openDay();
    m_window.refresh();
    picture("day");
    return {};
}

namespace {

struct Shape {
    QString name;
    QSize size;
    double dpi = kUnitsPerInch;
};

std::vector<Shape> shapesOf(const QStringList& wanted) {
    const std::vector<Shape> all{
        {"1280x800", {1280, 800}, kUnitsPerInch},
        {"1920x1200", {1920, 1200}, kUnitsPerInch * 1.5},
        {"800x1280", {800, 1280}, kUnitsPerInch}};
    std::vector<Shape> chosen;
    for (const Shape& shape : all) {
        if (wanted.isEmpty() || wanted.contains(shape.name)) {
            chosen.push_back(shape);
        }
    }
    return chosen;
}

/// One weld's course in one look, from a log of its own that is thrown away.
Result<void> paintOne(
    const PictureOptions& options, const std::vector<ProcedureDocument>& procedures, const Job& job,
    const Shape& shape, ThemeKind theme, const QString& themeName, QStringList& written) {
    QTemporaryDir scratch;
    VirtualClock clock(demoMorning());
    auto writer =
        LogWriter<Practice>::open(scratch.filePath("pictures.seamlog").toStdString(), clock);
    if (!writer) {
        return tl::unexpected<Error>(writer.error());
    }
    auto session = Session<Practice>::start(*writer, clock);
    if (!session) {
        return tl::unexpected<Error>(session.error());
    }
    Floor floor(*session, *writer, clock, procedures, job.operatorId);
    for (const JobSeam& seam : job.seams) {
        const auto bench = readBenchFile(seam.benchFile);
        if (!bench) {
            return tl::unexpected<Error>(bench.error());
        }
        static_cast<void>(floor.addBench(*bench)); // there already: another seam's
    }
    Preferences preferences;
    preferences.theme = theme;
    preferences.dpi = shape.dpi;
    preferences.pedalKey = Qt::Key_F9;
    WindowParts parts{floor,  *writer, job.seams, preferences, scratch.filePath("settings.ini"),
                      nullptr};
    Window window(std::move(parts));
    window.resize(shape.size);
    window.QWidget::show();
    QString trouble;
    int count = 0;
    const auto picture = [&](const QString& name) {
        window.refresh();
        QCoreApplication::processEvents();
        const QString file = QDir(options.folder)
                                 .filePath(QString("%1-%2-%3-%4.png")
                                               .arg(shape.name, themeName)
                                               .arg(++count, 2, 10, QLatin1Char('0'))
                                               .arg(name));
        if (!window.grab().save(file, "PNG")) {
            trouble = file;
            return;
        }
        written << file;
    };
    Walk walk(window, floor, clock);
    auto done = walk.goodWeld(picture);
    if (done && !options.onlyOperator) {
        done = walk.lateWeld(1, picture);
    }
    if (done && !options.onlyOperator) {
        done = walk.others(picture);
    }
    if (!trouble.isEmpty()) {
        return fail(
            ErrorCode::NotWritten,
            "the picture \"" + trouble.toStdString() +
                "\" can't be written; allowed: a folder that can be written");
    }
    return done;
}

} // namespace

Result<QStringList>
paintPictures(const PictureOptions& options, const std::vector<ProcedureDocument>& procedures) {
    if (!QDir().mkpath(options.folder)) {
        return fail(
            ErrorCode::NotWritten, "the folder \"" + options.folder.toStdString() +
                                       "\" can't be made; allowed: a folder that can be written");
    }
    const auto job = readFirstJob(options.demo.toStdString());
    if (!job) {
        return tl::unexpected<Error>(job.error());
    }
    const std::pair<ThemeKind, QString> themes[] = {
        {ThemeKind::Dark, "dark"}, {ThemeKind::Light, "light"}, {ThemeKind::Contrast, "contrast"}};
    QStringList written;
    for (const Shape& shape : shapesOf(options.sizes)) {
        for (const auto& [theme, name] : themes) {
            if (!options.themes.isEmpty() && !options.themes.contains(name)) {
                continue;
            }
            const auto painted = paintOne(options, procedures, *job, shape, theme, name, written);
            if (!painted) {
                return tl::unexpected<Error>(painted.error());
            }
        }
    }
    return written;
}

} // namespace seamclock
