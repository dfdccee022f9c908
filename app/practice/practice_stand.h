// Practice as the program opens it: lessons read, log opened, window shown over the operator's,
// until the trainee leaves it. The joining of parts, and nothing else.
#pragma once

#include "app/guide/guide_flow.h"
#include "app/practice/practice_window.h"

#include <memory>
#include <string>

namespace seamclock {

struct PracticeOrder {
    const Clock& machine;
    PracticeShop shop;
    std::string lessonFolder; // resources/lessons
    /// Made with its folder if it isn't there; a shop's own lessons are in `lessons` beside it.
    std::string logPath;
    std::string by = "person:practice";
    QString who{};
    Preferences preferences{};
    QString reports{};
    std::string lesson{}; // to begin with; empty: the list
    PracticeSound* sound = nullptr;
    GuideFlow::Read readGuide{}; // empty: there is none
};

class PracticeStand {
public:
    /// Errors as readLessonFolder and PracticeRoom::open; Missing: no such lesson. The clock must
    /// outlive it.
    static Result<std::unique_ptr<PracticeStand>> open(PracticeOrder order);

    PracticeRoom& room() { return *m_room; }
    PracticeWindow& window() { return *m_window; }

private:
    PracticeStand() = default;

    std::unique_ptr<PracticeRoom> m_room;
    std::unique_ptr<PracticeWindow> m_window; // gone before the room
};

} // namespace seamclock
