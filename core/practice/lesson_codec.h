// Lessons from JSON files (resources/lessons/README.md describes the fields), and the document that
// a practice log keeps of one.
#pragma once

#include "core/practice/lesson.h"

#include <string>
#include <string_view>
#include <vector>

namespace seamclock {

/// One thing that is wrong with a lesson's file.
struct LessonFinding {
    int line = 0;      // from 1
    std::string field; // JSON pointer
    std::string reason;

    bool operator==(const LessonFinding&) const = default;
};

/// All findings of a file's text; empty: the lesson is sound. Syntax errors are findings too.
std::vector<LessonFinding> checkLesson(std::string_view name, std::string_view text);

/// Malformed with the first finding.
Result<Lesson> readLesson(std::string_view name, std::string_view text);
/// Also Unreadable.
Result<Lesson> readLessonFile(const std::string& path);

/// All *.json of a folder, by place and then id. Unreadable if the folder is not there; Missing if
/// it holds none; Conflict: two with one id.
Result<std::vector<Lesson>> readLessonFolder(const std::string& folder);

/// Read back it gives the same lesson.
std::string lessonText(const Lesson& lesson);

} // namespace seamclock
