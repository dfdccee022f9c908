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

/// A shop's own lessons behind those that came with the program.
struct LessonShelf {
    std::vector<Lesson> lessons;      // their places counted on, from 1
    std::vector<std::string> leftOut; // of the shop's own: which file, and what is wrong with it
};
/// Where a shop's own lessons lie: the folder `lessons` beside its practice log.
std::string ownLessonFolder(const std::string& practiceLog);
/// `own`: a folder that need not be there. One of its files that is wrong, or has an id that is
/// taken, is left out and named; the program's own lessons are as readLessonFolder has them.
Result<LessonShelf> readLessons(const std::string& shipped, const std::string& own);

/// Read back it gives the same lesson.
std::string lessonText(const Lesson& lesson);

} // namespace seamclock
