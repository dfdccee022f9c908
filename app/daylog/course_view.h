// The course of a weld as a drawing takes it: for each phase the plan and what was done, on a time
// scale of its own in which the plan is as long as the column is wide; the scale's readings against
// their bands; remarks and signals at their instants; and the estimated temperature of the weld
// plane with its spread. Pure: the same record and estimate give the same drawing.
#pragma once

#include "app/parts/sign.h"
#include "core/estimate/heat_estimate.h"
#include "core/weld/record.h"

#include <QString>
#include <cstdint>
#include <optional>
#include <vector>

namespace seamclock {

struct CourseView {
    // `at` is always in lengths of the phase's plan: 1 is where the plan ends.
    struct Reading {
        double at = 0;
        double value = 0; // in the scale's unit
        bool out = false; // of its band
        std::int64_t n = 0;

        bool operator==(const Reading&) const = default;
    };
    struct Point {
        double at = 0;
        double low = 0; // [°C]
        double likely = 0;
        double high = 0;

        bool operator==(const Point&) const = default;
    };
    struct Happening {
        double at = 0;
        Sign sign = Sign::Remark;
        std::int64_t n = 0; // the event, or the last one before a signal

        bool operator==(const Happening&) const = default;
    };
    struct Band {
        double low = 0;
        double high = 0;

        bool operator==(const Band&) const = default;
    };
    struct Phase {
        QString name;
        QString plan;                // "8.8 s", "by bead"
        bool timed = true;           // the plan says how long it takes
        QString done;                // empty: it did not come to that, or is not over
        double share = 0;            // how long it took
        std::optional<double> limit; // where one stands
        std::optional<Grade> grade;  // what its time was found to be; absent: within
        std::int64_t fromN = 0;
        std::int64_t toN = 0;
        std::optional<Band> band;  // that its readings should lie in
        std::optional<Band> climb; // from reading to reading, evenly
        std::vector<Reading> readings;
        std::vector<Happening> happenings; // by their instants
        std::vector<Point> plane;
        QString figure; // of the weld plane, where it matters

        double length() const { return share > 1 ? share : 1; }
        bool operator==(const Phase&) const = default;
    };

    std::vector<Phase> phases; // five, in the order of the work
    QString scaleUnit;         // empty: no scale
    double scaleTop = 0;
    QString scaleTopText;
    bool estimated = false;
    double hottest = 220;  // top of the temperature's drawing [°C]
    QString releaseFigure; // of the weld plane at release

    bool operator==(const CourseView&) const = default;
};

/// `estimate`: null until it is worked out, and of a weld that still runs, as a temperature would
/// argue for an early release.
CourseView courseView(const WeldRecord& record, const HeatEstimate* estimate);

/// Where signs as wide as `side` stand that want to stand at these left edges, in that order: each
/// as near as it can be without standing over another, none left out; closer where there is no
/// room.
std::vector<double> spreadOut(std::vector<double> wanted, double side, double left, double right);

} // namespace seamclock
