#include "app/first/first_walk.h"

#include "app/operate/people_walk.h"
#include "core/log/world.h"
#include "core/session/session.h"

#include <QCoreApplication>
#include <QDir>
#include <QPixmap>
#include <QTemporaryDir>

namespace seamclock {
namespace {

using std::chrono::milliseconds;
using std::chrono::minutes;

Result<void> stopped(const std::string& why) {
    return fail(ErrorCode::Refused, "the walk through the first start stopped: " + why);
}

} // namespace

FirstWalk::FirstWalk(FirstWindow& window, Desk& desk) : m_window(window), m_desk(desk) {}

void FirstWalk::settle() {
    while (m_desk.isBusy()) {
        QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
    }
    m_window.refresh();
}

void FirstWalk::take(const Picture& picture, const QString& name) {
    m_window.refresh();
    if (picture) {
        picture(name);
    }
}

Result<void> FirstWalk::expect(const Page* page, const std::string& what) const {
    return m_window.currentPage() == page ? Result<void>() : stopped(what + " does not stand");
}

Result<void> FirstWalk::press(SlotPlace place) {
    ++m_presses;
    emit m_window.currentPage()->slotPressed(place);
    settle();
    return {};
}

Result<void> FirstWalk::choose(int index) {
    auto* page = qobject_cast<ChoicePage*>(m_window.currentPage());
    if (page == nullptr || index >= static_cast<int>(page->view().choices.size())) {
        return stopped("no question with " + std::to_string(index + 1) + " answers stands");
    }
    ++m_presses;
    emit page->chosen(index);
    settle();
    return {};
}

Result<void> FirstWalk::name(const QString& text) {
    auto* page = qobject_cast<NamePage*>(m_window.currentPage());
    if (page == nullptr) {
        return stopped("no name is asked for");
    }
    m_letters += static_cast<int>(text.size());
    page->setName(text);
    return press(SlotPlace::Step);
}

Result<void> FirstWalk::number(const QString& digits) {
    if (const auto there = expect(m_window.padPage(), "the number page"); !there) {
        return there;
    }
    for (const QChar digit : digits) {
        ++m_presses;
        NumberPad* pad = m_window.padPage()->pad();
        pad->type(digit == QLatin1Char('.') ? pad->decimalSign() : digit);
    }
    return press(SlotPlace::Step);
}

Result<void> FirstWalk::pin(const char* digits) {
    if (const auto there = expect(m_window.people()->pinPage(), "the page of a PIN"); !there) {
        return there;
    }
    for (const char* digit = digits; *digit != '\0'; ++digit) {
        ++m_presses;
        m_window.people()->typed(QLatin1Char(*digit));
    }
    return press(SlotPlace::Step);
}

Result<void> FirstWalk::twice(const char* digits, const Picture& picture, const QString& name) {
    return inOrder(
        {[&] {
             take(picture, name);
             return pin(digits);
         },
         [&] { return pin(digits); }});
}

Result<void> FirstWalk::people(const Picture& picture) {
    return inOrder(
        {[&] {
             take(picture, "first-screen");
             return press(SlotPlace::Step);
         },
         [&] {
             take(picture, "first-guide");
             return press(SlotPlace::Step);
         },
         [&] {
             take(picture, "first-shop");
             return name("Quillmere Vat Works");
         },
         [&] {
             take(picture, "first-foreman");
             return name("Oddo Quenley");
         },
         [&] { return twice(kForemansPin, picture, "first-foreman-pin"); }});
}

Result<void> FirstWalk::bench(bool calibrates, const Picture& picture) {
    PadPage* pad = m_window.padPage();
    return inOrder(
        {[&] {
             take(picture, "first-bench");
             return press(SlotPlace::Step); // the name that stands there
         },
         [&] {
             if (picture) {
                 pad->ask(pad->task(), "900000");
                 take(picture, "first-seam-refused");
                 pad->ask(NumberTask(pad->task()));
             }
             return number("2600");
         },
         [&] { return number("3"); }, [&] { return number("30"); },
         [&] {
             take(picture, "first-scale-end");
             return number("48");
         },
         [&] {
             take(picture, "first-division");
             return choose(2); // 0.5 mm
         },
         [&] {
             take(picture, "first-release");
             return choose(0);
         },
         [&] { return choose(0); }, [&] { return choose(0); },
         [&] {
             take(picture, "first-force");
             return choose(calibrates ? 1 : 0);
         },
         [&] { return calibrates ? Result<void>() : number("0"); },
         [&] {
             if (calibrates) {
                 return Result<void>();
             }
             take(picture, "first-springs");
             return choose(0);
         },
         [&] {
             if (calibrates) {
                 return Result<void>();
             }
             take(picture, "first-rate");
             return number("62.5");
         },
         [&] {
             if (calibrates) {
                 return Result<void>();
             }
             take(picture, "first-preload");
             return number("0");
         },
         [&] {
             take(picture, calibrates ? "first-bench-to-calibrate" : "first-bench-whole");
             return expect(m_window.choicePage(), "the bench's summary");
         }});
}

Result<void> FirstWalk::all(const Picture& picture) {
    return inOrder(
        {[&] { return people(picture); }, [&] { return bench(false, picture); },
         [&] { return press(SlotPlace::Step); }, // keep it
         [&] {
             take(picture, "first-operator");
             return name("Ilva Borrick");
         },
         [&] { return choose(0); }, // with a PIN
         [&] { return twice("5083", picture, "first-operator-pin"); },
         [&] {
             take(picture, "first-overview");
             return expect(m_window.choicePage(), "the overview");
         },
         [&] { return press(SlotPlace::Step); }});
}

Result<void> FirstWalk::nothing(const Picture& picture) {
    return inOrder(
        {[&] { return press(SlotPlace::Step); }, [&] { return press(SlotPlace::Step); },
         [&] { return press(SlotPlace::Stop); }, // the shop's name
         [&] { return press(SlotPlace::Stop); }, // the foreman
         [&] {
             take(picture, "first-bench-without-foreman");
             return press(SlotPlace::Stop);
         },
         [&] {
             take(picture, "first-operator-without-foreman");
             return press(SlotPlace::Stop);
         },
         [&] {
             take(picture, "first-without-a-bench");
             return expect(m_window.choicePage(), "the overview");
         }});
}

// ---- pictures

namespace {

/// A shop that nobody has worked in yet, with its first window, in a folder that goes with it.
class FreshShop {
public:
    FreshShop(
        const std::vector<ProcedureDocument>& procedures, const PictureShape& shape,
        ThemeKind theme)
        : m_clock(morning()), m_procedures(procedures) {
        m_preferences.theme = theme;
        m_preferences.language = spoken();
        m_preferences.dpi = shape.dpi;
    }

    Result<void> open(const QSize& size) {
        auto writer = LogWriter<Production>::open(
            m_scratch.filePath("joints.seamlog").toStdString(), m_clock);
        if (!writer) {
            return tl::unexpected<Error>(writer.error());
        }
        m_writer = std::make_unique<LogWriter<Production>>(std::move(*writer));
        auto session = Session<Production>::start(*m_writer, m_clock);
        if (!session) {
            return tl::unexpected<Error>(session.error());
        }
        m_session = std::make_unique<Session<Production>>(std::move(*session));
        m_floor = std::make_unique<Floor>(*m_session, *m_writer, m_clock, m_procedures, "station");
        auto desk = Desk::open(*m_writer, m_clock);
        if (!desk) {
            return tl::unexpected<Error>(desk.error());
        }
        m_desk = std::move(*desk);
        m_window = std::make_unique<FirstWindow>(FirstParts{
            *m_floor, *m_desk, m_preferences, m_scratch.filePath("settings.ini"),
            m_scratch.filePath("documents"), m_scratch.filePath("demo-shop").toStdString(),
            [] { return Result<void>(); }});
        m_window->resize(size);
        m_window->QWidget::show();
        return {};
    }

    FirstWindow& window() { return *m_window; }
    Desk& desk() { return *m_desk; }

private:
    static Instant morning() {
        Instant start;
        start.boot = milliseconds(3'600'000);
        start.bootId = "practice:3f0f9c1e-7d43-49a3-8d2a-0a1f6f3b9c55";
        start.utc = milliseconds(1'893'996'000'000); // 2030-01-07T06:00Z
        start.offset = minutes(60);
        return start;
    }

    QTemporaryDir m_scratch;
    VirtualClock m_clock;
    const std::vector<ProcedureDocument>& m_procedures;
    Preferences m_preferences;
    std::unique_ptr<LogWriter<Production>> m_writer;
    std::unique_ptr<Session<Production>> m_session;
    std::unique_ptr<Floor> m_floor;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<FirstWindow> m_window;
};

} // namespace

Result<QStringList> paintFirstPictures(
    const PictureOptions& options, const std::vector<ProcedureDocument>& procedures) {
    QStringList written;
    QString trouble;
    for (const PictureShape& shape : pictureShapes(options.sizes)) {
        for (const auto& [theme, themeName] : pictureThemes(options.themes)) {
            int count = 0;
            for (const bool whole : {true, false}) {
                FreshShop shop(procedures, shape, theme);
                if (auto opened = shop.open(shape.size); !opened) {
                    return tl::unexpected<Error>(opened.error());
                }
                const auto picture = [&, name = themeName](const QString& what) {
                    QCoreApplication::processEvents();
                    const QString file = QDir(options.folder)
                                             .filePath(QString("%1-%2-first-%3-%4.png")
                                                           .arg(shape.name, name)
                                                           .arg(++count, 2, 10, QLatin1Char('0'))
                                                           .arg(QString(what).remove("first-")));
                    if (shop.window().grab().save(file, "PNG")) {
                        written << file;
                    } else if (trouble.isEmpty()) {
                        trouble = file;
                    }
                };
                FirstWalk walk(shop.window(), shop.desk());
                const auto walked = whole ? walk.all(picture) : walk.nothing(picture);
                if (!walked) {
                    return tl::unexpected<Error>(walked.error());
                }
            }
        }
    }
    if (!trouble.isEmpty()) {
        return fail(
            ErrorCode::NotWritten,
            "the picture \"" + trouble.toStdString() +
                "\" can't be written; allowed: a folder that can be written");
    }
    return written;
}

} // namespace seamclock
