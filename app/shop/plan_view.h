// What the page of the day's plan shows, worked out of a plan before anybody decides where it
// stands: a lane for each bench and each person with its stretches over the clock, when all will be
// out and how early that could be at all, and one sentence for each thing that somebody does next.
// Times of an end are rounded up to the minute and the bound down, so that neither promises more
// than is so.
#pragma once

#include "app/daylog/day_view.h"
#include "app/parts/mark.h"
#include "app/parts/theme.h"
#include "core/session/job_day.h"

#include <QString>
#include <optional>
#include <vector>

namespace seamclock {

/// Told apart by what they are painted with, and named below the chart.
enum class BarKind {
    Hands,   // somebody is with the bench, from preparation to the lock
    Cooling, // the bench alone
    WarmUp,  // the plate settles
    Waiting, // cooled, and nobody has come yet
    Release,
    Decision // on a trial joint
};
QString barWord(BarKind kind);

struct PlanBar {
    BarKind kind = BarKind::Hands;
    QString text;  // "S1"; of a person's bar with the bench: "S1 · A"
    QString brief; // "S1"
    Milliseconds from{0};
    Milliseconds to{0};

    bool operator==(const PlanBar&) const = default;
};

struct PlanLane {
    QString name;
    std::vector<PlanBar> bars; // by `from`

    bool operator==(const PlanLane&) const = default;
};

struct PlanStep {
    Milliseconds from{0};
    QString time; // "14:05"; empty: now, or of no time
    QString text;
    std::optional<Mark> mark;
    Tone tone = Tone::Rest;

    bool operator==(const PlanStep&) const = default;
};

struct PlanView {
    Instant at; // when it was worked out; all times count from it
    QString title;
    QString under;
    std::vector<PlanLane> lanes;
    Milliseconds finish{0};
    Milliseconds bound{0};
    QString finishText; // "this plan 14:31"; empty: nothing is to do
    QString boundText;  // "earliest possible 14:20"
    std::vector<PlanStep> steps;

    bool operator==(const PlanView&) const = default;
};

PlanView planView(const JobDay& day, const Instant& at, const DayNames& names);

/// "14:05", on another day with its name: "Tue 9:10". `up`: to the minute above, else below.
QString planClock(const Instant& at, Milliseconds ahead, bool up);

} // namespace seamclock
