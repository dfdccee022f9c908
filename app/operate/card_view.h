// The weld card as a value: the plate and the five phases in the order in which they happen, the
// arithmetic behind the reading in one line each, and where the numbers come from, in words.
#pragma once

#include "app/parts/sign.h"
#include "core/bench/bench.h"
#include "core/estimate/heat_estimate.h"
#include "core/plan/plan.h"
#include "core/units/measure.h"
#include "core/weld/event.h"

#include <QString>
#include <vector>

namespace seamclock {

struct CardView {
    struct Column {
        Sign sign = Sign::Soak;
        QString name;
        QString big;
        QString bigUnit;
        QString under;
        QString scale;     // the reading to set, or a word
        QString scaleUnit; // empty where it is a word
        QString band;
        QString foot;

        bool operator==(const Column&) const = default;
    };
    struct Source {
        Sign sign = Sign::Note; // Shield where attested
        bool memory = false;
        QString what;
        QString standing;

        bool operator==(const Source&) const = default;
    };

    QString title;
    QString under;
    std::vector<Column> columns; // six
    QString arithmeticTitle;
    QString force;    // "0.10 N/mm² × 8 mm × 1450 mm = 1160 N"
    QString reading;  // "÷ 74 N per mm = 15.7 mm, set to 15.5 mm"
    QString estimate; // how far the reading will fall, and what the sheets lose
    QString warning;  // the first one, or what is missing
    QString sourcesTitle;
    std::vector<Source> sources; // at most three
    bool ready = false;

    bool operator==(const CardView&) const = default;
};

/// Where a batch that was not told can still be entered.
enum class BatchPlace { Entry, Job, DayLog };

/// Whether each sheet is told with its batch: else nobody finds the joint by it.
bool hasBatches(const std::vector<Sheet>& sheets);
/// The sentence on the card; empty: each has one.
QString batchMissing(const std::vector<Sheet>& sheets, BatchPlace place);

/// `heat`, if it is known, is what the plan will do. `missing`: as batchMissing.
CardView cardView(
    const WeldPlan& plan, const Bench& bench, const QString& letter, const QString& seam,
    UnitSystem units, const HeatEstimate* heat = nullptr, const QString& missing = {});

} // namespace seamclock
