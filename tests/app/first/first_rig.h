// A shop that nobody has worked in yet, with the window of its first start, on a clock that only
// the test moves. The window can be dropped and opened again as after a crash: nothing is said
// farewell to, and what is there then is what was kept.
#pragma once

#include "app/first/first_walk.h"
#include "app/first/first_window.h"
#include "core/log/world.h"
#include "core/practice/virtual_clock.h"
#include "core/session/session.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>
#include <memory>
#include <string>
#include <vector>

namespace seamclock::test {

inline Instant firstMorning() {
    Instant start;
    start.boot = std::chrono::milliseconds(7'200'000);
    start.bootId = "practice:5c1b0a51-8d14-4d27-9d51-2f7c8a9be001";
    start.utc = std::chrono::milliseconds(1'893'996'000'000); // 2030-01-07T06:00Z
    start.offset = std::chrono::minutes(60);
    return start;
}

class FirstRig {
public:
    /// `folder`: of the shop; empty: one that goes with this.
    explicit FirstRig(const Preferences& preferences = {}, std::string folder = {})
        : m_folder(folder.empty() ? m_scratch.file("shop") : std::move(folder)),
          m_clock(firstMorning()), m_preferences(preferences) {
        std::filesystem::create_directories(m_folder);
        m_preferences.dpi = kUnitsPerInch;
        auto procedures =
            readProcedureFolder(std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/procedures");
        EXPECT_TRUE(procedures);
        m_procedures = std::move(*procedures);
        open();
    }

    /// As after a crash: the window goes, and another comes.
    void again() {
        m_clock.advance(std::chrono::seconds(20));
        close();
        m_preferences = readPreferences(settings());
        m_preferences.dpi = kUnitsPerInch;
        open();
    }
    void close() {
        m_window.reset();
        m_desk.reset();
        m_floor.reset();
        m_session.reset();
        m_writer.reset();
    }

    FirstWindow& window() { return *m_window; }
    Floor& floor() { return *m_floor; }
    Desk& desk() { return *m_desk; }
    LogWriterBase& writer() { return *m_writer; }
    VirtualClock& clock() { return m_clock; }
    const std::vector<ProcedureDocument>& procedures() const { return m_procedures; }
    const std::string& folder() const { return m_folder; }
    std::string log() const { return m_folder + "/joints.seamlog"; }
    QString settings() const { return QString::fromStdString(m_folder + "/seamclock.ini"); }
    std::string demoFolder() const { return m_folder + "/demo-shop"; }

    // What the window asked for.
    int finished = 0;
    bool card = false;
    int demos = 0;
    int quits = 0;
    std::function<Result<void>()> makeDemo = [] { return Result<void>(); };

private:
    void open() {
        auto writer = LogWriter<Production>::open(log(), m_clock);
        ASSERT_TRUE(writer) << writer.error().detail;
        m_writer = std::make_unique<LogWriter<Production>>(std::move(*writer));
        auto session = Session<Production>::start(*m_writer, m_clock);
        ASSERT_TRUE(session) << session.error().detail;
        m_session = std::make_unique<Session<Production>>(std::move(*session));
        m_floor = std::make_unique<Floor>(*m_session, *m_writer, m_clock, m_procedures, "station");
        const auto taken = m_floor->takeUpShelf();
        ASSERT_TRUE(taken) << taken.error().detail;
        auto desk = Desk::open(*m_writer, m_clock);
        ASSERT_TRUE(desk) << desk.error().detail;
        m_desk = std::move(*desk);
        m_window = std::make_unique<FirstWindow>(FirstParts{
            *m_floor, *m_desk, m_preferences, settings(),
            QString::fromStdString(m_folder + "/documents"), demoFolder(),
            [this] { return makeDemo(); }});
        QObject::connect(
            m_window.get(), &FirstWindow::finished, m_window.get(), [this](bool wants) {
                ++finished;
                card = wants;
            });
        QObject::connect(
            m_window.get(), &FirstWindow::demoAsked, m_window.get(), [this] { ++demos; });
        QObject::connect(
            m_window.get(), &FirstWindow::quitAsked, m_window.get(), [this] { ++quits; });
        m_window->resize(1280, 800);
        m_window->QWidget::show();
    }

    ScratchFolder m_scratch;
    std::string m_folder;
    VirtualClock m_clock;
    Preferences m_preferences;
    std::vector<ProcedureDocument> m_procedures;
    std::unique_ptr<LogWriter<Production>> m_writer;
    std::unique_ptr<Session<Production>> m_session;
    std::unique_ptr<Floor> m_floor;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<FirstWindow> m_window;
};

} // namespace seamclock::test
