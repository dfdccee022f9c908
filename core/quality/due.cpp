#include "core/quality/due.h"

#include <algorithm>
#include <chrono>
#include <fmt/format.h>
#include <map>
#include <tuple>
#include <utility>

namespace seamclock {

namespace {

std::string dateOf(std::int64_t number) {
    return toIsoDate(std::chrono::hours(24) * number, std::chrono::minutes(0));
}

class List {
public:
    List(std::int64_t today, std::int64_t days) : m_today(today), m_days(days) {}

    /// With its date, unless that is further off.
    void add(DueItem item, std::int64_t until) {
        item.date = dateOf(until);
        item.days = until - m_today;
        if (item.days <= m_days) {
            m_items.push_back(std::move(item));
        }
    }
    void addUndated(DueItem item) { m_items.push_back(std::move(item)); }

    std::vector<DueItem> sorted() {
        std::sort(m_items.begin(), m_items.end(), [](const DueItem& a, const DueItem& b) {
            return std::tie(a.date, a.kind, a.subject, a.what) <
                   std::tie(b.date, b.kind, b.subject, b.what);
        });
        return std::move(m_items);
    }

private:
    std::int64_t m_today;
    std::int64_t m_days;
    std::vector<DueItem> m_items;
};

void addCalibration(const Bench& bench, List& list) {
    DueItem item{DueKind::Calibration, "bench:" + bench.id, bench.name, "spring scale", "", 0};
    const auto until = bench.calibration ? dayNumber(bench.calibration->dueOn) : std::nullopt;
    if (until) {
        list.add(std::move(item), *until);
    } else {
        list.addUndated(std::move(item));
    }
}

void addCertificates(const Roster& roster, List& list) {
    for (const Person& person : roster.people) {
        if (!person.active) {
            continue;
        }
        const auto held = roster.certificate.find(person.id);
        if (held == roster.certificate.end()) {
            // Where none is kept it is not asked for either (core/people/certificate.h).
            if (person.role == Role::Operator && !roster.certificate.empty()) {
                list.addUndated({DueKind::Certificate, person.id, person.name, "", "", 0});
            }
            continue;
        }
        for (const Certificate& one : held->second) {
            if (const auto until = dayNumber(one.until)) {
                list.add(
                    {DueKind::Certificate, person.id, person.name, scopeOf(one), "", 0}, *until);
            }
        }
    }
}

/// What became of an attestation: it holds as long as its value says the same (cells.h).
enum class AttestedNow { Holds, Changed, Gone };

AttestedNow
attestedNow(const std::vector<Procedure>& inForce, const std::string& id, const std::string& cell) {
    if (inForce.empty()) {
        return AttestedNow::Holds;
    }
    const auto procedure = std::find_if(
        inForce.begin(), inForce.end(), [&id](const Procedure& one) { return one.id == id; });
    if (procedure == inForce.end()) {
        return AttestedNow::Gone;
    }
    for (const Cell& one : cellsOf(*procedure)) {
        if (one.name == cell) {
            return one.source.standing == Standing::Attested ? AttestedNow::Holds
                                                             : AttestedNow::Changed;
        }
    }
    return AttestedNow::Gone;
}

std::string countText(std::size_t count) {
    return fmt::format("{} {}", count, count == 1 ? "value" : "values");
}

/// Of each procedure the cells by the day on which they were attested last.
void addAttestations(const Shelf& shelf, const std::vector<Procedure>& inForce, List& list) {
    std::map<std::string, std::map<std::string, std::int64_t>> attested; // procedure: cell: day
    for (const Attestation& one : shelf.attestations) {
        const auto day = dayNumber(one.date);
        for (const std::string& cell : one.cells) {
            if (day) {
                std::int64_t& last = attested[one.procedure].emplace(cell, *day).first->second;
                last = std::max(last, *day);
            }
        }
    }
    for (const auto& [procedure, cells] : attested) {
        std::map<std::int64_t, std::size_t> byDay;
        std::size_t changed = 0;
        for (const auto& [cell, day] : cells) {
            const AttestedNow now = attestedNow(inForce, procedure, cell);
            changed += now == AttestedNow::Changed ? 1 : 0;
            if (now == AttestedNow::Holds) {
                ++byDay[day];
            }
        }
        if (changed > 0) {
            list.addUndated(
                {DueKind::Attestation, "procedure:" + procedure, procedure, countText(changed), "",
                 0});
        }
        for (const auto& [day, count] : byDay) {
            list.add(
                {DueKind::Attestation, "procedure:" + procedure, procedure, countText(count), "",
                 0},
                day + kAttestationDays);
        }
    }
}

} // namespace

std::string_view toString(DueKind kind) {
    switch (kind) {
    case DueKind::Calibration:
        return "calibration";
    case DueKind::Certificate:
        return "certificate";
    case DueKind::Attestation:
        return "attestation";
    }
    return "";
}

std::optional<std::int64_t> dayNumber(std::string_view isoDate) {
    bool fits = isoDate.size() == 10 && isoDate[4] == '-' && isoDate[7] == '-';
    for (std::size_t i = 0; fits && i < isoDate.size(); ++i) {
        fits = i == 4 || i == 7 || (isoDate[i] >= '0' && isoDate[i] <= '9');
    }
    if (!fits) {
        return std::nullopt;
    }
    const auto number = [&](std::size_t from, std::size_t count) {
        return std::stoi(std::string(isoDate.substr(from, count)));
    };
    const std::chrono::year_month_day date(
        std::chrono::year(number(0, 4)), std::chrono::month(static_cast<unsigned>(number(5, 2))),
        std::chrono::day(static_cast<unsigned>(number(8, 2))));
    return date.ok()
               ? std::optional<std::int64_t>(std::chrono::sys_days(date).time_since_epoch().count())
               : std::nullopt;
}

Result<std::vector<DueItem>>
dueWithin(const DueFacts& facts, std::string_view today, std::int64_t days) {
    const auto now = dayNumber(today);
    if (!now) {
        return fail(
            ErrorCode::Malformed,
            "\"" + std::string(today) + "\" is not a date; allowed: 0000-01-01 to 9999-12-31");
    }
    if (days < 0 || days > kMostDueDays) {
        return fail(
            ErrorCode::OutOfRange, fmt::format("{} days; allowed: 0 to {}", days, kMostDueDays));
    }
    List list(*now, days);
    for (const Bench& bench : facts.benches) {
        addCalibration(bench, list);
    }
    addCertificates(facts.roster, list);
    addAttestations(facts.shelf, facts.procedures, list);
    return list.sorted();
}

} // namespace seamclock
