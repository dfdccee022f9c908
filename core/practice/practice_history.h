// What a trainee has made so far, from the practice log: one line for each take, in his name.
#pragma once

#include "core/log/log_reader.h"
#include "core/log/log_writer.h"
#include "core/practice/practice_score.h"

#include <string>
#include <vector>

namespace seamclock {

struct PracticeLine {
    std::string by; // "person:ID"
    Instant at;     // when the take was over, on its own clock
    std::string lesson;
    std::string lessonTitle;
    std::string weld;
    std::int64_t number = 0;
    VerdictWord verdict = VerdictWord::Incomplete;
    int judged = 0;
    int inLimits = 0;
    std::optional<Milliseconds> reaction; // the middle one
    int readingErrors = 0;
    int orderErrors = 0;
    int noticed = 0;
    int toNotice = 0;
    bool ductile = false; // the bend test, everywhere
    std::vector<Lapse> lapses;
    std::string takeSha256; // the document
    /// The program ended or practice was left in mid-weld (broken_off.h): no take was kept and
    /// nothing is judged; `at` is that of the last step, the title is the lesson's id.
    bool brokenOff = false;
    bool left = false; // then: by the trainee

    bool operator==(const PracticeLine&) const = default;
};

/// Keeps take and lesson, and the procedure and bench they were made by, as documents and the score
/// as a fact (`practice_made`, of the subject "practice:UUID" where the weld is "weld:UUID") in the
/// trainee's name. Only a practice log takes it, by type. As LogWriter::submit.
Result<void> keepTake(
    LogWriter<Practice>& writer, const PracticeTake& take, const SetLesson& set,
    const PracticeScore& score, const std::string& by, const Instant& at);

/// Newest first, with those that were broken off; of one person or, with an empty `by`, of all.
/// Foreign: a log of production.
Result<std::vector<PracticeLine>> practiceHistory(LogReader& log, const std::string& by);

struct KeptTake {
    PracticeTake take;
    Lesson lesson;
    // By which it was made; absent in a take that does not say.
    std::optional<ProcedureDocument> procedure;
    std::optional<BenchDocument> bench;
};
/// Missing: the log has no such take.
Result<KeptTake> keptTake(LogReader& log, const PracticeLine& line);

/// The shop as it was when the take was made: its procedure and bench in the place of today's, or
/// beside them where the shop has none of that id any more.
PracticeShop shopOf(const KeptTake& kept, PracticeShop today);

} // namespace seamclock
