// How the terminal program is put together: each group of commands adds its words to the command
// line and leaves a function for each command behind. The command line reads the words and calls
// the one that was asked for.
#pragma once

#include "app/cli/terminal.h"
#include "core/base/result.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace seamclock {

class LogReader;

/// The exit status of what was done (0, or 1 for the answer "no" of verify and check), or why its
/// input won't do.
using Command = std::function<Result<int>()>;

struct NamedCommand {
    CLI::App* words = nullptr;
    Command run;
};

/// A command's parent stands before it.
using Commands = std::vector<NamedCommand>;

void addProcedures(CLI::App& root, Commands& commands, Terminal& terminal);
/// Within "procedures".
void addProcedureFacts(CLI::App& procedures, Commands& commands, Terminal& terminal);
void addPlan(CLI::App& root, Commands& commands, Terminal& terminal);
void addHeat(CLI::App& root, Commands& commands, Terminal& terminal);
void addJob(CLI::App& root, Commands& commands, Terminal& terminal);
/// Within "job".
void addJobDay(CLI::App& root, Commands& commands, Terminal& terminal);
void addCharts(CLI::App& root, Commands& commands, Terminal& terminal);
void addCoupons(CLI::App& root, Commands& commands, Terminal& terminal);
void addBench(CLI::App& root, Commands& commands, Terminal& terminal);
void addRehearse(CLI::App& root, Commands& commands, Terminal& terminal);
void addPractice(CLI::App& root, Commands& commands, Terminal& terminal);
void addLog(CLI::App& root, Commands& commands, Terminal& terminal);
/// Within "log".
void addLogCopies(CLI::App& log, Commands& commands, Terminal& terminal);
/// These add to the words of log, too, so they come after it.
void addBatch(CLI::App& root, Commands& commands, Terminal& terminal);
void addForeman(CLI::App& root, Commands& commands, Terminal& terminal);
void addEvidence(CLI::App& root, Commands& commands, Terminal& terminal);

/// The weld that --joint or --weld names; without them the one with the highest number.
Result<std::string> chooseWeld(
    LogReader& reader, const std::string& log, const std::optional<std::string>& joint,
    const std::optional<std::string>& weld);

} // namespace seamclock
