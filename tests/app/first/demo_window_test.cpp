// The operator's window in the demo shop: every page says where one is, PINs stand where they are
// asked for, what is printed says it, too, and the menu leads out again.
#include "app/operate/window.h"
#include "core/base/made_files.h"
#include "core/log/log_reader.h"
#include "core/log/world.h"
#include "core/practice/demo_folder.h"
#include "core/practice/virtual_clock.h"
#include "core/session/session.h"
#include "tests/app/parts/screen_checks.h"
#include "tests/support/scratch_folder.h"

#include <QCoreApplication>
#include <QDir>
#include <QSignalSpy>
#include <algorithm>
#include <cstdlib>
#include <functional>
#include <gtest/gtest.h>
#include <memory>
#include <string>
#include <vector>

namespace seamclock::test {
namespace {

/// Made once; each test has a window of its own on it.
class DemoWindow : public ::testing::Test {
protected:
    static void SetUpTestSuite() {
        s_scratch = new ScratchFolder;
        DemoOrder order;
        order.folder = s_scratch->file("demo-shop");
        order.source = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo";
        auto procedures =
            readProcedureFolder(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures");
        ASSERT_TRUE(procedures);
        order.procedures = *procedures;
        order.days = 1;
        const auto made = makeDemoShop(order);
        ASSERT_TRUE(made) << made.error().detail;
    }
    static void TearDownTestSuite() {
        delete s_scratch;
        s_scratch = nullptr;
    }

    DemoWindow() : m_clock(start()) {
        auto writer = LogWriter<Practice>::open(demoLogOf(folder()), m_clock);
        EXPECT_TRUE(writer) << writer.error().detail;
        m_writer = std::make_unique<LogWriter<Practice>>(std::move(*writer));
        auto session = Session<Practice>::start(*m_writer, m_clock);
        EXPECT_TRUE(session);
        m_session = std::make_unique<Session<Practice>>(std::move(*session));
        auto procedures =
            readProcedureFolder(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures");
        m_floor = std::make_unique<Floor>(*m_session, *m_writer, m_clock, *procedures, "station");
        m_floor->practise();
        EXPECT_TRUE(m_floor->takeUpShelf());
        auto desk = Desk::open(*m_writer, m_clock);
        EXPECT_TRUE(desk);
        m_desk = std::move(*desk);
        const auto job = readFirstJob(folder());
        EXPECT_TRUE(job);
        WindowParts parts{*m_floor,   *m_writer, *m_desk,
                          job->seams, {},        QString::fromStdString(settings())};
        parts.preferences.dpi = kUnitsPerInch;
        parts.reports = QString::fromStdString(demoPapersOf(folder()));
        parts.work.demo = true;
        for (const DemoPerson& one : demoPeople()) {
            parts.demoPins.emplace(one.id, QString::fromStdString(one.pin));
        }
        m_window = std::make_unique<Window>(std::move(parts));
        m_window->resize(1280, 800);
        m_window->QWidget::show();
    }

    static std::string folder() { return s_scratch->file("demo-shop"); }
    std::string settings() const { return m_scratch.file("settings.ini"); }
    Window& window() { return *m_window; }
    LogWriterBase& writer() { return *m_writer; }
    void settle() {
        while (m_desk->isBusy()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
        m_window->refresh();
    }
    /// As a person who touches that name, by the place in the list.
    void choosePerson(int place) {
        if (window().page() != PageKind::People) {
            window().people()->openWho();
        }
        emit window().people()->choicePage()->chosen(place);
        settle();
    }
    void givePin(const std::string& digits) {
        for (const char digit : digits) {
            window().people()->typed(QLatin1Char(digit));
        }
        emit window().currentPage()->slotPressed(SlotPlace::Step);
        settle();
    }
    int menuPlace(MenuItem item) const {
        const Menu menu = menuFor(m_window->preferences(), {}, true);
        const auto at = std::find(menu.items.begin(), menu.items.end(), item);
        return at == menu.items.end() ? -1 : static_cast<int>(at - menu.items.begin());
    }

private:
    static Instant start() {
        Instant now;
        now.boot = std::chrono::hours(2);
        now.bootId = "practice:0f6a4b9e-7c0d-4a57-8a54-3f0f6c1f2d77";
        now.utc = lastOf(demoLogOf(folder())).value_or(Milliseconds(0)) + std::chrono::minutes(10);
        return now;
    }

    static ScratchFolder* s_scratch;
    ScratchFolder m_scratch;
    VirtualClock m_clock;
    std::unique_ptr<LogWriter<Practice>> m_writer;
    std::unique_ptr<Session<Practice>> m_session;
    std::unique_ptr<Floor> m_floor;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Window> m_window;
};
ScratchFolder* DemoWindow::s_scratch = nullptr;

TEST_F(DemoWindow, SaysOnEveryPageWhereOneIs) {
    EXPECT_EQ(window().windowTitle(), "Seamclock: demo shop");
    window().people()->close();
    for (const auto& open : std::vector<std::function<void()>>{
             [this] { window().openMenu(); }, [this] { window().openDay(); },
             [this] { window().openNextCard(); }, [this] { window().setup()->open(); },
             [this] { window().people()->openWho(); }}) {
        open();
        EXPECT_EQ(window().currentPage()->look().watermark, "DEMO SHOP");
    }
}

TEST_F(DemoWindow, ShowsThePinsThatItAsksForAndLetsThemIn) {
    ASSERT_EQ(window().page(), PageKind::People) << "who it is, is asked";
    choosePerson(0);
    ASSERT_EQ(window().currentPage(), window().people()->pinPage());
    EXPECT_TRUE(window().people()->pinPage()->view().where.contains("482915"))
        << window().people()->pinPage()->view().where.toStdString();
    givePin("482915");
    EXPECT_EQ(window().people()->atBench(), "person:oddo-quenley");
    // The foreman's desk is open to whoever looks round, and so is Set-up.
    window().people()->openWho();
    emit window().currentPage()->slotPressed(SlotPlace::Stop);
    settle();
    EXPECT_TRUE(window().people()->pinPage()->view().where.contains("482915"));
    givePin("482915");
    EXPECT_TRUE(window().people()->isDeskOpen());
    window().openMenu();
    emit window().choicePage()->chosen(menuPlace(MenuItem::Setup));
    EXPECT_EQ(window().page(), PageKind::Setup);
}

TEST_F(DemoWindow, LeadsOutByTheMenu) {
    EXPECT_EQ(menuPlace(MenuItem::FirstSteps), -1);
    QSignalSpy left(&window(), &Window::demoLeft);
    window().openMenu();
    emit window().choicePage()->chosen(menuPlace(MenuItem::LeaveDemo));
    ASSERT_EQ(left.count(), 1);
    EXPECT_FALSE(left.at(0).at(0).toBool());
    window().openMenu();
    emit window().choicePage()->chosen(menuPlace(MenuItem::RemoveDemo));
    ASSERT_EQ(left.count(), 2);
    EXPECT_TRUE(left.at(1).at(0).toBool());
    // A shop of its own leads to the first steps, and knows neither.
    const Menu own = menuFor(window().preferences());
    EXPECT_EQ(std::count(own.items.begin(), own.items.end(), MenuItem::FirstSteps), 1);
    EXPECT_EQ(std::count(own.items.begin(), own.items.end(), MenuItem::RemoveDemo), 0);
}

TEST_F(DemoWindow, PrintsACardThatSaysWhereItIsFrom) {
    choosePerson(1);
    givePin("2580");
    window().openNextCard();
    ASSERT_EQ(window().page(), PageKind::Card);
    emit window().currentPage()->slotPressed(SlotPlace::Stop);
    settle();
    const QDir papers(QString::fromStdString(demoPapersOf(folder())));
    const QStringList cards = papers.entryList({"*.pdf"});
    ASSERT_EQ(cards.size(), 1);
    const auto made = madeFiles(papers.path().toStdString());
    EXPECT_EQ(std::count(made.begin(), made.end(), cards.front().toStdString()), 1)
        << "a removal of the demo knows it for the demo's";
    const std::string command = "pdftotext '" + papers.filePath(cards.front()).toStdString() +
                                "' - | grep -q 'DEMO SHOP; Seamclock'";
    EXPECT_EQ(std::system(command.c_str()), 0);
}

TEST_F(DemoWindow, WeldsWhatCountsForNothing) {
    choosePerson(1);
    givePin("2580");
    window().openNextCard();
    emit window().currentPage()->slotPressed(SlotPlace::Step);
    ASSERT_EQ(window().page(), PageKind::Weld);
    ASSERT_TRUE(writer().flush());
    auto reader = LogReader::open(demoLogOf(folder()));
    ASSERT_TRUE(reader);
    const auto open = reader->openWelds();
    ASSERT_TRUE(open);
    ASSERT_EQ(open->size(), 1U);
    const auto events = reader->weldEvents(open->front());
    ASSERT_TRUE(events);
    EXPECT_EQ(std::get<WeldOpened>(events->front().d).type, WeldType::Practice);
}

TEST_F(DemoWindow, HasAMenuWhoseWordsAreWholeInEachLanguage) {
    for (const Language language : kLanguages) {
        for (const bool upright : {false, true}) {
            for (const double text : {1.0, 1.5, 2.0}) {
                Preferences next = window().preferences();
                next.language = language;
                next.text = text;
                window().resize(upright ? QSize(800, 1280) : QSize(1280, 800));
                window().setPreferences(next);
                window().openMenu();
                int parts = 0;
                for (const std::string& trouble : wordTroubles(window(), parts)) {
                    ADD_FAILURE() << codeOf(language).toStdString() << " text " << text
                                  << (upright ? ", upright: " : ": ") << trouble;
                }
                EXPECT_GT(parts, 5);
            }
        }
    }
    speak(Language::English);
}

} // namespace
} // namespace seamclock::test
