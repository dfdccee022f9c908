// lessons and practice: what can be practised, whether a lesson's file is sound, and what was made
// at the practice bench.
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/numbers.h"
#include "app/platform/data_folder.h"
#include "core/log/log_reader.h"
#include "core/practice/lesson_codec.h"
#include "core/practice/practice_history.h"
#include "core/practice/practice_json.h"
#include "core/practice/practice_shop.h"
#include "core/practice/practice_words.h"
#include "core/report/plain_text.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <fmt/format.h>
#include <memory>

namespace seamclock {
namespace {

constexpr std::int64_t kHighestNumber = 1'000'000'000;

struct LessonsCall {
    std::vector<std::string> files;
    std::string own; // empty: beside the practice log of this user
    bool json = false;
};

struct PracticeCall {
    std::string log;
    std::string by;
    std::optional<std::string> take;
    bool json = false;
};

Result<int> listLessons(const LessonsCall& call, Terminal& terminal) {
    const auto folder = resourceFolder();
    if (!folder) {
        return tl::unexpected(folder.error());
    }
    std::string own = call.own;
    if (own.empty()) {
        const auto log = practiceLogPath(); // without a home there are none
        own = log ? ownLessonFolder(*log) : std::string();
    }
    const auto shelf = readLessons(*folder + "/lessons", own);
    if (!shelf) {
        return tl::unexpected(shelf.error());
    }
    for (const std::string& leftOut : shelf->leftOut) {
        Terminal::complain("left out: " + onOneLine(leftOut));
    }
    const std::vector<Lesson>& lessons = shelf->lessons;
    const int status = shelf->leftOut.empty() ? 0 : 1;
    if (call.json) {
        terminal.write(lessonsJson(lessons));
        return status;
    }
    std::vector<std::vector<std::string>> rows = {{"id", "title", "sheet", "what it teaches"}};
    for (const Lesson& lesson : lessons) {
        rows.push_back(
            {lesson.id, onOneLine(lesson.title),
             lesson.material + ", " + fromThousandths(lesson.thicknessUm) + " mm",
             onOneLine(lesson.teaches)});
    }
    terminal.write(aligned(rows, 0));
    return status;
}

Result<int> checkLessons(const LessonsCall& call, Terminal& terminal) {
    std::vector<std::pair<std::string, std::vector<LessonFinding>>> all;
    bool sound = true;
    for (const std::string& file : call.files) {
        const auto text = readText(file);
        if (!text) {
            return tl::unexpected(text.error());
        }
        all.emplace_back(file, checkLesson(file, *text));
        sound = sound && all.back().second.empty();
    }
    if (call.json) {
        terminal.write(lessonFindingsJson(all));
        return sound ? 0 : 1;
    }
    for (const auto& [file, findings] : all) {
        if (findings.empty()) {
            terminal.write(onOneLine(file) + ": sound\n");
        }
        for (const LessonFinding& finding : findings) {
            terminal.write(
                onOneLine(fmt::format(
                    "{}:{}: {}{}", file, finding.line,
                    finding.field.empty() ? "" : finding.field + ": ", finding.reason)) +
                "\n");
        }
    }
    return sound ? 0 : 1;
}

std::string lapsesOf(const PracticeLine& line) {
    std::string all;
    for (const Lapse lapse : line.lapses) {
        all += (all.empty() ? "" : ", ") + std::string(toString(lapse));
    }
    return all;
}

void writeHistory(const std::vector<PracticeLine>& lines, Terminal& terminal) {
    if (lines.empty()) {
        terminal.write("No practice weld was kept here.\n");
        return;
    }
    std::vector<std::vector<std::string>> rows = {
        {"no.", "when", "who", "lesson", "verdict", "bend test", "in limits", "noticed",
         "mistakes"}};
    for (const PracticeLine& line : lines) {
        if (line.brokenOff) {
            rows.push_back(
                {std::to_string(line.number), toIsoLocal(line.at.utc, line.at.offset).substr(0, 16),
                 onOneLine(line.by), onOneLine(line.lesson), "broken off", "", "", "",
                 line.left ? "practice was left in mid-weld" : "the program ended in mid-weld"});
            continue;
        }
        rows.push_back(
            {std::to_string(line.number), toIsoLocal(line.at.utc, line.at.offset).substr(0, 16),
             onOneLine(line.by), onOneLine(line.lesson), std::string(toString(line.verdict)),
             line.ductile ? "bends" : "breaks", fmt::format("{} of {}", line.inLimits, line.judged),
             line.toNotice == 0 ? "" : fmt::format("{} of {}", line.noticed, line.toNotice),
             lapsesOf(line)});
    }
    terminal.write(aligned(rows, 0));
}

Result<PracticeScore> scoreOf(LogReader& log, const PracticeLine& line) {
    const auto kept = keptTake(log, line);
    if (!kept) {
        return tl::unexpected(kept.error());
    }
    const auto folder = resourceFolder();
    if (!folder) {
        return tl::unexpected(folder.error());
    }
    const auto shop = practiceShop(*folder, &log);
    if (!shop) {
        return tl::unexpected(shop.error());
    }
    const auto set = setLesson(kept->lesson, shopOf(*kept, *shop), LessonFor::MadeAlready);
    if (!set) {
        return tl::unexpected(set.error());
    }
    const auto events = log.weldEvents(line.weld);
    if (!events) {
        return tl::unexpected(events.error());
    }
    auto weld = fold(*events);
    if (!weld) {
        return tl::unexpected(weld.error());
    }
    const auto replay = PracticeReplay::make(set->setup, kept->take);
    if (!replay) {
        return tl::unexpected(replay.error());
    }
    const auto planned = plannedJoint(*set);
    if (!planned) {
        return tl::unexpected(planned.error());
    }
    return practiceScore(*set, record(std::move(*weld)), *replay, *planned);
}

Result<int> showTake(
    const PracticeCall& call, LogReader& log, const std::vector<PracticeLine>& lines,
    Terminal& terminal) {
    const auto number = parseInteger("--take", *call.take, 1, kHighestNumber);
    if (!number) {
        return tl::unexpected(number.error());
    }
    const auto line = std::find_if(lines.begin(), lines.end(), [&](const PracticeLine& each) {
        return each.number == *number;
    });
    if (line == lines.end()) {
        return fail(
            ErrorCode::Missing,
            "--take " + *call.take + ": " + call.log + " keeps no practice weld of that number");
    }
    const auto score = scoreOf(log, *line);
    if (!score) {
        return tl::unexpected(score.error());
    }
    if (call.json) {
        terminal.write(scoreJson(*line, *score));
        return 0;
    }
    std::string text = headline(onOneLine(line->lessonTitle) + ", practice weld no. " + *call.take);
    for (const std::string& sentence : practiceWords(*score)) {
        text += wrapped(onOneLine(sentence), 2) + "\n";
    }
    terminal.write(text);
    return 0;
}

Result<int> showPractice(const PracticeCall& call, Terminal& terminal) {
    auto log = LogReader::open(call.log);
    if (!log) {
        return tl::unexpected(log.error());
    }
    const auto lines = practiceHistory(*log, call.by);
    if (!lines) {
        return tl::unexpected(lines.error());
    }
    if (call.take) {
        return showTake(call, *log, *lines, terminal);
    }
    if (call.json) {
        terminal.write(historyJson(*lines));
    } else {
        writeHistory(*lines, terminal);
    }
    return 0;
}

} // namespace

void addPractice(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto lessons = std::make_shared<LessonsCall>();
    CLI::App* list = root.add_subcommand("lessons", "What can be practised at the virtual bench.");
    list->require_subcommand(0, 1);
    list->add_option(
        "--own", lessons->own,
        "FOLDER with the shop's own lessons; else \"lessons\" beside the practice log");
    CLI::App* check = list->add_subcommand("check", "Whether lessons' files are sound.");
    check->add_option("FILE", lessons->files, "a lesson's JSON file")->required();
    for (CLI::App* words : {list, check}) {
        words->add_flag("--json", lessons->json, "as JSON");
    }
    commands.push_back({list, [lessons, &terminal] { return listLessons(*lessons, terminal); }});
    commands.push_back({check, [lessons, &terminal] { return checkLessons(*lessons, terminal); }});

    auto call = std::make_shared<PracticeCall>();
    CLI::App* practice = root.add_subcommand(
        "practice", "What was made at the practice bench, and how it was scored.");
    practice->add_option("LOG", call->log, "a practice log's FILE")->required();
    practice->add_option("--by", call->by, "of one person: person:ID");
    practice->add_option("--take", call->take, "the score of the weld with this number");
    practice->add_flag("--json", call->json, "as JSON");
    commands.push_back({practice, [call, &terminal] { return showPractice(*call, terminal); }});
}

} // namespace seamclock
