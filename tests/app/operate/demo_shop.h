// The demo job with its benches in a window, on a clock that only the test moves, with a log of its
// own that goes with it. Sizes are a 10.0 inch screen's, whatever the machine's screen says.
#pragma once

#include "app/operate/pictures.h"
#include "app/operate/window.h"
#include "core/heat/material_codec.h"
#include "core/log/world.h"
#include "tests/support/scratch_folder.h"

#include <functional>
#include <gtest/gtest.h>
#include <memory>
#include <mutex>

namespace seamclock {

inline Instant morning() {
    Instant start;
    start.boot = std::chrono::milliseconds(7'200'000);
    start.bootId = "practice:9f6f2a0c-4f0e-4a57-8f0b-93a1c5d5e0aa";
    start.utc = std::chrono::milliseconds(1'893'996'000'000);
    start.offset = std::chrono::minutes(60);
    return start;
}

class Shop {
public:
    explicit Shop(
        QSize size = QSize(1280, 800), const Preferences& preferences = {},
        const std::string& jobFolder = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/demo",
        const std::function<void(WindowParts&)>& more = {})
        : m_size(size), m_preferences(preferences), m_jobFolder(jobFolder), m_more(more),
          m_clock(std::make_unique<VirtualClock>(morning())) {
        open();
    }

    /// The power goes, and comes back 42 s later: the same log, in a program and on a boot clock
    /// that are new. Nothing of the window, the floor and the clock before may be held.
    void cutPower() {
        ASSERT_TRUE(m_writer->flush());
        Instant back = m_clock->now();
        back.boot = std::chrono::seconds(35);
        back.bootId = "practice:0b7e2c55-61f4-4d2b-9a40-c1d7a5e93b02";
        back.utc += std::chrono::seconds(42);
        m_window.reset();
        m_desk.reset();
        m_floor.reset();
        m_session.reset();
        m_writer.reset();
        m_clock = std::make_unique<VirtualClock>(back);
        open();
    }

    Window& window() { return *m_window; }
    Floor& floor() { return *m_floor; }
    Desk& desk() { return *m_desk; }
    std::string documents() const { return m_folder.file("documents"); }
    VirtualClock& clock() { return *m_clock; }
    LogWriterBase& writer() { return *m_writer; }
    /// Nothing more is told to be on disk while it is held.
    std::unique_lock<std::mutex> heldDisk() { return std::unique_lock<std::mutex>(m_disk); }
    std::string log() const { return m_folder.file("walk.seamlog"); }

private:
    void open() {
        const std::string resources = std::string(SEAMCLOCK_SOURCE_DIR) + "/resources/";
        auto procedures = readProcedureFolder(resources + "procedures");
        auto job = readFirstJob(m_jobFolder);
        LogWriterOptions options;
        options.changed = [this] { const std::lock_guard<std::mutex> passing(m_disk); };
        auto writer = LogWriter<Production>::open(m_folder.file("walk.seamlog"), *m_clock, options);
        if (!procedures || !job || !writer) {
            ADD_FAILURE() << "the demo is not there";
            return;
        }
        m_writer = std::make_unique<LogWriter<Production>>(std::move(*writer));
        auto session = Session<Production>::start(*m_writer, *m_clock);
        if (!session) {
            ADD_FAILURE() << session.error().detail;
            return;
        }
        m_session = std::make_unique<Session<Production>>(std::move(*session));
        m_floor =
            std::make_unique<Floor>(*m_session, *m_writer, *m_clock, *procedures, job->operatorId);
        if (auto materials = readMaterialFolder(resources + "materials")) {
            m_floor->setMaterials(std::move(*materials));
        }
        for (const JobSeam& seam : job->seams) {
            const auto bench = readBenchFile(seam.benchFile);
            if (bench) {
                static_cast<void>(m_floor->addBench(*bench)); // another seam's
            }
        }
        if (const auto taken = m_floor->takeUpFound(); !taken) {
            ADD_FAILURE() << taken.error().detail;
        }
        auto desk = Desk::open(*m_writer, *m_clock);
        if (!desk) {
            ADD_FAILURE() << desk.error().detail;
            return;
        }
        m_desk = std::move(*desk);
        WindowParts parts{*m_floor,      *m_writer,
                          *m_desk,       job->seams,
                          m_preferences, QString::fromStdString(m_folder.file("settings.ini"))};
        parts.reports = QString::fromStdString(m_folder.file("documents"));
        parts.preferences.dpi = kUnitsPerInch;
        if (m_more) {
            m_more(parts);
        }
        m_window = std::make_unique<Window>(std::move(parts));
        m_window->resize(m_size);
        m_window->QWidget::show();
    }

    QSize m_size;
    Preferences m_preferences;
    std::string m_jobFolder;
    std::function<void(WindowParts&)> m_more;
    test::ScratchFolder m_folder;
    std::unique_ptr<VirtualClock> m_clock;
    std::mutex m_disk;
    std::unique_ptr<LogWriter<Production>> m_writer;
    std::unique_ptr<Session<Production>> m_session;
    std::unique_ptr<Floor> m_floor;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Window> m_window;
};

} // namespace seamclock
