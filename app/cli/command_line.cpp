#include "app/cli/command_line.h"

#include "app/cli/command.h"
#include "app/cli/numbers.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <csignal>
#include <exception>
#include <new>
#include <string>
#include <vector>

namespace seamclock {
namespace {

constexpr int kDone = 0;
constexpr int kUsage = 2;

/// The deepest command whose words were read.
const CLI::App& commandOf(const CLI::App& root) {
    const CLI::App* command = &root;
    for (auto below = command->get_subcommands(); !below.empty();
         below = command->get_subcommands()) {
        command = below.back();
    }
    return *command;
}

std::string pathOf(const CLI::App& root, const CLI::App& command) {
    std::string path;
    for (const CLI::App* one = &command; one != &root && one != nullptr; one = one->get_parent()) {
        path.insert(0, one->get_name() + (path.empty() ? "" : " "));
    }
    return path.empty() ? path : path.append(": ");
}

std::string nameOf(const CLI::Option& option) {
    return option.nonpositional() ? option.get_name() : option.get_name(true);
}

std::string allowedWords(const CLI::App& command) {
    std::string words;
    const auto add = [&words](const std::string& word) {
        words += (words.empty() ? "" : ", ") + word;
    };
    for (const CLI::App* below : command.get_subcommands(nullptr)) {
        add(below->get_name());
    }
    for (const CLI::Option* option : command.get_options()) {
        add(nameOf(*option));
    }
    return words;
}

/// The option that a complaint of the parser is about, if any.
const CLI::Option* optionIn(const CLI::App& command, const std::string& complaint) {
    for (const CLI::Option* option : command.get_options()) {
        const std::string name = nameOf(*option);
        const std::size_t at = complaint.find(name);
        const std::size_t end = at + name.size();
        const bool whole = at != std::string::npos &&
                           (end == complaint.size() ||
                            std::string_view(" :,").find(complaint[end]) != std::string_view::npos);
        if (whole) {
            return option;
        }
    }
    return nullptr;
}

/// The parser's complaint in our words, with what is allowed instead.
std::string sentenceFor(const CLI::App& command, const CLI::ParseError& error) {
    const std::string what = error.what();
    const CLI::Option* option = optionIn(command, what);
    if (option == nullptr) {
        return what + "; allowed: " + allowedWords(command);
    }
    const std::string name = nameOf(*option);
    if (option->get_items_expected_max() == 0) {
        return name + " takes no value; allowed: " + name + " alone";
    }
    const std::string allowed = "; allowed: " + option->get_description();
    if (dynamic_cast<const CLI::RequiredError*>(&error) != nullptr) {
        return name + " is required" + allowed;
    }
    if (dynamic_cast<const CLI::ArgumentMismatch*>(&error) != nullptr) {
        const bool tooMany = what.find("At Most") != std::string::npos;
        return name + (tooMany ? " is given more than once" : " needs a value") + allowed;
    }
    return what + allowed;
}

int complainOf(const CLI::App& root, const CLI::ParseError& error) {
    const CLI::App& command = commandOf(root);
    const std::string path = pathOf(root, command);
    const auto left = root.remaining(true);
    if (!left.empty() && dynamic_cast<const CLI::ExtrasError*>(&error) != nullptr) {
        Terminal::complain(
            path + inQuotes(left.front()) +
            " is not known here; allowed: " + allowedWords(command));
    } else {
        Terminal::complain(path + sentenceFor(command, error));
    }
    return kUsage;
}

/// The words of the call, last first, as the parser wants them. "--drag=" becomes two words, since
/// the parser would otherwise take the next option for its value.
std::vector<std::string> wordsOf(int argc, const char* const* argv) {
    std::vector<std::string> words;
    for (int i = 1; i < argc; ++i) {
        std::string word = argv[i];
        if (word.size() > 3 && word.rfind("--", 0) == 0 && word.find('=') == word.size() - 1) {
            word.pop_back();
            words.push_back(word);
            word.clear();
        }
        words.push_back(std::move(word));
    }
    std::reverse(words.begin(), words.end());
    return words;
}

/// An option's value never looks like an option: then its own is missing.
void refuseOptionsAsValues(CLI::App& command) {
    for (CLI::Option* option : command.get_options()) {
        if (option->get_items_expected_max() > 0) {
            option->check([](const std::string& value) {
                return value.rfind("--", 0) == 0 ? "needs a value before " + inQuotes(value)
                                                 : std::string();
            });
        }
    }
    for (CLI::App* below : command.get_subcommands(nullptr)) {
        refuseOptionsAsValues(*below);
    }
}

int finished(Terminal& terminal, int status) {
    const auto out = terminal.finish();
    if (!out) {
        Terminal::complain(out.error().detail);
        return kUsage;
    }
    return status;
}

int runChosen(const CLI::App& root, const Commands& commands, Terminal& terminal) {
    const NamedCommand* chosen = nullptr;
    for (const NamedCommand& one : commands) {
        chosen = one.words->parsed() ? &one : chosen;
    }
    const CLI::App& command = commandOf(root);
    if (chosen == nullptr || chosen->words != &command) {
        Terminal::complain(
            pathOf(root, command) + "no command was given; allowed: " + allowedWords(command));
        return kUsage;
    }
    const Result<int> status = chosen->run();
    if (!status) {
        // What was written before stays written; the sentence comes after it.
        static_cast<void>(terminal.finish());
        Terminal::complain(pathOf(root, command) + status.error().detail);
        return kUsage;
    }
    return finished(terminal, *status);
}

int readAndRun(int argc, const char* const* argv) {
    Terminal terminal;
    CLI::App root(
        "Leads and records heated-tool butt welds of thermoplastic sheet.", "seamclock-cli");
    root.set_version_flag("--version", "seamclock-cli " SEAMCLOCK_VERSION);
    root.require_subcommand(0, 1);
    Commands commands;
    addProcedures(root, commands, terminal);
    addPlan(root, commands, terminal);
    addHeat(root, commands, terminal);
    addBench(root, commands, terminal);
    addJob(root, commands, terminal);
    addJobDay(root, commands, terminal);
    addRehearse(root, commands, terminal);
    addPractice(root, commands, terminal);
    addLog(root, commands, terminal);
    addBatch(root, commands, terminal);
    addForeman(root, commands, terminal);
    addEvidence(root, commands, terminal);
    addCoupons(root, commands, terminal);
    addCharts(root, commands, terminal);
    refuseOptionsAsValues(root);
    try {
        root.parse(wordsOf(argc, argv));
    } catch (const CLI::CallForHelp&) {
        terminal.write(root.help());
        return finished(terminal, kDone);
    } catch (const CLI::CallForVersion& version) {
        terminal.write(std::string(version.what()) + "\n");
        return finished(terminal, kDone);
    } catch (const CLI::ParseError& error) {
        return complainOf(root, error);
    }
    return runChosen(root, commands, terminal);
}

} // namespace

int runCommandLine(int argc, const char* const* argv) {
    // A reader that went away is a failed write, told like any other.
    std::signal(SIGPIPE, SIG_IGN);
    try {
        return readAndRun(argc, argv);
    } catch (const std::bad_alloc&) {
        Terminal::complain("there is not enough memory for this");
    } catch (const std::exception& stray) {
        Terminal::complain(
            std::string("a fault of this program, not of its input: ") + stray.what());
    } catch (...) {
        Terminal::complain("a fault of this program, not of its input");
    }
    return kUsage;
}

} // namespace seamclock
