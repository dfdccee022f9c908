#include "app/cli/command_line.h"

#include "app/cli/command.h"
#include "app/cli/numbers.h"

#include <CLI/CLI.hpp>
#include <csignal>
#include <exception>
#include <new>

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
        path = one->get_name() + (path.empty() ? "" : " ") + path;
    }
    return path.empty() ? "" : path + ": ";
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
        add(option->nonpositional() ? option->get_name() : option->get_name(true));
    }
    return words;
}

/// What a complaint of the parser is about, as its option's own description says what is allowed.
std::string allowedFor(const CLI::App& command, const std::string& complaint) {
    for (const CLI::Option* option : command.get_options()) {
        const std::string name =
            option->nonpositional() ? option->get_name() : option->get_name(true);
        const std::size_t at = complaint.find(name);
        const bool whole =
            at != std::string::npos &&
            (at + name.size() == complaint.size() ||
             std::string_view(" :,").find(complaint[at + name.size()]) != std::string_view::npos);
        if (whole) {
            return "; allowed: " + option->get_description();
        }
    }
    return "; allowed: " + allowedWords(command);
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
        const std::string what = error.what();
        Terminal::complain(path + what + allowedFor(command, what));
    }
    return kUsage;
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
    addBench(root, commands, terminal);
    addRehearse(root, commands, terminal);
    addLog(root, commands, terminal);
    try {
        root.parse(argc, argv);
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
