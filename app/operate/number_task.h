// What a number is asked for, and what may come of what was typed: which range is allowed, what the
// button says, and whether going on with it is offered at all. A number outside its range is never
// silently refused: the field and the button say so.
#pragma once

#include "app/operate/weld_view.h"
#include "app/parts/number_pad.h"

#include <QString>
#include <cstdint>
#include <optional>

namespace seamclock {

enum class NumberOutcome {
    None,     // nothing typed, or not a number that could be meant
    Keep,     // may be kept
    StopPlate // a plate outside its window: stored as a failed check
};

struct NumberTask {
    NumberFor what = NumberFor::PlateTemperature;
    NumberView view; // without what is typed
    int decimals = 1;
    double least = 0; // what can be meant at all
    double most = 10'000;
    std::optional<double> within; // up to which there is nothing to tell
};

struct NumberShown {
    NumberView view;
    QString sentence; // where it is outside
    QString button;
    NumberOutcome outcome = NumberOutcome::None;
    double value = 0;
};

/// Thickness, length or ambient of a sheet that is entered by hand; `low` and `high`: what the
/// procedure and the bench allow.
NumberTask entryTask(NumberFor what, std::optional<double> low, std::optional<double> high);
/// How much of both sheets went with that joint.
NumberTask lostTask(std::int64_t joint);
NumberTask numberTask(
    const Weld& weld, NumberFor what, const QString& letter, PlateRead read = PlateRead::Three);
NumberShown shown(const NumberTask& task, const QString& typed, QChar decimalSign);

} // namespace seamclock
