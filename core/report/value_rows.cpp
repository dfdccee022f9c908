#include "core/report/value_rows.h"

#include "core/bench/bench_codec.h"
#include "core/report/plain_text.h"
#include "core/report/separated.h"
#include "core/report/set_actual.h"

#include <optional>
#include <utility>

namespace seamclock {
namespace {

std::string numberOf(const std::optional<std::int64_t>& value, const ShownUnit& unit) {
    if (!value) {
        return "";
    }
    return unit.decimals == 6 ? fromMillionths(*value, 6) : fromThousandths(*value);
}

std::optional<std::int64_t> msOf(const std::optional<Milliseconds>& time) {
    return time ? std::optional<std::int64_t>(time->count()) : std::nullopt;
}

class ValueRows {
public:
    explicit ValueRows(const WeldRecord& record) : m_record(record) {}

    void add(const SetActual& row, std::int64_t toN = 0, const std::string& most = {}) {
        const ShownUnit unit = shownUnit(row.unit, m_record.plan);
        std::int64_t correctedBy = row.correctedBy;
        for (const Event& event : m_record.events) {
            const auto* step = std::get_if<StepBackdated>(&event.d);
            if (row.unit == "ms" && step != nullptr &&
                (step->targetN == row.n || (toN != 0 && step->targetN == toN))) {
                correctedBy = event.n;
            }
        }
        m_text += separatedRow(
            {std::to_string(m_record.opened.number), m_record.weld, toIsoUtc(m_record.openedAt.utc),
             m_record.opened.seam.value_or(""), row.item, placeInWords(row), unit.name,
             numberOf(row.set, unit), numberOf(row.low, unit), numberOf(row.high, unit),
             numberOf(row.actual, unit), most, row.n == 0 ? "" : std::to_string(row.n),
             toN == 0 ? "" : std::to_string(toN), numberOf(row.was, unit),
             correctedBy == 0 ? "" : std::to_string(correctedBy), ""});
    }
    std::string take() { return std::move(m_text); }

private:
    const WeldRecord& m_record;
    std::string m_text;
};

} // namespace

std::string valueRowsHeader() {
    return separatedRow(
        {"number", "weld", "opened_utc", "seam", "item", "place", "unit", "set", "low", "high",
         "actual", "actual_most", "event", "event_to", "was", "corrected_by", "trouble"});
}

std::string damagedRow(const NamedJoint& joint, const std::string& trouble) {
    return separatedRow(
        {std::to_string(joint.number), joint.weld, toIsoUtc(joint.openedUtc), joint.seam, "", "",
         "", "", "", "", "", "", "", "", "", "", trouble});
}

std::string valueRows(LogReader& reader, const NamedJoint& joint) {
    const auto events = reader.weldEvents(joint.weld);
    auto folded = events ? fold(*events) : Result<Weld>(tl::unexpected<Error>(events.error()));
    if (!folded) {
        return damagedRow(joint, folded.error().detail);
    }
    const WeldRecord made = record(std::move(*folded));
    std::optional<Bench> bench;
    const auto document = reader.document(made.opened.docs.bench);
    if (!document && document.error().code != ErrorCode::Damaged) {
        return damagedRow(joint, document.error().detail);
    }
    if (document && *document) {
        if (auto read = readBench("the bench of " + joint.weld, (*document)->bytes)) {
            bench = std::move(read->bench);
        }
    }
    return valueRows(made, bench ? &*bench : nullptr);
}

std::string valueRows(const WeldRecord& record, const Bench* bench) {
    ValueRows rows(record);
    for (const SetActual& row : setAndActual(record, bench)) {
        rows.add(row);
    }
    for (const PhaseRecord& phase : record.phases) {
        SetActual row;
        row.item = phase.phase + "_time";
        row.unit = "ms";
        row.set = msOf(phase.target);
        row.low = msOf(phase.low);
        row.high = msOf(phase.high);
        row.n = phase.fromN;
        std::string most;
        if (phase.took) {
            row.actual = phase.took->lo.count();
            // After a power cut a time lies between two.
            if (phase.took->hi != phase.took->lo) {
                most = fromThousandths(phase.took->hi.count());
            }
        }
        rows.add(row, phase.toN, most);
    }
    return rows.take();
}

} // namespace seamclock
