#include "core/log/recover.h"

#include "core/log/body_codec.h"
#include "core/log/log_reader.h"
#include "core/log/spill.h"
#include "core/weld/event_codec.h"

#include <algorithm>
#include <map>
#include <utility>
#include <variant>

namespace seamclock {

namespace {

Result<Weld> foldBodies(const std::vector<std::string>& bodies) {
    std::vector<Event> events;
    for (const std::string& body : bodies) {
        auto event = eventFromBody(body);
        if (!event) {
            return fail(ErrorCode::Damaged, event.error().detail);
        }
        events.push_back(std::move(*event));
    }
    return fold(events);
}

} // namespace

Result<std::vector<RecoveredWeld>> recoverOpenWelds(const std::string& path) {
    auto reader = LogReader::open(path);
    if (!reader) {
        return tl::unexpected<Error>(std::move(reader.error()));
    }
    auto subjects = reader->openWelds();
    if (!subjects) {
        return tl::unexpected<Error>(std::move(subjects.error()));
    }
    const auto spilled = readSpill(reader->path() + ".spill");
    if (!spilled) {
        return tl::unexpected<Error>(spilled.error());
    }
    std::map<std::string, std::vector<std::string>> waiting;
    if (spilled->logId == reader->logId()) {
        for (const LogRow& row : spilled->rows) {
            if (!isWeld(row.subject)) {
                continue;
            }
            auto& bodies = waiting[row.subject];
            if (bodies.empty() &&
                std::find(subjects->begin(), subjects->end(), row.subject) == subjects->end()) {
                subjects->push_back(row.subject);
            }
            bodies.push_back(row.body);
        }
    }
    std::vector<RecoveredWeld> out;
    for (const std::string& subject : *subjects) {
        auto bodies = reader->bodies(subject);
        if (!bodies) {
            return tl::unexpected<Error>(std::move(bodies.error()));
        }
        for (const std::string& body : waiting[subject]) {
            if (std::find(bodies->begin(), bodies->end(), body) == bodies->end()) {
                bodies->push_back(body);
            }
        }
        auto weld = foldBodies(*bodies);
        if (weld && !isOpen(weld->state)) {
            continue; // closed by a row that waits, or the rows that wait are of one closed long
                      // ago
        }
        out.push_back({subject, std::move(weld)});
    }
    return out;
}

} // namespace seamclock
