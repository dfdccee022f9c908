// A weld card in a person's words and units, before anybody decides where it stands: the plate and
// the five phases as columns, the arithmetic behind each reading, what to know before, and where
// the values come from. The screen's card and the printed page take their texts from here, so that
// they can't differ. The numbers are the plan's (core/units/measure.h turns them); readings are in
// the scale's own unit.
#pragma once

#include "core/estimate/heat_estimate.h"
#include "core/plan/plan.h"
#include "core/units/measure.h"

#include <QString>
#include <QStringList>
#include <vector>

namespace seamclock {

struct CardColumn {
    QString name;
    QString big;
    QString bigUnit; // empty for a time with a colon
    QString under;
    QString times; // the band of the time, or when it is slow; empty: none
    QString scale; // the reading to set, or a word
    QString scaleUnit;
    QString band; // of the reading
    QString foot;

    bool operator==(const CardColumn&) const = default;
};

struct CardSum {
    QString name;    // "Join"
    QString force;   // "0.1 N/mm² × 8 mm × 1450 mm = 1160 N"
    QString reading; // "with drag 20 N: ÷ 74 N/mm = 15.9 mm, set to 16 mm"; empty without a scale

    bool operator==(const CardSum&) const = default;
};

struct CardSource {
    QString values; // "soak, changeover, build-up"
    QString text;   // the source's own words
    Standing standing = Standing::Memory;

    bool operator==(const CardSource&) const = default;
};

struct CardTexts {
    QString sheet; // "PE-HD, 8 mm thick, 1450 mm long"
    QString shop;  // "19 °C"
    QString drag;
    QString gaps;  // between the tables, then for the second sheet
    QString edges; // where they meet
    QString tolerance;
    std::vector<CardColumn> columns; // plate, align, soak, changeover, build-up, cooling
    std::vector<CardSum> sums;       // alignment, joining, soak, where their pressure is known
    QString shortEstimate;           // in one line; empty: there is none
    QStringList estimates;           // of the melt, the reading's fall and the length lost
    QString calibration;             // of the scale; empty without a bench
    QString notReady;                // empty: ready, as far as the procedure goes
    QStringList warnings;
    QStringList checks;
    QStringList release;
    std::vector<CardSource> sources;

    bool operator==(const CardTexts&) const = default;
};

/// `bench` is the one that the plan was made with; without it a sum ends at the force. `heat`, if
/// it is known, is what the plan will do; of the weld plane in cooling nothing is told.
CardTexts cardTexts(
    const WeldPlan& plan, const Bench* bench, UnitSystem units, const HeatEstimate* heat = nullptr);

/// In the language's own decimals: "0,394 in" where a comma is used.
QString measureText(const Measure& measure);
/// The number alone.
QString measureNumber(const Measure& measure);

} // namespace seamclock
