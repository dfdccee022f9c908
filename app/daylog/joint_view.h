// One joint as values to paint: the verdict in words with the first reason, what a person decided,
// the course of the weld, set against done for what matters most; and the whole record as tables:
// every value, every event, what was looked at. Each value names the event that it comes from. A
// value that was corrected keeps what stood there before, struck.
#pragma once

#include "app/daylog/course_view.h"
#include "app/daylog/day_view.h"
#include "app/daylog/joint_photo.h"
#include "core/bench/bench.h"
#include "core/log/joint.h"
#include "core/quality/coupons.h"
#include "core/units/measure.h"

#include <QString>
#include <QStringList>
#include <cstdint>
#include <vector>

namespace seamclock {

struct JointView {
    /// Set against done, of one value.
    struct Value {
        QString item;
        QString set;
        QString done;
        bool out = false;
        std::int64_t n = 0; // of the event that holds the value

        bool operator==(const Value&) const = default;
    };

    std::string weld; // empty: nothing to show
    Mark mark = Mark::Open;
    Tone tone = Tone::Rest;
    QString verdict;
    QString reason;
    QString about;
    QString stored;  // of a verdict stored by older rules; empty: it is today's, too
    QString photos;  // those that are not as they were kept; empty: all are
    QString decided; // what a person decided, who and when; empty: nobody yet
    QString tested;  // of coupons that were cut from it; empty: none
    bool remarks = false;
    bool ended = false;
    bool trial = false;
    CourseView course;
    std::vector<Value> values; // the few

    bool operator==(const JointView&) const = default;
};

struct TableView {
    struct Cell {
        QString text;
        QString struck; // what stood there before it was corrected
        bool out = false;
        bool soft = false;

        bool operator==(const Cell&) const = default;
    };
    struct Row {
        std::vector<Cell> cells;
        bool isHead = false; // one cell, over the whole width
        std::int64_t n = 0;  // of its event; 0: none

        bool operator==(const Row&) const = default;
    };

    QStringList columns;
    std::vector<double> widths; // of the columns, parts of the whole
    std::vector<Row> rows;

    bool operator==(const TableView&) const = default;
};

/// `bench`: as the log keeps it; null: forces and pressures stay out. `estimate`: as courseView's.
JointView jointView(
    const WeldRecord& record, const DayNames& names, const HeatEstimate* estimate = nullptr,
    UnitSystem units = UnitSystem::Metric);
/// Of a joint whose events make no weld.
JointView damagedView(const JointLine& line, const DayNames& names);

TableView valuesTable(
    const WeldRecord& record, const Bench* bench, const HeatEstimate* estimate = nullptr,
    UnitSystem units = UnitSystem::Metric);
TableView
eventsTable(const WeldRecord& record, const DayNames& names, UnitSystem units = UnitSystem::Metric);
/// `coupons`: that were cut from it.
TableView lookedAtTable(
    const WeldRecord& record, const std::vector<JointPhoto>& photos, const DayNames& names,
    UnitSystem units = UnitSystem::Metric, const std::vector<CouponSeries>& coupons = {},
    const DayNames* own = nullptr); // of this log, whose the coupons are; absent: as `names`
/// What came of the newest test that speaks against it, else of the newest, with the n of its
/// event, and how many there are.
QString testedText(const std::vector<CouponSeries>& coupons, UnitSystem units = UnitSystem::Metric);

/// What may be corrected, with its value as it stands.
struct Correctable {
    std::int64_t n = 0;
    std::string field;
    std::string value; // as the event has it
    QString item;
    QString text;     // the value in words
    double scale = 1; // a whole number in the event is so many of the unit shown; 0: words
    QString unit;
};
std::vector<Correctable> correctables(const WeldRecord& record);

} // namespace seamclock
