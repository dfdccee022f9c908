// The trainee's window over the demo's benches and the lessons that ship, on a machine's clock that
// only the test moves, with a practice log of its own that goes with it.
#pragma once

#include "app/guide/guide.h"
#include "app/practice/practice_walk.h"
#include "core/heat/material_codec.h"
#include "core/practice/lesson_codec.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/shipped.h"

#include <gtest/gtest.h>
#include <memory>

namespace seamclock::test {

inline Instant practiceMorning() {
    Instant start;
    start.boot = std::chrono::milliseconds(7'200'000);
    start.bootId = "practice:6c1f8a30-52c4-4f55-8e9a-0f5b9d1e7a11";
    start.utc = std::chrono::milliseconds(1'893'996'000'000);
    start.offset = std::chrono::minutes(60);
    return start;
}

inline PracticeShop practiceShop() {
    PracticeShop shop;
    auto procedures = readProcedureFolder(resource("procedures"));
    auto materials = readMaterialFolder(resource("materials"));
    EXPECT_TRUE(procedures && materials) << "the resources are not there";
    if (procedures && materials) {
        shop.procedures = std::move(*procedures);
        shop.materials = std::move(*materials);
    }
    for (const char* name : {"east", "west"}) {
        auto bench = readBenchFile(resource("demo/bench-" + std::string(name) + ".json"));
        EXPECT_TRUE(bench) << name;
        if (bench) {
            shop.benches.push_back(std::move(*bench));
        }
    }
    return shop;
}

class Practising {
public:
    explicit Practising(
        QSize size = QSize(1280, 800), Preferences preferences = {}, const QString& who = {},
        std::string log = {}, PracticeSound* sound = nullptr)
        : m_log(log.empty() ? m_folder.file("practice.seamlog") : std::move(log)),
          m_machine(practiceMorning()) {
        auto lessons = readLessonFolder(resource("lessons"));
        EXPECT_TRUE(lessons) << (lessons ? "" : lessons.error().detail);
        if (!lessons) {
            return;
        }
        auto room = PracticeRoom::open(
            m_machine.now(), practiceShop(), std::move(*lessons), m_log, "person:ilva");
        EXPECT_TRUE(room) << (room ? "" : room.error().detail);
        if (!room) {
            return;
        }
        m_room = std::move(*room);
        preferences.dpi = kUnitsPerInch;
        PracticeWindowParts parts{
            *m_room, m_machine, preferences, who, QString::fromStdString(documents())};
        parts.sound = sound;
        parts.readGuide = [] {
            return seamclock::readGuide(QString(SEAMCLOCK_SOURCE_DIR) + "/docs/guide", {});
        };
        m_window = std::make_unique<PracticeWindow>(std::move(parts));
        m_window->stopTimer();
        m_window->resize(size);
        m_window->QWidget::show();
        m_walk = std::make_unique<PracticeWalk>(*m_window, *m_room, m_machine);
    }

    PracticeWindow& window() { return *m_window; }
    PracticeRoom& room() { return *m_room; }
    PracticeWalk& walk() { return *m_walk; }
    VirtualClock& machine() { return m_machine; }
    const std::string& log() const { return m_log; }
    std::string documents() const { return m_folder.file("documents"); }
    std::string file(const std::string& name) const { return m_folder.file(name); }

private:
    ScratchFolder m_folder;
    std::string m_log; // in that folder, unless it was given
    VirtualClock m_machine;
    std::unique_ptr<PracticeRoom> m_room;
    std::unique_ptr<PracticeWindow> m_window;
    std::unique_ptr<PracticeWalk> m_walk;
};

} // namespace seamclock::test
