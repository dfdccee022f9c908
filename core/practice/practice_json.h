// What the terminal prints of practice with --json. Each text is one JSON value and ends with a
// line feed.
#pragma once

#include "core/practice/lesson_codec.h"
#include "core/practice/practice_history.h"

#include <string>
#include <utility>
#include <vector>

namespace seamclock {

std::string lessonsJson(const std::vector<Lesson>& lessons);
/// By file.
std::string
lessonFindingsJson(const std::vector<std::pair<std::string, std::vector<LessonFinding>>>& findings);
std::string historyJson(const std::vector<PracticeLine>& lines);
/// With the sentences of practice_words.h under "words".
std::string scoreJson(const PracticeLine& line, const PracticeScore& score);

} // namespace seamclock
