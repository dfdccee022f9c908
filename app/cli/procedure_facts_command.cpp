// procedures set, attest and withdraw: what a foreman says of procedures, into a log. His PIN comes
// on standard input (pin_input.h). The window program must not be running on the same log.
#include "app/cli/command.h"
#include "app/cli/files.h"
#include "app/cli/foreman_desk.h"
#include "app/cli/numbers.h"
#include "app/cli/output_json.h"
#include "core/procedure/cells.h"
#include "core/report/plain_text.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <memory>

namespace seamclock {
namespace {

struct FactsCall {
    std::string subject; // an id, or a file
    std::string log;
    std::optional<std::string> by;
    std::string edition;
    std::string reason;
    std::vector<std::string> cells;
    bool all = false;
    bool json = false;
};

/// On disk before the command says that it is done.
Result<int>
done(const FactsCall& call, const std::string& id, ForemanDesk& desk, Terminal& terminal) {
    if (const auto flushed = desk.writer->flush(); !flushed) {
        return tl::unexpected(flushed.error());
    }
    const auto procedure = findProcedure(id, call.log);
    if (!procedure) {
        return tl::unexpected(procedure.error());
    }
    if (call.json) {
        terminal.write(procedureJson(*procedure));
        return 0;
    }
    const auto cells = cellsOf(procedure->procedure);
    const auto held = std::count_if(cells.begin(), cells.end(), [](const Cell& cell) {
        return cell.source.standing == Standing::Attested;
    });
    terminal.write(
        onOneLine(id) + ": " + std::to_string(held) + " of " + std::to_string(cells.size()) +
        " cells are attested\n");
    return 0;
}

/// Those that --cell or --all names; `all` says which there are.
Result<std::vector<std::string>>
cellsAsked(const FactsCall& call, const std::vector<std::string>& all) {
    if (call.all == !call.cells.empty()) {
        return fail(
            ErrorCode::Malformed, std::string(call.all ? "both" : "neither") +
                                      " of --cell and --all; allowed: --all, or --cell NAME once "
                                      "or more");
    }
    return call.all ? all : call.cells;
}

Result<int> setProcedure(const FactsCall& call, Terminal& terminal) {
    const auto document = readProcedureFile(call.subject);
    if (!document) {
        return tl::unexpected(document.error());
    }
    auto desk = openForemanDesk(call.log);
    if (!desk) {
        return tl::unexpected(desk.error());
    }
    const auto by = enterForeman(call.by, **desk);
    if (!by) {
        return tl::unexpected(by.error());
    }
    if (const auto set = (*desk)->office->setProcedure(by->who, *document); !set) {
        return tl::unexpected(set.error());
    }
    return done(call, document->procedure.id, **desk, terminal);
}

Result<int> attest(const FactsCall& call, Terminal& terminal) {
    auto desk = openForemanDesk(call.log);
    if (!desk) {
        return tl::unexpected(desk.error());
    }
    const auto procedure = findProcedure(call.subject, call.log);
    if (!procedure) {
        return tl::unexpected(procedure.error());
    }
    std::vector<std::string> all;
    for (const Cell& cell : cellsOf(procedure->procedure)) {
        all.push_back(cell.name);
    }
    const auto cells = cellsAsked(call, all);
    if (!cells) {
        return tl::unexpected(cells.error());
    }
    const auto by = enterForeman(call.by, **desk);
    if (!by) {
        return tl::unexpected(by.error());
    }
    const auto said = (*desk)->office->attest(by->who, *procedure, call.edition, *cells);
    if (!said) {
        return tl::unexpected(said.error());
    }
    return done(call, procedure->procedure.id, **desk, terminal);
}

Result<int> withdraw(const FactsCall& call, Terminal& terminal) {
    auto desk = openForemanDesk(call.log);
    if (!desk) {
        return tl::unexpected(desk.error());
    }
    std::vector<std::string> all;
    for (const Attestation& one : (*desk)->office->shelf().attestations) {
        for (const std::string& cell : one.cells) {
            if (one.procedure == call.subject &&
                std::find(all.begin(), all.end(), cell) == all.end()) {
                all.push_back(cell);
            }
        }
    }
    const auto cells = cellsAsked(call, all);
    if (!cells) {
        return tl::unexpected(cells.error());
    }
    if (cells->empty()) {
        return fail(
            ErrorCode::Missing, inQuotes(call.subject) + " has no attested cell in this log; "
                                                         "allowed: a procedure that has");
    }
    const auto by = enterForeman(call.by, **desk);
    if (!by) {
        return tl::unexpected(by.error());
    }
    const auto said =
        (*desk)->office->withdrawAttestation(by->who, call.subject, call.reason, *cells);
    if (!said) {
        return tl::unexpected(said.error());
    }
    return done(call, call.subject, **desk, terminal);
}

} // namespace

void addProcedureFacts(CLI::App& procedures, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<FactsCall>();
    CLI::App* set = procedures.add_subcommand(
        "set", "A procedure of the shop's own, or a filled one, into the log.");
    set->add_option("FILE", call->subject, "a procedure's JSON file")->required();
    CLI::App* attesting = procedures.add_subcommand(
        "attest", "A foreman held these cells against the shop's copy of the standard.");
    attesting->add_option("ID", call->subject, "a procedure's id")->required();
    attesting
        ->add_option("--edition", call->edition, "the edition that is printed on the shop's copy")
        ->required();
    CLI::App* withdrawing =
        procedures.add_subcommand("withdraw", "What was attested of these cells holds no more.");
    withdrawing->add_option("ID", call->subject, "a procedure's id")->required();
    withdrawing->add_option("--reason", call->reason, "why, in a few words")->required();
    for (CLI::App* words : {attesting, withdrawing}) {
        words->add_option("--cell", call->cells, "a cell's NAME, as show --cells lists it; repeat")
            ->expected(1)
            ->take_all();
        words->add_flag("--all", call->all, "all cells");
    }
    for (CLI::App* words : {set, attesting, withdrawing}) {
        words->add_option("--log", call->log, "the log's FILE")->required();
        words->add_option("--by", call->by, "the foreman, as person:ID");
        words->add_flag("--json", call->json, "as JSON");
    }
    commands.push_back({set, [call, &terminal] { return setProcedure(*call, terminal); }});
    commands.push_back({attesting, [call, &terminal] { return attest(*call, terminal); }});
    commands.push_back({withdrawing, [call, &terminal] { return withdraw(*call, terminal); }});
}

} // namespace seamclock
