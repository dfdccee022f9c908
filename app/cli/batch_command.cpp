// log batch: from a batch of sheet to the joints that hold it, and from a joint to its sheets.
#include "app/cli/command.h"
#include "app/cli/shop_json.h"
#include "core/log/batches.h"
#include "core/report/plain_text.h"
#include "core/report/wording.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <fmt/format.h>
#include <memory>

namespace seamclock {
namespace {

struct BatchCall {
    std::string log;
    std::optional<std::string> batch;
    std::optional<std::string> joint;
    std::optional<std::string> weld;
    bool json = false;
};

std::string sheetText(const SheetBatch& sheet) {
    std::string text = fmt::format(
        "sheet {}: {}{}, {}", sheet.sheet, sheet.material,
        sheet.grade.empty() ? "" : " " + sheet.grade, sheet.maker);
    text += sheet.overruled ? ", corrected to another" : "";
    text += sheet.corrected ? ", as corrected" : "";
    return onOneLine(text);
}

std::string stateOf(const JointLine& line) {
    return line.verdict.empty() ? codeInWords(line.phase) : line.verdict;
}

Result<int> findBatch(const BatchCall& call, LogReader& reader, Terminal& terminal) {
    const auto found = jointsOfBatch(reader, *call.batch);
    if (!found) {
        return tl::unexpected(found.error());
    }
    if (call.json) {
        terminal.write(batchJson(call.log, *call.batch, *found));
        return 0;
    }
    if (found->joints.empty()) {
        terminal.write("no joint holds it\n");
    } else {
        std::vector<std::vector<std::string>> rows = {{"joint", "day", "seam", "result", "sheets"}};
        for (const BatchJoint& joint : found->joints) {
            std::string sheets;
            for (const SheetBatch& sheet : joint.sheets) {
                sheets += (sheets.empty() ? "" : "; ") + sheetText(sheet);
            }
            rows.push_back(
                {std::to_string(joint.line.number), onOneLine(joint.line.day),
                 joint.line.seam.empty() ? "-" : onOneLine(joint.line.seam), stateOf(joint.line),
                 sheets});
        }
        terminal.write(aligned(rows));
    }
    if (found->damaged > 0) {
        terminal.write(fmt::format(
            "passed over, as their events can't be read: {}; log verify names them\n",
            found->damaged));
    }
    return 0;
}

Result<int> traceJoint(const BatchCall& call, LogReader& reader, Terminal& terminal) {
    const auto weld = chooseWeld(reader, call.log, call.joint, call.weld);
    if (!weld) {
        return tl::unexpected(weld.error());
    }
    const auto events = reader.weldEvents(*weld);
    if (!events) {
        return tl::unexpected(events.error());
    }
    if (events->empty()) {
        return fail(
            ErrorCode::Missing,
            "--weld \"" + *weld + "\" is not in this log; allowed: one that log list --json shows");
    }
    const auto sheets = batchesOf(*events);
    if (!sheets) {
        return tl::unexpected(sheets.error());
    }
    std::int64_t number = 0;
    if (const auto* opened = std::get_if<WeldOpened>(&events->front().d)) {
        number = opened->number;
    }
    std::vector<SheetTrace> traces;
    for (const SheetBatch& sheet : *sheets) {
        SheetTrace trace{sheet, {}};
        if (!sheet.batch.empty()) {
            const auto found = jointsOfBatch(reader, sheet.batch);
            if (!found) {
                return tl::unexpected(found.error());
            }
            for (const BatchJoint& joint : found->joints) {
                if (joint.line.weld != *weld) {
                    trace.others.push_back(joint.line);
                }
            }
        }
        traces.push_back(std::move(trace));
    }
    if (call.json) {
        terminal.write(traceJson(call.log, number, *weld, traces));
        return 0;
    }
    std::string text = headline(fmt::format("joint {}", number));
    for (const SheetTrace& trace : traces) {
        std::string others;
        for (const JointLine& line : trace.others) {
            others += (others.empty() ? "" : ", ") + std::to_string(line.number);
        }
        text += wrapped(
                    onOneLine(fmt::format(
                        "{}, batch {}; also in {}", sheetText(trace.sheet),
                        trace.sheet.batch.empty() ? "not noted" : trace.sheet.batch,
                        others.empty() ? "no other joint" : "joints " + others)),
                    2) +
                "\n";
    }
    terminal.write(text);
    return 0;
}

Result<int> runBatch(const BatchCall& call, Terminal& terminal) {
    const bool joint = call.joint.has_value() || call.weld.has_value();
    if (call.batch.has_value() == joint) {
        return fail(
            ErrorCode::Malformed,
            "asked for a batch and a joint, or for neither; allowed: the name "
            "of a BATCH, or --joint, or --weld");
    }
    auto reader = LogReader::open(call.log);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    return call.batch ? findBatch(call, *reader, terminal) : traceJoint(call, *reader, terminal);
}

} // namespace

void addBatch(CLI::App& root, Commands& commands, Terminal& terminal) {
    auto call = std::make_shared<BatchCall>();
    CLI::App* batch = root.get_subcommand("log")->add_subcommand(
        "batch", "Which joints hold a batch of sheet; or of a joint, which batches it holds and "
                 "where else they are.");
    batch->add_option("BATCH", call->batch, "the batch, as it is on the sheet");
    batch->add_option("--joint", call->joint, "a joint's NUMBER instead");
    batch->add_option("--weld", call->weld, "a weld's UUID instead");
    batch->add_option("--log", call->log, "the log's FILE")->required();
    batch->add_flag("--json", call->json, "as JSON");
    commands.push_back({batch, [call, &terminal] { return runBatch(*call, terminal); }});
}

} // namespace seamclock
