#include "core/report/record_reasons.h"

#include <algorithm>
#include <string>
#include <variant>

namespace seamclock {
namespace {

void addCorrections(std::set<std::int64_t>& behind, const WeldRecord& record) {
    for (const Event& event : record.events) {
        const auto* value = std::get_if<ValueCorrected>(&event.d);
        const auto* step = std::get_if<StepBackdated>(&event.d);
        if ((value != nullptr && behind.count(value->targetN) > 0) ||
            (step != nullptr && behind.count(step->targetN) > 0)) {
            behind.insert(event.n);
        }
    }
}

} // namespace

std::set<std::int64_t> eventsBehind(const Finding& finding, const WeldRecord& record) {
    if (finding.n == 0) {
        return eventsBehind(finding.code, record);
    }
    std::set<std::int64_t> behind{finding.n};
    addCorrections(behind, record);
    return behind;
}

std::set<std::int64_t> eventsBehind(std::string_view code, const WeldRecord& record) {
    std::set<std::int64_t> behind;
    const auto bridges = [&](const PhaseRecord& over) {
        for (const Event& event : record.events) {
            if (std::holds_alternative<ClockBridged>(event.d) && event.n > over.fromN &&
                (over.toN == 0 || event.n < over.toN)) {
                behind.insert(event.n);
            }
        }
    };
    const auto phase = [&](std::string_view name) {
        for (const PhaseRecord& one : record.phases) {
            if (one.phase == name) {
                behind.insert(one.fromN);
                if (one.toN != 0) {
                    behind.insert(one.toN);
                }
                bridges(one);
            }
        }
    };
    const auto readings = [&](ReadingPhase which) {
        for (const Retained& one : record.readings) {
            if (std::get<ReadingTaken>(one.d).phase == which) {
                behind.insert(one.n);
            }
        }
    };
    const auto checks = [&](std::string_view which) {
        for (const Retained& one : record.checks) {
            const auto* made = std::get_if<CheckMade>(&one.d);
            if (made != nullptr && made->check == which) {
                behind.insert(one.n);
            }
        }
    };
    const auto kinds = [&](std::string_view which) {
        for (const Event& event : record.events) {
            if (kindOf(event.d) == which) {
                behind.insert(event.n);
            }
        }
    };
    const auto starts = [&code](std::string_view with) { return code.rfind(with, 0) == 0; };
    if (starts("plate")) {
        checks("plate_temperature");
    } else if (starts("alignment_time")) {
        phase("alignment");
    } else if (starts("alignment_bead")) {
        checks("alignment_bead");
    } else if (starts("soak_time")) {
        phase("soak");
    } else if (starts("soak_pressure") || starts("soak_reading")) {
        readings(ReadingPhase::Soak);
    } else if (starts("changeover")) {
        phase("changeover");
    } else if (starts("build_up")) {
        phase("build_up");
        readings(ReadingPhase::Joining);
    } else if (starts("joining")) {
        readings(ReadingPhase::Joining);
        readings(ReadingPhase::Recheck);
    } else if (starts("recheck")) {
        phase("cooling");
        readings(ReadingPhase::Recheck);
    } else if (code == "cooling") {
        phase("cooling");
    } else if (code == "misalignment" || starts("bead")) {
        kinds("bead_measured");
    } else if (code == "bridge_used") {
        kinds("clock_bridged");
    } else if (code == "aborted") {
        kinds("weld_aborted");
    } else {
        kinds(code);
        for (const std::string& flag : record.opened.flags) {
            if (flag == code) {
                behind.insert(1);
            }
        }
    }
    addCorrections(behind, record);
    return behind;
}

bool isCorrectedSinceClosing(const WeldRecord& record) {
    if (!record.stored || record.stored->rules != kVerdictRules) {
        return false;
    }
    const std::int64_t closed = closedN(record);
    return std::any_of(record.events.begin(), record.events.end(), [&](const Event& event) {
        return event.n > closed && (std::holds_alternative<ValueCorrected>(event.d) ||
                                    std::holds_alternative<StepBackdated>(event.d));
    });
}

std::int64_t closedN(const WeldRecord& record) {
    const auto closed =
        std::find_if(record.events.begin(), record.events.end(), [](const Event& event) {
            return std::holds_alternative<WeldClosed>(event.d);
        });
    return closed == record.events.end() ? 0 : closed->n;
}

std::int64_t changedAfter(std::int64_t n, const WeldRecord& record) {
    const auto changed =
        std::find_if(record.events.begin(), record.events.end(), [n](const Event& event) {
            return event.n > n && (std::holds_alternative<ValueCorrected>(event.d) ||
                                   std::holds_alternative<StepBackdated>(event.d) ||
                                   std::holds_alternative<Decided>(event.d));
        });
    return changed == record.events.end() ? 0 : changed->n;
}

bool differsFromStored(const WeldRecord& record) {
    if (!record.stored) {
        return false;
    }
    const auto& found = record.verdict.findings;
    const auto& stored = record.stored->reasons;
    return record.stored->verdict != toString(record.verdict.word) ||
           !std::equal(
               found.begin(), found.end(), stored.begin(), stored.end(),
               [](const Finding& a, const StoredReason& b) {
                   return a.code == b.code && toString(a.grade) == b.grade && a.limit == b.limit &&
                          a.actual == b.actual;
               });
}

} // namespace seamclock
