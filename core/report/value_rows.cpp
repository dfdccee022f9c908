#include "core/report/value_rows.h"

#include "core/report/plain_text.h"
#include "core/report/separated.h"
#include "core/report/set_actual.h"

#include <optional>

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

    void add(const SetActual& row, const std::string& toN, const std::string& most) {
        const ShownUnit unit = shownUnit(row.unit, m_record.plan);
        m_text += separatedRow(
            {std::to_string(m_record.opened.number), m_record.weld, toIsoUtc(m_record.openedAt.utc),
             m_record.opened.seam.value_or(""), row.item, row.place, unit.name,
             numberOf(row.set, unit), numberOf(row.low, unit), numberOf(row.high, unit),
             numberOf(row.actual, unit), most, row.n == 0 ? "" : std::to_string(row.n), toN});
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
         "actual", "actual_most", "event", "event_to"});
}

std::string valueRows(const WeldRecord& record, const Bench* bench) {
    ValueRows rows(record);
    for (const SetActual& row : setAndActual(record, bench)) {
        rows.add(row, "", "");
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
        rows.add(row, phase.toN == 0 ? "" : std::to_string(phase.toN), most);
    }
    return rows.take();
}

} // namespace seamclock
